"""A question in the client's own words, answered from 0 to 10. The client says which way is better.

Compared only with the client's own ratings. The error is the energy rating's; a question that nobody else is asked has
no published important difference.
"""

from __future__ import annotations

from core.measures.energy import RATING_ERROR, WEEKLY, ZERO_TO_TEN
from core.measures.measure import Measure, MeasureKind, ProfileFact, Protocol, never
from core.measures.parsing import rating
from core.quantity import Better, Unit
from core.references import body_errors

OWN_QUESTION = Measure(
    key="own_question",
    kind=MeasureKind.RATING,
    unit=Unit.POINT,
    units=(Unit.POINT,),
    better=Better.NEITHER,  # until the plan says which
    bounds=ZERO_TO_TEN,
    protocol=Protocol(technique=("think_of_today",), keep_same=("time_of_day",)),
    understand=rating,
    error=RATING_ERROR,
    retest=WEEKLY,
    sources=(body_errors.ENERGY_SOURCE,),
    needs=frozenset({ProfileFact.OWN_QUESTION}),
    alarm=never,
    body=None,
    client_words=True,
)
