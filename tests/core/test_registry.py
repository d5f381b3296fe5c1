"""Every measure and every reference: complete, sourced, and checked against something outside this code."""

from __future__ import annotations

import ast
import importlib
import pkgutil
from collections import Counter
from datetime import UTC, datetime
from decimal import Decimal
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from core import references
from core.client import Background, Profile, Sex
from core.language import LANGUAGES
from core.measures import CHECK_IN_ORDER, MEASURES
from core.measures.measure import Measure, MeasureKind, ProfileFact, never
from core.quantity import Range, Unit, convertible
from core.reading import Reading
from core.references import REFERENCES
from core.references.boundaries import DECISIONS
from core.sources import Seen

HERE = Path(__file__).parent

# What checks a measure or a reference from outside: a published example, another tool, a data set.
OUTSIDE_CHECKS: dict[str, str] = {
    "emergency_numbers": "test_emergency_numbers.py::test_a_number_we_print_is_an_emergency_number_there",
    "helplines": "test_emergency_numbers.py::test_a_helpline_can_be_dialled_in_its_country",
    "low_sugar": "test_low_sugar.py::test_the_tablets_we_name_hold_what_other_bodies_advise",
    # measures
    "height": "test_body_examples.py::test_a_conversion_is_the_one_printed",
    "weight": "test_linnerud.py::test_typed_pounds_and_inches_become_the_kilograms_and_centimetres_numpy_gets",
    "bmi": "test_body_examples.py::test_every_cell_of_the_nih_chart_has_the_index_at_its_head",
    "waist": "test_linnerud.py::test_every_waist_is_placed_where_counting_the_limits_by_numpy_places_it",
    "hip": "test_body_examples.py::test_a_waist_to_hip_ratio_is_the_one_printed",
    "waist_to_hip_ratio": "test_body_examples.py::test_a_waist_to_hip_ratio_is_the_one_printed",
    "waist_to_height_ratio": "test_body_examples.py::test_a_waist_is_compared_with_half_of_the_height",
    "resting_heart_rate": "test_linnerud.py::test_every_pulse_is_placed_where_counting_the_limits_by_numpy_places_it",
    "blood_pressure": "test_pulse_and_pressure_examples.py::test_the_mean_of_a_home_series_is_compared_unrounded",
    "chair_stand_30s": "test_function_examples.py::test_chair_stands_fall_into_the_printed_band",
    "five_chair_stands": "test_function_examples.py::test_five_stands_are_compared_with_the_decade",
    "timed_up_and_go": "test_function_examples.py::test_a_cut_off_flags_exactly_from_its_printed_side",
    "four_stage_balance": "test_function_examples.py::test_balance_is_judged_by_the_seconds_heel_to_toe",
    "gait_speed_4m": "test_function_examples.py::test_a_time_over_four_metres_becomes_a_pace_and_then_a_band",
    "two_minute_step": "test_function_examples.py::test_steps_in_two_minutes_fall_into_the_printed_range",
    "six_minute_walk": "test_function_examples.py::test_enright_1998_expects",
    "six_minute_walk_difference": "test_function_examples.py::"
    "test_a_walk_is_compared_with_what_is_expected_at_that_weight",
    "walk_mile": "test_function_examples.py::test_a_mile_walk_estimates",
    "aerobic_estimate": "test_function_examples.py::test_a_mile_walk_estimates",
    "aerobic_from_pulse": "test_function_examples.py::test_the_heart_rate_ratio_estimates",
    "activity_minutes": "test_activity_examples.py::test_a_week_of_activity_counts_vigorous_minutes_twice",
    "pain": "test_pain_and_sleep.py::test_the_smallest_change_of_pain_beyond_error_is_the_one_published",
    "sleep": "test_pain_and_sleep.py::test_a_line_of_100_millimetres_becomes_10_points",
    "pain_and_sleep": "test_pain_and_sleep.py::test_the_smallest_change_of_pain_beyond_error_is_the_one_published",
    "session_effort": "test_activity_examples.py::test_w96_derived_an_hour_at_effort_7_is_a_load_of_420",
    "one_leg_stance": "test_standing_and_strength_examples.py::"
    "test_less_than_five_seconds_on_one_leg_goes_with_injurious_falls",
    "strength_days": "test_standing_and_strength_examples.py::"
    "test_two_days_of_strengthening_work_meet_the_recommendation",
    # references, by module
    "exercise_screening_acsm_2015": "judging/test_readiness.py::test_the_verdict",
    "bmi_who": "test_body_examples.py::test_an_index_falls_into_its_class",
    "bmi_nice": "test_body_examples.py::test_the_ten_rows_of_the_cdc_table_fall_into_its_classes",
    "waist_nice": "test_body_examples.py::test_a_waist_falls_into_its_band",
    "waist_who": "test_body_examples.py::test_a_waist_falls_into_its_band",
    "waist_idf": "test_body_examples.py::test_a_waist_falls_into_its_band",
    "whr_who": "test_body_examples.py::test_a_waist_to_hip_ratio_falls_into_its_band",
    "whr_trade": "test_body_examples.py::test_a_waist_to_hip_ratio_falls_into_its_band",
    "whtr_nice": "test_body_examples.py::test_a_waist_is_compared_with_half_of_the_height",
    "rhr_adult_range": "test_pulse_and_pressure_examples.py::test_a_pulse_is_placed_in_the_range_of_adults",
    "rhr_trade_chart": "test_pulse_and_pressure_examples.py::test_both_ends_of_every_cell_of_the_chart_hold_as_printed",
    "rhr_nhanes_2011": "test_pulse_and_pressure_examples.py::test_the_mean_of_us_adults_is_shown_as_context",
    "bp_nice_home": "test_pulse_and_pressure_examples.py::test_the_mean_of_a_home_series_is_compared_unrounded",
    "bp_nhs_over_80": "test_pulse_and_pressure_examples.py::test_over_80_the_limit_at_home_is_higher",
    "bp_aha": "test_pulse_and_pressure_examples.py::test_a_level_at_home_has_its_office_equivalent",
    "bp_esc": "test_pulse_and_pressure_examples.py::test_the_higher_category_of_the_two_numbers_counts",
    "bp_severe": "test_pulse_and_pressure_examples.py::"
    "test_a_single_pressure_is_only_held_against_levels_that_ask_for_action",
    "bp_low": "test_pulse_and_pressure_examples.py::test_a_fall_of_20_on_standing_is_flagged",
    "weight_loss_rates": "test_weight_examples.py::test_a_kilogram_a_week_is_the_fastest_loss_accepted",
    "must": "test_weight_examples.py::test_an_unplanned_loss_scores_its_must_points",
    "unplanned_loss": "test_weight_examples.py::test_an_unplanned_loss_asks_for_attention_from_five_percent",
    "fast_gain": "test_weight_examples.py::test_a_fast_gain_is_found_by_the_cautious_union_of_rules",
    "weight_variation": "test_weight_examples.py::test_half_a_kilogram_over_a_weekend_is_ordinary",
    "repeats": "test_weight_examples.py::test_a_third_weighing_settles_two_that_differ",
    "body_errors": "test_body_errors.py::test_the_smallest_change_beyond_error_is_the_one_derived_from_the_study",
    "chair_stand_cdc": "test_function_examples.py::test_chair_stands_fall_into_the_printed_band",
    "chair_stand_rikli_jones": "test_function_examples.py::test_chair_stands_fall_into_the_printed_band",
    "five_chair_stands_bohannon_2006": "test_function_examples.py::test_five_stands_are_compared_with_the_decade",
    "five_chair_stands_falls": "test_function_examples.py::test_a_cut_off_flags_exactly_from_its_printed_side",
    "ewgsop2": "test_function_examples.py::test_a_cut_off_flags_exactly_from_its_printed_side",
    "timed_up_and_go_cdc": "test_function_examples.py::test_a_cut_off_flags_exactly_from_its_printed_side",
    "timed_up_and_go_bohannon_2006": "test_function_examples.py::test_a_cut_off_flags_exactly_from_its_printed_side",
    "gait_speed_cesari_2005": "test_function_examples.py::test_a_cut_off_flags_exactly_from_its_printed_side",
    "one_leg_stance_springer_2007": "test_standing_and_strength_examples.py::"
    "test_the_means_of_three_are_those_a_public_page_prints_rounded",
    "four_stage_balance_cdc": "test_function_examples.py::test_balance_is_judged_by_the_seconds_heel_to_toe",
    "two_minute_step_jones_rikli_2002": "test_function_examples.py::"
    "test_steps_in_two_minutes_fall_into_the_printed_range",
    "six_minute_walk_enright_1998": "test_function_examples.py::"
    "test_example_35_published_the_medians_of_enright_1998_are_these_speeds",
    "six_minute_walk_enright_2003": "test_function_examples.py::test_other_equations_expect",
    "six_minute_walk_troosters_1999": "test_function_examples.py::test_other_equations_expect",
    "six_minute_walk_ats_2002": "test_function_examples.py::test_resting_values_above_the_limits_speak_against_a_walk",
    "kline_1987": "test_function_examples.py::test_a_mile_walk_estimates",
    "uth_2004": "test_function_examples.py::test_the_heart_rate_ratio_estimates",
    "heart_rate_max": "test_function_examples.py::test_maximal_heart_rate_falls_with_age",
    "who_activity_2020": "test_activity_examples.py::test_a_week_of_activity_counts_vigorous_minutes_twice",
    "activity_intensity": "test_activity_examples.py::test_pag_read_effort_from_0_to_10",
    "session_load": "judging/test_training_load.py::"
    "test_monotony_is_the_mean_over_the_sample_sd_as_two_other_tools_compute_it",
    "function_test_change": "test_function_examples.py::"
    "test_example_37_computed_an_error_of_21_metres_means_these_detectable_changes",
}

