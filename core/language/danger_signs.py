"""Words that must stop everything: chest pain, a faint, signs of a stroke, despair.

A sign is a combination of concepts (`core.language.signs`), each a list of words in each language. Recognition errs to
caution: a sign alarms unless the client clearly denies it. A "no" reaches a sign only across words known to carry it
("no sign of any chest pain"), so "no idea why, but my chest hurts" alarms. A sign that may be long past, imagined or
far away is uncertain: one question is asked. Nothing here is a diagnosis.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from enum import StrEnum
from functools import cache, lru_cache

from core.language import ENGLISH, LANGUAGES, Level, Lexicon, plain
from core.language.cache import SHORT, memoized
from core.language.concepts import Answer
from core.language.concepts import Concept as C
from core.language.known_conditions import Known, known_conditions
from core.language.lexicon import Intent
from core.language.phrases import HARD, WIDE, Said, Span, Table, compiled, cut, known, read
from core.language.signs import (
    ALSO_TELL,
    AMISS,
    BODY,
    BY_POINTS,
    CARRIES_NO,
    COMPANY,
    ENOUGH,
    ENOUGH_ALONE,
    ENOUGH_TO_ACT,
    FUNCTIONS,
    HOW_IT_IS_SAID,
    NOTHING_ELSE,
    PARTS_TELL,
    SAYS_LITTLE,
    SETTLES,
    SIGNS,
    TELLS,
    TOGETHER,
    Sign,
)
from core.language.text import bare_words

__all__ = [
    "Answer",
    "Level",
    "Sighting",
    "When",
    "Who",
    "answer_to_alarm",
    "complaint_in_a_test",
    "denies",
    "recognise",
    "sightings",
]

BESIDE = 2  # words between a thing and what it does
NOT_ACUTE = (  # words beside a condition one lives with
    (HOW_IT_IS_SAID - {C.NOW, C.JUST_NOW, C.EARLIER})
    | BODY
    | {
        C.BLOOD,
        C.PRESS,
        C.TABLETS,
        C.VITAL,
        C.PART,
        C.MEDICINE,
        C.DO,
        C.FEEL,
        C.SCENE,
        C.DOWN,
        C.SKIP,
        C.FALL_FROM,
        C.METER,
    }
)
REACH = 9  # words between two parts of a sign
FAR = 12  # words a "no" may reach
NEW = "breathless_on_usual_tasks"
STRAIN = "new_joint_pain"  # what the exercises may have done, and the coach can help with
EATING_TOO = ("nausea", "arm_jaw_neck_pain")  # "fingers down my throat" and what follows
UNSURE_THERE = ("overdose", "stroke_signs")  # of laxatives; a finger and "cannot stop"
PUFFED = (NEW, "breathless", "palpitations", "unusual_fatigue")  # what exercise is meant to do
EXPLAINED = ("eating_worry", "overdose")  # fasting for a blood test; "all my tablets, as always"
ASKED_WHEN_OVER = ("breathless_at_rest",)  # "swallowed the wrong way, fine again"
MAY_BE_EVERYDAY = ("bleeding", "allergic_reaction")  # gums when brushing, a mosquito: asked about otherwise
NOT_EVERYDAY = (C.SUDDEN, C.ONSET, C.CANNOT, C.SWOLLEN, C.NOT_STOPPING, C.MUCH, C.CHEST, C.JUST_NOW)
MEDICINES = (C.TABLETS, C.MEDICINE, C.INSULIN, C.POISON)
ROUND = 4  # words of a denial that leave no doubt, whatever follows
MANY = 6  # tablets at once: ours, more than a usual dose of anything
LOW_MG, LOW_MMOL, LOW_G = 70, 3.9, 0.7  # blood sugar below it is low (common practice)
LOWEST_MG, LOWEST_MMOL, LOWEST_G = 20, 1.0, 0.2  # below it the figure is something else
FAST = range(140, 261)  # beats a minute: ours
FAST_DIGITS = 3
HIGH_FEVER = ("39", "40", "41")  # degrees Celsius, said with a decimal
FRACTION = (".", ",")
MMOL = "mmol"
SOON = 4  # words from "sugar" to its figure
UNITS = frozenset({"mg", "mcg", "g", "ml", "milligram", "milligrams"})
SINGLE_WORDS = 32768  # kept, each by itself; whole messages never are
LONG_STORY = 40  # words: in a longer text points come together by themselves
MOST = 20  # places of one sign in a message that are looked at
SHARE = 0.7  # of the words known in the best language: what a language must know to be heard as well
_FIGURES = re.compile(r"\d+")
SURE_OF_LANGUAGE = 3  # words of a language, neither the client's nor English, before slips are forgiven in it


class When(StrEnum):
    NOW = "now"
    JUST_NOW = "just_now"
    EARLIER_TODAY = "earlier_today"
    LONG_AGO = "long_ago"
    UNKNOWN = "unknown"


class Who(StrEnum):
    ME = "me"
    WITH_ME = "with_me"  # somebody the client can help
    ELSEWHERE = "elsewhere"  # somebody else, in other hands or long ago
    NOBODY = "nobody"  # a question, a film, a joke


@dataclass(frozen=True, slots=True)
class Sighting:
    """A sign that was named. certain: act at once; otherwise ask once before acting."""

    sign: str
    level: Level
    when: When = When.UNKNOWN
    who: Who = Who.ME
    certain: bool = True
    denied: bool = False


MILD = (Level.STOP_REST, Level.SAME_DAY)
_ORDER = (  # what is answered when several signs are named: first the worst that is sure, then the worst that may be
    (Level.EMERGENCY, True),
    (Level.SAME_DAY, True),
    (Level.EMERGENCY, False),
    (Level.STOP_REST, True),
    (Level.SAME_DAY, False),
    (Level.TALK, True),
    (Level.STOP_REST, False),
    (Level.TALK, False),
)


@memoized
def recognise(text: str, words: Lexicon) -> Sighting | None:
    """Return the most pressing sign a message names and does not deny, or None.

    All languages are read: in distress people fall back on the language of their childhood. Slips of the hand are
    forgiven in the client's language and in the language most of the message is in, English even if that is one word.
    """
    if _shouts_for_help(text, words):
        return Sighting("call_for_help", Level.EMERGENCY, certain=False)
    if len(text) <= SHORT and _is_harmless(_FIGURES.sub("0", text), words):
        return None
    found = _most_pressing(text, words)
    if found is not None and _is_a_wish(text, words, found):
        return None
    lived_with = known_conditions(plain(text), words) if found is not None else None
    return found if found is None or lived_with is None else _but_known(found, lived_with, words)


def _shouts_for_help(text: str, words: Lexicon) -> bool:
    """Whether "help", which opens the help, is cried out: "HELP", "help!"."""
    if not ("!" in text or text.isupper()) or text.startswith("/"):
        return False
    return _wishes(words).get(plain(text).strip(" .!")) is Intent.HELP


def _is_a_wish(text: str, words: Lexicon, found: Sighting) -> bool:
    """Whether a message is word for word what one says to the bot ("I am back"); "help" and "ill" may be both."""
    wish = _wishes(words).get(plain(text).strip(" .!"))
    return wish is not None and (found.sign == AMISS or wish not in (Intent.HELP, Intent.NOT_WELL))


@cache
def _wishes(words: Lexicon) -> dict[str, Intent]:
    return {plain(phrase): intent for intent, phrases in words.intents.items() for phrase in phrases}


def _but_known(found: Sighting, lived_with: Known, words: Lexicon) -> Sighting | None:
    """The sign of a message that tells of a condition one lives with, if it tells of anything else."""
    beside = _most_pressing(lived_with.rest, words)
    if beside is not None:
        return found if lived_with.perhaps_now else beside
    for lexicon in dict.fromkeys((words, ENGLISH)):
        read_in = _prepared(read(cut(lived_with.rest, lexicon.elision), _table(lexicon), False))
        if not read_in.at.keys() <= NOT_ACUTE:
            return found  # "I am epileptic and it happened just now"
    return replace(found, when=When.LONG_AGO, certain=False) if lived_with.perhaps_now else None


def _most_pressing(text: str, words: Lexicon) -> Sighting | None:
    named = [s for s in sightings(text, words) if not s.denied]
    for level, certain in _ORDER:
        for sighting in named:
            if sighting.level is level and sighting.certain is certain:
                return sighting
    return None


@memoized
def _is_harmless(shape: str, words: Lexicon) -> bool:
    """Whether no sign is possible whatever the figures are: "0.0 kg". Answers differ in their figures alone."""
    folded = plain(shape)
    shown = [(_all_shown(cut(folded, one.elision), one, True), one) for one in _read_in(words)]
    return not any(_possible(bits, one) or _may_tell_enough(bits, one) for bits, one in shown)


def denies(text: str, sign: str, words: Lexicon) -> bool | None:
    """Whether a message that does nothing but deny signs by their names denies this one: "my chest does not hurt".

    None if it denies none, or names one that it does not deny.
    """
    seen = sightings(text, words)
    if not seen or not all(s.denied for s in seen):
        return None
    return sign == AMISS or any(_alike(s.sign, sign) for s in seen)


def _alike(one: str, other: str) -> bool:
    """Whether two signs are of one kind: breathless at rest, and on the stairs."""
    return one.partition("_")[0] == other.partition("_")[0]


def sightings(text: str, words: Lexicon) -> list[Sighting]:
    """Every sign a message names, denied ones included, in no order of importance."""
    folded = plain(text)
    if not any(c.isalpha() for c in folded):
        return []
    whole = cut(folded, False)
    pieces = {False: whole, True: cut(folded, True) if "'" in folded else whole}
    read_in = _read_in(words)
    spoken = {lexicon: sum(_is_known(piece, lexicon) for piece in pieces[lexicon.elision]) for lexicon in read_in}
    main = max(spoken, key=lambda lexicon: spoken[lexicon])
    found: list[Sighting] = []
    denied: set[str] = set()
    for lexicon in sorted(read_in, key=lambda lexicon: -spoken[lexicon]):
        if spoken[lexicon] < SHARE * spoken[main] and lexicon is not words:
            continue  # a word that happens to exist there too
        enough = 1 if lexicon is ENGLISH else SURE_OF_LANGUAGE
        forgiving = lexicon is words or enough <= spoken[lexicon] == spoken[main]
        seen = _sightings(pieces[lexicon.elision], lexicon, forgiving)
        if spoken[lexicon] <= spoken[words] and lexicon is not words:
            seen = [s for s in seen if s.sign != AMISS]  # the wider net is for the language a message is in
        named = {s.sign for s in found}  # a language with more of the words knows better how it is meant
        found += [s for s in seen if s.sign not in denied | named]  # "ni náuseas" is denied, English has the word too
        denied |= {s.sign for s in seen if s.denied} - {s.sign for s in seen if not s.denied}
    if not all(s.sign == AMISS for s in found):
        found = [s for s in found if s.sign != AMISS]
    found = [*_together([s for s in found if not s.denied]), *found]
    if any(s.sign == "eating_worry" and not s.denied for s in found):
        found = [s for s in found if s.sign not in EATING_TOO and (s.certain or s.sign not in UNSURE_THERE)]
    return found


def _together(found: Sequence[Sighting]) -> list[Sighting]:
    by_key = {s.sign: s for s in found}
    return [
        replace(by_key[a], sign=both, level=Level.EMERGENCY, certain=by_key[a].certain and by_key[b].certain)
        for a, b, both in TOGETHER
        if a in by_key and b in by_key
    ]


@cache
def _table(words: Lexicon) -> Table[C]:
    return compiled(words.concepts, words, C.FILLER, C.NO, HOW_IT_IS_SAID)


@cache
def _read_in(words: Lexicon) -> tuple[Lexicon, ...]:
    """The languages a client's message is read in, theirs first."""
    return tuple(dict.fromkeys((words, ENGLISH, *LANGUAGES.values())))


