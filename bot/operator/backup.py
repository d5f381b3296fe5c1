"""`samehour backup` and `restore`: the whole database in one file, as it was at one instant.

    backup(to, key=...)           while the bot runs, without blocking it
    restore(source, force=...)    into a database not in use; `force` overwrites what is in it

SQLite is copied with its online backup in a single step, so concurrent transactions are included entirely or not at
all. PostgreSQL is dumped with `pg_dump`, in one snapshot. Only the owner can read the file. It holds everything the
database holds, encrypted as it is there, and no keys: whoever is erased later is unreadable in it, and is erased again
when it is restored. The whole file can be encrypted to a public key.
"""

from __future__ import annotations

import os
import re
import shutil
import sqlite3
import subprocess
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory

from sqlalchemy import Engine, inspect, select, table, text
from sqlalchemy.engine import URL
from sqlalchemy.exc import SQLAlchemyError

from bot.foundation import config
from bot.foundation.clock import now
from bot.foundation.errors import OperatorError
from bot.foundation.private import private_file, private_folder
from bot.operator import sealed_file
from bot.store import migrate as versions
from bot.store.database import Database
from bot.store.opening import forget_destroyed, open_database, own_keys, unreachable
from bot.store.schema import settings as settings_table

SQLITE, POSTGRESQL = b"SQLite format 3\0", b"PGDMP"  # the first bytes of each kind of backup
VERSION_TABLE = "alembic_version"
_VERSION = re.compile(r"^COPY \S*alembic_version .*?;\n(\S+)\n", re.MULTILINE)
_MAJOR = re.compile(r"\) (\d+)")


def backup(to: Path, key: str = "") -> str:
    """Copy the database into `to`; return a description of what was written. key: a public key to encrypt it to.

    Raises: OperatorError if `to` exists, or the database or its tool is missing.
    """
    if to.exists():
        raise OperatorError(f"{to} exists already.", "Choose a new file name.")
    database = open_database(config.read())
    part, whole = to.with_name(f"{to.name}.part"), to.with_name(f"{to.name}.whole")
    try:
        _private(part)
        if database.file is not None:
            _copy(_there(database.file), part)
        else:
            _postgresql(database.engine.url, "pg_dump", _major(database.engine)).run(
                "--format=custom", "--no-owner", f"--file={part}"
            )
        if key:
            whole.unlink(missing_ok=True)
            part.rename(whole)
            sealed_file.seal(whole, part, key)
        _to_disk(part)
        part.replace(to)
    except OSError as error:
        raise OperatorError(f"{to} cannot be written ({error.strerror}).", "Choose another place.") from None
    finally:
        part.unlink(missing_ok=True)
        whole.unlink(missing_ok=True)
        database.close()
    return f"Wrote {to} ({to.stat().st_size:,} bytes)."


def restore(source: Path, *, force: bool = False, key_file: Path | None = None) -> str:
    """Restore a backup; return what happened. Whoever was erased since is erased again.

    force: overwrite a database that holds something; all of it is lost.  key_file: the private key of a sealed backup.

    Raises: OperatorError if the backup is missing, damaged or from a newer version; if the database is in use; if it
    holds something and `force` was not given.
    """
    if not source.is_file():
        raise OperatorError(f"There is no file {source}.", "Name a file written by `samehour backup`.")
    if sealed_file.is_sealed(source):
        return _restore_sealed(source, force, key_file)
    database = open_database(config.read())
    try:
        kind = POSTGRESQL if database.file is None else SQLITE
        with source.open("rb") as file:
            if not file.read(16).startswith(kind):
                raise OperatorError(
                    f"{source} is not a backup of this kind of database.", "Check the file and SAMEHOUR_DATABASE_URL."
                )
        if database.file is None or database.file.exists():
            _refuse_unless(database, force=force)
        version = _restore_sqlite(source, database.file) if database.file else _restore_postgresql(source, database)
    finally:
        database.close()
    again = _forget() if version == versions.head() else 0
    next_step = "`samehour check`" if version == versions.head() else "`samehour migrate`, then `samehour check`"
    said = f" {again} people who were erased since are erased in it." if again else ""
    return f"The backup is restored.{said} Run {next_step}."


def _restore_sealed(source: Path, force: bool, key_file: Path | None) -> str:
    if key_file is None:
        raise OperatorError(f"{source} is sealed.", "Name the key that opens it: --key-file FILE.")
    with TemporaryDirectory(prefix="samehour-restore-") as folder:  # for its owner alone
        whole = Path(folder) / "whole"
        sealed_file.open_sealed(source, whole, key_file)
        return restore(whole, force=force)


def _forget() -> int:
    """Erase whoever was erased since the backup; how many."""
    with closing(open_database(config.read())) as database:
        if not database.write_now(own_keys, database.keyring):
            return 0  # `check` says that the keys are not those of this database
        return database.write_now(forget_destroyed, database.keyring, now())


def _refuse_unless(database: Database, *, force: bool) -> None:
    try:
        there = _holds_something(database.engine)
    except SQLAlchemyError as error:
        if force and database.file is not None:
            return  # damaged: that may be why a backup is being restored
        raise unreachable(error) from None
    finally:
        database.engine.dispose()
    if there and not force:
        raise OperatorError(
            "The database is not empty.",
            "Set SAMEHOUR_DATABASE_URL to a new one, or add --force to overwrite everything in it.",
        )


