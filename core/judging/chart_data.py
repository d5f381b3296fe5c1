"""Points, bands and limits of a chart, as data; `bot.rendering.charts` only draws them.

Side notes never appear on a chart: an early weight is neither drawn nor hinted at by an axis. Values are in the
client's preferred unit, dates in the client's time zone.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, tzinfo
from decimal import Decimal

from core.client import Caution, Profile
from core.judging.change import start_variance, variance
from core.judging.start import together, visits_of
from core.judging.trend import fit, points_of
from core.measures.blood_pressure import mean_limits
from core.measures.home_bp_series import DROP_FIRST_DAYS, SeriesMean, day_of, mean_of, split
from core.measures.measure import Measure, Score
from core.quantity import Unit, convert
from core.reading import Reading
from core.reliability import Z95

D = Decimal
MOST_MARKS = 13  # for ratings: twelve weeks and their start; more cannot be read on a phone
MOVES_A_MEAN = D(5)  # mmHg, ours: a mean that one day moves by so much says so
FEWEST_DAYS_LEFT = 3  # ours: of fewer no other mean is said
FINENESS = 200  # number of values tried across a measure's range to find its usual band


@dataclass(frozen=True, slots=True)
class Point:
    day: date
    value: Decimal


@dataclass(frozen=True, slots=True)
class Usual:
    """The band in which a published reference puts, or advises, most people. None: open on that side.

    source: key of the reference.
    """

    low: Decimal | None
    high: Decimal | None
    source: str


@dataclass(frozen=True, slots=True)
class LinePoint:
    """Where the fitted line stands on a day, with its interval."""

    day: date
    value: Decimal
    low: Decimal
    high: Decimal


@dataclass(frozen=True, slots=True)
class TrendChart:
    """One measure over time.

    points: oldest first, at least one. baseline: where comparisons start. error: what chance can make about the
    baseline, in `unit`; None if unknown. usual: a published band, if one applies to this person. line: the trend on
    its first and last day with its 95 % interval; None with fewer than four readings.
    """

    measure: str
    unit: Unit
    points: tuple[Point, ...]
    baseline: Point
    error: Decimal | None = None
    usual: Usual | None = None
    line: tuple[LinePoint, LinePoint] | None = None

    def beyond(self, point: Point) -> bool:
        """Whether a point differs from the baseline by more than chance makes, as its words say."""
        return self.error is not None and abs(point.value - self.baseline.value) > self.error


@dataclass(frozen=True, slots=True)
class RatingLine:
    """Ratings from 0 to 10 with their dates, oldest first. question: the client's own, or ""."""

    measure: str
    points: tuple[Point, ...]
    question: str = ""


@dataclass(frozen=True, slots=True)
class Pressure:
    systolic: Decimal
    diastolic: Decimal


@dataclass(frozen=True, slots=True)
class PressureDay:
    """Mean pressure of a day's morning and evening (split at noon); None if nothing was taken. used: counted in the
    mean. number: of the week, the first day being 1; a day without a reading leaves its number out."""

    day: date
    morning: Pressure | None
    evening: Pressure | None
    used: bool
    number: int = 0


@dataclass(frozen=True, slots=True)
class PressureWeekChart:
    """The newest home series. mean: None if there are too few days. limit: above which a home mean is raised; None if
    none applies to this person. without: the mean without the day farthest from the others, if that day alone moves it
    by `MOVES_A_MEAN`; odd: that day's number.
    """

    days: tuple[PressureDay, ...]
    mean: Pressure | None
    limit: Pressure | None
    source: str
    without: Pressure | None = None
    odd: int = 0