@lru_cache(maxsize=SINGLE_WORDS)
def _is_known(word: str, words: Lexicon) -> bool:
    return bool(known(word, _table(words), False))


@lru_cache(maxsize=SINGLE_WORDS)
def _shown(word: str, words: Lexicon, forgiving: bool) -> int:
    """The bits of the concepts that a word may begin."""
    table = _table(words)
    bits = table.mask((C.TOO_MUCH, C.SUGAR_LOW, C.FAST_RATE, C.FEVER)) if word[0].isdecimal() else 0
    if word.startswith(MMOL):
        bits |= table.mask((C.SUGAR,))
    for stem in known(word, table, forgiving):
        bits |= table.begins.get(stem, 0)
    return bits


@cache
def _needed(words: Lexicon) -> tuple[tuple[int, tuple[tuple[Sign, tuple[int, ...]], ...]], ...]:
    """The bits that a message must show, part by part: the signs of each first part together."""
    table = _table(words)
    first: dict[int, list[tuple[Sign, tuple[int, ...]]]] = {}
    for sign in SIGNS:
        bits = [table.mask(part) for part in sign.parts]
        first.setdefault(bits[0], []).append((sign, tuple(bits[1:])))
    return tuple((bit, tuple(signs)) for bit, signs in first.items())


# --- one language -------------------------------------------------------------------------------------------------


