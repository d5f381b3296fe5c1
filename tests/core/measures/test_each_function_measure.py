"""Properties of every function test, fitness estimate and activity measure, for any value and person."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.client import Caution, Profile, Sex
from core.judging.change import Change, judge
from core.language import words_for
from core.measures import CHECK_IN_ORDER, MEASURES
from core.measures.cautions import ASK_FIRST, NOT_NOW
from core.measures.measure import MeasureKind, Misunderstood, Score, Understood, Why
from core.measures.score_function_tests import ARMS_USED
from core.quantity import Better, Unit, half_up
from core.reading import Conditions, Reading
from core.references import REFERENCES
from core.references import six_minute_walk_enright_1998 as enright_1998
from core.references import six_minute_walk_enright_2003 as enright_2003
from core.references import six_minute_walk_troosters_1999 as troosters

D = Decimal
AT = datetime(2026, 3, 30, 9, 0, tzinfo=UTC)
ENGLISH = words_for("en")

FUNCTION = [m for m in MEASURES.values() if m.kind is MeasureKind.FUNCTION]
ACTIVITY = [m for m in MEASURES.values() if m.kind is MeasureKind.ACTIVITY]
OF_EFFORT = {"six_minute_walk", "two_minute_step", "walk_mile"}
each_function = pytest.mark.parametrize("measure", FUNCTION, ids=lambda m: m.key)
each = pytest.mark.parametrize("measure", [*FUNCTION, *ACTIVITY], ids=lambda m: m.key)

# Ages in whole years as printed (or, where a body prints none, as chosen): first and last, both included.
PRINTED_AGES = {
    "chair_stand_cdc": (60, 94),
    "chair_stand_rikli_jones": (60, 94),
    "chair_stand_rikli_jones_2013": (60, 94),
    "five_chair_stands_bohannon_2006": (60, 89),
    "five_chair_stands_buatois_2008": (65, 119),
    "five_chair_stands_tiedemann_2008": (74, 98),
    "ewgsop2": (60, 119),
    "timed_up_and_go_cdc": (60, 119),
    "timed_up_and_go_bohannon_2006": (60, 99),
    "four_stage_balance_cdc": (60, 119),
    "one_leg_stance_vellas_1997": (60, 119),
    "one_leg_stance_springer_2007": (18, 99),
    "gait_speed_cesari_2005": (70, 79),
    "two_minute_step_jones_rikli_2002": (60, 94),
    "two_minute_step_rikli_jones_2013": (60, 94),
}
BY_SEX = {key for key in PRINTED_AGES if key.startswith(("chair_stand", "two_minute_step"))}

AGES = st.integers(0, 130)
SEXES = st.sampled_from(Sex)


def aged(age: int, sex: Sex | None = Sex.FEMALE) -> Profile:
    return Profile(sex=sex, birth_date=date(AT.year - age, 1, 1), stature=D(165), cautions_known=True)


def taken(measure, value: Decimal, *notes: str) -> Reading:
    return Reading(measure.key, value, AT, conditions=Conditions(notes=frozenset(notes)))


def values(measure) -> st.SearchStrategy[Decimal]:
    bounds = measure.bounds.possible
    return st.decimals(bounds.low, bounds.high, places=measure.places + 2, allow_nan=False)


# --- scoring


@each
@given(data=st.data())
def test_a_larger_value_never_ranks_lower(measure, data):
    low, high = sorted(data.draw(st.tuples(values(measure), values(measure))))
    person = aged(data.draw(AGES), data.draw(SEXES))
    for before, after in zip(
        measure.score(taken(measure, low), person), measure.score(taken(measure, high), person), strict=True
    ):
        assert before.source == after.source
        if isinstance(before, Score):
            assert before.rank <= after.rank


@each
@given(data=st.data())
def test_a_value_is_rounded_before_it_is_compared(measure, data):
    value, person = data.draw(values(measure)), aged(data.draw(st.integers(60, 94)), data.draw(SEXES))
    on_the_instrument = half_up(value, measure.places)
    if measure.key != "session_effort":  # a rating has no instrument
        assert measure.score(taken(measure, value), person) == measure.score(taken(measure, on_the_instrument), person)


@each_function
@given(data=st.data())
def test_no_age_outside_a_table_gets_a_band_and_every_age_inside_does(measure, data):
    age, sex = data.draw(AGES), data.draw(SEXES)
    for answer in measure.score(taken(measure, data.draw(values(measure))), aged(age, sex)):
        first, last = PRINTED_AGES[answer.source.key]
        assert isinstance(answer, Score) == (first <= age <= last)
        assert isinstance(answer, Score) or answer.reason == "age_outside_table"


@each_function
def test_every_age_is_tried_at_the_ends_of_its_tables(measure):
    value = measure.bounds.usual.low
    for answer in measure.score(taken(measure, value), aged(70)):
        first, last = PRINTED_AGES[answer.source.key]
        key = answer.source.key
        for age, inside in ((first - 1, False), (first, True), (last, True), (last + 1, False)):
            scores = measure.score(taken(measure, value), aged(age))
            (found,) = [s for s in scores if s.source.key == key]
            assert isinstance(found, Score) is inside, (key, age)


@each_function
@given(data=st.data())
def test_without_an_age_nothing_is_compared(measure, data):
    answers = measure.score(taken(measure, data.draw(values(measure))), Profile(sex=data.draw(SEXES)))
    assert all(answer.reason == "age_not_given" for answer in answers)


@each_function
@given(data=st.data())
def test_without_a_sex_tables_by_sex_are_not_used_and_others_are(measure, data):
    for answer in measure.score(taken(measure, data.draw(values(measure))), aged(75, sex=None)):
        if answer.source.key in BY_SEX:
            assert answer.reason == "sex_not_given"
        else:
            assert isinstance(answer, Score)


@given(stands=st.integers(0, 60), age=st.integers(60, 94), sex=SEXES)
def test_chair_stands_with_the_arms_score_as_none_however_many(stands, age, sex):
    measure, person = MEASURES["chair_stand_30s"], aged(age, sex)
    with_arms = measure.score(taken(measure, D(stands), ARMS_USED), person)
    assert with_arms == measure.score(taken(measure, D(0)), person)


@given(seconds=values(MEASURES["five_chair_stands"]), age=st.integers(60, 89))
def test_five_stands_with_the_arms_are_not_completed(seconds, age):
    measure = MEASURES["five_chair_stands"]
    (answer,) = measure.score(taken(measure, seconds, ARMS_USED), aged(age))
    assert answer.reason == "not_completed"


# --- estimates


def newest(**values_by_key: Reading) -> dict[str, Reading]:
    return values_by_key


def reading(key: str, value: str, second: str | None = None) -> Reading:
    return Reading(key, D(value), AT, second=D(second) if second else None)


each_sex = pytest.mark.parametrize("sex", list(Sex))
EVERY_AGE = range(131)


@each_sex
def test_a_walk_is_compared_only_from_40_to_80_years(sex):
    derive = MEASURES["six_minute_walk_difference"].derive
    assert [age for age in EVERY_AGE if derive(WALK, aged(age, sex)) is not None] == list(range(40, 81))


@each_sex
def test_a_mile_is_turned_into_an_estimate_only_from_30_to_69_years(sex):
    derive = MEASURES["aerobic_estimate"].derive
    assert [age for age in EVERY_AGE if derive(MILE, aged(age, sex)) is not None] == list(range(30, 70))


@pytest.mark.parametrize(
    ("sex", "cautions", "expected"),
    [
        (Sex.MALE, {Caution.ATHLETE}, range(21, 52)),
        (Sex.FEMALE, {Caution.ATHLETE}, range(0)),
        (Sex.MALE, set(), range(0)),
        (Sex.MALE, {Caution.ATHLETE, Caution.RATE_LIMITING_MEDICINE}, range(0)),
    ],
    ids=["trained-man", "trained-woman", "other-man", "a-medicine-slows-the-pulse"],
)
def test_a_resting_pulse_becomes_an_estimate_only_for_trained_men_of_21_to_51(sex, cautions, expected):
    derive, pulse = MEASURES["aerobic_from_pulse"].derive, reading("resting_heart_rate", "52")
    found = [
        age
        for age in EVERY_AGE
        if derive(newest(resting_heart_rate=pulse), replace(aged(age, sex), cautions=frozenset(cautions)))
    ]
    assert found == list(expected)


@each_sex
@pytest.mark.parametrize(
    ("equation", "ages"),
    [(troosters, range(50, 86)), (enright_2003, range(68, 101)), (enright_1998, range(40, 81))],
    ids=["troosters-1999-R", "enright-2003-from-68-M", "enright-1998-R"],
)
def test_an_equation_is_not_stretched_beyond_its_ages(equation, ages, sex):
    found = [age for age in EVERY_AGE if equation.expected(sex, age, D(170), D(70)) is not None]
    assert found == list(ages)


@pytest.mark.parametrize("key", ["activity_minutes", "strength_days", "session_effort"])
def test_advice_for_adults_is_not_given_for_a_child(key):
    measure = MEASURES[key]
    assert measure.score(taken(measure, D(2)), aged(17))[0].reason == "age_outside_table"
    assert isinstance(measure.score(taken(measure, D(2)), aged(18))[0], Score)
    assert isinstance(measure.score(taken(measure, D(2)), Profile())[0], Score)  # all clients are adults


WALK = newest(six_minute_walk=reading("six_minute_walk", "480"), weight=reading("weight", "74"))
MILE = newest(walk_mile=reading("walk_mile", "17", "130"), weight=reading("weight", "74"))
DORA = aged(60)


@pytest.mark.parametrize(
    ("key", "parts", "person"),
    [
        pytest.param("six_minute_walk_difference", WALK, replace(DORA, stature=None), id="height-unknown"),
        pytest.param("six_minute_walk_difference", WALK, replace(DORA, sex=None), id="sex-unknown"),
        pytest.param("six_minute_walk_difference", WALK, replace(DORA, birth_date=None), id="age-unknown"),
        pytest.param(
            "six_minute_walk_difference", {k: WALK[k] for k in ["six_minute_walk"]}, DORA, id="weight-unknown"
        ),
        pytest.param("aerobic_estimate", MILE, replace(DORA, sex=None), id="mile-sex-unknown"),
        pytest.param("aerobic_estimate", {**MILE, "walk_mile": reading("walk_mile", "17")}, DORA, id="no-end-pulse"),
        pytest.param(
            "aerobic_estimate",
            MILE,
            replace(DORA, cautions=frozenset({Caution.RATE_LIMITING_MEDICINE})),
            id="a-medicine-slows-the-pulse",
        ),
        pytest.param("aerobic_estimate", MILE, replace(DORA, cautions_known=False), id="medicines-not-asked-for"),
    ],
)
def test_nothing_is_estimated_from_what_is_not_known(key, parts, person):
    assert MEASURES[key].derive(parts, person) is None


def test_everything_known_gives_both_estimates():
    assert MEASURES["six_minute_walk_difference"].derive(WALK, DORA) is not None
    assert MEASURES["aerobic_estimate"].derive(MILE, DORA) is not None


# --- change


@pytest.mark.parametrize("measure", [m for m in FUNCTION if m.error], ids=lambda m: m.key)
def test_an_error_says_in_whom_it_was_found(measure):
    assert measure.error.borrowed_from
    assert (measure.error.sem is None) != (measure.error.cv is None)


def test_tests_without_a_published_error_are_exactly_these():
    unknown = {m.key for m in FUNCTION if m.error is None}
    assert unknown == {"four_stage_balance", "one_leg_stance", "two_minute_step", "walk_mile"}


@pytest.mark.parametrize(
    ("key", "aspect", "first", "then"),
    [
        ("six_minute_walk", "course", "hall", "park"),
        ("gait_speed_4m", "course", "corridor", "street"),
        ("chair_stand_30s", "chair", "kitchen", "office"),
        ("five_chair_stands", "chair", "kitchen", "office"),
        ("timed_up_and_go", "chair", "kitchen", "office"),
    ],
)
def test_a_test_on_another_chair_or_course_is_not_compared(key, aspect, first, then):
    measure = MEASURES[key]
    assert aspect in measure.protocol.keep_same

    def at(place: str, weeks: int) -> Reading:
        conditions = Conditions(labels=((aspect, place),))
        return Reading(key, measure.bounds.usual.low, AT + timedelta(weeks=weeks), conditions=conditions)

    assert judge(measure, at(first, 0), None, at(then, 4)).kind is Change.NOT_COMPARABLE
    assert judge(measure, at(first, 0), None, at(first, 4)).kind is Change.WITHIN_ERROR


STANDS, FIVE = "chair_stand_30s", "five_chair_stands"
LATER = [  # chair stands: MDC95 2.5 (Gill 2022, read), MCID 2 (Zanini 2018, read)
    pytest.param(STANDS, "12", "14", Change.WITHIN_ERROR, True, id="84-two-more-matter-within-noise"),
    pytest.param(STANDS, "12", "15", Change.BETTER, True, id="85-three-more-are-beyond-noise"),
    pytest.param(STANDS, "12", "13", Change.WITHIN_ERROR, False, id="one-more"),
    # five stands: MDC95 2.5 (Goldberg 2012, read), MCID 1.7 (Jones 2013, read)
    pytest.param(FIVE, "14.0", "12.0", Change.WITHIN_ERROR, True, id="86-two-seconds-less"),
    pytest.param(FIVE, "14.0", "11.4", Change.BETTER, True, id="2.6-seconds-less"),
    pytest.param(FIVE, "12.0", "14.6", Change.WORSE, True, id="2.6-seconds-more"),
]


@pytest.mark.parametrize(("key", "before", "after", "kind", "matters"), LATER)
def test_what_is_beyond_error_and_what_matters_are_two_answers(key, before, after, kind, matters):
    later = replace(reading(key, after), taken_at=AT + timedelta(weeks=4))
    verdict = judge(MEASURES[key], reading(key, before), None, later)
    assert (verdict.kind, verdict.reaches_important) == (kind, matters)


# --- how it is taken


@each_function
def test_a_function_test_has_its_whole_protocol(measure):
    protocol = measure.protocol
    assert protocol.prepare
    assert protocol.technique
    assert protocol.keep_same
    assert measure.better is not Better.NEITHER
    assert protocol.helper or measure.key == "walk_mile"


@each_function
def test_a_recent_heart_event_or_breathlessness_at_rest_speaks_against_every_test(measure):
    barred = {x.caution for x in measure.must_not if x.key == NOT_NOW}
    assert barred == {Caution.RECENT_HEART_EVENT, Caution.BREATHLESS_AT_REST}
    asked_first = {x.caution for x in measure.must_not if x.key == ASK_FIRST}
    heart = {Caution.HEART_CONDITION, Caution.HEART_FAILURE, Caution.PREGNANCY}
    assert asked_first == (heart if measure.key in OF_EFFORT else set())


@each
def test_every_source_is_registered_and_the_usual_lies_within_the_possible(measure):
    assert all(REFERENCES[source.key] is source for source in measure.sources)
    possible, usual = measure.bounds.possible, measure.bounds.usual
    assert usual.low in possible
    assert usual.high in possible


@each
def test_a_check_in_asks_every_measure_once_and_effort_last(measure):
    assert CHECK_IN_ORDER.count(measure.key) == 1
    body = [key for key in CHECK_IN_ORDER if MEASURES[key].kind is MeasureKind.BODY]
    if measure.kind is MeasureKind.FUNCTION:
        assert CHECK_IN_ORDER.index(measure.key) > max(map(CHECK_IN_ORDER.index, body))


# --- what people type


@each
@given(text=st.text(max_size=40))
def test_no_text_crashes_a_measure(measure, text):
    assert isinstance(measure.understand(text, ENGLISH, None), Understood | Misunderstood)


@each
@given(data=st.data())
def test_a_value_written_out_with_its_unit_is_understood_again(measure, data):
    low, high = measure.bounds.usual.low, measure.bounds.usual.high
    value = data.draw(st.decimals(low, high, places=measure.places))
    written = {Unit.METRE_PER_SECOND: "m/s", Unit.MINUTE: "min", Unit.METRE: "m", Unit.SECOND: "s"}
    text = f"{value:f} {written.get(measure.unit, '')}".strip()
    heard = measure.understand(text, ENGLISH, None)
    assert isinstance(heard, Understood)
    assert heard.value == value


TYPED = [
    ("chair_stand_30s", "12", "12"),
    ("chair_stand_30s", "9, but I used my arms", "0"),
    ("chair_stand_30s", "11 and more than half way up", "12"),
    ("five_chair_stands", "12.4 sec", "12.4"),
    ("timed_up_and_go", "9.1 and 9.5", "9.3"),
    ("four_stage_balance", "10 10 7.4", "27.4"),
    ("four_stage_balance", "10, 10, 10, 4", "34"),
    ("four_stage_balance", "10 10", "20"),
    ("four_stage_balance", "27.4 s", "27.4"),
    ("one_leg_stance", "23 s", "23"),
    ("one_leg_stance", "70", "45"),
    ("gait_speed_4m", "5.0", "0.80"),
    ("gait_speed_4m", "5 s", "0.80"),
    ("gait_speed_4m", "4.9 and 5.1 s", "0.80"),
    ("gait_speed_4m", "0.8 m/s", "0.8"),
    ("gait_speed_4m", "1.1", "1.1"),
    ("two_minute_step", "84 steps", "84"),
    ("six_minute_walk", "450 m", "450"),
    ("six_minute_walk", "1550 ft", "472.44"),
    ("walk_mile", "14:30, 140", "14.5"),
    ("activity_minutes", "2 hours", "120"),
    ("strength_days", "two days", "2"),
    ("sessions_done", "none", "0"),
    ("session_effort", "7/10", "7"),
]


@pytest.mark.parametrize(("key", "text", "value"), TYPED, ids=[f"{key}-{text}" for key, text, _ in TYPED])
def test_what_people_type_is_understood_as(key, text, value):
    heard = MEASURES[key].understand(text, ENGLISH, None)
    assert isinstance(heard, Understood)
    assert heard.value == D(value)


def test_the_pulse_at_the_end_of_a_mile_is_its_second_value():
    assert MEASURES["walk_mile"].understand("14:30, 140", ENGLISH, None).second == 140


@pytest.mark.parametrize(
    ("key", "text", "why"),
    [
        pytest.param("five_chair_stands", "4 rises then stopped", Why.NOT_COMPLETED, id="15-rehab-measures-R"),
        ("five_chair_stands", "13 s but I used my arms", Why.NOT_COMPLETED),
        ("gait_speed_4m", "82 kg", Why.OTHER_UNIT),
        ("gait_speed_4m", "0 s", Why.NO_NUMBER),
        ("four_stage_balance", "10 to 20", Why.A_RANGE),
        ("six_minute_walk", "12 s", Why.OTHER_UNIT),
    ],
)
def test_what_is_no_answer_says_why(key, text, why):
    heard = MEASURES[key].understand(text, ENGLISH, None)
    assert isinstance(heard, Misunderstood)
    assert heard.why is why


def test_half_a_stand_is_asked_back_as_one_more():
    heard = MEASURES["chair_stand_30s"].understand("11.5", ENGLISH, None)
    assert heard.guess.value == 12


def test_standing_on_one_leg_for_an_hour_is_doubted_rather_than_cut_to_45_seconds():
    heard = MEASURES["one_leg_stance"].understand("3600", ENGLISH, None)
    assert heard.value not in MEASURES["one_leg_stance"].bounds.possible


@pytest.mark.parametrize(
    ("language", "typed", "total"),
    [
        ("en", "tandem 10 s", "30"),
        ("en", "7.4 s tandem", "27.4"),
        ("en", "semi-tandem 10, tandem 7", "27"),
        ("en", "on one leg: 3 s", "33"),
        ("es", "tándem 10 s", "30"),
        ("de", "Ferse an Zehen 10 Sek", "30"),
        ("fr", "talon contre pointe 10 s", "30"),
        ("pl", "na jednej nodze 3 s", "33"),
        ("ar", "ترادف 10 ثوان", "30"),
    ],
)
def test_the_seconds_of_one_stage_are_not_the_total_but_lead_to_it(language, typed, total):
    heard = MEASURES["four_stage_balance"].understand(typed, words_for(language), None)
    assert isinstance(heard, Misunderstood) and heard.why is Why.ONE_STAGE
    assert heard.guess is not None and heard.guess.value == D(total)


@pytest.mark.parametrize(
    ("typed", "total"),
    [("side by side 10, semi-tandem 10, tandem 7.4", "27.4"), ("27.4 s, in tandem", "27.4"), ("feet together 6", "6")],
)
def test_stages_that_are_all_named_and_a_total_beside_a_name_need_no_question(typed, total):
    heard = MEASURES["four_stage_balance"].understand(typed, words_for("en"), None)
    assert isinstance(heard, Understood) and heard.value == D(total)


@pytest.mark.parametrize("typed", ["tandem and one leg 10", "tandem 10, side by side 10", "side by side 10, one leg 4"])
def test_stages_and_seconds_that_do_not_pair_are_asked_about(typed):
    heard = MEASURES["four_stage_balance"].understand(typed, words_for("en"), None)
    assert heard == Misunderstood(Why.ONE_STAGE)
