"""A coach's digest of 60 and of 1,000 clients with two years of readings, from the due row to the message in the
outbox; and a chart, from its data to the bytes of the PNG."""

from __future__ import annotations

import time
from datetime import datetime, timedelta
from decimal import Decimal

from rich.table import Table
from sqlalchemy import Connection, select

from bot.foundation import clock
from bot.foundation.config import Settings
from bot.process import wiring
from bot.rendering import Reader
from bot.rendering.charts import draw
from bot.rendering.samples import pictures
from bot.store import flags, inbox
from bot.store.database import Database
from bot.store.schema import outbox
from bot.turns.turn import work_batch
from core.dialogue.kit.events import Due
from core.watching.flags import Code, flag
from tests.bench import population
from tests.bench.measuring import RUNS, median
from tests.bench.servers import KINDS, Fresh

WEEKS = 104
SIZES = (60, 1_000)
FLAGGED = 10  # one client in this many has an open flag


def _practice(fresh: Fresh, size: int) -> Database:
    database = Database(fresh())
    now = clock.now()
    population.fill(database, size, now, weeks=WEEKS, caseload=size, due=now + timedelta(days=1))
    database.write_now(_flag, size, now)
    return database


def _flag(conn: Connection, size: int, now: datetime) -> None:
    silent = flag(Code.MISSED_CHECK_INS, now, missed=Decimal(2))
    flags.raise_(conn, [(n, silent) for n in range(1, size + 1, FLAGGED)], now)


def _digest(database: Database, chat: int, number: int) -> float:
    """Milliseconds of one digest."""
    now = clock.now()
    steps = wiring.steps(Settings(), lambda token: token)
    day = now.date() + timedelta(days=number)  # one digest per day
    due = inbox.NewEvent(f"digest/bench/{number}", chat, Due(now, day, timedelta(0)))
    database.write_now(inbox.put, [due], now)
    start = time.perf_counter()
    done = database.write_now(work_batch, steps, now)
    took = (time.perf_counter() - start) * 1000
    assert done == 1 and database.read_now(_queued, chat) == number + 1
    return took


def _queued(conn: Connection, chat: int) -> int:
    return len(conn.execute(select(outbox.c.id).where(outbox.c.chat_id == chat)).all())


def run(runs: int = RUNS) -> Table:
    table = Table("", "median", title="what a coach waits for")
    for database_kind, server in KINDS.items():
        with server() as fresh:
            for size in SIZES:
                database = _practice(fresh, size)
                chat = population.FIRST_CHAT + size
                times = [_digest(database, chat, number) for number in range(runs + 1)]
                table.add_row(
                    f"digest of {size:,} clients with two years, {database_kind}", f"{median(times[1:]):.0f} ms"
                )
                database.close()
    reader = Reader("en")
    kinds = {type(one.spec): one.spec for one in reversed(list(pictures()))}  # the first of each kind
    for kind, spec in reversed(kinds.items()):
        times = []
        for _ in range(runs + 1):
            start = time.perf_counter()
            draw(spec, reader)
            times.append((time.perf_counter() - start) * 1000)
        table.add_row(
            f"chart, {kind.__name__}: the first of a process {times[0]:.0f} ms, then", f"{median(times[1:]):.0f} ms"
        )
    return table
