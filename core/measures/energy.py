"""Energy: one rating from 0 (none) to 10 (full), asked before any number is taken. Higher is better.

Error    SEM 1 point, ours.
Matters  2 points, borrowed from fatigue ratings, where 1 is the low end and 2 the usual size.
Compared only with the client's own ratings: no reference and no important difference was found for energy itself.
"""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal

from core.measures.measure import Bounds, ImportantDifference, Measure, MeasureKind, MeasurementError, Protocol, never
from core.measures.parsing import rating
from core.quantity import Better, Range, Unit
from core.references import body_errors

D = Decimal

ZERO_TO_TEN = Bounds(possible=Range(D(0), D(10)), usual=Range(D(0), D(10)))
RATING_ERROR = MeasurementError(
    source=body_errors.ENERGY_SOURCE,
    sem=body_errors.RATING_SEM,
    shared_by_attempts=True,
    spread=body_errors.RATING_SPREAD,
    borrowed_from=body_errors.ENERGY_SOURCE.population,
)
WEEKLY = timedelta(days=7)

ENERGY = Measure(
    key="energy",
    kind=MeasureKind.RATING,
    unit=Unit.POINT,
    units=(Unit.POINT,),
    better=Better.HIGHER,
    bounds=ZERO_TO_TEN,
    protocol=Protocol(technique=("think_of_today", "zero_is_none_ten_is_full"), keep_same=("time_of_day",)),
    understand=rating,
    error=RATING_ERROR,
    important=ImportantDifference(source=body_errors.ENERGY_CHANGE_SOURCE, better=body_errors.RATING_CHANGE),
    retest=WEEKLY,
    sources=(body_errors.ENERGY_SOURCE, body_errors.ENERGY_CHANGE_SOURCE),
    needs=frozenset(),
    alarm=never,
    body=None,
    in_every_check_in=True,
    fall=D(2),  # points: the usual important difference of a 0-10 rating
)
