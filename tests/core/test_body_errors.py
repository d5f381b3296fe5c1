"""What the errors of body measures amount to: the smallest change that error alone would rarely cause.

Figures of the practice sheet: derived there from the studies named in core.references.body_errors.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from core.judging.change import mdc95, standard_error
from core.measures import MEASURES
from core.measures.blood_pressure import DIASTOLIC_ERROR
from core.quantity import half_up
from core.references import body_errors, weight_variation

D = Decimal


@pytest.mark.parametrize(
    "sem, days, places, expected",
    [
        pytest.param(weight_variation.DAY_TO_DAY_SD, 1, 1, "1.4", id="weight, kg: Cheuvront 2004"),
        pytest.param(body_errors.GIRTH_SEM, 1, 1, "5.3", id="waist, cm: Barrios 2016"),
        pytest.param(body_errors.PULSE_SEM, 1, 0, "14", id="counted pulse, bpm"),
        pytest.param(body_errors.PULSE_SEM, 4, 0, "7", id="pulse, means of four days"),
        pytest.param(body_errors.SYSTOLIC_SEM, 1, 0, "24", id="systolic, one day: Kato 2010"),
        pytest.param(body_errors.SYSTOLIC_SEM, 6, 0, "10", id="systolic, six days: Kato 2010"),
        pytest.param(body_errors.DIASTOLIC_SEM, 1, 0, "16", id="diastolic, one day: Kato 2010"),
        pytest.param(body_errors.DIASTOLIC_SEM, 6, 0, "7", id="diastolic, six days: Kato 2010"),
    ],
)
def test_the_smallest_change_beyond_error_is_the_one_derived_from_the_study(sem, days, places, expected):
    assert half_up(mdc95(2 * sem * sem / days), places) == D(expected)


def test_the_relative_error_of_a_weight_of_77_kg_is_the_half_kilogram_of_the_study():
    """0.66 % and 0.51 kg are two ways of saying the same thing: they agree at the 77 kg of active men."""
    error = MEASURES["weight"].error
    assert error is not None
    assert half_up(standard_error(error, D("77.3")), 2) == weight_variation.DAY_TO_DAY_SD


def test_the_errors_of_the_ratios_are_those_of_their_girths():
    sem = body_errors.GIRTH_SEM
    relative = ((sem / 95) ** 2 + (sem / 105) ** 2).sqrt()
    assert half_up(D(95) / D(105) * relative, 3) == body_errors.WAIST_TO_HIP_SEM
    assert half_up(sem / 170, 3) == body_errors.WAIST_TO_HEIGHT_SEM


def test_two_weighings_or_counts_at_once_share_the_error_of_the_day_and_two_girths_do_not():
    def ratio(key: str) -> Decimal:
        error = MEASURES[key].error
        assert error is not None
        return standard_error(error, D(80), attempts=2) / standard_error(error, D(80))

    assert ratio("weight") == ratio("resting_heart_rate") == 1
    assert half_up(ratio("waist"), 3) == D("0.707")


def test_a_count_of_15_seconds_is_less_sure_than_one_of_60():
    error = MEASURES["resting_heart_rate"].error
    assert error is not None
    by_window = [standard_error(error, D(66), window=w) for w in (15, 30, 60, None)]
    assert by_window == sorted(by_window, reverse=True)
    assert half_up(by_window[0] ** 2 - by_window[3] ** 2, 3) == D("2.667")  # 4^2 / 6


def test_each_number_of_a_pressure_has_its_own_error():
    error = MEASURES["blood_pressure"].error
    assert error is not None
    assert (error.sem, DIASTOLIC_ERROR.sem) == (D("8.6"), D("5.8"))  # Kato 2010, read
