"""The cost of a sweep over a million clients with nothing due; startup and memory with 100 and 100,000 clients.

The yardstick of memory and startup is one APScheduler cron job per client in its memory store: measured with 10,000
jobs and extrapolated linearly, since 100,000 take a while. It cannot report what is due without firing it.
"""

from __future__ import annotations

import asyncio
import statistics
import subprocess
import sys
import time
from datetime import timedelta

from rich.table import Table
from sqlalchemy import Connection, text

from bot.foundation import clock
from bot.process import digests, reminders
from bot.store.database import Database
from demo.messenger import Remote
from tests.bench import population
from tests.bench.measuring import RUNS, median
from tests.bench.processes import memory, our_bot
from tests.bench.servers import KINDS, Fresh

MANY, LOOKS = 1_000_000, 200
FEW, SOME = 100, 100_000
JOBS = 10_000
SETTLED = 4.0  # seconds after the start: two sweeps and a round of housekeeping are done
_PEOPLE = """
    INSERT INTO people (chat_id, role, name, language, created_at)
    WITH RECURSIVE n(i) AS (SELECT CAST(:low AS BIGINT) UNION ALL SELECT i + 1 FROM n WHERE i < :high)
    SELECT i, 'client', 'Ada', 'en', CAST(:now AS {instant}) FROM n"""
_CLIENTS = """
    INSERT INTO clients (person_id, status, name, weekday, at, zone_name, next_due_at, next_due_day, created_at)
    SELECT id, 'active', 'Ada', :weekday, CAST(:at AS {clock}), 'UTC', CAST(:due AS {instant}), CAST(:day AS {date}),
           CAST(:now AS {instant})
    FROM people WHERE chat_id BETWEEN :low AND :high"""
_TYPES = {
    "sqlite": {"instant": "TEXT", "clock": "TEXT", "date": "TEXT"},
    "postgresql": {"instant": "TIMESTAMPTZ", "clock": "TIME", "date": "DATE"},
}


def crowd(conn: Connection, count: int) -> None:
    """`count` clients with a slot in each hour of the coming week, in two statements an hour: Python would take
    minutes."""
    now = clock.now().replace(microsecond=0)
    types = _TYPES[conn.dialect.name]
    hours = 7 * 24
    for hour in range(hours):
        low, high = (population.FIRST_CHAT + count * h // hours for h in (hour, hour + 1))
        due = now + timedelta(hours=hour + 1)
        values = {
            "low": low,
            "high": high - 1,
            "now": f"{now.replace(tzinfo=None)}.000000",
            "due": f"{due.replace(tzinfo=None)}.000000",
            "day": str(due.date()),
            "at": f"{due.time()}.000000",
            "weekday": due.weekday(),
        }
        if high > low:
            conn.execute(text(_PEOPLE.format(**types)), values)
            conn.execute(text(_CLIENTS.format(**types)), values)


def look(conn: Connection) -> tuple[float, int]:
    """One sweep in the database, in ms, and how many were due."""
    now = clock.now()
    start = time.perf_counter()
    found = reminders.sweep(conn, now) + digests.sweep(conn, now)
    return (time.perf_counter() - start) * 1000, found


def looks(url: str) -> tuple[float, float]:
    """Median time of a sweep inside its transaction, and of the whole transaction, in ms."""
    database = Database(url)
    inside, whole = [], []
    for _ in range(LOOKS):
        start = time.perf_counter()
        took, found = database.write_now(look)
        whole.append((time.perf_counter() - start) * 1000)
        inside.append(took)
        assert not found
    database.close()
    return statistics.median(inside), statistics.median(whole)


def crowded(fresh: Fresh, count: int) -> str:
    url = fresh()
    database = Database(url, synchronous="NORMAL")
    database.write_now(crowd, count)
    database.write_now(lambda conn: conn.execute(text("ANALYZE")))
    database.close()
    return url


async def started(url: str) -> tuple[float, float]:
    """Seconds from starting the process until it asks for updates; MiB of memory once it has settled."""
    async with await Remote.spawn("--no-flood") as messenger:
        start = time.perf_counter()
        async with our_bot(messenger, url) as process:
            took = time.perf_counter() - start
            await asyncio.sleep(SETTLED)
            return took, memory(process)


_SCHEDULER = """
import time
from pathlib import Path
from apscheduler.schedulers.background import BackgroundScheduler
from apscheduler.triggers.cron import CronTrigger
def ask(client): pass
def held():
    lines = Path("/proc/self/status").read_text().splitlines()
    return next(int(line.split()[1]) for line in lines if line.startswith("VmRSS:")) / 1024
before, start = held(), time.perf_counter()
scheduler = BackgroundScheduler(timezone="UTC")
for n in range({jobs}):
    week = dict(day_of_week=n % 7, hour=n % 24, minute=n % 60)
    scheduler.add_job(ask, CronTrigger(timezone="UTC", **week), args=(n,))
scheduler.start(paused=True)
print(time.perf_counter() - start, held() - before)
"""


def scheduler(jobs: int) -> tuple[float, float]:
    """Seconds to add one job per client, and MiB they take."""
    done = subprocess.run(
        [sys.executable, "-c", _SCHEDULER.format(jobs=jobs)], check=True, capture_output=True, text=True
    )
    took, held = done.stdout.split()
    return float(took), float(held)


def run(runs: int = RUNS) -> Table:
    table = Table("", "figure", "yardstick: one cron job a client", title="nothing due")
    for kind, server in KINDS.items():
        with server() as fresh:
            inside, whole = looks(crowded(fresh, MANY))
            table.add_row(
                f"a look at {MANY:,} clients, {kind}",
                f"{inside:.2f} ms in the database, {whole:.2f} ms with begin and commit",
                "",
            )
    table.add_section()
    with KINDS["SQLite"]() as fresh:
        few, some = crowded(fresh, FEW), crowded(fresh, SOME)
        pairs = [(asyncio.run(started(few)), asyncio.run(started(some)), scheduler(JOBS)) for _ in range(runs)]
    times = "start", "memory"
    for place, what in enumerate(times):
        unit, figures = ("s", "MiB")[place], [[one[place] for one in pair] for pair in pairs]
        small, large, jobs = (median([f[n] for f in figures]) for n in range(3))
        table.add_row(
            f"{what} with {FEW} and with {SOME:,} clients",
            f"{small:.2f} and {large:.2f} {unit}: {median([f[1] / f[0] for f in figures]):.3f} times",
            f"{jobs:.1f} {unit} for {JOBS:,}, so about {jobs * SOME / JOBS:.0f} {unit} for {SOME:,}",
        )
    return table
