"""Only one `serve` per SQLite file: a second would take over messages being sent, and send them twice.

The lock is SQLite's own, on an empty file beside the database: the operating system releases it when the process ends
in any way, so no stale lock is left after a crash. On PostgreSQL any number of processes may serve.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from bot.foundation.errors import OperatorError
from bot.foundation.private import make_private

PATIENCE = 2.0  # seconds: a process that is stopping may still be finishing its work


@contextmanager
def only_one(file: Path | None, patience: float = PATIENCE) -> Iterator[None]:
    """Context manager: be the only process on this SQLite file. None, another kind of database, allows several.

    Raises: OperatorError if another process serves it, or the folder is not writable.
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
