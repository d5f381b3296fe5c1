"""Corrections: in words, by editing a message, by undo."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from operator import attrgetter

from core.dialogue.client import answers, check_in, health, readings, weighing_guard
from core.dialogue.client import messages as m
from core.dialogue.client.effects import Retract
from core.dialogue.client.states import AskingConditions, Awaiting, Confirming, Repeating, Setting, Written
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice
from core.dialogue.kit.events import Text
from core.dialogue.kit.messages import KeptAsItWas
from core.measures import MEASURES
from core.measures.measure import Measure, MeasureKind, Understood
from core.reading import How, Reading
from core.understanding.answers_in_text import answers_in, names_in
from core.watching.weighing_guard import CORRECTED_WITHIN, OFTEN_COUNT

FACT_UNDONE_WITHIN = timedelta(hours=1)  # ours: after that, "undo" means a reading
DAYS_OFFERED = 4  # ours: of a correction that may mean several days


def fresh(d: ClientStep, written: Written) -> bool:
    """Whether a message can still be corrected in words: within the same check-in, and at most a day."""
    old = readings.by_key(d, written.key)
    if d.state.day is not None and written.day != d.state.day:
        return False
    return old is None or d.now - old.taken_at <= CORRECTED_WITHIN


def target(d: ClientStep, text: str) -> Written | None:
    """The reading that "no, 81.9" or "the waist was 94" corrects: the one named, else the last."""
    named = names_in(text, d.words)
    return next((w for w in reversed(d.state.written) if not named or w.measure in named), None)


def edited(d: ClientStep, event: Text) -> bool:
    """An edited message corrects the readings it contained; True if it did."""
    targets = [w for w in d.state.written if w.ref and w.ref == event.ref]
    if not targets:
        return False
    for written in targets:
        (correct if fresh(d, written) else late)(d, written, event.text, event)
    return True


def late(d: ClientStep, written: Written, text: str, event: Text) -> bool:
    """A correction too late to be made without asking. A weight now counts as a new one: early unless it is due. For
    anything else, ask, naming the day.
    """
    measure = MEASURES[written.measure]
    heard_all = answers_in(text, d.words, measure, (), d.unit(measure), {})
    understood = next((a.heard for a in heard_all if a.measure == measure.key), None)
    old = readings.by_key(d, written.key)
    if measure.guarded and isinstance(understood, Understood):
        answers.check_and_store(d, measure, understood, replace(event, ref=""), asked=False)
    elif old is not None and isinstance(understood, Understood) and understood.value in measure.bounds.possible:
        days = _days(d, measure) if not event.edited else ()
        if len(days) > 1:
            answers.ask_which_day(d, measure, days, understood, event.text, event.at)
        else:
            answers.offer_to_correct(d, measure, old, understood, event.at)
    else:
        d.say(m.EditTooOld())
    return True


def _days(d: ClientStep, measure: Measure) -> tuple[Reading, ...]:
    """The last answers that can still be changed, the newest of each day, newest first."""
    found: dict[date, Reading] = {}
    for written in reversed(d.state.written):
        reading = readings.by_key(d, written.key) if written.measure == measure.key else None
        if reading is not None and reading.counts:
            found.setdefault(d.facts.local(reading.taken_at).date(), reading)
    return tuple(sorted(found.values(), key=attrgetter("taken_at"), reverse=True))[:DAYS_OFFERED]


def correct(d: ClientStep, written: Written, text: str, event: Text) -> bool:
    """Parse `text` as the new value of a stored reading. An early weight stays a side note and is not another
    attempt."""
    measure = MEASURES[written.measure]
    heard_all = answers_in(text, d.words, measure, (), d.unit(measure), {})
    understood = next((a.heard for a in heard_all if a.measure == measure.key), None)
    old = readings.by_key(d, written.key)
    early = _was_early(d, written)
    if not isinstance(understood, Understood):
        if early:
            weighing_guard.taken_back(d)
            return True
        amount = None if old is None or d.hidden(measure) else d.shown(measure, old.value)
        day = d.facts.local(old.taken_at).date() if old is not None else d.today
        d.say(m.AnswerStands(measure.key, day, amount, old.second if old is not None and amount is not None else None))
        return False
    if early:
        weighing_guard.keep_side_note(
            d, understood, replace(event, at=old.taken_at if old else event.at, ref=written.ref)
        )
        weighing_guard.taken_back(d)
        return True
    if measure.guarded and old is not None and old.counts:
        if weighing_guard.corrected_enough(d, old.taken_at):
            return late(d, written, text, event)
        weighing_guard.count_correction(d, old.taken_at)
    pending = d.asking
    answers.check_and_store(d, measure, understood, replace(event, ref=written.ref), asked=True, replaces=written.key)
    if isinstance(pending, Awaiting) and isinstance(d.asking, Confirming):  # it is asked again
        d.become(agenda=(pending.measure, *(k for k in d.state.agenda if k != pending.measure)))
    if d.asking is pending:
        answers.put_conditions_again(d)
    return True


def _was_early(d: ClientStep, written: Written) -> bool:
    """Whether the message was an early weight; an impossible one was not even noted."""
    old = readings.by_key(d, written.key)
    return old.how is How.EARLY if old is not None else MEASURES[written.measure].guarded and weighing_guard.is_early(d)


def undo(d: ClientStep, named: frozenset[str] = frozenset()) -> None:
    """Withdraw the last reading, or the health facts noted since. An open check-in asks for a reading again. named:
    measures, of which the last is meant."""
    if not named and _fact_is_last(d) and d.state.facts_noted is not None:
        health.undo(d, str(d.state.facts_noted.mark))
        health.settle(d)
        return
    last = next((w for w in reversed(d.state.written) if not named or w.measure in named), None)
    if last is None:
        d.say(m.NothingToUndo())
        return
    old = readings.by_key(d, last.key)
    if old is not None and _goes_further(d, old):
        back = d.asking.back if isinstance(d.asking, Setting) else d.asking
        d.ask(Setting("undo", last.key, back))
        ask_undo(d, last.key)
        return
    take_back(d, last)


def _fact_is_last(d: ClientStep) -> bool:
    """Whether a health fact was noted a short while ago, and no reading stored since."""
    noted = d.state.facts_noted
    if noted is None or d.now - noted.at > FACT_UNDONE_WITHIN:
        return False
    last = readings.by_key(d, d.state.written[-1].key) if d.state.written else None
    return last is None or last.taken_at < noted.at


def _goes_further(d: ClientStep, old: Reading) -> bool:
    """Whether withdrawing it affects another day, or removes the baseline of later readings."""
    if d.facts.local(old.taken_at).date() != d.today:
        return True
    return old.counts and _is_first(d, old) and any(r.taken_at > old.taken_at for r in d.facts.of(old.measure))


def _is_first(d: ClientStep, old: Reading) -> bool:
    return not any(r.taken_at < old.taken_at for r in d.facts.of(old.measure))


def ask_undo(d: ClientStep, key: str) -> None:
    """Ask before withdrawing a reading, naming it and its day."""
    old = readings.by_key(d, key)
    if old is None:
        return
    measure = MEASURES[old.measure]
    hidden = d.hidden(measure) or not old.counts
    baseline = old.counts and _is_first(d, old) and measure.kind is not MeasureKind.RATING
    d.say(
        m.AskUndo(
            old.measure,
            d.facts.local(old.taken_at).date(),
            None if hidden else d.shown(measure, old.value),
            None if hidden else old.second,
            baseline,
        ),
        (Choice("yes", "undo:yes"), Choice("no", "undo:no")),
    )


def undo_answered(d: ClientStep, asking: Setting, yes: bool) -> None:
    d.ask(asking.back)
    written = next((w for w in d.state.written if w.key == asking.detail), None)
    if yes and written is not None:
        take_back(d, written)
        return
    d.say(KeptAsItWas())
    if isinstance(asking.back, Awaiting):
        check_in.ask(d, MEASURES[asking.back.measure])


def take_back(d: ClientStep, last: Written) -> None:
    """Withdraw one reading, and say which."""
    measure = MEASURES[last.measure]
    early = _was_early(d, last)
    old = readings.by_key(d, last.key)
    if old is not None and measure.guarded and old.counts:
        again = d.state.weighed is not None and timedelta(0) <= old.taken_at - d.state.weighed <= CORRECTED_WITHIN
        d.become(weighed=d.state.weighed if again else old.taken_at)  # still the same weigh-in, however often corrected
        weighing_guard.count_correction(d, old.taken_at)
    elif early and old is not None:
        d.become(early_withdrawn=(*d.state.early_withdrawn, old.taken_at)[-OFTEN_COUNT:])
    d.do(Retract(last.key))
    d.facts = replace(d.facts, history=tuple(r for r in d.facts.history if r.key != last.key))
    d.become(written=tuple(w for w in d.state.written if w.key != last.key))
    if early:
        weighing_guard.taken_back(d)
        return
    d.say(m.Undone(measure.key, None if old is None or d.hidden(measure) else d.shown(measure, old.value)))
    if isinstance(d.asking, Repeating) and d.asking.first == last.key:  # there is nothing left to repeat
        d.ask(Awaiting(measure.key))
    if d.state.day is not None:
        pending = d.asking.measure if isinstance(d.asking, Awaiting) else None
        agenda = d.state.agenda if pending in (None, measure.key) else (pending, *d.state.agenda)
        d.become(agenda=tuple(k for k in agenda if k))
        check_in.ask(d, measure)
    elif isinstance(d.asking, AskingConditions):
        d.ask(None)
