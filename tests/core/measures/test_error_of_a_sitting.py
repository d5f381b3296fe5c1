"""Within a day and between days: tries of one sitting are averaged only where the source repeated in one sitting."""

from __future__ import annotations

from decimal import Decimal

import pytest

from core.judging.assess import error_of_weeks
from core.judging.change import variance
from core.judging.course import WANDERS, variance_of_mean
from core.measures import MEASURES
from core.measures.measure import MeasureKind

D = Decimal

# What is left of the variance if two tries of one sitting are averaged, and why.
TWO_TRIES = {
    "weight": (D(1), "between days (Cheuvront 2004)"),
    "waist": (D("0.5"), "a technical error, of repeats in a sitting (Barrios 2016)"),
    "hip": (D("0.5"), "a technical error, of repeats in a sitting (Barrios 2016)"),
    "resting_heart_rate": (D(1), "between weeks (1972)"),
    "blood_pressure": (D("0.5"), "its attempts are days (Kato 2010)"),
    "energy": (D(1), "one evening has one mood"),
    "own_question": (D(1), "one evening has one mood"),
    "pain": (D(1), "one evening has one pain"),
    "sleep": (D(1), "there is one night"),
    "chair_stand_30s": (D("0.5"), "tries minutes apart (Gill 2022)"),
    "five_chair_stands": (D(1), "not known, so between days"),
    "timed_up_and_go": (D(1), "not known, so between days"),
    "gait_speed_4m": (D(1), "not known, so between days"),
    "six_minute_walk": (D(1), "not known, so between days"),
}


@pytest.mark.parametrize(
    "key", [key for key, m in MEASURES.items() if m.error is not None and m.kind is not MeasureKind.DERIVED]
)
def test_two_tries_of_a_sitting_are_worth_what_the_source_allows(key):
    error = MEASURES[key].error
    assert error is not None
    left, why = TWO_TRIES[key]
    assert variance(error, D(50), 2) == pytest.approx(left * variance(error, D(50))), why


@pytest.mark.parametrize("key", ["waist", "blood_pressure"])
def test_for_the_course_what_days_share_is_not_averaged_away(key):
    error = MEASURES[key].error
    assert error is not None
    one = float(variance(error, D(50)))
    for n in (2, 6, 1000):
        assert variance_of_mean(one, one / n, days=n > 1) == pytest.approx(one * (WANDERS + (1 - WANDERS) / n))


def test_the_counting_part_of_a_pulse_is_new_in_each_count():
    error = MEASURES["resting_heart_rate"].error
    assert error is not None
    once, twice = (variance(error, D(70), n, 30) for n in (1, 2))
    alone = variance(error, D(70))
    assert twice - alone == pytest.approx((once - alone) / 2)


def test_weeks_of_a_rating_are_independent_though_tries_of_an_evening_are_not():
    error = error_of_weeks(MEASURES["energy"].error)
    assert error is not None
    assert variance(error, D(6), 4) == D("0.25")
