"""Messages are sent in order, once per occasion, and are never lost."""

from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from typing import Any

from sqlalchemy import insert, select, update

from bot.store import codec, outbox
from bot.store.database import Database
from bot.store.outbox import ANSWER, BULK, Outgoing
from bot.store.schema import outbox as table
from bot.store.schema import people
from core.dialogue.client.messages import Ask
from core.dialogue.kit.effects import Choice
from core.dialogue.kit.messages import Stranger
from core.quantity import Unit

NOW = datetime(2026, 3, 30, 6, 30, tzinfo=UTC)
SECOND = timedelta(seconds=1)
LEASE = timedelta(seconds=60)
ADA, BEN = 100, 200


def out(mark: str, chat_id: int = ADA, due_at: datetime = NOW, **more: Any) -> Outgoing:
    """A message that is distinguished by its mark."""
    return Outgoing(chat_id, Ask(mark, Unit.KILOGRAM), due_at, **more)


def marks(rows: list[outbox.ClaimedMessage]) -> list[str]:
    return [codec.loads_as(Ask, row.message).measure for row in rows]


def claim(database: Database, now: datetime = NOW, limit: int = 10, worker: str = "w1") -> list[outbox.ClaimedMessage]:
    return database.write_now(outbox.claim, worker, now, LEASE, limit)


def send(database: Database, now: datetime = NOW) -> list[str]:
    rows = claim(database, now)
    database.write_now(outbox.mark_sent, [(row.id, f"m{row.id}") for row in rows], now)
    return marks(rows)


def test_an_occasion_is_said_once_however_often_it_is_queued(database: Database) -> None:
    first, again = out("a", occasion="reminder/17/2026-03-30"), out("b", occasion="reminder/17/2026-03-30")
    assert database.write_now(outbox.put, [first], NOW) == 1
    assert database.write_now(outbox.put, [again, out("c"), out("d")], NOW) == 2
    assert [*send(database), *send(database), *send(database)] == ["a", "c", "d"]
    assert database.write_now(outbox.put, [again], NOW) == 0


def test_a_chat_hears_things_in_the_order_they_were_said(database: Database) -> None:
    database.write_now(outbox.put, [out("a"), out("b"), out("c", BEN)], NOW)
    assert marks(claim(database)) == ["a", "c"]
    assert claim(database) == []  # "a" is being sent, and "b" comes after it


def test_what_is_due_later_does_not_hold_back_what_is_due_now(database: Database) -> None:
    database.write_now(outbox.put, [out("stop", due_at=NOW + 30 * SECOND), out("now")], NOW)
    assert send(database) == ["now"]
    assert send(database, NOW + 29 * SECOND) == []
    assert send(database, NOW + 30 * SECOND) == ["stop"]


def test_a_message_to_be_tried_again_keeps_its_place(database: Database) -> None:
    database.write_now(outbox.put, [out("a"), out("b"), out("c", BEN)], NOW)
    row = claim(database, limit=1)[0]
    database.write_now(outbox.mark_retry, "w1", row.id, NOW + 9 * SECOND, "429")
    assert send(database) == ["c"]
    assert database.read_now(outbox.next_due) == NOW + 9 * SECOND
    (again,) = claim(database, NOW + 9 * SECOND)
    assert (marks([again]), again.attempts) == (["a"], 1)


def test_a_message_of_a_worker_that_never_came_back_is_taken_over(database: Database) -> None:
    database.write_now(outbox.put, [out("a")], NOW)
    claim(database)
    assert claim(database, NOW + LEASE - SECOND, worker="w2") == []
    assert marks(claim(database, NOW + LEASE, worker="w2")) == ["a"]


def test_a_worker_that_stops_hands_back_what_it_had(database: Database) -> None:
    database.write_now(outbox.put, [out("a"), out("b", BEN)], NOW)
    claim(database, limit=1, worker="w1")
    claim(database, limit=1, worker="w2")
    assert database.write_now(outbox.release, "w1", NOW) == 1
    assert marks(claim(database, worker="w3")) == ["a"]


def test_what_was_noted_unheard_and_is_another_worker_s_by_now_stays_with_it(database: Database) -> None:
    database.write_now(outbox.put, [out("a")], NOW)
    (row,) = claim(database, worker="w1")
    for at in (NOW, NOW + SECOND):
        database.write_now(outbox.mark_retry, "w1", row.id, at)
        claim(database, worker="w2")
    database.write_now(outbox.hand_back, "w1", [(row.id, NOW)])
    assert claim(database, NOW + 2 * SECOND, worker="w3") == []


def test_what_a_worker_has_in_hand_is_not_handed_back_with_the_rest(database: Database) -> None:
    database.write_now(outbox.put, [out("a"), out("b", BEN)], NOW)
    (a, _) = claim(database, worker="w1")
    assert database.write_now(outbox.release, "w1", NOW, {a.id}) == 1
    assert marks(claim(database, worker="w3")) == ["b"]


def test_answers_go_before_what_can_wait(database: Database) -> None:
    database.write_now(outbox.put, [out("bulk", BEN, priority=BULK), out("answer", due_at=NOW, priority=ANSWER)], NOW)
    assert marks(claim(database, limit=1)) == ["answer"]


