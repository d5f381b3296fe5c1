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
from core.language.lexicon import split
from core.language.spoken import in_full, stripped
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
    full = in_full(said, words)
    bare = stripped(full, words)
    polite = table.polite
    ways = (said, _without(said, polite), full, _without(full, polite), bare, _without(bare, polite))
    for candidate in dict.fromkeys(" ".join(way) for way in ways if way):
        if (intent := table.whole.get(candidate)) is not None:
            return intent
    for candidate in _after_hesitation(said, words):
        if (intent := table.whole.get(candidate)) in HESITANT_ANSWERS:
            return intent
    if len(said) > 1 and (meant := destroys(text, words, ENGLISH)) is not None:
        return meant
    meaning = _without(said, table.polite) or said
    intent = _beginning(meaning, table.starts) or _beginning(said, table.starts) or _beginning(bare, table.starts)
    if intent is Intent.YES and _supposes(text, said, words):
        intent = None
    if intent is None and len(said) <= CHATTY:
        intent = _contents(said, table.inside) or _contents(full, table.inside)
    if intent is None and not number and len(meaning) <= 3:
        intent = _nearly(" ".join(meaning), table.whole)
    if number and intent not in WITH_NUMBERS:
        return None
    return intent


IF_NOT_YES = {  # where "yes" is also "if" once the accent is left out: what may follow a yes
    "es": (
        "si",
        split(
            "claro;por favor;por supuesto;vale;gracias;acepto;adelante;todo;muy;perfecto;señor;señora;bien;ya;igual;"
            "de acuerdo;encantada;encantado;ok;mujer;hombre;hija;hijo;si;con gusto;sin problema;me siento;me encuentro;"
            "me parece;me va bien;me viene bien;me gustaría;me interesa;estoy bien;estoy de acuerdo;estoy lista;"
            "estoy listo;lo quiero;lo acepto;quiero empezar;quiero participar;quiero seguir;desde luego;eso;así"
        ),
    ),
}


def _supposes(text: str, said: Sequence[str], words: Lexicon) -> bool:
    """Whether a "yes" at the beginning is an "if": "si me canso lo dejo" consents to nothing."""
    if words.code not in IF_NOT_YES:
        return False
    word, follow = IF_NOT_YES[words.code]
    start = text.strip()
    if said[0] != word or len(said) < 3 or start[:2].casefold() != word or start[2:3] in (",", ".", "!", ";", ":"):
        return False  # "sí" with its accent, or with a comma
    rest = " ".join(said[1:])
    return not any((rest + " ").startswith(" ".join(bare_words(plain(p))) + " ") for p in follow)


HESITANT_ANSWERS = frozenset({Intent.YES, Intent.NO, Intent.LATER, Intent.SKIP})
HESITATING = {  # what people begin with before they answer; taken off the front only: "muy bueno" is no "muy"
    "en": "well oh ok okay so hm hmm um er ah right",
    "es": "pues bueno bien mira mire oye uy ay ah eh hm hmm hombre vale venga ya",
    "de": "na naja ja also ach tja hm hmm ok okay nun gut",
    "fr": "bon ben bah alors euh ah hm hmm oh ok eh bien",
    "pl": "no dobra dobrze a ale oj ojej hm hmm ok okej to wiec coz",
    "ar": "طيب يعني والله اه ايوه اوكي اوك تمام ماشي يلا خلص",
}


def _after_hesitation(said: Sequence[str], words: Lexicon) -> list[str]:
    """What is left after "well," and "oh,": "bueno pues por mí bien" is "por mí bien"; shortest cut last."""
    small = _hesitating(words.code)
    first = next((i for i, word in enumerate(said) if word not in small), len(said) - 1)
    return [" ".join(said[i:]) for i in range(first, 0, -1)]


@cache
def _hesitating(code: str) -> frozenset[str]:
    return frozenset(w for word in HESITATING[code].split() for w in bare_words(plain(word)))


@memoized
def in_passing(text: str, words: Lexicon) -> bool:
    """Whether the intent of a message stands in the middle of it: "my coach is rude" names the coach, and asks for
    nobody."""
    table = _intent_table(words)
    said = bare_words(plain(text))[:READ]
    if " ".join(said) in table.whole or " ".join(_without(said, table.polite)) in table.whole:
        return False
    meaning = _without(said, table.polite) or said
    return _beginning(meaning, table.starts) is None and _beginning(said, table.starts) is None


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
