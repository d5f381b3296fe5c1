"""The words: one function for each message of `core.dialogue`, by theme.

    @phrase(messages.Skipped)
    def skipped(said: messages.Skipped, v: Voice) -> str: ...

How it is written: short, warm, plain words (US grade 6 or lower); the person first; no blame and never "invalid"; no
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
    "weighing",
    "safety",
    "counting",
    "pressure",
    "life",
    "goals",
    "coach",
    "staff",
    "staff_card",
    "staff_digest",
    "cohort",
    "cohort_members",
)


def phrase(kind: type[M]) -> Callable[[Callable[[M, Voice], str]], Callable[[M, Voice], str]]:
    """Register the words of one message class."""

    def register(function: Callable[[M, Voice], str]) -> Callable[[M, Voice], str]:
        if kind in PHRASES:
            raise ValueError(f"{kind.__name__} has words already")
        PHRASES[kind] = function
        return function

    return register


def phrase_for(kind: type) -> Phrase:
    """The words of a message class. Raises: KeyError when it has none: a fault of ours, found by a test."""
    load()
    return PHRASES[kind]


@cache
def load() -> None:
    """Import every module of phrases; other parts may register theirs as well."""
    for name in MODULES:
        import_module(f"bot.rendering.phrases.{name}")
