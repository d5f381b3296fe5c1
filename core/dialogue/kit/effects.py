"""Effects that every conversation has: what to say, with which buttons, and what is done to a person's record."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta


@dataclass(frozen=True, slots=True)
class Choice:
    """A button: label is a key of bot.rendering's labels, with an optional argument; data comes back in `Press`."""

    label: str
    data: str
    argument: str = ""


Rows = tuple[tuple[Choice, ...], ...]


@dataclass(frozen=True, slots=True)
class Say:
    """Queue a message for this chat.

    choices: rows of buttons.  occasion: a unique name of why we write, so that it is said once; None when the
    event itself is the reason.  after: wait this long (a timed count).  said: key remembered for eight weeks.
    """

    message: object  # a dataclass of core.dialogue.client.messages
    choices: Rows = ()
    occasion: str | None = None
    after: timedelta = timedelta(0)
    said: str = ""


@dataclass(frozen=True, slots=True)
class Join:
    """Use up the invitation that this event opened: make or link the client, coach or organiser."""


@dataclass(frozen=True, slots=True)
class SendData:
    """Send the client everything we hold: a readable text and a CSV file."""


@dataclass(frozen=True, slots=True)
class Erase:
    """Erase this person: no reading, name or message text stays. `farewell` is the last message."""

    farewell: object
