"""A cohort: people who start together for 4 to 12 weeks. Its calendar, what others may see of it, its closing report.

Check-ins. A cohort of W weeks has W + 1 of them, numbered from 0: the first is where everybody starts, and the one
that closes week n tells of its seven days. A member keeps their own weekday: a check-in belongs to the number whose
date, on the cohort's own weekday, is at most three days away. So activity told at check-in 0, which is of the week
before the start, counts for nobody.

Privacy. A pooled figure is shown from five people on, and never changes once it was shown: what comes later is left
out of it, so that nobody's answer is the difference of two figures. What is counted is check-ins kept, minutes or
sessions; never weight or girth. Nobody is compared with anybody.

Common practice, unless a source is named; the interval of a paired difference is Student's (1908).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, time, timedelta, tzinfo
from decimal import Decimal
from enum import StrEnum

from core.care import Slot
from core.judging.trend import t_quantile
from core.measures import CHECK_IN_ORDER, MEASURES
from core.measures.measure import MeasureKind
from core.quantity import Unit, half_up
from core.reading import Reading
from core.schedule import daytime, instant

D = Decimal
SHORTEST, LONGEST = 4, 12  # weeks
LEAST_PEOPLE = 5  # a figure of fewer says too much about each
NEAR = timedelta(days=3)
TOLD_AFTER = timedelta(days=4)  # who checks in three days after the cohort's weekday has had a day to answer
WEEK = timedelta(days=7)
MIDNIGHT = time(0)


class Counted(StrEnum):
    """What a cohort adds up."""

    CHECK_INS = "check_ins"
    MINUTES = "activity_minutes"
    SESSIONS = "sessions"


MEASURE_OF = {Counted.MINUTES: "activity_minutes", Counted.SESSIONS: "sessions_done"}
LADDER = {
    Counted.CHECK_INS: (25, 50, 100, 250, 500, 1_000, 2_500),
    Counted.MINUTES: (1_000, 2_500, 5_000, 10_000, 25_000, 50_000, 100_000, 250_000),
    Counted.SESSIONS: (25, 50, 100, 250, 500, 1_000, 2_500),
}

# Not pooled: a value of two numbers, a question that everybody words for themselves, and what is asked once.
_NOT_PAIRED = frozenset({"blood_pressure", "walk_mile", "own_question", "height"})
EVERY_MEASURE = tuple(
    key
    for key in dict.fromkeys((*CHECK_IN_ORDER, *MEASURES))
    if MEASURES[key].kind not in (MeasureKind.DERIVED, MeasureKind.ACTIVITY) and key not in _NOT_PAIRED
)
ENERGY_ONLY = ("energy",)


# --- the calendar -----------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Terms:
    """What was agreed. starts: from when on; slot: the weekday and time of its check-ins."""

    starts: date
    weeks: int
    slot: Slot
    counts: Counted

    @property
    def first(self) -> date:
        """The date of check-in 0."""
        return self.starts + timedelta(days=(self.slot.weekday - self.starts.weekday()) % 7)

    @property
    def last(self) -> date:
        """The date of the last check-in."""
        return self.check_in(self.weeks)

    @property
    def half_time(self) -> date:
        """The last day on which somebody may still join."""
        return self.first + timedelta(days=7 * self.weeks // 2)

    def joining_ends(self, zone: tzinfo) -> datetime:
        """The instant at which half-time is over."""
        return instant(self.half_time + timedelta(days=1), MIDNIGHT, zone)

    def check_in(self, number: int) -> date:
        return self.first + number * WEEK

    def number_of(self, day: date) -> int | None:
        """The check-in a date belongs to; None for one before or after the cohort."""
        number = (day - self.first + NEAR).days // 7
        return number if 0 <= number <= self.weeks else None


class Task(StrEnum):
    """What there is to do for a cohort. START: say that it begins. WEEK: tell a check-in's pooled figures.
    CLOSE: the same for the last one, and the closing report."""

    START = "start"
    WEEK = "week"
    CLOSE = "close"


@dataclass(frozen=True, slots=True)
class CohortTask:
    at: datetime
    task: Task
    number: int  # of the check-in


def jobs(terms: Terms, zone: tzinfo) -> tuple[CohortTask, ...]:
    """Return everything a cohort has to do, in order."""
    at = terms.slot.at
    told = tuple(
        CohortTask(
            daytime(instant(terms.check_in(n) + TOLD_AFTER, at, zone), zone),
            Task.CLOSE if n == terms.weeks else Task.WEEK,
            n,
        )
        for n in range(terms.weeks + 1)
    )
    return (CohortTask(daytime(instant(terms.first, at, zone), zone), Task.START, 0), *told)


def next_job(terms: Terms, zone: tzinfo, after: datetime) -> CohortTask | None:
    """Return the first job after an instant; None when all is done."""
    return next((job for job in jobs(terms, zone) if job.at > after), None)


def jobs_due(terms: Terms, zone: tzinfo, since: datetime, now: datetime) -> tuple[CohortTask, ...]:
    """Return the jobs from one instant (included) to another (included), in order."""
    return tuple(job for job in jobs(terms, zone) if since <= job.at <= now)


# --- what everybody did -----------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Participant:
    """One member, as the store knows them. Nothing of this is shown to anybody.

    joined, left: local dates; a day counts from the first on, and up to the day before the second.
    check_ins: local date of each that was asked, and whether it was kept.  readings: official ones.
    """

    client_id: int
    joined: date
    left: date | None
    zone: tzinfo
    check_ins: tuple[tuple[date, bool], ...] = ()
    readings: tuple[Reading, ...] = ()

    def counts(self, day: date) -> bool:
        return self.joined <= day and (self.left is None or day < self.left)

    def kept(self, terms: Terms) -> dict[int, bool]:
        """Whether each check-in that was asked was kept, by number."""
        found: dict[int, bool] = {}
        for day, kept in self.check_ins:
            number = terms.number_of(day)
            if number is not None and self.counts(day):
                found[number] = kept or found.get(number, False)
        return found

    def told(self, terms: Terms, measure: str) -> dict[int, Reading]:
        """The reading of a measure at each check-in: the last one, if there are several."""
        found: dict[int, Reading] = {}
        for reading in sorted(self.readings, key=lambda r: r.taken_at):
            day = reading.taken_at.astimezone(self.zone).date()
            number = terms.number_of(day)
            if reading.measure == measure and reading.counts and number is not None and self.counts(day):
                found[number] = reading
        return found


@dataclass(frozen=True, slots=True)
class CohortWeek:
    """Figures of one check-in. number: 0 is the start.

    asked, kept: people whose check-in was asked, and kept.  people: who told something of what is counted.
    total: what they did together; None when they are too few, so that it cannot be shown by mistake.
    """

    number: int
    asked: int
    kept: int
    people: int
    total: int | None

    @property
    def attendance_shown(self) -> bool:
        """Whether a group may see how many checked in; an organiser always does."""
        return self.asked >= LEAST_PEOPLE


def week(terms: Terms, people: Iterable[Participant], number: int) -> CohortWeek:
    """Add up one check-in. Activity at check-in 0 is of the time before, and is left out."""
    everybody = tuple(people)
    kept = [outcome for p in everybody if (outcome := p.kept(terms).get(number)) is not None]
    if terms.counts is Counted.CHECK_INS:
        return CohortWeek(number, len(kept), sum(kept), len(kept), sum(kept) if len(kept) >= LEAST_PEOPLE else None)
    told = _told(terms, everybody, MEASURE_OF[terms.counts], (number,))
    return CohortWeek(number, len(kept), sum(kept), len(told), _pooled(told))


def _told(terms: Terms, people: Iterable[Participant], measure: str, numbers: Sequence[int]) -> list[Decimal]:
    """What each person did in some weeks; those who told nothing are not in it."""
    found = []
    for p in people:
        told = p.told(terms, measure)
        theirs = [told[n].value + (told[n].second or 0) for n in numbers if n > 0 and n in told]
        if theirs:
            found.append(sum(theirs, D(0)))
    return found


def _pooled(each: Sequence[Decimal]) -> int | None:
    """What people did together, whole; None when they are too few."""
    return int(half_up(sum(each, D(0)), 0)) if len(each) >= LEAST_PEOPLE else None


def together(weeks: Iterable[CohortWeek]) -> int:
    """The total of the figures that were shown: so it says nothing that they did not."""
    return sum(w.total for w in weeks if w.total is not None)


def milestone(counts: Counted, before: int, now: int) -> int | None:
    """The highest rung of the ladder passed between two totals."""
    return max((rung for rung in LADDER[counts] if before < rung <= now), default=None)


# --- the closing report -----------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Paired:
    """The mean change from the start to the end of the same people, in the measure's own unit, and its 95 % interval.

    n: people with both readings.  before, after: their means.
    """

    measure: str
    unit: Unit
    n: int
    before: Decimal
    after: Decimal
    mean: Decimal
    low: Decimal
    high: Decimal


@dataclass(frozen=True, slots=True)
class TooFew:
    """A change that is not shown: n people have both readings, and it takes five."""

    measure: str
    n: int


@dataclass(frozen=True, slots=True)
class Sum:
    """What all did together, of people who told of it; None when they are too few to be shown."""

    counts: Counted
    people: int
    total: int | None


@dataclass(frozen=True, slots=True)
class Closing:
    """The closing report: what everybody did together, and nothing of anybody. It is kept as it was made.

    members: everybody who took part.  stayed: those who did not leave.  asked, kept: check-ins of everybody.
    """

    name: str
    starts: date
    last: date
    weeks: int
    members: int
    stayed: int
    asked: int
    kept: int
    attendance: tuple[CohortWeek, ...]
    sums: tuple[Sum, ...]
    changes: tuple[Paired | TooFew, ...]

    @property
    def completion(self) -> Decimal | None:
        """Check-ins kept of those asked, in percent; None for nothing asked."""
        return None if not self.asked else half_up(D(100 * self.kept) / self.asked, 0)


def closing(
    name: str,
    terms: Terms,
    people: Sequence[Participant],
    shown: Sequence[CohortWeek],
    measures: Sequence[str] = ENERGY_ONLY,
) -> Closing:
    """Close a cohort.

    shown: the weeks as they were told, which is what the counted total is made of.  measures: whose change is worked
    out: only energy, unless the organiser is the coach of everybody in it.
    """
    outcomes = [kept for p in people for kept in p.kept(terms).values()]
    return Closing(
        name=name,
        starts=terms.starts,
        last=terms.last,
        weeks=terms.weeks,
        members=len(people),
        stayed=sum(p.left is None for p in people),
        asked=len(outcomes),
        kept=sum(outcomes),
        attendance=tuple(shown),
        sums=tuple(_sum(terms, people, shown, counts) for counts in MEASURE_OF),
        changes=tuple(_changes(terms, people, measures)),
    )


def _sum(terms: Terms, people: Sequence[Participant], shown: Sequence[CohortWeek], counts: Counted) -> Sum:
    told = _told(terms, people, MEASURE_OF[counts], range(terms.weeks + 1))
    if counts is terms.counts:
        return Sum(counts, len(told), together(shown) if any(w.total is not None for w in shown) else None)
    return Sum(counts, len(told), _pooled(told))


def _changes(terms: Terms, people: Sequence[Participant], measures: Sequence[str]) -> Iterable[Paired | TooFew]:
    for measure in measures:
        pairs = [pair for p in people if (pair := ends(terms, p, measure)) is not None]
        if pairs or measure in ENERGY_ONLY:
            yield paired(measure, pairs)


def ends(terms: Terms, person: Participant, measure: str) -> tuple[Decimal, Decimal] | None:
    """The first reading of the first half and the last one of the second; None when either is missing.

    Half-time itself is of the first half: so who joined on the last day has a start.
    """
    told = person.told(terms, measure)
    first = [n for n in told if 2 * n <= terms.weeks]
    second = [n for n in told if 2 * n > terms.weeks]
    return (told[min(first)].value, told[max(second)].value) if first and second else None


def paired(measure: str, pairs: Sequence[tuple[Decimal, Decimal]]) -> Paired | TooFew:
    """The mean of the differences of pairs (before, after), with its 95 % interval: mean +- t(n - 1) s / sqrt(n)."""
    n = len(pairs)
    if n < LEAST_PEOPLE:
        return TooFew(measure, n)
    differences = [after - before for before, after in pairs]
    mean = sum(differences, D(0)) / n
    variance = sum(((x - mean) ** 2 for x in differences), D(0)) / (n - 1)
    half = t_quantile(n - 1) * (variance / n).sqrt()
    return Paired(
        measure=measure,
        unit=MEASURES[measure].unit,
        n=n,
        before=sum((before for before, _ in pairs), D(0)) / n,
        after=sum((after for _, after in pairs), D(0)) / n,
        mean=mean,
        low=mean - half,
        high=mean + half,
    )


def for_the_group(report: Closing) -> Closing:
    """The part of a closing report that a group may see: no change but that of energy."""
    return replace(report, changes=tuple(c for c in report.changes if c.measure in ENERGY_ONLY))


def own(terms: Terms, person: Participant) -> tuple[int, int]:
    """One member's own check-ins: kept, asked."""
    outcomes = person.kept(terms).values()
    return sum(outcomes), len(outcomes)
