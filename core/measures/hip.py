"""Hip: girth in cm at the widest part of the buttocks. Neither direction is better; scored in the ratio.

Value    cm, the mean of two.
Error    SEM 1.9 cm, as for the waist (Barrios 2016).
No published important difference was found. The bounds are ours.
"""

from __future__ import annotations

from decimal import Decimal

from core.measures import circumference_protocol
from core.measures.measure import BodySize, Bounds, Measure, MeasureKind, ProfileFact, Protocol, never
from core.measures.parsing import quantity_in
from core.quantity import Better, Range, Unit
from core.references import body_errors, repeats, whr_who

D = Decimal

WIDEST = "widest"

HIP = Measure(
    key="hip",
    kind=MeasureKind.BODY,
    unit=Unit.CENTIMETRE,
    units=circumference_protocol.UNITS,
    places=1,
    better=Better.NEITHER,
    bounds=Bounds(possible=Range(D(50), D(230)), usual=Range(D(70), D(175)), jump=D(10)),
    protocol=Protocol(
        prepare=circumference_protocol.PREPARE,
        technique=("tape_round_widest_part", *circumference_protocol.ROUND),
        keep_same=circumference_protocol.KEEP_SAME,
        attempts=2,
        site=WIDEST,
    ),
    understand=quantity_in(Unit.CENTIMETRE, Unit.INCH, attempts=True),
    error=circumference_protocol.ERROR,
    must_not=circumference_protocol.MUST_NOT,
    sources=(body_errors.GIRTH_SOURCE, repeats.GIRTH_SOURCE, whr_who.SOURCE),
    needs=frozenset({ProfileFact.CAUTIONS, ProfileFact.SEX, ProfileFact.UNITS}),
    alarm=never,
    body=BodySize.GIRTH,
)
