"""Low blood sugar: sugar comes before the number to call, with the figures of the source."""

from __future__ import annotations

import pytest

from bot.foundation.reader import Reader
from bot.rendering import render
from core.dialogue.client import messages as m
from core.language import LANGUAGES
from core.references import low_sugar

SUGAR = {"en": "sugar", "es": "azúcar", "de": "zucker", "fr": "sucre", "pl": "cukier", "ar": "السكر"}


@pytest.mark.parametrize("message", [m.Emergency, m.EmergencyNearby])
@pytest.mark.parametrize("language", LANGUAGES)
def test_sugar_is_named_before_the_number_to_call(language: str, message: type) -> None:
    text = render(message("low_sugar", "999"), (), Reader(language)).text.casefold()
    assert 0 <= text.index(SUGAR[language]) < text.index("999")
    assert str(low_sugar.BETTER_WITHIN) in text


def test_the_tablets_of_the_source_are_said() -> None:
    text = render(m.Emergency("low_sugar", "999"), (), Reader("en")).text
    assert "{} to {} glucose tablets".format(*low_sugar.GLUCOSE_TABLETS) in text


def test_any_other_emergency_begins_with_the_call() -> None:
    assert render(m.Emergency("chest_pain", "999"), (), Reader("en")).text.startswith("Please stop now")
