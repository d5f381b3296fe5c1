"""What the store knew about a client when an event arrived. Values only, loaded by `bot.turns.turn`."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, tzinfo

from core.care import METRIC, USUAL_PLAN, Plan, Slot, Status, Units
from core.client import Profile
from core.judging.readiness import UNASKED, Readiness
from core.reading import Reading


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
    """A cohort that a client is in, or is invited to. first, last: its check-ins. counts: see core.watching.cohort."""

    cohort_id: int
    name: str
    first: date
    last: date
    counts: str


@dataclass(frozen=True, slots=True)
class InvitationFact:
    """A valid invitation whose token somebody just opened."""

    kind: str  # "client", "coach", "organiser", "cohort"
    by_name: str  # who invites
    for_name: str = ""  # the name the coach wrote down
    again: bool = False  # this person was here before
    cohort: Membership | None = None
    coach_name: str = ""  # for a cohort: the coach of newcomers, "" for nobody


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

    history: relevant readings, oldest first: baselines and everything of the last twelve weeks, including side notes.
    said: keys of encouragements and openings used in the last eight weeks. missed: consecutive slots without an
    answer. answered: the last slot date with any answer. zone: created by bot, because that reads files. Pure
    look-ups provided by bot, since they need its data: find_zones (zone names for a city as people write it),
    zone_of (a zone from its name), label (a button's text in the client's language, so that it can be typed too).
    invitation: set when this event opens one. check_ins: local dates of those asked, and whether each was answered;
    loaded, with all readings there are, only when a programme is about to end. coach_reachable: whether a message
    to the coach would arrive; False if there is no coach. coach_nights: the zone by whose nights the coach is left
    alone unless it cannot wait; None if they are told at any hour, or there is no coach. coach_zone: where the coach
    lives, as a zone name; most clients live there too. readiness: what they said
    before exercise. deputy: who stands in for the coach and can be reached, as (id, name), loaded if they have written.
    """

    client_id: int
    name: str
    coach_name: str
    coach_reachable: bool
    coach_nights: tzinfo | None
    coach_zone: str = ""
    language: str = "en"
    deputy: tuple[int, str] | None = None
    country: str = ""  # two letters, from the zone; for emergency numbers
    status: Status = Status.ACTIVE
    consented: bool = True
    units: Units = METRIC
    slot: Slot | None = None
    zone: tzinfo = UTC
    profile: Profile = NOBODY
    plan: Plan = USUAL_PLAN
    paused_until: date | None = None
    history: tuple[Reading, ...] = ()
    flags: tuple[OpenFlag, ...] = ()
    said: frozenset[str] = field(default_factory=frozenset)
    goals: tuple[GoalFact, ...] = ()
    missed: int = 0
    answered: date | None = None
    check_ins: tuple[tuple[date, bool], ...] = ()
    cohorts: tuple[Membership, ...] = ()
    invitation: InvitationFact | None = None
    readiness: Readiness = UNASKED
    find_zones: Callable[[str], tuple[str, ...]] = no_zones
    zone_of: Callable[[str], tzinfo] = always_utc
    label: Callable[[str, str], str] = no_label
    _counting: dict[str, tuple[Reading, ...]] = field(default_factory=dict, init=False, repr=False, compare=False)

    def of(self, measure: str) -> tuple[Reading, ...]:
        """This client's readings of one measure that count, oldest first."""
        found = self._counting.get(measure)
        if found is None:
            found = self._counting[measure] = tuple([r for r in self.history if r.measure == measure and r.counts])
        return found

    @property
    def told(self) -> str:
        """Who hears at once of what is passed to the coach; "" for nobody."""
        return self.coach_name if self.coach_reachable else ""

    def local(self, at: datetime) -> datetime:
        """`at` in the client's local time."""
        return at.astimezone(self.zone)


@dataclass(frozen=True, slots=True)
class StrangerFacts:
    """An unknown chat. invitation: set if this event opens a valid one."""

    language: str = "en"
    name: str = ""
    invitation: InvitationFact | None = None
