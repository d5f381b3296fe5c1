"""Fetch updates from the messenger without losing anything a person typed.

An update is confirmed only after it is committed: the offset that confirms a batch is sent with the next request, after
`keep` returned. After a crash in between, the batch arrives again, and the inbox recognises its keys.

An update that cannot be read, or not be stored, is set aside in the same transaction, and stops nobody.

A press is answered as soon as it is kept: the platform forgets it within seconds, so this never waits in the outbox.
"""

from __future__ import annotations

import asyncio
import random
from collections.abc import Awaitable, Callable, Sequence
from datetime import datetime, timedelta
from typing import Protocol

from sqlalchemy import Connection
from sqlalchemy.exc import InterfaceError, OperationalError
from telegram.error import TelegramError

from bot.foundation import log
from bot.foundation.clock import Clock
from bot.foundation.errors import OtherPoller, TokenRefused
from bot.foundation.metrics import Metrics
from bot.foundation.retry import MOST_REFUSALS, Busy, NoAnswer, Trouble, backoff
from bot.process.wakeup import pause, unless
from bot.store import inbox, unread
from bot.store.database import Database
from bot.transports.incoming import Incoming, Unread
from bot.transports.telegram import Batch, failure_of

Keep = Callable[[Sequence[Incoming], Sequence[Unread]], Awaitable[None]]  # Raises when nothing can be kept now

_OTHER_POLLER_DELAY = 5.0  # seconds: long enough for the other process's long poll to be interrupted and noticed
_LONGEST_DELAY = timedelta(seconds=30)
_TOKEN_DELAY = 60.0

_log = log.get("intake")


class UpdateSource(Protocol):
    """The transport as intake needs it."""

    async def fetch(self, confirm: int | None, now: datetime, timeout: int, limit: int = 100) -> Batch: ...

    async def answer(self, query: str) -> None: ...


def keeper(database: Database, clock: Clock, ring: Callable[[], None]) -> Keep:
    """A function that stores a batch in the inbox, in one transaction, and then rings for the turns."""

    async def keep(events: Sequence[Incoming], aside: Sequence[Unread]) -> None:
        rows = [
            inbox.NewEvent(one.key, one.chat_id, one.event, one.language or None, one.name, one.is_group)
            for one in events
        ]
        others = [unread.Unread(one.key, one.chat_id, one.body, one.why) for one in aside]
        try:
            await database.write(_keep, rows, others, clock.now())
        except (OperationalError, InterfaceError, OSError):
            raise
        except Exception as error:  # one of them is what no column can hold: each by itself, then
            _log.error("a batch could not be stored whole", fault=log.fault(error))
            await database.write(_keep_each, rows, others, clock.now())
        if rows:
            ring()

    return keep


def _keep(conn: Connection, rows: Sequence[inbox.NewEvent], others: Sequence[unread.Unread], now: datetime) -> int:
    return inbox.put(conn, rows, now) + unread.put(conn, others, now)


def _keep_each(
    conn: Connection, rows: Sequence[inbox.NewEvent], others: Sequence[unread.Unread], now: datetime
) -> None:
    """Store what can be stored, each in a savepoint, and set aside what cannot."""
    aside = list(others)
    for row in rows:
        try:
            with conn.begin_nested():
                inbox.put(conn, [row], now)
        except (OperationalError, InterfaceError):
            raise
        except Exception:
            aside.append(unread.Unread(row.key, None, b"", "not_stored"))
    for one in aside:
        try:
            with conn.begin_nested():
                unread.put(conn, [one], now)
        except (OperationalError, InterfaceError):
            raise
        except Exception as error:
            _log.error("an update could not even be set aside", fault=log.fault(error))


class Answers:
    """Answers presses concurrently. `finish` waits for answers in progress."""

    def __init__(self, answer: Callable[[str], Awaitable[None]]) -> None:
        self._answer = answer
        self._under_way: set[asyncio.Task[None]] = set()

    def give(self, events: Sequence[Incoming]) -> None:
        for event in events:
            if event.query:
                task = asyncio.create_task(self._one(event.query))
                self._under_way.add(task)
                task.add_done_callback(self._under_way.discard)

    async def finish(self) -> None:
        await asyncio.gather(*self._under_way)

    async def _one(self, query: str) -> None:
        try:
            await self._answer(query)
        except Exception:  # best effort: a button that keeps spinning does not matter, a lost task's warning would
            _log.exception("a press was not answered")


