"""Worked examples of weight change: in, out, whose example, how it was seen.

read: in the source's own text; 2nd: in a report of it; derived: arithmetic or logic from a limit that was
read; memory: neither. W numbers are our own names of the examples.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from core.quantity import Unit, convert, half_up
from core.references import (
    fast_gain,
    must,
    repeats,
    unplanned_loss,
    weight_loss_rates,
    weight_variation,
)
from tests.core.people import kg

D = Decimal
KG, LB, CM, IN = Unit.KILOGRAM, Unit.POUND, Unit.CENTIMETRE, Unit.INCH


@pytest.mark.parametrize(
    "weight, lost",
    [
        pytest.param(200, 10, id="W65 CDC-type example [read]"),
        pytest.param(240, 12, id="W66a CDC-type example [read]"),
        pytest.param(160, 8, id="W66b CDC-type example [read]"),
    ],
)
def test_five_percent_is_the_loss_called_useful(weight, lost):
    assert weight * weight_loss_rates.USEFUL == lost


def test_thirteen_stone_has_the_printed_three_and_five_percent():
    # W67, UK page, read; it cuts 2.476 to 2.47
    weight = kg("13", Unit.STONE)
    assert half_up(weight, 2) == D("82.55")
    assert half_up(weight * weight_loss_rates.PROGRAMME_AVERAGE, 2) == D("2.48")
    assert half_up(weight * weight_loss_rates.USEFUL, 2) == D("4.13")
    pounds = convert(weight * weight_loss_rates.PROGRAMME_AVERAGE, KG, LB)
    assert (int(pounds), half_up(pounds % 1 * 16, 0)) == (5, 7)


@pytest.mark.parametrize(
    "before, after, percent, points",
    [
        pytest.param("80", "76.1", "4.875", 0, id="W68 MUST [derived]"),
        pytest.param("80", "76", "5", 1, id="W69 MUST, exactly 5 percent [derived]"),
        pytest.param("80", "72.0", "10", 1, id="W70 MUST [derived]"),
        pytest.param("80", "71.9", "10.125", 2, id="W71 MUST [derived]"),
    ],
)
def test_an_unplanned_loss_scores_its_must_points(before, after, percent, points):
    lost = must.percent_loss(D(before), D(after))
    assert lost == D(percent)
    assert must.loss_points(lost) == points


def test_two_must_points_are_high_risk():  # W71
    assert [must.risk(points) for points in (0, 1, 2, 3, 6)] == ["low", "medium", "high", "high", "high"]


@pytest.mark.parametrize(
    "value, points",
    [
        pytest.param("18.4", 2, id="BAPEN [read]"),
        pytest.param("18.5", 1, id="BAPEN, lower limit [read]"),
        pytest.param("20.0", 1, id="D8 exactly 20"),
        pytest.param("20.04", 1, id="D8 after D1"),
        pytest.param("20.1", 0, id="BAPEN, more than 20 [read]"),
    ],
)
def test_a_low_index_scores_its_must_points(value, points):
    assert must.bmi_points(D(value)) == points


@pytest.mark.parametrize(
    "after, days, rule",
    [
        pytest.param("82.1", 3, 3, id="W74a ESC/HFA [derived]"),
        pytest.param("82.0", 3, None, id="W74b exactly 2 kg [derived]"),
        pytest.param("81.36", 1, 1, id="3 lb in a day [derived]"),
        pytest.param("81.35", 1, None, id="less than 3 lb in a day"),
        pytest.param("81.5", 2, None, id="1.5 kg in two days"),
        pytest.param("82.27", 7, None, id="exactly 2.27 kg in a week"),
        pytest.param("82.28", 7, 7, id="5 lb in a week [derived]"),
        pytest.param("84", 8, None, id="longer than a week"),
    ],
)
def test_a_fast_gain_is_found_by_the_cautious_union_of_rules(after, days, rule):
    found = fast_gain.fast(D(80), D(after), days)
    assert (None if found is None else found.days) == rule


def test_half_a_kilogram_over_a_weekend_is_ordinary():  # W75 Turicchi 2020, Cheuvront 2004, derived
    assert weight_variation.ordinary(D(80), D("80.5"))
    assert D("80.5") - 80 <= weight_variation.DAY_TO_DAY_SD
    assert D("0.28") == 80 * weight_variation.WITHIN_WEEK
    assert not weight_variation.ordinary(D(80), D("80.6"))


@pytest.mark.parametrize(
    "third, settled",
    [
        pytest.param("80.2", "80.25", id="W76 PhenX, the closest two [derived]"),
        pytest.param("80.15", "80.15", id="exactly between: all three"),
        pytest.param("79.9", "79.95", id="the lower two"),
    ],
)
def test_a_third_weighing_settles_two_that_differ(third, settled):
    assert repeats.third_weighing(D("80.0"), D("80.3"))
    assert repeats.settled(D("80.0"), D("80.3"), D(third)) == D(settled)


def test_two_weighings_closer_than_200_g_need_no_third_and_two_girths_a_centimetre_apart_no_repeat():
    assert not repeats.third_weighing(D("80.0"), D("80.19"))
    assert not repeats.measure_again(D(94), D(95))
    assert repeats.measure_again(D(94), D("95.1"))


@pytest.mark.parametrize(
    "after, accepted",
    [
        pytest.param("87", True, id="W78a NICE CG43, at the limit [derived]"),
        pytest.param("86.9", False, id="W78b NICE CG43, beyond [derived]"),
    ],
)
def test_a_kilogram_a_week_is_the_fastest_loss_accepted(after, accepted):
    assert weight_loss_rates.rate(D(90), D(after), 21).accepted is accepted


@pytest.mark.parametrize(
    "percent, asks",
    [
        pytest.param("4.9", False, id="less than 5 percent"),
        pytest.param("5.0", True, id="5 percent or more, AFP 2021 [2nd]"),
        pytest.param("5.1", True, id="more than 5 percent, AFP 2014 [read]"),
    ],
)
def test_an_unplanned_loss_asks_for_attention_from_five_percent(percent, asks):
    assert unplanned_loss.noticeable(D(percent)) is asks
