"""The sweep: one reminder per slot, whatever happens to the machines."""

from collections.abc import Callable
from datetime import date, timedelta

import pytest
from sqlalchemy import insert, select

from bot.process import reminders
from bot.store import codec, inbox, outbox, timers
from bot.store.database import Database
from bot.store.schema import clients, flags, slots
from bot.store.schema import inbox as inbox_table
from bot.store.timers import Timer
from core.care import Slot, Status
from core.dialogue.kit.events import Due, TimerFired
from tests.bot.practice import ADA, BEN, MONDAY, NOW, SLOT, add_client, add_coach, row_of

SECOND, HOUR, WEEK = timedelta(seconds=1), timedelta(hours=1), timedelta(weeks=1)


def events(database: Database) -> list[tuple[str, int, object]]:
    def work(conn):
        rows = conn.execute(select(inbox_table).order_by(inbox_table.c.id)).all()
        return [(r.key, r.chat_id, codec.loads(r.event)) for r in rows]

    return database.read_now(work)


def outcomes(database: Database) -> list[tuple[date, str]]:
    return database.read_now(
        lambda conn: [(r.day, r.outcome) for r in conn.execute(select(slots).order_by(slots.c.day))]
    )


@pytest.fixture
def ada(database: Database) -> int:
    return database.write_now(lambda conn: add_client(conn, add_coach(conn)))


def test_a_slot_that_came_becomes_one_event_and_the_next_is_a_week_later(database: Database, ada: int) -> None:
    assert database.write_now(reminders.sweep, NOW - SECOND) == 0
    assert database.write_now(reminders.sweep, NOW) == 1
    assert events(database) == [(f"due/{ada}/2026-03-30", ADA, Due(NOW, MONDAY))]
    row = database.read_now(row_of, ada)
    assert (row.next_due_at, row.next_due_day, row.asked) == (NOW + WEEK, MONDAY + WEEK, MONDAY)
    assert outcomes(database) == [(MONDAY, "asked")]


def test_a_second_sweep_and_a_second_machine_find_nothing_more(
    open_database: Callable[[], Database],
) -> None:
    one, two = open_database(), open_database()
    one.write_now(lambda conn: add_client(conn, add_coach(conn)))
    swept = [database.write_now(reminders.sweep, NOW + SECOND) for database in (one, two, one)]
    assert swept == [1, 0, 0]
    assert len(events(one)) == 1


def test_two_machines_sweeping_at_once_share_the_clients(open_database: Callable[[], Database]) -> None:
    one, two = open_database(), open_database()

    def several(conn):
        coach = add_coach(conn)
        for number in range(6):
            add_client(conn, coach, 1000 + number, f"Client {number}")

    one.write_now(several)
    if one.is_sqlite:
        counts = [one.write_now(reminders.sweep, NOW, 4), two.write_now(reminders.sweep, NOW, 4)]
    else:
        with one.engine.begin() as first, two.engine.begin() as second:
            counts = [reminders.sweep(first, NOW, 4), reminders.sweep(second, NOW, 4)]
    assert counts == [4, 2]
    assert len({key for key, _, _ in events(one)}) == 6


def test_a_sweep_that_dies_before_its_commit_has_done_nothing(database: Database, ada: int) -> None:
    with database.engine.connect() as conn:
        reminders.sweep(conn, NOW)
        conn.rollback()
    assert events(database) == []
    assert database.write_now(reminders.sweep, NOW) == 1


def test_a_slot_whose_event_is_in_the_inbox_already_is_not_asked_again(database: Database, ada: int) -> None:
    """As after a restore of the clients' rows from an hour ago."""
    database.write_now(reminders.sweep, NOW)
    database.write_now(lambda conn: conn.execute(clients.update().values(next_due_at=NOW, next_due_day=MONDAY)))
    database.write_now(reminders.sweep, NOW + HOUR)
    assert len(events(database)) == 1


@pytest.mark.parametrize(
    ("late", "asked"),
    [
        pytest.param(timedelta(hours=3), True, id="three-hours-late-is-asked"),
        pytest.param(timedelta(hours=12), True, id="twelve-hours-late-is-asked"),
        pytest.param(timedelta(hours=12, seconds=1), False, id="later-is-not-asked"),
    ],
)
def test_after_an_outage_a_slot_is_asked_if_it_is_not_too_late(
    database: Database, ada: int, late: timedelta, asked: bool
) -> None:
    database.write_now(reminders.sweep, NOW + late)
    expected = [Due(NOW, MONDAY, late)] if asked else []
    assert [event for _, _, event in events(database)] == expected
    assert outcomes(database) == [(MONDAY, "asked" if asked else "not_asked")]
    row = database.read_now(row_of, ada)
    assert row.next_due_at == NOW + WEEK
    assert row.missed == 0