class _Unconfirmed(Exception):
    """None of a batch says its number. They come again until one does."""


class Poller:
    """The long-polling loop. `keep` commits a batch; if it raises, the batch is tried again."""

    def __init__(
        self,
        source: UpdateSource,
        keep: Keep,
        clock: Clock,
        metrics: Metrics,
        *,
        timeout: int = 30,
        spread: Callable[[], float] = random.random,
    ) -> None:
        self._source = source
        self._keep = keep
        self._clock = clock
        self._metrics = metrics
        self._timeout = timeout
        self._spread = spread
        self._confirm: int | None = None
        self.answers = Answers(source.answer)

    async def once(self, timeout: int = 0) -> int:
        """Fetch and store one batch; return the number of updates. Raises whatever the messenger or `keep` raises."""
        batch = await self._source.fetch(self._confirm, self._clock.now(), timeout)
        await self._take(batch)
        return batch.count

    async def what_waits(self) -> int:
        """`once` with a simulated clock: a messenger that does not answer delivers nothing and keeps pending
        updates."""
        try:
            return await self.once()
        except TelegramError as error:
            if not isinstance(failure_of(error), Trouble | NoAnswer):
                raise
            _log.info("the messenger does not answer", fault=log.fault(error))
            return 0

    async def _take(self, batch: Batch) -> None:
        if batch.events or batch.aside:
            await self._keep(batch.events, batch.aside)
            self.answers.give(batch.events)
        if batch.confirm is not None:
            self._confirm = batch.confirm
        self._metrics.updates.labels("polling").inc(batch.count)
        self._metrics.unread.inc(len(batch.aside))

    async def run(self, stopping: asyncio.Event) -> None:
        """Fetch updates until `stopping`. Failures are retried with back-off.

        A long poll is cancelled (its updates stay with the messenger); a batch is stored entirely.

        Raises: TokenRefused if the platform goes on refusing the token.
        """
        failed = refused = 0
        while not stopping.is_set():
            try:
                fetch = self._source.fetch(self._confirm, self._clock.now(), self._timeout)
                batch = await unless(stopping, fetch)
                if batch is not None:
                    await self._take(batch)
                    if batch.count and batch.confirm is None:
                        raise _Unconfirmed
                failed = refused = 0
            except Exception as error:
                failed += 1
                refused = refused + 1 if isinstance(error, TokenRefused) else 0
                if refused >= MOST_REFUSALS:
                    raise
                await pause(stopping, self._wait(error, failed))
        await self.answers.finish()

    def _wait(self, error: Exception, failed: int) -> float:
        """Log the failure, at first and then ever more rarely; return the seconds to wait."""
        usual = min(backoff(failed, self._spread()), _LONGEST_DELAY).total_seconds()
        loud = failed & (failed - 1) == 0  # 1, 2, 4, 8 ...
        match error:
            case OtherPoller():
                if loud:
                    _log.error("updates go to another process or to a webhook", attempt=failed)
                return max(usual, _OTHER_POLLER_DELAY)
            case _Unconfirmed():
                if loud:
                    _log.error("the messenger gives updates that cannot be confirmed", attempt=failed)
                return usual / 10  # the next one, which confirms these too, may be there already
            case TokenRefused():
                if loud:
                    _log.error("the messenger refuses the token", attempt=failed)
                return _TOKEN_DELAY
            case TelegramError():
                failure = failure_of(error)
                if isinstance(failure, Busy):
                    return failure.seconds
                if loud:
                    _log.warning("the messenger does not answer", attempt=failed, fault=log.fault(error))
                return usual
            case _:
                if loud:
                    _log.error("updates could not be stored", attempt=failed, exc_info=error)
                return usual