def test_a_failed_message_is_dropped_with_its_words_and_the_next_one_goes(database: Database) -> None:
    database.write_now(outbox.put, [out("a"), out("b")], NOW)
    (row,) = claim(database)
    database.write_now(outbox.mark_failed, row.id, NOW, "400")
    kept = database.read_now(lambda conn: conn.execute(select(table).where(table.c.id == row.id)).one())
    assert (kept.status, kept.error, kept.message) == ("failed", "400", None)
    assert send(database) == ["b"]


def test_nothing_more_goes_to_a_chat_that_blocked_us(database: Database) -> None:
    database.write_now(outbox.put, [out("a"), out("b"), out("c", BEN)], NOW)
    database.write_now(outbox.hold_chat, ADA, NOW, "403")
    assert send(database) == ["c"]
    assert database.write_now(outbox.deliver_held, ADA, NOW) == 0  # nobody's own words: they are gone


def test_a_person_s_own_words_wait_for_a_reader_who_is_away_and_keep_their_order(database: Database) -> None:
    database.write_now(outbox.put, [out("a", lasting=True), out("b"), out("c", lasting=True), out("d", BEN)], NOW)
    first, _ = claim(database)
    database.write_now(outbox.hold, first.id, NOW, "unreachable")
    database.write_now(outbox.hold_chat, ADA, NOW, "403")
    assert send(database) == []
    later = NOW + timedelta(days=3)
    assert database.write_now(outbox.deliver_held, ADA, later) == 2
    said = [mark for _ in range(3) for mark in send(database, later)]
    assert [mark for mark in said if mark != "d"] == ["a", "c"]


def test_what_waits_for_one_reader_is_not_sent_to_another(database: Database) -> None:
    database.write_now(outbox.put, [out("a", lasting=True), out("b", BEN, lasting=True)], NOW)
    database.write_now(outbox.hold_chat, ADA, NOW, "403")
    assert database.write_now(outbox.deliver_held, BEN, NOW) == 0
    assert send(database) == ["b"]


def test_a_group_that_became_a_supergroup_hears_what_was_for_it(database: Database) -> None:
    database.write_now(outbox.put, [out("a", -5, is_group=True)], NOW)
    assert database.write_now(outbox.move_chat, -5, -1_000_000_000_005) == 1
    (row,) = claim(database)
    assert (row.chat_id, row.is_group) == (-1_000_000_000_005, True)


def test_the_language_is_the_person_s_at_the_moment_of_sending(database: Database) -> None:
    def join(conn):
        return conn.execute(
            insert(people).values(chat_id=ADA, role="client", language="de", created_at=NOW).returning(people.c.id)
        ).scalar_one()

    person = database.write_now(join)
    database.write_now(outbox.put, [out("a", person_id=person), out("b", BEN, language="fr"), out("c", 300)], NOW)
    database.write_now(lambda conn: conn.execute(update(people).values(language="pl", zone_name="Europe/Warsaw")))
    assert [(row.reader.language, str(row.reader.zone)) for row in claim(database)] == [
        ("pl", "Europe/Warsaw"),
        ("fr", "UTC"),
        ("en", "UTC"),
    ]


def test_when_to_look_again_is_the_first_row_that_can_be_claimed(database: Database) -> None:
    assert database.read_now(outbox.next_due) is None
    database.write_now(outbox.put, [out("a", due_at=NOW + 5 * SECOND), out("b", BEN, NOW + 3 * SECOND)], NOW)
    assert database.read_now(outbox.next_due) == NOW + 3 * SECOND
    assert database.read_now(outbox.waiting) == 2


def test_buttons_and_what_a_delivery_needs_come_with_the_row(database: Database) -> None:
    rows = ((Choice("yes", "ok:yes"),),)
    database.write_now(
        outbox.put,
        [
            Outgoing(ADA, Stranger(), NOW, choices=rows),
            Outgoing(BEN, None, NOW, kind=outbox.DeliveryKind.DROP_BUTTONS, ref="55"),
        ],
        NOW,
    )
    said, dropped = claim(database)
    assert codec.load_rows(said.choices) == rows
    assert (dropped.kind, dropped.ref, dropped.message) == (outbox.DeliveryKind.DROP_BUTTONS, "55", "")


def test_two_workers_never_send_one_message(open_database: Callable[[], Database]) -> None:
    one, two = open_database(), open_database()
    one.write_now(outbox.put, [out("a"), out("b"), out("c", BEN)], NOW)
    if one.is_sqlite:
        assert (marks(claim(one)), marks(claim(two, worker="w2"))) == (["a", "c"], [])
        return
    with one.engine.begin() as first, two.engine.begin() as second:
        mine = outbox.claim(first, "w1", NOW, LEASE, 1)
        theirs = outbox.claim(second, "w2", NOW, LEASE, 10)
        assert (marks(mine), marks(theirs)) == (["a"], ["c"])


def test_old_messages_are_forgotten_but_nothing_that_still_waits(database: Database) -> None:
    database.write_now(outbox.put, [out("a"), out("b")], NOW)
    send(database)
    assert database.write_now(outbox.purge, NOW + SECOND) == 1
    assert database.read_now(outbox.waiting) == 1
