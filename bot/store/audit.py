"""Audit log: who did what to whom; ids and codes only, so that nothing needs to be erased."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import Connection, delete, insert

from bot.store.schema import audit

OPERATOR = "operator"


def note(conn: Connection, now: datetime, actor: str, action: str, client_id: int | None = None) -> None:
    """Append one entry. actor: "operator", "coach/3", "client/17"; action: a code such as "joined" or "erased"."""
    conn.execute(insert(audit), {"at": now, "actor": actor, "action": action, "client_id": client_id})


def purge(conn: Connection, before: datetime) -> int:
    """Delete entries older than an instant; return how many."""
    return conn.execute(delete(audit).where(audit.c.at < before)).rowcount
