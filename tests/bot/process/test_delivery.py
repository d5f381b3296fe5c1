"""Delivering the outbox: order, limits, failures, timing. On both databases; in memory unless the network matters."""

import asyncio
from datetime import UTC, datetime, timedelta

import pytest
from sqlalchemy import insert, select

from bot.foundation.clock import HeldClock, MachineClock
from bot.foundation.errors import TokenRefused
from bot.foundation.metrics import Metrics
from bot.foundation.reader import Rendered
from bot.foundation.retry import Busy, NoAnswer, Rejected, Shut, Trouble
from bot.process import delivery, rate_window
from bot.process.delivery import Delivery
from bot.store import codec, outbox, rate_limit
from bot.store.dispatch import HOLD, LEASE, LONGEST_SEND, claim_and_settle
from bot.store.schema import inbox as inbox_table
from bot.store.schema import outbox as outbox_table
from bot.store.schema import people
from core.dialogue.client import messages as m
from core.dialogue.kit.events import GroupEvent, Reachability
from demo.messenger.signal import Signal
from tests import virtual_time
from tests.memory_transport import MemoryTransport
from tests.virtual_time import instant, pass_time
from tests.waiting import PATIENCE, until_bumped

NOW = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)
SECOND = timedelta(seconds=1)
ADA, BEN = 1001, 1002


class Plain:
    """Renders a message as its name; raises for one called "broken"."""

    async def parts(self, row):
        message = codec.loads(row.message)
        if message.name == "broken":
            raise ValueError("no words for it")
        if message.name == "two parts":
            return Rendered(text="first"), Rendered(text="second")
        return (Rendered(text=f"{message.name} ({row.reader.language})"),)


def said(text, chat=ADA, due=NOW, **options):
    return outbox.Outgoing(chat, m.Welcome(text, ""), due, **options)


class Scene:
    """A sender over one database; the clock stands still unless it is moved."""

    def __init__(self, database, *, rates=None, clock=None, worker="one", **options):
        self.database = database
        self.clock = clock or HeldClock(NOW)
        self.transport = options.pop("transport", None) or MemoryTransport()
        self.events = 0
        self.metrics = Metrics()
        self.delivery = Delivery(
            database, self.transport, options.pop("renderer", Plain()), self.clock, self.metrics,
            worker=worker, rates=rates, on_events=self._heard, spread=lambda: 0.0, **options,
        )  # fmt: skip

    def _heard(self):
        self.events += 1

    def queue(self, *messages):
        self.database.write_now(outbox.put, messages, self.clock.now())

    def drain(self):
        return asyncio.run(self.delivery.drain())

    def shown(self, chat=ADA):
        return [message.text for message in self.transport.to(chat)]

    def rows(self):
        columns = outbox_table.c
        order = select(columns.status, columns.error, columns.ready_at, columns.attempts).order_by(columns.id)
        return self.database.read_now(lambda conn: [tuple(row) for row in conn.execute(order)])

    def inbox(self):
        rows = self.database.read_now(lambda conn: conn.execute(select(inbox_table)).all())
        return [(row.key, row.chat_id, codec.loads(row.event)) for row in rows]


def test_messages_of_a_chat_go_out_in_order_and_each_once(database):
    scene = Scene(database)
    scene.queue(*(said(str(n)) for n in range(6)), said("other", BEN))
    assert scene.drain() == 7
    assert scene.shown() == [f"{n} (en)" for n in range(6)]
    assert scene.shown(BEN) == ["other (en)"]
    assert scene.drain() == 0
    assert {status for status, *_ in scene.rows()} == {"sent"}


def test_a_message_is_not_sent_before_it_is_due(database):
    scene = Scene(database)
    scene.queue(said("later", due=NOW + 30 * SECOND))
    assert scene.drain() == 0
    scene.clock.move_to(NOW + 30 * SECOND)
    assert scene.drain() == 1


def test_a_message_is_written_in_the_language_of_its_reader(database):
    scene = Scene(database)

    def arrive(conn):
        return conn.execute(
            insert(people).values(chat_id=ADA, role="client", language="pl", created_at=NOW)
        ).inserted_primary_key[0]

    scene.queue(said("hello", person_id=database.write_now(arrive)), said("group", -5, language="fr", is_group=True))
    scene.drain()
    assert scene.shown() == ["hello (pl)"]
    assert scene.shown(-5) == ["group (fr)"]


