"""Six-minute walk: the furthest one can walk in six minutes, resting when needed. Metres; higher is better.

Error   SEM 29.6 m from the MDC95 of 82 m (Steffen & Seney 2008).  Matters: 30 m (ERS/ATS 2014).
A single walk cannot detect an important difference in one person; several retests can. A walk in a corridor at home is
shorter than on a long course or outdoors, so different courses are never compared. The expected distance needs a
weight: see `six_minute_walk_difference`.
"""

from __future__ import annotations

from decimal import Decimal

from core.measures.cautions import EFFORT
from core.measures.measure import (
    Bounds,
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
from core.references import function_test_change as change
from core.references import six_minute_walk_ats_2002 as ats
from core.reliability import sem_from_mdc

D = Decimal

SIX_MINUTE_WALK = Measure(
    key="six_minute_walk",
    kind=MeasureKind.FUNCTION,
    unit=Unit.METRE,
    units=(Unit.METRE, Unit.FOOT),
    better=Better.HIGHER,
    bounds=Bounds(possible=Range(D(10), D(1000)), usual=Range(D(100), D(800)), jump=D(150)),
    protocol=Protocol(
        prepare=(
            "flat_hard_course_30_m",
            "measure_the_course",
            "usual_shoes",
            "usual_walking_aid",
            "rest_10_min_before",
            "resting_pulse_and_pressure_if_known",
            "phone_in_pocket",
        ),
        technique=(
            "as_far_as_you_can_in_6_min",
            "slowing_and_resting_allowed",
            "clock_runs_on",
            "count_the_lengths",
            "add_the_last_part",
            "stop_at_warning_signs",
        ),
        keep_same=("course", "footwear", "walking_aid", "time_of_day"),
        practice=1,
        helper=True,
        timers=(360,),
    ),
    understand=quantity_in(Unit.METRE, Unit.FOOT),
    start_visits=2,
    error=MeasurementError(
        source=change.STEFFEN_SENEY,
        sem=sem_from_mdc(change.SIX_MINUTE_WALK_MDC95),
        shared_by_attempts=True,  # as for the walking speed of the same study
        borrowed_from=change.STEFFEN_SENEY.population,
    ),
    important=ImportantDifference(source=change.ERS_ATS, better=change.SIX_MINUTE_WALK_MATTERS),
    must_not=EFFORT,
    sources=(*ats.SOURCES, change.STEFFEN_SENEY, change.ERS_ATS),
    needs=frozenset({ProfileFact.CAUTIONS, ProfileFact.SEX, ProfileFact.STATURE}),
    alarm=never,
    body=None,
    goal=True,
    rest_limits=ats.resting_cautions,
)
