"""Properties of every body measure: order, ages, limits, and what is not scored at all."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from decimal import Decimal
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.client import Background, Caution, Profile, Sex
from core.measures import (
    blood_pressure,
    bmi,
    derived_reading,
    resting_heart_rate,
    waist,
    waist_to_height_ratio,
    waist_to_hip_ratio,
)
from core.measures.blood_pressure import BLOOD_PRESSURE
from core.measures.bmi import BMI
from core.measures.measure import Measure, NoReference, Score
from core.measures.resting_heart_rate import RESTING_HEART_RATE
from core.measures.waist import WAIST
from core.measures.waist_to_height_ratio import WAIST_TO_HEIGHT_RATIO
from core.measures.waist_to_hip_ratio import WAIST_TO_HIP_RATIO
from core.reading import How, Reading
from core.references import (
    bmi_nice,
    bmi_who,
    fast_gain,
    must,
    rhr_adult_range,
    rhr_trade_chart,
    waist_idf,
    waist_nice,
    waist_who,
    whr_trade,
    whr_who,
    whtr_nice,
)
from core.references.ladder import Edge, Ladder, LadderStep
from core.sources import Seen, Source
from tests.core.people import AT, by, reading, someone

D = Decimal
SCORED = (BMI, WAIST, WAIST_TO_HIP_RATIO, WAIST_TO_HEIGHT_RATIO, RESTING_HEART_RATE)
LADDERS: tuple[Ladder, ...] = (
    bmi_who.CLASSES,
    bmi_nice.GENERAL,
    bmi_nice.LOWER,
    *waist_nice.BY_SEX.values(),
    *waist_who.BY_SEX.values(),
    *(ladder for by_sex in waist_idf.BY_BACKGROUND.values() for ladder in by_sex.values()),
    *whr_who.BY_SEX.values(),
    *whr_trade.BY_SEX.values(),
    whtr_nice.BANDS,
    rhr_adult_range.RANGE,
    *(ladder for columns in rhr_trade_chart.COLUMNS.values() for ladder in columns),
    must.BMI,
    must.LOSS,
)

ADULTS = st.builds(
    someone,
    sex=st.sampled_from([None, "female", "male"]),
    age=st.one_of(st.none(), st.integers(18, 110)),
    background=st.one_of(st.none(), st.sampled_from([b.value for b in Background])),
    cautions=st.lists(st.sampled_from(list(Caution)), max_size=3, unique=True).map(tuple),
)
CHILDREN = st.builds(
    someone,
    sex=st.sampled_from([None, "female", "male"]),
    age=st.integers(0, 17),
    background=st.one_of(st.none(), st.sampled_from([b.value for b in Background])),
)


def values(measure: Measure) -> st.SearchStrategy[Decimal]:
    """Possible values to three decimals, usually near limits."""
    low, high = measure.bounds.possible.low, measure.bounds.possible.high
    assert low is not None
    assert high is not None
    limits = sorted({s.limit for ladder in LADDERS for s in ladder.steps if low <= s.limit <= high})
    near = st.sampled_from(limits).flatmap(
        lambda limit: st.sampled_from([limit, limit - D("0.001"), limit + D("0.001")])
    )
    return st.one_of(near, st.decimals(low, high, places=3))


# --- ladders ---


@pytest.mark.parametrize("ladder", LADDERS, ids=lambda ladder: ladder.source.key)
def test_the_limits_of_every_table_rise_and_its_bands_are_named_once(ladder: Ladder):
    assert all(a.limit < b.limit for a, b in pairwise(ladder.steps))
    bands = [place.band for place in ladder.bands]
    assert len(bands) == len(set(bands))


def test_a_limit_belongs_to_the_band_its_edge_says():
    source = Source("s", "", "", Seen.OURS)
    ladder = Ladder(source, "a", (LadderStep(D(1), "b", Edge.AT), LadderStep(D(2), "c", Edge.ABOVE)))
    found = [ladder.find(D(v)).band for v in ("0.9", "1", "1.9", "2", "2.1")]
    assert found == ["a", "b", "b", "b", "c"]
    assert [p.figures for p in ladder.bands] == [
        (("below", D(1)),),
        (("from", D(1)), ("up_to", D(2))),
        (("above", D(2)),),
    ]


@given(st.sampled_from(LADDERS), st.lists(st.decimals(0, 250, places=3), min_size=2))
def test_a_larger_value_never_falls_into_a_lower_band(ladder: Ladder, numbers: list[Decimal]):
    ranks = [ladder.find(n).rank for n in sorted(numbers)]
    assert ranks == sorted(ranks)


@given(st.sampled_from(LADDERS), st.decimals(0, 250, places=3))
def test_the_figures_of_a_band_hold_for_the_value_in_it(ladder: Ladder, value: Decimal):
    holds = {
        "from": lambda limit: value >= limit,
        "above": lambda limit: value > limit,
        "below": lambda limit: value < limit,
        "up_to": lambda limit: value <= limit,
    }
    assert all(holds[name](limit) for name, limit in ladder.find(value).figures)


# --- scoring ---


@pytest.mark.parametrize("measure", SCORED, ids=lambda measure: measure.key)
@given(data=st.data(), who=ADULTS)
def test_a_larger_value_never_ranks_lower_in_any_reference(measure: Measure, data, who: Profile):
    first, second = sorted((data.draw(values(measure)), data.draw(values(measure))))
    for low, high in zip(
        measure.score(reading(measure.key, first), who),
        measure.score(reading(measure.key, second), who),
        strict=True,
    ):
        if isinstance(low, Score) and isinstance(high, Score):
            assert low.rank <= high.rank


@pytest.mark.parametrize("measure", SCORED, ids=lambda measure: measure.key)
@given(data=st.data(), child=CHILDREN)
def test_no_age_under_18_gets_a_band(measure: Measure, data, child: Profile):
    for found in measure.score(reading(measure.key, data.draw(values(measure))), child):
        assert isinstance(found, NoReference)


@given(st.integers(60, 280), st.integers(30, 180), CHILDREN)
def test_a_childs_pressure_is_only_ever_severe(systolic: int, diastolic: int, child: Profile):
    (found,) = BLOOD_PRESSURE.score(reading("blood_pressure", systolic, diastolic), child)
    assert isinstance(found, NoReference) or found.band == "severe"


@pytest.mark.parametrize("measure", SCORED, ids=lambda measure: measure.key)
@given(data=st.data(), who=ADULTS)
def test_what_depends_on_sex_is_silent_without_it(measure: Measure, data, who: Profile):
    nobody = replace(who, sex=None)
    by_sex = ("nice_waist", "who_waist", "idf_", "trade_", "nhanes", "who_waist_to_hip")
    for found in measure.score(reading(measure.key, data.draw(values(measure))), nobody):
        assert found.source is not None
        if found.source.key.startswith(by_sex) and found.source.key != "nice_waist_to_height":
            assert isinstance(found, NoReference)


@pytest.mark.parametrize("measure", (BMI, WAIST, WAIST_TO_HIP_RATIO, WAIST_TO_HEIGHT_RATIO), ids=lambda m: m.key)
@given(data=st.data(), who=ADULTS)
def test_nothing_about_size_is_classed_in_pregnancy(measure: Measure, data, who: Profile):
    pregnant = replace(who, cautions=who.cautions | {Caution.PREGNANCY})
    found = measure.score(reading(measure.key, data.draw(values(measure))), pregnant)
    assert all(isinstance(s, NoReference) for s in found)


@given(st.sampled_from(list(Sex)), st.integers(18, 110), st.integers(25, 220))
def test_a_pulse_below_the_chart_is_never_rated(sex: Sex, age: int, rate: int):
    found = RESTING_HEART_RATE.score(reading("resting_heart_rate", rate), someone(sex.value, age))
    lowest = rhr_trade_chart.column(sex, age)
    assert lowest is not None
    assert isinstance(found[1], NoReference) is (rate < lowest.steps[0].limit)


@pytest.mark.parametrize("age, printed", [(17, False), (18, True), (25, True), (65, True), (66, True), (100, True)])
def test_the_chart_of_the_trade_has_a_column_from_18_on(age: int, printed: bool):
    assert (rhr_trade_chart.column(Sex.FEMALE, age) is not None) is printed


# --- rounding, half up ---


@pytest.mark.parametrize(
    "value, band",
    [
        ("18.4499", "mild_thinness"),
        ("18.45", "normal"),
        ("24.9499", "normal"),
        ("24.95", "pre_obese"),
        ("29.95", "obese_1"),
        ("34.95", "obese_2"),
        ("39.9499", "obese_2"),
        ("39.95", "obese_3"),
        ("15.95", "moderate_thinness"),
        ("16.95", "mild_thinness"),
    ],
)
def test_an_index_is_rounded_half_up_before_it_is_classed(value: str, band: str):
    assert by("who_bmi", bmi.score(reading("bmi", value), someone())) == band


@pytest.mark.parametrize("value, band", [("59.5", "usual"), ("59.49", "slow"), ("100.49", "usual"), ("100.5", "fast")])
def test_the_mean_of_two_counts_is_compared_in_whole_beats(value: str, band: str):
    scores = resting_heart_rate.score(reading("resting_heart_rate", value), someone())
    assert by("bhf_resting_heart_rate", scores) == band


@pytest.mark.parametrize("value, advised", [("120", False), ("120.5", True), ("40", False), ("39.5", True)])
def test_advice_looks_at_the_unrounded_rate(value: str, advised: bool):
    (found, *_) = resting_heart_rate.score(reading("resting_heart_rate", value), someone())
    assert isinstance(found, Score)
    assert ("seek_advice_if_it_stays" in found.notes) is advised


# --- notes ---


@pytest.mark.parametrize(
    "value, who, note",
    [
        pytest.param("24", someone(age=65), "a_little_more_can_be_fine_from_65", id="65"),
        pytest.param("24", someone(cautions=(Caution.VERY_MUSCULAR,)), "muscle_counts_too", id="muscle"),
        pytest.param("24", someone(cautions=(Caution.WEIGHT_MISLEADS,)), "weight_misleads", id="swelling"),
        pytest.param("34.95", someone(), "no_waist_to_height_from_35", id="35 after rounding"),
        pytest.param("24", someone(age=None), "age_not_given", id="age unknown"),
    ],
)
def test_what_misleads_is_noted_beside_the_class(value: str, who: Profile, note: str):
    (found, *_) = bmi.score(reading("bmi", value), who)
    assert isinstance(found, Score)
    assert found.notes == (note,)


def test_nothing_is_noted_where_nothing_misleads():
    (found, *_) = bmi.score(reading("bmi", "34.9"), someone(age=64))
    assert isinstance(found, Score)
    assert found.notes == ()


@pytest.mark.parametrize("site, notes", [("midpoint", ()), ("navel", ("other_site",)), ("narrowest", ("other_site",))])
def test_a_waist_taken_elsewhere_is_placed_with_a_note(site: str, notes: tuple[str, ...]):
    (found, *_) = waist.score(reading("waist", 94, labels=(("site", site),)), someone("male"))
    assert isinstance(found, Score)
    assert found.notes == notes


@pytest.mark.parametrize("background, disputed", [("japanese", True), ("chinese", False)])
def test_a_limit_that_copies_print_differently_says_so(background: str, disputed: bool):
    found = waist.score(reading("waist", 90), someone("male", background=background))[2]
    assert isinstance(found, Score)
    assert ("copies_disagree" in found.notes) is disputed


@pytest.mark.parametrize("window, advised", [(15, True), (30, False), (60, False), (None, False)])
def test_a_fast_pulse_counted_briefly_is_to_be_counted_longer(window: int | None, advised: bool):
    (found, *_) = resting_heart_rate.score(reading("resting_heart_rate", 108, window=window), someone())
    assert isinstance(found, Score)
    assert ("count_30_or_60_s" in found.notes) is advised


def test_a_medicine_that_slows_the_pulse_takes_the_chart_away():
    slowed = someone("male", cautions=(Caution.RATE_LIMITING_MEDICINE,))
    found = resting_heart_rate.score(reading("resting_heart_rate", 52), slowed)
    assert by("trade_resting", found) == "no: medicine_slows_the_pulse"


# --- derived readings ---


@given(st.decimals(30, 300, places=1), st.decimals(120, 220, places=1))
def test_an_index_grows_with_weight_and_falls_with_height(weight: Decimal, height: Decimal):
    here = bmi.index(weight, height)
    assert bmi.index(weight + 1, height) > here > bmi.index(weight, height + 1)


def test_an_index_takes_a_measured_height_before_the_one_in_the_profile():
    weight = {"weight": reading("weight", 70)}
    who = someone(stature="180")
    measured = bmi.derive({**weight, "height": reading("height", 175)}, who)
    told = bmi.derive(weight, who)
    assert measured is not None
    assert told is not None
    assert measured.value == bmi.index(D(70), D(175))
    assert told.value == bmi.index(D(70), D(180))


@pytest.mark.parametrize(
    "measure, parts",
    [
        pytest.param(BMI, {}, id="no weight"),
        pytest.param(BMI, {"weight": reading("weight", 70)}, id="no height"),
        pytest.param(WAIST_TO_HIP_RATIO, {"waist": reading("waist", 90)}, id="no hip"),
        pytest.param(WAIST_TO_HEIGHT_RATIO, {"waist": reading("waist", 90)}, id="no height for the ratio"),
    ],
)
def test_nothing_is_derived_from_missing_parts(measure: Measure, parts: dict[str, Reading]):
    assert measure.derive is not None
    assert measure.derive(parts, someone()) is None


@pytest.mark.parametrize("days, together", [(14, True), (15, False)])
def test_girths_more_than_two_weeks_apart_make_no_ratio(days: int, together: bool):
    parts = {"waist": reading("waist", 90), "hip": reading("hip", 100, at=AT - timedelta(days=days))}
    assert (waist_to_hip_ratio.derive(parts, someone()) is not None) is together


@pytest.mark.parametrize("weight, reason", [("101.1", None), ("101.2", "bmi_35_or_more")])  # 34.98 rounds to 35.0
def test_a_ratio_to_height_is_not_scored_from_an_index_of_35(weight: str, reason: str | None):
    who = someone(stature="170.1")
    parts = {"waist": reading("waist", 110), "weight": reading("weight", weight)}
    derived = waist_to_height_ratio.derive(parts, who)
    assert derived is not None
    (found,) = waist_to_height_ratio.score(derived, who)
    assert (found.reason if isinstance(found, NoReference) else None) == reason


def test_a_derived_reading_has_the_time_and_what_is_known_of_the_conditions_of_its_parts():
    later = AT + timedelta(hours=1)
    first = reading("waist", 90, labels=(("site", "midpoint"), ("tape", "string")))
    second = reading("hip", 100, labels=(("site", "widest"), ("tape", "string")), at=later)
    derived = waist_to_hip_ratio.derive({"waist": first, "hip": second}, someone())
    assert derived is not None
    assert derived.taken_at == later
    assert derived.conditions.labels == (("tape", "string"),)


def test_a_reading_derived_from_a_side_note_does_not_count():
    early = replace(reading("weight", 70), how=How.EARLY)
    derived = bmi.derive({"weight": early}, someone(stature="175"))
    assert derived is not None
    assert not derived.counts
    assert derived_reading.combined("x", D(1), derived.unit or early.unit, reading("weight", 70)).counts


# --- blood pressure ---


@given(st.integers(60, 280), st.integers(30, 180), st.sampled_from(["nice", "aha", "esc"]))
def test_a_higher_mean_never_has_a_lower_category_in_the_same_reference(systolic: int, diastolic: int, body: str):
    here = blood_pressure.score_mean(D(systolic), D(diastolic), someone(), age=40, body=body)
    above = blood_pressure.score_mean(D(systolic + 1), D(diastolic), someone(), age=40, body=body)
    if isinstance(here, Score) and isinstance(above, Score) and here.source is above.source:
        assert here.rank <= above.rank


def test_in_pregnancy_severe_comes_sooner_and_a_mean_has_no_category():
    pregnant = someone("female", cautions=(Caution.PREGNANCY,))
    (single,) = blood_pressure.score(reading("blood_pressure", 160, 90), pregnant)
    mean = blood_pressure.score_mean(D(130), D(80), pregnant, age=30, body="nice")
    assert isinstance(single, Score)
    assert single.source.key == "severe_blood_pressure_pregnancy"
    assert isinstance(mean, NoReference)
    assert mean.reason == "pregnant"


def test_the_reading_that_stands_for_a_series_is_scored_as_a_mean():
    (found,) = blood_pressure.score(reading("blood_pressure", 136, 80, notes=("series_mean",)), someone())
    assert isinstance(found, Score)
    assert found.band == "raised"


def test_a_pressure_without_its_second_number_is_not_compared():
    (found,) = blood_pressure.score(reading("blood_pressure", 190), someone())
    assert isinstance(found, NoReference)
    assert found.reason == "one_number_missing"


# --- rules ---


@given(st.decimals(40, 150, places=1), st.decimals(0, 6, places=2), st.integers(0, 9))
def test_a_larger_gain_is_never_less_fast(weight: Decimal, gain: Decimal, days: int):
    if fast_gain.fast(weight, weight + gain, days) is not None:
        assert fast_gain.fast(weight, weight + gain + D("0.1"), days) is not None


def test_the_limits_of_who_for_action_in_asia_are_the_lower_ones_of_nice():
    assert tuple(s.limit for s in bmi_nice.LOWER.steps[1:]) == bmi_who.ASIAN_ACTION_POINTS
    assert {s.limit for s in bmi_nice.GENERAL.steps} == {s.limit for s in bmi_who.CLASSES.steps[2:]}