@dataclass(slots=True)
class _Read:
    """A message read in one language.

    at: where each concept stands, by its first word.  hard: a sentence starts here.  fresh: or a contrast ("but").
    stop: or another clause; no "no" reaches past it.
    """

    said: Said[C]
    at: dict[C, dict[int, Span]] = field(default_factory=dict)
    hard: list[bool] = field(default_factory=list)
    fresh: list[bool] = field(default_factory=list)
    stop: list[bool] = field(default_factory=list)
    carries: set[int] = field(default_factory=set)  # words of signs that a "no" may reach past
    negative: set[int] = field(default_factory=set)  # words that say "no"

    def is_(self, concept: C, i: int) -> bool:
        return i in self.at.get(concept, ())

    def holds(self, concept: C, start: int, end: int) -> bool:
        """Whether it stands there, and not cut off by a comma right after it ("si, me duele" is a yes)."""
        return any(start <= i < end and "," not in self.said.gaps[span[1]] for i, span in self.of(concept))

    def said_of(self, concepts: Sequence[C], start: int, end: int) -> bool:
        return any(self.anywhere(concept, start, end) for concept in concepts)

    def anywhere(self, concept: C, start: int, end: int) -> bool:
        return any(start <= i < end for i, _ in self.of(concept))

    def of(self, concept: C) -> Iterable[tuple[int, Span]]:
        return self.at.get(concept, {}).items()

    def sentence(self, spans: Sequence[Span]) -> Span:
        start = next(i for i in range(spans[0][0], -1, -1) if self.hard[i])
        end = next(i for i in range(spans[-1][1], len(self.hard)) if self.hard[i])
        return start, end


def _sightings(pieces: list[str], words: Lexicon, forgiving: bool) -> list[Sighting]:
    """The signs one language sees in a message."""
    shown = _all_shown(pieces, words, forgiving)
    possible = _possible(shown, words)
    if not possible and not _may_tell_enough(shown, words):
        return []  # as with nearly every message
    r = _prepared(read(pieces, _table(words), forgiving))
    matches = [(sign, spans) for sign in possible for spans in _matches(r, sign)]
    seen = [s for sign, spans in matches if (s := _sighting(r, sign, spans, matches)) is not None]
    if not seen and (told := _told(r)) and (s := _sighting(r, BY_POINTS, told, matches)) is not None:
        seen.append(s)
    return seen


def _all_shown(pieces: list[str], words: Lexicon, forgiving: bool) -> int:
    """The bits of the concepts that the words of a message may begin."""
    shown = 0
    for piece in pieces:
        shown |= _shown(piece, words, forgiving)
    return shown


def _possible(shown: int, words: Lexicon) -> list[Sign]:
    """The signs all of whose parts have a word in the message."""
    return [
        sign
        for bit, signs in _needed(words)
        if shown & bit
        for sign, others in signs
        if all(shown & other for other in others)
    ]


def _may_tell_enough(shown: int, words: Lexicon) -> bool:
    return sum(points for bit, points in _tells(words) if shown & bit) >= ENOUGH


@cache
def _tells(words: Lexicon) -> tuple[tuple[int, int], ...]:
    """The bits of each row that tells of danger, and its points."""
    return tuple((_table(words).mask(concepts), points) for points, concepts in TELLS if points > 0)


def _told(r: _Read) -> list[Span]:
    """The words that together tell enough of danger, none of them denied; else none. A question tells nothing."""
    last = len(r.said.words) - 1
    if "?" in "".join(r.said.gaps) or last > LONG_STORY:
        return []
    points = 0
    told: list[Span] = []  # a word tells once
    medicine = any(r.at.get(concept) for concept in MEDICINES)
    for worth, concepts in TELLS:
        if not medicine and concepts[0] in (C.TOOK, C.TOO_MUCH):
            continue  # "had", "twice": nothing is said to be taken
        spans = sorted({s for concept in concepts for s in r.at.get(concept, {}).values() if not _lonely(r, s)})
        if worth > 0:
            fresh = (s for s in spans if not any(_overlap(s, other) for other in told))
            first = next((s for s in fresh if _no_before(r, s[0], set(range(*s))) is not True), None)
            if first is None:
                continue
            told.append(first)
        elif not spans:
            continue
        points += worth
    one_word = sum(b - a for a, b in told) == 1
    return sorted(told) if points >= (ENOUGH_ALONE if one_word else ENOUGH) else []


def _says_nothing_else(r: _Read) -> bool:
    """Whether every word of a message is known, so that it is about nothing besides."""
    explained = {k for spans in r.at.values() for a, b in spans.values() for k in range(a, b)}
    return all(i in explained or word.isdecimal() for i, word in enumerate(r.said.words[:-1]))


def _evidence(r: _Read, sign: Sign) -> int:
    """The points of everything a message tells, denied or not: whether there is more than one word to go by."""
    points = (len(sign.parts) - 1) * PARTS_TELL + (NOTHING_ELSE if _says_nothing_else(r) else 0)
    told: list[Span] = []
    for worth, concepts in _BY_WORTH:  # what weighs most has its words first
        spans = sorted({span for concept in concepts for span in r.at.get(concept, {}).values()})
        if worth > 0:
            first = next((s for s in spans if not any(_overlap(s, other) for other in told)), None)
            if first is None:
                continue
            told.append(first)
        elif all(span[0] - 1 in r.negative for span in spans):
            continue  # "not well" is not well
        points += worth
    return points


_BY_WORTH = sorted((row for row in (*ALSO_TELL, *TELLS) if row[1][0] not in SAYS_LITTLE), key=lambda row: -row[0])


