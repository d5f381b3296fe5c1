"""Danger signs in a message, which take precedence over everything: chest pain, fainting, signs of a stroke, despair.

Recognition errs on the side of caution: a sign alarms unless the client clearly denies it. A "no" applies to a sign
only across words known to carry it ("no sign of any chest pain"), so "no idea why, but my chest hurts" alarms. A sign
that may be past, imagined or another person's also alarms, but as uncertain: one question is asked. One typo is
tolerated. The levels are the three-way handling of function.md 9.1 (ours, not a published scale). Nothing here is a
diagnosis.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from functools import cache, lru_cache

from core.language import ENGLISH, LANGUAGES, Level, Lexicon, plain
from core.language.cache import memoized
from core.language.lexicon import Sign
from core.language.text import near
from core.language.tokens import JOINING, spellings

__all__ = ["Alarm", "Level", "recognise"]

READ = 400  # words read of a message; the platform's longest message holds about 800, nearly all have far fewer
REACH = 8  # words between the first and the last part of a sign
FAR = 12  # words a "no" may reach
MOST = 20  # occurrences of one sign considered in a message

_ORDER = (  # which of several signs is reported: the worst certain one first, then the worst possible one
    (Level.EMERGENCY, True),
    (Level.SAME_DAY, True),
    (Level.EMERGENCY, False),
    (Level.STOP_REST, True),
    (Level.SAME_DAY, False),
    (Level.TALK, True),
    (Level.STOP_REST, False),
    (Level.TALK, False),
)
_SETTLES = {  # signs that become less urgent once they have gone away; the others keep their level
    ("chest_pain", Level.EMERGENCY): Level.SAME_DAY,  # ours: chest pain that went away still needs advice today
    ("breathless_on_usual_tasks", Level.SAME_DAY): Level.STOP_REST,
}
_WITH = (  # two signs that together are a different one
    (("leg_swelling", "chest_pain"), "leg_swelling_with_breathlessness"),
    (("leg_swelling", "breathless_at_rest"), "leg_swelling_with_breathlessness"),
    (("leg_swelling", "breathless_on_usual_tasks"), "leg_swelling_with_breathlessness"),
    (("leg_swelling", "breathless"), "leg_swelling_with_breathlessness"),
    (("arm_jaw_neck_pain", "cold_sweat"), "chest_pain"),
    (("arm_jaw_neck_pain", "nausea"), "chest_pain"),
    (("arm_jaw_neck_pain", "breathless"), "chest_pain"),
    (("arm_jaw_neck_pain", "breathless_at_rest"), "chest_pain"),
)
_WORD = re.compile(r"[^\W_]+|[.!?;,:()\-]")
_HARD = frozenset(".!?;")


@dataclass(frozen=True, slots=True)
class Alarm:
    """A danger sign found in a message.

    sign: its key.  certain: False if it may be past, imagined or another person's; then ask once before acting.
    """

    sign: str
    level: Level
    certain: bool


@memoized
def recognise(text: str, words: Lexicon) -> Alarm | None:
    """The most urgent sign that a message names and does not deny, or None.

    The client's language and English tolerate a typo, the other languages are matched exactly: in distress people fall
    back on their first language.
    """
    folded = plain(text)
    if not any(c.isalpha() for c in folded):
        return None
    found: list[Alarm] = []
    denied: set[str] = set()
    for lexicon in dict.fromkeys((words, ENGLISH, *LANGUAGES.values())):
        alarms, absent = _alarms(folded, lexicon, forgiving=lexicon is words or lexicon is ENGLISH)
        found += [a for a in alarms if a.sign not in denied]  # "ni náuseas" is denied, though English knows the word
        denied |= absent - {a.sign for a in alarms}
    if not found:
        return None
    found += _together(found)
    if any(a.sign == "eating_worry" for a in found):
        found = [a for a in found if a.sign != "nausea"]
    for level, certain in _ORDER:
        for alarm in found:
            if alarm.level is level and alarm.certain is certain:
                return alarm
    return None


def _together(found: Sequence[Alarm]) -> list[Alarm]:
    keys = {a.sign: a.certain for a in found}
    return [
        Alarm(sign, Level.EMERGENCY, all(keys[k] for k in pair)) for pair, sign in _WITH if all(k in keys for k in pair)
    ]


# --- patterns -----------------------------------------------------------------------------------------------------


Phrases = dict[int, tuple[tuple[int, ...], ...]]  # phrases as word ids, by first word


@dataclass
class _Patterns:
    """A language's signs and denials."""

    stems: dict[str, int] = field(default_factory=dict)
    by_letter: dict[str, list[tuple[str, bool, int]]] = field(default_factory=dict)
    signs: list[tuple[Sign, list[Phrases]]] = field(default_factory=list)
    groups: dict[str, Phrases] = field(default_factory=dict)
    firsts: set[int] = field(default_factory=set)  # first words of signs
    prefixes: tuple[str, ...] = ()
    elision: bool = False

    def number(self, stem: str) -> int:
        if stem not in self.stems:
            self.stems[stem] = len(self.stems)
            bare = stem.rstrip("*")
            self.by_letter.setdefault(bare[:1], []).append((bare, stem.endswith("*"), self.stems[stem]))
        return self.stems[stem]


