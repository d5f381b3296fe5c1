"""Waist-to-hip ratio, from waist and hip taken within two weeks. Derived; lower is better.

Value    compared unrounded.
Error    SEM 0.024, from that of two girths.
The WHO limit comes first; the fitness trade's chart is a second, named reference, more lenient for men.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import timedelta
from decimal import Decimal

from core.client import Profile, Sex
from core.measures import circumference_protocol
from core.measures.classify import age_at, age_notes, band_score
from core.measures.derived_reading import TOGETHER, combined
from core.measures.measure import BodySize, Bounds, Measure, MeasureKind, MeasurementError, NoReference, Scores, never
from core.measures.waist import girth_not_for, site_notes
from core.quantity import Better, Range, Unit
from core.reading import Reading
from core.references import body_errors, whr_trade, whr_who

D = Decimal


def derive(readings: Mapping[str, Reading], profile: Profile) -> Reading | None:
    """From the newest waist and hip, or None if one is missing or they are more than two weeks apart."""
    waist, hip = readings.get("waist"), readings.get("hip")
    if waist is None or hip is None:
        return None
    value = ratio(waist.value, hip.value, waist.taken_at - hip.taken_at)
    return None if value is None else combined("waist_to_hip_ratio", value, Unit.RATIO, waist, hip)


def ratio(waist: Decimal, hip: Decimal, apart: timedelta) -> Decimal | None:
    """The unrounded ratio of two girths in the same unit; None if taken too far apart."""
    return waist / hip if hip and abs(apart) <= TOGETHER else None


def score(reading: Reading, profile: Profile) -> Scores:
    """WHO's limit by sex, then the fitness trade's chart."""
    why = girth_not_for(reading, profile)
    sex: Sex | None = profile.sex
    if why is not None or sex is None:
        why = why or "sex_not_given"
        return NoReference(why, whr_who.SOURCE), NoReference(why, whr_trade.SOURCE)
    notes = (*age_notes(age_at(reading, profile)), *site_notes(reading))
    return (
        band_score(whr_who.BY_SEX[sex], reading.value, notes),
        band_score(whr_trade.BY_SEX[sex], reading.value, notes),
    )


WAIST_TO_HIP_RATIO = Measure(
    key="waist_to_hip_ratio",
    kind=MeasureKind.DERIVED,
    unit=Unit.RATIO,
    places=2,
    better=Better.LOWER,
    bounds=Bounds(possible=Range(D("0.4"), D(2)), usual=Range(D("0.6"), D("1.3"))),
    score=score,
    error=MeasurementError(source=body_errors.RATIO_SOURCE, sem=body_errors.WAIST_TO_HIP_SEM),
    must_not=circumference_protocol.MUST_NOT,
    derived_from=("waist", "hip"),
    derive=derive,
    sources=(*whr_who.SOURCES, *whr_trade.SOURCES, body_errors.RATIO_SOURCE),
    needs=frozenset(),
    alarm=never,
    body=BodySize.RATIO,
    said_with="hip",
)
