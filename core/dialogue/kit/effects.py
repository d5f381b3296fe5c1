"""Effects shared by all conversations: messages with buttons, joining, and data subject requests."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta


@dataclass(frozen=True, slots=True)
class Choice:
    """A button: label is a key of bot.rendering's labels, with an optional argument; data is returned in `Press`."""

    label: str
    data: str
    argument: str = ""


Rows = tuple[tuple[Choice, ...], ...]


@dataclass(frozen=True, slots=True)
class Say:
    """Queue a message for this chat.

    choices: rows of buttons.  occasion: idempotency key, so that it is said only once; None if the event itself is the
    reason. after: delay (a timed count). said: key to remember for eight weeks.
    """

    message: object  # a dataclass of core.dialogue.client.messages
    choices: Rows = ()
    occasion: str | None = None
    after: timedelta = timedelta(0)
    said: str = ""


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
