"""Shared by waist and hip: tape and string, bounds, and the error of self-measurement."""

from __future__ import annotations

from core.client import Caution
from core.measures.measure import Exclusion, MeasurementError
from core.quantity import Unit
from core.references.body_errors import GIRTH_SEM, GIRTH_SOURCE

UNITS = (Unit.CENTIMETRE, Unit.INCH)

PREPARE = ("before_a_meal", "after_toilet", "bare_skin_or_one_thin_layer", "stand_before_a_mirror")
ROUND = (
    "stand_relaxed_feet_together",
    "tape_level_all_round",
    "snug_not_pressing",
    "after_a_normal_breath_out",
    "measure_twice",
)
KEEP_SAME = ("site", "tape", "time_of_day", "clothes")

MUST_NOT = (
    Exclusion(Caution.PREGNANCY, "not_in_pregnancy"),
    Exclusion(Caution.EATING_WORRIES, "not_asked_by_default"),
)

# Of one measurement. It is a technical error, of repeats in a sitting, so the mean of two is more precise. What lies
# between days is not published: the course of readings adds it (`core.judging.course.variance_of_mean`).
ERROR = MeasurementError(source=GIRTH_SOURCE, sem=GIRTH_SEM, worst=True)
