"""What is kept of one person's earlier readings of one measure: as little as the rules ask for, however long the file.

`core.assess` is given a whole history; here the same answers come from a handful of readings, fed in order of
time. A test holds the two against each other. Readings of the same instant are never compared with one another,
so the official reading before the last one is kept as well: when the last has the instant of the new one, that
is the one before it.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from decimal import Decimal

from core.assess import RATING_WINDOW, error_of_weeks, mean_reading
from core.change import EARLY_BY, Verdict, judge
from core.flags_of_reading import A_YEAR
from core.measures.shape import Kind, Measure, MeasurementError
from core.quantity import Unit
from core.reading import Reading
from core.series import GAP, MOST_DAYS, NOTHING_YET, DayTotal, SeriesMean, TooFewDays, as_reading, day_of, mean_of_days

Sides = tuple[Reading | None, Reading | None]


@dataclass(slots=True)
class Chain:
    """The baseline and the last two official readings: `core.assess.official`, one reading at a time."""

    shortest: timedelta  # between two official readings
    baseline: Reading | None = None
    last: Reading | None = None
    older: Reading | None = None

    def before(self, at: datetime) -> Sides:
        """The baseline, and the last official reading after it, of those earlier than `at`."""
        baseline, last = self.baseline, self.last
        if baseline is None or last is None or baseline.taken_at >= at:
            return None, None
        if last.taken_at >= at:
            last = self.older
        return baseline, None if last is baseline else last

    def add(self, reading: Reading) -> None:
        if self.baseline is None or self.last is None:
            self.baseline = self.last = self.older = reading
        elif reading.taken_at - self.last.taken_at >= self.shortest:
            self.older, self.last = self.last, reading


class Track:
    """A measure whose readings are compared one by one."""

    __slots__ = ("chain", "measure", "newest", "rows", "run")

    def __init__(self, measure: Measure, interval: timedelta | None = None) -> None:
        self.measure = measure
        self.chain = Chain((interval or measure.retest) - EARLY_BY)
        self.newest: Reading | None = None
        self.run = 0  # equal values in a row, the newest included
        self.rows: dict[tuple[Decimal, Decimal | None], int] = {}  # values of the newest instant, and their rows

    def judged(self, now: Reading, error: MeasurementError | None = None) -> Verdict | None:
        baseline, previous = self.chain.before(now.taken_at)
        return judge(self.measure, baseline, previous, now, error=error)

    def add(self, now: Reading) -> None:
        """Remember a reading, no earlier than any before it."""
        self.chain.add(now)
        self._add_newest(now)

    def _add_newest(self, now: Reading) -> None:
        newest = self.newest
        same = newest is not None and newest.value == now.value and newest.second == now.second
        self.run = self.run + 1 if same else 1
        self.newest = now

    def history(self, at: datetime) -> Sequence[Reading]:
        """What the flags of a reading taken at `at` need of the readings before it."""
        return ()

    def equal_in_a_row(self, now: Reading) -> int:
        newest = self.newest
        if newest is None or newest.value != now.value or newest.second != now.second:
            return 1
        return self.run + 1


class WeightTrack(Track):
    """Weights, with the highest of every stretch of the last year that ends now: unplanned loss asks for them."""

    __slots__ = ("group", "tops")

    def __init__(self, measure: Measure) -> None:
        super().__init__(measure)
        self.tops: deque[Reading] = deque()  # falling: what a later and higher weight hides is gone
        self.group: list[Reading] = []  # of the newest instant; they hide nothing from one another

    def add(self, now: Reading) -> None:
        super().add(now)
        tops = self.tops
        if self.group and self.group[0].taken_at < now.taken_at:
            for reading in self.group:
                while tops and tops[-1].value <= reading.value:
                    tops.pop()
                tops.append(reading)
            self.group = []
            while now.taken_at - tops[0].taken_at > A_YEAR and len(tops) > 1:
                tops.popleft()
        self.group.append(now)

    def history(self, at: datetime) -> Sequence[Reading]:
        return [*self.tops, *self.group]


class RatingTrack(Track):
    """A 0-10 rating: the mean of the last four weeks against that of the first four (`core.assess`)."""

    __slots__ = ("baseline", "error", "first", "recent")

    def __init__(self, measure: Measure) -> None:
        super().__init__(measure, RATING_WINDOW)
        self.error = error_of_weeks(measure.error)
        self.first: list[Reading] = []  # of the first four weeks
        self.baseline: Reading | None = None  # their mean, once they are over
        self.recent: deque[Reading] = deque()  # of the last eight weeks, which is more than the flags ask for

    def judged(self, now: Reading, error: MeasurementError | None = None) -> Verdict | None:
        baseline, previous, judged = self._means(now)
        return judge(self.measure, baseline, previous, judged, retest=RATING_WINDOW, error=self.error)

    def _means(self, now: Reading) -> tuple[Reading | None, Reading | None, Reading]:
        at = now.taken_at
        if not self.first or self.first[0].taken_at >= at:
            return None, None, now
        if at < self._ends():
            return self.first[0], None, now
        if self.baseline is None:
            self.baseline = replace(mean_reading(self.first), taken_at=self.first[0].taken_at)
        since = at - RATING_WINDOW + EARLY_BY
        later = [r for r in self.recent if r.taken_at >= self._ends()]
        last = [*(r for r in later if since < r.taken_at < at), now]
        earlier = [r for r in later if since - RATING_WINDOW < r.taken_at <= since]
        return self.baseline, mean_reading(earlier) if earlier else None, mean_reading(last)

    def _ends(self) -> datetime:
        return self.first[0].taken_at + RATING_WINDOW - EARLY_BY

    def add(self, now: Reading) -> None:
        self._add_newest(now)
        if not self.first or now.taken_at < self._ends():
            self.first.append(now)
        oldest = now.taken_at - 2 * RATING_WINDOW
        while self.recent and self.recent[0].taken_at < oldest:
            self.recent.popleft()
        self.recent.append(now)

    def history(self, at: datetime) -> Sequence[Reading]:
        return self.recent


class PressureTrack(Track):
    """A blood pressure: the totals of each day of the series at hand, and the means of the series before it."""

    __slots__ = ("before", "days", "differing", "found", "mean")

    def __init__(self, measure: Measure) -> None:
        super().__init__(measure)
        self.days: list[tuple[int, DayTotal]] = []  # of the series at hand: the day's number, and its sums
        self.differing: list[Reading] = []  # of it, those taken otherwise than before
        self.found: SeriesMean | TooFewDays = TooFewDays(0)  # of the series so far
        self.mean: Reading | None = None  # the same as a reading
        self.before: Reading | None = None  # the newest pressure of an instant before that of the newest

    def judged(self, now: Reading, error: MeasurementError | None = None) -> Verdict | None:
        """Of the series, `now` already added to it; None when it has too few days."""
        if self.mean is None:
            return None
        baseline, previous = self.chain.before(now.taken_at)
        return judge(self.measure, baseline, previous, self.mean)

    def add(self, now: Reading) -> None:
        if self.newest is not None and self.newest.taken_at < now.taken_at:
            self.before = self.newest
        self._add_newest(now)
        today, days = day_of(now, UTC).toordinal(), self.days
        if days and (today - days[-1][0] > GAP.days or today - days[0][0] >= MOST_DAYS):
            if self.mean is not None:
                self.chain.add(self.mean)
            days.clear()
            self.differing.clear()
        total = days.pop()[1] if days and days[-1][0] == today else NOTHING_YET
        days.append((today, total.with_reading(now)))
        if now.conditions.differs:
            self.differing.append(now)
        self.found = mean_of_days([total for _, total in days])
        self.mean = as_reading(self.found, (*self.differing, now)) if isinstance(self.found, SeriesMean) else None

    def history(self, at: datetime) -> Sequence[Reading]:
        last = self.newest if self.newest is not None and self.newest.taken_at < at else self.before
        return () if last is None else (last,)


def track(measure: Measure) -> Track:
    """The track that keeps what the measure needs."""
    if measure.unit is Unit.MILLIMETRE_OF_MERCURY:
        return PressureTrack(measure)
    if measure.kind is Kind.RATING:
        return RatingTrack(measure)
    return WeightTrack(measure) if measure.key == "weight" else Track(measure)