def test_after_a_long_outage_only_the_newest_slot_is_asked(database: Database, ada: int) -> None:
    database.write_now(reminders.sweep, NOW + 3 * WEEK + HOUR)
    assert [event for _, _, event in events(database)] == [Due(NOW + 3 * WEEK, MONDAY + 3 * WEEK, HOUR)]
    assert outcomes(database) == [
        (MONDAY, "not_asked"),
        (MONDAY + WEEK, "not_asked"),
        (MONDAY + 2 * WEEK, "not_asked"),
        (MONDAY + 3 * WEEK, "asked"),
    ]
    assert database.read_now(row_of, ada).missed == 0


def test_slots_without_an_answer_are_counted_when_the_next_is_asked(database: Database, ada: int) -> None:
    missed = []
    for week in range(4):
        database.write_now(reminders.sweep, NOW + week * WEEK)
        missed.append(database.read_now(row_of, ada).missed)
    assert missed == [0, 1, 2, 3]
    codes = database.read_now(lambda conn: conn.execute(select(flags.c.code, flags.c.cleared_at)).all())
    assert codes == [("missed_check_ins", None)]


def test_a_slot_that_got_an_answer_is_not_missed(database: Database, ada: int) -> None:
    database.write_now(reminders.sweep, NOW)
    database.write_now(lambda conn: conn.execute(clients.update().values(answered=MONDAY)))
    database.write_now(reminders.sweep, NOW + WEEK)
    assert database.read_now(row_of, ada).missed == 0


def test_an_outage_does_not_count_as_missed(database: Database, ada: int) -> None:
    database.write_now(reminders.sweep, NOW)
    database.write_now(lambda conn: conn.execute(clients.update().values(answered=MONDAY)))
    database.write_now(reminders.sweep, NOW + WEEK + timedelta(days=2))
    database.write_now(reminders.sweep, NOW + 2 * WEEK)
    assert database.read_now(row_of, ada).missed == 0


def test_a_wall_time_stays_the_same_over_a_clock_change(database: Database) -> None:
    before = NOW - WEEK + HOUR  # 07:30 in London before the clocks went forward is 07:30 UTC
    client = database.write_now(
        lambda conn: add_client(conn, add_coach(conn), next_due_at=before, next_due_day=MONDAY - WEEK)
    )
    database.write_now(reminders.sweep, before)
    assert database.read_now(row_of, client).next_due_at == NOW


def test_a_client_who_paused_is_asked_again_from_the_agreed_date_on(database: Database) -> None:
    wednesday = MONDAY + timedelta(days=2)
    until = NOW.replace(hour=23, minute=0) + timedelta(days=1)  # midnight in London
    client = database.write_now(
        lambda conn: add_client(
            conn,
            add_coach(conn),
            status=Status.PAUSED.value,
            paused_until=wednesday,
            next_due_at=until,
            next_due_day=wednesday,
        )
    )
    assert database.write_now(reminders.sweep, until - SECOND) == 0
    assert database.write_now(reminders.sweep, until) == 1
    row = database.read_now(row_of, client)
    assert (row.status, row.paused_until, row.next_due_at) == ("active", None, NOW + WEEK)
    assert events(database) == []
    database.write_now(reminders.sweep, NOW + WEEK)
    assert [event for _, _, event in events(database)] == [Due(NOW + WEEK, MONDAY + WEEK)]


def test_a_question_left_open_before_a_pause_is_not_missed_because_of_it(database: Database) -> None:
    client = database.write_now(
        lambda conn: add_client(
            conn,
            add_coach(conn),
            status=Status.PAUSED.value,
            paused_until=MONDAY,
            asked=MONDAY - WEEK,
            next_due_at=NOW - HOUR,
            next_due_day=MONDAY,
        )
    )
    for _ in range(2):
        database.write_now(reminders.sweep, NOW)
    row = database.read_now(row_of, client)
    assert (row.asked, row.missed) == (MONDAY, 0)


