"""Chronological order of each person's rows: a check, and a sort on disk if needed."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing
from dataclasses import dataclass
from datetime import datetime

from bot.scoring.output import OutputCells
from bot.scoring.parse_row import instant
from bot.scoring.tabular import Cells, InputTable

FIRST_ROW = 2  # the header is row 1, as in a spreadsheet
TICK = 1000  # rows between two updates of the progress bar
ScoreRow = Callable[[int, Cells, bool], list[OutputCells]]
Advance = Callable[[int], None]  # rows done since it was last called


@dataclass(frozen=True, slots=True)
class Survey:
    rows: int
    in_order: bool


def survey(sheet: InputTable) -> Survey:
    """Count the rows and check whether each person's are chronological. Faults of the file surface before anything is
    written.
    """
    latest: dict[str, datetime] = {}
    rows, in_order = 0, True
    for cells, _ in sheet.rows():
        rows += 1
        if not in_order:
            continue
        at, person = instant(cells[1]), cells[0].strip()
        if isinstance(at, str):
            continue
        before = latest.get(person)
        if before is not None and at < before:
            in_order = False
        latest[person] = at
    return Survey(rows, in_order)


def through_disk(sheet: InputTable, score: ScoreRow, advance: Advance) -> Iterator[OutputCells]:
    """Score rows chronologically and yield their lines in file order, using a temporary database.

    A database without a name lives in a temporary file that SQLite deletes itself.
    """
    with closing(sqlite3.connect("", isolation_level=None)) as db:
        db.execute("PRAGMA journal_mode = OFF")
        db.execute("CREATE TABLE given (row INTEGER PRIMARY KEY, at TEXT, cells TEXT, beyond INTEGER)")
        db.execute("CREATE TABLE scored (row INTEGER PRIMARY KEY, lines TEXT)")
        db.execute("BEGIN")
        db.executemany("INSERT INTO given VALUES (?, ?, ?, ?)", _given(sheet))
        db.executemany("INSERT INTO scored VALUES (?, ?)", _scored(db, score, advance))
        for (lines,) in db.execute("SELECT lines FROM scored ORDER BY row"):
            for line in json.loads(lines):
                yield tuple(line)


def _given(sheet: InputTable) -> Iterator[tuple[int, str, str, bool]]:
    for row, (cells, beyond) in enumerate(sheet.rows(), start=FIRST_ROW):
        at = instant(cells[1])
        yield row, "" if isinstance(at, str) else at.isoformat(), json.dumps(cells), beyond


def _scored(db: sqlite3.Connection, score: ScoreRow, advance: Advance) -> Iterator[tuple[int, str]]:
    ordered = db.execute("SELECT row, cells, beyond FROM given ORDER BY at, row")
    for done, (row, cells, beyond) in enumerate(ordered, start=1):
        yield row, json.dumps(score(row, tuple(json.loads(cells)), bool(beyond)))
        if done % TICK == 0:
            advance(TICK)
