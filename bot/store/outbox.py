"""Outgoing messages, in order within a chat, and their outcome.

A row's place in its chat is (due_at, id). Only the first pending row of a chat can be claimed, so a row that waits for
a retry, or is being sent, holds back those after it. `ready_at` is when a row may be claimed: when it is due, when a
retry is scheduled, or when the lease of a dead worker expires.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum
from functools import lru_cache
from typing import Any
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from sqlalchemy import (
    ColumnElement,
    Connection,
    Text,
    and_,
    bindparam,
    delete,
    exists,
    func,
    literal_column,
    or_,
    select,
    type_coerce,
    update,
)

from bot.foundation.reader import Reader
from bot.store import codec, owners
from bot.store.dialect import among, insert_new, skip_locked
from bot.store.erasures import HELD
from bot.store.keyring import of_connection
from bot.store.schema import clients, outbox, people
from bot.store.sealed import opened, secret
from core.care import Units
from core.dialogue.kit.effects import Rows
from core.quantity import Unit

LASTING = "lasting"  # the `ref` of a message that waits for its reader
ANSWER, BULK = 0, 1  # priorities: somebody is waiting; everything else


class DeliveryKind(StrEnum):
    """The kind of a delivery."""

    MESSAGE = "message"  # render and send `message`
    DROP_BUTTONS = "drop_buttons"  # remove the buttons of the platform's message `ref`
    DELETE = "delete"  # delete the message that was sent for the occasion `ref`; `message` says who is to hear of it
    DATA = "data"  # send the person everything stored about them; gathered at delivery, never stored here
    FAREWELL = "farewell"  # a last message to an erased person: sent once nothing of them is left, then deleted


@dataclass(frozen=True, slots=True)
class Outgoing:
    """Something to send. occasion: idempotency key, so that it is sent once. language: if there is no person with one.

    message: a value of `core.dialogue`, None if the kind needs none. about: the client a message to staff is about.
    due_at: its place in the chat; ready_at: from when it may be sent, if different. lasting: it waits while its reader
    cannot be reached, and is sent when they come back.
    """

    chat_id: int
    message: object
    due_at: datetime
    choices: Rows = ()
    person_id: int | None = None
    occasion: str | None = None
    kind: DeliveryKind = DeliveryKind.MESSAGE
    ref: str = ""
    is_group: bool = False
    language: str | None = None
    priority: int = ANSWER
    about: int | None = None
    ready_at: datetime | None = None
    lasting: bool = False


@dataclass(frozen=True, slots=True)
class ClaimedMessage:
    """A claimed row. message, choices: as `codec` text (equal messages are equal text, so a rendering can be cached);
    "" if none. attempts: how often it was claimed before."""

    id: int
    kind: DeliveryKind
    chat_id: int
    person_id: int | None
    is_group: bool
    reader: Reader
    message: str
    choices: str
    ref: str
    attempts: int
    occasion: str | None
    due_at: datetime
    reachable: bool
    priority: int = ANSWER


def row(out: Outgoing, now: datetime) -> dict[str, Any]:
    """An outbox row, for `put_rows`."""
    return {
        "occasion": out.occasion,
        "kind": out.kind.value,
        "chat_id": out.chat_id,
        "person_id": out.person_id,
        "is_group": out.is_group,
        "language": out.language,
        "about": out.about,
        "message": None if out.message is None else codec.dump_for_soon(out.message),
        "choices": codec.dump_rows(out.choices) if out.choices else None,
        "ref": LASTING if out.lasting else out.ref,
        "priority": out.priority,
        "due_at": out.due_at,
        "ready_at": out.ready_at or out.due_at,
        "created_at": now,
    }


def put(conn: Connection, outgoing: Sequence[Outgoing], now: datetime) -> int:
    """Queue messages in the order given, skipping those whose occasion already exists; return how many were queued."""
    return put_rows(conn, [row(out, now) for out in outgoing])


def put_rows(conn: Connection, rows: Sequence[dict[str, Any]]) -> int:
    """`put` for rows already made."""
    if not rows:
        return 0
    about = owners.of_clients(conn, [row["about"] for row in rows if row["about"] is not None])
    to = owners.of_people(conn, [row["person_id"] for row in rows if row["person_id"] is not None])
    sealed = []
    for row in rows:
        key, is_client = to.get(row["person_id"] or 0, ("", False))
        key = about.get(row["about"] or 0, key if is_client else "")
        if not key:  # to a stranger or a group, or to staff, of several people perhaps
            key = owners.passing(conn, row["created_at"])
        sealed.append(row | {"message": secret(key, row["message"]), "choices": secret(key, row["choices"])})
    return insert_new(conn, outbox, sealed, ("occasion",))


_pending = outbox.c.status == literal_column("'pending'")  # a literal, or the partial index is not used
_before = outbox.alias("before")
_first_of_chat = ~exists().where(
    _before.c.status == literal_column("'pending'"),
    _before.c.chat_id == outbox.c.chat_id,
    or_(
        _before.c.due_at < outbox.c.due_at,
        and_(_before.c.due_at == outbox.c.due_at, _before.c.id < outbox.c.id),
    ),
)
_READY = skip_locked(
    select(
        outbox.c.id,
        outbox.c.kind,
        outbox.c.chat_id,
        outbox.c.person_id,
        outbox.c.is_group,
        func.coalesce(people.c.language, outbox.c.language, "en").label("language"),
        func.coalesce(clients.c.zone_name, people.c.zone_name).label("zone_name"),
        clients.c.mass_unit,
        clients.c.length_unit,
        type_coerce(outbox.c.message, Text).label("message"),
        type_coerce(outbox.c.choices, Text).label("choices"),
        outbox.c.ref,
        outbox.c.attempts,
        outbox.c.occasion,
        outbox.c.due_at,
        outbox.c.priority,
        func.coalesce(people.c.reachable, literal_column("true")).label("reachable"),
    )
    .select_from(
        outbox.outerjoin(people, people.c.id == outbox.c.person_id).outerjoin(
            clients, clients.c.person_id == outbox.c.person_id
        )
    )
    .where(_pending, outbox.c.ready_at <= bindparam("now"), _first_of_chat)
    .order_by(outbox.c.priority, outbox.c.ready_at, outbox.c.id)
    .limit(bindparam("limit")),
    of=outbox,
)
_LEASE = (
    update(outbox)
    .where(among(outbox.c.id, "rows"))
    .values(ready_at=bindparam("until"), claimed_by=bindparam("worker"), attempts=outbox.c.attempts + 1)
)


def claim(conn: Connection, worker: str, now: datetime, lease: timedelta, limit: int) -> list[ClaimedMessage]:
    """Claim the first ready row of up to `limit` chats, replies before bulk. They are this worker's until the lease
    expires, then anybody's again, which can send a message twice but loses none."""
    rows = conn.execute(_READY, {"now": now, "limit": limit}).all()
    if rows:
        until = now + lease
        conn.execute(_LEASE, {"rows": [r.id for r in rows], "until": until, "worker": worker})
    refs = _refs(conn, rows)
    ring = of_connection(conn)
    ring.look_up(r.message or r.choices for r in rows)
    return [
        ClaimedMessage(
            r.id,
            DeliveryKind(r.kind),
            r.chat_id,
            r.person_id,
            r.is_group,
            _reader(r.language, r.mass_unit, r.length_unit, r.zone_name),
            opened(ring, "outbox.message", r.message) if r.message else "",
            opened(ring, "outbox.choices", r.choices) if r.choices else "",
            refs.get(r.id, r.ref),
            r.attempts,
            r.occasion,
            r.due_at,
            bool(r.reachable),
            r.priority,
        )
        for r in rows
    ]


