"""The database connection and its threads.

SQLite has one writer thread, which keeps its connection; PostgreSQL has a few. In our measurements synchronous
SQLAlchemy Core on a thread was five times faster than an asynchronous driver, and three to four times faster than the
ORM.

Every `write` is one transaction. On SQLite it begins as BEGIN IMMEDIATE: with WAL, a transaction that reads before it
writes fails at once if somebody else wrote in the meantime, whatever its timeout.
"""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any, Concatenate, Literal, ParamSpec, TypeVar

from sqlalchemy import Connection, Engine, create_engine, event
from sqlalchemy.engine import URL, make_url

P = ParamSpec("P")
R = TypeVar("R")
Work = Callable[Concatenate[Connection, P], R]

BUSY_TIMEOUT = 10_000  # ms; another process (the command line) may lock the file briefly
SCRUB = "samehour_scrub"
# PostgreSQL. jit: a turn's statements look expensive to the planner but take a millisecond; compiling takes a hundred.
OPTIONS = "-c timezone=UTC -c jit=off"


def _sqlite_engine(url: URL, synchronous: str) -> Engine:
    if not url.database or url.database == ":memory:":
        raise ValueError("the database must be a file: several threads and processes share it")
    engine = create_engine(url, connect_args={"check_same_thread": False, "timeout": BUSY_TIMEOUT / 1000})

    @event.listens_for(engine, "do_connect")
    def _connecting(*_: Any) -> None:
        Path(str(url.database)).parent.mkdir(parents=True, exist_ok=True)

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

    url: sqlite:///file or postgresql://...; synchronous: for SQLite, FULL survives a power cut, NORMAL a killed
    process; threads: concurrent transactions on PostgreSQL.

    Raises: ValueError for a database of another kind, or one in memory.
    """

    def __init__(self, url: str, *, synchronous: Literal["FULL", "NORMAL"] = "FULL", threads: int = 4) -> None:
        parsed = make_url(url)
        self.is_sqlite = parsed.get_backend_name() == "sqlite"
        if self.is_sqlite:
            self.engine = _sqlite_engine(parsed, synchronous)
        elif parsed.get_backend_name() == "postgresql":
            self.engine = _postgresql_engine(parsed, threads)
        else:
            raise ValueError("the database must be SQLite or PostgreSQL")
        self.file = Path(str(parsed.database)) if self.is_sqlite else None
        self._reading = self.engine.execution_options(reads=True)
        writers = 1 if self.is_sqlite else threads
        self._writers = ThreadPoolExecutor(writers, thread_name_prefix="store-write")
        self._readers = ThreadPoolExecutor(2, thread_name_prefix="store-read")

    # Work is passed as a function with arguments, so that it runs entirely on one of our threads.

    def _write(self, work: Callable[..., R], args: tuple[Any, ...]) -> R:
        with self.engine.connect() as conn:
            with conn.begin():
                result = work(conn, *args)
            if conn.info.pop(SCRUB, False) and self.is_sqlite:
                self._checkpoint()
        return result

    def _checkpoint(self) -> None:
        """Checkpoint: move the log into the file and truncate it, so that no erased page remains in the log."""
        raw = self.engine.raw_connection()
        try:
            raw.cursor().execute("PRAGMA wal_checkpoint(TRUNCATE)")
        finally:
            raw.close()

    def _read(self, work: Callable[..., R], args: tuple[Any, ...]) -> R:
        with self._reading.connect() as conn, conn.begin():
            return work(conn, *args)

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


def scrub_after(conn: Connection) -> None:
    """Request a checkpoint after this transaction commits, because it erased data."""
    conn.info[SCRUB] = True
