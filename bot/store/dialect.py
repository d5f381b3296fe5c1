"""The few statements that SQLite and PostgreSQL write differently, or only with a construct of their own."""

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
)
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.ext.compiler import compiles
from sqlalchemy.sql.compiler import SQLCompiler
from sqlalchemy.sql.visitors import InternalTraversal

RowValues = Mapping[str, Any]

_prepared: dict[tuple[object, ...], Insert] = {}


def insert_new(conn: Connection, table: Table, rows: Sequence[RowValues], unique: tuple[str, ...]) -> int:
    """Insert rows, leaving out those whose `unique` columns are there already; how many went in.

    Any other broken constraint raises. Every row must have the same keys.
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


class _Among(ColumnElement[bool]):
    """`column` is one of the values of a list that is given at execution under `name`."""

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
    """`column` is in the list given as `name`. On PostgreSQL the list is one value, so that a statement is the same one
    however long it is, and is prepared once. SQLite plans better when it sees how long the list is."""
    return _Among(column, name)


def by_index(conn: Connection, *, on: bool = True) -> None:
    """Have what follows in this transaction walk along its indexes, as the queues are meant to be read.

    PostgreSQL's planner believes its statistics, and those of a queue were taken when it was empty: of ten thousand
    rows it expects one, and chooses to read all that wait for each of them. SQLite needs no telling.
    """
    if conn.dialect.name == "postgresql":
        conn.exec_driver_sql(_BY_INDEX if on else _AS_USUAL)


_BY_INDEX = "SET LOCAL enable_bitmapscan = off; SET LOCAL enable_sort = off"
_AS_USUAL = "SET LOCAL enable_bitmapscan = on; SET LOCAL enable_sort = on"


def skip_locked(statement: Select[Any], of: Table) -> Select[Any]:
    """Lock the rows of `of` and pass over those another worker holds; SQLite, with one writer, ignores it."""
    return statement.with_for_update(of=of, skip_locked=True)
