"""`import`, `export` and `erase`: an operator reaches a client through the coach's caseload, as the coach would."""

from __future__ import annotations

import csv
import os
import sys
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from datetime import datetime, timedelta
from pathlib import Path
from typing import TextIO
from zoneinfo import ZoneInfo

from rich.console import Console
from rich.progress import BarColumn, MofNCompleteColumn, Progress, TextColumn
from rich.table import Table
from sqlalchemy import Connection
from sqlalchemy.exc import SQLAlchemyError

from bot.foundation import config
from bot.foundation.clock import now
from bot.foundation.errors import OperatorError, UsageError
from bot.foundation.spreadsheet import escaped, unescaped
from bot.operator import imports
from bot.operator.imports import Fate, ImportedRow
from bot.scoring.dates import Order, order_of
from bot.scoring.identity import named, unmistakable
from bot.store import audit, caseload, erase, erasures, readings, staff
from bot.store import migrate as versions
from bot.store.clients import Client
from bot.store.database import Database
from bot.store.opening import open_database, unreachable
from bot.store.zones import zone_of
from core import schedule
from core.care import Status
from core.reading import Reading

SHOWN = ("row", "person", "taken_at", "measure", "value", "unit", "what", "detail")


@contextmanager
def _ready() -> Iterator[Database]:
    """Open the database at the newest schema.

    Raises: OperatorError if it is missing or not ready.
    """
    database = open_database(config.read())
    try:
        if (database.file is not None and not database.file.exists()) or (
            versions.current(database.engine) != versions.head()
        ):
            raise OperatorError("The database is not ready.", "Run `samehour migrate`.")
        yield database
    except SQLAlchemyError as error:
        raise unreachable(error) from None
    finally:
        database.close()


def _coach(conn: Connection, name: str) -> int:
    found = staff.by_name(conn, name)
    if not found:
        raise UsageError(f"There is no coach called {name}.")
    if len(found) > 1:
        raise UsageError(f"Several coaches are called {name}: {', '.join(found.values())}.")
    return next(iter(found))


def _client(conn: Connection, coach_id: int, name: str) -> Client:
    """One client of this coach, by full name or number."""
    found = named(caseload.everybody(conn, coach_id), name)
    if not found:
        raise UsageError("This coach has no client of that name or number. Write the full name.")
    if len(found) > 1:
        numbers = ", ".join(str(client.id) for client in found)
        raise UsageError(f"Several clients have that name. Write one of the numbers {numbers} instead.")
    return found[0]


# --- import ------------------------------------------------------------------------------------------------


def import_(
    file: str, coach: str, *, write: bool, doubtful: bool, dates: Order | None, out: TextIO, err: TextIO
) -> None:
    """Show row by row what would become of a file of readings; import what can be only if `write`.

    dates: the order of day and month, where a file fits both.

    Raises: UsageError for an unreadable file, dates whose order cannot be told, or an unknown coach.
    """
    console = Console(file=err, highlight=False, markup=False, soft_wrap=True)
    at = now()
    columns = (TextColumn("{task.description}"), BarColumn(), MofNCompleteColumn())
    hidden = not console.is_terminal or out.isatty()
    with imports.opened(file) as sheet, _ready() as database:
        taken = [(number, unescaped(cells[1])) for number, (cells, _) in enumerate(sheet.rows(), imports.FIRST_ROW)]
        rows = len(taken)
        order, said = order_of(taken, sheet.name, dates)
        with Progress(*columns, console=console, transient=True, disable=hidden) as progress:
            task = progress.add_task("looked at", total=rows)

            def work(conn: Connection) -> tuple[tuple[ImportedRow, ...], int]:
                lines = imports.preview(
                    conn,
                    _coach(conn, coach),
                    sheet,
                    at,
                    dates=order,
                    doubtful=doubtful,
                    advance=lambda: progress.advance(task),
                )
                return lines, imports.store(conn, lines, at) if write else 0

            lines, kept = (database.write_now if write else database.read_now)(work)
    _show(lines, out)
    console.print(" ".join(filter(None, (said, _summary(lines, kept, write)))))


def _show(lines: Sequence[ImportedRow], out: TextIO) -> None:
    rows = [(str(line.number), *line.cells, line.fate.value, line.detail) for line in lines]
    if not out.isatty():
        writer = csv.writer(out, lineterminator="\n")
        writer.writerow(SHOWN)
        writer.writerows([escaped(cell) for cell in row] for row in rows)
        out.flush()
        return
    shown = Table(*SHOWN)
    for row in rows:
        shown.add_row(*row)
    Console(file=out, highlight=False, markup=False).print(shown)


def _summary(lines: Sequence[ImportedRow], kept: int, write: bool) -> str:
    numbers = {fate: sum(line.fate is fate for line in lines) for fate in Fate}
    refused = [f"{number} {fate.value}" for fate, number in numbers.items() if number and fate is not Fate.KEPT]
    more = f"; {', '.join(refused)}" if refused else ""
    if write:
        return f"{kept} of {len(lines)} rows kept{more}."
    return (
        f"{numbers[Fate.KEPT]} of {len(lines)} rows would be kept{more}. Nothing was written: add --write to keep them."
    )