@lru_cache(maxsize=1024)
def _reader(language: str, mass: str | None, length: str | None, zone: str | None) -> Reader:
    """Kept, because thousands read alike. UTC for a zone missing from the tz database: better an odd time than no
    message."""
    units = Units(Unit(mass), Unit(length)) if mass and length else Units()
    try:
        return Reader(language, units, ZoneInfo(zone or "UTC"))
    except (ZoneInfoNotFoundError, ValueError):
        return Reader(language, units, ZoneInfo("UTC"))


_SENT_AS = select(outbox.c.occasion, outbox.c.platform_message_id).where(among(outbox.c.occasion, "occasions"))


def _refs(conn: Connection, rows: Sequence[Any]) -> dict[int, str]:
    """For orders to delete: the platform's message, "" if none was sent. No query where there are none."""
    wanted = {r.id: r.ref for r in rows if r.kind == DeliveryKind.DELETE.value}
    if not wanted:
        return {}
    sent = {r.occasion: r.platform_message_id for r in conn.execute(_SENT_AS, {"occasions": list(wanted.values())})}
    return {row: sent.get(occasion) or "" for row, occasion in wanted.items()}


def unsay(conn: Connection, occasion: str) -> bool:
    """Drop the message of an occasion if it has not been sent and nobody is sending it; return whether it was so."""
    waits = or_(and_(_pending, outbox.c.claimed_by.is_(None)), outbox.c.status == "held")
    return conn.execute(delete(outbox).where(outbox.c.occasion == occasion, waits)).rowcount > 0


