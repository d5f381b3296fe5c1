"""Readings. One key of a client is one reading: an edited message replaces, taking back withdraws, nothing is lost."""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from datetime import datetime, timedelta
from decimal import Decimal
from functools import cache, lru_cache
from typing import Any

from sqlalchemy import (
    ColumnElement,
    CompoundSelect,
    Connection,
    FromClause,
    Text,
    and_,
    bindparam,
    cast,
    func,
    literal_column,
    or_,
    select,
    type_coerce,
    update,
)

from bot import log
from bot.store import codec
from bot.store.dialect import upsert
from bot.store.schema import clients, readings
from core.quantity import Unit
from core.reading import SAME, Conditions, How, Reading

HISTORY = timedelta(weeks=12)

_log = log.get("store")

_VALUES = (
    "measure", "value", "second", "taken_at", "as_typed", "unit", "conditions", "how", "attempts", "window",
)  # fmt: skip
_COLUMNS = (readings.c.client_id, readings.c.id, readings.c.key, *(readings.c[name] for name in _VALUES))
_HELD = (*_VALUES, "id", "key")


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


@cache
def _history(dialect: str) -> CompoundSelect[Any]:
    """Rows of (client, JSON array of readings, each an array of `_VALUES`, id and key; None for none).

    Readings come as JSON because a turn needs dozens: one row a client is fetched and read three times faster than
    dozens of rows are. Old ones are found by stepping through the index from measure to measure, and in each to both
    of its ends, so that what lies between, years of it, is not read.
    """
    together = func.json_agg if dialect == "postgresql" else func.json_group_array
    array = func.json_build_array if dialect == "postgresql" else func.json_array
    nested = (lambda one: one) if dialect == "postgresql" else func.json

    def all_of(table: FromClause) -> Any:
        columns: dict[str, ColumnElement[Any]] = dict(table.c)
        if dialect == "sqlite":  # which has no zones: what it holds is UTC, and here has to say so
            columns["taken_at"] = type_coerce(table.c.taken_at, Text) + "+00:00"
        return array(*(columns[name] for name in _HELD))

    lately = (
        select(readings.c.client_id, cast(together(all_of(readings)), Text))
        .where(_mine, _kept, readings.c.taken_at >= bindparam("since"))
        .group_by(readings.c.client_id)
    )

    r = readings.alias("r")
    counts = and_(r.c.withdrawn_at.is_(None), r.c.how != literal_column("'early'"))  # so is the partial index used
    first_measure = select(func.min(r.c.measure)).where(r.c.client_id == clients.c.id, counts)
    held = (
        select(clients.c.id, clients.c.baseline_since, first_measure.scalar_subquery().label("measure"))
        .where(clients.c.id.in_(bindparam("clients", expanding=True)))
        .cte("held", recursive=True)
    )
    next_measure = select(func.min(r.c.measure)).where(r.c.client_id == held.c.id, r.c.measure > held.c.measure, counts)
    held = held.union_all(
        select(held.c.id, held.c.baseline_since, next_measure.scalar_subquery()).where(held.c.measure.is_not(None))
    )
    old = (
        select(all_of(r))
        .where(
            r.c.client_id == held.c.id,
            r.c.measure == held.c.measure,
            counts,
            r.c.taken_at < bindparam("since"),
            or_(held.c.baseline_since.is_(None), r.c.taken_at >= held.c.baseline_since),
        )
        .limit(1)
    )
    baseline = old.order_by(r.c.taken_at, r.c.id).scalar_subquery()
    newest = old.order_by(r.c.taken_at.desc(), r.c.id.desc()).scalar_subquery()
    both = select(held.c.id, cast(array(nested(baseline), nested(newest)), Text)).where(held.c.measure.is_not(None))
    return lately.union_all(both)


def histories(
    conn: Connection, client_ids: Iterable[int], now: datetime, *, skip_damaged: bool = False
) -> dict[int, tuple[Reading, ...]]:
    """Return what matters now of each client, oldest first: everything of the last twelve weeks, side notes too,
    and of each measure the baseline and the newest reading before that. One query.

    skip_damaged: leave out a reading that cannot be read, where it would hide other people.
    Raises: ValueError, KeyError or ArithmeticError for one: nothing is judged against half a history.
    """
    wanted = list(client_ids)
    found: dict[int, dict[int, Reading]] = {}
    if wanted:
        for client, held in conn.execute(_history(conn.dialect.name), {"clients": wanted, "since": now - HISTORY}):
            mine = found.setdefault(client, {})
            for values in json.loads(held):
                if values is None:
                    continue
                try:
                    mine[values[-2]] = _from_json(*values)
                except (ValueError, KeyError, ArithmeticError) as error:
                    if not skip_damaged:
                        raise
                    _log.error("a reading cannot be read", row=values[-2], fault=log.fault(error))
    return {c: tuple(sorted(mine.values(), key=lambda x: (x.taken_at, x.id))) for c, mine in found.items() if mine}


@lru_cache(maxsize=16_384)  # of some three hundred people in the middle of a check-in, whose every answer asks for them
def _from_json(
    measure: str,
    value: str,
    second: str | None,
    taken_at: str,
    as_typed: str,
    unit: str | None,
    conditions: str | None,
    how: str,
    attempts: int,
    window: int | None,
    number: int,
    key: str,
) -> Reading:
    return Reading(
        measure,
        Decimal(value),
        datetime.fromisoformat(taken_at),
        None if second is None else Decimal(second),
        as_typed,
        _UNITS[unit],
        SAME if conditions is None else _conditions(conditions),
        _HOWS[how],
        attempts,
        window,
        number,
        key,
    )


_EVERYTHING = select(*_COLUMNS).where(_mine, _kept).order_by(readings.c.taken_at, readings.c.id)


def everything(conn: Connection, client_ids: Iterable[int]) -> dict[int, tuple[Reading, ...]]:
    """Return all readings of clients that were not taken back, side notes too, oldest first. One query."""
    found: dict[int, list[Reading]] = {}
    for r in conn.execute(_EVERYTHING, {"clients": list(client_ids)}):
        found.setdefault(r[0], []).append(_reading(r))
    return {c: tuple(rs) for c, rs in found.items()}
