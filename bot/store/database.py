"""The database connection and its threads.

SQLite has one writer thread, which keeps its connection; PostgreSQL has a few. In our measurements synchronous
SQLAlchemy Core on a thread was five times faster than an asynchronous driver, and three to four times faster than the
ORM.

What was erased in a transaction is then gone from the log too, and its keys are destroyed (`finish_erasures`).

Every `write` is one transaction. On SQLite it begins as BEGIN IMMEDIATE: a transaction that starts by reading
and then writes fails at once under WAL when somebody else wrote meanwhile, however long it may wait.
"""

from __future__ import annotations

import asyncio
import os
import stat
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any, Concatenate, Literal, ParamSpec, TypeVar

from sqlalchemy import Connection, Engine, create_engine, event
from sqlalchemy.engine import URL, make_url
from sqlalchemy.exc import SQLAlchemyError

from bot.foundation import log
from bot.foundation.clock import now
from bot.foundation.private import make_private
from bot.store import erasures
from bot.store.keyring import Keyring, default_url

P = ParamSpec("P")
R = TypeVar("R")
Work = Callable[Concatenate[Connection, P], R]

BUSY_TIMEOUT = 10_000  # ms; another process (the command line) may hold the file for a moment
CHECKPOINT_WITHIN = 100  # ms that emptying the log waits for readers, while writers wait for it
# PostgreSQL. jit: a turn's statements look dear to the planner and take a millisecond; compiling takes a hundred.
OPTIONS = "-c timezone=UTC -c jit=off"

_log = log.get("store")


class FileGone(OSError):
    """The file of the database was deleted, moved, replaced or made read-only under us. code: which."""

    def __init__(self, code: str) -> None:
        super().__init__(f"the database file is {code}")
        self.code = code


class _Place:
    """Where an SQLite database is, and whether it is still the one that was opened.

    A file that was deleted or moved can be written for as long as it is open, and all of it is lost or elsewhere.
    """

    def __init__(self, file: Path) -> None:
        self._names = {"file": str(file), "log": f"{file}-wal"}
        self._opened: dict[str, tuple[int, int]] = {}
        self._connections = 0

    def closed(self) -> None:
        """A connection ended. With the last one SQLite takes the log away."""
        self._connections -= 1
        if self._connections <= 0:
            self._opened.pop("log", None)

    def opened(self) -> None:
        """It was just opened."""
        self._connections += 1
        if "file" not in self._opened:
            there = os.stat(self._names["file"])
            self._opened["file"] = (there.st_dev, there.st_ino)

    def check(self) -> None:
        """Raises: FileGone."""
        if "file" not in self._opened:
            return
        for what, name in self._names.items():
            try:
                there = os.stat(name)
            except OSError:
                if what in self._opened:
                    raise FileGone("missing" if what == "file" else "without its log") from None
                continue
            if self._opened.setdefault(what, (there.st_dev, there.st_ino)) != (there.st_dev, there.st_ino):
                raise FileGone("another one")
            if not there.st_mode & stat.S_IWUSR:
                raise FileGone("read-only")


def _sqlite_engine(url: URL, synchronous: str, place: _Place) -> Engine:
    if not url.database or url.database == ":memory:":
        raise ValueError("the database must be a file: several threads and processes share it")
    engine = create_engine(url, connect_args={"check_same_thread": False, "timeout": BUSY_TIMEOUT / 1000})

    @event.listens_for(engine, "do_connect")
    def _connecting(*_: Any) -> None:
        place.check()  # in place of a file that is gone SQLite would make an empty one, and give it the old one's log
        make_private(Path(str(url.database)))  # its log gets the same rights

    @event.listens_for(engine, "connect")
    def _connected(connection: Any, record: Any) -> None:
        connection.isolation_level = None  # we begin transactions ourselves; the driver starts none for SELECT or DDL
        for pragma in (
            "journal_mode=WAL",
            f"synchronous={synchronous}",
            "foreign_keys=ON",
            "secure_delete=ON",  # erased data is overwritten
            f"busy_timeout={BUSY_TIMEOUT}",
            "temp_store=MEMORY",
        ):
            connection.execute(f"PRAGMA {pragma}")
        place.opened()

    @event.listens_for(engine, "close")
    def _closed(*_: Any) -> None:
        place.closed()

    @event.listens_for(engine, "begin")
    def _begun(connection: Connection) -> None:
        reads = connection.get_execution_options().get("reads", False)
        connection.exec_driver_sql("BEGIN" if reads else "BEGIN IMMEDIATE")

    return engine


def _postgresql_engine(url: URL, threads: int) -> Engine:
    return create_engine(
        url.set(drivername="postgresql+psycopg"),
        pool_size=threads,
        max_overflow=threads,  # for calls outside our threads: the command line, tests
        pool_pre_ping=True,
        pool_use_lifo=True,  # prefer the connection that has our prepared statements
        connect_args={"options": OPTIONS, "prepare_threshold": 1, "connect_timeout": 10},
    )


