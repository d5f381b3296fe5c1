"""Several identical workers on one PostgreSQL behind a load balancer: together they are one bot."""

import asyncio
from datetime import timedelta

import aiohttp
import pytest

from bot.foundation import clock as clocks
from bot.foundation.clock import SharedClock
from bot.store import outbox, rate_limit
from bot.store.dispatch import claim_and_settle
from core.dialogue.client.messages import Welcome
from tests.bot.practice import NOW
from tests.faults.balance import Front, free_ports
from tests.faults.conftest import CLIENTS
from tests.faults.findings import check
from tests.faults.morning import SHORT, morning

SECRET = "a-secret-of-this-test"
ON_POSTGRESQL = pytest.mark.parametrize("database_url", ["postgresql"], indirect=True)


async def workers(bots, there, front, ports, plans=({}, {})):
    """Start one worker per port, and wait until each accepts updates."""
    started = []
    for port, plan in zip(ports, plans, strict=True):
        there.settings |= {
            "SAMEHOUR_WEBHOOK_URL": front.url,
            "SAMEHOUR_WEBHOOK_SECRET": SECRET,
            "SAMEHOUR_WEBHOOK_PORT": str(port),
        }
        started.append(await bots.start(there.settings, plan, webhook=True))
    async with aiohttp.ClientSession() as session:
        for port in ports:

            async def ready(port=port):
                try:
                    async with session.get(f"http://127.0.0.1:{port}/readyz") as answer:
                        return answer.status == 200
                except aiohttp.ClientError:
                    return False

            await there.until(ready)
    return started


@ON_POSTGRESQL
def test_two_workers_are_one_bot_and_share_the_work(stage, peaceful, database_url):
    async def scene(bots):
        ports = free_ports(2)
        async with Front(ports) as front, morning(database_url, CLIENTS) as there:
            started = await workers(bots, there, front, ports)
            await there.people()
            await there.until(there.quiet)
            assert [(await bot.stop()).status for bot in started] == [0, 0]
            return await check(there, peaceful), front.taken

    found, taken = stage(scene)
    assert found.repeats.total() == 0
    assert len(taken) == 2
    assert min(taken.values()) >= found.typed // 4


@ON_POSTGRESQL
def test_workers_killed_in_turn_leave_their_work_to_the_others(stage, peaceful, database_url):
    async def scene(bots):
        ports = free_ports(2)
        async with Front(ports) as front, morning(database_url, CLIENTS) as there:
            plans = [{"point": "writing work_batch", "at": 4, **SHORT}, SHORT]
            first, second = await workers(bots, there, front, ports, plans)
            people = asyncio.create_task(there.people())
            there.ends.append(await first.ended)
            (third,) = await workers(bots, there, front, ports[:1], [SHORT])
            second.kill()
            there.ends.append(await second.ended)
            await people
            await there.until(there.quiet)
            assert (await third.stop()).status == 0
            return await check(there, peaceful)

    found = stage(scene)
    assert found.kills.total() == 2


def busiest_second(database, monkeypatch, agree):
    """Two senders with clocks 3 s apart, taking turns every 50 ms over a long outbox; the one behind is first.

    Return the most messages that left in any second."""
    at, shift = NOW, timedelta()
    monkeypatch.setattr(clocks, "now", lambda: at + shift)
    senders = {"behind": (timedelta(seconds=-1.5), SharedClock()), "ahead": (timedelta(seconds=1.5), SharedClock())}
    queued = [outbox.Outgoing(chat, Welcome("", ""), NOW - timedelta(minutes=1)) for chat in range(1, 200)]
    database.write_now(outbox.put, queued, NOW)
    left = []
    for step in range(80):
        at = NOW + timedelta(milliseconds=50 * step)
        for name, (shift, clock) in senders.items():  # noqa: B007 (the patched clock reads it)
            if agree:
                clock.agree(at, clocks.now(), clocks.now())
            found = database.write_now(claim_and_settle, name, clock.now(), (), 32, rate_limit.Rates(28))
            left += [at + (job.at - clock.now()) for job in found.jobs]
    return max(sum(1 for other in left if one <= other < one + timedelta(seconds=1)) for one in left)


def test_clocks_three_seconds_apart_would_pass_the_rate_if_they_did_not_agree_with_the_database(database, monkeypatch):
    assert busiest_second(database, monkeypatch, agree=False) > 30


def test_clocks_three_seconds_apart_that_agree_with_the_database_keep_the_rate(database, monkeypatch):
    assert busiest_second(database, monkeypatch, agree=True) == 28


@ON_POSTGRESQL
def test_clocks_three_seconds_apart_change_nothing_in_any_chat(stage, peaceful, database_url):
    async def scene(bots):
        ports = free_ports(2)
        async with Front(ports) as front, morning(database_url, CLIENTS) as there:
            started = await workers(bots, there, front, ports, [{"clock": 1.5}, {"clock": -1.5}])
            await there.people()
            await there.until(there.quiet)
            assert [(await bot.stop()).status for bot in started] == [0, 0]
            return await check(there, peaceful)

    assert stage(scene).repeats.total() == 0
