"""Chatter against every measure: a number in a sentence about something else is never stored without asking."""

from __future__ import annotations

from dataclasses import replace

import pytest

from core.dialogue.client import effects as e
from core.dialogue.client.states import Awaiting
from core.language import LANGUAGES
from core.measures import MEASURES
from tests.builders import ADA, Chat, Plan
from tests.core.dialogue.chatter import said_in

ASKED = tuple(key for key, measure in MEASURES.items() if measure.understand is not None)
EVERYTHING = replace(ADA, plan=Plan(measures=ASKED))


def stored(language: str, key: str, text: str) -> list[str]:
    chat = Chat(replace(EVERYTHING, language=language))
    chat.state = replace(chat.state, asking=Awaiting(key), day=chat.now.date())
    chat.says(text)
    return [f"{text!r} to {key}: {x.reading.measure}={x.reading.value}" for x in chat.did(e.Record)]


@pytest.mark.parametrize("key", ASKED)
@pytest.mark.parametrize("language", LANGUAGES)
def test_no_chatter_is_stored_whatever_is_asked(language: str, key: str) -> None:
    assert [line for text in said_in(language) for line in stored(language, key, text)] == []
