"""The English a client reads: US grade 6 or lower, a reply of at most 60 words."""

from __future__ import annotations

import pytest

from bot.rendering.readability import GRADE, LONGER, LONGER_WORDS, WORDS, Graded, grade, graded, replies, to_clients

LONG_NAMES = {kind.__name__ for kind in LONGER}
CARD_WORDS = 170  # a card is a list, followed step by step


def test_the_grade_is_flesch_and_kincaids() -> None:
    """0.39 * 13 + 11.8 * 26 / 13 - 15.59 = 13.08 for 13 words of 26 syllables in one sentence."""
    text = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature."
    assert grade(text) == pytest.approx(11.3, abs=2.0)  # counters differ by a syllable or two
    assert grade("The cat sat on the mat.") < 0


def test_every_text_for_a_client_reads_at_grade_6_or_lower() -> None:
    hard = [g for g in graded((*to_clients(), *replies())) if g.grade > GRADE]
    assert hard == []


def limit(found: Graded) -> int:
    if found.name == "Card":
        return CARD_WORDS
    return LONGER_WORDS if found.name in LONG_NAMES else WORDS


def test_no_text_is_longer_than_it_should_be() -> None:
    long = [g for g in graded((*to_clients(), *replies())) if g.words > limit(g)]
    assert long == []


def test_whole_replies_are_among_them() -> None:
    found = list(graded(replies()))
    assert len(found) > 50
    assert max(g.words for g in found) > 45
