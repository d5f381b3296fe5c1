"""From tokens to amounts: numbers as digits or words, fractions, units, compounds such as "12 st 4"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from core.language.lexicon import PARTS, UnitPart, WordRole
from core.language.tokens import Token, figure
from core.quantity import FACTOR, Dimension, Unit, convert

D = Decimal
_FINEST = D("0.0001")
DENOMINATORS = (D(2), D(3), D(4), D(8), D(16))
_EXTRAS = (
    (WordRole.HALF, D("0.5")),
    (WordRole.QUARTER, D("0.25")),
    (WordRole.THREE_QUARTERS, D("0.75")),
    (WordRole.LESS_A_QUARTER, D("-0.25")),
    (WordRole.THIRD, D(1) / 3),
    (WordRole.LESS_A_THIRD, -D(1) / 3),
)
SMALLER: dict[Unit | UnitPart, tuple[Unit | UnitPart, int]] = {
    Unit.STONE: (Unit.POUND, 14),
    Unit.POUND: (UnitPart.OUNCE, 16),
    Unit.FOOT: (Unit.INCH, 12),
    Unit.METRE: (Unit.CENTIMETRE, 100),
    Unit.KILOGRAM: (UnitPart.GRAM, 1000),
    Unit.MINUTE: (Unit.SECOND, 60),
    UnitPart.HOUR: (Unit.MINUTE, 60),
}


@dataclass(frozen=True, slots=True)
class ParsedNumber:
    """One number in a text.

    value: in `unit`, or bare if that is None. typed: the unit as written (STONE for "12 st 4", whose value
    is in pounds).  foreign: a unit of another dimension follows.  first, last: token positions, both included.
    digits: as typed in figures, else "".  pound: in kilograms, if a local pound may be half a kilogram.
    """

    value: Decimal
    first: int
    last: int
    unit: Unit | None = None
    typed: Unit | UnitPart | None = None
    foreign: bool = False
    weak: bool = False
    digits: str = ""
    pound: Decimal | None = None
    minus: bool = False

    @property
    def bare(self) -> bool:
        return self.unit is None and not self.foreign and self.pound is None

    @property
    def whole(self) -> bool:
        return self.value == self.value.to_integral_value()


def amounts(
    tokens: Sequence[Token],
    dimension: Dimension | None = None,
    *,
    thousands: bool = False,
    fractions: bool = True,
    points: bool = True,
    clock: Unit | None = None,
) -> list[ParsedNumber]:
    """The numbers in a text, in order, with their units; compounds are joined.

    dimension: of the measure asked; decides whether `'` is feet or minutes, and which units are foreign; None accepts
    all units.  thousands: see `tokens.figure`.  fractions: whether "41 1/2" is one number (never for "128/82").
    points: whether "82 point 4" is.  clock: the unit of the last part of "14:30", SECOND or MINUTE; None: it is a time
    of day.
    """
    found: list[ParsedNumber] = []
    i = 0
    while i < len(tokens):
        heard = _numeral(tokens, i, thousands, fractions, points)
        if heard is not None:
            heard = _with_unit(tokens, heard, dimension)
        elif tokens[i].clock and clock is not None:
            heard = _clock(tokens, i, clock)
        else:
            i += 1
            continue
        found.append(heard)
        i = heard.last + 1
    strong = [h for h in found if not (h.weak and h.bare)]
    return _compounds(tokens, strong or found)


def _clock(tokens: Sequence[Token], i: int, unit: Unit) -> ParsedNumber:
    """A stopwatch's "1:02" or "14:30", with or without a unit."""
    parts = tokens[i].clock
    value = sum((p * 60**n for n, p in enumerate(reversed(parts))), start=D(0))
    last = i + (i + 1 < len(tokens) and bool(tokens[i + 1].entry.units))
    if len(parts) == 3:  # hours, minutes, seconds
        value, unit = (value / 60, Unit.MINUTE) if unit is Unit.MINUTE else (value, unit)
    return ParsedNumber(value, i, last, unit=unit, typed=unit)


