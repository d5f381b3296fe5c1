"""Height: stature in cm, asked once. It is not scored and has no error model: nothing is compared over time.

The bounds are ours. 5'7" is stored as 170.18 cm: rounding would affect a body mass index near a limit.
"""

from __future__ import annotations

from decimal import Decimal

from core.measures.measure import BodySize, Bounds, Measure, MeasureKind, Protocol, never
from core.measures.parsing import quantity_in
from core.quantity import Better, Range, Unit
from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="stature_protocol",
    cite="Common practice: heels, seat and head to a wall, a book held level on the head",
    population="people who can stand",
    seen=Seen.COMMON_PRACTICE,
)

HEIGHT = Measure(
    key="height",
    kind=MeasureKind.ONCE,
    unit=Unit.CENTIMETRE,
    units=(Unit.CENTIMETRE, Unit.METRE, Unit.FOOT, Unit.INCH),
    places=1,
    better=Better.NEITHER,
    bounds=Bounds(possible=Range(D(100), D(250)), usual=Range(D(140), D(205)), jump=D(3)),
    protocol=Protocol(
        prepare=("no_shoes",),
        technique=("back_to_a_wall", "look_straight_ahead", "book_level_on_head", "mark_and_measure"),
    ),
    understand=quantity_in(Unit.CENTIMETRE, Unit.METRE, Unit.INCH, Unit.FOOT),
    sources=(SOURCE,),
    needs=frozenset(),
    alarm=never,
    body=BodySize.STATURE,
)
