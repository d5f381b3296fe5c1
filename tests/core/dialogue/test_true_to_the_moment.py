"""What is said fits the moment: an opening, a denial beside an open question, how many values are asked for."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from core.dialogue.client import messages as m
from core.dialogue.client.encouragement import OF_A_REGULAR, OF_THE_SLOT
from core.dialogue.client.looking_back import shelves
from core.dialogue.client.states import Awaiting, Gate
from core.dialogue.client.step import ClientStep
from core.measures import MEASURES
from tests.builders import ADA, Chat, Plan

# --- the opening ------------------------------------------------------------------------------------------------


def opened(client_id: int, *, late: timedelta = timedelta(0), by_hand: bool = False) -> list[str]:
    """The openings of fourteen weeks in which everything is answered."""
    chat, heard = Chat(replace(ADA, client_id=client_id, plan=Plan(measures=()))), []
    for _ in range(14):
        (chat.commands("today") if by_hand else chat.due(late))
        heard += [x.variant for x in chat.said if isinstance(x, m.CheckInOpens)]
        chat.says("6").later(days=7)
    return heard


@pytest.mark.parametrize("client_id", range(14))
def test_the_first_opening_a_client_gets_does_not_speak_of_an_earlier_one(client_id: int) -> None:
    first, *others = opened(client_id)
    assert first not in OF_A_REGULAR and OF_A_REGULAR & set(others)


def test_same_hour_is_said_only_at_that_hour() -> None:
    assert set(opened(1)) >= OF_THE_SLOT
    assert not OF_THE_SLOT & {*opened(1, late=timedelta(hours=5)), *opened(1, by_hand=True)}


# --- a denial, while a question is open -------------------------------------------------------------------------

DENIALS = {
    "en": ("no chest pain", "I have no chest pain", "I don't have chest pain"),
    "de": ("keine Brustschmerzen", "Ich habe keine Brustschmerzen"),
    "fr": ("pas de douleur à la poitrine", "je n'ai pas de douleur à la poitrine"),
    "es": ("sin dolor en el pecho", "no tengo dolor en el pecho"),
    "pl": ("nie mam bólu w klatce piersiowej", "nie boli mnie w klatce"),
    "ar": ("ليس عندي ألم في الصدر", "ما عندي ألم في صدري", "لا ألم في الصدر"),
}


@pytest.mark.parametrize(("language", "text"), [(code, text) for code, texts in DENIALS.items() for text in texts])
def test_a_denied_sign_is_taken_and_the_question_is_put_again(language: str, text: str) -> None:
    client = replace(ADA, language=language, plan=Plan(measures=("waist",)))
    chat = Chat(client).due().says(text)
    assert chat.kinds == ["StoodDown", "Ask"] and chat.state.asking == Awaiting("energy")
    chat.says("7").says(text)
    assert chat.kinds == ["StoodDown", "Ask"] and chat.state.asking == Awaiting("waist")


@pytest.mark.parametrize("text", ["I have no chest pain", "ليس عندي ألم في الصدر"])
def test_a_denied_sign_leaves_the_gate_open_and_says_its_question(text: str) -> None:
    client = replace(ADA, language="ar" if "ألم" in text else "en", plan=Plan(measures=("chair_stand_30s",)))
    chat = Chat(client).due().says("7").says(text)
    assert chat.kinds[-1] == "GateWell" and chat.state.asking == Gate()


def test_a_number_beside_a_denied_sign_is_still_read() -> None:
    chat = Chat(replace(ADA, plan=Plan(measures=("waist",)))).due().says("no chest pain, 7")
    assert [r.value for r in chat.readings("energy")] == [7]
    assert "StoodDown" not in chat.says("no chest pain, between 95 and 105").kinds


# --- how many values --------------------------------------------------------------------------------------------


def test_a_question_asks_for_several_values_only_if_its_own_words_do_not() -> None:
    named = {key: measure.protocol.attempts_to_name for key, measure in MEASURES.items()}
    assert (named["waist"], named["one_leg_stance"], named["blood_pressure"], named["weight"]) == (2, 1, 1, 1)


# --- looking back -----------------------------------------------------------------------------------------------


def test_what_moved_beyond_error_and_means_nothing_yet_stands_apart_from_what_did_not() -> None:
    chat = Chat(replace(ADA, plan=Plan(measures=("waist", "hip"))))
    chat.due().says("6").says("104").says("110")
    chat.later(days=28).due().says("6").says("98.5").presses("cond:same").says("110")
    found = shelves(ClientStep(chat.state, chat.facts, chat.now))
    assert (found["unsure"], found["same"]) == (("waist",), ("hip", "energy"))
    assert chat.says("how am I doing?").heard(m.Doing).unsure == ("waist",)


# --- what only looks like another word --------------------------------------------------------------------------


@pytest.mark.parametrize("text", ["لا تنساني", "لا تنسيني من فضلك", "لا تقلق", "لا أنام جيدا"])
def test_a_verb_behind_no_is_no_answer_in_arabic(text: str) -> None:
    chat = Chat(replace(ADA, language="ar", plan=Plan(measures=("waist",)))).due().says("7").says(text)
    assert "Skipped" not in chat.kinds and chat.state.asking == Awaiting("waist", tries=1)


@pytest.mark.parametrize("text", ["لا", "لا شكرا", "لا أريد"])
def test_a_plain_no_is_one(text: str) -> None:
    chat = Chat(replace(ADA, language="ar", plan=Plan(measures=("waist",)))).due().says("7").says(text)
    assert "Skipped" in chat.kinds


@pytest.mark.parametrize("text", ["كيف حالي؟", "كيف أموري", "كيف وضعي"])
def test_how_am_i_doing_is_no_call_for_help_in_arabic(text: str) -> None:
    assert Chat(replace(ADA, language="ar")).says(text).kinds == ["Doing"]


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "how do I measure my waist"),
        ("de", "Wie messe ich meine Taille?"),
        ("fr", "comment mesurer mon tour de taille ?"),
        ("es", "¿cómo mido mi cintura?"),
        ("pl", "jak zmierzyć talię?"),
        ("ar", "كيف أقيس خصري"),
    ],
)
def test_how_a_measure_is_taken_is_answered_with_its_card(language: str, text: str) -> None:
    client = replace(ADA, language=language, plan=Plan(measures=("waist",)))
    assert Chat(client).says(text).heard(m.Card).measure == "waist"
    chat = Chat(client).due().says(text)
    assert chat.heard(m.Card).measure == "waist" and not [x for x in chat.choices if x.startswith("time:")]
    assert chat.state.asking == Awaiting("energy")