@cache
def _units(words: Lexicon) -> frozenset[str]:
    """What shows that a figure is a weight, a time or a distance."""
    spelled = {plain(s) for spellings in words.units.values() for s in spellings}
    return frozenset(spelled | {plain(s) for spellings in words.parts.values() for s in spellings} | {"g"})


def _low_sugar(r: _Read, i: int, named: Iterable[Span]) -> bool:
    """Whether a figure said soon after sugar or a meter is a low one, in mg/dL, mmol/L or (where usual) g/L."""
    said = r.said
    word, rest = said.words[i], said.words[i + 1]
    if not word.isdecimal() or len(word) > 2 or any(w.isdecimal() for w in said.words[max(0, i - 2) : i]):
        return False  # "128 over 62" is a pressure
    if not any(end <= i < end + SOON and not any(r.hard[end : i + 1]) for _, end in named):
        return False
    if any(r.is_(concept, k) for k in (i - 1, i, i + 1) for concept in (C.HEART, C.FOR_DAYS)):
        return False
    if rest.isdecimal() and said.gaps[i + 1] in FRACTION:
        value = float(f"{word}.{rest}")
        return LOWEST_G <= value < LOW_G or (LOWEST_MMOL <= value < LOW_MMOL and not said.table.words.grams_of_sugar)
    return LOWEST_MG <= int(word) < LOW_MG and rest not in _units(said.table.words) and not rest.isdecimal()


def _many(word: str) -> bool:
    """Whether a number is more than anybody takes of one tablet at a time."""
    return word.isdecimal() and len(word) <= 3 and int(word) >= MANY


def _has_a_tenth(said: Said[C], i: int) -> bool:
    """Whether a figure goes on with one decimal and no unit: 39.8."""
    tenth, after = said.words[i + 1], said.words[i + 2 : i + 3]
    one = said.gaps[i + 1] in FRACTION and len(tenth) == 1 and tenth.isdecimal()
    return one and not _units(said.table.words).intersection(after)


def _decimal(said: Said[C], i: int) -> bool:
    """Whether the mark before a word is a decimal point."""
    return said.gaps[i] == "." and said.words[i].isdecimal() and said.words[i - 1].isdecimal()


def _prepared(said: Said[C]) -> _Read:
    """Take figures of speech out; mark where sentences and clauses begin and which words belong to signs."""
    count = len(said.words)
    r = _Read(said)
    starts = [said.spans(i) for i in range(count)]
    sugar = {i: spans[C.SUGAR] for i, spans in enumerate(starts) if C.SUGAR in spans}
    meters = [spans[C.METER] for spans in starts if C.METER in spans]
    as_if = {i: spans[C.AS_IF] for i, spans in enumerate(starts) if C.AS_IF in spans}
    harmless = [spans[C.HARMLESS] for spans in starts if C.HARMLESS in spans]
    if harmless := [span for span in harmless if not _within_a_sign(span, starts)]:
        for k in {k for span in harmless for k in range(*span)}:
            said.stems[k] = frozenset()
        starts = [said.spans(i) for i in range(count)]
    goes_on = [spans[C.NOT_STOPPING] for spans in starts if C.NOT_STOPPING in spans]  # "no para" denies nothing
    if any(C.INHALER in spans for spans in starts):
        goes_on += [spans[C.NO_USE] for spans in starts if C.NO_USE in spans]  # "the spray does nothing" neither
    for i, spans in enumerate(starts):
        for concept, span in spans.items():
            r.at.setdefault(concept, {})[i] = span
            if concept in CARRIES_NO:
                r.carries.update(range(*span))
            elif concept is C.NO and not any(a <= i and span[1] <= b and b - a > 1 for a, b in goes_on):
                r.negative.update(range(*span))
    for i, word in enumerate(said.words):  # "twelve tablets" in figures; a strength in milligrams is no count
        if _many(word) and (r.is_(C.TABLETS, i + 1) or r.is_(C.TABLETS, i + 2)) and said.words[i + 1] not in UNITS:
            r.at.setdefault(C.TOO_MUCH, {}).setdefault(i, (i, i + 1))
    for i, word in enumerate(said.words):
        if word.isdecimal() and len(word) == FAST_DIGITS and int(word) in FAST:
            r.at.setdefault(C.FAST_RATE, {})[i] = (i, i + 1)
        elif word in HIGH_FEVER and _has_a_tenth(said, i):
            r.at.setdefault(C.FEVER, {})[i] = (i, i + 2)
    r.hard = [
        i == 0 or i == count - 1 or (bool(HARD & set(said.gaps[i])) and not _decimal(said, i)) for i in range(count)
    ]
    if as_if:  # "as if somebody stood on it": no condition
        r.at[C.AS_IF] = as_if
        within = [i for i in r.at.get(C.IMAGINED, {}) if any(a <= i < b for a, b in as_if.values())]
        for i in within:
            del r.at[C.IMAGINED][i]
    for i, span in r.at.get(C.RESIGNED, {}).items():  # "why bother" is less than hopeless
        if r.at.get(C.HOPELESS, {}).get(i) == span:
            del r.at[C.HOPELESS][i]
    thinners = [(a, b) for a, b in r.at.get(C.THINNERS, {}).values() if b - a > 1]
    for i in [i for i in r.at.get(C.BLOOD, {}) if any(a <= i < b for a, b in thinners)]:
        del r.at[C.BLOOD][i]  # "blood thinner" is no blood
    for i, word in enumerate(said.words):
        if word.startswith(MMOL) and i > 1 and said.gaps[i - 1] in FRACTION:
            sugar[i] = (i, i + 1)  # "2.3 mmol": a meter says nothing else in it
            meters.append((i - 2, i - 2))
    if sugar:
        r.at[C.SUGAR] = sugar  # "blood sugar" is no blood, but it is sugar
    if named := [*sugar.values(), *meters]:
        for i in range(count - 1):
            if _low_sugar(r, i, named):
                r.at.setdefault(C.SUGAR_LOW, {})[i] = (i, i + 1)
    r.fresh = [r.hard[i] or r.is_(C.BUT, i) for i in range(count)]
    r.stop = [r.fresh[i] or r.is_(C.CLAUSE, i) for i in range(count)]
    return r


def _within_a_sign(span: Span, starts: Sequence[dict[C, Span]]) -> bool:
    """Whether it is part of a longer phrase of a sign: "on my eye" in "a curtain came down on my eye"."""
    start, end = span
    before = range(max(0, start - REACH), start + 1)
    return any(
        b >= end + (i == start) for i in before for key, (_, b) in starts[i].items() if key not in HOW_IT_IS_SAID
    )


