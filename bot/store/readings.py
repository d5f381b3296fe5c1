"""Readings. One key of a client is one reading: an edited message replaces, taking back withdraws, nothing is lost."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import datetime, timedelta
from functools import lru_cache
from typing import Any

from sqlalchemy import Connection, bindparam, func, literal_column, or_, select, update

from bot.store import codec
from bot.store.dialect import upsert
from bot.store.schema import clients, readings
from core.quantity import Unit
from core.reading import SAME, Conditions, How, Reading

HISTORY = timedelta(weeks=12)

_VALUES = (
    "measure", "value", "second", "taken_at", "as_typed", "unit", "conditions", "how", "attempts", "window",
)  # fmt: skip
_COLUMNS = (readings.c.client_id, readings.c.id, readings.c.key, *(readings.c[name] for name in _VALUES))


@lru_cache(maxsize=1024)
def _conditions(text: str) -> Conditions:
    return codec.loads_as(Conditions, text)


_UNITS: dict[str | None, Unit | None] = {None: None, **{unit.value: unit for unit in Unit}}
_HOWS = {how.value: how for how in How}


def _reading(r: Any) -> Reading:
    """A row of `_COLUMNS`, by place: a turn reads dozens of them, and names cost a third more."""
    _, number, key, measure, value, second, taken_at, as_typed, unit, conditions, how, attempts, window = r
    same = SAME if conditions is None else _conditions(conditions)
    return Reading(
        measure, value, taken_at, second, as_typed, _UNITS[unit], same, _HOWS[how], attempts, window, number, key
    )


def conditions_text(conditions: Conditions) -> str | None:
    """Return the column for conditions; None when all was the same."""
    return None if conditions == SAME else codec.dumps(conditions)


def row(client_id: int, key: str, reading: Reading, now: datetime) -> dict[str, Any]:
    """A row for `put`."""
    return {
        "client_id": client_id,
        "key": key,
        "measure": reading.measure,
        "value": reading.value,
        "second": reading.second,
        "taken_at": reading.taken_at,
        "as_typed": reading.as_typed,
        "unit": reading.unit.value if reading.unit else None,
        "conditions": conditions_text(reading.conditions),
        "how": reading.how.value,
        "attempts": reading.attempts,
        "window": reading.window,
        "created_at": now,
        "withdrawn_at": None,
    }


def put(conn: Connection, rows: Sequence[dict[str, Any]]) -> None:
    """Keep readings; one whose key is there is replaced, and counts again if it had been taken back.

    rows: of `row`, no two with the same client and key.
    """
    update = (*_VALUES, "withdrawn_at")
    upsert(conn, readings, rows, ("client_id", "key"), update, also=(("corrected_at", "created_at"),))


_WITHDRAW = (
    update(readings)
    .where(readings.c.client_id == bindparam("client"), readings.c.key == bindparam("name"))
    .values(withdrawn_at=bindparam("now"))
)
_AMEND = (
    update(readings)
    .where(readings.c.client_id == bindparam("client"), readings.c.key == bindparam("name"))
    .values(conditions=bindparam("new_conditions"))
)


def withdraw(conn: Connection, taken_back: Sequence[tuple[int, str]], now: datetime) -> None:
    """Readings, as (client, key), that no longer count. They stay, withdrawn."""
    if taken_back:
        conn.execute(_WITHDRAW, [{"client": c, "name": key, "now": now} for c, key in taken_back])


def amend(conn: Connection, amended: Sequence[tuple[int, str, Conditions]]) -> None:
    """Give readings, as (client, key), other conditions."""
    if amended:
        rows = [{"client": c, "name": k, "new_conditions": conditions_text(x)} for c, k, x in amended]
        conn.execute(_AMEND, rows)


# --- history -----------------------------------------------------------------------------------------------

_mine = readings.c.client_id.in_(bindparam("clients", expanding=True))
_kept = readings.c.withdrawn_at.is_(None)
_counts = readings.c.how != literal_column("'early'")  # a literal: only so is the partial index used
_lately = select(*_COLUMNS).where(_mine, _kept, readings.c.taken_at >= bindparam("since"))
_ends = (  # of each measure: its baseline, and the newest before the last twelve weeks
    select(
        readings.c.client_id,
        readings.c.measure,
        func.min(readings.c.taken_at).label("first"),
        func.max(readings.c.taken_at).label("last"),
    )
    .join(clients, clients.c.id == readings.c.client_id)
    .where(
        _mine,
        _kept,
        _counts,
        readings.c.taken_at < bindparam("since"),
        or_(clients.c.baseline_since.is_(None), readings.c.taken_at >= clients.c.baseline_since),
    )
    .group_by(readings.c.client_id, readings.c.measure)
    .subquery()
)
_of_old = (
    select(*_COLUMNS)
    .join(
        _ends,
        (readings.c.client_id == _ends.c.client_id)
        & (readings.c.measure == _ends.c.measure)
        & or_(readings.c.taken_at == _ends.c.first, readings.c.taken_at == _ends.c.last),
    )
    .where(_mine, _kept, _counts, readings.c.taken_at < bindparam("since"))  # _mine: or PostgreSQL may read all
)
_HISTORY = _lately.union_all(_of_old)


def histories(conn: Connection, client_ids: Iterable[int], now: datetime) -> dict[int, tuple[Reading, ...]]:
    """Return what matters now of each client, oldest first: everything of the last twelve weeks, side notes too,
    and of each measure the baseline and the newest reading before that. One query."""
    wanted = list(client_ids)
    found: dict[int, list[Reading]] = {}
    if wanted:
        for r in conn.execute(_HISTORY, {"clients": wanted, "since": now - HISTORY}):
            found.setdefault(r[0], []).append(_reading(r))
    return {c: tuple(sorted(rs, key=lambda x: (x.taken_at, x.id))) for c, rs in found.items()}


_EVERYTHING = select(*_COLUMNS).where(_mine, _kept).order_by(readings.c.taken_at, readings.c.id)


def everything(conn: Connection, client_ids: Iterable[int]) -> dict[int, tuple[Reading, ...]]:
    """Return all readings of clients that were not taken back, side notes too, oldest first. One query."""
    found: dict[int, list[Reading]] = {}
    for r in conn.execute(_EVERYTHING, {"clients": list(client_ids)}):
        found.setdefault(r[0], []).append(_reading(r))
    return {c: tuple(rs) for c, rs in found.items()}
