"""A limit on what one process sends in any second, however unevenly its sends arrive.

The store spaces sends evenly (`bot.store.rate_limit`), but a delayed one arrives close to the next, and the platform,
which counts the messages of the last second, refuses the excess. So a send also waits until fewer than `most` are in
flight or were answered within the last second. That is enough, because the platform counted each of them no later than
it answered.
"""

from __future__ import annotations

import asyncio
from collections import deque
from collections.abc import Callable
from time import monotonic
from types import TracebackType

SECOND = 1.0


class Window:
    """`async with window:` around one send. most: per second, at least 1. clock: monotonic seconds; not the event
    loop's, which may stand still while it is busy."""

    def __init__(self, most: int, clock: Callable[[], float] | None = None) -> None:
        self._most = most
        self._clock = clock or monotonic
        self._under_way = 0
        self._answered: deque[float] = deque()
        self._turn = asyncio.Lock()  # first come, first served
        self._one_back = asyncio.Event()

    async def __aenter__(self) -> None:
        async with self._turn:
            while (wait := self._wait()) > 0:
                self._one_back.clear()
                try:
                    async with asyncio.timeout(wait):
                        await self._one_back.wait()
                except TimeoutError:
                    pass
            self._under_way += 1

    async def __aexit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._under_way -= 1
        self._answered.append(self._clock())
        self._one_back.set()

    def _wait(self) -> float:
        """Seconds until there may be capacity."""
        now = self._clock()
        lately = self._answered
        while lately and lately[0] <= now - SECOND:
            lately.popleft()
        if self._under_way + len(lately) < self._most:
            return 0.0
        return lately[0] + SECOND - now if lately else SECOND
