"""Find the phrases of a concept table in a text: folded, inflected, with a slip of the hand and small words between."""

from __future__ import annotations

import re
from collections.abc import Hashable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Generic, TypeVar

from core.language.lexicon import Lexicon
from core.language.text import near
from core.language.tokens import JOINING, spellings

READ = 400  # words of a message; the platform's longest message holds about 800, nearly all far fewer
WIDE = 3  # words that ".." may stand for
MANY_WORDS = 3  # from which a phrase may hold a word more than the table says
LONG = 10  # letters from which two slips are forgiven
POSSESSIVE = 4  # letters from which an English "s" at the end may be "is", "has" or "'s"
CRIED = 3  # words and marks of a cry
HARD = frozenset(".!?;")
GAP = -1

_PIECE = re.compile("!!+|[^\\W_]+|[.!?;,:()\\-]|[\U0001f300-\U0001faff\u2620-\u26ff]")
_DRAWN_OUT = re.compile(r"([^\W\d_])\1{2,}")  # "heeelp"
_SAME_SOUND = str.maketrans({"ث": "ت", "ذ": "د", "ظ": "ض", "ء": None})  # Arabic dialects write one for the other

Span = tuple[int, int]  # words from, to; the second one not included
K = TypeVar("K", bound=Hashable)
Phrase = tuple[int, ...]


@dataclass(eq=False)
class Table(Generic[K]):
    """The phrases of one language, compiled. fillers: the stems that may stand anywhere."""

    words: Lexicon
    exact: dict[str, int] = field(default_factory=dict)
    starts: dict[str, list[tuple[str, int]]] = field(default_factory=dict)  # by their first two letters
    holds: list[tuple[str, int]] = field(default_factory=list)
    whole: dict[tuple[str, int], list[tuple[str, int]]] = field(default_factory=dict)  # by first letter and length
    open: dict[str, list[tuple[str, int]]] = field(default_factory=dict)  # those with a "*", by first letter
    phrases: dict[int, list[tuple[K, Phrase]]] = field(default_factory=dict)  # by their first stem
    fillers: set[int] = field(default_factory=set)
    negative: set[int] = field(default_factory=set)  # stems that say "no": never passed over
    strict: frozenset[K] = frozenset()  # keys whose phrases stand as they are written
    literal: frozenset[str] = frozenset()  # words that are what they say
    literal_starts: dict[str, list[str]] = field(default_factory=dict)  # how such words begin, by two letters
    keys: dict[K, int] = field(default_factory=dict)  # one bit for each
    begins: dict[int, int] = field(default_factory=dict)  # the bits of what a stem may begin
    count: int = 0

    def mask(self, keys: Iterable[K]) -> int:
        bits = 0
        for key in keys:
            bits |= self.keys.get(key, 0)
        return bits

    def stem(self, text: str) -> int:
        if text == "..":
            return GAP
        bare = text.strip("*")
        shelf = text if "*" in text else bare
        if shelf in self.exact:
            return self.exact[shelf]
        number = self.exact[shelf] = self.count
        self.count += 1
        if text.startswith("*"):
            self.holds.append((bare, number))
        elif "*" in text:
            self.starts.setdefault(bare[:2], []).append((bare, number))
            self.open.setdefault(bare[:1], []).append((bare, number))
        else:
            self.whole.setdefault((bare[:1], len(bare)), []).append((bare, number))
        return number


def compiled(
    table: Mapping[K, str],
    words: Lexicon,
    fillers: K | None = None,
    negative: K | None = None,
    strict: frozenset[K] = frozenset(),
) -> Table[K]:
    """Compile the phrases of one language."""
    found: Table[K] = Table(words, strict=strict, literal=words.literal_words)
    for word in words.literal_words:
        if word.endswith("*"):
            found.literal_starts.setdefault(word[:2], []).append(word[:-1])
    for key, listed in table.items():
        bit = found.keys.setdefault(key, 1 << len(found.keys))
        for phrase in _spelled(listed, words):
            stems = tuple(found.stem(w) for w in phrase)
            shelf = found.phrases.setdefault(stems[0], [])
            if (key, stems) not in shelf:
                shelf.append((key, stems))
            found.begins[stems[0]] = found.begins.get(stems[0], 0) | bit
            if key == fillers and len(stems) == 1:
                found.fillers.add(stems[0])
            if key == negative:
                found.negative.add(stems[0])
    return found


def _spelled(listed: str, words: Lexicon) -> Iterator[list[str]]:
    for phrase in filter(None, (p.strip() for p in listed.split(","))):
        for spelled in spellings(phrase, words):
            cut = spelled.replace("'", " " if words.elision else "").translate(_SAME_SOUND)
            if pieces := [w for w in cut.split() if w.strip("*")]:
                yield pieces


@lru_cache(maxsize=32768)  # single words, in six languages; whole messages are never kept
def known(word: str, table: Table[K], forgiving: bool) -> frozenset[int]:
    """The stems a word may be."""
    found: set[int] = set()
    if word.isdecimal():
        shape = {4: word[:2] + "##", 2: "##"}.get(len(word), "")  # a year, an age
        return frozenset(n for n in (table.exact.get(shape), table.exact.get(word)) if n is not None)
    spelled = {word}
    for prefix in table.words.prefixes:
        if word.startswith(prefix) and (len(word) > len(prefix) + 2 or (prefix == JOINING and len(word) == 3)):
            spelled.add(word[len(prefix) :])
    literal = max(_literal(variant, table) for variant in spelled)
    for variant in spelled:
        if (number := table.exact.get(variant)) is not None:
            found.add(number)
        found.update(
            n for stem, n in table.starts.get(variant[:2], ()) if variant.startswith(stem) and len(stem) >= literal
        )
        if not literal:
            found.update(n for stem, n in table.holds if stem in variant)
    if not found and not literal and table.words.code == "en" and word[-1] == "s" and len(word) > POSSESSIVE:
        found.update(known(word[:-1], table, False))  # "my calf's hot", "chest's tight"
    if not found and forgiving and not literal:
        for variant in spelled:
            if len(variant) > 3:
                found.update(_slipped(variant, table))
    return frozenset(found)