@cache
def _patterns(words: Lexicon) -> _Patterns:
    patterns = _Patterns(prefixes=words.prefixes, elision=words.elision)
    for name in words.denials.__dataclass_fields__:
        patterns.groups[name] = _shelved(_phrases(getattr(words.denials, name), words, patterns))
    for sign in words.signs:
        parts = [_shelved(_phrases(part, words, patterns)) for part in sign.parts]
        patterns.signs.append((sign, parts))
        patterns.firsts.update(*parts)
    return patterns


def _shelved(phrases: Iterator[tuple[int, ...]]) -> Phrases:
    shelves: dict[int, list[tuple[int, ...]]] = {}
    for phrase in phrases:
        shelves.setdefault(phrase[0], []).append(phrase)
    return {first: tuple(dict.fromkeys(shelf)) for first, shelf in shelves.items()}


def _phrases(alternatives: str, words: Lexicon, patterns: _Patterns) -> Iterator[tuple[int, ...]]:
    for alternative in filter(None, alternatives.split("|")):
        for spelled in spellings(alternative.replace("_", " "), words):
            split = [w for w in re.split(r"[\s']+" if words.elision else r"\s+", spelled) if w]
            yield tuple(patterns.number(w.replace("'", "")) for w in split)


@dataclass(slots=True)
class _Said:
    """A message as words.

    gaps: punctuation before each word. known: the lexicon words each may be. joined: an "and" is attached to the word.
    fresh: the word starts a sentence or clause ("but ..."). signs: it belongs to a part of a sign. opaque: it belongs
    to a sign containing its own "no"; no denial reaches past it.
    """

    patterns: _Patterns
    words: list[str] = field(default_factory=list)
    gaps: list[str] = field(default_factory=list)
    known: list[set[int]] = field(default_factory=list)
    joined: list[bool] = field(default_factory=list)
    fresh: list[bool] = field(default_factory=list)
    signs: set[int] = field(default_factory=set)
    opaque: set[int] = field(default_factory=set)

    def at(self, i: int, phrases: Phrases) -> int:
        """Length of the longest of `phrases` that starts at word `i`, 0 for none."""
        best = 0
        for first in self.known[i]:
            for phrase in phrases.get(first, ()):
                size = len(phrase)
                if (
                    size > best
                    and i + size <= len(self.words)
                    and all(phrase[k] in self.known[i + k] and not self.gaps[i + k] for k in range(1, size))
                ):
                    best = size
        return best

    def says(self, i: int, group: str) -> int:
        """Length of the longest phrase of a group of denials at word `i`, 0 for none."""
        return self.at(i, self.patterns.groups[group])


