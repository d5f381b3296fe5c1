"""One process of the bot: taking updates in, turns, the sweep over what is due, and sending.

    intake --keep, ring--> turns --commit, ring--> delivery
                            ^ sweep: rung by APScheduler, and when a turn sets a timer

Each part is a loop of its own that works until there is nothing to do and then waits for its bell. A bell is only a
hint: what there is to do is in the database, so a bell lost in a crash delays by a second and loses nothing.

A process runs by itself between `start` and `stop`. Under a simulated clock, `settle` does instead everything that
is due at one instant, through the same parts, until nothing is left.
"""

from __future__ import annotations

import asyncio
import gc
import random
import sys
from collections.abc import Awaitable, Callable, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any, Protocol

from bot.foundation import log
from bot.foundation.clock import Clock, HeldClock
from bot.foundation.errors import CannotReach
from bot.foundation.metrics import Metrics
from bot.foundation.retry import backoff
from bot.process.delivery import Delivery
from bot.process.intake import Poller
from bot.process.wakeup import WakeupEvent, pause
from bot.store.database import Database

LONGEST_IDLE = 1.0  # seconds; another process may have left something to do
HOUSEKEEPING_EVERY = 3600.0
MENUS_EVERY = 15.0  # how long somebody who has just become a coach may see a client's menu
# Seconds a thread keeps the interpreter while another waits for it. It is given up for each row written to SQLite
# and each call of the network; who wants it back stood behind 5 ms (the usual) of somebody else's work.
SWITCH_AFTER = 0.001
MOST_ROUNDS = 10_000  # of one settling: more means that something comes due again for ever

Work = Callable[[], Awaitable[int]]  # does one batch; how many there were

_log = log.get("worker")


class Account(Protocol):
    """The messenger's side that a process opens and closes."""

    async def open(self) -> None: ...

    async def close(self) -> None: ...


class Server(Protocol):
    """A web server that runs until it is told to stop."""

    async def run(self, stopping: asyncio.Event) -> None: ...


@dataclass(frozen=True, slots=True)
class Parts:
    """What a process is made of; `bot.process.wiring` chooses them.

    turns, sweep, housekeeping, menus, erasures: one batch each. poller: None where updates are pushed to one
    of the `servers`.
    """

    database: Database
    account: Account
    delivery: Delivery
    turns: Work
    sweep: Work
    housekeeping: Work
    erasures: Work
    next_due: Callable[[], Awaitable[datetime | None]]
    metrics: Metrics
    clock: Clock
    bells: Bells
    poller: Poller | None = None
    servers: tuple[Server, ...] = ()
    menus: Work | None = None
    on_open: Callable[[], Awaitable[None]] | None = None
    close: Callable[[], None] = lambda: None


@dataclass(frozen=True, slots=True)
class Bells:
    """Who is rung for what."""

    turns: WakeupEvent
    sweep: WakeupEvent
    housekeeping: WakeupEvent

    @classmethod
    def new(cls) -> Bells:
        return cls(WakeupEvent(), WakeupEvent(), WakeupEvent())


def _tune_interpreter() -> None:
    """What was imported stays for good, and a batch of turns makes many small values that soon go again: the search for
    cycles need neither look through the one nor begin anew a hundred times within the other."""
    sys.setswitchinterval(SWITCH_AFTER)
    gc.collect()
    gc.freeze()
    gc.set_threshold(50_000, 20, 50)


