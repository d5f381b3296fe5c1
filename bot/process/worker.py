"""One process of the bot: intake, turns, the sweep for due work, and delivery.

    intake --keep, ring--> turns --commit, ring--> delivery
                            ^ sweep: rung by APScheduler, and when a turn sets a timer

Each part is a loop that works until nothing is left and then waits for its bell. A bell is only a hint: the work itself
is in the database, so a bell lost in a crash causes a delay of a second and loses nothing.

A process runs by itself between `start` and `stop`. With a simulated clock, `settle` instead does everything due at one
instant, through the same parts, until nothing is left.
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

LONGEST_IDLE = 1.0  # seconds; another process may have left work
HOUSEKEEPING_EVERY = 3600.0
MENUS_EVERY = 15.0  # seconds; how long a new coach may still see a client's menu
# Seconds a thread keeps the interpreter while another waits. It is released for every row written to SQLite and every
# network call; a waiting thread would otherwise stall for the default 5 ms.
SWITCH_AFTER = 0.001
MOST_ROUNDS = 10_000  # of one `settle`: more means that something is due again endlessly

Work = Callable[[], Awaitable[int]]  # processes one batch; returns its size

_log = log.get("worker")


class Account(Protocol):
    """The messenger account that a process opens and closes."""

    async def open(self) -> None: ...

    async def close(self) -> None: ...


class Server(Protocol):
    """A web server that runs until it is stopped."""

    async def run(self, stopping: asyncio.Event) -> None: ...


@dataclass(frozen=True, slots=True)
class Parts:
    """The parts of a process; `bot.process.wiring` chooses them.

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
    """One bell per loop."""

    turns: WakeupEvent
    sweep: WakeupEvent
    housekeeping: WakeupEvent

    @classmethod
    def new(cls) -> Bells:
        return cls(WakeupEvent(), WakeupEvent(), WakeupEvent())


def _tune_interpreter() -> None:
    """Freeze imported objects and raise the garbage collector's threshold: a batch of turns allocates many short-lived
    values."""
    sys.setswitchinterval(SWITCH_AFTER)
    gc.collect()
    gc.freeze()
    gc.set_threshold(50_000, 20, 50)


class Service:
    """A process. `live`: works by itself, in real time; else only when `settle` is called."""

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
        """Connect, reclaim what a killed predecessor held, and start working.

        Raises: TokenRefused; CannotReach, but only if not live: a live process waits for the messenger.
        """
        await self._open()
        held = await self._parts.delivery.start_afresh()
        if held:
            _log.info("reclaimed messages that were being sent", count=held)
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
        """Accept nothing new, finish work in progress, and close everything."""
        self._stopping.set()
        if self._scheduler is not None:
            self._scheduler.shutdown(wait=False)
        self._ring_all()
        ended = await asyncio.gather(*self._tasks, return_exceptions=True)
        for error in ended:
            if isinstance(error, BaseException):
                _log.error("a part failed", exc_info=error)
        if self._parts.poller is not None:
            await self._parts.poller.answers.finish()
        await self._parts.account.close()
        self._parts.close()
        self._parts.database.close()
        _log.info("stopped")

    async def run(self, stop: asyncio.Event) -> None:
        """Start, work until `stop` is set, and stop cleanly.

        Raises: whatever ended one of the parts, which user input never does.
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
        """Do everything due at `now`, and everything that follows from it, until nothing is left.

        now: a held clock is first moved to it; any other clock must already show it. Raises: RuntimeError if the
        process is live, or if it never settles.
        """
        if self._live:
            raise RuntimeError("a live process works by itself and cannot be settled")
        if isinstance(self._parts.clock, HeldClock):
            self._parts.clock.move_to(now)
        for _ in range(MOST_ROUNDS):
            done = 0 if self._parts.poller is None else await self._parts.poller.what_waits()
            done += await self._parts.sweep()
            done += await self._parts.turns()
            done += await self._parts.erasures()
            done += await self._parts.delivery.drain()
            if not done:
                if self._parts.poller is not None:
                    await self._parts.poller.answers.finish()
                await self._set_menus_once()
                return
        raise RuntimeError("work is due again without end")

    async def next_due(self) -> datetime | None:
        """The next instant with work to do; None if nothing will ever be due."""
        found: Sequence[datetime | None] = (
            await self._parts.next_due(),
            await self._parts.delivery.next_due(),
        )
        return min((at for at in found if at is not None), default=None)

    # Internals.

    async def _set_menus_once(self) -> None:
        if self._parts.menus is None:
            return
        try:
            await self._parts.menus()
        except CannotReach:
            _log.info("the command menus wait for the messenger")

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
        """Work until nothing is left, then wait for the bell; failures are retried with back-off."""
        failed = 0
        while not self._stopping.is_set():
            bell.clear()
            try:
                done = await work()
                failed = 0
            except Exception:
                failed += 1
                if failed & (failed - 1) == 0:  # 1, 2, 4, 8 ...
                    _log.exception("a batch failed", kind=part, attempt=failed)
                await pause(self._stopping, min(backoff(failed, self._spread()).total_seconds(), 30.0))
                continue
            if done:
                bell.ring()  # there may be more, for this loop or a parallel one
            elif not self._stopping.is_set():
                await bell.wait(idle)

    def _schedule(self) -> None:
        """Let APScheduler ring. It holds no client's schedule, and the next ring makes up for a missed one."""
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
                misfire_grace_time=None,  # never drop a late ring
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
