"""The thread between a client and their coach, and the coach's own notes."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum

from sqlalchemy import Connection, bindparam, delete, insert, select

from bot.store import owners
from bot.store.clients import Client
from bot.store.dialect import among
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


def threads(conn: Connection, client_ids: Sequence[int], since: datetime) -> dict[int, tuple[Word, ...]]:
    """The messages of several clients from an instant on, oldest first. One query; authorised by the caller."""
    found: dict[int, list[Word]] = {}
    rows = conn.execute(_THREADS, {"clients": list(client_ids), "since": since})
    for r in rows:
        found.setdefault(r.client_id, []).append(Word(Direction(r.direction), r.text, r.at))
    return {client: tuple(said) for client, said in found.items()}


_THREADS = (
    select(words.c.client_id, words.c.direction, words.c.text, words.c.at)
    .where(among(words.c.client_id, "clients"), words.c.at >= bindparam("since"))
    .order_by(words.c.at, words.c.id)
)


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


def last_notes(conn: Connection, client_ids: Sequence[int], coach_id: int) -> dict[int, str]:
    """A coach's newest note on each of several clients. One query; authorised by the caller."""
    rows = conn.execute(_LAST_NOTES, {"clients": list(client_ids), "coach": coach_id})
    return {r.client_id: r.text for r in rows}


_LAST_NOTES = (
    select(notes.c.client_id, notes.c.text)
    .where(among(notes.c.client_id, "clients"), notes.c.coach_id == bindparam("coach"))
    .order_by(notes.c.at, notes.c.id)
)


def drop_unsent(conn: Connection, client_id: int, coach_id: int, at: datetime) -> None:
    """Drop a coach's words of that second that have never gone out. Authorised by the caller."""
    mine = select(words.c.id).where(
        words.c.client_id == client_id,
        words.c.coach_id == coach_id,
        words.c.direction == Direction.TO_CLIENT.value,
        words.c.at >= at,
        words.c.at < at + timedelta(seconds=1),
    )
    newest = conn.execute(mine.order_by(words.c.id.desc()).limit(1)).scalar_one_or_none()
    conn.execute(delete(words).where(words.c.id == newest))
