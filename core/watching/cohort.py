"""A cohort: people who start together for 4 to 12 weeks. Calendar, privacy rules, closing report.

Check-ins. A cohort of W weeks has W + 1, numbered from 0: number 0 is everybody's start, and number n covers the seven
days of week n. Members keep their own weekday: a check-in gets the number whose date, on the cohort's weekday, is at
most three days away. Activity reported at check-in 0 is from the week before the start, so it is never counted.

Privacy. A pooled figure is shown only for five or more people, and published figures are immutable: later answers are
left out, so that nobody's answer can be worked out as the difference of two figures. Only check-ins kept, minutes or
sessions are pooled; never weight or girth. Nobody is compared with anybody.

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
LEAST_PEOPLE = 5  # a figure for fewer reveals too much about each
NEAR = timedelta(days=3)
PUBLISHED_AFTER = timedelta(days=4)  # members who check in three days after the cohort's weekday have a day to answer
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

# Not pooled: readings of two numbers, clients' own questions, and what is asked only once.
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
    """A cohort's terms. starts: from when; slot: weekday and time of its check-ins."""

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
        """The instant at which joining closes."""
        return instant(self.half_time + timedelta(days=1), MIDNIGHT, zone)

    def check_in(self, number: int) -> date:
        return self.first + number * WEEK

    def number_of(self, day: date) -> int | None:
        """The number of the check-in a date belongs to; None before or after the cohort."""
        number = (day - self.first + NEAR).days // 7
        return number if 0 <= number <= self.weeks else None


class Task(StrEnum):
    """A scheduled task of a cohort. START: announce it. WEEK: publish a check-in's pooled figures. CLOSE: the same for
    the last check-in, with the closing report."""

    START = "start"
    WEEK = "week"
    CLOSE = "close"


@dataclass(frozen=True, slots=True)
class CohortTask:
    at: datetime
    task: Task
    number: int  # of the check-in


def jobs(terms: Terms, zone: tzinfo) -> tuple[CohortTask, ...]:
    """Every task of a cohort, in order."""
    at = terms.slot.at
    published = tuple(
        CohortTask(
            daytime(instant(terms.check_in(n) + PUBLISHED_AFTER, at, zone), zone),
            Task.CLOSE if n == terms.weeks else Task.WEEK,
            n,
        )
        for n in range(terms.weeks + 1)
    )
    return (CohortTask(daytime(instant(terms.first, at, zone), zone), Task.START, 0), *published)


def next_job(terms: Terms, zone: tzinfo, after: datetime) -> CohortTask | None:
    """The first task after an instant; None if there are no more."""
    return next((job for job in jobs(terms, zone) if job.at > after), None)


def jobs_due(terms: Terms, zone: tzinfo, since: datetime, now: datetime) -> tuple[CohortTask, ...]:
    """The tasks from `since` to `now`, both included, in order."""
    return tuple(job for job in jobs(terms, zone) if since <= job.at <= now)


# --- what everybody did -----------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Participant:
    """One member, as stored. None of this is shown to anybody.

    joined, left: local dates, the first included, the second excluded.
    check_ins: local date of each check-in asked, and whether it was kept.  readings: official ones.
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
        """Whether each check-in asked was kept, by number."""
        found: dict[int, bool] = {}
        for day, kept in self.check_ins:
            number = terms.number_of(day)
            if number is not None and self.counts(day):
                found[number] = kept or found.get(number, False)
        return found

    def reported(self, terms: Terms, measure: str) -> dict[int, Reading]:
        """The reading of a measure at each check-in; the last one if there are several."""
        found: dict[int, Reading] = {}
        for reading in sorted(self.readings, key=lambda r: r.taken_at):
            day = reading.taken_at.astimezone(self.zone).date()
            number = terms.number_of(day)
            if reading.measure == measure and reading.counts and number is not None and self.counts(day):
                found[number] = reading
        return found


@dataclass(frozen=True, slots=True)
class CohortWeek:
    """Pooled figures of one check-in. number: 0 is the start.

    asked, kept: people whose check-in was asked, and kept. people: how many reported the pooled measure. total: their
    sum; None if they are too few, so that it cannot be shown by mistake.
    """

    number: int
    asked: int
    kept: int
    people: int
    total: int | None

    @property
    def attendance_shown(self) -> bool:
        """Whether a group may see how many checked in; an organiser always may."""
        return self.asked >= LEAST_PEOPLE


def week(terms: Terms, people: Iterable[Participant], number: int) -> CohortWeek:
    """Pool one check-in. Activity at check-in 0 is from before the start and is left out."""
    everybody = tuple(people)
    kept = [outcome for p in everybody if (outcome := p.kept(terms).get(number)) is not None]
    if terms.counts is Counted.CHECK_INS:
        return CohortWeek(number, len(kept), sum(kept), len(kept), sum(kept) if len(kept) >= LEAST_PEOPLE else None)
    reported = _reported(terms, everybody, MEASURE_OF[terms.counts], (number,))
    return CohortWeek(number, len(kept), sum(kept), len(reported), _pooled(reported))


def _reported(terms: Terms, people: Iterable[Participant], measure: str, numbers: Sequence[int]) -> list[Decimal]:
    """Each person's total over some weeks; people who reported nothing are left out."""
    found = []
    for p in people:
        reported = p.reported(terms, measure)
        theirs = [reported[n].value + (reported[n].second or 0) for n in numbers if n > 0 and n in reported]
        if theirs:
            found.append(sum(theirs, D(0)))
    return found


