"""Bots in separate processes, with the local messenger in another."""

from __future__ import annotations

import asyncio
import os
import sys
from asyncio.subprocess import Process
from collections.abc import AsyncIterator, Sequence
from contextlib import asynccontextmanager
from pathlib import Path

from telegram import Bot

from bot.transports.request import AiohttpRequest
from demo.messenger import Remote

FOLDER = Path(__file__).parent


@asynccontextmanager
async def echo_bot(messenger: Remote, concurrent: int = 0) -> AsyncIterator[Process]:
    """The yardstick, once it polls."""
    arguments = (messenger.base_url, messenger.token, str(concurrent))
    async with _process(messenger, "echo_bot.py", arguments, {}) as process:
        yield process
        process.terminate()


@asynccontextmanager
async def our_bot(messenger: Remote, url: str, *options: str, **settings: object) -> AsyncIterator[Process]:
    """Our bot on the database at `url`, once it polls. settings: of `bot.foundation.config`, without prefix."""
    environment = {
        "SAMEHOUR_TOKEN": messenger.token,
        "SAMEHOUR_API_BASE_URL": messenger.url,
        "SAMEHOUR_DATABASE_URL": url,
        **{f"SAMEHOUR_{name.upper()}": str(value) for name, value in settings.items()},
    }
    async with _process(messenger, "our_bot.py", options, environment) as process:
        yield process
        assert process.stdin is not None
        process.stdin.close()


@asynccontextmanager
async def _process(
    messenger: Remote, script: str, arguments: Sequence[str], environment: dict[str, str]
) -> AsyncIterator[Process]:
    path = os.pathsep.join(filter(None, (str(FOLDER.parents[1]), os.environ.get("PYTHONPATH"))))
    process = await asyncio.create_subprocess_exec(
        sys.executable,
        str(FOLDER / script),
        *arguments,
        env={**os.environ, "PYTHONPATH": path, **environment},
        stdin=asyncio.subprocess.PIPE,
        stderr=asyncio.subprocess.DEVNULL,  # the library's warnings about its own defaults, at the end
    )
    try:
        while not (await messenger.figures())["polling"]:
            if process.returncode is not None:
                raise RuntimeError(f"{script} ended with code {process.returncode}")
            await asyncio.sleep(0.02)
        yield process
        await process.wait()
    finally:
        if process.returncode is None:
            process.kill()
            await process.wait()


async def open_chats(messenger: Remote, chats: Sequence[int]) -> None:
    """Make these people have opened the bot long ago: it may write to them, and no update is pending."""
    for start in range(0, len(chats), 1000):
        some = chats[start : start + 1000]
        await messenger.many(("create_user", {"first_name": f"Ada {chat}", "id": chat}) for chat in some)
        await messenger.many(("open_bot", {"user": chat}) for chat in some)
    async with Bot(messenger.token, messenger.base_url, request=AiohttpRequest()) as bot:
        await bot.delete_webhook(drop_pending_updates=True)


def memory(process: Process) -> float:
    """Current memory of a process, in MiB."""
    for line in Path(f"/proc/{process.pid}/status").read_text(encoding="ascii").splitlines():
        if line.startswith("VmRSS:"):
            return int(line.split()[1]) / 1024
    raise RuntimeError("the system does not say")


def processor(process: Process) -> float:
    """CPU seconds used by a process so far, which other load affects less than wall time."""
    fields = Path(f"/proc/{process.pid}/stat").read_text(encoding="ascii").rpartition(")")[2].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")
