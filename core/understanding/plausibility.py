"""Is a value plausible? If not, what was probably meant? Nothing doubtful is stored without asking back.

The order matters: impossible values first, then unusual ones, then large jumps from the client's last reading. Each
kind of typing slip has its own check, and the correction it suggests must itself be usual and, if there is an earlier
reading, near it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from decimal import Decimal
from enum import StrEnum

from core.client import Profile
from core.measures.measure import BodySize, Bounds, Measure, Understood
from core.quantity import FACTOR, Dimension, Range, Unit, convert
from core.reading import Reading

D = Decimal
NEAR = D("0.08")  # ours: a corrected value this close to the last one, as a fraction, is assumed to be what was meant
BESIDE = {Unit.STONE: Unit.POUND, Unit.FOOT: Unit.INCH}  # a client who uses the first probably meant the second
LARGEST = D(10) ** 9
SAME_NUMBER = D("0.005")  # ours: a weight whose digits equal the stature was meant for the other field


class DoubtKind(StrEnum):
    IMPOSSIBLE = "impossible"  # outside `Bounds.possible`: never stored
    UNUSUAL = "unusual"
    JUMP = "jump"  # far from the client's own last reading
    SLIPPED_POINT = "slipped_point"  # 824 for 82.4
    SWAPPED_DIGITS = "swapped_digits"  # 28.4 for 82.4
    WRONG_UNIT = "wrong_unit"  # 181 from somebody of 82 kg: pounds
    WEIGHT_FOR_HEIGHT = "weight_for_height"  # the stature typed as weight, or the other way round
    SYSTOLIC_DIASTOLIC_SWAPPED = "systolic_diastolic_swapped"
    BEATS_COUNTED = "beats_counted"  # 18 for a pulse: counted in 15 s


@dataclass(frozen=True, slots=True)
class Doubt:
    """kind: why we ask.  meant: what was probably meant; None if there is no guess."""

    kind: DoubtKind
    meant: Understood | None = None


def doubt(measure: Measure, understood: Understood, last: Reading | None, profile: Profile) -> Doubt | None:
    """The reason to ask before storing `understood`, or None if it is plausible.

    last: the client's own newest reading of this measure, or None. A value plausible without it stays plausible with
    it, unless it is a jump from it (`is_jump`).
    """
    bounds = measure.bounds
    if not _countable(understood):
        return Doubt(DoubtKind.IMPOSSIBLE)
    lower = understood.second if measure.unit is Unit.MILLIMETRE_OF_MERCURY else None
    if lower is not None and lower >= understood.value:
        return _swapped(bounds, understood, lower)
    other = _other_field(measure, understood, last, profile)
    if other is not None:
        return other
    possible = _within(understood, bounds.possible, bounds.second_possible)
    usual = _within(understood, bounds.usual, bounds.second_usual) and _fits_stature(measure, understood, profile)
    jumps = last is not None and is_jump(bounds, understood.value, last.value)
    if possible and not jumps and (usual or (last is not None and _near(understood.value, last.value))):
        return None
    meant = _meant(measure, understood, last, profile)
    if meant is not None:
        return meant
    if not possible:
        return Doubt(DoubtKind.IMPOSSIBLE)
    return Doubt(DoubtKind.JUMP if jumps and usual else DoubtKind.UNUSUAL)


def _countable(understood: Understood) -> bool:
    """Whether all values are finite; parsed ones always are, imported ones may not be."""
    numbers = (understood.value, *((understood.second,) if understood.second is not None else ()))
    return all(n.is_finite() and abs(n) < LARGEST for n in numbers)


def _within(understood: Understood, first: Range, second: Range | None) -> bool:
    return understood.value in first and (second is None or understood.second is None or understood.second in second)


def _fits_stature(measure: Measure, understood: Understood, profile: Profile) -> bool:
    """Whether a weight and the stature on file give a plausible body mass index; 13 to 65 kg/m2 is ours."""
    if measure.body is not BodySize.WEIGHT or profile.stature is None or profile.stature <= 0:
        return True
    metres = profile.stature / 100
    return D(13) <= understood.value / (metres * metres) <= D(65)


def _near(value: Decimal, last: Decimal) -> bool:
    return abs(value - last) <= NEAR * abs(last)


def _nearer(meant: Decimal, typed: Decimal, last: Decimal) -> bool:
    """Whether a correction is near the last value, and much nearer than what was typed."""
    return _near(meant, last) and 3 * abs(meant - last) <= abs(typed - last)


def is_jump(bounds: Bounds, value: Decimal, last: Decimal) -> bool:
    """Whether a value is too far from the last one to be accepted without asking."""
    if bounds.jump is None:
        return False
    limit = bounds.jump * abs(last) if bounds.jump_relative else bounds.jump
    return abs(value - last) > limit


def _swapped(bounds: Bounds, understood: Understood, lower: Decimal) -> Doubt:
    """Diastolic is never the larger number (worked example W63): an entry error, so ask."""
    meant = replace(understood, value=lower, second=understood.value)
    if lower == understood.value or not _within(meant, bounds.possible, bounds.second_possible):
        return Doubt(DoubtKind.IMPOSSIBLE)
    return Doubt(DoubtKind.SYSTOLIC_DIASTOLIC_SWAPPED, meant)


def _other_field(measure: Measure, understood: Understood, last: Reading | None, profile: Profile) -> Doubt | None:
    """A weight that looks like the stature on file, or a stature that could only be a weight."""
    if understood.said_unit:
        return None
    if measure.body is BodySize.WEIGHT and profile.stature is not None:
        likely = last is not None and _near(understood.value, last.value)
        if not likely and abs(understood.value - profile.stature) <= SAME_NUMBER * profile.stature:
            return Doubt(DoubtKind.WEIGHT_FOR_HEIGHT)
    return None


def _meant(measure: Measure, understood: Understood, last: Reading | None, profile: Profile) -> Doubt | None:
    """The first slip whose correction is plausible: usual, and near the last reading if there is one."""
    value_typed = understood.value
    for kind, value in _slips(measure, understood, last):
        meant = replace(understood, value=value) if isinstance(value, Decimal) else value
        if not _within(meant, measure.bounds.usual, measure.bounds.second_usual):
            continue
        if not _fits_stature(measure, meant, profile):
            continue
        if last is not None and not _nearer(meant.value, value_typed, last.value):
            continue
        return Doubt(kind, meant)
    return None


def _slips(
    measure: Measure, understood: Understood, last: Reading | None
) -> Iterator[tuple[DoubtKind, Decimal | Understood]]:
    value = understood.value
    usual = measure.bounds.usual
    if understood.second is not None:  # "12/8" means 120/80 where centimetres of mercury are in use
        yield DoubtKind.SLIPPED_POINT, replace(understood, value=value * 10, second=understood.second * 10)
    if not understood.said_unit:
        yield from ((DoubtKind.WRONG_UNIT, m) for m in _in_other_units(measure, understood, last))
    if value not in usual or last is not None:
        for scale in (D("0.1"), D("0.01"), D(10), D(100)):
            if measure.places > 0 or scale > 1 or value % 10 == 0:
                yield DoubtKind.SLIPPED_POINT, value * scale
    if (last is not None and not understood.said_unit) or (last is not None and understood.unit is measure.unit):
        yield from ((DoubtKind.SWAPPED_DIGITS, v) for v in _two_digits_swapped(value))
    if measure.unit is Unit.BEATS_PER_MINUTE and understood.window is None:
        for window in (15, 30):
            rate = value * 60 / window
            yield DoubtKind.BEATS_COUNTED, replace(understood, value=rate, window=window, said_unit=True)


def _in_other_units(measure: Measure, understood: Understood, last: Reading | None) -> Iterator[Understood]:
    """The same digits in the unit the client probably meant."""
    if measure.unit not in FACTOR:
        return
    dimension = FACTOR[measure.unit][0]
    if dimension is Dimension.TIME:
        return
    figures = convert(understood.value, measure.unit, understood.unit)
    beside = BESIDE.get(understood.unit)
    for unit in dict.fromkeys((*(u for u in measure.units if u is beside), *measure.units)):
        if unit is understood.unit or (unit is Unit.METRE and figures > 3):
            continue
        value = convert(figures, unit, measure.unit)
        yield replace(understood, value=value, unit=unit)


def _two_digits_swapped(value: Decimal) -> Iterator[Decimal]:
    """Every value obtained by swapping two adjacent digits of `value`."""
    text = format(value.normalize(), "f") if value == value.normalize() else str(value)
    for i in range(len(text) - 1):
        a, b = text[i], text[i + 1]
        if a.isdecimal() and b.isdecimal() and a != b:
            yield D(text[:i] + b + a + text[i + 2 :])
        elif i + 2 < len(text) and b == "." and a != text[i + 2] and a.isdecimal():
            yield D(text[:i] + text[i + 2] + "." + a + text[i + 3 :])
