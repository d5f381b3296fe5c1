"""The real engine and the real staff turn on a database, without a messenger."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import Connection, select

from bot.exports.one_client import one_client
from bot.store import codec, conversations
from bot.store.database import Database
from bot.store.schema import outbox
from bot.turns.staff_turn import StaffTurn, look_ups
from bot.turns.turn import Steps
from core.dialogue.engines.client import step, step_stranger
from core.dialogue.kit.effects import drawn
from core.dialogue.kit.events import Command, Due, Press, Text
from core.dialogue.kit.messages import Together
from tests.bot.practice import NOW, ROWAN
from tests.bot.steps import arrive, work


def steps() -> Steps:
    """The real decision functions."""
    return Steps(
        step,
        step_stranger,
        staff=StaffTurn(look_ups(), lambda token: f"https://t.me/it?start={token}", export=one_client),
    )


class Desk:
    """One database, and what goes on in it. `heard` is what a chat was sent since the last look."""

    def __init__(self, database: Database, now: datetime = NOW) -> None:
        self.database = database
        self.steps = steps()
        self.now = now
        self._looked = 0

    def says(self, text: str, chat: int = ROWAN) -> list[Any]:
        return self._gets(Text(self.now, text), chat)

    def presses(self, data: str, chat: int = ROWAN) -> list[Any]:
        """As the messenger gives a button back: with the question it was drawn for."""
        stored = self.database.read_now(conversations.load, [chat]).get(chat)
        state = codec.load_again(stored[0]) if stored is not None and stored[0] else None
        return self._gets(Press(self.now, drawn(data, getattr(state, "question", 0))), chat)

    def commands(self, name: str, argument: str = "", chat: int = ROWAN) -> list[Any]:
        return self._gets(Command(self.now, name, argument), chat)

    def due(self, chat: int = ROWAN) -> list[Any]:
        """The weekly digest is due."""
        return self._gets(Due(self.now, self.now.date()), chat)

    def _gets(self, event: Any, chat: int) -> list[Any]:
        """Messages to this chat because of the event."""
        self._looked = self.database.read_now(_last)
        arrive(self.database, event, chat_id=chat, now=self.now)
        work(self.database, self.steps, self.now)
        return self.heard(chat)

    def heard(self, chat: int) -> list[Any]:
        """Messages to a chat because of the last event, flattened."""
        return [m for m, _ in self.sent(chat)]

    def buttons(self, chat: int) -> list[str]:
        return [c.data for _, choices in self.sent(chat) for r in choices for c in r]

    def sent(self, chat: int) -> list[tuple[Any, Any]]:
        found: list[tuple[Any, Any]] = []
        for message, choices in self.database.read_now(_since, chat, self._looked):
            for part in message.parts if isinstance(message, Together) else (message,):
                found.append((part, choices))
        return found


def _last(conn: Connection) -> int:
    return conn.execute(select(outbox.c.id).order_by(outbox.c.id.desc()).limit(1)).scalar() or 0


def _since(conn: Connection, chat: int, after: int) -> list[tuple[Any, Any]]:
    rows = conn.execute(select(outbox).where(outbox.c.chat_id == chat, outbox.c.id > after).order_by(outbox.c.id))
    return [
        (codec.loads(r.message) if r.message else r.kind, codec.load_rows(r.choices) if r.choices else ()) for r in rows
    ]
