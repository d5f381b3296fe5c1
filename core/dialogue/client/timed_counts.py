"""Timed counts run by the bot: a pulse in 15, 30 or 60 seconds, chair stands in 30, a walk in 360, an open
stopwatch."""

from __future__ import annotations

from datetime import datetime, timedelta
from decimal import Decimal

from core.dialogue.client import answers, check_in
from core.dialogue.client import messages as m
from core.dialogue.client.states import Awaiting, Counting, StopwatchDone
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice
from core.dialogue.kit.events import Text
from core.measures import MEASURES
from core.measures.measure import Measure, Understood
from core.quantity import Unit, half_up
from core.understanding.answers_in_text import whole_numbers

LONGEST = timedelta(minutes=40)  # a stopwatch left running for longer was forgotten


def offer(d: ClientStep, measure: Measure) -> None:
    """Choose how long to count, or start the stopwatch."""
    seconds = measure.protocol.timers
    d.ask(Awaiting(measure.key))
    if seconds == (0,):
        d.say(m.CountReady(measure.key, seconds), (Choice("start", f"count:{measure.key}:0"),))
        return
    row = tuple(Choice("seconds", f"count:{measure.key}:{s}", str(s)) for s in seconds)
    d.say(m.CountReady(measure.key, seconds), row, (Choice("i_have_number", "have"),))


def start(d: ClientStep, measure: Measure, seconds: int, at: datetime) -> None:
    """Start. The stop is queued now for the exact second, so load cannot delay it."""
    repeated = measure.repeat is not None and seconds == measure.repeat.count
    if seconds not in measure.protocol.timers and not repeated:
        check_in.ask(d, measure)
        return
    d.ask(Counting(measure.key, seconds, at))
    if seconds == 0:
        say_running(d, measure.key)
        return
    d.say(m.CountGo(measure.key, seconds))
    d.say(m.CountStop(measure.key, seconds), after=timedelta(seconds=seconds))


def say_running(d: ClientStep, key: str) -> None:
    d.say(m.CountGo(key, 0), (Choice("stop", f"stop:{key}"),))


def stopped(d: ClientStep, asking: Counting, at: datetime) -> None:
    """The stopwatch was stopped."""
    measure = MEASURES[asking.measure]
    passed = at - asking.started
    if not timedelta(0) < passed < LONGEST:
        check_in.ask(d, measure)
        return
    value = half_up(Decimal(str(passed.total_seconds())), 1)
    if measure.unit is Unit.MINUTE:
        value = half_up(value / 60, 2)
    done = StopwatchDone(measure.key, value)
    d.ask(done)
    say_stopwatch(d, done)


def say_stopwatch(d: ClientStep, asking: StopwatchDone) -> None:
    d.say(
        m.StopwatchRead(asking.measure, d.shown(MEASURES[asking.measure], asking.value)),
        (Choice("keep_it", "watch:keep"), Choice("time_again", "watch:again")),
    )


def counted(d: ClientStep, asking: Counting, event: Text) -> bool:
    """A bare count after our timer; True if it was one."""
    measure = MEASURES[asking.measure]
    if asking.seconds == 0 or measure.unit is not Unit.BEATS_PER_MINUTE:
        return False
    numbers = whole_numbers(event.text, d.words)
    if len(numbers) != 1 or not 0 < numbers[0] <= 4 * asking.seconds:
        return False
    bpm = Decimal(numbers[0]) * 60 / asking.seconds
    understood = Understood(bpm, Unit.BEATS_PER_MINUTE, said_unit=True, window=asking.seconds)
    d.ask(Awaiting(measure.key))
    before = d.asking
    answers.check_and_store(d, measure, understood, event, asked=True)
    if d.asking is before:
        check_in.ask_next(d)
    return True


def watch_answered(d: ClientStep, asking: StopwatchDone, keep: bool, event_ref: str, at: datetime) -> None:
    measure = MEASURES[asking.measure]
    if not keep:
        offer(d, measure)
        return
    d.ask(Awaiting(measure.key))
    before = d.asking
    text = Text(at, str(asking.value), event_ref)
    understood = measure.understand(text.text, d.words, None) if measure.understand else None
    if not isinstance(understood, Understood):
        understood = Understood(asking.value, measure.unit)
    answers.check_and_store(d, measure, understood, text, asked=True)
    if d.asking is before:
        check_in.ask_next(d)
