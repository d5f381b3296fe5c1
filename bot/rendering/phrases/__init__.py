"""Phrases: one function per message of `core.dialogue`, by theme.

    @phrase(messages.Skipped)
    def skipped(said: messages.Skipped, v: Voice) -> str: ...

Style: short, warm, plain words (US grade 6 or lower); the person first; no blame, and never "invalid"; no
praise of a number going down; a number with its unit; whole sentences in the catalogue. A date stands after a colon,
because other languages decline it.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from importlib import import_module
from typing import Any, TypeVar

from bot.rendering.voice import Voice

M = TypeVar("M")
Phrase = Callable[[Any, Voice], str]

PHRASES: dict[type, Phrase] = {}

MODULES = (
    "arriving",
    "checkin",
    "results",
    "understanding",
    "everyday",
    "weighing",
    "safety",
    "counting",
    "pressure",
    "life",
    "health",
    "goals",
    "programme",
    "looking_back",
    "coach",
    "staff",
    "staff_card",
    "staff_digest",
    "practice",
    "staff_history",
    "staff_names",
    "staff_deputy",
    "staff_talk",
    "cohort",
    "cohort_members",
)


def phrase(kind: type[M]) -> Callable[[Callable[[M, Voice], str]], Callable[[M, Voice], str]]:
    """Register the phrase of one message class."""

    def register(function: Callable[[M, Voice], str]) -> Callable[[M, Voice], str]:
        if kind in PHRASES:
            raise ValueError(f"{kind.__name__} already has a phrase")
        PHRASES[kind] = function
        return function

    return register


def phrase_for(kind: type) -> Phrase:
    """The phrase of a message class. Raises: KeyError if it has none; a test checks that all do."""
    load()
    return PHRASES[kind]


@cache
def load() -> None:
    """Import every module of phrases. Other parts may register their own."""
    for name in MODULES:
        import_module(f"bot.rendering.phrases.{name}")
