"""A line fitted to four or more readings, its uncertainty, and when it would reach a goal, or why that is unknown.

Weighted least squares: a reading weighs 1 / sem^2. Two things widen the interval beyond that of independent errors:

* Days are alike. Of the variance of a reading, `WANDERS` is taken to wander, with a correlation of exp(-days / 42).
  With a0 and a1 the unit vectors of level and slope, V that correlation and n readings, their variances grow by the
  factors a0'Va0 and a1'Va1, and the scatter has n minus both, not n - 2, to be divided by (the expectation of a
  quadratic form). Daily weights are then hardly surer than weekly ones. The share is that of a home pressure: means
  of six days a year apart differ by an SD of 7.7 mmHg (Asayama 2022), of which 8.6 a day (Kato 2010) explain the
  smaller part: (7.7^2 / 2 - 8.6^2 / 6) / (8.6^2 * 5 / 6) = 0.28. For other measures, and for the six weeks, it is
  ours.
* The scatter about the line is shrunken to the readings' own known error as in `core.judging.course`, so that four
  points that happen to lie on a line are luck, not precision; Student's t has the degrees of freedom of both.

With noise as in `bot/operator/worlds.py` the intervals of slope and level cover 94 to 97 in 100 where days are alike,
of 4 or 7 monthly readings, 13 or 26 weekly and 60 daily ones; without either they covered 58 to 94 of the weekly and
daily ones. Where days are not alike they are wider than need be (96 to 100). Without both, the figures are those of
statsmodels' WLS; the tests compare.

Times are in days; slopes are per day internally and per week in the public properties.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from decimal import Decimal
from functools import lru_cache
from math import cos, exp, pi, sin, sqrt, tan

from core.judging.change import standard_error
from core.judging.course import OWN_DF, WANDER_DAYS, WANDERS
from core.measures.measure import Measure, MeasurementError
from core.reading import Reading

D = Decimal
FEWEST = 4
LONGEST = timedelta(weeks=26)  # ours: no trend is extrapolated further
DAY = timedelta(days=1)


@dataclass(frozen=True, slots=True)
class WeightedPoint:
    """sem: standard error of `value`, in the measure's unit; None if unknown."""

    at: datetime
    value: Decimal
    sem: Decimal | None = None


@dataclass(frozen=True, slots=True)
class Trend:
    """centre_at, centre: the weighted centroid, through which the line passes. slope: units per day.

    slope_error, centre_error: their standard errors, which are independent. t: the quantile for the interval. scale:
    scatter about the line relative to the known errors, squared; 1 is expected.
    """

    n: int
    centre_at: datetime
    centre: Decimal
    slope: Decimal
    slope_error: Decimal
    centre_error: Decimal
    t: Decimal
    scale: Decimal

    @property
    def per_week(self) -> Decimal:
        return 7 * self.slope

    @property
    def per_week_between(self) -> tuple[Decimal, Decimal]:
        """Interval of the slope, in units per week."""
        half = 7 * self.t * self.slope_error
        return self.per_week - half, self.per_week + half

    @property
    def clear(self) -> bool:
        """Whether the interval of the slope excludes zero."""
        low, high = self.per_week_between
        return low > 0 or high < 0

    def level(self, at: datetime) -> Decimal:
        """The fitted value at an instant."""
        return self.centre + self.slope * days(at - self.centre_at)

    def between(self, at: datetime) -> tuple[Decimal, Decimal]:
        """Interval of the line (not of a single reading) at an instant."""
        away = days(at - self.centre_at)
        half = self.t * (self.centre_error**2 + (self.slope_error * away) ** 2).sqrt()
        return self.level(at) - half, self.level(at) + half


