"""Builders of `Measure.understand`: from "82,4 kg" to `Understood`, or to `Misunderstood` with the likely meaning.

Nothing here raises because of what somebody typed, and nothing is guessed silently: where two readings of a text are
possible the answer is `Misunderstood` with a guess, which is asked back. Plain figures take a short way.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise

from core.language import Role, Words, lexicon_of, plain
from core.language.amounts import SMALLER, Heard, amounts
from core.language.tokens import Token, tokens
from core.measures.shape import Misunderstood, Understand, Understood, Why
from core.quantity import FACTOR, Dimension, Unit, convert, convertible, half_up

D = Decimal
NOTES_ARMS = "arms_used"
NOTES_HALF_WAY = "more_than_half_way"
NEAR_GIRTH = D("0.03")  # ours: attempts further apart than this are asked about, not averaged
NEAR_TIME = D("0.35")  # ours: times of a test vary more between attempts
WINDOWS = (10, 15, 20, 30, 60)  # seconds people count a pulse for

_FIGURES = re.compile(r"\s*(\d{1,4}(?:[.,]\d{1,3})?) ?([a-z]{0,3})\s*", re.ASCII)
_SHORT = {"kg": Unit.KILOGRAM, "lb": Unit.POUND, "cm": Unit.CENTIMETRE, "bpm": Unit.BEATS_PER_MINUTE}

Result = Understood | Misunderstood
NO_NUMBER = Misunderstood(Why.NO_NUMBER)


def quantity_in(unit: Unit, *also: Unit, attempts: bool = False) -> Understand:
    """Understand a mass, a length or a time; the value comes back in `unit`.

    also: other units people answer in. Any unit of the same dimension is understood when it is typed; METRE among
    them lets a bare "1.65" be metres, since no one is 1.65 cm tall.
    attempts: "94 and 94.5" is the mean of two attempts, if they lie close together.
    """
    dimension = FACTOR[unit][0] if unit in FACTOR else None
    near = NEAR_TIME if dimension not in (Dimension.MASS, Dimension.LENGTH) else NEAR_GIRTH
    clock = Unit.SECOND if dimension is Dimension.TIME else None

    def understand(text: str, words: Words, prefer: Unit | None) -> Result:
        assumed = prefer if prefer is not None and convertible(prefer, unit) else unit
        if (short := _FIGURES.fullmatch(text)) is not None and assumed not in SMALLER:
            figures, typed = short.groups()
            value = D(figures.replace(",", "."))
            if not typed and not (value < 3 and Unit.METRE in also):
                return Understood(convert(value, assumed, unit), assumed)
            if typed and _SHORT.get(typed) in (unit, *also):
                return Understood(convert(value, _SHORT[typed], unit), _SHORT[typed], said_unit=True)
        said = _hear(text, words, dimension, clock=clock)
        if isinstance(said, Misunderstood):
            return said
        found, toks = said
        if len(found) == 2 and (pair := _pair(toks, found, assumed)) is not None:
            found = [pair]
        results = [_in(heard, unit, assumed, also, prefer) for heard in found]
        hedged = _hedged(toks)
        if len(results) > 1:
            return _several(toks, found, results, near if attempts else None, hedged)
        return _asked_back(_with_hedge(results[0], hedged), toks)

    return understand


def _in(heard: Heard, unit: Unit, assumed: Unit, also: Sequence[Unit], prefer: Unit | None) -> Result:
    """One number as a value in `unit`."""
    if heard.pound is not None:
        if prefer is Unit.POUND:
            return Understood(convert(heard.value, Unit.POUND, unit), Unit.POUND, said_unit=True)
        kilograms = heard.value * heard.pound
        return Misunderstood(Why.OTHER_UNIT, Understood(convert(kilograms, Unit.KILOGRAM, unit), Unit.KILOGRAM))
    if heard.unit is not None:
        if not convertible(heard.unit, unit):
            return Misunderstood(Why.OTHER_UNIT)
        typed = heard.typed if isinstance(heard.typed, Unit) else heard.unit
        said = True
    else:
        metres = heard.value < 3 and Unit.METRE in also
        typed, said = Unit.METRE if metres else assumed, False
    meant = Understood(convert(heard.value, heard.unit or typed, unit), typed, said_unit=said)
    if heard.minus:
        return Misunderstood(Why.NO_NUMBER, meant)
    if heard.digits and not heard.whole and typed in (Unit.STONE, Unit.FOOT):
        return _two_units_or_decimal(heard, typed, unit, meant)
    return meant


def _two_units_or_decimal(heard: Heard, typed: Unit, unit: Unit, meant: Understood) -> Result:
    """ "12.4" stones may be 12 st 4 lb, "5.10" feet 5 ft 10 in: asked back. "12.5 st" with the unit is taken as said."""
    whole, _, fraction = heard.digits.replace(",", ".").partition(".")
    small, per = SMALLER[typed]
    if typed is Unit.STONE and meant.said_unit and fraction in ("5", "50", "25", "75"):
        return meant
    if typed is Unit.FOOT and heard.value > 9:
        return meant
    if len(fraction) < 3 and int(fraction) < per and isinstance(small, Unit) and whole:
        value = convert(D(whole) * per + D(fraction), small, unit)
        return Misunderstood(Why.NOT_WHOLE, replace(meant, value=value))
    return Misunderstood(Why.NOT_WHOLE, meant)


def _pair(toks: Sequence[Token], found: Sequence[Heard], assumed: Unit) -> Heard | None:
    """ "12 4" from somebody who uses stones, "5 7" from somebody who uses feet."""
    large, small = found
    if assumed not in (Unit.STONE, Unit.FOOT) or not (large.bare and small.bare and large.whole and small.whole):
        return None
    unit, per = SMALLER[assumed]
    if toks[large.last + 1 : small.first] or small.value >= per or not isinstance(unit, Unit):
        return None
    return replace(large, value=large.value * per + small.value, unit=unit, typed=assumed, digits="", last=small.last)


def _several(
    toks: Sequence[Token],
    found: Sequence[Heard],
    results: Sequence[Result],
    near: Decimal | None,
    hedged: bool,
) -> Result:
    """More than one number: the same twice, attempts, a range, or too many."""
    values = [r for r in results if isinstance(r, Understood)]
    if len(values) != len(results):
        return Misunderstood(Why.TOO_MANY_NUMBERS)
    low, high = min(v.value for v in values), max(v.value for v in values)
    if low == high or (len({v.unit for v in values if v.said_unit}) > 1 and high - low <= D("0.005") * high):
        return _asked_back(_with_hedge(values[0], hedged), toks)
    if len(found) == 2 and _a_range(toks, *found):
        return Misunderstood(Why.A_RANGE)
    units = {v.unit for v in values if v.said_unit}
    if len(units) == 1:  # "94 and 94.5 cm": the unit is said once, for all
        typed = next(iter(units))
        scale = {id(v): v for v in values if v.said_unit}
        assumed = {v.unit for v in values if not v.said_unit}
        if assumed - {typed}:
            own = results[0] if isinstance(results[0], Understood) else values[0]
            values = [v if id(v) in scale else _again(v, own, typed) for v in values]
            low, high = min(v.value for v in values), max(v.value for v in values)
    if near is not None and len(values) <= 3 and high - low <= near * low:
        mean = sum((v.value for v in values), start=D(0)) / len(values)
        said = any(v.said_unit for v in values)
        return _asked_back(replace(values[-1], value=mean, attempts=len(values), said_unit=said, hedged=hedged), toks)
    return Misunderstood(Why.TOO_MANY_NUMBERS, _split_by_a_space(toks, found, values))


def _again(bare: Understood, own: Understood, typed: Unit) -> Understood:
    """Read a bare number in the unit said for another one of the list."""
    ratio = convert(D(1), typed, bare.unit) if convertible(typed, bare.unit) else D(1)
    return replace(bare, value=bare.value * ratio, unit=typed)


def _split_by_a_space(toks: Sequence[Token], found: Sequence[Heard], values: Sequence[Understood]) -> Understood | None:
    """ "82 4" is likely 82.4."""
    first, second = found[0], found[1]
    if len(found) == 2 and first.whole and second.whole and len(second.digits) == 1 and first.value >= 10:
        if all(t.text in ".," for t in toks[first.last + 1 : second.first]):
            scale = values[0].value / first.value
            return replace(values[0], value=(first.value + second.value / 10) * scale)
    return None


def pulse(text: str, words: Words, prefer: Unit | None) -> Result:
    """Understand a resting pulse: "72", "18 in 15 s", "36 in 30", "18 x 4", "18 and 17 in 15 s"; beats a minute."""
    return _pulse(text, words, None)


def pulse_counted(window: int) -> Understand:
    """Understand the answer to a timed count of `window` seconds: a bare "18" is beats counted, "72 bpm" a rate."""

    def understand(text: str, words: Words, prefer: Unit | None) -> Result:
        return _pulse(text, words, window)

    return understand


def _pulse(text: str, words: Words, counted: int | None) -> Result:
    if counted is None and (short := _FIGURES.fullmatch(text)) is not None and short[2] in ("", "bpm"):
        return Understood(D(short[1].replace(",", ".")), Unit.BEATS_PER_MINUTE, said_unit=bool(short[2]))
    said = _hear(text, words, None, fractions=False, keep_change=False)
    if isinstance(said, Misunderstood):
        return said
    found, toks = said
    counts, window, windows = _counts_and_window(toks, found)
    if (window is not None and window not in WINDOWS) or windows > len(counts):
        return Misunderstood(Why.TOO_MANY_NUMBERS)
    if any(h.unit not in (None, Unit.BEATS_PER_MINUTE) or h.foreign or h.pound is not None for h in counts):
        return Misunderstood(Why.OTHER_UNIT)
    if not counts:
        return NO_NUMBER
    said_rate = any(h.unit is Unit.BEATS_PER_MINUTE for h in counts) and window is None
    if window is None and counted is not None and not said_rate:
        window = counted
    if len(counts) > 3:
        return Misunderstood(Why.TOO_MANY_NUMBERS)
    if len(counts) == 2 and _a_range(toks, counts[0], counts[1]):
        return Misunderstood(Why.A_RANGE)
    values = [h.value for h in counts]
    if len(values) > 1 and max(values) - min(values) > D("0.35") * min(values):
        return Misunderstood(Why.TOO_MANY_NUMBERS)
    if window is not None and any(not h.whole for h in counts):
        return Misunderstood(Why.NOT_WHOLE)
    rate = sum(values, start=D(0)) / len(values) * (D(60) / window if window else 1)
    meant = Understood(
        rate,
        Unit.BEATS_PER_MINUTE,
        said_unit=said_rate or window is not None,
        attempts=len(values),
        window=window,
        hedged=_hedged(toks),
    )
    return _asked_back(Misunderstood(Why.NO_NUMBER, meant) if any(h.minus for h in counts) else meant, toks)


def _counts_and_window(toks: Sequence[Token], found: Sequence[Heard]) -> tuple[list[Heard], int | None, int]:
    """Part the numbers into beats and seconds: returns counts, window, how many windows were said."""
    counts: list[Heard] = []
    windows: set[Decimal] = set()
    said = 0
    for i, heard in enumerate(found):
        before = toks[found[i - 1].last + 1 : heard.first] if i else toks[: heard.first]
        within = any(t.has(Role.WITHIN) or t.text == "/" for t in before)
        if heard.unit in (Unit.SECOND, Unit.MINUTE):
            windows.add(heard.value * (60 if heard.unit is Unit.MINUTE else 1))
            said += 1
        elif heard.bare and counts and heard.value in WINDOWS and within:
            windows.add(heard.value)
            said += 1
        elif heard.bare and counts and any(t.has(Role.TIMES) for t in before) and heard.value in (1, 2, 4):
            windows.add(60 / heard.value)
            said += 1
        elif heard.bare and counts and toks[heard.last].digits and "".join(t.text for t in before) == "x":
            windows.add(D(0))
        else:
            counts.append(heard)
    if len(windows) > 1:
        return counts, 0, said
    window = next(iter(windows), None)
    return (
        counts,
        (int(window) if window == window.to_integral_value() else 0) if window is not None else None,
        said,
    )


def pressure(text: str, words: Words, prefer: Unit | None) -> Result:
    """Understand a blood pressure: "128/82", "128 over 82", "128 82"; two readings at once are averaged.

    Value is systolic, second diastolic, in mmHg. A third number, or one named as the pulse, is left out. Numbers that
    are the wrong way round come back as typed: `core.doubt` asks about them.
    """
    said = _hear(text, words, None, fractions=False, keep_change=True)
    if isinstance(said, Misunderstood):
        return said
    found, toks = said
    if any(h.foreign for h in found):
        return Misunderstood(Why.OTHER_UNIT)
    stop = next((i for i, t in enumerate(toks) if "resting_heart_rate" in t.entry.measures), len(toks))
    found = [
        h
        for h in found
        if not (h.first > stop and found[0].first < stop) and h.unit in (None, Unit.MILLIMETRE_OF_MERCURY)
    ]
    if not found:
        return Misunderstood(Why.OTHER_UNIT)
    strokes = [i for i, (a, b) in enumerate(pairwise(found)) if _stroke(toks, a, b)]
    if len(found) == 3 and strokes == [1]:  # "7 128/82": the first number is something else
        found = found[1:]
    if any(not h.whole for h in found):
        return Misunderstood(Why.NOT_WHOLE)
    if len(found) == 1:
        return Misunderstood(Why.ONE_NUMBER_MISSING)
    pairs = [(found[0], found[1])]
    if len(found) == 4:
        pairs.append((found[2], found[3]))
    elif len(found) == 6 and all(40 <= found[i].value <= 130 for i in (2, 5)):  # pressure and pulse, twice
        pairs.append((found[3], found[4]))
    elif len(found) != 2 and not (len(found) == 3 and 30 <= found[2].value <= 200):
        return Misunderstood(Why.TOO_MANY_NUMBERS)
    if any(any(t.has(Role.RANGE) and t.text != "-" for t in toks[a.last + 1 : b.first]) for a, b in pairs):
        return Misunderstood(Why.A_RANGE)
    upper = sum((a.value for a, _ in pairs), start=D(0)) / len(pairs)
    lower = sum((b.value for _, b in pairs), start=D(0)) / len(pairs)
    meant = Understood(
        upper,
        Unit.MILLIMETRE_OF_MERCURY,
        said_unit=any(h.unit is not None for h in found),
        second=lower,
        attempts=len(pairs),
        hedged=_hedged(toks),
    )
    return _asked_back(meant, toks)


def _stroke(toks: Sequence[Token], upper: Heard, lower: Heard) -> bool:
    return [t.text for t in toks[upper.last + 1 : lower.first]] == ["/"]


def rating(text: str, words: Words, prefer: Unit | None) -> Result:
    """Understand a 0-10 rating: "7", "seven", "7/10", "7 out of 10"; half points are asked back."""
    stripped = text.strip()
    if stripped.isascii() and stripped.isdigit() and len(stripped) < 4:
        return Understood(D(stripped), Unit.POINT)
    said = _hear(text, words, None, fractions=False, nothing=True)
    if isinstance(said, Misunderstood):
        return said
    found, toks = said
    if any(h.unit not in (None, Unit.POINT) or h.foreign or h.pound is not None for h in found):
        return Misunderstood(Why.OTHER_UNIT)
    if len(found) == 2 and any(t.has(Role.OUT_OF) for t in toks[found[0].last + 1 : found[1].first]):
        if found[1].value != 10:
            return Misunderstood(Why.OTHER_UNIT)
        found = found[:1]
    if len(found) > 1:
        if all(h.value == found[0].value for h in found):
            found = found[:1]
        else:
            return Misunderstood(Why.A_RANGE if _a_range(toks, *found[:2]) else Why.TOO_MANY_NUMBERS)
    meant = Understood(found[0].value, Unit.POINT, found[0].unit is not None, hedged=_hedged(toks))
    if found[0].minus:
        return Misunderstood(Why.NO_NUMBER, meant)
    if not found[0].whole:
        return Misunderstood(Why.NOT_WHOLE, replace(meant, value=half_up(meant.value, 0)))
    return _asked_back(meant, toks)


def count(unit: Unit) -> Understand:
    """Understand a whole number of `unit`: "12", "twelve", "12 times"; "none" is 0, "every day" 7 of DAY.

    Of REPETITION, what happened is kept in the notes and the measure decides: "arms_used" when the arms helped,
    "more_than_half_way" when the last rise had passed half-way as time ended and is not in the number yet.
    """

    def understand(text: str, words: Words, prefer: Unit | None) -> Result:
        stripped = text.strip()
        if stripped.isascii() and stripped.isdigit() and len(stripped) < 5:
            return Understood(D(stripped), unit)
        toks = tokens(plain(text), lexicon_of(words))
        if unit is Unit.DAY and any(t.has(Role.EVERY_DAY) for t in toks):
            return Understood(D(7), unit, said_unit=True)
        said = _hear(text, words, None, thousands=True, nothing=True)
        if isinstance(said, Misunderstood):
            return said
        found, toks = said
        notes = _notes(toks) if unit is Unit.REPETITION else frozenset()
        allowed = {None, unit, Unit.REPETITION, Unit.DAY, Unit.SESSION} if unit is not Unit.STEP else {None, unit}
        if any(h.unit not in allowed or h.foreign or h.pound is not None for h in found):
            return Misunderstood(Why.OTHER_UNIT)
        hedged = _hedged(toks)
        if len(found) == 2 and any(t.has(Role.OUT_OF) for t in toks[found[0].last + 1 : found[1].first]):
            done = Understood(found[0].value, unit, hedged=hedged)
            slash = any(t.text == "/" for t in toks[found[0].last + 1 : found[1].first])
            return Misunderstood(Why.TOO_MANY_NUMBERS, done) if slash else done
        if len(found) > 1:
            if len(found) == 2 and _a_range(toks, *found[:2]):
                return Misunderstood(Why.A_RANGE)
            return Misunderstood(Why.TOO_MANY_NUMBERS)
        heard = found[0]
        meant = Understood(heard.value, unit, heard.unit is not None, hedged=hedged, notes=notes)
        if heard.minus:
            return Misunderstood(Why.NO_NUMBER, meant)
        if not heard.whole:
            lower = heard.value // 1
            if unit is Unit.REPETITION:  # a half is not yet more than half: asked
                return Misunderstood(Why.NOT_WHOLE, replace(meant, value=lower, notes=notes | {NOTES_HALF_WAY}))
            return Misunderstood(Why.NOT_WHOLE, replace(meant, value=half_up(heard.value, 0)))
        return _asked_back(meant, toks)

    return understand


def _notes(toks: Sequence[Token]) -> frozenset[str]:
    notes = set()
    for i, token in enumerate(toks):
        denied = any(t.has(Role.NOT) or t.has(Role.NOTHING) for t in toks[max(0, i - 2) : i])
        if token.has(Role.ARMS) and not denied:
            notes.add(NOTES_ARMS)
        if token.has(Role.HALF_WAY) and not denied:
            notes.add(NOTES_HALF_WAY)
    return frozenset(notes)


def duration(unit: Unit, *, attempts: bool = False) -> Understand:
    """Understand a time of a test, in SECOND or MINUTE: "14.5", "1:02", "2 min 5".

    A test that was not finished has no time (NOT_COMPLETED): "4 rises then stopped". Help of the arms is noted.
    """
    heard = quantity_in(unit, attempts=attempts)

    def understand(text: str, words: Words, prefer: Unit | None) -> Result:
        if _FIGURES.fullmatch(text) is not None:
            return heard(text, words, prefer)
        toks = tokens(plain(text), lexicon_of(words))
        if any(t.has(Role.STOPPED) for t in toks):
            return Misunderstood(Why.NOT_COMPLETED)
        result = heard(text, words, prefer)
        if isinstance(result, Misunderstood) and result.why is Why.OTHER_UNIT:
            said = amounts(toks, None)
            if len(said) == 1 and said[0].unit is Unit.REPETITION and said[0].value < 5:
                return Misunderstood(Why.NOT_COMPLETED)
        if isinstance(result, Understood) and (notes := _notes(toks)):
            return replace(result, notes=notes)
        return result

    return understand


def mile(text: str, words: Words, prefer: Unit | None) -> Result:
    """Understand a timed mile: minutes, and the pulse at the end as the second value: "14:30, 140".

    The time alone is understood without a second. "14.30" may be fourteen and a half minutes or 14.3: asked back.
    """
    said = _hear(text, words, None, fractions=False, clock=Unit.SECOND)
    if isinstance(said, Misunderstood):
        return said
    found, toks = said
    times = [h for h in found if h.unit in (Unit.MINUTE, Unit.SECOND)]
    time = times[0] if times else found[0]
    rest = [h for h in found if h.first > time.last] or [h for h in found if h.last < time.first]
    if time.unit not in (None, Unit.MINUTE, Unit.SECOND) or time.foreign:
        return Misunderstood(Why.OTHER_UNIT)
    value = convert(time.value, time.unit or Unit.MINUTE, Unit.MINUTE)
    meant = Understood(value, Unit.MINUTE, said_unit=time.unit is not None, hedged=_hedged(toks))
    if rest:
        counts, window, windows = _counts_and_window(toks, rest)
        if len(counts) != 1 or window not in (None, *WINDOWS) or windows > 1:
            return Misunderstood(Why.TOO_MANY_NUMBERS)
        if counts[0].unit not in (None, Unit.BEATS_PER_MINUTE) or counts[0].foreign:
            return Misunderstood(Why.OTHER_UNIT)
        meant = replace(meant, second=counts[0].value * (D(60) / window if window else 1), window=window)
    if time.unit is None and not time.whole and len(time.digits.replace(",", ".").partition(".")[2]) == 2:
        seconds = int(time.digits[-2:])
        if seconds < 60:
            return Misunderstood(Why.NO_NUMBER, replace(meant, value=time.value // 1 + D(seconds) / 60))
    return _asked_back(meant, toks)


def minutes(text: str, words: Words, prefer: Unit | None) -> Result:
    """Understand minutes of activity in a week: "150", "2 hours", "1h30", "5 x 30", "20 + 30"; "none" is 0.

    "30 min a day" is asked back as 210; several times in one answer are asked back as their sum.
    """
    stripped = text.strip()
    if stripped.isascii() and stripped.isdigit() and len(stripped) < 5:
        return Understood(D(stripped), Unit.MINUTE)
    said = _hear(text, words, Dimension.TIME, thousands=True, nothing=True, clock=Unit.MINUTE, keep_foreign=True)
    if isinstance(said, Misunderstood):
        return said
    found, toks = said
    hedged = _hedged(toks)
    times = [h for h in found if h.unit is not None and not h.foreign]
    bare = [h for h in found if h.bare or h.unit in (Unit.DAY, Unit.SESSION)]
    if any(h.minus for h in found):
        return Misunderstood(Why.NO_NUMBER, Understood(found[0].value, Unit.MINUTE))
    each_day = any(t.has(Role.EACH_DAY) for t in toks)
    if len(found) == 1 and not (times or bare):
        return Misunderstood(Why.OTHER_UNIT)
    if len(found) == 1 or (not times and len(bare) == 1):
        heard = (times or bare)[0]
        meant = Understood(_in_minutes(heard), Unit.MINUTE, heard.unit is not None, hedged=hedged)
        if each_day:
            return Misunderstood(Why.TOO_MANY_NUMBERS, replace(meant, value=meant.value * 7))
        return _asked_back(meant, toks)
    if len(found) == 2:
        small, large = sorted(found, key=lambda h: h.value)
        between = toks[found[0].last + 1 : found[1].first]
        if _a_range(toks, found[0], found[1]):
            return Misunderstood(Why.A_RANGE)
        if small not in times and small.value <= 14 and small.whole:
            product = Understood(_in_minutes(large) * small.value, Unit.MINUTE, large.unit is not None, hedged=hedged)
            if any(t.has(Role.TIMES) for t in (*between, *toks[found[1].last + 1 : found[1].last + 2])):
                return _asked_back(product, toks)
            if small.foreign or any(t.has(Role.DAYS) for t in toks):
                return Misunderstood(Why.TOO_MANY_NUMBERS, product)
    if len(found) == len(times) + len(bare) and all(h.unit is None or h in times for h in found):
        total = Understood(sum(map(_in_minutes, found), start=D(0)), Unit.MINUTE, bool(times), hedged=hedged)
        plus = all(any(t.text == "+" for t in toks[a.last + 1 : b.first]) for a, b in pairwise(found))
        return _asked_back(total, toks) if plus else Misunderstood(Why.TOO_MANY_NUMBERS, total)
    return Misunderstood(Why.TOO_MANY_NUMBERS)


def _in_minutes(heard: Heard) -> Decimal:
    return convert(heard.value, heard.unit, Unit.MINUTE) if heard.unit in FACTOR and heard.unit else heard.value


def _hear(
    text: str,
    words: Words,
    dimension: Dimension | None,
    *,
    thousands: bool = False,
    fractions: bool = True,
    clock: Unit | None = None,
    nothing: bool = False,
    keep_change: bool = False,
    keep_foreign: bool = False,
) -> tuple[list[Heard], list[Token]] | Misunderstood:
    """Find the numbers that may be the reading, leaving out times of day, days' numbers and differences.

    nothing: "none" counts as 0.  Returns at least one number, or why there is none.
    """
    toks = tokens(plain(text), lexicon_of(words))
    found = amounts(toks, dimension, thousands=thousands, fractions=fractions, clock=clock)
    if any(t.junk for t in toks):
        return Misunderstood(Why.TOO_MANY_NUMBERS if found else Why.NO_NUMBER)
    if not found:
        if nothing and any(t.has(Role.NOTHING) for t in toks):
            i = next(i for i, t in enumerate(toks) if t.has(Role.NOTHING))
            return [Heard(D(0), i, i)], toks
        return NO_NUMBER
    kept = [h for h in found if not _a_time(toks, h)]
    if not kept:
        return NO_NUMBER
    if len(kept) > 1:
        kept = [h for h in kept if not _labelled(toks, h)] or kept
    if len(kept) > 1 and not keep_foreign:
        kept = [h for h in kept if not h.foreign] or kept
    if not keep_change:
        same = [h for h in kept if not _a_change(toks, h)]
        if not same:
            guess = Understood(kept[0].value, Unit.POINT) if dimension is None and len(kept) == 1 else None
            return Misunderstood(Why.NO_NUMBER, guess if kept[0].bare and 0 <= kept[0].value <= 10 else None)
        kept = same
    if all(h.foreign for h in kept) and not keep_foreign:
        return Misunderstood(Why.OTHER_UNIT)
    before = toks[kept[0].first - 1] if kept[0].first else None
    if before is not None and before.has(Role.BOUND) and not before.has(Role.HEDGE) and not keep_change:
        return Misunderstood(Why.A_RANGE)
    return kept, toks


def _a_time(toks: Sequence[Token], heard: Heard) -> bool:
    after = toks[heard.last + 1] if heard.last + 1 < len(toks) else None
    return heard.bare and heard.value <= 24 and after is not None and after.has(Role.CLOCK) and after.word


def _labelled(toks: Sequence[Token], heard: Heard) -> bool:
    if not heard.first or not heard.bare:
        return False
    before = toks[heard.first - 1]
    if before.has(Role.NOT):
        return True
    return heard.whole and heard.value <= 31 and (before.has(Role.LABEL) or before.has(Role.CLOCK))


def _a_change(toks: Sequence[Token], heard: Heard) -> bool:
    """ "lost 2 kg", "2 less": a difference, unless a comma or a full stop stands between."""
    before = toks[heard.first - 1] if heard.first else None
    after = toks[heard.last + 1] if heard.last + 1 < len(toks) else None
    return any(t is not None and t.has(Role.CHANGE) and t.text != "+" for t in (before, after)) or (
        before is not None and before.text == "+" and heard.first == 1
    )


def _a_range(toks: Sequence[Token], low: Heard, high: Heard) -> bool:
    between = toks[low.last + 1 : high.first]
    if any(t.has(Role.RANGE) for t in between):
        return True
    before = toks[low.first - 1] if low.first else None
    return before is not None and before.text == "between"


def _hedged(toks: Sequence[Token]) -> bool:
    """ "about 82", "82 or so": a hedge next to a number, no mark between."""
    for i, token in enumerate(toks):
        if token.has(Role.HEDGE):
            for step in (-1, 1):
                for k in (i + step, i + 2 * step):
                    if not 0 <= k < len(toks) or toks[k].text in ",;":
                        break
                    if toks[k].entry.number is not None:
                        return True
    return False


def _with_hedge(result: Result, hedged: bool) -> Result:
    return replace(result, hedged=True) if hedged and isinstance(result, Understood) else result


def _asked_back(result: Result, toks: Sequence[Token]) -> Result:
    """A question ("is 82 too much?") is no answer, though it may hold one."""
    if isinstance(result, Understood) and any(t.text == "?" for t in toks):
        return Misunderstood(Why.NO_NUMBER, result)
    return result