def test_a_failure_holds_back_its_own_chat_and_nobody_else(database):
    scene = Scene(database)
    scene.queue(said("first"), said("second"))
    scene.transport.fail_next(Trouble("502"))
    assert scene.drain() == 0
    scene.queue(said("ben", BEN))
    assert scene.drain() == 1
    scene.clock.move_to(NOW + 1 * SECOND)
    assert scene.drain() == 2
    assert scene.shown() == ["first (en)", "second (en)"]


@pytest.mark.parametrize("failure", [NoAnswer("silence"), Trouble("502")], ids=["silence", "bad-gateway"])
def test_a_messenger_in_trouble_is_asked_less_and_less_often(database, failure):
    scene = Scene(database)
    scene.queue(said("hello"))
    waits = []
    for _ in range(5):
        scene.transport.fail_next(failure)
        scene.drain()
        ((_, _, ready, _),) = scene.rows()
        waits.append((ready - scene.clock.now()) / SECOND)
        scene.clock.move_to(ready)
    assert waits == [1, 2, 4, 8, 16]
    assert scene.drain() == 1


def test_when_the_messenger_says_wait_nobody_gets_anything_until_then(database):
    scene = Scene(database, rates=rate_limit.Rates(overall=1000))
    other = Scene(database, rates=rate_limit.Rates(overall=1000), clock=scene.clock, worker="two")
    scene.queue(said("ada"))
    scene.transport.fail_next(Busy(7))
    assert scene.drain() == 0
    scene.queue(said("ben", BEN))
    assert other.drain() == scene.drain() == 0  # the other one first: it knows only what is in the database
    scene.clock.move_to(NOW + 7.2 * SECOND)
    assert scene.drain() + other.drain() == 2


def test_what_waited_for_its_place_when_everybody_was_told_to_wait_is_handed_back_untried(database):
    scene = Scene(database, rates=rate_limit.Rates(overall=20))
    scene.queue(said("ada"), said("ben", BEN))
    scene.transport.fail_next(Busy(7))
    assert scene.drain() == 0
    (_, _, ada_ready, ada_tries), (_, _, ben_ready, ben_tries) = scene.rows()
    assert (ada_tries, ben_tries) == (1, 0)
    assert ada_ready == ben_ready == NOW + 7.1 * SECOND
    scene.clock.move_to(ben_ready + SECOND)
    assert scene.drain() == 2


def test_waiting_when_told_is_not_counted_as_an_attempt_that_failed(database):
    scene = Scene(database)
    scene.queue(said("hello"))
    scene.transport.fail_next(Busy(7))
    scene.drain()
    scene.clock.move_to(NOW + 8 * SECOND)
    assert scene.drain() == 1


def test_somebody_who_blocked_us_gets_nothing_more_and_the_conversation_hears_of_it(database):
    scene = Scene(database)
    scene.transport.blocked.add(ADA)
    scene.queue(said("first"), said("second"), said("ben", BEN))
    assert scene.drain() == 1
    assert [(status, error) for status, error, *_ in scene.rows()] == [
        ("failed", "blocked"), ("failed", "blocked"), ("sent", None),
    ]  # fmt: skip
    ((_, chat, event),) = scene.inbox()
    assert (chat, event) == (ADA, Reachability(NOW, False))
    assert scene.events == 1


def test_a_group_that_removed_us_is_told_as_a_group(database):
    scene = Scene(database)
    scene.transport.blocked.add(-5)
    scene.queue(said("hello", -5, is_group=True))
    scene.drain()
    assert [(chat, event) for _, chat, event in scene.inbox()] == [(-5, GroupEvent(NOW, "removed"))]


def test_a_person_known_to_be_unreachable_is_not_even_tried(database):
    scene = Scene(database)

    def gone(conn):
        return conn.execute(
            insert(people).values(chat_id=ADA, role="client", reachable=False, created_at=NOW)
        ).inserted_primary_key[0]

    scene.queue(said("hello", person_id=database.write_now(gone)))
    assert scene.drain() == 0
    assert scene.transport.sent == []
    assert scene.rows()[0][:2] == ("failed", "unreachable")


