"""A reading in a client's history: stored, judged against the rest, and flagged."""

from __future__ import annotations

from bisect import insort
from dataclasses import replace
from decimal import Decimal
from operator import attrgetter

from core import schedule
from core.care import Status
from core.dialogue.client import messages as m
from core.dialogue.client.effects import Lower, NotifyCoach, Raise, Record
from core.dialogue.client.facts import OpenFlag
from core.dialogue.client.messages_to_coach import RepeatTaken
from core.dialogue.client.results import verdict_told
from core.dialogue.client.start_messages import StartTaken
from core.dialogue.client.states import Written
from core.dialogue.client.step import ClientStep
from core.judging.assess import Assessment, assess
from core.judging.change import Verdict
from core.judging.start import start_of, together
from core.measures import MEASURES
from core.measures.measure import Measure
from core.measures.weight import WEIGHT
from core.quantity import Unit
from core.reading import Reading
from core.watching.flags import RULES, Agreed, Clears, Code, Ended, Evidence, Severity, WhatFollowed, cleared
from core.watching.flags_of_reading import flags_of_reading

REPEATS = frozenset({Code.PULSE_FAST, Code.PULSE_SLOW})  # a repeat that alarms as well raises no other flag
REMEMBERED = 12  # readings that undo and edits can still change


def record(d: ClientStep, reading: Reading, ref: str) -> None:
    """Store a reading, and add it to the facts of this step at once."""
    d.do(Record(reading, reading.key))
    history = [r for r in d.facts.history if r.key != reading.key]
    insort(history, reading, key=attrgetter("taken_at"))
    d.facts = replace(d.facts, history=tuple(history))
    written = tuple(w for w in d.state.written if w.key != reading.key)
    d.become(
        written=(*written, Written(reading.key, ref, reading.measure, d.before.question, d.before.day))[-REMEMBERED:]
    )


def by_key(d: ClientStep, key: str) -> Reading | None:
    return next((r for r in reversed(d.facts.history) if r.key == key), None)


def _others(d: ClientStep, measure: Measure, reading: Reading) -> tuple[Reading, ...]:
    """The other readings of a measure, oldest first."""
    return tuple([r for r in d.facts.history if r.measure == measure.key and r.key != reading.key])


def assessed(d: ClientStep, measure: Measure, reading: Reading) -> Assessment:
    """`reading` against the rest of its history and this client's own baseline."""
    others = _others(d, measure, reading)
    return assess(
        measure,
        reading,
        tuple([r for r in others if r.taken_at <= reading.taken_at]),
        d.facts.profile,
        baseline_since=d.facts.plan.baseline_since,
        retest=schedule.interval(measure.key, d.facts.plan.interval(measure.key)),
        zone=d.facts.zone,
        alongside=_alongside(d, measure, reading),
    )


def _alongside(d: ClientStep, measure: Measure, reading: Reading) -> dict[str, Verdict]:
    """The verdict on the other of weight and waist on the same day: a flat weight with a smaller waist is worth
    mentioning."""
    beside = MEASURES.get(measure.beside)
    if beside is None:
        return {}
    day = d.facts.local(reading.taken_at).date()
    taken = [r for r in d.facts.of(beside.key) if d.facts.local(r.taken_at).date() <= day]
    if not taken or d.facts.local(taken[-1].taken_at).date() != day:
        return {}
    found = assess(
        beside,
        taken[-1],
        tuple(taken[:-1]),
        d.facts.profile,
        baseline_since=d.facts.plan.baseline_since,
        retest=schedule.interval(beside.key, d.facts.plan.interval(beside.key)),
        zone=d.facts.zone,
    )
    return {beside.key: found.verdict} if found.verdict is not None else {}


def verdict_said(d: ClientStep, measure: Measure, found: Assessment) -> m.VerdictSaid:
    said = verdict_told(measure, found, d.facts.units, d.facts.zone)
    assert said is not None
    return replace(said, last=_is_last(d))


def _is_last(d: ClientStep) -> bool:
    """Whether this check-in closes the programme, or it is over."""
    return d.facts.status is Status.FINISHED or (d.state.day is not None and d.facts.plan.closes_on(d.state.day))


def start_said(d: ClientStep, measure: Measure) -> StartTaken:
    """What the visits of the start are together."""
    start = start_of(measure, d.begun(measure.key))
    level = together(measure, start.visits).value
    return StartTaken(measure.key, d.shown(measure, level), start.wants_another)


def raise_flags(
    d: ClientStep, measure: Measure, reading: Reading, found: Assessment | None = None, *, corrects: bool = False
) -> None:
    """Raise the flags of this reading. corrects: also clear those that the corrected reading raised."""
    found = found or assessed(d, measure, reading)
    history = _others(d, measure, reading)
    agreed = Agreed(d.facts.plan.directed_weighing, d.facts.plan.loss_is_planned or _wants_loss(d))
    raised = flags_of_reading(measure, found, history, d.facts.profile, agreed, zone=d.facts.zone)
    d.do(*(Raise(flag) for flag in raised))
    codes = frozenset(flag.code for flag in raised)
    if Code.FAST_GAIN in codes:
        d.say(m.FastGain(d.emergency_number, d.facts.told, d.told_at()))
    for open_flag in d.facts.flags:
        if open_flag.measure != measure.key:
            continue
        code, later = Code(open_flag.code), WhatFollowed(read_at=reading.taken_at, raised=codes)
        own = corrects and open_flag.since == reading.taken_at and RULES[code].clears is Clears.NEXT_READING
        if (own and code not in codes) or cleared(code, open_flag.since, later, d.now):
            ended = Ended.CORRECTED if own and code not in codes else Ended.READING
            after = figures_of(measure, reading)
            d.do(Lower(open_flag.code, open_flag.measure, ended, after))
            if RULES[code].severity is Severity.URGENT:
                _tell_repeat(d, open_flag, after, settled=True, slip=ended is Ended.CORRECTED)
        elif code in codes and code in REPEATS and open_flag.since < reading.taken_at and not corrects:
            _tell_repeat(d, open_flag, figures_of(measure, reading), settled=False)


def figures_of(measure: Measure, reading: Reading) -> Evidence:
    """What a reading says, by the names the table of flags has for it."""
    if reading.second is not None and measure.series:
        return (("systolic", reading.value), ("diastolic", reading.second))
    return (("rate" if measure.unit is Unit.BEATS_PER_MINUTE else "value", reading.value),)


def _tell_repeat(d: ClientStep, alarmed: OpenFlag, after: Evidence, *, settled: bool, slip: bool = False) -> None:
    """The coach who was alarmed hears what the repeat was."""
    said = RepeatTaken(d.facts.client_id, d.facts.name, alarmed.code, alarmed.measure, after, settled, slip)
    d.do(NotifyCoach(said, urgent=not settled))


def _wants_loss(d: ClientStep) -> bool:
    """Whether the client's own weight goal is below their weight at the time, which makes it an agreed loss."""
    counted = d.facts.of(WEIGHT.key)
    return bool(counted) and any(
        g.measure == WEIGHT.key and Decimal(g.target) < counted[0].value for g in d.facts.goals
    )
