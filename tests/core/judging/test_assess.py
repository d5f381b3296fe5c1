"""Assessment: which readings are compared, with which error, and the context of the verdict."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from decimal import Decimal
from zoneinfo import ZoneInfo

import numpy as np
import pytest

from core.client import Caution
from core.judging.assess import Z99, assess, derive_all, derived_error, least_t, official, sure_among
from core.judging.change import Change, Strength, Verdict
from core.judging.course import SURE, TYPICAL, UNVALUED, Point, change_point
from core.measures import MEASURES
from core.measures.home_bp_series import SeriesMean, TooFewDays
from core.measures.measure import Score
from core.reading import Conditions, How, Reading
from tests.core.people import someone

D = Decimal
MONDAY = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)
ADA = someone("female", 58, stature="165")
CONFIRMED, POSSIBLE = Strength.CONFIRMED, Strength.POSSIBLE


def on(day: float, measure: str, value: str | int, **rest) -> Reading:
    return Reading(measure, D(value), MONDAY + timedelta(days=day), **rest)


def series(measure: str, *values: str, every: float = 28, **rest) -> tuple[Reading, ...]:
    return tuple(on(every * n, measure, value, **rest) for n, value in enumerate(values))


PLAN = {"baseline_since": None, "retest": None, "zone": UTC}  # a coach's defaults


def last(measure: str, readings: tuple[Reading, ...], **rest):
    return assess(MEASURES[measure], readings[-1], readings[:-1], ADA, **(PLAN | rest))


def test_a_client_who_weighs_less_twice_in_a_row_has_a_confirmed_change():
    found = last("weight", series("weight", "82.4", "79.9", "79.6")).verdict
    assert (found.kind, found.strength, found.firm) == (Change.CHANGED, CONFIRMED, False)
    assert found.difference == D("-2.8")
    assert round(found.mdc95, 2) == D("1.48")  # 1.96 * 0.66 % * sqrt(82.4^2 + 79.6^2)


def test_a_client_who_weighs_five_percent_less_twice_has_a_firm_change():
    assert last("weight", series("weight", "82.4", "78.3", "78.2")).verdict.firm


def test_w75_derived_half_a_kilogram_between_friday_and_monday_is_within_error():
    assert last("weight", (on(4, "weight", "80"), on(35, "weight", "80.5"))).verdict.kind is Change.WITHIN_ERROR


def test_the_reading_itself_may_stand_in_the_history():
    readings = series("weight", "82.4", "79.9", "79.6")
    assert assess(MEASURES["weight"], readings[-1], readings, ADA, **PLAN) == last("weight", readings)


def test_a_side_note_is_neither_assessed_nor_compared_with():
    early = on(3, "weight", "70", how=How.EARLY)
    with pytest.raises(ValueError, match="side note"):
        assess(MEASURES["weight"], early, (), ADA, **PLAN)
    readings = series("weight", "82.4", "82.1")
    assert last("weight", (readings[0], early, readings[1])) == last("weight", readings)


def test_weekly_imports_are_judged_from_one_official_reading_to_the_next():
    weekly = series("weight", *["82"] * 4, "79", *["79"] * 4, every=7)
    kinds = [last("weight", weekly[:n]).verdict for n in range(2, 10)]
    assert [v.kind for v in kinds] == [
        *[Change.TOO_SOON] * 3,
        Change.CHANGED,
        *[Change.TOO_SOON] * 3,
        Change.CHANGED,
    ]
    assert [kinds[3].strength, kinds[7].strength] == [POSSIBLE, CONFIRMED]


def test_a_new_programme_has_its_own_baseline():
    readings = series("weight", "90", "82", "82.1")
    found = last("weight", readings, baseline_since=readings[1].taken_at)
    assert (found.verdict.kind, found.verdict.baseline) == (Change.WITHIN_ERROR, D(82))


def test_official_readings_start_at_the_baseline():
    readings = series("weight", *"123456", every=14)
    assert official(readings, on(84, "weight", 7), timedelta(days=28)) == (readings[0], readings[4])
    on_the_day = (on(0, "weight", 1), on(25, "weight", 2))  # the window opens three days early
    assert official(on_the_day, on(56, "weight", 3), timedelta(days=28))[1] is on_the_day[1]
    assert official((), readings[0], timedelta(days=28)) == (None, None)


def test_the_coachs_own_interval_counts():
    readings = series("weight", "82", "79", every=30)
    assert last("weight", readings, retest=timedelta(days=42)).verdict.kind is Change.TOO_SOON


# --- ratings ----------------------------------------------------------------------------------------------------


def test_weekly_ratings_are_compared_four_weeks_against_four_weeks():
    found = last("energy", series("energy", *"6556", *"8787", *"8787", every=7))
    assert found.judged.value == D("7.5")
    assert (found.verdict.baseline, found.verdict.difference) == (D("5.5"), D(2))
    assert round(found.verdict.mdc95, 3) == D("1.386")  # 1.96 * sqrt(1/4 + 1/4)
    assert (found.verdict.kind, found.verdict.strength) == (Change.BETTER, CONFIRMED)
    assert found.verdict.reaches_important


def test_the_first_four_weeks_of_ratings_are_not_judged():
    for n in (2, 3, 4):
        assert last("energy", series("energy", *"6911", every=7)[:n]).verdict.kind is Change.TOO_SOON
    assert last("energy", series("energy", *"69119", every=7)).verdict.kind is Change.BETTER


def test_ratings_four_weeks_apart_are_compared_one_by_one():
    found = last("energy", series("energy", "5", "9", "9"))
    assert (found.verdict.baseline, found.judged.attempts, found.verdict.strength) == (D(5), 1, CONFIRMED)


# --- blood pressure ---------------------------------------------------------------------------------------------


def pressure_days(start: float, numbers: str, days: int) -> tuple[Reading, ...]:
    systolic, diastolic = numbers.split("/")
    return tuple(
        on(start + day + half, "blood_pressure", systolic, second=D(diastolic))
        for day in range(days)
        for half in (0, 0.5)
    )


def test_a_pressure_is_judged_by_its_series():
    history = (*pressure_days(0, "150/90", 7), *pressure_days(28, "136/84", 7), *pressure_days(56, "136/84", 7))
    found = assess(MEASURES["blood_pressure"], history[-1], history[:-1], ADA, **PLAN)
    assert isinstance(found.series, SeriesMean)
    assert (found.reading.value, found.judged.attempts) == (D(136), 6)
    assert (found.verdict.baseline, found.verdict.difference) == (D(150), D(-14))
    assert round(found.verdict.mdc95, 1) == D("9.7")  # "about 10" between two six-day means, from 8.6
    assert (found.verdict.kind, found.verdict.strength) == (Change.BETTER, CONFIRMED)
    assert isinstance(found.scores[0], Score)
    assert found.scores[0].band == "raised"


def test_three_days_of_pressure_are_said_to_be_too_few():
    history = pressure_days(0, "190/90", 3)
    found = assess(MEASURES["blood_pressure"], history[-1], history[:-1], ADA, **PLAN)
    assert (found.series, found.verdict, found.context) == (TooFewDays(3), None, ("series_too_few_days",))
    assert found.scores[0].band == "severe"  # a single reading still shows what to do today


# --- what is said beside it -------------------------------------------------------------------------------------


def context(measure: str, readings: tuple[Reading, ...], person=ADA, **rest) -> tuple[str, ...]:
    return assess(MEASURES[measure], readings[-1], readings[:-1], person, **(PLAN | rest)).context


def test_a_first_reading_is_named_as_such():
    assert context("weight", series("weight", "82")) == ("first_reading",)


def test_a_flat_weight_with_a_smaller_waist_is_told_on_either_side():
    flat = last("weight", series("weight", "82", "82.3")).verdict
    smaller = last("waist", series("waist", "95", "88", attempts=2)).verdict
    larger = last("waist", series("waist", "88", "95", attempts=2)).verdict
    key = "flat_weight_smaller_waist"
    assert key in context("weight", series("weight", "82", "82.3"), alongside={"waist": smaller})
    assert key in context("waist", series("waist", "95", "88", attempts=2), alongside={"weight": flat})
    assert key not in context("weight", series("weight", "82", "82.3"), alongside={"waist": larger})
    assert key not in context("weight", series("weight", "82", "78"), alongside={"waist": smaller})
    assert key not in context("hip", series("hip", "95", "95.3"), alongside={"waist": smaller})


def test_early_weeks_ask_for_patience_later_ones_do_not():
    assert "early_weeks" in context("weight", series("weight", "82", "82.3"))
    assert "early_weeks" not in context("weight", series("weight", "82", "82.3", "82.1"))


def test_conditions_that_differed_are_mentioned():
    other = on(28, "weight", "82.3", conditions=Conditions(frozenset({"scales"})))
    assert "different_conditions" in context("weight", (on(0, "weight", "82"), other))


def test_a_medicine_that_slows_the_pulse_is_mentioned_from_the_first_count_on():
    slowed = someone("male", 60, cautions=(Caution.RATE_LIMITING_MEDICINE,))
    assert context("resting_heart_rate", series("resting_heart_rate", "58"), slowed)[0] == "medicine_slows_pulse"
    assert "medicine_slows_pulse" not in context("resting_heart_rate", series("resting_heart_rate", "58"))


def test_one_step_of_the_instrument_is_called_that():
    assert "one_step_of_tape" in context("waist", series("waist", "95", "94"))
    assert "one_step_of_tape" not in context("waist", series("waist", "95", "95"))
    counted = series("resting_heart_rate", "72", "76", window=15)
    finer = series("resting_heart_rate", "72", "76", window=60)
    assert "one_beat_of_the_count" in context("resting_heart_rate", counted)
    assert "one_beat_of_the_count" not in context("resting_heart_rate", finer)


def test_a_size_that_matters_but_could_be_error_says_both():
    assert "matters_but_unsure" in context("chair_stand_30s", series("chair_stand_30s", "12", "14"))
    assert "matters_but_unsure" not in context("chair_stand_30s", series("chair_stand_30s", "12", "13"))


def test_another_weekday_is_judged_by_the_clients_own_calendar():
    base, night = on(0, "weight", "82"), on(28.1, "weight", "82.3")  # Monday morning in Greenwich
    assert "other_weekday" not in context("weight", (base, night))
    assert "other_weekday" in context("weight", (base, night), zone=ZoneInfo("America/Los_Angeles"))


def test_practice_is_mentioned_at_the_first_retest_only():
    better = series("chair_stand_30s", "12", "16", "16")
    assert "practice_counts_too" in context("chair_stand_30s", better[:2])
    assert "practice_counts_too" not in context("chair_stand_30s", better)


def test_nothing_is_said_beside_a_number_that_came_too_soon():
    assert context("waist", (on(0, "waist", "95"), on(5, "waist", "94"))) == ()


# --- derived measures -------------------------------------------------------------------------------------------


def test_derived_measures_come_in_registry_order_with_the_error_of_their_parts():
    latest = {
        "waist": on(0, "waist", "95", attempts=2),
        "weight": on(0, "weight", "82"),
        "hip": on(0, "hip", "105", attempts=2),
    }
    found = {d.measure.key: d for d in derive_all(latest, ADA, MEASURES)}
    assert [*found][:3] == ["bmi", "waist_to_hip_ratio", "waist_to_height_ratio"]
    assert found["bmi"].error.cv == D("0.0066")  # that of the weight: stature is the same on both sides
    by_hand = ((1.9 / 95) ** 2 / 2 + (1.9 / 105) ** 2 / 2) ** 0.5
    assert float(found["waist_to_hip_ratio"].error.cv) == pytest.approx(by_hand)
    assert float(found["waist_to_height_ratio"].error.cv) == pytest.approx(1.9 / 95 / 2**0.5)


def test_the_error_of_a_ratio_agrees_with_drawing_many_ratios():
    dice = np.random.default_rng(3)
    ratios = dice.normal(95, 1.9, 200_000) / dice.normal(105, 1.9, 200_000)
    parts = {"waist": on(0, "waist", "95"), "hip": on(0, "hip", "105")}
    found = derived_error(MEASURES["waist_to_hip_ratio"], parts, MEASURES)
    assert float(found.cv) == pytest.approx(ratios.std() / ratios.mean(), rel=0.01)


def test_a_derived_measure_without_its_parts_is_left_out():
    assert derive_all({}, ADA, MEASURES) == ()
    no_height = someone("female", 58)
    assert "bmi" not in {d.measure.key for d in derive_all({"weight": on(0, "weight", "82")}, no_height, MEASURES)}


def test_a_ratio_is_judged_by_its_own_parts_error():
    parts = {"waist": on(0, "waist", "95", attempts=2), "hip": on(0, "hip", "105", attempts=2)}
    (first, *_) = [d for d in derive_all(parts, ADA, MEASURES) if d.measure.key == "waist_to_hip_ratio"]
    parts = {"waist": on(28, "waist", "85", attempts=2), "hip": on(28, "hip", "105", attempts=2)}
    (now, *_) = [d for d in derive_all(parts, ADA, MEASURES) if d.measure.key == "waist_to_hip_ratio"]
    verdict = assess(now.measure, now.reading, (first.reading,), ADA, error=now.error, **PLAN).verdict
    assert isinstance(verdict, Verdict)
    assert verdict.kind is Change.BETTER
    cv = float(now.error.cv)
    assert float(verdict.mdc95) == pytest.approx(1.96 * cv * 2**0.5 * (95 + 85) / 2 / 105)


# --- the bound of the course


@pytest.mark.parametrize(
    ("measure", "least"),
    [
        pytest.param("waist", SURE, id="its error is the worst that is published"),
        pytest.param("chair_stand_30s", SURE * TYPICAL, id="some people swing more than is typical"),
        pytest.param("hip", SURE * UNVALUED, id="nobody has published what matters"),
        pytest.param("blood_pressure", SURE * TYPICAL, id="a mean of days"),
        pytest.param("energy", SURE * TYPICAL, id="people differ, but an important difference is not far beyond error"),
        pytest.param(
            "weight", 0.05 / 0.0066 - Z99, id="people differ, and an important difference is far beyond error"
        ),
    ],
)
def test_each_measure_has_the_bound_that_its_published_figures_give(measure, least):
    assert least_t(MEASURES[measure]) == pytest.approx(least)


def test_levels_that_differ_by_less_than_half_of_what_matters_are_no_news():
    """Of a weight, half of five percent: with many readings chance may be excluded for less."""

    def at_hand(after: float) -> list[Point]:
        values = [80.0] * 20 + [after] * 20
        return [Point(MONDAY + timedelta(days=28 * n), v, 0.28, wander=0.07) for n, v in enumerate(values)]

    weight = MEASURES["weight"]
    assert change_point(at_hand(81.9)).sure(least_t(weight))
    assert sure_among(at_hand(81.9), weight, 81.9) is None
    assert sure_among(at_hand(82.1), weight, 82.1) is not None


def test_nobody_is_told_of_a_fall_on_the_day_that_it_is_over():
    low = series("energy", *"88884444", every=7)
    assert last("energy", low).course is not None
    assert last("energy", (*low, on(56, "energy", 8))).course is None
    assert last("energy", (*low, on(56, "energy", 5))).course is not None