def _nothing_but(r: _Read, concept: C) -> bool:
    """Whether a message says this and nothing else; a number alone is a reading."""
    if any(word.isdecimal() for word in r.said.words):
        return False
    said = {k for span in r.at.get(concept, {}).values() for k in range(*span)}
    return bool(said) and all(i in said or r.is_(C.FILLER, i) for i in range(len(r.said.words) - 1))


def _matches(r: _Read, sign: Sign) -> Iterator[list[Span]]:
    """Yield the places where all parts of a sign stand close together in one clause."""
    if sign.alone and not _nothing_but(r, sign.parts[0][0]):
        return
    places = []
    for part in sign.parts:
        spans = [span for concept in part for span in r.at.get(concept, {}).values()]
        if part[0] in BODY or part[0] in FUNCTIONS:
            spans = [s for s in spans if not _is_fine(r, s, part[0] in BODY)]
        if not spans:
            return
        places.append(sorted(set(spans)))
    for first in places[0][:MOST]:
        chosen = [first]
        for others in places[1:]:
            near_by = [
                p for p in others if any(_close(r, c, p) for c in chosen) and not any(_overlap(p, c) for c in chosen)
            ]
            if not near_by:
                break
            chosen.append(min(near_by, key=lambda p: abs(p[0] - first[0])))
        else:
            yield sorted(chosen)


def _overlap(a: Span, b: Span) -> bool:
    return a[0] < b[1] and b[0] < a[1]


def _close(r: _Read, a: Span, b: Span) -> bool:
    low, high = min(a, b), max(a, b)
    return high[0] < low[1] + REACH and not any(r.fresh[low[0] + 1 : high[0] + 1])


def _is_fine(r: _Read, span: Span, body: bool) -> bool:
    """Whether a part of the body, or what it does, is said to be well: "face fine, arms fine", "breathing is good"."""
    for i in range(span[1], min(span[1] + 4, len(r.said.words) - 1)):
        if r.said.gaps[i]:
            return False
        if r.is_(C.FINE, i):
            return i - 1 not in r.negative and (body or i not in r.negative)
        if not (r.is_(C.BETWEEN, i) or r.is_(C.FILLER, i)) or i in r.negative:
            return False
    return False


def _sighting(
    r: _Read, sign: Sign, spans: Sequence[Span], matches: Sequence[tuple[Sign, list[Span]]]
) -> Sighting | None:
    start, end = r.sentence(spans)
    level = sign.level
    if len(sign.parts) == 1 and _of_a_thing(r, spans[0][0]):
        return None  # "my phone passed out"
    lonely = len(sign.parts) == 1 and _lonely(r, spans[0])
    if lonely and not _nothing_else(r, spans[0]):
        return None  # "a blue jumper"
    if sign.unless and any(r.anywhere(concept, start, end) for concept in sign.unless):
        if sign.softened is None:
            return None
        level = sign.softened
    denied = _denied(r, spans)
    if denied is True:
        return Sighting(sign.key, level, denied=True, certain=False)
    if (sign.key, level) in SETTLES and _settled(r, spans):
        level = SETTLES[sign.key, level]
    when = _when(r, sign, spans, matches)
    if when is When.LONG_AGO and sign.key == NEW and any(start <= i < end for i in r.negative):
        when = When.NOW  # "out of breath making the bed, last month it was not like that"
    who = _who(r, sign, spans, when)
    if who is Who.NOBODY and _only_a_tale(r, sign, spans):
        return None
    if sign.net and (when is When.LONG_AGO or who in (Who.NOBODY, Who.ELSEWHERE) or _all_well(r, spans, end)):
        return None
    if _only_everyday(r, sign, level, spans) or _as_meant(r, sign, level, spans):
        return None
    mine = who in (Who.ME, Who.WITH_ME) and when is not When.LONG_AGO
    told_now = when in (When.NOW, When.JUST_NOW) or who is Who.WITH_ME
    evident = told_now or level is Level.TALK or sign.alone or sign.key == STRAIN or _evidence(r, sign) >= ENOUGH_TO_ACT
    certain = (
        denied is False and sign.sure and mine and evident and not lonely and not _explained(r, sign, level, spans)
    )
    return Sighting(sign.key, level, when, who, certain)


# A complaint during a test, where nothing more need be said: "my knee hurts".
IN_A_TEST = Sign("new_joint_pain", Level.STOP_REST, (tuple(sorted(BODY)), (C.HURT, C.SHARP)))


@memoized
def complaint_in_a_test(text: str, words: Lexicon) -> Sighting | None:
    """A pain that is told during a test, in the client's language or in English; None if there is none."""
    for lexicon in dict.fromkeys((words, ENGLISH)):
        r = _prepared(read(cut(plain(text), lexicon.elision), _table(lexicon), True))
        for spans in _matches(r, IN_A_TEST):
            if _denied(r, spans) is not True and not _of_another(r, r.sentence(spans)[0], spans):
                return Sighting(IN_A_TEST.key, IN_A_TEST.level, When.NOW, Who.ME, certain=True)
    return None


# --- denied, gone -------------------------------------------------------------------------------------------------


def _denied(r: _Read, spans: Sequence[Span]) -> bool | None:
    """True: denied. None: perhaps (a list whose "no" may or may not reach so far). False: not denied."""
    own = {i for a, b in spans for i in range(a, b)}
    if own & r.negative:  # "cannot breathe" holds its own "no"; one that starts outside of it reaches in
        return any(i not in own and own & set(range(*span)) for i, span in r.at.get(C.NO, {}).items())
    chores = set(r.at.get(C.TASKS, {}).values())  # "no air, I do not even reach the bathroom"
    answers = [_no_before(r, span[0], own) for span in spans if span not in chores or len(spans) == 1]
    if True in answers or _no_after(r, spans[-1][1]) or any(_wholly_denied(r, b) for _, b in spans):
        return True
    crossed = any("," in r.said.gaps[i] for i in range(spans[0][0] + 1, spans[-1][0] + 1))
    return None if None in answers or (crossed and len(spans) < 3 and r.negative) else False


