"""Opening the database: transactions, threads, and what a column takes."""

import asyncio
import threading
from collections.abc import Callable
from datetime import UTC, datetime, timedelta, timezone
from decimal import Decimal
from pathlib import Path

import pytest
from sqlalchemy import insert, select, text
from sqlalchemy.exc import IntegrityError, StatementError

from bot.store import audit
from bot.store.database import Database
from bot.store.schema import audit as table
from bot.store.schema import clients, readings
from bot.store.sealed import Secret
from tests.bot.practice import ADA, NOW, add_client


def actors(database: Database) -> list[str]:
    return database.read_now(lambda conn: list(conn.execute(select(table.c.actor).order_by(table.c.id)).scalars()))


def test_importing_or_making_a_database_opens_nothing(tmp_path: Path) -> None:
    database = Database(f"sqlite:///{tmp_path / 'deep' / 'samehour.db'}")
    assert list(tmp_path.iterdir()) == []
    database.read_now(lambda conn: conn.execute(text("SELECT 1")))
    assert (tmp_path / "deep" / "samehour.db").exists()
    database.close()


@pytest.mark.parametrize("url", ["sqlite://", "sqlite:///:memory:", "mysql://localhost/x"])
def test_a_database_that_cannot_be_shared_is_refused(url: str) -> None:
    with pytest.raises(ValueError, match="database must be"):
        Database(url)


def test_a_write_is_all_or_nothing(database: Database) -> None:
    def fails(conn):
        audit.note(conn, NOW, "a", "x")
        raise RuntimeError

    with pytest.raises(RuntimeError):
        database.write_now(fails)
    assert actors(database) == []
    database.write_now(audit.note, NOW, "b", "x")
    assert actors(database) == ["b"]


def test_work_can_be_awaited(database: Database) -> None:
    async def several() -> list[str]:
        await asyncio.gather(*(database.write(audit.note, NOW, f"a{n}", "x") for n in range(8)))
        return await database.read(lambda conn: list(conn.execute(select(table.c.actor)).scalars()))

    assert sorted(asyncio.run(several())) == [f"a{n}" for n in range(8)]


def test_the_event_loop_goes_on_while_the_database_is_busy(database: Database) -> None:
    async def both() -> list[str]:
        order: list[str] = []
        released = threading.Event()

        def slow(conn):
            released.wait(5)
            order.append("written")

        writing = asyncio.create_task(database.write(slow))
        await asyncio.sleep(0)
        order.append("meanwhile")
        released.set()
        await writing
        return order

    assert asyncio.run(both()) == ["meanwhile", "written"]


def test_reading_does_not_wait_for_a_writer(database: Database) -> None:
    database.write_now(audit.note, NOW, "a", "x")

    def writes_and_looks_elsewhere(conn):
        audit.note(conn, NOW, "b", "x")
        return actors(database)

    assert database.write_now(writes_and_looks_elsewhere) == ["a"]
    assert actors(database) == ["a", "b"]


def test_two_processes_that_read_before_they_write_take_turns(open_database: Callable[[], Database]) -> None:
    """This would fail if SQLite transactions did not begin as writing ones."""
    databases = [open_database(), open_database()]

    def add_one(conn):
        seen = len(conn.execute(select(table.c.id)).all())
        audit.note(conn, NOW, str(seen), "x")

    async def at_once() -> None:
        await asyncio.gather(*(database.write(add_one) for database in databases for _ in range(10)))

    asyncio.run(at_once())
    assert len(actors(databases[0])) == 20
    if databases[0].is_sqlite:
        assert [int(actor) for actor in actors(databases[0])] == list(range(20))


def test_an_instant_comes_back_aware_in_utc_whatever_zone_it_was_given_in(database: Database) -> None:
    at = datetime(2026, 3, 30, 9, 30, 0, 123456, tzinfo=timezone(timedelta(hours=3)))
    database.write_now(audit.note, at, "a", "x")
    found = database.read_now(lambda conn: conn.execute(select(table.c.at)).scalar_one())
    assert found == at
    assert found.tzinfo is UTC


def test_an_instant_is_stored_in_sqlite_as_it_always_was(tmp_path: Path) -> None:
    database = Database(f"sqlite:///{tmp_path / 'samehour.db'}")
    with database.engine.begin() as conn:
        table.create(conn)
        audit.note(conn, datetime(2026, 3, 30, 9, 30, tzinfo=timezone(timedelta(hours=3))), "a", "x")
        assert conn.execute(text(f"SELECT at FROM {table.name}")).scalar_one() == "2026-03-30 06:30:00.000000"
    database.close()


def test_a_naive_datetime_is_refused(database: Database) -> None:
    with pytest.raises(StatementError, match="naive"):
        database.write_now(audit.note, datetime(2026, 3, 30), "a", "x")


def test_instants_are_ordered_as_they_happened(database: Database) -> None:
    ats = [NOW, NOW + timedelta(microseconds=1), NOW.replace(microsecond=0) + timedelta(seconds=1), NOW - timedelta(1)]
    for at in ats:
        database.write_now(audit.note, at, "a", "x")
    found = database.read_now(lambda conn: list(conn.execute(select(table.c.at).order_by(table.c.at)).scalars()))
    assert found == sorted(ats)


@pytest.mark.parametrize("value", ["82.40", "0.1", "-3", "1E+2", "123456789012345678901234567890.1"])
def test_a_decimal_keeps_every_digit(database: Database, value: str) -> None:
    client = database.write_now(lambda conn: add_client(conn, None, ADA, stature=Decimal(value)))
    found = database.read_now(
        lambda conn: conn.execute(select(clients.c.stature).where(clients.c.id == client)).scalar()
    )
    assert str(found) == value


def test_what_people_type_fits_whatever_it_is(database: Database) -> None:
    typed = "zwölf\0 ١٢ 🦵 \ud83d '; DROP TABLE clients; --"
    client = database.write_now(lambda conn: add_client(conn, None, ADA, typed))
    found = database.read_now(lambda conn: conn.execute(select(clients.c.name).where(clients.c.id == client)).scalar())
    assert found == "zwölf ١٢ 🦵 ? '; DROP TABLE clients; --"


def test_a_reading_of_nobody_is_refused(database: Database) -> None:
    value = Secret(database.keyring.make(NOW.date()), Decimal(1))
    row = {"client_id": 404, "key": "k", "measure": "weight", "value": value, "taken_at": NOW, "how": "asked"}
    with pytest.raises(IntegrityError):
        database.write_now(lambda conn: conn.execute(insert(readings), row | {"created_at": NOW}))


@pytest.mark.parametrize(("given", "kept"), [("FULL", 2), ("NORMAL", 1)])
def test_how_much_a_commit_survives_is_a_setting(tmp_path: Path, given, kept: int) -> None:
    database = Database(f"sqlite:///{tmp_path / 'x.db'}", synchronous=given)
    assert database.read_now(lambda conn: conn.execute(text("PRAGMA synchronous")).scalar_one()) == kept
    assert database.read_now(lambda conn: conn.execute(text("PRAGMA journal_mode")).scalar_one()) == "wal"
    database.close()
