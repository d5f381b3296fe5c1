"""Past readings of a coach's clients, from a file in the format of `samehour score`. Previewed first, then stored.

    lines = look(conn, coach_id, sheet, now)      preview, row by row; nothing is written
    keep(conn, lines, now)                        store

* A person is one of the coach's clients, by full name or by the number `samehour` shows
  (`bot.scoring.identity`). Nothing is stored for clients
  who have not consented or have left.
* A hash of person, measure, instant and value is the idempotency key: a repeated import adds nothing, and a withdrawn
  reading does not come back.
* A client's own entries are never overwritten, and nothing doubtful is stored unless requested.
* Two values of one measure at one instant cannot both be right: neither is stored, and each line names the other.
* A time without a zone is UTC, as in `score`. A date alone is noon of that day where the client lives: midnight in
  UTC would be the day before for half the world. 1.2.2026 is read where the whole file agrees on the order of day and
  month (`bot.scoring.dates`).
"""

from __future__ import annotations

from bisect import bisect_right
from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import AbstractContextManager
from dataclasses import dataclass, replace
from datetime import date, datetime, time, timedelta, tzinfo
from decimal import Decimal
from enum import StrEnum
from operator import attrgetter

from sqlalchemy import Connection, select

from bot.foundation.spreadsheet import unescaped
from bot.scoring import OPTIONAL, REQUIRED, problems
from bot.scoring.dates import Order, iso
from bot.scoring.identity import named
from bot.scoring.parse_row import Meaning, instant, understand
from bot.scoring.tabular import Cells, InputTable, open_sheet
from bot.store import audit, caseload, readings
from bot.store.clients import Client
from bot.store.keyring import Keyring, of_connection
from bot.store.schema import readings as table
from bot.store.zones import zone_of
from core import schedule
from core.care import Status
from core.measures import MEASURES
from core.measures.measure import Measure, Understood
from core.quantity import Unit
from core.reading import How, Reading
from core.understanding.plausibility import doubt

OLDEST = timedelta(days=3653)  # ours: ten years; older readings say nothing about today
MOST_ATTEMPTS = 10
FIRST_ROW = 2  # the header is row 1, as in a spreadsheet
COLUMNS = (*OPTIONAL, "how", "attempts")  # what an export has; any may be missing
PREFIX = "import/"


class Fate(StrEnum):
    """The outcome for a row."""

    KEPT = "kept"
    ALREADY = "already there"
    TWICE = "twice in the file"
    OWN_STAYS = "the client's own reading stays"
    TWO_VALUES = "two values of one time"
    DOUBTFUL = "doubtful"
    SIDE_NOTE = "a side note"
    IN_THE_FUTURE = "in the future"
    TOO_OLD = "too far in the past"
    UNKNOWN_PERSON = "unknown person"
    SEVERAL_PEOPLE = "several people with this name"
    NOT_AGREED = "has not consented yet"
    HAS_LEFT = "has left"
    UNKNOWN_MEASURE = "unknown measure"
    UNUSABLE = "cannot be used"  # not understood, or physically impossible


@dataclass(frozen=True, slots=True)
class ImportedRow:
    """One row of the file. cells: person, taken_at, measure, value, unit, as read.

    detail: explains the fate. client_id, reading, key: of what is stored.
    """

    number: int
    cells: Cells
    fate: Fate
    detail: str = ""
    client_id: int | None = None
    reading: Reading | None = None
    key: str = ""


def opened(path: str) -> AbstractContextManager[InputTable]:
    """Context manager for a file of readings; "-" is standard input.

    Raises: UsageError if it cannot be read or lacks a column.
    """
    return open_sheet(path, REQUIRED, COLUMNS)


def preview(
    conn: Connection,
    coach_id: int,
    sheet: InputTable,
    now: datetime,
    *,
    dates: Order,
    doubtful: bool = False,
    advance: Callable[[], object] = lambda: None,
) -> tuple[ImportedRow, ...]:
    """Preview every row, in file order.

    dates: the order of day and month, as `bot.scoring.dates.order_of` finds it.  doubtful: also accept likely typing
    slips, because somebody has checked them.  advance: called once per row.

    Raises: UsageError if the file turns out to be unreadable.
    """
    people = caseload.everybody(conn, coach_id)
    rows = [
        _read(number, cells, beyond, people, dates) for number, (cells, beyond) in enumerate(sheet.rows(), FIRST_ROW)
    ]
    _refuse_two_values(rows)
    known = _Known(conn, {r.client.id for r in rows if r.client is not None})
    lines: dict[int, ImportedRow] = {}
    for row in sorted(rows, key=lambda r: (r.at is None, r.at or now, r.number)):
        lines[row.number] = _line(row, known, now, doubtful)
        advance()
    return tuple(lines[number] for number in sorted(lines))


