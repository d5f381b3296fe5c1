"""A tiny load balancer: each request goes to the next worker in turn that accepts it."""

from __future__ import annotations

import socket
from collections import Counter
from collections.abc import Sequence
from typing import Self

import aiohttp
from aiohttp import web


def free_ports(count: int) -> list[int]:
    """Ports on which nobody listens now."""
    held = [socket.socket() for _ in range(count)]
    for one in held:
        one.bind(("127.0.0.1", 0))
    found = [one.getsockname()[1] for one in held]
    for one in held:
        one.close()
    return found


class Front:
    """Forwards POSTs to the workers' ports; 502 if none answers. taken: number accepted by each."""

    def __init__(self, workers: Sequence[int]) -> None:
        self._workers = list(workers)
        self._turn = 0
        self.taken: Counter[int] = Counter()

    async def __aenter__(self) -> Self:
        self._session = aiohttp.ClientSession(connector=aiohttp.TCPConnector(limit=0, force_close=True))
        server = web.Server(self._pass_on, handler_cancellation=True, access_log=None)
        self._runner = web.ServerRunner(server, shutdown_timeout=0.05)
        await self._runner.setup()
        await web.TCPSite(self._runner, "127.0.0.1", 0).start()
        self.url = f"http://127.0.0.1:{self._runner.addresses[0][1]}/updates"
        return self

    async def __aexit__(self, *_: object) -> None:
        await self._runner.cleanup()
        await self._session.close()

    async def _pass_on(self, request: web.BaseRequest) -> web.Response:
        body = await request.read()
        kept = {name: value for name, value in request.headers.items() if name.startswith("X-")}
        for _ in self._workers:
            self._turn += 1
            port = self._workers[self._turn % len(self._workers)]
            try:
                async with self._session.post(f"http://127.0.0.1:{port}/updates", data=body, headers=kept) as answer:
                    said = await answer.read()
                    self.taken[port] += answer.status == 200
                    return web.Response(status=answer.status, body=said)
            except aiohttp.ClientConnectorError:
                continue  # that one is down; the request has not reached it
            except aiohttp.ClientError:
                break  # it may have been reached: the messenger has to repeat the request
        return web.Response(status=502)
