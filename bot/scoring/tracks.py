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

from bot.scoring.output import PART_OF_SERIES
from bot.scoring.verdicts import Judged, Verdicts, afresh
from core.assess import RATING_WINDOW, error_of_weeks, mean_reading
from core.change import EARLY_BY
from core.flags_of_reading import A_YEAR
from core.measures.shape import Kind, Measure, MeasurementError, Understood
from core.quantity import Unit
from core.reading import SAME, Reading
from core.series import GAP, MOST_DAYS, NOTHING_YET, DayTotal, SeriesMean, TooFewDays, as_reading, day_of, mean_of_days

Sides = tuple[Reading | None, Reading | None]
_WINDOW = RATING_WINDOW - EARLY_BY
_INSTANT = timedelta(microseconds=1)


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

    __slots__ = ("chain", "measure", "newest", "number", "retest", "row", "rows", "run")

    def __init__(self, measure: Measure, retest: timedelta | None = None) -> None:
        self.measure = measure
        self.retest = retest or measure.retest
        self.chain = Chain(self.retest - EARLY_BY)
        self.newest: Reading | None = None
        self.number = 0  # of the newest reading's meaning
        self.row = 0  # and its row in the file
        self.rows: dict[tuple[Decimal, Decimal | None], int] | None = None  # when several have the newest instant
        self.run = 0  # equal values in a row, the newest included

    def judged(self, now: Reading, verdicts: Verdicts) -> Judged:
        baseline, previous = self.chain.before(now.taken_at)
        return verdicts.of(self.measure, baseline, previous, now, self.retest)

    def judged_with(self, now: Reading, error: MeasurementError | None) -> Judged:
        """The same with an error of its own, that of a derived reading."""
        baseline, previous = self.chain.before(now.taken_at)
        return afresh(self.measure, baseline, previous, now, self.retest, error)

    def add(self, now: Reading, run: int = 1) -> None:
        """Remember a reading, no earlier than any before it. run: `equal_in_a_row`, worked out before."""
        self.chain.add(now)
        self.newest, self.run = now, run

    def equal_in_a_row(self, now: Reading) -> int:
        newest = self.newest
        if newest is None or newest.value != now.value or newest.second != now.second:
            return 1
        return self.run + 1

    def history(self, at: datetime) -> Sequence[Reading]:
        """What the flags of a reading taken at `at` need of the readings before it."""
        return ()

    def twin(self, at: datetime, heard: Understood, row: int) -> int | None:
        """The row of an equal reading of the same instant, if there is one; else `row` is remembered."""
        newest = self.newest
        if newest is None or newest.taken_at != at:
            self.row, self.rows = row, None
            return None
        if self.rows is None:
            self.rows = {(newest.value, newest.second): self.row}
        found = self.rows.setdefault((heard.value, heard.second), row)
        return None if found == row else found


class WeightTrack(Track):
    """Weights, with the highest of every stretch of the last year that ends now: unplanned loss asks for them."""

    __slots__ = ("group", "tops")

    def __init__(self, measure: Measure) -> None:
        super().__init__(measure)
        self.tops: deque[Reading] = deque()  # falling: what a later and higher weight hides is gone
        self.group: list[Reading] = []  # of the newest instant; they hide nothing from one another

    def add(self, now: Reading, run: int = 1) -> None:
        super().add(now, run)
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

    __slots__ = ("baseline", "ends", "error", "first", "recent")

    def __init__(self, measure: Measure) -> None:
        super().__init__(measure, RATING_WINDOW)
        self.error = error_of_weeks(measure.error)
        self.first: list[Reading] = []  # of the first four weeks
        self.ends: datetime | None = None  # when they are over
        self.baseline: Reading | None = None  # their mean, once they are
        self.recent: deque[Reading] = deque()  # of the last eight weeks, which is more than the flags ask for

    def judged(self, now: Reading, verdicts: Verdicts) -> Judged:
        at, ends = now.taken_at, self.ends
        if ends is None or self.first[0].taken_at >= at:
            return verdicts.of(self.measure, None, None, now, self.retest)
        if at < ends:
            return verdicts.of(self.measure, self.first[0], None, now, self.retest)
        baseline = self.baseline
        if baseline is None:
            baseline = replace(mean_reading(self.first), taken_at=self.first[0].taken_at)
            self.baseline = baseline
        since = max(at - _WINDOW, ends - _INSTANT)  # what is of the first weeks is of no later ones
        last = [now]  # newest first
        for reading in reversed(self.recent):
            if reading.taken_at <= since:
                break
            if reading.taken_at < at:
                last.append(reading)
        key = None
        if baseline.conditions is SAME and now.conditions is SAME:
            total = sum([r.value for r in last])
            key = (self.measure.key, baseline.value, baseline.attempts, total, len(last), "weeks")
            found = verdicts.known(key)
            if found is not None:
                return found
        before = since - RATING_WINDOW
        earlier = [r for r in self.recent if before < r.taken_at <= since and r.taken_at >= ends]
        previous = mean_reading(earlier) if earlier else None
        judged = afresh(self.measure, baseline, previous, mean_reading(last[::-1]), self.retest, self.error)
        return judged if key is None else verdicts.keep(key, judged)

    def add(self, now: Reading, run: int = 1) -> None:
        self.newest, self.run = now, run
        if self.ends is None:
            self.ends = now.taken_at + _WINDOW
        if now.taken_at < self.ends:
            self.first.append(now)
        oldest, recent = now.taken_at - 2 * RATING_WINDOW, self.recent
        while recent and recent[0].taken_at < oldest:
            recent.popleft()
        recent.append(now)

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

    def judged(self, now: Reading, verdicts: Verdicts) -> Judged:
        """Of the series, `now` already added to it; too few days are not judged."""
        if self.mean is None:
            return None, PART_OF_SERIES
        return self.judged_with(self.mean, None)

    def add(self, now: Reading, run: int = 1) -> None:
        if self.newest is not None and self.newest.taken_at < now.taken_at:
            self.before = self.newest
        self.newest, self.run = now, run
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
