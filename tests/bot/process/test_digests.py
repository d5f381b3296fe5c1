"""The coaches' sweep: a digest is sent once, on time or late, whoever sweeps."""

from datetime import UTC, date, datetime, time, timedelta
from typing import Any

import pytest
from sqlalchemy import select, update

from bot.process import digests
from bot.store import codec, inbox, people, staff
from bot.store.database import Database
from bot.store.schema import coaches, flags
from bot.store.schema import inbox as inbox_table
from core.care import Slot
from core.dialogue.kit.events import Due
from core.dialogue.staff.messages import DigestSaid
from tests.bot.office import Desk
from tests.bot.practice import NOW, ROWAN, add_client, add_coach
from tests.bot.steps import rows, work

SLOT = Slot(0, time(8), "Europe/London")
AT = datetime(2026, 3, 30, 7, tzinfo=UTC)  # Monday 08:00 in London
WEEK = timedelta(weeks=1)


@pytest.fixture
def coach(database: Database) -> int:
    made = database.write_now(add_coach)
    database.write_now(staff.set_digest, made, SLOT, NOW)
    return made


def events(database: Database) -> list[tuple[str, Any]]:
    return [(r.key, codec.loads(r.event)) for r in rows(database, inbox_table) if r.event]


def next_at(database: Database, coach: int) -> datetime | None:
    return database.read_now(
        lambda c: c.execute(select(coaches.c.next_digest_at).where(coaches.c.id == coach)).scalar()
    )


def test_nothing_comes_before_its_time(database: Database, coach: int) -> None:
    assert database.read_now(digests.next_at) == AT
    assert database.write_now(digests.sweep, AT - timedelta(seconds=1)) == 0
    assert events(database) == []


def test_a_digest_that_is_due_becomes_one_event_and_the_next_is_set(database: Database, coach: int) -> None:
    assert database.write_now(digests.sweep, AT) == 1
    assert events(database) == [(f"digest/{coach}/2026-03-30", Due(AT, date(2026, 3, 30), timedelta(0)))]
    assert next_at(database, coach) == AT + WEEK


def test_a_double_tick_and_a_second_machine_change_nothing(database: Database, coach: int) -> None:
    for _ in range(3):
        database.write_now(digests.sweep, AT)
    database.write_now(lambda c: c.execute(update(coaches).values(next_digest_at=AT)))  # a machine that saw it earlier
    database.write_now(digests.sweep, AT)
    assert len(events(database)) == 1


def test_after_an_outage_of_weeks_only_the_newest_comes_however_late(database: Database, coach: int) -> None:
    late = AT + 2 * WEEK + timedelta(days=3)
    assert database.write_now(digests.sweep, late) == 1
    ((key, event),) = events(database)
    assert key == f"digest/{coach}/2026-04-13"
    assert (event.day, event.late_by) == (date(2026, 4, 13), timedelta(days=3))
    assert next_at(database, coach) == AT + 3 * WEEK


def test_the_wall_time_stays_when_the_clock_changes(database: Database) -> None:
    made = database.write_now(add_coach)
    database.write_now(staff.set_digest, made, SLOT, datetime(2026, 3, 20, tzinfo=UTC))
    assert next_at(database, made) == datetime(2026, 3, 23, 8, tzinfo=UTC)  # winter time
    database.write_now(digests.sweep, datetime(2026, 3, 23, 8, tzinfo=UTC))
    assert next_at(database, made) == AT


def test_a_coach_who_wants_none_gets_none(database: Database, coach: int) -> None:
    database.write_now(staff.set_digest, coach, None, NOW)
    assert database.read_now(digests.next_at) is None
    assert database.write_now(digests.sweep, AT + WEEK) == 0


def test_a_coach_who_blocked_us_is_passed_over_and_comes_again_next_week(database: Database, coach: int) -> None:
    database.write_now(people.set_reachable, ROWAN, False)
    assert database.write_now(digests.sweep, AT) == 1
    assert events(database) == []
    assert next_at(database, coach) == AT + WEEK


def test_an_erased_coach_is_not_swept_for_ever(database: Database, coach: int) -> None:
    database.write_now(lambda c: c.execute(update(coaches).values(person_id=None, weekday=None, at=None)))
    assert database.write_now(digests.sweep, AT) == 1
    assert database.write_now(digests.sweep, AT) == 0


def test_a_limit_leaves_the_rest_for_the_next_sweep(database: Database, coach: int) -> None:
    for number in (1, 2):
        made = database.write_now(add_coach, ROWAN + number, f"Coach {number}")
        database.write_now(staff.set_digest, made, SLOT, NOW)
    assert [database.write_now(digests.sweep, AT, 2), database.write_now(digests.sweep, AT, 2)] == [2, 1]
    assert len(events(database)) == 3


def test_the_digest_says_who_answered_and_marks_nothing_by_itself(database: Database, coach: int) -> None:
    from bot.store import slots

    ada = database.write_now(lambda c: add_client(c, coach, answered=date(2026, 3, 23)))
    database.write_now(slots.asked, [(ada, date(2026, 3, 23), AT - WEEK)])
    database.write_now(slots.answered, [(ada, date(2026, 3, 23))], AT - WEEK)
    database.write_now(slots.asked, [(ada, date(2026, 3, 30), AT - timedelta(minutes=30))])
    database.write_now(digests.sweep, AT)
    desk = Desk(database, AT)
    work(database, desk.steps, AT)
    (said,) = [m for m in desk.heard(ROWAN) if isinstance(m, DigestSaid)]
    assert (said.digest.asked, said.digest.kept, said.digest.calm) == (1, 1, True)
    assert [r.seen_at for r in rows(database, flags)] == []


def test_a_digest_sent_from_the_command_line_is_not_sent_again_by_the_sweep(database: Database, coach: int) -> None:
    key = f"digest/{coach}/2026-03-30"
    database.write_now(inbox.put, [inbox.NewEvent(key, ROWAN, Due(AT, date(2026, 3, 30)))], NOW)
    database.write_now(digests.sweep, AT)
    assert [k for k, _ in events(database)] == [key]