# The band of each reference to draw: the one most people are in, or are advised to be in.
USUAL_BAND: dict[str, str] = {
    "who_waist": "not_increased",
    "nice_waist": "low",
    "who_waist_to_hip": "not_increased",
    "nice_waist_to_height": "healthy",
    "bhf_resting_heart_rate": "usual",
    "chair_stand_rikli_jones": "usual",
    "two_minute_step_jones_rikli_2002": "usual",
    "five_chair_stands_bohannon_2006": "not_worse_than_average",
    "timed_up_and_go_bohannon_2006": "not_worse_than_average",
    "gait_speed_cesari_2005": "usual_risk",
    "one_leg_stance_springer_2007": "at_or_above_mean",
    "who_activity_2020": "meets",
}
_LOWER, _UPPER = frozenset({"from", "above", "low", "least"}), frozenset({"below", "up_to", "high", "most"})


def trend(
    measure: Measure,
    readings: Sequence[Reading],
    profile: Profile,
    zone: tzinfo,
    unit: Unit | None = None,
    since: datetime | None = None,
    chance: Decimal | None = None,
) -> TrendChart:
    """Draw one measure over time.

    readings: of this measure, oldest first; at least one that counts. since: start of a new programme; earlier readings
    are not drawn, unless there are no later ones.  chance: what words beside it say that chance can make, in the
    measure's unit; by default MDC95.

    Raises: ValueError if no reading counts.
    """
    counting = [r for r in readings if r.counts]
    counting = [r for r in counting if since is None or r.taken_at >= since] or counting
    if not counting:
        raise ValueError(f"no reading of {measure.key} to draw")
    visits = visits_of(measure, counting)
    start = together(measure, visits)
    unit = unit or measure.unit
    last = counting[-1]
    return TrendChart(
        measure.key,
        unit,
        tuple(Point(day_of(r, zone), convert(r.value, measure.unit, unit)) for r in counting),
        Point(day_of(start, zone), convert(start.value, measure.unit, unit)),
        _error(measure, visits, last, unit) if chance is None else convert(chance, measure.unit, unit),
        usual(measure, last, profile, unit),
        _line(measure, counting, zone, unit),
    )


def _line(
    measure: Measure, readings: Sequence[Reading], zone: tzinfo, unit: Unit
) -> tuple[LinePoint, LinePoint] | None:
    """The weighted line over four or more readings, in `unit`."""
    found = fit(points_of(measure, readings))
    if found is None:
        return None

    def level(reading: Reading) -> LinePoint:
        at = reading.taken_at
        value, (low, high) = found.level(at), found.between(at)
        return LinePoint(day_of(reading, zone), *(convert(v, measure.unit, unit) for v in (value, low, high)))

    return level(readings[0]), level(readings[-1])


def _error(measure: Measure, visits: Sequence[Reading], last: Reading, unit: Unit) -> Decimal | None:
    """MDC95 between the baseline and a reading like the last one, in `unit`."""
    if measure.error is None:
        return None
    level = together(measure, visits).value
    about_start = start_variance(measure.error, visits, level)
    about_last = variance(measure.error, level, last.attempts, last.window)
    return convert(Z95 * (about_start + about_last).sqrt(), measure.unit, unit)


def usual(measure: Measure, reading: Reading, profile: Profile, unit: Unit) -> Usual | None:
    """The band to draw, from the first reference that has one for this person; None if there is none.

    A score contains only the limits of its own band, so values across the range are tried until one falls into the
    band.
    """
    for score in measure.score(reading, profile):
        wanted = USUAL_BAND.get(score.source.key) if isinstance(score, Score) else None
        if isinstance(score, Score) and wanted is not None:
            found = score if score.band == wanted else _elsewhere(measure, reading, profile, score.source.key, wanted)
            return None if found is None else _limits(found, measure.unit, unit)
    return None


def _elsewhere(measure: Measure, reading: Reading, profile: Profile, source: str, band: str) -> Score | None:
    low = measure.bounds.usual.low or D(0)
    high = measure.bounds.usual.high
    if high is None:
        return None
    step = (high - low) / FINENESS
    for n in range(FINENESS + 1):
        for score in measure.score(replace(reading, value=low + step * n), profile):
            if isinstance(score, Score) and score.source.key == source and score.band == band:
                return score
    return None


