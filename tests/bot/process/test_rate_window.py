"""Never more than the limit in a second as the platform counts, however unevenly sends arrive."""

import asyncio
from collections.abc import Callable, Coroutine
from random import Random
from typing import Any

import pytest

from bot.process.rate_window import Window
from tests.virtual_time import Coarse, VirtualTime, instant, pass_time, play

MOST = 5


def played(scene: Callable[[], Coroutine[Any, Any, list[float]]], kind: type[VirtualTime] = VirtualTime) -> list[float]:
    return sorted(play(scene(), kind))


async def sends(count: int, before: Callable[[], float], after: Callable[[], float]) -> list[float]:
    """When the platform counted each of `count` sends, all started at once. before, after: seconds in transit."""
    window, counted = Window(MOST, instant), []

    async def one() -> None:
        async with window:
            await pass_time(before())
            counted.append(instant())
            await pass_time(after())

    await asyncio.gather(*(one() for _ in range(count)))
    return counted


def test_a_send_held_up_on_its_way_does_not_make_a_second_too_full() -> None:
    for seed in range(20):
        draw = Random(seed)
        at = played(lambda draw=draw: sends(40, lambda: draw.random() * 0.4, lambda: draw.random() * 0.4))
        assert all(later - earlier >= 1.0 for earlier, later in zip(at, at[MOST:], strict=False)), seed


def test_what_the_event_loop_takes_for_the_time_does_not_matter(monkeypatch: pytest.MonkeyPatch) -> None:
    async def scene() -> list[float]:
        monkeypatch.setattr("bot.process.rate_window.monotonic", instant)
        window, counted = Window(MOST), []
        for _ in range(4 * MOST):
            await pass_time(0.0137)  # the loop's time is behind by ever other amounts
            async with window:
                counted.append(instant())
        return counted

    at = played(scene, Coarse)
    assert all(later - earlier >= 1.0 for earlier, later in zip(at, at[MOST:], strict=False))


def test_a_quick_platform_is_used_to_the_full() -> None:
    at = played(lambda: sends(5 * MOST + 1, lambda: 0.001, lambda: 0.001))
    assert at[-1] - at[0] < 5.02


def test_a_send_that_fails_gives_its_place_back() -> None:
    async def scene() -> list[float]:
        window = Window(1, instant)
        try:
            async with window:
                raise OSError
        except OSError:
            pass
        async with window:
            return [instant()]

    assert played(scene) == [1001.0]
