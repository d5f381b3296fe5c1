"""Timers of conversations: one per chat, purpose and mark."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import Connection, bindparam, delete, select

from bot.store.dialect import skip_locked, upsert
from bot.store.schema import wakes


@dataclass(frozen=True, slots=True)
class Timer:
    chat_id: int
    purpose: str
    mark: str
    at: datetime
    id: int = 0


def put(conn: Connection, timers: Sequence[Timer]) -> None:
    """Set timers; an existing one is moved. No two may be the same."""
    rows = [{"chat_id": t.chat_id, "purpose": t.purpose, "mark": t.mark, "at": t.at} for t in timers]
    upsert(conn, wakes, rows, ("chat_id", "purpose", "mark"), ("at",))


_FORGET = delete(wakes).where(wakes.c.chat_id == bindparam("chat"), wakes.c.purpose == bindparam("what"))


def forget(conn: Connection, purposes: Sequence[tuple[int, str]]) -> None:
    """Cancel timers, as (chat, purpose), with any mark."""
    if purposes:
        conn.execute(_FORGET, [{"chat": chat, "what": purpose} for chat, purpose in purposes])


def forget_chat(conn: Connection, chat_id: int) -> None:
    conn.execute(delete(wakes).where(wakes.c.chat_id == chat_id))


_DUE = skip_locked(
    select(wakes).where(wakes.c.at <= bindparam("now")).order_by(wakes.c.at, wakes.c.id).limit(bindparam("limit")),
    of=wakes,
)


def take_due(conn: Connection, now: datetime, limit: int) -> list[Timer]:
    """Take up to `limit` expired timers, earliest first; they are deleted when the transaction commits."""
    found = [Timer(r.chat_id, r.purpose, r.mark, r.at, r.id) for r in conn.execute(_DUE, {"now": now, "limit": limit})]
    if found:
        conn.execute(delete(wakes).where(wakes.c.id.in_([t.id for t in found])))
    return found


_NEXT = select(wakes.c.at).order_by(wakes.c.at).limit(1)


def next_at(conn: Connection) -> datetime | None:
    """When the next timer expires; None if there is none."""
    return conn.execute(_NEXT).scalar_one_or_none()
