"""The test's end of `tests.faults.process`: start bots, kill them, learn how they ended."""

from __future__ import annotations

import asyncio
import json
import os
import signal
import sys
import time
from collections.abc import AsyncIterator, Mapping
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

ROOT = Path(__file__).parents[2]
Plan = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class End:
    """How a bot ended. status: its exit code, -9 for killed. point: where it killed itself, "" elsewhere. at:
    `time.monotonic()`, just after."""

    status: int
    point: str
    at: float


@dataclass(eq=False, slots=True)
class Bot:
    pid: int
    ended: asyncio.Future[End] = field(default_factory=lambda: asyncio.get_running_loop().create_future())

    def kill(self) -> None:
        if not self.ended.done():
            os.kill(self.pid, signal.SIGKILL)

    async def stop(self) -> End:
        """Stop it, as a supervisor would, and wait for it."""
        if not self.ended.done():
            os.kill(self.pid, signal.SIGTERM)
        return await self.ended


class Herd:
    """Bots of one run. Created by `herd()`."""

    def __init__(self, process: asyncio.subprocess.Process) -> None:
        self._process = process
        self._started: asyncio.Queue[Bot] = asyncio.Queue()
        self._bots: dict[int, Bot] = {}

    async def start(self, settings: Mapping[str, str], plan: Plan | None = None, *, webhook: bool = False) -> Bot:
        """Start a bot. One at a time."""
        assert self._process.stdin is not None
        line = json.dumps({"settings": dict(settings), "plan": dict(plan or {}), "webhook": webhook})
        self._process.stdin.write(line.encode() + b"\n")
        return await self._started.get()

    async def end_all(self) -> None:
        """Kill the remaining ones, as after a failed test."""
        left = list(self._bots.values())
        for bot in left:
            bot.kill()
        await asyncio.gather(*(bot.ended for bot in left))

    async def _listen(self) -> None:
        assert self._process.stdout is not None
        async for line in self._process.stdout:
            said = json.loads(line)
            match said["event"]:
                case "started":
                    bot = self._bots[said["pid"]] = Bot(said["pid"])
                    self._started.put_nowait(bot)
                case "ended":
                    end = End(said["status"], said["point"], time.monotonic())
                    self._bots.pop(said["pid"]).ended.set_result(end)


@asynccontextmanager
async def herd(log: Path) -> AsyncIterator[Herd]:
    """A process that forks bots. log: for all their output. None of them outlives it."""
    with log.open("ab") as file:
        process = await asyncio.create_subprocess_exec(
            sys.executable, "-m", "tests.faults.process",
            cwd=ROOT, stdin=asyncio.subprocess.PIPE, stdout=asyncio.subprocess.PIPE, stderr=file,
        )  # fmt: skip
        made = Herd(process)
        assert process.stdout is not None
        assert process.stdin is not None
        assert await process.stdout.readline(), log.read_text()
        listening = asyncio.create_task(made._listen())
        try:
            yield made
        finally:
            process.stdin.close()
            await process.wait()
            listening.cancel()
            await asyncio.gather(listening, return_exceptions=True)
