"""Scripted steps, for testing the code that applies their effects."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from sqlalchemy import select

from bot.store import codec, inbox
from bot.store.database import Database
from bot.store.inbox import NewEvent
from bot.store.schema import outbox as outbox_table
from bot.turns import turn
from bot.turns.turn import Steps
from core.dialogue.client.effects import Effect
from core.dialogue.client.facts import ClientFacts, StrangerFacts
from core.dialogue.client.messages import NotSure
from core.dialogue.client.states import FRESH, State
from core.dialogue.client.step import Outcome
from core.dialogue.kit.effects import Join, Say
from core.dialogue.kit.events import Command, Event, Text
from core.dialogue.kit.messages import Stranger
from tests.bot.practice import ADA, NOW

Told = Callable[[State, Event, ClientFacts], Sequence[Effect]]


@dataclass
class Puppet:
    """A client's step that answers each event with `effects`, and records its facts."""

    effects: Sequence[Effect] | Told = ()
    state: State = FRESH
    seen: list[tuple[State, Event, ClientFacts]] = field(default_factory=list)
    strangers: list[tuple[Event, StrangerFacts]] = field(default_factory=list)

    def step(self, state: State, event: Event, facts: ClientFacts, now: datetime) -> Outcome:
        self.seen.append((state, event, facts))
        effects = self.effects(state, event, facts) if callable(self.effects) else self.effects
        return Outcome(self.state, tuple(effects))

    def stranger(self, event: Event, facts: StrangerFacts) -> Outcome:
        self.strangers.append((event, facts))
        if isinstance(event, Command) and facts.invitation is not None:
            return Outcome(FRESH, (Join(), Say(NotSure("joined"))))
        return Outcome(FRESH, (Say(Stranger()),))

    def steps(self, **more: Any) -> Steps:
        return Steps(self.step, self.stranger, **more)


_numbers = iter(range(1, 1_000_000))


def arrive(database: Database, *events: Event, chat_id: int = ADA, now: datetime = NOW, **hints: Any) -> None:
    """Put events into the inbox, each with its own key."""
    incoming = [NewEvent(f"test/{next(_numbers)}", chat_id, event, **hints) for event in events]
    database.write_now(inbox.put, incoming, now)


def work(database: Database, steps: Steps, now: datetime = NOW) -> int:
    """Handle everything that can be handled now; return the number of rows."""
    total = 0
    while taken := database.write_now(turn.work_batch, steps, now):
        total += taken
    return total


def say(database: Database, puppet: Puppet, text: str = "82.4 kg", now: datetime = NOW, chat_id: int = ADA) -> None:
    """Let a text arrive and be handled."""
    arrive(database, Text(now, text), chat_id=chat_id, now=now)
    work(database, puppet.steps(), now)


def queued(database: Database, chat_id: int | None = None) -> list[Any]:
    """The messages in the outbox, in order; those for one chat if it is named."""

    def read(conn: Any) -> list[Any]:
        rows = conn.execute(select(outbox_table).order_by(outbox_table.c.id)).all()
        return [
            codec.loads(r.message) if r.message else r.kind for r in rows if chat_id is None or r.chat_id == chat_id
        ]

    return database.read_now(read)


def rows(database: Database, table: Any) -> list[Any]:
    return database.read_now(lambda conn: conn.execute(select(table)).all())