# Nothing published to check them against: each is compared only with the person's own readings.
ONLY_WITH_ONESELF = {
    "energy": "no reference for a single energy rating was found",
    "own_question": "nobody else is asked it",
    "sessions_done": "a count the client makes",
}

# Helpers of the tables, not tables.
NOT_REFERENCES = {"ladder", "pressure_bands", "by_age", "boundaries"}

NO_ERROR = {
    "height": "asked once, never compared over time",
    "four_stage_balance": "none found in a text",
    "one_leg_stance": "none found in a text",
    "two_minute_step": "none found in a text",
    "walk_mile": "none found in a text, for the time",
    "six_minute_walk_difference": "the walk itself is judged",
    "aerobic_estimate": "the published error is between people",
    "aerobic_from_pulse": "the published error is between people",
    "activity_minutes": "remembered, not measured",
    "strength_days": "remembered, not measured",
    "sessions_done": "a count the client makes",
    "session_effort": "how hard it was, not how the person is",
}
# Measures without a name that clients would type; they answer the question, or press a button.
UNNAMED = {
    "pain": "asked by name; other pain in a message is heard for signs",
    "sleep": "taken only when it is asked",
    "own_question": "only its client has words for it",
    "four_stage_balance": "taken only when it is asked",
    "gait_speed_4m": "taken only when it is asked",
    "five_chair_stands": "named in English only, so far",
    "timed_up_and_go": "named in English only, so far",
}
ANSWERED_BY_TIME = {"gait_speed_4m"}  # seconds over a known distance

