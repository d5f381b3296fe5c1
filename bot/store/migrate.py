"""Schema versions: the database's, the code's, and the upgrade between them."""

from __future__ import annotations

from importlib.resources import files

from alembic import command
from alembic.config import Config
from alembic.runtime.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import Connection, Engine, text

ONE_AT_A_TIME = 7_351_400_100  # an arbitrary unique number: the advisory lock for machines that start at the same time


def config() -> Config:
    """Alembic's configuration for our migrations."""
    ours = Config()
    ours.set_main_option("script_location", str(files("bot.store") / "migrations"))
    return ours


def head() -> str:
    """The version the code needs."""
    newest = ScriptDirectory.from_config(config()).get_current_head()
    if newest is None:
        raise RuntimeError("the migrations are missing from the installation")
    return newest


def known() -> frozenset[str]:
    """Every version the code can upgrade from."""
    return frozenset(script.revision for script in ScriptDirectory.from_config(config()).walk_revisions())


def version(conn: Connection) -> str | None:
    """The version of a connection's database; None if it has no tables yet."""
    return MigrationContext.configure(conn).get_current_revision()


def current(engine: Engine) -> str | None:
    """The version of the database; None if it has no tables yet."""
    with engine.execution_options(reads=True).connect() as conn:
        return version(conn)


def upgrade(engine: Engine, to: str = "head") -> None:
    """Upgrade the database in one transaction, if needed. Safe to run concurrently."""
    with engine.begin() as conn:  # on SQLite this is BEGIN IMMEDIATE
        if conn.dialect.name == "postgresql":
            conn.execute(text("SELECT pg_advisory_xact_lock(:lock)"), {"lock": ONE_AT_A_TIME})
        ours = config()
        ours.attributes["connection"] = conn
        command.upgrade(ours, to)
