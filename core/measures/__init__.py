"""The registry of measures.

A new measure is a module, a line here and, if it is asked at check-ins, its place in CHECK_IN_ORDER.
"""

from __future__ import annotations

from core.measures.blood_pressure import BLOOD_PRESSURE
from core.measures.bmi import BMI
from core.measures.energy import ENERGY
from core.measures.height import HEIGHT
from core.measures.hip import HIP
from core.measures.own_question import OWN_QUESTION
from core.measures.resting_heart_rate import RESTING_HEART_RATE
from core.measures.shape import Measure
from core.measures.waist import WAIST
from core.measures.waist_to_height_ratio import WAIST_TO_HEIGHT_RATIO
from core.measures.waist_to_hip_ratio import WAIST_TO_HIP_RATIO
from core.measures.weight import WEIGHT

_BODY = (
    HEIGHT,
    WEIGHT,
    BMI,
    WAIST,
    HIP,
    WAIST_TO_HIP_RATIO,
    WAIST_TO_HEIGHT_RATIO,
    RESTING_HEART_RATE,
    BLOOD_PRESSURE,
)
_RATINGS = (ENERGY, OWN_QUESTION)

MEASURES: dict[str, Measure] = {measure.key: measure for measure in (*_BODY, *_RATINGS)}

# Ratings come before any number that could colour them, rest before effort, and effort last.
CHECK_IN_ORDER: tuple[str, ...] = (
    "energy",
    "own_question",
    "resting_heart_rate",
    "blood_pressure",
    "weight",
    "waist",
    "hip",
)