def test_a_group_that_grew_gets_the_message_in_its_new_chat(database):
    scene = Scene(database)
    scene.transport.moved[-5] = -1005
    scene.queue(said("one", -5, is_group=True), said("two", -5, is_group=True))
    assert scene.drain() == 2
    assert scene.shown(-1005) == ["one (en)", "two (en)"]
    assert [(chat, event) for _, chat, event in scene.inbox()] == [(-5, GroupEvent(NOW, "migrated", other_chat=-1005))]


def test_a_message_the_messenger_rejects_is_set_aside_with_its_error_and_the_next_one_goes(database):
    scene = Scene(database)
    scene.queue(said("first"), said("second"))
    scene.transport.fail_next(Rejected("can't parse entities"))
    assert scene.drain() == 1
    assert scene.rows()[0][:2] == ("failed", "can't parse entities")
    assert scene.shown() == ["second (en)"]


def test_a_message_we_cannot_put_into_words_is_set_aside_without_its_words(database):
    scene = Scene(database)
    scene.queue(said("broken"), said("second"))
    assert scene.drain() == 1
    assert scene.rows()[0][:2] == ("failed", "ValueError")


def test_a_message_in_two_parts_goes_on_with_the_part_that_failed(database):
    scene = Scene(database)
    scene.queue(said("two parts"), said("next"))
    send, failures = scene.transport.send, [None, Trouble("502")]

    async def failing_once(chat, message):
        failure = failures.pop(0) if failures else None
        return failure or await send(chat, message)

    scene.transport.send = failing_once
    assert scene.drain() == 0
    scene.clock.move_to(NOW + 1 * SECOND)
    assert scene.drain() == 2
    assert scene.shown() == ["first", "second", "next (en)"]


def test_buttons_are_taken_off_the_message_that_was_pressed(database):
    scene = Scene(database)
    asked = asyncio.run(scene.transport.send(ADA, Rendered(text="Same?", keyboard=((("Yes", "y"),),))))
    scene.queue(
        outbox.Outgoing(ADA, None, NOW, kind=outbox.DeliveryKind.DROP_BUTTONS, ref=str(asked.message_id)),
        said("Thanks"),
    )
    assert scene.drain() == 2
    assert scene.transport.to(ADA)[0].keyboard == ()


def test_what_a_killed_worker_held_is_free_again_when_its_lease_ends_or_it_comes_back(database):
    scene = Scene(database)
    scene.queue(said("ada"), said("ben", BEN))
    database.write_now(claim_and_settle, "one", NOW, (), 1, None)
    database.write_now(claim_and_settle, "two", NOW, (), 1, None)
    assert scene.drain() == 0
    assert asyncio.run(scene.delivery.start_afresh()) == 1
    assert scene.drain() == 1
    scene.clock.move_to(NOW + LEASE)
    assert scene.drain() == 1


class Watched(MemoryTransport):
    """Notifies a waiting test of each message sent."""

    def __init__(self):
        super().__init__()
        self.signal = Signal()

    async def send(self, chat_id, message):
        answer = await super().send(chat_id, message)
        self.signal.bump()
        return answer

    async def until(self, condition):
        await until_bumped(self.signal, condition)

    async def until_sent(self, count):
        await self.until(lambda: len(self.sent) >= count)


class Stalling(Watched):
    """Is slow, and records how long the lease of the message being sent still had to run."""

    def __init__(self):
        super().__init__()
        self.held = []

    async def send(self, chat_id, message):
        leases = select(outbox_table.c.ready_at).where(outbox_table.c.chat_id == chat_id)
        ends = self.scene.database.read_now(lambda conn: conn.execute(leases).scalar_one())
        self.held.append(ends - self.scene.clock.now())
        self.scene.clock.move_to(self.scene.clock.now() + HOLD + SECOND)
        return await super().send(chat_id, message)


def test_a_message_that_waited_long_is_claimed_anew_before_it_is_sent(database):
    scene = Scene(database, transport=Stalling(), parallel=1)
    scene.transport.scene = scene
    scene.queue(*(said("hello", chat) for chat in (ADA, BEN)))
    asyncio.run(running(scene, lambda: scene.transport.until_sent(2)))
    assert min(scene.transport.held) >= LONGEST_SEND
    assert len(scene.transport.sent) == 2
    assert [(status, attempts) for status, _, _, attempts in scene.rows()] == [("sent", 1), ("sent", 1)]


