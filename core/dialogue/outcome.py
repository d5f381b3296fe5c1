"""What a step returns, and the desk it is worked out on.

A `Desk` lives inside one call of `step` and is never seen outside it: the only mutable thing in `core`.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from typing import Any

from core import schedule
from core.dialogue.effects import Choice, Effect, Erase, Join, Rows, Say, SendData
from core.dialogue.facts import ClientFacts, Numbers
from core.dialogue.messages import Together
from core.dialogue.states import Asking, State
from core.language import Words, words_for
from core.measures import MEASURES
from core.measures.shape import Measure
from core.quantity import FACTOR, Amount, Dimension, Unit, convert, half_up
from core.reading import Reading


@dataclass(frozen=True, slots=True)
class Outcome:
    state: State
    effects: tuple[Effect, ...]


class Desk:
    """One step in the making: the facts at hand, the state as it becomes, the effects so far."""

    __slots__ = ("effects", "facts", "now", "state", "words")

    def __init__(self, state: State, facts: ClientFacts, now: datetime) -> None:
        self.state = state
        self.facts = facts
        self.now = now
        self.words: Words = words_for(facts.language)
        self.effects: list[Effect] = []

    # --- writing --------------------------------------------------------------------------------------------

    def say(self, message: object, *rows: tuple[Choice, ...], **how: Any) -> None:
        """Queue a message; `how` are fields of `Say`."""
        self.effects.append(Say(message, rows, **how))

    def do(self, *effects: Effect) -> None:
        self.effects.extend(effects)

    def become(self, **fields: Any) -> None:
        """Change fields of the state."""
        self.state = replace(self.state, **fields)

    def ask(self, asking: Asking | None) -> None:
        self.state = replace(self.state, asking=asking)

    def finish(self) -> Outcome:
        return Outcome(self.state, tuple(merged(self.effects)))

    # --- reading --------------------------------------------------------------------------------------------

    @property
    def today(self) -> date:
        return self.facts.local(self.now).date()

    @property
    def asking(self) -> Asking | None:
        return self.state.asking

    def unit(self, measure: Measure) -> Unit:
        """The unit this client likes for a measure."""
        if measure.unit in FACTOR:
            dimension = FACTOR[measure.unit][0]
            if dimension is Dimension.MASS:
                return self.facts.units.mass
            if dimension is Dimension.LENGTH and self.facts.units.length in measure.units:
                return self.facts.units.length
        return measure.unit

    def asked_in(self, measure: Measure) -> Unit:
        """The unit a question names: what the client's own watch or tape reads, so seconds where we keep a speed."""
        return Unit.SECOND if measure.unit is Unit.METRE_PER_SECOND else self.unit(measure)

    def shown(self, measure: Measure, value: Any) -> Amount:
        """A value as this client likes to read it; in the measure's own unit rounded to its places."""
        unit = self.unit(measure)
        if unit is measure.unit:
            return Amount(half_up(value, measure.places), unit)
        return Amount(convert(value, measure.unit, unit), unit)

    def hidden(self, measure: Measure) -> bool:
        """Whether this number goes to the coach and is not shown."""
        return self.facts.plan.numbers is Numbers.COACH_ONLY and measure.key in BODY_NUMBERS

    def next_slot(self, after: datetime | None = None) -> date | None:
        """The local date of the next check-in."""
        if self.facts.slot is None:
            return None
        return schedule.next_due(self.facts.slot, self.facts.zone, after or self.now).day

    def due_on(self, key: str, last: datetime) -> date:
        """The first check-in at which a measure last taken at `last` is asked again."""
        days, zone = self.facts.plan.interval(key), self.facts.zone
        fallback = self.facts.local(last).date() + schedule.interval(key, days)
        if self.facts.slot is None:
            return fallback
        until = max(self.now, last) + timedelta(days=days + 14)
        for slot in schedule.instants(self.facts.slot, zone, max(self.now, last), until):
            if schedule.retest_due(key, last, days, slot.day, zone):
                return slot.day
        return fallback

    def weights(self) -> tuple[Reading, ...]:
        return tuple(r for r in self.facts.history if r.measure == "weight")


BODY_NUMBERS = frozenset({"weight", "bmi", "waist", "hip", "waist_to_hip_ratio", "waist_to_height_ratio"})


def merged(effects: list[Effect]) -> list[Effect]:
    """Join what is said in one breath into one message: a phone buzzes once.

    What is done in between does not part two messages, unless it speaks itself or changes who hears them. Two messages
    that both have buttons stay apart, since each one's buttons belong to its words.
    """
    out: list[Effect] = []
    last: int | None = None  # place of the message that the next may join
    for effect in effects:
        if not isinstance(effect, Say):
            out.append(effect)
            last = None if isinstance(effect, Join | SendData | Erase) else last
            continue
        before = out[last] if last is not None else None
        if last is not None and isinstance(before, Say) and _join(before, effect):
            out[last] = Say(
                Together((*_parts(before.message), *_parts(effect.message))),
                effect.choices or before.choices,
                said=effect.said or before.said,
                occasion=before.occasion or effect.occasion,
            )
        else:
            last = len(out)
            out.append(effect)
    return out


def _join(before: Say, effect: Say) -> bool:
    if before.choices and effect.choices and before.choices != effect.choices:
        return False
    if before.said and effect.said:
        return False  # each is remembered under its own key
    return not any(say.after or getattr(say.message, "stands_alone", False) for say in (before, effect))


def _parts(message: object) -> tuple[object, ...]:
    return message.parts if isinstance(message, Together) else (message,)


def measure_of(key: str) -> Measure | None:
    return MEASURES.get(key)


def rows_of(*choices: Choice, width: int = 2) -> Rows:
    """Lay buttons out, `width` to a row."""
    return tuple(tuple(choices[i : i + width]) for i in range(0, len(choices), width))
