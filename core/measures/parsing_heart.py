"""Understand pulses, blood pressures, and the timed mile with its pulse. See `core.measures.parsing`."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise

from core.language import Lexicon, WordRole
from core.language.amounts import ParsedNumber
from core.language.tokens import Token
from core.measures.measure import Misunderstood, Understand, Understood, Why
from core.measures.numbers_in_text import (
    FIGURES,
    NO_NUMBER,
    Result,
    a_range,
    asked_back,
    hedged,
    numbers_of,
    two_in_one,
)
from core.quantity import Unit, convert

D = Decimal
WINDOWS = (10, 15, 20, 30, 60)  # seconds over which people count a pulse
NEAR_PULSE = D("0.35")  # ours: counts further apart than this are asked about, not averaged


def pulse(text: str, words: Lexicon, prefer: Unit | None) -> Result:
    """Understand a resting pulse: "72", "18 in 15 s", "36 in 30", "18 x 4", "18 and 17 in 15 s"; beats a minute."""
    return _pulse(text, words, None)


def pulse_counted(window: int) -> Understand:
    """Understand the answer to a timed count of `window` seconds: a bare "18" is beats counted, "72 bpm" a rate."""

    def understand(text: str, words: Lexicon, prefer: Unit | None) -> Result:
        return _pulse(text, words, window)

    return understand


def _pulse(text: str, words: Lexicon, counted: int | None) -> Result:
    short = FIGURES.fullmatch(text) if counted is None else None
    if short is not None and short[1].isdecimal() and short[2] in ("", "bpm"):
        return Understood(D(short[1]), Unit.BEATS_PER_MINUTE, said_unit=bool(short[2]))
    said = numbers_of(text, words, None, fractions=False)
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
    if len(counts) == 2 and a_range(toks, counts[0], counts[1]):
        return Misunderstood(Why.A_RANGE)
    both = two_in_one(counts[0]) if len(counts) == 1 else None
    if both is not None and abs(both[0] - both[1]) <= NEAR_PULSE * min(both):  # "70,72": two counts, most likely
        mean = (both[0] + both[1]) / 2 * (D(60) / window if window else 1)
        guess = Understood(mean, Unit.BEATS_PER_MINUTE, said_rate, attempts=2, window=window)
        return Misunderstood(Why.NOT_WHOLE, guess)
    values = [h.value for h in counts]
    if window and len(values) == 2 and abs(values[0] * 60 / window - values[1]) <= 1:  # "29 in half a minute, so 58"
        counts, values = counts[:1], values[:1]
    if len(values) > 1 and max(values) - min(values) > NEAR_PULSE * min(values):
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
        hedged=hedged(toks),
    )
    return asked_back(Misunderstood(Why.NO_NUMBER, meant) if any(h.minus for h in counts) else meant, toks)


def _counts_and_window(
    toks: Sequence[Token], found: Sequence[ParsedNumber]
) -> tuple[list[ParsedNumber], int | None, int]:
    """Separate the numbers into beats and seconds: returns counts, window in seconds, number of windows given.

    A window of 0 is an unusual one ("18 x 7").
    """
    counts: list[ParsedNumber] = []
    windows: set[Decimal] = set()
    said = 0
    for i, parsed in enumerate(found):
        before = toks[found[i - 1].last + 1 : parsed.first] if i else toks[: parsed.first]
        within = any(t.has(WordRole.WITHIN) or t.text == "/" for t in before)
        times = any(t.has(WordRole.TIMES) for t in before)
        if parsed.unit is Unit.MINUTE and parsed.value >= 2:
            continue  # "72 after 5 min of rest"
        if parsed.unit in (Unit.SECOND, Unit.MINUTE):
            windows.add(parsed.value * (60 if parsed.unit is Unit.MINUTE else 1))
            said += 1
        elif parsed.bare and counts and times and parsed.value in (1, 2, 4):
            windows.add(60 / parsed.value)
            said += 1
        elif parsed.bare and counts and (within or times):
            windows.add(parsed.value if within and parsed.value in WINDOWS else D(0))
            said += 1
        else:
            counts.append(parsed)
    if not windows:
        return counts, None, said
    window = windows.pop()
    whole = not windows and window == window.to_integral_value()
    return counts, int(window) if whole else 0, said


def pressure(text: str, words: Lexicon, prefer: Unit | None) -> Result:
    """Understand a blood pressure: "128/82", "128 over 82", "128 82"; two readings at once are averaged.

    Value is systolic, second diastolic, in mmHg. A third number, or one named as the pulse, is ignored. Numbers in the
    wrong order are returned as typed; `core.understanding.plausibility` asks about them.
    """
    said = numbers_of(text, words, None, fractions=False, points=False, changes=True, foreign=True)
    if isinstance(said, Misunderstood):
        return said
    found, toks = said
    if any(h.foreign for h in found) and sum(not h.foreign for h in found) < 2:  # kPa
        return Misunderstood(Why.OTHER_UNIT)
    found = [h for h in found if not h.foreign]
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
    both = two_in_one(found[0]) if len(found) == 1 else None
    if both is not None:  # "128,82"
        return Misunderstood(Why.NOT_WHOLE, Understood(both[0], Unit.MILLIMETRE_OF_MERCURY, second=both[1]))
    if words.centimetres_of_mercury and (meant := _centimetres(found)) is not None:
        return Misunderstood(Why.OTHER_UNIT, meant)
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
    if any(any(t.has(WordRole.RANGE) and t.text != "-" for t in toks[a.last + 1 : b.first]) for a, b in pairs):
        return Misunderstood(Why.A_RANGE)
    upper = sum((a.value for a, _ in pairs), start=D(0)) / len(pairs)
    lower = sum((b.value for _, b in pairs), start=D(0)) / len(pairs)
    meant = Understood(
        upper,
        Unit.MILLIMETRE_OF_MERCURY,
        said_unit=any(h.unit is not None for h in found),
        second=lower,
        attempts=len(pairs),
        hedged=hedged(toks),
    )
    remark = not found[0].first and toks[min(found[1].last + 1, len(toks) - 1)].text != "?"  # "145/91, is that high?"
    return meant if remark else asked_back(meant, toks)


def _centimetres(found: Sequence[ParsedNumber]) -> Understood | None:
    """What "13/8" means, a pressure in centimetres of mercury, as two languages say it (common practice)."""
    if len(found) != 2 or not (8 <= found[0].value <= 26 and 4 <= found[1].value <= 16):
        return None
    if found[1].value >= found[0].value or any(h.unit is not None for h in found):
        return None
    return Understood(found[0].value * 10, Unit.MILLIMETRE_OF_MERCURY, second=found[1].value * 10)


def _stroke(toks: Sequence[Token], upper: ParsedNumber, lower: ParsedNumber) -> bool:
    return [t.text for t in toks[upper.last + 1 : lower.first]] == ["/"]


def mile(text: str, words: Lexicon, prefer: Unit | None) -> Result:
    """Understand a timed mile: minutes, and the pulse at the end as the second value: "14:30, 140".

    The time alone is understood, without a second value. "14.30" may be fourteen and a half minutes or 14.3: ask.
    """
    said = numbers_of(text, words, None, fractions=False, clock=Unit.SECOND)
    if isinstance(said, Misunderstood):
        return said
    found, toks = said
    times = [h for h in found if h.unit in (Unit.MINUTE, Unit.SECOND)]
    time = times[0] if times else found[0]
    rest = [h for h in found if h.first > time.last] or [h for h in found if h.last < time.first]
    if time.unit not in (None, Unit.MINUTE, Unit.SECOND) or time.foreign:
        return Misunderstood(Why.OTHER_UNIT)
    value = convert(time.value, time.unit or Unit.MINUTE, Unit.MINUTE)
    meant = Understood(value, Unit.MINUTE, said_unit=time.unit is not None, hedged=hedged(toks))
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
    return asked_back(meant, toks)
