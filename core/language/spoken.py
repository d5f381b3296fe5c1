"""Words as they are spoken or texted: dialect, and the small words around what is meant ("und wos is des denn")."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache

from core.language.lexicon import Lexicon
from core.language.text import bare_words, plain


@cache
def _single(phrases: tuple[str, ...]) -> frozenset[str]:
    return frozenset(word for phrase in phrases for word in bare_words(plain(phrase)))


@cache
def _phrases(phrases: tuple[str, ...]) -> tuple[tuple[str, ...], ...]:
    return tuple(tuple(bare_words(plain(phrase))) for phrase in phrases)


@cache
def _dialect(words: Lexicon) -> dict[str, tuple[str, ...]]:
    return {bare_words(plain(said))[0]: tuple(bare_words(plain(meant))) for said, meant in words.dialect.items()}


def in_full(said: Sequence[str], words: Lexicon) -> list[str]:
    """The words with dialect and shorthand written out."""
    table = _dialect(words)
    return [word for spoken in said for word in table.get(spoken, (spoken,))]


def without_fillers(said: Sequence[str], words: Lexicon) -> list[str]:
    """The words without small ones anywhere, and without what may stand before a question."""
    fillers, leads = _single(words.fillers), _single(words.leads)
    start = next((i for i, word in enumerate(said) if word not in leads and word not in fillers), len(said))
    return [word for word in said[start:] if word not in fillers]


def stripped(said: Sequence[str], words: Lexicon) -> list[str]:
    """The words without small ones at both ends."""
    fillers = _single(words.fillers)
    inside = [i for i, word in enumerate(said) if word not in fillers]
    return list(said[inside[0] : inside[-1] + 1]) if inside else []


def opens_a_question(text: str, words: Lexicon) -> bool:
    """Whether a text begins, or ends, as a question does, with or without a question mark: "ja wer ist denn da"."""
    said = without_fillers(in_full(bare_words(plain(text)), words), words)
    if len(said) < 2 or _begins(said, words.no_openers):
        return False
    return _begins(said, words.openers) or said[-1] in _single(words.closers)


def opens_a_statement(said: Sequence[str], words: Lexicon) -> bool:
    """Whether words that might ask for a verdict give one: "c'est bien" without a question mark."""
    return _begins(in_full(said, words), words.statements)


def _begins(said: Sequence[str], phrases: tuple[str, ...]) -> bool:
    return any(phrase and tuple(said[: len(phrase)]) == phrase for phrase in _phrases(phrases))
