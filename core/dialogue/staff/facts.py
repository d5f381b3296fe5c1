"""Facts of a coach's or organiser's conversation: a few by default, the rest loaded when an event needs them.

`core.dialogue.engines.staff.needs` names what to load; `bot` loads it only through `bot.store.caseload`, so a client
outside this caseload does not exist here.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, date, datetime, tzinfo

from core.care import Plan, Slot, Units
from core.client import Profile
from core.dialogue.client.facts import InvitationFact, always_utc, no_label, no_zones
from core.judging.readiness import UNASKED, Readiness
from core.reading import Reading
from core.watching.cohort import Closing, CohortWeek, Terms
from core.watching.digest import EMERGENCY_WAITS, CaseRow, Digest, FlagFact, OpenInvitation, Size
from core.watching.practice import PersonFact, Quarter


@dataclass(frozen=True, slots=True)
class WordFact:
    """One message of the thread between a coach and a client."""

    at: datetime
    from_client: bool
    text: str


@dataclass(frozen=True, slots=True)
class CardFact:
    """Everything a coach may see of one client. history as in ClientFacts; flags open ones; past: flags that are over,
    the last to end first; thread newest last; for_coach: whom this coach stands in for, "" if the client is theirs.
    name: as the coach reads it, of two of one name with something beside it; own_name: what they call themselves, if
    the coach calls them otherwise."""

    client_id: int
    name: str
    status: str
    profile: Profile
    plan: Plan
    slot: Slot | None
    zone: tzinfo
    units: Units
    history: tuple[Reading, ...]
    flags: tuple[FlagFact, ...]
    note: str = ""
    thread: tuple[WordFact, ...] = ()
    answered: date | None = None
    missed: int = 0
    paused_until: date | None = None
    reachable: bool = True
    past: tuple[FlagFact, ...] = ()
    for_coach: str = ""
    own_name: str = ""
    readiness: Readiness = UNASKED


@dataclass(frozen=True, slots=True)
class DeputyFact:
    """Who stands in for a coach. begins, ends: local dates on which they do for everything; None and None: always, for
    what is urgent and not acknowledged."""

    coach_id: int
    name: str
    begins: date | None = None
    ends: date | None = None


@dataclass(frozen=True, slots=True)
class TemplateFact:
    """A plan that a coach has saved under a name."""

    name: str
    plan: Plan


@dataclass(frozen=True, slots=True)
class MemberFact:
    """A cohort member as an organiser may see them: a name and whether they take part, never a reading. waits: their
    coach was asked and has not answered."""

    client_id: int
    name: str
    joined: date
    left: date | None = None
    waits: bool = False


@dataclass(frozen=True, slots=True)
class CohortFact:
    """A cohort this person runs.

    members: everybody who ever took part.  grouped: linked to a group chat. weeks: pooled figures as published. closed:
    over or cancelled; closing: its report, None if cancelled.  people: how many the total of those weeks is about.
    """

    cohort_id: int
    name: str
    terms: Terms
    zone: tzinfo
    members: tuple[MemberFact, ...] = ()
    grouped: bool = False
    weeks: tuple[CohortWeek, ...] = ()
    closed: bool = False
    closing: Closing | None = None
    people: int = 0


@dataclass(frozen=True, slots=True)
class QuarterFact:
    """A quarter that is over, and everybody who was in this caseload in it."""

    quarter: Quarter
    people: tuple[PersonFact, ...]


def no_size(made: Digest) -> Size:
    return Size(0, 0)


@dataclass(frozen=True, slots=True)
class StaffFacts:
    """A coach, an organiser, or both.

    coach_id, organiser_id: None for a role this person does not have. slot: of the digest. rows, cards, cohorts,
    templates, coaches: as requested by `needs`; cards are the clients that a name or id matched. coaches: other coaches
    a client may be handed to, as (id, name).  mentioned: clients whom a text names, likewise.  writing_to: what the
    client is called to whom the next words go.  replied: the client whom the message is about that this one answers, 0
    for nobody; the cards tell whether they are still in this caseload.  waiting: links that nobody has opened, loaded
    with rows.  size: of a digest as rendered for this person, provided by bot like the look-ups of ClientFacts.
    """

    person_id: int
    name: str
    language: str = "en"
    coach_id: int | None = None
    organiser_id: int | None = None
    slot: Slot | None = None
    zone: tzinfo = UTC
    zone_name: str = "UTC"
    night: bool = True  # whether same-day news may come at night
    deputy: DeputyFact | None = None
    wait: int = EMERGENCY_WAITS  # minutes an emergency waits for this coach before it goes to the deputy
    away: str = ""  # the coach whose rows these are, if this one stands in for them
    invitation: InvitationFact | None = None
    rows: tuple[CaseRow, ...] = ()
    waiting: tuple[OpenInvitation, ...] = ()
    cards: tuple[CardFact, ...] = ()
    cohorts: tuple[CohortFact, ...] = ()
    templates: tuple[TemplateFact, ...] = ()
    coaches: tuple[tuple[int, str], ...] = ()
    mentioned: tuple[tuple[int, str], ...] = ()
    writing_to: str = ""
    replied: int = 0
    quarter: QuarterFact | None = None
    find_zones: Callable[[str], tuple[str, ...]] = no_zones
    zone_of: Callable[[str], tzinfo] = always_utc
    label: Callable[[str, str], str] = no_label
    size: Callable[[Digest], Size] = no_size

    def today(self, now: datetime) -> date:
        """The local date of this person."""
        return now.astimezone(self.zone).date()


@dataclass(frozen=True, slots=True)
class Caseload:
    """Need: every row of this coach's caseload."""


