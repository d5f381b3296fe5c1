"""Chair stand: full rises from a chair in 30 seconds, arms crossed on the chest. Higher is better.

Value   whole stands. More than half-way up when time ends counts as one more; arms used counts as 0 (CDC).
Error   SEM 0.90 from the MDC95 of 2.5 stands (Gill 2022).  Matters: 2 stands (Zanini 2018).
So one stand is noise, two matter but may be noise, three are beyond error. Practice adds half a stand or more: the
first time, one practice try does not count.
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
    NoReference,
    ProfileFact,
    Protocol,
    Score,
    Scores,
    Understood,
    never,
)
from core.measures.parsing import count
from core.measures.score_function_tests import ARMS_USED, AgeAndSex, person, rounded, split
from core.quantity import Better, Range, Unit
from core.reading import Reading
from core.references import chair_stand_cdc as cdc
from core.references import chair_stand_rikli_jones as rikli_jones
from core.references import function_test_change as change
from core.reliability import sem_from_mdc
from core.sources import Source

if TYPE_CHECKING:
    from core.language import Lexicon

D = Decimal
HALF_WAY = "more_than_half_way"  # of `Conditions.notes`: up more than half-way when time ended

_hear_count = count(Unit.REPETITION)


def counted(full_stands: Decimal, notes: frozenset[str]) -> Decimal:
    """The value to store, from the full stands and the notes: 0 with the arms, one more past half-way.

    Applied once, when the reading is taken; a stored value is never increased again.
    """
    return D(0) if ARMS_USED in notes else full_stands + (HALF_WAY in notes)


def understand(text: str, words: Lexicon, prefer: Unit | None) -> Understood | Misunderstood:
    """Understand a whole number, and remarks about arms and the last rise."""
    understood = _hear_count(text, words, prefer)
    if isinstance(understood, Understood):
        return _settled(understood)
    return understood if understood.guess is None else replace(understood, guess=_settled(understood.guess))


def _settled(understood: Understood) -> Understood:
    return replace(understood, value=counted(understood.value, understood.notes))


def score(reading: Reading, profile: Profile) -> Scores:
    """Compare with the CDC average, then with the range and the standard of Rikli and Jones."""
    value = D(0) if ARMS_USED in reading.conditions.notes else rounded(reading, 0)
    return (
        _average(value, person(reading, profile, cdc.SOURCE)),
        _range(value, person(reading, profile, rikli_jones.SOURCE)),
        _standard(value, person(reading, profile, rikli_jones.STANDARD_SOURCE)),
    )


def _average(value: Decimal, who: AgeAndSex | NoReference) -> Score | NoReference:
    if isinstance(who, NoReference):
        return who
    cut = cdc.cut(who.age, who.sex)
    if cut is None:
        return NoReference("age_outside_table", cdc.SOURCE)
    return split(cdc.SOURCE, D(cut), value >= cut, ("below_average", "not_below_average"))


def _range(value: Decimal, who: AgeAndSex | NoReference) -> Score | NoReference:
    if isinstance(who, NoReference):
        return who
    row = rikli_jones.row(who.age, who.sex)
    if row is None:
        return NoReference("age_outside_table", rikli_jones.SOURCE)
    rank = (value >= row.low) + (value > row.high)
    band = ("below_usual", "usual", "above_usual")[rank]
    return Score(band, rikli_jones.SOURCE, rank, (("low", D(row.low)), ("high", D(row.high))))


def _standard(value: Decimal, who: AgeAndSex | NoReference) -> Score | NoReference:
    if isinstance(who, NoReference):
        return who
    row, source = rikli_jones.row(who.age, who.sex), rikli_jones.STANDARD_SOURCE
    if row is None:
        return NoReference("age_outside_table", source)
    return split(source, D(row.standard), value >= row.standard, ("below_standard", "at_standard"))


SOURCES: tuple[Source, ...] = (cdc.SOURCE, *rikli_jones.SOURCES, change.GILL, change.ZANINI)

CHAIR_STAND_30S = Measure(
    key="chair_stand_30s",
    kind=MeasureKind.FUNCTION,
    unit=Unit.REPETITION,
    units=(Unit.REPETITION,),
    better=Better.HIGHER,
    bounds=Bounds(possible=Range(D(0), D(60)), usual=Range(D(3), D(30)), jump=D(6)),
    protocol=Protocol(
        prepare=(
            "chair_without_arms_43_cm",
            "chair_against_wall",
            "shoes_that_do_not_slip",
            "somebody_close",
        ),
        technique=(
            "sit_in_the_middle",
            "feet_flat",
            "arms_crossed",
            "stand_fully_and_sit",
            "as_many_as_is_safe_in_30_s",
            "more_than_half_way_counts",
            "arms_used_counts_0",
            "stop_if_unsteady",
        ),
        keep_same=("chair", "footwear", "time_of_day"),
        practice=1,
        helper=True,
        timers=(30,),
    ),
    understand=understand,
    score=score,
    start_visits=2,
    # Of tries minutes apart: within a day. What lies between days is not published, and there is one try that counts.
    error=MeasurementError(
        source=change.GILL, sem=sem_from_mdc(change.CHAIR_STAND_MDC95), borrowed_from=change.GILL.population
    ),
    important=ImportantDifference(source=change.ZANINI, better=change.CHAIR_STAND_MATTERS),
    must_not=STANDING,
    sources=SOURCES,
    needs=frozenset({ProfileFact.CAUTIONS, ProfileFact.SEX}),
    alarm=never,
    body=None,
    goal=True,
)
