"""The care a client has agreed: their status, slot, units and plan. Words that every part of the project uses."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from enum import StrEnum

from core.quantity import Better, Unit


class Status(StrEnum):
    ENROLLING = "enrolling"
    ACTIVE = "active"
    PAUSED = "paused"
    FINISHED = "finished"  # the programme is over: nothing is asked until a new one begins
    LEFT = "left"


class NumberVisibility(StrEnum):
    """Where a client wants their own numbers shown."""

    SHOWN = "shown"
    COACH_ONLY = "coach_only"


@dataclass(frozen=True, slots=True)
class Units:
    """A client's preferred units of body mass and length."""

    mass: Unit = Unit.KILOGRAM  # or POUND; STONE means stones and pounds
    length: Unit = Unit.CENTIMETRE  # or INCH (stature then in feet and inches)


@dataclass(frozen=True, slots=True)
class Slot:
    """A client's weekday (Monday 0), wall time and zone. zone_name is the tz database key."""

    weekday: int
    at: time
    zone_name: str


@dataclass(frozen=True, slots=True)
class Programme:
    """An agreed stretch of weeks with an end. starts, ended: local dates of the client. ended: when its last report was
    given; None while it runs."""

    starts: date
    weeks: int
    ended: date | None = None

    @property
    def last(self) -> date:
        """The first check-in on or after this date closes the programme."""
        return self.starts + timedelta(weeks=self.weeks)


@dataclass(frozen=True, slots=True)
class Plan:
    """What a client is asked, and how often.

    measures: keys, in any order; energy is asked at every check-in whether or not it is named.
    retest_days: 28-42; per_measure overrides it by key.
    directed_weighing: a clinician asked for frequent weighing; the guard is off. directed_by: who, as the coach put it.
    loss_is_planned: losing weight is a goal agreed with the coach.
    own_question: the client's own 0-10 question; own_better says which way is better.
    baseline_since: a new programme starts here; earlier readings are history, not baseline.
    programme: None while no end is agreed.
    """

    measures: tuple[str, ...] = ("weight", "waist", "hip", "resting_heart_rate", "sessions_done", "activity_minutes")
    retest_days: int = 28
    per_measure: tuple[tuple[str, int], ...] = ()
    directed_weighing: bool = False
    loss_is_planned: bool = False
    numbers: NumberVisibility = NumberVisibility.SHOWN
    own_question: str = ""
    own_better: Better = Better.HIGHER
    baseline_since: datetime | None = None
    cleared: tuple[str, ...] = ()  # tests a clinician has approved despite a caution
    pressure_body: str = "nice"  # which blood-pressure limits: "nice", "aha", "esc"
    programme: Programme | None = None
    directed_by: str = ""

    def interval(self, measure: str) -> int:
        """Days between retests of `measure`."""
        return dict(self.per_measure).get(measure, self.retest_days)

    def closes_on(self, day: date) -> bool:
        """Whether a check-in of this local date is the programme's last."""
        return self.programme is not None and self.programme.ended is None and day >= self.programme.last


METRIC = Units()
USUAL_PLAN = Plan()
