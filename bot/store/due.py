"""Clients whose slot is due, or whose pause is over."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime

from sqlalchemy import Connection, bindparam, select

from bot.store.dialect import skip_locked
from bot.store.schema import clients, people
from core.care import Slot, Status


@dataclass(frozen=True, slots=True)
class DueClient:
    """A client as the sweep needs it. chat_id: None without a chat. status: None if the row is corrupt."""

    id: int
    chat_id: int | None
    reachable: bool
    status: Status | None
    slot: Slot | None
    due_at: datetime
    asked: date | None
    answered: date | None
    missed: int


_DUE = skip_locked(
    select(
        clients.c.id,
        clients.c.status,
        clients.c.weekday,
        clients.c.at,
        clients.c.zone_name,
        clients.c.next_due_at,
        clients.c.asked,
        clients.c.answered,
        clients.c.missed,
        people.c.chat_id,
        people.c.reachable,
    )
    .select_from(clients.outerjoin(people, people.c.id == clients.c.person_id))
    .where(clients.c.next_due_at <= bindparam("now"))
    .order_by(clients.c.next_due_at, clients.c.id)
    .limit(bindparam("limit")),
    of=clients,
)


_STATUSES = {status.value: status for status in Status}


def take(conn: Connection, now: datetime, limit: int) -> list[DueClient]:
    """Up to `limit` due clients, longest overdue first, that no other sweep has locked.

    The caller sets a later `next_due_at` (or none) for each in the same transaction.
    """
    return [
        DueClient(
            r.id,
            r.chat_id,
            bool(r.reachable),
            _STATUSES.get(r.status),
            None if r.weekday is None or r.at is None or not r.zone_name else Slot(r.weekday, r.at, r.zone_name),
            r.next_due_at,
            r.asked,
            r.answered,
            r.missed,
        )
        for r in conn.execute(_DUE, {"now": now, "limit": limit})
    ]


_NEXT = select(clients.c.next_due_at).where(clients.c.next_due_at.is_not(None)).order_by(clients.c.next_due_at).limit(1)


def next_at(conn: Connection) -> datetime | None:
    """When the next client is due; None if nobody ever is."""
    return conn.execute(_NEXT).scalar_one_or_none()