def test_a_slot_on_the_very_day_a_pause_ends_is_asked(database: Database) -> None:
    midnight = NOW.replace(hour=23, minute=0) - timedelta(days=1)
    client = database.write_now(
        lambda conn: add_client(
            conn,
            add_coach(conn),
            status=Status.PAUSED.value,
            paused_until=MONDAY,
            next_due_at=midnight,
            next_due_day=MONDAY,
        )
    )
    assert [database.write_now(reminders.sweep, NOW) for _ in range(3)] == [1, 1, 0]
    assert events(database) == [(f"due/{client}/2026-03-30", ADA, Due(NOW, MONDAY))]


@pytest.mark.parametrize("status", [Status.LEFT, Status.ENROLLING])
def test_nobody_is_asked_who_left_or_has_still_to_enrol(database: Database, status: Status) -> None:
    client = database.write_now(lambda conn: add_client(conn, add_coach(conn), status=status.value))
    database.write_now(reminders.sweep, NOW)
    assert events(database) == []
    assert database.read_now(row_of, client).next_due_at is None


def test_a_client_who_blocked_us_is_not_asked_and_not_counted_as_missing(database: Database, ada: int) -> None:
    from bot.store import people

    database.write_now(reminders.sweep, NOW)
    database.write_now(people.set_reachable, ADA, False)
    database.write_now(reminders.sweep, NOW + WEEK)
    assert len(events(database)) == 1
    assert outcomes(database)[-1] == (MONDAY + WEEK, "not_asked")
    assert database.read_now(row_of, ada).missed == 0


def test_each_client_is_due_in_their_own_zone(database: Database) -> None:
    def two(conn):
        coach = add_coach(conn)
        add_client(conn, coach)
        late = Slot(0, SLOT.at, "America/New_York")
        add_client(conn, coach, BEN, "Ben", slot=late, next_due_at=NOW + 5 * HOUR)

    database.write_now(two)
    database.write_now(reminders.sweep, NOW)
    assert [chat for _, chat, _ in events(database)] == [ADA]
    database.write_now(reminders.sweep, NOW + 5 * HOUR)
    assert [chat for _, chat, _ in events(database)] == [ADA, BEN]


def test_a_timer_that_ran_out_becomes_one_event(database: Database, ada: int) -> None:
    due = [Timer(ADA, "follow_up", "2026-03-30", NOW - HOUR), Timer(ADA, "snooze", "", NOW + HOUR)]
    database.write_now(timers.put, due)
    database.write_now(lambda conn: conn.execute(clients.update().values(next_due_at=None)))
    assert [database.write_now(reminders.sweep, NOW) for _ in range(2)] == [1, 0]
    ((key, chat, event),) = events(database)
    assert key.startswith("wake/")
    assert (chat, event) == (ADA, TimerFired(NOW - HOUR, "follow_up", "2026-03-30", HOUR))
    assert database.read_now(reminders.next_at) == NOW + HOUR


def test_a_timer_set_anew_after_it_ran_out_runs_out_again(database: Database) -> None:
    for hour in range(2):
        database.write_now(timers.put, [Timer(ADA, "snooze", "x", NOW + hour * HOUR)])
        database.write_now(reminders.sweep, NOW + hour * HOUR)
    assert len(events(database)) == 2


def test_many_due_clients_are_swept_in_batches(database: Database) -> None:
    def several(conn):
        coach = add_coach(conn)
        for number in range(7):
            add_client(conn, coach, 1000 + number, f"Client {number}")

    database.write_now(several)
    assert [database.write_now(reminders.sweep, NOW, 3) for _ in range(4)] == [3, 3, 1, 0]
    assert database.read_now(inbox.waiting) == 7
    assert database.read_now(outbox.waiting) == 0


def test_a_sweep_with_nothing_due_reads_two_short_indexes(database: Database) -> None:
    """Two queries, whatever the number of clients."""
    from sqlalchemy import event

    database.write_now(
        lambda conn: conn.execute(
            insert(clients),
            [{"status": "active", "created_at": NOW, "next_due_at": NOW + HOUR} for _ in range(200)],
        )
    )
    seen: list[str] = []

    def note(conn, cursor, statement, *rest):
        seen.append(statement)

    event.listen(database.engine, "before_cursor_execute", note)
    try:
        assert database.write_now(reminders.sweep, NOW) == 0
    finally:
        event.remove(database.engine, "before_cursor_execute", note)
    assert len([s for s in seen if s.startswith("SELECT")]) == 2
    assert not [s for s in seen if s.startswith(("INSERT", "UPDATE", "DELETE"))]
