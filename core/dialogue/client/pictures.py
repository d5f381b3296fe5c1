"""Which charts a client can see, and what is on them."""

from __future__ import annotations

from datetime import date, datetime, time
from decimal import Decimal

from core.dialogue.client.readings import assessed
from core.dialogue.client.step import ClientStep
from core.judging import chart_data
from core.judging.chart_data import PressureWeekChart, RatingLine, TrendChart
from core.measures import MEASURES
from core.measures.measure import Measure, MeasureKind
from core.schedule import instant

POINTS_FOR_A_CHART = 2


def showable(d: ClientStep) -> tuple[str, ...]:
    """Measures with enough official readings to draw, whose numbers this client wants to see."""
    counts: dict[str, int] = {}
    for reading in d.facts.history:
        if reading.counts:
            counts[reading.measure] = counts.get(reading.measure, 0) + 1
    return tuple(
        key
        for key, measure in MEASURES.items()
        if counts.get(key, 0) >= POINTS_FOR_A_CHART and not d.hidden(measure) and measure.kind is not MeasureKind.ONCE
    )


def chart_of(d: ClientStep, measure: Measure, since: str = "") -> TrendChart | RatingLine | PressureWeekChart:
    """The chart of a showable measure. since: an ISO date from which to draw."""
    readings = d.facts.of(measure.key)
    if measure.kind is MeasureKind.RATING:
        return chart_data.rating_line(measure, readings, d.facts.zone, d.facts.plan.own_question)
    if measure.series:
        return chart_data.pressure_week(readings, d.facts.zone, d.facts.profile)
    start = _from_day(d, since) or d.facts.plan.baseline_since
    verdict = None if since else assessed(d, measure, readings[-1]).verdict
    chance: Decimal | None = None if verdict is None else verdict.chance
    return chart_data.trend(measure, readings, d.facts.profile, d.facts.zone, d.unit(measure), start, chance)


def _from_day(d: ClientStep, since: str) -> datetime | None:
    """The start of a local day; None if `since` is no date."""
    try:
        return instant(date.fromisoformat(since), time(0), d.facts.zone)
    except ValueError:
        return None
