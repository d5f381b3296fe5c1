"""The course of a measure: did its level change between any two of its readings, about when, how sure is that?

`core.judging.change` compares a reading with the start, by published error. This looks at all readings at hand at once,
and is what a coach is told by. For every way to part the readings into those before and those after:

    t = (after - before) / sqrt(s2 * a'Va),    V = variances of the readings, and what days share

the largest is taken. With s2 = 1 and days that share nothing it is the square root of the generalised likelihood ratio
for a shift of a normal mean at an unknown time (Hawkins 1977, J Am Stat Assoc 72:180-186; second-hand). Four things
make it robust:

* before and after are winsorised means: no reading counts as further from its side's median than `WINSOR` of its own
  standard errors. Of two middle values the one nearer to the other side is the median, so that of two readings the
  odd one cannot carry the change. After a change there must be two readings, or one that is a mean of four days.
  So one misread never makes a change, unless it is the start and alone; `start_alone` says so.
* days are alike: of the variance of a single reading, `WANDERS` wanders, with a correlation of exp(-days / 42), as in
  `core.judging.trend`, where its source is. So a mean of n days has a variance of (`WANDERS` + (1 - `WANDERS`) / n) of
  a day's, not 1 / n; tapes of one sitting are no different. For a home week that is 5.5 mmHg: two weeks a year apart
  then differ by an SD of 7.7, as published (Asayama 2022), where 8.6 / sqrt 6 would give 5.0. a holds the weights of
  the two means; levels far apart in time are less sure than neighbours.
* own noise: s2 is the scatter of this person's readings about both sides, in published variances, shrunken to 1:

      s2 = (OWN_DF + sum of squared residuals) / (OWN_DF + their degrees of freedom)

  the residuals clipped at `CLIP`: of n readings there are n - 2, and those of the ratings within four weeks. It
  replaces the published swing only as far as a handful of readings can defend. Published swings have a coefficient of
  variation of 0.36 between people (0.24 / 0.66, Cheuvront 2004; 3.1 / 8.6, Kato 2010); by CV = 1 / sqrt(2 df) that is
  worth 4 degrees of freedom, and we ask for twice as many. It is never below what the instrument itself must scatter.
* a level is not looked for further back than the readings at hand: the start, and the newest `NEWEST`.

The bound (`bound`) is derived from how often the largest t of a year passes it without a change, if errors are normal
and wander as above (`tests/core/judging/test_course.py` runs that): once in 100 client-years for two visits and
thirteen retests, once in 400 if nothing wanders. Errors that are typical, so that some people swing more, have a
bound that is `TYPICAL` higher (a girth's is the worst that is published, which nobody exceeds). It is `UNVALUED` higher
still for a measure of which nobody has published what change matters: a false word costs as much there, and a true one
is worth less. Where an important difference is so far beyond error that it is found all the same (a weight's), it is
higher by what people differ (`core.judging.assess.least_t`); and levels that differ by less than half of what matters
are no news: a true change of that size is hardly ever estimated at less than half, and false ones mostly are.

What was tried, by simulated years (normal errors; the best of each at the same false words with days alike):

* readings of half a year instead of twelve weeks: waists found after half a year 46 -> 59 in 100, energy 50 -> 60.
* V in the standard error instead of variances alone: from the start 15 -> 31 in 100 waists, 6 -> 21 energies; after
  half a year as many waists, 69 -> 60 energies. Generalised least squares in place of the two means: no better.
* a mixture of likelihood ratios over all times, for a shift of the important size (the best test if the time is
  uniformly unknown): 1 to 3 in 100 more, and it would call a shift of any smaller size one of that size.
* looking at a rating every four weeks instead of every week: fewer found after half a year.
* a plain trend, and a CUSUM: they found less. Single weeks of a rating: moods of neighbouring weeks are alike.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from math import exp, sqrt

WINSOR = 1.5  # standard errors of a reading
CLIP = 2.5
OWN_DF = 8
NEWEST = 7  # readings beside the start; the present one included
SURE = 4.05
TYPICAL, UNVALUED = 1.06, 1.1  # by which it is higher: see above
WANDERS, WANDER_DAYS = 0.28, 42.0  # see `core.judging.trend`
FEWEST, FEWEST_DAYS = 2, 4  # readings after a change, or days of one that is a mean


@dataclass(frozen=True, slots=True)
class Point:
    """A reading, or the mean of a series or of four weeks.

    variance: its error's, in the unit squared. wander: how much of one reading's wanders. instrument: the share of the
    variance that the instrument alone must have, 0 to 1. days: how many days it is the mean of. scatter: of those about
    it, as a sum of squares in their variances, each clipped at `CLIP`; it has `days` - 1 degrees of freedom, if it is
    known.
    """

    at: datetime
    value: float
    variance: float
    instrument: float = 0.0
    days: int = 1
    scatter: float | None = None
    wander: float = 0.0

    @property
    def freedom(self) -> int:
        return 0 if self.scatter is None else self.days - 1


@dataclass(frozen=True, slots=True)
class ChangePoint:
    """The likeliest change. since: the first reading after it. before, after: levels, in the unit.

    t: how many standard errors apart they are, signed. noise: this person's swing, as a multiple of the published one.
    start_alone: whether only the first reading is before it: a start is often extreme, and what follows drifts back.
    """

    since: datetime
    before: float
    after: float
    t: float
    noise: float
    start_alone: bool

    @property
    def difference(self) -> float:
        return self.after - self.before

    @property
    def error95(self) -> float:
        """What error alone would rarely exceed between these two levels, in the unit."""
        return 1.96 * abs(self.difference / self.t)

    def sure(self, least: float) -> bool:
        """Whether a coach should hear of it. least: from `bound`."""
        return abs(self.t) > least


def bound(*, typical: bool, valued: bool) -> float:
    """What t must pass. typical: some people swing more than the published error. valued: a change that matters is
    published, or the reading is a mean of days."""
    return SURE * (TYPICAL if typical else 1.0) * (1.0 if valued else UNVALUED)


def variance_of_mean(single: float, own: float, *, days: bool) -> float:
    """Variance of a mean of days or tries, with what wanders from week to week.

    single: of one reading. own: of the mean if nothing wanders. days: whether it is less than that of one reading.
    """
    return WANDERS * single + (1 - WANDERS) * own if days else own


def change_point(points: Sequence[Point], start: int = 1) -> ChangePoint | None:
    """The likeliest change in readings, oldest first; None if there are too few on either side of any.

    start: how many of the first are visits of one start, within which no change is looked for.

    Shifting all values, or changing their unit together with the variances, changes nothing but the levels. Reversed in
    time, readings give the same t with the other sign if two of them are left on either side.
    """
    best: ChangePoint | None = None
    for cut in range(start, len(points)):
        before, after = points[:cut], points[cut:]
        if len(after) < FEWEST and after[0].days < FEWEST_DAYS:
            continue
        found = between(before, after)
        if best is None or abs(found.t) > abs(best.t):
            best = found
    return best


def may_be_sure(points: Sequence[Point], least: float) -> bool:
    """False if no change in these readings can be sure; a quick look, so that most readings need no closer one.

    Two levels are no further apart than the extreme readings, and the standard error of their difference is no less
    than that of all readings parted evenly, if nothing wandered, at the smallest own noise there is. least: from
    `bound`.
    """
    if len(points) < 2:
        return False
    low = high = points[0].value
    weight, freedom = 0.0, len(points) - 2
    for p in points:
        low, high = min(low, p.value), max(high, p.value)
        weight += 1 / (p.variance - p.wander)
        freedom += p.freedom
    return high - low > least * sqrt(OWN_DF / (OWN_DF + freedom) * 4 / weight)


def winsorised(values: Sequence[float], variance: float) -> float:
    """The mean, with no value further from the median than `WINSOR` standard errors. variance: of each value."""
    ordered = sorted(values)
    middle = (ordered[(len(ordered) - 1) // 2] + ordered[len(ordered) // 2]) / 2
    reach = WINSOR * sqrt(variance)
    if ordered[-1] <= middle + reach and ordered[0] >= middle - reach:
        return sum(values) / len(values)
    return sum(min(max(value, middle - reach), middle + reach) for value in values) / len(values)


def between(before: Sequence[Point], after: Sequence[Point]) -> ChangePoint:
    """The change if it was between these two sides."""
    earlier, later = _median(before, 0.5), _median(after, 0.5)
    first, second = earlier, later
    if earlier != later:  # with equal medians, neither value of two is the one nearer to the other side
        up = later > earlier
        first, second = _level(before, upper=up), _level(after, upper=not up)
    points = (*before, *after)
    scatter = sum(
        min((p.value - level) ** 2 / p.variance, CLIP * CLIP)
        for side, level in ((before, first), (after, second))
        for p in side
    )
    scatter += sum(p.scatter or 0.0 for p in points)
    noise = (OWN_DF + scatter) / (OWN_DF + _freedom(points))
    noise = max(noise, max(p.instrument for p in points))
    error = noise * _variance_between(before, after)
    return ChangePoint(
        since=after[0].at,
        before=first,
        after=second,
        t=(second - first) / sqrt(error),
        noise=sqrt(noise),
        start_alone=len(before) == 1 and before[0].days < FEWEST_DAYS,
    )


def _variance_between(before: Sequence[Point], after: Sequence[Point]) -> float:
    """a'Va: the variance of the difference of both means, the weights of the first negative.

    Linear in the number of readings, since exp(-(t3 - t1)) is exp(-(t3 - t2)) exp(-(t2 - t1)).
    """
    total = shared = 0.0
    last = before[0].at
    for side, sign in ((before, -1.0), (after, 1.0)):
        whole = sum(1 / p.variance for p in side)
        for p in side:
            weight = sign / (p.variance * whole)
            total += weight * weight * p.variance
            if p.wander:
                shared *= exp((last - p.at).total_seconds() / (WANDER_DAYS * 86400))
                last = p.at
                wandering = weight * sqrt(p.wander)
                total += 2 * wandering * shared
                shared += wandering
    return total


def _freedom(points: Sequence[Point]) -> int:
    return max(len(points) - 2, 0) + sum(p.freedom for p in points)


def _level(side: Sequence[Point], *, upper: bool) -> float:
    """The winsorised mean. upper: of two middle values, whether the upper one is nearer to the other side."""
    middle = _median(side, 1.0 if upper else 0.0)
    total = weights = 0.0
    for p in side:
        reach = WINSOR * sqrt(p.variance)
        weight = 1 / p.variance
        total += weight * min(max(p.value, middle - reach), middle + reach)
        weights += weight
    return total / weights


def _median(side: Sequence[Point], between: float) -> float:
    """The middle value; of two, the point `between` them from 0 to 1."""
    values = sorted(p.value for p in side)
    low, high = values[(len(values) - 1) // 2], values[len(values) // 2]
    return low + between * (high - low)
