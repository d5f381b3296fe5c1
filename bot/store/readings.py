"""Readings. Each key of a client is one reading: an edited message replaces it, undo withdraws it, nothing is lost."""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from datetime import datetime, timedelta
from decimal import Decimal
from functools import cache, lru_cache
from operator import attrgetter
from typing import Any

from sqlalchemy import (
    ColumnElement,
    CompoundSelect,
    Connection,
    FromClause,
    Text,
    and_,
    bindparam,
    case,
    cast,
    func,
    literal,
    literal_column,
    or_,
    select,
    type_coerce,
    update,
)

from bot.foundation import log
from bot.store import codec, owners
from bot.store.dialect import among, insert_new, upsert
from bot.store.keyring import Keyring, of_connection
from bot.store.schema import clients, readings
from bot.store.sealed import Sealed, is_whole, secret
from core.measures import MEASURES
from core.measures.measure import MeasureKind
from core.quantity import Unit
from core.reading import SAME, Conditions, How, Reading

HISTORY = timedelta(weeks=12)
START = timedelta(days=25)  # in which a start of several readings is taken: a series, four weeks, two or three visits
# A course that begins before that is told from chance by more readings, where a change that matters is hard to see.
LONG = timedelta(weeks=24)
# Of a series less: three of them, and none that is cut in two, which that of twelve weeks ago would be.
SERIES_HISTORY = timedelta(weeks=10)
SERIES = tuple(key for key, m in MEASURES.items() if m.series)
DEEP = tuple(
    key
    for key, m in MEASURES.items()
    if m.important is not None and m.error is not None and (m.kind is MeasureKind.RATING or m.start_visits > 1)
)
SEVERAL = tuple(key for key, m in MEASURES.items() if m.series or m.kind is MeasureKind.RATING or m.start_visits > 1)

_log = log.get("store")

_VALUES = (
    "measure", "value", "second", "taken_at", "as_typed", "unit", "conditions", "how", "attempts", "window",
)  # fmt: skip
_COLUMNS = (readings.c.client_id, readings.c.id, readings.c.key, *(readings.c[name] for name in _VALUES))
_HELD = (*(name for name in _VALUES if name != "as_typed"), "id", "key")  # nothing is judged by how it was typed
_PLACES = {column.name: column.type.place for column in readings.c if isinstance(column.type, Sealed)}
_SEALED = tuple(_PLACES)


@lru_cache(maxsize=1024)
def _conditions(text: str) -> Conditions:
    return codec.loads_as(Conditions, text)


_UNITS: dict[str | None, Unit | None] = {None: None, **{unit.value: unit for unit in Unit}}
_HOWS = {how.value: how for how in How}


def _reading(r: Any) -> Reading:
    """A reading from a row of `_COLUMNS`, by position: a turn reads dozens, and access by name costs a third more."""
    _, number, key, measure, value, second, taken_at, as_typed, unit, conditions, how, attempts, window = r
    if not is_whole(value, second):
        raise codec.CodecError("a reading cannot be opened")
    same = SAME if conditions is None else _conditions(conditions)
    return Reading(
        measure, value, taken_at, second, as_typed, _UNITS[unit], same, _HOWS[how], attempts, window, number, key
    )


def conditions_text(conditions: Conditions) -> str | None:
    """The column for conditions; None if all were the same."""
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
    """Store readings; one whose key exists is replaced, and counts again if it had been withdrawn.

    rows: from `row`, no two with the same client and key.
    """
    update = (*_VALUES, "withdrawn_at")
    upsert(conn, readings, _sealed(conn, rows), ("client_id", "key"), update, also=(("corrected_at", "created_at"),))


def put_new(conn: Connection, rows: Sequence[dict[str, Any]]) -> int:
    """`put`, leaving out those whose key is there; how many went in."""
    return insert_new(conn, readings, _sealed(conn, rows), ("client_id", "key"))


def _sealed(conn: Connection, rows: Sequence[dict[str, Any]]) -> list[dict[str, Any]]:
    keys = owners.of_clients(conn, [row["client_id"] for row in rows])
    return [row | {name: secret(keys[row["client_id"]], row[name]) for name in _SEALED} for row in rows]


_WITHDRAW = (
    update(readings)
    .where(readings.c.client_id == bindparam("client"), readings.c.key == bindparam("name"))
    .values(withdrawn_at=bindparam("now"))
)
_AMEND = (
    update(readings)
    .where(readings.c.client_id == bindparam("client"), readings.c.key == bindparam("name"))
    .values(conditions=bindparam("new_conditions", type_=readings.c.conditions.type))
)


def withdraw(conn: Connection, taken_back: Sequence[tuple[int, str]], now: datetime) -> None:
    """Withdraw readings, as (client, key): they stay stored but no longer count."""
    if taken_back:
        conn.execute(_WITHDRAW, [{"client": c, "name": key, "now": now} for c, key in taken_back])


