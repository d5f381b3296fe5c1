"""Chronological order of each person's rows: a check, and a sort on disk if needed."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing
from dataclasses import dataclass
from datetime import datetime

from bot.scoring.dates import DateOrders, Order
from bot.scoring.identity import filed_under
from bot.scoring.output import OutputCells
from bot.scoring.parse_row import instant
from bot.scoring.tabular import Cells, InputTable

FIRST_ROW = 2  # the header is row 1, as in a spreadsheet
TICK = 1000  # rows between two updates of the progress bar
ScoreRow = Callable[[int, Cells, bool], list[OutputCells]]
Advance = Callable[[int], None]  # rows done since it was last called


@dataclass(frozen=True, slots=True)
class Survey:
    """dates: their order.  said: a sentence about it, or "".  in_order: each person's rows are chronological; not
    looked at where dates depend on their order."""

    rows: int
    in_order: bool
    dates: Order
    said: str


def survey(sheet: InputTable, asked: Order | None = None) -> Survey:
    """Count the rows, find the order of their dates, and check whether each person's are chronological. Faults of the
    file surface before anything is written.

    Raises: UsageError if the order of the dates cannot be told.
    """
    latest: dict[str, datetime] = {}
    keys: dict[str, str] = {}
    dates = DateOrders()
    rows, in_order = 0, True
    for rows, (cells, _) in enumerate(sheet.rows(), 1):
        at, person = instant(cells[1]), cells[0]
        if isinstance(at, str):
            dates.look(rows - 1 + FIRST_ROW, cells[1])
            continue
        if not in_order:
            continue
        key = keys.get(person)
        if key is None:
            key = keys[person] = filed_under(person)
        before = latest.get(key)
        if before is not None and at < before:
            in_order = False
        latest[key] = at
    order, said = dates.settle(sheet.name, asked)
    return Survey(rows, in_order and not dates.any, order, said)


def through_disk(sheet: InputTable, score: ScoreRow, advance: Advance, dates: Order) -> Iterator[OutputCells]:
    """Score rows chronologically and yield their lines in file order, using a temporary database.

    A database without a name lives in a temporary file that SQLite deletes itself.
    """
    with closing(sqlite3.connect("", isolation_level=None)) as db:
        db.execute("PRAGMA journal_mode = OFF")
        db.execute("CREATE TABLE given (row INTEGER PRIMARY KEY, at TEXT, cells TEXT, beyond INTEGER)")
        db.execute("CREATE TABLE scored (row INTEGER PRIMARY KEY, lines TEXT)")
        db.execute("BEGIN")
        db.executemany("INSERT INTO given VALUES (?, ?, ?, ?)", _given(sheet, dates))
        db.executemany("INSERT INTO scored VALUES (?, ?)", _scored(db, score, advance))
        for (lines,) in db.execute("SELECT lines FROM scored ORDER BY row"):
            for line in json.loads(lines):
                yield tuple(line)


def _given(sheet: InputTable, dates: Order) -> Iterator[tuple[int, str, str, bool]]:
    for row, (cells, beyond) in enumerate(sheet.rows(), start=FIRST_ROW):
        at = instant(cells[1], dates)
        yield row, "" if isinstance(at, str) else at.isoformat(), json.dumps(cells), beyond


def _scored(db: sqlite3.Connection, score: ScoreRow, advance: Advance) -> Iterator[tuple[int, str]]:
    ordered = db.execute("SELECT row, cells, beyond FROM given ORDER BY at, row")
    for done, (row, cells, beyond) in enumerate(ordered, start=1):
        yield row, json.dumps(score(row, tuple(json.loads(cells)), bool(beyond)))
        if done % TICK == 0:
            advance(TICK)
