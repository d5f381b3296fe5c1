"""Turns of two workers on one PostgreSQL compared with one: the same inbox, processed by one process or by two.

No messenger takes part, since it would need its own processor. PostgreSQL does, so on two processors one worker and the
server already fill the machine; the table says how busy it was.
"""

from __future__ import annotations

import os
import subprocess
import sys
import time
from datetime import timedelta

from rich.table import Table
from sqlalchemy import Connection

from bot.foundation import clock
from bot.foundation.config import Settings
from bot.process import wiring
from bot.store import inbox
from bot.store.database import Database
from bot.turns.turn import work_batch
from core.dialogue.kit.events import Text
from tests.bench import population
from tests.bench.measuring import RUNS, median, ratio
from tests.bench.servers import Fresh, postgresql

CLIENTS, WEEKS = 1_500, 26


def _prepared(fresh: Fresh) -> str:
    url = fresh()
    database = Database(url)
    now = clock.now()
    population.fill(database, CLIENTS, now, weeks=WEEKS, due=now + timedelta(days=1))
    database.write_now(_type, now)
    database.close()
    return url


def _type(conn: Connection, now: object) -> None:
    at = clock.now()
    chats = range(population.FIRST_CHAT, population.FIRST_CHAT + CLIENTS)
    words = ("energy 7", "120 minutes")
    typed = [inbox.NewEvent(f"typed/{word}/{chat}", chat, Text(at, word, word)) for word in words for chat in chats]
    inbox.put(conn, typed, at)


def _measured(fresh: Fresh, workers: int) -> tuple[float, float]:
    """Turns a second from the first to the last, and the average number of busy processors."""
    url = _prepared(fresh)
    command = [sys.executable, "-m", "tests.bench.bench_workers", url]
    processes = [
        subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True) for _ in range(workers)
    ]
    for process in processes:
        assert process.stdout is not None
        process.stdout.readline()  # it is ready
    before, start = _busy(), time.perf_counter()
    for process in processes:
        assert process.stdin is not None
        process.stdin.close()
    done = sum(int(process.stdout.readline()) for process in processes if process.stdout is not None)
    took = time.perf_counter() - start
    busy = (_busy() - before) / took
    for process in processes:
        process.wait()
    assert done == 2 * CLIENTS
    return done / took, busy


def _busy() -> float:
    """Processor seconds used by the whole machine so far; 0 if unknown."""
    try:
        with open("/proc/stat", encoding="ascii") as file:
            user, nice, system = map(int, file.readline().split()[1:4])
    except OSError:
        return 0.0
    return (user + nice + system) / os.sysconf("SC_CLK_TCK")


def _work(url: str) -> None:
    """One worker: report ready, start on command, work until nothing is left, report the number of turns."""
    database = Database(url)
    steps = wiring.steps(Settings(), lambda token: token)
    database.write_now(work_batch, steps, clock.now(), 0)
    print("ready", flush=True)
    sys.stdin.read()
    done = 0
    while database.read_now(inbox.waiting):
        done += database.write_now(work_batch, steps, clock.now(), wiring.BATCH)
    print(done, flush=True)
    database.close()


def run(runs: int = RUNS) -> Table:
    table = Table("workers", "turns/s", "against one", "processors busy", title="workers on one PostgreSQL")
    speeds: dict[int, list[float]] = {1: [], 2: []}
    busy: dict[int, list[float]] = {1: [], 2: []}
    with postgresql() as fresh:
        for _ in range(runs):
            for workers in speeds:
                speed, used = _measured(fresh, workers)
                speeds[workers].append(speed)
                busy[workers].append(used)
    for workers, found in speeds.items():
        table.add_row(
            str(workers),
            f"{median(found):,.0f}",
            f"{ratio(found, speeds[1]):.2f}",
            f"{median(busy[workers]):.1f} of {os.cpu_count()}",
        )
    return table


if __name__ == "__main__":
    _work(sys.argv[1])
