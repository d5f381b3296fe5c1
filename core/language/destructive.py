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
from core.language.word_groups import groups_of, holds, phrases_of, place_of

_CLAUSE = re.compile(r"[,;.!()\n]+")
LONGEST = 40  # words; a longer message tells a story


def destroys(text: str, words: Lexicon, english: Lexicon) -> Intent | None:
    """FORGET, LEAVE, or None if it is not unmistakably either."""
    folded = plain(text)
    if "?" in folded or len(folded.split()) > LONGEST:
        return None
    for lexicon in dict.fromkeys((words, english)):
        for clause in _CLAUSE.split(folded):
            said = bare_words(clause)
            no = f"{lexicon.destroys.no}|{words.destroys.no}"  # "quitter" starts like "quit": negated by "pas"
            if (found := _clause(said, lexicon.destroys, no)) is not None:
                return found
    return None


def _clause(said: Sequence[str], data: Destroys, no: str) -> Intent | None:
    words, beginnings = _begin(data)
    if not any(word in words or word.startswith(beginnings) for word in said) or holds(said, data.if_):
        return None
    if not holds(said, data.partly) and _any(said, data.forget, no):
        return Intent.FORGET
    return Intent.LEAVE if _any(said, data.leave, no) else None


def _any(said: Sequence[str], lines: Sequence[str], no: str) -> bool:
    for line in lines:
        does, *to = groups_of(line.lstrip("!"))
        at = place_of(said, does)
        if at is None or not all(holds(said, group) for group in to):
            continue
        if line.startswith("!") or not _denied(said, at, no):
            return True
    return False


@cache
def _begin(data: Destroys) -> tuple[frozenset[str], tuple[str, ...]]:
    """What an action begins with: whole words, and beginnings of words. Hardly any sentence has one."""
    actions = [groups_of(line.lstrip("!"))[0] for line in (*data.forget, *data.leave)]
    first = [phrase[0] for action in actions for phrase in phrases_of(action)]
    return frozenset(first), tuple(part[:-1] for part in first if part.endswith("*"))


def _denied(said: Sequence[str], at: int, no: str) -> bool:
    """Whether a "no" precedes the action, directly follows it ("supprime pas"), or at the very end ("lösche sie bitte
    nicht")."""
    return holds([*said[:at], *said[at + 1 : at + 3]], no) or holds(said[-1:], no)
