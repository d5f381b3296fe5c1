"""`Bot.send_message` through our HTTP client and through the library's own, on the same local messenger.

    PYTHONPATH=. python tests/bench/http_client.py [RUNS] [SENDS]

The messenger runs in its own process with no flood limits. Medians of RUNS (5) of SENDS (1500) each.
"""

from __future__ import annotations

import asyncio
import statistics
import sys
import time
from collections.abc import Callable

from telegram import Bot
from telegram.request import BaseRequest, HTTPXRequest

from bot.transports.request import AiohttpRequest
from demo.messenger import Remote

CLIENTS: dict[str, Callable[[], BaseRequest]] = {
    "default HTTPXRequest, pool 256": HTTPXRequest,
    "HTTPXRequest, pool 16": lambda: HTTPXRequest(16, pool_timeout=None),
    "ours over aiohttp": AiohttpRequest,
}
CONCURRENCY = (1, 32, 128)


async def rate(bot: Bot, chats: list[int], sends: int, concurrency: int) -> float:
    """Return messages accepted a second with `concurrency` in flight at a time."""
    left = iter(range(sends))

    async def sender() -> None:
        for number in left:
            await bot.send_message(chats[number % len(chats)], "How was your week, from 0 to 10?")

    start = time.perf_counter()
    await asyncio.gather(*(sender() for _ in range(concurrency)))
    return sends / (time.perf_counter() - start)


async def main(runs: int, sends: int) -> None:
    async with await Remote.spawn("--no-flood") as messenger:
        chats = []
        for number in range(128):
            chats.append(await messenger.create_user(f"Client {number}"))
            await messenger.open_bot(chats[-1])
        print(f"{'client':34}" + "".join(f"{f'{n} at once':>14}" for n in CONCURRENCY) + "   messages/s")
        for name, make in CLIENTS.items():
            cells = []
            for concurrency in CONCURRENCY:
                async with Bot(messenger.token, messenger.base_url, request=make()) as bot:
                    await rate(bot, chats, 100, concurrency)
                    cells.append(statistics.median([await rate(bot, chats, sends, concurrency) for _ in range(runs)]))
            print(f"{name:34}" + "".join(f"{cell:14,.0f}" for cell in cells), flush=True)


if __name__ == "__main__":
    asyncio.run(main(*(int(given) for given in (sys.argv[1:] + ["5", "1500"][len(sys.argv) - 1 :]))))
