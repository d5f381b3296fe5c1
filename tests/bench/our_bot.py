"""The bot as `samehour serve` runs it, settings and all, without the platform's rate limits.

    SAMEHOUR_TOKEN=... python tests/bench/our_bot.py [--paced]

--paced: with them, SAMEHOUR_SEND_RATE a second. Ends when its standard input closes.
"""

import asyncio
import sys

from bot.foundation import config, log
from bot.process import loop, wiring


async def main(paced: bool) -> None:
    log.set_up("warning", "console", sys.stderr)
    service = wiring.service(config.read(), paced=paced)
    stop = asyncio.Event()
    asyncio.get_running_loop().add_reader(sys.stdin, stop.set)  # nobody writes to it: readable means closed
    await service.run(stop)


if __name__ == "__main__":
    loop.run(main("--paced" in sys.argv))
