"""After the clock was put back: what was stored by the clock as it was lies in the future now, and would wait for it.

A clock put forward needs nothing: what is due comes due. What waits by a clock that was wrong is put back by as much as
the newest of it lies ahead, so that it goes at once and in its order. Slots are local dates and times, and stay.
"""

from __future__ import annotations

from datetime import datetime, timedelta

from sqlalchemy import Connection, bindparam, delete, func, select, update

from bot.store.erasures import HELD
from bot.store.schema import inbox, outbox, pace

DOUBT = timedelta(minutes=1)  # by less than that, clocks of several machines may differ

_AHEAD = select(func.max(outbox.c.created_at)).where(
    outbox.c.status == "pending", outbox.c.created_at > bindparam("at")
)
_WAITING = select(outbox.c.id, outbox.c.due_at, outbox.c.ready_at).where(
    outbox.c.status == "pending", outbox.c.created_at > bindparam("at"), outbox.c.ready_at < HELD
)
_BACK = (
    update(outbox)
    .where(outbox.c.id == bindparam("row"))
    .values(due_at=bindparam("due"), ready_at=bindparam("ready"), created_at=bindparam("now"))
)


def mend(conn: Connection, now: datetime) -> int:
    """Put back what lies ahead of `now` and cannot have been stored yet; how many rows."""
    at = now + DOUBT
    newest = conn.execute(_AHEAD, {"at": at}).scalar()
    rows = []
    if newest is not None:
        back = newest - now
        rows = [
            {"row": r.id, "due": r.due_at - back, "ready": r.ready_at - back, "now": now}
            for r in conn.execute(_WAITING, {"at": at})
        ]
        if rows:
            conn.execute(_BACK, rows)
    again = (
        update(inbox)
        .where(inbox.c.status == "pending", inbox.c.received_at > at, inbox.c.retry_at.is_not(None))
        .values(retry_at=now)
    )
    return len(rows) + conn.execute(again).rowcount + conn.execute(delete(pace).where(pace.c.free_at > at)).rowcount
