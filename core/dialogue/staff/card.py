"""A client's card as a coach sees it: the last reading of each measure, its band and its verdict.

Scores are computed here on demand and never stored, so a corrected table corrects the past. Side notes are not on a
card. Amounts are in the client's preferred units, in which they will talk about them.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta, tzinfo

from core import schedule
from core.care import Plan
from core.client import Profile
from core.dialogue.client.messages import BandSaid
from core.dialogue.client.results import preferred_unit, shown, verdict_told
from core.dialogue.staff.facts import CardFact
from core.dialogue.staff.messages import CardLine
from core.judging import chart_data
from core.judging.assess import Assessment, assess, derive_all
from core.measures import CHECK_IN_ORDER, MEASURES
from core.measures.measure import Measure, MeasureKind, MeasurementError, Score
from core.reading import Reading
from core.watching.digest import FlagFact, Panel
from core.watching.flags import Code

POINTS = 2  # fewest for drawing a line
PANELS = 6  # small charts: the platform scales down more until they are unreadable
YEAR = timedelta(days=366)  # how far back they go


def lines(card: CardFact) -> tuple[CardLine, ...]:
    """The newest official reading of every measure that has one, derived ones after their parts."""
    latest: dict[str, Reading] = {}
    for reading in card.history:
        if reading.counts:
            latest[reading.measure] = reading
    out = [
        _line(MEASURES[key], latest[key], card)
        for key in (*CHECK_IN_ORDER, *(k for k in latest if k not in CHECK_IN_ORDER))
        if key in latest and MEASURES[key].kind is not MeasureKind.ONCE
    ]
    for derived in derive_all(latest, card.profile, MEASURES):
        band = _band(derived.measure, derived.reading, card.profile)
        if band is not None:
            amount = shown(derived.measure, derived.reading.value, card.units)
            on = derived.reading.taken_at.astimezone(card.zone).date()
            out.append(CardLine(derived.measure.key, amount, None, on, band, None))
    return tuple(out)


def _line(measure: Measure, reading: Reading, card: CardFact) -> CardLine:
    of_measure = tuple(r for r in card.history if r.measure == measure.key)
    found = _assessed(measure, reading, of_measure, card.profile, card.plan, card.zone)
    on = reading.taken_at.astimezone(card.zone).date()
    band = next((_said(measure, s) for s in found.scores if isinstance(s, Score)), None)
    amount = shown(measure, reading.value, card.units)
    verdict = verdict_told(measure, found, card.units, card.zone)
    return CardLine(measure.key, amount, reading.second, on, band, verdict, reading.conditions.words)


def _assessed(
    measure: Measure,
    reading: Reading,
    history: tuple[Reading, ...],
    profile: Profile,
    plan: Plan,
    zone: tzinfo,
    error: MeasurementError | None = None,
) -> Assessment:
    retest = schedule.interval(measure.key, plan.interval(measure.key))
    return assess(
        measure,
        reading,
        history,
        profile,
        baseline_since=plan.baseline_since,
        retest=retest,
        zone=zone,
        error=error,
    )


def _band(measure: Measure, reading: Reading, profile: Profile) -> BandSaid | None:
    return next((_said(measure, s) for s in measure.score(reading, profile) if isinstance(s, Score)), None)


def _said(measure: Measure, score: Score) -> BandSaid:
    return BandSaid(measure.key, score.band, score.source.key, score.notes[:1])


# --- the sheet --------------------------------------------------------------------------------------------------


def panels(cards: tuple[CardFact, ...], since: datetime | None = None) -> tuple[Panel, ...]:
    """One small chart for each flagged client and measure with at least two official readings.

    cards: in the order of the digest.  since: earlier readings are not drawn (usually a year).
    """
    return tuple(panel for card in cards for panel in _of(card, since))


def _of(card: CardFact, since: datetime | None) -> Iterator[Panel]:
    drawn: set[str] = set()
    for flag in card.flags:
        key = "" if flag.code == Code.WEIGHING_OFTEN else flag.measure or ""  # this flag is not about the numbers
        if key not in drawn and key in MEASURES and (panel := _panel(card, flag, MEASURES[key], since)):
            drawn.add(key)
            yield panel


def _panel(card: CardFact, flag: FlagFact, measure: Measure, since: datetime | None) -> Panel | None:
    readings = tuple(
        r for r in card.history if r.measure == measure.key and r.counts and (since is None or r.taken_at >= since)
    )
    if len(readings) < POINTS:
        return None
    return Panel(card.name, flag.code, drawn(card, measure, readings), flag, card.units)


def drawable(card: CardFact) -> tuple[str, ...]:
    """The measures with enough official readings for a picture."""
    counted = [r.measure for r in card.history if r.counts and r.measure in MEASURES]
    order = (*CHECK_IN_ORDER, *counted)
    return tuple(
        dict.fromkeys(
            key for key in order if counted.count(key) >= POINTS and MEASURES[key].kind is not MeasureKind.ONCE
        )
    )


def picture(card: CardFact, key: str) -> chart_data.TrendChart | chart_data.RatingLine | chart_data.PressureWeekChart:
    """A client's picture of one measure, one of `drawable`."""
    return drawn(card, MEASURES[key], tuple(r for r in card.history if r.measure == key and r.counts))


def drawn(
    card: CardFact, measure: Measure, readings: tuple[Reading, ...]
) -> chart_data.TrendChart | chart_data.RatingLine | chart_data.PressureWeekChart:
    if measure.kind is MeasureKind.RATING:
        return chart_data.rating_line(measure, readings, card.zone, card.plan.own_question)
    if measure.series:
        return chart_data.pressure_week(readings, card.zone, card.profile)
    unit = preferred_unit(measure, card.units)
    return chart_data.trend(measure, readings, card.profile, card.zone, unit, card.plan.baseline_since)
