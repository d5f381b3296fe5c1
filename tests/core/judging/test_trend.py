"""A line through readings agrees with statsmodels, and there is a projection only if the data allow it."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from decimal import Decimal

import numpy as np
import pytest
import statsmodels.api as sm
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from core.judging.course import OWN_DF
from core.judging.trend import (
    WANDER_DAYS,
    WANDERS,
    NoProjection,
    Projection,
    Trend,
    WeightedPoint,
    fit,
    points_of,
    projection,
    t_quantile,
)
from core.measures import MEASURES
from core.reading import How, Reading

D = Decimal
START = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)
NOW = START + timedelta(weeks=20)


def points(*rows: tuple[float, float, float | None]) -> tuple[WeightedPoint, ...]:
    """(day, value, sem)"""
    return tuple(
        WeightedPoint(START + timedelta(days=day), D(str(value)), sem and D(str(sem))) for day, value, sem in rows
    )


SCATTERED = ((0, 90, 0.2), (28, 86, 0.4), (57, 88, 0.2), (84, 83, 0.3), (112, 84, 0.2), (139, 80, 0.6))


def plain(*rows: tuple[float, float, float | None]) -> Trend:
    """As if errors were independent and nothing were known of them beforehand."""
    found = fit(points(*rows), wanders=0, own_df=0)
    assert found is not None
    return found


def by_statsmodels(rows):
    x, y, sem = (np.array(column, float) for column in zip(*rows, strict=True))
    return sm.WLS(y, sm.add_constant(x), weights=1 / sem**2).fit()


def test_slope_and_interval_are_those_of_weighted_least_squares_in_statsmodels():
    found, outside = plain(*SCATTERED), by_statsmodels(SCATTERED)
    assert float(found.scale) == pytest.approx(outside.scale)
    assert float(found.slope) == pytest.approx(outside.params[1])
    assert float(found.slope_error) == pytest.approx(outside.bse[1])
    assert [float(v) / 7 for v in found.per_week_between] == pytest.approx(list(outside.conf_int()[1]))


@pytest.mark.parametrize("day", [-30, 0, 70, 139, 200])
def test_the_interval_of_the_line_is_that_of_statsmodels_at_any_day(day):
    found = plain(*SCATTERED).between(START + timedelta(days=day))
    outside = by_statsmodels(SCATTERED).get_prediction([[1, day]]).conf_int()[0]
    assert [float(v) for v in found] == pytest.approx(list(outside))


def test_without_known_errors_the_line_is_that_of_ordinary_least_squares():
    rows = [(day, value, None) for day, value, _ in SCATTERED]
    found = plain(*rows)
    outside = stats.linregress([r[0] for r in rows], [r[1] for r in rows])
    assert float(found.slope) == pytest.approx(outside.slope)
    assert float(found.slope_error) == pytest.approx(outside.stderr)


def test_four_points_that_happen_to_lie_on_a_line_are_no_surer_than_their_errors_allow():
    found = fit(points((0, 80, 0.5), (28, 79, 0.5), (56, 78, 0.5), (84, 77, 0.5)), wanders=0)
    assert float(found.scale) == pytest.approx(OWN_DF / (OWN_DF + 2))
    by_errors = 0.5 / np.sqrt(((np.array([0, 28, 56, 84]) - 42) ** 2).sum())
    assert float(found.slope_error) == pytest.approx(by_errors * np.sqrt(0.8))
    assert float(found.t) == pytest.approx(stats.t.ppf(0.975, 2 + OWN_DF))


def alike(days: np.ndarray) -> np.ndarray:
    return WANDERS * np.exp(-abs(days[:, None] - days) / WANDER_DAYS) + (1 - WANDERS) * np.eye(len(days))


def test_the_errors_of_level_and_slope_are_those_of_correlated_readings_the_long_way():
    """The covariance (X'WX)^-1 X'W S WX (X'WX)^-1 with the whole matrix S, by numpy."""
    days, values, sems = (np.array(column, float) for column in zip(*SCATTERED, strict=True))
    found = fit(points(*SCATTERED), own_df=0)
    weights = 1 / sems**2
    middle = (weights * days).sum() / weights.sum()
    x = np.stack([np.ones_like(days), days - middle], axis=1)
    inverse = np.linalg.inv(x.T @ (weights[:, None] * x))
    to_estimates = inverse @ (x.T * weights)
    covariance = to_estimates @ (alike(days) * np.outer(sems, sems)) @ to_estimates.T
    left = values - x @ (to_estimates @ values)
    grown = covariance[0, 0] / inverse[0, 0] + covariance[1, 1] / inverse[1, 1]
    scale = (weights * left**2).sum() / (len(days) - grown)
    assert float(found.scale) == pytest.approx(scale)
    assert float(found.centre_error) == pytest.approx(np.sqrt(scale * covariance[0, 0]))
    assert float(found.slope_error) == pytest.approx(np.sqrt(scale * covariance[1, 1]))


@pytest.mark.parametrize("days", [range(0, 112, 28), range(0, 182, 7), range(40)], ids=["monthly", "weekly", "daily"])
def test_intervals_cover_nineteen_in_twenty_where_days_are_alike(days):
    at = np.array(days, float)
    together = np.linalg.cholesky(alike(at))
    dice, covered, runs = np.random.default_rng(3), 0, 400
    for _ in range(runs):
        noise = together @ dice.normal(size=len(at))
        found = fit(points(*((day, 80 + e, 1.0) for day, e in zip(at, noise, strict=True))))
        low, high = found.per_week_between
        covered += low <= 0 <= high
    assert covered / runs == pytest.approx(0.955, abs=0.03)


def test_three_readings_or_one_instant_make_no_line():
    assert fit(points(*SCATTERED[:3])) is None
    assert fit(points(*[(0, 80, 0.5)] * 5)) is None


def test_readings_bring_their_own_errors_and_side_notes_stay_out():
    weights = [Reading("weight", D(80), START + timedelta(days=d)) for d in (0, 28)]
    early = Reading("weight", D(70), START + timedelta(days=3), how=How.EARLY)
    found = points_of(MEASURES["weight"], [*weights, early])
    assert [(p.value, p.sem) for p in found] == [(D(80), D("0.528"))] * 2


@pytest.mark.parametrize("freedom", [*range(1, 31), 60, 120])
@pytest.mark.parametrize("inside", [0.5, 0.9, 0.95, 0.99])
def test_quantiles_of_student_are_those_of_scipy(freedom, inside):
    assert float(t_quantile(freedom, inside)) == pytest.approx(stats.t.ppf((1 + inside) / 2, freedom), rel=1e-9)


@pytest.mark.parametrize(("freedom", "inside"), [(0, 0.95), (3, 1.0), (3, 0.0)])
def test_an_impossible_quantile_is_refused(freedom, inside):
    with pytest.raises(ValueError, match="degrees"):
        t_quantile(freedom, inside)


# --- projection -------------------------------------------------------------------------------------------------

STEADY = ((0, 90, 0.3), (28, 88.2, 0.3), (56, 85.9, 0.3), (84, 84.1, 0.3), (112, 82, 0.3), (140, 80.1, 0.3))


def test_a_steady_line_reaches_its_goal_within_a_range_of_dates():
    found = projection(fit(points(*STEADY)), D(78), NOW)
    assert isinstance(found, Projection)
    assert NOW < found.earliest < found.likely < found.latest < NOW + timedelta(weeks=26)


def test_the_range_is_where_the_interval_of_the_line_meets_the_goal():
    """Fieller's interval the long way: along statsmodels' band in steps of a quarter day."""
    found, outside = projection(plain(*STEADY), D(78), NOW), by_statsmodels(STEADY)
    grid = np.arange(140, 330, 0.25)
    low, high = outside.get_prediction(sm.add_constant(grid)).conf_int().T
    met = grid[(low <= 78) & (high >= 78)]
    ends = [(at - START) / timedelta(days=1) for at in (found.earliest, found.latest)]
    assert ends == pytest.approx([met[0], met[-1]], abs=0.3)
    assert (found.likely - START) / timedelta(days=1) == pytest.approx((78 - outside.params[0]) / outside.params[1])


@pytest.mark.parametrize(
    ("rows", "target", "reason"),
    [
        pytest.param(STEADY[:3], 78, "too_few_readings", id="three readings"),
        pytest.param([(d, 80 + (n % 2), 0.5) for n, (d, *_) in enumerate(STEADY)], 78, "no_clear_trend", id="flat"),
        pytest.param(STEADY, 95, "other_way", id="the line leads away"),
        pytest.param(STEADY, 84, "already_there", id="the line has passed it"),
        pytest.param(STEADY, 60, "too_far_ahead", id="more than half a year ahead"),
    ],
)
def test_a_projection_is_refused_with_its_reason(rows, target, reason):
    assert projection(fit(points(*rows)), D(target), NOW) == NoProjection(reason)


def test_a_range_that_is_open_towards_later_is_refused_even_when_its_middle_is_near():
    shaky = [(0, 90, 0.3), (28, 86, 0.3), (56, 87, 0.3), (84, 83, 0.3), (112, 84, 0.3), (140, 80, 0.3)]
    trend = fit(points(*shaky))
    assert trend.clear
    assert projection(trend, D(74), NOW) == NoProjection("too_far_ahead")
    assert trend.level(NOW + timedelta(weeks=20)) < 74


@given(
    st.lists(st.tuples(st.integers(0, 400), st.decimals(50, 120, places=1)), min_size=4, max_size=12),
    st.decimals(50, 120, places=1),
)
def test_any_readings_give_a_range_in_order_or_a_reason(rows, target):
    rows = sorted(rows)
    now = START + timedelta(days=rows[-1][0])
    found = projection(fit(tuple(WeightedPoint(START + timedelta(days=d), v, D("0.5")) for d, v in rows)), target, now)
    if isinstance(found, Projection):
        assert now <= found.earliest <= found.likely <= found.latest <= now + timedelta(weeks=26)
    else:
        assert found.reason in {"too_few_readings", "no_clear_trend", "already_there", "other_way", "too_far_ahead"}
