"""One message, several answers: "82.4 and energy 7", "waist 94 hip 102"; and corrections: "no, 82.4".

A number without a name belongs to the measure that was asked for. Another measure takes it only if named, or if the
unit typed is used by that measure alone; numbers are never assigned by size.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from itertools import pairwise

from core.language import Lexicon, UnitPart, WordRole, lexicon_of, plain
from core.language.amounts import amounts
from core.language.cache import memoized
from core.language.tokens import UNKNOWN, Token, tokens
from core.measures.measure import Measure, Misunderstood, Understood, Why
from core.quantity import FACTOR, Dimension, Unit, convertible

_ONE_NUMBER = re.compile(r"\s*\d{1,6}(?:[.,]\d{1,3})?\s*", re.ASCII)
_CUTS = frozenset(",;.!?()")
ACTIVITY = "activity_minutes"
HIGHEST = 280  # mmHg: ours, above it two numbers are no blood pressure
LONGEST_LIST = 12  # numbers in one message; more cannot be an answer to a check-in


@dataclass(frozen=True, slots=True)
class Answer:
    """What one message says about one measure, named by its key."""

    measure: str
    heard: Understood | Misunderstood


@dataclass(slots=True)
class _Piece:
    """Tokens `first` to `last` of the message, between separators, and the measure they are for, if any."""

    first: int
    last: int
    numbers: list[int] = field(default_factory=list)
    named: str = ""
    only_name: bool = False
    key: str = ""


def answers_in(
    text: str,
    words: Lexicon,
    asked: Measure | None,
    others: Sequence[Measure] = (),
    prefer: Unit | None = None,
    prefers: Mapping[str, Unit] | None = None,
) -> tuple[Answer, ...]:
    """The answers in a message, in order; empty if no measure was asked and none is recognised.

    asked: the measure of the open question.  others: measures that may also be answered now. prefer: the client's unit
    for `asked`; prefers: for the others, by key.
    """
    likes = {**(prefers or {}), **({asked.key: prefer} if asked is not None and prefer is not None else {})}
    if asked is not None and _ONE_NUMBER.fullmatch(text):
        return _answers(asked, text, words, likes)
    found = _named_apart(text, words, asked, others, likes)
    if asked is None or asked.understand is None or asked.bounds.second_possible is None:
        return found
    whole = asked.understand(text, words, likes.get(asked.key))
    if not isinstance(whole, Understood) or whole.second is None:
        return found
    both = any(isinstance(a.heard, Understood) and a.heard.second is not None for a in found)
    return found if both else (Answer(asked.key, whole),)  # two numbers of one measure: "18:30, pulse 128"


def _named_apart(
    text: str, words: Lexicon, asked: Measure | None, others: Sequence[Measure], likes: Mapping[str, Unit]
) -> tuple[Answer, ...]:
    """The answers of a longer message, each number with the measure it is named for."""
    known = {m.key: m for m in (*others, *((asked,) if asked is not None else ())) if m.understand is not None}
    folded = plain(text)
    toks = tokens(folded, lexicon_of(words))
    pieces = _pieces(toks)
    if sum(len(p.numbers) for p in pieces) > LONGEST_LIST:
        return (Answer(asked.key, Misunderstood(Why.TOO_MANY_NUMBERS)),) if asked is not None else ()
    _claim(toks, pieces, known, asked, centimetres=words.centimetres_of_mercury)
    said: dict[str, list[str]] = {}
    for i, piece in enumerate(pieces):
        if not piece.key:
            continue
        end = piece.last + (piece.last + 1 < len(toks) and toks[piece.last + 1].text == "?")
        part = folded[toks[piece.first].start : toks[end].end]
        beside = i > 0 and pieces[i - 1].key == piece.key
        if beside:
            gap = folded[toks[pieces[i - 1].last].end : toks[piece.first].start]
            said[piece.key][-1] += gap + part
        else:
            said.setdefault(piece.key, []).append(part)
    if asked is not None and not (said.keys() & known.keys()):
        return _answers(asked, text, words, likes)
    answers: list[Answer] = []
    for key, parts in said.items():
        if key in known:
            answers += _answers(known[key], ", ".join(parts), words, likes)
    return tuple(answers)


def _answers(measure: Measure, text: str, words: Lexicon, likes: Mapping[str, Unit]) -> tuple[Answer, ...]:
    if measure.understand is None:
        return ()
    return (Answer(measure.key, measure.understand(text, words, likes.get(measure.key))),)


def _pieces(toks: Sequence[Token]) -> list[_Piece]:
    """Cut at commas, full stops and "and", and around names."""
    pieces: list[_Piece] = []
    start = 0
    for i, token in enumerate(toks):
        if token.text in _CUTS or token.has(WordRole.AND):
            if i > start:
                pieces += _by_names(toks, start, i - 1)
            start = i + 1
    if start < len(toks):
        pieces += _by_names(toks, start, len(toks) - 1)
    return pieces


def _by_names(toks: Sequence[Token], first: int, last: int) -> list[_Piece]:
    """Cut one stretch so that each piece has at most one name: "waist 94 hip 102", "94 waist 102 hip"."""
    marks: list[tuple[int, bool]] = []  # position, whether it is a name
    for i in range(first, last + 1):
        if _is_number(toks, i):
            marks.append((i, False))
        elif toks[i].entry.measures and not (i > first and _is_number(toks, i - 1) and toks[i].entry.units):
            marks.append((i, True))
    names = [i for i, is_name in marks if is_name]
    cuts: list[int] = []  # a new piece starts here
    if marks and names:
        numbers_first = not marks[0][1] and marks[-1][1]
        if numbers_first:
            cuts = [i + 1 for i in names if i < last]
        else:
            cuts = [i for n, i in enumerate(names) if n > 0 or not marks[0][1]]
    bounds = [first, *cuts, last + 1]
    pieces = []
    for a, b in pairwise(bounds):
        if b > a:
            pieces.append(_piece(toks, a, b - 1))
    return pieces


def _piece(toks: Sequence[Token], first: int, last: int) -> _Piece:
    inside = range(first, last + 1)
    names = [i for i in inside if toks[i].entry.measures and not (i > first and _is_number(toks, i - 1))]
    if not names:  # "94 waist": the name follows its number
        names = [i for i in inside if toks[i].entry.measures and not toks[i].entry.units]
    numbers = [i for i in inside if _is_number(toks, i)]
    named = sorted(toks[names[0]].entry.measures)[0] if names else ""
    rest = [toks[i] for i in inside if i not in names]
    only = bool(names) and not numbers and all(t.has(WordRole.FILLER) or not t.word for t in rest)
    return _Piece(first, last, numbers, named, only)


def _is_number(toks: Sequence[Token], i: int) -> bool:
    token = toks[i]
    if token.clock:
        return True
    if token.has(WordRole.NOTHING) and token.entry.number is None:
        return False
    return token.entry.number is not None and not token.entry.weak


def _claim(
    toks: Sequence[Token],
    pieces: list[_Piece],
    known: Mapping[str, Measure],
    asked: Measure | None,
    *,
    centimetres: bool,
) -> None:
    """Assign each piece with a number to a measure; pieces without one go with the preceding piece."""
    waiting = ""
    for piece in pieces:
        if piece.only_name:
            waiting = _named(piece.named, asked)
            piece.key = ""
            continue
        if piece.numbers:
            if piece.named:
                piece.key = _named(piece.named, asked)
            elif waiting:
                piece.key = waiting
            else:
                piece.key = _by_unit(toks, piece, known, asked, centimetres=centimetres)
        waiting = ""
    if asked is not None:
        _leave_what_cannot_be(toks, pieces, asked)
        named = any(p.named == asked.key and p.numbers for p in pieces)
        for piece in pieces:
            if piece.numbers and not piece.named and piece.key == asked.key and named:
                piece.key = _before(pieces, piece, asked.key)
    before = asked.key if asked is not None else ""
    for piece in pieces:
        if piece.numbers or piece.only_name:
            before = piece.key or before
        else:
            piece.key = before if any(p.key == before and p.numbers for p in pieces) else ""


def _leave_what_cannot_be(toks: Sequence[Token], pieces: list[_Piece], asked: Measure) -> None:
    """A bare number too large for the question, beside an amount of something else, is of that: "20 min on Tuesday and
    40 on Thursday" is no energy."""
    amount = [p for p in pieces if p.numbers and any(not _fits(asked, u) for u in _units(toks, p))]
    for piece in pieces if amount else ():
        bare = piece.key == asked.key and not piece.named and piece.numbers and not _units(toks, piece)
        values = [toks[i].entry.number for i in piece.numbers]
        high = asked.bounds.possible.high
        if bare and high is not None and all(v is not None and v > high for v in values):
            piece.key = ""


