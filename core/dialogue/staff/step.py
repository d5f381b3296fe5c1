"""The builder of a coach's or organiser's step; it lives inside one call of `staff.step`."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, date, datetime

from core.dialogue.client.effects import Effect
from core.dialogue.kit.effects import Choice, Rows
from core.dialogue.kit.step import StepBuilder, rows_of
from core.dialogue.staff.effects import StaffEffect
from core.dialogue.staff.facts import CardFact, StaffFacts
from core.dialogue.staff.messages import NotYours
from core.dialogue.staff.names import distinct_names
from core.dialogue.staff.states import StaffAsking, StaffState, same_question


@dataclass(frozen=True, slots=True)
class StaffOutcome:
    state: StaffState
    effects: tuple[Effect | StaffEffect, ...]


class StaffStep(StepBuilder[StaffState, StaffFacts, StaffAsking, Effect | StaffEffect]):
    """One step under construction: the facts, the new state, the effects so far."""

    __slots__ = ("known", "ref", "undoing")

    def __init__(self, state: StaffState, facts: StaffFacts, now: datetime, ref: str = "") -> None:
        """ref: of the message that came in, or of the one whose button was pressed."""
        super().__init__(state, facts, now)
        self.ref = ref
        self.known = facts  # as they were before this step
        self.undoing = False  # what is done undoes something, and is not undone itself

    def finish(self) -> StaffOutcome:
        return StaffOutcome(*self.numbered(same=same_question(self.before.asking, self.asking)))

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
        """A client of this caseload; otherwise replies only that they are not. Nobody else is in the facts."""
        found = next((c for c in self.facts.cards if c.client_id == client_id), None)
        if found is None:
            self.say(NotYours())
        return found

    def client_choices(self, verb: str, more: str = "") -> tuple[tuple[Choice, ...], ...]:
        """A button for each loaded card, distinguished where names are the same. more: of its value, after the
        client."""
        names = distinct_names((c.client_id, c.name, c.profile.birth_year) for c in self.facts.cards)
        return rows_of(
            *(Choice("client", f"{verb}:{client}{more and ':'}{more}", name) for client, name in names.items())
        )


def about(client_id: int) -> Rows:
    """The buttons under news of one client, also used for messages from a client's turn."""
    return ((Choice("write", f"write:{client_id}"), Choice("open_card", f"card:{client_id}")),)


def about_flag(client_id: int, code: str, at: datetime) -> Rows:
    """The buttons under one flag that was reported at once, at an instant."""
    return ((Choice("seen", f"saw:{client_id}:{code}:{stamp(at)}"), *about(client_id)[0]),)


def stamp(at: datetime) -> str:
    """The second of an instant, short enough for a button's data."""
    return format(int(at.timestamp()), "x")


def stamped(text: str) -> datetime | None:
    """The instant of a stamp; None if it is none."""
    return datetime.fromtimestamp(int(text, 16), UTC) if _STAMP.fullmatch(text) else None


def written_at(mark: str) -> datetime | None:
    """The second at which words were sent, from their mark; None if it has none."""
    return stamped(mark.rpartition(".")[2])


_STAMP = re.compile("[0-9a-f]{1,9}")


Handler = Callable[[StaffStep, str], None]
