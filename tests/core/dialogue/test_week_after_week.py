"""What is said again and again says something new, or is not said."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from core.client import Caution
from core.dialogue.client import messages as m
from core.dialogue.client.start_messages import StartTaken
from core.dialogue.client.states import AskingConditions, Awaiting
from core.watching.flags import Code
from tests.builders import ADA, Chat, Plan, checked_in

WAIST = replace(ADA, plan=Plan(measures=("waist",)))
TWO = replace(ADA, plan=Plan(measures=("weight", "waist", "hip")))


def test_a_first_reading_is_answered_without_a_question_about_last_time():
    chat = Chat(WAIST).due().says("7").says("94 cm")
    assert chat.state.asking is None
    assert {"site", "tape"} <= set(chat.heard(m.KeepTheSame).aspects)
    assert "AskConditions" not in chat.kinds and "BandSaid" in chat.kinds


def test_one_tap_answers_for_everything_taken_on_the_same_day():
    chat = checked_in(Chat(TWO)).later(days=35).due().says("7").says("82 kg")
    asked = chat.heard(m.AskConditions).aspects
    assert {"scales", "tape"} <= set(asked)
    chat.presses("cond:same").says("94 cm")
    assert chat.state.asking == Awaiting("hip")
    assert chat.says("102 cm").state.asking is None


def test_what_differed_counts_only_for_the_measures_it_belongs_to():
    chat = checked_in(Chat(TWO)).later(days=35).due().says("7").says("82 kg")
    chat.presses("cond:differed").presses("cond:tape").presses("cond:done").says("94 cm").says("102 cm")
    assert chat.readings("weight")[-1].conditions.differs == frozenset()
    assert chat.readings("waist")[-1].conditions.differs == {"tape"}


def test_the_measure_that_was_never_taken_is_not_asked_about_last_time():
    chat = checked_in(Chat(WAIST)).later(days=35)
    chat.facts = replace(chat.facts, plan=TWO.plan)
    chat.due().says("7").says("82 kg")
    assert not isinstance(chat.state.asking, AskingConditions)


def test_a_band_is_named_when_it_is_new_or_has_changed():
    chat = checked_in(Chat(WAIST))
    assert [x for x in chat.everything if isinstance(x, m.BandSaid)]
    chat.later(days=35).due().says("7").says("93.5 cm").presses("cond:same")
    assert "BandSaid" not in chat.kinds and "VerdictSaid" in chat.kinds and chat.state.sources
    chat.later(days=35).due().says("7").says("74 cm").presses("ok:yes").presses("cond:same")
    assert chat.heard(m.BandSaid)


def test_the_energy_question_is_put_in_other_words_by_turns():
    chat = Chat(WAIST)
    turns = []
    for _ in range(3):
        turns.append(chat.due().heard(m.Ask).turn)
        chat.says("7").says("skip").later(days=7)
    assert turns[0] == 0 and turns[2] == turns[1] + 1


def test_a_caution_is_given_once():
    blocked = replace(
        ADA,
        plan=Plan(measures=("resting_heart_rate",)),
        profile=replace(ADA.profile, cautions=frozenset({Caution.RATE_LIMITING_MEDICINE})),
    )
    chat = Chat(blocked)
    for _ in range(3):
        checked_in(chat).later(days=35)
    said = [x.key for x in chat.everything if isinstance(x, m.Context)]
    assert said.count("medicine_slows_pulse") == 1


# --- the start again, a week later


def test_a_waist_is_asked_once_more_a_week_later_and_says_why_once():
    tests = replace(ADA, plan=Plan(measures=("weight", "waist", "chair_stand_30s")))
    chat = Chat(tests).due().says("7").says("82 kg").says("94 cm")
    assert chat.heard(m.Context).key == "start_again"
    chat.presses("gate:well").presses("gate:none").says("11").later(days=7).due().says("7")
    asked = chat.heard(m.Ask)
    assert (asked.measure, asked.again) == ("waist", True)  # and not the weight
    chat.says("95 cm").presses("cond:same")
    taken = chat.heard(StartTaken)
    assert (taken.amount.value, taken.again) == (Decimal("94.5"), False)
    chat.presses("gate:well").presses("gate:none")
    assert not chat.heard(m.Ask).again  # the same reason, said before
    assert chat.says("12").presses("cond:same").heard(StartTaken).amount.value == 12  # 11.5, shown whole


def test_two_starts_far_apart_are_followed_by_a_third_and_then_by_none():
    chat = Chat(WAIST).due().says("7").says("94 cm").later(days=7).due().says("7").says("101 cm").presses("cond:same")
    assert chat.heard(StartTaken).again
    chat.later(days=7).due().says("7").says("94.5 cm").presses("cond:same")
    assert not chat.heard(StartTaken).again
    chat.later(days=7).due().says("7")
    assert chat.state.asking is None


def test_a_second_start_that_is_not_given_is_asked_for_three_weeks_and_moves_no_retest():
    chat = Chat(WAIST).due().says("7").says("94 cm")
    asked = []
    for _ in range(4):
        chat.later(days=7).due().says("7")
        asked.append(getattr(chat.heard(m.Ask), "again", None))
        chat.presses("skip")
    assert asked == [True, True, True, False]
    assert not [r for r in chat.raised if r.flag.code == Code.RETEST_MISSED]


def test_a_retest_comes_four_weeks_after_the_first_of_the_starts():
    chat = Chat(WAIST).due().says("7").says("94 cm").later(days=7).due().says("7").says("95 cm").presses("cond:same")
    for week in (2, 3, 4):
        chat.later(days=7).due().says("7")
        assert (chat.state.asking == Awaiting("waist")) is (week == 4)


def test_without_a_check_in_nothing_is_promised_to_be_asked_again():
    chat = Chat(replace(WAIST, slot=None))
    assert chat.says("waist 94 cm").heard(m.Context).key == "first_reading"


def test_a_typed_energy_far_below_usual_is_asked_back_before_a_coach_hears_of_it():
    chat = Chat(replace(ADA, plan=Plan(measures=())))
    for _ in range(6):
        chat.due().says("8").says("skip").later(days=7)
    low = chat.due().says("1")
    assert low.kinds == ["AskIfSure"] and not low.raised
    assert [r.flag.code for r in low.presses("ok:yes").raised] == [Code.ENERGY_DROPPED]


def test_a_pressed_energy_is_no_slip_of_the_finger_on_a_keyboard():
    chat = Chat(replace(ADA, plan=Plan(measures=())))
    for _ in range(6):
        chat.due().says("8").says("skip").later(days=7)
    assert "AskIfSure" not in chat.due().presses("n:1").kinds
