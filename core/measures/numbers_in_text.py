"""Candidate numbers for a reading in an answer, and the words around them. Used by the builders in `parsing`."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from functools import cache

from core.language import Lexicon, WordRole, lexicon_of, plain
from core.language.amounts import ParsedNumber, amounts
from core.language.tokens import UNKNOWN, Token, tokens
from core.measures.measure import Misunderstood, Understood, Why
from core.quantity import Dimension, Unit

D = Decimal
Result = Understood | Misunderstood
NO_NUMBER = Misunderstood(Why.NO_NUMBER)
LARGEST_CHANGE = 30  # ours: a larger number before "less" or "more" is a reading, and the word a remark
ARMS_USED = "arms_used"
MORE_THAN_HALF_WAY = "more_than_half_way"
FIGURES = re.compile(r"\s*(\d{1,4}(?:[.,]\d{1,3})?) ?([a-z]{0,3})\s*", re.ASCII)  # the fast path: "82.4", "82.4 kg"


def numbers_of(
    text: str,
    words: Lexicon,
    dimension: Dimension | None,
    *,
    thousands: bool = False,
    fractions: bool = True,
    points: bool = True,
    clock: Unit | None = None,
    nothing: bool = False,
    changes: bool = False,
    foreign: bool = False,
) -> tuple[list[ParsedNumber], tuple[Token, ...]] | Misunderstood:
    """Find the numbers that may be the reading, leaving out times of day, day numbers and differences.

    thousands, fractions, points, clock: see `amounts`.  nothing: "none" counts as 0.  changes, foreign: also return "2
    more" and numbers with another measure's unit.  Returns at least one number, or why there is none.
    """
    toks = tokens(plain(text), lexicon_of(words))
    found = amounts(toks, dimension, thousands=thousands, fractions=fractions, points=points, clock=clock)
    if any(t.junk for t in toks):
        return Misunderstood(Why.TOO_MANY_NUMBERS) if found else NO_NUMBER
    if not found:
        none = next((i for i, t in enumerate(toks) if t.has(WordRole.NOTHING)), None) if nothing else None
        if none is None or any(t.word and t.entry is UNKNOWN for t in toks):
            return NO_NUMBER  # "I didn't sleep" says nothing about minutes
        return [ParsedNumber(D(0), none, none)], toks
    kept = [h for h in found if not _a_time(toks, h)]
    if len(kept) > 1:
        kept = [h for h in kept if not _labelled(toks, h)] or kept
    if not changes:
        kept = [h for h in kept if not a_change(toks, h)]
    if not kept:
        return NO_NUMBER
    if not foreign:
        kept = [h for h in kept if not h.foreign]
        if not kept:
            return Misunderstood(Why.OTHER_UNIT)
    before = toks[kept[0].first - 1] if kept[0].first else None
    if before is not None and before.has(WordRole.BOUND) and not before.has(WordRole.HEDGE):
        return Misunderstood(Why.A_RANGE)
    if any(_and_some(toks, h) for h in kept):
        return Misunderstood(Why.A_RANGE)
    return kept, toks


def _and_some(toks: Sequence[Token], parsed: ParsedNumber) -> bool:
    """Whether a whole number is only where the value begins: "70 something"."""
    after = toks[parsed.last + 1] if parsed.last + 1 < len(toks) else None
    return parsed.whole and after is not None and after.has(WordRole.AND_SOME)


def _a_time(toks: Sequence[Token], parsed: ParsedNumber) -> bool:
    """Whether a bare number is an hour: "7 pm"."""
    after = toks[parsed.last + 1] if parsed.last + 1 < len(toks) else None
    return parsed.bare and parsed.value <= 24 and after is not None and after.has(WordRole.CLOCK) and after.word


def _labelled(toks: Sequence[Token], parsed: ParsedNumber) -> bool:
    """Whether a bare number refers to something else or is denied: "day 3", "at 7", "not 82"."""
    if not parsed.first or not parsed.bare:
        return False
    before = toks[parsed.first - 1]
    if before.has(WordRole.NOT):
        return True
    return parsed.whole and parsed.value <= 31 and (before.has(WordRole.LABEL) or before.has(WordRole.CLOCK))


def two_in_one(parsed: ParsedNumber) -> tuple[Decimal, Decimal] | None:
    """The two whole numbers in "70,72", which may also be one decimal number; None if only one is plausible."""
    first, _, second = parsed.digits.replace(",", ".").partition(".")
    if len(second) not in (2, 3) or not first or second.startswith("0"):
        return None
    return D(first), D(second)


def a_change(toks: Sequence[Token], parsed: ParsedNumber) -> bool:
    """Whether a number is a difference ("lost 2 kg", "2 less"); not if a comma intervenes ("better, 7")."""
    before = toks[parsed.first - 1] if parsed.first else None
    if before is not None and parsed.first > 1 and (before.has(WordRole.HEDGE) or before.has(WordRole.FILLER)):
        before = toks[parsed.first - 2]  # "put on about 3 kg"
    after = toks[parsed.last + 1] if parsed.last + 1 < len(toks) else None
    if parsed.value >= LARGEST_CHANGE and parsed.unit in (None, Unit.KILOGRAM, Unit.CENTIMETRE):
        after = None  # "76.8, down a bit"
    return any(t is not None and t.has(WordRole.CHANGE) and t.text != "+" for t in (before, after)) or (
        before is not None and before.text == "+" and parsed.first == 1
    )


def a_range(toks: Sequence[Token], low: ParsedNumber, high: ParsedNumber) -> bool:
    """Whether two numbers are the ends of a range: "82 to 84", "82 or 83"."""
    return any(t.has(WordRole.RANGE) for t in toks[low.last + 1 : high.first])


def how_often(toks: Sequence[Token], parsed: ParsedNumber) -> bool:
    """Whether a number says how often something was done: "measured twice", "3 times"."""
    if not parsed.bare or parsed.value > 5:
        return False
    around = toks[parsed.first : parsed.last + 2]
    return any(t.word and t.has(WordRole.TIMES) for t in around)


def weekdays_named(toks: Sequence[Token], words: Lexicon) -> int:
    """How many days of the week a text names: "mon wed and fri" are 3, "monday to friday" are 5."""
    known = _weekdays(words)
    found = [(i, known[t.text]) for i, t in enumerate(toks) if t.text in known]
    if len(found) < 2:
        return len(found)
    between = toks[found[0][0] : found[-1][0]]
    if any(t.word and t.text not in known and not (t.has(WordRole.AND) or t.has(WordRole.RANGE)) for t in between):
        return 1  # "sat in the sun"
    if len(found) == 2 and any(t.has(WordRole.RANGE) for t in between):
        return (found[1][1] - found[0][1]) % 7 + 1
    return len({day for _, day in found})


@cache
def _weekdays(words: Lexicon) -> dict[str, int]:
    if words.calendar is None:
        return {}
    return {plain(name): n for n, names in enumerate(words.calendar.weekdays) for name in names}


def hedged(toks: Sequence[Token]) -> bool:
    """Whether a hedge is next to a number, without punctuation between: "about 82", "82 or so"."""
    for i, token in enumerate(toks):
        if token.has(WordRole.HEDGE):
            for step in (-1, 1):
                for k in (i + step, i + 2 * step):
                    if not 0 <= k < len(toks) or toks[k].text in ",;":
                        break
                    if toks[k].entry.number is not None:
                        return True
    return False


def with_hedge(result: Result, hedged: bool) -> Result:
    """Mark an understood answer as hedged."""
    return replace(result, hedged=True) if hedged and isinstance(result, Understood) else result


def asked_back(result: Result, toks: Sequence[Token]) -> Result:
    """A question ("is 82 too much?") is not an answer, though it may contain one."""
    if isinstance(result, Understood) and any(t.text == "?" for t in toks):
        return Misunderstood(Why.NO_NUMBER, result)
    return result


def notes_of(toks: Sequence[Token]) -> frozenset[str]:
    """Notes on the attempt: whether the arms helped, and whether the last rise was past half-way."""
    notes = set()
    for i, token in enumerate(toks):
        denied = any(t.has(WordRole.NOT) or t.has(WordRole.NOTHING) for t in toks[max(0, i - 2) : i])
        if token.has(WordRole.ARMS) and not denied:
            notes.add(ARMS_USED)
        if token.has(WordRole.HALF_WAY) and not denied:
            notes.add(MORE_THAN_HALF_WAY)
    return frozenset(notes)
