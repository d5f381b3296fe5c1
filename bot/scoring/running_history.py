"""A person's earlier readings of one measure, condensed to what the rules need, however long the file.

`core.judging.assess` takes a whole history; here a handful of readings, added chronologically, give the same answers,
and a test compares the two. Readings taken at the same instant are never compared with one another, so the official
reading before the last is stored too, in case the last has the same instant as the new one.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal

from bot.scoring.cells import TakenValue, taken
from bot.scoring.output import NOTHING, PART_OF_SERIES, Judgement, value_cell
from bot.scoring.verdicts import FIRST, STARTED, Judged, Verdicts, afresh, too_soon, within_spread
from core.client import Profile
from core.judging.assess import (
    BLOCKS,
    RATING_WINDOW,
    error_of_weeks,
    mean_point,
    mean_reading,
    point,
    propagated,
    rating_blocks,
    sure_among,
)
from core.judging.change import EARLY_BY, level_of, start_variance, variance
from core.judging.course import NEWEST, ChangePoint, Point
from core.judging.start import WITHIN, together, visits_of
from core.measures.home_bp_series import (
    GAP,
    MOST_DAYS,
    NOTHING_YET,
    DayTotal,
    SeriesMean,
    TooFewDays,
    as_reading,
    day_of,
    mean_of_days,
)
from core.measures.measure import BodySize, Measure, MeasureKind, MeasurementError, Understood
from core.reading import SAME, Reading
from core.watching.flags_of_reading import (
    A_YEAR,
    ENERGY_WINDOW,
    TOP_RATING,
    drops,
    falls,
    odd_one,
    weight_says_nothing,
)

Sides = tuple[TakenValue | None, TakenValue | None]
_WINDOW = RATING_WINDOW - EARLY_BY
_INSTANT = timedelta(microseconds=1)


class Chain:
    """The baseline and the last two official readings: `core.judging.assess.official`, one reading at a time.

    text: the cell of the baseline's value. too_soon: the cells of a reading that came too soon. start: points of its
    visits. ends: until when a start of several visits may get one more, if the measure has one. visits: of such a
    start; `level` is what they are together, and `own` its variance if the error is absolute.
    """

    __slots__ = (
        "baseline", "ends", "first", "last", "level", "made", "measure", "older", "own", "points", "shortest", "start",
        "text", "too_soon", "visits",
    )  # fmt: skip

    def __init__(self, measure: Measure, retest: timedelta) -> None:
        self.measure = measure
        self.shortest = retest - EARLY_BY  # shortest time between two official readings
        self.baseline: TakenValue | None = None
        self.last: TakenValue | None = None
        self.older: TakenValue | None = None
        self.text = ""
        self.too_soon: Judgement = NOTHING
        self.start: tuple[Point, ...] = ()
        self.ends: datetime | None = None
        self.visits: tuple[Reading, ...] = ()
        self.level: TakenValue | None = None
        self.own: Decimal | None = None
        self.first: Reading | None = None  # the baseline
        self.made: tuple[TakenValue | None, Point | None] = (None, None)  # the last point, which `add` needs again
        self.points: deque[Point] = deque(maxlen=NEWEST)  # of the newest official readings after the start

    def before(self, at: datetime) -> Sides:
        """The baseline, and the last official reading after it, among those earlier than `at`."""
        baseline, last = self.baseline, self.last
        if baseline is None or last is None or baseline.taken_at >= at:
            return None, None
        if last.taken_at >= at:
            last = self.older
        return baseline, None if last is baseline else last

    def add(self, now: TakenValue) -> None:
        if self.last is None:
            self.baseline = self.last = self.older = now
            self.first = now.reading()
            self.text = value_cell(now.value, None, self.measure.unit)
            self.too_soon = too_soon(now.value, self.measure.unit)
            found = self._point(now)
            self.start = () if found is None else (found,)
            if self.measure.start_visits > 1:
                self.ends, self.visits = now.taken_at + WITHIN, (now.reading(),)
        elif self.ends is not None and now.taken_at < self.ends:
            self._visit(now)
        elif now.taken_at - self.last.taken_at >= self.shortest:
            self.older, self.last = self.last, now
            if (found := self._point(now)) is not None:
                self.points.append(found)

    def _visit(self, now: TakenValue) -> None:
        """Add a reading of the first weeks to the start, if it is a further visit."""
        visits = visits_of(self.measure, (*self.visits, reading := now.reading()))
        if visits[-1] is not reading:
            return
        self.visits = visits
        whole = together(self.measure, visits)
        error = self.measure.error
        self.level = taken(self.measure, whole)
        self.own = start_variance(error, visits, whole.value) if error is not None and error.sem is not None else None
        self.text = value_cell(whole.value, None, self.measure.unit)
        self.too_soon = too_soon(whole.value, self.measure.unit)
        if (found := self._point(now)) is not None:
            self.start = (*self.start, found)

    def starting(self, now: TakenValue) -> Judgement:
        """The cells of a reading of the first weeks: a further visit of the start, or too soon."""
        earlier = [v for v in self.visits if v.taken_at < now.taken_at]
        visits = visits_of(self.measure, (*earlier, reading := now.reading()))
        if visits[-1] is reading:
            return STARTED
        if len(earlier) == len(self.visits):
            return self.too_soon
        return too_soon(together(self.measure, earlier).value, self.measure.unit)

    def course(self, now: TakenValue) -> ChangePoint | None:
        """A sure change in the official readings and `now`, which is one of them but not added yet."""
        error, last = self.measure.error, self.last
        if not self.start or last is None or error is None or now.taken_at - last.taken_at < self.shortest:
            return None
        found = self._point(now)
        if found is None:
            return None
        earlier = [p for p in self.points if p.at < found.at][1 - NEWEST :]
        return sure_among((*self.start, *earlier, found), self.measure, found.value, len(self.start))

    def _point(self, reading: TakenValue) -> Point | None:
        error, first = self.measure.error, self.first
        if error is None or first is None or self.measure.kind is MeasureKind.DERIVED:
            return None
        if self.made[0] is not reading:
            self.made = reading, point(self.measure, error, reading.reading(), first)
        return self.made[1]


class Track:
    """History of a measure whose readings are compared one by one."""

    __slots__ = ("chain", "earlier", "measure", "newest", "number", "retest", "row", "rows", "run")

    def __init__(self, measure: Measure, retest: timedelta | None = None) -> None:
        self.measure = measure
        self.retest = retest or measure.retest
        self.chain = Chain(measure, self.retest)
        self.newest: TakenValue | None = None
        self.earlier: TakenValue | None = None  # the newest before that instant
        self.row = 0  # of the newest reading, in the file
        self.rows: dict[tuple[Decimal, Decimal | None], int] | None = None  # if several share the newest instant
        self.run = 0  # equal values in a row, including the newest

    def judged(self, now: TakenValue, verdicts: Verdicts) -> Judged:
        if self.measure.error is None:
            return None, NOTHING
        chain = self.chain
        baseline, previous = chain.before(now.taken_at)
        if baseline is None:
            return FIRST
        if chain.ends is not None and now.taken_at < chain.ends:
            return None, chain.starting(now)
        if now.taken_at - (previous or baseline).taken_at < chain.shortest:
            return None, chain.too_soon
        baseline = chain.level or baseline
        cells = verdicts.within(self.measure, baseline, chain.text, now, chain.own, len(chain.visits))
        if cells is not None:
            return None, cells
        return self._afresh(baseline, previous, now)

    def course(self, now: TakenValue) -> ChangePoint | None:
        """A sure change of level, with `now`, which is not added yet."""
        return self.chain.course(now)

    def judged_by(self, now: TakenValue, relative: Decimal | None) -> Judgement:
        """The cells of a derived reading. relative: its relative variance propagated from its parts, if known."""
        measure, chain = self.measure, self.chain
        if relative is None and measure.error is None:
            return NOTHING
        baseline, previous = chain.before(now.taken_at)
        if baseline is None:
            return FIRST[1]
        if now.taken_at - (previous or baseline).taken_at < chain.shortest:
            return chain.too_soon
        if relative is not None and baseline.meaning.conditions is SAME and now.meaning.conditions is SAME:
            spread = 2 * relative * level_of(baseline.value, now.value) ** 2
            cells = within_spread(measure, baseline.value, chain.text, now.value, spread)
            if cells is not None:
                return cells
        return self._afresh(baseline, previous, now, None if relative is None else propagated(relative))[1]

    def _afresh(
        self, baseline: TakenValue, previous: TakenValue | None, now: TakenValue, error: MeasurementError | None = None
    ) -> Judged:
        earlier = None if previous is None else previous.reading()
        visits = self.chain.visits
        return afresh(self.measure, baseline.reading(), earlier, now.reading(), self.retest, error, visits)

    def add(self, now: TakenValue, run: int = 1) -> None:
        """Add a reading, no earlier than any before it. run: result of `equal_in_a_row`."""
        self.chain.add(now)
        self._newest(now, run)

    def _newest(self, now: TakenValue, run: int) -> None:
        if self.newest is not None and self.newest.taken_at < now.taken_at:
            self.earlier = self.newest
        self.newest, self.run = now, run

    def equal_in_a_row(self, now: TakenValue) -> int:
        newest = self.newest
        if newest is None or newest.value != now.value or newest.meaning.second != now.meaning.second:
            return 1
        return self.run + 1

    def may_raise_flags(self, now: TakenValue, profile: Profile) -> bool:
        """Whether earlier readings could raise a flag; only then is `history` needed."""
        return False

    def history(self, at: datetime) -> Sequence[Reading]:
        """The earlier readings needed for the flags of a reading taken at `at`."""
        last = self.newest if self.newest is not None and self.newest.taken_at < at else self.earlier
        return () if last is None else (last.reading(),)

    def duplicate(self, at: datetime, heard: Understood, row: int) -> int | None:
        """The row of an equal reading at the same instant, if there is one; else `row` is stored."""
        newest = self.newest
        if newest is None or newest.taken_at != at:
            self.row, self.rows = row, None
            return None
        if self.rows is None:
            self.rows = {(newest.value, newest.meaning.second): self.row}
        found = self.rows.setdefault((heard.value, heard.second), row)
        return None if found == row else found


class WeightTrack(Track):
    """Weights, with the maximum of every period within the last year that ends now, for unplanned loss."""

    __slots__ = ("before", "group", "tops")

    def __init__(self, measure: Measure) -> None:
        super().__init__(measure)
        # decreasing: a weight followed by a higher one is dropped (monotonic queue)
        self.tops: deque[TakenValue] = deque()
        self.before: TakenValue | None = None  # the newest before `group`
        self.group: list[TakenValue] = []  # of the newest instant; these do not replace one another

    def add(self, now: TakenValue, run: int = 1) -> None:
        super().add(now, run)
        tops = self.tops
        if self.group and self.group[0].taken_at < now.taken_at:
            bounds = self.measure.bounds
            for weight, after in zip(self.group, (*self.group[1:], now), strict=True):
                before, self.before = self.before, weight
                if before is not None and odd_one(bounds, before.value, weight.value, after.value):
                    continue
                while tops and tops[-1].value <= weight.value:
                    tops.pop()
                tops.append(weight)
            self.group = []
            while now.taken_at - tops[0].taken_at > A_YEAR and len(tops) > 1:
                tops.popleft()
        self.group.append(now)

    def may_raise_flags(self, now: TakenValue, profile: Profile) -> bool:
        highest = self.tops[0].value if self.tops else None
        for weight in self.group:
            if highest is None or weight.value > highest:
                highest = weight.value
        return not weight_says_nothing(now.value, highest, profile.stature)

    def history(self, at: datetime) -> Sequence[Reading]:
        return [weight.reading() for weight in (*self.tops, *self.group)]


class RatingTrack(Track):
    """A 0-10 rating: the mean of the last four weeks against the mean of the first four (`core.judging.assess`)."""

    __slots__ = ("baseline", "baseline_number", "ends", "error", "first", "last", "over", "recent", "total")

    def __init__(self, measure: Measure) -> None:
        super().__init__(measure, RATING_WINDOW)
        self.error = error_of_weeks(measure.error)
        self.first: list[TakenValue] = []  # of the first four weeks
        self.ends: datetime | None = None  # when they are over
        self.over: datetime | None = None  # the last instant before that
        self.baseline: Reading | None = None  # their mean, once they are
        self.baseline_number = 0  # its cache number
        self.recent: deque[TakenValue] = deque()  # of as many weeks as the course needs
        self.last: deque[TakenValue] = deque()  # of the last four, excluding the first four
        self.total = Decimal(0)  # of `last`

    def judged(self, now: TakenValue, verdicts: Verdicts) -> Judged:
        if self.error is None:
            return None, NOTHING
        at, ends, over = now.taken_at, self.ends, self.over
        if ends is None or over is None or self.first[0].taken_at >= at:
            return FIRST
        if at < ends:
            return None, self.chain.too_soon
        baseline = self.baseline
        if baseline is None:
            baseline = replace(_mean(self.first), taken_at=self.first[0].taken_at)
            self.baseline = baseline
            self.baseline_number = verdicts.number((self.measure.key, baseline.value, baseline.attempts))
        since = max(at - _WINDOW, over)  # readings of the first weeks do not count again
        last = self.last
        while last and last[0].taken_at <= since:
            self.total -= last.popleft().value
        if baseline.conditions is not SAME or now.meaning.conditions is not SAME:
            return self._judged(baseline, since, ends, now)
        if self.newest is None or self.newest.taken_at == at:  # a reading at this instant is not before it
            return self._judged(baseline, since, ends, now)
        total, number = self.total + now.value, len(last) + 1
        key = (self.baseline_number, total, number)
        return (
            verdicts.known(key)
            or verdicts.keep(key, self._within(baseline, total / number, number))
            or self._judged(baseline, since, ends, now)
        )

    def course(self, now: TakenValue) -> ChangePoint | None:
        at, ends, error = now.taken_at, self.ends, self.measure.error
        if ends is None or error is None or at < ends:
            return None
        later = [r for r in self.recent if ends <= r.taken_at < at]
        swing = float(variance(error, now.value))
        blocks = rating_blocks(self.first, [*later, now])
        points = [mean_point([float(r.value) for r in b], b[0].taken_at, swing) for b in blocks]
        return sure_among(points, self.measure, float(now.value))

    def _within(self, baseline: Reading, mean: Decimal, number: int) -> Judged | None:
        """The verdict on a mean of `number` readings that lies within error."""
        if self.error is None:
            return None
        spread = variance(self.error, baseline.value, baseline.attempts) + variance(self.error, mean, number)
        text = value_cell(baseline.value, None, self.measure.unit)
        cells = within_spread(self.measure, baseline.value, text, mean, spread)
        return None if cells is None else (None, cells)

    def _judged(self, baseline: Reading, since: datetime, ends: datetime, now: TakenValue) -> Judged:
        at, before = now.taken_at, since - RATING_WINDOW
        last = [r for r in self.last if r.taken_at < at]
        earlier = [r for r in self.recent if before < r.taken_at <= since and r.taken_at >= ends]
        previous = _mean(earlier) if earlier else None
        return afresh(self.measure, baseline, previous, _mean([*last, now]), self.retest, self.error)

    def add(self, now: TakenValue, run: int = 1) -> None:
        self.newest, self.run = now, run
        if self.ends is None:
            self.chain.add(now)
            self.ends = now.taken_at + _WINDOW
            self.over = self.ends - _INSTANT
        if now.taken_at < self.ends:
            self.first.append(now)
        else:
            self.last.append(now)
            self.total += now.value
        oldest, recent = now.taken_at - BLOCKS * RATING_WINDOW, self.recent
        while recent and recent[0].taken_at < oldest:
            recent.popleft()
        recent.append(now)

    def may_raise_flags(self, now: TakenValue, profile: Profile) -> bool:
        last, by = self.newest, self.measure.fall
        error = self.measure.error
        if last is None or by is None or error is None or now.value > TOP_RATING - by:
            return False
        if last.taken_at == now.taken_at:
            return True
        since = last.taken_at - ENERGY_WINDOW
        usual = [r.value for r in self.recent if r.taken_at >= now.taken_at - ENERGY_WINDOW]
        earlier = [r.value for r in self.recent if r.taken_at >= since][:-1]
        return drops(now.value, usual, by, error) or falls(now.value, last.value, earlier, by, error)

    def history(self, at: datetime) -> Sequence[Reading]:
        return [rating.reading() for rating in self.recent]


def _mean(ratings: Sequence[TakenValue]) -> Reading:
    return mean_reading([rating.reading() for rating in ratings])


class PressureTrack(Track):
    """Blood pressure: the daily totals of the current series, and the means of earlier series."""

    __slots__ = ("days", "differing", "found", "mean")

    def __init__(self, measure: Measure) -> None:
        super().__init__(measure)
        self.days: list[tuple[int, DayTotal]] = []  # of the current series: day number and its totals
        self.differing: list[Reading] = []  # those of it taken under different conditions
        self.found: SeriesMean | TooFewDays = TooFewDays(0)  # result of the series so far
        self.mean: Reading | None = None  # the same as a reading

    def judged(self, now: TakenValue, verdicts: Verdicts) -> Judged:
        """The verdict on the series, to which `now` is already added; None with too few days."""
        if self.mean is None:
            return None, PART_OF_SERIES
        baseline, previous = self.chain.before(self.mean.taken_at)
        if baseline is None:
            return FIRST
        return self._afresh(baseline, previous, taken(self.measure, self.mean))

    def add(self, now: TakenValue, run: int = 1, day: date | None = None) -> None:
        """day: the local date, if it is not that of UTC. It never goes back, wherever a person travels."""
        self._newest(now, run)
        reading = now.reading()
        days = self.days
        today = (day or day_of(reading, UTC)).toordinal()
        if days:
            today = max(today, days[-1][0])
        if days and (today - days[-1][0] > GAP.days or today - days[0][0] >= MOST_DAYS):
            if self.mean is not None:
                self.chain.add(taken(self.measure, self.mean))
            days.clear()
            self.differing.clear()
        total = days.pop()[1] if days and days[-1][0] == today else NOTHING_YET
        days.append((today, total.with_reading(reading)))
        if reading.conditions.differs:
            self.differing.append(reading)
        self.found = mean_of_days([total for _, total in days])
        self.mean = as_reading(self.found, (*self.differing, reading)) if isinstance(self.found, SeriesMean) else None

    def course(self, now: TakenValue) -> ChangePoint | None:
        return None if self.mean is None else self.chain.course(taken(self.measure, self.mean))


def track(measure: Measure) -> Track:
    """A track suited to the measure."""
    if measure.series:
        return PressureTrack(measure)
    if measure.kind is MeasureKind.RATING:
        return RatingTrack(measure)
    return WeightTrack(measure) if measure.body is BodySize.WEIGHT else Track(measure)
