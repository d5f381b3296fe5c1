"""Weight: body mass in kg, on the client's own scales. Neither direction is better in itself.

Value    kg, converted exactly from the typed unit.
Retest   28 days; core.watching.weighing_guard responds to more frequent weighing.
Error    CV 0.66 %, morning-to-morning variation (Cheuvront 2004), shared by two weighings at once.
Matters  5 % of the baseline: the useful loss according to the CDC, and where unplanned loss needs attention.
A weight is scored only through the body mass index and through change. The bounds are ours.
"""

from __future__ import annotations

from decimal import Decimal

from core.client import Caution
from core.measures.measure import (
    BodySize,
    Bounds,
    Exclusion,
    ImportantDifference,
    Measure,
    MeasureKind,
    MeasurementError,
    ProfileFact,
    Protocol,
    never,
)
from core.measures.parsing import quantity_in
from core.quantity import Better, Range, Unit
from core.references import repeats, unplanned_loss, weight_loss_rates, weight_variation

D = Decimal

NOT_IN_PREGNANCY = Exclusion(Caution.PREGNANCY, "not_in_pregnancy")
NOT_WITH_EATING_WORRIES = Exclusion(Caution.EATING_WORRIES, "not_asked_by_default")

WEIGHT = Measure(
    key="weight",
    kind=MeasureKind.BODY,
    unit=Unit.KILOGRAM,
    units=(Unit.KILOGRAM, Unit.POUND, Unit.STONE),
    places=1,
    better=Better.NEITHER,
    bounds=Bounds(possible=Range(D(25), D(350)), usual=Range(D(40), D(200)), jump=D("0.05"), jump_relative=True),
    protocol=Protocol(
        prepare=("in_the_morning", "after_toilet", "before_food_and_drink", "light_clothes_no_shoes"),
        technique=("scales_on_hard_level_floor", "scales_show_zero", "stand_still", "read_when_it_rests"),
        keep_same=("scales", "floor", "time_of_day", "clothes"),
    ),
    understand=quantity_in(Unit.KILOGRAM, Unit.POUND, Unit.STONE),
    error=MeasurementError(
        source=weight_variation.SOURCE,
        cv=weight_variation.DAY_TO_DAY,
        shared_by_attempts=True,
        spread=weight_variation.DAY_TO_DAY_SPREAD,
        borrowed_from=weight_variation.SOURCE.population,
    ),
    important=ImportantDifference(source=weight_loss_rates.SOURCE, better=weight_loss_rates.USEFUL, relative=True),
    must_not=(NOT_IN_PREGNANCY, NOT_WITH_EATING_WORRIES),
    sources=(*weight_variation.SOURCES, *weight_loss_rates.SOURCES, *unplanned_loss.SOURCES, repeats.SOURCE),
    needs=frozenset(
        {
            ProfileFact.CAUTIONS,
            ProfileFact.UNITS,
            ProfileFact.STATURE,
            ProfileFact.BACKGROUND,
            ProfileFact.NUMBERS,
        }
    ),
    alarm=never,
    body=BodySize.WEIGHT,
    goal=True,
    beside="waist",
)
