"""A cohort: people who start together for 4 to 12 weeks. Calendar, privacy rules, closing report.

Check-ins. A cohort of W weeks has W + 1, numbered from 0: number 0 is everybody's start, and number n covers the seven
days of week n. Members keep their own weekday: a check-in gets the number whose date, on the cohort's weekday, is at
most three days away. Activity reported at check-in 0 is from the week before the start, so it is never counted.

Privacy. A pooled figure is told only if nobody can be made out in it, or in its difference from any that were told:
the rule is in `core.watching.disclosure`. A figure that is withheld is None, and how few it would have been about is
nowhere. What was told is immutable and has one value wherever it is told: later answers are left out, and totals are
sums of what was told. A group chat hears how many checked in only if they are five or more, and never of how many.
Only check-ins kept, minutes or sessions are pooled; never weight or girth. Nobody is compared with anybody.

Common practice, unless a source is named; the interval of a paired difference is Student's (1908).
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
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
from core.watching.disclosure import LEAST_PEOPLE, Figure, may_be_told, people_in

D = Decimal
SHORTEST, LONGEST = 4, 12  # weeks
MOST_BY_ONE_LINK = 30  # ours: a class or two; whoever expects more says so when the cohort is made
MOST_EVER = 500  # ours: more by one link means that it has travelled further than meant
NEAR = timedelta(days=3)
PUBLISHED_AFTER = timedelta(days=4)  # members who check in three days after the cohort's weekday have a day to answer
WEEK = timedelta(days=7)
MIDNIGHT = time(0)


class Counted(StrEnum):
    """What a cohort adds up."""

    CHECK_INS = "check_ins"
    MINUTES = "activity_minutes"
    SESSIONS = "sessions"


ATTENDANCE = Counted.CHECK_INS.value  # told of every cohort, whatever it adds up
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

    who: a pseudonym for the record of what was told, the same in every cohort; nobody can tell whose it was once they
    are erased.  joined, left: local dates, the first included, the second excluded.
    check_ins: local date of each check-in asked, and whether it was kept.  readings: official ones.
    """

    client_id: int
    who: str
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

    def asked_on(self, terms: Terms, number: int) -> Figure:
        """The cells of a check-in that was asked."""
        return frozenset(
            (self.who, day) for day, _ in self.check_ins if terms.number_of(day) == number and self.counts(day)
        )

    def told_on(self, reading: Reading) -> tuple[str, date]:
        """The cell of a reading."""
        return self.who, reading.taken_at.astimezone(self.zone).date()


@dataclass(frozen=True, slots=True)
class CohortWeek:
    """Pooled figures of one check-in. number: 0 is the start.

    asked, kept: people whose check-in was asked, and kept. people: how many reported the pooled measure. total: their
    sum. None, both of a pair, if withheld.
    """

    number: int
    asked: int | None
    kept: int | None
    people: int | None
    total: int | None

    @property
    def kept_aloud(self) -> int | None:
        """How many checked in, as a group chat may hear it: "1 of 5" would be about one person, or about four."""
        return self.kept if self.kept is not None and self.kept >= LEAST_PEOPLE else None


class Told:
    """Figures that were told of a cohort and of those with members in common, by what they are about: "check_ins", or
    the key of a measure. It grows as more is told."""

    def __init__(self, before: Mapping[str, Iterable[Figure]], own: Mapping[str, Iterable[Figure]]) -> None:
        """own: those of this cohort, which are among `before` too."""
        self._all = {what: list(figures) for what, figures in before.items()}
        self._own = {what: list(figures) for what, figures in own.items()}
        self.new: list[tuple[str, Figure]] = []  # in the order in which they were told

    def tell(self, what: str, *figures: Figure) -> bool:
        """Whether these figures may be told, all of them; if so, they are."""
        told = self._all.setdefault(what, [])
        before = len(told)
        for figure in figures:
            if not may_be_told(told, figure):
                del told[before:]
                return False
            told.append(figure)
        self._own.setdefault(what, []).extend(figures)
        self.new += [(what, figure) for figure in figures]
        return True

    def people(self, what: str) -> int:
        """How many people the figures of this cohort are about together."""
        return len(people_in(cell for figure in self._own.get(what, ()) for cell in figure))


def week(terms: Terms, people: Iterable[Participant], number: int, told: Told) -> CohortWeek:
    """Pool one check-in. Activity at check-in 0 is from before the start and is left out."""
    everybody = tuple(people)
    kept = [outcome for p in everybody if (outcome := p.kept(terms).get(number)) is not None]
    asked = frozenset(cell for p in everybody for cell in p.asked_on(terms, number))
    attended = (len(kept), sum(kept)) if told.tell(ATTENDANCE, asked) else (None, None)
    if terms.counts is Counted.CHECK_INS:  # else a group could tell from its total that one checked in
        pooled = attended if attended[1] is not None and attended[1] >= LEAST_PEOPLE else (None, None)
        return CohortWeek(number, *attended, *pooled)
    pooled = _pooled(terms, everybody, MEASURE_OF[terms.counts], (number,), told) if number else (None, None)
    return CohortWeek(number, *attended, *pooled)


