"""A complete process, run within the test: the bells, a clean stop, and settling with a held clock."""

import asyncio
from contextlib import asynccontextmanager
from datetime import UTC, datetime, timedelta

import pytest
from pydantic import SecretStr

from bot.foundation.clock import HeldClock, now
from bot.foundation.config import Settings
from bot.foundation.errors import CannotReach, TokenRefused
from bot.process import delivery, wiring, worker
from bot.store import outbox
from bot.store.database import Database
from core.care import Plan, Slot
from core.dialogue.client.messages import Welcome
from demo.messenger import Flood, Messenger
from tests.bot.practice import NOW, add_client, add_coach
from tests.waiting import until

LONG = 60.0  # seconds: work that waits for an idle check instead of its bell is not done within a test


def settings(messenger, url, **more):
    return Settings(
        token=SecretStr(messenger.token),
        api_base_url=messenger.url,
        database_url=url,
        sqlite_synchronous="NORMAL",
        **more,
    )


async def enrolled(messenger, url, *, due, slot):
    """Ada and Rowan have opened the bot; Ada's slot is due at `due`."""
    ada, rowan = await messenger.create_user("Ada"), await messenger.create_user("Rowan")
    for user in (ada, rowan):
        await messenger.open_bot(user)
    store = Database(url)

    def enrol(conn):
        coach = add_coach(conn, rowan)
        plan = Plan(measures=("weight",))
        add_client(conn, coach, ada, plan=plan, slot=slot, next_due_at=due, next_due_day=due.date(), status="active")

    store.write_now(enrol)
    store.close()
    return ada


@asynccontextmanager
async def at_work(service):
    stop = asyncio.Event()
    task = asyncio.create_task(service.run(stop))
    try:
        yield task
    finally:
        stop.set()
        await task


def test_bells_alone_carry_a_message_to_its_answer(database_url, monkeypatch):
    monkeypatch.setattr(worker, "LONGEST_IDLE", LONG)
    monkeypatch.setattr(delivery, "LONGEST_SLEEP", LONG)

    async def scene():
        async with asyncio.timeout(30), Messenger(flood=Flood.off()) as messenger:
            due = now() + timedelta(days=2)
            slot = Slot(due.weekday(), due.time().replace(microsecond=0), "UTC")
            ada = await enrolled(messenger, database_url, due=due, slot=slot)
            async with at_work(wiring.service(settings(messenger, database_url, sweep_every=LONG))):
                mark = 0
                for text in ("help", "energy 7", "82.4 kg"):
                    await messenger.send_text(ada, text)
                    await messenger.wait_for_messages(ada, 1, after=mark, timeout=10)
                    mark = await messenger.mark()

    asyncio.run(scene())


def test_the_sweep_is_rung_and_asks_what_has_come_due(database_url, monkeypatch):
    monkeypatch.setattr(worker, "LONGEST_IDLE", LONG)
    monkeypatch.setattr(delivery, "LONGEST_SLEEP", LONG)

    async def scene():
        clock = HeldClock(NOW - timedelta(minutes=1))
        async with asyncio.timeout(30), Messenger(flood=Flood.off(), clock=clock.now) as messenger:
            ada = await enrolled(messenger, database_url, due=NOW, slot=Slot(NOW.weekday(), NOW.time(), "UTC"))
            given = settings(messenger, database_url, sweep_every=0.1)
            async with at_work(wiring.service(given, clock=clock, paced=False)):
                (greeting,) = await messenger.wait_for_messages(ada, 1, after=0, timeout=10)
                clock.move_to(NOW)
                (asked, *_) = await messenger.wait_for_messages(ada, 1, after=greeting.seq, timeout=10)
                assert "7" not in greeting.labels
                assert "7" in asked.labels

    asyncio.run(scene())


def test_a_wrong_token_ends_it_and_closes_everything(database_url):
    async def scene():
        async with Messenger() as messenger:
            given = settings(messenger, database_url).model_copy(update={"token": SecretStr("4242:" + "x" * 35)})
            with pytest.raises(TokenRefused):
                await wiring.service(given).run(asyncio.Event())

    asyncio.run(scene())


def test_a_part_that_fails_is_tried_again_and_ends_nothing(database_url, monkeypatch):
    monkeypatch.setattr(worker, "backoff", lambda failed, spread: timedelta(0))
    real, calls = wiring.work_batch, []

    def failing_twice(*args):
        calls.append(args)
        if len(calls) < 3:
            raise OSError("disk full")
        return real(*args)

    monkeypatch.setattr(wiring, "work_batch", failing_twice)

    async def scene():
        async with asyncio.timeout(30), Messenger(flood=Flood.off()) as messenger:
            ada = await messenger.create_user("Ada")
            async with at_work(wiring.service(settings(messenger, database_url))):
                await messenger.open_bot(ada)
                await messenger.wait_for_messages(ada, 1, after=0, timeout=20)

    asyncio.run(scene())


