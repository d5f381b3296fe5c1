"""The few statements that SQLite and PostgreSQL write differently, or only with a construct of their own."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from sqlalchemy import Connection, CursorResult, Insert, Select, Table, TextClause
from sqlalchemy.dialects import postgresql, sqlite

Row = Mapping[str, Any]

_prepared: dict[tuple[object, ...], Insert] = {}


def insert_new(conn: Connection, table: Table, rows: Sequence[Row], unique: tuple[str, ...]) -> int:
    """Insert rows, leaving out those whose `unique` columns are there already; how many went in.

    Any other broken constraint raises. Every row must have the same keys.
    """
    if not rows:
        return 0
    name = (conn.dialect.name, table.name, unique)
    statement = _prepared.get(name)
    if statement is None:
        if conn.dialect.name == "postgresql":  # many rows are one statement there, whose count the driver hides
            made = postgresql.insert(table).on_conflict_do_nothing(index_elements=unique)
            statement = made.returning(*table.primary_key.columns)
        else:
            statement = sqlite.insert(table).on_conflict_do_nothing(index_elements=unique)
        _prepared[name] = statement
    result: CursorResult[Any] = conn.execute(statement, rows)
    return len(result.all()) if result.returns_rows else result.rowcount


def upsert(
    conn: Connection,
    table: Table,
    rows: Sequence[Row],
    unique: tuple[str, ...],
    update: tuple[str, ...],
    also: tuple[tuple[str, str], ...] = (),
    where: TextClause | None = None,
) -> None:
    """Insert rows; of those that exist, set the `update` columns to the new row's.

    also: (column, column of the new row) pairs, where the two differ. where: of the partial unique index that
    decides, if it is one. Every row must have the same keys, and no two rows may be the same one by `unique`.
    """
    if not rows:
        return
    name = (conn.dialect.name, table.name, unique, update, also)
    statement = _prepared.get(name)
    if statement is None:
        made = postgresql.insert(table) if conn.dialect.name == "postgresql" else sqlite.insert(table)
        values = {column: made.excluded[new] for column, new in (*((u, u) for u in update), *also)}
        statement = made.on_conflict_do_update(index_elements=unique, index_where=where, set_=values)
        _prepared[name] = statement
    conn.execute(statement, rows)


def skip_locked(statement: Select[Any], of: Table) -> Select[Any]:
    """Lock the rows of `of` and pass over those another worker holds; SQLite, with one writer, ignores it."""
    return statement.with_for_update(of=of, skip_locked=True)
