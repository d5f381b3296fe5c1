"""Intents expressed in words: help, skip, later, stop, and anything else that is not a reading."""

from __future__ import annotations

from core.dialogue.client import check_in, coach_thread, help_and_menu, needed, pausing, safety, settings
from core.dialogue.client import messages as m
from core.dialogue.client.commands import COMMANDS
from core.dialogue.client.states import Awaiting, Enrolling
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.commands import Argument
from core.dialogue.kit.effects import Choice
from core.language import Intent
from core.language.intents import in_passing
from core.language.spoken import opens_a_question
from core.measures import MEASURES
from core.measures.measure import BodySize, MeasureKind
from core.understanding.answers_in_text import names_in


def act_on_intent(d: ClientStep, intent: Intent, text: str) -> None:
    """Act on an intent: as an answer to the open question, else as the command it stands for, else on its own."""
    match intent:
        case Intent.HELP if (named := _named(d, text)) is not None:  # "how do I measure my waist?"
            card(d, named)
        case Intent.HELP if isinstance(d.asking, Awaiting) and opens_a_question(text, d.words):
            card(d, d.asking.measure)  # "how is that done?" asks for the one that is open
        case Intent.WHY | Intent.DONT_KNOW if isinstance(d.asking, Awaiting):
            card(d, d.asking.measure)
        case Intent.NO if isinstance(d.asking, Awaiting):
            check_in.skip(d)
        case Intent.COACH if d.facts.coach_name and in_passing(text, d.words):
            coach_thread.offer(d, text, "for_coach")
        case _ if (row := COMMANDS.meant_by(intent)) is not None:
            row.act(d, text if row.argument is Argument.SPOKEN else "")
        case Intent.SKIP | Intent.NOT_SAY:
            check_in.skip(d)
        case Intent.LATER:
            pausing.later(d)
        case Intent.STOP:
            pausing.stop(d)
        case Intent.RESUME:
            pausing.resume(d)
        case Intent.SOURCE:
            sources(d)
        case Intent.YES | Intent.SAME | Intent.DONE if d.asking is None:
            d.say(m.Plainly("all_right", d.facts.coach_name))
        case Intent.THANKS | Intent.GREETING | Intent.WELL:
            courtesy(d, intent)
        case Intent.NOT_WELL:
            safety.unwell(d)
        case Intent.LEAVE | Intent.LANGUAGE | Intent.UNITS | Intent.ZONE | Intent.SLOT:
            settings.change(d, intent.value)
        case _:
            help_and_menu.not_sure(d)


def _named(d: ClientStep, text: str) -> str | None:
    """The measure a text names, of the plan's first; None if it names none that has to be shown."""
    known = names_in(text, d.words)
    keys = (key for key in (*d.facts.plan.measures, *MEASURES) if key in known and key in MEASURES)
    return next((key for key in keys if MEASURES[key].kind in (MeasureKind.BODY, MeasureKind.FUNCTION)), None)


def courtesy(d: ClientStep, intent: Intent) -> None:
    """A thank-you or a hello: answered in kind; an open question is repeated."""
    glad = m.Plainly("glad", d.facts.coach_name)
    said = m.Hello() if intent is Intent.GREETING else glad if intent is Intent.WELL else m.YouAreWelcome()
    d.say(said, *(() if help_and_menu.waiting(d) else help_and_menu.menu(d)))
    if isinstance(d.asking, Awaiting):
        check_in.ask(d, MEASURES[d.asking.measure])
    elif isinstance(d.asking, Enrolling):
        needed.say_question(d, d.asking)


def card(d: ClientStep, key: str, *, ruler: bool = False) -> None:
    """How to take a measure; the question stays open."""
    measure = MEASURES.get(key)
    if measure is None or not measure.protocol.technique:
        help_and_menu.help_(d)
        return
    taped = measure.body is BodySize.GIRTH
    extra = ((Choice("ruler", f"ruler:{key}"),),) if taped and not ruler else ()
    rows = check_in.buttons(d, measure)[-1:] if isinstance(d.asking, Awaiting) else ()
    asked = isinstance(d.asking, Awaiting) and d.asking.measure == key
    timers = ((Choice("time_it", f"time:{key}"),),) if measure.protocol.timers and asked else ()
    d.say(m.Card(key, ruler), *extra, *timers, *rows)


def sources(d: ClientStep) -> None:
    if d.state.sources:
        d.say(m.SourceOf(d.state.sources))
    else:
        help_and_menu.not_sure(d)
