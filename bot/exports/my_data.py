"""/mydata: data subject access, as readable text and as tables. Gathered at delivery and never stored.

a text          what we know, in their language: see `bot.rendering.subject_access`
readings.csv    of a client: every reading, oldest first, side notes and what was taken back too
everything.csv  every row of every table that is about them: table,row,field,value
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from datetime import date, datetime
from decimal import Decimal
from typing import Any

from sqlalchemy import Connection

from bot.exports.csv_out import COLUMNS, row
from bot.foundation.reader import Reader, Rendered
from bot.foundation.spreadsheet import table
from bot.rendering.subject_access import ClientAccount, MeasureCount, StaffAccount, client_texts, staff_texts
from bot.rendering.voice import voice
from bot.store import subject_access
from bot.store.clients import Client
from bot.store.slots import SlotOutcome
from bot.store.subject_access import Held, HeldRow
from core.care import Slot
from core.judging.readiness import verdict
from core.measures import CHECK_IN_ORDER, MEASURES
from core.reading import Reading

READINGS = (*COLUMNS, "as_typed", "taken_back_at")
EVERYTHING = ("table", "row", "field", "value")
MARK = "\ufeff"  # byte order mark, by which spreadsheets recognise UTF-8


def gather(conn: Connection, person_id: int | None, reader: Reader) -> tuple[Rendered, ...]:
    """Everything a person is sent; empty for an unknown person, or one erased meanwhile."""
    found = subject_access.of(conn, person_id)
    if found is None:
        return ()
    v = voice(reader)
    everything = Rendered(document=("everything.csv", _encoded(table(EVERYTHING, _everything(found, reader)))))
    if found.client is None:
        return *map(Rendered, staff_texts(staff_account(found, reader), v)), everything
    account = client_account(conn, found, found.client, reader)
    series = Rendered(document=("readings.csv", _encoded(table(READINGS, _readings(found)))))
    return *map(Rendered, client_texts(account, v)), series, everything


def _encoded(text: str) -> bytes:
    return (MARK + text).encode()


# --- tables ------------------------------------------------------------------------------------------------


def _stored(found: Held) -> Iterator[tuple[Reading, HeldRow]]:
    for stored in sorted(found.rows("readings"), key=lambda r: (r["taken_at"], r["id"])):
        yield subject_access.reading_of(stored), stored


def _readings(found: Held) -> Iterator[tuple[str, ...]]:
    name = found.client.name if found.client else found.name
    for reading, stored in _stored(found):
        if reading.measure in MEASURES:
            back = stored["withdrawn_at"]
            yield *row(name, reading), reading.as_typed, "" if back is None else back.isoformat()


def _everything(found: Held, reader: Reader) -> Iterator[tuple[str, ...]]:
    for section in found.sections:
        for number, fields in enumerate(section.rows, start=1):
            for name, value in fields.items():
                if value is not None and value != "":
                    yield section.table, str(number), name, _shown(value, reader)
    for name, number in found.counted.items():
        yield name, "", "number", str(number)


def _shown(value: Any, reader: Reader) -> str:
    """Instants in the reader's time zone."""
    match value:
        case datetime():
            return value.astimezone(reader.zone).isoformat(timespec="seconds")
        case Decimal():
            return format(value, "f")
        case bool():
            return "yes" if value else "no"
        case _:
            return str(value)


# --- accounts ----------------------------------------------------------------------------------------------


def _day(at: datetime, reader: Reader) -> date:
    return at.astimezone(reader.zone).date()


def client_account(conn: Connection, found: Held, client: Client, reader: Reader) -> ClientAccount:
    stored = list(_stored(found))
    kept = [reading for reading, r in stored if r["withdrawn_at"] is None]
    counting = [reading for reading in kept if reading.counts]
    numbers = Counter(reading.measure for reading in counting)
    last = {reading.measure: _day(reading.taken_at, reader) for reading in counting}
    outcomes = [SlotOutcome(r["outcome"]) for r in found.rows("slots")]
    flags = found.rows("flags")
    return ClientAccount(
        name=client.name or found.name,
        coach=found.coach_name,
        language=client.language,
        since=_day(client.created_at, reader),
        profile=client.profile,
        plan=client.plan,
        slot=client.slot,
        taken=tuple(MeasureCount(key, numbers[key], last[key]) for key in _in_order(numbers)),
        early=len(kept) - len(counting),
        withdrawn=len(stored) - len(kept),
        slots=(
            sum(outcome is not SlotOutcome.NOT_ASKED for outcome in outcomes),
            sum(outcome is SlotOutcome.ANSWERED for outcome in outcomes),
        ),
        goals=tuple((r["measure"], r["target"], r["by"]) for r in found.rows("goals")),
        words=len(found.rows("words")),
        notes=len(found.rows("notes")),
        flags=len(flags),
        open_flags=sum(r["cleared_at"] is None for r in flags),
        cohorts=subject_access.cohort_names(conn, found),
        before_exercise=verdict(client.readiness, client.profile) or "",
    )


def _in_order(keys: Counter[str]) -> list[str]:
    order = {key: place for place, key in enumerate((*CHECK_IN_ORDER, *MEASURES))}
    return sorted(keys, key=lambda key: order.get(key, len(order)))


def staff_account(found: Held, reader: Reader) -> StaffAccount:
    (person,) = found.rows("people")
    (coach,) = found.rows("coaches") or ({},)
    slot = None
    if coach.get("weekday") is not None and coach.get("at") is not None and coach.get("zone_name"):
        slot = Slot(coach["weekday"], coach["at"], coach["zone_name"])
    return StaffAccount(
        name=found.name,
        language=person["language"],
        since=_day(person["created_at"], reader),
        slot=slot,
        templates=len(found.rows("templates")),
        invitations=len(found.rows("invitations")),
        cohorts=tuple(r["name"] for r in found.rows("cohorts")),
        counted=found.counted,
    )