def _no_before(r: _Read, start: int, own: set[int]) -> bool | None:
    """Look leftwards from a part of a sign for a "no" that reaches it; own: the words of the sign itself."""
    listed = sure = False
    i = start
    while i > 0 and start - i < FAR and not r.stop[i]:
        listed = listed or r.said.joined[i]
        if r.said.gaps[i]:
            if i - 1 not in r.carries or "," not in r.said.gaps[i]:
                return False
            listed = True
        i -= 1
        if i in own:
            continue
        if i in r.negative:
            return True if not listed or sure or _or_follows(r, start) else None
        if r.is_(C.NOR, i):
            sure = True
        elif r.is_(C.AND, i):
            if r.is_(C.MINE, i + 1):
                return False  # "no chest pain and I fainted"
            listed = True
        elif i not in r.carries and not r.is_(C.BETWEEN, i) and not r.is_(C.FILLER, i) and not _inside(r, i):
            return False
    return False


def _inside(r: _Read, i: int) -> bool:
    """Whether a word belongs to a longer phrase that may stand between."""
    return any(a < i < b for a, b in r.at.get(C.BETWEEN, {}).values())


def _or_follows(r: _Read, start: int) -> bool:
    """Whether an "or" shows that the list goes on from its "no": "no chest pain, dizziness or fainting"."""
    for i in range(start + 1, min(start + FAR, len(r.said.words))):
        if r.stop[i]:
            return False
        if r.is_(C.NOR, i):
            return True
    return False


def _no_after(r: _Read, end: int) -> bool:
    """Whether a "no" closes the clause: "chest pain: none", "Brustschmerzen habe ich keine"."""
    last = len(r.said.words) - 1
    for i in range(end, min(end + 6, last)):
        span = r.at.get(C.NO_AFTER, {}).get(i)
        if span is not None and any(a <= i < b for a, b in r.at.get(C.WORST, {}).values()):
            return False  # "a terrible headache, never had one like it"
        if span is not None and (r.said.gaps[span[1]] or span[1] >= last):
            return True
        if span is not None and span[1] - i > 1 and span[1] in r.negative:
            return True  # "fainted I have not no worries"
        if span is not None and r.is_(C.NOR, span[1]):
            return True  # "breathless I am not, neither on the stairs nor lying down", without a comma
        if span is not None and span[1] - i >= ROUND:
            return True  # "a hypo I have not had once this week"
        if (i > end and r.said.gaps[i]) or not (r.is_(C.BETWEEN, i) or r.is_(C.FILLER, i) or i in r.carries):
            return False
        if i == end and HARD & set(r.said.gaps[i]) - {"?"}:
            return False
    return False


def _wholly_denied(r: _Read, end: int) -> bool:
    """Whether a denial in so many words stands right behind: "a hypo I have not had once this week"."""
    span = r.at.get(C.NO_AFTER, {}).get(end)
    return span is not None and span[1] - end >= ROUND


def _settled(r: _Read, spans: Sequence[Span]) -> bool:
    """Whether it is said to have gone again; "not gone" and "has not passed" are no such thing."""
    end = spans[-1][1]
    if r.anywhere(C.SPREADS, *r.sentence(spans)):
        return False  # what spreads has not gone
    for i, (_, over) in sorted(r.at.get(C.SETTLED, {}).items()):
        if i >= end:
            return not any(k in r.negative for k in range(max(end, i - 3), over + 1))  # "ça passe pas"
    return False


# --- when and who -------------------------------------------------------------------------------------------------


def _when(r: _Read, sign: Sign, spans: Sequence[Span], matches: Sequence[tuple[Sign, list[Span]]]) -> When:
    start, end = r.sentence(spans)
    own = _part(r, spans, start, end)
    if sign.named and _bygone(r, spans[0][0], own) and not any(r.anywhere(c, start, end) for c in (C.NOW, C.JUST_NOW)):
        return When.LONG_AGO
    again = [_part(r, s, start, end) for other, s in matches if other.key == sign.key and start <= s[0][0] < end]
    if any(r.anywhere(C.PAST, *part) for part in (own, *again)) and not any(
        r.anywhere(concept, *part) for concept in (C.NOW, C.JUST_NOW) for part in (own, *again)
    ):
        return When.LONG_AGO  # "bulimic at school, now I eat normally"; "my leg swelled in 2016, a clot"
    if r.anywhere(C.JUST_NOW, start, end):
        return When.JUST_NOW
    if r.anywhere(C.NOW, start, end) and not _well_by_now(r, start, end):
        return When.NOW
    if _long_ago(r, spans, start, end, [m for m in matches if m[0].key != sign.key]):
        return When.LONG_AGO
    return When.EARLIER_TODAY if r.anywhere(C.EARLIER, start, end) else When.UNKNOWN


def _well_by_now(r: _Read, start: int, end: int) -> bool:
    """Whether every "now" only says that it is well by now: "that was in 2010, today I am fine"."""
    fine = {i for i in r.at.get(C.FINE, {}) if i - 1 not in r.negative}
    now = [b for i, (_, b) in r.at.get(C.NOW, {}).items() if start <= i < end]
    return r.anywhere(C.PAST, start, end) and all(fine & set(range(b, b + WIDE)) for b in now)


def _long_ago(
    r: _Read, spans: Sequence[Span], start: int, end: int, matches: Sequence[tuple[Sign, list[Span]]]
) -> bool:
    """Whether it is past: said in the sentence, or in the next one if that names no sign itself.

    What is said of another sign in a part of its own does not count: "a stroke in 2015, and my chest hurts".
    """
    following = next((i for i in range(end + 1, len(r.hard)) if r.hard[i]), end)
    if following > end and not any(end <= s[0][0] < following for _, s in matches):
        end = following
    mine = _part(r, spans, start, end)
    others = [_part(r, s, start, end) for _, s in matches if start <= s[0][0] < end]
    return any(
        start <= i < end and not any(a <= i < b and (a, b) != mine for a, b in others) for i in r.at.get(C.PAST, {})
    )


def _bygone(r: _Read, start: int, part: Span) -> bool:
    """Whether the words before the name of a condition make it history: "after my stroke", "in hospital with one"."""
    return any(part[0] <= i and 0 <= start - b <= BESIDE for i, (_, b) in r.at.get(C.BYGONE, {}).items())


