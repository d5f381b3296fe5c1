"""Never more than so many in a second as the platform counts them, however unevenly they arrive there."""

import asyncio
from collections.abc import Awaitable, Callable
from random import Random

from bot.window import Window

MOST = 5


class Loop(asyncio.SelectorEventLoop):
    """An event loop whose time passes only when everybody waits for it: no test sleeps."""

    def __init__(self) -> None:
        super().__init__()
        self._now = 1000.0
        self._clock_resolution = 1e-6
        select = self._selector.select

        def skip(timeout: float | None = None) -> object:
            if timeout:
                self._now += timeout
            return select(0)

        self._selector.select = skip  # type: ignore[method-assign, assignment]

    def time(self) -> float:
        return self._now


def played(scene: Callable[[], Awaitable[list[float]]]) -> list[float]:
    loop = Loop()
    try:
        return sorted(loop.run_until_complete(scene()))
    finally:
        loop.close()


async def sends(count: int, before: Callable[[], float], after: Callable[[], float]) -> list[float]:
    """When the platform counted each of `count` sends, all begun at once. before, after: seconds on the way."""
    window, counted = Window(MOST), []

    async def one() -> None:
        async with window:
            await asyncio.sleep(before())
            counted.append(asyncio.get_running_loop().time())
            await asyncio.sleep(after())

    await asyncio.gather(*(one() for _ in range(count)))
    return counted


def test_a_send_held_up_on_its_way_does_not_make_a_second_too_full() -> None:
    for seed in range(20):
        draw = Random(seed)
        at = played(lambda draw=draw: sends(40, lambda: draw.random() * 0.4, lambda: draw.random() * 0.4))
        assert all(later - earlier >= 1.0 for earlier, later in zip(at, at[MOST:], strict=False)), seed


def test_a_quick_platform_is_used_to_the_full() -> None:
    at = played(lambda: sends(5 * MOST + 1, lambda: 0.001, lambda: 0.001))
    assert at[-1] - at[0] < 5.02


def test_a_send_that_fails_gives_its_place_back() -> None:
    async def scene() -> list[float]:
        window = Window(1)
        try:
            async with window:
                raise OSError
        except OSError:
            pass
        async with window:
            return [asyncio.get_running_loop().time()]

    assert played(scene) == [1001.0]
