"""Everyday questions are told apart, and everyday answers are not taken for questions."""

from __future__ import annotations

import pytest

from core.language import LANGUAGES
from core.language.lexicon import Question
from core.language.questions import asked
from tests.core.dialogue.everyday_questions import ASKED
from tests.core.understanding.ways_of_writing import CORPUS

CASES = [(language, text, meant) for language, table in ASKED.items() for text, meant in table.items()]


@pytest.mark.parametrize(("language", "text", "meant"), CASES)
def test_an_everyday_question_is_recognised(language, text, meant):
    found = asked(text, LANGUAGES[language], "Rowan")
    assert (found.question if found else None) == meant


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_language_has_words_for_each_question(language):
    assert [q for q in Question if not LANGUAGES[language].questions.get(q)] == []


def test_there_are_sixty_in_english_and_ten_and_more_in_each_language():
    assert len(ASKED["en"]) >= 60 and all(len(ASKED[language]) >= 10 for language in LANGUAGES)


@pytest.mark.parametrize(
    "text",
    [
        "82.4",
        "my weight is up, 83.2",
        "it is good",
        "7, slept well",
        "waist 94 hip 102",
        "I want to lose weight",
        "about 82 I think",
        "that is right",
        "why",
        "next",
        "my doctor says it is fine, 128/82",
        "not today",
        "how do I measure my waist",
        "I'm in Lisbon until Monday",
        "stop",
        "forget me",
    ],
)
def test_an_answer_or_a_command_is_no_everyday_question(text):
    assert asked(text, LANGUAGES["en"], "Rowan") is None


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_way_of_writing_a_reading_is_a_question(language):
    lines = [line for line in CORPUS[language].splitlines() if "→" in line]
    texts = [line.partition(":")[2].rpartition("→")[0].strip() for line in lines if "→ ask" not in line]
    found = {text: one.question for text in texts if (one := asked(text, LANGUAGES[language], "Rowan")) is not None}
    assert found == {}
