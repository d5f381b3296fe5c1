"""The course of a measure: did its level change between any two of its readings, about when, how sure is that?

`core.judging.change` compares a reading with the start, by published error. This looks at all readings at hand at once,
and is what a coach is told by. For every way to part the readings into those before and those after:

    t = (after - before) / sqrt(s2 * (1 / sum w_before + 1 / sum w_after)),    w = 1 / variance of a reading

the largest is taken. With s2 = 1 it is the square root of the generalised likelihood ratio for a shift of a normal
mean at an unknown time (Hawkins 1977, J Am Stat Assoc 72:180-186; second-hand). Three things make it robust:

* before and after are winsorised means: no reading counts as further from its side's median than `WINSOR` of its own
  standard errors. Of two middle values the one nearer to the other side is the median, so that of two readings the
  odd one cannot carry the change. After a change there must be two readings, or one that is a mean of four days.
  So one misread never makes a change, unless it is the start and alone; `start_alone` says so.
* own noise: s2 is the scatter of this person's readings about both sides, in published variances, shrunken to 1:

      s2 = (OWN_DF + sum of squared residuals) / (OWN_DF + their degrees of freedom)

  the residuals clipped at `CLIP`: of n readings there are n - 2, and those of the ratings within four weeks. It
  replaces the published swing only as far as a handful of readings can defend. Published swings have a coefficient of
  variation of 0.36 between people (0.24 / 0.66, Cheuvront 2004; 3.1 / 8.6, Kato 2010); by CV = 1 / sqrt(2 df) that is
  worth 4 degrees of freedom, and we ask for twice as many. It is never below what the instrument itself must scatter.
* a level is not looked for further back than the readings at hand: the start, and the newest `NEWEST`.

The bound is `SURE`, more for a measure whose swing is known to differ between people. It was found from the run length
in an ideal world: with normal independent errors, two readings at the start and a retest every four weeks, the largest
t of a year is beyond 4.2 in 1 of 400 client-years. It is raised by a tenth because the errors of retests are correlated
and people unequal, and was then checked, not tuned, in the worlds of `bot/operator/worlds.py`.

Rejected, both tried: a plain trend, and a CUSUM; they found less at as many false alarms. Single weeks of a rating:
moods of neighbouring weeks are alike, and the bound had to be so high that four-week means found more.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from math import sqrt

WINSOR = 1.5  # standard errors of a reading
CLIP = 2.5
OWN_DF = 8
NEWEST = 5  # readings beside the start; the present one included
SURE = 4.6
SURE_PER_SPREAD = 0.25  # added, as a share of it, for each unit of `MeasurementError.spread`
FEWEST, FEWEST_DAYS = 2, 4  # readings after a change, or days of one that is a mean


@dataclass(frozen=True, slots=True)
class Point:
    """A reading, or the mean of a series or of four weeks.

    variance: its error's, in the unit squared. instrument: the share of it that the instrument alone must have, 0 to 1.
    days: how many days it is the mean of. scatter: of those about it, as a sum of squares in their variances, each
    clipped at `CLIP`; it has `days` - 1 degrees of freedom, if it is known.
    """

    at: datetime
    value: float
    variance: float
    instrument: float = 0.0
    days: int = 1
    scatter: float | None = None

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

    def sure(self, spread: float) -> bool:
        """Whether a coach should hear of it. spread: of the measure's error between people."""
        return abs(self.t) > bound(spread)


def bound(spread: float) -> float:
    return SURE * (1 + SURE_PER_SPREAD * spread)


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


def may_be_sure(points: Sequence[Point], spread: float) -> bool:
    """False if no change in these readings can be sure; a quick look, so that most readings need no closer one.

    Two levels are no further apart than the extreme readings, and the standard error of their difference is no less
    than that of all readings parted evenly, at the smallest own noise there is.
    """
    if len(points) < 2:
        return False
    low = high = points[0].value
    weight, freedom = 0.0, len(points) - 2
    for p in points:
        low, high = min(low, p.value), max(high, p.value)
        weight += 1 / p.variance
        freedom += p.freedom
    return high - low > bound(spread) * sqrt(OWN_DF / (OWN_DF + freedom) * 4 / weight)


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
    error = noise * (1 / sum(1 / p.variance for p in before) + 1 / sum(1 / p.variance for p in after))
    return ChangePoint(
        since=after[0].at,
        before=first,
        after=second,
        t=(second - first) / sqrt(error),
        noise=sqrt(noise),
        start_alone=len(before) == 1 and before[0].days < FEWEST_DAYS,
    )


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
