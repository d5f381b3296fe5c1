"""Timed up and go: stand from a chair, walk 3 m at normal pace, turn, walk back, sit. Lower is better.

Value   seconds to 0.1 s: the mean of two attempts, after one practice.
Error   relative: 15 % of the first time is the MDC95 of Caronni 2024. As a share of the mean of both times, of which we
        take it, a fall of 15 % is 15 / 92.5; so a fall is judged as published, and a rise like the fall that undoes it.
        Other studies gave 1.1 s (knee osteoarthritis) to 3.5 s (Parkinson's disease).
No important difference was found in a text, so none is claimed.
"""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from typing import TYPE_CHECKING

from core.client import Profile
from core.measures.cautions import STANDING
from core.measures.classify import age_at
from core.measures.measure import (
    Bounds,
    Measure,
    MeasureKind,
    MeasurementError,
    Misunderstood,
    NoReference,
    ProfileFact,
    Protocol,
    Score,
    Scores,
    Understood,
    never,
)
from core.measures.parsing import duration
from core.measures.score_function_tests import in_ages, rounded, split
from core.quantity import Better, Range, Unit
from core.reading import Reading
from core.references import ewgsop2
from core.references import function_test_change as change
from core.references import timed_up_and_go_bohannon_2006 as bohannon
from core.references import timed_up_and_go_cdc as cdc
from core.reliability import sem_from_mdc

if TYPE_CHECKING:
    from core.language import Lexicon

D = Decimal

_hear_seconds = duration(Unit.SECOND, attempts=True)


def understand(text: str, words: Lexicon, prefer: Unit | None) -> Understood | Misunderstood:
    """Understand the seconds of one or two attempts. Arms may help: pushing up from the chair is part of the test."""
    understood = _hear_seconds(text, words, prefer)
    return replace(understood, notes=frozenset()) if isinstance(understood, Understood) else understood


def score(reading: Reading, profile: Profile) -> Scores:
    """Compare with the CDC falls cut-off, the average of the decade, and the consensus on low
    performance.
    """
    seconds = rounded(reading, 1)
    return (
        in_ages(reading, profile, cdc.AGES, cdc.SOURCE)
        or split(cdc.SOURCE, cdc.FROM, cdc.raised_risk(seconds), ("usual_risk", "raised_risk")),
        _average(seconds, age_at(reading, profile)),
        in_ages(reading, profile, ewgsop2.AGES, ewgsop2.SOURCE)
        or split(
            ewgsop2.SOURCE,
            ewgsop2.UP_AND_GO_FROM,
            ewgsop2.low_by_up_and_go(seconds),
            ("not_low", "low"),
        ),
    )


def _average(seconds: Decimal, age: int | None) -> Score | NoReference:
    if age is None:
        return NoReference("age_not_given", bohannon.SOURCE)
    row = bohannon.row(age)
    if row is None:
        return NoReference("age_outside_table", bohannon.SOURCE)
    bands = ("not_worse_than_average", "worse_than_average")
    return split(bohannon.SOURCE, row.high, seconds > row.high, bands)


TIMED_UP_AND_GO = Measure(
    key="timed_up_and_go",
    kind=MeasureKind.FUNCTION,
    unit=Unit.SECOND,
    units=(Unit.SECOND,),
    places=1,
    better=Better.LOWER,
    bounds=Bounds(possible=Range(D(3), D(180)), usual=Range(D(5), D(30)), jump=D("0.4"), jump_relative=True),
    protocol=Protocol(
        prepare=("mark_3_m", "chair_with_arms", "usual_shoes", "usual_walking_aid", "somebody_close"),
        technique=(
            "sit_back",
            "stand_walk_turn_return_sit",
            "normal_pace",
            "clock_from_go_to_seated",
            "stop_if_unsteady",
        ),
        keep_same=("chair", "course", "footwear", "walking_aid"),
        practice=1,
        attempts=2,
        helper=True,
        timers=(0,),
    ),
    understand=understand,
    score=score,
    start_visits=2,
    error=MeasurementError(
        source=change.CARONNI,
        cv=sem_from_mdc(change.UP_AND_GO_MDC95 / (1 - change.UP_AND_GO_MDC95 / 2)),
        shared_by_attempts=True,
        borrowed_from=change.CARONNI.population,
    ),
    must_not=STANDING,
    sources=(cdc.SOURCE, bohannon.SOURCE, ewgsop2.SOURCE, change.CARONNI),
    needs=frozenset({ProfileFact.CAUTIONS}),
    alarm=never,
    body=None,
)
