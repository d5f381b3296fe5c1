"""The only way for a coach to reach a client's data.

Every command, button and link of a coach is authorised here, each time anew: a button on an old message stops working
once the client has moved to another coach, left the caseload or been erased.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from typing import Any

from sqlalchemy import Connection, Select, and_, bindparam, exists, or_, select
from sqlalchemy.sql.elements import ColumnElement

from bot.store import clients
from bot.store.clients import Client
from bot.store.schema import clients as table
from bot.store.schema import coaches, deputies, flags
from bot.store.sealed import is_whole
from core.care import Status
from core.dialogue.staff.names import distinct_names
from core.dialogue.staff.names import mentioned as names_in
from core.watching.flags import Severity


def _mine() -> tuple[ColumnElement[bool], ...]:
    return (table.c.coach_id == bindparam("coach"),)


_ALL: Select[tuple[object, ...]] = clients.ALL.where(*_mine()).order_by(table.c.id)
_ONE: Select[tuple[object, ...]] = clients.ALL.where(table.c.id == bindparam("client"), *_mine())


def _stood_in_for() -> tuple[ColumnElement[bool], ...]:
    """A client of somebody this coach stands in for: on the days they are away, or while an alarm was passed on."""
    alarm = exists().where(
        flags.c.client_id == table.c.id,
        flags.c.severity == Severity.URGENT.value,
        flags.c.cleared_at.is_(None),
        flags.c.escalated_at >= flags.c.refreshed_at,
    )
    away = and_(deputies.c.begins <= bindparam("day"), deputies.c.ends >= bindparam("day"))
    return (deputies.c.deputy_id == bindparam("coach"), or_(away, alarm))


_FOR_ANOTHER = (
    select(table.c.id, deputies.c.coach_id, coaches.c.name)
    .select_from(
        table.join(deputies, deputies.c.coach_id == table.c.coach_id).join(coaches, coaches.c.id == deputies.c.coach_id)
    )
    .where(table.c.id == bindparam("client"), *_stood_in_for())
)


@dataclass(frozen=True, slots=True)
class Reached:
    """A client somebody may reach. for_coach: number and name of the coach they stand in for; None for one's own."""

    client: Client
    for_coach: tuple[int, str] | None = None


def reached(conn: Connection, coach_id: int, client_id: int, day: date) -> Reached | None:
    """A client of this coach, or of one they stand in for; None for anybody else's. A deputy may read the card, write,
    and deal with what is flagged, and nothing else: whatever changes the client goes through `client`."""
    own = client(conn, coach_id, client_id)
    if own is not None:
        return Reached(own)
    r = conn.execute(_FOR_ANOTHER, {"coach": coach_id, "client": client_id, "day": day}).one_or_none()
    if r is None:
        return None
    theirs = client(conn, r.coach_id, client_id)
    return None if theirs is None else Reached(theirs, (r.coach_id, r.name))


def client(conn: Connection, coach_id: int, client_id: int) -> Client | None:
    """A client of this coach; None for another coach's client, or if there is none."""
    r = conn.execute(_ONE, {"coach": coach_id, "client": client_id}).one_or_none()
    return None if r is None else clients.client_of(r)


_ALARMED = exists().where(
    flags.c.client_id == table.c.id, flags.c.severity == Severity.URGENT.value, flags.c.cleared_at.is_(None)
)
_NAMES = (
    select(table.c.id, table.c.name, table.c.called, table.c.birth_year)
    .where(*_mine(), or_(table.c.status != Status.LEFT.value, _ALARMED))
    .order_by(table.c.id)
)


def names(conn: Connection, coach_id: int) -> dict[int, str]:
    """What a coach's clients are called, by number: as the coach chose, else as they call themselves; two of one name
    are told apart. Those whose care has ended count while something urgent of theirs is open."""
    return distinct_names(_called(conn.execute(_NAMES, {"coach": coach_id})))


def mentioned(conn: Connection, coach_id: int, text: str, language: str) -> tuple[tuple[int, str], ...]:
    """Those of a coach's clients whom a text names, by either name, as (number, what they are called)."""
    rows = conn.execute(_NAMES, {"coach": coach_id}).all()
    called = _called(rows)
    own = [(r.id, r.name) for r in rows if is_whole(r.called, r.name) and r.called]
    found = names_in((*((number, name) for number, name, _ in called), *own), text, language)
    told_apart = distinct_names(called) if found else {}
    return tuple((number, told_apart[number]) for number in dict.fromkeys(found))


def _called(rows: Iterable[Any]) -> list[tuple[int, str, int | None]]:
    return [
        (
            r.id,
            (is_whole(r.called) and r.called) or (r.name if is_whole(r.name) else ""),
            r.birth_year if is_whole(r.birth_year) else None,
        )
        for r in rows
    ]


def everybody(conn: Connection, coach_id: int) -> tuple[Client, ...]:
    """A coach's clients by name, including those who left; one with a corrupt row is not `whole`."""
    found = (clients.shown(r) for r in conn.execute(_ALL, {"coach": coach_id}))
    return tuple(sorted(found, key=lambda one: one.name))