@dataclass(frozen=True, slots=True)
class CaseloadOf:
    """Need: every row of the caseload of a coach whom this one stands in for today."""

    coach_id: int


@dataclass(frozen=True, slots=True)
class CardOf:
    """Need: the card of a client, if in this caseload."""

    client_id: int


@dataclass(frozen=True, slots=True)
class CardsNamed:
    """Need: cards of the clients that a coach's words may mean (`core.dialogue.staff.names.meant`)."""

    words: str
    whole: bool = False  # the words are only a name
    anywhere: bool = False  # or else whoever they name somewhere


@dataclass(frozen=True, slots=True)
class MentionedIn:
    """Need: the clients whom a text names somewhere, and nothing else of them."""

    text: str


@dataclass(frozen=True, slots=True)
class WrittenTo:
    """Need: what the client is called to whom the next words go."""

    client_id: int


@dataclass(frozen=True, slots=True)
class RepliedTo:
    """Need: the client whom an earlier message of this chat is about, and their card if they are in this caseload."""

    ref: str


@dataclass(frozen=True, slots=True)
class CardsFlagged:
    """Need: cards of the clients with an open flag, for the sheet."""


@dataclass(frozen=True, slots=True)
class CardsOfAll:
    """Need: the card of everybody in the caseload, with note and newest messages, for a page."""


@dataclass(frozen=True, slots=True)
class QuarterMeant:
    """Need: the quarter that a coach's words mean, if it is over, with the whole caseload in it."""

    words: str


@dataclass(frozen=True, slots=True)
class Templates:
    """Need: this coach's saved plans."""


@dataclass(frozen=True, slots=True)
class OtherCoaches:
    """Need: coaches a client may be handed to."""


@dataclass(frozen=True, slots=True)
class Cohorts:
    """Need: the cohorts this organiser runs, newest first."""


Need = (
    Caseload
    | CaseloadOf
    | CardOf
    | CardsNamed
    | MentionedIn
    | WrittenTo
    | RepliedTo
    | CardsFlagged
    | CardsOfAll
    | QuarterMeant
    | Templates
    | OtherCoaches
    | Cohorts
)
