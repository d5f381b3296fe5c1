"""Readings in a client's messages: understood, confirmed if doubtful, stored, answered. Corrections are in
corrections.py."""

from __future__ import annotations

import re
from collections.abc import Collection
from dataclasses import replace
from datetime import datetime
from decimal import Decimal

from core.care import Units
from core.dialogue.client import check_in, home_bp_week, needed, readings, safety, weighing_guard
from core.dialogue.client import messages as m
from core.dialogue.client.effects import Amend, ChangeClient, Retract
from core.dialogue.client.slip_messages import AskWhichIsRight, EarlierTakenOut
from core.dialogue.client.states import (
    AlarmAsked,
    Aside,
    AskingConditions,
    Awaiting,
    ChoosingDay,
    Confirming,
    Enrolling,
    Gate,
    Repeating,
    Setting,
)
from core.dialogue.client.step import ClientStep, preferred
from core.dialogue.kit.effects import Choice, Say
from core.dialogue.kit.events import Press, Text
from core.dialogue.kit.messages import KeptAsItWas
from core.dialogue.kit.step import rows_of
from core.judging.activity_course import newly_reached
from core.judging.assess import Assessment, derive_all
from core.judging.change import Change
from core.judging.goals import Goal, progress
from core.judging.trend import NoProjection, fit, points_of, projection
from core.language import Lexicon, plain
from core.language.cache import memoized
from core.language.danger_signs import Sighting
from core.language.text import bare_words
from core.measures import MEASURES
from core.measures.measure import BodySize, Measure, MeasureKind, Misunderstood, Score, Understood, never
from core.quantity import Unit, half_up
from core.reading import Conditions, How, Reading
from core.understanding.answers_in_text import Answer, answers_in, names_in, whole_numbers
from core.understanding.plausibility import DoubtKind, doubt, is_jump
from core.understanding.stories import sure
from core.watching.flags_of_reading import far_below_usual
from core.watching.weighing_guard import GuardStep

RETURNED_TO = AskingConditions | Gate  # questions that a correction in between does not end
SHORT_COUNT = "short_count"  # kind of a doubt: a start that was counted for too short a time
OLD_ANSWER = "old_answer"  # kind of a doubt: an earlier answer's button was pressed
_PARTS = re.compile(r"[,;.!?\n]+\s+|\n|،")
A_REMARK, LONGEST_REMARK = 2, 300  # words, characters
NO_TABLE_FITS = frozenset({"medicine_slows_the_pulse"})  # notes of a band that says nothing of this person
PATIENCE = 2  # misunderstood answers before the card is offered
ANY_TIME = tuple(  # taken whether or not they are in the plan; what can alarm must never be passed over
    key
    for key, measure in MEASURES.items()
    if measure.in_every_check_in or measure.guarded or measure.alarm is not never
)


def readings_in(d: ClientStep, text: str, asked: Measure | None) -> tuple[Answer, ...]:
    """Parse the readings in a message: for the open question first, then for others this client may send."""
    keys = tuple(dict.fromkeys((*d.state.agenda, *d.facts.plan.measures, *ANY_TIME)))
    return _readings_in(text, d.words, "" if asked is None else asked.key, keys, d.facts.units)


@memoized
def _readings_in(text: str, words: Lexicon, asked_for: str, keys: tuple[str, ...], units: Units) -> tuple[Answer, ...]:
    asked = MEASURES.get(asked_for)
    if asked is not None and _of_another(text, words, asked, keys):
        return ()
    others = [MEASURES[k] for k in keys if k in MEASURES and MEASURES[k].understand and k != asked_for]
    prefer = preferred(asked, units) if asked is not None else None
    prefers = {x.key: preferred(x, units) for x in others}
    return sure(answers_in(text, words, asked, others, prefer, prefers), text, words, asked)


def _of_another(text: str, words: Lexicon, asked: Measure, keys: Collection[str]) -> bool:
    """Whether a text names only measures of the body that are not in the plan: its numbers are no answer."""
    named = names_in(text, words)
    body = {key for key in named if MEASURES[key].kind is MeasureKind.BODY}
    return bool(body) and body == named and not body & {*keys, asked.key, asked.second_called or asked.key}


# --- readings sent along with a danger sign ---------------------------------------------------------------------


def alarmed(d: ClientStep, alarm: Sighting, event: Text) -> None:
    """A sign was named, perhaps with a reading in the same message: the sign first; the reading is not lost."""
    aside = Aside(event.text[:400], event.ref, event.at) if _beside_a_sign(d, event.text) else None
    earlier = d.asking.aside if isinstance(d.asking, AlarmAsked) else None
    safety.alarmed(d, alarm)
    if isinstance(d.asking, AlarmAsked):
        d.ask(replace(d.asking, aside=aside or earlier))
    else:
        _keep_aside(d, earlier)
        _keep_aside(d, aside)


def alarm_answered(d: ClientStep, asking: AlarmAsked, answer: str) -> None:
    """An answer to "is it happening now?". A reading that waited is taken as usual if there was no sign."""
    safety.alarm_answered(d, asking, answer)
    aside = asking.aside
    if aside is None or isinstance(d.asking, AlarmAsked):
        return
    if answer not in ("none", "no"):
        _keep_aside(d, aside)
        return
    found = _beside_a_sign(d, aside.text)
    asked = MEASURES.get(d.asking.measure) if isinstance(d.asking, Awaiting) else None
    take_answers(d, Text(aside.at, aside.text, aside.ref), found, asked)


