"""Waiting that can be ended: the loops of a worker sleep on these, never on a bare sleep."""

from __future__ import annotations

import asyncio
from collections.abc import Coroutine
from typing import Any, TypeVar

T = TypeVar("T")


class WakeupEvent:
    """Rung when there is something to do; ringing twice before anybody listens is ringing once."""

    def __init__(self) -> None:
        self._event = asyncio.Event()

    def ring(self) -> None:
        self._event.set()

    def hush(self) -> None:
        """Forget that it rang: what it rang for is being seen to."""
        self._event.clear()

    async def wait(self, seconds: float | None = None) -> bool:
        """Wait until it rings, at most `seconds`; whether it did. It is quiet again afterwards."""
        try:
            async with asyncio.timeout(seconds):
                await self._event.wait()
        except TimeoutError:
            return False
        self._event.clear()
        return True


async def unless(stopping: asyncio.Event, work: Coroutine[Any, Any, T]) -> T | None:
    """Return what `work` returns, or None as soon as `stopping` is set: `work` is then cancelled."""
    doing = asyncio.ensure_future(work)
    stopped = asyncio.ensure_future(stopping.wait())
    try:
        await asyncio.wait((doing, stopped), return_when=asyncio.FIRST_COMPLETED)
        return doing.result() if doing.done() else None
    finally:
        for task in (doing, stopped):
            task.cancel()
        await asyncio.gather(doing, stopped, return_exceptions=True)


async def pause(stopping: asyncio.Event, seconds: float) -> None:
    """Wait `seconds`, less if `stopping` is set meanwhile."""
    try:
        async with asyncio.timeout(seconds):
            await stopping.wait()
    except TimeoutError:
        pass