def _units(toks: Sequence[Token], piece: _Piece) -> list[Unit]:
    found = amounts(toks[piece.first : piece.last + 1], None, fractions=False)
    return [h.unit for h in found if h.unit is not None]


def _before(pieces: Sequence[_Piece], piece: _Piece, key: str) -> str:
    """A bare number right after a named one belongs to it ("waist 94, 94.5"); elsewhere it is left unassigned."""
    i = next(n for n, p in enumerate(pieces) if p is piece)
    return key if i and pieces[i - 1].key == key else ""


def _named(key: str, asked: Measure | None) -> str:
    return asked.key if asked is not None and key == asked.second_called else key


def _by_unit(
    toks: Sequence[Token],
    piece: _Piece,
    known: Mapping[str, Measure],
    asked: Measure | None,
    *,
    centimetres: bool,
) -> str:
    """The measure of an unnamed piece: the asked one if possible, else the only one that uses the unit typed."""
    found = amounts(toks[piece.first : piece.last + 1], None, fractions=False)
    units = tuple(dict.fromkeys(h.unit for h in found if h.unit is not None))
    bare = any(h.bare for h in found) or not found
    pair = _is_pressure(toks[piece.first : piece.last + 1]) or (centimetres and _in_centimetres(toks))
    pressure = next((k for k, m in known.items() if m.unit is Unit.MILLIMETRE_OF_MERCURY), None)
    if asked is not None and asked.unit is not Unit.MILLIMETRE_OF_MERCURY and pair and pressure is not None:
        return pressure
    if asked is not None and (bare or any(_fits(asked, u) for u in units)):
        return asked.key
    if pair and pressure is not None:
        return pressure
    for unit in units:
        if unit in FACTOR and FACTOR[unit][0] is Dimension.TIME:
            if _only_minutes(toks, piece) and ACTIVITY in known:
                return ACTIVITY
            continue  # minutes and seconds are ambiguous: "128/82 after 5 min of rest"
        owners = [k for k, m in known.items() if _owns(m, unit)]
        if len(owners) == 1:
            return owners[0]
    return ""


