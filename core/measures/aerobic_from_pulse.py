"""Aerobic capacity from the resting pulse (Uth 2004), for well-trained men of 21 to 51 only. Derived;
ml/kg/min.

The maximum is predicted from age (Tanaka 2001), which makes the standard error 4.7 ml/kg/min. One step of a 15-second
count moves the result by about 3. The authors limit the method to people like those they studied, and so do we.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from decimal import Decimal

from core.client import Caution, Profile, Sex
from core.measures.classify import age_at
from core.measures.measure import Bounds, Measure, MeasureKind, Score, Scores, never
from core.quantity import Better, Range, Unit
from core.reading import Reading
from core.references import heart_rate_max, uth_2004

D = Decimal
KEY = "aerobic_from_pulse"


def derive(newest: Mapping[str, Reading], profile: Profile) -> Reading | None:
    """The estimate at the instant of the pulse; None for anyone unlike the people studied."""
    pulse = newest.get("resting_heart_rate")
    if pulse is None or pulse.value <= 0 or not like_the_study(profile):
        return None
    age = age_at(pulse, profile)
    maximum = heart_rate_max.tanaka(age) if age is not None else None
    if maximum is None or age not in uth_2004.AGES:
        return None
    estimate = uth_2004.aerobic_capacity(maximum, pulse.value)
    unit = Unit.MILLILITRE_PER_KILOGRAM_MINUTE
    return replace(pulse, measure=KEY, value=estimate, unit=unit, window=None, id=None)


def like_the_study(profile: Profile) -> bool:
    """A trained man without a medicine that slows the pulse; age is checked separately."""
    if profile.sex is not Sex.MALE or Caution.ATHLETE not in profile.cautions:
        return False
    return not profile.may_have(Caution.RATE_LIMITING_MEDICINE, None)


def score(reading: Reading, profile: Profile) -> Scores:
    """No band, only the range that contains the true value for two thirds of people."""
    error = uth_2004.STANDARD_ERROR_PREDICTED
    figures = (("low", reading.value - error), ("high", reading.value + error), ("error", error))
    return (Score("estimate", uth_2004.SOURCE, figures=figures, notes=("estimate_has_error",)),)


AEROBIC_FROM_PULSE = Measure(
    key=KEY,
    kind=MeasureKind.DERIVED,
    unit=Unit.MILLILITRE_PER_KILOGRAM_MINUTE,
    better=Better.HIGHER,
    places=1,
    bounds=Bounds(possible=Range(D(10), D(120)), usual=Range(D(25), D(85))),
    score=score,
    derived_from=("resting_heart_rate",),
    derive=derive,
    sources=(uth_2004.SOURCE, heart_rate_max.SOURCE),
    needs=frozenset(),
    alarm=never,
    body=None,
    said_with="resting_heart_rate",
)