# --- export ------------------------------------------------------------------------------------------------


def export(
    client: str | None, coach: str, to: str, out: Path | None, *, named: bool, side_notes: bool, stdout: TextIO
) -> str:
    """Export the readings or slots of one client, or of a whole caseload, in format `to`; return what was written
    where.

    Raises: UsageError for an unknown format, coach or client; OperatorError if `out` exists or cannot be written.
    """
    if to not in FORMS:
        raise UsageError(f"Unknown format {to}: choose one of {', '.join(FORMS)}.")
    if out is not None and out.exists():
        raise OperatorError(f"{out} exists already.", "Choose a new file name.")
    at = now()

    def work(conn: Connection) -> tuple[tuple[Client, ...], dict[int, tuple[Reading, ...]]]:
        coach_id = _coach(conn, coach)
        people = caseload.everybody(conn, coach_id) if client is None else (_client(conn, coach_id, client),)
        for person in people:
            audit.note(conn, at, audit.OPERATOR, f"exported_{to}", person.id)
        return people, readings.everything(conn, [person.id for person in people])

    with _ready() as database:
        people, series = database.write_now(work)
    content = FORMS[to]([(person, series.get(person.id, ())) for person in people], at, named, side_notes)
    if out is None:
        stdout.write(content)
        stdout.flush()
        return ""
    _write(out, content)
    return f"Wrote {out} ({len(people)} {'client' if len(people) == 1 else 'clients'})."


def _write(out: Path, content: str) -> None:
    """Write to a new file that only its owner can read."""
    try:
        handle = os.open(out, os.O_CREAT | os.O_EXCL | os.O_WRONLY, 0o600)
        with open(handle, "w", encoding="utf-8", newline="") as file:
            file.write(content)
    except OSError as error:
        raise OperatorError(f"{out} cannot be written ({error.strerror}).", "Choose another place.") from None


People = Sequence[tuple[Client, tuple[Reading, ...]]]


def _csv(people: People, at: datetime, named: bool, side_notes: bool) -> str:
    """Unique names, else numbers: what `import` accepts as a person."""
    from bot.exports.csv_out import readings_csv

    called = unmistakable([person for person, _ in people])
    return readings_csv([(called[person.id], series) for person, series in people], side_notes=side_notes)


def _fhir(people: People, at: datetime, named: bool, side_notes: bool) -> str:
    from bot.exports.fhir import Subject, bundle, to_json

    subjects = [(Subject(p.id, p.created_at, p.profile, p.name if named else ""), series) for p, series in people]
    return to_json(bundle(subjects, at, side_notes=side_notes)) + "\n"


def _ics(people: People, at: datetime, named: bool, side_notes: bool) -> str:
    """Slots of active clients; a paused client's start on the day after the pause."""
    from bot.exports.calendar import Weekly, calendar

    slots = []
    for person, _ in people:
        if person.slot is None or person.status not in (Status.ACTIVE, Status.PAUSED):
            continue
        zone = zone_of(person.slot.zone_name)
        if not isinstance(zone, ZoneInfo):
            zone = ZoneInfo("UTC")
        begins = None
        if person.status is Status.PAUSED and person.paused_until is not None:
            begins = schedule.instant(person.paused_until, person.slot.at.min, zone) - timedelta(seconds=1)
        slots.append(Weekly(person.id, person.created_at, person.slot, zone, person.name if named else "", begins))
    return calendar(slots, at).decode()


FORMS: dict[str, Callable[[People, datetime, bool, bool], str]] = {"csv": _csv, "fhir": _fhir, "ics": _ics}


# --- erase -------------------------------------------------------------------------------------------------


def erase_client(name: str, coach: str, sure: Callable[[int], bool]) -> str:
    """Permanently erase a client after `sure` confirmed the number of readings; return what happened.

    Raises: UsageError for an unknown coach or client.
    """
    with _ready() as database:

        def find(conn: Connection) -> tuple[Client, int]:
            client = _client(conn, _coach(conn, coach), name)
            return client, len(readings.everything(conn, [client.id]).get(client.id, ()))

        client, number = database.read_now(find)
        if not sure(number):
            return "Nothing was erased."
        database.write_now(erase.client, client.id, now(), audit.OPERATOR)
        left = database.read_now(erasures.owed)
    said = f"Client {client.id} is erased, with {number} readings. In backups nobody can read them any more."
    return said if left is None else f"{said} The log is emptied as soon as nobody reads it."


def on_terminal(number: int) -> bool:
    """Ask the operator to confirm.

    Raises: UsageError if there is no terminal to ask on.
    """
    import typer

    if not sys.stdin.isatty():
        raise UsageError("There is no terminal to ask on. Add --yes if you are sure.")
    return typer.confirm(f"Erase this client and {number} readings for good?")
