"""Worked examples of function tests, walks, heart rate and fitness, one row each.

Each row: number of the example, the source of the figures, how the figures were seen (R read, R2 second-hand,
M from memory, C computed with another tool; "pub": the expected value itself is published), what goes in,
what comes out.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal

import pytest

from core.client import Profile, Sex
from core.judging.change import judge
from core.measures.aerobic_estimate import AEROBIC_ESTIMATE
from core.measures.chair_stand_30s import CHAIR_STAND_30S, HALF_WAY, counted
from core.measures.five_chair_stands import FIVE_CHAIR_STANDS
from core.measures.four_stage_balance import FOUR_STAGE_BALANCE, total
from core.measures.gait_speed_4m import GAIT_SPEED_4M, speed
from core.measures.measure import Measure, NoReference, Score
from core.measures.score_function_tests import ARMS_USED
from core.measures.six_minute_walk import SIX_MINUTE_WALK
from core.measures.six_minute_walk_difference import SIX_MINUTE_WALK_DIFFERENCE
from core.measures.timed_up_and_go import TIMED_UP_AND_GO
from core.measures.two_minute_step import TWO_MINUTE_STEP
from core.quantity import Unit, convert, half_up
from core.reading import Conditions, Reading
from core.references import (
    heart_rate_max,
    kline_1987,
    six_minute_walk_ats_2002,
    uth_2004,
)
from core.references import six_minute_walk_enright_1998 as enright
from core.references import six_minute_walk_enright_2003 as enright_2003
from core.references import six_minute_walk_troosters_1999 as troosters

D = Decimal
AT = datetime(2026, 3, 30, 9, 0, tzinfo=UTC)
MAN, WOMAN = Sex.MALE, Sex.FEMALE
CENT = D("0.01")


def aged(age: int, sex: Sex | None = None, **more: object) -> Profile:
    return Profile(sex=sex, birth_date=date(AT.year - age, 1, 1), **more)  # type: ignore[arg-type]


def taken(measure: Measure, value: str, *notes: str, second: str | None = None) -> Reading:
    return Reading(
        measure.key,
        D(value),
        AT,
        second=D(second) if second else None,
        conditions=Conditions(notes=frozenset(notes)),
    )


def found(measure: Measure, reading: Reading, profile: Profile, source: str) -> Score | NoReference:
    """The answer of one reference."""
    return next(s for s in measure.score(reading, profile) if s.source and s.source.key == source)


def band(measure: Measure, reading: Reading, profile: Profile, source: str) -> str:
    answer = found(measure, reading, profile, source)
    return answer.band if isinstance(answer, Score) else answer.reason


CDC, R_AND_J = "chair_stand_cdc", "chair_stand_rikli_jones"
STANDS = [
    pytest.param(CDC, MAN, 62, "13", "below_average", id="1-cdc-R2"),
    pytest.param(CDC, MAN, 62, "14", "not_below_average", id="2-cdc-R2"),
    pytest.param(R_AND_J, MAN, 62, "14", "usual", id="2-rikli-jones-R2"),
    pytest.param(R_AND_J, MAN, 62, "19", "usual", id="2-rikli-jones-R2-upper-end-14-19"),
    pytest.param(R_AND_J, MAN, 62, "20", "above_usual", id="3-rikli-jones-R2"),
    pytest.param(CDC, WOMAN, 64, "12", "not_below_average", id="4-cdc-R2"),
    pytest.param(CDC, WOMAN, 65, "11", "not_below_average", id="5-cdc-R2"),
    pytest.param(CDC, WOMAN, 65, "10", "below_average", id="6-cdc-R2"),
    pytest.param(CDC, MAN, 69, "12", "not_below_average", id="7-cdc-R2-69"),
    pytest.param(CDC, MAN, 70, "12", "not_below_average", id="7-cdc-R2-70"),
    pytest.param(CDC, WOMAN, 95, "5", "age_outside_table", id="9-cdc-R2-too-old"),
    pytest.param(CDC, MAN, 59, "20", "age_outside_table", id="9-cdc-R2-too-young"),
]


@pytest.mark.parametrize(("source", "sex", "age", "stands", "expected"), STANDS)
def test_chair_stands_fall_into_the_printed_band(source, sex, age, stands, expected):
    assert band(CHAIR_STAND_30S, taken(CHAIR_STAND_30S, stands), aged(age, sex), source) == expected


@pytest.mark.parametrize("age", [61, 78, 93])
def test_example_10_cdc_r2_arms_used_counts_as_no_stand_at_all(age):
    assert counted(D(9), frozenset({ARMS_USED})) == 0
    kept_otherwise = taken(CHAIR_STAND_30S, "9", ARMS_USED)
    assert band(CHAIR_STAND_30S, kept_otherwise, aged(age, WOMAN), CDC) == "below_average"


def test_example_11_cdc_r2_a_last_rise_past_half_way_counts_as_one_more():
    assert counted(D(11), frozenset({HALF_WAY})) == 12
    assert counted(D(11), frozenset()) == 11


BOHANNON_STANDS = "five_chair_stands_bohannon_2006"
FIVE = [
    pytest.param(66, "11.4", "not_worse_than_average", id="12-bohannon-R-at-limit"),
    pytest.param(66, "11.5", "worse_than_average", id="12-bohannon-R-above"),
    pytest.param(75, "12.6", "not_worse_than_average", id="13-bohannon-R-at-limit"),
    pytest.param(75, "12.7", "worse_than_average", id="13-bohannon-R-above"),
    pytest.param(82, "14.9", "worse_than_average", id="14-bohannon-R"),
]


@pytest.mark.parametrize(("age", "seconds", "expected"), FIVE)
def test_five_stands_are_compared_with_the_decade(age, seconds, expected):
    reading = taken(FIVE_CHAIR_STANDS, seconds)
    assert band(FIVE_CHAIR_STANDS, reading, aged(age), BOHANNON_STANDS) == expected


CUTS = [  # the boundary table of the sheet: what is flagged, and the nearest value that is not
    pytest.param(FIVE_CHAIR_STANDS, "ewgsop2", 70, "15.1", "15.0", "low", id="ewgsop2-five-R2"),
    pytest.param(
        FIVE_CHAIR_STANDS,
        "five_chair_stands_buatois_2008",
        70,
        "15.1",
        "15.0",
        "raised_risk",
        id="buatois-R2",
    ),
    pytest.param(
        FIVE_CHAIR_STANDS,
        "five_chair_stands_tiedemann_2008",
        80,
        "12.0",
        "11.9",
        "raised_risk",
        id="tiedemann-M",
    ),
    pytest.param(TIMED_UP_AND_GO, "timed_up_and_go_cdc", 70, "12.0", "11.9", "raised_risk", id="16-cdc-R2"),
    pytest.param(TIMED_UP_AND_GO, "ewgsop2", 70, "20.0", "19.9", "low", id="ewgsop2-up-and-go-R2"),
    pytest.param(TIMED_UP_AND_GO, "timed_up_and_go_bohannon_2006", 65, "9.1", "9.0", "worse_than_average", id="17-R"),
    pytest.param(GAIT_SPEED_4M, "ewgsop2", 70, "0.80", "0.81", "low", id="ewgsop2-gait-R2"),
    pytest.param(GAIT_SPEED_4M, "gait_speed_cesari_2005", 74, "0.99", "1.00", "raised_risk", id="cesari-R"),
]


@pytest.mark.parametrize(("measure", "source", "age", "flagged", "spared", "expected"), CUTS)
def test_a_cut_off_flags_exactly_from_its_printed_side(measure, source, age, flagged, spared, expected):
    assert band(measure, taken(measure, flagged), aged(age), source) == expected
    assert band(measure, taken(measure, spared), aged(age), source) != expected


@pytest.mark.parametrize("seconds", ["9.0", "9.1"])
def test_example_17_bohannon_r_a_time_worse_than_average_may_still_be_far_from_the_falls_cut_off(seconds):
    assert band(TIMED_UP_AND_GO, taken(TIMED_UP_AND_GO, seconds), aged(65), "timed_up_and_go_cdc") == "usual_risk"


BALANCE = [
    pytest.param(["10", "10", "9.9"], "29.9", "raised_risk", id="19-cdc-R2-just-short"),
    pytest.param(["10", "10", "10", "0"], "30", "usual_risk", id="19-cdc-R2-held"),
    pytest.param(["10", "8.5", "10", "10"], "18.5", "raised_risk", id="a-stage-after-a-miss-does-not-count"),
    pytest.param(["12", "10", "14", "4.2"], "34.2", "usual_risk", id="longer-than-ten-counts-as-ten"),
]


@pytest.mark.parametrize(("holds", "kept", "expected"), BALANCE)
def test_balance_is_judged_by_the_seconds_heel_to_toe(holds, kept, expected):
    assert total([D(h) for h in holds]) == D(kept)
    reading = taken(FOUR_STAGE_BALANCE, kept)
    assert band(FOUR_STAGE_BALANCE, reading, aged(70), "four_stage_balance_cdc") == expected


GAIT = [
    pytest.param("5.0", "0.80", "ewgsop2", "low", id="20-ewgsop2-R2"),
    pytest.param("4.0", "1.00", "gait_speed_cesari_2005", "usual_risk", id="21-cesari-R"),
    pytest.param("6.2", "0.65", "ewgsop2", "low", id="22-C"),
]


@pytest.mark.parametrize(("seconds", "pace", "source", "expected"), GAIT)
def test_a_time_over_four_metres_becomes_a_pace_and_then_a_band(seconds, pace, source, expected):
    assert speed(D(seconds)) == D(pace)
    assert band(GAIT_SPEED_4M, taken(GAIT_SPEED_4M, pace), aged(74), source) == expected


STEP = [
    pytest.param(MAN, 72, "79", "below_usual", id="23-R2"),
    pytest.param(MAN, 72, "80", "usual", id="23-R2-lower-end"),
    pytest.param(MAN, 72, "110", "usual", id="23-R2-upper-end"),
    pytest.param(WOMAN, 83, "91", "usual", id="24-R2-upper-end"),
    pytest.param(WOMAN, 83, "92", "above_usual", id="24-R2"),
]


@pytest.mark.parametrize(("sex", "age", "steps", "expected"), STEP)
def test_steps_in_two_minutes_fall_into_the_printed_range(sex, age, steps, expected):
    reading = taken(TWO_MINUTE_STEP, steps)
    assert band(TWO_MINUTE_STEP, reading, aged(age, sex), "two_minute_step_jones_rikli_2002") == expected


# --- six-minute walk

WALKS = [  # sex, age, cm, kg, expected metres, lower limit
    pytest.param(MAN, 60, 175, 80, "573.75", "420.75", id="25-enright-1998-R"),
    pytest.param(MAN, 70, 170, 75, "494.50", "341.50", id="27-enright-1998-C"),
    pytest.param(WOMAN, 60, 162, 70, "501.72", "362.72", id="28-enright-1998-C"),
    pytest.param(WOMAN, 72, 158, 68, "428.50", "289.50", id="30-enright-1998-C"),
]


@pytest.mark.parametrize(("sex", "age", "stature", "weight", "metres", "limit"), WALKS)
def test_enright_1998_expects(sex, age, stature, weight, metres, limit):
    expected = enright.expected(sex, age, D(stature), D(weight))
    assert expected == D(metres)
    assert enright.lower_limit(sex, expected) == D(limit)


@pytest.mark.parametrize(
    ("walked", "percent", "expected"),
    [
        pytest.param("500", "87.1", "not_below_lower_limit", id="31-enright-1998-C"),
        pytest.param("420", "73.2", "below_lower_limit", id="31-enright-1998-C-below"),
        pytest.param("421", "73.4", "not_below_lower_limit", id="above-420.75"),
    ],
)
def test_a_walk_is_compared_with_what_is_expected_at_that_weight(walked, percent, expected):
    ben = aged(60, MAN, stature=D(175))
    newest = {
        "six_minute_walk": taken(SIX_MINUTE_WALK, walked),
        "weight": Reading("weight", D(80), AT),
    }
    derived = SIX_MINUTE_WALK_DIFFERENCE.derive(newest, ben)
    assert derived.value == D(walked) - D("573.75")
    answer = found(SIX_MINUTE_WALK_DIFFERENCE, derived, ben, "six_minute_walk_enright_1998")
    assert answer.band == expected
    assert dict(answer.figures)["percent"] == D(percent)
    other = found(SIX_MINUTE_WALK_DIFFERENCE, derived, ben, "six_minute_walk_troosters_1999")
    assert abs(dict(other.figures)["expected"] - D("705.61")) < CENT  # 33


@pytest.mark.parametrize(
    ("equation", "sex", "age", "stature", "weight", "metres"),
    [
        pytest.param(troosters, MAN, 60, 175, 80, "705.61", id="33-troosters-R"),
        pytest.param(troosters, WOMAN, 60, 162, 70, "605.48", id="33-troosters-R-woman"),
        pytest.param(enright_2003, MAN, 75, 172, 78, "418.36", id="34-enright-2003-R"),
        pytest.param(enright_2003, WOMAN, 75, 158, 65, "382.65", id="34-enright-2003-R-woman"),
    ],
)
def test_other_equations_expect(equation, sex, age, stature, weight, metres):
    assert abs(equation.expected(sex, age, D(stature), D(weight)) - D(metres)) < CENT


@pytest.mark.parametrize(("sex", "pace"), [(MAN, "1.60"), (WOMAN, "1.37")])
def test_example_35_published_the_medians_of_enright_1998_are_these_speeds(sex, pace):
    assert half_up(enright.ROWS[sex].median / 360, 2) == D(pace)


def test_example_36_read_25_metres_are_below_what_matters_and_inside_the_error_of_one_walk():
    important, error = SIX_MINUTE_WALK.important, SIX_MINUTE_WALK.error
    mdc95 = D("1.96") * D(2).sqrt() * error.sem
    assert important.better == 30
    assert D(25) < important.better < mdc95
    assert abs(mdc95 - 82) < CENT  # 60


def test_example_37_computed_an_error_of_21_metres_means_these_detectable_changes():
    root = D(2).sqrt()
    assert half_up(D("1.96") * root * 21, 2) == D("58.21")
    assert half_up(D("1.645") * root * 21, 2) == D("48.85")


@pytest.mark.parametrize(
    ("resting", "expected"),
    [
        pytest.param({"pulse": D(120)}, frozenset(), id="ats-R2-120-is-allowed"),
        pytest.param({"pulse": D(121)}, frozenset({"pulse"}), id="ats-R2-above-120"),
        pytest.param({"systolic": D(180), "diastolic": D(100)}, frozenset(), id="ats-R2-180/100-is-allowed"),
        pytest.param({"systolic": D(181)}, frozenset({"blood_pressure"}), id="ats-R2-above-180"),
        pytest.param({"diastolic": D(101)}, frozenset({"blood_pressure"}), id="ats-R2-above-100"),
    ],
)
def test_resting_values_above_the_limits_speak_against_a_walk(resting, expected):
    assert six_minute_walk_ats_2002.resting_cautions(**resting) == expected


# --- heart rate and fitness


def kilograms(pounds: str) -> Decimal:
    return convert(D(pounds), Unit.POUND, Unit.KILOGRAM)


MILES = [  # sex, age, lb, minutes, bpm, ml/kg/min
    pytest.param(MAN, 45, "170", "14.5", 140, "39.40", id="38-kline-R2-pub"),
    pytest.param(WOMAN, 60, "165", "17", 130, "21.05", id="41-kline-C"),
    pytest.param(MAN, 45, "77.1", "14.5", 140, "46.54", id="43-C-kilograms-taken-for-pounds"),
]


@pytest.mark.parametrize(("sex", "age", "pounds", "minutes", "pulse", "expected"), MILES)
def test_a_mile_walk_estimates(sex, age, pounds, minutes, pulse, expected):
    estimate = kline_1987.aerobic_capacity(sex, age, kilograms(pounds), D(minutes), D(pulse))
    assert abs(estimate - D(expected)) < CENT


def test_example_43_a_client_of_77_1_kg_gets_the_estimate_of_170_pounds():
    newest = {
        "walk_mile": Reading("walk_mile", D("14.5"), AT, second=D(140)),
        "weight": Reading("weight", D("77.1"), AT),
    }
    client = aged(45, MAN, cautions_known=True)
    derived = AEROBIC_ESTIMATE.derive(newest, client)
    assert abs(derived.value - D("39.40")) < CENT
    (answer,) = AEROBIC_ESTIMATE.score(derived, client)
    assert dict(answer.figures)["error"] == 5


@pytest.mark.parametrize(
    ("maximum", "resting", "expected"),
    [
        pytest.param(180, 60, "45.90", id="44-uth-C"),
        pytest.param(180, 56, "49.18", id="45-uth-C"),
        pytest.param(180, 64, "43.03", id="45-uth-C-one-counting-step-up"),
    ],
)
def test_the_heart_rate_ratio_estimates(maximum, resting, expected):
    assert abs(uth_2004.aerobic_capacity(D(maximum), D(resting)) - D(expected)) < CENT


@pytest.mark.parametrize(
    ("age", "tanaka"),
    [
        pytest.param(60, "166", id="46-C"),
        pytest.param(40, "180.0", id="47-C"),
        pytest.param(20, "194.0", id="48-C-20"),
        pytest.param(75, "155.5", id="48-C-75"),
    ],
)
def test_maximal_heart_rate_falls_with_age(age, tanaka):
    assert heart_rate_max.tanaka(age) == D(tanaka)


def test_example_87_read_a_relative_rule_of_15_percent_asks_for_more_than_2_1_seconds_at_14():
    def changed(before, after):
        verdict = judge(TIMED_UP_AND_GO, taken(TIMED_UP_AND_GO, before), None, later(after))
        return verdict is not None and verdict.beyond_error

    def later(seconds):
        return replace(
            taken(TIMED_UP_AND_GO, seconds), taken_at=taken(TIMED_UP_AND_GO, "9").taken_at + timedelta(days=28)
        )

    assert changed("14.00", "11.89") and not changed("14.00", "11.91")
    # and a rise is judged like the fall that undoes it, not as 15 % of another number
    assert changed("11.89", "14.00") and not changed("11.91", "14.00")
    assert not changed("14", "12") and not changed("14", "16")
