"""Verdicts: beyond error or not, confirmed or not, comparable or not, and whether the change matters."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.judging.change import Change, Strength, judge, reaches
from core.measures.measure import Bounds, ImportantDifference, Measure, MeasureKind, MeasurementError, never
from core.quantity import Better, Range, Unit
from core.reading import Conditions, Reading
from core.sources import Seen, Source

D = Decimal
DAY = timedelta(days=1)
START = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)
OURS = Source("invented", "made up for the test", "nobody", Seen.OURS)


def measure(sem="1", better=Better.HIGHER, important=None, worse=None, relative=False, **error) -> Measure:
    matters = important and ImportantDifference(OURS, D(important), worse and D(worse), relative)
    return Measure(
        key="stands",
        kind=MeasureKind.FUNCTION,
        unit=Unit.REPETITION,
        better=better,
        bounds=Bounds(Range(None, None), Range(None, None)),
        sources=(OURS,),
        needs=frozenset(),
        alarm=never,
        body=None,
        error=MeasurementError(OURS, sem=D(sem), **error) if sem else None,
        important=matters,
    )


STANDS = measure("0.9", important="2")  # MDC95 2.49, Gill 2022; MCID 2, Zanini 2018


def on(day: int, value: str | int, **rest) -> Reading:
    return Reading("stands", D(value), START + day * DAY, **rest)


def under(*differs: str, labels=(), notes=()) -> Conditions:
    return Conditions(frozenset(differs), labels, frozenset(notes))


BASE = on(0, 12)


@pytest.mark.parametrize(
    ("unit", "before", "after", "kind", "matters"),
    [
        pytest.param(STANDS, "12", "14", Change.WITHIN_ERROR, True, id="84 chair stand [Gill, Zanini: read]"),
        pytest.param(STANDS, "12", "15", Change.BETTER, True, id="85 chair stand [Gill, Zanini: read]"),
        pytest.param(
            measure("0.9", Better.LOWER, "1.7"),
            "14.0",
            "12.0",
            Change.WITHIN_ERROR,
            True,
            id="86 five stands, lower is better [Goldberg, Jones: read]",
        ),
        pytest.param(STANDS, "12", "13", Change.WITHIN_ERROR, False, id="one stand is noise"),
        pytest.param(STANDS, "12", "9", Change.WORSE, True, id="three stands fewer"),
        pytest.param(measure("1", Better.NEITHER), "80", "83", Change.CHANGED, None, id="no better direction"),
    ],
)
def test_what_one_retest_means(unit, before, after, kind, matters):
    verdict = judge(unit, on(0, before), None, on(28, after))
    assert (verdict.kind, verdict.reaches_important) == (kind, matters)
    assert verdict.strength is (None if kind is Change.WITHIN_ERROR else Strength.POSSIBLE)


@pytest.mark.parametrize(
    ("before", "after", "points", "percent"),
    [
        pytest.param(7, 5, True, False, id="88a 2 points, 28.6 % [Farrar: read]"),
        pytest.param(4, 3, False, False, id="88b 1 point, 25 %"),
        pytest.param(9, 7, True, False, id="88c 2 points, 22.2 %"),
        pytest.param(5, 3, True, True, id="89 2 points, 40 % [Farrar: read]"),
    ],
)
def test_points_and_percent_are_two_rules_for_pain(before, after, points, percent):
    by_points = ImportantDifference(OURS, D(2))
    by_percent = ImportantDifference(OURS, D("0.30"), relative=True)
    difference = D(after - before)
    assert reaches(by_points, Better.LOWER, D(before), difference) is points
    assert reaches(by_percent, Better.LOWER, D(before), difference) is percent


@pytest.mark.parametrize(
    ("before", "after", "reached"),
    [
        pytest.param("6.0", "5.0", True, id="90a one point better [Khanna: read]"),
        pytest.param("5.0", "6.0", False, id="90b one point worse: 1.13 is needed [Khanna: read]"),
        pytest.param("5.0", "6.2", True, id="1.2 worse"),
    ],
)
def test_worsening_may_need_another_size_than_improvement(before, after, reached):
    fatigue = ImportantDifference(OURS, better=D("0.82"), worse=D("1.13"))
    assert reaches(fatigue, Better.LOWER, D(before), D(after) - D(before)) is reached


def test_a_change_of_exactly_the_detectable_size_is_within_error():
    """Two attempts on each side with an SEM of 1 give an MDC95 of exactly 1.96."""
    exact = judge(measure(), on(0, 0, attempts=2), None, on(28, "1.96", attempts=2))
    beyond = judge(measure(), on(0, 0, attempts=2), None, on(28, "1.97", attempts=2))
    assert (exact.mdc95, exact.kind, beyond.kind) == (D("1.96"), Change.WITHIN_ERROR, Change.BETTER)


def test_a_change_seen_twice_from_the_same_baseline_is_confirmed():
    once = judge(STANDS, BASE, None, on(28, 15))
    again = judge(STANDS, BASE, on(28, 15), on(56, 15))
    assert (once.strength, again.strength) == (Strength.POSSIBLE, Strength.CONFIRMED)
    assert (again.difference, again.baseline, again.baseline_at) == (D(3), D(12), START)


@pytest.mark.parametrize(
    "previous",
    [
        pytest.param(on(28, 13), id="it was within error"),
        pytest.param(on(28, 9), id="it went the other way"),
        pytest.param(on(28, 15, conditions=under("chair")), id="it was done on another chair"),
        pytest.param(on(28, 15, conditions=under("shoes")), id="its own conditions widened its error"),
        pytest.param(BASE, id="it is the baseline itself"),
        pytest.param(None, id="there was none"),
    ],
)
def test_a_change_is_only_possible_when_the_retest_before_did_not_say_so(previous):
    assert judge(STANDS, BASE, previous, on(56, 15)).strength is Strength.POSSIBLE


def test_a_single_worsening_beyond_the_stricter_bound_says_so():
    large = judge(STANDS, BASE, None, on(28, "6.2"))  # 4.5 * 0.9 * sqrt 2 = 5.74
    small = judge(STANDS, BASE, None, on(28, "6.3"))
    assert (large.large, small.large, small.kind) == (True, False, Change.WORSE)
    differs = measure("0.9", spread=D("0.5"))
    assert not judge(differs, BASE, None, on(28, "3.5")).large  # for an error that differs between people, 8.6


def test_a_mean_of_several_attempts_is_surer():
    tried_thrice = on(0, 12, attempts=3)
    assert round(judge(STANDS, tried_thrice, None, on(28, 15)).mdc95, 2) == D("2.04")
    shared = measure("0.9", shared_by_attempts=True)
    assert round(judge(shared, tried_thrice, None, on(28, 15)).mdc95, 2) == D("2.49")


def test_conditions_that_differ_widen_the_error_of_that_reading():
    verdict = judge(STANDS, BASE, None, on(28, 15, conditions=under("shoes")))
    assert verdict.kind is Change.WITHIN_ERROR
    assert verdict.widened == {"shoes"}
    assert round(verdict.mdc95, 2) == D("3.18")  # 1.96 * 0.9 * sqrt(1 + 1.5^2)


@pytest.mark.parametrize(
    ("base", "now"),
    [
        pytest.param(under(), under("chair"), id="said so"),
        pytest.param(under(labels=(("course", "hall"),)), under(labels=(("course", "park"),)), id="named so"),
        pytest.param(under(), under(notes=["arms_used"]), id="rose with the arms"),
        pytest.param(under(notes=["arms_used"]), under(), id="no longer with the arms"),
    ],
)
def test_another_chair_course_or_way_is_not_compared(base, now):
    verdict = judge(STANDS, on(0, 12, conditions=base), None, on(28, 20, conditions=now))
    assert (verdict.kind, verdict.strength, verdict.mdc95) == (Change.NOT_COMPARABLE, None, None)


def test_the_same_chair_by_name_is_compared():
    kitchen = under(labels=(("chair", "kitchen"),))
    verdict = judge(STANDS, on(0, 12, conditions=kitchen), None, on(28, 15, conditions=kitchen))
    assert (verdict.kind, verdict.widened) == (Change.BETTER, frozenset())


@pytest.mark.parametrize(
    ("previous", "day", "retest", "kind"),
    [
        pytest.param(None, 24, None, Change.TOO_SOON, id="four days before it was due"),
        pytest.param(None, 25, None, Change.BETTER, id="three days before it was due"),
        pytest.param(on(28, 12), 52, None, Change.TOO_SOON, id="counted from the last retest"),
        pytest.param(None, 30, timedelta(days=42), Change.TOO_SOON, id="the coach set six weeks"),
    ],
)
def test_a_reading_before_its_window_is_too_soon(previous, day, retest, kind):
    assert judge(STANDS, BASE, previous, on(day, 20), retest=retest).kind is kind


def test_nothing_about_a_number_that_came_too_soon_can_be_repeated():
    verdict = judge(STANDS, BASE, None, on(3, 20))
    assert (verdict.difference, verdict.rising, verdict.mdc95, verdict.reaches_important) == (None, None, None, None)


def test_a_first_reading_has_no_baseline():
    assert judge(STANDS, None, None, BASE).kind is Change.NO_BASELINE
    assert judge(STANDS, BASE, None, BASE).kind is Change.NO_BASELINE


def test_a_measure_whose_error_nobody_knows_is_not_judged():
    assert judge(measure(None), BASE, None, on(28, 15)) is None


VALUES = st.decimals(-300, 300, places=1, allow_nan=False)


@given(VALUES, VALUES, VALUES, st.sampled_from(list(Better)), st.integers(1, 4))
def test_a_verdict_never_contradicts_itself(base, previous, now, better, attempts):
    unit = measure("2", better, important="5")
    verdict = judge(unit, on(0, base, attempts=attempts), on(28, previous), on(56, now))
    assert verdict.beyond_error is (abs(now - base) > verdict.mdc95)
    assert verdict.beyond_error is (verdict.strength is not None)
    if verdict.large:
        assert verdict.beyond_error
    assert verdict.kind not in {Change.BETTER, Change.WORSE} or better is not Better.NEITHER
    mirrored = judge(unit, on(0, -base, attempts=attempts), on(28, -previous), on(56, -now))
    assert mirrored.strength is verdict.strength
    assert mirrored.mdc95 == verdict.mdc95