_SENT = (
    update(outbox)
    .where(outbox.c.id == bindparam("row"))
    .values(
        status="sent",
        sent_at=bindparam("at"),
        platform_message_id=bindparam("sent_as"),
        message=None,
        choices=None,
        claimed_by=None,
        error=None,
    )
)


def mark_sent(conn: Connection, sent: Sequence[tuple[int, str | None]], now: datetime) -> None:
    """Mark rows as sent, each with the platform's message id, if any. Their content is deleted."""
    if sent:
        conn.execute(_SENT, [{"row": row, "sent_as": sent_as, "at": now} for row, sent_as in sent])


# Only rows this worker still holds: after a lost answer, a row may belong to another worker by now.
_held = and_(_pending, outbox.c.claimed_by == bindparam("worker"))
_RETRY = (
    update(outbox)
    .where(outbox.c.id == bindparam("row"), _held)
    .values(ready_at=bindparam("at"), claimed_by=None, error=bindparam("why"))
)
_BACK = (
    update(outbox)
    .where(outbox.c.id == bindparam("row"), _held)
    .values(ready_at=bindparam("until"), claimed_by=None, attempts=outbox.c.attempts - 1)
)


def mark_retry(conn: Connection, worker: str, row: int, at: datetime, error: str = "", *, done: int = 0) -> None:
    """Schedule a retry from `at` on, which holds back the rest of the chat. done: number of parts already sent."""
    again = _RETRY.values(ref=str(done)) if done else _RETRY
    conn.execute(again, {"row": row, "worker": worker, "at": at, "why": error or None})


def hand_back(conn: Connection, worker: str, rows: Sequence[tuple[int, datetime]]) -> None:
    """Release claimed rows that were not tried, from their instant on; no attempt is counted."""
    if rows:
        conn.execute(_BACK, [{"row": row, "worker": worker, "until": until} for row, until in rows])


def release(conn: Connection, worker: str, now: datetime, but: Collection[int] = ()) -> int:
    """Release what a worker still holds, except the rows `but`; return how many."""
    free = update(outbox).where(_held, outbox.c.id.not_in(but)).values(ready_at=now, claimed_by=None)
    return conn.execute(free, {"worker": worker}).rowcount


_UNSAY = delete(outbox).where(
    _pending,
    outbox.c.chat_id == bindparam("chat"),
    outbox.c.due_at > bindparam("at"),
    outbox.c.claimed_by.is_(None),
)


def drop_delayed(conn: Connection, chats: Mapping[int, datetime]) -> None:
    """Drop each chat's messages due after its instant, unless already being sent."""
    if chats:
        conn.execute(_UNSAY, [{"chat": chat, "at": at} for chat, at in chats.items()])


def forget(conn: Connection, rows: Sequence[int]) -> None:
    """Delete rows that were for an erased person."""
    if rows:
        conn.execute(delete(outbox).where(outbox.c.id.in_(rows)))