def days(span: timedelta) -> Decimal:
    """The span in days, exact to the microsecond."""
    return D(span // timedelta(microseconds=1)) / D(86_400_000_000)


def points_of(
    measure: Measure, readings: Iterable[Reading], error: MeasurementError | None = None
) -> tuple[WeightedPoint, ...]:
    """The readings that count, with their errors. error: propagated, for a derived measure."""
    known = error or measure.error
    return tuple(
        WeightedPoint(
            r.taken_at,
            r.value,
            standard_error(known, r.value, r.attempts, r.window) if known and r.value else None,
        )
        for r in readings
        if r.counts
    )


def fit(points: Sequence[WeightedPoint], *, wanders: float = WANDERS, own_df: int = OWN_DF) -> Trend | None:
    """Fit the weighted line with its 95 % interval; None with fewer than four readings, or if all share one instant.

    points: oldest first. wanders: share of the variance that days share. own_df: what the known error is worth, in
    degrees of freedom. If any error is unknown, all readings weigh the same and the interval comes from the scatter
    alone.
    """
    n = len(points)
    if n < FEWEST:
        return None
    sems = [p.sem for p in points if p.sem]
    known = len(sems) == n
    weights = [1 / (sem * sem) for sem in sems] if known else [D(1)] * n
    start = points[0].at
    xs = [days(p.at - start) for p in points]
    total = sum(weights, D(0))
    middle = sum((w * x for w, x in zip(weights, xs, strict=True)), D(0)) / total
    centre = sum((w * p.value for w, p in zip(weights, points, strict=True)), D(0)) / total
    rows = [(w, x - middle, p.value - centre) for w, x, p in zip(weights, xs, points, strict=True)]
    spread = sum((w * x * x for w, x, _ in rows), D(0))
    if not spread:
        return None
    slope = sum((w * x * y for w, x, y in rows), D(0)) / spread
    roots = [float(w.sqrt()) for w in weights]
    at = [float(x) for x in xs]
    of_centre = D(_grown([r / sqrt(total) for r in roots], at, wanders))
    of_slope = D(_grown([r * float(x) / sqrt(spread) for r, (_, x, _) in zip(roots, rows, strict=True)], at, wanders))
    scatter = sum((w * (y - slope * x) ** 2 for w, x, y in rows), D(0)) * (n - 2) / (n - of_centre - of_slope)
    own = own_df if known else 0
    scale = (own + scatter) / (own + n - 2)
    return Trend(
        n=n,
        centre_at=start + timedelta(days=float(middle)),
        centre=centre,
        slope=slope,
        slope_error=(scale * of_slope / spread).sqrt(),
        centre_error=(scale * of_centre / total).sqrt(),
        t=t_quantile(n - 2 + own),
        scale=scale,
    )


def _grown(unit: Sequence[float], at: Sequence[float], wanders: float) -> float:
    """a'Va for a unit vector: by how much a variance grows because a share of it wanders. at: days, rising. Linear in
    the number of readings, since exp(-(t3 - t1)) is exp(-(t3 - t2)) exp(-(t2 - t1))."""
    squares = pairs = before = 0.0
    last = at[0]
    for a, day in zip(unit, at, strict=True):
        before *= exp(-max(day - last, 0.0) / WANDER_DAYS)
        pairs += a * before
        squares += a * a
        before += a
        last = day
    return (1 - wanders) * squares + wanders * (squares + 2 * pairs)


@dataclass(frozen=True, slots=True)
class Projection:
    """When the line and its interval reach the target. Instants; `earliest` is never before now."""

    earliest: datetime
    likely: datetime
    latest: datetime


@dataclass(frozen=True, slots=True)
class NoProjection:
    """reason: "too_few_readings", "no_clear_trend", "already_there", "other_way" or "too_far_ahead"."""

    reason: str


def projection(trend: Trend | None, target: Decimal, now: datetime) -> Projection | NoProjection:
    """When a goal would be reached if the trend continued, as a range of dates, or why that cannot be said.

    The range is where the interval of the line meets the target (Fieller's interval: both the slope and the level are
    uncertain). There is no projection if the slope may be zero, leads away from the target, or puts either end of the
    range more than 26 weeks away.
    """
    if trend is None:
        return NoProjection("too_few_readings")
    if not trend.clear:
        return NoProjection("no_clear_trend")
    to_go = target - trend.level(now)
    if to_go == 0 or (to_go > 0) != (trend.slope > 0):
        came_past = (target - trend.centre > 0) == (trend.slope > 0) and target != trend.centre
        return NoProjection("already_there" if came_past or to_go == 0 else "other_way")
    away = target - trend.centre
    t_squared = trend.t * trend.t
    a = trend.slope**2 - t_squared * trend.slope_error**2  # positive: the slope differs from zero
    b = trend.slope * away
    c = away**2 - t_squared * trend.centre_error**2
    root = (b * b - a * c).sqrt()
    earliest, latest = sorted(((b - root) / a, (b + root) / a))
    if latest > days(now + LONGEST - trend.centre_at):
        return NoProjection("too_far_ahead")
    return Projection(
        earliest=max(now, trend.centre_at + float(earliest) * DAY),
        likely=trend.centre_at + float(away / trend.slope) * DAY,
        latest=trend.centre_at + float(latest) * DAY,
    )


@lru_cache(maxsize=256)
def t_quantile(freedom: int, inside: float = 0.95) -> Decimal:
    """The two-sided quantile of Student's t: |t| stays below it with probability `inside`.

    Found by bisection of the finite series of Abramowitz & Stegun 26.7.3-4 (integer degrees of freedom), which rises
    from 0 to 1 as theta = arctan(t / sqrt(freedom)) goes from 0 to a quarter turn.

    Raises: ValueError for freedom < 1 or a probability outside (0, 1).

    >>> round(t_quantile(2), 3)
    Decimal('4.303')
    """
    if freedom < 1 or not 0 < inside < 1:
        raise ValueError(f"t with {freedom} degrees of freedom, {inside}")
    low, high = 0.0, pi / 2
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if _t_inside(middle, freedom) < inside else (low, middle)
    return D(repr(sqrt(freedom) * tan((low + high) / 2)))


def _t_inside(theta: float, freedom: int) -> float:
    c, s = cos(theta), sin(theta)
    odd = freedom % 2
    term = total = (c if freedom > 1 else 0.0) if odd else 1.0
    for k in range(3 if odd else 2, freedom - 1, 2):
        term *= c * c * (k - 1) / k
        total += term
    return 2 / pi * (theta + s * total) if odd else s * total
