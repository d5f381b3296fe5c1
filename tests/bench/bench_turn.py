"""A complete check-in turn, durable and scored, compared with an echo bot on the same library and local messenger.

Ours, from the update received to the scored reply accepted: commit the update, read two years of readings, decide,
score, commit reading, state and reply, render and send; every commit flushed to disk. The clients of a practice on a
Monday morning answer energy, minutes, sessions, pulse and weight, all at once and hardly two the same.

The yardstick stores nothing and echoes the same texts: with the library's defaults, and with the best settings found
(16 at once, 16 connections).

Messenger, bot, driver and PostgreSQL run in separate processes; CPU time is the bot's alone. Speed: all texts wait,
time runs until the last reply is accepted. Delay: texts arrive at a constant rate, each timed from sending until its
reply is accepted.
"""

from __future__ import annotations

import asyncio
import time
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import timedelta
from random import Random

from rich.table import Table

from bot.foundation import clock
from bot.foundation.config import Settings
from bot.process import reminders, wiring
from bot.store.database import Database
from bot.turns.turn import work_batch
from demo.messenger import Remote
from tests.bench import population
from tests.bench.measuring import RUNS, median, percentile, ratio
from tests.bench.processes import echo_bot, open_chats, our_bot, processor
from tests.bench.servers import KINDS, Fresh

CLIENTS, WEEKS = 240, 104
FIRST = 20  # additional clients who answer first, to warm up the process
MEASURES = ("energy", "minutes", "sessions", "pulse", "weight")
PACE = 150  # texts a second while delays are measured
DELAYS = (0, 50)  # ms the messenger takes to answer


@dataclass
class Figures:
    """Turns a second, CPU time of the bot in ms a turn, and the delays of single turns in ms."""

    speed: list[float] = field(default_factory=list)
    work: list[float] = field(default_factory=list)
    p50: list[float] = field(default_factory=list)
    p99: list[float] = field(default_factory=list)


async def measure(fresh: dict[str, Fresh], runs: int, delay: int) -> dict[str, Figures]:
    names = ["echo, defaults", "echo, 16 at once", *(f"ours, {kind}" for kind in fresh)]
    found: dict[str, Figures] = {name: Figures() for name in names}
    for _ in range(runs):  # alternating, so that all run under the same conditions
        for name in names:
            kind = name.partition(", ")[2]
            url = practice(fresh[kind]) if kind in fresh else ""
            few = delay and not url  # the yardstick would take minutes for all
            await _one(found[name], url, 16 if "16" in name else 0, delay, 40 if few else CLIENTS)
    return found


def practice(fresh: Fresh) -> str:
    """A practice whose clients have all just been asked about their week."""
    url = fresh()
    database = Database(url, synchronous="NORMAL")
    now = clock.now()
    population.fill(database, CLIENTS + FIRST, now, weeks=WEEKS, due=now - timedelta(minutes=1))
    steps = wiring.steps(Settings(), lambda token: token)
    while database.write_now(reminders.sweep, now):
        pass
    while database.write_now(work_batch, steps, now, 64):
        pass
    database.write_now(population.nothing_waits)
    database.close()
    return url


async def _one(found: Figures, url: str, concurrent: int, delay: int, clients: int) -> None:
    options = ("--no-flood", "--delay-ms", str(delay)) if delay else ("--no-flood",)
    async with await Remote.spawn(*options) as messenger:
        everybody = range(population.FIRST_CHAT, population.FIRST_CHAT + clients + FIRST)
        first, chats = everybody[:FIRST], everybody[FIRST:]
        await open_chats(messenger, everybody)
        async with our_bot(messenger, url) if url else echo_bot(messenger, concurrent) as bot:
            await _burst(messenger, first)
            before = processor(bot)
            speed = await _burst(messenger, chats)
            found.work.append((processor(bot) - before) * 1000 / (len(chats) * len(MEASURES[:-1])))
            waits = await _paced(messenger, chats, min(PACE, speed / 2))
        found.speed.append(speed)
        found.p50.append(percentile(waits, 0.5))
        found.p99.append(percentile(waits, 0.99))


def answer(measure: str, chat: int) -> str:
    """This person's answer; they all differ, so that hardly two replies are the same."""
    draw = Random(f"{measure}/{chat}")
    match measure:
        case "energy":
            return str(draw.randrange(3, 9))
        case "minutes":
            return f"{draw.randrange(40, 180)} min"
        case "sessions":
            return f"{draw.randrange(1, 5)} sessions"
        case "pulse":
            return f"{draw.randrange(60, 77)} bpm"
        case _:
            return f"{draw.gauss(82, 0.8):.1f} kg"


async def _burst(messenger: Remote, chats: Sequence[int]) -> float:
    before = await messenger.mark()
    start = time.monotonic()
    for measure in MEASURES[:-1]:
        await messenger.many(("send_text", {"user": chat, "text": answer(measure, chat)}) for chat in chats)
    count = len(chats) * len(MEASURES[:-1])
    await messenger.wait_for_mark(before + count, timeout=300)
    replies = await messenger.sent(after=before)
    assert len(replies) == count, "a turn has one reply"
    return count / (replies[-1].accepted - start)


async def _paced(messenger: Remote, chats: Sequence[int], pace: float) -> list[float]:
    """The delays in ms, each from the sending of a text until its reply is accepted."""
    before = await messenger.mark()
    begun = {}
    start = time.monotonic()
    for number, chat in enumerate(chats):
        await asyncio.sleep(max(0.0, start + number / pace - time.monotonic()))
        begun[chat] = time.monotonic()
        await messenger.send_text(chat, answer(MEASURES[-1], chat))
    await messenger.wait_for_mark(before + len(chats), timeout=60)
    return [(reply.accepted - begun[reply.chat]) * 1000 for reply in await messenger.sent(after=before)]


def run(runs: int = RUNS) -> Table:
    table = Table(title="a durable, scored check-in turn beside an echo that keeps nothing")
    for column in ("messenger answers in", "bot", "turns/s", "against the echo", "processor a turn", "p50", "p99"):
        table.add_column(column, justify="left" if column == "bot" else "right")
    with KINDS["SQLite"]() as sqlite, KINDS["PostgreSQL"]() as postgresql:
        fresh = {"SQLite": sqlite, "PostgreSQL": postgresql}
        for delay in DELAYS:
            found = asyncio.run(measure(fresh, runs, delay))
            yardstick = found["echo, defaults"].speed
            for name, figures in found.items():
                table.add_row(
                    f"{delay} ms",
                    name,
                    f"{median(figures.speed):,.0f}",
                    f"{ratio(figures.speed, yardstick):.2f}",
                    f"{median(figures.work):.2f} ms",
                    f"{median(figures.p50):.1f} ms",
                    f"{median(figures.p99):.1f} ms",
                )
            table.add_section()
    return table
