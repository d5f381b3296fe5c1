"""A database of any released version, with rows in every table, upgrades to the newest and loses nothing.

The rows are generated from the old database's own column definitions, so that a version stays tested as the code moves
on. A new migration needs no new test here; its changes to rows are tested separately.
"""

from datetime import UTC, date, datetime, time, timedelta

import pytest
from alembic.autogenerate import compare_metadata
from alembic.runtime.migration import MigrationContext
from sqlalchemy import BigInteger, Boolean, Date, DateTime, Integer, MetaData, Time, func, select

from bot.process import reminders
from bot.store import codec, inbox, migrate
from bot.store.inbox import NewEvent
from bot.store.schema import metadata
from bot.store.sealed import Sealed
from bot.turns.turn import work_batch
from core.care import Plan
from core.dialogue.client.states import FRESH
from core.dialogue.kit.events import Text
from tests.bot.office import steps

AT = datetime(2026, 3, 30, 6, 30, tzinfo=UTC)
CHAT = 100
MEANT = {  # for columns where only some values make sense; the first that fits, by column or by table and column
    "chat_id": CHAT,
    "role": "client",
    "language": "en",
    "status": "active",
    "inbox.status": "done",
    "outbox.status": "sent",
    "kind": "message",
    "invitations.kind": "client",
    "sex": "female",
    "background": "white",
    "cautions": "",
    "mass_unit": "kg",
    "length_unit": "cm",
    "unit": "kg",
    "how": "asked",
    "measure": "weight",
    "flags.code": "missed_check_ins",
    "flags.severity": "this_week",
    "flags.cleared_at": None,
    "outcome": "asked",
    "zone_name": "Europe/London",
    "value": "82.4",
    "second": None,
    "stature": "165",
    "target": "80",
    "weekday": 0,
    "plan": codec.dumps(Plan()),
    "conditions": None,
    "choices": None,
    "message": None,
    "event": None,
    "settings": None,
    "counts": None,
    "closing": None,
    "evidence": "[]",
    "readiness": None,
    "state": codec.dumps(FRESH),
    "paused_until": None,
    "left_at": None,
    "withdrawn_at": None,
    "retry_at": None,
    "baseline_since": None,
}


def value_for(table, column):
    for name in (f"{table.name}.{column.name}", column.name):
        if name in MEANT:
            return MEANT[name]
    match column.type:
        case Boolean():
            return True
        case DateTime():
            return AT if column.type.timezone else AT.replace(tzinfo=None)
        case Date():
            return date(2026, 3, 30)
        case Time():
            return time(7, 30)
        case Integer() | BigInteger():
            return 1
        case _:
            return f"{table.name}.{column.name}"


def filled(conn):
    """Put one row into every table the database has; return the tables."""
    old = MetaData()
    old.reflect(conn)
    tables = [table for table in old.sorted_tables if table.name != "alembic_version"]
    ring = conn.dialect.keyring
    key = ring.make(AT.date())
    with_keys = any("key_id" in table.c for table in tables)
    for table in tables:
        values = {column.name: value_for(table, column) for column in table.columns}
        for name, value in values.items():
            column = metadata.tables[table.name].c.get(name)
            if name == "key_id":
                values[name] = key
            elif with_keys and column is not None and isinstance(column.type, Sealed) and value is not None:
                plain = {"int": "1968", "date": "1968-03-30"}.get(column.type.of, str(value))
                values[name] = ring.seal(key, column.type.place, plain)
        conn.execute(table.insert().values(values))
    if conn.dialect.name == "postgresql":  # we chose the numbers: the next one must be another
        for table in tables:
            if "id" in table.c:
                conn.exec_driver_sql(f"SELECT setval(pg_get_serial_sequence('{table.name}', 'id'), 1)")
    return tables


@pytest.mark.parametrize("version", sorted(migrate.known()))
def test_a_database_of_any_version_comes_up_with_all_it_holds(empty, version):
    migrate.upgrade(empty.engine, version)
    tables = empty.write_now(filled)
    assert {table.name for table in tables} >= {"people", "clients", "readings", "inbox", "outbox"}

    migrate.upgrade(empty.engine)

    assert migrate.current(empty.engine) == migrate.head()
    with empty.engine.connect() as conn:
        context = MigrationContext.configure(conn, opts={"compare_type": True, "compare_server_default": True})
        assert compare_metadata(context, metadata) == []
        counts = {
            name: conn.execute(select(func.count()).select_from(t)).scalar() for name, t in metadata.tables.items()
        }
    assert {name: count for name, count in counts.items() if name in {t.name for t in tables}} == {
        table.name: 1 for table in tables
    }


@pytest.mark.parametrize("version", sorted(migrate.known()))
def test_a_bot_goes_on_with_what_an_older_one_left(empty, version):
    migrate.upgrade(empty.engine, version)
    empty.write_now(filled)
    migrate.upgrade(empty.engine)
    later = AT + timedelta(minutes=1)
    empty.write_now(reminders.sweep, later)
    empty.write_now(inbox.put, [NewEvent("telegram/5", CHAT, Text(later, "7", "1"))], later)
    while empty.write_now(work_batch, steps(), later):
        pass
    assert empty.read_now(inbox.waiting) == 0
    assert empty.read_now(inbox.set_aside_count) == 0
    with empty.engine.connect() as conn:
        said = conn.execute(
            select(func.count()).select_from(metadata.tables["outbox"]).where(metadata.tables["outbox"].c.message != "")
        )
        assert said.scalar_one() >= 1
