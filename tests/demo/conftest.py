"""Scenes for the local messenger, each in its own event loop, with the real client."""

import asyncio
from collections.abc import Awaitable, Callable
from typing import Any

import aiohttp
import pytest
from telegram import Bot

from demo.messenger import Flood, Messenger


@pytest.fixture
def play() -> Callable[..., None]:
    """Run `scene(messenger, bot)`; `settings` go to the messenger, which has no flood limits by default."""

    def run(scene: Callable[[Messenger, Bot], Awaitable[None]], **settings: Any) -> None:
        async def staged() -> None:
            settings.setdefault("flood", Flood.off())
            async with Messenger(**settings) as messenger:
                bot = Bot(messenger.token, messenger.base_url, messenger.base_file_url)
                async with asyncio.timeout(30), bot:
                    await scene(messenger, bot)

        asyncio.run(staged())

    return run


@pytest.fixture
def ask() -> Callable[..., Awaitable[tuple[int, dict[str, Any]]]]:
    """Send one raw request, which the real client would never send; returns status and body."""

    async def request(
        messenger: Messenger, method: str, *, token: str | None = None, verb: str = "POST", **how: Any
    ) -> tuple[int, dict[str, Any]]:
        url = f"{messenger.base_url}{token or messenger.token}/{method}"
        async with aiohttp.ClientSession() as session, session.request(verb, url, **how) as response:
            return response.status, await response.json()

    return request
