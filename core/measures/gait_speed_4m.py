"""Gait speed over 4 metres at usual pace, from standing still. Metres per second; higher is better.

Value   m/s to 0.01: 4 m divided by the mean time of two walks. Typed as seconds, or as a speed. A bare number below 2
        is assumed to be a speed: nobody walks 4 m in less than two seconds.
Error   SEM 0.065 m/s from the MDC95 of 0.18 (Steffen & Seney 2008).  Matters: 0.10 m/s, 0.05 a little (Perera 2006).
Retests vary widely (Bohannon & Wang 2019: of limited use for judging change), so the larger published error is used.
At 1 m/s a timing error of 0.2 s is 0.05 m/s, so the chat's own stopwatch, delayed by a message, is not offered.
"""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from typing import TYPE_CHECKING

from core.client import Profile
from core.measures.cautions import STANDING
from core.measures.measure import (
    Bounds,
    ImportantDifference,
    Measure,
    MeasureKind,
    MeasurementError,
    Misunderstood,
    ProfileFact,
    Protocol,
    Scores,
    Understood,
    Why,
    never,
)
from core.measures.parsing import quantity_in
from core.measures.score_function_tests import in_ages, rounded, split
from core.quantity import Better, Range, Unit, half_up
from core.reading import Reading
from core.references import ewgsop2
from core.references import function_test_change as change
from core.references import gait_speed_cesari_2005 as cesari
from core.reliability import sem_from_mdc

if TYPE_CHECKING:
    from core.language import Lexicon

D = Decimal
COURSE = D(4)  # m
PLACES = 2
SPEED_BELOW = D(2)  # a bare number under this is m/s

_hear_time = quantity_in(Unit.SECOND, attempts=True)
_hear_speed = quantity_in(Unit.METRE_PER_SECOND, attempts=True)


def speed(seconds: Decimal) -> Decimal:
    """Metres per second over the course, to 0.01; `seconds` > 0.

    >>> speed(Decimal("6.2"))
    Decimal('0.65')
    """
    return half_up(COURSE / seconds, PLACES)


def understand(text: str, words: Lexicon, prefer: Unit | None) -> Understood | Misunderstood:
    """Understand a time over the course or a speed; the value is a speed either way."""
    understood = _hear_time(text, words, None)
    if isinstance(understood, Misunderstood):
        return _hear_speed(text, words, None) if understood.why is Why.OTHER_UNIT else understood
    if understood.value <= 0:
        return Misunderstood(Why.NO_NUMBER)
    if not understood.said_unit and understood.value < SPEED_BELOW:
        return replace(understood, unit=Unit.METRE_PER_SECOND)
    return replace(understood, value=speed(understood.value))


def score(reading: Reading, profile: Profile) -> Scores:
    """Compare with the consensus on low performance, then with Cesari's group at higher risk."""
    pace, low, risk = rounded(reading, PLACES), ewgsop2.SOURCE, cesari.SOURCE
    return (
        in_ages(reading, profile, ewgsop2.AGES, low)
        or split(low, ewgsop2.GAIT_SPEED_UP_TO, not ewgsop2.low_gait_speed(pace), ("low", "not_low")),
        in_ages(reading, profile, cesari.AGES, risk)
        or split(risk, cesari.UNDER, not cesari.higher_risk(pace), ("raised_risk", "usual_risk")),
    )


GAIT_SPEED_4M = Measure(
    key="gait_speed_4m",
    kind=MeasureKind.FUNCTION,
    unit=Unit.METRE_PER_SECOND,
    units=(Unit.METRE_PER_SECOND, Unit.SECOND),
    places=PLACES,
    better=Better.HIGHER,
    bounds=Bounds(possible=Range(D("0.05"), D("2.5")), usual=Range(D("0.3"), D("1.8")), jump=D("0.3")),
    protocol=Protocol(
        prepare=("mark_4_m", "flat_hard_floor", "usual_shoes", "usual_walking_aid", "somebody_close"),
        technique=("toes_on_the_line", "static_start", "usual_pace", "clock_stops_at_4_m", "two_walks"),
        keep_same=("course", "footwear", "walking_aid"),
        practice=1,
        attempts=2,
        helper=True,
    ),
    understand=understand,
    score=score,
    start_visits=2,
    error=MeasurementError(
        source=change.STEFFEN_SENEY,
        sem=sem_from_mdc(change.GAIT_SPEED_MDC95),
        shared_by_attempts=True,
        borrowed_from=change.STEFFEN_SENEY.population,
    ),
    important=ImportantDifference(source=change.PERERA, better=change.GAIT_SPEED_MATTERS),
    must_not=STANDING,
    sources=(ewgsop2.SOURCE, cesari.SOURCE, change.STEFFEN_SENEY, change.PERERA),
    needs=frozenset({ProfileFact.CAUTIONS}),
    alarm=never,
    body=None,
)
