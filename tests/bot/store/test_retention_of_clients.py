"""Retention of clients' data: side notes, withdrawn readings, messages. Everything else stays."""

from dataclasses import replace
from datetime import timedelta

import pytest
from sqlalchemy import update

from bot.store import coach_thread, readings, retention
from bot.store.database import Database
from bot.store.retention import RetentionPeriods
from bot.store.schema import readings as readings_table
from bot.store.schema import words as words_table
from core.reading import How
from core.watching.weighing_guard import OFTEN_WITHIN
from tests.bot.practice import NOW, in_clear, rowan_and_ada, weight
from tests.bot.steps import rows

DAY = timedelta(days=1)
KEPT = RetentionPeriods(side_notes=90 * DAY, withdrawn=30 * DAY, words=365 * DAY)


@pytest.fixture
def ada(database: Database) -> int:
    there = database.write_now(rowan_and_ada)
    given = [("official", weight("82.4", NOW)), ("early", replace(weight("81.9", NOW), how=How.EARLY))]
    given += [("back", weight("28.4", NOW))]
    database.write_now(readings.put, [readings.row(there.ada, key, one, NOW) for key, one in given])
    database.write_now(readings.withdraw, [(there.ada, "back")], NOW)
    database.write_now(coach_thread.put, [(there.ada, there.coach, coach_thread.Direction.TO_COACH, "my knee")], NOW)
    return there.ada


def keys(database: Database) -> set[str]:
    return {r.key for r in rows(database, readings_table)}


def tidied(database: Database, later: timedelta) -> set[str]:
    database.write_now(retention.tidy, NOW + later, KEPT)
    return keys(database)


def test_each_kind_goes_when_its_own_time_is_over_and_not_before(database: Database, ada: int) -> None:
    assert tidied(database, 30 * DAY) == {"official", "early", "back"}
    assert tidied(database, 31 * DAY) == {"official", "early"}
    assert tidied(database, 90 * DAY) == {"official", "early"}
    assert tidied(database, 91 * DAY) == {"official"}
    assert [r.text for r in rows(database, words_table)] == ["my knee"]
    assert tidied(database, 366 * DAY) == {"official"}
    assert rows(database, words_table) == []


def test_an_official_reading_is_never_too_old(database: Database, ada: int) -> None:
    assert tidied(database, 30 * 365 * DAY) == {"official"}


def test_the_guard_keeps_what_it_looks_back_on(database: Database, ada: int) -> None:
    """A cycle is 42 days at most, and "often" looks back 14: side notes of a cycle are there."""
    assert RetentionPeriods().side_notes > max(timedelta(days=42), OFTEN_WITHIN)
    assert "early" in tidied(database, timedelta(days=42))


def test_what_is_kept_no_longer_is_not_in_the_file_either(database: Database, ada: int) -> None:
    if database.file is None:
        pytest.skip("bytes are looked at in SQLite's file")
    telling = in_clear("a very telling word")
    database.write_now(lambda c: c.execute(update(words_table).values(text=telling)))
    assert b"a very telling word" in _bytes(database)
    tidied(database, 400 * DAY)
    assert b"a very telling word" not in _bytes(database)


def _bytes(database: Database) -> bytes:
    assert database.file is not None
    log = database.file.with_name(database.file.name + "-wal")
    return database.file.read_bytes() + (log.read_bytes() if log.exists() else b"")
