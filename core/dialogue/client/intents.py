"""Wishes in words: help, skip, later, stop, and what else somebody may want who typed no reading."""

from __future__ import annotations

from core.dialogue.client import (
    check_in,
    coach_thread,
    corrections,
    help_and_menu,
    leaving,
    pausing,
    progress_and_goals,
    safety,
    settings,
)
from core.dialogue.client import messages as m
from core.dialogue.client.states import Awaiting, Setting
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice
from core.language import Intent
from core.language.intents import intent
from core.measures import MEASURES


def wish_for(d: ClientStep, wish: Intent, text: str) -> None:
    match wish:
        case Intent.HELP | Intent.WHY | Intent.DONT_KNOW if isinstance(d.asking, Awaiting) and wish is not Intent.HELP:
            card(d, d.asking.measure)
        case Intent.HELP | Intent.WHY | Intent.DONT_KNOW:
            help_and_menu.help_(d)
        case Intent.SKIP | Intent.NOT_SAY:
            check_in.skip(d)
        case Intent.NO if isinstance(d.asking, Awaiting):
            check_in.skip(d)
        case Intent.LATER:
            pausing.later(d)
        case Intent.STOP:
            pausing.stop(d)
        case Intent.UNDO:
            corrections.undo(d)
        case Intent.COACH:
            coach_thread.word(d)
        case Intent.PAUSE:
            pausing.pause(d, text)
        case Intent.RESUME:
            pausing.resume(d)
        case Intent.TODAY | Intent.RECORD | Intent.START | Intent.CONTINUE | Intent.REPEAT:
            check_in.today(d)
        case Intent.PROGRESS:
            progress_and_goals.progress(d)
        case Intent.GOAL:
            progress_and_goals.goal(d)
        case Intent.SETTINGS:
            settings.settings(d)
        case Intent.SOURCE:
            sources(d)
        case Intent.THANKS | Intent.GREETING | Intent.WELL:
            courtesy(d, wish)
        case Intent.NOT_WELL:
            safety.unwell(d)
        case Intent.MY_DATA:
            leaving.my_data(d)
        case Intent.FORGET:
            settings.change(d, "forget")
        case Intent.LEAVE:
            settings.change(d, "leave")
        case Intent.LANGUAGE | Intent.UNITS | Intent.ZONE | Intent.SLOT:
            settings.change(d, wish.value)
        case _:
            help_and_menu.not_sure(d)


def courtesy(d: ClientStep, wish: Intent) -> None:
    """A thank-you or a hello: answered in kind; an open question is put again."""
    said = m.Hello() if wish is Intent.GREETING else m.YouAreWelcome()
    d.say(said, *(() if help_and_menu.waiting(d) else help_and_menu.menu(d)))
    if isinstance(d.asking, Awaiting):
        check_in.ask(d, MEASURES[d.asking.measure])


def after_leaving(d: ClientStep, text: str) -> None:
    """Somebody who left may still have their data, be forgotten, or come back through the coach."""
    match intent(text, d.words):
        case Intent.MY_DATA:
            leaving.my_data(d)
        case Intent.FORGET:
            settings.change(d, "forget")
        case Intent.YES if isinstance(d.asking, Setting) and d.asking.what == "forget":
            leaving.forget(d, True)
        case _:
            d.say(m.HasLeft(d.facts.coach_name), (Choice("my_data", "set:my_data"), Choice("forget", "set:forget")))


def card(d: ClientStep, key: str, *, ruler: bool = False) -> None:
    """How to take a measure; the question stays open."""
    measure = MEASURES.get(key)
    if measure is None or not measure.protocol.technique:
        help_and_menu.help_(d)
        return
    girth = measure.key in ("waist", "hip")
    extra = ((Choice("ruler", f"ruler:{key}"),),) if girth and not ruler else ()
    rows = check_in.buttons(d, measure)[-1:] if isinstance(d.asking, Awaiting) else ()
    timers = ((Choice("time_it", f"time:{key}"),),) if measure.protocol.timers and rows else ()
    d.say(m.Card(key, ruler), *extra, *timers, *rows)


def sources(d: ClientStep) -> None:
    if d.state.sources:
        d.say(m.SourceOf(d.state.sources))
    else:
        help_and_menu.not_sure(d)
