"""The state of each chat's conversation."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import datetime

from sqlalchemy import Connection, delete, select

from bot.store.dialect import among, upsert
from bot.store.schema import conversations
from bot.store.sealed import secret

_LOAD = select(conversations.c.chat_id, conversations.c.state, conversations.c.updated_at).where(
    among(conversations.c.chat_id, "chats")
)


def load(conn: Connection, chats: Sequence[int]) -> dict[int, tuple[str, datetime]]:
    """State (as `codec` text) and last change, for those chats that have one. One query."""
    if not chats:
        return {}
    return {r.chat_id: (r.state, r.updated_at) for r in conn.execute(_LOAD, {"chats": list(chats)})}


def save(conn: Connection, states: Mapping[int, tuple[str, datetime, str]]) -> None:
    """Store states, each with the instant of its change and the key of the person it belongs to."""
    rows = [
        {"chat_id": chat, "state": secret(key, state), "updated_at": at} for chat, (state, at, key) in states.items()
    ]
    upsert(conn, conversations, rows, ("chat_id",), ("state", "updated_at"))


def forget(conn: Connection, chat_id: int) -> None:
    conn.execute(delete(conversations).where(conversations.c.chat_id == chat_id))
