"""What a transport hands to the inbox: one event of one chat, under a key that a repeat would have too; and what it
could not read, so that a person can look at it."""

from __future__ import annotations

from dataclasses import dataclass

from core.dialogue.kit.events import Event


@dataclass(frozen=True, slots=True)
class Incoming:
    """One event.

    key: unique on the platform, like "telegram/1234".  language: an IETF tag, "" if not given.
    name: the first name known to the messenger, only for greeting somebody new.
    query: a press to be answered on the platform at once, or ""; it expires within seconds, so it is never stored.
    """

    key: str
    chat_id: int
    is_group: bool
    event: Event
    language: str = ""
    name: str = ""
    query: str = ""


@dataclass(frozen=True, slots=True)
class Unread:
    """An update that cannot be read. It stops nobody: it is set aside, counted and confirmed.

    key: as that of an `Incoming`, None where the update says no number.  chat_id: None where it names no chat.
    body: the update as it came; of a group only its form, since what people say there is never kept.  why: a code.
    """

    key: str | None
    chat_id: int | None
    body: bytes
    why: str
