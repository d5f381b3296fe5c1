"""Run the local messenger as a process: print one line of JSON with its url and token, then serve."""

import argparse
import asyncio
import json
import signal
import sys
from collections.abc import Sequence

from demo.messenger import DEFAULT_TOKEN, Faults, Flood, Messenger


def options(arguments: Sequence[str] | None = None) -> argparse.Namespace:
    """Read the command line."""
    parser = argparse.ArgumentParser(prog="python -m demo.messenger", description=__doc__)
    parser.add_argument("--port", type=int, default=0, help="0 takes a free one")
    parser.add_argument("--token", default=DEFAULT_TOKEN, help="the bot's token")
    parser.add_argument("--username", default="local_test_bot", help="the bot's name, without @")
    parser.add_argument("--seed", type=int, default=0, help="of the faults")
    parser.add_argument("--no-flood", action="store_true", help="count messages, refuse none")
    parser.add_argument("--overall", type=int, default=30, help="messages a second to all chats")
    parser.add_argument("--delay-ms", type=float, default=0, help="time every answer takes")
    parser.add_argument("--webhook-first-delay", type=float, default=1.0, help="seconds")
    parser.add_argument("--until-stdin-closes", action="store_true", help="end with the parent process")
    return parser.parse_args(arguments)


async def serve(given: argparse.Namespace) -> None:
    faults = Faults(given.seed)
    if given.delay_ms:
        faults.add("delay", ms=given.delay_ms)
    messenger = Messenger(
        token=given.token,
        port=given.port,
        bot_username=given.username,
        flood=Flood(enabled=not given.no_flood, overall=given.overall),
        faults=faults,
        webhook_first_delay=given.webhook_first_delay,
    )
    async with messenger:
        print(json.dumps({"url": messenger.url, "token": messenger.token}), flush=True)
        loop, ended = asyncio.get_running_loop(), asyncio.Event()
        for number in (signal.SIGINT, signal.SIGTERM):
            loop.add_signal_handler(number, ended.set)
        if given.until_stdin_closes:
            loop.add_reader(sys.stdin, ended.set)  # nobody writes to stdin, so readable means closed
        await ended.wait()
        if given.until_stdin_closes:
            loop.remove_reader(sys.stdin)


if __name__ == "__main__":
    asyncio.run(serve(options()))
