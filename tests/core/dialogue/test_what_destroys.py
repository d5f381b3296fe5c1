"""Destructive words in a chat, whatever is open: what is not meant ends nothing, and a yes alone deletes nothing."""

from __future__ import annotations

from dataclasses import replace

import pytest

from bot.rendering.phrases.labels import labeller
from core.care import Status
from core.dialogue.client import effects as e
from core.dialogue.client.states import AskingConditions, Awaiting, Gate, Setting, State
from core.dialogue.kit.effects import Erase
from core.language import LANGUAGES
from tests.builders import ADA, Chat
from tests.core.language.test_destructive import HARMLESS
from tests.corpus.meant import lines

OPEN = {
    "nothing": None,
    "a question": Awaiting("energy"),
    "conditions": AskingConditions("weight", "1:weight"),
    "the gate": Gate(),
    "deleting": Setting("forget"),
    "leaving": Setting("leave"),
    "a question under deleting": Setting("forget", back=Awaiting("energy")),
}
YES = {
    "en": "yes; ok; sure; yes please; yep", "es": "sí; vale; claro; sí por favor", "de": "ja; ok; klar; ja bitte",
    "fr": "oui; ok; bien sûr; oui merci", "pl": "tak; ok; jasne; tak proszę", "ar": "نعم; ايوه; اكيد; طيب",
}  # fmt: skip


def chat_at(language: str, where: str) -> Chat:
    chat = Chat(replace(ADA, language=language, label=labeller(language)))
    chat.state = State(asking=OPEN[where], question=7)
    return chat


def ended(chat: Chat) -> bool:
    left = any(x.field == "status" and x.value is Status.LEFT for x in chat.did(e.ChangeClient))
    return bool(chat.did(Erase)) or left


def harmless(language: str) -> list[str]:
    written = [s.strip() for s in HARMLESS[language].split(";")]
    return written + [text for kind, text in lines(language, "destructive", "tune") if kind == "harmless"]


@pytest.mark.parametrize("where", OPEN)
@pytest.mark.parametrize("language", LANGUAGES)
def test_everyday_words_end_nothing_and_ask_nothing_of_the_kind(language: str, where: str) -> None:
    wrong = []
    for text in harmless(language):
        chat = chat_at(language, where).says(text)
        asked = {"ForgetSure", "LeaveSure"} & set(chat.kinds)
        if ended(chat) or (asked and not isinstance(OPEN[where], Setting)):
            wrong.append((text, chat.kinds))
    assert not wrong


@pytest.mark.parametrize("where", ["deleting", "leaving", "a question under deleting"])
@pytest.mark.parametrize("language", LANGUAGES)
def test_a_yes_alone_deletes_and_ends_nothing(language: str, where: str) -> None:
    for text in YES[language].split(";"):
        chat = chat_at(language, where).says(text.strip())
        assert not ended(chat) and isinstance(chat.state.asking, Setting), text


@pytest.mark.parametrize(("where", "label"), [("deleting", "forget_yes"), ("leaving", "leave_yes")])
@pytest.mark.parametrize("language", LANGUAGES)
def test_the_very_words_of_the_button_do(language: str, where: str, label: str) -> None:
    assert ended(chat_at(language, where).says(labeller(language)(label, "")))
