"""Whether a sentence unmistakably asks to leave the programme, or to have everything deleted.

A destructive request must be unmistakable: "forget it", "don't forget me" and "leave the weight out" are everyday talk.
So a single word is never enough: an action (delete, quit) must apply to everything (my data, the programme), in one
clause, not negated, asked or conditional, and not about a part ("delete the last number").
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import cache

from core.language.lexicon import Destroys, Intent, Lexicon
from core.language.text import bare_words, plain

_CLAUSE = re.compile(r"[,;.!()\n]+")
Numbered = tuple[int, tuple[str, ...]]  # a phrase and its place in the group
LONGEST = 40  # words; a longer message tells a story


def destroys(text: str, words: Lexicon, english: Lexicon) -> Intent | None:
    """FORGET, LEAVE, or None if it is not unmistakably either."""
    folded = plain(text)
    if "?" in folded or len(folded.split()) > LONGEST:
        return None
    spoken = bare_words(folded)
    for lexicon in dict.fromkeys((words, english)):
        whole, begun = _actions(lexicon)
        if whole.isdisjoint(spoken) and not any(word.startswith(begun) for word in spoken):
            continue  # as with nearly every message
        for clause in _CLAUSE.split(folded):
            said = bare_words(clause)
            no = f"{lexicon.destroys.no}|{words.destroys.no}"  # "quitter" starts like "quit": negated by "pas"
            if (found := _clause(said, lexicon.destroys, no)) is not None:
                return found
    return None


@cache
def _actions(lexicon: Lexicon) -> tuple[frozenset[str], tuple[str, ...]]:
    """The first words of everything that deletes or leaves: whole ones, and the beginnings of those with any ending."""
    lines = (*lexicon.destroys.forget, *lexicon.destroys.leave)
    first = {phrase[0] for line in lines for phrase in _patterns(_groups(line)[0])}
    begun = tuple(word[:-1] for word in first if word.endswith("*"))
    return frozenset(word for word in first if not word.endswith("*")), begun


def _clause(said: Sequence[str], data: Destroys, no: str) -> Intent | None:
    if not said or _holds(said, data.if_):
        return None
    if not _holds(said, data.partly) and _any(said, data.forget, no):
        return Intent.FORGET
    return Intent.LEAVE if _any(said, data.leave, no) else None


def _any(said: Sequence[str], lines: Sequence[str], no: str) -> bool:
    for line in lines:
        does, *to = _groups(line)
        at = _place(said, does)
        if at is None or not all(_holds(said, group) for group in to):
            continue
        if line.startswith("!") or not _denied(said, at, no):
            return True
    return False


def _denied(said: Sequence[str], at: int, no: str) -> bool:
    """Whether a "no" precedes the action, directly follows it ("supprime pas"), or at the very end ("lösche sie bitte
    nicht")."""
    return _holds([*said[:at], *said[at + 1 : at + 3]], no) or _holds(said[-1:], no)


@cache
def _groups(line: str) -> tuple[str, ...]:
    return tuple(group.strip() for group in line.lstrip("!").split("&"))


@cache
def _patterns(group: str) -> tuple[tuple[str, ...], ...]:
    """The phrases of one group, folded; a trailing * matches any ending."""
    found = []
    for phrase in group.split("|"):
        parts = []
        for part in phrase.strip().split("_"):
            bare = bare_words(plain(part.rstrip("*")))
            parts += [*bare[:-1], *(w + "*" * part.endswith("*") for w in bare[-1:])]
        if parts:
            found.append(tuple(parts))
    return tuple(found)


def _holds(said: Sequence[str], group: str) -> bool:
    return _place(said, group) is not None


def _place(said: Sequence[str], group: str) -> int | None:
    """The position of the group's first phrase."""
    whole, begun, endings = _by_first_word(group)
    found: tuple[int, int] | None = None
    for i, word in enumerate(said):
        candidates = whole.get(word, ())
        if word.startswith(endings):
            candidates = (*candidates, *(c for start, c in begun if word.startswith(start)))
        for number, phrase in candidates:
            there = said[i : i + len(phrase)]
            if len(there) == len(phrase) and all(map(_same, there, phrase)) and (found is None or (number, i) < found):
                found = number, i
    return None if found is None else found[1]


@cache
def _by_first_word(
    group: str,
) -> tuple[dict[str, tuple[Numbered, ...]], tuple[tuple[str, Numbered], ...], tuple[str, ...]]:
    """A group's phrases by their first word; those whose first word may have any ending; how these begin."""
    whole: dict[str, tuple[Numbered, ...]] = {}
    begun: list[tuple[str, Numbered]] = []
    for number, phrase in enumerate(_patterns(group)):
        first = phrase[0]
        if first.endswith("*"):
            begun.append((first[:-1], (number, phrase)))
        else:
            whole[first] = (*whole.get(first, ()), (number, phrase))
    return whole, tuple(begun), tuple(start for start, _ in begun)


def _same(word: str, part: str) -> bool:
    return word.startswith(part[:-1]) if part.endswith("*") else word == part
