"""Floors for what is understood of health remarks: raise them with the recogniser, never lower them."""

from __future__ import annotations

import pytest

from tests.corpus.meant import LANGUAGES, health


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("half", ["tune", "held"])
def test_most_facts_are_found_and_nearly_nothing_is_made_up(language: str, half: str) -> None:
    score = health(language, half)
    found = score.right["fact"] + score.right["asked"]
    facts = score.counts["fact"] + score.counts["asked"]
    assert found >= (0.95 if half == "tune" else 0.75) * facts
    assert score.counts["nothing"] - score.right["nothing"] <= (0 if half == "tune" else 1)
