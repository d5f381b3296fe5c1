"""Several identical workers on one PostgreSQL behind a front: together they are one bot."""

import asyncio
import itertools
import random
import time

import aiohttp
import pytest
from sqlalchemy import select

from bot.store.schema import inbox, outbox
from demo.messenger import Flood
from tests.faults.balance import Front, free_ports
from tests.faults.conftest import CLIENTS
from tests.faults.findings import chats, check
from tests.faults.morning import morning

SECRET = "a-secret-of-this-test"
ON_POSTGRESQL = pytest.mark.parametrize("database_url", ["postgresql"], indirect=True)


async def workers(bots, there, front, ports, plans=({}, {})):
    """Start one worker a port, and wait until each takes updates."""
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
            plans = [{"point": "writing work_batch", "at": 4}, {}]
            first, second = await workers(bots, there, front, ports, plans)
            people = asyncio.create_task(there.people())
            there.ends.append(await first.ended)
            (third,) = await workers(bots, there, front, ports[:1], [{}])
            second.kill()
            there.ends.append(await second.ended)
            await people
            await there.until(there.quiet)
            assert (await third.stop()).status == 0
            return await check(there, peaceful)

    found = stage(scene)
    assert found.kills.total() == 2


@ON_POSTGRESQL
def test_clocks_three_seconds_apart_change_neither_order_nor_rate(stage, peaceful, database_url):
    """What waits is sent by both; a second never holds more than the platform allows for the rate that is set."""

    async def scene(bots):
        ports = free_ports(2)
        limits = Flood(overall=30, burst=5, per_chat=1000.0)
        async with Front(ports) as front, morning(database_url, CLIENTS, flood=limits, send_rate="28") as there:
            started = await workers(bots, there, front, ports, [{"clock": 1.5}, {"clock": -1.5}])
            await there.people()
            await there.until(there.quiet)
            assert [(await bot.stop()).status for bot in started] == [0, 0]
            return await check(there, peaceful), await there.messenger.figures()

    found, figures = stage(scene)
    assert found.repeats.total() == 0
    assert figures["highest_per_second"] <= 30
