"""How hard the sessions of the week were, from 0 (as if sitting) to 10 (maximal). Neither direction is better.

The plain scale of the US guidelines, free to use. Multiplied by the minutes it gives the session load of
`core.judging.training_load`. Asked half an hour or more after a session, it is stable for two weeks (Foster 2021, as
read in a report).
"""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal

from core.client import Profile
from core.measures.classify import adult, age_at
from core.measures.measure import Bounds, Measure, MeasureKind, Protocol, Score, Scores, never
from core.measures.parsing import rating
from core.quantity import Better, Range, Unit
from core.reading import Reading
from core.references import activity_intensity as intensity
from core.references.session_load import SESSION_LOAD
from core.references.who_activity_2020 import YOUNGEST

D = Decimal


def score(reading: Reading, profile: Profile) -> Scores:
    """The intensity for the rating: 5-6 moderate, 7-8 vigorous."""
    found = intensity.by_effort(reading.value)
    return (
        adult(age_at(reading, profile), YOUNGEST, intensity.SOURCE)
        or Score(found.name.lower(), intensity.SOURCE, found.value),
    )


SESSION_EFFORT = Measure(
    key="session_effort",
    kind=MeasureKind.ACTIVITY,
    unit=Unit.POINT,
    units=(Unit.POINT,),
    better=Better.NEITHER,
    bounds=Bounds(possible=Range(D(0), D(10)), usual=Range(D(0), D(10))),
    protocol=Protocol(technique=("sitting_is_0_most_possible_is_10", "whole_session_not_hardest_moment")),
    understand=rating,
    score=score,
    retest=timedelta(days=7),
    sources=(intensity.SOURCE, SESSION_LOAD),
    needs=frozenset(),
    alarm=never,
    body=None,
    quick=(0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10),
)
