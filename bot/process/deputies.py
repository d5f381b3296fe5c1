"""The deputies' sweep: an alarm that a coach has not acknowledged in time goes to whoever stands in for them.

One transaction: the message goes into the deputy's outbox, and the flag is noted as passed on, so that it is passed on
once. If it happens again, it waits anew.
"""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import Connection

from bot.store import caseload, deputies, outbox
from bot.store.outbox import Outgoing
from core.dialogue.staff.messages import DeputyAlarm
from core.dialogue.staff.step import about_flag


def sweep(conn: Connection, now: datetime) -> int:
    """Pass on every alarm whose time has come; return how many. The caller owns the transaction."""
    due = [one for one in deputies.waiting(conn) if one.due_at <= now]
    if not due:
        return 0
    called = {coach: caseload.names(conn, coach) for coach in {one.coach_id for one in due}}
    outbox.put(
        conn,
        [
            Outgoing(
                one.chat_id,
                DeputyAlarm(
                    one.client_id,
                    called[one.coach_id].get(one.client_id, one.name),
                    one.coach_name,
                    int(one.waited.total_seconds() // 60),
                    one.flag.code,
                    one.flag.measure,
                    one.flag.evidence,
                    one.flag.since,
                ),
                now,
                about_flag(one.client_id, one.flag.code, now),
                one.person_id,
                about=one.client_id,
                lasting=True,
            )
            for one in due
        ],
        now,
    )
    deputies.escalated(conn, [one.flag.id for one in due], now)
    return len(due)


def next_at(conn: Connection) -> datetime | None:
    """When the next alarm goes to a deputy; None if none waits."""
    return min((one.due_at for one in deputies.waiting(conn)), default=None)
