"""Who did what to whom, in numbers and codes only: nothing here need ever be erased."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import Connection, delete, insert

from bot.store.schema import audit

OPERATOR = "operator"


def note(conn: Connection, now: datetime, actor: str, action: str, client_id: int | None = None) -> None:
    """Keep one line. actor: "operator", "coach/3", "client/17"; action: a code such as "joined" or "erased"."""
    conn.execute(insert(audit), {"at": now, "actor": actor, "action": action, "client_id": client_id})


def purge(conn: Connection, before: datetime) -> int:
    """Forget lines older than an instant; how many."""
    return conn.execute(delete(audit).where(audit.c.at < before)).rowcount
