"""One `serve` on one SQLite file: a second would take over what the first is sending, and say it twice.

The lock is SQLite's own, on an empty file beside the database: the system lets go of it when the process ends,
however it ends, so nothing is left to be cleared away after a crash. On PostgreSQL any number may serve.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from bot.foundation.errors import OperatorError
from bot.foundation.private import make_private

PATIENCE = 2.0  # seconds: one that was told to stop may still be finishing what it has in hand


@contextmanager
def only_one(file: Path | None, patience: float = PATIENCE) -> Iterator[None]:
    """Serve as the only process on this SQLite file; None, another kind of database, may have several.

    Raises: OperatorError when another process serves it, or the folder cannot be written to.
    """
    if file is None:
        yield
        return
    with closing(_locked(file, patience)):
        yield


def _locked(file: Path, patience: float) -> sqlite3.Connection:
    beside = file.with_name(f"{file.name}.serving")
    try:
        make_private(beside)
        lock = sqlite3.connect(beside, timeout=patience, isolation_level=None)
    except (OSError, sqlite3.Error):
        raise OperatorError(f"{beside} cannot be opened.", "Let the bot write to the folder of its database.") from None
    try:
        lock.execute("BEGIN EXCLUSIVE")
    except sqlite3.OperationalError as error:
        lock.close()
        if "locked" in str(error):
            raise OperatorError(
                f"Another `samehour serve` uses {file}.", "Stop it first; several can share a PostgreSQL database."
            ) from None
        raise OperatorError(f"{beside} cannot be locked.", "Let the bot write to the folder of its database.") from None
    return lock
