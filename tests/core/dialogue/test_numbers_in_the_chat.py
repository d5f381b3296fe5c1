"""Answers that do not fit the open question, and facts that are said back: nothing is stored that was not meant."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from core.care import Plan
from core.client import Profile
from core.dialogue.client import effects as e
from core.dialogue.client import messages as m
from core.dialogue.client.states import Awaiting, Enrolling
from core.dialogue.kit.effects import Erase
from core.quantity import Unit
from tests.builders import ADA, Chat

WITH_PRESSURE = replace(ADA, plan=Plan(measures=("weight", "waist", "blood_pressure")))


def asked(question: str, **facts: object) -> Chat:
    """An enrolment at one of its questions."""
    chat = Chat(replace(ADA, consented=True, profile=Profile(), **facts))  # type: ignore[arg-type]
    chat.state = replace(chat.state, asking=Enrolling(question, ("time",)))
    return chat


def changed(chat: Chat) -> dict[str, object]:
    return {x.field: x.value for x in chat.effects if isinstance(x, e.ChangeClient)}


@pytest.mark.parametrize(
    "typed", ["1958", "12 March 1958", "12/03/1958", "1958-03-12", "born 3.5.1958", "12.03.58", "in 1958"]
)
def test_a_birth_date_is_as_good_as_a_birth_year(typed: str) -> None:
    chat = asked("birth_year").says(typed)
    assert changed(chat) == {"birth_year": 1958}
    assert chat.heard(m.EnrolNoted).year == 1958


def test_a_birth_year_that_would_end_enrolment_is_asked_back_and_the_door_stays_open() -> None:
    chat = asked("birth_year").says("2019")
    assert chat.heard(m.AskBirthYear).year == 2019 and not changed(chat)
    assert chat.says("hm").heard(m.AskBirthYear).year == 2019
    assert changed(chat.says("sorry, 1959")) == {"birth_year": 1959}
    again = asked("birth_year").says("2019").presses("e:young:no")
    assert again.heard(m.EnrolQuestion).question == "birth_year"
    stopped = asked("birth_year").says("2019").presses("e:young:yes")
    assert stopped.kinds == ["ForAdults"] and not [x for x in stopped.effects if isinstance(x, Erase)]


def test_a_no_to_being_an_adult_is_asked_back_too() -> None:
    chat = asked("adult").presses("e:adult:no")
    assert chat.kinds == ["AskBirthYear"] and not [x for x in chat.effects if isinstance(x, Erase)]


def test_a_height_is_said_back_and_one_far_from_usual_is_asked_back() -> None:
    chat = asked("stature").says("1.65 m")
    assert changed(chat) == {"stature": Decimal("165.00")}
    assert chat.heard(m.EnrolNoted).height.unit is Unit.CENTIMETRE
    odd = asked("stature").says("121 cm")
    assert not changed(odd) and odd.kinds == ["AskIfSure"]
    assert changed(odd.says("165 cm")) == {"stature": Decimal(165)}
    assert changed(asked("stature").says("121 cm").presses("e:stature_sure:yes")) == {"stature": Decimal(121)}


def test_a_place_is_said_back() -> None:
    assert asked("zone").says("Lisbon").heard(m.EnrolNoted).place == "Europe/Lisbon"


def test_the_same_sentence_is_not_said_twice_the_second_time_offers_buttons() -> None:
    chat = Chat().due().says("7").says("weight as ever")
    first = chat.kinds
    chat.says("as ever and ever")
    assert first != chat.kinds
    assert "StillUnclear" in chat.kinds and "AskAgain" not in chat.kinds
    assert {"skip", "later", "word"} <= set(chat.choices)


def test_no_impossible_value_is_offered() -> None:
    chat = Chat(replace(ADA, plan=Plan(measures=("activity_minutes",)))).due().says("7").says("900 minutes a day")
    assert "DidYouMean" not in chat.kinds and not chat.readings("activity_minutes")


def test_a_number_impossible_for_the_question_is_offered_to_the_measure_it_fits() -> None:
    chat = Chat().due()
    assert isinstance(chat.state.asking, Awaiting) and chat.state.asking.measure == "energy"
    chat.says("82")
    assert chat.kinds == ["WhichMeasure"] and not chat.keys
    chat.presses("which:weight:82")
    assert [r.value for r in chat.readings("weight")] == [Decimal(82)]


def test_an_answer_to_a_check_in_that_a_pressure_prompt_put_aside_goes_there() -> None:
    chat = Chat(WITH_PRESSURE).due()
    chat.state = replace(chat.state, asking=Awaiting("blood_pressure"), agenda=("energy", "weight"))
    chat.says("7")
    assert [r.value for r in chat.readings("energy")] == [Decimal(7)]
    assert isinstance(chat.state.asking, Awaiting) and chat.state.asking.measure == "blood_pressure"


@pytest.mark.parametrize(
    ("typed", "value", "second"),
    [("75 vigorous", 0, 75), ("20 minutes 3 times", 60, None), ("three quarters of an hour", 45, None)],
)
def test_minutes_as_people_say_them_are_stored(typed: str, value: int, second: int | None) -> None:
    chat = Chat(replace(ADA, plan=Plan(measures=("activity_minutes",)))).due().says("7").says(typed)
    (kept,) = chat.readings("activity_minutes")
    assert (kept.value, kept.second) == (value, second)
