"""Groups of words that a clause may hold, as data: "a|b_c" is the word a or the words b c, "sav*" any word that begins
so. A line joins several groups by &."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache

from core.language.text import bare_words, plain


@cache
def group_of(listed: str) -> str:
    """The group of phrases that are listed between commas."""
    return "|".join("_".join(phrase.split()) for phrase in listed.split(",") if phrase.strip())


@cache
def groups_of(line: str) -> tuple[str, ...]:
    """The groups of a line, between &."""
    return tuple(group.strip() for group in line.split("&"))


@cache
def phrases_of(group: str) -> tuple[tuple[str, ...], ...]:
    """The phrases of one group, folded; each is at least one word, a trailing * matches any ending."""
    found = []
    for phrase in group.split("|"):
        parts = []
        for part in phrase.strip().split("_"):
            bare = bare_words(plain(part.rstrip("*")))
            parts += [*bare[:-1], *(w + "*" * part.endswith("*") for w in bare[-1:])]
        if parts:
            found.append(tuple(parts))
    return tuple(found)


def holds(said: Sequence[str], group: str) -> bool:
    """Whether the words hold one of the group's phrases."""
    return place_of(said, group) is not None


def place_of(said: Sequence[str], group: str) -> int | None:
    """The position of the group's first phrase."""
    return next((i for phrase in phrases_of(group) for i in range(len(said)) if stands_at(said, i, phrase)), None)


def stands_at(said: Sequence[str], i: int, phrase: Sequence[str]) -> bool:
    """Whether a phrase begins at a position of the words."""
    if i + len(phrase) > len(said):
        return False
    return all(_same(word, part) for word, part in zip(said[i : i + len(phrase)], phrase, strict=True))


def _same(word: str, part: str) -> bool:
    return word.startswith(part[:-1]) if part.endswith("*") else word == part
