"""A small practice in a database: Rowan the coach, and clients. All invented."""

from dataclasses import dataclass
from datetime import UTC, date, datetime, time
from decimal import Decimal
from typing import Any

from sqlalchemy import Connection, Text, literal, select, update

from bot.store import clients, owners, people
from bot.store.people import Role
from bot.store.schema import clients as clients_table
from bot.store.schema import coaches
from bot.store.schema import people as people_table
from bot.store.sealed import secret
from core.care import Plan, Slot, Status
from core.quantity import Unit
from core.reading import Reading

NOW = datetime(2026, 3, 30, 6, 30, tzinfo=UTC)  # Monday 07:30 in London, the day after the clocks went forward
MONDAY = date(2026, 3, 30)
SLOT = Slot(0, time(7, 30), "Europe/London")
ROWAN, ADA, BEN = 900, 100, 200  # chats


@dataclass(frozen=True)
class Practice:
    coach: int
    ada: int


def add_coach(conn: Connection, chat_id: int = ROWAN, name: str = "Rowan", **settings: Any) -> int:
    person = people.add(conn, chat_id, Role.COACH, name, "en", NOW)
    coach = people.add_coach(conn, person, name, NOW)
    if settings:
        conn.execute(update(coaches).where(coaches.c.id == coach).values(**settings))
    return coach


def add_client(
    conn: Connection,
    coach_id: int | None,
    chat_id: int = ADA,
    name: str = "Ada",
    *,
    plan: Plan | None = None,
    slot: Slot | None = SLOT,
    **columns: Any,
) -> int:
    """An active client whose slot is due from NOW on; `columns` are set directly."""
    person = people.add(conn, chat_id, Role.CLIENT, name, "de", NOW)
    client = clients.add(conn, NOW, name=name, coach_id=coach_id, person_id=person, plan=plan)
    values: dict[str, Any] = {"status": Status.ACTIVE.value, "consented_at": NOW}
    if slot is not None:
        values |= {"weekday": slot.weekday, "at": slot.at, "zone_name": slot.zone_name}
        values |= {"next_due_at": NOW, "next_due_day": MONDAY}
    clients.change(conn, {client: values | columns})
    return client


def client_of(conn: Connection, chat_id: int) -> clients.Client:
    return clients.client_of(conn.execute(clients.ALL.where(people_table.c.chat_id == chat_id)).one())


def rowan_and_ada(conn: Connection) -> Practice:
    coach = add_coach(conn)
    return Practice(coach, add_client(conn, coach))


def rename(conn: Connection, client_id: int, name: str) -> None:
    """Give a client and the person they are another name."""
    clients.change(conn, {client_id: {"name": name}})
    client = next(c for r in conn.execute(clients.ALL) if (c := clients.client_of(r)).id == client_id)
    theirs = people_table.c.id == client.person_id
    conn.execute(update(people_table).where(theirs).values(name=secret(client.key, name)))


def key_of(conn: Connection, chat_id: int) -> str:
    """The number of the key of whose chat this is; of nobody's, what belongs to nobody is sealed with."""
    return owners.of_chats(conn, [chat_id]).get(chat_id) or owners.passing(conn, NOW)


def in_clear(value: str) -> Any:
    """A value for a sealed column as nobody of ours would write it: not sealed."""
    return literal(value, Text())


def row_of(conn: Connection, client_id: int) -> Any:
    return conn.execute(select(clients_table).where(clients_table.c.id == client_id)).one()


def weight(value: str, at: datetime, **more: Any) -> Reading:
    return Reading("weight", Decimal(value), at, as_typed=f"{value} kg", unit=Unit.KILOGRAM, **more)