class Database:
    """One database, opened on first use.

    url: sqlite:///file or postgresql://...; synchronous: of SQLite, FULL survives a power cut, NORMAL a
    killed process; threads: how many transactions run at once on PostgreSQL; keyring: the keys of its people, None for
    those in their usual place.

    Raises: ValueError for a database of another kind, or one in memory.
    """

    def __init__(
        self,
        url: str,
        *,
        synchronous: Literal["FULL", "NORMAL"] = "FULL",
        threads: int = 4,
        keyring: Keyring | None = None,
    ) -> None:
        parsed = make_url(url)
        self.is_sqlite = parsed.get_backend_name() == "sqlite"
        self._place: _Place | None = None
        self._gone = 0  # how often that was found
        if self.is_sqlite:
            self._place = _Place(Path(str(parsed.database)))
            self.engine = _sqlite_engine(parsed, synchronous, self._place)
        elif parsed.get_backend_name() == "postgresql":
            self.engine = _postgresql_engine(parsed, threads)
        else:
            raise ValueError("the database must be SQLite or PostgreSQL")
        self.file = Path(str(parsed.database)) if self.is_sqlite else None
        self.keyring = keyring or Keyring(default_url(parsed))
        self.engine.dialect.keyring = self.keyring  # type: ignore[attr-defined]  # where sealed columns look for it
        self._reading = self.engine.execution_options(reads=True)
        writers = 1 if self.is_sqlite else threads
        self._writers = ThreadPoolExecutor(writers, thread_name_prefix="store-write")
        self._readers = ThreadPoolExecutor(2, thread_name_prefix="store-read")

    # Work is passed as a function with arguments, so that it runs entirely on one of our threads.

    def _write(self, work: Callable[..., R], args: tuple[Any, ...]) -> R:
        with self.engine.connect() as conn:
            with conn.begin():
                result = work(conn, *args)
            owes = conn.info.pop(erasures.OWED, False)
        self._still_there()  # before anybody is told that something was stored
        if owes:
            self._finish_erasures()
        return result

    def _finish_erasures(self) -> int:
        """Destroy the keys of those who were erased, empty the log, and let the goodbyes go; how many were finished.

        What does not work now is still owed, and is tried again.
        """
        try:
            with self._reading.connect() as conn, conn.begin():
                owed = erasures.owed(conn)
            if owed is None:
                return 0
            self.keyring.destroy(owed.keys, now().date())
            if self.is_sqlite and not self._empty_log():
                return 0
            with self.engine.connect() as conn, conn.begin():
                erasures.settle(conn, owed)
        except (SQLAlchemyError, OSError) as error:
            _log.error("an erasure could not be finished yet", fault=log.fault(error))
            return 0
        return len(owed.rows)

    def _empty_log(self) -> bool:
        """Move the log into the file and empty it, so that no erased page lives on in it; whether that worked. It does
        not while somebody reads what stood there before."""
        raw = self.engine.raw_connection()
        try:
            cursor = raw.cursor()
            cursor.execute(f"PRAGMA busy_timeout={CHECKPOINT_WITHIN}")
            try:
                (busy, _, _) = cursor.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()
            finally:
                cursor.execute(f"PRAGMA busy_timeout={BUSY_TIMEOUT}")
            return not busy
        finally:
            raw.close()

    async def finish_erasures(self) -> int:
        """Do what is still owed to those who were erased; how many that were."""
        return await asyncio.get_running_loop().run_in_executor(self._writers, self._finish_erasures)

    def finish_erasures_now(self) -> int:
        """`finish_erasures` for code without an event loop."""
        return self._writers.submit(self._finish_erasures).result()

    def _read(self, work: Callable[..., R], args: tuple[Any, ...]) -> R:
        with self._reading.connect() as conn, conn.begin():
            result = work(conn, *args)
        self._still_there()
        return result

    def _still_there(self) -> None:
        """Raises: FileGone when what was just written or read is not what the next process will find."""
        if self._place is None:
            return
        try:
            self._place.check()
        except FileGone as error:
            self._gone += 1
            if self._gone & (self._gone - 1) == 0:  # 1, 2, 4, 8 ...
                _log.error("the database file is gone: nothing can be stored", code=error.code, attempt=self._gone)
            raise

    async def write(self, work: Work[..., R], *args: Any) -> R:
        """Run `work(conn, *args)` in one transaction and return its result. Rolled back if it raises."""
        return await asyncio.get_running_loop().run_in_executor(self._writers, self._write, work, args)

    async def read(self, work: Work[..., R], *args: Any) -> R:
        """Like `write`, for work that only reads; on SQLite it never waits for a writer."""
        return await asyncio.get_running_loop().run_in_executor(self._readers, self._read, work, args)

    def write_now(self, work: Work[..., R], *args: Any) -> R:
        """`write` for code without an event loop. Must not be called from within a `write`."""
        return self._writers.submit(self._write, work, args).result()

    def read_now(self, work: Work[..., R], *args: Any) -> R:
        """`read` for code without an event loop."""
        return self._readers.submit(self._read, work, args).result()

    def close(self) -> None:
        """Finish work in progress, then close every connection. A closed database cannot be used again."""
        self._writers.shutdown(wait=True)
        self._readers.shutdown(wait=True)
        self.engine.dispose()
        self.keyring.close()
