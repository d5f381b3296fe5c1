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
from core.judging.course import (
    CLIP,
    OWN_DF,
    SURE,
    TYPICAL,
    UNVALUED,
    WANDER_DAYS,
    WANDERS,
    WINSOR,
    ChangePoint,
    Point,
    bound,
    change_point,
    may_be_sure,
    variance_of_mean,
    winsorised,
)

START = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)


def points(
    *values: float, variance: float = 1.0, days: int = 1, instrument: float = 0.0, wander: float = 0.0
) -> list[Point]:
    return [
        Point(START + n * timedelta(weeks=4), float(v), variance, instrument, days, wander=wander)
        for n, v in enumerate(values)
    ]


def found(*values: float, **rest: float) -> ChangePoint:
    result = change_point(points(*values, **rest))  # type: ignore[arg-type]
    assert result is not None
    return result


def test_a_step_is_found_and_dated_with_both_its_levels():
    seen = found(10, 11, 10, 16, 15.5, 16)
    assert seen.since == START + timedelta(weeks=12)
    assert (seen.before, seen.after) == (pytest.approx(31 / 3), pytest.approx(47.5 / 3))
    assert seen.sure(SURE) and not seen.start_alone


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
    assert seen is not None and seen.since.year == 1899 and seen.sure(SURE)
    assert (seen.before, seen.after) == (pytest.approx(1097.75, rel=0.01), pytest.approx(849.97, rel=0.01))
    assert seen.t == pytest.approx(fitted.tvalues[1], rel=0.06)  # robust, and with a little less than its own noise


def test_an_odd_reading_among_two_does_not_carry_the_change():
    assert abs(found(10, 10, 10, 10, 40).t) < SURE
    assert abs(found(10, 10, 10, 40, 10).t) < SURE
    assert found(10, 10, 10, 16, 40).sure(SURE)  # but both are beyond here


@given(
    st.lists(st.floats(-1, 1), min_size=4, max_size=6),
    st.data(),
    st.floats(-1000, 1000),
    st.sampled_from([0.0, WANDERS]),
)
def test_one_misread_never_makes_a_change(values, data, misread, wander):
    """Readings within an error of the level, one of them anything at all; not a start that stands alone."""
    where = data.draw(st.integers(1, len(values) - 1))
    values[where] = misread
    seen = change_point(points(*values, wander=wander))
    assert seen is not None and (not seen.sure(SURE) or seen.start_alone)


def test_a_start_that_stands_alone_says_so():
    assert found(20, 10, 10.5, 10).start_alone
    assert not found(20, 20, 10, 10.5).start_alone


@given(
    st.lists(st.integers(-40, 40), min_size=4, max_size=6),
    st.integers(-1000, 1000),
    st.sampled_from([0.25, 0.5, 2.0, 4.0]),
    st.sampled_from([0.0, 1.0]),
)
def test_shifting_the_values_or_changing_their_unit_changes_nothing(values, shift, scale, wander):
    assume(len(set(values)) > 1)
    plain = found(*values, variance=4.0, wander=wander)
    moved = found(*(scale * v + shift for v in values), variance=4.0 * scale * scale, wander=wander * scale * scale)
    assert moved.t == pytest.approx(plain.t, rel=1e-6, abs=1e-6)
    assert moved.noise == pytest.approx(plain.noise, rel=1e-6)


@given(st.lists(st.integers(-40, 40), min_size=4, max_size=6), st.sampled_from([0.0, 0.3]))
def test_time_reversed_the_change_has_the_other_sign(values, wander):
    """For a cut that leaves two readings on either side, which is the only one that is looked at both ways."""

    def at_cuts(series: list[int]) -> dict[int, float]:
        cuts = {}
        for cut in range(2, len(series) - 1):
            at_hand = points(*series, wander=wander)
            cuts[cut] = course.between(at_hand[:cut], at_hand[cut:]).t
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