def store(conn: Connection, lines: Iterable[ImportedRow], now: datetime) -> int:
    """Store what `look` would keep, in the same transaction; return the number of readings."""
    kept = [line for line in lines if line.fate is Fate.KEPT]
    rows = [
        readings.row(line.client_id, line.key, line.reading, now)
        for line in kept
        if line.client_id is not None and line.reading is not None
    ]
    added = readings.put_new(conn, rows)
    for client_id in sorted({row["client_id"] for row in rows}):
        audit.note(conn, now, audit.OPERATOR, "imported", client_id)
    return added


def key_of(ring: Keyring, client: Client, reading: Reading) -> str:
    """The same key for the same reading, whenever and from whichever file it is imported. It tells nobody the value who
    has not the client's key."""
    value = "/".join(format(v.normalize(), "f") for v in (reading.value, reading.second) if v is not None)
    what = f"{client.id}\n{reading.measure}\n{reading.taken_at.isoformat()}\n{value}"
    return PREFIX + ring.fingerprint(client.key, what)


# --- reading a row -----------------------------------------------------------------------------------------


@dataclass(slots=True)
class _Row:
    """A row as parsed on its own. whole_day: only a date was given."""

    number: int
    cells: Cells
    meaning: Meaning
    fate: Fate | None = None
    detail: str = ""
    client: Client | None = None
    at: datetime | None = None
    whole_day: bool = False
    attempts: int = 1


def _read(number: int, cells: Cells, beyond: bool, people: Sequence[Client], dates: Order) -> _Row:
    person, taken, measure, value, unit, conditions, given, how, attempts = (unescaped(cell) for cell in cells)
    meaning = understand(number, measure, value, unit, conditions, given)
    row = _Row(number, (person, taken, measure, value, unit), meaning)
    found = named(people, person)
    if len(found) == 1:
        row.client = found[0]
        zone = _zone(found[0])
        at, row.whole_day = _instant(taken, zone, dates)
    else:
        at = instant(taken, dates)
    row.at = None if isinstance(at, str) else at
    if attempts.strip().isdecimal() and 1 <= int(attempts) <= MOST_ATTEMPTS:
        row.attempts = int(attempts)
    refused = next(_refusals(row, person, found, at, beyond, how), None)
    if refused is not None:
        row.fate, row.detail = refused
    return row


def _refusals(
    row: _Row, person: str, found: Sequence[Client], at: datetime | str, beyond: bool, how: str
) -> Iterator[tuple[Fate, str]]:
    """Problems of the row itself, most important first."""
    if beyond:
        yield Fate.UNUSABLE, problems.TOO_MANY_CELLS
    if not person.strip():
        yield Fate.UNUSABLE, problems.NO_PERSON
    if not found:
        yield Fate.UNKNOWN_PERSON, "no client of this coach has this name or number"
    if len(found) > 1:
        yield Fate.SEVERAL_PEOPLE, f"write one of the numbers {', '.join(str(c.id) for c in found)} instead"
    if found and not found[0].consented:
        yield Fate.NOT_AGREED, "nothing is stored without consent"
    if found and found[0].status is Status.LEFT:
        yield Fate.HAS_LEFT, ""
    if isinstance(at, str):
        yield Fate.UNUSABLE, at
    if row.meaning.problem:
        yield Fate.UNUSABLE if row.meaning.key in MEASURES else Fate.UNKNOWN_MEASURE, row.meaning.problem
    if how.strip() == How.EARLY:
        yield Fate.SIDE_NOTE, "an early reading never counts"


def _zone(client: Client) -> tzinfo:
    return zone_of(client.slot.zone_name if client.slot else None)


def _instant(text: str, zone: tzinfo, dates: Order) -> tuple[datetime | str, bool]:
    """The instant in a cell, and whether it was only a date."""
    at = instant(text, dates)
    try:
        day = date.fromisoformat(iso(text, dates) or text.strip())
    except ValueError:
        return at, False
    return (at if isinstance(at, str) else schedule.instant(day, time(12), zone)), True


def _refuse_two_values(rows: Iterable[_Row]) -> None:
    """Refuse what is given twice for one time with different values. Of a series, a day may have several."""
    given: dict[tuple[int, str, datetime], list[_Row]] = defaultdict(list)
    for row in rows:
        heard, measure = row.meaning.heard, row.meaning.measure
        if row.fate is None and row.client and row.at and heard and measure and not (measure.series and row.whole_day):
            given[row.client.id, measure.key, row.at].append(row)
    for same in given.values():
        if len({_value(row) for row in same}) > 1:
            for row in same:
                others = [f"row {r.number} has {_as_written(r)}" for r in same if _value(r) != _value(row)]
                row.fate, row.detail = Fate.TWO_VALUES, f"{', '.join(others)}; keep the one that is right"


def _value(row: _Row) -> tuple[Decimal, Decimal | None] | None:
    heard = row.meaning.heard
    return None if heard is None else (heard.value, heard.second)


def _as_written(row: _Row) -> str:
    return " ".join(f"{row.cells[3]} {row.cells[4]}".split())