def _part(r: _Read, spans: Sequence[Span], start: int, end: int) -> Span:
    """The part of a sentence a sign stands in: between commas and joining words."""

    def edge(i: int) -> bool:
        return bool(r.said.gaps[i]) or r.fresh[i] or r.is_(C.AND, i) or r.said.joined[i]

    first = next((i for i in range(spans[0][0], start, -1) if edge(i)), start)
    last = next((i for i in range(spans[-1][1], end) if edge(i)), end)
    return first, last


def _who(r: _Read, sign: Sign, spans: Sequence[Span], when: When) -> Who:
    start, end = r.sentence(spans)
    clause = next(i for i in range(spans[0][0], -1, -1) if r.fresh[i])
    mine = r.holds(C.MINE, start, end)
    despair = sign.key == "despair"  # "I wonder if I should end it" is no idle question
    if not despair and r.holds(C.IMAGINED, clause, spans[0][0]):
        return Who.NOBODY
    if r.at.get(C.LAUGHTER) or _is_a_figure(r, sign, spans, mine and when in (When.NOW, When.JUST_NOW)):
        return Who.NOBODY
    if _of_another(r, start, spans):
        far = when is not When.JUST_NOW and r.anywhere(C.ELSEWHERE, start, end)
        named = sign.named and when not in (When.NOW, When.JUST_NOW)
        return Who.ELSEWHERE if far or named or when is When.LONG_AGO else Who.WITH_ME
    if "?" in r.said.gaps[end] and not mine and when not in (When.NOW, When.JUST_NOW):
        return Who.NOBODY
    return Who.ME


def _is_a_figure(r: _Read, sign: Sign, spans: Sequence[Span], mine_and_now: bool) -> bool:
    """Whether it is a story or a figure of speech: a film, "a heart attack when I saw the bill"."""
    start, end = r.sentence(spans)
    own = {i for a, b in spans for i in range(a, b)}

    def said(concept: C) -> bool:
        return any(start <= i < end and i not in own for i in r.at.get(concept, {}))

    loose = len(sign.parts) == 1 or any(C.BREATHE in part or C.HEART in part for part in sign.parts)
    return (said(C.FICTION) and not mine_and_now) or (loose and said(C.FIGURATIVE))


def _all_well(r: _Read, spans: Sequence[Span], end: int) -> bool:
    """Whether it is said to be well; "fine again" and "fine now" are no such thing."""
    again = any(r.anywhere(concept, spans[0][0], end) for concept in (C.SETTLED, C.NOW, C.JUST_NOW))
    return not again and r.anywhere(C.FINE, spans[0][0] + 1, end)


def _explained(r: _Read, sign: Sign, level: Level, spans: Sequence[Span]) -> bool:
    """Whether it may well have an everyday cause, be enjoyed, or be over: "my leg is numb, I sat on it"."""
    start, end = r.sentence(spans)
    numb = sign.key == "stroke_signs" and any(C.LIMB in part or C.FACE in part for part in sign.parts)
    mild = numb or sign.level in MILD
    if (mild or sign.key in EXPLAINED) and _everyday(r, start, end):
        return True
    if sign.key == "palpitations" and r.said_of((C.EFFORT, C.TASKS), start, end) and not r.anywhere(C.REST, start, end):
        return True  # what a heart does in a run
    if (mild or sign.key in ASKED_WHEN_OVER) and _settled(r, spans):
        return True
    enjoyed = level is Level.STOP_REST or (level is Level.SAME_DAY and sign.key in ("palpitations", "head_injury"))
    return enjoyed and r.anywhere(C.FINE, spans[-1][1], end)


def _everyday(r: _Read, start: int, end: int) -> bool:
    """Whether an everyday cause is named, and not to say that it is none."""
    for i, (_, b) in r.at.get(C.EVERYDAY, {}).items():
        alike = any(a < i <= a + WIDE for a in r.at.get(C.AS_IF, {}))  # "as on a roller coaster" explains nothing
        no = any(k in r.negative for k in (*range(i - WIDE, i), b))  # "and not from the roller coaster"
        if start <= i < end and not alike and not no:
            return True
    return False


def _only_everyday(r: _Read, sign: Sign, level: Level, spans: Sequence[Span]) -> bool:
    """Whether what would only be asked about, or is mild and well again, has an everyday cause, and came not suddenly.

    "A stiff back from gardening", "arms like lead after the push-ups", "a numb foot from sitting, gone now".
    """
    start, end = r.sentence(spans)
    caused = _everyday(r, start, end) or _after_effort(r, start, end)
    if not caused or r.said_of(NOT_EVERYDAY, start, end):
        return False
    well = r.anywhere(C.FINE, spans[0][0] + 1, end) or _settled(r, spans)
    return sign.net or (not sign.sure and sign.key in MAY_BE_EVERYDAY) or (level in MILD and well)


def _after_effort(r: _Read, start: int, end: int) -> bool:
    """Whether exercise is named right behind an "after"."""
    after = [b for i, (_, b) in r.at.get(C.BYGONE, {}).items() if start <= i < end]
    return any(0 <= i - b <= BESIDE for i in r.at.get(C.EFFORT, {}) for b in after)


def _as_meant(r: _Read, sign: Sign, level: Level, spans: Sequence[Span]) -> bool:
    """Whether it is what exercise does, and said to be well: "out of breath after the stairs, as it should be"."""
    start, end = r.sentence(spans)
    if level not in MILD or sign.key not in PUFFED or not r.anywhere(C.EFFORT, start, end):
        return False
    well = [s for i, s in r.at.get(C.FINE, {}).items() if spans[0][1] <= i and not {i, i - 1, i - 2} & r.negative]
    fine = {k for span in well for k in range(span[0] - 1, span[1])}  # "again" in "normal again" is none
    again = any(start <= i < end and i not in fine for i in r.at.get(C.AGAIN, {}))
    return bool(fine) and not again and not r.said_of((C.SUDDEN, C.ONSET, C.SEVERE, C.PAST), start, end)


def _of_a_thing(r: _Read, start: int) -> bool:
    """Whether a thing is the subject: named right before the sign, and nobody besides."""
    first = next(i for i in range(start, -1, -1) if r.stop[i])
    before = sorted((i, b) for i, (_, b) in r.at.get(C.THING, {}).items() if first <= i and b <= start)
    if not before or start - before[-1][1] > BESIDE or r.anywhere(C.OTHERS, first, start):
        return False
    thing, end = before[-1]  # "I was on the sofa and passed out": no thing did
    mine = any(first <= i < start and i != thing - 1 for i in r.at.get(C.MINE, {}))
    return not mine and not r.anywhere(C.AND, end, start)


