"""The schema's versions: which one the database has, which one the code wants, and the way up."""

from __future__ import annotations

from importlib.resources import files

from alembic import command
from alembic.config import Config
from alembic.runtime.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import Connection, Engine, text

SEALED = "0005"  # from this version on, what says something of a person is sealed
ONE_AT_A_TIME = 7_351_400_100  # any number nobody else uses: the lock two machines starting at once meet at


def config() -> Config:
    """Return where Alembic finds our migrations."""
    ours = Config()
    ours.set_main_option("script_location", str(files("bot.store") / "migrations"))
    return ours


def head() -> str:
    """Return the version the code wants."""
    newest = ScriptDirectory.from_config(config()).get_current_head()
    if newest is None:
        raise RuntimeError("the migrations are missing from the installation")
    return newest


def known() -> frozenset[str]:
    """Return every version the code can bring up to its own."""
    return frozenset(script.revision for script in ScriptDirectory.from_config(config()).walk_revisions())


def version(conn: Connection) -> str | None:
    """Return the version a connection's database has; None when it has no tables yet."""
    return MigrationContext.configure(conn).get_current_revision()


def current(engine: Engine) -> str | None:
    """Return the version the database has; None when it has no tables yet."""
    with engine.execution_options(reads=True).connect() as conn:
        return version(conn)


def upgrade(engine: Engine, to: str = "head") -> None:
    """Bring the database up in one transaction, if it is not there yet. Safe to run twice at once."""
    with engine.begin() as conn:  # on SQLite this is BEGIN IMMEDIATE
        if conn.dialect.name == "postgresql":
            conn.execute(text("SELECT pg_advisory_xact_lock(:lock)"), {"lock": ONE_AT_A_TIME})
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
