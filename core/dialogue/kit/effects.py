"""Effects shared by all conversations: messages with buttons, joining, and data subject requests."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import timedelta
from typing import Any, TypeVar

EffectT = TypeVar("EffectT")


_DRAWN = re.compile(r"(.*)~([0-9a-z]{1,8})", re.DOTALL)
DIGITS = "0123456789abcdefghijklmnopqrstuvwxyz"


@dataclass(frozen=True, slots=True)
class Choice:
    """A button: label is a key of bot.rendering's labels, with an optional argument; data is returned in `Press`.

    question: number of its question, None if a conversation does not number them.
    """

    label: str
    data: str
    argument: str = ""
    question: int | None = None

    @property
    def callback(self) -> str:
        """What the messenger returns: the data, followed by the question."""
        return self.data if self.question is None else drawn(self.data, self.question)


def drawn(data: str, question: int) -> str:
    """ "n:7" of question 1000 as "n:7~rs"."""
    figures = ""
    while question:
        question, last = divmod(question, len(DIGITS))
        figures = DIGITS[last] + figures
    return f"{data}~{figures or '0'}"


def number_in(value: str) -> int:
    """The number of a row in a button's data; 0 if there is none, or none that a row could have."""
    return int(value) if value.isdecimal() and len(value) < 19 else 0


def undrawn(callback: str) -> tuple[str, int | None]:
    """The data of a button and its question; None for a button without one."""
    found = _DRAWN.fullmatch(callback)
    return (callback, None) if found is None else (found[1], int(found[2], len(DIGITS)))


def numbered(effects: Iterable[EffectT], question: int) -> tuple[EffectT, ...]:
    """The same effects, with the question's number in the buttons of messages to this chat."""
    return tuple(_numbered(effect, question) for effect in effects)


def _numbered(effect: Any, question: int) -> Any:
    if not isinstance(effect, Say) or not effect.choices:
        return effect
    rows = tuple([tuple([Choice(c.label, c.data, c.argument, question) for c in row]) for row in effect.choices])
    return Say(effect.message, rows, effect.occasion, effect.after, effect.said, effect.lasting)


Rows = tuple[tuple[Choice, ...], ...]


@dataclass(frozen=True, slots=True)
class Say:
    """Queue a message for this chat.

    choices: rows of buttons.  occasion: idempotency key, so that it is said only once; None if the event itself is the
    reason. after: delay (a timed count). said: key to remember for eight weeks. lasting: a person's own words, which
    wait for a reader who cannot be reached.
    """

    message: object  # a dataclass of core.dialogue.client.messages
    choices: Rows = ()
    occasion: str | None = None
    after: timedelta = timedelta(0)
    said: str = ""
    lasting: bool = False


@dataclass(frozen=True, slots=True)
class Join:
    """Redeem the invitation that this event opened: create or link the client, coach or organiser."""


@dataclass(frozen=True, slots=True)
class SendData:
    """Data subject access: send the client everything stored about them, as text and CSV."""


@dataclass(frozen=True, slots=True)
class Erase:
    """Erase this person: no reading, name or message text stays. `farewell` is the last message."""

    farewell: object