def mark_failed(conn: Connection, row: int, now: datetime, error: str) -> None:
    """Mark a row as failed for good. error: a code, no content. Its content is deleted."""
    conn.execute(update(outbox).where(outbox.c.id == row).values(_failed(now, error)))


def _failed(now: datetime, error: str) -> dict[str, object]:
    return {
        "status": "failed",
        "sent_at": now,
        "error": error,
        "claimed_by": None,
        "message": None,
        "choices": None,
    }


def hold(conn: Connection, row: int, now: datetime, error: str) -> None:
    """A row whose reader cannot be reached: it waits for them if it lasts, else it has failed."""
    _hold(conn, outbox.c.id == row, now, error)


def hold_chat(conn: Connection, chat_id: int, now: datetime, error: str) -> None:
    """The same for everything pending for a chat that blocked us."""
    _hold(conn, and_(outbox.c.chat_id == chat_id, _pending), now, error)


def _hold(conn: Connection, which: ColumnElement[bool], now: datetime, error: str) -> None:
    waits = update(outbox).where(which, outbox.c.ref == LASTING)
    conn.execute(waits.values(status="held", error=error, claimed_by=None))
    conn.execute(update(outbox).where(which, outbox.c.ref != LASTING).values(_failed(now, error)))


def deliver_held(conn: Connection, chat_id: int, now: datetime) -> int:
    """The reader is back: send what waited for them, in its old order; return how many."""
    held = update(outbox).where(outbox.c.chat_id == chat_id, outbox.c.status == "held")
    return conn.execute(held.values(status="pending", ready_at=now, attempts=0, error=None)).rowcount


def move_chat(conn: Connection, old: int, new: int) -> int:
    """Move pending rows to a group's new chat after it became a supergroup; return how many."""
    return conn.execute(update(outbox).where(outbox.c.chat_id == old, _pending).values(chat_id=new)).rowcount


_NEXT = (
    select(outbox.c.ready_at)
    .where(_pending, _first_of_chat, outbox.c.ready_at < HELD)
    .order_by(outbox.c.ready_at)
    .limit(1)
)


def next_due(conn: Connection) -> datetime | None:
    """When the next row can be claimed, perhaps in the past; None if nothing is pending."""
    return conn.execute(_NEXT).scalar_one_or_none()


def waiting(conn: Connection) -> int:
    """Number of pending rows, due or not."""
    return conn.execute(select(func.count()).select_from(outbox).where(_pending)).scalar_one()


_ABOUT = (
    select(outbox.c.about)
    .where(
        outbox.c.about.is_not(None),
        outbox.c.chat_id == bindparam("chat"),
        outbox.c.platform_message_id == bindparam("ref"),
    )
    .order_by(outbox.c.id.desc())
    .limit(1)
)


def about(conn: Connection, chat_id: int, ref: str) -> int:
    """The client whom a message of this chat is about; 0 if it is about none, or was sent too long ago."""
    return conn.execute(_ABOUT, {"chat": chat_id, "ref": ref}).scalar_one_or_none() or 0


_TOLD = (
    select(outbox.c.chat_id)
    .where(among(outbox.c.chat_id, "chats"), outbox.c.created_at > bindparam("since"))
    .distinct()
)


def written_to(conn: Connection, chats: Sequence[int], since: datetime) -> frozenset[int]:
    """Those of these chats for which anything was queued after an instant."""
    return frozenset(conn.execute(_TOLD, {"chats": list(chats), "since": since}).scalars()) if chats else frozenset()


def purge_strangers(conn: Connection, before: datetime) -> int:
    """Delete messages to strangers queued before an instant; return how many."""
    old = delete(outbox).where(
        outbox.c.created_at < before,
        outbox.c.status != "pending",
        outbox.c.person_id.is_(None),
        outbox.c.occasion.is_(None),
        outbox.c.is_group.is_(False),
    )
    return conn.execute(old).rowcount


def purge(conn: Connection, before: datetime) -> int:
    """Delete sent and failed rows queued before an instant; return how many. An occasion is deleted with its row, so
    `before` must be earlier than any occasion that could recur."""
    old = delete(outbox).where(outbox.c.created_at < before, outbox.c.status != "pending")
    return conn.execute(old).rowcount
