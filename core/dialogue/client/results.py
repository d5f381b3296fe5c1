"""What was measured, whole: start and now, every band, the change with its error, a picture; for a page or a report.

A message says one thing about one reading. A page says all there is about a measure, to somebody who reads it at
leisure. Amounts are in the client's preferred units. Side notes are never part of it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date, tzinfo
from decimal import Decimal

from core import schedule
from core.care import Plan, Units
from core.client import Profile
from core.dialogue.client.messages import BandSaid, VerdictSaid
from core.judging import chart_data
from core.judging.assess import Assessment, Derived, assess, derive_all
from core.judging.change import Change, Verdict
from core.judging.chart_data import PressureWeekChart, RatingLine, TrendChart
from core.measures import CHECK_IN_ORDER, MEASURES
from core.measures.home_bp_series import SERIES_MEAN, TooFewDays, mean_of, means, split
from core.measures.measure import Measure, MeasureKind, Score
from core.quantity import FACTOR, Amount, Dimension, Unit, convert, half_up
from core.reading import Reading

MOST_POINTS = 13  # of a picture and its table, beside the start: a year of four-weekly retests
FEWEST_POINTS = 2  # of a picture


@dataclass(frozen=True, slots=True)
class Value:
    """A value on a day. second: the lower pressure, or the pulse at the end of a walk."""

    on: date
    amount: Amount
    second: Decimal | None = None


@dataclass(frozen=True, slots=True)
class Result:
    """Everything about one measure of one client.

    last: the newest official reading. start, now: what is compared, a single reading, the mean of a home series or of
    four weeks of ratings (`mean_of`: "", "week", "four_weeks"); None where there is nothing to compare. bands: of every
    reference that has one for this person, the primary one first. missing: why there is none, or "". error_source,
    important_source: keys of sources. important: the smallest published difference that matters. differed: conditions
    that widened the error. picture: None with fewer than two readings. question: the client's own words, for their own
    question.
    """

    measure: str
    last: Value
    start: Value | None = None
    now: Value | None = None
    mean_of: str = ""
    bands: tuple[BandSaid, ...] = ()
    missing: str = ""
    verdict: VerdictSaid | None = None
    error_source: str = ""
    important: Amount | None = None
    important_source: str = ""
    differed: tuple[str, ...] = ()
    picture: TrendChart | RatingLine | PressureWeekChart | None = None
    question: str = ""


def preferred_unit(measure: Measure, units: Units) -> Unit:
    """Somebody's preferred unit for a measure."""
    if measure.unit in FACTOR:
        dimension = FACTOR[measure.unit][0]
        if dimension is Dimension.MASS and units.mass in measure.units:
            return units.mass
        if dimension is Dimension.LENGTH and units.length in measure.units:
            return units.length
    return measure.unit


def shown(measure: Measure, value: Decimal, units: Units) -> Amount:
    """A value as this client reads it; a rating as the mean that it is here, to one decimal."""
    unit = preferred_unit(measure, units)
    if unit is measure.unit:
        places = max(measure.places, 1) if measure.kind is MeasureKind.RATING else measure.places
        return Amount(half_up(value, places), unit)
    return Amount(convert(value, measure.unit, unit), unit)


def verdict_told(measure: Measure, found: Assessment, units: Units, zone: tzinfo) -> VerdictSaid | None:
    """The verdict in this client's units, as they hear it and as their coach reads it: what is not far enough beyond
    error to be told is within it."""
    verdict = found.verdict
    if verdict is None:
        return None
    kind = Change.WITHIN_ERROR if verdict.beyond_error and not verdict.certainty else verdict.kind
    return _in_units(measure, verdict, kind, verdict.certainty, verdict.chance, units, zone)


def _in_units(
    measure: Measure, verdict: Verdict, kind: Change, strength: str, error: Decimal | None, units: Units, zone: tzinfo
) -> VerdictSaid:
    return VerdictSaid(
        measure.key,
        kind.value,
        strength,
        shown(measure, verdict.difference, units) if verdict.beyond_error and verdict.difference is not None else None,
        None if error is None else shown(measure, error, units),
        None if verdict.baseline_at is None else verdict.baseline_at.astimezone(zone).date(),
        verdict.reaches_important,
    )


@dataclass(frozen=True, slots=True)
class ResultFacts:
    """Whose readings, and what is needed to read them. history: oldest first, side notes included."""

    history: tuple[Reading, ...]
    profile: Profile
    plan: Plan
    zone: tzinfo
    units: Units

    def of(self, measure: str) -> tuple[Reading, ...]:
        """The readings of a measure that count."""
        return tuple([r for r in self.history if r.measure == measure and r.counts])


def results(whose: ResultFacts) -> tuple[Result, ...]:
    """One result for each measure that has a reading, in the order of a check-in, then what is derived from them."""
    latest = {r.measure: r for r in whose.history if r.counts}
    order = (*CHECK_IN_ORDER, *(key for key in latest if key not in CHECK_IN_ORDER))
    asked = [MEASURES[key] for key in order if key in latest and MEASURES[key].kind is not MeasureKind.ONCE]
    taken = tuple(_taken(measure, latest[measure.key], whose) for measure in asked)
    return (*taken, *_derived(latest, whose))


