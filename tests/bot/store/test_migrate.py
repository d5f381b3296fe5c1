"""The migrations produce the current schema, on both databases, and are part of the installed package."""

from collections.abc import Callable
from importlib.resources import files

import pytest
from alembic.autogenerate import compare_metadata
from alembic.runtime.migration import MigrationContext
from sqlalchemy import inspect, text

from bot.store import migrate
from bot.store.database import Database
from bot.store.schema import metadata


def test_a_migrated_database_equals_a_fresh_schema(database: Database) -> None:
    with database.engine.connect() as conn:
        context = MigrationContext.configure(conn, opts={"compare_type": True, "compare_server_default": True})
        assert compare_metadata(context, metadata) == []
        indexes = {i["name"] for table in metadata.tables for i in inspect(conn).get_indexes(table)}
    assert {index.name for table in metadata.tables.values() for index in table.indexes} <= indexes


def test_a_migrated_database_knows_its_version(database: Database) -> None:
    assert migrate.current(database.engine) == migrate.head()


def test_migrating_again_or_from_another_machine_changes_nothing(
    open_database: Callable[[], Database],
) -> None:
    for database in (open_database(), open_database()):
        migrate.upgrade(database.engine)
        assert migrate.current(database.engine) == migrate.head()


def test_the_way_down_leaves_no_table_of_ours(database: Database) -> None:
    from alembic import command

    config = migrate.config()
    with database.engine.begin() as conn:
        config.attributes["connection"] = conn
        command.downgrade(config, "base")
    with database.engine.connect() as conn:
        assert set(inspect(conn).get_table_names()) <= {"alembic_version", "sqlite_sequence"}
    assert migrate.current(database.engine) is None


def test_the_partial_indexes_are_partial_after_migration_too(database: Database) -> None:
    listing = (
        "SELECT name, sql FROM sqlite_master WHERE type = 'index'"
        if database.is_sqlite
        else "SELECT indexname, indexdef FROM pg_indexes"
    )
    with database.engine.connect() as conn:
        written = {name: sql for name, sql in conn.execute(text(listing)) if sql}
    for table in metadata.tables.values():
        for index in table.indexes:
            partial = index.dialect_options["sqlite"]["where"] is not None
            assert ("WHERE" in written[str(index.name)]) is partial, index.name


@pytest.mark.parametrize(
    "name",
    ["env.py", "script.py.mako", "versions/0001_first.py", "versions/0002_cohorts.py", "versions/0003_indexes.py"],
)
def test_the_migrations_are_package_data(name: str) -> None:
    assert files("bot.store").joinpath("migrations", name).is_file()
