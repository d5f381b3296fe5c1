"""A page that is served, and a browser to look at it with (`tests.browser`)."""

import asyncio
import threading
from collections.abc import Callable, Iterator
from dataclasses import dataclass

import pytest
from playwright.sync_api import Browser, Page, expect

from demo.rehearsal.app import serve
from demo.rehearsal.practices import practice
from demo.rehearsal.stage import Stage
from tests.browser import PATIENCE, browser

__all__ = ["browser"]

expect.set_options(timeout=PATIENCE)


@dataclass
class Served:
    """A rehearsal that is being served, in a thread of its own."""

    url: str
    stage: Stage

    @property
    def origin(self) -> str:
        return self.url.rstrip("/")


@pytest.fixture
def serving() -> Iterator[Callable[..., Served]]:
    """Serve a tape, once it is played to its end if `whole`; every server ends with the test."""
    ends: list[Callable[[], None]] = []

    def begin(tape: str, *, whole: bool = True) -> Served:
        loop, stage = asyncio.new_event_loop(), Stage()
        stop, ready = asyncio.Event(), threading.Event()
        where: list[str] = []

        def at(address: str) -> None:
            where.append(address)
            ready.set()

        def run() -> None:
            asyncio.set_event_loop(loop)
            try:
                loop.run_until_complete(serve(stage, tape, 0, at, stop))
            finally:
                ready.set()
                loop.run_until_complete(loop.shutdown_default_executor())
                loop.close()

        thread = threading.Thread(target=run)
        thread.start()

        def end() -> None:
            loop.call_soon_threadsafe(stop.set)
            thread.join(30)
            assert not thread.is_alive()

        async def played() -> None:
            while stage.playing is not None or not stage.people:
                await stage.signal.beyond(stage.signal.version, 60)

        ends.append(end)
        ready.wait(30)
        if whole:
            asyncio.run_coroutine_threadsafe(played(), loop).result(120)
        return Served(where[0], stage)

    yield begin
    for end in ends:
        end()


@pytest.fixture
def served(serving: Callable[..., Served]) -> Served:
    """The empty practice: Rowan, a coach, and nobody else."""
    return serving(practice("empty", "en"))


@pytest.fixture
def window(browser: Browser) -> Iterator[Callable[..., Page]]:
    """Open an address in a window of its own, as another person would. What the page reports as a fault is one."""
    contexts = []
    faults: list[str] = []

    def open_(url: str, *, width: int = 1280, height: int = 800, scheme: str = "light") -> Page:
        context = browser.new_context(viewport={"width": width, "height": height}, color_scheme=scheme)
        contexts.append(context)
        page = context.new_page()
        page.set_default_timeout(PATIENCE)
        page.on("pageerror", lambda error: faults.append(str(error)))
        page.on("console", lambda said: faults.append(said.text) if "Content Security Policy" in said.text else None)
        page.goto(url)
        return page

    yield open_
    for context in contexts:
        context.close()
    assert faults == []
