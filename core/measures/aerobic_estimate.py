"""Aerobic capacity estimated from the one-mile walk (Kline 1987). Derived; ml/kg/min; higher is better.

Always shown with its error: the standard error of the estimate is 5 ml/kg/min, so two thirds of people are within 5 of
it. That error is between people, not between two walks of one person, so changes are not judged. Not with a medicine
that slows the pulse, which would improve the estimate without any change in fitness.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from decimal import Decimal

from core.client import Caution, Profile
from core.measures.classify import age_at
from core.measures.measure import Bounds, Measure, MeasureKind, Score, Scores, never
from core.quantity import Better, Range, Unit
from core.reading import Reading
from core.references import kline_1987 as kline

D = Decimal
KEY = "aerobic_estimate"


def derive(newest: Mapping[str, Reading], profile: Profile) -> Reading | None:
    """The estimate at the instant of the walk; None if an input is unknown or the age is outside 30-69."""
    walk, weight = newest.get("walk_mile"), newest.get("weight")
    if walk is None or walk.second is None or weight is None or profile.sex is None:
        return None
    age = age_at(walk, profile)
    if age is None or profile.may_have(Caution.RATE_LIMITING_MEDICINE, age):
        return None
    estimate = kline.aerobic_capacity(profile.sex, age, weight.value, walk.value, walk.second)
    if estimate is None:
        return None
    unit = Unit.MILLILITRE_PER_KILOGRAM_MINUTE
    return replace(walk, measure=KEY, value=estimate, second=None, unit=unit, window=None, id=None)


def score(reading: Reading, profile: Profile) -> Scores:
    """No band, only the range that contains the true value for two thirds of people."""
    error = kline.STANDARD_ERROR
    figures = (("low", reading.value - error), ("high", reading.value + error), ("error", error))
    return (Score("estimate", kline.SOURCE, figures=figures, notes=("estimate_has_error",)),)


AEROBIC_ESTIMATE = Measure(
    key=KEY,
    kind=MeasureKind.DERIVED,
    unit=Unit.MILLILITRE_PER_KILOGRAM_MINUTE,
    better=Better.HIGHER,
    places=1,
    bounds=Bounds(possible=Range(D(-20), D(90)), usual=Range(D(10), D(65))),
    score=score,
    derived_from=("walk_mile", "weight"),
    derive=derive,
    sources=(kline.SOURCE,),
    needs=frozenset(),
    alarm=never,
    body=None,
    said_with="walk_mile",
)
