"""Session and weekly load, compared with numpy and the standard library."""

from __future__ import annotations

import statistics
from datetime import date, timedelta
from decimal import Decimal

import numpy as np
import pytest
from hypothesis import assume, example, given
from hypothesis import strategies as st

from core.judging.training_load import DAYS, Session, daily_loads, session_load, week

D = Decimal
SUNDAY = date(2026, 3, 29)
LOADS = st.lists(st.integers(0, 1200), min_size=DAYS, max_size=DAYS)


@given(LOADS)
@example([300, 300, 300, 300, 300, 0, 0])
def test_monotony_is_the_mean_over_the_sample_sd_as_two_other_tools_compute_it(loads):
    assume(len(set(loads)) > 1)
    found = week(tuple(map(D, loads)))
    by_numpy = np.mean(loads) / np.std(loads, ddof=1)
    by_statistics = statistics.mean(loads) / statistics.stdev(loads)
    assert float(found.monotony) == pytest.approx(by_numpy, rel=1e-12)
    assert float(found.monotony) == pytest.approx(by_statistics, rel=1e-12)
    assert float(found.strain) == pytest.approx(sum(loads) * by_numpy, rel=1e-12)
    assert found.total == sum(loads)


@given(st.integers(0, 1200))
def test_a_week_of_equal_days_has_no_monotony_rather_than_an_infinite_one(load):
    found = week((D(load),) * DAYS)
    assert (found.monotony, found.strain) == (None, None)
    assert found.total == DAYS * load


@given(LOADS, st.permutations(range(DAYS)))
def test_the_order_of_the_days_does_not_matter(loads, order):
    assert week(tuple(D(loads[n]) for n in order)).total == week(tuple(map(D, loads))).total


@given(st.integers(0, 10), st.integers(0, 300), st.integers(1, 5))
def test_a_session_twice_as_long_is_twice_the_load(effort, minutes, times):
    assert session_load(D(effort), D(minutes * times)) == times * session_load(D(effort), D(minutes))


def test_two_sessions_of_a_day_add_up_and_days_of_rest_are_zero():
    ada = [
        Session(SUNDAY, D(5), D(30)),
        Session(SUNDAY, D(3), D(20)),
        Session(SUNDAY - timedelta(days=6), D(7), D(60)),
    ]
    assert daily_loads(ada, SUNDAY) == (420, 0, 0, 0, 0, 0, 210)


def test_sessions_before_or_after_the_seven_days_are_left_out():
    others = [
        Session(SUNDAY - timedelta(days=7), D(7), D(60)),
        Session(SUNDAY + timedelta(days=1), D(7), D(60)),
    ]
    assert daily_loads(others, SUNDAY) == (0,) * DAYS


@pytest.mark.parametrize("days", [0, 6, 8])
def test_a_week_of_another_length_is_a_fault_of_ours(days):
    with pytest.raises(ValueError, match="7 days"):
        week((D(1),) * days)
