"""What a coach is notified of: every rule from both sides of its limit, and when it clears."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from decimal import Decimal

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from core.client import Caution
from core.judging.assess import assess
from core.measures import MEASURES
from core.quantity import Unit
from core.reading import Conditions, Reading
from core.watching.flags import (
    NOTHING_AGREED,
    RULES,
    Agreed,
    Clears,
    ClientWeek,
    Code,
    Severity,
    WhatFollowed,
    cleared,
    flag,
    flags_of_week,
    worded,
    worst,
)
from core.watching.flags_of_reading import flags_of_reading, implausible_run, weight_says_nothing
from tests.core.people import someone

D = Decimal
NOON = datetime(2026, 3, 2, 12, tzinfo=UTC)
ADA = someone("female", 68, stature="165")
DIRECTED = Agreed(directed_weighing=True, loss_is_planned=False)
PLANNED = Agreed(directed_weighing=False, loss_is_planned=True)


def on(day: float, measure: str, value: str | int, second: int | None = None, **rest) -> Reading:
    at = NOON + timedelta(days=day)
    return Reading(measure, D(value), at, second=None if second is None else D(second), **rest)


def series(measure: str, *values: str, every: float = 28, **rest) -> tuple[Reading, ...]:
    return tuple(on(every * n, measure, value, **rest) for n, value in enumerate(values))


def raised(measure: str, readings: tuple[Reading, ...], person=ADA, agreed=NOTHING_AGREED):
    *history, now = readings
    found = assess(MEASURES[measure], now, history, person, baseline_since=None, retest=None, zone=UTC)
    return {f.code: f for f in flags_of_reading(MEASURES[measure], found, history, person, agreed, zone=UTC)}


def codes(*args, **rest) -> set[Code]:
    return set(raised(*args, **rest))


# --- blood pressure and pulse -----------------------------------------------------------------------------------


def pressures(*numbers: str, minutes: float = 6, notes=()) -> tuple[Reading, ...]:
    pairs = [number.split("/") for number in numbers]
    kept = Conditions(notes=frozenset(notes))
    return tuple(on(n * minutes / 1440, "blood_pressure", s, int(d), conditions=kept) for n, (s, d) in enumerate(pairs))


@pytest.mark.parametrize(
    ("numbers", "wanted"),
    [
        pytest.param(("182/100",), {Code.BP_SEVERE}, id="W59a one severe reading [NHLBI, derived]"),
        pytest.param(("182/100", "184/99"), {Code.BP_SEVERE, Code.BP_SEVERE_REPEATED}, id="W59b still severe"),
        pytest.param(("182/124", "182/124"), {Code.BP_SEVERE, Code.BP_SEVERE_REPEATED}, id="W60 repeated [derived]"),
        pytest.param(("182/100", "172/96"), set(), id="settled after rest"),
        pytest.param(("182/100", "160/90", "182/100"), {Code.BP_SEVERE}, id="not in a row"),
        pytest.param(("180/80",), {Code.BP_SEVERE}, id="D6 exactly 180"),
        pytest.param(("179/119",), set(), id="just below"),
        pytest.param(("88/58",), set(), id="W62b low and well [NHLBI, derived]"),
    ],
)
def test_a_severe_pressure_is_urgent_at_once_and_again_when_it_stays(numbers, wanted):
    found = raised("blood_pressure", pressures(*numbers))
    assert set(found) == wanted
    assert {f.severity for f in found.values()} <= {Severity.URGENT}


def test_a_severe_pressure_of_another_day_is_no_repeat():
    assert codes("blood_pressure", pressures("182/100", "182/100", minutes=1500)) == {Code.BP_SEVERE}


def test_in_pregnancy_severe_begins_earlier():
    person = someone("female", 30, cautions=(Caution.PREGNANCY,))
    assert codes("blood_pressure", pressures("162/90"), person) == {Code.BP_SEVERE}
    assert codes("blood_pressure", pressures("162/90")) == set()


@pytest.mark.parametrize("symptom", ["dizziness", "fainting"])
def test_w62_derived_a_low_pressure_is_a_flag_only_with_symptoms(symptom):
    (found,) = raised("blood_pressure", pressures("88/58", notes=[symptom])).values()
    assert (found.code, found.severity, dict(found.evidence)["symptom"]) == (Code.BP_LOW, Severity.URGENT, symptom)
    assert codes("blood_pressure", pressures("90/60", notes=[symptom])) == set()


def week(number: str) -> tuple[Reading, ...]:
    return tuple(on(day, "blood_pressure", *map(int, number.split("/"))) for day in range(5))


@pytest.mark.parametrize(
    ("number", "age", "raises"),
    [("134/84", 68, False), ("135/70", 68, True), ("120/85", 68, True), ("140/84", 81, False), ("145/84", 81, True)],
)
def test_a_high_mean_of_a_series_is_told(number, age, raises):
    found = raised("blood_pressure", week(number), someone("female", age))
    assert (Code.BP_HIGH_MEAN in found) is raises
    if raises:
        assert dict(found[Code.BP_HIGH_MEAN].evidence)["days"] == 5


@pytest.mark.parametrize(
    ("rate", "wanted"),
    [(121, {Code.PULSE_FAST}), (120, set()), (40, set()), (39, {Code.PULSE_SLOW}), (72, set())],
)
def test_a_resting_pulse_over_120_or_under_40_is_urgent(rate, wanted):
    found = raised("resting_heart_rate", series("resting_heart_rate", str(rate)))
    assert set(found) == wanted
    assert all(f.severity is Severity.URGENT for f in found.values())


# --- weight -----------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("days", "now", "raises"),
    [
        pytest.param(3, "82.1", True, id="W74a 2.1 kg in 3 days [ESC, derived]"),
        pytest.param(3, "82.0", False, id="W74b exactly 2 kg is not more than 2 [derived]"),
        pytest.param(1, "81.36", True, id="3 lb in a day"),
        pytest.param(1, "81.35", False, id="a little less"),
        pytest.param(7, "82.28", True, id="more than 5 lb in a week"),
        pytest.param(7, "82.27", False, id="5 lb in a week"),
        pytest.param(8, "90", False, id="longer than a week"),
        pytest.param(3, "77", False, id="a loss"),
    ],
)
def test_a_fast_gain_under_directed_weighing_is_urgent(days, now, raises):
    readings = (on(0, "weight", "80"), on(days, "weight", now))
    found = raised("weight", readings, someone("female", 68), DIRECTED)
    assert (Code.FAST_GAIN in found) is raises
    assert Code.FAST_GAIN not in raised("weight", readings, someone("female", 68))
    if raises:
        assert found[Code.FAST_GAIN].severity is Severity.URGENT
        assert dict(found[Code.FAST_GAIN].evidence) == {
            "gain": D(now) - 80,
            "days": days,
            "from": 80,
            "to": D(now),
        }


def test_a_slow_climb_over_several_days_is_a_fast_gain_too():
    climb = series("weight", "80", "80.8", "81.5", "82.2", every=1)
    assert Code.FAST_GAIN in codes("weight", climb, agreed=DIRECTED)


@pytest.mark.parametrize(
    ("now", "wanted"),
    [
        pytest.param("76.1", set(), id="W68 4.875 % [MUST, derived]"),
        pytest.param("76.0", {Code.UNPLANNED_LOSS_OVER_5, Code.MUST_MEDIUM}, id="5.0 %"),
        pytest.param("72.0", {Code.UNPLANNED_LOSS_OVER_5, Code.MUST_MEDIUM}, id="W70 10.0 % [MUST, derived]"),
        pytest.param("71.9", {Code.UNPLANNED_LOSS_OVER_5, Code.MUST_HIGH}, id="W71 10.125 % [MUST, derived]"),
    ],
)
def test_an_unplanned_loss_in_four_months(now, wanted):
    tall = someone("male", 60, stature="175")
    found = codes("weight", (on(0, "weight", "80"), on(122, "weight", now)), tall)
    assert found & {Code.UNPLANNED_LOSS_OVER_5, Code.MUST_MEDIUM, Code.MUST_HIGH} == wanted


def test_an_agreed_loss_is_no_unplanned_one_unless_it_leads_to_underweight():
    readings = (on(0, "weight", "80"), on(122, "weight", "70"))
    heavy, light = someone("male", 60, stature="175"), someone("male", 60, stature="190")
    assert codes("weight", readings, heavy, PLANNED) == set()
    assert codes("weight", readings, light, PLANNED) == {Code.MUST_HIGH}  # index 19.4, 12.5 % lost


def test_a_loss_counts_for_must_within_six_months_and_for_the_five_percent_rule_within_twelve():
    after = {days: codes("weight", (on(0, "weight", "80"), on(days, "weight", "75"))) for days in (180, 200, 370)}
    assert after[180] == {Code.UNPLANNED_LOSS_OVER_5, Code.MUST_MEDIUM}
    assert after[200] == {Code.UNPLANNED_LOSS_OVER_5}
    assert after[370] == set()


KILOGRAMS = st.decimals(min_value=40, max_value=120, places=1)


@given(st.lists(KILOGRAMS, max_size=4), KILOGRAMS, st.none() | st.integers(150, 195))
@example([D(80)], D(76), 165)
@example([], D("54.5"), 165)  # 20.02, read as 20.0
def test_a_weight_that_is_said_to_say_nothing_raises_no_flag_of_weight(before, now, stature):
    person = someone("female", 68, stature=stature)
    readings = tuple(on(28 * n, "weight", value) for n, value in enumerate((*before, now)))
    loss = {Code.UNPLANNED_LOSS_OVER_5, Code.MUST_MEDIUM, Code.MUST_HIGH}
    if weight_says_nothing(now, max(before, default=None), person.stature):
        assert not codes("weight", readings, person) & loss


@pytest.mark.parametrize(
    ("weights", "told"),
    [
        pytest.param(("80", "80.4", "86", "80.2"), False, id="one weight stands out, and its neighbours agree"),
        pytest.param(("80", "84", "79.8"), True, id="it lies near enough not to have been asked back"),
        pytest.param(("80", "85", "85", "80.2"), True, id="two weights have been so high"),
        pytest.param(("86", "80.4", "80.2"), True, id="the first is the start"),
        pytest.param(("80", "86", "81.5", "80.2"), False, id="a little higher afterwards"),
        pytest.param(("80", "90", "85", "80.2"), True, id="the neighbours do not agree"),
        pytest.param(("80", "80.4", "75"), True, id="the present weight is believed at once"),
    ],
)
def test_a_loss_is_not_reckoned_from_a_weight_that_stands_alone(weights, told):
    assert (Code.UNPLANNED_LOSS_OVER_5 in codes("weight", series("weight", *weights))) is told


def test_a_low_body_mass_index_alone_has_points():
    tall = someone("male", 60, stature="200")
    by_weight = {w: codes("weight", (on(0, "weight", w),), tall) for w in ("80.4", "80", "74", "73.6")}
    assert by_weight == {
        "80.4": set(),  # 20.1
        "80": {Code.MUST_MEDIUM},  # 20.0, D8
        "74": {Code.MUST_MEDIUM},  # 18.5
        "73.6": {Code.MUST_HIGH},  # 18.4
    }


# --- energy, falls, change, sameness ----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("ratings", "raises"),
    [
        pytest.param("77777744", False, id="two under by three may be chance"),
        pytest.param("777777444", True, id="three are not"),
        pytest.param("77777733", True, id="nor are two under by four"),
        pytest.param("777755", False, id="two under by two, as moods swing"),
        pytest.param("777746", False, id="only the first"),
        pytest.param("777764", False, id="only the last"),
        pytest.param("7722", False, id="two ratings are no mean"),
        pytest.param("77722", True, id="three are"),
        pytest.param("5959575733", False, id="somebody whose moods swing anyway"),
        pytest.param("7777777733", True, id="somebody whose moods do not"),
    ],
)
def test_energy_that_falls_at_two_check_ins_in_a_row_is_told(ratings, raises):
    assert (Code.ENERGY_FALLING in codes("energy", series("energy", *ratings, every=7))) is raises


@pytest.mark.parametrize(
    ("ratings", "raises"),
    [
        pytest.param("7771", True, id="six under a steady mean"),
        pytest.param("77777772", True, id="five, if it was steady for long"),
        pytest.param("7772", False, id="five under three ratings may be chance"),
        pytest.param("7775", False, id="two under, as moods swing"),
        pytest.param("772", False, id="two ratings are no mean"),
        pytest.param("59595952", False, id="somebody whose moods swing anyway"),
        pytest.param("777722", False, id="the second in a row is told as falling"),
    ],
)
def test_energy_that_drops_at_once_by_more_than_moods_swing_is_told(ratings, raises):
    assert (Code.ENERGY_DROPPED in codes("energy", series("energy", *ratings, every=7))) is raises


def test_own_words_are_kept_where_the_table_has_a_place_for_them_and_cut():
    now = datetime(2026, 3, 2, 9, tzinfo=UTC)
    asked = worded(flag(Code.WANTS_COACH, now), "  Could we\n talk? ")
    assert dict(asked.evidence) == {"words": "Could we talk?"}
    assert worded(flag(Code.UNREACHABLE, now), "hello").evidence == ()
    (long,) = worded(asked, "w" * 900).evidence
    assert len(long[1]) == 200


@pytest.mark.parametrize(
    ("measure", "value", "raises"),
    [
        ("chair_stand_30s", "10", True),
        ("chair_stand_30s", "11", False),
        ("timed_up_and_go", "12.0", True),
        ("timed_up_and_go", "11.9", False),
    ],
)
def test_a_test_on_the_risk_side_of_its_limit_is_told(measure, value, raises):
    assert (Code.FALLS_RISK in codes(measure, series(measure, value))) is raises


def test_a_short_heel_to_toe_stance_is_told():
    measure = MEASURES["four_stage_balance"]
    bands = {value: Code.FALLS_RISK in codes(measure.key, series(measure.key, value)) for value in ("25", "29", "30")}
    assert bands == {"25": True, "29": True, "30": False}  # seconds over the stages: tandem is the third ten


def test_only_firm_changes_and_large_worsenings_reach_the_coach():
    stands = "chair_stand_30s"
    assert codes(stands, series(stands, "14", "17", "17")) == set()  # confirmed, not firm
    assert codes(stands, series(stands, "14", "20", "20")) == {Code.CHANGE_BETTER_CONFIRMED}
    assert codes(stands, series(stands, "24", "18", "18")) == {Code.CHANGE_WORSE_CONFIRMED}
    assert codes(stands, series(stands, "24", "17")) == {Code.CHANGE_WORSE_LARGE}
    assert codes(stands, series(stands, "24", "18")) == set()  # no jump, so it was not asked back
    assert codes(stands, series(stands, "24", "20", "17")) == set()
    assert codes(stands, series(stands, "14", "30")) == set()  # a single improvement, however large


def test_a_change_is_told_with_its_numbers():
    (found,) = raised("weight", series("weight", "90", "90", "95.1", "95.1")).values()
    assert (found.code, found.severity) == (Code.CHANGE_CONFIRMED, Severity.NOTE)
    shown = dict(found.evidence)
    assert (shown["difference"], shown["level_before"]) == (D("5.1"), 90)
    assert shown["since"] == "2026-04-27"  # the first reading of the new level
    assert shown["mdc95"] == D("1.0")  # 1.96 * 0.66 % of 90 * sqrt(8 / 10), for means of two


def test_a_ratio_does_not_repeat_what_its_parts_say():
    assert codes("waist_to_hip_ratio", series("waist_to_hip_ratio", "0.95", "0.70", "0.70")) == set()


@pytest.mark.parametrize(
    ("measure", "value", "window", "too_many"),
    [
        pytest.param("weight", "82.4", None, 4, id="to 0.1 kg, swings by 0.5"),
        pytest.param("weight", "82", None, 12, id="scales that show whole kilograms"),
        pytest.param("resting_heart_rate", "72", 15, 6, id="beats in 15 s, swings by 5"),
        pytest.param("chair_stand_30s", "12", None, 7, id="whole stands do repeat"),
    ],
)
def test_how_many_equal_values_are_too_many_depends_on_step_and_swing(measure, value, window, too_many):
    """By hand: 1 + log(0.001) / log(step / (2 SD sqrt(pi))), rounded up, at least four."""
    assert implausible_run(MEASURES[measure], on(0, measure, value, window=window)) == too_many
    for n in (too_many - 1, too_many):
        run = series(measure, *[value] * n, window=window)
        assert (Code.IDENTICAL_VALUES in codes(measure, run)) is (n == too_many)


def test_a_broken_run_or_whole_pounds_are_not_suspected():
    assert Code.IDENTICAL_VALUES not in codes("weight", series("weight", "82.4", "82.4", "82.3", "82.4", "82.4"))
    pounds = [on(28 * n, "weight", D(180) * D("0.45359237"), unit=Unit.POUND) for n in range(4)]
    assert Code.IDENTICAL_VALUES not in codes("weight", tuple(pounds))


# --- weeks, ends and the table ----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("facts", "wanted"),
    [
        (ClientWeek(), []),
        (ClientWeek(missed=1), []),
        (ClientWeek(missed=2), [Code.MISSED_CHECK_INS]),
        (ClientWeek(missed=5, paused=True), []),
        (ClientWeek(early_weighings=2), []),
        (ClientWeek(early_weighings=3), [Code.WEIGHING_OFTEN]),
        (ClientWeek(early_weighings=2, in_one_day=2), [Code.WEIGHING_OFTEN]),
        (ClientWeek(reachable=False), [Code.UNREACHABLE]),
    ],
)
def test_a_week_tells_of_silence_frequent_weighing_and_unreachability(facts, wanted):
    assert [f.code for f in flags_of_week(facts, NOON)] == wanted


AFTER, MUCH_LATER = NOON + timedelta(days=7), NOON + timedelta(days=28)


@pytest.mark.parametrize(
    ("code", "later", "now", "ends"),
    [
        (Code.BP_SEVERE, WhatFollowed(read_at=AFTER), AFTER, True),
        (Code.BP_SEVERE, WhatFollowed(read_at=AFTER, raised=frozenset({Code.BP_SEVERE})), AFTER, False),
        (Code.BP_SEVERE, WhatFollowed(read_at=NOON), AFTER, False),
        (Code.BP_SEVERE, WhatFollowed(heard_at=AFTER), AFTER, False),
        (Code.MISSED_CHECK_INS, WhatFollowed(answered_at=AFTER), AFTER, True),
        (Code.MISSED_CHECK_INS, WhatFollowed(heard_at=AFTER), AFTER, False),
        (Code.UNREACHABLE, WhatFollowed(heard_at=AFTER), AFTER, True),
        (Code.WEIGHING_OFTEN, WhatFollowed(), MUCH_LATER, True),
        (Code.WEIGHING_OFTEN, WhatFollowed(), MUCH_LATER - timedelta(seconds=1), False),
        (Code.WEIGHING_OFTEN, WhatFollowed(again_at=AFTER), MUCH_LATER, False),
        (Code.RED_FLAG_WORDS, WhatFollowed(AFTER, frozenset(), AFTER, AFTER), MUCH_LATER, False),
    ],
)
def test_a_flag_ends_by_itself_only_as_its_row_says(code, later, now, ends):
    assert cleared(code, NOON, later, now) is ends


def test_the_table_has_every_code_and_says_each_rule_in_words():
    assert set(RULES) == set(Code)
    for code, rule in RULES.items():
        assert len(rule.when.split()) >= 3, code
        assert len(set(rule.evidence)) == len(rule.evidence), code
    assert {r.clears for r in RULES.values()} == set(Clears)


def test_a_flag_of_an_event_carries_only_the_evidence_of_its_row():
    found = flag(Code.RED_FLAG_WORDS, NOON, sign="chest_pain", level="emergency")
    assert found.evidence == (("level", "emergency"), ("sign", "chest_pain"))  # in the order of the table
    with pytest.raises(ValueError, match="no evidence called text"):
        flag(Code.RED_FLAG_WORDS, NOON, text="what they wrote")


def test_the_gravest_of_several_flags_comes_first():
    several = [flag(Code.CHANGE_CONFIRMED, NOON), flag(Code.PULSE_FAST, NOON), flag(Code.WANTS_COACH, NOON)]
    assert worst(several) is Severity.URGENT
    assert worst(several[::2]) is Severity.THIS_WEEK
    assert worst([]) is None
