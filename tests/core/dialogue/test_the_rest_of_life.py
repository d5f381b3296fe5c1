"""Help, pause, settings, goals, messages to the coach, leaving, coming back."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, time, timedelta

import pytest

from bot.rendering.phrases.labels import labeller
from core.care import Slot, Status
from core.dialogue.client import effects as e
from core.dialogue.client import messages as m
from core.dialogue.client.facts import InvitationFact, Membership
from core.dialogue.client.states import Awaiting, Counting, Setting
from core.dialogue.kit.effects import Erase, Say, SendData
from core.dialogue.kit.events import FromCoach, PlanChanged, Reachability
from core.dialogue.kit.messages import NotText
from core.language import LANGUAGES, Intent, words_for
from core.quantity import Unit
from core.watching.cohort import Counted
from tests.builders import ADA, Chat, Plan, checked_in


def test_help_keeps_the_open_question_open():
    chat = Chat().due().says("help")
    assert chat.heard(m.Help).waiting == "energy"
    chat.says("7")
    assert chat.readings("energy")


@pytest.mark.parametrize("text", ["bananas", "???", "🙂", "asdf qwer", "-", "82 to 84 maybe"])
def test_an_unknown_message_is_never_ignored(text):
    assert Chat().says(text).said
    assert Chat().due().says(text).said


@pytest.mark.parametrize("kind", ["voice", "photo", "sticker", "location"])
def test_what_is_not_text_is_refused_kindly_with_what_to_send(kind):
    assert Chat().due().sends(kind).heard(NotText) == NotText(kind, "energy")


def test_a_pause_until_a_date_and_back():
    chat = Chat().due().says("pause until 20 March")
    assert chat.heard(m.Paused).until == date(2026, 3, 20)
    assert chat.facts.status is Status.PAUSED and chat.state.asking is None
    assert [type(x.message).__name__ for x in chat.did(e.NotifyCoach)] == ["ClientPaused"]
    chat.says("I am back")
    assert chat.facts.status is Status.ACTIVE and "Resumed" in chat.kinds


def test_a_pause_without_a_date_asks_how_long():
    chat = Chat().says("pause")
    assert chat.kinds == ["PauseWhen"]
    chat.presses("pause:2w")
    assert chat.heard(m.Paused).until == date(2026, 3, 16)


def test_a_pause_is_never_for_ever():
    chat = Chat().commands("pause", "until 1 January 2035")
    assert chat.heard(m.Paused).until == date(2026, 3, 2) + timedelta(days=183)


def test_another_slot_in_one_message_or_in_two_steps():
    chat = Chat().presses("set:slot").says("Thursday 18:15")
    assert chat.facts.slot == Slot(3, time(18, 15), "Europe/London")
    chat.presses("set:slot").presses("wd:5").presses("hr:09:00")
    assert chat.facts.slot == Slot(5, time(9), "Europe/London")
    assert chat.heard(m.SlotChanged).next == date(2026, 3, 7)


def test_a_traveller_says_where_they_are():
    chat = Chat().says("I am in Lisbon")
    assert chat.heard(m.ZoneChanged) == m.ZoneChanged("Europe/Lisbon", 0, time(7, 30))
    assert chat.facts.slot == Slot(0, time(7, 30), "Europe/Lisbon")


def test_units_and_language_are_changed_by_a_button():
    chat = Chat().presses("set:units").presses("units:st")
    assert chat.facts.units.mass is Unit.STONE
    chat.presses("set:language").presses("lang:pl")
    assert chat.facts.language == "pl"


def test_a_setting_in_the_middle_of_a_question_comes_back_to_it():
    chat = Chat().due().presses("set:units").presses("units:lb")
    assert chat.state.asking == Awaiting("energy") and "Ask" in chat.kinds


def test_a_word_to_the_coach_is_passed_on_and_flagged():
    chat = Chat().commands("coach", "my knee is sore")
    assert chat.did(e.PassOn) == [e.PassOn("my knee is sore")]
    chat.says("talk to my coach").says("please call me on Friday")
    assert chat.did(e.PassOn) == [e.PassOn("please call me on Friday")]


def test_an_answer_to_the_coach_needs_no_command():
    chat = Chat().gets(FromCoach(Chat().now, "Rowan", "How was the walk?"))
    assert chat.heard(m.CoachWrites).text == "How was the walk?"
    chat.says("it was lovely by the river")
    assert chat.did(e.PassOn) == [e.PassOn("it was lovely by the river")]
    chat.later(hours=49).says("it was lovely by the river")
    assert chat.did(e.PassOn) == []


def test_a_reading_is_still_a_reading_after_the_coach_wrote():
    chat = Chat().due().gets(FromCoach(Chat().now, "Rowan", "How are you?")).says("7")
    assert chat.readings("energy") and not chat.did(e.PassOn)


def test_my_data_is_sent():
    assert Chat().commands("mydata").did(SendData)


def test_being_forgotten_takes_one_confirmation():
    chat = Chat().commands("forget")
    assert chat.kinds == ["ForgetSure"] and not chat.did(Erase)
    chat.presses("forget:yes")
    assert chat.did(Erase) == [Erase(m.Forgotten())]


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize(
    ("opens", "button"), [("forget", "forget_yes"), ("leave", "leave_yes"), ("leave_cohort", "leave_yes")]
)
def test_a_yes_alone_ends_nothing_and_the_very_words_do(language, opens, button):
    label = labeller(language)
    spring = Membership(5, "Spring", date(2026, 3, 2), date(2026, 6, 1), Counted.MINUTES.value)
    facts = replace(ADA, language=language, label=label, cohorts=(spring,))
    ended = (Erase, e.LeaveCohort, e.ChangeClient)
    opened = "coleave:5" if opens == "leave_cohort" else f"set:{opens}"
    for yes in words_for(language).intents[Intent.YES]:
        chat = Chat(facts).presses(opened).says(yes.strip("… "))
        assert not any(chat.did(kind) for kind in ended), yes
        assert isinstance(chat.state.asking, Setting), yes
    chat = Chat(facts).presses(opened).says(label(button, ""))
    assert any(chat.did(kind) for kind in ended)


def test_a_no_to_being_forgotten_keeps_everything_as_it_was():
    chat = Chat().due().commands("forget").presses("forget:no")
    assert not chat.did(Erase) and chat.state.asking == Awaiting("energy")


def test_leaving_ends_questions_and_still_lets_them_take_their_data():
    chat = Chat().presses("set:leave").presses("leave:yes")
    assert chat.facts.status is Status.LEFT
    assert chat.later(days=7).due().said == []
    assert chat.says("my data").did(SendData)
    assert chat.says("hello").kinds == ["HasLeft"]


def test_coming_back_through_the_same_coach():
    chat = Chat(replace(ADA, status=Status.LEFT, invitation=InvitationFact("client", "Rowan", "Ada")))
    chat.commands("start", "token")
    assert "WelcomeBack" in chat.kinds
    chat.presses("back:yes")
    assert chat.facts.status is Status.ACTIVE


def test_blocked_and_let_in_again():
    chat = Chat().gets(Reachability(Chat().now, False))
    assert chat.said == []
    chat.gets(Reachability(chat.now, True))
    assert "WelcomeBack" in chat.kinds


def test_a_changed_plan_is_told_and_a_question_that_is_gone_is_dropped():
    chat = Chat().due().says("7")
    assert chat.state.asking == Awaiting("resting_heart_rate")
    chat.facts = replace(chat.facts, plan=Plan(measures=("weight",)))
    chat.gets(PlanChanged(chat.now, "measures"))
    assert chat.kinds[0] == "PlanNews" and chat.state.asking == Awaiting("weight")


def test_a_timed_pulse_is_counted_by_us():
    chat = Chat().due().says("7").presses("time:resting_heart_rate").presses("count:resting_heart_rate:30")
    go, stop = chat.did(Say)
    assert (type(go.message), type(stop.message)) == (m.CountGo, m.CountStop)
    assert stop.after == timedelta(seconds=30)
    assert isinstance(chat.state.asking, Counting)
    chat.later(seconds=33).says("35")
    (reading,) = chat.readings("resting_heart_rate")
    assert (reading.value, reading.window) == (70, 30)


def test_a_stopwatch_for_tests_is_kept_or_timed_again():
    plan = Plan(measures=("timed_up_and_go",))
    chat = Chat(replace(ADA, plan=plan)).due().says("7").presses("gate:well").presses("gate:none")
    chat.presses("time:timed_up_and_go").presses("count:timed_up_and_go:0")
    chat.later(seconds=9.4).presses("stop:timed_up_and_go")
    assert str(chat.heard(m.StopwatchRead).amount.value) == "9.4"
    chat.presses("watch:keep")
    assert str(chat.readings("timed_up_and_go")[0].value) == "9.4"


def test_a_goal_is_checked_for_sense_and_progress_is_said_at_retests():
    chat = checked_in(Chat()).presses("set:goal").presses("goal:weight").says("60 kg").presses("goaldate:28")
    assert chat.heard(m.GoalDoubt).reason == "faster_than_published"
    chat.says("78 kg").presses("goaldate:84")
    assert "GoalSet" in chat.kinds
    chat.later(days=28).due().says("7").says("72").presses("cond:same").says("80 kg")
    assert chat.heard(m.GoalProgress).percent == 54


def test_progress_shows_what_there_is():
    assert Chat().says("progress").kinds == ["NothingToShow"]
    chat = checked_in(checked_in(Chat()).later(days=28))
    chat.says("progress")
    assert "AskProgress" in chat.kinds
    chat.presses("chart:weight")
    assert "Picture" in chat.kinds


def test_where_it_comes_from_on_request():
    chat = Chat().due().says("7").says("72").presses("src")
    assert chat.heard(m.SourceOf).sources


def test_an_early_reading_of_another_measure_is_kept_and_compared_later():
    chat = checked_in(Chat()).later(days=5).says("waist 93")
    chat.presses("cond:same")
    assert len(chat.readings("waist")) == 2


def test_a_setting_that_is_called_off_changes_nothing():
    chat = Chat().presses("set:slot")
    assert isinstance(chat.state.asking, Setting)
    chat.says("no")
    assert chat.state.asking is None and not chat.did(e.ChangeClient)


def test_a_goal_says_when_it_might_be_reached_only_if_the_readings_do():
    chat = checked_in(Chat()).presses("set:goal").presses("goal:weight").says("76 kg").presses("goaldate:84")
    said = []
    for kilograms in ("80.6", "79.1", "77.6"):
        chat.later(days=28).due().says("7").says("72").presses("cond:same").says(kilograms)
        said.append(chat.heard(m.GoalProgress))
    assert [g.why for g in said[:2]] == ["too_few_readings", "too_few_readings"]
    assert said[2].earliest is not None and said[2].earliest < said[2].latest


def test_a_hello_is_answered_with_a_hello():
    assert Chat().says("hello").kinds == ["Hello"]


def test_a_bare_number_out_of_the_blue_is_asked_about_and_kept_only_when_it_has_a_name():
    chat = Chat().says("71")
    assert "WhichMeasure" in chat.kinds and not chat.facts.history
    assert "which:resting_heart_rate:71" in chat.choices
    chat.presses("which:resting_heart_rate:71")
    assert [r.value for r in chat.readings("resting_heart_rate")] == [71]


def test_a_bare_weight_out_of_the_blue_meets_the_guard_once_it_has_a_name():
    chat = checked_in(Chat()).later(days=2).says("81.9").presses("which:weight:81.9")
    assert "EarlyFirst" in chat.kinds


def test_a_mile_is_understood_with_its_pulse_in_one_message():
    chat = Chat(replace(ADA, plan=Plan(measures=("walk_mile",)))).due().says("7").presses("gate:well")
    chat.presses("gate:none").says("18:30, pulse 128")
    (walk,) = chat.readings("walk_mile")
    assert (walk.value, walk.second) == (18.5, 128)


def test_a_goal_needs_a_first_reading():
    assert "NoGoalYet" in Chat().commands("goal").kinds


def test_the_words_on_a_button_can_be_typed_in_the_clients_language():
    words = {"done": "Fertig", "aspect:scales": "Waage", "something_differed": "Anders"}
    facts = replace(
        ADA, language="de", plan=Plan(measures=("weight",)), label=lambda key, argument: words.get(key, key)
    )
    chat = checked_in(Chat(facts)).later(days=35).due().says("7")
    chat.says("82,4 kg").says("anders").says("Waage").says("fertig")
    assert chat.readings("weight")[-1].conditions.differs == {"scales"}
