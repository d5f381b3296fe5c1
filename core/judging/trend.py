"""A line fitted to four or more readings, its uncertainty, and when it would reach a goal, or why that is unknown.

Weighted least squares: a reading weighs 1 / sem^2. The interval uses Student's t with n - 2 degrees of freedom and the
scatter about the line, but never less scatter than the readings' own known error: four points that happen to lie on a
line are luck, not precision. (Without that floor the figures are those of statsmodels' WLS; the tests compare.)

Times are in days; slopes are per day internally and per week in the public properties.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from decimal import Decimal
from functools import lru_cache
from math import cos, pi, sin, sqrt, tan

from core.judging.change import standard_error
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


def fit(points: Sequence[WeightedPoint]) -> Trend | None:
    """Fit the weighted line with its 95 % interval; None with fewer than four readings, or if all share one instant.

    If any error is unknown, all readings weigh the same and the interval comes from the scatter alone.
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
    scale = sum((w * (y - slope * x) ** 2 for w, x, y in rows), D(0)) / (n - 2)
    if known:
        scale = max(scale, D(1))
    return Trend(
        n=n,
        centre_at=start + timedelta(days=float(middle)),
        centre=centre,
        slope=slope,
        slope_error=(scale / spread).sqrt(),
        centre_error=(scale / total).sqrt(),
        t=t_quantile(n - 2),
        scale=scale,
    )


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
