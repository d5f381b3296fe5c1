"""Split plain text into tokens and look up each phrase in a language's lexicon."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from decimal import Decimal
from functools import cache
from typing import NamedTuple

from core.language.cache import memoized
from core.language.lexicon import Lexicon, UnitPart, WordRole
from core.language.text import plain
from core.quantity import Unit

D = Decimal
LONGEST_PHRASE = 6  # words
JOINING = "و"  # the Arabic "and", a prefix
MOST_DIGITS = 9  # longer runs of digits are not readings but telephone numbers or typos

_TOKEN = re.compile(
    r"(?P<date>\d{1,2}[./]\d{1,2}[./]\d{4}(?!\d)|\d{4}-\d{2}-\d{2}(?!\d))"
    r"|(?P<ordinal>(?<!\d)(?:[23]?1st|2?2nd|2?3rd|[12]?[4-9]th|1[0-3]th|[23]0th)(?![^\W\d_]))"
    r"|(?P<clock>\d{1,3}:\d{2}(?::\d{2})?(?:[.,]\d{1,3})?(?![\d:]))"
    r"|(?P<number>[.,]?\d+(?:[.,]\d+)*)"
    r"|(?P<word>[^\W\d_]+(?:'[^\W\d_]+)*)"
    r"|(?P<mark>\S)"
)

_CHATTED = re.compile(
    r"(?<![\da-z])(?=[a-z\d]*\d[a-z]|[a-z]{3,}\d)"
    r"(?:[235679]?[a-z]+)(?:[235679][a-z]+)*[235679]?(?![a-z\d])"
)
FEWEST_LETTERS = 2  # of a word with digits for letters; a unit is known by the lexicon


@dataclass(frozen=True, slots=True)
class PhraseEntry:
    """Possible meanings of a phrase."""

    roles: frozenset[WordRole] = frozenset()
    units: tuple[Unit | UnitPart, ...] = ()
    number: Decimal | None = None
    weak: bool = False
    whole: bool = False  # number and unit in one word
    pound: Decimal | None = None
    measures: frozenset[str] = frozenset()
    stage: int | None = None  # of the balance test, from 0

    def joined(self, other: PhraseEntry) -> PhraseEntry:
        return PhraseEntry(
            self.roles | other.roles,
            tuple(dict.fromkeys(self.units + other.units)),
            other.number if self.number is None else self.number,
            self.weak or other.weak,
            self.whole or other.whole,
            other.pound if self.pound is None else self.pound,
            self.measures | other.measures,
            other.stage if self.stage is None else self.stage,
        )


UNKNOWN = PhraseEntry()


class Token(NamedTuple):
    """A piece of the text.

    digits: the number as typed, if it was written in digits.  clock: "7:30" as (7, 30).  glued: no space before.
    """

    text: str
    start: int
    end: int
    glued: bool
    entry: PhraseEntry = UNKNOWN
    digits: str = ""
    clock: tuple[Decimal, ...] = ()
    junk: bool = False
    word: bool = False

    def has(self, role: WordRole) -> bool:
        return role in self.entry.roles


@dataclass(frozen=True, eq=False)
class CompiledLexicon:
    """A language's phrases, plus the English ones that do not clash."""

    words: Lexicon
    phrases: dict[str, PhraseEntry] = field(default_factory=dict)

    def entry(self, phrase: str) -> PhraseEntry | None:
        return self.phrases.get(phrase)


@cache
def lexicon(words: Lexicon, english: Lexicon | None = None) -> CompiledLexicon:
    """The compiled lexicon of a language; built once."""
    own: dict[str, PhraseEntry] = {}
    for phrase, entry in _entries(words):
        for spelled in spellings(phrase, words):
            own[spelled] = own[spelled].joined(entry) if spelled in own else entry
    if english is not None and english is not words:
        own = {**{p: e for p, e in lexicon(english).phrases.items() if p not in words.not_english}, **own}
    return CompiledLexicon(words, own)


def spellings(phrase: str, words: Lexicon) -> Iterator[str]:
    """Yield the plain spellings of a lexicon phrase."""
    folded = plain(phrase)
    yield folded
    if words.umlauts and folded != phrase.casefold():
        yield plain(phrase.casefold().replace("ä", "ae").replace("ö", "oe").replace("ü", "ue"))
    if "'" in folded and len(folded) > 1:
        yield folded.replace("'", "")


def _entries(words: Lexicon) -> Iterable[tuple[str, PhraseEntry]]:
    for phrase, value in words.numbers.items():
        yield phrase, PhraseEntry(number=D(value), weak=phrase in words.weak)
    for unit, phrases in words.units.items():
        for phrase in phrases:
            yield phrase, PhraseEntry(units=(unit,))
    for part, phrases in words.parts.items():
        for phrase in phrases:
            yield phrase, PhraseEntry(units=(part,))
    for phrase, (count, measure) in words.amounts.items():
        yield phrase, PhraseEntry(number=D(count), units=(measure,), whole=True)
    for phrase, kilograms in words.local_pound.items():
        yield phrase, PhraseEntry(pound=kilograms)
    for role, phrases in words.roles.items():
        for phrase in phrases:
            yield phrase, PhraseEntry(roles=frozenset({role}))
    for key, phrases in words.names.items():
        for phrase in phrases:
            yield phrase, PhraseEntry(measures=frozenset({key}))
    for stage, phrases in enumerate(words.balance_stages):
        for phrase in phrases:
            yield phrase, PhraseEntry(stage=stage)
    yield "'", PhraseEntry(units=(Unit.FOOT, Unit.MINUTE))
    yield '"', PhraseEntry(units=(Unit.INCH, Unit.SECOND))
    yield "%", PhraseEntry(roles=frozenset({WordRole.FOREIGN}))


