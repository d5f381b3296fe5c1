"""One-mile walk, as fast as is comfortable without running: minutes, and the pulse at the finish. Lower is better.

Second  beats per minute at the finish; without it the time still counts, but nothing is estimated from it.
The estimate is a separate measure: `aerobic_estimate`. No error of the time was found in a text, so a change is shown,
never judged.
"""

from __future__ import annotations

from decimal import Decimal

from core.measures.cautions import EFFORT
from core.measures.measure import Bounds, Measure, MeasureKind, ProfileFact, Protocol, never
from core.measures.parsing import mile
from core.quantity import Better, Range, Unit
from core.references import kline_1987 as kline

D = Decimal

WALK_MILE = Measure(
    key="walk_mile",
    kind=MeasureKind.FUNCTION,
    unit=Unit.MINUTE,
    units=(Unit.MINUTE,),
    places=2,
    better=Better.LOWER,
    bounds=Bounds(
        possible=Range(D(7), D(60)),
        usual=Range(D(10), D(35)),
        jump=D("0.25"),
        jump_relative=True,
        second_possible=Range(D(40), D(220)),
        second_usual=Range(D(70), D(185)),
    ),
    protocol=Protocol(
        prepare=(
            "flat_measured_mile",
            "usual_shoes",
            "rest_10_min_before",
            "mild_weather",
            "phone_in_pocket",
        ),
        technique=(
            "walk_as_fast_as_is_comfortable",
            "no_running",
            "steady_pace",
            "clock_stops_at_the_mile",
            "pulse_at_once_15_s",
            "stop_at_warning_signs",
        ),
        keep_same=("course", "footwear", "time_of_day"),
        practice=1,
        timers=(0,),
    ),
    understand=mile,
    must_not=EFFORT,
    optional_second=True,
    sources=(kline.SOURCE,),
    needs=frozenset({ProfileFact.CAUTIONS, ProfileFact.SEX}),
    alarm=never,
    body=None,
    second_called="resting_heart_rate",
)