class Service:
    """A process. `live`: works by itself, in real time; else only when told to `settle`."""

    def __init__(
        self,
        parts: Parts,
        *,
        live: bool = True,
        turn_workers: int = 1,
        sweep_every: float = 2.0,
        spread: Callable[[], float] = random.random,
    ) -> None:
        self._parts = parts
        self._live = live
        self._turn_workers = turn_workers
        self._sweep_every = sweep_every
        self._spread = spread
        self._stopping = asyncio.Event()
        self._menus = WakeupEvent()
        self._erasures = WakeupEvent()
        self._tasks: list[asyncio.Task[None]] = []
        self._scheduler: Any = None
        self.opened = False

    async def start(self) -> None:
        """Connect, take back what a killed predecessor held, and begin to work.

        Raises: TokenRefused; CannotReach, only when not live: a live process waits for the messenger.
        """
        await self._open()
        held = await self._parts.delivery.start_afresh()
        if held:
            _log.info("took back messages that were being sent", count=held)
        if not self._live:
            return
        _tune_interpreter()
        self._begin(self._loop("turns", self._parts.turns, self._parts.bells.turns))
        for _ in range(self._turn_workers - 1):
            self._begin(self._loop("turns", self._parts.turns, self._parts.bells.turns))
        self._begin(self._loop("sweep", self._parts.sweep, self._parts.bells.sweep, idle=None))
        self._begin(self._loop("housekeeping", self._parts.housekeeping, self._parts.bells.housekeeping, idle=None))
        self._begin(self._loop("erasures", self._parts.erasures, self._erasures))
        if self._parts.menus is not None:
            self._begin(self._loop("menus", self._parts.menus, self._menus, idle=MENUS_EVERY))
        self._begin(self._parts.delivery.run(self._stopping))
        if self._parts.poller is not None:
            self._begin(self._parts.poller.run(self._stopping))
        for server in self._parts.servers:
            self._begin(server.run(self._stopping))
        self._schedule()
        _log.info("at work")

    async def stop(self) -> None:
        """Take nothing new, finish what is in hand, and close everything."""
        self._stopping.set()
        if self._scheduler is not None:
            self._scheduler.shutdown(wait=False)
        self._ring_all()
        ended = await asyncio.gather(*self._tasks, return_exceptions=True)
        for error in ended:
            if isinstance(error, BaseException):
                _log.error("a part ended with a fault", exc_info=error)
        if self._parts.poller is not None:
            await self._parts.poller.answers.finish()
        await self._parts.account.close()
        self._parts.close()
        self._parts.database.close()
        _log.info("stopped")

    async def run(self, stop: asyncio.Event) -> None:
        """Start, work until `stop` is set, and stop cleanly.

        Raises: whatever ended one of the parts, which never happens because of what somebody did or sent.
        """
        waiting = asyncio.create_task(stop.wait())
        starting = asyncio.create_task(self.start())
        try:
            await asyncio.wait((waiting, starting), return_when=asyncio.FIRST_COMPLETED)
            if starting.done():
                starting.result()
                await asyncio.wait((waiting, *self._tasks), return_when=asyncio.FIRST_COMPLETED)
        finally:
            for task in (waiting, starting):
                task.cancel()
            failed = [task for task in self._tasks if task.done() and not task.cancelled()]
            await asyncio.gather(waiting, starting, return_exceptions=True)
            await self.stop()
        for task in failed:
            task.result()

    async def settle(self, now: datetime) -> None:
        """Do everything that is due at `now`, and what comes of it, until nothing is left.

        now: where a held clock is moved to first; any other clock must say it already.
        Raises: RuntimeError if the process is live, or if there is no end to it.
        """
        if self._live:
            raise RuntimeError("a live process settles nothing: it works by itself")
        if isinstance(self._parts.clock, HeldClock):
            self._parts.clock.move_to(now)
        for _ in range(MOST_ROUNDS):
            done = 0 if self._parts.poller is None else await self._parts.poller.once()
            done += await self._parts.sweep()
            done += await self._parts.turns()
            done += await self._parts.erasures()
            done += await self._parts.delivery.drain()
            if not done:
                if self._parts.poller is not None:
                    await self._parts.poller.answers.finish()
                return
        raise RuntimeError("something comes due again for ever")

    async def next_due(self) -> datetime | None:
        """Return the next instant at which there is something to do; None when nothing will ever come due."""
        found: Sequence[datetime | None] = (
            await self._parts.next_due(),
            await self._parts.delivery.next_due(),
        )
        return min((at for at in found if at is not None), default=None)

    # Inside.

    def _begin(self, work: Any) -> None:
        self._tasks.append(asyncio.create_task(work))

    async def _open(self) -> None:
        failed = 0
        while not self._stopping.is_set():
            try:
                await self._parts.account.open()
                if self._parts.on_open is not None:
                    await self._parts.on_open()
            except CannotReach:
                if not self._live:
                    raise
                failed += 1
                _log.warning("the messenger does not answer yet", attempt=failed)
                await pause(self._stopping, min(backoff(failed, self._spread()).total_seconds(), 30.0))
            else:
                self.opened = True
                return

    async def _loop(self, part: str, work: Work, bell: WakeupEvent, idle: float | None = LONGEST_IDLE) -> None:
        """Work until there is nothing to do, then wait for the bell; whatever fails is tried again."""
        failed = 0
        while not self._stopping.is_set():
            bell.hush()
            try:
                done = await work()
                failed = 0
            except Exception:
                failed += 1
                if failed & (failed - 1) == 0:  # 1, 2, 4, 8 ...
                    _log.exception("a part of the work failed", kind=part, attempt=failed)
                await pause(self._stopping, min(backoff(failed, self._spread()).total_seconds(), 30.0))
                continue
            if done:
                bell.ring()  # there may be more, for this loop or for one beside it
            elif not self._stopping.is_set():
                await bell.wait(idle)

    def _schedule(self) -> None:
        """Have APScheduler ring: it holds nobody's schedule, and a ring it misses is made up by the next."""
        from apscheduler.schedulers.asyncio import AsyncIOScheduler

        self._scheduler = AsyncIOScheduler(timezone="UTC")
        for bell, seconds in (
            (self._parts.bells.sweep, self._sweep_every),
            (self._parts.bells.housekeeping, HOUSEKEEPING_EVERY),
        ):
            self._scheduler.add_job(
                bell.ring,
                "interval",
                seconds=seconds,
                misfire_grace_time=None,  # never drop a ring for being late
                coalesce=True,
                max_instances=1,
            )
        self._scheduler.start()

    def _ring_all(self) -> None:
        bells = self._parts.bells
        for bell in (
            bells.turns,
            bells.sweep,
            bells.housekeeping,
            self._menus,
            self._erasures,
            self._parts.delivery.bell,
        ):
            bell.ring()
