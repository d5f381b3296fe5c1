"""Assess one reading in the light of earlier readings and the client's profile: score, change and context.

Histories are oldest first, of one measure, side notes included; they are iterated once and never sorted. Which of them
are official (a retest interval apart, counted from the baseline) is decided here, so that importing weekly values does
not make every one of them "too soon".

Two measures are not compared value by value. A blood pressure is compared as the mean of its series
(`core.measures.home_bp_series`). A rating (energy, own question) comes every week, so the mean of the last four
weeks is compared with the mean of the first four: a single mood says little, and averaging four halves the error.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta, tzinfo
from decimal import Decimal
from functools import lru_cache
from itertools import pairwise
from typing import Protocol, TypeVar

from core.client import Profile
from core.judging.change import (
    BEYOND_ERROR,
    CONDITION_FACTOR,
    EARLY_BY,
    INCOMPARABLE,
    ROOTS,
    STARTING,
    Change,
    Strength,
    Verdict,
    judge,
    reaches,
    unlike,
    variance,
)
from core.judging.course import (
    CLIP,
    NEWEST,
    WANDERS,
    ChangePoint,
    Point,
    bound,
    change_point,
    may_be_sure,
    variance_of_mean,
    winsorised,
)
from core.judging.start import together, visits_of
from core.measures.home_bp_series import SERIES_MEAN, SeriesMean, TooFewDays, as_reading, mean_of, means, split
from core.measures.measure import BodySize, Measure, MeasureKind, MeasurementError, Scores
from core.quantity import Better, Unit
from core.reading import How, Reading
from core.reliability import counting_step
from core.sources import Seen, Source

D = Decimal
Dated = TypeVar("Dated", bound="Datable")
RATING_WINDOW = timedelta(days=28)
EARLY_WEEKS = timedelta(weeks=6)  # ours: before then, patience is the better advice
TAPE_STEP = D(1)  # cm
SMALL_STEPS = "small_steps"  # of `Assessment.context`
Z99 = 2.33  # one-sided
BLOCKS = 5  # of four weeks each
_WIDER = float(CONDITION_FACTOR) ** 2
STEPS = 2  # in a row, from one official reading to the next

PROPAGATED = Source(
    key="propagated_error",
    cite="Relative errors of factors and divisors add as squares; standard theory of errors.",
    population="anybody",
    seen=Seen.DERIVED,
)


@dataclass(frozen=True, slots=True)
class Assessment:
    """The assessment of a single reading.

    reading: as received.  judged: what was scored and compared: the reading itself, a series mean, a four-week
    mean. verdict: None when the error of the measure is unknown, or a series has too few days. context: keys
    of what the client needs to hear with it. series: for blood pressure, the series so far. course: a sure change of
    level in the readings at hand (`core.judging.course`), which a coach is told by.
    """

    reading: Reading
    judged: Reading
    scores: Scores
    verdict: Verdict | None
    context: tuple[str, ...] = ()
    series: SeriesMean | TooFewDays | None = None
    course: ChangePoint | None = None


@dataclass(frozen=True, slots=True)
class Derived:
    """A derived reading with its propagated error; None if the error of a part is unknown."""

    measure: Measure
    reading: Reading
    error: MeasurementError | None


def assess(
    measure: Measure,
    reading: Reading,
    history: Sequence[Reading],
    profile: Profile,
    *,
    baseline_since: datetime | None,
    retest: timedelta | None,
    zone: tzinfo,
    error: MeasurementError | None = None,
    alongside: Mapping[str, Verdict] | None = None,
) -> Assessment:
    """Score `reading` and judge it against the client's own baseline.

    history: readings of this measure, oldest first; those not before `reading` are skipped, so it may be included.
    baseline_since: the start of a new programme.  retest: this client's interval, if the coach set one. zone: the
    client's, which decides what a day is.  error: of a derived measure (`Derived.error`). alongside: verdicts of other
    measures of the same check-in, for context between them.

    Raises: ValueError for a side note, which must never be scored or commented on (a programming error).
    """
    if reading.how is How.EARLY:
        raise ValueError("a side note is never assessed")
    before = [
        r
        for r in history
        if r.counts
        and (r.taken_at < reading.taken_at or (r.taken_at == reading.taken_at and r.key != reading.key))
        and (baseline_since is None or r.taken_at >= baseline_since)
    ]
    interval = retest or measure.retest
    visits: tuple[Reading, ...] = ()
    points: list[Point] = []
    chain: Sequence[Reading] = ()
    starting = steps = False
    if measure.series and SERIES_MEAN not in reading.conditions.notes:
        return _assess_series(measure, reading, before, profile, interval, zone)
    if measure.kind is MeasureKind.RATING:
        baseline, previous, judged = _four_week_means(before, reading)
        interval, error = RATING_WINDOW, error or error_of_weeks(measure.error)
        points = rating_points(measure, before, reading)
    else:
        chain, judged = officials(before, interval), reading
        baseline, previous = ends_of(chain)
        if measure.start_visits > 1:
            visits = visits_of(measure, (*before, reading))
            starting = len(visits) > 1 and visits[-1] is reading
            baseline = together(measure, visits) if before else None
        if not starting:
            points = points_of(measure, chain, reading, visits)
            steps = small_steps(measure, chain, reading)  # not of means, whose weeks overlap: they always look like it
    if starting:
        verdict: Verdict | None = STARTING
    else:
        verdict = judge(measure, baseline, previous, judged, retest=interval, error=error, visits=visits)
    course = sure_change(measure, verdict, points, reading, max(len(visits), 1))
    verdict = in_the_light_of(verdict, course)
    if verdict is not None and verdict.beyond_error and measure.kind in ONE_SITTING and len(visits) < 2:
        verdict = replace(verdict, start_alone=_start_alone(chain, verdict))
    return Assessment(
        reading=reading,
        judged=judged,
        scores=measure.score(reading, profile),
        verdict=verdict,
        context=tuple(_context(measure, judged, previous is None, verdict, profile, zone, alongside or {}, steps)),
        course=course,
    )


def official(before: Sequence[Reading], now: Reading, retest: timedelta) -> tuple[Reading | None, Reading | None]:
    """The baseline, and the last official reading after it (None at the first retest).

    before: readings earlier than `now` that count, oldest first. A reading is official if taken no earlier than three
    days before it was due, counted from the official one before it; other readings neither reset the clock nor confirm
    a change.
    """
    return ends_of(officials(before, retest))


def officials(before: Sequence[Reading], retest: timedelta) -> list[Reading]:
    """The official readings among `before`, oldest first, the baseline included."""
    chain = list(before[:1])
    shortest = retest - EARLY_BY
    for reading in before[1:]:
        if reading.taken_at - chain[-1].taken_at >= shortest:
            chain.append(reading)
    return chain


def ends_of(chain: Sequence[Reading]) -> tuple[Reading | None, Reading | None]:
    """The baseline, and the last official reading after it."""
    return (chain[0] if chain else None), (chain[-1] if len(chain) > 1 else None)


def small_steps(measure: Measure, chain: Sequence[Reading], now: Reading) -> bool:
    """Whether the last official readings went the right way one after the other.

    Chance does that as well, to one in six who stay as they are, so it is told with that and never flagged.
    """
    last = [*chain[-STEPS:], now]
    if measure.better is Better.NEITHER or len(last) <= STEPS:
        return False
    rising = measure.better is Better.HIGHER
    return all((b.value > a.value) if rising else (b.value < a.value) for a, b in pairwise(last))


# --- the course -------------------------------------------------------------------------------------------------


def points_of(measure: Measure, chain: Sequence[Reading], now: Reading, visits: Sequence[Reading] = ()) -> list[Point]:
    """The start, the newest official readings and `now`, as far as they can be compared with the start.

    visits: of the start, if it has several: each is a point.
    """
    if measure.error is None or measure.kind is MeasureKind.DERIVED or not chain:
        return []
    newest: list[Point] = []
    for reading in (now, *chain[:0:-1]):
        found = point(measure, measure.error, reading, chain[0])
        if found is not None:
            newest.append(found)
        if found is None and reading is now:
            return []
        if len(newest) == NEWEST:
            break
    start = (point(measure, measure.error, visit, chain[0]) for visit in visits or chain[:1])
    return [*(p for p in start if p is not None), *reversed(newest)]


def point(measure: Measure, error: MeasurementError, reading: Reading, start: Reading) -> Point | None:
    """A reading with its variance; None if it is not comparable with the start, of which a relative error is taken."""
    differing = unlike(reading, start)
    if differing & INCOMPARABLE:
        return None
    single = float(variance(error, start.value))
    own = float(variance(error, start.value, reading.attempts, reading.window))
    own = variance_of_mean(single, own, days=own < single)
    wider = own * _WIDER if differing else own
    step = float(counting_step(reading.window) if reading.window is not None else D(1).scaleb(-measure.places))
    instrument = min(1.0, step * step / 12 / reading.attempts / own)
    days = reading.attempts if SERIES_MEAN in reading.conditions.notes else 1
    return Point(reading.taken_at, float(reading.value), wider, instrument, days, wander=WANDERS * single)


def rating_points(measure: Measure, before: Sequence[Reading], now: Reading) -> list[Point]:
    """Means of the first four weeks and of the last `BLOCKS` times four weeks, whatever of them there is."""
    if measure.error is None or not before:
        return []
    ends = before[0].taken_at + RATING_WINDOW - EARLY_BY
    if now.taken_at < ends:
        return []
    first = [r for r in before if r.taken_at < ends]
    blocks = rating_blocks(first, [*before[len(first) :], now])
    swing = float(variance(measure.error, now.value))
    return [mean_point([float(r.value) for r in block], block[0].taken_at, swing) for block in blocks]


def rating_blocks(first: Sequence[Dated], later: Sequence[Dated]) -> list[list[Dated]]:
    """Ratings of the first four weeks, and those after them by fours of weeks counted back from the last, up to
    `BLOCKS`.

    Empty blocks are left out.
    """
    until = later[-1].taken_at - RATING_WINDOW + EARLY_BY
    blocks = [list(first)]
    for n in range(BLOCKS - 1, 0, -1):
        upto = until - (n - 1) * RATING_WINDOW
        blocks.append([r for r in later if upto - RATING_WINDOW < r.taken_at <= upto])
    blocks.append([r for r in later if r.taken_at > until])
    return [block for block in blocks if block]


def mean_point(ratings: Sequence[float], at: datetime, swing: float) -> Point:
    """Ratings of four weeks as one point. swing: the variance of one."""
    level, scatter = _level_and_scatter(tuple(ratings), swing)
    number = len(ratings)
    spread = variance_of_mean(swing, swing / number, days=True)
    return Point(at, level, spread, days=number, scatter=scatter, wander=WANDERS * swing)


@lru_cache(maxsize=4096)  # four whole numbers from 0 to 10 come again and again
def _level_and_scatter(ratings: tuple[float, ...], swing: float) -> tuple[float, float]:
    level = winsorised(ratings, swing)
    return level, sum(min((rating - level) ** 2 / swing, CLIP * CLIP) for rating in ratings)


def sure_change(
    measure: Measure, verdict: Verdict | None, points: Sequence[Point], now: Reading, start: int = 1
) -> ChangePoint | None:
    """The change in the readings, if it is sure and this one is judged at all. start: how many points it is."""
    if verdict is None or verdict.kind not in JUDGED or measure.error is None:
        return None
    return sure_among(points, measure, float(now.value), start)


def sure_among(points: Sequence[Point], measure: Measure, now: float, start: int = 1) -> ChangePoint | None:
    """The change in these points, if it is sure, and at least half of what matters.

    now: the present reading, which must lie on the side of the new level: nobody is told of a fall on the day that it
    is over. start: how many points are visits of the start.
    """
    least = least_t(measure)
    if not may_be_sure(points, least):
        return None
    found = change_point(points, start)
    if found is None or not found.sure(least) or (2 * now > found.before + found.after) is not (found.difference > 0):
        return None
    twice = reaches(measure.important, measure.better, D(found.before), 2 * D(found.difference))
    return None if twice is False else found


def least_t(measure: Measure) -> float:
    """What t must pass for this measure.

    Where an important difference is so far beyond error that it would be found all the same, the bound is higher by
    what people differ (`MeasurementError.spread`): as if this one swung an SD more than is typical.
    """
    error, important = measure.error, measure.important
    least = bound(typical=error is None or not error.worst, valued=important is not None or measure.series)
    if error is None or important is None or not error.spread:
        return least
    swing = error.cv if important.relative else error.sem
    if swing is None:
        return least
    found_99 = float(important.better / swing) - Z99  # by two readings on either side
    return max(least, min(least * (1 + float(error.spread)), found_99))


def _start_alone(chain: Sequence[Reading], verdict: Verdict) -> bool:
    """Whether the start, one reading, is far from all later ones: nearer to it than to this one lies none.

    An unusual day passes for a start as often as any other, and what follows it drifts back towards the usual:
    regression to the mean (Galton 1886, J Anthropol Inst 15:246-263; Bland and Altman 1994, BMJ 308:1499, both from
    memory). It cannot be told from a change by these readings, so it is said before anything is called a change.
    """
    assert verdict.baseline is not None and verdict.difference is not None
    half = verdict.baseline + verdict.difference / 2
    up = verdict.difference > 0
    return all((reading.value > half) is up for reading in chain[1:])


ONE_SITTING = frozenset({MeasureKind.BODY, MeasureKind.FUNCTION})
JUDGED = BEYOND_ERROR | {Change.WITHIN_ERROR}


def in_the_light_of(verdict: Verdict | None, course: ChangePoint | None) -> Verdict | None:
    """A change seen at two retests in a row is firm if the course of all readings goes the same way."""
    if verdict is None or course is None or verdict.strength is not Strength.CONFIRMED:
        return verdict
    return replace(verdict, firm=verdict.rising is (course.difference > 0))


def _assess_series(
    measure: Measure,
    reading: Reading,
    before: Sequence[Reading],
    profile: Profile,
    interval: timedelta,
    zone: tzinfo,
) -> Assessment:
    *earlier, current = split((*before, reading), zone)
    raw = tuple(r for r in current if SERIES_MEAN not in r.conditions.notes)
    found = mean_of(raw, zone)
    if isinstance(found, TooFewDays):
        alone = measure.score(reading, profile)
        return Assessment(reading, reading, alone, None, ("series_too_few_days",), found)
    judged = as_reading(found, raw)
    chain = officials(means((r for series in earlier for r in series), zone), interval)
    baseline, previous = ends_of(chain)
    verdict = judge(measure, baseline, previous, judged, retest=interval)
    course = sure_change(measure, verdict, points_of(measure, chain, judged), judged)
    verdict = in_the_light_of(verdict, course)
    steps = small_steps(measure, chain, judged)
    context = tuple(_context(measure, judged, previous is None, verdict, profile, zone, {}, steps))
    return Assessment(reading, judged, measure.score(judged, profile), verdict, context, found, course)


def _four_week_means(before: Sequence[Reading], now: Reading) -> tuple[Reading | None, Reading | None, Reading]:
    """Means of the first four weeks, the four weeks before the last, and the last four; no two share a reading.

    If ratings are four or more weeks apart, each mean has one reading and the usual rule applies.
    """
    if not before:
        return None, None, now
    ends = before[0].taken_at + RATING_WINDOW - EARLY_BY
    first = [r for r in before if r.taken_at < ends]
    since = now.taken_at - RATING_WINDOW + EARLY_BY
    later = [*before[len(first) :], now]
    last = [r for r in later if r.taken_at > since]
    earlier = [r for r in later if since - RATING_WINDOW < r.taken_at <= since]
    if now.taken_at < ends:  # still filling the first four weeks: too soon
        return before[0], None, now
    baseline = replace(mean_reading(first), taken_at=before[0].taken_at)
    return baseline, mean_reading(earlier) if earlier else None, mean_reading(last)


@lru_cache(maxsize=8)
def error_of_weeks(error: MeasurementError | None) -> MeasurementError | None:
    """Attempts on one evening share its mood; the weeks of a four-week mean are independent."""
    return error and replace(error, shared_by_attempts=False)


def mean_reading(readings: Sequence[Reading]) -> Reading:
    """The mean of one or more ratings as a single reading, dated like the last."""
    if len(readings) == 1:
        return readings[0]
    value = sum((r.value for r in readings), D(0)) / len(readings)
    return replace(readings[-1], value=value, attempts=len(readings))


def _context(
    measure: Measure,
    judged: Reading,
    first_retest: bool,
    verdict: Verdict | None,
    profile: Profile,
    zone: tzinfo,
    alongside: Mapping[str, Verdict],
    steps: bool,
) -> Iterator[str]:
    """Context keys, most important first. Each rule is ours unless a source is named beside it."""
    for caution, said in measure.misled_by:
        if caution in profile.cautions:
            yield said
    if verdict is None:
        return
    kind, difference = verdict.kind, verdict.difference
    if kind is Change.NO_BASELINE:
        yield "start_again" if measure.start_visits > 1 else "first_reading"
        return
    if verdict.widened:
        yield "different_conditions"
    if verdict.start_alone and verdict.certainty and not verdict.firm:
        yield "start_alone"
    if difference is None or verdict.baseline_at is None:
        return
    if _flat_weight_smaller_waist(measure, verdict, alongside):
        yield "flat_weight_smaller_waist"
    if kind is Change.WITHIN_ERROR:
        if steps:
            yield SMALL_STEPS
        if verdict.reaches_important:
            yield "matters_but_unsure"
        if judged.taken_at - verdict.baseline_at < EARLY_WEEKS:
            yield "early_weeks"
        if measure.unit is Unit.CENTIMETRE and 0 < abs(difference) <= TAPE_STEP:
            yield "one_step_of_tape"
        if judged.window is not None and 0 < abs(difference) <= counting_step(judged.window):
            yield "one_beat_of_the_count"
        if measure.body is BodySize.WEIGHT and _weekday(judged.taken_at, zone) != _weekday(verdict.baseline_at, zone):
            yield "other_weekday"  # heavier Sunday to Monday: Orsama 2014, Obes Facts 7:36
    if measure.kind is MeasureKind.FUNCTION and first_retest and kind is Change.BETTER:
        yield "practice_counts_too"  # 0.5 to 0.8 stands from first to second try: Gill 2022


def _flat_weight_smaller_waist(measure: Measure, verdict: Verdict, alongside: Mapping[str, Verdict]) -> bool:
    other = alongside.get(measure.beside)
    if other is None:
        return False
    weight, waist = (verdict, other) if measure.body is BodySize.WEIGHT else (other, verdict)
    return weight.kind is Change.WITHIN_ERROR and waist.kind in BEYOND_ERROR and waist.rising is False


def _weekday(at: datetime, zone: tzinfo) -> int:
    return at.astimezone(zone).weekday()


def derive_all(latest: Mapping[str, Reading], profile: Profile, registry: Mapping[str, Measure]) -> tuple[Derived, ...]:
    """Compute every derived measure whose parts are in `latest`, in registry order.

    latest: the newest reading that counts, by measure key. A derived measure may build on an earlier one in the
    registry.
    """
    known = dict(latest)
    found: list[Derived] = []
    for measure in registry.values():
        if measure.derive is None or not all(key in known for key in measure.derived_from):
            continue
        reading = measure.derive(known, profile)
        if reading is None:
            continue
        known[measure.key] = reading
        found.append(Derived(measure, reading, derived_error(measure, known, registry)))
    return tuple(found)


def derived_error(
    measure: Measure, parts: Mapping[str, Reading], registry: Mapping[str, Measure]
) -> MeasurementError | None:
    """A ratio's error propagated from its parts; otherwise, or if that is unknown, the measure's own error.

    A body mass index has the relative error of its weight (stature is the same number on both sides of a comparison, so
    it cancels out); a waist-to-hip ratio has sqrt(waist^2 + hip^2) of the relative errors.
    """
    relative = relative_variance(measure, parts, registry)
    if relative is None:
        return measure.error
    return propagated(relative)


def propagated(relative_variance: Decimal) -> MeasurementError:
    """A ratio's measurement error, from its relative variance."""
    return MeasurementError(source=PROPAGATED, cv=relative_variance.sqrt(ROOTS), shared_by_attempts=True)


class Datable(Protocol):
    @property
    def taken_at(self) -> datetime: ...


class DerivedPart(Protocol):
    """What a part contributes to the error of a derived reading."""

    @property
    def value(self) -> Decimal: ...
    @property
    def attempts(self) -> int: ...
    @property
    def window(self) -> int | None: ...


def relative_variance(
    measure: Measure, parts: Mapping[str, DerivedPart], registry: Mapping[str, Measure]
) -> Decimal | None:
    """A ratio's relative variance, propagated from its parts; None if the measure is not derived from them."""
    if measure.unit not in (Unit.RATIO, Unit.KILOGRAM_PER_SQUARE_METRE):
        return None
    relative = D(0)
    for key in measure.derived_from:
        if registry[key].kind is MeasureKind.ONCE:
            continue
        part, error = parts.get(key), registry[key].error
        if part is None or error is None or not part.value:
            return None
        relative += variance(error, part.value, part.attempts, part.window) / (part.value * part.value)
    return relative
