"""The start: which readings make it, what they are together, and how sure that is."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from decimal import Decimal

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import stats

from core.judging.assess import assess
from core.judging.change import Change, start_variance, variance
from core.judging.start import counted_from, start_of, together, visits_of
from core.measures import MEASURES
from core.measures.measure import MeasureKind
from core.reading import Conditions, Reading
from core.watching.flags import Agreed, Code
from core.watching.flags_of_reading import flags_of_reading
from tests.core.people import someone

D = Decimal
MONDAY = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)
WAIST, WEIGHT = MEASURES["waist"], MEASURES["weight"]
PLAN = {"baseline_since": None, "retest": None, "zone": UTC}


def on(day: float, value: str, measure: str = "waist", **rest) -> Reading:
    return Reading(measure, D(value), MONDAY + timedelta(days=day), attempts=2, **rest)


def series(*taken: tuple[float, str]) -> tuple[Reading, ...]:
    return tuple(on(day, value) for day, value in taken)


@pytest.mark.parametrize(
    ("taken", "visits", "again"),
    [
        pytest.param(((0, "96"),), 1, True, id="a second is wanted"),
        pytest.param(((0, "96"), (7, "97")), 2, False, id="two that agree are enough"),
        pytest.param(((0, "96"), (7, "97"), (14, "95")), 2, False, id="then a third does not count"),
        pytest.param(((0, "96"), (7, "86")), 2, True, id="two far apart want a third"),
        pytest.param(((0, "96"), (7, "86"), (14, "95")), 3, False, id="three are the most"),
        pytest.param(((0, "96"), (7, "86"), (14, "60"), (20, "95")), 3, False, id="whatever the third is"),
        pytest.param(((0, "96"), (0.1, "97"), (2, "97")), 1, True, id="two tapes of a day are one visit"),
        pytest.param(((0, "96"), (3, "97")), 2, False, id="a check-in answered late, the next in time"),
        pytest.param(((0, "96"), (24, "97")), 1, True, id="after the first weeks nothing is added"),
        pytest.param(((0, "96"), (28, "97"), (35, "97")), 1, True, id="nor to a start that was left alone"),
    ],
)
def test_which_readings_make_a_start(taken, visits, again):
    found = start_of(WAIST, series(*taken))
    assert (len(found.visits), found.wants_another) == (visits, again)


def test_a_visit_with_the_tape_elsewhere_is_another_measurement():
    navel, midpoint = (Conditions(labels=(("site", site),)) for site in ("navel", "midpoint"))
    readings = (on(0, "96", conditions=midpoint), on(7, "99", conditions=navel), on(14, "97", conditions=midpoint))
    assert [r.value for r in visits_of(WAIST, readings)] == [96, 97]


def test_a_weight_starts_with_one_reading():
    readings = tuple(on(day, "82", "weight") for day in (0, 7))
    assert visits_of(WEIGHT, readings) == readings[:1]
    assert not start_of(WEIGHT, readings[:1]).wants_another


def test_only_what_is_judged_and_taken_at_one_sitting_starts_twice():
    for measure in MEASURES.values():
        if measure.start_visits > 1:
            assert measure.error is not None
            assert measure.kind in (MeasureKind.BODY, MeasureKind.FUNCTION) and not measure.series
            assert not measure.guarded


def test_two_visits_are_their_mean_and_three_leave_the_odd_one_out():
    assert together(WAIST, series((0, "96"), (7, "97"))).value == D("96.5")
    three = together(WAIST, series((0, "96"), (7, "69"), (14, "97"))).value
    reach = D("1.5") * (D("1.9") ** 2 / 2).sqrt()
    assert float(three) == pytest.approx(float((96 + 97 + 96 - reach) / 3))


def test_the_error_of_a_start_is_that_of_a_mean_of_days():
    visits = series((0, "96"), (7, "97"))
    one = variance(WAIST.error, D(96), 2)
    assert start_variance(WAIST.error, visits, D(96)) == one / 2
    assert start_variance(WAIST.error, series((0, "96"), (7, "86"), (14, "95")), D(96)) == one / 3
    differing = (visits[0], on(7, "97", conditions=Conditions(differs=frozenset({"tape"}))))
    assert start_variance(WAIST.error, differing, D(96)) == (one + one * D("2.25")) / 4


def test_two_visits_far_apart_are_as_unsure_as_they_are_apart():
    assert start_variance(WAIST.error, series((0, "96"), (7, "86")), D(96)) == 25


def test_the_variance_of_three_visits_is_close_to_that_of_their_mean():
    """A winsorised mean of three normal values, by numpy: a tenth more than the mean's at most."""
    dice = np.random.default_rng(3)
    drawn = dice.normal(size=(200_000, 3))
    middle = np.median(drawn, axis=1, keepdims=True)
    spread = np.clip(drawn, middle - 1.5, middle + 1.5).mean(axis=1).var()
    assert spread + 0.002 >= 1 / 3 and spread < 1.1 / 3
    assert (
        stats.kstest(np.clip(drawn, middle - 1.5, middle + 1.5).mean(axis=1) / np.sqrt(spread), "norm").statistic < 0.01
    )


