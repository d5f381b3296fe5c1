"""Home blood pressure: a series of days, not one reading.

A series is 4 to 7 days, morning and evening, two readings at least a minute apart. The first day is discarded and the
rest averaged (NICE NG136 1.2; dropping the first day is decision D7, a parameter because other bodies differ). With
fewer than four days there is no mean.

The error of a mean depends on its days, not on its readings: two readings a minute apart share the day's pressure, and
the published within-person SD (8.6 mmHg systolic, Kato 2010) is between days. So for a mean `Reading.attempts` counts
days.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta, tzinfo
from decimal import Decimal

from core.reading import Conditions, Reading
from core.references.boundaries import HOME_DAYS_DROPPED
from core.references.bp_low import drops_on_standing

D = Decimal
FEWEST_DAYS, MOST_DAYS = 4, 7  # NICE NG136
DROP_FIRST_DAYS = HOME_DAYS_DROPPED
GAP = timedelta(days=3)  # ours: a longer gap ends a series
SERIES_MEAN = "series_mean"  # note on a reading that represents a whole series


@dataclass(frozen=True, slots=True)
class SeriesMean:
    """Unrounded means in mmHg. days: in the series; used_days, used: days and readings in the mean."""

    systolic: Decimal
    diastolic: Decimal
    days: int
    used_days: int
    used: int


@dataclass(frozen=True, slots=True)
class TooFewDays:
    """days: so far. needed: in total."""

    days: int
    needed: int = FEWEST_DAYS


@dataclass(frozen=True, slots=True)
class DayTotal:
    """Sums in mmHg of the `number` readings of one day."""

    systolic: Decimal
    diastolic: Decimal
    number: int

    def with_reading(self, reading: Reading) -> DayTotal:
        return DayTotal(
            self.systolic + reading.value * reading.attempts,
            self.diastolic + diastolic(reading) * reading.attempts,
            self.number + reading.attempts,
        )


NOTHING_YET = DayTotal(D(0), D(0), 0)


def standing_drop(resting: Reading, standing: Reading) -> bool:
    """A systolic fall of 20 or more on standing (NICE NG136 1.1.6)."""
    return drops_on_standing(resting.value, standing.value)


def diastolic(reading: Reading) -> Decimal:
    """The second number, in mmHg. Raises: ValueError if there is none."""
    if reading.second is None:
        raise ValueError("a blood pressure without its second number")
    return reading.second


def day_of(reading: Reading, zone: tzinfo) -> date:
    """The client's local date of a reading."""
    return reading.taken_at.astimezone(zone).date()


def split(readings: Iterable[Reading], zone: tzinfo) -> Iterator[tuple[Reading, ...]]:
    """Split a history, oldest first, into series.

    A new one starts after a gap of more than three days, or after the seventh day: measuring every day all year gives
    weeks, not one endless mean.
    """
    series: list[Reading] = []
    first = day_of_last = date.min
    for reading in readings:
        today = day_of(reading, zone)
        if series and (today - day_of_last > GAP or (today - first).days >= MOST_DAYS):
            yield tuple(series)
            series = []
        if not series:
            first = today
        series.append(reading)
        day_of_last = today
    if series:
        yield tuple(series)


def mean_of(series: Sequence[Reading], zone: tzinfo, *, drop_days: int = DROP_FIRST_DAYS) -> SeriesMean | TooFewDays:
    """Drop the first `drop_days` days of a series and average every reading that is left.

    Every reading has the same weight (a day with four counts twice as much as a day with two), as the NICE rule says.
    """
    days: dict[date, DayTotal] = {}
    for reading in series:
        day = day_of(reading, zone)
        days[day] = days.get(day, NOTHING_YET).with_reading(reading)
    return mean_of_days([days[day] for day in sorted(days)], drop_days=drop_days)


def mean_of_days(days: Sequence[DayTotal], *, drop_days: int = DROP_FIRST_DAYS) -> SeriesMean | TooFewDays:
    """The same from daily totals, in order, for reading a long history incrementally."""
    if len(days) < FEWEST_DAYS:
        return TooFewDays(len(days))
    kept = days[drop_days:]
    number = sum(day.number for day in kept)
    return SeriesMean(
        systolic=sum((day.systolic for day in kept), D(0)) / number,
        diastolic=sum((day.diastolic for day in kept), D(0)) / number,
        days=len(days),
        used_days=len(kept),
        used=number,
    )


def as_reading(found: SeriesMean, series: Sequence[Reading]) -> Reading:
    """One reading that represents the series, dated like its last; it is scored, compared and charted."""
    last = series[-1]
    return Reading(
        measure=last.measure,
        value=found.systolic,
        second=found.diastolic,
        taken_at=last.taken_at,
        unit=last.unit,
        conditions=Conditions(
            differs=frozenset().union(*(r.conditions.differs for r in series)),
            labels=last.conditions.labels,
            notes=frozenset({SERIES_MEAN}),
        ),
        how=last.how,
        attempts=found.used_days,
        id=last.id,
    )


def means(readings: Iterable[Reading], zone: tzinfo) -> tuple[Reading, ...]:
    """The finished series of a history, oldest first, as readings. A reading that already is a series mean is left as
    it is.
    """
    found: list[Reading] = []
    for series in split((r for r in readings if r.counts), zone):
        found.extend(r for r in series if SERIES_MEAN in r.conditions.notes)
        raw = tuple(r for r in series if SERIES_MEAN not in r.conditions.notes)
        if raw and isinstance(result := mean_of(raw, zone), SeriesMean):
            found.append(as_reading(result, raw))
    return tuple(found)