def _beside_a_sign(d: ClientStep, text: str) -> tuple[Answer, ...]:
    """The readings of a message that also names a sign: only those that say what they are. "Chest pain for 20 minutes"
    has none."""
    named = names_in(text, d.words)
    body = [x for x in MEASURES.values() if x.kind is MeasureKind.BODY and x.understand is not None]
    prefers = {x.key: d.unit(x) for x in body}
    found = [
        answer
        for part in _PARTS.split(text)
        for answer in sure(answers_in(part, d.words, None, body, None, prefers), part, d.words, None)
    ]
    return tuple(
        {
            a.measure: a
            for a in found
            if isinstance(a.heard, Understood)
            and (a.measure in named or a.heard.said_unit)
            and a.heard.value in MEASURES[a.measure].bounds.possible
        }.values()
    )


def _keep_aside(d: ClientStep, aside: Aside | None) -> None:
    """Store readings as side notes: they were taken on a bad day. One that alarms by itself still reaches the coach."""
    if aside is None:
        return
    for answer in _beside_a_sign(d, aside.text):
        measure, heard = MEASURES[answer.measure], answer.heard
        assert isinstance(heard, Understood)
        unsaid = d.hidden(measure) or (measure.guarded and weighing_guard.is_early(d))
        reading = Reading(
            measure.key,
            heard.value,
            aside.at,
            second=heard.second,
            as_typed=aside.text[:200],
            unit=heard.unit,
            how=How.EARLY,
            key=f"{aside.ref or aside.at.isoformat()}:{measure.key}",
        )
        readings.record(d, reading, aside.ref)
        if safety.alarming(d, measure, reading) is not None:
            readings.raise_flags(d, measure, replace(reading, how=How.UNASKED))
        amount = None if unsaid else d.shown(measure, reading.value)
        d.say(m.KeptAside(measure.key, amount, None if amount is None else reading.second))


def directed_weight(d: ClientStep, event: Text, text: str) -> bool:
    """A bare number while nothing is asked is the weight, where frequent weighing was asked for. False if it is not."""
    if not d.facts.plan.directed_weighing or d.asking is not None or not _bare(d, text):
        return False
    measure = next(x for x in MEASURES.values() if x.guarded)
    understood = measure.understand(text, d.words, d.unit(measure)) if measure.understand else None
    if not isinstance(understood, Understood) or understood.value not in measure.bounds.usual:
        return False
    take_answers(d, event, (Answer(measure.key, understood),), None)
    return True


def _bare(d: ClientStep, text: str) -> bool:
    """Whether a text is one number, and hardly anything else."""
    return len(whole_numbers(text, d.words)) <= 1 and len(text) <= 12 and any(c.isdecimal() for c in text)


def ask_which(d: ClientStep, text: str) -> bool:
    """A bare number while nothing is asked is ambiguous: ask, and store nothing. False if there is no number."""
    if not _bare(d, text):
        return False
    typed = plain(text)  # shorter than text in another script: a button holds little
    fitting = []
    just_given = (d.asking.measure,) if isinstance(d.asking, AskingConditions) else ()
    for key in dict.fromkeys((*just_given, *d.facts.plan.measures)):
        measure = MEASURES.get(key)
        if measure is None or measure.kind is not MeasureKind.BODY or measure.understand is None:
            continue
        understood = measure.understand(text, d.words, d.unit(measure))
        if isinstance(understood, Understood) and understood.value in measure.bounds.usual:
            fitting.append(Choice(f"measure:{key}", f"which:{key}:{typed}"))
    if fitting:
        d.say(m.WhichMeasure(), *rows_of(*fitting))
    return bool(fitting)


def measure_chosen(d: ClientStep, value: str, event: Press) -> None:
    """The button under "which is it?": treat the number as if it had been typed with that measure's name."""
    key, _, text = value.partition(":")
    measure = MEASURES[key]
    understood = measure.understand(text, d.words, d.unit(measure)) if measure.understand else None
    if isinstance(understood, Understood):
        take_answers(d, Text(event.at, text), (Answer(key, understood),), None)


def take_answers(d: ClientStep, event: Text, answers: tuple[Answer, ...], asked: Measure | None) -> None:
    """Process all readings of one message, then continue."""
    open_before = d.asking
    kept = set()
    for answer in answers:
        measure = MEASURES[answer.measure]
        if isinstance(answer.heard, Misunderstood):
            not_understood(d, measure, answer.heard, event)
        elif check_and_store(d, measure, answer.heard, event, asked=asked is not None and measure is asked):
            kept.add(measure.key)
    if isinstance(open_before, AskingConditions) and same_reading(d.asking, open_before):
        put_conditions_again(d)
        return
    if isinstance(open_before, Awaiting) and open_before.measure in kept and d.asking is None:
        if d.state.day is not None:  # a check-in that a blood-pressure prompt had put aside goes on
            check_in.ask_next(d)
        return
    if isinstance(open_before, Repeating) and d.asking is None and d.state.day is not None:
        if open_before.measure in kept and not MEASURES[open_before.measure].series:
            check_in.ask_next(d)
        return
    if isinstance(open_before, Enrolling) and d.asking is open_before:
        if open_before.measure in kept:  # given before the facts it needs: they are asked another time
            d.ask(None)
            check_in.ask_next(d)
        else:
            needed.say_question(d, open_before)
        return
    if not isinstance(open_before, Awaiting):
        return
    answered = open_before.measure in kept
    if d.asking is not open_before:
        # it is asked again after the question just put; a setting restores it by itself
        if not answered and d.state.day is not None and not isinstance(d.asking, Setting):
            d.become(agenda=(open_before.measure, *d.state.agenda))
    elif answered:
        check_in.ask_next(d)
    elif kept:
        check_in.ask(d, MEASURES[open_before.measure])