def amend(conn: Connection, amended: Sequence[tuple[int, str, Conditions]]) -> None:
    """Change the conditions of readings, as (client, key)."""
    if amended:
        keys = owners.of_clients(conn, [client for client, _, _ in amended])
        rows = [{"client": c, "name": k, "new_conditions": secret(keys[c], conditions_text(x))} for c, k, x in amended]
        conn.execute(_AMEND, rows)


# --- history -----------------------------------------------------------------------------------------------

_mine = among(readings.c.client_id, "clients")
_kept = readings.c.withdrawn_at.is_(None)


@cache
def _history(dialect: str) -> CompoundSelect[Any]:
    """Rows of (client, readings or None): each reading a JSON array of `_HELD`, one a line.

    They are fetched as text because a turn needs dozens: one row per client is several times faster than dozens, and a
    line parsed before is not parsed again. Old ones are found by a loose index scan, from the first reading of a
    measure to the first of the next, and from each to the last one before `since`, so that the years in between are not
    read.
    """
    postgresql = dialect == "postgresql"
    array = func.json_build_array if postgresql else func.json_array
    together = func.string_agg if postgresql else func.group_concat
    line_end = func.chr(10) if postgresql else func.char(10)

    def all_of(table: FromClause) -> Any:
        columns: dict[str, ColumnElement[Any]] = dict(table.c)
        if not postgresql:  # SQLite has no time zones: it stores UTC, which must be stated here
            columns["taken_at"] = type_coerce(table.c.taken_at, Text) + "+00:00"
        return cast(array(*(columns[name] for name in _HELD)), Text)

    lately = (
        select(readings.c.client_id, together(all_of(readings), line_end))
        .where(
            _mine,
            _kept,
            readings.c.taken_at >= bindparam("since"),
            or_(readings.c.measure.not_in(SERIES), readings.c.taken_at >= bindparam("since_of_series")),
        )
        .group_by(readings.c.client_id)
    )

    r = readings.alias("r")
    own = clients.alias("own")
    # in this form the partial index is used
    counts = and_(r.c.withdrawn_at.is_(None), r.c.how != literal_column("'early'"))

    def first(of: FromClause, *further: ColumnElement[bool]) -> Any:
        """The id of a client's first reading of the first (or next) measure."""
        since = or_(of.c.baseline_since.is_(None), r.c.taken_at >= of.c.baseline_since)
        found = select(r.c.id).where(r.c.client_id == of.c.id, counts, since, *further)
        return found.order_by(r.c.measure, r.c.taken_at, r.c.id).limit(1).scalar_subquery()

    held = (
        select(own.c.id, own.c.baseline_since, first(own).label("reading"))
        .where(among(own.c.id, "clients"))
        .cte("held", recursive=True)
    )
    passed = readings.alias("passed")
    following = first(held, r.c.measure > passed.c.measure)
    held = held.union_all(
        select(held.c.id, held.c.baseline_since, following).join_from(held, passed, passed.c.id == held.c.reading)
    )
    baseline = readings.alias("baseline")
    newest = (
        select(all_of(r))
        .where(
            r.c.client_id == baseline.c.client_id,
            r.c.measure == baseline.c.measure,
            counts,
            r.c.taken_at < bindparam("since"),
        )
        .order_by(r.c.taken_at.desc(), r.c.id.desc())
        .limit(1)
        .correlate(baseline)
        .scalar_subquery()
    )
    s = readings.alias("s")
    started: ColumnElement[Any] = baseline.c.taken_at
    over = started + literal(START) if postgresql else func.datetime(started, f"+{START.days} days")
    start = (
        select(together(all_of(s), line_end))
        .where(
            s.c.client_id == baseline.c.client_id,
            s.c.measure == baseline.c.measure,
            or_(s.c.id == baseline.c.id, baseline.c.measure.in_(SEVERAL)),
            s.c.withdrawn_at.is_(None),
            s.c.how != literal_column("'early'"),
            s.c.taken_at >= baseline.c.taken_at,
            s.c.taken_at < over,
            s.c.taken_at < bindparam("since"),
        )
        .correlate(baseline)
        .scalar_subquery()
    )
    o = readings.alias("o")
    later = func.greatest if postgresql else func.max
    older = (
        select(together(all_of(o), line_end))
        .where(
            o.c.client_id == baseline.c.client_id,
            o.c.measure == baseline.c.measure,
            o.c.withdrawn_at.is_(None),
            o.c.how != literal_column("'early'"),
            # one bound: of two SQLite takes the first for its index, and reads on from the baseline
            o.c.taken_at >= later(baseline.c.taken_at, bindparam("long")),
            o.c.taken_at < bindparam("since"),
        )
        .correlate(baseline)
        .scalar_subquery()
    )
    deep = case((baseline.c.measure.in_(DEEP), type_coerce(line_end, Text) + type_coerce(older, Text)))
    all_three = type_coerce(start, Text) + line_end + newest + func.coalesce(deep, "")
    both = select(all_three).where(
        baseline.c.id == held.c.reading, baseline.c.taken_at < bindparam("since")
    )  # in the column list: for a join, SQLite would scan the whole table to build a filter
    before = (
        select(held.c.id, both.scalar_subquery().label("lines")).where(held.c.reading.is_not(None)).subquery("before")
    )
    return lately.union_all(select(before.c.id, together(before.c.lines, line_end)).group_by(before.c.id))


