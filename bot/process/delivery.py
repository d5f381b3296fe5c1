"""Deliver the outbox: in order within a chat, chats concurrently, within the platform's rate limits.

A crash between the platform's acknowledgement and our commit repeats at most the messages in flight or not yet
recorded, one per chat, and loses none: the platform has no idempotency key to prevent it.

* One exchange with the store records finished sends and claims the next messages (`bot.store.dispatch`).
* A failed exchange may have been committed with its answer lost: whatever it claimed is released before the next.
* A message is rendered when it is sent, in its reader's language. A message to many people is rendered once.
* It sleeps until the next message is due or `bell` rings, so a timed message is sent at its instant.
"""

from __future__ import annotations

import asyncio
import random
from collections.abc import Callable
from contextlib import nullcontext
from datetime import datetime, timedelta
from typing import Protocol

from bot.foundation import log
from bot.foundation.clock import Clock
from bot.foundation.errors import TokenRefused
from bot.foundation.metrics import Metrics
from bot.foundation.reader import Rendered
from bot.foundation.retry import MOST_REFUSALS, Broken, SendFailure, Sent, Shut, Wait, backoff, decide
from bot.process.rate_window import Window
from bot.process.wakeup import WakeupEvent, pause
from bot.store import outbox
from bot.store.database import Database
from bot.store.dispatch import UNREACHABLE, Next, Postponed, SendJob, SendResult, claim_and_settle
from bot.store.rate_limit import Rates

AHEAD = 8  # messages claimed per message in flight, so that sending continues while more are claimed
GATHER = 0.01  # seconds during which results are collected for one commit, while enough messages are claimed
LONGEST_SLEEP = 1.0  # seconds; another process may have queued messages
_TICK = timedelta(milliseconds=1)

_log = log.get("delivery")


class Transport(Protocol):
    """The messenger as delivery needs it. No call raises for any answer of the messenger."""

    async def send(self, chat_id: int, message: Rendered) -> Sent | SendFailure: ...

    async def drop_buttons(self, chat_id: int, ref: str) -> Sent | SendFailure: ...

    async def delete(self, chat_id: int, ref: str) -> Sent | SendFailure: ...


class Renderer(Protocol):
    """Renders a queued message in one or more parts. Raises if it cannot (a bug)."""

    async def parts(self, row: outbox.ClaimedMessage) -> tuple[Rendered, ...]: ...


