"""Waiting until something holds. Tests wait for the thing itself, never for a while: see tests/test_habits.py."""

import asyncio
from collections.abc import Awaitable, Callable
from typing import Any

from demo.messenger.signal import Signal

PATIENCE = 60.0  # seconds, for what takes a fraction of one: only a test that fails waits so long
LOOK_AGAIN = 0.03  # seconds: a commit in another process tells nobody, so a look must follow the last message


async def until(messenger: Any, condition: Callable[[], Awaitable[Any]], patience: float = PATIENCE) -> None:
    """Wait until `condition()` holds; looked at with each change at the messenger, and LOOK_AGAIN after the last."""
    async with asyncio.timeout(patience):
        while True:
            version = await messenger.changed(-1)
            if await condition():
                return
            await messenger.changed(version, timeout=LOOK_AGAIN)


async def until_polled(messenger: Any) -> None:
    """Wait until the bot waits for updates."""

    async def polled() -> bool:
        return (await messenger.figures())["polling"]

    await until(messenger, polled)


async def until_bumped(signal: Signal, condition: Callable[[], Any]) -> None:
    """Wait until `condition()` holds; looked at with each bump of `signal`, and at no other time."""
    async with asyncio.timeout(PATIENCE):
        while not condition():
            await signal.beyond(signal.version, PATIENCE)
