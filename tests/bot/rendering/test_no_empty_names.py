"""No sentence is ever rendered with an empty name: every message that takes one, with none, in every language."""

from __future__ import annotations

import dataclasses
import re
from collections.abc import Iterator
from typing import Any

import pytest

from bot.rendering import Reader, render
from bot.rendering.phrases.labels import label
from bot.rendering.samples import ordinary
from bot.rendering.voice import voice
from core.dialogue.kit.effects import Choice
from core.language import LANGUAGES

NAMES = frozenset({"coach", "name", "new", "old", "by", "cohort", "detail"})
EMPTY = re.compile(r"<b></b>|\( *\)|“”|^[,;.:]| [,.;:!?](?!\d)|  |\u2068\u2069", re.MULTILINE)
FRENCH = re.compile(r" (?=[;:!?])")  # a space belongs there


def nameless() -> Iterator[Any]:
    """Each sample with a name, with that name empty."""
    for message in ordinary():
        if not dataclasses.is_dataclass(message):
            continue
        for field in dataclasses.fields(message):
            if field.name in NAMES and isinstance(getattr(message, field.name), str):
                yield dataclasses.replace(message, **{field.name: ""})  # type: ignore[type-var]


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_sentence_has_a_hole_where_a_name_should_be(language: str) -> None:
    messages = list(nameless())
    assert len({type(message) for message in messages}) > 30
    wrong = []
    for message in messages:
        said = render(message, (), Reader(language)).text
        text = FRENCH.sub("", said) if language == "fr" else said
        if EMPTY.search(text):
            wrong.append(said)
    assert wrong == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_button_to_nobody_has_a_word_for_the_coach(language: str) -> None:
    of = voice(Reader(language))
    assert of.coach("") in label(of, Choice("word_to_coach", "word", ""))