def _numeral(tokens: Sequence[Token], i: int, thousands: bool, fractions: bool, points: bool) -> ParsedNumber | None:
    token = tokens[i]
    if i + 1 < len(tokens) and tokens[i + 1].entry.units and (share := _extra(tokens, i)) is not None and share > 0:
        return ParsedNumber(share, i, i)  # "half an hour"
    if token.entry.number is None:
        return None
    value = token.entry.number
    if thousands and token.digits:
        value = figure(token.digits, thousands=True) or value
    last = i
    minus = (
        bool(token.digits)
        and i > 0
        and tokens[i - 1].text == "-"
        and token.glued
        and (not tokens[i - 1].glued or i == 1)
        and (i == 1 or tokens[i - 2].entry.number is None)
    )
    if points and i + 2 < len(tokens) and tokens[i + 1].has(WordRole.POINT):
        tail = ""
        j = i + 2
        while j < len(tokens) and len(tail) < 4:
            n = tokens[j].entry.number
            if n is None or n != n.to_integral_value() or not 0 <= n < 100 or (tail and n >= 10):
                break
            tail += tokens[j].digits or str(int(n))
            j += 1
            if n >= 10:
                break
        if tail and value == value.to_integral_value():
            return ParsedNumber(D(f"{int(value)}.{tail}"), i, j - 1, digits=token.digits and f"{token.digits}.{tail}")
    digits = token.digits
    if fractions:
        part = _fraction(tokens, last + 1)
        if part is not None and value == value.to_integral_value() and (not digits or "." not in digits):
            value, last, digits = value + part, last + 3, ""
        elif (whole := _fraction(tokens, i)) is not None and digits:
            value, last, digits = whole, i + 2, ""
    extra = None if token.entry.whole else _extra(tokens, last + 1)
    if extra is not None and value == value.to_integral_value():
        value, last, digits = value + extra, last + 1, ""
    return ParsedNumber(value, i, last, weak=token.entry.weak and last == i, digits=digits, minus=minus)


def _extra(tokens: Sequence[Token], i: int) -> Decimal | None:
    """The fraction that a word like "half" or "and a quarter" at `i` stands for; negative for "less a quarter"."""
    if i >= len(tokens) or not tokens[i].entry.roles:
        return None
    for role, value in _EXTRAS:
        if tokens[i].has(role):
            return value
    return None


def _fraction(tokens: Sequence[Token], i: int) -> Decimal | None:
    """The fraction written at `i` as three tokens, "1/2"."""
    if i + 2 >= len(tokens) or tokens[i + 1].text != "/":
        return None
    top, bottom = tokens[i].entry.number, tokens[i + 2].entry.number
    if top is None or bottom is None or not tokens[i].digits or bottom not in DENOMINATORS or not 0 < top < bottom:
        return None
    return top / bottom


def _with_unit(tokens: Sequence[Token], heard: ParsedNumber, dimension: Dimension | None) -> ParsedNumber:
    i = heard.first if tokens[heard.first].entry.whole else heard.last + 1
    if i >= len(tokens):
        return heard
    entry = tokens[i].entry
    if entry.whole and entry.number != 1 and i != heard.first:
        return heard  # "eine Viertelstunde": an amount of its own
    if entry.pound is not None and (dimension is None or dimension is Dimension.MASS):
        return replace(heard, last=i, pound=entry.pound)
    if WordRole.FOREIGN in entry.roles:
        return replace(heard, last=i, foreign=True)
    if not entry.units or (WordRole.WITHIN in entry.roles and not _ends(tokens, i)):
        return heard
    if Unit.METRE in entry.units and _per_second(tokens, i + 1):
        speed = Unit.METRE_PER_SECOND
        return replace(heard, unit=speed, typed=speed, last=i + 2, foreign=dimension is not None)
    known = [u for u in entry.units if _dimension(u) is dimension]
    typed = known[0] if known else entry.units[0]
    if isinstance(typed, UnitPart):
        unit, factor = PARTS[typed]
        value = heard.value * factor
    else:
        unit, value = typed, heard.value
    foreign = dimension is not None and not known
    last = i
    extra = None if foreign else _extra(tokens, i + 1)
    if extra is not None and not (i + 2 < len(tokens) and tokens[i + 2].entry.units):  # "2 hours and a half"
        exact = value + extra * (PARTS[typed][1] if isinstance(typed, UnitPart) else 1)
        value, last = exact.quantize(_FINEST).normalize(), i + 1  # a third is no decimal fraction
        return replace(heard, value=value, unit=unit, typed=typed, last=last, foreign=foreign, digits="")
    return replace(heard, value=value, unit=unit, typed=typed, last=last, foreign=foreign)


