"""A season of a practice of any size, through the real engine, store, outbox, delivery and rendering.

    python -m tests.bench season --clients 10000 --weeks 12

Only the messenger and the time are simulated: messages go to a transport in memory, and the clock jumps to the next
quarter of an hour in which something is due. Clients answer within two hours or not at all, make a typo and correct it,
weigh themselves early; some give up. Coaches get their weekly digest. The random seed is fixed.

SQLite in a temporary folder, with synchronous NORMAL: a season commits a day's work in a second, and flushing is
measured elsewhere. Growth is of the database file from the end of the second week, when everybody has started.
"""

from __future__ import annotations

import argparse
import asyncio
import heapq
import itertools
import resource
import tempfile
import time
from collections import Counter
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from pathlib import Path
from random import Random

from rich.console import Console
from rich.progress import BarColumn, Progress, TextColumn, TimeElapsedColumn, TimeRemainingColumn
from rich.table import Table
from sqlalchemy import Connection, update

from bot.exports.my_data import gather
from bot.foundation.clock import HeldClock
from bot.foundation.config import Settings
from bot.foundation.metrics import Metrics
from bot.foundation.reader import Rendered
from bot.process import digests, reminders, wiring
from bot.process.delivery import Delivery
from bot.process.rendering_cache import Renderings
from bot.store import codec, inbox, outbox, retention
from bot.store.database import Database
from bot.store.schema import coaches
from bot.turns.turn import work_batch
from core.dialogue.client import messages as m
from core.dialogue.kit.effects import Choice
from core.dialogue.kit.events import Event, Press, Text
from core.dialogue.kit.messages import Together
from tests.bench import population
from tests.bench.measuring import machine
from tests.bench.servers import migrated
from tests.memory_transport import MemoryTransport

BEGIN = datetime(2026, 3, 2, tzinfo=UTC)  # a Monday
STEP = timedelta(minutes=15)
KEPT = retention.RetentionPeriods(inbox=timedelta(days=30), sent=timedelta(days=90), left=timedelta(days=365))
ANSWERS, GIVES_UP, WEIGHS_EARLY, SLIPS = 0.88, 0.01, 0.04, 0.03  # of a check-in, a week, a week, an answer

Act = tuple[datetime, int, int, Event]  # when, a number that makes it unique, the chat, what


@dataclass
class Report:
    """What a season took. growth: bytes of the database per client and week; peak: MiB of this process."""

    clients: int
    weeks: int
    turns: int = 0
    seconds: float = 0.0
    sent: int = 0
    peak: float = 0.0
    growth: float = 0.0
    size: int = 0
    waiting: int = 0
    set_aside: int = 0
    said: Counter[str] = field(default_factory=Counter)


class People:
    """Everybody who writes. They look only at the last message to them, as people do, never at the store."""

    def __init__(self, chats: Iterable[int], seed: int = 3) -> None:
        self._draw = {chat: Random(f"{seed}/{chat}") for chat in chats}
        self._gone: set[int] = set()
        self._acts: list[Act] = []
        self._numbers = itertools.count()
        self._refs: Counter[int] = Counter()

    def next_act(self) -> datetime | None:
        return self._acts[0][0] if self._acts else None

    def take(self, now: datetime) -> list[inbox.NewEvent]:
        """Their actions up to now."""
        found = []
        while self._acts and self._acts[0][0] <= now:
            _, number, chat, event = heapq.heappop(self._acts)
            found.append(inbox.NewEvent(f"season/{number}", chat, event))
        return found

    def hear(self, chat: int, message: object, choices: tuple[tuple[Choice, ...], ...], now: datetime) -> None:
        """A message reached one of them, who may answer now or later."""
        draw = self._draw.get(chat)
        if draw is None or chat in self._gone:
            return
        parts = message.parts if isinstance(message, Together) else (message,)
        opens = any(isinstance(part, m.CheckInOpens) for part in parts)
        at = now
        if opens:
            if draw.random() < GIVES_UP:
                self._gone.add(chat)
                return
            if draw.random() < WEIGHS_EARLY:
                self._do(now + timedelta(days=draw.randrange(2, 6)), chat, f"{draw.gauss(82, 1):.1f} kg")
            if draw.random() >= ANSWERS:
                return
            at += STEP * draw.randrange(9)
        asked = next((part for part in reversed(parts) if isinstance(part, m.Ask)), None)
        if asked is not None:
            self._answer(at, chat, asked.measure, draw)
        elif choices and not any(isinstance(part, m.CheckInDone | m.NotSure) for part in parts):
            heapq.heappush(self._acts, (at, next(self._numbers), chat, Press(at, choices[0][0].callback)))

    def _answer(self, at: datetime, chat: int, measure: str, draw: Random) -> None:
        mean, spread, unit = {
            "energy": (6.0, 1.3, ""),
            "activity_minutes": (110.0, 30.0, " min"),
            "sessions_done": (2.5, 0.8, ""),
            "resting_heart_rate": (68.0, 3.0, " bpm"),
            "weight": (82.0, 0.7, " kg"),
            "waist": (96.0, 1.2, " cm"),
            "hip": (104.0, 1.2, " cm"),
        }[measure]
        places = 1 if measure in ("weight", "waist") else 0
        given = max(0.0, draw.gauss(mean, spread))
        if measure == "energy":
            given = min(10.0, given)
        self._do(at, chat, f"{given:.{places}f}{unit}")
        if measure == "weight" and draw.random() < SLIPS * 5:
            self._do(at + STEP, chat, f"{draw.gauss(mean, spread):.1f} kg", edits=True)

    def _do(self, at: datetime, chat: int, text: str, *, edits: bool = False) -> None:
        self._refs[chat] += not edits
        event = Text(at, text, str(self._refs[chat]), edited=edits)
        heapq.heappush(self._acts, (at, next(self._numbers), chat, event))


