"""`samehour migrate`. `backup` and `restore` are in `bot.operator.backup`."""

from __future__ import annotations

import sqlite3

from sqlalchemy.exc import SQLAlchemyError

from bot.foundation import config
from bot.store import migrate as versions
from bot.store.opening import open_database, unreachable


def migrate() -> str:
    """Upgrade the schema; return what happened.

    Raises: BadSettings, CannotReach.
    """
    database = open_database(config.read())
    try:
        before = versions.current(database.engine)
        versions.upgrade(database.engine)
        after = versions.current(database.engine)
    except (SQLAlchemyError, OSError, sqlite3.Error) as error:
        raise unreachable(error) from None
    finally:
        database.close()
    return f"The schema is already {after}." if before == after else f"The schema is now {after}."
