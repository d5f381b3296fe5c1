"""Events are stored once, handled in order, and never lost."""

from collections.abc import Callable
from datetime import UTC, datetime, timedelta

from sqlalchemy import event, select

from bot.store import codec, inbox
from bot.store.database import Database
from bot.store.inbox import NewEvent
from bot.store.schema import inbox as table
from core.dialogue.kit.events import Text

NOW = datetime(2026, 3, 30, 6, 30, tzinfo=UTC)
SECOND = timedelta(seconds=1)
ADA, BEN = 100, 200


def text(number: int, chat_id: int = ADA, words: str = "82.4 kg") -> NewEvent:
    return NewEvent(f"telegram/{number}", chat_id, Text(NOW, words), language="de", name="Ada")


def claimed(database: Database, now: datetime = NOW, limit: int = 10) -> list[str]:
    return [row.key for row in database.write_now(inbox.claim, now, limit)]


def finish(database: Database, now: datetime = NOW) -> list[str]:
    """Claim everything and mark it as handled."""

    def work(conn):
        rows = inbox.claim(conn, now, 10)
        inbox.done(conn, [row.id for row in rows])
        return [row.key for row in rows]

    return database.write_now(work)


def test_an_event_that_comes_again_is_kept_once(database: Database) -> None:
    assert database.write_now(inbox.put, [text(1), text(2)], NOW) == 2
    assert database.write_now(inbox.put, [text(2), text(3), text(3)], NOW + SECOND) == 1
    assert database.read_now(inbox.waiting) == 3


def test_an_event_that_was_handled_stays_handled_when_it_comes_again(database: Database) -> None:
    database.write_now(inbox.put, [text(1)], NOW)
    assert finish(database) == ["telegram/1"]
    assert database.write_now(inbox.put, [text(1)], NOW + SECOND) == 0
    assert finish(database) == []


def test_a_claimed_row_says_who_wrote_and_what(database: Database) -> None:
    database.write_now(inbox.put, [text(1)], NOW)
    (row,) = database.write_now(inbox.claim, NOW, 10)
    assert (row.chat_id, row.language, row.name, row.attempts) == (ADA, "de", "Ada", 0)
    assert codec.loads(row.event) == Text(NOW, "82.4 kg")


def test_each_chat_has_only_its_oldest_row_in_hand(database: Database) -> None:
    database.write_now(inbox.put, [text(1), text(2), text(3, BEN), text(4)], NOW)
    assert claimed(database) == ["telegram/1", "telegram/3"]
    assert finish(database) == ["telegram/1", "telegram/3"]
    assert finish(database) == ["telegram/2"]
    assert finish(database) == ["telegram/4"]


def test_a_row_waiting_for_another_try_holds_back_its_chat_but_nobody_else(database: Database) -> None:
    database.write_now(inbox.put, [text(1), text(2), text(3, BEN)], NOW)
    (row, _) = database.write_now(inbox.claim, NOW, 10)
    database.write_now(inbox.retry_later, row.id, NOW + 5 * SECOND, "ValueError at engine:10")
    assert claimed(database) == ["telegram/3"]
    (again, _) = database.write_now(inbox.claim, NOW + 5 * SECOND, 10)
    assert (again.key, again.attempts) == ("telegram/1", 1)


def test_a_row_set_aside_is_kept_with_its_error_and_lets_the_next_pass(database: Database) -> None:
    database.write_now(inbox.put, [text(1), text(2)], NOW)
    (row,) = database.write_now(inbox.claim, NOW, 10)
    database.write_now(inbox.set_aside, row.id, "ValueError at engine:10")
    assert claimed(database) == ["telegram/2"]
    assert database.read_now(inbox.set_aside_count) == 1
    assert database.write_now(inbox.put_back) == 1
    (again,) = database.write_now(inbox.claim, NOW, 10)
    assert codec.loads(again.event) == Text(NOW, "82.4 kg")


def test_a_handled_row_keeps_its_key_and_nothing_of_what_was_in_it(database: Database) -> None:
    database.write_now(inbox.put, [text(1)], NOW)
    finish(database)
    (kept,) = database.read_now(lambda conn: conn.execute(select(table)).all())
    assert (kept.key, kept.status) == ("telegram/1", "done")
    assert (kept.event, kept.name, kept.language) == (None, None, None)


def test_text_that_no_database_takes_as_it_is_is_kept_whole(database: Database) -> None:
    words = "82.4 \0 \ud83d kg"
    database.write_now(inbox.put, [NewEvent("k", ADA, Text(NOW, words), name=words)], NOW)
    (row,) = database.write_now(inbox.claim, NOW, 10)
    assert codec.loads(row.event) == Text(NOW, words)
    assert "\0" not in row.name


def test_two_workers_never_have_one_chat_at_once(open_database: Callable[[], Database]) -> None:
    one, two = open_database(), open_database()
    one.write_now(inbox.put, [text(n, chat) for n, chat in enumerate((ADA, ADA, BEN, BEN))], NOW)
    if one.is_sqlite:  # one writer: the second waits for the first to finish, and finds the next rows
        assert (finish(one), finish(two)) == (["telegram/0", "telegram/2"], ["telegram/1", "telegram/3"])
        return
    with one.engine.begin() as first, two.engine.begin() as second:
        mine = inbox.claim(first, NOW, 1)
        theirs = inbox.claim(second, NOW, 10)
        assert [row.chat_id for row in mine] == [ADA]
        assert [row.chat_id for row in theirs] == [BEN]
        inbox.done(first, [row.id for row in mine])
        first.commit()
        assert inbox.claim(second, NOW, 10)[0].key == "telegram/1"


def test_a_worker_that_dies_lets_go_of_what_it_had(open_database: Callable[[], Database]) -> None:
    one, two = open_database(), open_database()
    one.write_now(inbox.put, [text(1)], NOW)
    with one.engine.connect() as conn:
        conn.begin()
        assert len(inbox.claim(conn, NOW, 10)) == 1
        conn.invalidate()  # the connection is gone, as after kill -9
    assert claimed(two) == ["telegram/1"]


def test_old_keys_are_forgotten_but_nothing_that_still_waits(database: Database) -> None:
    database.write_now(inbox.put, [text(1)], NOW)
    finish(database)
    database.write_now(inbox.put, [text(2)], NOW)
    assert database.write_now(inbox.purge, NOW) == 0
    assert database.write_now(inbox.purge, NOW + SECOND) == 1
    assert database.read_now(inbox.waiting) == 1


def test_claiming_does_not_read_what_was_handled_long_ago(database: Database) -> None:
    """With thousands of handled rows the claim still uses the index of pending ones."""
    explain = "EXPLAIN QUERY PLAN " if database.is_sqlite else "EXPLAIN "
    asked = []
    event.listen(database.engine, "before_cursor_execute", lambda *given: asked.append(given[2:4]))
    database.write_now(inbox.claim, NOW, 5)
    ((statement, values),) = [one for one in asked if one[0].lstrip().startswith("SELECT")]

    def plan(conn):
        if not database.is_sqlite:
            conn.exec_driver_sql("SET enable_seqscan = off")
        return str(conn.exec_driver_sql(explain + statement, values).all())

    found = database.write_now(plan)
    assert "ix_inbox_pending" in found
    assert "ix_inbox_order" in found or not database.is_sqlite  # PostgreSQL may sort the few that are pending
    assert "Seq Scan" not in found