def test_two_workers_share_one_outbox_and_say_everything_once(open_database):
    scenes = [Scene(open_database(), worker=name) for name in ("one", "two")]
    chats = range(40)
    scenes[0].queue(*(said(str(n), chat) for n in range(3) for chat in chats))

    async def both():
        return await asyncio.gather(*(scene.delivery.drain() for scene in scenes))

    assert sum(asyncio.run(both())) >= 118  # a chat claimed by the other is left to it
    for scene in scenes:
        scene.drain()
    for chat in chats:
        lines = sorted(line for scene in scenes for line in scene.shown(chat))
        assert lines == ["0 (en)", "1 (en)", "2 (en)"]


# --- running by itself -------------------------------------------------------------------------------------


class Stamped(Watched):
    """Notes when each message was sent, in virtual time."""

    def __init__(self):
        super().__init__()
        self.at = []

    async def send(self, chat_id, message):
        self.at.append(instant())
        return await super().send(chat_id, message)


async def running(scene, work):
    stopping = asyncio.Event()
    task = asyncio.create_task(scene.delivery.run(stopping))
    try:
        async with asyncio.timeout(PATIENCE):
            return await work()
    finally:
        stopping.set()
        scene.delivery.bell.ring()
        await task


def test_at_a_set_rate_nearly_all_of_it_is_used_and_never_more(database, monkeypatch):
    monkeypatch.setattr(rate_window, "monotonic", instant)
    scene = Scene(database, rates=rate_limit.Rates(overall=60), clock=virtual_time.Clock(NOW), transport=Stamped())
    database.write_now(outbox.put, [said("hello", chat) for chat in range(1, 151)], NOW)
    virtual_time.play(running(scene, lambda: scene.transport.until_sent(150)))
    at = scene.transport.at
    assert 149 / (at[-1] - at[0]) >= 0.95 * 60
    assert max(sum(1 for other in at if start <= other < start + 1) for start in at) <= 62
    assert max(sum(1 for other in at if start <= other < start + 0.1) for start in at) <= 8  # evenly, not in bursts


def test_a_timed_message_goes_out_at_its_instant(database):
    scene = Scene(database, rates=rate_limit.Rates(), clock=virtual_time.Clock(NOW), transport=Stamped())
    scene.database.write_now(outbox.put, (said("stop", due=NOW + timedelta(seconds=0.6)),), NOW)
    virtual_time.play(running(scene, lambda: scene.transport.until_sent(1)))
    assert scene.transport.at[0] - virtual_time.START == pytest.approx(0.6, abs=0.005)


def test_a_token_that_goes_on_being_refused_ends_it_and_loses_no_message(database):
    scene = Scene(database, clock=virtual_time.Clock(NOW), transport=Stamped())
    scene.transport.fail_next(*[Shut()] * 20)
    database.write_now(outbox.put, (said("one"), said("two", BEN)), NOW)
    with pytest.raises(TokenRefused):
        virtual_time.play(scene.delivery.run(asyncio.Event()))
    assert scene.transport.at[-1] - scene.transport.at[0] == pytest.approx(120, abs=2)
    assert [status for status, *_ in scene.rows()] == ["pending"] * 2


def test_a_token_refused_for_a_moment_ends_nothing(database):
    scene = Scene(database, clock=virtual_time.Clock(NOW), transport=Stamped())

    async def twice():
        stopping = asyncio.Event()
        task = asyncio.create_task(scene.delivery.run(stopping))
        for number, text in enumerate(("one", "two"), 1):
            scene.transport.fail_next(Shut(), Shut())
            await scene.database.write(outbox.put, (said(text),), scene.clock.now())
            scene.delivery.bell.ring()
            while len(scene.transport.sent) < number:
                await pass_time(10)  # of the minutes it waits
        stopping.set()
        scene.delivery.bell.ring()
        await task

    virtual_time.play(twice())
    assert scene.shown() == ["one (en)", "two (en)"]


def test_what_is_queued_while_nothing_is_due_goes_out_at_once_when_the_bell_rings(database, monkeypatch):
    monkeypatch.setattr(delivery, "LONGEST_SLEEP", 30.0)
    scene = Scene(database, clock=virtual_time.Clock(NOW), transport=Stamped())

    async def work():
        await pass_time(10)
        await scene.database.write(outbox.put, (said("now"),), scene.clock.now())
        rung = instant()
        scene.delivery.bell.ring()
        await scene.transport.until_sent(1)
        return scene.transport.at[0] - rung

    assert virtual_time.play(running(scene, work)) < 0.1


