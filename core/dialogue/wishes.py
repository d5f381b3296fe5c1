"""Wishes in words: help, skip, later, stop, and what else somebody may want who typed no reading."""

from __future__ import annotations

from core.dialogue import checkin, life, safety, second_thoughts, showing
from core.dialogue import messages as m
from core.dialogue.effects import Choice
from core.dialogue.outcome import Desk
from core.dialogue.states import Awaiting, Setting
from core.language import Intent
from core.language.intents import intent
from core.measures import MEASURES


def wish_for(d: Desk, wish: Intent, text: str) -> None:
    match wish:
        case Intent.HELP | Intent.WHY | Intent.DONT_KNOW if isinstance(d.asking, Awaiting) and wish is not Intent.HELP:
            card(d, d.asking.measure)
        case Intent.HELP | Intent.WHY | Intent.DONT_KNOW:
            life.help_(d)
        case Intent.SKIP | Intent.NOT_SAY:
            life.skip(d)
        case Intent.NO if isinstance(d.asking, Awaiting):
            life.skip(d)
        case Intent.LATER:
            life.later(d)
        case Intent.STOP:
            life.stop(d)
        case Intent.UNDO:
            second_thoughts.undo(d)
        case Intent.COACH:
            life.word(d)
        case Intent.PAUSE:
            life.pause(d, text)
        case Intent.RESUME:
            life.resume(d)
        case Intent.TODAY | Intent.RECORD | Intent.START | Intent.CONTINUE | Intent.REPEAT:
            life.today(d)
        case Intent.PROGRESS:
            showing.progress(d)
        case Intent.GOAL:
            showing.goal(d)
        case Intent.SETTINGS:
            life.settings(d)
        case Intent.SOURCE:
            sources(d)
        case Intent.THANKS | Intent.GREETING | Intent.WELL:
            courtesy(d, wish)
        case Intent.NOT_WELL:
            safety.unwell(d)
        case Intent.MY_DATA:
            life.my_data(d)
        case Intent.FORGET:
            life.change(d, "forget")
        case Intent.LEAVE:
            life.change(d, "leave")
        case Intent.LANGUAGE | Intent.UNITS | Intent.ZONE | Intent.SLOT:
            life.change(d, wish.value)
        case _:
            life.not_sure(d)


def courtesy(d: Desk, wish: Intent) -> None:
    """A thank-you or a hello: answered in kind; an open question is put again."""
    said = m.Hello() if wish is Intent.GREETING else m.YouAreWelcome()
    d.say(said, *(() if life.waiting(d) else life.menu(d)))
    if isinstance(d.asking, Awaiting):
        checkin.ask(d, MEASURES[d.asking.measure])


def after_leaving(d: Desk, text: str) -> None:
    """Somebody who left may still have their data, be forgotten, or come back through the coach."""
    match intent(text, d.words):
        case Intent.MY_DATA:
            life.my_data(d)
        case Intent.FORGET:
            life.change(d, "forget")
        case Intent.YES if isinstance(d.asking, Setting) and d.asking.what == "forget":
            life.forget(d, True)
        case _:
            d.say(m.HasLeft(d.facts.coach_name), (Choice("my_data", "set:my_data"), Choice("forget", "set:forget")))


def card(d: Desk, key: str, *, ruler: bool = False) -> None:
    """How to take a measure; the question stays open."""
    measure = MEASURES.get(key)
    if measure is None or not measure.protocol.technique:
        life.help_(d)
        return
    girth = measure.key in ("waist", "hip")
    extra = ((Choice("ruler", f"ruler:{key}"),),) if girth and not ruler else ()
    rows = checkin.buttons(d, measure)[-1:] if isinstance(d.asking, Awaiting) else ()
    timers = ((Choice("time_it", f"time:{key}"),),) if measure.protocol.timers and rows else ()
    d.say(m.Card(key, ruler), *extra, *timers, *rows)


def sources(d: Desk) -> None:
    if d.state.sources:
        d.say(m.SourceOf(d.state.sources))
    else:
        life.not_sure(d)