MODULES = sorted(m.name for m in pkgutil.iter_modules(references.__path__) if m.name not in NOT_REFERENCES)
ALL = pytest.mark.parametrize("measure", MEASURES.values(), ids=list(MEASURES))


@cache
def names_of_tests(file: str) -> frozenset[str]:
    tree = ast.parse((HERE / file).read_text("utf-8"))
    return frozenset(node.name for node in tree.body if isinstance(node, ast.FunctionDef))


def test_every_measure_and_every_reference_has_a_check_from_outside():
    without = {*MEASURES, *MODULES} - OUTSIDE_CHECKS.keys() - ONLY_WITH_ONESELF.keys()
    assert not without, f"no outside check: {sorted(without)}"


def test_no_check_is_listed_for_what_does_not_exist():
    assert {*OUTSIDE_CHECKS, *ONLY_WITH_ONESELF} <= {*MEASURES, *MODULES}
    assert not OUTSIDE_CHECKS.keys() & ONLY_WITH_ONESELF.keys()


@pytest.mark.parametrize("name", OUTSIDE_CHECKS)
def test_every_listed_check_is_a_test(name: str):
    file, test = OUTSIDE_CHECKS[name].split("::")
    assert test in names_of_tests(file)


@pytest.mark.parametrize("name", MODULES)
def test_every_reference_is_in_the_registry_with_all_its_sources(name: str):
    sources = importlib.import_module(f"core.references.{name}").SOURCES
    assert sources
    assert all(REFERENCES.get(source.key) == source for source in sources)