def _literal(word: str, table: Table[K]) -> int:
    """How many letters of a word are taken as they stand, because it is an everyday word; 0 if it is none."""
    if word in table.literal:
        return len(word) + 1
    return max((len(stem) for stem in table.literal_starts.get(word[:2], ()) if word.startswith(stem)), default=0)


def _slipped(word: str, table: Table[K]) -> Iterator[int]:
    """The stems that a word may be with a slip of the hand; two slips in a long one."""
    letter, size = word[0], len(word)
    for length in range(max(4, size - 2), size + 3):
        yield from (n for stem, n in table.whole.get((letter, length), ()) if _close_to(word, stem))
    for stem, number in table.open.get(letter, ()):
        if 4 <= len(stem) <= size + 1 and any(_close_to(word[: len(stem) + k], stem) for k in (0, -1, 1)):
            yield number


def _whole(word: str, table: Table[K]) -> bool:
    """Whether a word is known as it stands, its first letter no prefix."""
    return word in table.exact or any(word.startswith(stem) for stem, _ in table.starts.get(word[:2], ()))


def _close_to(word: str, stem: str) -> bool:
    if near(word, stem):
        return True
    return min(len(word), len(stem)) >= LONG and abs(len(word) - len(stem)) <= 2 and _two_slips(word, stem)


def _two_slips(a: str, b: str) -> bool:
    above = list(range(len(b) + 1))
    for i, x in enumerate(a, 1):
        row = [i]
        for j, y in enumerate(b, 1):
            row.append(min(above[j] + 1, row[-1] + 1, above[j - 1] + (x != y)))
        if min(row) > 2:
            return False
        above = row
    return above[-1] <= 2


@dataclass(slots=True)
class Said(Generic[K]):
    """A message as words of one language; the last one is empty and closes the last sentence.

    gaps: the marks before each word.  stems: the stems each may be.  joined: an "and" is written together with it.
    """

    table: Table[K]
    words: list[str] = field(default_factory=list)
    gaps: list[str] = field(default_factory=list)
    stems: list[frozenset[int]] = field(default_factory=list)
    joined: list[bool] = field(default_factory=list)

    def spans(self, i: int) -> dict[K, Span]:
        """What begins at a word: for each key the longest phrase."""
        found: dict[K, Span] = {}
        for stem in self.stems[i]:
            for key, phrase in self.table.phrases.get(stem, ()):
                loose = len(phrase) >= MANY_WORDS and key not in self.table.strict
                end = i + 1 if len(phrase) == 1 else self._end(i + 1, phrase, 1, loose)
                if end and (key not in found or end > found[key][1]):
                    found[key] = (i, end)
        return found

    def _end(self, i: int, phrase: Phrase, k: int, loose: bool) -> int:
        """Where a phrase ends of which the words before `k` were found; loose: one unknown word may come between."""
        if k == len(phrase):
            return i
        last = len(self.words) - 1
        if i >= last or self.gaps[i]:
            return 0
        if phrase[k] == GAP:
            for there in range(i, min(i + WIDE + 1, last)):
                if self.gaps[there]:
                    return 0
                if end := self._end(there, phrase, k + 1, loose):
                    return end
            return 0
        if phrase[k] in self.stems[i] and (end := self._end(i + 1, phrase, k + 1, loose)):
            return end
        if self.stems[i] & self.table.fillers and (end := self._end(i + 1, phrase, k, loose)):
            return end
        if loose and not self.stems[i] & self.table.negative:
            return self._end(i + 1, phrase, k, False)
        return 0


def cut(folded: str, elision: bool) -> list[str]:
    """The words and marks of a plain text."""
    text = folded.replace("'", " " if elision else "").translate(_SAME_SOUND)
    shorter = _DRAWN_OUT.sub(_shortened, text)
    pieces = ["!!" if p[:2] == "!!" else p for p in _PIECE.findall(shorter)]
    if len(pieces) <= CRIED and shorter != text and not any(map(_laughs, pieces)):
        pieces.append("!!")  # "heeelp" is cried out
    return pieces


def _shortened(letters: re.Match[str]) -> str:
    """One letter for many; three where they are a whole word, which laughs: "hhhhh"."""
    around = letters.string[letters.start() - 1 : letters.start()] + letters.string[letters.end() : letters.end() + 1]
    return letters[1] if any(c.isalpha() for c in around) else letters[1] * 3


def _laughs(piece: str) -> bool:
    return len(piece) == 3 and piece[0].isalpha() and piece == piece[0] * 3


def read(pieces: Iterable[str], table: Table[K], forgiving: bool) -> Said[K]:
    said = Said(table)
    gap = ""
    for piece in pieces:
        if piece in ".!?;,:()-":
            gap += piece
            continue
        said.words.append(piece)
        said.gaps.append("" if piece[0] == "!" else gap)
        said.stems.append(known(piece, table, forgiving))
        said.joined.append(piece[0] == JOINING and bool(table.words.prefixes) and not _whole(piece, table))
        gap = "!" if piece[0] == "!" else ""
        if len(said.words) == READ:
            break
    said.words.append("")
    said.gaps.append(gap or ".")
    said.stems.append(frozenset())
    said.joined.append(False)
    return said
