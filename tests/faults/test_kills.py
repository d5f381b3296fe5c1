"""Killed with SIGKILL at every point where something could be lost or done twice, during a morning's rush."""

import asyncio
import random

import pytest

from tests.faults.conftest import CLIENTS
from tests.faults.findings import check
from tests.faults.morning import morning

SEED = 20260330
FEW, MANY = 3, 6  # kills: on PostgreSQL each waits for a lease to expire
POINTS = (
    "fetched",
    "writing keep",
    "written keep",
    "writing sweep",
    "written sweep",
    "writing work_batch",
    "written work_batch",
    "writing claim_and_settle",
    "written claim_and_settle",
    "sending",
    "sent",
)


ON_POSTGRESQL = (
    "writing work_batch",
    "written claim_and_settle",
    "sent",
)  # where a lease must expire, or locks are released


def test_killed_again_and_again_each_time_a_little_later(stage, peaceful, database_url):
    async def scene(bots):
        async with morning(database_url, CLIENTS) as there:
            people = asyncio.create_task(there.people())
            kills = FEW if database_url.startswith("postgresql") else MANY
            plans = [{"at": 2 + 7 * n % 23} for n in range(kills)]
            last = await there.keep_alive(bots, plans)
            await people
            await there.until(there.quiet)
            assert (await last.stop()).status == 0
            return await check(there, peaceful)

    found = stage(scene)
    assert found.kills.total() >= FEW


@pytest.mark.parametrize(
    ("database_url", "name"),
    [*(("sqlite", name) for name in POINTS), *(("postgresql", name) for name in ON_POSTGRESQL)],
    indirect=["database_url"],
)
def test_killed_at_one_point_time_and_again(stage, peaceful, database_url, name):
    async def scene(bots):
        async with morning(database_url, CLIENTS) as there:
            people = asyncio.create_task(there.people())
            last = await there.keep_alive(bots, [{"point": name, "at": at} for at in (1, 3)])
            await people
            await there.until(there.quiet)
            assert (await last.stop()).status == 0
            return await check(there, peaceful)

    found = stage(scene)
    assert set(found.kills) == {name}


def test_killed_from_outside_at_any_moment(stage, peaceful, database_url):
    dice = random.Random(SEED)

    async def scene(bots):
        async with morning(database_url, CLIENTS) as there:
            people = asyncio.create_task(there.people())
            times = FEW if database_url.startswith("postgresql") else MANY
            bot = await there.kill_each(bots, [dice.uniform(0.02, 0.7) for _ in range(times)])
            await people
            await there.until(there.quiet)
            assert (await bot.stop()).status == 0
            return await check(there, peaceful)

    found = stage(scene)
    assert found.kills["from outside"] >= 1
