"""The thread between a client and their coach, and the coach's own notes."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from sqlalchemy import Connection, insert, select

from bot.store import owners
from bot.store.clients import Client
from bot.store.schema import notes, words
from bot.store.sealed import secret


class Direction(StrEnum):
    TO_COACH = "to_coach"
    TO_CLIENT = "to_client"


@dataclass(frozen=True, slots=True)
class Word:
    direction: Direction
    text: str
    at: datetime


def put(conn: Connection, said: Sequence[tuple[int, int | None, Direction, str]], now: datetime) -> None:
    """Store messages: (client, coach, direction, text)."""
    if said:
        keys = owners.of_clients(conn, [client for client, _, _, _ in said])
        conn.execute(
            insert(words),
            [
                {
                    "client_id": client,
                    "coach_id": coach,
                    "direction": way.value,
                    "text": secret(keys[client], text),
                    "at": now,
                }
                for client, coach, way, text in said
            ],
        )


def thread(conn: Connection, client: Client, limit: int = 50) -> tuple[Word, ...]:
    """The last messages between a client and their coach, oldest first."""
    rows = conn.execute(
        select(words.c.direction, words.c.text, words.c.at)
        .where(words.c.client_id == client.id)
        .order_by(words.c.at.desc(), words.c.id.desc())
        .limit(limit)
    )
    return tuple(Word(Direction(r.direction), r.text, r.at) for r in reversed(rows.all()))


def note(conn: Connection, client: Client, coach_id: int, text: str, now: datetime) -> None:
    """Store a coach's note on one of their clients."""
    row = {"client_id": client.id, "coach_id": coach_id, "text": secret(client.key, text), "at": now}
    conn.execute(insert(notes), row)


def notes_on(conn: Connection, client: Client, coach_id: int) -> tuple[tuple[str, datetime], ...]:
    """A coach's own notes on a client, oldest first; other coaches' notes are private."""
    rows = conn.execute(
        select(notes.c.text, notes.c.at)
        .where(notes.c.client_id == client.id, notes.c.coach_id == coach_id)
        .order_by(notes.c.at, notes.c.id)
    )
    return tuple((r.text, r.at) for r in rows)
