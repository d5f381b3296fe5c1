"""What is still to be done for those who were erased, after their rows are gone.

The rows go in one transaction, which leaves a row here. Then their keys are destroyed and the log of an SQLite file is
emptied; until that worked, a goodbye is held back, and a process that is killed meanwhile finds here what it owes.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta

from sqlalchemy import Connection, bindparam, delete, insert, select, update

from bot.store.schema import PENDING, erasures, outbox

OWED = "samehour_erasures"
HELD = datetime.fromisoformat("9999-12-31T00:00:00+00:00") - timedelta(days=1)  # when what is held back is ready


@dataclass(frozen=True, slots=True)
class Owed:
    """rows: of `erasures`; keys: to be destroyed."""

    rows: tuple[int, ...]
    keys: tuple[str, ...]


def owe(conn: Connection, now: datetime, keys: Iterable[str] = ()) -> None:
    """Ask that these keys be destroyed and the log be emptied as soon as this transaction is committed."""
    rows = [{"key_id": key, "at": now} for key in keys if key] or [{"key_id": None, "at": now}]
    conn.execute(insert(erasures), rows)
    conn.info[OWED] = True


_OWED = select(erasures.c.id, erasures.c.key_id)


def owed(conn: Connection) -> Owed | None:
    """Return what is owed, None for nothing."""
    rows = conn.execute(_OWED).all()
    return Owed(tuple(r.id for r in rows), tuple(r.key_id for r in rows if r.key_id)) if rows else None


_RELEASE = (update(outbox).where(PENDING, outbox.c.ready_at == bindparam("held", type_=outbox.c.ready_at.type))).values(
    ready_at=outbox.c.due_at
)


def settle(conn: Connection, done: Owed) -> None:
    """It is done: the goodbyes may go."""
    conn.execute(delete(erasures).where(erasures.c.id.in_(done.rows)))
    if conn.execute(select(erasures.c.id).limit(1)).first() is None:
        conn.execute(_RELEASE, {"held": HELD})
