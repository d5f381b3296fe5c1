"""One-leg stance, eyes open: seconds on the steadier leg, stopped at 45 seconds. Higher is better.

Value   the best of three attempts, to 0.1 s; longer than 45 s counts as 45 (Springer 2007).
Scored  by the 5 s below which injurious falls were more common, and by the mean of the age group, whose figures are
        from memory.
No measurement error was found in a text, so a change is shown, never judged.
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
    Misunderstood,
    NoReference,
    ProfileFact,
    Protocol,
    Score,
    Scores,
    Understood,
    never,
)
from core.measures.parsing import quantity_in
from core.measures.score_function_tests import in_ages, rounded, split
from core.quantity import Better, Range, Unit
from core.reading import Reading
from core.references import one_leg_stance_springer_2007 as springer
from core.references.by_age import OLDER

if TYPE_CHECKING:
    from core.language import Lexicon

D = Decimal
CREDIBLE = D(300)  # s (ours): a longer time is asked about, not cut to 45

_hear_seconds = quantity_in(Unit.SECOND)


def understand(text: str, words: Lexicon, prefer: Unit | None) -> Understood | Misunderstood:
    """Understand seconds; anything longer than the test counts as 45 s."""
    understood = _hear_seconds(text, words, prefer)
    if isinstance(understood, Misunderstood) or not springer.LONGEST < understood.value <= CREDIBLE:
        return understood
    return replace(understood, value=springer.LONGEST)


def score(reading: Reading, profile: Profile) -> Scores:
    """Compare with the 5 s for injurious falls, then with the mean best of three of the age group."""
    seconds, injury = rounded(reading, 1), springer.INJURY
    steady = not springer.raised_injury_risk(seconds)
    return (
        in_ages(reading, profile, OLDER, injury)
        or split(injury, springer.INJURY_UNDER, steady, ("raised_risk", "usual_risk")),
        _mean(seconds, age_at(reading, profile)),
    )


def _mean(seconds: Decimal, age: int | None) -> Score | NoReference:
    if age is None:
        return NoReference("age_not_given", springer.SOURCE)
    row = springer.row(age)
    if row is None:
        return NoReference("age_outside_table", springer.SOURCE)
    mean = row.best_of_three
    return split(springer.SOURCE, mean, seconds >= mean, ("below_mean", "at_or_above_mean"))


ONE_LEG_STANCE = Measure(
    key="one_leg_stance",
    kind=MeasureKind.FUNCTION,
    unit=Unit.SECOND,
    units=(Unit.SECOND,),
    places=1,
    better=Better.HIGHER,
    bounds=Bounds(possible=Range(D(0), CREDIBLE), usual=Range(D(1), springer.LONGEST)),
    protocol=Protocol(
        prepare=("something_solid_within_reach", "hard_floor", "footwear_as_last_time", "somebody_close"),
        technique=(
            "steadier_leg",
            "arms_crossed",
            "eyes_open",
            "legs_do_not_touch",
            "clock_stops_when_foot_moves_or_touches",
            "stop_at_45_s",
            "best_of_three",
        ),
        keep_same=("leg", "footwear", "floor"),
        attempts=3,
        best_of=True,
        attempts_in_question=True,
        helper=True,
        timers=(0,),
    ),
    understand=understand,
    score=score,
    must_not=STANDING,
    sources=springer.SOURCES,
    needs=frozenset({ProfileFact.CAUTIONS}),
    alarm=never,
    body=None,
)
