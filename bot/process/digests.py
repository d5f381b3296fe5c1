"""The coaches' sweep: a due digest becomes an event in the coach's inbox, exactly once.

As for clients' slots: one transaction, a unique key ("digest/<coach>/<date>"), and the next instant set with it. After
an outage only the newest digest is sent, however late: it contains everything older ones would.
"""

from __future__ import annotations

from datetime import datetime, timedelta

from sqlalchemy import Connection

from bot.store import deputies, inbox, staff
from bot.store.inbox import NewEvent
from bot.store.zones import zone_of
from core import schedule
from core.dialogue.kit.events import Due

BATCH = 200
_TICK = timedelta(microseconds=1)


def sweep(conn: Connection, now: datetime, limit: int = BATCH) -> int:
    """Turn up to `limit` due digests into events; return how many were due. The caller owns the transaction."""
    due = staff.due(conn, now, limit)
    events = []
    for coach in due:
        if coach.slot is None:
            staff.set_next(conn, coach.id, None)
            continue
        zone = zone_of(coach.slot.zone_name)
        come = list(schedule.instants(coach.slot, zone, coach.due_at - _TICK, now))
        staff.set_next(conn, coach.id, schedule.next_due(coach.slot, zone, now).at)
        if come and coach.chat_id is not None:
            newest = come[-1]
            key = f"digest/{coach.id}/{newest.day.isoformat()}"
            events.append(NewEvent(key, coach.chat_id, Due(newest.at, newest.day, now - newest.at)))
        if come and (stands_in := deputies.away(conn, coach.id, come[-1].day)) is not None:
            deputy, chat_id = stands_in
            key = f"digest/{coach.id}/{come[-1].day.isoformat()}/{deputy}"
            late = now - come[-1].at
            events.append(NewEvent(key, chat_id, Due(come[-1].at, come[-1].day, late, instead_of=coach.id)))
    inbox.put(conn, events, now)
    return len(due)


def next_at(conn: Connection) -> datetime | None:
    """When the next digest is due, perhaps in the past; None if none is."""
    return staff.next_digest(conn)
