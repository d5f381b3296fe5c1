"""Regression tests of conversations that once went wrong on a tape, reduced."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from decimal import Decimal

import pytest

from core.dialogue.client import effects as e
from core.dialogue.client import messages as m
from core.dialogue.client.states import Awaiting, Gate, Setting
from core.dialogue.kit.effects import Say
from core.dialogue.kit.events import FromCoach
from core.reading import How
from tests.builders import ADA, Chat, Plan, checked_in

WEIGHT = replace(ADA, plan=Plan(measures=("weight",)))
TESTS = replace(ADA, plan=Plan(measures=("chair_stand_30s",)))
PRESSURE = replace(ADA, plan=Plan(measures=("blood_pressure",)))
PULSE = replace(ADA, plan=Plan(measures=("resting_heart_rate",)))


def weighed() -> Chat:
    return checked_in(Chat(WEIGHT)).later(days=3)


def official(chat: Chat) -> list[Decimal]:
    return [r.value for r in chat.readings("weight") if r.counts]


def test_an_early_weight_is_never_taken_for_the_reason_of_the_one_before():
    chat = weighed().says("82.0 kg").later(days=2).says("81.9 kg")
    assert "EarlySecond" in chat.kinds
    chat.later(days=1).says("81.8 kg")
    assert "EarlyOften" in chat.kinds
    assert chat.did(e.PassOn) == []


def test_help_is_help_while_a_reason_is_asked():
    chat = weighed().says("82.0 kg").later(days=2).says("81.9 kg").says("help")
    assert chat.kinds == ["Help"]
    assert chat.did(e.PassOn) == []


def test_after_an_early_weight_no_question_is_put_on_top_of_it():
    chat = weighed().later(days=4).due().says("81.9 kg")
    assert chat.kinds == ["EarlyFirst"]
    assert chat.state.asking == Awaiting("energy")


def test_an_impossible_early_weight_that_is_edited_stays_early_and_unsaid():
    chat = weighed().says("819 kg").edits("81.9 kg")
    assert chat.kinds == ["EarlyTaken"]
    assert [r.how for r in chat.readings("weight")][1:] == [How.EARLY]


@pytest.mark.parametrize("more", ["I meant 81.9", "undo"])
def test_second_thoughts_about_an_impossible_early_weight_leave_the_official_one_alone(more: str):
    chat = weighed().says("819 kg")
    before = official(chat)
    chat.says(more)
    assert chat.kinds == ["EarlyTaken"]
    assert official(chat) == before


def test_an_answer_typed_after_later_is_heard():
    chat = Chat(WEIGHT).due().presses("later").says("7")
    assert [r.value for r in chat.readings("energy")] == [7]
    assert chat.state.asking == Awaiting("weight")


def test_thanks_to_a_coach_who_has_just_written_go_to_the_coach():
    chat = Chat()
    chat.gets(FromCoach(chat.now, "Rowan", "See you on Friday?")).says("Thank you, Friday is good")
    assert [x.text for x in chat.did(e.PassOn)] == ["Thank you, Friday is good"]


def test_a_denied_sign_is_no_answer_to_whether_one_is_well():
    chat = Chat(TESTS).due().says("7").says("no chest pain")
    assert chat.kinds == ["GateWell"]
    assert chat.state.asking == Gate()
    assert chat.did(e.Raise) == []


def test_the_gate_is_put_again_after_a_sign_that_was_somebody_elses():
    chat = Chat(TESTS).due().says("7").presses("gate:well").says("my brother had chest pain").presses("alarm:no")
    assert chat.kinds == ["StoodDown", "GateSigns"]
    chat = Chat(TESTS).due().says("7").says("my brother had chest pain").presses("alarm:no")
    assert chat.kinds == ["StoodDown", "GateWell"]


def test_no_praise_follows_bad_news():
    assert "Praise" not in Chat(TESTS).due().says("3").presses("gate:unwell").kinds
    chat = Chat(PULSE).due().says("7").says("131 bpm").later(minutes=10).says("128 bpm")
    assert "PulseAdvice" in chat.kinds and "Praise" not in chat.kinds


def test_a_usual_pulse_after_a_fast_one_is_no_surprise():
    chat = Chat(PULSE).due().says("7").says("128 bpm").later(minutes=10).says("88 bpm")
    assert chat.kinds == ["ReadingKept", "AskConditions"]


def test_a_repeated_pulse_counted_by_our_clock_ends_with_advice():
    chat = Chat(PULSE).due().says("7").says("131 bpm").later(minutes=10)
    chat.presses("count:resting_heart_rate:60").later(seconds=60).says("129")
    assert "PulseAdvice" in chat.kinds


def test_a_question_waits_behind_a_doubtful_edit_and_comes_again():
    chat = Chat().due().says("7").says("72").says("82.4 kg")
    assert chat.state.asking == Awaiting("waist")
    chat.edits("823")
    assert "DidYouMean" in chat.kinds
    chat.presses("ok:yes")
    assert official(chat) == [Decimal("82.3")]
    assert chat.state.asking == Awaiting("waist")


def test_a_doubtful_edit_that_is_called_off_changes_nothing_and_the_question_comes_again():
    chat = Chat().due().says("7").says("72").says("82.4 kg")
    chat.edits("823").presses("ok:no")
    assert official(chat) == [Decimal("82.4")]
    assert chat.state.asking == Awaiting("waist")


def test_a_usual_pressure_after_a_severe_one_is_no_surprise():
    chat = Chat(PRESSURE).due().says("7").later(days=1).wakes_up("pressure", "1m").says("136/84").says("134/84")
    chat.later(hours=12).wakes_up("pressure", "1e").says("186/122").later(minutes=6).says("184/122")
    chat.later(hours=12).wakes_up("pressure", "2m").says("135/85")
    assert chat.kinds == ["PressureAgain"]


def test_a_new_prompt_ends_a_repeat_that_never_came():
    chat = Chat(PRESSURE).due().says("7").later(days=1).wakes_up("pressure", "1m").says("186/122")
    assert "PressureRepeat" in chat.kinds
    chat.later(hours=12).wakes_up("pressure", "1e").says("132/82")
    assert chat.kinds == ["PressureAgain"]


@pytest.mark.parametrize("more", ["I have chest pain", "14", "stop"])
def test_a_timed_count_that_is_over_early_is_not_stopped_by_us_later(more: str):
    chat = Chat(TESTS).due().says("7").presses("gate:well").presses("gate:none").presses("time:chair_stand_30s")
    chat.presses("count:chair_stand_30s:30").later(seconds=12).says(more)
    assert chat.did(e.DropDelayed)


def test_a_timed_count_that_ran_its_time_has_nothing_to_drop():
    chat = Chat(TESTS).due().says("7").presses("gate:well").presses("gate:none").presses("time:chair_stand_30s")
    chat.presses("count:chair_stand_30s:30").later(seconds=30).says("14")
    assert chat.did(e.DropDelayed) == []


def test_looking_at_the_settings_does_not_stop_the_clock():
    chat = Chat(TESTS).due().says("7").presses("gate:well").presses("gate:none").presses("time:chair_stand_30s")
    chat.presses("count:chair_stand_30s:30").later(seconds=12).presses("set:zone")
    assert isinstance(chat.state.asking, Setting)
    assert chat.did(e.DropDelayed) == []


def test_one_breath_is_one_message_unless_both_parts_have_buttons():
    chat = Chat(replace(ADA, plan=Plan(measures=()))).due().says("7")
    (said,) = chat.did(Say)
    assert [type(part) for part in said.message.parts] == [m.ReadingKept, m.Praise, m.CheckInDone]
    chat = Chat(PRESSURE).due().says("7")
    assert [bool(x.choices) for x in chat.did(Say)] == [True, True]


def test_later_is_answered_by_the_words_on_its_buttons():
    words = {"this_evening": "This evening", "in_two_hours": "In two hours", "tomorrow": "Tomorrow"}
    facts = replace(ADA, label=lambda key, argument: words.get(key, ""))
    for typed, after in (("this evening", timedelta(hours=11, minutes=30)), ("in two hours", timedelta(hours=2))):
        chat = Chat(facts).due().presses("later").says(typed)
        (wake,) = [x for x in chat.did(e.SetTimer) if x.purpose == "snooze"]
        assert wake.at - chat.now == after


def test_a_fast_pulse_counted_over_15_seconds_is_counted_again_before_it_is_a_start():
    chat = Chat(PULSE).due().says("7").says("27 in 15 s")
    asked = chat.heard(m.DidYouMean)
    assert (asked.kind, asked.amount.value) == ("short_count", 108) and not chat.readings("resting_heart_rate")
    assert [c for c in chat.choices if c.startswith("count:")] == [
        "count:resting_heart_rate:30",
        "count:resting_heart_rate:60",
    ]
    chat.presses("count:resting_heart_rate:60").later(seconds=60).says("96")
    assert [r.value for r in chat.readings("resting_heart_rate")] == [96]


def test_who_counts_it_so_again_or_keeps_it_is_believed():
    again = Chat(PULSE).due().says("7").says("27 in 15 s").says("27 in 15 s")
    kept = Chat(PULSE).due().says("7").says("27 in 15 s").presses("ok:yes")
    assert [r.value for r in again.readings("resting_heart_rate")] == [108]
    assert [r.value for r in kept.readings("resting_heart_rate")] == [108]


@pytest.mark.parametrize("typed", ["54 in 30 s", "108 bpm", "25 in 15 s"])
def test_a_longer_count_a_device_and_a_slower_pulse_are_taken_at_once(typed):
    assert Chat(PULSE).due().says("7").says(typed).readings("resting_heart_rate")


def test_only_a_start_is_counted_again():
    chat = Chat(PULSE).due().says("7").says("96 bpm")
    chat.later(weeks=4).due().says("7").says("27 in 15 s")
    assert len(chat.readings("resting_heart_rate")) == 2


def test_a_small_change_beyond_error_is_said_without_a_meaning_and_a_large_one_with_it():
    def retest(waist: str) -> m.VerdictSaid:
        chat = Chat(replace(ADA, plan=Plan(measures=("waist",)))).due().says("7").says("94 94").presses("cond:first")
        chat.later(weeks=4).due().says("7").says(waist).presses("cond:same")
        return chat.heard(m.VerdictSaid)

    little, much = retest("88 88"), retest("85 85")  # MDC95 5.3 cm; three standard errors 8.1 cm
    assert (little.kind, little.strength, little.difference.value) == ("within_error", "", -6)
    assert little.error.value > 6
    assert (much.kind, much.strength) == ("better", "possible")
