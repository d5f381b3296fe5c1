"""Worked examples of resting heart rate and blood pressure: in, out, whose example, how it was seen.

read: in the source's own text; 2nd: in a report of it; derived: arithmetic or logic from a limit that was
read; memory: neither. W numbers are our own names of the examples.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from core.client import Caution
from core.language import words_for
from core.measures import (
    blood_pressure,
    resting_heart_rate,
)
from core.measures.measure import Score, Understood
from core.quantity import Unit
from core.references import (
    bp_aha,
    bp_esc,
    bp_low,
    rhr_adult_range,
)
from core.references.pressure_bands import PressureTable
from tests.core.people import by, reading, someone

D = Decimal
KG, LB, CM, IN = Unit.KILOGRAM, Unit.POUND, Unit.CENTIMETRE, Unit.INCH


# --- resting heart rate ---


@pytest.mark.parametrize(
    "value, band, advice",
    [
        pytest.param(60, "usual", None, id="W43a BHF [read]"),
        pytest.param(100, "usual", None, id="W43b BHF [read]"),
        pytest.param(59, "slow", None, id="W44 BHF [read]"),
        pytest.param(101, "fast", None, id="fast BHF [read]"),
        pytest.param(121, "fast", "fast", id="W45 NHS-derived page [read]"),
        pytest.param(120, "fast", None, id="W46a NHS-derived page [derived]"),
        pytest.param(40, "slow", None, id="W46b NHS-derived page [derived]"),
        pytest.param(39, "slow", "slow", id="under 40 NHS-derived page [read]"),
    ],
)
def test_a_pulse_is_placed_in_the_range_of_adults(value, band, advice):
    scores = resting_heart_rate.score(reading("resting_heart_rate", value), someone())
    assert by("bhf_resting_heart_rate", scores) == band
    assert rhr_adult_range.seek_advice(D(value)) == advice
    assert ("seek_advice_if_it_stays" in scores[0].notes) is (advice is not None)


@pytest.mark.parametrize(
    "cautions, note",
    [
        pytest.param((Caution.ATHLETE,), "slow_can_be_usual_when_trained", id="W44 athlete"),
        pytest.param((), "slow_worth_a_check", id="W44 not an athlete"),
        pytest.param((Caution.RATE_LIMITING_MEDICINE,), "medicine_slows_the_pulse", id="medicine"),
    ],
)
def test_a_slow_pulse_gets_the_note_that_fits_the_person(cautions, note):
    found = resting_heart_rate.score(reading("resting_heart_rate", 59), someone(cautions=cautions))[0]
    assert isinstance(found, Score)
    assert found.notes == (note,)


@pytest.mark.parametrize(
    "sex, age, value, band",
    [
        pytest.param("female", 30, 74, "average", id="W47 trade chart [read]"),
        pytest.param("male", 40, 57, "excellent", id="W48 trade chart [read]"),
        pytest.param("male", 65, 68, "above_average", id="65 is read in the column 56-65"),
        pytest.param("male", 66, 68, "above_average", id="66 in the last column"),
        pytest.param("male", 65, 67, "good", id="65: 67 is good at 56-65"),
        pytest.param("male", 66, 67, "above_average", id="66: 67 is above average at 65+"),
        pytest.param("male", 40, 49, "no: athlete_or_check", id="below the athlete band"),
        pytest.param("male", 17, 60, "no: age_outside_table", id="no column under 18"),
        pytest.param(None, 40, 60, "no: sex_not_given", id="no sex, no column"),
    ],
)
def test_a_pulse_is_rated_by_the_chart_of_the_trade(sex, age, value, band):
    scores = resting_heart_rate.score(reading("resting_heart_rate", value), someone(sex, age))
    assert by("trade_resting_heart_rate", scores) == band


PRINTED = """
M athlete        49-55 49-54 50-56 50-57 51-56 50-55
M excellent      56-61 55-61 57-62 58-63 57-61 56-61
M good           62-65 62-65 63-66 64-67 62-67 62-65
M above_average  66-69 66-70 67-70 68-71 68-71 66-69
M average        70-73 71-74 71-75 72-76 72-75 70-73
M below_average  74-81 75-81 76-82 77-83 76-81 74-79
M poor           82+ 82+ 83+ 84+ 82+ 80+
W athlete        54-60 54-59 54-59 54-60 54-59 54-59
W excellent      61-65 60-64 60-64 61-65 60-64 60-64
W good           66-69 65-68 65-69 66-69 65-68 65-68
W above_average  70-73 69-72 70-73 70-73 69-73 69-72
W average        74-78 73-76 74-78 74-77 74-77 73-76
W below_average  79-84 77-82 79-84 78-83 78-83 77-84
W poor           85+ 83+ 85+ 84+ 84+ 85+
"""
AGES_OF_COLUMNS = ((18, 25), (26, 35), (36, 45), (46, 55), (56, 65), (66, 99))


@pytest.mark.parametrize("line", PRINTED.strip().splitlines(), ids=lambda line: " ".join(line.split()[:2]))
def test_both_ends_of_every_cell_of_the_chart_hold_as_printed(line):
    who, band, *cells = line.split()
    sex = {"M": "male", "W": "female"}[who]
    for ages, cell in zip(AGES_OF_COLUMNS, cells, strict=True):
        for rate in cell.rstrip("+").split("-"):
            for age in ages:
                scores = resting_heart_rate.score(reading("resting_heart_rate", rate), someone(sex, age))
                assert by("trade_resting_heart_rate", scores) == band, (age, rate)


@pytest.mark.parametrize("sex, mean", [("male", 71), ("female", 74)])
def test_the_mean_of_us_adults_is_shown_as_context(sex, mean):
    found = resting_heart_rate.score(reading("resting_heart_rate", 66), someone(sex))[2]
    assert isinstance(found, Score)
    assert dict(found.figures) == {"mean": D(mean)}  # Ostchega 2011, read


@pytest.mark.parametrize(
    "beats, window, rate",
    [
        pytest.param(18, 15, 72, id="W41 times four [derived]"),
        pytest.param(36, 30, 72, id="W42 times two, NHS page [read]"),
    ],
)
def test_beats_counted_in_a_window_become_beats_a_minute(beats, window, rate):
    assert resting_heart_rate.RESTING_HEART_RATE.understand is not None
    heard = resting_heart_rate.RESTING_HEART_RATE.understand(f"{beats} in {window} s", words_for("en"), None)
    assert isinstance(heard, Understood)
    assert (heard.value, heard.window) == (D(rate), window)


# --- blood pressure ---


@pytest.mark.parametrize(
    "systolic, diastolic, band",
    [
        pytest.param("134.9", "84.9", "below_home_limit", id="W54a NICE [derived]"),
        pytest.param("135.0", "70", "raised", id="W54b NICE [derived]"),
        pytest.param("120", "85.0", "raised", id="W54c NICE [derived]"),
        pytest.param("136.67", "86.75", "raised", id="W50 NICE, the mean [derived]"),
        pytest.param("150", "80", "clearly_raised", id="NICE 150/95 [read]"),
        pytest.param("140", "95", "clearly_raised", id="NICE 150/95, lower number [read]"),
    ],
)
def test_the_mean_of_a_home_series_is_compared_unrounded(systolic, diastolic, band):
    found = blood_pressure.score_mean(D(systolic), D(diastolic), someone(), age=40, body="nice")
    assert isinstance(found, Score)
    assert (found.band, found.source.key) == (band, "nice_home_blood_pressure")


@pytest.mark.parametrize(
    "age, systolic, band",
    [
        pytest.param(80, "144.9", "raised", id="80 is not over 80"),
        pytest.param(81, "144.9", "below_home_limit", id="over 80, below 145/85 [read]"),
        pytest.param(81, "145", "raised", id="over 80, at 145/85 [read]"),
    ],
)
def test_over_80_the_limit_at_home_is_higher(age, systolic, band):
    found = blood_pressure.score_mean(D(systolic), D(70), someone(age=age), age=age, body="nice")
    assert isinstance(found, Score)
    assert found.band == band


OFFICE = [
    ("W56a", bp_aha.OFFICE, 118, 78, "normal", "AHA/ACC", "read"),
    ("W56b", bp_aha.OFFICE, 124, 78, "elevated", "AHA/ACC", "read"),
    ("W56c", bp_aha.OFFICE, 124, 80, "stage_1", "AHA/ACC", "read"),
    ("W56d", bp_aha.OFFICE, 132, 75, "stage_1", "AHA/ACC", "read"),
    ("W56e", bp_aha.OFFICE, 128, 92, "stage_2", "AHA/ACC", "read"),
    ("W56f", bp_aha.OFFICE, 140, 85, "stage_2", "AHA/ACC", "read"),
    ("W57a", bp_esc.OFFICE, 118, 68, "non_elevated", "ESC 2024", "read"),
    ("W57b", bp_esc.OFFICE, 118, 72, "elevated", "ESC 2024", "read"),
    ("W57c", bp_esc.OFFICE, 139, 89, "elevated", "ESC 2024", "read"),
    ("W57d", bp_esc.OFFICE, 140, 60, "hypertension", "ESC 2024", "read"),
    ("AHA-home-1", bp_aha.HOME, 130, 70, "stage_1", "AHA/ACC Table 7", "read"),
    ("AHA-home-2", bp_aha.HOME, 134, 84, "stage_1", "AHA/ACC Table 7", "derived"),
    ("AHA-home-3", bp_aha.HOME, 120, 85, "stage_2", "AHA/ACC Table 7", "read"),
    ("ESC-home-1", bp_esc.HOME, 134, 69, "elevated", "ESC 2024", "memory"),
    ("ESC-home-2", bp_esc.HOME, 119, 85, "hypertension", "ESC 2024", "memory"),
]


@pytest.mark.parametrize(
    "table, systolic, diastolic, band", [pytest.param(*r[1:5], id=f"{r[0]} {r[5]} [{r[6]}]") for r in OFFICE]
)
def test_the_higher_category_of_the_two_numbers_counts(table: PressureTable, systolic, diastolic, band):
    assert table.find(D(systolic), D(diastolic))[1] == band


def test_130_over_80_at_home_is_high_in_the_us_and_not_at_nice():
    us = blood_pressure.score_mean(D(130), D(80), someone(), age=40, body="aha")
    uk = blood_pressure.score_mean(D(130), D(80), someone(), age=40, body="nice")
    esc = blood_pressure.score_mean(D(130), D(80), someone(), age=40, body="esc")
    assert [s.band for s in (us, uk, esc) if isinstance(s, Score)] == [
        "stage_1",
        "below_home_limit",
        "elevated",
    ]


@pytest.mark.parametrize(
    "home, office",
    [
        pytest.param((135, 85), (140, 90), id="W58a AHA/ACC Table 7 [read]"),
        pytest.param((145, 90), (160, 100), id="W58b AHA/ACC Table 7 [read]"),
    ],
)
def test_a_level_at_home_has_its_office_equivalent(home, office):
    assert bp_aha.HOME_TO_OFFICE[D(home[0]), D(home[1])] == (D(office[0]), D(office[1]))


@pytest.mark.parametrize(
    "systolic, diastolic, band",
    [
        pytest.param(182, 100, "severe", id="W59 NHLBI [derived]"),
        pytest.param(182, 124, "severe", id="W60 NHLBI [derived]"),
        pytest.param(180, 100, "severe", id="D6 exactly 180"),
        pytest.param(150, 120, "severe", id="D6 exactly 120"),
        pytest.param(179, 119, "no: single_reading", id="D6 just below"),
        pytest.param(88, 58, "low", id="W62 NHLBI [derived]"),
        pytest.param(90, 60, "no: single_reading", id="90/60 itself is not below"),
        pytest.param(120, 130, "no: lower_number_not_lower", id="W63 lower number above the upper [derived]"),
        pytest.param(128, 82, "no: single_reading", id="one reading has no category"),
    ],
)
def test_a_single_pressure_is_only_held_against_levels_that_ask_for_action(systolic, diastolic, band):
    (found,) = blood_pressure.score(reading("blood_pressure", systolic, diastolic), someone())
    assert (found.band if isinstance(found, Score) else f"no: {found.reason}") == band


def test_a_severe_pressure_asks_for_a_repeat_and_a_low_one_about_dizziness():
    (severe,) = blood_pressure.score(reading("blood_pressure", 182, 100), someone())
    (low,) = blood_pressure.score(reading("blood_pressure", 88, 58), someone())
    assert isinstance(severe, Score)
    assert severe.notes == ("rest_5_min_and_repeat",)
    assert isinstance(low, Score)
    assert low.notes == ("matters_only_with_dizziness",)


@pytest.mark.parametrize(
    "lying, standing, flagged",
    [
        pytest.param(140, 118, True, id="W64 NICE 1.1.6 [derived]"),
        pytest.param(140, 120, True, id="exactly 20"),
        pytest.param(140, 121, False, id="19"),
    ],
)
def test_a_fall_of_20_on_standing_is_flagged(lying, standing, flagged):
    assert bp_low.drops_on_standing(D(lying), D(standing)) is flagged
