"""Messages to members of a cohort and to its group chat, as values. Texts are in bot.rendering.phrases.cohort_members.

Messages to a group contain no name and no reading: only dates, counts, and figures for five or more people.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from core.watching.cohort import Closing, CohortWeek, Sum

# --- members ----------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class CohortWelcome:
    """A stranger opened the link: what they are invited to, before they are asked for consent.

    coached: the organiser would also be their coach, and so see their answers.
    """

    cohort: str
    by: str
    starts: date
    coached: bool = False


@dataclass(frozen=True, slots=True)
class CohortForClients:
    """A stranger opened the link of a cohort without a coach for newcomers."""

    cohort: str
    by: str


@dataclass(frozen=True, slots=True)
class CohortAsks:
    """The pooled measure is asked every week from now on. measure: its key."""

    measure: str


@dataclass(frozen=True, slots=True)
class AlreadyInCohort:
    cohort: str


@dataclass(frozen=True, slots=True)
class MyCohorts:
    """(name, first check-in, last check-in)"""

    cohorts: tuple[tuple[str, date, date], ...]


@dataclass(frozen=True, slots=True)
class LeaveCohortSure:
    cohort: str


@dataclass(frozen=True, slots=True)
class LeftCohort:
    """They left by themselves; nothing else changes."""

    cohort: str


@dataclass(frozen=True, slots=True)
class TakenOutOfCohort:
    """The organiser removed them; nothing else changes."""

    cohort: str
    by: str


@dataclass(frozen=True, slots=True)
class NotInCohort:
    """Their coach would rather not have them in it; nothing else changes."""

    cohort: str


@dataclass(frozen=True, slots=True)
class CohortOff:
    """It will not take place."""

    cohort: str


@dataclass(frozen=True, slots=True)
class CohortOver:
    """It is over: the member's own check-ins, kept and asked, and nobody else's."""

    cohort: str
    kept: int
    asked: int


@dataclass(frozen=True, slots=True)
class NumberInGroup:
    """They typed a number into a group chat: it is not stored; where to send it instead."""


@dataclass(frozen=True, slots=True)
class NumberInGroupOfStaff:
    """The same for a coach or an organiser."""


# --- the group chat ---------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class GroupHello:
    """The group chat is linked to a cohort: what it will receive, and what it never will."""

    cohort: str
    first: date
    weeks: int


@dataclass(frozen=True, slots=True)
class GroupGoodbye:
    cohort: str


@dataclass(frozen=True, slots=True)
class GroupStarts:
    cohort: str
    weeks: int


@dataclass(frozen=True, slots=True)
class GroupWeek:
    """Pooled figures of one check-in, of `weeks`, as a group may hear them. together: the total so far, or None."""

    week: CohortWeek
    weeks: int
    counts: str
    together: Sum | None


@dataclass(frozen=True, slots=True)
class GroupMilestone:
    """A round number that the group total has passed."""

    counts: str
    reached: int


@dataclass(frozen=True, slots=True)
class GroupClosing:
    report: Closing
