"""A database file that is taken away under the bot is noticed before anybody is thanked."""

import asyncio
import os
import shutil
from pathlib import Path

import pytest

from bot.foundation.clock import MachineClock
from bot.process.intake import keeper
from bot.store import audit
from bot.store.database import Database, FileGone
from bot.transports.incoming import Incoming
from core.dialogue.kit.events import Text
from tests.bot.practice import ADA, NOW

pytestmark = pytest.mark.parametrize("database_url", ["sqlite"], indirect=True)


def deleted(file: Path) -> None:
    file.unlink()


def moved(file: Path) -> None:
    file.rename(file.with_name("elsewhere.db"))


def replaced(file: Path) -> None:
    shutil.copy(file, file.with_name("copy.db"))
    os.replace(file.with_name("copy.db"), file)


def read_only(file: Path) -> None:
    file.chmod(0o400)


def log_deleted(file: Path) -> None:
    file.with_name(f"{file.name}-wal").unlink()


def folder_moved(file: Path) -> None:
    file.parent.rename(file.parent.with_name(f"{file.parent.name}-elsewhere"))


@pytest.mark.parametrize("harm", [deleted, moved, replaced, read_only, log_deleted, folder_moved])
def test_nothing_is_thanked_for_that_would_not_be_found_again(database: Database, harm) -> None:
    database.write_now(audit.note, NOW, "operator", "x")
    assert database.file is not None
    harm(database.file)
    keep = keeper(database, MachineClock(), lambda: pytest.fail("nobody is to go on with it"))
    with pytest.raises(FileGone):
        asyncio.run(keep([Incoming("telegram/1", ADA, False, Text(NOW, "82.4"))], []))
    with pytest.raises(FileGone):  # what /readyz asks
        database.read_now(lambda conn: conn.exec_driver_sql("SELECT 1").scalar())


def test_a_file_that_is_put_back_is_used_again(database: Database) -> None:
    database.write_now(audit.note, NOW, "operator", "x")
    assert database.file is not None
    away = database.file.with_name("away.db")
    database.file.rename(away)
    with pytest.raises(FileGone):
        database.write_now(audit.note, NOW, "operator", "y")
    away.rename(database.file)
    database.write_now(audit.note, NOW, "operator", "z")