def not_understood(d: ClientStep, measure: Measure, understood: Misunderstood, event: Text) -> None:
    """Ask back: with the likely meanings if there are any, else with an example."""
    if understood.either and (d.asking is None or asks_for(d, measure)):
        d.ask(Awaiting(measure.key))
        choices = (Choice("number", f"n:{n}", str(n)) for n in understood.either)
        d.say(m.AskEither(measure.key, understood.either), tuple(choices), check_in.buttons(d, measure)[-1])
        return
    tries = d.asking.tries + 1 if isinstance(d.asking, Awaiting) else 1
    if understood.guess is not None and _possible(measure, understood.guess):
        wanted = asks_for(d, measure) or measure.key in d.state.agenda
        if measure.guarded and not wanted and weighing_guard.is_early(d):  # its number is not said back
            weighing_guard.early(d, understood.guess, event, weighing_guard.step_for(d))
            return
        ask_to_confirm(d, measure, understood.guess, understood.why.value, event, asked=isinstance(d.asking, Awaiting))
        return
    if isinstance(d.asking, Awaiting):
        d.ask(replace(d.asking, tries=tries))
    rows = check_in.buttons(d, measure)
    if tries >= PATIENCE:  # not the same sentence twice
        d.say(m.StillUnclear(measure.key), *rows, (Choice("word_to_coach", "word", d.facts.coach_name),))
    else:
        d.say(m.AskAgain(measure.key, understood.why.value, d.asked_in(measure)), *rows)
    if tries == PATIENCE and measure.protocol.technique:
        d.say(m.Card(measure.key), *rows)


def asks_for(d: ClientStep, measure: Measure) -> bool:
    return isinstance(d.asking, Awaiting) and d.asking.measure == measure.key


def _possible(measure: Measure, meant: Understood) -> bool:
    second = measure.bounds.second_possible
    if meant.second is not None and second is not None and meant.second not in second:
        return False
    return meant.value in measure.bounds.possible


def for_put_aside(d: ClientStep, text: str, asked: Measure | None) -> Answer | None:
    """The answer to a check-in that a blood-pressure prompt has put aside: its next question, if the text fits that."""
    if asked is None or not asked.series or d.state.day is None or not d.state.agenda:
        return None
    waiting = MEASURES.get(d.state.agenda[0])
    if waiting is None or waiting.understand is None:
        return None
    understood = waiting.understand(text, d.words, d.unit(waiting))
    if isinstance(understood, Understood) and understood.value in waiting.bounds.usual:
        return Answer(waiting.key, understood)
    return None


def comparison(d: ClientStep, measure: Measure, understood: Understood) -> Reading | None:
    """The client's reading with which a new value is compared.

    The newest that was not severe, since a normal value is expected after a rest; in a blood-pressure series, the
    nearest.
    """
    taken = (r for r in reversed(d.facts.of(measure.key)) if not safety.alarming(d, measure, r))
    if measure.series:
        return min(taken, key=lambda r: abs(r.value - understood.value), default=None)
    return next(taken, None)


def check_and_store(
    d: ClientStep, measure: Measure, understood: Understood, event: Text, *, asked: bool, replaces: str = ""
) -> bool:
    """Store a value, or confirm it first; True if it was stored or is being confirmed.

    An impossible number is never stored, and the question stays open, as it does after an early weight.
    """
    wanted = asked or measure.key in d.state.agenda or measure.kind in (MeasureKind.RATING, MeasureKind.ACTIVITY)
    if measure.guarded and not wanted and not replaces and _said_already(d, measure, understood):
        d.say(m.Plainly("already", d.facts.coach_name))
        return False
    if measure.guarded and not wanted and not replaces:
        step = weighing_guard.step_for(d)
        if step not in (GuardStep.WELCOME, GuardStep.DIRECTED):
            weighing_guard.early(d, understood, event, step)
            return False  # do not repeat the open question after it
    found = doubt(measure, understood, comparison(d, measure, understood), d.facts.profile)
    if found is None and not replaces and _to_count_longer(d, measure, understood):
        ask_to_confirm(d, measure, understood, SHORT_COUNT, event, asked=wanted)
    elif found is None and event.ref and _far_below(d, measure, understood):
        ask_to_confirm(d, measure, understood, DoubtKind.UNUSUAL.value, event, asked=wanted, replaces=replaces)
    elif found is None or safety.cannot_wait(d, measure, understood, None if understood.said_unit else found.meant):
        store_and_reply(d, measure, understood, event.ref, event.at, event.text, asked=wanted, replaces=replaces)
    elif found.kind is DoubtKind.IMPOSSIBLE and found.meant is None:
        if asked and not replaces and ask_which(d, event.text):  # it fits another measure of the plan
            return False
        amount = d.shown(measure, understood.value)
        d.say(m.CannotBe(measure.key, amount, understood.second), *check_in.buttons(d, measure))
        return False
    else:
        ask_to_confirm(d, measure, found.meant or understood, found.kind.value, event, asked=wanted, replaces=replaces)
    return True


