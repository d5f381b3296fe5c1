"""Corrections: in words, by editing a message, by undo."""

from __future__ import annotations

from dataclasses import replace

from core.dialogue.client import answers, check_in, readings, weighing_guard
from core.dialogue.client import messages as m
from core.dialogue.client.effects import Retract
from core.dialogue.client.states import AskingConditions, Awaiting, Confirming, Repeating, Written
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.events import Text
from core.measures import MEASURES
from core.measures.measure import Understood
from core.reading import How
from core.understanding.answers_in_text import hear


def edited(d: ClientStep, event: Text) -> bool:
    """An edited message corrects the readings it contained; True if it did."""
    targets = [w for w in d.state.written if w.ref and w.ref == event.ref]
    if not targets:
        return False
    for written in targets:
        correct(d, written, event.text, event)
    return True


def correct(d: ClientStep, written: Written, text: str, event: Text) -> bool:
    """Parse `text` as the new value of a stored reading. An early weight stays a side note and is not another
    attempt."""
    measure = MEASURES[written.measure]
    heard_all = hear(text, d.words, measure, (), d.unit(measure), {})
    heard = next((a.heard for a in heard_all if a.measure == measure.key), None)
    old = readings.by_key(d, written.key)
    early = _was_early(d, written)
    if not isinstance(heard, Understood):
        if early:
            weighing_guard.taken_back(d)
            return True
        d.say(m.AskAgain(measure.key, heard.why.value if heard else "no_number", d.asked_in(measure)))
        return False
    if early:
        weighing_guard.keep_side_note(d, heard, replace(event, at=old.taken_at if old else event.at, ref=written.ref))
        weighing_guard.taken_back(d)
        return True
    pending = d.asking
    answers.consider(d, measure, heard, replace(event, ref=written.ref), asked=True, replaces=written.key)
    if isinstance(pending, Awaiting) and isinstance(d.asking, Confirming):  # it is asked again
        d.become(agenda=(pending.measure, *(k for k in d.state.agenda if k != pending.measure)))
    return True


def _was_early(d: ClientStep, written: Written) -> bool:
    """Whether the message was an early weight; an impossible one was not even noted."""
    old = readings.by_key(d, written.key)
    return old.how is How.EARLY if old is not None else MEASURES[written.measure].guarded and weighing_guard.is_early(d)


def undo(d: ClientStep) -> None:
    """Withdraw the last reading. An open check-in asks for it again."""
    if not d.state.written:
        d.say(m.NothingToUndo())
        return
    last = d.state.written[-1]
    measure = MEASURES[last.measure]
    early = _was_early(d, last)
    d.do(Retract(last.key))
    d.facts = replace(d.facts, history=tuple(r for r in d.facts.history if r.key != last.key))
    d.become(written=d.state.written[:-1])
    if early:
        weighing_guard.taken_back(d)
        return
    d.say(m.Undone(measure.key))
    if isinstance(d.asking, Repeating) and d.asking.first == last.key:  # there is nothing left to repeat
        d.ask(Awaiting(measure.key))
    if d.state.day is not None:
        pending = d.asking.measure if isinstance(d.asking, Awaiting) else None
        agenda = d.state.agenda if pending in (None, measure.key) else (pending, *d.state.agenda)
        d.become(agenda=tuple(k for k in agenda if k))
        check_in.ask(d, measure)
    elif isinstance(d.asking, AskingConditions):
        d.ask(None)