_by_time = attrgetter("taken_at", "id")


def histories(
    conn: Connection, client_ids: Iterable[int], now: datetime, *, skip_damaged: bool = False
) -> dict[int, tuple[Reading, ...]]:
    """The relevant readings of each client, oldest first: everything of the last twelve weeks (of a series ten),
    including side notes, and for each measure the baseline and the newest reading before that, all without what was
    typed; of the measures in `DEEP`, what counts of the last 24 weeks. The baseline of a series is the first series,
    that of a rating the first four weeks. One query.

    skip_damaged: skip a corrupt reading that would otherwise hide other people's. Without it, raises ValueError,
    KeyError or ArithmeticError for one: nothing is judged against an incomplete history.
    """
    wanted = list(client_ids)
    found: dict[int, dict[int | None, Reading]] = {}
    if wanted:
        ring = of_connection(conn)
        times = {"since": now - HISTORY, "since_of_series": now - SERIES_HISTORY, "long": now - LONG}
        for client, held in conn.execute(_history(conn.dialect.name), {"clients": wanted, **times}):
            mine = found.setdefault(client, {})
            for line in held.split("\n") if held else ():
                if (known := ring.parsed.get(line)) is not None:
                    mine[known.id] = known
                    continue
                try:
                    reading = _from_line(line, ring)
                except (ValueError, KeyError, ArithmeticError) as error:
                    if not skip_damaged:
                        raise
                    _log.error("a reading cannot be loaded", row=json.loads(line)[-2], fault=log.fault(error))
                else:
                    mine[reading.id] = ring.remember_parsed(line, reading)
    return {c: tuple(sorted(mine.values(), key=_by_time)) for c, mine in found.items() if mine}


_read = json.JSONDecoder().raw_decode


def _from_line(line: str, ring: Keyring) -> Reading:
    measure, value, second, taken_at, unit, conditions, how, attempts, window, number, key = _read(line)[0]
    if conditions is not None:
        conditions = ring.open(_PLACES["conditions"], conditions)
    return Reading(
        measure,
        Decimal(ring.open_once(_PLACES["value"], value)),
        datetime.fromisoformat(taken_at),
        None if second is None else Decimal(ring.open_once(_PLACES["second"], second)),
        "",
        _UNITS[unit],
        SAME if conditions is None else _conditions(conditions),
        _HOWS[how],
        attempts,
        window,
        number,
        key,
    )


_BETWEEN = (
    select(*_COLUMNS)
    .where(_mine, _kept, readings.c.taken_at >= bindparam("since"), readings.c.taken_at < bindparam("until"))
    .order_by(readings.c.taken_at, readings.c.id)
)


def between(
    conn: Connection, client_ids: Iterable[int], since: datetime, until: datetime
) -> dict[int, tuple[Reading, ...]]:
    """The readings of clients in a stretch of time that were not withdrawn, side notes among them. One query. A corrupt
    one is skipped: it is for figures of many people."""
    found: dict[int, list[Reading]] = {}
    for r in conn.execute(_BETWEEN, {"clients": list(client_ids), "since": since, "until": until}):
        try:
            found.setdefault(r[0], []).append(_reading(r))
        except (ValueError, KeyError, ArithmeticError) as error:
            _log.error("a reading cannot be loaded", row=r[1], fault=log.fault(error))
    return {c: tuple(rs) for c, rs in found.items()}


_EVERYTHING = select(*_COLUMNS).where(_mine, _kept).order_by(readings.c.taken_at, readings.c.id)


def everything(conn: Connection, client_ids: Iterable[int]) -> dict[int, tuple[Reading, ...]]:
    """All readings of clients that were not withdrawn, including side notes, oldest first. One query."""
    found: dict[int, list[Reading]] = {}
    for r in conn.execute(_EVERYTHING, {"clients": list(client_ids)}):
        found.setdefault(r[0], []).append(_reading(r))
    return {c: tuple(rs) for c, rs in found.items()}
