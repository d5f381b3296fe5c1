"""Mornings full of faults for a given time, each checked like those of the suite; then a table.

    python -m tests.faults --minutes 30 [--seed 1] [--database sqlite|postgresql|both] [--clients 8]

A round is one morning on a fresh database. The bot is killed at a point that advances with every round, then from
outside; or with the messenger at its worst at the same time; or as two workers killed alternately. The first loss,
duplicate or disorder ends the run with its description and the seed; exit code 1.
"""

from __future__ import annotations

import argparse
import asyncio
import itertools
import os
import random
import sys
import tempfile
import time
import traceback
import warnings
from collections import Counter
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from pathlib import Path

from rich.console import Console
from rich.progress import BarColumn, Progress, TextColumn, TimeRemainingColumn
from rich.table import Table

from bot.store import migrate
from bot.store.database import Database
from demo.messenger import Flood
from tests.bot.conftest import Server
from tests.faults.balance import Front, free_ports
from tests.faults.findings import Chats, Found, chats, check
from tests.faults.herd import Herd, herd
from tests.faults.morning import SHORT, Morning, morning

Fresh = Callable[[], str]
SENDING = ("sendMessage", "editMessageReplyMarkup")
WORST = (
    ("server_error", {"methods": [*SENDING, "getUpdates"], "probability": 0.05}),
    ("reset", {"methods": [*SENDING, "getUpdates"], "probability": 0.05}),
    ("lost_answer", {"methods": list(SENDING), "probability": 0.05}),
    ("too_many", {"methods": list(SENDING), "probability": 0.02, "times": 2, "retry_after": 1}),
    ("repeat", {"probability": 0.3}),
)  # late and shuffled updates are left to the suite: here somebody may type on after only a repeat


async def killed_at_points(bots: Herd, there: Morning, dice: random.Random, round_: int) -> None:
    """Killed at a point that advances from round to round, then a few more times further on."""
    people = asyncio.create_task(there.people())
    plans = [{"at": 1 + round_ % 90}, *({"at": dice.randint(1, 60)} for _ in range(4))]
    last = await there.keep_alive(bots, plans)
    await people
    await there.until(there.quiet)
    assert (await last.stop()).status == 0


async def killed_from_outside(bots: Herd, there: Morning, dice: random.Random, round_: int) -> None:
    """Killed five times at random moments."""
    people = asyncio.create_task(there.people())
    bot = await there.kill_each(bots, [dice.uniform(0.02, 0.8) for _ in range(5)])
    await people
    await there.until(there.quiet)
    assert (await bot.stop()).status == 0


async def at_its_worst(bots: Herd, there: Morning, dice: random.Random, round_: int) -> None:
    """The messenger at its worst, and kills as well."""
    for kind, given in WORST:
        await there.messenger.add_fault(kind, **given)
    await killed_at_points(bots, there, dice, round_)
    await there.messenger.clear_faults()


async def unheard(bots: Herd, there: Morning, dice: random.Random, round_: int) -> None:
    """Some commits whose acknowledgement is lost; claimed messages stay claimed for the full lease."""
    bot = await bots.start(there.settings, {"unheard": dice.randint(3, 9)})
    await there.people()
    await there.until(there.quiet)
    assert (await bot.stop()).status == 0


async def two_workers(bots: Herd, there: Morning, dice: random.Random, round_: int) -> None:
    """Two workers behind a front, killed and restarted alternately."""
    from tests.faults.test_workers import workers

    ports = free_ports(2)
    async with Front(ports) as front:
        at_work = dict(zip(ports, await workers(bots, there, front, ports, (SHORT, SHORT)), strict=True))
        people = asyncio.create_task(there.people())
        for _ in range(3):
            port = dice.choice(ports)
            done = asyncio.ensure_future(there.until(there.quiet))
            await asyncio.wait((done,), timeout=dice.uniform(0.1, 0.8))
            if done.done():
                break
            done.cancel()
            at_work[port].kill()
            there.ends.append(await at_work[port].ended)
            (at_work[port],) = await workers(bots, there, front, [port], (SHORT,))
        await people
        await there.until(there.quiet)
        for bot in at_work.values():
            assert (await bot.stop()).status == 0


SCENES = {
    "sqlite": (killed_at_points, killed_from_outside, at_its_worst, unheard),
    "postgresql": (killed_at_points, killed_from_outside, at_its_worst, unheard, two_workers),
}


