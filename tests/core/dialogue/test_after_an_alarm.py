"""After an alarm: the next morning, what the client says of it, readings sent with it, and its old buttons."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from core.care import Status
from core.dialogue.client import effects as e
from core.dialogue.client import messages as m
from core.dialogue.client.states import AlarmAsked, Awaiting, Consenting, Enrolling
from core.dialogue.kit.events import Command, TimerFired
from core.language import LANGUAGES, words_for
from core.language.after_alarm import SAID, Later, said_of_alarm
from core.reading import How
from core.watching.flags import Code
from tests.builders import ADA, MONDAY, Chat, checked_in

NEXT_MORNING = datetime(2026, 3, 3, 9, 0, tzinfo=UTC)


def alarmed(words: str = "I have chest pain now") -> Chat:
    return Chat().due().says(words)


def later(chat: Chat) -> list[str]:
    """What the coach's flag says of it now."""
    flags = [x.flag for x in chat.did(e.Raise) if x.flag.code is Code.RED_FLAG_WORDS]
    return [str(dict(f.evidence).get("now", "")) for f in flags]


# --- the next morning -------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("alarm_at", "asked_at"),
    [
        (MONDAY, NEXT_MORNING),
        (datetime(2026, 3, 2, 23, 50, tzinfo=UTC), NEXT_MORNING),
        (datetime(2026, 3, 3, 2, 0, tzinfo=UTC), NEXT_MORNING),
        (datetime(2026, 3, 3, 5, 0, tzinfo=UTC), NEXT_MORNING + timedelta(days=1)),
    ],
    ids=["in the morning", "late", "in the night", "just before the morning"],
)
def test_the_follow_up_is_in_the_clients_next_morning(alarm_at: datetime, asked_at: datetime) -> None:
    chat = Chat(now=alarm_at).says("I have chest pain now")
    assert [w.at for w in chat.wakes if w.purpose == "how_now"] == [asked_at]


def test_the_follow_up_asks_once_and_every_answer_has_a_button() -> None:
    chat = alarmed().at(NEXT_MORNING).wakes_up("how_now")
    assert chat.heard(m.HowIsItNow).sign == "chest_pain"
    assert chat.choices == ["now:better", "now:same", "now:worse"]
    assert [w for w in chat.wakes if w.purpose == "how_now" and w.at > NEXT_MORNING] == []


@pytest.mark.parametrize("status", [Status.LEFT])
def test_who_has_left_is_not_asked(status: Status) -> None:
    chat = alarmed()
    chat.facts = replace(chat.facts, status=status)
    assert chat.at(NEXT_MORNING).wakes_up("how_now").kinds == []


def test_leaving_ends_the_follow_up() -> None:
    chat = alarmed().commands("settings").presses("set:leave").presses("leave:yes")
    assert [w.purpose for w in chat.wakes if w.purpose in ("how_now", "alarm_stands")] == []


def test_a_bot_that_was_away_for_a_day_does_not_ask() -> None:
    chat = alarmed().at(NEXT_MORNING + timedelta(days=1))
    assert chat.gets(TimerFired(chat.now, "how_now", "", timedelta(days=1))).kinds == []


@pytest.mark.parametrize(
    ("answer", "kind", "told"),
    [
        ("now:better", "AlarmBetter", "better"),
        ("better, thanks", "AlarmBetter", "better"),
        ("I'm fine now", "AlarmBetter", "better"),
        ("it's gone", "AlarmOver", "over"),
        ("recovered", "AlarmOver", "over"),
        ("recovered, well, better", "AlarmBetter", "better"),
        ("alarm:over", "AlarmOver", "over"),
    ],
)
def test_better_and_over_are_two_things_and_each_is_passed_on_and_ends_it(answer: str, kind: str, told: str) -> None:
    chat = alarmed().at(NEXT_MORNING).wakes_up("how_now")
    (chat.presses if ":" in answer else chat.says)(answer)
    assert chat.kinds == [kind, "CoachTold"] and later(chat) == [told]
    assert chat.state.alarm is None


@pytest.mark.parametrize("answer", ["now:same", "still the same", "no better", "not really better"])
def test_the_same_repeats_the_advice(answer: str) -> None:
    chat = alarmed().at(NEXT_MORNING).wakes_up("how_now")
    (chat.presses if ":" in answer else chat.says)(answer)
    assert chat.kinds == ["Emergency", "CoachTold"] and later(chat) == ["same"]