def _only_minutes(toks: Sequence[Token], piece: _Piece) -> bool:
    """Whether a piece is an amount of minutes and nothing else: "7/10, 100 min"."""
    parts = {Unit.MINUTE, UnitPart.HOUR}
    inside = toks[piece.first : piece.last + 1]
    return any(parts & set(t.entry.units) for t in inside) and all(
        t.digits or t.entry.number is not None or parts & set(t.entry.units) or t.has(WordRole.HEDGE) for t in inside
    )


def _owns(measure: Measure, unit: Unit) -> bool:
    return unit is measure.unit or convertible(unit, measure.unit)


def _fits(asked: Measure, unit: Unit) -> bool:
    if _owns(asked, unit) or unit in asked.units:
        return True
    if asked.unit is Unit.BEATS_PER_MINUTE:
        return unit in (Unit.SECOND, Unit.MINUTE)
    if asked.second_called:
        return unit in (Unit.BEATS_PER_MINUTE, Unit.SECOND)
    both = {Unit.REPETITION, Unit.SESSION, Unit.DAY}
    return unit in both and asked.unit in both | {Unit.MINUTE, Unit.SECOND}


def _in_centimetres(toks: Sequence[Token]) -> bool:
    """ "19,5/12,5", or "13/8" and nothing else: a blood pressure in centimetres. With more words "13/8" is a day."""
    numbers = [t.entry.number for t in toks if t.entry.number is not None]
    strokes = sum(t.has(WordRole.OVER) for t in toks)
    if len(numbers) != 2 or strokes != 1 or any(t.entry.units for t in toks):
        return False
    high, low = numbers
    alone = len(toks) == 3
    return (alone or any(n % 1 for n in numbers)) and 7 <= high <= HIGHEST // 10 and 4 <= low <= high - 1