@given(st.lists(st.floats(-12, 12), min_size=2, max_size=6), st.floats(SURE, 2 * SURE), st.sampled_from([0.0, WANDERS]))
def test_the_quick_look_never_misses_a_sure_change(values, least, wander):
    at_hand = points(*values, days=4, wander=wander)
    seen = change_point(at_hand)
    if seen is not None and seen.sure(least):
        assert may_be_sure(at_hand, least)


def test_what_days_share_is_in_the_error_of_a_change_as_a_covariance_matrix_has_it():
    """Against a'Va written out by numpy, for readings at odd times and of unequal variances."""
    dice = np.random.default_rng(3)
    for _ in range(20):
        days = np.cumsum(dice.uniform(5, 60, 7))
        wander, own = dice.uniform(0.1, 2, 7), dice.uniform(0.5, 2, 7)
        at_hand = [
            Point(START + timedelta(days=d), float(v), float(o + w), wander=float(w))
            for d, v, o, w in zip(days, dice.normal(0, 3, 7), own, wander, strict=True)
        ]
        seen = course.between(at_hand[:4], at_hand[4:])
        alike = np.sqrt(np.outer(wander, wander)) * np.exp(-np.abs(days[:, None] - days) / WANDER_DAYS)
        v = alike + np.diag(own)
        w = 1 / (own + wander)
        a = np.r_[-w[:4] / w[:4].sum(), w[4:] / w[4:].sum()]
        assert seen.difference == pytest.approx(seen.t * seen.noise * np.sqrt(a @ v @ a), rel=1e-9)


def test_two_home_weeks_a_year_apart_differ_as_published():
    """Asayama 2022: an SD of 7.7 mmHg, where independent days of 8.6 (Kato 2010) would give 5.0."""
    week = variance_of_mean(8.6**2, 8.6**2 / 6, days=True)
    assert sqrt(2 * week) == pytest.approx(7.7, abs=0.1)
    assert variance_of_mean(1.0, 1.2, days=False) == 1.2


def test_the_bound_is_higher_where_a_false_word_is_likelier_or_a_true_one_worth_less():
    assert bound(typical=False, valued=True) == SURE
    assert bound(typical=True, valued=True) == pytest.approx(SURE * TYPICAL)
    assert bound(typical=True, valued=False) == pytest.approx(SURE * TYPICAL * UNVALUED)


def test_a_winsorised_mean_is_between_mean_and_median():
    assert winsorised([5, 6, 7], 1.0) == 6
    assert winsorised([6, 6, 60], 1.0) == pytest.approx((12 + 6 + WINSOR) / 3)


@pytest.mark.parametrize(
    "wanders, most",
    [
        pytest.param(0.0, 16, id="nothing wanders: 1 in 400 years"),
        pytest.param(WANDERS, 42, id="days alike as published: 1 in 100 years"),
    ],
)
def test_a_sure_change_is_rarely_seen_where_there_is_none(wanders, most):
    """Two visits at the start, then a retest every four weeks; the readings a turn has at hand. Of 2,000 years 5 and 20
    are expected; as many as `most` would be far outside."""
    dice = np.random.default_rng(11)
    days = np.array([0, 7, *range(28, 28 * 14, 28)])
    alike = np.exp(-np.abs(days[:, None] - days) / WANDER_DAYS)
    root = np.linalg.cholesky(wanders * alike + (1 - wanders) * np.eye(15))
    years = 0
    for _ in range(2000):
        y = root @ dice.normal(size=15)
        all_of = [
            Point(START + timedelta(days=int(d)), v, 1.0, wander=WANDERS) for d, v in zip(days, y.tolist(), strict=True)
        ]
        for last in range(3, 15):
            at_hand = [*all_of[:2], *all_of[max(2, last - course.NEWEST + 1) : last + 1]]
            if may_be_sure(at_hand, SURE) and (seen := change_point(at_hand, 2)) is not None and seen.sure(SURE):
                years += 1
                break
    assert years < most
