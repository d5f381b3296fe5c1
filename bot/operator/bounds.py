"""How many true changes any rule can find at a given rate of false words, with normal errors.

    samehour judgement --bounds

Two bounds for each measure, from what is known of a change of the important size to what is not:

moment       its week and direction are known, and the comparison is made once: the mean of three retests against all
             readings before (Neyman and Pearson; half the rate for each direction, since a rule has to tell of
             either). No rule finds more.
nothing      neither week nor direction is known, and every retest of a year is looked at: the likelihood ratio of a
             mixture of all weeks and both directions, evenly weighed. Of all rules with as many false words it finds
             the most, on average over the weeks.

The level before is known only by the readings; the error of a reading is known exactly, and normal. Rules in use know
less: people swing unequally, and numbers are misread. The rates are the goals, shared evenly by the seven measures of a
usual plan: one false word in 60 client-years if errors are independent, one in 20 if days are alike as published
(`core.judging.course.WANDERS`).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import exp, fsum, log, sqrt
from operator import mul
from random import Random
from statistics import NormalDist

from rich.console import Console
from rich.table import Table

from core.judging.course import WANDER_DAYS, WANDERS, variance_of_mean
from core.measures import MEASURES

MEASURES_OF_A_PLAN = 7
RATES = {False: 1 / 60, True: 1 / 20}  # a client-year, by whether days are alike
RETESTS, WEEKS_APART, SEEN = 13, 4, 3  # of a year; within how many a change is to be found
BEFORE = 6  # retests before a change after half a year


@dataclass(frozen=True, slots=True)
class Kind:
    """single: SD of one reading. of: how many make one at a retest. starts: visits of the start. size: of a change."""

    key: str
    single: float
    of: int
    starts: int
    size: float


def _sd(key: str, level: float = 1.0) -> float:
    error = MEASURES[key].error
    assert error is not None
    if error.sem is not None:
        return float(error.sem)
    assert error.cv is not None
    return float(error.cv) * level


KINDS = (
    Kind("weight", _sd("weight", 82), 1, 1, 0.05 * 82),
    Kind("waist", _sd("waist"), 2, 2, 0.05 * 95),
    Kind("energy", _sd("energy"), 4, 1, 2.0),
    Kind("chair_stand_30s", _sd("chair_stand_30s"), 1, 2, 2.0),
    Kind("blood_pressure", _sd("blood_pressure"), 6, 1, 10.0),
)


def times(kind: Kind) -> list[int]:
    """Weeks of the visits of the start and of a year's retests."""
    return [*range(kind.starts), *(WEEKS_APART * (n + 1) for n in range(RETESTS))]


def covariance(kind: Kind, alike: bool) -> list[list[float]]:
    """Of the readings of a year. alike: whether days share `WANDERS` of their variance."""
    one = kind.single * kind.single
    if not alike:
        return [[one / kind.of * (i == j) for j in range(len(times(kind)))] for i in range(len(times(kind)))]
    own = variance_of_mean(one, one / kind.of, days=kind.of > 1)
    at = times(kind)
    return [
        [own if i == j else WANDERS * one * exp(-7 * abs(s - t) / WANDER_DAYS) for j, t in enumerate(at)]
        for i, s in enumerate(at)
    ]


def cholesky(of: Sequence[Sequence[float]]) -> list[list[float]]:
    """The lower triangle whose square is `of`."""
    lower: list[list[float]] = []
    for i, row in enumerate(of):
        made: list[float] = []
        for j in range(i):
            made.append((row[j] - fsum(map(mul, made, lower[j][:j]))) / lower[j][j])
        made.append(sqrt(row[i] - fsum(x * x for x in made)))
        lower.append(made)
    return lower


def whitened(lower: Sequence[Sequence[float]], values: Sequence[float]) -> list[float]:
    """The values with independent errors of variance 1."""
    found: list[float] = []
    for row, value in zip(lower, values, strict=False):
        found.append((value - fsum(map(mul, row, found))) / row[len(found)])
    return found


@dataclass(frozen=True, slots=True)
class Contrast:
    """Weights of whitened readings whose sum is the evidence, a standard normal, for a change at a cut. shift: how far
    a change of the size moves it."""

    weights: tuple[float, ...]
    shift: float


def contrasts(kind: Kind, lower: Sequence[Sequence[float]]) -> list[list[Contrast]]:
    """Of each retest, those of every cut after the start; the level before is unknown."""
    looks = []
    for n in range(kind.starts + 1, len(lower) + 1):
        level = whitened(lower, [1.0] * n)
        length = fsum(x * x for x in level)
        found = []
        for cut in range(kind.starts, n):
            step = whitened(lower, [0.0] * cut + [kind.size] * (n - cut))
            along = fsum(map(mul, step, level)) / length
            step = [x - along * y for x, y in zip(step, level, strict=True)]
            shift = sqrt(fsum(x * x for x in step))
            found.append(Contrast(tuple(x / shift for x in step), shift))
        looks.append(found)
    return looks


def evidence(looks: Sequence[Sequence[Contrast]], year: Sequence[float]) -> Iterator[float]:
    """The log likelihood ratio at each retest of a whitened year, all cuts and both directions alike."""
    for cuts in looks:
        terms: list[float] = []
        for c in cuts:
            along = c.shift * fsum(map(mul, c.weights, year))
            against = c.shift * c.shift / 2
            terms += (along - against, -along - against)
        top = max(terms)
        yield top + log(fsum(exp(x - top) for x in terms) / len(terms))


@dataclass(frozen=True, slots=True)
class Bound:
    """Shares found within three retests, of a change right after the start and after half a year."""

    key: str
    alike: bool
    rate: float
    moment: tuple[float, float]
    nothing: tuple[float, float]


def bound(kind: Kind, alike: bool, rate: float, years: int, seed: int = 1) -> Bound:
    """rate: false words of this measure a client-year. years: simulated; the same arguments give the same figures."""
    lower = cholesky(covariance(kind, alike))
    looks = contrasts(kind, lower)
    normal = NormalDist()
    least = normal.inv_cdf(1 - rate / 2)
    changes = (0, BEFORE)
    start, later = (normal.cdf(looks[n + SEEN - 1][n].shift - least) for n in changes)

    dice = Random(f"{seed}/{kind.key}/{alike}")

    def drawn() -> list[float]:
        return [dice.gauss(0, 1) for _ in lower]

    still = sorted(max(evidence(looks, drawn())) for _ in range(years))
    passed = still[int(years * (1 - rate))]
    shares = []
    for n in changes:
        change = whitened(lower, [0.0] * (kind.starts + n) + [kind.size] * (RETESTS - n))
        seen = 0
        for _ in range(years // 5):
            year = [x + y for x, y in zip(drawn(), change, strict=True)]
            seen += max(list(evidence(looks[: n + SEEN], year))[n:]) > passed
        shares.append(seen / (years // 5))
    return Bound(kind.key, alike, rate, (start, later), (shares[0], shares[1]))


def print_bounds(years: int, console: Console) -> list[Bound]:
    """Compute, print a table, and return the rows."""
    table = Table("measure", "errors", "rate", "known", "from the start", "after half a year", title="found at most")
    rows = [bound(kind, alike, rate / MEASURES_OF_A_PLAN, years) for kind in KINDS for alike, rate in RATES.items()]
    for row in rows:
        errors = "days alike" if row.alike else "independent"
        for known, (start, later) in (("moment", row.moment), ("nothing", row.nothing)):
            table.add_row(row.key, errors, f"1 in {1 / row.rate:.0f} years", known, f"{start:.0%}", f"{later:.0%}")
    console.print(table)
    return rows