def _is_pressure(toks: Sequence[Token]) -> bool:
    """ "128/82", "128 over 82": two numbers of two or three figures with a slash, or what is said for it."""
    for a, stroke, b in zip(toks, toks[1:], toks[2:], strict=False):
        if stroke.has(WordRole.OVER) and len(a.digits) in (2, 3) and len(b.digits) in (2, 3):
            high, low = a.entry.number, b.entry.number
            if high is not None and low is not None and 60 <= high <= HIGHEST and 30 <= low <= high - 10:
                return not any(t.entry.units and Unit.MILLIMETRE_OF_MERCURY not in t.entry.units for t in toks)
    return False


def whole_numbers(text: str, words: Lexicon) -> list[int]:
    """The whole numbers in a text, as digits or words, in order; at most twelve."""
    found = amounts(tokens(plain(text), lexicon_of(words)), None, fractions=False)
    return [int(h.value) for h in found if h.whole and not h.minus][:LONGEST_LIST]


def names_in(text: str, words: Lexicon) -> frozenset[str]:
    """The measures named in a text."""
    return frozenset(key for token in tokens(plain(text), lexicon_of(words)) for key in token.entry.measures)


@memoized
def correction(text: str, words: Lexicon) -> str | None:
    """The corrected text: "82.4" for "no, 82.4" or "I meant 82.4"; None if the message is not a correction.

    "no", "sorry" and the like count only if a number follows immediately ("sorry I am late, 82.4" corrects nothing).
    "not 82.4 but 82.6" gives "82.6".
    """
    folded = plain(text)
    toks = tokens(folded, lexicon_of(words))
    numbers = [i for i in range(len(toks)) if _is_number(toks, i)]
    if not numbers or len(toks) > 40:
        return None
    meant = [i for i, t in enumerate(toks) if t.has(WordRole.MEANT) and i < numbers[-1]]
    if meant:
        return folded[toks[meant[-1] + 1].start :].lstrip(" :,-")
    instead = len(toks) <= 6 and len(numbers) == 1 and any(t.has(WordRole.MEANT) for t in toks[numbers[0] + 1 :])
    if instead and not any(t.word and t.entry is UNKNOWN for t in toks[: numbers[0]]):
        return folded[toks[_back(toks, numbers[0])].start :]  # "82.6 instead"
    if toks[0].has(WordRole.SORRY) or toks[0].text == "*":
        for token in toks[1 : numbers[0]]:
            if token.word and not (
                token.has(WordRole.SORRY)
                or token.has(WordRole.FILLER)
                or token.has(WordRole.NOT)
                or token.entry.measures
            ):
                return None
        if numbers[0] > 0 and len(numbers) > 1 and toks[numbers[0] - 1].has(WordRole.NOT):
            return folded[toks[numbers[1]].start :]
        return folded[toks[_back(toks, numbers[0])].start :]
    if numbers[0] > 0 and toks[numbers[0] - 1].has(WordRole.NOT) and len(numbers) > 1:
        return folded[toks[numbers[1]].start :]
    return None


def _back(toks: Sequence[Token], i: int) -> int:
    """Extend to the measure's name right before the number."""
    while i > 0 and (toks[i - 1].entry.measures or (toks[i - 1].text in ":=" and i > 1 and toks[i - 2].entry.measures)):
        i -= 1
    return i
