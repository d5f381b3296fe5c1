"""The intent of a message that is words rather than a reading.

A lexicon phrase matches the whole message; "pause …" also matches a message that starts with it, "… my coach …" one
that contains it. Whole matches win over prefixes, prefixes over contents. One typo is tolerated in command words, never
in numbers.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import cache

from core.language import ENGLISH, Intent, Lexicon, WordRole, plain
from core.language.cache import memoized
from core.language.days import READ, place, weekday_and_time, when
from core.language.destructive import destroys
from core.language.text import bare_words, near
from core.language.tokens import LONGEST_PHRASE, spellings

__all__ = ["intent_of", "place", "weekday_and_time", "when"]

MORE = "…"
DESTRUCTIVE = frozenset({Intent.LEAVE, Intent.FORGET})  # only whole messages, or `destroys`: no partial match, no typo
CHATTY = 14  # words; in a longer message only the beginning can be an intent
WITH_NUMBERS = frozenset(  # intents that may include a number
    {
        Intent.PAUSE,
        Intent.SLOT,
        Intent.GOAL,
        Intent.LATER,
        Intent.ZONE,
        Intent.COACH,
        Intent.LEAVE,
        Intent.FORGET,
        Intent.UNITS,
        Intent.SETTINGS,
        Intent.PROGRESS,
    }
)


@dataclass
class _IntentTable:
    whole: dict[str, Intent] = field(default_factory=dict)
    starts: dict[str, Intent | None] = field(default_factory=dict)  # None: of what only looks like a shorter one
    inside: dict[str, Intent] = field(default_factory=dict)
    polite: set[str] = field(default_factory=set)


@cache
def _intent_table(words: Lexicon) -> _IntentTable:
    found = _IntentTable()
    for phrase in words.no_intents:
        for spelled in spellings(phrase, words):
            found.starts[" ".join(bare_words(spelled))] = None
    for lexicon in dict.fromkeys((words, ENGLISH)):
        for intent, phrases in lexicon.intents.items():
            for phrase in phrases:
                bare = phrase.strip(MORE + " ")
                if lexicon is not words and bare in words.not_english:
                    continue
                shelf: dict[str, Intent] | dict[str, Intent | None] = found.whole
                if phrase.endswith(MORE) and intent not in DESTRUCTIVE:
                    shelf = found.inside if phrase.startswith(MORE) else found.starts
                for spelled in spellings(bare, lexicon):
                    key = " ".join(bare_words(spelled)) or spelled
                    found.whole.setdefault(key, intent)
                    shelf.setdefault(key, intent)
        for phrase in lexicon.roles.get(WordRole.PLEASE, ()):
            found.polite.update(" ".join(bare_words(s)) for s in spellings(phrase, lexicon))
    return found


@memoized
def intent_of(text: str, words: Lexicon) -> Intent | None:
    """The intent of a message, or None. A message with a number counts only if the intent can include one."""
    table = _intent_table(words)
    folded = plain(text)
    if (sign := table.whole.get(folded.strip())) is not None:
        return sign
    said = bare_words(folded)[:READ]
    if not said:
        return table.whole.get("".join(c for c in folded if not c.isspace())[:1]) if folded else None
    number = any(w[0].isdecimal() for w in said)
    for candidate in dict.fromkeys((" ".join(said), " ".join(_without(said, table.polite)))):
        if (intent := table.whole.get(candidate)) is not None:
            return intent
    if len(said) > 1 and (meant := destroys(text, words, ENGLISH)) is not None:
        return meant
    meaning = _without(said, table.polite) or said
    intent = _beginning(meaning, table.starts) or _beginning(said, table.starts)
    if intent is None and len(said) <= CHATTY:
        intent = _contents(said, table.inside)
    if intent is None and not number and len(meaning) <= 3:
        intent = _nearly(" ".join(meaning), table.whole)
    if number and intent not in WITH_NUMBERS:
        return None
    return intent


def _without(said: Sequence[str], polite: set[str]) -> list[str]:
    """Strip polite words from both ends: "can you please help me" is "help me"."""
    said = list(said)
    changed = True
    while changed and said:
        changed = False
        for size in range(min(4, len(said)), 0, -1):
            if " ".join(said[:size]) in polite:
                said, changed = said[size:], True
                break
            if " ".join(said[-size:]) in polite:
                said, changed = said[:-size], True
                break
    return said


def _beginning(said: Sequence[str], starts: Mapping[str, Intent | None]) -> Intent | None:
    for size in range(min(LONGEST_PHRASE, len(said)), 0, -1):
        if (start := " ".join(said[:size])) in starts:
            return starts[start]
    return None


def _contents(said: Sequence[str], inside: Mapping[str, Intent]) -> Intent | None:
    for size in range(min(LONGEST_PHRASE, len(said)), 0, -1):
        for i in range(len(said) - size + 1):
            if (intent := inside.get(" ".join(said[i : i + size]))) is not None:
                return intent
    return None


def _nearly(said: str, whole: Mapping[str, Intent]) -> Intent | None:
    """The only intent whose phrase is one typo away; None if two differ."""
    sure = ((phrase, intent) for phrase, intent in whole.items() if intent not in DESTRUCTIVE)
    found = {intent for phrase, intent in sure if near(said, phrase)} if 3 < len(said) < 40 else set()
    return found.pop() if len(found) == 1 else None
