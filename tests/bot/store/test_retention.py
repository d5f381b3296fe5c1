"""Retention: expired data is deleted, and nothing that is still needed."""

from datetime import timedelta
from decimal import Decimal

from bot.store import audit, outbox, retention
from bot.store import schema as tables
from bot.store.database import Database
from bot.store.outbox import Outgoing
from bot.store.retention import RetentionPeriods
from core.dialogue.client.effects import Raise
from core.dialogue.client.messages import NotSure
from core.dialogue.kit.effects import Say
from core.dialogue.kit.events import Text
from core.dialogue.kit.messages import Stranger
from core.watching.flags import Code, flag
from tests.bot.practice import ADA, NOW, rowan_and_ada
from tests.bot.steps import Puppet, arrive, rows, say, work

HOUR, DAY, WEEK = timedelta(hours=1), timedelta(days=1), timedelta(weeks=1)
KEPT = RetentionPeriods(inbox=30 * DAY, sent=90 * DAY, left=365 * DAY, audit=1000 * DAY)


def tidy(database: Database, later: timedelta) -> None:
    database.write_now(retention.tidy, NOW + later, KEPT)


def sent(database: Database, *outgoing: Outgoing) -> None:
    def work(conn):
        outbox.put(conn, outgoing, NOW)
        found = outbox.claim(conn, "w", NOW, HOUR, 50)
        outbox.mark_sent(conn, [(row.id, None) for row in found], NOW)

    database.write_now(work)


def test_a_stranger_leaves_nothing_behind_after_an_hour(database: Database) -> None:
    arrive(database, Text(NOW, "hello"), chat_id=31)
    work(database, Puppet().steps())
    database.write_now(
        lambda conn: outbox.mark_sent(conn, [(r.id, None) for r in outbox.claim(conn, "w", NOW, HOUR, 9)], NOW)
    )
    tidy(database, HOUR)
    assert len(rows(database, tables.outbox)) == 1
    tidy(database, HOUR + DAY)
    for table in (tables.inbox, tables.outbox, tables.people, tables.conversations):
        assert rows(database, table) == [], table.name


def test_an_occasion_is_remembered_as_long_as_messages_are(database: Database) -> None:
    sent(database, Outgoing(ADA, NotSure(), NOW, occasion="o"), Outgoing(31, Stranger(), NOW))
    tidy(database, 90 * DAY)
    assert [row.occasion for row in rows(database, tables.outbox)] == ["o"]
    assert database.write_now(outbox.put, [Outgoing(ADA, NotSure(), NOW, occasion="o")], NOW) == 0
    tidy(database, 90 * DAY + HOUR)
    assert rows(database, tables.outbox) == []


def test_keys_of_handled_events_go_after_a_month_and_what_waits_stays(database: Database) -> None:
    database.write_now(rowan_and_ada)
    say(database, Puppet([Say(NotSure())]))
    arrive(database, Text(NOW, "later"))
    tidy(database, 30 * DAY + HOUR)
    assert [row.status for row in rows(database, tables.inbox)] == ["pending"]
    assert [row.status for row in rows(database, tables.outbox)] == ["pending"]


def test_a_flag_that_was_quiet_for_four_weeks_is_cleared_and_others_stay(database: Database) -> None:
    database.write_now(rowan_and_ada)
    often = Raise(flag(Code.WEIGHING_OFTEN, NOW, "weight", count=Decimal(3)))
    say(database, Puppet([often, Raise(flag(Code.WANTS_COACH, NOW))]))
    tidy(database, 4 * WEEK - HOUR)
    assert [row.cleared_at for row in rows(database, tables.flags)] == [None, None]
    tidy(database, 4 * WEEK)
    still = [row.code for row in rows(database, tables.flags) if row.cleared_at is None]
    assert still == ["wants_coach"]


def test_the_trail_of_who_did_what_is_kept_for_its_own_time(database: Database) -> None:
    database.write_now(audit.note, NOW, "operator", "erased", 17)
    tidy(database, 1000 * DAY)
    assert len(rows(database, tables.audit)) == 1
    tidy(database, 1000 * DAY + HOUR)
    assert rows(database, tables.audit) == []