def test_a_further_visit_is_part_of_the_start_and_is_not_judged():
    readings = series((0, "96"), (7, "98"))
    found = assess(WAIST, readings[1], readings[:1], someone(), **PLAN)
    assert found.verdict is not None and found.verdict.kind is Change.STARTING
    assert found.course is None and found.context == ()
    first = assess(WAIST, readings[0], (), someone(), **PLAN)
    assert first.context == ("start_again",)


def test_retests_are_compared_with_all_visits_and_counted_from_the_first():
    readings = series((0, "96"), (7, "97"), (28, "93"))
    found = assess(WAIST, readings[-1], readings[:-1], someone(), **PLAN).verdict
    assert found is not None
    assert (found.baseline, found.difference, found.baseline_at) == (D("96.5"), D("-3.5"), MONDAY)
    assert found.mdc95 == pytest.approx(D("1.96") * (D("1.9") ** 2 / 2 * D("1.5")).sqrt(), abs=D("1e-9"))
    assert found.kind is Change.BETTER  # which a start of one reading could not show
    alone = assess(WAIST, on(28, "92.5"), readings[:1], someone(), **PLAN).verdict
    assert alone is not None and alone.kind is Change.WITHIN_ERROR


@pytest.mark.parametrize(
    ("taken", "day"),
    [
        pytest.param(((0, "96"), (7, "97")), 0, id="while the start lasts"),
        pytest.param(((0, "96"), (7, "97"), (28, "97")), 28, id="then from the last"),
    ],
)
def test_the_next_retest_is_counted_from_the_first_visit(taken, day):
    assert counted_from(WAIST, series(*taken)) == MONDAY + timedelta(days=day)
    assert counted_from(WAIST, ()) is None


@settings(max_examples=40)
@given(
    st.lists(st.floats(-1, 1), min_size=5, max_size=7),
    st.data(),
    st.floats(41, 219),
)
def test_one_misread_never_makes_a_change_the_start_included(noise, data, misread):
    """Of a start with two visits, a misread may be either of them."""
    values = [95 + 1.3 * n for n in noise]
    values[data.draw(st.integers(0, len(values) - 1))] = misread
    days = [0, 7, *(28 * n for n in range(1, len(values) - 1))]
    readings = tuple(on(day, f"{value:.1f}") for day, value in zip(days, values, strict=True))
    for n in range(2, len(readings)):
        found = assess(WAIST, readings[n], readings[:n], someone(), **PLAN)
        assert found.course is None
        assert found.verdict is not None and found.verdict.certainty != "confirmed"


@given(
    st.lists(st.integers(-30, 30), min_size=4, max_size=6),
    st.sampled_from([D(-40), D(0), D(100)]),
)
def test_shifting_every_girth_changes_no_verdict_and_no_course(values, shift):
    days = [0, 7, *(28 * n for n in range(1, len(values) - 1))]

    def judged(by: Decimal):
        readings = tuple(on(day, str(D(95) + by + D(v) / 2)) for day, v in zip(days, values, strict=True))
        return assess(WAIST, readings[-1], readings[:-1], someone(), **PLAN)

    plain, moved = judged(D(0)), judged(shift)
    assert plain.verdict is not None and moved.verdict is not None
    assert (moved.verdict.kind, moved.verdict.strength, moved.verdict.firm) == (
        plain.verdict.kind, plain.verdict.strength, plain.verdict.firm,
    )  # fmt: skip
    if plain.course is not None:
        assert moved.course is not None and moved.course.t == pytest.approx(plain.course.t, rel=1e-6)


# --- a start that alone stands apart


@pytest.mark.parametrize(
    ("values", "alone"),
    [
        pytest.param(("82", "79"), True, id="the first retest cannot tell"),
        pytest.param(("82", "79", "79.2"), True, id="nor a second like it"),
        pytest.param(("82", "82.2", "79"), False, id="a reading like the start stands beside it"),
        pytest.param(("82", "81.8"), False, id="within error nothing is said"),
    ],
)
def test_a_start_far_from_all_that_follows_is_said_to_be_alone(values, alone):
    weights = tuple(on(28 * n, value, "weight") for n, value in enumerate(values))
    found = assess(WEIGHT, weights[-1], weights[:-1], someone(), **PLAN)
    assert found.verdict is not None and found.verdict.start_alone is alone
    assert ("start_alone" in found.context) is (alone and not found.verdict.firm)


def test_a_start_of_two_visits_is_not_alone():
    found = assess(WAIST, on(28, "90"), series((0, "96"), (7, "96")), someone(), **PLAN)
    assert found.verdict is not None and found.verdict.beyond_error and not found.verdict.start_alone


@pytest.mark.parametrize(
    ("values", "about"),
    [(("90", "85", "85"), "start_alone"), (("90", "90", "85", "85"), None)],
)
def test_a_coach_reads_that_only_the_start_may_have_been_unusual(values, about):
    weights = tuple(on(28 * n, value, "weight") for n, value in enumerate(values))
    found = assess(WEIGHT, weights[-1], weights[:-1], someone(), **PLAN)
    told = [
        f for f in flags_of_reading(WEIGHT, found, weights[:-1], someone(), Agreed(False, True), zone=UTC)
        if f.code is Code.CHANGE_CONFIRMED
    ]  # fmt: skip
    assert [dict(f.evidence).get("about") for f in told] == [about]
