"""The few statements that differ between SQLite and PostgreSQL, or need a special construct."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from sqlalchemy import (
    Boolean,
    ColumnElement,
    Connection,
    Insert,
    Select,
    Table,
    TextClause,
    any_,
    bindparam,
    text,
)
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.ext.compiler import compiles
from sqlalchemy.sql.compiler import SQLCompiler
from sqlalchemy.sql.visitors import InternalTraversal

RowValues = Mapping[str, Any]

_prepared: dict[tuple[object, ...], Insert] = {}


def insert_new(conn: Connection, table: Table, rows: Sequence[RowValues], unique: tuple[str, ...]) -> int:
    """Insert rows, skipping those whose `unique` columns already exist; return how many were inserted.

    Any other constraint violation raises. Every row must have the same keys.
    """
    if not rows:
        return 0
    name = (conn.dialect.name, table.name, unique)
    statement = _prepared.get(name)
    if statement is None:
        made = postgresql.insert(table) if conn.dialect.name == "postgresql" else sqlite.insert(table)
        _prepared[name] = statement = made.on_conflict_do_nothing(index_elements=unique)
    return conn.execute(statement, rows, execution_options={"preserve_rowcount": True}).rowcount


def upsert(
    conn: Connection,
    table: Table,
    rows: Sequence[RowValues],
    unique: tuple[str, ...],
    update: tuple[str, ...],
    also: tuple[tuple[str, str], ...] = (),
    where: TextClause | None = None,
) -> None:
    """Insert rows; for those that exist, update the `update` columns.

    also: (column, column of the new row) pairs, if the two differ. where: condition of the unique index, if it is
    partial. Every row must have the same keys, and no two may have the same `unique` columns.
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


def one_at_a_time(conn: Connection, what: int) -> None:
    """Wait until no other transaction holds `what`, and hold it to the end of this one. SQLite has one writer."""
    if conn.dialect.name == "postgresql":
        conn.execute(text("SELECT pg_advisory_xact_lock(:what)"), {"what": what})


class _Among(ColumnElement[bool]):
    """`column` is in a list bound at execution as `name`."""

    inherit_cache = True
    type = Boolean()
    _traverse_internals: Any = [  # noqa: RUF012 (as SQLAlchemy declares it)
        ("column", InternalTraversal.dp_clauseelement),
        ("name", InternalTraversal.dp_string),
    ]

    def __init__(self, column: ColumnElement[Any], name: str) -> None:
        self.column = column
        self.name = name

    @property
    def _from_objects(self) -> Any:
        return self.column._from_objects


@compiles(_Among)
def _in(element: _Among, compiler: SQLCompiler, **options: Any) -> str:
    values = bindparam(element.name, expanding=True, type_=element.column.type)
    return compiler.process(element.column.in_(values), **options)


@compiles(_Among, "postgresql")
def _any(element: _Among, compiler: SQLCompiler, **options: Any) -> str:
    values = bindparam(element.name, type_=postgresql.ARRAY(element.column.type))
    return compiler.process(element.column == any_(values), **options)


def among(column: ColumnElement[Any], name: str) -> ColumnElement[bool]:
    """`column` is in the list bound as `name`. On PostgreSQL the list is bound as one array parameter, so that the
    statement is prepared once for any length. SQLite plans better if it sees the length."""
    return _Among(column, name)


def by_index(conn: Connection, *, on: bool = True) -> None:
    """Make the rest of this transaction use index scans, as intended for the queues.

    PostgreSQL's planner trusts its statistics, and a queue's were taken when it was empty: it expects one row out of
    ten thousand, and plans a scan of all pending rows for each. SQLite does not need this.
    """
    if conn.dialect.name == "postgresql":
        conn.exec_driver_sql(_BY_INDEX if on else _AS_USUAL)


_BY_INDEX = "SET LOCAL enable_bitmapscan = off; SET LOCAL enable_sort = off"
_AS_USUAL = "SET LOCAL enable_bitmapscan = on; SET LOCAL enable_sort = on"


def skip_locked(statement: Select[Any], of: Table) -> Select[Any]:
    """Lock the rows of `of`, skipping those locked by another worker; a no-op on SQLite, which has one writer."""
    return statement.with_for_update(of=of, skip_locked=True)
