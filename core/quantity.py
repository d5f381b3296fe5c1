"""Units and exact conversion between them. Decimal throughout: 82.4 is 82.4.

Factors: 1 lb = 0.45359237 kg (exact since 1959), 1 stone = 14 lb, 1 in = 2.54 cm, 1 ft = 12 in, all exact.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import ROUND_HALF_UP, Decimal
from enum import StrEnum
from fractions import Fraction

D = Decimal


class Unit(StrEnum):
    """The value is the name in CSV files; people write units in many more ways (see core.language)."""

    KILOGRAM = "kg"
    POUND = "lb"
    STONE = "st"
    CENTIMETRE = "cm"
    METRE = "m"
    INCH = "in"
    FOOT = "ft"
    BEATS_PER_MINUTE = "bpm"
    MILLIMETRE_OF_MERCURY = "mmHg"
    SECOND = "s"
    MINUTE = "min"
    METRE_PER_SECOND = "m/s"
    REPETITION = "reps"
    STEP = "steps"
    POINT = "points"  # of a 0-10 rating
    DAY = "days"
    SESSION = "sessions"
    RATIO = "1"
    KILOGRAM_PER_SQUARE_METRE = "kg/m2"
    MILLILITRE_PER_KILOGRAM_MINUTE = "ml/kg/min"
    LOAD = "AU"  # session load, arbitrary units: effort times minutes


class Dimension(StrEnum):
    MASS = "mass"
    LENGTH = "length"
    TIME = "time"


POUND_IN_KILOGRAM = Fraction("0.45359237")
INCH_IN_CENTIMETRE = Fraction("2.54")

FACTOR: dict[Unit, tuple[Dimension, Fraction]] = {  # to kilogram, centimetre, second
    Unit.KILOGRAM: (Dimension.MASS, Fraction(1)),
    Unit.POUND: (Dimension.MASS, POUND_IN_KILOGRAM),
    Unit.STONE: (Dimension.MASS, 14 * POUND_IN_KILOGRAM),
    Unit.CENTIMETRE: (Dimension.LENGTH, Fraction(1)),
    Unit.METRE: (Dimension.LENGTH, Fraction(100)),
    Unit.INCH: (Dimension.LENGTH, INCH_IN_CENTIMETRE),
    Unit.FOOT: (Dimension.LENGTH, 12 * INCH_IN_CENTIMETRE),
    Unit.SECOND: (Dimension.TIME, Fraction(1)),
    Unit.MINUTE: (Dimension.TIME, Fraction(60)),
}


def convert(value: Decimal, unit: Unit, to: Unit) -> Decimal:
    """Return `value` in another unit of the same dimension; exact if representable as a decimal, else to 28 digits.

    Raises: ValueError for units of different dimensions (a programming error, never caused by user input).

    >>> convert(Decimal("100"), Unit.POUND, Unit.KILOGRAM)
    Decimal('45.359237')
    """
    if unit is to:
        return value
    try:
        (dimension, factor), (wanted, divisor) = FACTOR[unit], FACTOR[to]
    except KeyError as error:
        raise ValueError(f"{unit} does not convert to {to}") from error
    if dimension is not wanted:
        raise ValueError(f"{unit} does not convert to {to}")
    ratio = factor / divisor
    return value * ratio.numerator / ratio.denominator


def convertible(unit: Unit, to: Unit) -> bool:
    """Whether `convert` works for these units."""
    return unit is to or (unit in FACTOR and to in FACTOR and FACTOR[unit][0] is FACTOR[to][0])


def half_up(value: Decimal, places: int) -> Decimal:
    """Round as people do on paper: 24.95 to one place is 25.0 (decision D1; binary rounding would say 24.9)."""
    return value.quantize(_STEPS[places] if 0 <= places < 4 else D(1).scaleb(-places), rounding=ROUND_HALF_UP)


_STEPS = (D(1), D("0.1"), D("0.01"), D("0.001"))


def in_two_units(value: Decimal, unit: Unit, small: Unit, per_large: int, places: int = 0) -> tuple[int, Decimal]:
    """Split `value` into whole large units and a rounded remainder: 154 lb of 14 to the stone is (11, 0).

    The remainder is rounded first, so 13.96 lb is 1 st 0 lb, never 0 st 14 lb. `value` must not be negative.
    """
    rest = half_up(convert(value, unit, small), places)
    large = int(rest // per_large)
    return large, rest - large * per_large


@dataclass(frozen=True, slots=True)
class Amount:
    """A value with its unit, as it is shown or compared."""

    value: Decimal
    unit: Unit

    def to(self, unit: Unit) -> Amount:
        return Amount(convert(self.value, self.unit, unit), unit)


@dataclass(frozen=True, slots=True)
class Range:
    """A closed interval, both ends included; None is open."""

    low: Decimal | None
    high: Decimal | None

    def __contains__(self, value: Decimal) -> bool:
        return (self.low is None or value >= self.low) and (self.high is None or value <= self.high)


class Better(StrEnum):
    """Which direction of change is better for a person."""

    HIGHER = "higher"
    LOWER = "lower"
    NEITHER = "neither"
