"""The start of a measure: one reading, or the visits of the first weeks together.

All later readings are compared with the start, so its error is in every verdict. A measure whose single sitting is too
unsure for that (`Measure.start_visits`) is taken again a week later, and once more if the two differ by more than
error: two visits are rarely both misread, and of three the odd one cannot carry the start.

    level     of one or two visits their mean; of three the mean with none further from the median than `WINSOR` of its
              standard errors (a winsorised mean; Tukey 1962, Ann Math Stat 33:1-67, from memory)
    variance  (v1 + ... + vn) / n^2, of visits on different days; tries of one sitting share its day, and are one visit
              (`MeasurementError.shared_by_attempts`). While two differ by more than error and no third has come, it is
              at least (half their distance)^2: then nobody knows which is right.

A visit is one on another day (`APART`) within the first weeks (`WITHIN`), taken in the same way. Retests are counted
from the first, so that a second visit moves no date. The weight has one: its swing is small beside what matters, and
weighing often wears people down. A home pressure is a week of readings, a rating is four weeks of them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from decimal import Decimal

from core.judging.change import (
    INCOMPARABLE,
    ROOTS,
    level_of,
    mdc95_squared,
    side,
    unlike,
)
from core.judging.course import WINSOR
from core.measures.measure import Measure
from core.reading import Reading

D = Decimal
WITHIN = timedelta(days=24)  # after the first visit; one day less than the first retest may come early
APART = timedelta(days=3)  # a week later, at a check-in that may move by three days, and whose answer may come late
ODD_ONE_OUT = 3  # visits, of which one may be wrong
_REACH = D(str(WINSOR))


@dataclass(frozen=True, slots=True)
class Start:
    """visits: oldest first. wants_another: whether a further one should be asked for."""

    visits: tuple[Reading, ...]
    wants_another: bool


def start_of(measure: Measure, readings: Sequence[Reading]) -> Start:
    """readings: of the measure, that count, since the programme began, oldest first."""
    visits = visits_of(measure, readings)
    short = 0 < len(visits) < measure.start_visits
    third = 1 < len(visits) < ODD_ONE_OUT and disagree(measure, visits)
    return Start(visits, short or third)


def visits_of(measure: Measure, readings: Sequence[Reading]) -> tuple[Reading, ...]:
    """The readings that make the start: the first alone, or those of its first weeks."""
    if measure.start_visits < 2 or measure.error is None or not readings:
        return tuple(readings[:1])
    visits = [readings[0]]
    ends = visits[0].taken_at + WITHIN
    for reading in readings[1:]:
        if reading.taken_at >= ends:
            break
        if len(visits) == ODD_ONE_OUT or (len(visits) >= measure.start_visits and not disagree(measure, visits)):
            break
        if reading.taken_at - visits[-1].taken_at >= APART and not unlike(reading, visits[0]) & INCOMPARABLE:
            visits.append(reading)
    return tuple(visits)


def counted_from(measure: Measure, readings: Sequence[Reading]) -> datetime | None:
    """The instant from which the next retest is counted: the last reading, but the first while the start lasts."""
    if not readings:
        return None
    starting = measure.start_visits > 1 and readings[-1].taken_at < readings[0].taken_at + WITHIN
    return readings[0 if starting else -1].taken_at


def disagree(measure: Measure, visits: Sequence[Reading]) -> bool:
    """Whether the first two visits differ by more than error."""
    error = measure.error
    if error is None or len(visits) < 2:
        return False
    first, second = visits[:2]
    level = level_of(first.value, second.value)
    spread = side(error, first, level).variance
    spread += side(error, second, level, widened=bool(unlike(second, first))).variance
    return (second.value - first.value) ** 2 > mdc95_squared(spread)


def together(measure: Measure, visits: Sequence[Reading]) -> Reading:
    """The visits as one reading, dated and taken like the first."""
    first = visits[0]
    if len(visits) == 1:
        return first
    values = [visit.value for visit in visits]
    if len(values) >= ODD_ONE_OUT and measure.error is not None:
        middle = sorted(values)[len(values) // 2]
        reach = _REACH * side(measure.error, first, middle).variance.sqrt(ROOTS)
        values = [min(max(value, middle - reach), middle + reach) for value in values]
    return replace(first, value=sum(values, D(0)) / len(values))