def _read(folded: str, patterns: _Patterns, forgiving: bool) -> _Said:
    """Split a message into words; an empty last word closes the last sentence."""
    said = _Said(patterns)
    gap = ""
    text = folded.replace("'", " " if patterns.elision else "")
    for piece in (*_WORD.findall(text), "."):
        if not piece[0].isalnum():
            gap += piece
            continue
        said.words.append(piece)
        said.gaps.append(gap)
        said.known.append(_known(piece, patterns, forgiving))
        said.joined.append(piece[0] == JOINING and piece not in patterns.stems and bool(patterns.prefixes))
        gap = ""
        if len(said.words) == READ:
            break
    said.words.append("")
    said.gaps.append(gap or ".")
    said.known.append(set())
    said.joined.append(False)
    return said


def _known(word: str, patterns: _Patterns, forgiving: bool) -> set[int]:
    found: set[int] = set()
    if word.isdecimal():
        century = word[:2] + "##"  # a year
        return {patterns.stems[century]} if len(word) == 4 and century in patterns.stems else found
    spelled = {word}
    for prefix in patterns.prefixes:
        if word.startswith(prefix) and len(word) > len(prefix) + 2:
            spelled.add(word[len(prefix) :])
    for variant in spelled:
        candidates = patterns.by_letter.get(variant[:1], ())
        exact = {n for stem, start, n in candidates if variant == stem or (start and variant.startswith(stem))}
        if not exact and forgiving and len(variant) > 3:
            for stem, start, n in candidates:
                if near(variant, stem) or (start and len(stem) > 4 and near(variant[: len(stem)], stem)):
                    exact.add(n)
        found |= exact
    return found


@lru_cache(maxsize=8192)  # the same few thousand words, in six languages
def _may_begin(word: str, words: Lexicon, forgiving: bool) -> bool:
    """Whether a sign may start with this word."""
    patterns = _patterns(words)
    return not _known(word, patterns, forgiving).isdisjoint(patterns.firsts)


# --- signs --------------------------------------------------------------------------------------------------------

Span = tuple[int, int]  # words from, to; the second one not included


def _alarms(folded: str, words: Lexicon, forgiving: bool) -> tuple[list[Alarm], set[str]]:
    """Signs that one language finds in a message, and the keys of those it finds denied."""
    patterns = _patterns(words)
    text = folded.replace("'", " " if patterns.elision else "")
    if not any(_may_begin(word, words, forgiving) for word in _WORD.findall(text)):
        return [], set()  # the case for nearly every message
    said = _read(folded, patterns, forgiving)
    _prepare(said)
    matches = [(sign, spans) for sign, parts in patterns.signs for spans in _matches(said, parts)]
    said.opaque = {i for sign, spans in matches if sign.own_no for a, b in spans for i in range(a, b)}
    found: list[Alarm] = []
    absent: set[str] = set()
    for sign, spans in matches:
        denied = False if sign.own_no else _denied(said, spans)
        if denied is True:
            absent.add(sign.key)
            continue
        settles = (sign.key, sign.level) in _SETTLES and _settled(said, spans)
        level = _SETTLES[sign.key, sign.level] if settles else sign.level
        found.append(Alarm(sign.key, level, denied is False and _is_mine_and_now(said, spans)))
    return found, absent


def _prepare(said: _Said) -> None:
    """Remove figures of speech; mark where clauses begin and which words belong to signs."""
    count = len(said.words)
    for i in range(count):
        for k in range(i, i + said.says(i, "harmless")):
            said.known[k] = set()
    said.fresh = [i == 0 or bool(_HARD & set(said.gaps[i])) or said.says(i, "but") > 0 for i in range(count)]
    parts = [part for _, parts in said.patterns.signs for part in parts]
    said.signs = {k for part in parts for i in range(count) for k in range(i, i + said.at(i, part))}