def _pooled(each: Sequence[Decimal]) -> int | None:
    """The rounded sum, or None if there are too few people."""
    return int(half_up(sum(each, D(0)), 0)) if len(each) >= LEAST_PEOPLE else None


def together(weeks: Iterable[CohortWeek]) -> int:
    """The total of the figures already shown, so that it reveals nothing new."""
    return sum(w.total for w in weeks if w.total is not None)


def milestone(counts: Counted, before: int, now: int) -> int | None:
    """The highest milestone passed between two totals."""
    return max((rung for rung in LADDER[counts] if before < rung <= now), default=None)


# --- the closing report -----------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Paired:
    """Mean change from start to end in the same people, in the measure's unit, with its 95 % interval.

    n: people with both readings. before, after: their means.
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
    """A change not shown because only n people, fewer than five, have both readings."""

    measure: str
    n: int


@dataclass(frozen=True, slots=True)
class Sum:
    """Group total over members who reported; None if they are too few to be shown."""

    counts: Counted
    people: int
    total: int | None


@dataclass(frozen=True, slots=True)
class Closing:
    """The closing report: what everybody did together, and nothing about an individual. Stored unchanged once made.

    members: everybody who took part. stayed: those who did not leave. asked, kept: check-ins over all members.
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
        """Check-ins kept as a percentage of those asked; None if none was asked."""
        return None if not self.asked else half_up(D(100 * self.kept) / self.asked, 0)


def closing(
    name: str,
    terms: Terms,
    people: Sequence[Participant],
    shown: Sequence[CohortWeek],
    measures: Sequence[str] = ENERGY_ONLY,
) -> Closing:
    """Work out the closing report.

    shown: the weeks as published, which add up to the total. measures: those whose change is worked out; only energy,
    unless the organiser coaches every member.
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
    reported = _reported(terms, people, MEASURE_OF[counts], range(terms.weeks + 1))
    if counts is terms.counts:
        return Sum(counts, len(reported), together(shown) if any(w.total is not None for w in shown) else None)
    return Sum(counts, len(reported), _pooled(reported))


def _changes(terms: Terms, people: Sequence[Participant], measures: Sequence[str]) -> Iterable[Paired | TooFew]:
    for measure in measures:
        pairs = [pair for p in people if (pair := first_and_last(terms, p, measure)) is not None]
        if pairs or measure in ENERGY_ONLY:
            yield paired(measure, pairs)


def first_and_last(terms: Terms, person: Participant, measure: str) -> tuple[Decimal, Decimal] | None:
    """The first reading of the first half and the last of the second; None if either is missing.

    Half-time belongs to the first half, so that a member who joined on the last possible day has a start.
    """
    reported = person.reported(terms, measure)
    first = [n for n in reported if 2 * n <= terms.weeks]
    second = [n for n in reported if 2 * n > terms.weeks]
    return (reported[min(first)].value, reported[max(second)].value) if first and second else None


def paired(measure: str, pairs: Sequence[tuple[Decimal, Decimal]]) -> Paired | TooFew:
    """Mean difference of pairs (before, after) with its 95 % interval: mean +- t(n - 1) s / sqrt(n)."""
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
    """The part of a closing report a group may see: no change except energy."""
    return replace(report, changes=tuple(c for c in report.changes if c.measure in ENERGY_ONLY))


def own_check_ins(terms: Terms, person: Participant) -> tuple[int, int]:
    """One member's check-ins: kept, asked."""
    outcomes = person.kept(terms).values()
    return sum(outcomes), len(outcomes)