def test_worse_raises_the_level() -> None:
    chat = alarmed("my left leg is swollen today")
    assert "SameDay" in chat.kinds
    chat.at(NEXT_MORNING).wakes_up("how_now").says("it is getting worse")
    assert "Emergency" in chat.kinds and later(chat) == ["worse"]


def test_of_somebody_near_the_question_and_the_advice_are_about_them() -> None:
    chat = alarmed("my husband has collapsed, he is lying on the floor").at(NEXT_MORNING).wakes_up("how_now")
    assert chat.heard(m.HowIsItNow).nearby
    assert "EmergencyNearby" in chat.presses("now:worse").kinds


def test_a_joke_is_understood_at_any_time_and_never_answered_cheerfully() -> None:
    chat = alarmed().later(minutes=5).says("sorry, it was only a joke")
    assert chat.kinds == ["NotMeant", "CoachTold"] and later(chat) == ["not_meant"]
    assert [w.purpose for w in chat.wakes if w.purpose == "how_now"] == []


@pytest.mark.parametrize("said", ["better", "still the same", "it was a joke"])
def test_without_an_alarm_these_words_are_about_something_else(said: str) -> None:
    chat = Chat().due().says(said)
    assert not {"AlarmOver", "AlarmBetter", "Emergency", "NotMeant"} & set(chat.kinds)


def test_the_same_as_last_time_is_no_answer_to_the_alarm() -> None:
    chat = checked_in(Chat()).later(days=28).says("I have chest pain now").later(hours=20).due().says("7").says("72")
    assert "AskConditions" in chat.kinds
    assert "Emergency" not in chat.says("same").kinds


def test_an_alarm_of_last_week_no_longer_stands() -> None:
    assert not {"AlarmOver", "AlarmBetter"} & set(alarmed().later(days=7).says("better").kinds)


SENTENCES = {
    "en": ("much better now thanks", "no better", "it has got worse", "was only joking"),
    "es": ("ya estoy mejor", "sigo igual", "estoy peor que ayer", "era una broma"),
    "de": ("mir geht es wieder gut", "immer noch nicht besser", "es ist schlimmer geworden", "war nur ein Witz"),
    "fr": ("ça va mieux", "ça ne va pas mieux", "c'est pire qu'hier", "c'était une blague"),
    "pl": ("już lepiej", "wcale nie lepiej", "jest coraz gorzej", "to był żart"),
    "ar": ("الحمد لله أحسن", "مش أحسن", "أسوأ من امبارح", "كنت بهزر"),
}


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_is_said_of_an_alarm_is_understood_in_every_language(language: str) -> None:
    heard = [said_of_alarm(sentence, words_for(language)) for sentence in SENTENCES[language]]
    assert heard == [Later.BETTER, Later.SAME, Later.WORSE, Later.NOT_MEANT]


def test_every_language_has_words_for_each_answer() -> None:
    assert {language: set(words) for language, words in SAID.items()} == {
        language: set(Later) for language in LANGUAGES
    }


# --- a reading in the same message ------------------------------------------------------------------------------


def test_a_reading_sent_with_an_alarm_is_set_aside_after_the_advice() -> None:
    chat = alarmed("chest pain, weight 82.4")
    assert chat.kinds == ["Emergency", "CoachTold", "KeptAside"]
    (kept,) = chat.readings("weight")
    assert kept.how is How.EARLY and str(kept.value) == "82.4"


def test_a_severe_pressure_sent_with_an_alarm_reaches_the_coach_as_well() -> None:
    chat = alarmed("I have chest pain, blood pressure 190/122")
    assert {x.flag.code for x in chat.did(e.Raise)} == {Code.RED_FLAG_WORDS, Code.BP_SEVERE}


@pytest.mark.parametrize("said", ["chest pain for 20 minutes", "chest pain, 8 out of 10", "chest pain since 7"])
def test_numbers_about_the_pain_are_no_readings(said: str) -> None:
    assert alarmed(said).readings("energy") == [] and not alarmed(said).did(e.Record)


