"""A bot that is stopped finishes its work in progress: nothing is cut off, and nothing is repeated afterwards."""

import asyncio

import pytest
from sqlalchemy import select

from bot.store.schema import inbox, outbox
from tests.faults.balance import Front, free_ports
from tests.faults.conftest import peaceful, stage  # noqa: F401 (fixtures)
from tests.faults.morning import morning
from tests.faults.test_workers import workers
from tests.waiting import until_polled

SLOW = 700  # ms every answer to a send takes


@pytest.mark.parametrize("point", ["asked", "typed"])
def test_what_is_being_sent_when_it_is_told_to_stop_is_noted_and_not_said_again(
    stage,  # noqa: F811
    database_url,
    point,
):
    async def scene(bots):
        async with morning(database_url, 4) as there:
            first = await bots.start(there.settings)
            if point == "typed":
                for chat in there.clients:
                    await there.messenger.wait_for_messages(chat, 1, after=0, timeout=20)
                    await there.messenger.send_text(chat, "7")
                await there.messenger.wait_for_mark(len(there.clients) + 1, timeout=20)
            await there.messenger.add_fault("delay", methods=["sendMessage"], ms=SLOW)

            async def sending():
                return (await there.messenger.figures())["in_flight"]

            if point == "asked":
                await there.until(sending)
            end = await first.stop()
            assert end.status == 0
            said = await there.messenger.mark()
            rows = await there.store.read(lambda conn: conn.execute(select(outbox.c.status, outbox.c.claimed_by)).all())
            assert [row.status for row in rows].count("sent") == said
            assert {row.claimed_by for row in rows} <= {None}
            await there.messenger.clear_faults()
            second = await bots.start(there.settings)
            there.typed = 99  # nobody types the rest

            await until_polled(there.messenger)
            await there.until(there.quiet)
            assert (await second.stop()).status == 0
            for chat in there.clients:
                shown = [m.text for m in await there.messenger.seen(chat) if m.from_bot]
                assert len(shown) == len(set(shown))

    stage(scene)


@pytest.mark.parametrize("database_url", ["postgresql"], indirect=True)
def test_updates_pushed_while_it_stops_are_taken_by_another_or_come_again(stage, database_url):  # noqa: F811
    async def scene(bots):
        ports = free_ports(2)
        async with Front(ports) as front, morning(database_url, 4) as there:
            first, second = await workers(bots, there, front, ports)
            for chat in there.clients:
                await there.messenger.wait_for_messages(chat, 1, after=0, timeout=20)
            typing = asyncio.gather(
                *(there.messenger.send_text(chat, f"help {n}") for n in range(5) for chat in there.clients)
            )
            end = await first.stop()
            await typing
            there.typed = 99
            await there.until(there.quiet)
            assert (end.status, (await second.stop()).status) == (0, 0)
            rows = await there.store.read(lambda conn: conn.execute(select(inbox.c.key, inbox.c.status)).all())
            assert len([row for row in rows if row.key.startswith("telegram/")]) == 5 * len(there.clients)
            assert {row.status for row in rows} == {"done"}

    stage(scene)
