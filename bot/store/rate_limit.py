"""The rate limits shared by all workers, stored as the instant at which the next send is allowed.

    "all"          every message. Sends are 1/rate apart; a worker reserves several at once
    "chat/<id>"    one private chat.  BURST at once, then `chat_rate` a second
    "group/<id>"   one group. Evenly spaced, so that no window of a minute exceeds its limit

One row per limit (a generic cell rate algorithm); a quiet chat costs nothing, because `forget` drops its row. A clock
that runs ahead can make the others wait, but never lets all together exceed a limit.

Every function runs in the caller's transaction; on PostgreSQL the row of "all" is locked, so workers take turns.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta
from math import ceil

from sqlalchemy import Connection, delete, select

from bot.store.dialect import among, insert_new, upsert
from bot.store.schema import pace

ALL = "all"
BURST = 3  # messages one turn may send at once; the platform allows short bursts
_SOME_TIME_AGO = datetime.fromisoformat("2020-01-01T00:00:00+00:00")

_all = select(pace.c.free_at).where(pace.c.key == ALL).with_for_update()
_some = select(pace.c.key, pace.c.free_at).where(among(pace.c.key, "keys"))


@dataclass(frozen=True, slots=True)
class Rates:
    """overall, chat: messages a second; group: messages a minute."""

    overall: float = 28.0
    chat: float = 1.0
    group: float = 20.0

    @property
    def apart(self) -> timedelta:
        """The interval between two sends, rounded up so that no second has too many."""
        return timedelta(microseconds=ceil(1_000_000 / self.overall))


@dataclass(frozen=True, slots=True)
class Room:
    """How many messages may be sent soon, and when the first may."""

    first: datetime
    count: int


def room(conn: Connection, now: datetime, within: timedelta, rates: Rates) -> Room:
    """How many sends are allowed from `now` until `now + within`. Reserve those used with `take`, in the same
    transaction."""
    row = conn.execute(_all).first()
    if row is None:
        insert_new(conn, pace, [{"key": ALL, "free_at": _SOME_TIME_AGO}], ("key",))
        row = conn.execute(_all).one()
    first = max(row.free_at, now)
    left = now + within - first
    return Room(first, 0 if left <= timedelta(0) else -(-left // rates.apart))


def take(conn: Connection, given: Room, count: int, rates: Rates) -> None:
    """Reserve `count` of the sends that `room` allowed: the n-th (from 0) is at `first + n / overall`."""
    if count:
        _put(conn, {ALL: given.first + count * rates.apart})


def halt(conn: Connection, until: datetime) -> None:
    """Stop all sending until `until`, because the platform told one of the workers to wait."""
    row = conn.execute(_all).first()
    if row is None or row.free_at < until:
        _put(conn, {ALL: until})


def chats_free(conn: Connection, chats: Iterable[tuple[int, bool]], rates: Rates) -> dict[int, datetime]:
    """When each chat (id, whether a group) is allowed its next send; chats not returned are free now."""
    keys = {_key(chat, group): (chat, group) for chat, group in chats}
    found = {}
    for row in conn.execute(_some, {"keys": list(keys)}) if keys else ():
        chat, group = keys[row.key]
        found[chat] = row.free_at - _slack(group, rates)
    return found


def take_chats(conn: Connection, sends: Iterable[tuple[int, bool, datetime]], rates: Rates) -> None:
    """Record one send to each chat (id, whether a group, when)."""
    at = {_key(chat, group): (group, when) for chat, group, when in sends}
    if not at:
        return
    known = {row.key: row.free_at for row in conn.execute(_some, {"keys": list(at)})}
    _put(
        conn,
        {key: max(known.get(key, when), when) + _apart(group, rates) for key, (group, when) in at.items()},
    )


def forget(conn: Connection, now: datetime) -> int:
    """Drop the rows of chats that have been free for a while; return how many."""
    old = delete(pace).where(pace.c.free_at < now - timedelta(minutes=1), pace.c.key != ALL)
    return conn.execute(old).rowcount


def forget_chat(conn: Connection, chat: int) -> None:
    """Drop the row of a private chat: somebody was erased."""
    conn.execute(delete(pace).where(pace.c.key == _key(chat, False)))


def _key(chat: int, group: bool) -> str:
    return f"group/{chat}" if group else f"chat/{chat}"


def _apart(group: bool, rates: Rates) -> timedelta:
    return timedelta(seconds=60 / rates.group if group else 1 / rates.chat)


def _slack(group: bool, rates: Rates) -> timedelta:
    return timedelta(0) if group else (BURST - 1) * _apart(group, rates)


def _put(conn: Connection, at: dict[str, datetime]) -> None:
    upsert(conn, pace, [{"key": key, "free_at": when} for key, when in at.items()], ("key",), ("free_at",))
