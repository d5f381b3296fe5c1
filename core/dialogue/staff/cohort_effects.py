"""What should happen because of an organiser's step. `bot.turns.cohorts` applies it and checks again whose
cohort it is.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from core.care import Slot


@dataclass(frozen=True, slots=True)
class StartCohort:
    """Make a cohort; it is shown with its joining link (organiser_messages.CohortMade, JoinLink).

    coach_id: who looks after newcomers, if the organiser is no coach; None for nobody.
    """

    name: str
    starts: date
    weeks: int
    slot: Slot
    counts: str
    coach_id: int | None = None


@dataclass(frozen=True, slots=True)
class MakeJoinLink:
    """Make one more link for members; it is said as organiser_messages.JoinLink."""

    cohort_id: int


@dataclass(frozen=True, slots=True)
class RevokeJoinLinks:
    """No link made so far lets anybody in any more."""

    cohort_id: int


@dataclass(frozen=True, slots=True)
class MakeGroupLink:
    """Make the link that brings the bot into a group chat and ties the two; said as organiser_messages.GroupLink."""

    cohort_id: int


@dataclass(frozen=True, slots=True)
class UntieGroup:
    cohort_id: int


@dataclass(frozen=True, slots=True)
class RemoveMember:
    """The organiser lets a member go; the member is told kindly."""

    cohort_id: int
    client_id: int


@dataclass(frozen=True, slots=True)
class EndCohort:
    """End it now: called off if it has not begun, else closed with a report of what there is."""

    cohort_id: int


CohortEffect = StartCohort | MakeJoinLink | RevokeJoinLinks | MakeGroupLink | UntieGroup | RemoveMember | EndCohort
