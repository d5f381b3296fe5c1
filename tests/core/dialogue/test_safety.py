"""Safety comes first: words, the gate, severe readings."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

import pytest

from core.dialogue.client import effects as e
from core.dialogue.client import messages as m
from core.dialogue.client.messages_to_coach import RepeatTaken, SignAnswered
from core.dialogue.client.states import Awaiting
from core.watching.flags import MOST_WORDS, Code, Ended, Severity
from tests.builders import ADA, Chat, Plan

TESTS = replace(ADA, plan=Plan(measures=("chair_stand_30s",)))
PRESSURE = replace(ADA, plan=Plan(measures=("blood_pressure",)))


def raised(chat: Chat) -> list[Code]:
    return [x.flag.code for x in chat.did(e.Raise)]


def test_an_emergency_is_answered_with_the_local_number_and_the_coach_is_told():
    chat = Chat().due().says("I have chest pain and it will not go away")
    assert chat.heard(m.Emergency).number == "999"
    (flag,) = [x.flag for x in chat.did(e.Raise)]
    assert (flag.code, flag.severity) == (Code.RED_FLAG_WORDS, Severity.URGENT)
    assert "CoachTold" in chat.kinds


def test_a_red_flag_is_heard_in_the_middle_of_a_test_and_ends_it():
    chat = Chat(TESTS).due().says("7").presses("gate:well").presses("gate:none")
    assert chat.state.asking == Awaiting("chair_stand_30s")
    chat.says("I had to stop, I feel faint")
    assert chat.state.asking is None and chat.state.gate_passed is None
    assert Code.RED_FLAG_WORDS in raised(chat)


def test_a_denial_is_no_alarm():
    chat = Chat().due().says("no chest pain today, energy 7")
    assert raised(chat) == [] and chat.readings("energy")


def test_something_past_is_asked_about_once():
    chat = Chat().due().says("the chest pain I had last year is gone")
    assert "AskAlarm" in chat.kinds and raised(chat) == []
    chat.presses("alarm:no")
    assert chat.kinds[:1] == ["StoodDown"]
    assert chat.state.asking == Awaiting("energy")


def test_a_yes_to_that_question_is_an_alarm():
    chat = Chat().due().says("the chest pain I had last year").says("yes")
    assert "Emergency" in chat.kinds and Code.RED_FLAG_WORDS in raised(chat)


def test_no_function_test_without_both_answers_of_the_gate():
    chat = Chat(TESTS).due().says("7")
    assert "GateWell" in chat.kinds
    chat.presses("gate:well")
    assert "GateSigns" in chat.kinds
    chat.presses("gate:some")
    assert "GateStopped" in chat.kinds
    assert Code.SYMPTOM_REPORTED in raised(chat)
    assert chat.state.asking is None


def test_the_gate_can_be_answered_in_words():
    chat = Chat(TESTS).due().says("7").says("yes").says("no")
    assert chat.state.asking == Awaiting("chair_stand_30s")


def pressed_week() -> Chat:
    chat = Chat(PRESSURE).due().says("7")
    assert "PressureWeekOpens" in chat.kinds
    return chat.later(days=1).wakes_up("pressure", "1m")


def test_a_blood_pressure_week_asks_twice_a_day_for_two_readings():
    chat = pressed_week()
    assert chat.heard(m.PressurePrompt) == m.PressurePrompt(1, False)
    chat.says("128/82")
    assert "PressureAgain" in chat.kinds
    chat.says("126/80")
    assert chat.heard(m.PressureKept).day == 1
    assert chat.state.asking is None


def test_a_pause_ends_a_blood_pressure_week_and_says_so():
    chat = pressed_week().says("pause until 20 March")
    assert chat.heard(m.Paused).week_ended
    assert chat.state.pressure is None
    assert not [w for w in chat.wakes if w.purpose.startswith("pressure")]
    assert not Chat(PRESSURE).says("pause until 20 March").heard(m.Paused).week_ended


def test_both_readings_may_come_in_one_message():
    chat = pressed_week().says("128/82 and 126/80")
    assert "PressureKept" in chat.kinds


def test_a_severe_pressure_is_repeated_after_rest_and_the_coach_knows_at_once():
    chat = pressed_week().says("184/112")
    assert chat.kinds == ["PressureRepeat"]
    assert raised(chat) == [Code.BP_SEVERE]
    chat.later(minutes=6).says("182/110")
    assert "PressureSevere" in chat.kinds
    assert Code.BP_SEVERE_REPEATED in raised(chat)


def test_a_repeat_that_is_no_longer_severe_settles_it():
    chat = pressed_week().says("184/112").later(minutes=6).says("150/88")
    assert "PressureSettled" in chat.kinds
    assert Code.BP_SEVERE_REPEATED not in raised(chat)


def test_the_week_ends_with_a_mean_without_the_first_day():
    chat = pressed_week()
    chat.says("160/100 and 158/98").later(hours=12).wakes_up("pressure", "1e").says("150/95 and 148/95")
    for day in range(2, 8):
        chat.later(hours=12).wakes_up("pressure", f"{day}m").says("130/80 and 128/80")
        chat.later(hours=12).wakes_up("pressure", f"{day}e").says("132/82 and 130/82")
    done = next(x for x in chat.said if isinstance(x, m.PressureWeekDone))
    assert (done.systolic, done.diastolic, done.used) == (130, 81, 24)
    assert {"BandSaid", "Picture"} <= set(chat.kinds)
    assert not [w for w in chat.wakes if w.purpose.startswith("pressure")]


@pytest.mark.parametrize("body", ["nice", "aha", "esc"])
def test_the_week_is_read_by_the_limits_the_coach_chose(body):
    chat = Chat(replace(PRESSURE, plan=Plan(measures=("blood_pressure",), pressure_body=body))).due().says("7")
    for day in range(1, 8):
        chat.later(days=1).wakes_up("pressure", f"{day}m").says("132/82 and 132/82")
    chat.later(days=1).wakes_up("pressure_end")
    assert body in chat.heard(m.BandSaid).source


def test_too_few_days_say_so():
    chat = pressed_week().says("130/80 and 128/80").later(days=7).wakes_up("pressure_end")
    assert chat.heard(m.PressureTooFew) == m.PressureTooFew(1, 4)
    (short,) = [x.flag for x in chat.raised if x.flag.code == Code.BP_WEEK_SHORT]
    assert dict(short.evidence) == {"days": Decimal(1), "needed": Decimal(4)}


def test_the_coach_reads_the_words_that_raised_an_alarm():
    chat = Chat().says("I have chest pain")
    (raised,) = [x.flag for x in chat.raised if x.flag.code == Code.RED_FLAG_WORDS]
    assert dict(raised.evidence)["words"] == "I have chest pain"


@pytest.mark.parametrize("bpm", ["126", "38"])
def test_a_fast_or_slow_pulse_is_counted_again_and_then_leads_to_advice(bpm):
    chat = Chat().due().says("7").says(f"{bpm} bpm")
    assert chat.kinds == ["PulseRepeat"]
    assert {Code.PULSE_FAST, Code.PULSE_SLOW} & set(raised(chat))
    chat.says(f"{bpm} bpm")
    assert "PulseAdvice" in chat.kinds
    assert chat.state.asking == Awaiting("weight")


def test_not_feeling_well_stops_the_tests_of_today():
    chat = Chat(TESTS).due().says("I do not feel well")
    assert "GateStopped" in chat.kinds and chat.state.agenda == ()


def test_help_names_the_number_of_the_country():
    chat = Chat(replace(ADA, country="US")).says("help")
    assert chat.heard(m.Help).number == "911"


def test_a_low_pressure_is_a_matter_for_the_coach_only_with_dizziness():
    chat = pressed_week().says("86/58")
    assert "PressureLow" in chat.kinds and raised(chat) == []
    (button,) = [c for c in chat.choices if c.startswith("low:")]
    chat.presses(button)
    assert raised(chat) == [Code.BP_LOW] and "SameDay" in chat.kinds
    assert chat.readings("blood_pressure")[0].conditions.notes == {"dizziness"}


def test_a_denial_out_of_the_blue_is_good_to_hear():
    chat = Chat().says("no chest pain today")
    assert chat.kinds == ["StoodDown"] and raised(chat) == []


def test_a_denial_is_no_no_to_the_open_question():
    chat = Chat().due().says("no chest pain today")
    assert chat.kinds == ["StoodDown", "Ask"] and chat.state.asking == Awaiting("energy")


# --- what the coach hears next ----------------------------------------------------------------------------------

PULSE = replace(ADA, plan=Plan(measures=("resting_heart_rate",)))


def repeats_told(chat: Chat) -> list[RepeatTaken]:
    return [x.message for x in chat.did(e.NotifyCoach) if isinstance(x.message, RepeatTaken)]


def test_the_coach_who_was_alarmed_hears_that_the_repeat_no_longer_alarms():
    chat = Chat(PULSE).says("pulse 128 bpm")
    assert repeats_told(chat) == []
    chat.later(minutes=10).says("96 bpm")
    assert repeats_told(chat) == [
        RepeatTaken(1, "Ada", "pulse_fast", "resting_heart_rate", (("rate", Decimal(96)),), settled=True)
    ]
    (lowered,) = [x for x in chat.did(e.Lower) if x.code == Code.PULSE_FAST]
    assert (lowered.ended, lowered.after) == (Ended.READING, (("rate", Decimal(96)),))


def test_the_coach_who_was_alarmed_hears_that_the_repeat_alarms_as_well():
    chat = Chat(PULSE).says("pulse 128 bpm").later(minutes=10).says("126 bpm")
    ((told,), (effect,)) = repeats_told(chat), chat.did(e.NotifyCoach)
    assert (told.after, told.settled, effect.urgent) == ((("rate", Decimal(126)),), False, True)


def test_a_pressure_that_settles_is_told_with_both_its_figures():
    chat = Chat(PRESSURE).says("186/112").later(minutes=6).says("150/94")
    (told,) = repeats_told(chat)
    assert told.after == (("systolic", Decimal(150)), ("diastolic", Decimal(94)))


def test_a_slip_that_is_put_right_is_not_called_a_repeat():
    chat = Chat(PULSE).says("pulse 128 bpm").later(minutes=1).edits("pulse 82 bpm")
    (lowered,) = [x for x in chat.did(e.Lower) if x.code == Code.PULSE_FAST]
    assert lowered.ended is Ended.CORRECTED and [x.slip for x in repeats_told(chat)] == [True]


def test_a_question_about_a_sign_that_stood_and_was_none_after_all_is_told():
    chat = Chat().says("I had chest pain last year").later(minutes=15).wakes_up("alarm_stands")
    assert raised(chat) == [Code.SIGN_UNANSWERED]
    chat.later(minutes=5).presses("alarm:none")
    assert [x.message for x in chat.did(e.NotifyCoach)] == [SignAnswered(1, "Ada", "chest_pain")]
    (lowered,) = chat.did(e.Lower)
    assert lowered.after == (("answer", "none"),)


@pytest.mark.parametrize(
    ("said", "words"),
    [
        (("I had chest pain last year",), "I had chest pain last year"),
        (("I had chest pain last year", "what?", "82.4 kg"), "I had chest pain last year"),
        (("my ankle was swollen years ago", "and I had a stroke in 2015"), "and I had a stroke in 2015"),
        (("I had chest pain last year " + "and it was bad " * 30,), None),
    ],
    ids=["at-once", "with-no-answers-after-it", "the-graver-of-two", "long"],
)
def test_beside_a_question_nobody_answered_stand_the_words_that_named_the_sign(said, words):
    chat = Chat()
    for text in said:
        chat.says(text)
    chat.later(minutes=15).wakes_up("alarm_stands")
    (raised_,) = [x.flag for x in chat.did(e.Raise)]
    found = dict(raised_.evidence)["words"]
    assert found == words if words else (len(found) <= MOST_WORDS and found.endswith("…"))


def test_a_question_answered_at_once_is_nothing_the_coach_hears_of():
    chat = Chat().says("I had chest pain last year").later(minutes=2).presses("alarm:none")
    assert chat.did(e.NotifyCoach) == []
