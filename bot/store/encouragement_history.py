"""Encouragements and openings a client has heard, so that none repeats itself within eight weeks."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta

from sqlalchemy import Connection, bindparam, delete, select

from bot.store.dialect import among, upsert
from bot.store.schema import said

REMEMBERED = timedelta(weeks=8)

_LOAD = select(said.c.client_id, said.c.key).where(among(said.c.client_id, "clients"), said.c.at > bindparam("since"))


def load(conn: Connection, clients: Sequence[int], now: datetime) -> dict[int, frozenset[str]]:
    """Return what each of these clients has heard lately. One query."""
    found: dict[int, set[str]] = {}
    for r in conn.execute(_LOAD, {"clients": list(clients), "since": now - REMEMBERED}):
        found.setdefault(r.client_id, set()).add(r.key)
    return {client: frozenset(keys) for client, keys in found.items()}


def put(conn: Connection, heard: Sequence[tuple[int, str]], now: datetime) -> None:
    """Remember (client, key) pairs as heard now."""
    rows = [{"client_id": client, "key": key, "at": now} for client, key in dict.fromkeys(heard)]
    upsert(conn, said, rows, ("client_id", "key"), ("at",))


def purge(conn: Connection, now: datetime) -> int:
    """Forget what may be said again; how many."""
    return conn.execute(delete(said).where(said.c.at <= now - REMEMBERED)).rowcount
