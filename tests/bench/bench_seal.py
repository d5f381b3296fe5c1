"""What encryption adds to a turn: the same turns on a database with keys, and on one whose keyring leaves all in clear.

From the update stored to the reply claimed, in one process and without the messenger: processor time of both threads.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from datetime import timedelta

from rich.table import Table
from sqlalchemy.engine import make_url

from bot.foundation import clock
from bot.foundation.config import Settings
from bot.foundation.retry import Sent
from bot.process import reminders, wiring
from bot.store import inbox
from bot.store.database import Database
from bot.store.dispatch import SendResult, claim_and_settle
from bot.store.keyring import Keyring, default_url
from bot.turns.turn import work_batch
from core.dialogue.kit.events import Text
from tests.bench import population
from tests.bench.bench_turn import CLIENTS, FIRST, MEASURES, WEEKS, answer
from tests.bench.measuring import RUNS, median
from tests.bench.servers import KINDS, Fresh


class Clear(Keyring):
    """Leaves everything as it is."""

    def seal(self, number: str, place: str, text: str) -> str:
        return text

    def open(self, place: str, sealed: str) -> str:
        return sealed

    def open_once(self, place: str, sealed: str) -> str:
        return sealed


def work_of(fresh: Fresh, ring: Callable[[str], Keyring]) -> float:
    """Processor time in ms of a turn."""
    url = fresh()
    database = Database(url, synchronous="NORMAL", keyring=ring(url))
    now = clock.now()
    population.fill(database, CLIENTS + FIRST, now, weeks=WEEKS, due=now - timedelta(minutes=1))
    steps = wiring.steps(Settings(), lambda token: token)
    while database.write_now(reminders.sweep, now):
        pass
    while database.write_now(work_batch, steps, now, 64):
        pass
    database.write_now(population.nothing_waits)
    number, spent, turns = 0, 0.0, 0
    everybody = range(population.FIRST_CHAT, population.FIRST_CHAT + CLIENTS + FIRST)
    for measure in MEASURES:
        chats = everybody[:FIRST], everybody[FIRST:]
        for timed, some in enumerate(chats):
            events = []
            for chat in some:
                number += 1
                events.append(inbox.NewEvent(f"telegram/{number}", chat, Text(now, answer(measure, chat), str(number))))
            start = time.process_time()
            for first in range(0, len(events), 64):
                database.write_now(inbox.put, events[first : first + 64], now)
            while database.write_now(work_batch, steps, now, 64):
                pass
            results: list[SendResult] = []
            while jobs := database.write_now(claim_and_settle, "w", now, results, 64, None).jobs:
                results = [SendResult(job.row, Sent(1)) for job in jobs]
            if timed:
                spent += time.process_time() - start
                turns += len(events)
    database.close()
    return spent * 1000 / turns


def run(runs: int = RUNS) -> Table:
    table = Table(title="processor time of a turn in the store and the core, with keys of people and without")
    for column in ("database", "encrypted", "in clear", "added"):
        table.add_column(column, justify="left" if column == "database" else "right")
    for kind, opened in KINDS.items():
        with opened() as fresh:
            sealed, clear = [], []
            for _ in range(runs):
                sealed.append(work_of(fresh, lambda url: Keyring(default_url(make_url(url)))))
                clear.append(work_of(fresh, lambda url: Clear(default_url(make_url(url)))))
        more = median([a - b for a, b in zip(sealed, clear, strict=True)])
        table.add_row(kind, f"{median(sealed):.3f} ms", f"{median(clear):.3f} ms", f"{more:.3f} ms")
    return table