def _said_already(d: ClientStep, measure: Measure, understood: Understood) -> bool:
    """Whether it is the number that was kept today: sent twice, it is no second weighing."""
    kept = [r for r in d.facts.of(measure.key) if d.facts.local(r.taken_at).date() == d.today]
    return bool(kept) and half_up(kept[-1].value, measure.places) == half_up(understood.value, measure.places)


def _far_below(d: ClientStep, measure: Measure, understood: Understood) -> bool:
    """Whether a typed rating is so low that the coach would be told: one slip must not do that."""
    return far_below_usual(measure, understood.value, d.now, d.facts.of(measure.key))


def _to_count_longer(d: ClientStep, measure: Measure, understood: Understood) -> bool:
    """Whether a start was counted for too short a time, and has not been asked about yet."""
    short, since = measure.short_count, d.facts.plan.baseline_since
    if short is None or not short.too_short(understood.value, understood.window):
        return False
    if isinstance(d.before.asking, Confirming) and d.before.asking.kind == SHORT_COUNT:
        return False
    return not any(r.counts and (since is None or r.taken_at >= since) for r in d.facts.of(measure.key))


def ask_to_confirm(
    d: ClientStep, measure: Measure, meant: Understood, kind: str, event: Text, *, asked: bool, replaces: str = ""
) -> None:
    """Ask the client to confirm a doubtful value, with its likely meaning."""
    d.ask(Confirming(measure.key, meant, kind, event.text[:200], event.ref, asked, event.at, replaces))
    ask_if_sure(d, measure, meant, kind)


def ask_if_sure(d: ClientStep, measure: Measure, meant: Understood, kind: str) -> None:
    """Ask about a doubt."""
    amount = d.shown(measure, meant.value)
    if kind == SHORT_COUNT and measure.short_count is not None:
        longer = [s for s in measure.protocol.timers if s > measure.short_count.seconds]
        row = tuple(Choice("seconds", f"count:{measure.key}:{s}", str(s)) for s in longer)
        d.say(m.DidYouMean(measure.key, amount, meant.second, kind), row, (Choice("keep_it", "ok:yes"),))
        return
    unsure = kind in (DoubtKind.UNUSUAL.value, DoubtKind.JUMP.value)
    if unsure and (earlier := _far_from(d, measure, meant)) is not None:
        day = d.facts.local(earlier.taken_at).date()
        d.say(
            AskWhichIsRight(measure.key, amount, meant.second, day),
            (Choice("yes", "ok:yes"), Choice("no", "ok:no")),
            (Choice("earlier_slip", "ok:earlier"),),
        )
        return
    say = (
        m.AskIfSure(measure.key, amount, meant.second)
        if unsure
        else m.DidYouMean(measure.key, amount, meant.second, kind)
    )
    d.say(say, (Choice("yes", "ok:yes"), Choice("no", "ok:no")))


def _far_from(d: ClientStep, measure: Measure, meant: Understood) -> Reading | None:
    """The single reading of an earlier day that a new value is far from; of the two, that one may be the slip."""
    if measure.series or (isinstance(d.asking, Confirming) and d.asking.replaces):
        return None
    last = comparison(d, measure, meant)
    if last is None or not is_jump(measure.bounds, meant.value, last.value):
        return None
    return None if d.facts.local(last.taken_at).date() == d.today else last


def earlier_was_wrong(d: ClientStep, asking: Confirming) -> None:
    """Take out the earlier of two readings far apart, so that nothing is compared with a slip."""
    measure = MEASURES[asking.measure]
    earlier = _far_from(d, measure, asking.meant)
    if earlier is None:  # withdrawn in the meantime
        return
    d.do(Retract(earlier.key))
    d.facts = replace(d.facts, history=tuple(r for r in d.facts.history if r.key != earlier.key))
    d.become(written=tuple(w for w in d.state.written if w.key != earlier.key))
    d.say(EarlierTakenOut(measure.key, d.facts.local(earlier.taken_at).date()))


def offer_to_correct(d: ClientStep, measure: Measure, written: Reading, meant: Understood, at: datetime) -> None:
    """Offer to change an earlier answer to a new value. Nothing changes unless the client agrees."""
    pending = d.asking
    back = pending if isinstance(pending, RETURNED_TO) else None
    asking = Confirming(measure.key, meant, OLD_ANSWER, str(meant.value), "", False, at, written.key, back)
    d.ask(asking)
    if isinstance(pending, Awaiting):  # it is asked again
        d.become(agenda=(pending.measure, *(k for k in d.state.agenda if k != pending.measure)))
    ask_about_old_answer(d, asking)


