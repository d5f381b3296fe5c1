"""/mydata: everything we hold of a client, readable and as CSV, gathered when it is sent and kept nowhere.

    readings.csv     every reading, withdrawn ones too, oldest first
    everything.txt   every row of every table that is about this client, field by field

The tables are found by walking the schema, so a table added later cannot be forgotten.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator, Mapping, Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, Row, Table, select

from bot.rendering.reader import Reader, Rendered
from bot.store.schema import clients, coaches, conversations, inbox, metadata, organisers, outbox, people, readings

READINGS = ("taken_at", "measure", "value", "second", "unit", "as_typed", "conditions", "how", "withdrawn_at")
_OF_CHAT = (conversations, inbox, outbox)


def gather(conn: Connection, person_id: int | None, reader: Reader) -> tuple[Rendered, ...]:
    """Return what a person is sent: two files, or one for staff. Whoever is erased meanwhile is sent nothing."""
    client = conn.execute(select(clients).where(clients.c.person_id == person_id)).one_or_none()
    if client is None:
        return _of_staff(conn, person_id, reader)
    return (
        Rendered(document=("readings.csv", _csv(conn, client.id, reader))),
        Rendered(document=("everything.txt", _text(conn, client, reader))),
    )


def _of_staff(conn: Connection, person_id: int | None, reader: Reader) -> tuple[Rendered, ...]:
    """Everything of a coach or organiser themselves: what they set, saved, wrote and noted. A client's readings are
    the client's own data, and are not in it."""
    person = conn.execute(select(people).where(people.c.id == person_id)).one_or_none()
    if person is None:
        return ()
    lines: list[str] = []
    _add(lines, "people", [person], reader)
    coach = conn.execute(select(coaches).where(coaches.c.person_id == person_id)).all()
    organiser = conn.execute(select(organisers).where(organisers.c.person_id == person_id)).all()
    _add(lines, "coaches", coach, reader)
    _add(lines, "organisers", organiser, reader)
    for role, rows in (("coach_id", coach), ("organiser_id", organiser)):
        for table in metadata.sorted_tables:
            if role in table.c and table is not clients:
                mine = select(table).where(table.c[role].in_([r.id for r in rows]))
                _add(lines, table.name, conn.execute(mine).all(), reader)
    for table in _OF_CHAT:
        _add(lines, table.name, conn.execute(select(table).where(table.c.chat_id == person.chat_id)).all(), reader)
    return (Rendered(document=("everything.txt", "\n".join(lines).encode())),)


def tables() -> Iterator[Table]:
    """Yield every table whose rows belong to one client."""
    for table in metadata.sorted_tables:
        if "client_id" in table.c:
            yield table


def _csv(conn: Connection, client_id: int, reader: Reader) -> bytes:
    rows = conn.execute(
        select(*(readings.c[name] for name in READINGS))
        .where(readings.c.client_id == client_id)
        .order_by(readings.c.taken_at, readings.c.id)
    )
    text = io.StringIO()
    writer = csv.writer(text)
    writer.writerow(READINGS)
    writer.writerows([_harmless(_shown(value, reader)) for value in row] for row in rows)
    return text.getvalue().encode("utf-8-sig")  # spreadsheets tell UTF-8 by its mark


def _text(conn: Connection, client: Row[Any], reader: Reader) -> bytes:
    lines: list[str] = []
    person = conn.execute(select(people).where(people.c.id == client.person_id)).all()
    chat_id = person[0].chat_id if person else None
    _add(lines, "people", person, reader)
    _add(lines, "clients", [client], reader)
    for table in tables():
        _add(lines, table.name, conn.execute(select(table).where(table.c.client_id == client.id)).all(), reader)
    for table in _OF_CHAT:
        _add(lines, table.name, conn.execute(select(table).where(table.c.chat_id == chat_id)).all(), reader)
    return "\n".join(lines).encode()


def _add(lines: list[str], name: str, rows: Sequence[Row[Any]], reader: Reader) -> None:
    for number, row in enumerate(rows, 1):
        lines.append(f"[{name} {number}]")
        lines += _fields(dict(row._mapping), reader)
        lines.append("")


def _fields(row: Mapping[str, Any], reader: Reader) -> Iterator[str]:
    for name, value in row.items():
        if value not in (None, ""):
            yield f"{name}: {_shown(value, reader)}"


def _shown(value: Any, reader: Reader) -> str:
    if isinstance(value, datetime):
        return value.astimezone(reader.zone).isoformat(timespec="seconds")
    return "" if value is None else str(value)


def _harmless(text: str) -> str:
    """Keep a spreadsheet from taking what somebody typed for a formula."""
    return f"'{text}" if text[:1] in ("=", "+", "-", "@", "\t", "\r") else text