def _pooled(
    terms: Terms, people: Iterable[Participant], measure: str, numbers: Sequence[int], told: Told
) -> tuple[int, int] | tuple[None, None]:
    """How many reported a measure in some weeks, and their rounded sum; None if it is withheld."""
    cells, total = set(), D(0)
    for p in people:
        reported = p.reported(terms, measure)
        for n in numbers:
            if n > 0 and n in reported:
                cells.add(p.told_on(reported[n]))
                total += reported[n].value + (reported[n].second or 0)
    if not told.tell(measure, frozenset(cells)):
        return None, None
    return len(people_in(cells)), int(half_up(total, 0))


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
    """A change that is withheld. It does not say how few people it would have been about."""

    measure: str


@dataclass(frozen=True, slots=True)
class Sum:
    """Group total, of so many people and weeks; None, and 0 weeks, if it is withheld."""

    counts: Counted
    people: int | None
    total: int | None
    weeks: int = 0


@dataclass(frozen=True, slots=True)
class Closing:
    """The closing report: what everybody did together, and nothing about an individual. Stored unchanged once made.

    members: everybody who took part. stayed: those who did not leave. asked, kept: check-ins, over the weeks in which
    they were told; None if they never were.
    """

    name: str
    starts: date
    last: date
    weeks: int
    members: int
    stayed: int
    asked: int | None
    kept: int | None
    attendance: tuple[CohortWeek, ...]
    sums: tuple[Sum, ...]
    changes: tuple[Paired | TooFew, ...]

    @property
    def completion(self) -> Decimal | None:
        """Check-ins kept as a percentage of those asked; None if that is withheld."""
        return half_up(D(100 * self.kept) / self.asked, 0) if self.asked and self.kept is not None else None


def closing(
    name: str,
    terms: Terms,
    people: Sequence[Participant],
    shown: Sequence[CohortWeek],
    told: Told,
    measures: Sequence[str] = ENERGY_ONLY,
) -> Closing:
    """Work out the closing report.

    shown: the weeks as published, which add up to the totals. told: what was told, and what the report adds. measures:
    those whose change is worked out; only energy, unless the organiser coaches every member.
    """
    attended = [(w.asked, w.kept) for w in shown if w.asked is not None and w.kept is not None]
    return Closing(
        name=name,
        starts=terms.starts,
        last=terms.last,
        weeks=terms.weeks,
        members=len(people),
        stayed=sum(p.left is None for p in people),
        asked=sum(asked for asked, _ in attended) if attended else None,
        kept=sum(kept for _, kept in attended) if attended else None,
        attendance=tuple(shown),
        sums=tuple(_sum(terms, people, shown, counts, told) for counts in MEASURE_OF),
        changes=tuple(_changes(terms, people, measures, told)),
    )


def total_so_far(counts: Counted, shown: Iterable[CohortWeek], told: Told) -> Sum:
    """The total of a cohort's own measure, of the weeks in which it was told."""
    weeks = [w for w in shown if w.total is not None]
    if not weeks:
        return Sum(counts, None, None)
    return Sum(counts, told.people(MEASURE_OF.get(counts, ATTENDANCE)), together(weeks), len(weeks))


def _sum(terms: Terms, people: Sequence[Participant], shown: Sequence[CohortWeek], counts: Counted, told: Told) -> Sum:
    if counts is terms.counts:
        return total_so_far(counts, shown, told)
    number, total = _pooled(terms, people, MEASURE_OF[counts], range(terms.weeks + 1), told)
    return Sum(counts, number, total, 0 if total is None else terms.weeks)


def _changes(
    terms: Terms, people: Sequence[Participant], measures: Sequence[str], told: Told
) -> Iterable[Paired | TooFew]:
    for measure in measures:
        both = [(p, *pair) for p in people if (pair := first_and_last(terms, p, measure)) is not None]
        first = frozenset(p.told_on(before) for p, before, _ in both)
        last = frozenset(p.told_on(after) for p, _, after in both)
        if both and told.tell(measure, first, last):
            yield paired(measure, [(before.value, after.value) for _, before, after in both])
        elif both or measure in ENERGY_ONLY:
            yield TooFew(measure)


def first_and_last(terms: Terms, person: Participant, measure: str) -> tuple[Reading, Reading] | None:
    """The first reading of the first half and the last of the second; None if either is missing.

    Half-time belongs to the first half, so that a member who joined on the last possible day has a start.
    """
    reported = person.reported(terms, measure)
    first = [n for n in reported if 2 * n <= terms.weeks]
    second = [n for n in reported if 2 * n > terms.weeks]
    return (reported[min(first)], reported[max(second)]) if first and second else None


def paired(measure: str, pairs: Sequence[tuple[Decimal, Decimal]]) -> Paired:
    """Mean difference of pairs (before, after) with its 95 % interval: mean +- t(n - 1) s / sqrt(n). At least two."""
    n = len(pairs)
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
    """The part of a closing report a group may see: no change except energy, and no check-ins kept by a few."""
    shown = report.kept is not None and report.kept >= LEAST_PEOPLE
    return replace(
        report,
        asked=report.asked if shown else None,
        kept=report.kept if shown else None,
        attendance=(),
        changes=tuple(c for c in report.changes if c.measure in ENERGY_ONLY),
    )


def own_check_ins(terms: Terms, person: Participant) -> tuple[int, int]:
    """One member's check-ins: kept, asked."""
    outcomes = person.kept(terms).values()
    return sum(outcomes), len(outcomes)
