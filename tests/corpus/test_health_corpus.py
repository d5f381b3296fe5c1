"""Floors for what is understood of health remarks: raise them with the recogniser, never lower them."""

from __future__ import annotations

import pytest

from core.language import words_for
from core.understanding.health_facts import health_in
from tests.corpus.meant import LANGUAGES, health, lines


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("half", ["tune", "held"])
def test_most_facts_are_found_and_nearly_nothing_is_made_up(language: str, half: str) -> None:
    score = health(language, half)
    assert score.right["found"] >= (0.95 if half == "tune" else 0.65) * score.counts["found"]
    assert score.counts["left alone"] - score.right["left alone"] <= (0 if half == "tune" else 1)


@pytest.mark.parametrize("language", LANGUAGES)
def test_sentences_about_numbers_and_leaving_hold_no_fact(language: str) -> None:
    said = [line[-1] for name in ("numbers", "destructive") for line in lines(language, name, "tune")]
    assert [sentence for sentence in said if health_in(sentence, words_for(language)).facts] == []
