"""The only way for a coach to reach a client's data.

Every command, button and link of a coach is authorised here, each time anew: a button on an old message stops working
once the client has moved to another coach, left the caseload or been erased.
"""

from __future__ import annotations

from sqlalchemy import Connection, Select, bindparam
from sqlalchemy.sql.elements import ColumnElement

from bot.store import clients
from bot.store.clients import Client
from bot.store.schema import clients as table


def _mine() -> tuple[ColumnElement[bool], ...]:
    return (table.c.coach_id == bindparam("coach"),)


_ALL: Select[tuple[object, ...]] = clients.ALL.where(*_mine()).order_by(table.c.id)
_ONE: Select[tuple[object, ...]] = clients.ALL.where(table.c.id == bindparam("client"), *_mine())


def client(conn: Connection, coach_id: int, client_id: int) -> Client | None:
    """A client of this coach; None for another coach's client, or if there is none."""
    r = conn.execute(_ONE, {"coach": coach_id, "client": client_id}).one_or_none()
    return None if r is None else clients.client_of(r)


def everybody(conn: Connection, coach_id: int) -> tuple[Client, ...]:
    """A coach's clients by name, including those who left; one with a corrupt row is not `whole`."""
    found = (clients.shown(r) for r in conn.execute(_ALL, {"coach": coach_id}))
    return tuple(sorted(found, key=lambda one: one.name))
