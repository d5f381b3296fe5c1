"""Danger signs in the chat: who is helped, who is notified, what is asked, and what is never ignored."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta

import pytest

from core.care import Status
from core.client import Caution
from core.dialogue.client import effects as e
from core.dialogue.client import messages as m
from core.dialogue.client.facts import ClientFacts, StrangerFacts
from core.dialogue.client.states import AlarmAsked, Awaiting, Enrolling
from core.dialogue.engines.client import step_stranger
from core.dialogue.kit.effects import Say
from core.dialogue.kit.events import Command, Text, TimerFired
from core.watching.flags import Code, Flag
from tests.builders import ADA, MONDAY, Chat, Plan
from tests.corpus.danger import LANGUAGES, lines

LONG_AGO = "I had chest pain last year"
TESTS = replace(ADA, plan=Plan(measures=("chair_stand_30s",)))


def flags(chat: Chat) -> list[Flag]:
    return [x.flag for x in chat.did(e.Raise)]


def about(chat: Chat) -> list[str]:
    return [str(dict(f.evidence).get("about", "")) for f in flags(chat) if f.code is Code.RED_FLAG_WORDS]


def asked() -> Chat:
    chat = Chat().due().says(LONG_AGO)
    assert isinstance(chat.state.asking, AlarmAsked)
    return chat


# --- the question -----------------------------------------------------------------------------------------------


@pytest.mark.parametrize("answer", ["yes", "i think so", "maybe", "a bit"])
def test_a_yes_however_hesitant_is_an_alarm(answer: str) -> None:
    chat = asked().says(answer)
    assert "Emergency" in chat.kinds and about(chat) == [""]


def test_somebody_near_the_client_gets_help_too_and_the_coach_hears_whose_it_is() -> None:
    chat = asked().presses("alarm:nearby")
    assert chat.heard(m.EmergencyNearby).number == "999"
    assert about(chat) == ["nearby"]


def test_what_is_over_still_asks_for_a_doctor_and_is_passed_on() -> None:
    chat = asked().presses("alarm:over")
    assert "AlarmOver" in chat.kinds and "StoodDown" not in chat.kinds
    assert about(chat) == ["over"]


@pytest.mark.parametrize("said", ["alarm:none", "alarm:no"])
def test_a_clear_denial_goes_back_to_the_open_question(said: str) -> None:
    chat = asked().presses(said)
    assert chat.kinds[0] == "StoodDown" and flags(chat) == []
    assert chat.state.asking == Awaiting("energy")


def test_a_second_sign_raises_the_level_and_ends_nothing() -> None:
    chat = Chat().due().says("my ankle was swollen years ago")
    assert isinstance(chat.state.asking, AlarmAsked)
    first = chat.state.asking.level
    chat.says("and I had a stroke in 2015")
    assert isinstance(chat.state.asking, AlarmAsked)
    assert (first, chat.state.asking.level) == ("same_day", "emergency")
    assert "StoodDown" not in chat.kinds


def test_a_graver_sign_while_the_question_is_open_raises_it_and_answers_nothing() -> None:
    chat = Chat().says("I had a dizzy spell last month").says("my mum had a stroke last year")
    assert chat.kinds == ["AskAlarm"]
    assert chat.heard(m.AskAlarm).sign == "stroke_signs"


@pytest.mark.parametrize("typed", ["not sure", "I don't know", "don't forget me"])
def test_what_is_no_answer_brings_the_question_again(typed: str) -> None:
    chat = Chat().says("I had chest pain last year").says(typed)
    assert chat.kinds[-1] == "AskAlarm"


def test_a_sure_sign_while_the_question_is_open_is_acted_on() -> None:
    chat = asked().says("now I cannot breathe")
    assert "Emergency" in chat.kinds


def test_a_quarter_of_an_hour_without_an_answer_is_told_to_the_coach() -> None:
    chat = asked()
    (timer,) = [x for x in chat.wakes if x.purpose == "alarm_stands"]
    assert timer.at == chat.now + timedelta(minutes=15)
    chat.gets(TimerFired(timer.at, timer.purpose))
    assert [f.code for f in flags(chat)] == [Code.SIGN_UNANSWERED]
    assert isinstance(chat.state.asking, AlarmAsked)
    chat.says("it was nothing")
    assert [x.code for x in chat.did(e.Lower)] == [Code.SIGN_UNANSWERED]


@pytest.mark.parametrize("said", ["ok", "thanks", "hello", "7", "what?", "82.4 kg", "later"])
def test_what_is_no_answer_never_ends_in_good_to_hear(said: str) -> None:
    assert "StoodDown" not in asked().says(said).kinds


# --- somebody else, and long ago --------------------------------------------------------------------------------


def test_a_husband_on_the_floor_gets_the_same_help_in_words_that_fit() -> None:
    chat = Chat().due().says("my husband has collapsed, he is lying on the floor")
    assert "EmergencyNearby" in chat.kinds and "Emergency" not in chat.kinds
    assert about(chat) == ["nearby"]


def test_an_old_illness_while_enrolling_is_a_caution_and_enrolment_goes_on() -> None:
    chat = Chat(replace(ADA, status=Status.ENROLLING))
    chat.state = replace(chat.state, asking=Enrolling("cautions", ("weekday",)))
    chat.says("I had a stroke in 2015")
    assert "PastIllness" in chat.kinds and flags(chat) == []
    (learned,) = chat.did(e.ChangeClient)
    assert (learned.field, learned.value) == ("cautions", frozenset({Caution.HEART_CONDITION}))
    assert isinstance(chat.state.asking, Enrolling)


# --- heard everywhere -------------------------------------------------------------------------------------------


@pytest.mark.parametrize("name", ["coach", "pause", "record", "goal", "progress", "nothing_of_ours"])
def test_a_sign_in_the_words_of_a_command_is_heard(name: str) -> None:
    chat = Chat().due().gets(Command(MONDAY, name, "I have crushing chest pain"))
    assert "Emergency" in chat.kinds


def test_words_for_the_coach_that_name_a_sign_still_reach_the_coach() -> None:
    chat = Chat().due().gets(Command(MONDAY, "coach", "tell Rowan I have chest pain"))
    assert [x.text for x in chat.did(e.PassOn)] == ["tell Rowan I have chest pain"]


@pytest.mark.parametrize("event", [Text(MONDAY, "I can't breathe"), Command(MONDAY, "start", "I can't breathe")])
def test_a_stranger_in_need_is_told_to_call_without_a_flat_number(event: Text | Command) -> None:
    said = [x.message for x in step_stranger(event, StrangerFacts()).effects if isinstance(x, Say)]
    parts = [part for message in said for part in getattr(message, "parts", (message,))]
    assert [p.number for p in parts if isinstance(p, m.Emergency)] == [""]


@pytest.mark.parametrize("typed", ["ok", "okay", "k"])
def test_an_ok_at_the_list_of_signs_is_no_sign(typed: str) -> None:
    chat = Chat(TESTS).due().says("7").presses("gate:well").says(typed)
    assert "GateStopped" not in chat.kinds and flags(chat) == []


# --- only what is so --------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("coach", "reachable"), [("Rowan", False), ("", False)], ids=["blocked", "nobody"])
def test_the_coach_is_said_to_know_only_when_a_message_arrives(coach: str, reachable: bool) -> None:
    alone = replace(ADA, coach_name=coach, coach_reachable=reachable)
    chat = Chat(alone).due().says("I have chest pain now")
    assert "CoachTold" not in chat.kinds
    assert chat.heard(m.CoachNotReached).coach == coach


def test_thoughts_of_death_come_with_a_line_to_call_where_one_is_known() -> None:
    there = Chat().due().says("I want to die").heard(m.Despair)
    assert (there.line, there.dial) == ("Samaritans", "116 123")
    nowhere = Chat(replace(ADA, country="")).due().says("I want to die").heard(m.Despair)
    assert (nowhere.line, nowhere.number) == ("", "")


# --- the whole corpus -------------------------------------------------------------------------------------------

ON_GUARD = {  # what answers a sign, and nothing else
    "Emergency", "SameDay", "StopAndRest", "Despair", "EatingWorry", "AskAlarm", "EmergencyNearby", "AdviceNearby",
}  # fmt: skip
CHEERFUL = {"YouAreWelcome", "Hello", "Praise", "StoodDown", "ReadingKept", "CheckInDone", "GateWell"}


@pytest.mark.parametrize("chat", [Chat, lambda facts: Chat(facts).due()], ids=["unasked", "at_a_check_in"])
@pytest.mark.parametrize("language", LANGUAGES)
def test_no_alarm_of_the_corpus_is_answered_with_cheer(language: str, chat: Callable[[ClientFacts], Chat]) -> None:
    facts = replace(ADA, language=language)
    alarms = [line.sentence for line in lines(language, "tune") if line.kind in {"alarm", "other_now"}]
    answered = {said: set(chat(facts).says(said).kinds) for said in alarms}
    cheered = {said: kinds for said, kinds in answered.items() if kinds & CHEERFUL}
    heard = [said for said, kinds in answered.items() if kinds & ON_GUARD]
    assert not cheered
    assert len(heard) >= 0.97 * len(alarms)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "today no chest pain, all good"),
        ("es", "hoy sin dolor en el pecho, todo bien"),
        ("de", "heute keine Brustschmerzen, alles gut"),
        ("fr", "aujourd'hui pas de douleur à la poitrine"),
        ("pl", "dziś bez bólu w klatce, wszystko dobrze"),
    ],
)
def test_a_denial_that_does_not_begin_with_no_is_good_to_hear_too(language: str, text: str) -> None:
    assert Chat(replace(ADA, language=language)).says(text).kinds == ["StoodDown"]


@pytest.mark.parametrize(
    "text", ["me duele el pecho", "tengo un dolor fuerte en el pecho", "me aprieta mucho el pecho"]
)
def test_the_spanish_word_for_the_is_nobody_else(text: str) -> None:
    assert "Emergency" in Chat(replace(ADA, language="es")).says(text).kinds


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "I have epilepsy"),
        ("en", "I am a stroke survivor"),
        ("es", "tengo epilepsia"),
        ("de", "ich habe Epilepsie"),
        ("fr", "je suis épileptique"),
        ("pl", "mam padaczkę"),
        ("pl", "jestem po udarze"),
        ("ar", "عندي صرع"),
    ],
)
def test_an_illness_somebody_lives_with_is_neither_an_alarm_nor_good_to_hear(language: str, text: str) -> None:
    chat = Chat(replace(ADA, language=language)).says(text)
    assert not {"StoodDown", "Emergency", "AskAlarm", "EmergencyNearby"} & set(chat.kinds) and flags(chat) == []


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "my knee hurts"),
        ("es", "me duele la rodilla"),
        ("de", "mein Knie tut weh"),
        ("fr", "j'ai mal au genou"),
        ("pl", "boli mnie kolano"),
        ("ar", "ركبتي تؤلمني"),
    ],
)
def test_a_complaint_during_a_test_ends_it_kindly_and_is_noted(language: str, text: str) -> None:
    facts = replace(ADA, language=language, plan=Plan(measures=("chair_stand_30s",)))
    chat = Chat(facts).due().says("7").presses("gate:well").presses("gate:none")
    assert isinstance(chat.state.asking, Awaiting)
    chat.says(text)
    assert chat.heard(m.StopAndRest).sign == "new_joint_pain" and chat.state.asking is None
    assert [f.code for f in flags(chat)] == [Code.RED_FLAG_WORDS]


@pytest.mark.parametrize("text", ["no pain at all", "14", "my sister's knee hurts", "it went well"])
def test_what_is_no_complaint_ends_no_test(text: str) -> None:
    chat = Chat(replace(ADA, plan=Plan(measures=("chair_stand_30s",)))).due().says("7")
    chat.presses("gate:well").presses("gate:none").says(text)
    assert "StopAndRest" not in chat.kinds


def test_the_same_words_outside_a_test_are_no_alarm() -> None:
    assert "StopAndRest" not in Chat().due().says("my knee hurts").kinds


@pytest.mark.parametrize(
    ("language", "before", "denial"),
    [
        ("en", "I had chest pain last year", "my chest doesn't hurt"),
        ("de", "letztes Jahr hatte ich Brustschmerzen", "ich habe keine Brustschmerzen"),
        ("fr", "j'avais mal à la poitrine l'an dernier", "je n'ai pas mal à la poitrine"),
        ("es", "el año pasado me dolió el pecho", "no me duele el pecho"),
        ("pl", "w zeszłym roku bolało mnie w klatce", "nie boli mnie w klatce"),
        ("ar", "السنة الماضية كان عندي ألم في الصدر", "صدري لا يؤلمني"),
    ],
)
def test_a_sign_denied_by_its_name_stands_down(language: str, before: str, denial: str) -> None:
    chat = Chat(replace(ADA, language=language)).says(before)
    assert isinstance(chat.state.asking, AlarmAsked)
    assert "StoodDown" in chat.says(denial).kinds


def test_another_sign_denied_does_not_stand_down() -> None:
    chat = Chat().says("I had chest pain last year").says("no dizziness at all")
    assert "StoodDown" not in chat.kinds


def test_the_question_about_an_emergency_says_whom_to_call_meanwhile() -> None:
    chat = Chat().says("bp cuff makes my arm tingle when it squeezes, normal isn't it")
    assert chat.heard(m.AskAlarm) == m.AskAlarm("stroke_signs", True, "999")


def test_the_question_about_what_is_long_past_names_no_number() -> None:
    assert Chat().says("I had chest pain last year").heard(m.AskAlarm) == m.AskAlarm("chest_pain")


@pytest.mark.parametrize("text", ["HELP", "help!", "Hilfe!"])
def test_a_cry_for_help_is_no_request_for_the_help_page(text: str) -> None:
    language = "de" if text == "Hilfe!" else "en"
    assert Chat(replace(ADA, language=language)).says(text).heard(m.AskAlarm).sign == "call_for_help"


def test_help_without_a_cry_opens_the_help() -> None:
    assert Chat().says("help").heard(m.Help)