def test_no_two_sources_share_a_key():
    keys = [source.key for name in MODULES for source in importlib.import_module(f"core.references.{name}").SOURCES]
    assert [key for key, times in Counter(keys).items() if times > 1] == []
    assert len(keys) == len(REFERENCES)


@pytest.mark.parametrize("source", REFERENCES.values(), ids=list(REFERENCES))
def test_every_source_says_who_wrote_it_and_whom_it_describes(source):
    assert source.cite
    assert source.population
    if source.seen is Seen.MEMORY:
        assert source.note, "a figure from memory carries a caution"


def test_all_ten_decisions_at_limits_are_made_with_a_reason():
    assert list(DECISIONS) == [f"D{n}" for n in range(1, 11)]
    assert all(d.question and d.found and d.choice and d.reason for d in DECISIONS.values())


# --- measures ---


@ALL
def test_a_measure_stands_under_its_own_key(measure: Measure):
    assert MEASURES[measure.key] is measure


@ALL
def test_a_measure_names_its_sources(measure: Measure):
    assert measure.sources or measure.key in ONLY_WITH_ONESELF
    assert len(set(measure.sources)) == len(measure.sources)


@ALL
def test_a_measure_that_is_asked_can_be_understood_and_says_how_it_is_taken(measure: Measure):
    if measure.kind is MeasureKind.DERIVED:
        assert measure.derive is not None
        assert measure.derived_from
        assert all(key in MEASURES for key in measure.derived_from)
        return
    assert measure.understand is not None
    assert measure.units
    assert measure.protocol.technique
    if measure.kind in (MeasureKind.BODY, MeasureKind.FUNCTION):
        assert measure.protocol.prepare
        assert measure.protocol.keep_same


@ALL
def test_people_may_answer_in_units_that_convert(measure: Measure):
    if measure.key not in ANSWERED_BY_TIME:
        assert all(convertible(unit, measure.unit) for unit in measure.units)


def within(inner: Range, outer: Range) -> bool:
    return (
        all(value is None or value in outer for value in (inner.low, inner.high))
        and (inner.low is not None or outer.low is None)
        and (inner.high is not None or outer.high is None)
    )


@ALL
def test_what_is_usual_lies_within_what_is_possible(measure: Measure):
    bounds = measure.bounds
    assert within(bounds.usual, bounds.possible)
    assert bounds.jump is None or bounds.jump > 0
    if bounds.second_possible is not None:
        assert bounds.second_usual is not None
        assert within(bounds.second_usual, bounds.second_possible)


@ALL
def test_a_measure_has_an_error_or_a_reason_for_none(measure: Measure):
    if measure.error is None:
        assert measure.key in NO_ERROR
        return
    sizes = [size for size in (measure.error.sem, measure.error.cv) if size is not None]
    assert len(sizes) == 1
    assert sizes[0] > 0
    assert measure.key not in NO_ERROR


@ALL
def test_an_important_difference_is_positive_and_has_a_source(measure: Measure):
    if measure.important is not None:
        assert measure.important.better > 0
        assert measure.important.worse is None or measure.important.worse > 0
        assert measure.important.source.cite


@ALL
def test_every_key_a_measure_shows_is_a_plain_word(measure: Measure):
    protocol = measure.protocol
    keys = [*protocol.prepare, *protocol.technique, *protocol.keep_same, *(e.key for e in measure.must_not)]
    assert all(key.isascii() and key == key.lower() and " " not in key for key in keys)
    for said in (protocol.prepare, protocol.technique, protocol.keep_same):
        assert len(set(said)) == len(said)


def test_a_check_in_asks_everything_that_is_asked_more_than_once_and_nothing_twice():
    asked = {m.key for m in MEASURES.values() if m.kind not in (MeasureKind.ONCE, MeasureKind.DERIVED)}
    assert set(CHECK_IN_ORDER) == asked
    assert len(CHECK_IN_ORDER) == len(asked)


def test_a_check_in_asks_how_someone_feels_before_any_number_and_effort_last():
    kinds = [MEASURES[key].kind for key in CHECK_IN_ORDER]
    assert kinds[0] is MeasureKind.RATING
    assert kinds.index(MeasureKind.FUNCTION) > max(i for i, kind in enumerate(kinds) if kind is MeasureKind.BODY)


# --- what a measure says of itself ---


class Curious:
    """A profile that records which of its facts were read."""

    def __init__(self, profile: Profile) -> None:
        self._profile = profile
        self.asked: set[str] = set()

    def __getattr__(self, name: str):
        self.asked.add(name)
        return getattr(self._profile, name)


