"""Schema versions: the database's, the code's, and the upgrade between them."""

from __future__ import annotations

from importlib.resources import files

from alembic import command
from alembic.config import Config
from alembic.runtime.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import Connection, Engine

from bot.store.dialect import one_at_a_time

SEALED = "0005"  # from this version on, what says something of a person is sealed
ONE_AT_A_TIME = 7_351_400_100  # any number nobody else uses: the lock two machines starting at once meet at


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
        one_at_a_time(conn, ONE_AT_A_TIME)
        before = version(conn)
        ours = config()
        ours.attributes["connection"] = conn
        command.upgrade(ours, to)
        sealed = before is not None and before < SEALED <= (version(conn) or "")
    if sealed:
        _rewrite(engine)


def _rewrite(engine: Engine) -> None:
    """Write the database anew, so that nothing of what stood there in clear is left in its free space or its log."""
    with engine.connect() as conn:
        raw = conn.connection.driver_connection
        if conn.dialect.name == "sqlite":
            raw.execute("VACUUM")  # type: ignore[union-attr]
            raw.execute("PRAGMA wal_checkpoint(TRUNCATE)")  # type: ignore[union-attr]
            return
        raw.autocommit = True  # type: ignore[union-attr]
        raw.execute("VACUUM (FULL, ANALYZE)")  # type: ignore[union-attr]
        raw.autocommit = False  # type: ignore[union-attr]