class Watched:
    """The renderer, observed by the people."""

    def __init__(self, renderings: Renderings, people: People, clock: HeldClock, report: Report) -> None:
        self._renderings, self._people, self._clock, self._report = renderings, people, clock, report

    async def parts(self, row: outbox.ClaimedMessage) -> tuple[Rendered, ...]:
        made = await self._renderings.parts(row)
        if row.kind is outbox.DeliveryKind.MESSAGE:
            message, choices = codec.loads(row.message), codec.load_rows(row.choices) if row.choices else ()
            self._report.said.update(
                type(part).__name__ for part in (message.parts if isinstance(message, Together) else (message,))
            )
            self._people.hear(row.chat_id, message, choices, self._clock.now())  # type: ignore[arg-type]
        return made


async def play(url: str, clients: int, weeks: int, advance: Callable[[float], None] = lambda share: None) -> Report:
    """Play a season on an empty database. advance: receives the fraction completed, 0 to 1."""
    report, clock = Report(clients, weeks), HeldClock(BEGIN)
    store = Database(url, synchronous="NORMAL")
    people = People(range(population.FIRST_CHAT, population.FIRST_CHAT + clients))
    population.fill(store, clients, BEGIN, grid=STEP)
    store.write_now(_with_digests)
    renderings, transport = Renderings(store, gather), MemoryTransport()
    watched = Watched(renderings, people, clock, report)
    delivery = Delivery(store, transport, watched, clock, Metrics(), worker="season", rates=None, spread=lambda: 0.5)
    steps = wiring.steps(Settings(), lambda token: f"https://t.me/local_test_bot?start={token}")
    end, tidied, first_size = BEGIN + timedelta(weeks=weeks), BEGIN, 0
    begun = time.perf_counter()

    def work(conn: Connection, now: datetime) -> tuple[int, int]:
        arrived = people.take(now)
        inbox.put(conn, arrived, now)
        due = reminders.sweep(conn, now) + digests.sweep(conn, now)
        turns = work_batch(conn, steps, now, wiring.BATCH)
        return turns, turns + due + len(arrived)

    while True:
        known = (store.read_now(wiring.next_instant), store.read_now(outbox.next_due), people.next_act())
        coming = min((at for at in known if at is not None), default=end)
        if coming >= end:
            break
        clock.move_to(max(clock.now(), BEGIN + -(-(coming - BEGIN) // STEP) * STEP))
        now, busy = clock.now(), 1
        while busy:
            turns, busy = await store.write(work, now)
            report.turns += turns
            if not busy:
                busy = await delivery.drain()
                report.sent += len(transport.sent)
                transport.sent.clear()
        if now - tidied >= timedelta(days=1):
            tidied = now
            store.write_now(retention.tidy, now, KEPT)
            advance((now - BEGIN) / (end - BEGIN))
            if not first_size and now - BEGIN >= min(timedelta(weeks=2), (end - BEGIN) / 2):
                first_size, first_at = _size(store), now
    report.seconds = time.perf_counter() - begun
    report.size = _size(store)
    report.growth = (report.size - first_size) / clients / ((clock.now() - first_at) / timedelta(weeks=1))
    report.peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    report.waiting = store.read_now(inbox.waiting)
    report.set_aside = store.read_now(inbox.set_aside_count)
    renderings.close()
    store.close()
    return report


def _with_digests(conn: Connection) -> None:
    """Every coach gets their digest on Mondays at eight."""
    at = (BEGIN + timedelta(days=7, hours=8)).replace(tzinfo=UTC)
    conn.execute(update(coaches).values(weekday=0, at=at.time(), zone_name="UTC", next_digest_at=at))


def _size(store: Database) -> int:
    def checkpointed(conn: Connection) -> int:
        return int(
            conn.exec_driver_sql("SELECT page_count * page_size FROM pragma_page_count, pragma_page_size").scalar_one()
        )

    return store.read_now(checkpointed)


def table(report: Report) -> Table:
    shown = Table(title=f"{report.clients:,} clients, {report.weeks} weeks", show_header=False)
    shown.add_row("turns", f"{report.turns:,}")
    shown.add_row("messages sent", f"{report.sent:,}")
    shown.add_row("time", f"{report.seconds:.0f} s: {report.turns / report.seconds:,.0f} turns a second, all told")
    shown.add_row("peak memory", f"{report.peak:.0f} MiB")
    shown.add_row("database", f"{report.size / 2**20:.0f} MiB; {report.growth:,.0f} bytes a client and week")
    shown.add_row("left in the inbox, set aside", f"{report.waiting}, {report.set_aside}")
    often = ", ".join(f"{name} {count:,}" for name, count in report.said.most_common(12))
    shown.add_row("what was said", often)
    return shown


def main(arguments: list[str]) -> int:
    parser = argparse.ArgumentParser(prog="python -m tests.bench season")
    parser.add_argument("--clients", type=int, default=10_000)
    parser.add_argument("--weeks", type=int, default=12)
    given = parser.parse_args(arguments)
    console = Console()
    console.print(machine())
    bar = Progress(
        TextColumn("{task.description}"), BarColumn(), TextColumn("{task.percentage:.0f} %"),
        TimeElapsedColumn(), TimeRemainingColumn(), console=console,
    )  # fmt: skip
    with tempfile.TemporaryDirectory(prefix="samehour-season-") as folder, bar:
        task = bar.add_task("the season", total=1.0)
        url = migrated(f"sqlite:///{Path(folder) / 'season.db'}")
        report = asyncio.run(play(url, given.clients, given.weeks, lambda share: bar.update(task, completed=share)))
        bar.update(task, completed=1.0)
    console.print(table(report))
    return 0