def held(messenger, url, at):
    return wiring.service(settings(messenger, url), clock=HeldClock(at), live=False, paced=False, spread=lambda: 0.5)


def test_settling_answers_what_was_typed_and_asks_what_is_due_at_that_instant(database_url):
    async def scene():
        clock = HeldClock(NOW - timedelta(hours=1))
        async with asyncio.timeout(30), Messenger(flood=Flood.off(), clock=clock.now) as messenger:
            slot = Slot(0, datetime(2026, 3, 30, 7, 30).time(), "Europe/London")
            ada = await enrolled(messenger, database_url, due=NOW, slot=slot)
            service = held(messenger, database_url, clock.now())
            await service.start()
            await service.settle(clock.now())
            mark = await messenger.mark()
            assert await service.next_due() == NOW

            clock.move_to(NOW)
            await service.settle(NOW)
            (asked,) = [m for m in await messenger.sent(after=mark) if m.chat == ada]
            assert "7" in asked.labels
            await messenger.press(ada, "7")
            await service.settle(NOW)
            assert len([m for m in await messenger.sent(after=mark) if m.chat == ada]) >= 2
            assert (await messenger.answers(ada))[0].answered
            assert await service.next_due() > NOW
            await service.stop()

    asyncio.run(scene())


def test_settling_sends_a_timed_message_at_its_instant_and_not_before(database_url):
    async def scene():
        async with asyncio.timeout(30), Messenger(flood=Flood.off()) as messenger:
            ada = await messenger.create_user("Ada")
            await messenger.open_bot(ada)
            service = held(messenger, database_url, NOW)
            await service.start()
            await service.settle(NOW)
            mark = await messenger.mark()
            store = Database(database_url)
            later = NOW + timedelta(seconds=30)
            store.write_now(outbox.put, [outbox.Outgoing(ada, Welcome("Ada", "Rowan"), later)], NOW)
            store.close()
            await service.settle(NOW)
            assert await messenger.mark() == mark
            assert await service.next_due() == later
            await service.settle(later)
            assert await messenger.mark() == mark + 1
            await service.stop()

    asyncio.run(scene())


def test_a_live_process_settles_nothing_and_a_held_one_does_not_wait_for_the_messenger(database_url):
    async def scene():
        async with Messenger() as messenger:
            live = wiring.service(settings(messenger, database_url))
            with pytest.raises(RuntimeError, match="live"):
                await live.settle(datetime(2026, 3, 30, tzinfo=UTC))
            await live.stop()
            await messenger.add_fault("server_error", methods=["getMe"], code=502)
            other = held(messenger, database_url, NOW)
            with pytest.raises(CannotReach):
                await other.start()
            await other.stop()

    asyncio.run(scene())


def test_webhook_and_health_are_served_by_the_same_process(database_url):
    async def scene():
        import aiohttp

        async with asyncio.timeout(30), Messenger(flood=Flood.off()) as messenger:
            with_port = {"webhook_port": free_port(), "webhook_secret": SecretStr("s" * 20)}
            port = with_port["webhook_port"]
            given = settings(messenger, database_url, webhook_url=f"http://127.0.0.1:{port}/updates", **with_port)
            ada = await messenger.create_user("Ada")
            async with at_work(wiring.service(given, webhook=True)):
                await messenger.open_bot(ada)
                await messenger.wait_for_messages(ada, 1, after=0, timeout=20)
                async with aiohttp.ClientSession() as session:
                    async with session.get(f"http://127.0.0.1:{port}/readyz") as answer:
                        assert (answer.status, await answer.json()) == (
                            200,
                            {"database": True, "schema": True, "messenger": True},
                        )
                    async with session.get(f"http://127.0.0.1:{port}/metrics") as answer:
                        figures = await answer.text()
            assert "samehour_turns_total 1.0" in figures
            assert 'samehour_messages_total{result="sent"} 1.0' in figures
            assert "Ada" not in figures

    asyncio.run(scene())


def free_port():
    import socket

    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


def test_somebody_who_has_become_a_coach_gets_a_coach_s_menu(database_url):
    async def scene():
        async with asyncio.timeout(30), Messenger(flood=Flood.off()) as messenger:
            due = now() + timedelta(days=2)
            slot = Slot(due.weekday(), due.time().replace(microsecond=0), "UTC")
            ada = await enrolled(messenger, database_url, due=due, slot=slot)
            rowan = ada + 1
            async with at_work(wiring.service(settings(messenger, database_url))):

                async def has_a_coach_s_menu():
                    return "caseload" in {entry["command"] for entry in await messenger.menu(rowan)}

                await until(messenger, has_a_coach_s_menu)
            assert "today" in {entry["command"] for entry in await messenger.menu(ada)}

    asyncio.run(scene())
