"""The sweep: due slots and timers become inbox events, exactly once each.

A sweep is one transaction: the event goes into the inbox under a unique key ("due/<client>/<local date>", "wake/<id>"),
and the client's next instant is set. A sweep that dies has done nothing; concurrent sweeps share the clients
(PostgreSQL) or take turns (SQLite).

After an outage a client's newest slot is asked if it is at most twelve hours late; older ones are recorded as not
asked, which never counts against the client. A slot counts as missed if it has no answer when the next one is asked.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from decimal import Decimal
from typing import Any

from sqlalchemy import Connection

from bot.foundation import log
from bot.store import clients, due, flags, inbox, slots, timers
from bot.store.due import DueClient
from bot.store.inbox import NewEvent
from bot.store.zones import zone_of
from core import schedule
from core.care import Status
from core.dialogue.kit.events import Due, TimerFired
from core.schedule import Lateness, Occurrence
from core.watching.flags import MISSED_SLOTS, Code, Flag, flag

BATCH = 500
AGAIN = timedelta(days=1)
_TICK = timedelta(microseconds=1)

_log = log.get("reminders")


@dataclass
class _Found:
    """What a sweep found and has to write."""

    events: list[NewEvent] = field(default_factory=list)
    changes: dict[int, dict[str, Any]] = field(default_factory=dict)
    asked: list[tuple[int, date, datetime]] = field(default_factory=list)
    not_asked: list[tuple[int, date, datetime]] = field(default_factory=list)
    flags: list[tuple[int, Flag]] = field(default_factory=list)


def sweep(conn: Connection, now: datetime, limit: int = BATCH) -> int:
    """Turn up to `limit` due clients and as many timers into events; return how many were due.

    The caller owns the transaction, and sweeps again at once unless the result is zero.
    """
    found = _Found()
    due_timers = timers.take_due(conn, now, limit)
    for timer in due_timers:
        woke = TimerFired(timer.at, timer.purpose, timer.mark, now - timer.at)
        found.events.append(NewEvent(f"wake/{timer.id}", timer.chat_id, woke))
    clients_due = due.take(conn, now, limit)
    for client in clients_due:
        if client.status is None:  # corrupt: retried daily, without holding up anybody else
            _log.error("a due client cannot be loaded", row=client.id)
            found.changes[client.id] = {"next_due_at": now + AGAIN}
        elif client.status is Status.PAUSED:
            _resume(found, client, now)
        else:
            _come(found, client, now)
    inbox.put(conn, found.events, now)
    slots.asked(conn, found.asked)
    slots.not_asked(conn, found.not_asked)
    flags.raise_(conn, found.flags, now)
    clients.change(conn, found.changes)
    return len(due_timers) + len(clients_due)


def next_at(conn: Connection) -> datetime | None:
    """When the next sweep is needed, perhaps in the past; None if nothing is planned."""
    known = [at for at in (due.next_at(conn), timers.next_at(conn)) if at is not None]
    return min(known, default=None)


def _resume(found: _Found, client: DueClient, now: datetime) -> None:
    """The pause is over; if a slot has passed since, the next sweep asks it."""
    changes: dict[str, Any] = {"status": Status.ACTIVE.value, "paused_until": None}
    if client.slot is None:
        changes |= {"next_due_at": None, "next_due_day": None}
    else:
        zone = zone_of(client.slot.zone_name)
        coming = schedule.next_due(client.slot, zone, client.due_at - _TICK)
        changes |= {"next_due_at": coming.at, "next_due_day": coming.day}
    # an unanswered question from before the pause is not missed because of it
    found.changes[client.id] = changes | {"asked": None}


def _come(found: _Found, client: DueClient, now: datetime) -> None:
    """A client's slot is due, perhaps several since the last sweep."""
    if client.status is not Status.ACTIVE or client.slot is None:
        found.changes[client.id] = {"next_due_at": None, "next_due_day": None}
        return
    zone = zone_of(client.slot.zone_name)
    come = list(schedule.instants(client.slot, zone, client.due_at - _TICK, now))
    coming = schedule.next_due(client.slot, zone, now)
    changes: dict[str, Any] = {"next_due_at": coming.at, "next_due_day": coming.day}
    asking = _to_ask(client, come, now)
    found.not_asked += [(client.id, one.day, one.at) for one in come if one is not asking]
    if asking is not None and client.chat_id is not None:
        event = Due(asking.at, asking.day, now - asking.at)
        found.events.append(NewEvent(f"due/{client.id}/{asking.day.isoformat()}", client.chat_id, event))
        found.asked.append((client.id, asking.day, asking.at))
        missed = client.missed + _unanswered(client)
        changes |= {"asked": asking.day, "missed": missed}
        if missed >= MISSED_SLOTS:
            found.flags.append((client.id, flag(Code.MISSED_CHECK_INS, now, missed=Decimal(missed))))
    found.changes[client.id] = changes


def _to_ask(client: DueClient, come: list[Occurrence], now: datetime) -> Occurrence | None:
    """The newest slot, if it is not too late and the client can be asked."""
    if not come or client.chat_id is None or not client.reachable:
        return None
    newest = come[-1]
    return None if schedule.late_policy(now - newest.at) is Lateness.NOT_ASKED else newest


def _unanswered(client: DueClient) -> bool:
    """Whether the slot before this one was asked and got no answer."""
    return client.asked is not None and (client.answered is None or client.answered < client.asked)
