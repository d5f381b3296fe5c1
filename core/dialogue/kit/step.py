"""The builder of a step, the same for every conversation.

A `StepBuilder` lives only inside one call of `step`; it is the only mutable object in `core`.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import fields
from datetime import datetime
from functools import cache
from operator import attrgetter
from typing import Any, Generic, Protocol, TypeVar

from core.dialogue.kit.effects import Choice, Erase, Join, Rows, Say, SendData, numbered
from core.dialogue.kit.messages import Together
from core.language import Lexicon, words_for


class HasAsking(Protocol):
    """The state of a conversation: at least its open question, and the number of that."""

    @property
    def asking(self) -> Any: ...

    @property
    def question(self) -> int: ...


class HasLanguage(Protocol):
    """The facts of a conversation: at least its language."""

    @property
    def language(self) -> str: ...


StateT = TypeVar("StateT", bound=HasAsking)
FactsT = TypeVar("FactsT", bound=HasLanguage)
AskingT = TypeVar("AskingT")
EffectT = TypeVar("EffectT")


@cache
def _fields_of(kind: Any) -> tuple[dict[str, int], Callable[[Any], tuple[Any, ...]]]:
    names = [field.name for field in fields(kind)]
    return {name: place for place, name in enumerate(names)}, attrgetter(*names)


def changed(state: StateT, changes: Mapping[str, Any]) -> StateT:
    """What `dataclasses.replace` makes, in half the time: a step reads its state between changes, of many fields."""
    places, values_of = _fields_of(type(state))
    values = list(values_of(state))
    for name, new in changes.items():
        values[places[name]] = new
    return type(state)(*values)


class StepBuilder(Generic[StateT, FactsT, AskingT, EffectT]):
    """One step under construction: the facts, the new state, the effects so far."""

    __slots__ = ("_changes", "_state", "before", "effects", "facts", "now", "used_up", "words")

    def __init__(self, state: StateT, facts: FactsT, now: datetime) -> None:
        self.before = state
        self.used_up = False  # a single-use button was pressed, so earlier buttons are invalid
        self._state = state
        self._changes: dict[str, Any] = {}  # of the state, since it was last read: a step makes several in a row
        self.facts = facts
        self.now = now
        self.words: Lexicon = words_for(facts.language)
        self.effects: list[EffectT] = []

    def say(self, message: object, *rows: tuple[Choice, ...], **how: Any) -> None:
        """Queue a message for this chat; `how` are fields of `Say`."""
        self.do(Say(message, rows, **how))  # type: ignore[arg-type]  # every conversation can say something

    def do(self, *effects: EffectT) -> None:
        self.effects.extend(effects)

    @property
    def state(self) -> StateT:
        """The state as the step has it so far."""
        if self._changes:
            self._state = changed(self._state, self._changes)
            self._changes = {}
        return self._state

    @state.setter
    def state(self, new: StateT) -> None:
        self._state, self._changes = new, {}

    def become(self, **fields: Any) -> None:
        """Change fields of the state."""
        self._changes.update(fields)

    def ask(self, asking: AskingT | None) -> None:
        """Make this the open question; None closes it."""
        self.become(asking=asking)

    @property
    def asking(self) -> AskingT | None:
        found: AskingT | None = self._changes.get("asking", self._state.asking)
        return found

    def numbered(self, *, same: bool) -> tuple[StateT, tuple[EffectT, ...]]:
        """The new state and the effects, with the open question's number in its buttons. same: the question did not
        change. A new number comes from the clock, so that it is unique."""
        number = self.before.question
        if self.used_up or not same:
            number = max(number + 1, int(self.now.timestamp()))
        if self.state.question != number:
            self.become(question=number)
        return self.state, numbered(self.merged(), number)

    def merged(self) -> tuple[EffectT, ...]:
        """The effects, with consecutive messages merged into one."""
        return tuple(merged(self.effects))


def merged(effects: list[Any]) -> list[Any]:
    """Merge consecutive messages into one, so that a phone buzzes once.

    Other effects in between do not separate two messages, unless they send messages themselves or change the recipient.
    Two messages that both have buttons stay separate, since buttons belong to their own text.
    """
    out: list[Any] = []
    last: int | None = None  # index of the message that the next may join
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
                lasting=before.lasting or effect.lasting,
            )
        else:
            last = len(out)
            out.append(effect)
    return out


def _join(before: Say, effect: Say) -> bool:
    if before.choices and effect.choices and before.choices != effect.choices:
        return False
    if before.said and effect.said:
        return False  # each is recorded under its own key
    return not any(say.after or getattr(say.message, "stands_alone", False) for say in (before, effect))


def _parts(message: object) -> tuple[object, ...]:
    return message.parts if isinstance(message, Together) else (message,)


def rows_of(*choices: Choice, width: int = 2) -> Rows:
    """Arrange buttons in rows of `width`."""
    return tuple(tuple(choices[i : i + width]) for i in range(0, len(choices), width))
