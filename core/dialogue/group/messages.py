"""What members of a cohort and its group chat hear, as values. Words are in bot.rendering.phrases.cohort_members.

What a group hears holds no name and no reading: only dates, counts, and figures of five people or more.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from core.watching.cohort import Closing, CohortWeek

# --- members ----------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class CohortWelcome:
    """The link was opened by somebody we do not know: what they are asked into, before they are asked for consent.

    coached: whoever runs it would be their coach as well, and so sees their answers.
    """

    cohort: str
    by: str
    starts: date
    coached: bool = False


@dataclass(frozen=True, slots=True)
class CohortForClients:
    """A stranger opened the link of a cohort that nobody looks after newcomers in."""

    cohort: str
    by: str


@dataclass(frozen=True, slots=True)
class CohortAsks:
    """What is counted is asked every week from now on. measure: its key."""

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
    """They left by themselves: kindly, and nothing else changes."""

    cohort: str


@dataclass(frozen=True, slots=True)
class TakenOutOfCohort:
    """The organiser took them out: kindly, and nothing else changes."""

    cohort: str
    by: str


@dataclass(frozen=True, slots=True)
class CohortOff:
    """It will not take place."""

    cohort: str


@dataclass(frozen=True, slots=True)
class CohortOver:
    """It is over: one's own check-ins, kept of asked, and nobody else's."""

    cohort: str
    kept: int
    asked: int


@dataclass(frozen=True, slots=True)
class NumberInGroup:
    """A number of theirs was typed into a group chat: it is not kept; here is where it can be sent."""


@dataclass(frozen=True, slots=True)
class NumberInGroupOfStaff:
    """The same for a coach or an organiser."""


# --- the group chat ---------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class GroupHello:
    """The group chat is tied to a cohort: what it will hear, and what it never will."""

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
    """Pooled figures of one check-in, of `weeks`. together: total of what was told so far, None before there is any."""

    week: CohortWeek
    weeks: int
    counts: str
    together: int | None


@dataclass(frozen=True, slots=True)
class GroupMilestone:
    """A round number that all passed together."""

    counts: str
    reached: int


@dataclass(frozen=True, slots=True)
class GroupClosing:
    report: Closing