class Delivery:
    """One worker's sender.

    rates: shared limits; None for none, as with a simulated clock. parallel: maximum of messages in flight. on_events:
    called when a failure became an inbox event. spread: random numbers from 0 up to 1 (jitter).
    """

    def __init__(
        self,
        database: Database,
        transport: Transport,
        renderer: Renderer,
        clock: Clock,
        metrics: Metrics,
        *,
        worker: str,
        rates: Rates | None,
        parallel: int = 32,
        on_events: Callable[[], None] = lambda: None,
        spread: Callable[[], float] = random.random,
    ) -> None:
        self._database = database
        self._transport = transport
        self._renderer = renderer
        self._clock = clock
        self._metrics = metrics
        self._worker = worker
        self._rates = rates
        self._parallel = parallel
        self._on_events = on_events
        self._spread = spread
        self._sending = asyncio.Semaphore(parallel)
        self._window = None if rates is None else Window(max(int(rates.overall), 1))
        self._in_hand: dict[asyncio.Task[None], int] = {}  # and the row it sends
        self._unheard = False  # whether rows may be claimed for us without our knowing
        self._results: list[SendResult] = []
        self._halted_until: datetime | None = None
        self._refusals = 0  # of our token, in a row: waits that nothing was sent in between
        self.bell = WakeupEvent()

    # Running.

    async def run(self, stopping: asyncio.Event) -> None:
        """Send until `stopping`; then finish what is in flight, and hand the rest back.

        Raises: TokenRefused if the platform goes on refusing the token.
        """
        failed = 0
        while not stopping.is_set() and self._refusals < MOST_REFUSALS:
            try:
                found = await self._exchange(self._parallel * AHEAD - len(self._in_hand))
                failed = 0
            except Exception:
                failed += 1
                _log.exception("the outbox cannot be read", attempt=failed)
                await pause(stopping, min(backoff(failed, self._spread()).total_seconds(), 30.0))
                continue
            self._begin(found)
            if not stopping.is_set():
                await self._sleep(found, stopping)
        await self._finish()
        if self._refusals >= MOST_REFUSALS:
            raise TokenRefused

    async def drain(self) -> int:
        """Send everything that can be sent now, and wait for it; return how many. For a simulated clock."""
        count = 0
        while True:
            found = await self._exchange(self._parallel)
            if not found.jobs:
                return count
            self._begin(found)
            await asyncio.gather(*self._in_hand)
            count += sum(isinstance(result.outcome, Sent) for result in self._results)

    async def start_afresh(self) -> int:
        """Reclaim what this worker held when it was killed; return how many messages."""
        return await self._database.write(outbox.release, self._worker, self._clock.now())

    def clock_went_back(self) -> None:
        """What was to be waited for by the clock as it was is not waited for."""
        self._halted_until = None
        self.bell.ring()

    async def next_due(self) -> datetime | None:
        """When the next message can be sent; None if none is pending."""
        return await self._database.read(outbox.next_due)

    async def _exchange(self, want: int) -> Next:
        self.bell.clear()
        if self._unheard:
            known = {*self._in_hand.values(), *(result.row.id for result in self._results)}
            await self._database.write(outbox.release, self._worker, self._clock.now(), known)
            self._unheard = False
        results, self._results = self._results, []
        try:
            found = await self._database.write(
                claim_and_settle, self._worker, self._clock.now(), results, want, self._rates
            )
        except BaseException:
            self._results = results + self._results  # not recorded: the platform's acknowledgement must not be lost
            self._unheard = True
            raise
        if found.events:
            self._on_events()
        return found

    def _begin(self, found: Next) -> None:
        for job in found.jobs:
            task = asyncio.create_task(self._deliver(job))
            self._in_hand[task] = job.row.id
            task.add_done_callback(self._landed)

    def _landed(self, task: asyncio.Task[None]) -> None:
        del self._in_hand[task]
        self.bell.ring()

    async def _sleep(self, found: Next, stopping: asyncio.Event) -> None:
        """Wait until a send finishes, a message is due, the bell rings, or `stopping` is set."""
        if len(self._in_hand) > self._parallel:
            await pause(stopping, GATHER)
            return
        if self._results:
            return
        seconds = LONGEST_SLEEP
        if found.again is not None and len(self._in_hand) < self._parallel * AHEAD:
            seconds = min(seconds, max((found.again - self._clock.now() + _TICK).total_seconds(), 0.0))
        if seconds <= 0:
            await asyncio.sleep(0)
            return
        await self.bell.wait(seconds)

    async def _finish(self) -> None:
        if self._in_hand:
            await asyncio.gather(*self._in_hand, return_exceptions=True)
        try:
            await self._exchange(0)
            await self._database.write(outbox.release, self._worker, self._clock.now())
        except Exception:
            _log.exception("results could not be recorded", count=len(self._results))

    # One message.

    async def _deliver(self, job: SendJob) -> None:
        try:
            async with self._sending:
                result = await self._try(job)
        except asyncio.CancelledError:
            raise
        except Exception as error:  # a rendering bug, which affects only this message
            _log.exception("a message could not be rendered", row=job.row.id)
            result = SendResult(job.row, Broken(log.fault(error)))
        self._results.append(result)
        self._note(result)

    async def _try(self, job: SendJob) -> SendResult:
        row = job.row
        if not row.reachable:
            return SendResult(row, Broken(UNREACHABLE))
        later = await self._put_off(job)
        if later is not None:
            return SendResult(row, Postponed(later))
        if row.kind is outbox.DeliveryKind.DROP_BUTTONS:
            return self._sorted(job, await self._transport.drop_buttons(row.chat_id, row.ref), 0)
        if row.kind is outbox.DeliveryKind.DELETE:
            return self._sorted(job, await self._transport.delete(row.chat_id, row.ref) if row.ref else Sent(), 0)
        done = job.done
        first: Sent = Sent()
        for part in (await self._renderer.parts(row))[done:]:
            answer = await self._send(row.chat_id, part)
            if not isinstance(answer, Sent):
                return self._sorted(job, answer, done)
            done += 1
            first = answer
        return SendResult(row, first)

    async def _send(self, chat_id: int, part: Rendered) -> Sent | SendFailure:
        async with self._window or nullcontext():
            with self._metrics.send_seconds.time():
                return await self._transport.send(chat_id, part)

    def _sorted(self, job: SendJob, answer: Sent | SendFailure, done: int) -> SendResult:
        if isinstance(answer, Sent):
            return SendResult(job.row, answer)
        now = self._clock.now()
        decision = decide(job.row.attempts + 1, answer, now, self._spread())
        if isinstance(answer, Shut) and (self._halted_until is None or now >= self._halted_until):
            self._refusals += 1
        if isinstance(decision, Wait) and decision.everybody:
            self._halted_until = max(self._halted_until or decision.until, decision.until)
        return SendResult(job.row, decision, done)

    async def _put_off(self, job: SendJob) -> datetime | None:
        """Wait for this message's turn within the rate limit; or return when it can be claimed again, if it must be
        released."""
        if self._rates is not None:
            wait = (job.at - self._clock.now()).total_seconds()
            if wait > 0:
                # a place is never further off, unless the clock was put back
                await asyncio.sleep(min(wait, LONGEST_SLEEP))
        now = self._clock.now()
        if self._halted_until is not None and now < self._halted_until:
            return self._halted_until
        if now >= job.until:  # the messenger is slow: the lease could expire while we send
            return now
        return None

    def _note(self, result: SendResult) -> None:
        row, outcome = result.row, result.outcome
        self._metrics.messages.labels(type(outcome).__name__.lower()).inc()
        halted = self._halted_until is not None and self._clock.now() < self._halted_until
        self._metrics.halted.set(halted)
        match outcome:
            case Sent():
                self._refusals = 0
                late = (self._clock.now() - row.due_at).total_seconds()
                self._metrics.late_seconds.observe(max(late, 0.0))
            case Wait(until, everybody=True):
                seconds = round((until - self._clock.now()).total_seconds())
                _log.warning("the messenger halts all sending", seconds=seconds)
            case Broken(error) if error != UNREACHABLE:
                _log.error("a message was set aside", row=row.id, attempt=row.attempts + 1)
