"""An empty database for each test, not migrated, on both kinds."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from bot.store.database import Database
from tests.bot.conftest import postgresql_server  # noqa: F401 (fixture)


@pytest.fixture(params=["sqlite", "postgresql"])
def empty(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Database]:
    if request.param == "sqlite":
        database = Database(f"sqlite:///{tmp_path}/old.db")
        yield database
        database.close()
        return
    server = request.getfixturevalue("postgresql_server")
    if isinstance(server, str):
        pytest.skip(server)
    name = server.fresh(template="template0")
    database = Database(server.url(name))
    yield database
    database.close()
    server.drop(name)
