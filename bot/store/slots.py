"""The outcome of each slot: asked, answered, or never asked by us."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from enum import StrEnum

from sqlalchemy import Connection, bindparam, select

from bot.store.dialect import among, insert_new, upsert
from bot.store.schema import slots


class SlotOutcome(StrEnum):
    ASKED = "asked"
    ANSWERED = "answered"
    NOT_ASKED = "not_asked"


@dataclass(frozen=True, slots=True)
class StoredSlot:
    client_id: int
    day: date
    outcome: SlotOutcome
    answered_at: datetime | None


def asked(conn: Connection, coming: Sequence[tuple[int, date, datetime]]) -> None:
    """Record slots, as (client, day, instant), as asked; an existing outcome stays."""
    _new(conn, coming, SlotOutcome.ASKED)


def not_asked(conn: Connection, gone: Sequence[tuple[int, date, datetime]]) -> None:
    """Record slots as not asked, because of an outage; this does not count against the client."""
    rows = _rows(gone, SlotOutcome.NOT_ASKED, None)
    upsert(conn, slots, rows, ("client_id", "day"), ("outcome",))


def answered(conn: Connection, kept: Sequence[tuple[int, date]], now: datetime) -> None:
    """Record slots, as (client, day), as answered."""
    rows = _rows([(client, day, now) for client, day in dict.fromkeys(kept)], SlotOutcome.ANSWERED, now)
    upsert(conn, slots, rows, ("client_id", "day"), ("outcome", "answered_at"))


def _rows(
    which: Sequence[tuple[int, date, datetime]], outcome: SlotOutcome, answered_at: datetime | None
) -> list[dict[str, object]]:
    return [
        {"client_id": client, "day": day, "due_at": at, "outcome": outcome.value, "answered_at": answered_at}
        for client, day, at in which
    ]


def _new(conn: Connection, which: Sequence[tuple[int, date, datetime]], outcome: SlotOutcome) -> None:
    insert_new(conn, slots, _rows(which, outcome, None), ("client_id", "day"))


_SINCE = (
    select(slots)
    .where(among(slots.c.client_id, "clients"), slots.c.day >= bindparam("since"))
    .order_by(slots.c.client_id, slots.c.day)
)


def since(conn: Connection, client_ids: Iterable[int], day: date) -> tuple[StoredSlot, ...]:
    """The outcomes of clients' slots from a date on. One query."""
    rows = conn.execute(_SINCE, {"clients": list(client_ids), "since": day})
    return tuple(StoredSlot(r.client_id, r.day, SlotOutcome(r.outcome), r.answered_at) for r in rows)


_CHECK_INS = (
    select(slots.c.client_id, slots.c.day, slots.c.outcome)
    .where(among(slots.c.client_id, "clients"), slots.c.outcome != SlotOutcome.NOT_ASKED.value)
    .order_by(slots.c.day)
)


def check_ins(conn: Connection, client_ids: Iterable[int]) -> dict[int, tuple[tuple[date, bool], ...]]:
    """The local dates of clients' check-ins that were asked, and whether each was answered. One query."""
    found: dict[int, list[tuple[date, bool]]] = {}
    for r in conn.execute(_CHECK_INS, {"clients": list(client_ids)}):
        found.setdefault(r.client_id, []).append((r.day, r.outcome == SlotOutcome.ANSWERED.value))
    return {client: tuple(several) for client, several in found.items()}
