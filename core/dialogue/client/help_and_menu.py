"""Help: what can be done here, on request or if a message is not understood."""

from __future__ import annotations

from core.dialogue.client import messages as m
from core.dialogue.client.states import Awaiting
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice


def waiting(d: ClientStep) -> str:
    return d.asking.measure if isinstance(d.asking, Awaiting) else ""


def menu(d: ClientStep) -> tuple[tuple[Choice, ...], ...]:
    return (
        (Choice("today", "set:today"), Choice("progress", "set:progress")),
        (Choice("settings", "set:settings"), Choice("word_to_coach", "word", d.facts.coach_name)),
    )


def help_(d: ClientStep) -> None:
    """Show help. An open question stays open and is repeated."""
    d.say(m.Help(d.facts.coach_name, d.emergency_number, waiting(d)), *menu(d))


def not_sure(d: ClientStep) -> None:
    d.say(m.NotSure(waiting(d)), *menu(d))
