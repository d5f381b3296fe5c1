"""Goals are checked for plausibility, and progress is reported at retests."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from decimal import Decimal

import pytest

from core.client import Caution
from core.judging.goals import Goal, GoalDoubt, GoalSense, check, progress
from core.measures import MEASURES
from core.reading import Reading
from tests.core.people import someone

D = Decimal
TODAY = date(2026, 3, 2)
ADA = someone("female", 58, stature="165")


def sense(measure: str, current: str, target: str, weeks: float, person=ADA) -> GoalSense:
    now = Reading(measure, D(current), datetime(2026, 3, 2, 7, 30, tzinfo=UTC))
    goal = Goal(measure, D(target), TODAY + timedelta(days=round(7 * weeks)))
    return check(MEASURES[measure], goal, now, person, TODAY)


@pytest.mark.parametrize(
    ("current", "target", "weeks", "doubts"),
    [
        pytest.param("90", "87", 3, (), id="W78a 1.0 kg a week is accepted [NICE CG43, derived]"),
        pytest.param("90", "86.9", 3, (GoalDoubt.FASTER_THAN_PUBLISHED,), id="W78b 86.9 exceeds it [derived]"),
        pytest.param("90", "85.5", 12, (), id="five percent in twelve weeks"),
        pytest.param("90", "94", 1, (), id="a gain has no published rate"),
        pytest.param("60", "50", 40, (GoalDoubt.BMI_UNDER_18_5,), id="underweight"),
        pytest.param("60", "50.4", 40, (), id="18.5 itself, rounded as classes are"),
        pytest.param("46", "48", 20, (), id="upwards from underweight"),
        pytest.param("90", "89", 12, (GoalDoubt.SMALLER_THAN_ERROR,), id="a kilogram cannot be told from error"),
        pytest.param("90", "85", 0, (GoalDoubt.IN_THE_PAST,), id="today is too late"),
        pytest.param("90", "85", -1, (GoalDoubt.IN_THE_PAST,), id="last week"),
        pytest.param("90", "90", 12, (GoalDoubt.ALREADY_THERE,), id="there already"),
        pytest.param("60", "49", 2, (GoalDoubt.BMI_UNDER_18_5, GoalDoubt.FASTER_THAN_PUBLISHED), id="gravest first"),
    ],
)
def test_a_weight_goal_is_doubted_when(current, target, weeks, doubts):
    found = sense("weight", current, target, weeks)
    assert found.doubts == doubts
    assert found.sensible is (not doubts)


@pytest.mark.parametrize("measure", ["weight", "waist", "hip", "bmi"])
@pytest.mark.parametrize(
    ("caution", "doubt"),
    [(Caution.PREGNANCY, GoalDoubt.PREGNANCY), (Caution.EATING_WORRIES, GoalDoubt.EATING_WORRIES)],
)
def test_body_size_is_no_goal_in_pregnancy_or_where_eating_is_a_worry(measure, caution, doubt):
    person = someone("female", 30, stature="165", cautions=(caution,))
    assert sense(measure, "90", "80", 40, person) == GoalSense((doubt,))
    assert sense("chair_stand_30s", "12", "16", 12, person).sensible


@pytest.mark.parametrize(
    ("measure", "current", "target", "doubts"),
    [
        pytest.param(
            "chair_stand_30s", "12", "10", (GoalDoubt.WRONG_DIRECTION, GoalDoubt.SMALLER_THAN_ERROR), id="fewer"
        ),
        pytest.param("chair_stand_30s", "12", "16", (), id="more"),
        pytest.param("timed_up_and_go", "12", "15", (GoalDoubt.WRONG_DIRECTION,), id="slower"),
        pytest.param("timed_up_and_go", "12", "9", (), id="faster"),
        pytest.param("activity_minutes", "60", "61", (), id="no known error, so no size is too small"),
        pytest.param("bmi", "30", "18.4", (GoalDoubt.BMI_UNDER_18_5,), id="the index itself"),
    ],
)
def test_a_goal_of_another_measure_is_doubted_when(measure, current, target, doubts):
    assert sense(measure, current, target, 30).doubts == doubts


@pytest.mark.parametrize(
    ("current", "target", "weeks", "suggest"),
    [
        pytest.param("90", "80", 4, "88.0", id="half a kilogram a week"),
        pytest.param("60", "45", 30, "50.4", id="never underweight"),
        pytest.param("90", "85", 2, None, id="a week's worth would be lost in the error"),
        pytest.param("51", "48", 2, None, id="nothing kinder is left"),
        pytest.param("90", "89", 12, None, id="a small goal needs no kinder one"),
        pytest.param("90", "60", -2, None, id="no date, no pace"),
    ],
)
def test_a_kinder_target_is_offered_where_there_is_one(current, target, weeks, suggest):
    assert sense("weight", current, target, weeks).suggest == (suggest and D(suggest))


def test_without_a_height_a_weight_cannot_be_called_underweight():
    assert sense("weight", "60", "40", 40, someone("female", 58)).doubts == ()


@pytest.mark.parametrize(
    ("target", "now", "percent", "reached"),
    [
        ("80", "87.5", 25, False),
        ("80", "80.05", 99, False),
        ("80", "80", 100, True),
        ("80", "79", 100, True),
        ("80", "92", 0, False),
        ("95", "92.5", 50, False),
        ("90", "91", 100, True),
    ],
)
def test_progress_is_a_share_of_the_way_from_the_baseline(target, now, percent, reached):
    base, today = (Reading("weight", D(v), datetime(2026, 3, 2, tzinfo=UTC)) for v in ("90", now))
    found = progress(Goal("weight", D(target), TODAY), base, today)
    assert (found.percent, found.reached) == (percent, reached)
