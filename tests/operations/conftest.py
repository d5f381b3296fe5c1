"""The databases of the other tests."""

from tests.bot.conftest import (  # noqa: F401 (fixtures)
    database,
    database_url,
    open_database,
    postgresql_server,
    sqlite_template,
)
