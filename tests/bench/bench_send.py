"""Ten thousand reminders due in one minute: until all are in the outbox, then until they are sent.

* Made: sweep and turns, as a worker runs them, until the last outbox row is committed.
* Highest rate: the bot sends all it can, compared with plain `send_message` of the same text with the library's
  defaults, at its best concurrency (tried: 1, 8, 32). From the first message accepted to the last.
* At a set rate of 30 a second, with the local messenger refusing the 31st in any second: the share that is used.
"""

from __future__ import annotations

import asyncio
import time
from collections.abc import Sequence
from datetime import timedelta

from rich.table import Table
from telegram import Bot

from bot.foundation import clock
from bot.foundation.config import Settings
from bot.process import reminders, wiring
from bot.store.database import Database
from bot.turns.turn import work_batch
from demo.messenger import Remote
from tests.bench import population
from tests.bench.measuring import RUNS, median, ratio
from tests.bench.processes import open_chats, our_bot
from tests.bench.servers import KINDS, Fresh

REMINDERS, SENT = 10_000, 4_000  # made; used to measure the highest rate
CONCURRENCY = (1, 8, 32)
RATE, SECONDS = 30, 20
TEXT = "Hello again, and thanks for your time. How was your energy this week, from 0 to 10?"


def made(url: str, count: int) -> float:
    """Reminders a second, from the first query for due rows to the last commit."""
    database = Database(url)
    now = clock.now()
    population.fill(database, count, now, due=now - timedelta(minutes=1))
    steps = wiring.steps(Settings(), lambda token: token)
    start = time.perf_counter()
    while database.write_now(reminders.sweep, now):
        pass
    while database.write_now(work_batch, steps, clock.now(), wiring.BATCH):
        pass
    took = time.perf_counter() - start
    database.close()
    return count / took


async def highest(url: str, count: int) -> float:
    async with await Remote.spawn("--no-flood") as messenger:
        await open_chats(messenger, range(population.FIRST_CHAT, population.FIRST_CHAT + count))
        async with our_bot(messenger, url):
            await messenger.wait_for_mark(count, timeout=300)
        return await _rate(messenger)


async def bare(count: int, concurrency: int) -> float:
    async with await Remote.spawn("--no-flood") as messenger:
        chats = range(population.FIRST_CHAT, population.FIRST_CHAT + 500)
        await open_chats(messenger, chats)
        async with Bot(messenger.token, messenger.base_url) as bot:
            await _send(bot, chats, count, concurrency)
        return await _rate(messenger)


async def _send(bot: Bot, chats: Sequence[int], count: int, concurrency: int) -> None:
    numbers = iter(range(count))

    async def sender() -> None:
        for number in numbers:
            await bot.send_message(chats[number % len(chats)], TEXT)

    await asyncio.gather(*(sender() for _ in range(concurrency)))


async def _rate(messenger: Remote) -> float:
    sent = await messenger.sent()
    return (len(sent) - 1) / (sent[-1].accepted - sent[0].accepted)


async def paced(url: str, rate: int, seconds: int) -> tuple[float, int, int]:
    """The share of the rate that was used, how many were refused, and the most in any one second."""
    async with await Remote.spawn("--overall", str(rate)) as messenger:
        await messenger.set_flood(enabled=False)
        await open_chats(messenger, range(population.FIRST_CHAT, population.FIRST_CHAT + rate * (seconds + 5)))
        await messenger.set_flood(enabled=True)
        async with our_bot(messenger, url, "--paced", send_rate=rate):
            await messenger.wait_for_mark(rate * seconds, timeout=seconds * 4)
            sent = (await messenger.sent())[: rate * seconds]
            figures = await messenger.figures()
        used = (len(sent) - 1) / (sent[-1].accepted - sent[0].accepted) / rate
        return used, figures["refused_by_flood"], figures["highest_per_second"]


def run(runs: int = RUNS) -> Table:
    table = Table("", "figure", "against the yardstick", title=f"{REMINDERS:,} reminders due in the same minute")
    with KINDS["SQLite"]() as sqlite, KINDS["PostgreSQL"]() as postgresql:
        fresh: dict[str, Fresh] = {"SQLite": sqlite, "PostgreSQL": postgresql}
        for kind, new in fresh.items():
            speed = median([made(new(), REMINDERS) for _ in range(runs)])
            table.add_row(
                f"in the outbox, {kind}", f"{speed:,.0f}/s: all after {REMINDERS / speed:.1f} s", "no yardstick"
            )
        table.add_section()
        best = max(CONCURRENCY, key=lambda n: asyncio.run(bare(1_000, n)))
        yardstick: list[float] = []
        ours: dict[str, list[float]] = {kind: [] for kind in fresh}
        for _ in range(runs):
            yardstick.append(asyncio.run(bare(SENT, best)))
            for kind, new in fresh.items():
                url = new()
                made(url, SENT)
                ours[kind].append(asyncio.run(highest(url, SENT)))
        table.add_row(f"bare send_message, {best} at once (its best)", f"{median(yardstick):,.0f}/s", "1.00")
        for kind, speeds in ours.items():
            table.add_row(f"highest rate, {kind}", f"{median(speeds):,.0f}/s", f"{ratio(speeds, yardstick):.2f}")
        table.add_section()
        for kind, new in fresh.items():
            url = new()
            made(url, RATE * (SECONDS + 5))
            used, refused, most = asyncio.run(paced(url, RATE, SECONDS))
            table.add_row(f"at a set {RATE}/s, {kind}", f"{used:.1%} used", f"{refused} refused, at most {most} in 1 s")
    return table
