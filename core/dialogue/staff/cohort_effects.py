"""Effects of an organiser's step. `bot.turns.cohorts` applies them and checks ownership again."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from core.care import Slot


@dataclass(frozen=True, slots=True)
class StartCohort:
    """Create a cohort and show it with its joining link (organiser.messages.CohortMade, JoinLink).

    most: people whom one link lets in.  coach_id: the coach of newcomers, if the organiser is not a coach; None for
    nobody.
    """

    name: str
    starts: date
    weeks: int
    slot: Slot
    counts: str
    most: int
    coach_id: int | None = None


@dataclass(frozen=True, slots=True)
class MakeJoinLink:
    """Create another link for members, sent as organiser.messages.JoinLink."""

    cohort_id: int


@dataclass(frozen=True, slots=True)
class RevokeJoinLinks:
    """Revoke every link made so far."""

    cohort_id: int


@dataclass(frozen=True, slots=True)
class MakeGroupLink:
    """Create the link that adds the bot to a group chat and links the two; sent as organiser.messages.GroupLink."""

    cohort_id: int


@dataclass(frozen=True, slots=True)
class UntieGroup:
    cohort_id: int


@dataclass(frozen=True, slots=True)
class RemoveMember:
    """The organiser removes a member, who is told kindly."""

    cohort_id: int
    client_id: int


@dataclass(frozen=True, slots=True)
class EndCohort:
    """End it now: cancelled if it has not started, else closed with a report of what there is."""

    cohort_id: int


CohortEffect = StartCohort | MakeJoinLink | RevokeJoinLinks | MakeGroupLink | UntieGroup | RemoveMember | EndCohort