@contextmanager
def databases(wanted: str, folder: Path) -> Iterator[dict[str, Fresh]]:
    """Functions that create a fresh, migrated database of each kind."""
    found: dict[str, Fresh] = {}
    with ExitStack() as left:
        if wanted != "postgresql":
            template = folder / "template.db"
            database = Database(f"sqlite:///{template}")
            migrate.upgrade(database.engine)
            database.close()
            numbers = itertools.count()

            def sqlite() -> str:
                file = folder / f"{next(numbers)}.db"
                file.write_bytes(template.read_bytes())
                return f"sqlite:///{file}"

            found["sqlite"] = sqlite
        if wanted != "sqlite":
            os.environ["XDG_DATA_HOME"] = str(folder)  # where the keys are, also of the bots that are started
            with warnings.catch_warnings():
                warnings.simplefilter("ignore")
                server = Server(folder / "pg")
            left.callback(server.stop)
            found["postgresql"] = lambda: server.url(server.fresh())
        yield found


async def run(given: argparse.Namespace, folder: Path, fresh: dict[str, Fresh], console: Console) -> dict[str, Found]:
    """Morning after morning until the time is up."""
    totals: dict[str, Found] = {}
    rounds: Counter[str] = Counter()
    ends = time.monotonic() + given.minutes * 60
    columns = (TextColumn("{task.description}"), BarColumn(), TimeRemainingColumn())
    async with herd(folder / "log") as bots:
        expected = await peaceful(bots, next(iter(fresh.values()))(), given.clients)
        with Progress(*columns, console=console, transient=True) as progress:
            bar = progress.add_task("0 rounds", total=given.minutes * 60)
            for number in itertools.count():
                kind = list(fresh)[number % len(fresh)]
                scene = SCENES[kind][number // len(fresh) % len(SCENES[kind])]
                name = f"{kind}: {scene.__doc__.splitlines()[0].rstrip('.')}"
                seed = given.seed * 1_000_000 + number
                try:
                    async with morning(fresh[kind](), given.clients, seed=seed, flood=Flood.off()) as there:
                        await scene(bots, there, random.Random(seed), rounds[name])
                        struck = (await there.messenger.figures())["struck"]
                        found = await check(there, expected, lossy=struck.get("lost_answer", 0))
                except AssertionError as error:
                    error.add_note(f"in round {number}, {name}")
                    raise
                finally:
                    await bots.end_all()
                totals.setdefault(name, Found()).add(found)
                rounds[name] += 1
                left = ends - time.monotonic()
                progress.update(bar, completed=given.minutes * 60 - left, description=f"{number + 1} rounds")
                if left <= 0:
                    break
    console.print(table(totals, rounds))
    return totals


async def peaceful(bots: Herd, url: str, clients: int) -> Chats:
    """What the chats show after a morning without faults."""
    async with morning(url, clients) as there:
        bot = await bots.start(there.settings)
        await there.people()
        await there.until(there.quiet)
        await bot.stop()
        return await chats(there)


def table(totals: dict[str, Found], rounds: Counter[str]) -> Table:
    shown = Table(title="Nothing was lost, kept twice or out of order")
    for name in ("", "rounds", "kills", "faults", "typed", "lost", "sent", "said twice: killed", "answer lost"):
        shown.add_column(name, justify="left" if not name else "right")
    for name, found in sorted(totals.items()):
        figures = (
            rounds[name],
            found.kills.total(),
            found.faults.total(),
            found.typed,
            0,
            found.sent,
            found.repeats["killed in flight"],
            found.repeats["lost answer"],
        )
        shown.add_row(name, *(f"{figure:,}" for figure in figures))
    points = sum((found.kills for found in totals.values()), Counter[str]())
    shown.caption = "Killed at: " + ", ".join(f"{name} {count:,}" for name, count in points.most_common())
    return shown


def main() -> int:
    parser = argparse.ArgumentParser(prog="python -m tests.faults", description=__doc__.splitlines()[0])
    parser.add_argument("--minutes", type=float, default=10)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--database", choices=("sqlite", "postgresql", "both"), default="both")
    parser.add_argument("--clients", type=int, default=8)
    given = parser.parse_args()
    console = Console(width=150)
    with tempfile.TemporaryDirectory(prefix="sh") as name, databases(given.database, Path(name)) as fresh:
        try:
            asyncio.run(run(given, Path(name), fresh, console))
        except BaseException:
            traceback.print_exc()
            print((Path(name) / "log").read_text()[-6000:], file=sys.stderr)
            print(f"Seed {given.seed}.", file=sys.stderr)
            return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
