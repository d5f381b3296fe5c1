"""`samehour key ...`: the keys that what is stored is sealed with."""

from __future__ import annotations

import os
import sqlite3
from contextlib import closing
from pathlib import Path

from bot.foundation import config
from bot.foundation.errors import OperatorError
from bot.foundation.private import private_file
from bot.operator import sealed_file
from bot.store import master
from bot.store.opening import open_keyring


def rotate(to: Path | None, service: str) -> str:
    """Wrap every key anew with another master key; return what happened. The keys themselves stay.

    to: a file for the new master key, made if there is none; None: in place of the one in use.  service: a key service
    instead of a master key.

    Raises: OperatorError.
    """
    ring = open_keyring(config.read())
    try:
        if service:
            count = ring.rewrap(master.service(service))
            return f"{count} keys are wrapped by the service. Set SAMEHOUR_KEY_SERVICE={service} now."
        if to is not None:
            count = ring.rewrap(master.in_file(to, make=True))
            return f"{count} keys are wrapped by the master key in {to}. Set SAMEHOUR_MASTER_KEY_FILE={to} now."
        if ring.master_file is None:
            raise OperatorError(
                "The master key is in the environment.", "Name a file for the new one: `samehour key rotate --to FILE`."
            )
        count = ring.rotate_file()
        return f"{count} keys are wrapped by a new master key, in {ring.master_file}. The old one is of no more use."
    finally:
        ring.close()


def copy(to: Path) -> str:
    """Copy the keys, wrapped as they are, in place of the copy there was; return what was written.

    Raises: OperatorError when they are in no file, or cannot be copied.
    """
    ring = open_keyring(config.read())
    ring.close()
    if ring.url.get_backend_name() != "sqlite":
        raise OperatorError("The keys are in a PostgreSQL database.", "Copy that with pg_dump.")
    source = Path(str(ring.url.database))
    if not source.is_file():
        raise OperatorError(f"There are no keys in {source}.", "Check SAMEHOUR_KEYS_URL.")
    part = to.with_name(f"{to.name}.part")
    try:
        part.unlink(missing_ok=True)
        private_file(part)
        reading = f"{source.absolute().as_uri()}?mode=ro"
        with closing(sqlite3.connect(reading, uri=True)) as old, closing(sqlite3.connect(part)) as new:
            old.backup(new)
        with part.open("rb") as handle:
            os.fsync(handle.fileno())
        _overwrite(to)
        part.replace(to)
    except (OSError, sqlite3.Error) as error:
        raise OperatorError(f"{to} cannot be written ({type(error).__name__}).", "Name another place.") from None
    finally:
        part.unlink(missing_ok=True)
    return f"Wrote {to}. It opens nothing without the master key. Copy the keys again after somebody was erased."


def _overwrite(file: Path) -> None:
    """Overwrite the copy that is replaced: it may hold the key of somebody who was erased since."""
    if file.is_file():
        with file.open("r+b") as old:
            old.write(bytes(file.stat().st_size))
            old.flush()
            os.fsync(old.fileno())


def pair(file: Path) -> str:
    """Make a pair of keys for backups; return what to do with them."""
    public = sealed_file.make_pair(file)
    return (
        f"{file} opens what is sealed to\n{public}\n"
        "Take the file off this machine, and keep it. Seal backups with `samehour backup FILE --to-key KEY`."
    )
