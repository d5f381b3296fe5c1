"""Days of the past week with strengthening work. Higher is better; WHO 2020 asks for two or more."""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal

from core.client import Profile
from core.measures.classify import adult, age_at
from core.measures.measure import Bounds, Measure, MeasureKind, Protocol, Scores, never
from core.measures.parsing import count
from core.measures.score_function_tests import rounded, split
from core.quantity import Better, Range, Unit
from core.reading import Reading
from core.references import who_activity_2020 as who

D = Decimal


def score(reading: Reading, profile: Profile) -> Scores:
    """Two or more days meet the recommendation."""
    enough = who.enough_strength(rounded(reading, 0))
    return (
        adult(age_at(reading, profile), who.YOUNGEST, who.SOURCE)
        or split(who.SOURCE, D(who.STRENGTH_DAYS), enough, ("some", "meets")),
    )


STRENGTH_DAYS = Measure(
    key="strength_days",
    kind=MeasureKind.ACTIVITY,
    unit=Unit.DAY,
    units=(Unit.DAY,),
    better=Better.HIGHER,
    bounds=Bounds(possible=Range(D(0), D(7)), usual=Range(D(0), D(6))),
    protocol=Protocol(technique=("past_seven_days", "all_major_muscle_groups", "moderate_or_harder")),
    understand=count(Unit.DAY),
    score=score,
    retest=timedelta(days=7),
    sources=(who.SOURCE,),
    needs=frozenset(),
    alarm=never,
    body=None,
    quick=(0, 1, 2, 3, 4, 5, 6, 7),
)
