"""What the store knew about a client when an event came in. Values only; loaded by `bot.turn` before every step."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, time, tzinfo
from enum import StrEnum

from core.client import Profile
from core.measures.shape import Better
from core.quantity import Unit
from core.reading import Reading


class Status(StrEnum):
    ENROLLING = "enrolling"
    ACTIVE = "active"
    PAUSED = "paused"
    LEFT = "left"


class Numbers(StrEnum):
    """Where a client wants their own numbers to go."""

    SHOWN = "shown"
    COACH_ONLY = "coach_only"


@dataclass(frozen=True, slots=True)
class Units:
    """How a client likes to read and write body mass and length."""

    mass: Unit = Unit.KILOGRAM  # or POUND; STONE means stones and pounds
    length: Unit = Unit.CENTIMETRE  # or INCH (stature then in feet and inches)


@dataclass(frozen=True, slots=True)
class Slot:
    """A client's weekday (Monday 0), wall time and zone. zone_name is the tz database key."""

    weekday: int
    at: time
    zone_name: str


@dataclass(frozen=True, slots=True)
class Plan:
    """What a client is asked, and how often.

    measures: keys, in any order; energy is asked at every check-in whether or not it is named.
    retest_days: 28-42; per_measure overrides it by key.
    directed_weighing: a clinician asked for frequent weighing; the guard is off.
    loss_is_planned: losing weight is a goal agreed with the coach.
    own_question: the client's own 0-10 question; own_better says which way is better.
    baseline_since: a new programme starts here; earlier readings are history, not baseline.
    """

    measures: tuple[str, ...] = ("weight", "waist", "hip", "resting_heart_rate", "sessions_done", "activity_minutes")
    retest_days: int = 28
    per_measure: tuple[tuple[str, int], ...] = ()
    directed_weighing: bool = False
    loss_is_planned: bool = False
    numbers: Numbers = Numbers.SHOWN
    own_question: str = ""
    own_better: Better = Better.HIGHER
    baseline_since: datetime | None = None
    cleared: tuple[str, ...] = ()  # tests a clinician has agreed to, in spite of a caution
    pressure_body: str = "nice"  # which blood-pressure limits: "nice", "aha", "esc"

    def interval(self, measure: str) -> int:
        """Days between retests of `measure`."""
        return dict(self.per_measure).get(measure, self.retest_days)


@dataclass(frozen=True, slots=True)
class GoalFact:
    measure: str
    target: str  # a decimal in the measure's unit, as text
    by: date
    set_at: datetime


@dataclass(frozen=True, slots=True)
class OpenFlag:
    code: str
    measure: str | None
    since: datetime


@dataclass(frozen=True, slots=True)
class Membership:
    """A cohort that a client is in, or is asked into. first, last: its check-ins. counts: as in core.cohort."""

    cohort_id: int
    name: str
    first: date
    last: date
    counts: str


@dataclass(frozen=True, slots=True)
class InvitationFact:
    """An invitation whose token somebody just opened, found and still good."""

    kind: str  # "client", "coach", "organiser", "cohort"
    by_name: str  # who invites
    for_name: str = ""  # the name the coach wrote down
    again: bool = False  # this person was here before
    cohort: Membership | None = None
    coach_name: str = ""  # of a cohort: who looks after somebody new, "" for nobody


NOBODY = Profile()


def no_zones(text: str) -> tuple[str, ...]:
    return ()


def no_label(key: str, argument: str) -> str:
    return ""


def always_utc(zone_name: str) -> tzinfo:
    return UTC


@dataclass(frozen=True, slots=True)
class ClientFacts:
    """One client.

    history: readings that matter now, oldest first: baselines, everything of the last twelve weeks, side notes too.
    said: keys of encouragements and openings used in the last eight weeks.
    missed: slots in a row without an answer.  answered: the last slot date that got any answer.
    zone: made by bot (that reads files).  Pure look-ups lent by bot, since they need its data: find_zones (zone
    names for a city as people write it), zone_of (a zone from its name), label (the words on a button in the
    client's language, so that they can be typed as well).
    invitation: set when this event opens one.
    """

    client_id: int
    name: str
    coach_name: str
    language: str = "en"
    country: str = ""  # two letters, from the zone; for emergency numbers
    status: Status = Status.ACTIVE
    consented: bool = True
    units: Units = Units()
    slot: Slot | None = None
    zone: tzinfo = UTC
    profile: Profile = NOBODY
    plan: Plan = Plan()
    paused_until: date | None = None
    history: tuple[Reading, ...] = ()
    flags: tuple[OpenFlag, ...] = ()
    said: frozenset[str] = field(default_factory=frozenset)
    goals: tuple[GoalFact, ...] = ()
    missed: int = 0
    answered: date | None = None
    cohorts: tuple[Membership, ...] = ()
    invitation: InvitationFact | None = None
    find_zones: Callable[[str], tuple[str, ...]] = no_zones
    zone_of: Callable[[str], tzinfo] = always_utc
    label: Callable[[str, str], str] = no_label

    def of(self, measure: str) -> tuple[Reading, ...]:
        """This client's readings of one measure that count, oldest first."""
        return tuple([r for r in self.history if r.measure == measure and r.counts])

    def local(self, at: datetime) -> datetime:
        """`at` on the client's own wall clock."""
        return at.astimezone(self.zone)


@dataclass(frozen=True, slots=True)
class StrangerFacts:
    """A chat we know nothing of; invitation is set when this event opens one that is still good."""

    language: str = "en"
    name: str = ""
    invitation: InvitationFact | None = None
