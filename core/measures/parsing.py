"""Builders of `Measure.understand`: from "82,4 kg" to `Understood`, or to `Misunderstood` with the likely meaning.

Nothing here raises because of user input, and nothing is guessed silently: if a text is ambiguous the result is
`Misunderstood` with a guess, and the client is asked. Plain digits take a fast path.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise
from math import ceil, floor

from core.language import Lexicon, WordRole, lexicon_of, plain
from core.language.amounts import SMALLER, ParsedNumber, amounts
from core.language.tokens import Token, tokens
from core.measures.measure import Misunderstood, Understand, Understood, Why
from core.measures.numbers_in_text import (
    FIGURES,
    MORE_THAN_HALF_WAY,
    Result,
    a_change,
    a_range,
    asked_back,
    hedged,
    how_often,
    notes_of,
    numbers_of,
    two_in_one,
    weekdays_named,
    with_hedge,
)
from core.measures.parsing_heart import mile, pressure, pulse, pulse_counted
from core.quantity import FACTOR, Dimension, Unit, convert, convertible, half_up

__all__ = ["count", "duration", "mile", "minutes", "pressure", "pulse", "pulse_counted", "quantity_in", "rating"]

D = Decimal
TOP_RATING = 10
FEW = 4  # ours: more ratings than this are no choice, but a question not answered
NEAR_GIRTH = D("0.03")  # ours: attempts further apart than this are asked about, not averaged
NEAR_TIME = D("0.35")  # ours: test times vary more between attempts
SAME_IN_BOTH = D("0.005")  # ours: one weight given in two units, rounded in both

_SHORT = {"kg": Unit.KILOGRAM, "lb": Unit.POUND, "cm": Unit.CENTIMETRE, "bpm": Unit.BEATS_PER_MINUTE}


def quantity_in(unit: Unit, *also: Unit, attempts: bool = False) -> Understand:
    """Understand a mass, a length or a time; the value comes back in `unit`.

    also: other units people answer in. Any unit of the same dimension is understood when typed; including METRE lets a
    bare "1.65" be metres, since nobody is 1.65 cm tall. attempts: "94 and 94.5" is the mean of two attempts, if they
    are close.
    """
    dimension = FACTOR[unit][0] if unit in FACTOR else None
    near = NEAR_TIME if dimension not in (Dimension.MASS, Dimension.LENGTH) else NEAR_GIRTH
    clock = Unit.SECOND if dimension is Dimension.TIME else None
    metres = Unit.METRE in also
    short_units = {name: u for name, u in _SHORT.items() if u in (unit, *also)}

    def understand(text: str, words: Lexicon, prefer: Unit | None) -> Result:
        assumed = unit if prefer is None or prefer is unit or not convertible(prefer, unit) else prefer
        if (short := FIGURES.fullmatch(text)) is not None and not (attempts and _two_decimals(short[1])):
            figures, typed = short.groups()
            value = D(figures.replace(",", "."))
            if typed:
                if (said := short_units.get(typed)) is not None:
                    return Understood(convert(value, said, unit), said, said_unit=True)
            elif assumed is unit and not metres:
                return Understood(value, unit)
            elif assumed not in (Unit.STONE, Unit.FOOT) and not (metres and value < 3):
                return Understood(convert(value, assumed, unit), assumed)
        parsed = numbers_of(text, words, dimension, clock=clock)
        if isinstance(parsed, Misunderstood):
            return parsed
        found, toks = parsed
        if len(found) > 1:
            found = [h for h in found if not how_often(toks, h)] or found  # "99 cm, measured twice"
        if len(found) == 2 and (pair := _pair(toks, found, assumed)) is not None:
            found = [pair]
        typed_units = {h.typed for h in found if isinstance(h.typed, Unit) and convertible(h.typed, unit)}
        if len(found) > 1 and len(typed_units) == 1:  # "94 and 94.5 cm": the unit is given once, for all
            assumed = typed_units.pop()
        results = [_in(h, unit, assumed, also, prefer) for h in found]
        about = hedged(toks)
        if attempts and len(found) == 1 and (twice := _twice(found[0], results[0], near)) is not None:
            return twice
        if len(results) > 1:
            return _several(toks, found, results, near if attempts else None, about)
        return asked_back(with_hedge(results[0], about), toks)

    return understand


def _twice(parsed: ParsedNumber, result: Result, near: Decimal) -> Misunderstood | None:
    """Ask whether "94,95" is 94 and 95, if two attempts are expected."""
    both = two_in_one(parsed)
    if both is None or not isinstance(result, Understood) or abs(both[0] - both[1]) > near * min(both):
        return None
    mean = result.value * (both[0] + both[1]) / 2 / parsed.value
    return Misunderstood(Why.TOO_MANY_NUMBERS, replace(result, value=mean, attempts=2))


def _two_decimals(figures: str) -> bool:
    return len(figures) > 3 and figures[-3] in ".,"


def _in(parsed: ParsedNumber, unit: Unit, assumed: Unit, also: Sequence[Unit], prefer: Unit | None) -> Result:
    """One number as a value in `unit`."""
    if parsed.pound is not None:
        if prefer is Unit.POUND:
            return Understood(convert(parsed.value, Unit.POUND, unit), Unit.POUND, said_unit=True)
        kilograms = parsed.value * parsed.pound
        return Misunderstood(Why.OTHER_UNIT, Understood(convert(kilograms, Unit.KILOGRAM, unit), Unit.KILOGRAM))
    if parsed.unit is not None:
        if not convertible(parsed.unit, unit):
            return Misunderstood(Why.OTHER_UNIT)
        typed = parsed.typed if isinstance(parsed.typed, Unit) else parsed.unit
        said = True
    else:
        metres = parsed.value < 3 and Unit.METRE in also
        typed, said = Unit.METRE if metres else assumed, False
    meant = Understood(convert(parsed.value, parsed.unit or typed, unit), typed, said_unit=said)
    if parsed.minus:
        return Misunderstood(Why.NO_NUMBER, meant)
    if parsed.digits and not parsed.whole and typed in (Unit.STONE, Unit.FOOT):
        return _two_units_or_decimal(parsed, typed, unit, meant)
    return meant


def _two_units_or_decimal(parsed: ParsedNumber, typed: Unit, unit: Unit, meant: Understood) -> Result:
    """Ask whether "12.4" stones are 12 st 4 lb, or "5.10" feet 5 ft 10 in; "12.5 st" is taken literally."""
    whole, _, fraction = parsed.digits.replace(",", ".").partition(".")
    small, per = SMALLER[typed]
    if typed is Unit.STONE and meant.said_unit and fraction in ("5", "50", "25", "75"):
        return meant
    if typed is Unit.FOOT and parsed.value > 9:
        return meant
    if 0 < len(fraction) < 3 and int(fraction) < per and isinstance(small, Unit) and whole:
        value = convert(D(whole) * per + D(fraction), small, unit)
        return Misunderstood(Why.NOT_WHOLE, replace(meant, value=value))
    return Misunderstood(Why.NOT_WHOLE, meant)


def _pair(toks: Sequence[Token], found: Sequence[ParsedNumber], assumed: Unit) -> ParsedNumber | None:
    """Parse "12 4" from somebody who uses stones, "5 7" from somebody who uses feet."""
    large, small = found
    if assumed not in (Unit.STONE, Unit.FOOT) or not (large.bare and small.bare and large.whole and small.whole):
        return None
    unit, per = SMALLER[assumed]
    if toks[large.last + 1 : small.first] or small.value >= per or not isinstance(unit, Unit):
        return None
    return replace(large, value=large.value * per + small.value, unit=unit, typed=assumed, digits="", last=small.last)


def _several(
    toks: Sequence[Token], found: Sequence[ParsedNumber], results: Sequence[Result], near: Decimal | None, about: bool
) -> Result:
    """Several numbers: the same twice, attempts, a range, or too many."""
    values = [r for r in results if isinstance(r, Understood)]
    if len(values) != len(results):
        return Misunderstood(Why.TOO_MANY_NUMBERS)
    low, high = min(v.value for v in values), max(v.value for v in values)
    in_two_units = len({v.unit for v in values if v.said_unit}) > 1
    if low == high or (in_two_units and high - low <= SAME_IN_BOTH * high):  # "82.4 kg (181.7 lb)"
        return asked_back(with_hedge(values[0], about), toks)
    if len(found) == 2 and a_range(toks, *found):
        return Misunderstood(Why.A_RANGE)
    if near is not None and len(values) <= 3 and high - low <= near * low:
        mean = sum((v.value for v in values), start=D(0)) / len(values)
        said = any(v.said_unit for v in values)
        return asked_back(replace(values[-1], value=mean, attempts=len(values), said_unit=said, hedged=about), toks)
    return Misunderstood(Why.TOO_MANY_NUMBERS, _parted_by_a_space(toks, found, values))


def _parted_by_a_space(
    toks: Sequence[Token], found: Sequence[ParsedNumber], values: Sequence[Understood]
) -> Understood | None:
    """ "82 4" is probably 82.4: ask."""
    first, second = found[0], found[1]
    between = toks[first.last + 1 : second.first]
    if len(found) > 2 or not (first.whole and second.whole) or first.value < 10 or len(second.digits) != 1:
        return None
    if not all(t.text in ".," for t in between):
        return None
    scale = values[0].value / first.value
    return replace(values[0], value=(first.value + second.value / 10) * scale)


def rating(text: str, words: Lexicon, prefer: Unit | None) -> Result:
    """Understand a 0-10 rating: "7", "seven", "7/10", "7 out of 10"; half points need confirmation."""
    stripped = text.strip()
    if stripped.isascii() and stripped.isdigit() and len(stripped) < 4:
        return Understood(D(stripped), Unit.POINT)
    said = numbers_of(text, words, None, fractions=False, changes=True)
    if isinstance(said, Misunderstood):
        return replace(said, either=_between(text, words)) if said.why is Why.A_RANGE else said
    found, toks = said
    if len(found) == 3 and [h.value for h in found[1:]] == [1, 2] and toks[found[1].last + 1].text == "/":  # "6 1/2"
        return Misunderstood(Why.NOT_WHOLE, either=_few(found[0].value, found[0].value + 1))
    changes = len(found) == 1 and a_change(toks, found[0])  # "2 more", but also "better 7"
    found = [h for h in found if not a_change(toks, h)] or found
    if any(h.unit not in (None, Unit.POINT) or h.foreign or h.pound is not None for h in found):
        return Misunderstood(Why.OTHER_UNIT)
    if len(found) == 2 and any(t.has(WordRole.OUT_OF) for t in toks[found[0].last + 1 : found[1].first]):
        if found[1].value != 10:
            return Misunderstood(Why.OTHER_UNIT)
        found = found[:1]
    if len(found) > 1:
        if all(h.value == found[0].value for h in found):
            found = found[:1]
        else:
            why = Why.A_RANGE if a_range(toks, *found[:2]) else Why.TOO_MANY_NUMBERS
            return Misunderstood(why, either=_few(found[0].value, found[1].value) if len(found) == 2 else ())
    meant = Understood(found[0].value, Unit.POINT, found[0].unit is not None, hedged=hedged(toks))
    if found[0].minus or changes:
        return Misunderstood(Why.NO_NUMBER, meant)
    if not found[0].whole:
        nearest = replace(meant, value=half_up(meant.value, 0))
        return Misunderstood(Why.NOT_WHOLE, nearest, _few(floor(meant.value), ceil(meant.value)))
    return asked_back(meant, toks)


def _between(text: str, words: Lexicon) -> tuple[Decimal, ...]:
    """The ratings of "between 6 and 7"."""
    found = amounts(tokens(plain(text), lexicon_of(words)), None, fractions=False)
    return _few(found[0].value, found[1].value) if len(found) == 2 else ()


def _few(one: Decimal | int, other: Decimal | int) -> tuple[Decimal, ...]:
    """The ratings from one number to another, if they are few."""
    low, high = sorted((D(one), D(other)))
    if (
        low < 0
        or high > TOP_RATING
        or high - low >= FEW
        or not (low == low.to_integral() and high == high.to_integral())
    ):
        return ()
    return tuple(low + n for n in range(int(high - low) + 1))


def count(unit: Unit) -> Understand:
    """Understand a whole number of `unit`: "12", "twelve", "12 times"; "none" is 0, "every day" 7 of DAY.

    For REPETITION the notes record what happened, and the measure decides: "arms_used" if the arms helped,
    "more_than_half_way" if the last rise was past half-way when time ended and is not yet included in the number.
    """

    def understand(text: str, words: Lexicon, prefer: Unit | None) -> Result:
        stripped = text.strip()
        if stripped.isascii() and stripped.isdigit() and len(stripped) < 5:
            return Understood(D(stripped), unit)
        toks = tokens(plain(text), lexicon_of(words))
        if unit is Unit.DAY and any(t.has(WordRole.EVERY_DAY) for t in toks):
            return Understood(D(7), unit, said_unit=True)
        said = numbers_of(text, words, None, thousands=True, fractions=unit is Unit.REPETITION, nothing=True)
        if isinstance(said, Misunderstood):
            return said
        found, toks = said
        found = [h for h in found if h.unit not in (Unit.SECOND, Unit.MINUTE)] or found  # "12 in 30 s"
        notes = notes_of(toks) if unit is Unit.REPETITION else frozenset()
        allowed = {None, unit, Unit.REPETITION, Unit.DAY, Unit.SESSION} if unit is not Unit.STEP else {None, unit}
        if any(h.unit not in allowed or h.foreign or h.pound is not None for h in found):
            return Misunderstood(Why.OTHER_UNIT)
        about = hedged(toks)
        if len(found) == 2 and any(t.has(WordRole.OUT_OF) for t in toks[found[0].last + 1 : found[1].first]):
            done = Understood(found[0].value, unit, hedged=about)
            slash = any(t.text == "/" for t in toks[found[0].last + 1 : found[1].first])
            return Misunderstood(Why.TOO_MANY_NUMBERS, done) if slash else done
        if len(found) > 1:
            if len(found) == 2 and a_range(toks, *found[:2]):
                return Misunderstood(Why.A_RANGE)
            return Misunderstood(Why.TOO_MANY_NUMBERS)
        parsed = found[0]
        meant = Understood(parsed.value, unit, parsed.unit is not None, hedged=about, notes=notes)
        if parsed.minus:
            return Misunderstood(Why.NO_NUMBER, meant)
        if not parsed.whole:
            lower = parsed.value // 1
            if unit is Unit.REPETITION:  # a half is not more than half: ask
                return Misunderstood(Why.NOT_WHOLE, replace(meant, value=lower, notes=notes | {MORE_THAN_HALF_WAY}))
            return Misunderstood(Why.NOT_WHOLE, replace(meant, value=half_up(parsed.value, 0)))
        return asked_back(meant, toks)

    return understand


def duration(unit: Unit, *, attempts: bool = False) -> Understand:
    """Understand a test time, in SECOND or MINUTE: "14.5", "1:02", "2 min 5".

    An unfinished test has no time (NOT_COMPLETED): "4 rises then stopped". Help from the arms is noted.
    """
    parsed = quantity_in(unit, attempts=attempts)

    def understand(text: str, words: Lexicon, prefer: Unit | None) -> Result:
        if FIGURES.fullmatch(text) is not None:
            return parsed(text, words, prefer)
        toks = tokens(plain(text), lexicon_of(words))
        if any(t.has(WordRole.STOPPED) for t in toks):
            return Misunderstood(Why.NOT_COMPLETED)
        result = parsed(text, words, prefer)
        if isinstance(result, Misunderstood) and result.why is Why.OTHER_UNIT:
            said = amounts(toks, None)
            if len(said) == 1 and said[0].unit is Unit.REPETITION and said[0].value < 5:
                return Misunderstood(Why.NOT_COMPLETED)
        if isinstance(result, Understood) and (notes := notes_of(toks)):
            return replace(result, notes=notes)
        return result

    return understand


def minutes(text: str, words: Lexicon, prefer: Unit | None) -> Result:
    """Understand minutes of activity in a week: "150", "2 hours", "1h30", "5 x 30", "20 + 30"; "none" is 0.

    Vigorous minutes, if distinguished, are the second value: "90 and 30 vigorous". "30 min a day" needs confirmation as
    210; several times in one answer, as their sum.
    """
    stripped = text.strip()
    if stripped.isascii() and stripped.isdigit() and len(stripped) < 5:
        return Understood(D(stripped), Unit.MINUTE)
    said = numbers_of(text, words, Dimension.TIME, thousands=True, nothing=True, clock=Unit.MINUTE, foreign=True)
    if isinstance(said, Misunderstood):
        return said
    found, toks = said
    about = hedged(toks)
    meant = Understood(_in_minutes(found[0]), Unit.MINUTE, _said_time(found[0]), hedged=about)
    if found[0].minus:
        return Misunderstood(Why.NO_NUMBER, meant)
    hard = [h for h in found if any(t.has(WordRole.VIGOROUS) for t in toks[h.last + 1 : _next(toks, found, h)])]
    if all(h.bare and _times(h, toks) for h in found):
        return Misunderstood(Why.ONE_NUMBER_MISSING)  # "I walked twice", "4 times, once only half": how long?
    if len(found) == 1:
        return _one_time(found[0], meant, toks, bool(hard), words)
    if len(found) == 2 and len(hard) == 1:
        return _told_apart(found, hard[0], toks, about)
    if len(found) == 2 and a_range(toks, found[0], found[1]):
        return Misunderstood(Why.A_RANGE)
    if len(found) == 2 and (product := _product(found, toks, about)) is not None:
        return product
    if not all(h.bare or _said_time(h) for h in found):
        return Misunderstood(Why.TOO_MANY_NUMBERS)
    total = replace(meant, value=sum(map(_in_minutes, found), start=D(0)), said_unit=any(map(_said_time, found)))
    timed = _said_time(found[0])  # "45 mins swimming and 40 on the bike"
    plus = all(
        any(t.text == "+" or (timed and t.has(WordRole.AND)) for t in toks[a.last + 1 : b.first])
        for a, b in pairwise(found)
    )
    return asked_back(total, toks) if plus else Misunderstood(Why.TOO_MANY_NUMBERS, total)


def _next(toks: Sequence[Token], found: Sequence[ParsedNumber], parsed: ParsedNumber) -> int:
    return next((h.first for h in found if h.first > parsed.last), len(toks))


def _times(parsed: ParsedNumber, toks: Sequence[Token]) -> bool:
    """Whether a number counts times: "twice", "4 x", "une seule fois"."""
    return any(t.has(WordRole.TIMES) for t in toks[parsed.first : parsed.last + 3])


def _one_time(parsed: ParsedNumber, meant: Understood, toks: Sequence[Token], hard: bool, words: Lexicon) -> Result:
    if parsed.foreign and parsed.unit not in (Unit.DAY, Unit.SESSION):
        return Misunderstood(Why.OTHER_UNIT)
    if parsed.foreign:
        return Misunderstood(Why.ONE_NUMBER_MISSING)  # "5 days", without the minutes
    if hard:  # "75 vigorous"
        return asked_back(replace(meant, value=D(0), second=meant.value), toks)
    if _said_time(parsed) and any(t.has(WordRole.EVERY_DAY) and " " in t.text for t in toks):  # "daily" is a habit
        return asked_back(replace(meant, value=meant.value * 7), toks)
    if _said_time(parsed) and (days := weekdays_named(toks, words)) > 1:
        return asked_back(replace(meant, value=meant.value * days), toks)
    if any(t.has(WordRole.EACH_DAY) for t in toks):
        return Misunderstood(Why.TOO_MANY_NUMBERS, replace(meant, value=meant.value * 7))
    return asked_back(meant, toks)


def _told_apart(found: Sequence[ParsedNumber], hard: ParsedNumber, toks: Sequence[Token], about: bool) -> Result:
    """Parse "90 and 30 vigorous"; "90 min, 30 of them hard" needs confirmation as 60 and 30."""
    other = found[0] if hard is found[1] else found[1]
    if not all(h.bare or _said_time(h) for h in found):
        return Misunderstood(Why.TOO_MANY_NUMBERS)
    easy, vigorous = _in_minutes(other), _in_minutes(hard)
    meant = Understood(easy, Unit.MINUTE, any(map(_said_time, found)), second=vigorous, hedged=about)
    within = any(t.has(WordRole.OUT_OF) for t in toks[hard.first : _next(toks, found, hard)])
    if within and vigorous <= easy:
        return Misunderstood(Why.TOO_MANY_NUMBERS, replace(meant, value=easy - vigorous))
    return asked_back(meant, toks)


def _product(found: Sequence[ParsedNumber], toks: Sequence[Token], about: bool) -> Result | None:
    """Parse "5 x 30" and "3 times 20 min"; "30 min on 5 days" needs confirmation."""
    small, large = sorted(found, key=lambda h: h.value)
    if _said_time(small) or small.value > 14 or not small.whole or (large.foreign and not large.bare):
        return None
    meant = Understood(_in_minutes(large) * small.value, Unit.MINUTE, _said_time(large), hedged=about)
    end = found[1].last + 2
    if any(t.has(WordRole.TIMES) for t in (*toks[small.first : small.last + 1], *toks[found[0].last + 1 : end])):
        return asked_back(meant, toks)
    explicit = found[0] is small and _said_time(large)  # "5 walks of 20 minutes"
    if explicit and any(t.has(WordRole.DAYS) for t in toks[small.first : large.first]):
        return asked_back(meant, toks)
    if any(t.has(WordRole.EACH_DAY) for t in toks) and any(
        t.has(WordRole.DAYS) for t in toks[small.first : small.last + 2]
    ):
        return asked_back(meant, toks)  # "30 min a day, 5 days"
    if small.foreign or any(t.has(WordRole.DAYS) for t in toks):
        return Misunderstood(Why.TOO_MANY_NUMBERS, meant)
    return None


def _said_time(parsed: ParsedNumber) -> bool:
    return parsed.unit is not None and not parsed.foreign


def _in_minutes(parsed: ParsedNumber) -> Decimal:
    if parsed.unit is None or parsed.foreign:
        return parsed.value
    return convert(parsed.value, parsed.unit, Unit.MINUTE)