def _matches(said: _Said, parts: Sequence[Phrases]) -> Iterator[list[Span]]:
    """Yield the positions where all parts of a sign are close together in one clause."""
    places = [[(i, i + n) for i in range(len(said.words)) if (n := said.at(i, part))] for part in parts]
    for first in places[0][:MOST]:
        spans = [first]
        for other in places[1:]:
            near_by = [p for p in other if _close(said, first, p)]
            if not near_by:
                break
            spans.append(min(near_by, key=lambda p: abs(p[0] - first[0])))
        else:
            yield sorted(spans)


def _close(said: _Said, a: Span, b: Span) -> bool:
    low, high = min(a, b), max(a, b)
    return low[1] <= high[0] < low[1] + REACH and not any(said.fresh[low[0] + 1 : high[0] + 1])


def _denied(said: _Said, spans: Sequence[Span]) -> bool | None:
    """True: denied. None: perhaps (a list whose "no" may or may not extend to it). False: not denied."""
    own = {i for a, b in spans for i in range(a, b)}
    answers = [_no_before(said, start, own) for start, _ in spans]
    if True in answers or _no_after(said, spans[-1][1]):
        return True
    crossed = any("," in said.gaps[i] for i in range(spans[0][0] + 1, spans[-1][0] + 1))
    return None if None in answers or crossed else False


def _no_before(said: _Said, start: int, own: set[int]) -> bool | None:
    """Search left of a part of a sign for a "no" that applies to it. own: the words of the sign itself."""
    listed = sure = False
    i = start
    while i > 0 and start - i < FAR and not said.fresh[i]:
        listed = listed or said.joined[i]
        if said.gaps[i]:
            if i - 1 not in said.signs or "," not in said.gaps[i]:
                return False
            listed = True
        i -= 1
        if i in own:
            continue
        if i not in said.opaque and any(i >= k and said.says(i - k, "no") == k + 1 for k in range(3)):
            return True if not listed or sure or _or_follows(said, start) else None
        if said.says(i, "nor"):
            sure = True
        elif said.says(i, "and_"):
            listed = True
        elif i in said.opaque or (i not in said.signs and not said.says(i, "between")):
            return False
    return False


def _or_follows(said: _Said, start: int) -> bool:
    """Whether an "or" continues the list of a "no": "no chest pain, dizziness or fainting"."""
    for i in range(start + 1, min(start + FAR, len(said.words))):
        if said.fresh[i]:
            return False
        if said.says(i, "nor"):
            return True
    return False


def _no_after(said: _Said, end: int) -> bool:
    """Whether a "no" closes the clause: "chest pain: none", "Brustschmerzen habe ich keine"."""
    last = len(said.words) - 1
    for i in range(end, min(end + 5, last)):
        size = said.says(i, "no_after")
        if size and (said.gaps[i + size] or i + size >= last):
            return True
        if (i > end and said.gaps[i]) or not said.says(i, "between"):
            return False
    return False


def _settled(said: _Said, spans: Sequence[Span]) -> bool:
    """Whether it is said to have gone away; "not gone" and "has not passed" do not count."""
    end = spans[-1][1]
    for i in range(end, len(said.words)):
        if said.says(i, "settled"):
            return not any(said.says(k, "no") for k in range(max(end, i - 3), i))
    return False


def _is_mine_and_now(said: _Said, spans: Sequence[Span]) -> bool:
    """Whether the sign is the client's own, today: not past, not imagined, not another person's, not a question."""
    first = spans[0][0]
    start = next(i for i in range(first, -1, -1) if said.fresh[i])
    end = next(i for i in range(spans[-1][1], len(said.words)) if said.fresh[i])

    def holds(group: str, a: int, b: int) -> bool:
        """Whether a phrase is between `a` and `b` and not cut off by a comma ("si, me duele" is a yes)."""
        return any((n := said.says(i, group)) and "," not in said.gaps[i + n] for i in range(a, b))

    if holds("past", start, end) and not holds("now", start, end):
        return False
    if holds("imagined", start, first) or holds("others", start, first):
        return False
    return "?" not in said.gaps[end] or holds("mine", start, end)
