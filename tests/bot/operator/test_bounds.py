"""The bounds are those of the best tests: compared with numpy's and scipy's, and with each other."""

from __future__ import annotations

from dataclasses import replace
from io import StringIO
from random import Random

import numpy as np
import pytest
from rich.console import Console
from scipy import stats

from bot.operator import bounds
from bot.operator.bounds import BEFORE, KINDS, RETESTS, Kind, bound, cholesky, contrasts, covariance, evidence, whitened

WAIST = next(kind for kind in KINDS if kind.key == "waist")
STANDS = next(kind for kind in KINDS if kind.key == "chair_stand_30s")


@pytest.mark.parametrize("alike", [False, True])
@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.key)
def test_a_contrast_is_the_estimate_of_generalised_least_squares_in_its_errors(kind: Kind, alike: bool) -> None:
    v = np.array(covariance(kind, alike))
    lower = cholesky(v.tolist())
    assert np.allclose(np.array([row + [0.0] * (len(v) - len(row)) for row in lower]), np.linalg.cholesky(v))
    looks = contrasts(kind, lower)
    y = np.random.default_rng(1).normal(size=len(v))
    year = whitened(lower, y.tolist())
    for look, cut in ((0, 0), (5, 2), (RETESTS - 1, BEFORE)):
        n = kind.starts + look + 1
        x = np.c_[np.ones(n), np.arange(n) >= kind.starts + cut]
        inverse = np.linalg.inv(v[:n, :n])
        spread = np.linalg.inv(x.T @ inverse @ x)
        estimate = spread @ x.T @ inverse @ y[:n]
        contrast = looks[look][cut]
        assert sum(map(lambda a, b: a * b, contrast.weights, year)) == pytest.approx(estimate[1] / spread[1, 1] ** 0.5)
        assert contrast.shift == pytest.approx(kind.size / spread[1, 1] ** 0.5)


def test_the_evidence_is_the_likelihood_ratio_of_a_change_whose_week_and_direction_are_open() -> None:
    """Of the differences of each reading from the first, which know nothing of the level; densities by scipy."""
    kind = replace(WAIST, starts=1)
    v = np.array(covariance(kind, True))
    lower = cholesky(v.tolist())
    n = 5
    away = np.c_[-np.ones(n - 1), np.eye(n - 1)]
    y = np.random.default_rng(2).normal(scale=3, size=len(v))
    density = stats.multivariate_normal(cov=away @ v[:n, :n] @ away.T)
    shifted = [
        density.pdf(away @ (y[:n] - sign * kind.size * (np.arange(n) >= cut)))
        for cut in range(1, n)
        for sign in (1, -1)
    ]
    found = list(evidence(contrasts(kind, lower), whitened(lower, y.tolist())))[n - 2]
    assert found == pytest.approx(np.log(np.mean(shifted) / density.pdf(away @ y[:n])))


def test_one_comparison_of_known_moment_is_found_as_the_normal_distribution_says() -> None:
    rate = 1 / 420
    found = bound(STANDS, False, rate, 100).moment[0]
    error = STANDS.single * (1 / 2 + 1 / 3) ** 0.5
    assert found == pytest.approx(stats.norm.cdf(STANDS.size / error - stats.norm.isf(rate / 2)))


def test_who_knows_less_finds_less_and_who_may_say_more_finds_more() -> None:
    rate, years = 1 / 50, 2000
    row = bound(WAIST, True, rate, years)
    assert row.nothing[0] <= row.moment[0] and row.nothing[1] <= row.moment[1]
    assert row == bound(WAIST, True, rate, years)
    generous = bound(WAIST, True, 1 / 5, years)
    assert generous.nothing[1] > row.nothing[1]


def test_the_rate_of_false_words_is_kept_in_other_years_than_those_it_was_found_in() -> None:
    rate, years = 1 / 20, 3000
    lower = cholesky(covariance(WAIST, True))
    looks, dice = contrasts(WAIST, lower), Random(9)
    one, two = (
        np.array([max(evidence(looks, [dice.gauss(0, 1) for _ in lower])) for _ in range(years)]) for _ in range(2)
    )
    assert np.mean(two > np.quantile(one, 1 - rate)) == pytest.approx(rate, abs=0.02)


def test_the_table_has_both_kinds_of_error_for_every_measure(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(bounds, "KINDS", (STANDS,))
    out = StringIO()
    rows = bounds.print_bounds(1000, Console(file=out, width=120))
    assert [row.alike for row in rows] == [False, True]
    assert out.getvalue().count("chair_stand_30s") == 4 and "1 in 420 years" in out.getvalue()
