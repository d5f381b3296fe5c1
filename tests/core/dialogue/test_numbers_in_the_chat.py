"""Answers that do not fit the open question, and facts that are said back: nothing is stored that was not meant."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from bot.rendering.phrases.labels import labeller
from core.care import Plan
from core.client import Profile
from core.dialogue.client import effects as e
from core.dialogue.client import messages as m
from core.dialogue.client.slip_messages import AskWhichIsRight, EarlierTakenOut
from core.dialogue.client.states import AskingConditions, Awaiting, Confirming, Enrolling
from core.dialogue.kit.effects import Erase, Say
from core.quantity import Unit
from tests.builders import ADA, Chat, checked_in

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


def test_of_two_readings_far_apart_the_earlier_may_be_the_slip() -> None:
    weight = replace(ADA, plan=Plan(measures=("weight",)))
    far = Chat(weight).due().says("7").says("62.4 kg").later(days=28).due().says("7").says("82.4 kg")
    asked = far.heard(AskWhichIsRight)
    assert (asked.amount.value, asked.earlier.isoformat()) == (Decimal("82.4"), "2026-03-02")  # its number is not said
    far.presses("ok:earlier")
    assert [r.value for r in far.readings("weight")] == [Decimal("82.4")]
    assert far.heard(EarlierTakenOut).day.isoformat() == "2026-03-02"
    assert far.heard(m.VerdictSaid).kind == "no_baseline"  # nothing is compared with the slip


def test_two_readings_far_apart_are_both_kept_if_both_are_right() -> None:
    weight = replace(ADA, plan=Plan(measures=("weight",)))
    far = Chat(weight).due().says("7").says("62.4 kg").later(days=28).due().says("7").says("82.4 kg").presses("ok:yes")
    assert [r.value for r in far.readings("weight")] == [Decimal("62.4"), Decimal("82.4")]


def test_digits_that_look_swapped_may_be_right_and_the_earlier_ones_swapped() -> None:
    weight = replace(ADA, plan=Plan(measures=("weight",)))
    far = Chat(weight).due().says("7").says("48.2 kg").later(days=28).due().says("7").says("84.2 kg")
    assert far.heard(m.DidYouMean).amount.value == Decimal("48.2")
    assert far.presses("ok:no").heard(AskWhichIsRight).amount.value == Decimal("84.2")
    far.presses("ok:earlier")
    assert [r.value for r in far.readings("weight")] == [Decimal("84.2")]


def test_a_slip_of_the_same_day_is_corrected_not_taken_out() -> None:
    waist = replace(ADA, plan=Plan(measures=("waist",)))
    chat = Chat(waist).due().says("7").says("94 cm").later(hours=1).says("no, 81 cm")
    assert "AskWhichIsRight" not in chat.kinds


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


# --- half points, and values that were not meant ----------------------------------------------------------------


@pytest.mark.parametrize(
    ("typed", "either"),
    [
        ("6.5", (6, 7)),
        ("6 1/2", (6, 7)),
        ("between 6 and 7", (6, 7)),
        ("6 or 7", (6, 7)),
        ("6-8", (6, 7, 8)),
        ("9.5", (9, 10)),
    ],
)
def test_a_rating_between_two_numbers_is_asked_back_with_the_likely_ones(typed: str, either: tuple[int, ...]) -> None:
    chat = Chat().due().says(typed)
    assert chat.heard(m.AskEither).either == either and not chat.readings("energy")
    assert [c for c in chat.choices if c.startswith("n:")] == [f"n:{n}" for n in either]
    chat.presses(f"n:{either[-1]}")
    assert [r.value for r in chat.readings("energy")] == [either[-1]]


def test_a_half_point_sent_unasked_is_asked_back_too() -> None:
    chat = Chat().says("energy 6.5")
    assert chat.heard(m.AskEither).either == (6, 7)
    assert chat.presses("n:6").readings("energy")[0].value == 6


@pytest.mark.parametrize("typed", ["2 to 9", "11.5", "-0.5", "1 or 2 or 3"])
def test_what_is_no_choice_between_a_few_ratings_offers_none(typed: str) -> None:
    assert "AskEither" not in Chat().due().says(typed).kinds


def test_after_a_no_to_a_doubtful_value_the_right_one_is_asked_for_and_the_next_words_are_not_the_same() -> None:
    chat = checked_in(Chat()).later(days=35).due().says("7").says("72")
    chat.presses("cond:same").says("28.4")
    assert isinstance(chat.state.asking, Confirming)
    chat.says("no")
    assert chat.heard(m.SendRight).measure == "weight" and {"skip", "later"} <= set(chat.choices)
    assert chat.says("dunno really").kinds == ["AskAgain"]
    assert "AskAgain" not in chat.says("dunno really").kinds


def test_words_that_do_not_answer_a_question_with_buttons_put_it_again() -> None:
    chat = checked_in(Chat()).later(days=35).due().says("7").says("72").presses("cond:same").says("28.4")
    asked_about = chat.choices
    chat.says("hmm well")
    assert chat.kinds == ["NotRead", "DidYouMean"] and chat.choices == asked_about


# --- the question about conditions is open ----------------------------------------------------------------------


def weighed(text: str = "82.4 kg") -> Chat:
    """A retest whose weight is given; the question about conditions is open."""
    sizes = replace(ADA, plan=Plan(measures=("weight", "waist", "hip")))
    chat = checked_in(Chat(sizes)).later(days=28).due().says("7").says(text)
    assert isinstance(chat.state.asking, AskingConditions) and chat.state.asking.measure == "weight"
    return chat


def test_a_bare_number_while_conditions_are_asked_goes_where_the_client_says() -> None:
    chat = weighed().says("94")
    assert chat.heard(m.WhichMeasure) and {"which:weight:94", "which:waist:94"} <= set(chat.choices)
    corrected = weighed().says("94").presses("which:weight:94")
    assert corrected.readings("weight")[-1].value in (94, Decimal("82.4"))
    assert corrected.kinds[-1] in ("AskConditions", "AskIfSure") and not corrected.facts.flags
    waist = weighed().says("93").presses("which:waist:93")
    assert [r.value for r in waist.readings("waist")] == [94, 93]
    assert waist.kinds[-1] == "AskConditions" and waist.heard(m.AskConditions).measure == "weight"


def test_another_answer_given_while_conditions_are_asked_is_kept_and_the_question_put_again() -> None:
    chat = weighed().says("waist 93")
    assert [r.value for r in chat.readings("waist")] == [94, 93]
    assert chat.heard(m.AskConditions).measure == "weight"
    chat.presses("cond:same")
    assert {x.measure for x in chat.said if isinstance(x, m.VerdictSaid)} == {"weight", "waist"}
    assert chat.heard(m.Ask).measure == "hip"


def test_two_answers_in_one_message_are_both_answered_after_one_question() -> None:
    chat = weighed("82.4 kg, waist 93")
    assert chat.heard(m.AskConditions).measure == "weight"
    chat.presses("cond:same")
    assert {x.measure for x in chat.said if isinstance(x, m.VerdictSaid)} == {"weight", "waist"}


def test_two_first_answers_in_one_message_need_no_question() -> None:
    chat = Chat().due().says("7").says("72").says("82.4 kg, waist 94")
    assert {x.measure for x in chat.said if isinstance(x, m.BandSaid)} >= {"bmi"}
    assert "AskConditions" not in chat.kinds and chat.heard(m.Ask).measure == "hip"


def test_a_correction_while_conditions_are_asked_puts_the_question_again() -> None:
    chat = weighed().says("no, 82.1")
    assert chat.readings("weight")[-1].value == Decimal("82.1")
    assert chat.kinds == ["Corrected", "AskConditions"]


# --- a correction that may mean several days --------------------------------------------------------------------


def two_weeks() -> Chat:
    chat = checked_in(Chat()).later(days=7)
    chat.due().says("5")
    return chat.later(days=3)


def test_a_late_correction_that_may_mean_several_days_offers_those_days() -> None:
    chat = two_weeks().says("no, the energy was 4")
    assert chat.heard(m.AskWhichDay).new.value == 4
    assert [c for c in chat.choices if c.startswith("day:")] == ["day:0", "day:1", "day:none"]
    assert [r.value for r in chat.readings("energy")] == [7, 5]
    older = two_weeks().says("no, the energy was 4").presses("day:1")
    assert [r.value for r in older.readings("energy")] == [4, 5] and "Corrected" in older.kinds
    newer = two_weeks().says("no, the energy was 4").presses("day:0")
    assert [r.value for r in newer.readings("energy")] == [7, 4]
    again = older.later(minutes=5).says("no, the energy was 6")
    days = [c.argument for x in again.effects if isinstance(x, Say) for row in x.choices for c in row]
    assert days[:2] == ["2026-03-09", "2026-03-02"]


@pytest.mark.parametrize("said", ["no", "day:none"])
def test_a_late_correction_can_be_dropped(said: str) -> None:
    chat = two_weeks().says("no, the energy was 4")
    chat.presses(said) if ":" in said else chat.says(said)
    assert [r.value for r in chat.readings("energy")] == [7, 5] and "KeptAsItWas" in chat.kinds


def test_the_day_can_be_typed_as_its_button_reads() -> None:
    chat = Chat(replace(ADA, label=labeller("en")))
    chat = checked_in(chat).later(days=7)
    chat.due().says("5")
    chat.later(days=3).says("no, the energy was 4")
    day = labeller("en")("on_day", "2026-03-02")
    assert [r.value for r in chat.says(day).readings("energy")] == [4, 5]


def test_an_edit_without_a_number_changes_nothing_and_says_what_stands() -> None:
    chat = Chat().due().says("7").edits("slept badly really")
    assert chat.heard(m.AnswerStands).amount.value == 7
    assert [r.value for r in chat.readings("energy")] == [7]


@pytest.mark.parametrize("answer", ["ok:yes", "ok:no"])
def test_an_old_button_pressed_beside_a_question_about_conditions_is_offered_and_the_question_comes_again(
    answer: str,
) -> None:
    chat = checked_in(Chat()).later(days=28).due()
    four = next(b for b in chat.callbacks if b.startswith("n:4"))
    chat.says("7").says("72")
    assert isinstance(chat.state.asking, AskingConditions)
    offer = chat.presses_old(four).heard(m.AskChangeAnswer)
    assert (offer.day, offer.old.value, offer.new.value) == (chat.now.date(), 7, 4)
    chat.presses(answer)
    assert [r.value for r in chat.readings("energy")][1:] == [4 if answer == "ok:yes" else 7]
    assert chat.heard(m.AskConditions).measure == "resting_heart_rate"
