"""Updates that could not be read: set aside with their bytes, for a person to look at. Nobody waits for them.

They hold what somebody sent, so they go when that person is erased, and after a while in any case.
"""

from __future__ import annotations

from base64 import b64decode, b64encode
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import Connection, delete, func, select

from bot.store import owners
from bot.store.dialect import insert_new
from bot.store.schema import unread
from bot.store.sealed import is_whole, secret

MOST = 10_000  # rows; whatever goes wrong on the other side, the disk does not fill with it


@dataclass(frozen=True, slots=True)
class Unread:
    """An update as a transport hands it in. key: None where it says no number.  chat_id: where it names a chat."""

    key: str | None
    chat_id: int | None
    body: bytes
    why: str


def put(conn: Connection, aside: Sequence[Unread], now: datetime) -> int:
    """Keep updates, up to `MOST`; those whose key is there already are left out. How many are new."""
    if not aside:
        return 0
    room = MOST - count(conn)
    keys = owners.of_chats(conn, [one.chat_id for one in aside if one.chat_id is not None])
    nobodys = owners.passing(conn, now)
    rows = [
        {
            "key": one.key,
            "chat_id": one.chat_id,
            "received_at": now,
            "body": secret(keys.get(one.chat_id or 0, nobodys), b64encode(one.body).decode()),
            "why": one.why,
        }
        for one in aside[: max(room, 0)]
    ]
    return insert_new(conn, unread, rows, ("key",))


def kept(conn: Connection, limit: int = 100) -> tuple[Unread, ...]:
    """Return the newest, oldest first."""
    rows = conn.execute(select(unread).order_by(unread.c.id.desc()).limit(limit)).all()
    return tuple(Unread(r.key, r.chat_id, _bytes(r.body), r.why) for r in reversed(rows))


def _bytes(body: str | None) -> bytes:
    return b"" if body is None or not is_whole(body) else b64decode(body)


def count(conn: Connection) -> int:
    """How many there are to look at."""
    return conn.execute(select(func.count()).select_from(unread)).scalar_one()


def forget(conn: Connection, chat_id: int) -> int:
    """Drop those of a chat, and those that name it in their bytes; how many."""
    said = str(chat_id).encode()
    gone = [
        r.id
        for r in conn.execute(select(unread.c.id, unread.c.chat_id, unread.c.body))
        if r.chat_id == chat_id or (r.chat_id is None and said in _bytes(r.body))
    ]
    if gone:
        conn.execute(delete(unread).where(unread.c.id.in_(gone)))
    return len(gone)


def purge(conn: Connection, before: datetime) -> int:
    """Drop those that came in before an instant; how many."""
    return conn.execute(delete(unread).where(unread.c.received_at < before)).rowcount