def _lonely(r: _Read, span: Span) -> bool:
    """Whether it is one word that is mostly said of something else, and nothing here shows how it is meant."""
    if span[1] - span[0] > 1 or not r.is_(C.ONLY_BESIDE, span[0]):
        return False
    start, end = r.sentence([span])
    beside = (i for concept in COMPANY for i, _ in r.of(concept) if start <= i < end and i != span[0])
    return all(r.is_(C.ONLY_BESIDE, i) for i in beside)


def _nothing_else(r: _Read, span: Span) -> bool:
    return all(span[0] <= i < span[1] or r.is_(C.FILLER, i) for i in range(len(r.said.words) - 1))


def _only_a_tale(r: _Read, sign: Sign, spans: Sequence[Span]) -> bool:
    """Whether it is beyond doubt no sign: it befell the hero of a story, or is laughed about and a figure of speech."""
    start, end = r.sentence(spans)
    heroes = [b for i, (_, b) in r.at.get(C.HERO, {}).items() if start <= i < end]
    if heroes and not r.anywhere(C.MINE, min(heroes), end):
        return True
    told_of = r.at.get(C.FICTION, {})
    if told_of and r.anywhere(C.IMAGINED, start, end) and not r.anywhere(C.MINE, start, spans[-1][1]):
        return True  # "what are the signs of a stroke? it is for a quiz"
    if sign.named and any(start <= a and 0 <= spans[0][0] - b < WIDE for a, b in told_of.values()):
        return True  # "a film about heart attacks"
    if sign.named and r.anywhere(C.NEARLY, start, end) and r.said_of((C.FICTION, C.FIGURATIVE), start, end):
        return True  # "that goal nearly gave me a heart attack"
    return bool(r.at.get(C.LAUGHTER)) and _is_a_figure(r, sign, spans, False)


def _of_another(r: _Read, start: int, spans: Sequence[Span]) -> bool:
    """Whether another person is the subject: named before the sign, and the client not named in between."""
    last = spans[-1][0]
    others = r.at.get(C.OTHERS, {}).items()
    before = [span for i, span in others if start <= i <= last and not _a_small_word(r.at, i, span)]
    if not before:
        return False
    company = r.at.get(C.COMPANY, {}).values()  # "a lady in my class"
    mine = (i for i in r.at.get(C.MINE, {}) if not any(a <= i < b for a, b in company))
    return not any(max(b for _, b in before) <= i < last for i in mine)


def _a_small_word(at: Mapping[C, Mapping[int, Span]], i: int, span: Span) -> bool:
    """Whether a word for somebody else is spelled like a small word: "el" is "he" and, far more often, "the"."""
    return span[1] - span[0] == 1 and i in at.get(C.FILLER, ())


# --- "is it happening now?" ---------------------------------------------------------------------------------------


@cache
def _answers(words: Lexicon) -> Table[Answer | C]:
    table: dict[Answer | C, str] = {answer: words.answers.get(answer, "") for answer in Answer}
    table[C.OTHERS] = words.concepts.get(C.OTHERS, "")
    table[C.DONT_KNOW] = words.concepts.get(C.DONT_KNOW, "")
    table[C.FILLER] = words.concepts.get(C.FILLER, "")
    return compiled(table, words, C.FILLER)


_FIRST = (  # what wins when several are said: "yes, but it is my flatmate"
    Answer.OTHER_PERSON,
    Answer.NOT_A_SIGN,
    Answer.HESITANT,
    Answer.OVER,
    Answer.YES,
    Answer.NO,
)
BRIEF = 7  # words of a message that a plain "no" or a person's name may stand in


@memoized
def answer_to_alarm(text: str, words: Lexicon) -> Answer | None:
    """What somebody answers to "Is it happening to you right now?"; None for no answer we understand."""
    return heard_of_alarm(text, words)[0]


def heard_of_alarm(text: str, words: Lexicon) -> tuple[Answer | None, int]:
    """The answer, and how many words of the message speak for it."""
    folded = plain(text)
    best: Answer | None = None
    score = 0  # words that speak for it, in the language that knows most of them
    for lexicon in dict.fromkeys((words, ENGLISH, *LANGUAGES.values())):
        pieces = cut(folded, lexicon.elision)
        table = _answers(lexicon)
        heard, covered = _answer(read(pieces, table, lexicon in (words, ENGLISH)))
        if lexicon is not words and 2 * covered < len(bare_words(folded)):
            continue  # "me operaron en enero": an English "me" in a Spanish sentence says nothing
        if covered > score:
            best, score = heard, covered
    return best, score


def _answer(said: Said[Answer | C]) -> tuple[Answer | None, int]:
    """The answer one language hears, and how many words speak for it. A longer phrase hides shorter ones in it."""
    starts = [said.spans(i) for i in range(len(said.words))]
    small = {i for i, found in enumerate(starts) if C.FILLER in found}
    every = [
        (key, span)
        for i, found in enumerate(starts)
        for key, span in found.items()
        if key is not C.FILLER and not (key is C.OTHERS and i in small and span[1] - span[0] == 1)
    ]
    spans = [
        (key, a)
        for key, a in every
        if not any(b[0] <= a[0] and a[1] <= b[1] and b[1] - b[0] > a[1] - a[0] for _, b in every)
    ]
    covered = len({i for _, (a, b) in spans for i in range(a, b)})
    keys = {key for key, _ in spans}
    count = len(said.words) - 1
    if C.OTHERS in keys and count <= BRIEF and Answer.NOT_A_SIGN not in keys:
        keys.add(Answer.OTHER_PERSON)
    if C.DONT_KNOW in keys and Answer.HESITANT not in keys:
        return None, covered
    if "?" in said.gaps[-1] and keys <= {Answer.YES, Answer.NO, C.OTHERS}:
        return None, 0
    if Answer.NO in keys and Answer.YES in keys and len(keys) == 2:
        first = min(spans, key=lambda s: s[1])[0]
        return (Answer.YES if first is Answer.YES and count > 3 else None), covered
    for answer in _FIRST:
        if answer in keys:
            if answer is Answer.NO and count > BRIEF:
                return None, 0
            return answer, covered
    return None, 0