def test_a_reading_beside_a_doubtful_sign_is_taken_when_there_was_none() -> None:
    chat = alarmed("I had chest pain last year, weight 82.4")
    assert isinstance(chat.state.asking, AlarmAsked) and chat.readings("weight") == []
    chat.presses("alarm:none")
    assert [r.how for r in chat.readings("weight")] == [How.ASKED]


@pytest.mark.parametrize("answer", ["alarm:me", "alarm:over", "alarm:nearby"])
def test_a_reading_beside_a_doubtful_sign_is_set_aside_when_there_was_one(answer: str) -> None:
    chat = alarmed("I had chest pain last year, weight 82.4").presses(answer)
    assert chat.kinds[-1] == "KeptAside" and [r.how for r in chat.readings("weight")] == [How.EARLY]


# --- old buttons ------------------------------------------------------------------------------------------------

STATES = {
    "nothing open": Chat().state,
    "a question": replace(Chat().state, asking=Awaiting("energy")),
    "enrolling": replace(Chat().state, asking=Enrolling("cautions", ("weekday",))),
    "consenting": replace(Chat().state, asking=Consenting()),
}


@pytest.mark.parametrize("state", STATES)
@pytest.mark.parametrize("status", [Status.ACTIVE, Status.LEFT, Status.PAUSED])
def test_an_old_button_that_says_to_me_is_heard_in_every_state(state: str, status: Status) -> None:
    chat = Chat(replace(ADA, status=status), state=STATES[state]).presses_old("alarm:me~abc")
    assert "Emergency" in chat.kinds
    assert "EmergencyNearby" in chat.presses_old("alarm:nearby~abc").kinds


def test_an_alarm_during_enrolment_leaves_its_question_open() -> None:
    asking = Enrolling("weekday", ("time",))
    chat = Chat(replace(ADA, status=Status.ENROLLING), state=replace(Chat().state, asking=asking))
    chat.says("I have chest pain now")
    assert "Emergency" in chat.kinds and chat.state.asking == asking
    assert "EnrolQuestion" in chat.says("Monday").kinds


@pytest.mark.parametrize("answer", ["over", "none", "no", "anything"])
def test_an_old_button_of_a_closed_question_says_what_to_do_now(answer: str) -> None:
    chat = Chat().due().presses_old(f"alarm:{answer}~abc")
    assert chat.kinds[0] == "AlarmClosed" and "StoodDown" not in chat.kinds


@pytest.mark.parametrize("answer", ["over", "none"])
def test_an_old_denial_does_not_answer_a_new_question(answer: str) -> None:
    chat = Chat().due().says("I had chest pain last year").presses_old(f"alarm:{answer}~abc")
    assert chat.kinds == ["AskAlarm"] and isinstance(chat.state.asking, AlarmAsked)


def test_an_old_denial_while_an_alarm_stands_is_said_of_that_alarm() -> None:
    chat = alarmed().presses_old("alarm:none~abc")
    assert chat.kinds == ["NotMeant", "CoachTold"] and later(chat) == ["not_meant"]


def test_a_second_tap_repeats_the_advice_and_tells_the_coach_no_second_time() -> None:
    chat = Chat().due().says("I had chest pain last year")
    button = f"alarm:me~{chat.callbacks[0].partition('~')[2]}"
    chat.presses_old(button)
    assert chat.did(e.Raise)
    chat.later(seconds=2).presses_old(button)
    assert "Emergency" in chat.kinds and not chat.did(e.Raise)


# --- the coach hears at once ------------------------------------------------------------------------------------


def test_words_for_the_coach_that_name_a_sign_do_not_wait_for_the_morning() -> None:
    chat = Chat(now=MONDAY.replace(hour=2)).gets(Command(MONDAY, "coach", "tell Rowan I have chest pain"))
    assert [(x.text, x.urgent) for x in chat.did(e.PassOn)] == [("tell Rowan I have chest pain", True)]
    assert [x.urgent for x in Chat().commands("coach", "ring me, I want to die").did(e.PassOn)] == [True]
    for words in ("please ring me tomorrow", "my knee is sore"):
        assert [x.urgent for x in Chat().commands("coach", words).did(e.PassOn)] == [False]


def test_despair_is_followed_up_and_an_eating_worry_is_not() -> None:
    assert [w.purpose for w in Chat().says("I want to die").wakes if w.purpose == "how_now"] == ["how_now"]
    assert [w for w in Chat().says("I have bulimia").wakes if w.purpose == "how_now"] == []
