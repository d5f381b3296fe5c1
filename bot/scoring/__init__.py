"""`samehour score`: reads a spreadsheet of readings, writes the band and verdict of each. No chat, no database.

    samehour score READINGS.csv --people PEOPLE.csv --to csv|json|table

READINGS.csv has the columns person, taken_at, measure, value and optionally unit and conditions, in any order; others
are ignored. A value may be written as people write it ("128/82", "12 st 4", "18 in 15 s", "82,4"). A time without a
zone is UTC; a date alone is its midnight; 1.2.2026 is read where the whole file agrees on the order of day and month
(`bot.scoring.dates`). A day of a blood-pressure series is the date as written. Who is who is decided in
`bot.scoring.identity`. `bot.scoring.people` lists the columns of PEOPLE.csv, `bot.scoring.output` those written,
`bot.scoring.parse_row` the conditions.

* Each row yields a line in its place. If it cannot be used, `problem` says what is wrong and what to write. If it is
  used but looks like a typing slip, `problem` says so: nothing is trusted silently.
* Derived measures follow the row that makes them possible. Of a blood-pressure series that is the mean so far
  (`blood_pressure_mean`), from the fourth day on; the last covers the whole series.
* An early weight is a value like any other in a spreadsheet; its verdict is "too soon".
* Memory does not grow with the file. If a person's rows are not in chronological order, they are first sorted in a
  temporary database on disk, deleted when the command ends; the output keeps the order of the file.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from pathlib import Path
from typing import TextIO

from rich.console import Console
from rich.progress import BarColumn, MofNCompleteColumn, Progress, TextColumn, TimeRemainingColumn

from bot.foundation.errors import UsageError
from bot.scoring.dates import Order
from bot.scoring.order import FIRST_ROW, TICK, Advance, survey, through_disk
from bot.scoring.output import FORMS, TABLE, OutputCells, write, write_texts
from bot.scoring.people import read_people
from bot.scoring.processes import ScoringTask, how_many, no_hunt_for_cycles, scored_by
from bot.scoring.scorer import Counts, Scorer
from bot.scoring.tabular import InputTable, open_sheet
from core.measures.blood_pressure import BODIES, DEFAULT_LIMITS

REQUIRED, OPTIONAL = ("person", "taken_at", "measure", "value"), ("unit", "conditions", "as_given")


def score(
    readings: Path | str,
    people: Path | str | None,
    to: str,
    out: TextIO | None = None,
    err: TextIO | None = None,
    processes: int | None = None,
    dates: Order | None = None,
    limits: str = DEFAULT_LIMITS,
) -> None:
    """Score the file `readings` ("-" is standard input) and write every row in format `to`; counts go to stderr.

    out, err: standard output and standard error by default. processes: how many share the work; by default depends on
    the length of the file. A table, standard input and unordered rows always use one. dates: the order of day and
    month, where a file fits both. limits: whose limits the mean of a blood-pressure series is compared with: "nice",
    "aha" or "esc".

    Raises: UsageError for an unknown format or limits, or a file that is missing, not UTF-8, lacks a column or has
    dates whose order cannot be told.
    """
    if to != TABLE and to not in FORMS:
        raise UsageError(f"Unknown format {to}: choose one of {', '.join((*FORMS, TABLE))}.")
    if limits not in BODIES:
        raise UsageError(f"Unknown limits {limits}: choose one of {', '.join(BODIES)}.")
    out, err = out or sys.stdout, err or sys.stderr
    console = Console(file=err, highlight=False, markup=False, soft_wrap=True)
    profiles = read_people(str(people), console.print) if people else {}
    counts = Counts()
    with (
        open_sheet(str(readings), REQUIRED, OPTIONAL) as sheet,
        _progress(console, shown=console.is_terminal and not out.isatty()) as progress,
        no_hunt_for_cycles(),
    ):
        found = survey(sheet, dates)
        task = progress.add_task("scored", total=found.rows)

        def advance(rows: int) -> None:
            progress.advance(task, rows)

        several = processes or how_many(found.rows)
        if several > 1 and to in FORMS and found.in_order and sheet.path:
            job = ScoringTask(sheet.path, (REQUIRED, OPTIONAL), profiles, to, limits, found.dates)
            write_texts(FORMS[to], scored_by(several, job, found.rows, counts, advance), out)
        else:
            lines = scored(
                sheet, Scorer(profiles, counts, found.dates, limits), in_order=found.in_order, advance=advance
            )
            write(to, lines, out)
            del lines  # and everything it holds: the first garbage collection afterwards would traverse it
    out.flush()
    console.print(" ".join(filter(None, (found.said, summary(counts, known=bool(people))))))


def scored(
    sheet: InputTable, scorer: Scorer, *, in_order: bool, advance: Advance = lambda rows: None
) -> Iterator[OutputCells]:
    """Every line of a sheet, in order. in_order: each person's rows are chronological."""
    if not in_order:
        yield from through_disk(sheet, scorer.lines, advance, scorer.dates)
        return
    for number, (cells, beyond) in enumerate(sheet.rows(), start=FIRST_ROW):
        yield from scorer.lines(number, cells, beyond)
        if number % TICK == 0:
            advance(TICK)


def summary(counts: Counts, *, known: bool) -> str:
    said = [f"{counts.used} rows scored, {counts.unusable} could not be used, {counts.to_check} to check."]
    if known and counts.strangers:
        said.append(f"People of the readings without a row in the people file: {counts.strangers}.")
    return " ".join(said)


def _progress(console: Console, *, shown: bool) -> Progress:
    columns = (TextColumn("{task.description}"), BarColumn(), MofNCompleteColumn(), TimeRemainingColumn())
    return Progress(*columns, console=console, transient=True, disable=not shown)
