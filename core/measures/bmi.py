"""Body mass index: kg/m2, from weight and height. Derived; neither direction is better in itself.

Value    unrounded; rounded half up to one decimal before a class is chosen (D1).
Error    CV 0.66 %, from the weight: height is measured once.
No class under 18, in pregnancy or with eating worries. If age is unknown, an adult is assumed, with a note; other
sources of error (age, muscle, swelling) are notes beside the class.
"""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal

from core.client import Caution, Profile
from core.measures.classify import adult, age_at, age_notes, band_score
from core.measures.derived_reading import combined, stature
from core.measures.measure import BodySize, Bounds, Measure, MeasureKind, NoReference, Score, Scores, never
from core.measures.weight import WEIGHT
from core.quantity import Better, Range, Unit
from core.reading import Reading
from core.references import bmi_nice, bmi_who
from core.references.boundaries import bmi_for_class

D = Decimal

OLDER_FROM = 65
WAIST_TO_HEIGHT_USELESS_FROM = D(35)


def index(weight: Decimal, height: Decimal) -> Decimal:
    """kg/m2 from kg and cm (> 0), unrounded.

    >>> round(index(D(70), D(175)), 3)
    Decimal('22.857')
    """
    return weight * 10000 / (height * height)


def derive(readings: Mapping[str, Reading], profile: Profile) -> Reading | None:
    """From the newest weight and height (else the profile's); None if one is missing."""
    weight, height = readings.get("weight"), stature(readings, profile)
    if weight is None or not height:
        return None
    return combined("bmi", index(weight.value, height), Unit.KILOGRAM_PER_SQUARE_METRE, weight)


def score(reading: Reading, profile: Profile) -> Scores:
    """WHO's class, then NICE's by family background."""
    age = age_at(reading, profile)
    why = _not_for(profile, age)
    if why is not None:
        return NoReference(why, bmi_who.SOURCE), NoReference(why, bmi_nice.SOURCE)
    value = bmi_for_class(reading.value)
    notes = _notes(value, profile, age)
    return band_score(bmi_who.CLASSES, value, notes), _nice(value, profile, notes)


def _nice(value: Decimal, profile: Profile, notes: tuple[str, ...]) -> Score | NoReference:
    if profile.background is None:
        return NoReference("background_not_given", bmi_nice.SOURCE)
    ladder = bmi_nice.BY_BACKGROUND.get(profile.background)
    if ladder is None:
        return NoReference("background_outside_table", bmi_nice.SOURCE)
    return band_score(ladder, value, notes)


def _not_for(profile: Profile, age: int | None) -> str | None:
    if adult(age, bmi_who.YOUNGEST, bmi_who.SOURCE) is not None:
        return "age_outside_table"
    if Caution.PREGNANCY in profile.cautions:
        return "pregnant"
    if Caution.EATING_WORRIES in profile.cautions:
        return "eating_worries"
    return None


def _notes(value: Decimal, profile: Profile, age: int | None) -> tuple[str, ...]:
    notes = list(age_notes(age))
    if age is not None and age >= OLDER_FROM:
        notes.append("a_little_more_can_be_fine_from_65")
    if Caution.VERY_MUSCULAR in profile.cautions:
        notes.append("muscle_counts_too")
    if Caution.WEIGHT_MISLEADS in profile.cautions:
        notes.append("weight_misleads")
    if value >= WAIST_TO_HEIGHT_USELESS_FROM:
        notes.append("no_waist_to_height_from_35")
    return tuple(notes)


BMI = Measure(
    key="bmi",
    kind=MeasureKind.DERIVED,
    unit=Unit.KILOGRAM_PER_SQUARE_METRE,
    places=1,
    better=Better.NEITHER,
    bounds=Bounds(possible=Range(D(10), D(90)), usual=Range(D(15), D(60))),
    score=score,
    error=WEIGHT.error,
    important=WEIGHT.important,
    must_not=WEIGHT.must_not,
    derived_from=("weight",),  # and height, if it was measured
    derive=derive,
    sources=(*bmi_who.SOURCES, *bmi_nice.SOURCES),
    needs=frozenset(),
    alarm=never,
    body=BodySize.MASS_INDEX,
    said_with="weight",
)
