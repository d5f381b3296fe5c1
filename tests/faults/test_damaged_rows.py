"""A corrupt row: its owner still gets an answer, and nobody else is affected."""

import asyncio
from datetime import timedelta
from decimal import Decimal

import pytest
from sqlalchemy import select, update

from bot.exports.my_data import gather
from bot.foundation.clock import HeldClock
from bot.foundation.metrics import Metrics
from bot.foundation.reader import Rendered
from bot.foundation.retry import Rejected
from bot.process import digests, reminders
from bot.process.delivery import Delivery
from bot.process.rendering_cache import Renderings
from bot.rendering import Reader, render
from bot.store import flags, goals, inbox, outbox, readings
from bot.store import schema as tables
from bot.store.codec import loads
from bot.store.inbox import NewEvent
from bot.store.sealed import Sealed, Secret
from bot.turns.turn import work_batch
from core.care import Plan
from core.dialogue.client.facts import GoalFact
from core.dialogue.kit.events import Due, Text
from core.dialogue.kit.messages import OurFault
from core.reading import Conditions
from core.watching.flags import Code, flag
from tests.bot.office import steps
from tests.bot.practice import ADA, BEN, MONDAY, NOW, ROWAN, add_client, add_coach, in_clear, weight
from tests.memory_transport import MemoryTransport

OTHER_SCALES = Conditions(differs=frozenset({"scales"}))
DIGEST = NOW + timedelta(minutes=5)
DAMAGE = '{"$":"nothing we know","is":[1,2'
COLUMNS = [
    (tables.conversations, "state"),
    (tables.clients, "plan"),
    (tables.clients, "status"),
    (tables.clients, "sex"),
    (tables.clients, "background"),
    (tables.clients, "cautions"),
    (tables.clients, "mass_unit"),
    (tables.clients, "length_unit"),
    (tables.clients, "zone_name"),
    (tables.people, "language"),
    (tables.readings, "conditions"),
    (tables.readings, "how"),
    (tables.readings, "unit"),
    (tables.readings, "measure"),
    (tables.readings, "value"),
    (tables.flags, "evidence"),
    (tables.flags, "code"),
    (tables.flags, "severity"),
    (tables.goals, "target"),
]


def practice(conn):
    coach = add_coach(conn, weekday=0, at=DIGEST.time(), zone_name="UTC", next_digest_at=DIGEST)
    for chat, name in ((ADA, "Ada"), (BEN, "Ben")):
        client = add_client(conn, coach, chat, name, plan=Plan(measures=("weight",)))
        kept = weight("82.4", NOW - timedelta(days=28), conditions=OTHER_SCALES)
        readings.put(conn, [readings.row(client, "first", kept, NOW)])
        flags.raise_(conn, [(client, flag(Code.MISSED_CHECK_INS, NOW, missed=Decimal(2)))], NOW)
        goals.put(conn, [(client, GoalFact("weight", "80", MONDAY + timedelta(days=90), NOW))])


def settle(database, now):
    """Sweep and work until nothing is left to do at `now`; failures are retried later."""
    for _ in range(40):
        done = database.write_now(reminders.sweep, now) + database.write_now(digests.sweep, now)
        done += database.write_now(work_batch, steps(), now)
        if not done:
            return
    raise AssertionError("there is no end to it")


def said(database, chat):
    rows = database.read_now(
        lambda conn: conn.execute(select(tables.outbox).where(tables.outbox.c.chat_id == chat)).all()
    )
    return [loads(row.message) for row in rows if row.message]


def damaged(conn, table, where, column, *, sealed=True):
    """Put nonsense into a column: sealed as what is in it, where it is a sealed one, or in clear."""
    value = in_clear(DAMAGE)
    if sealed and isinstance(table.c[column].type, Sealed):
        key = conn.execute(select(tables.people.c.key_id).where(tables.people.c.chat_id == ADA)).scalar_one()
        value = Secret(key, DAMAGE)
    assert conn.execute(update(table).where(where).values({column: value})).rowcount == 1


