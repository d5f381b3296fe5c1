"""Events not handled yet. A row is committed before its update is confirmed.

Handled oldest first within a chat, chats concurrently: a row waits while an older one of its chat is pending, even if
that one waits for a retry. A row set aside blocks nobody. Claimed rows are locked until the transaction ends, so a
worker that dies releases them at once, with nothing done.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import Connection, bindparam, delete, exists, func, literal_column, or_, select, update

from bot.store import codec, owners
from bot.store.dialect import among, by_index, insert_new, skip_locked
from bot.store.schema import inbox
from bot.store.sealed import secret
from core.dialogue.kit.events import Event

TRIES = 3


@dataclass(frozen=True, slots=True)
class NewEvent:
    """An event from a transport, a sweep or a coach's turn.

    event: the instants in it are in UTC.
    key: permanently unique: "telegram/<update>", "due/<client>/<date>", "wake/<id>", ...
    language, name: hints about the person from the messenger, stored until the row is handled; the name only of a
    stranger, who may be about to join.
    """

    key: str
    chat_id: int
    event: Event
    language: str | None = None
    name: str = ""
    is_group: bool = False


@dataclass(frozen=True, slots=True)
class ClaimedEvent:
    """A claimed row. event: as `codec` text. attempts: how often it has failed before."""

    id: int
    key: str
    chat_id: int
    event: str
    language: str | None
    name: str
    is_group: bool
    attempts: int


def put(conn: Connection, incoming: Sequence[NewEvent], now: datetime) -> int:
    """Store events in the order given, skipping those whose key already exists; return how many are new."""
    if not incoming:
        return 0
    keys = owners.of_chats(conn, [one.chat_id for one in incoming])
    nobodys = owners.passing(conn, now)
    rows = [
        {
            "key": one.key,
            "chat_id": one.chat_id,
            "received_at": now,
            "event": secret(keys.get(one.chat_id, nobodys), codec.dump_to_load(one.event)),
            "language": one.language,
            "name": None if one.chat_id in keys else secret(nobodys, one.name),
            "is_group": one.is_group,
        }
        for one in incoming
    ]
    return insert_new(conn, inbox, rows, ("key",))


_pending = inbox.c.status == literal_column("'pending'")  # a literal, or the partial index is not used
_set_aside = inbox.c.status == literal_column("'set_aside'")
_older = inbox.alias("older")
_OLDEST = skip_locked(
    select(
        inbox.c.id,
        inbox.c.key,
        inbox.c.chat_id,
        inbox.c.event,
        inbox.c.language,
        inbox.c.name,
        inbox.c.is_group,
        inbox.c.attempts,
    )
    .where(
        _pending,
        or_(inbox.c.retry_at.is_(None), inbox.c.retry_at <= bindparam("now")),
        ~exists().where(
            _older.c.status == literal_column("'pending'"),
            _older.c.chat_id == inbox.c.chat_id,
            _older.c.id < inbox.c.id,
        ),
    )
    .order_by(inbox.c.id)
    .limit(bindparam("limit")),
    of=inbox,
)


def claim(conn: Connection, now: datetime, limit: int) -> list[ClaimedEvent]:
    """Claim the oldest pending row of up to `limit` chats that no other worker has locked."""
    by_index(conn)
    rows = conn.execute(_OLDEST, {"now": now, "limit": limit}).all()
    by_index(conn, on=False)
    return [
        ClaimedEvent(r.id, r.key, r.chat_id, r.event or "", r.language, r.name or "", r.is_group, r.attempts)
        for r in rows
    ]


_HANDLED = (
    update(inbox)
    .where(among(inbox.c.id, "rows"))
    .values(status="done", chat_id=0, event=None, language=None, name=None, retry_at=None, error=None)
)


def done(conn: Connection, rows: Sequence[int]) -> None:
    """Mark rows as handled: their content and their chat are deleted, their keys stay."""
    if rows:
        conn.execute(_HANDLED, {"rows": list(rows)})


def forget(conn: Connection, rows: Sequence[int]) -> None:
    """Delete rows from strangers entirely."""
    if rows:
        conn.execute(delete(inbox).where(inbox.c.id.in_(rows)))


_FAILED = (
    update(inbox)
    .where(inbox.c.id == bindparam("row"))
    .values(attempts=inbox.c.attempts + 1, retry_at=bindparam("at"), error=bindparam("why"))
)


def erase(conn: Connection, chat_id: int, client_id: int | None, now: datetime) -> None:
    """Delete what was set aside for an erased person, and the keys that name them; what is pending becomes nobody's."""
    conn.execute(delete(inbox).where(inbox.c.chat_id == chat_id, inbox.c.status == "set_aside"))
    if client_id is not None:
        first, last = f"due/{client_id}/", f"due/{client_id}0"  # "0" follows "/"
        conn.execute(delete(inbox).where(inbox.c.key >= first, inbox.c.key < last, inbox.c.status == "done"))
    nobodys = owners.passing(conn, now)
    rows = conn.execute(
        select(inbox.c.id, inbox.c.event, inbox.c.name).where(inbox.c.chat_id == chat_id, _pending)
    ).all()
    for r in rows:
        anew = {"event": secret(nobodys, r.event), "name": secret(nobodys, r.name)}
        conn.execute(update(inbox).where(inbox.c.id == r.id).values(anew))


def retry_later(conn: Connection, row: int, at: datetime, error: str) -> None:
    """Schedule a retry from `at` on. error: class and code location, no content."""
    conn.execute(_FAILED, {"row": row, "at": at, "why": error})


def set_aside(conn: Connection, row: int, error: str) -> None:
    """Set aside a row that failed too often, for a person to inspect; it no longer blocks its chat."""
    conn.execute(
        update(inbox)
        .where(inbox.c.id == row)
        .values(status="set_aside", attempts=inbox.c.attempts + 1, retry_at=None, error=error)
    )


def put_back(conn: Connection) -> int:
    """Retry every row that was set aside, once the fault is fixed; return how many."""
    again = update(inbox).where(_set_aside).values(status="pending", attempts=0, error=None)
    return conn.execute(again).rowcount


def waiting(conn: Connection) -> int:
    """Number of pending rows."""
    return conn.execute(select(func.count()).select_from(inbox).where(_pending)).scalar_one()


def set_aside_count(conn: Connection) -> int:
    """Number of rows set aside."""
    count = select(func.count()).select_from(inbox).where(_set_aside)
    return conn.execute(count).scalar_one()


def purge(conn: Connection, before: datetime) -> int:
    """Delete the keys of handled rows that arrived before an instant; return how many. A messenger repeats an update
    for at most a day, so keys from weeks ago cannot recur."""
    old = delete(inbox).where(inbox.c.received_at < before, inbox.c.status == "done")
    return conn.execute(old).rowcount
