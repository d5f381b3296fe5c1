"""A small part of `python -m tests.corpus fuzz`, which reads 200,000 texts."""

from __future__ import annotations

import pytest

from core.language import words_for
from core.measures import MEASURES
from tests.corpus.fuzz import fuzz, read

ONCE_RAISED = [
    ("en", "weight", "11 stone and a half"),
    ("en", "height", "5 foot and a half"),
    ("en", "weight", "11st ½"),
]


def test_nothing_typed_raises() -> None:
    assert fuzz(1500) == []


@pytest.mark.parametrize(("language", "key", "text"), ONCE_RAISED)
def test_what_once_raised_is_read(language: str, key: str, text: str) -> None:
    read(text, words_for(language), MEASURES[key], list(MEASURES.values()))
