"""Encouragements and openings sent to a client, so that none is repeated within eight weeks."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

from sqlalchemy import Connection, bindparam, delete, select

from bot.store.dialect import among, upsert
from bot.store.schema import said

REMEMBERED = timedelta(weeks=8)

_LOAD = select(said.c.client_id, said.c.key).where(among(said.c.client_id, "clients"), said.c.at > bindparam("since"))


def load(conn: Connection, clients: Sequence[int], now: datetime) -> dict[int, frozenset[str]]:
    """The recent keys of each of these clients. One query."""
    found: dict[int, set[str]] = {}
    for r in conn.execute(_LOAD, {"clients": list(clients), "since": now - REMEMBERED}):
        found.setdefault(r.client_id, set()).add(r.key)
    return {client: frozenset(keys) for client, keys in found.items()}


def put(conn: Connection, heard: Sequence[tuple[int, str]], now: datetime) -> None:
    """Record (client, key) pairs as used now."""
    rows = [{"client_id": client, "key": key, "at": now} for client, key in dict.fromkeys(heard)]
    upsert(conn, said, rows, ("client_id", "key"), ("at",))


def purge(conn: Connection, now: datetime) -> int:
    """Delete keys that may be used again; return how many."""
    return conn.execute(delete(said).where(said.c.at <= now - REMEMBERED)).rowcount
