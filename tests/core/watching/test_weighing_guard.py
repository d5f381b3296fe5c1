"""The weighing guard's table, row by row. Weights are invented."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from decimal import Decimal
from zoneinfo import ZoneInfo

import pytest

from core.reading import How, Reading
from core.watching.weighing_guard import GuardStep, decide

LONDON = ZoneInfo("Europe/London")
WEIGHED = datetime(2026, 3, 2, 7, 31, tzinfo=UTC)


def weight(at: datetime, how: How = How.ASKED) -> Reading:
    return Reading("weight", Decimal("82.4"), at, how=how)


def after(days: float) -> datetime:
    return WEIGHED + timedelta(days=days)


def looked_at(*early_days: float, now: float, **changes: object):
    notes = tuple(weight(after(d), How.EARLY) for d in early_days)
    terms = {"interval_days": 28, "directed": False, "in_plan": True, "zone": LONDON, **changes}
    return decide((weight(WEIGHED), *notes), after(now), **terms)


@pytest.mark.parametrize(
    ("early_days", "now", "step"),
    [
        pytest.param((), 2, GuardStep.FIRST, id="two-days-after-a-weigh-in-is-a-first-attempt"),
        pytest.param((2,), 3, GuardStep.SECOND, id="another-the-day-after-is-a-second"),
        pytest.param((2, 3), 3.2, GuardStep.OFTEN, id="two-in-one-day"),
        pytest.param((2,), 2.1, GuardStep.OFTEN, id="the-second-of-one-day-even-as-second-attempt"),
        pytest.param((2, 5), 9, GuardStep.OFTEN, id="third-within-14-days"),
        pytest.param((2, 5), 20, GuardStep.SECOND, id="third-but-the-others-are-longer-ago"),
        pytest.param((2, 8), 16, GuardStep.OFTEN, id="third-on-the-fourteenth-day"),
        pytest.param((2, 8), 16.1, GuardStep.SECOND, id="third-just-after-14-days"),
        pytest.param((), 24, GuardStep.FIRST, id="four-days-before-it-is-due"),
        pytest.param((), 25, GuardStep.WELCOME, id="the-window-opens-three-days-before"),
        pytest.param((2, 5, 9), 28, GuardStep.WELCOME, id="due-is-due-whatever-happened-before"),
    ],
)
def test_what_the_table_says_of_a_weight_nobody_asked_for(early_days, now, step):
    assert looked_at(*early_days, now=now).step is step


def test_a_first_weight_ever_is_welcome():
    found = decide((), WEIGHED, interval_days=28, directed=False, in_plan=True, zone=LONDON)
    assert found.step is GuardStep.WELCOME


def test_directed_weighing_lifts_the_guard():
    assert looked_at(1, 1.1, now=1.2, directed=True).step is GuardStep.DIRECTED


def test_a_plan_without_weight_does_not_keep_it():
    assert looked_at(now=2, in_plan=False).step is GuardStep.LEFT_OUT


def test_a_longer_interval_of_the_coach_counts():
    assert looked_at(now=30, interval_days=42).step is GuardStep.FIRST
    assert looked_at(now=39, interval_days=42).step is GuardStep.WELCOME


def test_attempts_before_the_last_official_weight_are_another_cycle():
    weights = (weight(after(-5), How.EARLY), weight(after(-4), How.EARLY), weight(WEIGHED))
    found = decide(weights, after(2), interval_days=28, directed=False, in_plan=True, zone=LONDON)
    assert (found.step, found.attempts) == (GuardStep.FIRST, 1)


def test_one_day_is_the_clients_own_day():
    """23:30 and 00:30 in Auckland are different days there, but the same in UTC."""
    auckland = ZoneInfo("Pacific/Auckland")
    late = datetime(2026, 3, 10, 10, 30, tzinfo=UTC)  # 23:30 in Auckland
    weights = (weight(WEIGHED), weight(late, How.EARLY))
    terms = {"interval_days": 28, "directed": False, "in_plan": True}
    assert decide(weights, late + timedelta(hours=1), zone=auckland, **terms).step is GuardStep.SECOND
    assert decide(weights, late + timedelta(hours=1), zone=LONDON, **terms).step is GuardStep.OFTEN
