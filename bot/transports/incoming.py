"""What a transport passes to the inbox: one event of one chat, with an idempotency key."""

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
