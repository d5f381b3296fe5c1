"""Replies to an early weight. The rule itself is core.watching.weighing_guard.

Nothing here ever mentions a number, a direction or a size.
"""

from __future__ import annotations

from datetime import date, datetime, timedelta
from decimal import Decimal

from core.dialogue.client import messages as m
from core.dialogue.client.check_in import is_due
from core.dialogue.client.effects import Raise
from core.dialogue.client.readings import REMEMBERED, record
from core.dialogue.client.states import Setting, Written
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice
from core.dialogue.kit.events import Text
from core.measures import MEASURES
from core.measures.measure import Understood
from core.reading import How, Reading
from core.watching import weighing_guard
from core.watching.flags import Code, flag
from core.watching.weighing_guard import GuardStep

OFFERED = ("energy", "waist")  # welcome any day, if due


def guard_decision(d: ClientStep) -> weighing_guard.GuardDecision:
    plan = d.facts.plan
    return weighing_guard.decide(
        d.weights(),
        d.now,
        interval_days=plan.interval("weight"),
        directed=plan.directed_weighing,
        in_plan="weight" in plan.measures,
        zone=d.facts.zone,
        taken_back=d.state.weighed,
        corrected=d.state.corrected,
        early_withdrawn=d.state.early_withdrawn,
    )


def step_for(d: ClientStep) -> GuardStep:
    return guard_decision(d).step


def is_early(d: ClientStep) -> bool:
    return step_for(d) in weighing_guard.EARLY


def early(d: ClientStep, understood: Understood, event: Text, step: GuardStep) -> None:
    """Store the weight as a side note, and reply according to the table."""
    if step is GuardStep.LEFT_OUT:
        d.say(m.WeightLeftOut())
        return
    found = guard_decision(d)
    due = _due(d)
    keep_side_note(d, understood, event)
    match step:
        case GuardStep.FIRST:
            d.say(m.EarlyFirst(due), *_offers(d))
        case GuardStep.SECOND:
            d.ask(Setting("early_reason", "", d.asking))
            ask_reason(d)
        case _:
            d.say(m.EarlyOften(d.facts.coach_name), (_word(d),))
            d.do(Raise(flag(Code.WEIGHING_OFTEN, d.now, "weight", count=Decimal(found.attempts))))


def ask_reason(d: ClientStep) -> None:
    """Ask what made today a day to check."""
    if d.state.weighed is not None or any(r.counts for r in d.weights()):
        d.say(m.EarlySecond(_due(d), d.facts.coach_name), (_word(d),))


def _due(d: ClientStep) -> date:
    """The next weigh-in, counted from the last one, even if that was withdrawn."""
    last = max((*(r.taken_at for r in d.weights() if r.counts), *((d.state.weighed,) if d.state.weighed else ())))
    return d.due_on("weight", last)


def keep_side_note(d: ClientStep, understood: Understood, event: Text) -> None:
    """Store an early weight. For a typo, record only that something was written, for an edit or undo."""
    key = f"{event.ref or event.at.isoformat()}:weight"
    if understood.value not in MEASURES["weight"].bounds.possible:
        kept = tuple(w for w in d.state.written if w.key != key)
        d.become(written=(*kept, Written(key, event.ref, "weight", d.before.question, d.before.day))[-REMEMBERED:])
        return
    note = Reading(
        "weight",
        understood.value,
        event.at,
        as_typed=event.text[:200],
        unit=understood.unit,
        how=How.EARLY,
        key=key,
    )
    record(d, note, event.ref)


def count_correction(d: ClientStep, taken_at: datetime) -> None:
    """Note that a weigh-in was corrected or withdrawn; the new number within a day of it is the same weigh-in."""
    first = d.state.first_said
    same = first is not None and timedelta(0) <= taken_at - first <= weighing_guard.CORRECTED_WITHIN
    d.become(first_said=first if same else taken_at, corrected=d.state.corrected + 1 if same else 1)


def corrected_enough(d: ClientStep, taken_at: datetime) -> bool:
    """Whether a weigh-in was corrected so often that the next number is a weighing of its own."""
    first = d.state.first_said
    if first is None or not timedelta(0) <= taken_at - first <= weighing_guard.CORRECTED_WITHIN:
        return False
    return d.state.corrected >= weighing_guard.CORRECTED_AT_MOST


def _offers(d: ClientStep) -> tuple[tuple[Choice, ...], ...]:
    """Alternatives welcome any day: energy, the waist if it is due, or a walk."""
    row = [Choice("energy", "early:energy")]
    if "waist" in d.facts.plan.measures and is_due(d, "waist", d.today):
        row.append(Choice("waist", "early:waist"))
    row.append(Choice("walk", "early:walk"))
    return (tuple(row),)


def _word(d: ClientStep) -> Choice:
    return Choice("word_to_coach", "word", d.facts.coach_name)


def taken_back(d: ClientStep) -> None:
    """Reply to a correction or an undo of an early weight."""
    official = [r for r in d.weights() if r.counts]
    if official:
        d.say(m.EarlyTaken(d.due_on("weight", official[-1].taken_at)))
    else:
        d.say(m.Undone("weight"))