def _holds_something(engine: Engine) -> bool:
    """Whether the database holds more than a schema, and whose keys it was first opened with."""
    tables = set(inspect(engine).get_table_names()) - {VERSION_TABLE, settings_table.name}
    with engine.connect() as conn:
        return any(conn.execute(select(1).select_from(table(name)).limit(1)).first() for name in tables)


def _known(version: str | None, source: Path) -> str:
    """The schema version, if it is ours or older.

    Raises: OperatorError for an unknown or missing version.
    """
    if version is None or version not in versions.known():
        raise OperatorError(
            f"{source} was made by another version (schema {version or 'unknown'}).", "Update the program first."
        )
    return version


# --- SQLite ------------------------------------------------------------------------------------------------


def _there(file: Path) -> Path:
    if not file.is_file():
        raise OperatorError(f"There is no database {file}.", "Check SAMEHOUR_DATABASE_URL.")
    return file


def _private(file: Path) -> None:
    """Create an empty file that only its owner can read."""
    file.unlink(missing_ok=True)
    private_file(file)


def _to_disk(file: Path) -> None:
    handle = os.open(file, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def _copy(source: Path, to: Path) -> str | None:
    """Copy one of our databases into an empty file and check the copy; return its schema version."""
    try:
        reading = f"{source.absolute().as_uri()}?mode=ro"
        with closing(sqlite3.connect(reading, uri=True, timeout=10)) as old, closing(sqlite3.connect(to)) as new:
            old.backup(new)
            new.execute("PRAGMA journal_mode=DELETE")  # a single file, without a log beside it
            (found,) = new.execute("PRAGMA integrity_check").fetchone()
            version = new.execute("SELECT version_num FROM alembic_version").fetchone()
    except sqlite3.Error as error:
        raise OperatorError(
            f"{source} cannot be copied ({type(error).__name__}).", "Is it a Samehour database?"
        ) from None
    if found != "ok":
        raise OperatorError(f"{source} is damaged.", "Use another backup.")
    return version[0] if version else None


def _restore_sqlite(source: Path, file: Path) -> str:
    private_folder(file.parent)
    part = file.with_name(f"{file.name}.part")
    try:
        _private(part)
        version = _known(_copy(source, part), source)
        if file.exists():
            _alone(file)
        for left in ("-wal", "-shm"):
            Path(f"{file}{left}").unlink(missing_ok=True)
        _to_disk(part)
        part.replace(file)
    finally:
        part.unlink(missing_ok=True)
    return version


def _alone(file: Path) -> None:
    """Make sure that nobody has the database open: only then can its log be discarded."""
    try:
        with closing(sqlite3.connect(file, timeout=0)) as db:
            db.execute("PRAGMA journal_mode=DELETE")
    except sqlite3.OperationalError:
        raise OperatorError("The database is in use.", "Stop the bot first.") from None
    except sqlite3.DatabaseError:
        pass  # damaged: that may be why it is being replaced


# --- PostgreSQL --------------------------------------------------------------------------------------------


@dataclass(frozen=True)
class _Tool:
    """One of PostgreSQL's client programs. The password is passed in the environment: arguments are visible to all."""

    path: str
    name: str
    url: URL

    def run(self, *arguments: str, database: bool = True) -> str:
        there = self.url
        url = URL.create("postgresql", there.username, None, there.host, there.port, there.database, there.query)
        where = [f"--dbname={url.render_as_string(hide_password=False)}"] if database else []
        secret = {"PGPASSWORD": str(there.password)} if there.password else {}
        ended = subprocess.run(
            [self.path, *where, *arguments], capture_output=True, check=False, env={**os.environ, **secret}
        )
        if ended.returncode:
            raise OperatorError(f"{self.name} failed with code {ended.returncode}.", "Check the database and the file.")
        return ended.stdout.decode("utf-8", "replace")


def _postgresql(url: URL, name: str, server: int) -> _Tool:
    """Find a tool no older than the server: older ones refuse to read it.

    Raises: OperatorError saying what to install.
    """
    path = shutil.which(name)
    if path is None:
        raise OperatorError(
            f"{name} is not installed here.", f"Install PostgreSQL's client programs, version {server}."
        )
    said = subprocess.run([path, "--version"], capture_output=True, check=False, text=True).stdout
    major = _MAJOR.search(said)
    if major is not None and int(major[1]) < server:
        raise OperatorError(
            f"{name} is version {major[1]}, and the server {server}.",
            f"Install PostgreSQL's client programs, version {server}.",
        )
    return _Tool(path, name, url)


def _major(engine: Engine) -> int:
    try:
        with engine.connect() as conn:
            number = conn.execute(text("SHOW server_version_num")).scalar_one()
    except SQLAlchemyError as error:
        raise unreachable(error) from None
    return int(number) // 10_000


def _restore_postgresql(source: Path, database: Database) -> str:
    tool = _postgresql(database.engine.url, "pg_restore", _major(database.engine))
    found = _VERSION.search(tool.run("--data-only", "--table=alembic_version", "--file=-", str(source), database=False))
    version = _known(found[1] if found else None, source)
    with database.engine.connect() as conn:
        others = conn.execute(
            text("SELECT count(*) FROM pg_stat_activity WHERE datname = current_database() AND pid <> pg_backend_pid()")
        ).scalar_one()
    database.engine.dispose()
    if others:
        raise OperatorError("The database is in use.", "Stop the bot first.")
    tool.run("--no-owner", "--exit-on-error", "--single-transaction", "--clean", "--if-exists", str(source))
    return version
