"""The desk a coach's or organiser's step is worked out on; it lives inside one call of `staff.step`."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import date, datetime
from typing import Any

from core.dialogue.effects import Choice, Effect, Rows, Say
from core.dialogue.outcome import merged, rows_of
from core.dialogue.staff_effects import StaffEffect
from core.dialogue.staff_facts import CardFact, StaffFacts
from core.dialogue.staff_messages import NotYours
from core.dialogue.staff_names import told_apart
from core.dialogue.staff_states import StaffAsking, StaffState
from core.language import Words, words_for

__all__ = ["Choice", "Desk", "Rows", "StaffOutcome", "about", "rows_of"]


@dataclass(frozen=True, slots=True)
class StaffOutcome:
    state: StaffState
    effects: tuple[Effect | StaffEffect, ...]


class Desk:
    """One step in the making: the facts at hand, the state as it becomes, the effects so far."""

    __slots__ = ("effects", "facts", "now", "state", "words")

    def __init__(self, state: StaffState, facts: StaffFacts, now: datetime) -> None:
        self.state = state
        self.facts = facts
        self.now = now
        self.words: Words = words_for(facts.language)
        self.effects: list[Any] = []

    def say(self, message: object, *rows: tuple[Choice, ...], occasion: str | None = None) -> None:
        self.effects.append(Say(message, rows, occasion=occasion))

    def do(self, *effects: Effect | StaffEffect) -> None:
        self.effects.extend(effects)

    def become(self, **fields: Any) -> None:
        self.state = replace(self.state, **fields)

    def ask(self, asking: StaffAsking | None) -> None:
        self.state = replace(self.state, asking=asking)

    def finish(self) -> StaffOutcome:
        return StaffOutcome(self.state, tuple(merged(self.effects)))

    @property
    def asking(self) -> StaffAsking | None:
        return self.state.asking

    @property
    def today(self) -> date:
        return self.now.astimezone(self.facts.zone).date()

    @property
    def coach(self) -> bool:
        return self.facts.coach_id is not None

    @property
    def organiser(self) -> bool:
        return self.facts.organiser_id is not None

    def card(self, client_id: int) -> CardFact | None:
        """A client of this caseload; anybody else is not in the facts at all. Says so, and no more, if not."""
        found = next((c for c in self.facts.cards if c.client_id == client_id), None)
        if found is None:
            self.say(NotYours())
        return found

    def client_choices(self, verb: str) -> tuple[tuple[Choice, ...], ...]:
        """A button for each card at hand, told apart where names are the same."""
        names = told_apart((c.client_id, c.name, c.profile.birth_year) for c in self.facts.cards)
        return rows_of(*(Choice("client", f"{verb}:{client}", name) for client, name in names.items()))


def about(client_id: int) -> Rows:
    """The buttons under news of one client: what a client's turn tells the coach carries them as well."""
    return ((Choice("write", f"write:{client_id}"), Choice("open_card", f"card:{client_id}")),)


def about_flag(client_id: int) -> Rows:
    """The buttons under one flag that was told at once."""
    return ((Choice("seen", f"saw:{client_id}"), *about(client_id)[0]),)


Handler = Callable[[Desk, str], None]