def ask_about_old_answer(d: ClientStep, asking: Confirming) -> None:
    old = readings.by_key(d, asking.replaces)
    if old is None:  # withdrawn in the meantime
        return
    measure = MEASURES[asking.measure]
    d.say(
        m.AskChangeAnswer(
            measure.key,
            d.facts.local(old.taken_at).date(),
            None if d.hidden(measure) else d.shown(measure, old.value),
            None if d.hidden(measure) else d.shown(measure, asking.meant.value),
        ),
        (Choice("yes", "ok:yes"), Choice("no", "ok:no")),
    )


def ask_which_day(
    d: ClientStep, measure: Measure, written: tuple[Reading, ...], meant: Understood, text: str, at: datetime
) -> None:
    """Ask which day's answer a correction means. written: the answers it may mean, newest first."""
    pending = d.asking
    back = pending if isinstance(pending, RETURNED_TO) else None
    asking = ChoosingDay(measure.key, meant, tuple(r.key for r in written), text[:200], at, back)
    d.ask(asking)
    if isinstance(pending, Awaiting):  # it is asked again
        d.become(agenda=(pending.measure, *(k for k in d.state.agenda if k != pending.measure)))
    say_which_day(d, asking)


def say_which_day(d: ClientStep, asking: ChoosingDay) -> None:
    measure = MEASURES[asking.measure]
    new = None if d.hidden(measure) else d.shown(measure, asking.meant.value)
    d.say(
        m.AskWhichDay(measure.key, new, None if new is None else asking.meant.second),
        *rows_of(*(Choice("on_day", data, day) for data, day in days_of(d, asking))),
        (Choice("no_keep", "day:none"),),
    )


def days_of(d: ClientStep, asking: ChoosingDay) -> tuple[tuple[str, str], ...]:
    """The data and the day (ISO) of each button under `say_which_day`."""
    found = ((n, readings.by_key(d, key)) for n, key in enumerate(asking.keys))
    return tuple((f"day:{n}", d.facts.local(r.taken_at).date().isoformat()) for n, r in found if r is not None)


def day_chosen(d: ClientStep, asking: ChoosingDay, value: str) -> bool:
    """Change the answer of that day; False if there is no such answer any more."""
    key = asking.keys[int(value)] if value.isdecimal() and int(value) < len(asking.keys) else ""
    if value != "none" and readings.by_key(d, key) is None:
        return False
    d.ask(None)
    if value == "none":
        d.say(KeptAsItWas())
    else:
        measure = MEASURES[asking.measure]
        store_and_reply(d, measure, asking.meant, "", asking.at, asking.as_typed, asked=False, replaces=key)
    if d.asking is None and asking.back is not None:
        d.ask(asking.back)
    elif d.asking is None and d.state.day is not None:
        check_in.ask_next(d)
    return True


def confirmed(d: ClientStep, asking: Confirming, yes: bool) -> None:
    """The answer to "did you mean ...?"."""
    measure = MEASURES[asking.measure]
    d.ask(Awaiting(measure.key) if asking.asked else None)
    if not yes:
        if asking.replaces:
            d.ask(asking.back)
            d.say(KeptAsItWas())
            if asking.back is None and d.state.day is not None:
                check_in.ask_next(d)
            return
        if (typed := _as_typed(d, measure, asking)) is not None:
            event = Text(asking.at, asking.as_typed, asking.ref)
            ask_to_confirm(d, measure, typed, DoubtKind.JUMP.value, event, asked=asking.asked)
            return
        d.say(m.SendRight(measure.key, d.asked_in(measure)), *check_in.buttons(d, measure))
        d.ask(Awaiting(measure.key))
        return
    before = d.asking
    store_and_reply(
        d, measure, asking.meant, asking.ref, asking.at, asking.as_typed, asked=asking.asked, replaces=asking.replaces
    )
    if d.asking is before and asking.back is not None:
        d.ask(asking.back)
    elif d.asking is before:
        check_in.ask_next(d)


def _as_typed(d: ClientStep, measure: Measure, asking: Confirming) -> Understood | None:
    """The usual value that was typed, if another was guessed because it is far from an earlier one: 84.2 after a 48.2
    is no slip if that one was."""
    heard = answers_in(asking.as_typed, d.words, measure, (), d.unit(measure), {})
    typed = next((a.heard for a in heard if a.measure == measure.key), None)
    if not isinstance(typed, Understood) or typed.value == asking.meant.value:
        return None
    far = typed.value in measure.bounds.usual and _far_from(d, measure, typed) is not None
    return typed if far else None


# --- keeping ----------------------------------------------------------------------------------------------------


