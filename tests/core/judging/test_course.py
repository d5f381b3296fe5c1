"""The change of level in all readings: found, dated, and never made by one misread."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from math import inf, sqrt

import numpy as np
import pytest
import statsmodels.api as sm
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy import optimize, stats
from statsmodels.datasets import nile

from core.judging import course
from core.judging.course import CLIP, OWN_DF, SURE, WINSOR, ChangePoint, Point, change_point, may_be_sure, winsorised

START = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)


def points(*values: float, variance: float = 1.0, days: int = 1, instrument: float = 0.0) -> list[Point]:
    return [Point(START + n * timedelta(weeks=4), float(v), variance, instrument, days) for n, v in enumerate(values)]


def found(*values: float, **rest: float) -> ChangePoint:
    result = change_point(points(*values, **rest))  # type: ignore[arg-type]
    assert result is not None
    return result


def test_a_step_is_found_and_dated_with_both_its_levels():
    seen = found(10, 11, 10, 16, 15.5, 16)
    assert seen.since == START + timedelta(weeks=12)
    assert (seen.before, seen.after) == (pytest.approx(31 / 3), pytest.approx(47.5 / 3))
    assert seen.sure(0) and not seen.start_alone


def test_without_its_three_precautions_t_squared_is_the_likelihood_ratio_of_a_normal_shift(monkeypatch):
    """Twice the log likelihood of two means over that of one, maximised by scipy rather than by our formula."""
    monkeypatch.setattr(course, "WINSOR", inf)
    monkeypatch.setattr(course, "OWN_DF", 10**9)
    dice = np.random.default_rng(5)
    for _ in range(20):
        variances = dice.uniform(0.5, 3, 7)
        values = dice.normal(50, np.sqrt(variances)) + np.r_[np.zeros(4), np.full(3, dice.normal(0, 3))]
        at = [Point(START + timedelta(weeks=n), v, s) for n, (v, s) in enumerate(zip(values, variances, strict=True))]

        def misfit(level: float, part: slice, y: np.ndarray = values, v: np.ndarray = variances) -> float:
            return -float(stats.norm.logpdf(y[part], level, np.sqrt(v[part])).sum())

        def best(part: slice) -> float:
            return float(optimize.minimize_scalar(misfit, args=(part,), bracket=(40, 60), tol=1e-10).fun)

        whole = best(slice(None))
        ratios = [2 * (whole - best(slice(0, cut)) - best(slice(cut, None))) for cut in range(1, 6)]
        seen = change_point(at)
        assert seen is not None
        assert seen.t**2 == pytest.approx(max(ratios), rel=1e-5)


def test_the_nile_falls_after_1898_as_published():
    """Its flow at Aswan, from statsmodels: a change after 1898, levels of 1,097.8 and 850.0 (Cobb 1978, Biometrika
    65:243-251; the levels are the means of the two parts)."""
    flow = nile.load_pandas().data
    volume = flow["volume"].to_numpy(dtype=float)
    after = (flow["year"].to_numpy() >= 1899).astype(float)
    fitted = sm.OLS(volume, sm.add_constant(after)).fit()
    years = [
        Point(datetime(int(year), 7, 1, tzinfo=UTC), value, float(fitted.scale))
        for year, value in zip(flow["year"], volume, strict=True)
    ]
    seen = change_point(years)
    assert seen is not None and seen.since.year == 1899 and seen.sure(0)
    assert (seen.before, seen.after) == (pytest.approx(1097.75, rel=0.01), pytest.approx(849.97, rel=0.01))
    assert seen.t == pytest.approx(fitted.tvalues[1], rel=0.06)  # robust, and with a little less than its own noise


def test_an_odd_reading_among_two_does_not_carry_the_change():
    assert abs(found(10, 10, 10, 10, 40).t) < SURE
    assert abs(found(10, 10, 10, 40, 10).t) < SURE
    assert found(10, 10, 10, 16, 40).sure(0)  # but both are beyond here


@given(
    st.lists(st.floats(-1, 1), min_size=4, max_size=6),
    st.data(),
    st.floats(-1000, 1000),
)
def test_one_misread_never_makes_a_change(values, data, misread):
    """Readings within an error of the level, one of them anything at all; not a start that stands alone."""
    where = data.draw(st.integers(1, len(values) - 1))
    values[where] = misread
    seen = change_point(points(*values))
    assert seen is not None and (not seen.sure(0) or seen.start_alone)


def test_a_start_that_stands_alone_says_so():
    assert found(20, 10, 10.5, 10).start_alone
    assert not found(20, 20, 10, 10.5).start_alone


@given(
    st.lists(st.integers(-40, 40), min_size=4, max_size=6),
    st.integers(-1000, 1000),
    st.sampled_from([0.25, 0.5, 2.0, 4.0]),
)
def test_shifting_the_values_or_changing_their_unit_changes_nothing(values, shift, scale):
    assume(len(set(values)) > 1)
    plain = found(*values, variance=4.0)
    moved = found(*(scale * v + shift for v in values), variance=4.0 * scale * scale)
    assert moved.t == pytest.approx(plain.t, rel=1e-6, abs=1e-6)
    assert moved.noise == pytest.approx(plain.noise, rel=1e-6)


@given(st.lists(st.integers(-40, 40), min_size=4, max_size=6))
def test_time_reversed_the_change_has_the_other_sign(values):
    """For a cut that leaves two readings on either side, which is the only one that is looked at both ways."""

    def at_cuts(series: list[int]) -> dict[int, float]:
        cuts = {}
        for cut in range(2, len(series) - 1):
            cuts[cut] = course.between(points(*series[:cut]), points(*series[cut:])).t
        return cuts

    forward, backward = at_cuts(values), at_cuts(values[::-1])
    for cut, t in forward.items():
        assert t == pytest.approx(-backward[len(values) - cut], abs=1e-9)


def test_sides_with_the_same_median_show_no_change():
    assert course.between(points(10, 30, 20), points(30, 10)).t == 0


def test_own_noise_moves_the_bound_but_no_further_than_a_handful_of_readings_can_defend():
    steady, restless = found(10, 10, 10, 14, 14, 14), found(8, 12, 10, 12, 16, 14)
    assert steady.noise == pytest.approx(sqrt(OWN_DF / (OWN_DF + 4)))
    assert restless.noise > 1 and abs(restless.t) < abs(steady.t)
    wild = found(-900, 900, -900, 900, -900, 900)
    assert wild.noise <= sqrt((OWN_DF + 6 * CLIP**2) / (OWN_DF + 4))


def test_own_noise_is_never_less_than_the_instruments():
    assert found(10, 10, 10, 14, 14, 14, instrument=0.9).noise == pytest.approx(sqrt(0.9))


def test_the_ratings_within_four_weeks_tell_of_own_noise_too():
    four_weeks = [Point(START + n * timedelta(weeks=4), 5.0 + n // 2, 0.25, days=4) for n in range(4)]
    steady = [Point(p.at, p.value, p.variance, days=4, scatter=0.0) for p in four_weeks]
    moody = [Point(p.at, p.value, p.variance, days=4, scatter=12.0) for p in four_weeks]
    plain, calm, wild = (change_point(each) for each in (four_weeks, steady, moody))
    assert plain and calm and wild
    assert calm.noise == pytest.approx(sqrt(OWN_DF / (OWN_DF + 2 + 12)))
    assert wild.noise == pytest.approx(sqrt((OWN_DF + 48) / (OWN_DF + 2 + 12)))
    assert abs(wild.t) < abs(plain.t) < abs(calm.t)


def test_too_few_readings_have_no_change():
    assert change_point([]) is None and change_point(points(1)) is None and change_point(points(1, 9)) is None
    assert change_point(points(1, 9, days=4)) is not None  # means of four days each


@given(st.lists(st.floats(-12, 12), min_size=2, max_size=6), st.floats(0, 0.5))
def test_the_quick_look_never_misses_a_sure_change(values, spread):
    seen = change_point(points(*values, days=4))
    if seen is not None and seen.sure(spread):
        assert may_be_sure(points(*values), spread)


def test_a_winsorised_mean_is_between_mean_and_median():
    assert winsorised([5, 6, 7], 1.0) == 6
    assert winsorised([6, 6, 60], 1.0) == pytest.approx((12 + 6 + WINSOR) / 3)


def test_in_an_ideal_world_a_sure_change_is_seen_in_less_than_one_of_400_years():
    """Two readings at the start, then a retest every four weeks; the readings a turn has at hand. 3,000 years expect at
    most 7.5; 20 would be far outside."""
    dice = np.random.default_rng(11)
    years = 0
    for _ in range(3000):
        y = dice.normal(size=15)
        for last in range(3, 15):
            at_hand = points(*y[:2], *y[max(2, last - 4) : last + 1])
            if may_be_sure(at_hand, 0) and (seen := change_point(at_hand)) is not None and seen.sure(0):
                years += 1
                break
    assert years < 20