SOMEBODY = Profile(Sex.MALE, 1956, stature=Decimal(176), background=Background.WHITE)
ASKED_IF_NEEDED = frozenset({"sex", "stature", "background"})  # facts asked only if a measure needs them
AT = datetime(2026, 3, 2, 8, tzinfo=UTC)


def middling(measure: Measure) -> Reading:
    low, high = measure.bounds.usual.low or Decimal(0), measure.bounds.usual.high or Decimal(100)
    second = measure.bounds.second_usual
    return Reading(measure.key, (low + high) / 2, AT, second=None if second is None else second.high, window=30)


def looked_at(measure: Measure) -> set[str]:
    """The facts read by its bands, its alarm and its derivation, for somebody with all facts known."""
    curious: Any = Curious(SOMEBODY)
    if measure.derive is not None:
        measure.derive({m.key: middling(m) for m in MEASURES.values() if m.kind is not MeasureKind.ONCE}, curious)
    measure.score(middling(measure), curious)
    measure.alarm(middling(measure), curious)
    return curious.asked & ASKED_IF_NEEDED


@ALL
def test_what_the_bands_of_a_measure_ask_about_a_person_is_asked_at_enrolment(measure: Measure):
    parts = [MEASURES[key] for key in measure.derived_from]
    asked = {fact.value for of in (measure, *parts) for fact in of.needs}
    assert looked_at(measure) <= asked


@ALL
def test_a_fact_is_asked_only_where_a_band_needs_it(measure: Measure):
    made = [m for m in MEASURES.values() if measure.key in m.derived_from]
    of_goals = {"stature"} if measure.guarded else set()  # the lowest healthy weight
    used = set().union(*(looked_at(m) for m in (measure, *made)), of_goals)
    assert {fact.value for fact in measure.needs} & ASKED_IF_NEEDED <= used


@ALL
def test_a_number_in_units_of_the_clients_choice_asks_which(measure: Measure):
    chosen = len(measure.units) > 1 and measure.kind is MeasureKind.BODY
    assert (ProfileFact.UNITS in measure.needs) is chosen
    assert (ProfileFact.NUMBERS in measure.needs) is measure.guarded
    assert (ProfileFact.OWN_QUESTION in measure.needs) is measure.client_words


@ALL
def test_a_size_of_the_body_says_that_it_is_one(measure: Measure):
    of_body = {Unit.KILOGRAM_PER_SQUARE_METRE, Unit.CENTIMETRE, Unit.RATIO}
    assert (measure.body is not None) or measure.unit not in of_body
    assert measure.body is None or measure.kind in (MeasureKind.BODY, MeasureKind.ONCE, MeasureKind.DERIVED)


def test_only_a_weight_is_guarded_and_only_a_stature_cannot_be_hidden():
    assert [m.key for m in MEASURES.values() if m.guarded] == ["weight"]
    assert [m.key for m in MEASURES.values() if m.body is not None and not m.hideable] == ["height"]


@ALL
def test_a_derived_measure_is_said_with_a_reading_it_is_made_of(measure: Measure):
    assert (measure.said_with in measure.derived_from) if measure.kind is MeasureKind.DERIVED else not measure.said_with


@ALL
def test_what_stands_beside_a_measure_stands_beside_it_too(measure: Measure):
    assert not measure.beside or MEASURES[measure.beside].beside == measure.key
    assert not measure.second_called or measure.second_called in MEASURES


@ALL
def test_a_measure_that_alarms_says_how_it_is_taken_again_and_another_does_not(measure: Measure):
    assert (measure.repeat is not None) is (measure.alarm is not never)
    if measure.repeat is not None and measure.repeat.count is not None:
        assert measure.repeat.count in measure.protocol.timers


@ALL
def test_a_series_has_two_numbers_and_a_rating_alone_falls(measure: Measure):
    assert not measure.series or measure.bounds.second_possible is not None
    assert measure.fall is None or (measure.kind is MeasureKind.RATING and measure.fall > 0)


@ALL
def test_what_is_asked_has_a_name_in_every_language_or_a_reason_for_none(measure: Measure):
    missing = [code for code, words in LANGUAGES.items() if not words.names.get(measure.key)]
    assert bool(missing) is (measure.kind is MeasureKind.DERIVED or measure.key in UNNAMED), missing