@memoized
def tokens(text: str, lexicon: CompiledLexicon) -> tuple[Token, ...]:
    """Split `text` (already plain); the longest known phrase wins. Linear in the length of the text."""
    pieces = list(_TOKEN.finditer(text))
    found: list[Token] = []
    i = 0
    while i < len(pieces):
        piece = pieces[i]
        glued = piece.start() > 0 and text[piece.start() - 1] != " "
        kind = piece.lastgroup
        if lexicon.words.prefixes and (chatted := _chatted(text, piece.start(), lexicon)):
            end = piece.start() + len(chatted)
            found.append(Token(chatted, piece.start(), end, glued, word=True))
            while i < len(pieces) and pieces[i].start() < end:
                i += 1
            continue
        if kind == "word":
            size, entry, rest = _longest(pieces, i, lexicon)
            last = pieces[i + size - 1]
            if rest and text[piece.start()] in JOINING:  # "and" attached to the next word
                cut = piece.start() + len(piece.group()) - len(rest)
                found.append(Token(text[piece.start() : cut], piece.start(), cut, glued, _AND, word=True))
                found.append(Token(rest, cut, last.end(), True, entry, word=True))
            else:
                found.append(
                    Token(text[piece.start() : last.end()], piece.start(), last.end(), glued, entry, word=True)
                )
            i += size
            continue
        found.append(_piece(piece, glued, lexicon))
        i += 1
    return tuple(found)


def _chatted(text: str, start: int, lexicon: CompiledLexicon) -> str:
    """An Arabic word in Latin letters, with digits for what they lack: "3andi" is no three. "" if there is none."""
    found = _CHATTED.match(text, start)
    if found is None:
        return ""
    word = found.group()
    letters = word.strip("0123456789")
    known = any(lexicon.entry(part) is not None for part in (word[1:], letters))
    return "" if known or sum(c.isalpha() for c in word) < FEWEST_LETTERS else word


_AND = PhraseEntry(roles=frozenset({WordRole.AND}))


def _longest(pieces: list[re.Match[str]], i: int, lexicon: CompiledLexicon) -> tuple[int, PhraseEntry, str]:
    best, entry, rest = 1, UNKNOWN, ""
    phrase = ""
    for size in range(1, LONGEST_PHRASE + 1):
        if i + size > len(pieces) or pieces[i + size - 1].lastgroup != "word":
            break
        if size > 1 and pieces[i + size - 1].start() != pieces[i + size - 2].end() + 1:
            break
        phrase = f"{phrase} {pieces[i + size - 1].group()}" if phrase else pieces[i].group()
        known = lexicon.entry(phrase)
        if known is not None:
            best, entry, rest = size, known, ""
            continue
        for prefix in lexicon.words.prefixes:
            bare = phrase.removeprefix(prefix)
            if bare == phrase or (known := lexicon.entry(bare)) is None:
                continue
            if known.number is None or prefix == JOINING:  # "al-ithnayn" is Monday, not two
                best, entry, rest = size, known, bare
    return best, entry, rest


def _piece(piece: re.Match[str], glued: bool, lexicon: CompiledLexicon) -> Token:
    typed = piece.group()
    start, end = piece.span()
    match piece.lastgroup:
        case "number":
            number = figure(typed)
            if number is None:
                return Token(typed, start, end, glued, junk=True)
            return Token(typed, start, end, glued, PhraseEntry(number=number), digits=typed)
        case "clock":
            return Token(typed, start, end, glued, clock=tuple(D(p.replace(",", ".")) for p in typed.split(":")))
        case "mark":
            return Token(typed, start, end, glued, lexicon.entry(typed) or UNKNOWN)
        case _:
            return Token(typed, start, end, glued)  # a date or an ordinal is not a reading


def figure(digits: str, thousands: bool = False) -> Decimal | None:
    """Parse a number in digits; None if the text is not a single number ("1.2.3", a telephone number).

    A single mark of either kind is the decimal mark: no reading here reaches a thousand, so "82,400" kilograms is 82.4.
    With `thousands`, for counts and minutes, a mark followed by three digits is a grouping mark: "1,200" is 1200. Two
    different marks: the last is the decimal one. The same mark twice groups thousands.

    >>> figure("82,4"), figure("1.234,5"), figure("1,200", thousands=True), figure("1.2.3")
    (Decimal('82.4'), Decimal('1234.5'), Decimal('1200'), None)
    """
    if len(digits) > MOST_DIGITS + 4:
        return None
    marks = [c for c in digits if c in ".,"]
    if not marks:
        return D(digits) if len(digits) <= MOST_DIGITS else None
    groups = digits.replace(",", ".").split(".")
    if len(marks) == 1:
        if thousands and len(groups[1]) == 3 and 1 <= len(groups[0]) <= 3 and groups[0] != "0":
            return D(groups[0] + groups[1])
        return D(f"{groups[0] or 0}.{groups[1]}")
    grouping, decimal = marks[0], marks[-1]
    whole, fraction = (groups[:-1], groups[-1]) if decimal != grouping else (groups, "")
    if any(m != grouping for m in marks[:-1]) or not whole[0] or any(len(g) != 3 for g in whole[1:]):
        return None
    return D("".join(whole) + (f".{fraction}" if fraction else ""))