def _per_second(tokens: Sequence[Token], i: int) -> bool:
    return i + 1 < len(tokens) and tokens[i].text == "/" and Unit.SECOND in tokens[i + 1].entry.units


def _ends(tokens: Sequence[Token], i: int) -> bool:
    """Whether nothing follows the word at `i`, a unit that is also a preposition ("in"), that it could introduce."""
    if i + 1 >= len(tokens):
        return True
    after = tokens[i + 1]
    return after.entry.number is None and not after.word and not after.clock


def _dimension(unit: Unit | UnitPart) -> Dimension | None:
    if isinstance(unit, UnitPart):
        unit = PARTS[unit][0]
    return FACTOR[unit][0] if unit in FACTOR else None


def _compounds(tokens: Sequence[Token], found: list[ParsedNumber]) -> list[ParsedNumber]:
    """Join "12 st 4 lb", "5 ft 7", "1 m 65", "82 kg 400", "2 min 5"; from the right, so that ounces are joined
    first."""
    joined: list[ParsedNumber] = []
    for heard in reversed(found):
        if joined and (whole := _compound(tokens, heard, joined[-1])) is not None:
            joined[-1] = whole
        else:
            joined.append(heard)
    return joined[::-1]


def _compound(tokens: Sequence[Token], large: ParsedNumber, small: ParsedNumber) -> ParsedNumber | None:
    if large.typed not in SMALLER or large.foreign or large.unit is None:
        return None
    wanted, per = SMALLER[large.typed]
    between = tokens[large.last + 1 : small.first]
    if small.typed is not wanted:
        hour = large.typed is UnitPart.HOUR  # "half an hour and five"
        if not small.bare or [t for t in between if t.text != "." and not (hour and t.has(WordRole.AND))]:
            return None
        if not _bare_rest(large.typed, small) or _counted(tokens, small):
            return None
        if isinstance(wanted, UnitPart):
            small = replace(small, value=small.value * PARTS[wanted][1], unit=PARTS[wanted][0], typed=wanted)
        else:
            small = replace(small, unit=wanted, typed=wanted)
    elif small.foreign or not all(t.has(WordRole.AND) or t.text in ",." for t in between):
        return None
    if small.unit is None:
        return None
    amount = convert(large.value, large.unit, small.unit)
    limit = convert(D(per), small.unit, small.unit) * (PARTS[wanted][1] if isinstance(wanted, UnitPart) else 1)
    if small.value >= limit or (large.value != large.value.to_integral_value() and large.typed is not UnitPart.HOUR):
        return None
    return replace(large, value=amount + small.value, unit=small.unit, last=small.last, digits="")


def _counted(tokens: Sequence[Token], small: ParsedNumber) -> bool:
    """Whether a number says how often: "20 minutes 3 times"."""
    if tokens[small.first].has(WordRole.TIMES):
        return True
    after = tokens[small.last + 1 : small.last + 2]
    return bool(after) and (after[0].has(WordRole.TIMES) or after[0].has(WordRole.DAYS))


def _bare_rest(large: Unit | UnitPart, small: ParsedNumber) -> bool:
    """Whether a bare number may be the smaller unit: 4 after stones, 65 after metres, 400 after kilograms."""
    if large is Unit.KILOGRAM:
        return small.whole and D(100) <= small.value < D(1000)
    if large is Unit.METRE:
        return small.whole and (len(small.digits) == 2 or (not small.digits and small.value >= D(10)))
    return large is not Unit.POUND