def store_and_reply(
    d: ClientStep,
    measure: Measure,
    understood: Understood,
    ref: str,
    at: datetime,
    typed: str,
    *,
    asked: bool,
    replaces: str = "",
) -> None:
    """Store a reading and reply to it."""
    key = replaces or f"{ref or at.isoformat()}:{measure.key}"
    reading = Reading(
        measure=measure.key,
        value=understood.value,
        second=understood.second,
        taken_at=at,
        as_typed=typed[:200],
        unit=understood.unit,
        conditions=_conditions(d, measure, understood, typed),
        how=How.ASKED if asked else How.UNASKED,
        attempts=understood.attempts,
        window=understood.window,
        key=key,
    )
    old = readings.by_key(d, replaces) if replaces else None
    if old is not None:
        reading = replace(reading, taken_at=old.taken_at, how=old.how, conditions=old.conditions)
    elif not asked and is_girth(measure) and not check_in.is_due(d, measure.key, d.today):
        earlier = [r for r in d.facts.of(measure.key) if r.key != key]  # a message read again is no second reading
        if earlier:
            _keep_beside(d, measure, replace(reading, how=How.EARLY), ref, since=earlier[-1])
            return
    still_asked = tuple(k for k in d.state.agenda if k != measure.key)
    readings.record(d, reading, ref)
    if not replaces:
        d.become(agenda=still_asked)
        check_in.note_answer(d)
    if safety.after_reading(d, measure, reading, old):
        return
    if replaces:
        _corrected(d, measure, reading)
    elif measure.series:
        home_bp_week.reading_stored(d, reading)
    elif measure.kind in (MeasureKind.RATING, MeasureKind.ACTIVITY, MeasureKind.ONCE):
        if measure.kind is MeasureKind.ONCE:
            _learn_once(d, measure, reading)
        both = reading.value + (reading.second or 0)  # moderate and vigorous minutes, "75 vigorous"
        d.say(m.ReadingKept(measure.key, d.shown(measure, both), None, tuple(sorted(understood.notes))))
        _say_if_reached(d, measure)
        readings.raise_flags(d, measure, reading)
    elif aspects := unasked_aspects(d, measure):
        if len(d.facts.of(measure.key)) <= 1:
            _first_of(d, measure, reading, aspects)
            return
        readings.raise_flags(
            d, measure, reading
        )  # the coach is not kept waiting for the conditions, which are taken into account when given
        if isinstance(d.asking, AskingConditions) and d.asking.key != key:  # one question after the other
            d.ask(replace(d.asking, then=(*(k for k in d.asking.then if k != key), key)))
            question = [x for x in d.effects if isinstance(x, Say) and isinstance(x.message, m.AskConditions)]
            d.effects[:] = [x for x in d.effects if x not in question]
            _say_kept(d, measure, reading)
            d.do(*question)  # what is asked comes last
        else:
            ask_conditions(d, measure, reading, aspects)
    else:
        reply_to_reading(d, measure, reading)


def _say_if_reached(d: ClientStep, measure: Measure) -> None:
    """What public advice makes of a week's activity, the first time that it makes so much of it."""
    found = newly_reached(measure, _programme(d, measure), d.facts.profile)
    if found is not None:
        d.say(m.BandSaid(measure.key, found.band, found.source.key))
        d.become(sources=(found.source.key,))


def _first_of(
    d: ClientStep, measure: Measure, reading: Reading, aspects: tuple[str, ...], *, said_value: bool = False
) -> None:
    """The first reading of a measure: there is no last time to ask about, so what to keep the same is only said."""
    reply_to_reading(d, measure, reading, said_value=said_value)
    d.become(noted=(*d.state.noted, *((a, True) for a in aspects)))
    d.say(m.KeepTheSame(measure.key, aspects))


def is_girth(measure: Measure) -> bool:
    """Whether a measure is a girth: it changes as slowly as weight, and is as easily overinterpreted."""
    return measure.kind is MeasureKind.BODY and measure.unit is Unit.CENTIMETRE


def _keep_beside(d: ClientStep, measure: Measure, reading: Reading, ref: str, *, since: Reading) -> None:
    """Store a girth too early after the one `since`, as a side note: not scored, not charted."""
    readings.record(d, reading, ref)
    if d.hidden(measure):
        d.say(m.KeptHidden(measure.key))
        return
    on = d.due_on(measure.key, since.taken_at)
    d.say(m.KeptBeforeTime(measure.key, d.shown(measure, reading.value), on, reading.second))


def _corrected(d: ClientStep, measure: Measure, reading: Reading) -> None:
    """Confirm a correction; nothing else is asked again."""
    if measure.guarded and reading.how is How.EARLY:
        weighing_guard.taken_back(d)
        return
    if d.hidden(measure):
        d.say(m.CorrectedHidden(measure.key))
    else:
        d.say(m.Corrected(measure.key, d.shown(measure, reading.value), reading.second))
    if reading.counts and not isinstance(d.asking, AskingConditions):
        found = readings.assessed(d, measure, reading)
        readings.raise_flags(d, measure, reading, found, corrects=True)
        if found.verdict is not None and found.verdict.beyond_error and not d.hidden(measure):
            d.say(readings.verdict_said(d, measure, found))


def _learn_once(d: ClientStep, measure: Measure, reading: Reading) -> None:
    if measure.body is BodySize.STATURE:
        d.do(ChangeClient("stature", reading.value))


def _remark(typed: str) -> str:
    """What a message says beside its number: "bad back this week" in "7, bad back this week"; "" for nothing."""
    parts = [part.strip() for part in _PARTS.split(typed) if part.strip()]
    without = [p for p in parts if not any(c.isdecimal() for c in p) and len(bare_words(plain(p))) >= A_REMARK]
    return "; ".join(without)[:LONGEST_REMARK] if len(without) < len(parts) else ""


def _conditions(d: ClientStep, measure: Measure, understood: Understood, typed: str) -> Conditions:
    kept_same = set(measure.protocol.keep_same)
    differs = frozenset(a for a, same in d.state.noted if not same and a in kept_same)
    labels = (("site", measure.protocol.site),) if measure.protocol.site else ()
    return Conditions(differs, labels, understood.notes, _remark(typed))


