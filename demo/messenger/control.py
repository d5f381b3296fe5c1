"""`Remote`: the same hands on a messenger in a separate process."""

import asyncio
import json
import os
import sys
from pathlib import Path
from typing import Any, Self

import aiohttp

from demo.messenger.hands import Hands
from demo.messenger.refusals import CannotDo
from demo.messenger.seen import pack, unpack

_ERRORS = {kind.__name__: kind for kind in (CannotDo, TimeoutError, TypeError, ValueError)}


class Remote(Hands):
    """Hands over HTTP: `async with Remote(url, token) as messenger`, or `await Remote.spawn()`.

    Args:
        url: what `python -m demo.messenger` printed, like `http://127.0.0.1:8081`.
        token: the bot's token there.
    """

    def __init__(self, url: str, token: str) -> None:
        self.url = url
        self.token = token
        self.base_url = f"{url}/bot"
        self.base_file_url = f"{url}/file/bot"
        self._session: aiohttp.ClientSession | None = None
        self.process: asyncio.subprocess.Process | None = None

    @classmethod
    async def spawn(cls, *options: str) -> Self:
        """Start a messenger in a separate process on a free port and return hands on it.

        `options` are those of `python -m demo.messenger`. It ends with `close`, or with this process.
        """
        top = str(Path(__file__).resolve().parents[2])
        path = os.pathsep.join(part for part in (top, os.environ.get("PYTHONPATH", "")) if part)
        process = await asyncio.create_subprocess_exec(
            sys.executable,
            "-m",
            "demo.messenger",
            "--until-stdin-closes",
            *options,
            stdin=asyncio.subprocess.PIPE,
            stdout=asyncio.subprocess.PIPE,
            env={**os.environ, "PYTHONPATH": path},
        )
        assert process.stdout is not None
        said = await process.stdout.readline()
        if not said:
            raise RuntimeError(f"the messenger ended with code {await process.wait()}")
        ready = json.loads(said)
        remote = cls(ready["url"], ready["token"])
        remote.process = process
        return remote

    @property
    def pid(self) -> int | None:
        """The spawned process's id; None if it was not ours to start."""
        return self.process.pid if self.process else None

    async def close(self) -> None:
        if self._session is not None:
            await self._session.close()
            self._session = None
        if self.process is not None:
            assert self.process.stdin is not None
            self.process.stdin.close()
            await self.process.wait()

    async def __aenter__(self) -> Self:
        return self

    async def __aexit__(self, *_: object) -> None:
        await self.close()

    async def do(self, act: str, /, **arguments: Any) -> Any:
        if self._session is None:
            timeout = aiohttp.ClientTimeout(total=None)
            self._session = aiohttp.ClientSession(timeout=timeout, connector=aiohttp.TCPConnector(limit=0))
        body = json.dumps({"act": act, "arguments": arguments}, default=pack)
        async with self._session.post(f"{self.url}/control", data=body) as response:
            answer = json.loads(await response.read(), object_hook=unpack)
        if "error" in answer:
            raise _ERRORS.get(answer["kind"], RuntimeError)(answer["error"])
        return answer["result"]
