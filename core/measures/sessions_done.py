"""Exercise sessions done in the past week. Higher is better, up to what the coach has planned; never
scored.
"""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal

from core.measures.measure import Bounds, Measure, MeasureKind, Protocol, never
from core.measures.parsing import count
from core.quantity import Better, Range, Unit
from core.references.session_load import COUNTING

D = Decimal

SESSIONS_DONE = Measure(
    key="sessions_done",
    kind=MeasureKind.ACTIVITY,
    unit=Unit.SESSION,
    units=(Unit.SESSION,),
    better=Better.HIGHER,
    bounds=Bounds(possible=Range(D(0), D(28)), usual=Range(D(0), D(10))),
    protocol=Protocol(technique=("past_seven_days", "a_shortened_session_counts")),
    understand=count(Unit.SESSION),
    retest=timedelta(days=7),
    sources=(COUNTING,),
    needs=frozenset(),
    alarm=never,
    body=None,
    quick=(0, 1, 2, 3, 4, 5, 6, 7),
)
