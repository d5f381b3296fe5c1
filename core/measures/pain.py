"""Pain of the past week, from 0 (none) to 10 (the worst one can think of). Lower is better.

Error    detectable change 1.77 points, back pain.
Matters  2 points.
A rating on its own says nothing about a cause; what names a place or comes suddenly is heard for signs.
"""

from __future__ import annotations

from core.measures.energy import WEEKLY, ZERO_TO_TEN
from core.measures.measure import ImportantDifference, Measure, MeasureKind, MeasurementError, Protocol, never
from core.measures.parsing import rating
from core.quantity import Better, Unit
from core.references import pain_and_sleep as published

PAIN = Measure(
    key="pain",
    kind=MeasureKind.RATING,
    unit=Unit.POINT,
    units=(Unit.POINT,),
    better=Better.LOWER,
    bounds=ZERO_TO_TEN,
    protocol=Protocol(technique=("think_of_the_past_week",), keep_same=("time_of_day",)),
    understand=rating,
    error=MeasurementError(
        source=published.PAIN_SOURCE,
        sem=published.PAIN_SEM,
        shared_by_attempts=True,
        borrowed_from=published.PAIN_SOURCE.population,
    ),
    important=ImportantDifference(source=published.PAIN_CHANGE_SOURCE, better=published.PAIN_CHANGE),
    retest=WEEKLY,
    sources=published.SOURCES[:2],
    needs=frozenset(),
    alarm=never,
    body=None,
)
