"""Goals: one per measure."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from sqlalchemy import Connection, bindparam, delete, select

from bot.store import owners
from bot.store.dialect import among, upsert
from bot.store.schema import goals
from bot.store.sealed import secret
from core.dialogue.client.facts import GoalFact

_LOAD = select(goals).where(among(goals.c.client_id, "clients")).order_by(goals.c.measure)


def load(conn: Connection, client_ids: Iterable[int]) -> dict[int, tuple[GoalFact, ...]]:
    """The goals of clients. One query."""
    found: dict[int, list[GoalFact]] = {}
    for r in conn.execute(_LOAD, {"clients": list(client_ids)}):
        found.setdefault(r.client_id, []).append(GoalFact(r.measure, r.target, r.by, r.set_at))
    return {client: tuple(several) for client, several in found.items()}


def put(conn: Connection, wanted: Sequence[tuple[int, GoalFact]]) -> None:
    """Set goals, as (client, goal), replacing those for the same measure. No two may be for the same one."""
    keys = owners.of_clients(conn, [client for client, _ in wanted])
    rows = [
        {
            "client_id": client,
            "measure": g.measure,
            "target": secret(keys[client], g.target),
            "by": g.by,
            "set_at": g.set_at,
        }
        for client, g in wanted
    ]
    upsert(conn, goals, rows, ("client_id", "measure"), ("target", "by", "set_at"))


_DROP = delete(goals).where(goals.c.client_id == bindparam("client"), goals.c.measure == bindparam("of"))


def drop(conn: Connection, unwanted: Sequence[tuple[int, str]]) -> None:
    """Drop goals, as (client, measure)."""
    if unwanted:
        conn.execute(_DROP, [{"client": client, "of": measure} for client, measure in unwanted])