def unasked_aspects(d: ClientStep, measure: Measure) -> tuple[str, ...]:
    """Aspects to keep the same that have not been asked about in this check-in, so that nobody is asked twice."""
    if measure.guarded and d.facts.plan.directed_weighing and len(d.facts.of(measure.key)) > 1:
        return ()  # clients who weigh daily on a clinician's advice are not questioned daily
    noted = {a for a, _ in d.state.noted}
    return tuple(a for a in measure.protocol.keep_same if a not in noted)


def together(d: ClientStep, measure: Measure, aspects: tuple[str, ...]) -> tuple[str, ...]:
    """Those aspects, and those of what is still to come in this check-in, so that one tap answers for all of them."""
    coming = (MEASURES[key] for key in d.state.agenda if key in MEASURES)
    alike = (x for x in coming if x.kind is measure.kind and not x.series and d.facts.of(x.key))
    return tuple(dict.fromkeys((*aspects, *(a for x in alike for a in unasked_aspects(d, x)))))


def ask_conditions(d: ClientStep, measure: Measure, reading: Reading, aspects: tuple[str, ...]) -> None:
    d.ask(AskingConditions(measure.key, reading.key))
    _say_kept(d, measure, reading)
    say_conditions(d, measure, aspects)


def _say_kept(d: ClientStep, measure: Measure, reading: Reading) -> None:
    if d.hidden(measure):
        d.say(m.KeptHidden(measure.key))
        return
    notes = tuple(sorted(reading.conditions.notes))
    d.say(m.ReadingKept(measure.key, d.shown(measure, reading.value), reading.second, notes))


def same_reading(one: object, other: AskingConditions) -> bool:
    """Whether the conditions of the same reading are still being asked."""
    return isinstance(one, AskingConditions) and one.key == other.key


def put_conditions_again(d: ClientStep) -> None:
    """Repeat the open question about conditions."""
    if not isinstance(d.asking, AskingConditions) or d.asking.measure not in MEASURES:
        return
    measure = MEASURES[d.asking.measure]
    aspects = unasked_aspects(d, measure)
    if d.asking.picking:
        ask_what_differed(d, measure, together(d, measure, aspects), d.asking.differs)
    else:
        say_conditions(d, measure, aspects)


def say_conditions(d: ClientStep, measure: Measure, aspects: tuple[str, ...]) -> None:
    d.say(
        m.AskConditions(measure.key, together(d, measure, aspects)),
        (Choice("same_as_last_time", "cond:same"),),
        (Choice("something_differed", "cond:differed"),),
    )


def conditions_answered(d: ClientStep, asking: AskingConditions, value: str) -> None:
    """One tap: same, or something differed; then which aspect."""
    measure = MEASURES[asking.measure]
    reading = readings.by_key(d, asking.key)
    aspects = together(d, measure, unasked_aspects(d, measure))
    if value == "differed" and aspects:
        d.ask(replace(asking, picking=True))
        ask_what_differed(d, measure, aspects, ())
        return
    if asking.picking and value not in ("done", "same"):
        differs = tuple(dict.fromkeys((*asking.differs, value))) if value in aspects else asking.differs
        d.ask(replace(asking, differs=differs))
        ask_what_differed(d, measure, aspects, differs)
        return
    differs = asking.differs if asking.picking and value == "done" else ()
    d.become(asking=None, noted=(*d.state.noted, *((a, a not in differs) for a in aspects)))
    if reading is None or not reading.counts:  # withdrawn in the meantime, or a side note
        _after_conditions(d, asking.then)
        return
    if differs:
        own = frozenset(differs) & frozenset(measure.protocol.keep_same)
        reading = replace(reading, conditions=replace(reading.conditions, differs=reading.conditions.differs | own))
        d.do(Amend(reading.key, reading))
        d.facts = replace(d.facts, history=tuple(reading if r.key == reading.key else r for r in d.facts.history))
        d.say(m.ConditionsNoted(differs))
    reply_to_reading(d, measure, reading, said_value=True)
    _after_conditions(d, asking.then)


def _after_conditions(d: ClientStep, keys: tuple[str, ...]) -> None:
    """Reply to the readings that were given along with this one, asking what is still unknown of their conditions."""
    for n, key in enumerate(keys):
        reading = readings.by_key(d, key)
        if reading is None or not reading.counts:  # withdrawn in the meantime, or a side note
            continue
        measure = MEASURES[reading.measure]
        aspects = unasked_aspects(d, measure)
        if aspects and len(d.facts.of(measure.key)) <= 1:
            _first_of(d, measure, reading, aspects, said_value=True)
            continue
        if aspects:
            d.ask(AskingConditions(measure.key, key, then=keys[n + 1 :]))
            say_conditions(d, measure, aspects)
            return
        reply_to_reading(d, measure, reading, said_value=True)
    check_in.ask_next(d)


def ask_what_differed(d: ClientStep, measure: Measure, aspects: tuple[str, ...], chosen: tuple[str, ...]) -> None:
    left = [a for a in aspects if a not in chosen]
    d.say(
        m.AskWhatDiffered(measure.key, chosen),
        *rows_of(*(Choice(f"aspect:{a}", f"cond:{a}") for a in left)),
        (Choice("done", "cond:done"),),
    )


