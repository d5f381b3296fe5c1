"""Every fourth week a look back in words and one picture; activity beside advice; what is said of small steps."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from core.care import NumberVisibility, Plan
from core.client import Caution
from core.dialogue.client import messages as m
from core.dialogue.client.week_messages import ActivityLine, AnotherDay, LookBack
from core.judging.chart_data import RatingLine, TrendChart
from core.quantity import Amount, Unit
from tests.builders import ADA, Chat

D = Decimal


def weeks(chat: Chat, *answers: tuple[str, ...]) -> list[LookBack]:
    """A check-in a week, each with its answers; none is a week in which nothing came. The looks back."""
    found = []
    for answer in answers:
        chat.due()
        for text in answer:
            chat.says(text)
            found += [x for x in chat.said if isinstance(x, LookBack)]
        chat.later(days=7)
    return found


def of(*measures: str) -> Chat:
    return Chat(replace(ADA, plan=Plan(measures=measures)))


def test_the_fifth_and_the_ninth_check_in_end_with_a_look_back() -> None:
    chat, seen = of(), []
    for n in range(1, 11):
        seen += [n] * len(weeks(chat, ("6",)))
    assert seen == [5, 9]


def test_a_week_without_an_answer_moves_it_and_is_not_held_against_anybody() -> None:
    chat = of()
    assert weeks(chat, ("6",), ("6",), ("6",), (), ()) == []
    (back,) = weeks(chat, ("6",))
    assert (back.kept, back.weeks) == (2, 4)


def test_nobody_who_was_away_is_looked_back_on() -> None:
    assert weeks(of(), ("6",), (), (), (), ("6",), ("6",)) == [LookBack(2, 4, same=("energy",))]


def test_it_has_one_picture_of_what_was_measured() -> None:
    chat = of("waist")
    weeks(chat, ("6", "104"), ("6",), ("6",), ("6",))
    chat.due().says("6").says("100").presses("cond:same")
    pictures = [x.spec for x in chat.said if isinstance(x, m.Picture)]
    assert [type(x) for x in pictures] == [TrendChart]
    alone = of()
    weeks(alone, *[("6",)] * 5)
    assert [type(x.spec) for x in alone.everything if isinstance(x, m.Picture)] == [RatingLine]


def test_a_hidden_number_is_on_no_shelf_and_on_no_picture() -> None:
    chat = Chat(replace(ADA, plan=Plan(measures=("waist",), numbers=NumberVisibility.COACH_ONLY)))
    weeks(chat, ("6", "104"), ("6",), ("6",), ("6",))
    chat.due().says("6").says("100").presses("cond:same")
    assert chat.heard(LookBack).same == ("energy",)
    assert isinstance(chat.heard(m.Picture).spec, RatingLine)


def test_activity_stands_beside_advice_and_its_own_start() -> None:
    minutes = ("60", "90", "120", "200", "130")
    (back,) = weeks(of("activity_minutes"), *[("6", x) for x in minutes])
    now, start, advised = (Amount(D(x), Unit.MINUTE) for x in (125, 60, 150))
    assert back.activity == (ActivityLine("activity_minutes", now, start, advised),)


@pytest.mark.parametrize("minutes, told", [("0", []), ("90", ["some"]), ("150", ["meets"])])
def test_a_class_of_activity_is_named_when_it_is_first_reached(minutes: str, told: list[str]) -> None:
    chat = of("activity_minutes")
    weeks(chat, ("6", minutes), ("6", minutes))
    assert [x.band for x in chat.everything if isinstance(x, m.BandSaid)] == told


def test_a_lower_week_is_not_commented_on() -> None:
    chat = of("activity_minutes")
    weeks(chat, ("6", "160"), ("6", "20"), ("6", "170"))
    assert [x.band for x in chat.everything if isinstance(x, m.BandSaid)] == ["meets"]


def test_three_in_a_row_in_small_steps_is_a_hopeful_sign_and_no_more() -> None:
    chat = of("waist")
    for value in ("100", "98.5", "97"):
        chat.due().says("6").says(value)
        if chat.kinds[-1] == "AskConditions":
            chat.presses("cond:same")
        for _ in range(4):
            chat.later(days=7)
    assert [x.key for x in chat.everything if isinstance(x, m.Context)][-1] == "small_steps"
    assert [x.kind for x in chat.everything if isinstance(x, m.VerdictSaid)][-1] == "within_error"


def test_a_medicine_that_slows_the_pulse_takes_the_place_of_a_band() -> None:
    slow = replace(ADA.profile, cautions=frozenset({Caution.RATE_LIMITING_MEDICINE}))
    chat = Chat(replace(ADA, profile=slow, plan=Plan(measures=("resting_heart_rate",))))
    chat.due().says("6").says("64")
    assert "BandSaid" not in chat.kinds
    assert chat.heard(m.Context).key == "medicine_slows_pulse"


def test_who_answers_late_on_the_same_weekday_is_offered_that_day_once() -> None:
    chat = of()
    for _ in range(5):
        chat.due().later(days=2).says("6").later(days=5)
    assert [x.weekday for x in chat.everything if isinstance(x, AnotherDay)] == [2]


def test_who_answers_in_time_is_offered_no_other_day() -> None:
    chat = of()
    weeks(chat, *[("6",)] * 5)
    assert not [x for x in chat.everything if isinstance(x, AnotherDay)]


def test_weekly_answers_can_be_tapped() -> None:
    chat = of("activity_minutes", "strength_days")
    chat.due().presses("n:6").presses("n:90").presses("n:2")
    assert [str(r.value) for r in chat.facts.history] == ["6", "90", "2"]