def _limits(score: Score, unit: Unit, to: Unit) -> Usual | None:
    low = high = None
    for name, value in score.figures:
        if name in _LOWER or (name == "limit" and score.rank == 1):
            low = convert(value, unit, to)
        elif name in _UPPER or name == "limit":
            high = convert(value, unit, to)
    return None if low is None and high is None else Usual(low, high, score.source.key)


def rating_line(measure: Measure, readings: Sequence[Reading], zone: tzinfo, question: str = "") -> RatingLine:
    """The start and the newest ratings of energy, or of the client's own question."""
    counting = [r for r in readings if r.counts]
    if len(counting) > MOST_MARKS:  # the start stays, however long ago it was
        counting = [counting[0], *counting[-MOST_MARKS + 1 :]]
    points = tuple(Point(day_of(r, zone), r.value) for r in counting)
    return RatingLine(measure.key, points, question if measure.client_words else "")


def pressure_week(readings: Sequence[Reading], zone: tzinfo, profile: Profile) -> PressureWeekChart:
    """The newest home series, day by day. No limit in pregnancy, where the usual ones do not apply."""
    series = tuple(split((r for r in readings if r.counts and r.second is not None), zone))
    newest = series[-1] if series else ()
    found = mean_of(newest, zone) if newest else None
    mean = Pressure(found.systolic, found.diastolic) if isinstance(found, SeriesMean) else None
    dates = sorted({day_of(r, zone) for r in newest})
    days = tuple(
        PressureDay(
            day,
            _half(newest, day, zone, evening=False),
            _half(newest, day, zone, evening=True),
            used=mean is not None and n >= DROP_FIRST_DAYS,
            number=(day - dates[0]).days + 1,
        )
        for n, day in enumerate(dates)
    )
    limit, source = home_limit(profile, profile.age_on(day_of(newest[-1], zone)) if newest else None)
    return PressureWeekChart(days, mean, limit, source, *_odd_day(days, mean))


def _odd_day(days: Sequence[PressureDay], mean: Pressure | None) -> tuple[Pressure | None, int]:
    """The mean without the one day that makes it, and the number of that day."""
    used = [day for day in days if day.used]
    if mean is None or len(used) < FEWEST_DAYS_LEFT + 1:
        return None, 0
    odd = max(used, key=lambda day: abs(_of_day(day).systolic - mean.systolic))
    rest = [_of_day(day) for day in used if day is not odd]
    without = Pressure(
        sum((x.systolic for x in rest), D(0)) / len(rest), sum((x.diastolic for x in rest), D(0)) / len(rest)
    )
    return (without, odd.number) if abs(without.systolic - mean.systolic) >= MOVES_A_MEAN else (None, 0)


def _of_day(day: PressureDay) -> Pressure:
    halves = [half for half in (day.morning, day.evening) if half is not None]
    n = len(halves)
    return Pressure(sum((x.systolic for x in halves), D(0)) / n, sum((x.diastolic for x in halves), D(0)) / n)


def _half(readings: Iterable[Reading], day: date, zone: tzinfo, *, evening: bool) -> Pressure | None:
    of_half = [r for r in readings if day_of(r, zone) == day and (r.taken_at.astimezone(zone).hour >= 12) is evening]
    if not of_half:
        return None
    n = sum(r.attempts for r in of_half)
    return Pressure(
        sum((r.value * r.attempts for r in of_half), D(0)) / n,
        sum(((r.second or D(0)) * r.attempts for r in of_half), D(0)) / n,
    )


def home_limit(profile: Profile, age: int | None) -> tuple[Pressure | None, str]:
    """The limit from which the mean of a home week is raised, and its source; None in pregnancy."""
    if Caution.PREGNANCY in profile.cautions:
        return None, ""
    table = mean_limits(age, "nice")
    raised = table.bands[0]
    return Pressure(raised.systolic or D(0), raised.diastolic or D(0)), table.source.key