@pytest.mark.parametrize("sealed", [True, False], ids=["its-content", "its-seal"])
@pytest.mark.parametrize(("table", "column"), COLUMNS, ids=[f"{t.name}.{c}" for t, c in COLUMNS])
def test_a_damaged_column_is_one_person_s_bad_luck(database, table, column, sealed):
    database.write_now(practice)
    if table is tables.conversations:
        settle(database, NOW)  # creates a state
    ada = {"chat_id": ADA, "client_id": 1, "id": 1}
    mine = "chat_id" if "chat_id" in table.c else "client_id" if "client_id" in table.c else "id"

    if not sealed and not isinstance(table.c[column].type, Sealed):
        pytest.skip("it has none")
    database.write_now(lambda conn: damaged(conn, table, table.c[mine] == ada[mine], column, sealed=sealed))
    typed = [NewEvent(f"telegram/{chat}", chat, Text(NOW, "7", "1")) for chat in (ADA, BEN)]
    database.write_now(inbox.put, typed, NOW)
    for minutes in range(8):
        settle(database, NOW + timedelta(minutes=minutes))

    assert database.read_now(inbox.waiting) == 0
    assert said(database, ADA)
    assert said(database, BEN)
    assert OurFault() not in said(database, BEN)
    assert said(database, ROWAN)
    assert OurFault() not in said(database, ROWAN)


def test_an_event_that_cannot_be_read_is_set_aside_and_its_sender_is_told(database):
    database.write_now(practice)
    typed = [NewEvent(f"telegram/{n}", chat, Text(NOW, "7", str(n))) for n, chat in enumerate((ADA, BEN, ADA))]
    database.write_now(inbox.put, typed, NOW)

    database.write_now(lambda conn: damaged(conn, tables.inbox, tables.inbox.c.key == "telegram/0", "event"))
    for minutes in range(4):
        settle(database, NOW + timedelta(minutes=minutes))
    kept = database.read_now(lambda conn: conn.execute(select(tables.inbox).order_by(tables.inbox.c.id)).all())
    assert {row.key: row.status for row in kept if row.key.startswith("telegram/")} == {
        "telegram/0": "set_aside",
        "telegram/1": "done",
        "telegram/2": "done",
    }
    assert said(database, ADA).count(OurFault()) == 1


def test_a_digest_that_is_due_does_not_wait_for_a_damaged_client(database):
    database.write_now(practice)
    event = Due(NOW, MONDAY)
    database.write_now(inbox.put, [NewEvent("digest/1/x", ROWAN, event)], NOW)

    database.write_now(lambda conn: damaged(conn, tables.clients, tables.clients.c.id == 1, "plan"))
    settle(database, NOW)
    assert "Ben" in str(said(database, ROWAN))


@pytest.mark.parametrize("column", ["message", "choices"])
def test_an_answer_that_cannot_be_read_is_made_up_for_by_a_plain_word(database, column):
    database.write_now(practice)
    database.write_now(inbox.put, [NewEvent("telegram/1", ADA, Text(NOW, "help", "1"))], NOW)
    settle(database, NOW - timedelta(hours=1))
    columns = tables.outbox.c

    database.write_now(lambda conn: damaged(conn, tables.outbox, columns.chat_id == ADA, column))
    transport, renderings = MemoryTransport(), Renderings(database, gather)
    sender = Delivery(database, transport, renderings, HeldClock(NOW), Metrics(), worker="one", rates=None)
    asyncio.run(sender.drain())
    renderings.close()
    kept = database.read_now(
        lambda conn: conn.execute(select(columns.status, columns.occasion).order_by(columns.id)).all()
    )
    assert [(status, occasion) for status, occasion in kept if occasion is not None] == [("sent", "instead/1")]
    assert [message.text for message in transport.to(ADA)] == [render(OurFault(), (), Reader("de")).text]


def test_an_apology_that_is_refused_too_is_not_repeated(database):
    database.write_now(practice)
    database.write_now(outbox.put, [outbox.Outgoing(ADA, OurFault(), NOW, person_id=2)], NOW)
    transport, renderings = MemoryTransport(), Renderings(database, gather)
    transport.fail_next(Rejected("no"), Rejected("no"), Rejected("no"))
    sender = Delivery(database, transport, renderings, HeldClock(NOW), Metrics(), worker="one", rates=None)
    asyncio.run(sender.drain())
    assert database.read_now(outbox.waiting) == 0
    assert asyncio.run(transport.send(ADA, Rendered(text="one refusal is left"))) == Rejected("no")
