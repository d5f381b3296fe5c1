"""/start: a link was opened, or Start was pressed again; and messages from clients who have left."""

from __future__ import annotations

from core.care import Status
from core.dialogue.client import enrolment, help_and_menu, leaving, needed, settings
from core.dialogue.client import messages as m
from core.dialogue.client.states import Enrolling, Setting
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice
from core.dialogue.kit.events import Command
from core.dialogue.kit.messages import Stranger
from core.language import Intent
from core.language.intents import intent_of


def start(d: ClientStep, token: str) -> None:
    """A link was opened, or somebody pressed Start again."""
    if d.facts.invitation is not None:
        enrolment.open_invitation(d, Command(d.now, "start", token))
    elif token:
        d.say(Stranger())
    elif not d.facts.consented:
        enrolment.ask_consent(d, d.facts.name, d.facts.coach_name)
    elif isinstance(d.asking, Enrolling):
        needed.say_question(d, d.asking)
    elif d.facts.status is Status.LEFT:
        after_leaving(d, "")
    else:
        help_and_menu.help_(d)


def after_leaving(d: ClientStep, text: str) -> None:
    """A client who left can still get or erase their data, or come back through the coach."""
    match intent_of(text, d.words):
        case Intent.MY_DATA:
            leaving.my_data(d)
        case Intent.FORGET:
            settings.change(d, "forget")
        case Intent.YES if isinstance(d.asking, Setting) and d.asking.what == "forget":
            leaving.forget(d, True)
        case _:
            d.say(m.HasLeft(d.facts.coach_name), (Choice("my_data", "set:my_data"), Choice("forget", "set:forget")))
