"""A practice report: a caseload over a quarter, pooled, for whoever a coach works for. Nobody can be picked out of it.

* A figure of fewer than five people is not given, and the report does not say how few they were.
* Periods are whole calendar quarters, which never overlap, and a change is worked out from readings within its quarter
  alone. So no two reports can be subtracted to leave one person's answer.
* What is pooled: who joined, whose programme ended, check-ins kept of those asked, and for each measure the mean paired
  change of those who have a start and an end, with its 95 % interval. Nobody is compared with anybody.

A start and an end are official readings at least a retest apart; of ratings, the means of a person's first and last
four weeks. The choice of quarters and of five is ours, the second as in a cohort.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import Decimal

from core.judging.assess import RATING_WINDOW, mean_reading
from core.judging.change import EARLY_BY
from core.measures import MEASURES
from core.measures.measure import MeasureKind
from core.reading import Reading
from core.watching.cohort import EVERY_MEASURE, Paired, TooFew, paired
from core.watching.disclosure import LEAST_PEOPLE

OFFERED = 4  # quarters that buttons name


@dataclass(frozen=True, slots=True, order=True)
class Quarter:
    """A calendar quarter; number: 1 to 4."""

    year: int
    number: int

    @property
    def first(self) -> date:
        return date(self.year, 3 * self.number - 2, 1)

    @property
    def last(self) -> date:
        return self.next.first - timedelta(days=1)

    @property
    def next(self) -> Quarter:
        return Quarter(self.year + self.number // 4, self.number % 4 + 1)

    @property
    def before(self) -> Quarter:
        return quarter_of(self.first - timedelta(days=1))

    def __contains__(self, day: date | None) -> bool:
        return day is not None and self.first <= day <= self.last

    @property
    def key(self) -> str:
        """As a button and a person write it: "2026q1"."""
        return f"{self.year}q{self.number}"


def quarter_of(day: date) -> Quarter:
    return Quarter(day.year, (day.month + 2) // 3)


def finished(today: date) -> tuple[Quarter, ...]:
    """The quarters that are over and can be reported on, newest first."""
    found = [quarter_of(today).before]
    while len(found) < OFFERED:
        found.append(found[-1].before)
    return tuple(found)


def meant(words: str, today: date) -> Quarter | None:
    """The finished quarter that "2026q1", "2026 Q1" or "q1 2026" means; the newest for nothing; None for anything
    else, one that is not over among them."""
    said = words.casefold().split()
    if not said:
        return finished(today)[0]
    year, _, number = "".join(said[::-1] if said[0].startswith("q") else said).partition("q")
    if not (year.isdecimal() and len(year) == 4 and number in ("1", "2", "3", "4") and int(year) >= 2000):
        return None
    found = Quarter(int(year), int(number))
    return found if found.last < today else None


@dataclass(frozen=True, slots=True)
class PersonFact:
    """One client in a quarter. joined, left, ended: local dates of joining, of leaving and of the programme's end.
    check_ins: whether each that was asked in it was kept. readings: taken in it that count, oldest first."""

    joined: date
    left: date | None
    ended: date | None
    check_ins: tuple[bool, ...]
    readings: tuple[Reading, ...]


@dataclass(frozen=True, slots=True)
class Practice:
    """A quarter. Any number may be None: of fewer than five people, who are not told by their number.

    joined, ended: whose care began, and whose programme ended, in it. asked, kept: check-ins. changes: of each measure
    somebody has. How many were in care at all is left out: two quarters' would tell a single person's coming or going.
    """

    first: date
    last: date
    joined: int | None
    ended: int | None
    asked: int | None
    kept: int | None
    changes: tuple[Paired | TooFew, ...] = ()


def practice(people: Iterable[PersonFact], quarter: Quarter) -> Practice:
    """Pool a caseload over a quarter. people: everybody who was ever in it, and was not erased."""
    there = [p for p in people if p.joined <= quarter.last and (p.left is None or p.left >= quarter.first)]
    asked = [p for p in there if p.check_ins]
    enough = len(asked) >= LEAST_PEOPLE
    return Practice(
        quarter.first,
        quarter.last,
        _told(sum(p.joined in quarter for p in there)),
        _told(sum(p.ended in quarter for p in there)),
        sum(len(p.check_ins) for p in asked) if enough else None,
        sum(sum(p.check_ins) for p in asked) if enough else None,
        tuple(_changes(there)),
    )


def _told(people: int) -> int | None:
    """A number of people; nobody at all may be told, one to four may not."""
    return people if people == 0 or people >= LEAST_PEOPLE else None


def _changes(people: Sequence[PersonFact]) -> Iterable[Paired | TooFew]:
    for measure in EVERY_MEASURE:
        pairs = [pair for p in people if (pair := _start_and_end(p, measure)) is not None]
        if pairs:
            yield paired(measure, pairs) if len(pairs) >= LEAST_PEOPLE else TooFew(measure)


def _start_and_end(person: PersonFact, measure: str) -> tuple[Decimal, Decimal] | None:
    taken = [r for r in person.readings if r.measure == measure]
    if not taken:
        return None
    if MEASURES[measure].kind is MeasureKind.RATING:
        first = [r for r in taken if r.taken_at < taken[0].taken_at + RATING_WINDOW - EARLY_BY]
        last = [r for r in taken if r.taken_at > taken[-1].taken_at - RATING_WINDOW + EARLY_BY]
        apart = taken[-1].taken_at - taken[0].taken_at >= 2 * (RATING_WINDOW - EARLY_BY)
        return (mean_reading(first).value, mean_reading(last).value) if apart else None
    apart = taken[-1].taken_at - taken[0].taken_at >= MEASURES[measure].retest - EARLY_BY
    return (taken[0].value, taken[-1].value) if apart else None
