"""Never more than so many in a second as the platform counts them, however unevenly they arrive there."""

import asyncio
from collections.abc import Awaitable, Callable
from random import Random

import pytest

from bot.process.rate_window import Window

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

    def exactly(self) -> float:
        return self._now

    def time(self) -> float:
        return self._now


class Coarse(Loop):
    """One that tells its own time in whole hundredths of a second, always a little late."""

    def time(self) -> float:
        return self._now // 0.01 * 0.01


def here() -> Loop:
    loop = asyncio.get_running_loop()
    assert isinstance(loop, Loop)
    return loop


def played(scene: Callable[[], Awaitable[list[float]]], kind: type[Loop] = Loop) -> list[float]:
    loop = kind()
    try:
        return sorted(loop.run_until_complete(scene()))
    finally:
        loop.close()


async def sends(count: int, before: Callable[[], float], after: Callable[[], float]) -> list[float]:
    """When the platform counted each of `count` sends, all begun at once. before, after: seconds on the way."""
    clock = here().exactly
    window, counted = Window(MOST, clock), []

    async def one() -> None:
        async with window:
            await asyncio.sleep(before())
            counted.append(clock())
            await asyncio.sleep(after())

    await asyncio.gather(*(one() for _ in range(count)))
    return counted


def test_a_send_held_up_on_its_way_does_not_make_a_second_too_full() -> None:
    for seed in range(20):
        draw = Random(seed)
        at = played(lambda draw=draw: sends(40, lambda: draw.random() * 0.4, lambda: draw.random() * 0.4))
        assert all(later - earlier >= 1.0 for earlier, later in zip(at, at[MOST:], strict=False)), seed


def test_what_the_event_loop_takes_for_the_time_does_not_matter(monkeypatch: pytest.MonkeyPatch) -> None:
    async def scene() -> list[float]:
        monkeypatch.setattr("bot.process.rate_window.monotonic", here().exactly)
        window, counted = Window(MOST), []
        for _ in range(4 * MOST):
            await asyncio.sleep(0.0137)  # the loop's time is behind by ever other amounts
            async with window:
                counted.append(here().exactly())
        return counted

    at = played(scene, Coarse)
    assert all(later - earlier >= 1.0 for earlier, later in zip(at, at[MOST:], strict=False))


def test_a_quick_platform_is_used_to_the_full() -> None:
    at = played(lambda: sends(5 * MOST + 1, lambda: 0.001, lambda: 0.001))
    assert at[-1] - at[0] < 5.02


def test_a_send_that_fails_gives_its_place_back() -> None:
    async def scene() -> list[float]:
        window = Window(1, here().exactly)
        try:
            async with window:
                raise OSError
        except OSError:
            pass
        async with window:
            return [here().exactly()]

    assert played(scene) == [1001.0]
