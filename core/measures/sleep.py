"""Sleep of the past week, from 0 (very bad) to 10 (very good). Higher is better.

Error    SEM 1 point, ours, as for energy.
Matters  1 point, from a line of 100 mm.
"""

from __future__ import annotations

from core.measures.energy import RATING_ERROR, WEEKLY, ZERO_TO_TEN
from core.measures.measure import ImportantDifference, Measure, MeasureKind, Protocol, never
from core.measures.parsing import rating
from core.quantity import Better, Unit
from core.references import body_errors
from core.references import pain_and_sleep as published

SLEEP = Measure(
    key="sleep",
    kind=MeasureKind.RATING,
    unit=Unit.POINT,
    units=(Unit.POINT,),
    better=Better.HIGHER,
    bounds=ZERO_TO_TEN,
    protocol=Protocol(technique=("think_of_the_past_week",), keep_same=("time_of_day",)),
    understand=rating,
    error=RATING_ERROR,
    important=ImportantDifference(source=published.SLEEP_CHANGE_SOURCE, better=published.SLEEP_CHANGE),
    retest=WEEKLY,
    sources=(published.SLEEP_CHANGE_SOURCE, body_errors.ENERGY_SOURCE),
    needs=frozenset(),
    alarm=never,
    body=None,
)
