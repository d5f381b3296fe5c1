"""A line about the week, a stay elsewhere, and natural answers before the first check-in."""

from __future__ import annotations

from dataclasses import replace
from datetime import time, timedelta
from zoneinfo import ZoneInfo

import pytest

from core.client import Profile, Sex
from core.dialogue.client import effects as e
from core.dialogue.client import messages as m
from core.dialogue.client.states import Enrolling
from core.language import LANGUAGES, words_for
from core.language.days import day_of_week, place_first, stay
from tests.builders import ADA, MONDAY, Chat, Plan, checked_in

WAIST = replace(ADA, plan=Plan(measures=("waist",)))
NEW = replace(ADA, consented=False, slot=None, profile=Profile())


def arriving() -> Chat:
    return Chat(NEW).commands("start")


# --- a line about the week --------------------------------------------------------------------------------------


def test_a_line_after_a_check_in_is_kept_with_its_answers():
    chat = checked_in(Chat(WAIST)).later(minutes=5).says("bad back this week")
    assert chat.heard(m.WeekNoted).coach == "Rowan"
    assert chat.readings("energy")[-1].conditions.words == "bad back this week"
    chat.says("and new shoes")
    assert chat.readings("energy")[-1].conditions.words == "bad back this week / and new shoes"


def test_words_beside_a_number_are_kept_with_it():
    chat = Chat(WAIST).due().says("7, slept badly all week")
    assert chat.readings("energy")[-1].conditions.words == "slept badly all week"
    assert not Chat(WAIST).due().says("7").readings("energy")[-1].conditions.words


def test_words_do_not_make_two_readings_less_alike():
    plain, remarked = (Chat(WAIST).due().says(text).readings("energy")[-1].conditions for text in ("7", "7, bad back"))
    assert remarked.words and not remarked.unlike(plain)


def test_a_line_about_the_week_is_heard_for_signs_first():
    chat = checked_in(Chat(WAIST)).later(minutes=5).says("chest pain since this morning")
    assert "WeekNoted" not in chat.kinds and {"Emergency", "AskAlarm"} & set(chat.kinds)


def test_days_after_a_check_in_words_are_offered_to_the_coach_instead():
    chat = checked_in(Chat(WAIST)).later(days=3).says("my back was bad on the bus")
    assert chat.heard(m.OfferToPass) and not chat.did(e.Amend)


def test_the_hint_that_a_line_is_welcome_comes_every_fourth_time():
    chat, hints = Chat(WAIST), []
    for _ in range(5):
        chat.due().says("7")
        if chat.state.asking is not None:
            chat.says("skip")
        hints.append(chat.heard(m.CheckInDone).hint)
        chat.later(days=7)
    assert hints == [True, False, False, False, True]


# --- a stay elsewhere -------------------------------------------------------------------------------------------


@pytest.mark.parametrize("text", ["I am in Lisbon this week", "In Lisbon for a week", "I'm in Lisbon until Monday"])
def test_a_stay_moves_the_clock_and_ends_by_itself(text):
    chat = Chat().says(text)
    assert chat.heard(m.ZoneForNow).zone_name == "Europe/Lisbon"
    assert chat.facts.slot.zone_name == "Europe/Lisbon"
    (timer,) = [w for w in chat.wakes if w.purpose == e.HOME]
    assert timer.at.astimezone(ZoneInfo("Europe/London")).date() == (MONDAY + timedelta(days=7)).date()
    chat.at(timer.at).wakes_up(e.HOME)
    assert chat.heard(m.ZoneChanged).zone_name == chat.facts.slot.zone_name == "Europe/London"


def test_a_second_stay_still_ends_at_home():
    chat = Chat().says("I am in Lisbon this week").says("I am in Berlin this week")
    assert len([w for w in chat.wakes if w.purpose == e.HOME]) == 1
    assert chat.wakes_up(e.HOME).facts.slot.zone_name == "Europe/London"


def test_a_move_for_good_is_no_stay():
    chat = Chat().says("I am in Lisbon")
    assert chat.heard(m.ZoneChanged) and not [w for w in chat.wakes if w.purpose == e.HOME]


def test_in_a_bit_is_no_place():
    assert place_first("In a bit", words_for("en")) is None
    assert stay("in Spain this week", words_for("en"), MONDAY.date()) == (MONDAY + timedelta(days=7)).date()


# --- natural answers --------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "key"), [("is this free?", "free"), ("who is this?", "who"), ("who sees it?", "who_sees")]
)
def test_consent_answers_questions_instead_of_repeating_itself(text, key):
    chat = arriving().says(text)
    assert chat.kinds == ["Plainly"] and chat.heard(m.Plainly).key == key
    assert "consent:yes" in chat.choices
    assert chat.says("yes").state.asking == Enrolling("birth_year", chat.state.asking.left)


@pytest.mark.parametrize(
    ("language", "text", "sex"),
    [("en", "man", Sex.MALE), ("en", "m", Sex.MALE), ("en", "I'm a woman", Sex.FEMALE), ("es", "mujer", Sex.FEMALE),
     ("de", "Frau", Sex.FEMALE), ("fr", "homme", Sex.MALE), ("pl", "kobieta", Sex.FEMALE), ("ar", "رجل", Sex.MALE)],
)  # fmt: skip
def test_a_sex_may_be_said_in_ones_own_words(language, text, sex):
    chat = Chat(replace(NEW, language=language, consented=True), state=replace(Chat().state, asking=Enrolling("sex")))
    assert chat.says(text).facts.profile.sex is sex


def test_units_may_be_said_in_ones_own_words():
    asking = replace(Chat().state, asking=Enrolling("units"))
    for text, mass in (("stone", "st"), ("in pounds please", "lb"), ("kilos", "kg")):
        assert Chat(replace(NEW, consented=True), state=asking).says(text).facts.units.mass.value == mass


@pytest.mark.parametrize(
    ("language", "text", "weekday"),
    [("en", "tomorrow", 1), ("en", "any morning except Monday", 1), ("en", "any day", 0), ("en", "Wednesday at 6pm", 2),
     ("es", "cualquier día menos el lunes", 1), ("de", "jeden Tag außer Montag", 1),
     ("fr", "n'importe quel jour sauf lundi", 1),
     ("pl", "każdy dzień oprócz poniedziałku", 1), ("ar", "أي يوم ما عدا الاثنين", 1)],
)  # fmt: skip
def test_a_weekday_may_be_said_in_ones_own_words(language, text, weekday):
    assert day_of_week(text, words_for(language), MONDAY.date()) == weekday


def test_a_day_and_a_time_in_one_answer_need_no_second_question():
    asking = replace(Chat().state, asking=Enrolling("weekday", ("time",)))
    chat = Chat(replace(NEW, consented=True), state=asking).says("Wednesday at 6pm")
    assert (chat.facts.slot.weekday, chat.facts.slot.at) == (2, time(18))


def test_the_place_is_said_back_with_its_clock():
    asking = replace(Chat().state, asking=Enrolling("zone"))
    noted = Chat(replace(NEW, consented=True), state=asking).says("Lisbon").heard(m.EnrolNoted)
    assert (noted.place, noted.clock) == ("Europe/Lisbon", time(7, 30))


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_language_has_words_for_each_sex_and_for_any_day(language):
    words = LANGUAGES[language]
    assert set(words.sexes) == set(Sex) and words.calendar.any_day and words.calendar.except_
