"""Waist-to-height ratio, from waist and height. Derived; lower is better.

Value    compared unrounded (D5).
Error    SEM 0.011, from the waist.
NICE does not use it for a body mass index of 35 or more, so a known weight is checked too. Below 0.4 it names no band.
"""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal

from core.client import Profile
from core.measures import circumference_protocol
from core.measures.bmi import index
from core.measures.classify import age_at, age_notes, band_score
from core.measures.derived_reading import combined, stature
from core.measures.measure import BodySize, Bounds, Measure, MeasureKind, MeasurementError, NoReference, Scores, never
from core.measures.waist import girth_not_for, site_notes
from core.quantity import Better, Range, Unit
from core.reading import Reading
from core.references import body_errors, whtr_nice
from core.references.boundaries import bmi_for_class

D = Decimal

BMI_TOO_HIGH = "bmi_35_or_more"  # of `Conditions.notes`, and the reason for having no band


def derive(readings: Mapping[str, Reading], profile: Profile) -> Reading | None:
    """From the newest waist and height (else the profile's), or None; a known weight only sets the note."""
    waist, height, weight = readings.get("waist"), stature(readings, profile), readings.get("weight")
    if waist is None or not height:
        return None
    heavy = weight is not None and too_heavy(weight.value, height)
    notes = frozenset({BMI_TOO_HIGH}) if heavy else frozenset[str]()
    return combined("waist_to_height_ratio", waist.value / height, Unit.RATIO, waist, notes=notes)


def too_heavy(weight: Decimal, height: Decimal) -> bool:
    """Whether the body mass index is too high for NICE to use the ratio. kg, cm."""
    return bmi_for_class(index(weight, height)) >= whtr_nice.BMI_BELOW


def score(reading: Reading, profile: Profile) -> Scores:
    """NICE's band, the same for both sexes and every background."""
    why = girth_not_for(reading, profile)
    if why is None and BMI_TOO_HIGH in reading.conditions.notes:
        why = BMI_TOO_HIGH
    if why is not None:
        return (NoReference(why, whtr_nice.SOURCE),)
    notes = (*age_notes(age_at(reading, profile)), *site_notes(reading))
    return (band_score(whtr_nice.BANDS, reading.value, notes),)


WAIST_TO_HEIGHT_RATIO = Measure(
    key="waist_to_height_ratio",
    kind=MeasureKind.DERIVED,
    unit=Unit.RATIO,
    places=2,
    better=Better.LOWER,
    bounds=Bounds(possible=Range(D("0.2"), D("1.5")), usual=Range(D("0.3"), D("1.0"))),
    score=score,
    error=MeasurementError(source=body_errors.RATIO_SOURCE, sem=body_errors.WAIST_TO_HEIGHT_SEM),
    must_not=circumference_protocol.MUST_NOT,
    derived_from=("waist",),  # and height and weight, if they were measured
    derive=derive,
    sources=(*whtr_nice.SOURCES, body_errors.RATIO_SOURCE),
    needs=frozenset(),
    alarm=never,
    body=BodySize.RATIO,
    said_with="waist",
)
