"""Weekly activity beside public advice and beside its own start. Recalled minutes are shown, not judged."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from statistics import median

from core.client import Profile
from core.measures.measure import Measure, Score
from core.reading import Reading
from core.references.who_activity_2020 import SOURCE

WEEKS = 4  # of which the middle is taken, so that one holiday or one illness does not make it
FEWEST_WEEKS = 3  # the start and two more
_LEAST = ("low", "limit")  # figures of a score: from where on advice is met


@dataclass(frozen=True, slots=True)
class ActivityCourse:
    """The first week, and the middle of the last four. advised: the least that public advice asks for a week."""

    measure: str
    start: Decimal
    lately: Decimal
    advised: Decimal

    @property
    def enough(self) -> bool:
        return self.lately >= self.advised


def activity_course(measure: Measure, readings: Sequence[Reading], profile: Profile) -> ActivityCourse | None:
    """The course of weeks that count, oldest first; None if there are too few, or no advice applies."""
    counted = [r for r in readings if r.counts]
    if len(counted) < FEWEST_WEEKS:
        return None
    lately = median(_whole(r) for r in counted[-WEEKS:])
    advice = _advice(measure, replace(counted[-1], value=lately, second=None), profile)
    least = None if advice is None else next((x for name, x in advice.figures if name in _LEAST), None)
    return None if least is None else ActivityCourse(measure.key, _whole(counted[0]), lately, least)


def newly_reached(measure: Measure, readings: Sequence[Reading], profile: Profile) -> Score | None:
    """The class of the last week, if none before was as high; the lowest class is never named."""
    if not readings:
        return None
    *earlier, last = readings
    found = _advice(measure, last, profile)
    if found is None or found.rank == 0:
        return None
    before = (_advice(measure, r, profile) for r in earlier)
    return found if all(x is None or x.rank < found.rank for x in before) else None


def _advice(measure: Measure, reading: Reading, profile: Profile) -> Score | None:
    scores = (s for s in measure.score(reading, profile) if isinstance(s, Score))
    return next((s for s in scores if s.source.key == SOURCE.key), None)


def _whole(reading: Reading) -> Decimal:
    """With vigorous minutes, where they were told apart."""
    return reading.value + (reading.second or Decimal(0))
