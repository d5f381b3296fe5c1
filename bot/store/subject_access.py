"""Data subject access: everything stored about a person, table by table, for the person themselves.

The tables are found by walking the schema, so that a new one cannot be forgotten: every row that references a client, a
person or a chat is theirs. What staff wrote about clients is the clients' data, so staff get only its count.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection, Table, func, or_, select
from sqlalchemy.sql.elements import ColumnElement

from bot.store import clients, codec
from bot.store.clients import Client
from bot.store.people import Role
from bot.store.schema import clients as clients_table
from bot.store.schema import coaches, cohorts, metadata, notes, organisers, outbox, people, words
from core.quantity import Unit
from core.reading import SAME, Conditions, How, Reading

OF_NO_USE = frozenset({"token_hash", "claimed_by", "key_id"})  # a one-way hash of a link, who held a message, which key
OF_CLIENTS = {notes.name: "notes", words.name: "words", clients_table.name: "clients"}

HeldRow = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class Section:
    """One table's data about the person."""

    table: str
    rows: tuple[HeldRow, ...]


@dataclass(frozen=True, slots=True)
class Held:
    """All data about a person. client: if they are one. coach_name: of their coach. counted: for staff, what is only
    counted."""

    role: Role
    name: str
    client: Client | None
    coach_name: str
    sections: tuple[Section, ...]
    counted: Mapping[str, int]

    def rows(self, table: str) -> tuple[HeldRow, ...]:
        return next((s.rows for s in self.sections if s.table == table), ())


def of(conn: Connection, person_id: int | None) -> Held | None:
    """Everything stored about a person; None for an unknown or erased person."""
    person = conn.execute(select(people).where(people.c.id == person_id)).one_or_none()
    if person is None:
        return None
    role = Role(person.role)
    if role is Role.CLIENT:
        found = conn.execute(clients.ALL.where(clients_table.c.person_id == person_id)).one_or_none()
        client = None if found is None else clients.client_of(found)
        ids: dict[str, tuple[int, ...]] = {"client_id": () if client is None else (client.id,)}
    else:
        client = None
        ids = {
            "coach_id": _ids(conn, coaches, person.id),
            "organiser_id": _ids(conn, organisers, person.id),
        }
    ids |= {"person_id": (person.id,), "chat_id": (person.chat_id,)}
    coach_name = _coach_name(conn, client)
    sections = tuple(_sections(conn, ids, person.id, None if client is None else client.id))
    return Held(role, person.name, client, coach_name, sections, _counted(conn, ids))


def _ids(conn: Connection, table: Table, person_id: int) -> tuple[int, ...]:
    return tuple(conn.execute(select(table.c.id).where(table.c.person_id == person_id)).scalars())


def _coach_name(conn: Connection, client: Client | None) -> str:
    if client is None or client.coach_id is None:
        return ""
    return conn.execute(select(coaches.c.name).where(coaches.c.id == client.coach_id)).scalar_one_or_none() or ""


def _sections(
    conn: Connection, ids: Mapping[str, tuple[int, ...]], person_id: int, client_id: int | None
) -> Iterator[Section]:
    for table in metadata.sorted_tables:
        if table is people:
            theirs: list[ColumnElement[bool]] = [table.c.id == person_id]
        elif "coach_id" in ids and table.name in OF_CLIENTS:
            continue
        else:
            theirs = [table.c[name].in_(values) for name, values in ids.items() if name in table.c and values]
        if table is outbox and client_id is not None:
            theirs.append(table.c.about == client_id)
        if not theirs:
            continue
        columns = [c for c in table.c if c.name not in OF_NO_USE]
        rows = conn.execute(select(*columns).where(or_(*theirs)).order_by(*table.primary_key.columns)).mappings()
        if found := tuple(dict(row) for row in rows):
            yield Section(table.name, found)


def _counted(conn: Connection, ids: Mapping[str, tuple[int, ...]]) -> dict[str, int]:
    mine = ids.get("coach_id", ())
    if not mine:
        return {}
    return {
        called: conn.execute(select(func.count()).select_from(table).where(table.c.coach_id.in_(mine))).scalar_one()
        for table, called in ((metadata.tables[name], called) for name, called in OF_CLIENTS.items())
    }


def reading_of(r: HeldRow) -> Reading:
    """A row of the readings section as a reading, withdrawn or not."""
    return Reading(
        r["measure"],
        r["value"],
        r["taken_at"],
        r["second"],
        r["as_typed"],
        Unit(r["unit"]) if r["unit"] else None,
        codec.loads_as(Conditions, r["conditions"]) if r["conditions"] else SAME,
        How(r["how"]),
        r["attempts"],
        r["window"],
        r["id"],
        r["key"],
    )


def cohort_names(conn: Connection, held: Held) -> tuple[str, ...]:
    """The names of the cohorts a client is or was in; the rows contain only their ids."""
    numbers = [row["cohort_id"] for row in held.rows("cohort_members")]
    return tuple(conn.execute(select(cohorts.c.name).where(cohorts.c.id.in_(numbers)).order_by(cohorts.c.id)).scalars())