def _taken(measure: Measure, last: Reading, whose: ResultFacts) -> Result:
    of_measure = whose.of(measure.key)
    if measure.series:
        of_measure = _finished(of_measure, whose.zone)
    found = assess(
        measure,
        of_measure[-1],
        of_measure,
        whose.profile,
        baseline_since=whose.plan.baseline_since,
        retest=schedule.interval(measure.key, whose.plan.interval(measure.key)),
        zone=whose.zone,
    )
    start, now, kind = _compared(measure, found, of_measure, whose)
    bands, missing = _bands(measure, found.scores)
    return Result(
        measure.key,
        _value(measure, last, whose),
        start,
        now,
        kind,
        bands,
        missing,
        verdict_told(measure, found, whose.units, whose.zone),
        "" if measure.error is None else measure.error.source.key,
        *_important(measure, found, whose),
        () if found.verdict is None else tuple(sorted(found.verdict.widened)),
        _picture(measure, of_measure, whose, found.verdict),
        whose.plan.own_question if measure.client_words else "",
    )


def _derived(latest: dict[str, Reading], whose: ResultFacts) -> Iterator[Result]:
    """Those in a published band: without one, a ratio says nothing that its parts do not."""
    one: Derived
    for one in derive_all(latest, whose.profile, MEASURES):
        bands, _ = _bands(one.measure, one.measure.score(one.reading, whose.profile))
        if bands:
            yield Result(one.measure.key, _value(one.measure, one.reading, whose), bands=bands)


def _finished(of_measure: tuple[Reading, ...], zone: tzinfo) -> tuple[Reading, ...]:
    """Without a home series that has only begun, if there is a finished one before it."""
    series = list(split(of_measure, zone))
    while len(series) > 1 and isinstance(mean_of(series[-1], zone), TooFewDays):
        series.pop()
    return tuple(r for one in series for r in one)


def _value(measure: Measure, reading: Reading, whose: ResultFacts) -> Value:
    on = reading.taken_at.astimezone(whose.zone).date()
    return Value(on, shown(measure, reading.value, whose.units), reading.second)


def _bands(measure: Measure, scores: Sequence[object]) -> tuple[tuple[BandSaid, ...], str]:
    found = tuple(BandSaid(measure.key, s.band, s.source.key, s.notes[:1]) for s in scores if isinstance(s, Score))
    reason = "" if found or not scores else str(getattr(scores[0], "reason", ""))
    return found, reason


def _important(measure: Measure, found: Assessment, whose: ResultFacts) -> tuple[Amount | None, str]:
    """The smallest difference that matters, in this client's unit; a relative one, of their own baseline."""
    published, verdict = measure.important, found.verdict
    if published is None or verdict is None or verdict.baseline is None:
        return None, ""
    size = published.better * verdict.baseline if published.relative else published.better
    return shown(measure, size, whose.units), published.source.key


def _compared(
    measure: Measure, found: Assessment, of_measure: tuple[Reading, ...], whose: ResultFacts
) -> tuple[Value | None, Value | None, str]:
    verdict = found.verdict
    if verdict is None or verdict.baseline is None or verdict.baseline_at is None:
        alone = measure.series and SERIES_MEAN in found.judged.conditions.notes
        return None, _value(measure, found.judged, whose) if alone else None, "week" if alone else ""
    since = whose.plan.baseline_since
    first = Reading(measure.key, verdict.baseline, verdict.baseline_at)
    kind = ""
    if measure.series:
        kind = "week"
        counted = [r for r in of_measure if since is None or r.taken_at >= since]
        first = next((r for r in means(counted, whose.zone) if r.taken_at == verdict.baseline_at), first)
    elif measure.kind is MeasureKind.RATING:
        kind = "four_weeks"
    elif measure.optional_second:
        first = next((r for r in of_measure if r.taken_at == verdict.baseline_at), first)
    return _value(measure, first, whose), _value(measure, found.judged, whose), kind


def _picture(
    measure: Measure, of_measure: tuple[Reading, ...], whose: ResultFacts, verdict: Verdict | None
) -> TrendChart | RatingLine | PressureWeekChart | None:
    """The newest readings; the start is drawn however long ago it was."""
    if len(of_measure) < FEWEST_POINTS:
        return None
    if measure.series:
        return chart_data.pressure_week(of_measure, whose.zone, whose.profile)
    if measure.kind is MeasureKind.RATING:
        return chart_data.rating_line(measure, of_measure, whose.zone, whose.plan.own_question)
    unit = preferred_unit(measure, whose.units)
    chance = None if verdict is None else verdict.chance
    whole = chart_data.trend(measure, of_measure, whose.profile, whose.zone, unit, whose.plan.baseline_since, chance)
    if len(whole.points) > MOST_POINTS + 1:
        whole = replace(whole, points=(whole.points[0], *whole.points[-MOST_POINTS:]))
    return whole if len(whole.points) >= FEWEST_POINTS else None
