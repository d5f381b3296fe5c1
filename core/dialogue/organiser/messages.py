"""Messages to an organiser about a cohort, as values. Texts are in bot.rendering.phrases.cohort.

Nothing here can contain a reading: only names, dates, counts, and figures for five or more people.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, time

from core.watching.cohort import Closing, CohortWeek

# --- setting one up ---------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class AskCohortName:
    """first: this organiser's first, so the question is preceded by an explanation of cohorts."""

    first: bool = False


@dataclass(frozen=True, slots=True)
class AskCohortStart:
    name: str


@dataclass(frozen=True, slots=True)
class AskCohortWeeks:
    pass


@dataclass(frozen=True, slots=True)
class AskCohortTime:
    """When do they check in? weekday: that of the start, unless another is typed."""

    weekday: int


@dataclass(frozen=True, slots=True)
class AskCohortCounts:
    pass


@dataclass(frozen=True, slots=True)
class AskCohortMost:
    """How many people may one link let in?"""


@dataclass(frozen=True, slots=True)
class AskCohortCoach:
    """Who coaches newcomers? Asked only of an organiser who is not a coach."""


@dataclass(frozen=True, slots=True)
class CohortUnclear:
    """The answer to a question was not understood. question: as in PlanningCohort."""

    question: str


@dataclass(frozen=True, slots=True)
class CohortMade:
    name: str
    first: date
    last: date
    weeks: int
    weekday: int
    at: time
    counts: str


@dataclass(frozen=True, slots=True)
class JoinLink:
    """The link for members: for many uses, until a date."""

    cohort: str
    link: str
    until: date
    newcomers: bool  # whether it also admits people who are not yet clients
    most: int = 0  # people whom it lets in; 0 in a message from before there was a limit


@dataclass(frozen=True, slots=True)
class JoiningOver:
    """No link can be created: half-time is over."""

    cohort: str
    until: date


@dataclass(frozen=True, slots=True)
class JoinLinksRevoked:
    cohort: str


@dataclass(frozen=True, slots=True)
class NamedAsCoach:
    """To a coach: newcomers of this cohort join your caseload."""

    cohort: str
    by: str


@dataclass(frozen=True, slots=True)
class AskOrganiser:
    """Whom is the invitation to run cohorts for?"""


# --- looking after one ------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class CohortLine:
    """One cohort in a list. stage: "coming", "running", "over", "called_off"."""

    name: str
    starts: date
    last: date
    stage: str


@dataclass(frozen=True, slots=True)
class CohortList:
    rows: tuple[CohortLine, ...]


@dataclass(frozen=True, slots=True)
class CohortSaid:
    """One cohort: told: the weeks published so far; here: current members; gone: how many left; grouped: linked to a
    group chat; people: how many the total of the told weeks is about."""

    line: CohortLine
    weeks: int
    weekday: int
    at: time
    counts: str
    here: int
    gone: int
    grouped: bool
    told: tuple[CohortWeek, ...] = ()
    people: int = 0


@dataclass(frozen=True, slots=True)
class CohortNotYours:
    """A cohort that is not this organiser's, or a member who is not in it; reveals nothing more."""


@dataclass(frozen=True, slots=True)
class CohortPeople:
    """Who takes part, by name: name, since when, until when. Never in any other order. waiting: whose coach was asked
    and has not answered."""

    cohort: str
    people: tuple[tuple[str, date, date | None], ...]
    page: int
    pages: int
    waiting: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class SomebodyJoined:
    """To the organiser, for everybody who joins. here: how many take part now.  coach: whose yes is waited for, "" for
    nobody's."""

    cohort: str
    name: str
    here: int
    coach: str


@dataclass(frozen=True, slots=True)
class CoachSaidNo:
    """To the organiser: the coach of somebody who joined would rather not have them in it."""

    cohort: str
    name: str


@dataclass(frozen=True, slots=True)
class CountsInCohort:
    """To the coach who said yes."""

    cohort: str
    name: str


@dataclass(frozen=True, slots=True)
class RemoveSure:
    cohort: str
    name: str


@dataclass(frozen=True, slots=True)
class MemberRemoved:
    cohort: str
    name: str


@dataclass(frozen=True, slots=True)
class EndCohortSure:
    """begun: a report is made; else it is cancelled."""

    cohort: str
    begun: bool


@dataclass(frozen=True, slots=True)
class CohortCalledOff:
    cohort: str


# --- the group chat ---------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class GroupLink:
    """A link that adds the bot to a group chat. It works once, and only for the organiser."""

    cohort: str
    link: str
    until: date


@dataclass(frozen=True, slots=True)
class GroupIsTied:
    cohort: str


@dataclass(frozen=True, slots=True)
class GroupTied:
    """From now on the group chat gets the cohort's news."""

    cohort: str


@dataclass(frozen=True, slots=True)
class GroupUntied:
    cohort: str


@dataclass(frozen=True, slots=True)
class GroupLost:
    """Somebody removed the bot from the group chat, or the chat is gone."""

    cohort: str


@dataclass(frozen=True, slots=True)
class NothingToTie:
    """/cohort bind, with no cohort to link."""


@dataclass(frozen=True, slots=True)
class TieWhich:
    """/cohort bind, and several could be meant; buttons name them."""


# --- the end ----------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class ClosingSaid:
    report: Closing


@dataclass(frozen=True, slots=True)
class ClosingPicture:
    report: Closing
    stands_alone: bool = True


@dataclass(frozen=True, slots=True)
class ClosingFile:
    """kind: "page", "pdf" or "csv"."""

    report: Closing
    kind: str
    stands_alone: bool = True
