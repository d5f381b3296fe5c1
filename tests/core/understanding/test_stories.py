"""A number inside a sentence about something else is not stored without asking."""

from __future__ import annotations

import pytest

from core.language import LANGUAGES
from core.language.lexicon import Lexicon
from core.understanding.stories import tells
from tests.corpus.meant import numbers

ENGLISH: Lexicon = LANGUAGES["en"]


@pytest.mark.parametrize(
    "said",
    [
        "I lifted 60 kg",
        "bought 5 kg of potatoes",
        "weighed my husband, 90",
        "my granddaughter turned 8",
        "bus 42 was late",
    ],
)
def test_a_story_is_told_from_an_answer(said: str) -> None:
    assert tells(said, ENGLISH)


@pytest.mark.parametrize(
    "said", ["82.4", "scales say 82.4", "this morning it's 82.4 kg, slept badly", "about 82", "monday 7"]
)
def test_an_answer_with_remarks_is_no_story(said: str) -> None:
    assert not tells(said, ENGLISH)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("half", ["tune", "held"])
def test_what_strangers_wrote_that_is_no_answer_is_rarely_stored(language: str, half: str) -> None:
    score = numbers(language, half)
    assert score.right["no answer"] * 100 >= 80 * score.counts["no answer"]
