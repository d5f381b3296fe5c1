"""Derived readings that a row makes possible.

The three that come with every weight or girth are computed from the values alone, by the functions their modules use;
for the others, and for parts with known conditions, `Measure.derive` is called.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from decimal import Decimal

from bot.scoring.cells import TakenValue, taken
from bot.scoring.parse_row import Meaning
from core.client import Profile
from core.measures import MEASURES
from core.measures.aerobic_from_pulse import AEROBIC_FROM_PULSE, like_the_study
from core.measures.bmi import BMI, index
from core.measures.measure import Measure, MeasureKind
from core.measures.waist_to_height_ratio import BMI_TOO_HIGH, WAIST_TO_HEIGHT_RATIO, too_heavy
from core.measures.waist_to_hip_ratio import WAIST_TO_HIP_RATIO, ratio
from core.reading import SAME, Conditions

Newest = Mapping[str, TakenValue]

DERIVED = tuple(m for m in MEASURES.values() if m.derive is not None)


def _makes(key: str) -> tuple[Measure, ...]:
    """Derived measures that a reading of `key` may make possible; a height, any of them."""
    return tuple(m for m in DERIVED if MEASURES[key].kind is MeasureKind.ONCE or key in m.derived_from)


def _once_each(measure: Measure) -> tuple[str, ...]:
    """Parts of a derived measure that are used only once: a new waist waits for its own hip, but a walk may use an
    older weight.
    """
    kind = MEASURES[measure.derived_from[0]].kind
    return tuple(key for key in measure.derived_from if MEASURES[key].kind is kind)


MAKES: Mapping[str, tuple[Measure, ...]] = {key: _makes(key) for key in MEASURES}
ONCE_EACH: Mapping[str, tuple[str, ...]] = {m.key: _once_each(m) for m in DERIVED}


def derive(measure: Measure, newest: Newest, profile: Profile) -> TakenValue | None:
    """The reading derived from the newest parts, or None. newest: at least everything in `derived_from`."""
    if measure is AEROBIC_FROM_PULSE and not like_the_study(profile):
        return None  # the usual case
    from_values = _FROM_VALUES.get(measure.key)
    if from_values is not None:
        for key in measure.derived_from:
            if newest[key].meaning.conditions is not SAME:
                break
        else:
            return from_values(newest, profile.stature)
    if measure.derive is None:
        return None
    reading = measure.derive({key: part.reading() for key, part in newest.items()}, profile)
    return None if reading is None else taken(measure, reading)


def _bmi(newest: Newest, height: Decimal | None) -> TakenValue | None:
    weight = newest["weight"]
    return TakenValue(_BMI, index(weight.value, height), weight.taken_at) if height else None


def _waist_to_hip(newest: Newest, height: Decimal | None) -> TakenValue | None:
    waist, hip = newest["waist"], newest["hip"]
    value = ratio(waist.value, hip.value, waist.taken_at - hip.taken_at)
    return None if value is None else TakenValue(_WAIST_TO_HIP, value, max(waist.taken_at, hip.taken_at))


def _waist_to_height(newest: Newest, height: Decimal | None) -> TakenValue | None:
    waist, weight = newest["waist"], newest.get("weight")
    if not height:
        return None
    heavy = weight is not None and too_heavy(weight.value, height)
    return TakenValue(_HEAVY if heavy else _WAIST_TO_HEIGHT, waist.value / height, waist.taken_at)


def _way(measure: Measure, conditions: Conditions = SAME) -> Meaning:
    """The conditions of such a reading. Attempts belong to its parts and are included in their errors."""
    return Meaning(0, measure.key, measure, typed=measure.unit, conditions=conditions)


_BMI, _WAIST_TO_HIP, _WAIST_TO_HEIGHT = _way(BMI), _way(WAIST_TO_HIP_RATIO), _way(WAIST_TO_HEIGHT_RATIO)
_HEAVY = _way(WAIST_TO_HEIGHT_RATIO, Conditions(notes=frozenset({BMI_TOO_HIGH})))


_FROM_VALUES: Mapping[str, Callable[[Newest, Decimal | None], TakenValue | None]] = {
    "bmi": _bmi,
    "waist_to_hip_ratio": _waist_to_hip,
    "waist_to_height_ratio": _waist_to_height,
}
