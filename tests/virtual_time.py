"""An event loop whose time passes only when everybody waits for it: a scene of a minute takes no time, and the same
each time. Work on other threads is waited for, and takes none."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Coroutine
from concurrent.futures import Executor
from datetime import datetime, timedelta
from typing import Any, TypeVar

T = TypeVar("T")

START = 1000.0


class VirtualTime(asyncio.SelectorEventLoop):
    def __init__(self) -> None:
        super().__init__()
        self.instant = START  # what time it really is here
        self._clock_resolution = 1e-6
        select = self._selector.select

        def skip(timeout: float | None = None) -> object:
            if timeout:
                self.instant += timeout
            return select(timeout and 0)

        self._selector.select = skip  # type: ignore[method-assign, assignment]

    def time(self) -> float:
        return self.instant

    def run_in_executor(self, executor: Executor | None, func: Callable[..., T], *args: Any) -> asyncio.Future[T]:  # type: ignore[override]
        assert executor is not None, "nothing here uses the loop's own threads"
        done = self.create_future()
        try:
            done.set_result(executor.submit(func, *args).result())
        except Exception as error:
            done.set_exception(error)
        return done


class Coarse(VirtualTime):
    """One that tells its own time in whole hundredths of a second, always a little late."""

    def time(self) -> float:
        return self.instant // 0.01 * 0.01


class Clock:
    """Says what time it is on the running loop, which began at `start`."""

    def __init__(self, start: datetime) -> None:
        self._start = start

    def now(self) -> datetime:
        return self._start + timedelta(seconds=instant() - START)


def instant() -> float:
    """Return the time on the running loop, in seconds."""
    loop = asyncio.get_running_loop()
    assert isinstance(loop, VirtualTime), "here time passes by itself, and slowly"
    return loop.instant


async def pass_time(seconds: float) -> None:
    """Let so much time pass, and everybody do what they would meanwhile."""
    instant()  # not on another loop
    await asyncio.sleep(seconds)


def play(scene: Coroutine[Any, Any, T], kind: type[VirtualTime] = VirtualTime) -> T:
    """`asyncio.run` on such a loop."""
    with asyncio.Runner(loop_factory=kind) as runner:
        return runner.run(scene)
