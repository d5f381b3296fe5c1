"""A home blood-pressure week: two prompts a day, two readings per prompt, then the mean of all days but the first."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from decimal import Decimal

from core.client import Caution
from core.dialogue.client import messages as m
from core.dialogue.client import readings
from core.dialogue.client.effects import CancelTimer, Lower, Raise
from core.dialogue.client.states import Awaiting
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice
from core.dialogue.kit.events import TimerFired
from core.judging.chart_data import pressure_week
from core.measures import MEASURES
from core.measures.blood_pressure import score_mean
from core.measures.home_bp_series import SeriesMean, TooFewDays, mean_of
from core.measures.measure import Score
from core.quantity import half_up
from core.reading import Reading
from core.watching.flags import Code, Ended, flag

MEASURE = "blood_pressure"
READINGS_A_PROMPT = 2
DAYS_NEEDED = 4
PROMPT_GOES_STALE = timedelta(hours=3)


def prompted(d: ClientStep, event: TimerFired) -> None:
    """A morning or evening prompt. One that is hours late would only confuse and is skipped."""
    week = d.state.pressure
    if week is None or event.late_by > PROMPT_GOES_STALE:
        return
    day, evening = int(event.mark[:-1]), event.mark.endswith("e")
    d.become(pressure=replace(week, day=day, evening=evening, taken=0))
    if d.asking is None or getattr(d.asking, "measure", "") == MEASURE:  # a doubt or repeat from hours ago has lapsed
        d.ask(Awaiting(MEASURE))
    d.say(
        m.PressurePrompt(day, evening),
        (Choice("how", f"how:{MEASURE}"), Choice("skip", "skip")),
        occasion=f"pressure/{d.facts.client_id}/{week.first.isoformat()}/{event.mark}",
    )


def reading_stored(d: ClientStep, reading: Reading) -> None:
    """Acknowledge one reading: ask for the second, or close the prompt."""
    week = d.state.pressure
    if week is None:
        d.say(m.ReadingKept(MEASURE, d.shown(MEASURES[MEASURE], reading.value), reading.second))
        return
    taken = week.taken + reading.attempts
    d.become(pressure=replace(week, taken=taken))
    if taken < READINGS_A_PROMPT and reading.second is not None:
        d.ask(Awaiting(MEASURE, tries=0, so_far=(reading.value,)))
        d.say(m.PressureAgain(half_up(reading.value, 0), half_up(reading.second, 0)))
        return
    day = (d.today - week.first).days + 1
    d.ask(None)
    d.say(m.PressureKept(max(day, 1), max((week.last - d.today).days, 0)))
    if d.today >= week.last and week.evening:
        finish(d)


def series_of_week(d: ClientStep) -> tuple[Reading, ...]:
    week = d.state.pressure
    if week is None:
        return ()
    return tuple(r for r in d.facts.of(MEASURE) if d.facts.local(r.taken_at).date() >= week.first)


def finish(d: ClientStep) -> None:
    """Close the week: report the mean with its band and verdict, or kindly that there were too few days."""

    taken = series_of_week(d)
    d.do(CancelTimer("pressure"), CancelTimer("pressure_end"))
    if isinstance(d.asking, Awaiting) and d.asking.measure == MEASURE:
        d.ask(None)
    found = mean_of(taken, d.facts.zone) if taken else TooFewDays(0)
    d.become(pressure=None)
    if isinstance(found, TooFewDays):
        d.say(m.PressureTooFew(found.days, DAYS_NEEDED))
        few = {"days": Decimal(found.days), "needed": Decimal(DAYS_NEEDED)}
        d.do(Raise(flag(Code.BP_WEEK_SHORT, d.now, MEASURE, **few)))
        return
    d.do(Lower(Code.BP_WEEK_SHORT, MEASURE, Ended.READING))
    assert isinstance(found, SeriesMean)
    measure = MEASURES[MEASURE]
    d.say(m.PressureWeekDone(half_up(found.systolic, 0), half_up(found.diastolic, 0), found.used_days, found.used))
    assessment = readings.assessed(d, measure, taken[-1])
    readings.raise_flags(d, measure, taken[-1], assessment)
    age, limits = d.facts.profile.age_on(d.today), d.facts.plan.pressure_body
    score = score_mean(found.systolic, found.diastolic, d.facts.profile, age=age, body=limits)
    if isinstance(score, Score):
        d.say(m.BandSaid(MEASURE, score.band, score.source.key, score.notes[:1]))
        d.become(sources=(score.source.key,))
    elif Caution.PREGNANCY in d.facts.profile.cautions:
        d.say(m.PregnancyPressureWeek())
    if assessment.verdict is not None:
        d.say(readings.verdict_said(d, measure, assessment))
    _picture(d, taken)


def _picture(d: ClientStep, taken: tuple[Reading, ...]) -> None:
    d.say(m.Picture(pressure_week(taken, d.facts.zone, d.facts.profile)))


def week_over(d: ClientStep, at: datetime) -> None:
    """The morning after the last day: close the week, whatever was received."""
    if d.state.pressure is not None:
        finish(d)


def stop(d: ClientStep) -> None:
    """The client does not want the week."""
    call_off(d)
    d.say(m.Skipped(MEASURE))


def call_off(d: ClientStep) -> bool:
    """No more prompts, and no mean; its readings stay. False if no week is under way."""
    d.do(CancelTimer("pressure"), CancelTimer("pressure_end"))
    under_way = d.state.pressure is not None
    d.become(pressure=None)
    return under_way