class Slow(Watched):
    """Is slow, and reports when it started."""

    def __init__(self):
        super().__init__()
        self.started, self.go_on = asyncio.Event(), asyncio.Event()
        self.asked = []

    async def send(self, chat_id, message):
        self.asked.append(chat_id)
        self.started.set()
        self.signal.bump()
        await self.go_on.wait()
        return await super().send(chat_id, message)


def test_a_stop_finishes_what_is_in_flight_and_notes_it(database):
    scene = Scene(database, clock=MachineClock(), transport=Slow())
    scene.queue(said("hello"))

    async def run():
        stopping = asyncio.Event()
        task = asyncio.create_task(scene.delivery.run(stopping))
        await scene.transport.started.wait()
        stopping.set()
        scene.delivery.bell.ring()
        scene.transport.go_on.set()
        async with asyncio.timeout(10):
            await task

    asyncio.run(run())
    assert scene.shown() == ["hello (en)"]
    assert scene.rows()[0][0] == "sent"


@pytest.fixture
def breaking(monkeypatch):
    """Make the n-th write to a database fail. committed: it is committed nevertheless. meanwhile: called before each
    later one."""

    def break_at(database, number, *, committed=False, meanwhile=None):
        write, calls = database.write, []

        async def breaks(work, *args):
            calls.append(work)
            place = len(calls)
            if place > number and meanwhile is not None:
                await meanwhile()
            result = await write(work, *args) if committed or place != number else None
            if place == number:
                raise OSError("it broke")
            return result

        monkeypatch.setattr(database, "write", breaks)
        return calls

    return break_at


def test_a_database_that_fails_after_a_send_does_not_make_us_say_it_twice(database, breaking):
    scene = Scene(database)
    scene.queue(said("hello"))
    breaking(database, 2)
    with pytest.raises(OSError, match="broke"):
        scene.drain()
    scene.clock.move_to(NOW + 2 * LEASE)
    assert scene.drain() == 0
    assert scene.shown() == ["hello (en)"]
    assert scene.rows()[0][0] == "sent"


def test_what_was_claimed_without_our_hearing_of_it_is_claimed_again_at_once(database, breaking):
    scene = Scene(database)
    scene.queue(said("hello"), said("ben", BEN))
    breaking(database, 1, committed=True)
    with pytest.raises(OSError, match="broke"):
        scene.drain()
    assert scene.drain() == 2
    assert scene.shown() == ["hello (en)"]
    assert scene.shown(BEN) == ["ben (en)"]


def test_what_is_on_its_way_is_not_handed_back_when_an_exchange_fails(open_database, breaking):
    scene, other = Scene(open_database(), clock=MachineClock(), transport=Slow()), Scene(open_database(), worker="two")
    breaking(scene.database, 2, committed=True)
    scene.queue(said("hello"))

    async def while_it_is_sent():
        try:
            await scene.transport.started.wait()
            scene.queue(said("ben", BEN))
            scene.delivery.bell.ring()
            await scene.transport.until(lambda: len(scene.transport.asked) == 2)
            other.clock.move_to(scene.clock.now() + SECOND)
            assert await other.delivery.drain() == 0
        finally:
            scene.transport.go_on.set()
        await scene.transport.until_sent(2)

    asyncio.run(running(scene, while_it_is_sent))
    assert scene.shown() == ["hello (en)"]
    assert scene.shown(BEN) == ["ben (en)"]


def test_what_was_sent_and_could_not_be_noted_is_nobody_else_s_meanwhile(open_database, breaking):
    scene, other = Scene(open_database()), Scene(open_database(), worker="two")
    scene.queue(said("hello"))

    async def the_other_finds_nothing():
        assert await other.delivery.drain() == 0

    calls = breaking(scene.database, 2, meanwhile=the_other_finds_nothing)
    with pytest.raises(OSError, match="broke"):
        scene.drain()
    assert scene.drain() == 0
    assert len(calls) > 3
    assert scene.shown() == ["hello (en)"]
    assert scene.rows()[0][0] == "sent"