# --- beside what is there ----------------------------------------------------------------------------------


class _Known:
    """Stored readings of the clients concerned, and those the file has added so far."""

    def __init__(self, conn: Connection, client_ids: set[int]) -> None:
        self.ring = of_connection(conn)
        found = readings.everything(conn, client_ids) if client_ids else {}
        self._series: dict[tuple[int, str], list[Reading]] = defaultdict(list)
        for client_id, series in found.items():
            for reading in series:
                self._series[client_id, reading.measure].append(reading)
        wanted = select(table.c.client_id, table.c.key).where(
            table.c.client_id.in_(client_ids), table.c.key.like(f"{PREFIX}%")
        )
        self.keys: set[tuple[int, str]] = {(r.client_id, r.key) for r in conn.execute(wanted)} if client_ids else set()
        self.new: set[tuple[int, str]] = set()

    def before(self, client_id: int, measure: str, at: datetime) -> Reading | None:
        """The last reading that counts at or before an instant."""
        series = self._series[client_id, measure]
        place = bisect_right(series, at, key=attrgetter("taken_at"))
        return next((r for r in reversed(series[:place]) if r.counts), None)

    def beside(self, client_id: int, measure: str, at: datetime, whole_day: bool, zone: tzinfo) -> list[Reading]:
        """Readings at the same instant, or on the same day if only the date is known."""
        series = self._series[client_id, measure]
        if whole_day:
            day = at.astimezone(zone).date()
            return [r for r in series if r.taken_at.astimezone(zone).date() == day]
        return [r for r in series if r.taken_at == at]

    def add(self, client_id: int, reading: Reading, key: str) -> None:
        series = self._series[client_id, reading.measure]
        series.insert(bisect_right(series, reading.taken_at, key=attrgetter("taken_at")), reading)
        self.new.add((client_id, key))


def _line(row: _Row, known: _Known, now: datetime, doubtful: bool) -> ImportedRow:
    heard, measure, client, at = row.meaning.heard, row.meaning.measure, row.client, row.at
    line = ImportedRow(row.number, row.cells, row.fate or Fate.KEPT, row.detail)
    if row.fate is not None or heard is None or measure is None or client is None or at is None:
        return line
    zone = _zone(client)
    if row.whole_day and at > now and at.astimezone(zone).date() == now.astimezone(zone).date():
        at = now  # today, before noon
    if at > now:
        return replace(line, fate=Fate.IN_THE_FUTURE)
    if at < now - OLDEST:
        return replace(line, fate=Fate.TOO_OLD, detail="more than ten years ago")
    reading = _reading(row, measure, heard, at)
    key = key_of(known.ring, client, reading)
    fate, detail = _beside(known, client.id, reading, key, row.whole_day, zone)
    if fate is not Fate.KEPT:
        return replace(line, fate=fate, detail=detail)
    unlikely = doubt(measure, heard, known.before(client.id, measure.key, at), client.profile)
    if unlikely is not None and not doubtful:
        return replace(line, fate=Fate.DOUBTFUL, detail=problems.unlikely(measure, unlikely))
    known.add(client.id, reading, key)
    return replace(line, detail=row.meaning.remark, client_id=client.id, reading=reading, key=key)


def _reading(row: _Row, measure: Measure, heard: Understood, at: datetime) -> Reading:
    return Reading(
        measure.key,
        heard.value,
        at,
        second=heard.second,
        as_typed=_as_written(row)[:200],
        unit=heard.unit,
        conditions=row.meaning.conditions,
        how=How.IMPORTED,
        attempts=max(heard.attempts, row.attempts),
        window=heard.window,
    )


def _beside(
    known: _Known, client_id: int, reading: Reading, key: str, whole_day: bool, zone: tzinfo
) -> tuple[Fate, str]:
    """Conflicts with stored readings. Several pressures a day are usual, so the same day alone is no conflict."""
    if (client_id, key) in known.new:
        return Fate.TWICE, ""
    if (client_id, key) in known.keys:
        return Fate.ALREADY, "imported before"
    series = MEASURES[reading.measure].series
    there = known.beside(client_id, reading.measure, reading.taken_at, whole_day, zone)
    if any((r.value, r.second) == (reading.value, reading.second) for r in there):
        return Fate.ALREADY, ""
    own = [r for r in there if r.how is not How.IMPORTED]
    if own and not (series and whole_day):
        return Fate.OWN_STAYS, f"it says {_shown(own[-1])}"
    before = [r for r in there if r.taken_at == reading.taken_at]
    if before and not (series and whole_day):
        return Fate.TWO_VALUES, f"{_shown(before[-1])} was imported before; take that back first"
    return Fate.KEPT, ""


def _shown(reading: Reading) -> str:
    value = format(reading.value.normalize(), "f")
    if reading.second is not None and MEASURES[reading.measure].series:
        return f"{value}/{reading.second:f} {Unit.MILLIMETRE_OF_MERCURY}"
    return value