# --- answering --------------------------------------------------------------------------------------------------


def reply_to_reading(d: ClientStep, measure: Measure, reading: Reading, *, said_value: bool = False) -> None:
    """Thank, repeat the value, one band, the meaning of the change, one piece of context."""
    found = readings.assessed(d, measure, reading)
    if measure.guarded and d.facts.plan.directed_weighing and len(d.facts.of(measure.key)) > 1:
        # daily weighing on a clinician's advice: thanked, monitored for a fast gain, not commented on daily
        d.say(
            m.KeptHidden(measure.key)
            if d.hidden(measure)
            else m.ReadingKept(measure.key, d.shown(measure, reading.value))
        )
        readings.raise_flags(d, measure, reading, found)
        return
    readings.raise_flags(d, measure, reading, found)
    sources: list[str] = []
    if d.hidden(measure):
        if not said_value:
            d.say(m.KeptHidden(measure.key))
        return
    verdict = found.verdict
    if verdict is not None and verdict.kind is Change.TOO_SOON:
        on = d.due_on(measure.key, reading.taken_at)
        d.say(m.KeptBeforeTime(measure.key, d.shown(measure, reading.value), on, reading.second))
        return
    if not said_value:
        d.say(
            m.ReadingKept(
                measure.key, d.shown(measure, reading.value), reading.second, tuple(sorted(reading.conditions.notes))
            )
        )
    if (band := band_for(d, measure, reading, found)) is not None:
        if band != _band_before(d, measure, reading) and not set(band.notes) & NO_TABLE_FITS:
            d.say(band)
        sources.append(band.source)
    if verdict is not None and verdict.kind is Change.STARTING:
        d.say(readings.start_said(d, measure))
    elif verdict is not None:
        d.say(readings.verdict_said(d, measure, found))
        if measure.error is not None:
            sources.append(measure.error.source.key)
    told = {*d.state.told, *d.state.cautioned}
    if context := next((key for key in _contexts(d, measure, found) if key not in told), None):
        d.say(m.Context(context))
        d.become(told=(*d.state.told, context))
        if context in {said for _, said in measure.misled_by}:  # a caution: once, not at every retest
            d.become(cautioned=(*d.state.cautioned, context))
    goal_progress(d, measure, reading, found)
    d.become(sources=tuple(sources))


def _contexts(d: ClientStep, measure: Measure, found: Assessment) -> tuple[str, ...]:
    """What may be said beside a reading. A measure that is not in the plan is not asked for again."""
    asked = d.facts.slot is not None and measure.key in check_in.asked_of(d)
    return tuple("first_reading" if key == "start_again" and not asked else key for key in found.context)


def band_for(d: ClientStep, measure: Measure, reading: Reading, found: Assessment) -> m.BandSaid | None:
    """The primary published comparison; for a weight, of its body mass index; for a hip, of the ratio."""
    for score in found.scores:
        if isinstance(score, Score):
            return m.BandSaid(measure.key, score.band, score.source.key, score.notes[:1])
    latest = {r.measure: r for r in d.facts.history if r.counts}
    latest[measure.key] = reading
    for derived in derive_all(latest, d.facts.profile, MEASURES):
        if derived.measure.said_with == measure.key:
            for score in derived.measure.score(derived.reading, d.facts.profile):
                if isinstance(score, Score):
                    return m.BandSaid(derived.measure.key, score.band, score.source.key, score.notes[:1])
    return None


def _band_before(d: ClientStep, measure: Measure, reading: Reading) -> m.BandSaid | None:
    """The band that was named with the official reading before this one; None if there was none."""
    earlier = [r for r in _programme(d, measure) if r.taken_at < reading.taken_at]
    if not earlier or measure.series:
        return None
    return band_for(d, measure, earlier[-1], readings.assessed(d, measure, earlier[-1]))


def goal_progress(d: ClientStep, measure: Measure, reading: Reading, found: Assessment) -> None:
    """Progress towards a goal; a change within error does not count."""
    sure = found.verdict is None or found.verdict.beyond_error
    for fact in d.facts.goals:
        if fact.measure != measure.key:
            continue
        counted = d.facts.of(measure.key)
        start = next((r for r in counted if r.taken_at >= fact.set_at), counted[0] if counted else reading)
        before = [r for r in counted if r.taken_at <= fact.set_at]
        start = before[-1] if before else start
        goal = Goal(measure.key, Decimal(fact.target), fact.by)
        way = progress(goal, start, reading)
        percent = way.percent if sure or way.reached else 0
        ahead = projection(fit(points_of(measure, _programme(d, measure))), goal.target, d.now)
        early, late, why = None, None, ""
        if isinstance(ahead, NoProjection):
            why = ahead.reason
        else:
            early, late = (d.facts.local(at).date() for at in (ahead.earliest, ahead.latest))
        amount = d.shown(measure, goal.target)
        d.say(m.GoalProgress(measure.key, percent, amount, fact.by, early, late, why))


def _programme(d: ClientStep, measure: Measure) -> tuple[Reading, ...]:
    """Readings of the current programme that count."""
    since = d.facts.plan.baseline_since
    return tuple(r for r in d.facts.of(measure.key) if since is None or r.taken_at >= since)
