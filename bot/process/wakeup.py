"""Interruptible waiting: a worker's loops wait on these, never on a plain sleep."""

from __future__ import annotations

import asyncio
from collections.abc import Coroutine
from typing import Any, TypeVar

T = TypeVar("T")


class WakeupEvent:
    """Signals that there is work; ringing twice before anybody waits counts once."""

    def __init__(self) -> None:
        self._event = asyncio.Event()

    def ring(self) -> None:
        self._event.set()

    def clear(self) -> None:
        """Clear the signal, because its work is being handled."""
        self._event.clear()

    async def wait(self, seconds: float | None = None) -> bool:
        """Wait for the signal, at most `seconds`; return whether it came. It is cleared afterwards."""
        try:
            async with asyncio.timeout(seconds):
                await self._event.wait()
        except TimeoutError:
            return False
        self._event.clear()
        return True


async def unless(stopping: asyncio.Event, work: Coroutine[Any, Any, T]) -> T | None:
    """The result of `work`, or None as soon as `stopping` is set, which cancels `work`."""
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
    """Wait `seconds`, or until `stopping` is set."""
    try:
        async with asyncio.timeout(seconds):
            await stopping.wait()
    except TimeoutError:
        pass
