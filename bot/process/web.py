"""The process's HTTP endpoints: the webhook, health and metrics.

    POST <webhook path>   updates; 200 only once the update is committed, or set aside because it cannot be read
    GET /healthz          200 while the process turns over
    GET /readyz           200 when it can do its work, else 503 and which part cannot: database, schema, messenger
    GET /metrics          Prometheus

The last three can be served on a port of their own, which nobody outside reaches.

The secret header is compared in constant time before anything is read; a body is read up to a limit. What is no update,
or too long for one, is set aside and answered 200: refused, the messenger would send it again and again. Whoever does
not say what they want, or does not go on saying it, is hung up on.
The messenger repeats whatever is not answered with 2xx, so a failure to commit loses nothing.
"""

from __future__ import annotations

import asyncio
import hmac
import socket
from collections.abc import Awaitable, Callable, Iterator, Mapping
from contextlib import contextmanager
from datetime import datetime
from typing import Any, Protocol

import uvicorn
from starlette.applications import Starlette
from starlette.requests import ClientDisconnect, Request
from starlette.responses import JSONResponse, PlainTextResponse, Response
from starlette.routing import Route
from uvicorn.protocols.http.h11_impl import H11Protocol

from bot.foundation import log
from bot.foundation.clock import Clock
from bot.foundation.metrics import Metrics
from bot.process.intake import Answers, Keep
from bot.transports import salvage
from bot.transports.telegram import Batch

SECRET_HEADER = "X-Telegram-Bot-Api-Secret-Token"
HEAD_WITHIN = 10.0  # seconds for a connection to say what it wants, from its beginning or its last answer
BODY_WITHIN = 10.0  # seconds for a body
STOP_WITHIN = 5  # seconds from being told to stop until what is open is cut off
MOST_BYTES = 1_048_576  # an update is a few kilobytes; the platform's longest message is far below this

Probe = Callable[[], Awaitable[bool]]

_log = log.get("web")


class UpdateReader(Protocol):
    """The transport as the webhook needs it: parsing raw updates."""

    def read(self, raw: list[Any], now: datetime, confirmed: int | None = None, body: bytes | None = None) -> Batch: ...


class Webhook:
    """Receives pushed updates under the same rule as polling: commit first, then confirm."""

    def __init__(
        self, secret: str, reader: UpdateReader, keep: Keep, answers: Answers, clock: Clock, metrics: Metrics
    ) -> None:
        self._secret = secret.encode()
        self._reader = reader
        self._keep = keep
        self.answers = answers
        self._clock = clock
        self._metrics = metrics

    async def __call__(self, request: Request) -> Response:
        given = request.headers.get(SECRET_HEADER, "").encode()
        if not hmac.compare_digest(given, self._secret):
            return PlainTextResponse("who are you?", 401)
        try:
            async with asyncio.timeout(BODY_WITHIN):
                body = await _body(request)
        except ClientDisconnect:
            return Response(status_code=400)
        except TimeoutError:
            return PlainTextResponse("too slow", 408, {"Connection": "close"})
        given = salvage.read(body) if len(body) <= MOST_BYTES else salvage.Broken(body)
        batch = self._reader.read([given], self._clock.now(), body=body)
        try:
            if batch.events or batch.aside:
                await self._keep(batch.events, batch.aside)
        except Exception:
            _log.exception("an update could not be stored")
            return PlainTextResponse("not kept, send it again", 503)
        self.answers.give(batch.events)
        self._metrics.updates.labels("webhook").inc()
        self._metrics.unread.inc(len(batch.aside))
        return Response(status_code=200)


class HttpServer:
    """uvicorn as one part among others; the process, not uvicorn, handles signals."""

    def __init__(
        self, app: Starlette, host: str, port: int, finish: Callable[[], Awaitable[None]] | None = None
    ) -> None:
        self._app = app
        self._host = host
        self._port = port
        self._finish = finish
        self.listening = asyncio.Event()

    async def run(self, stopping: asyncio.Event) -> None:
        """Serve until `stopping`; then answer open requests, and `finish`."""
        options = uvicorn.Config(
            self._app,
            host=self._host,
            port=self._port,
            log_config=None,
            access_log=False,
            lifespan="off",
            server_header=False,
            timeout_graceful_shutdown=STOP_WITHIN,
            timeout_keep_alive=75,
            h11_max_incomplete_event_size=16_384,
            http=_Impatient,
            ws="none",
        )
        server = _Quiet(options, self.listening)
        serving = asyncio.create_task(server.serve())
        stopped = asyncio.create_task(stopping.wait())
        await asyncio.wait((serving, stopped), return_when=asyncio.FIRST_COMPLETED)
        server.should_exit = True
        stopped.cancel()
        await serving
        if self._finish is not None:
            await self._finish()


class _Impatient(H11Protocol):
    """Hangs up on whoever does not say what they want. uvicorn itself waits for ever for the first line."""

    _hang_up: asyncio.TimerHandle | None = None

    def connection_made(self, transport: asyncio.Transport) -> None:  # type: ignore[override]
        super().connection_made(transport)
        self._wait_for_a_request()

    def data_received(self, data: bytes) -> None:
        super().data_received(data)
        if self.cycle is not None and not self.cycle.response_complete:  # one is being answered
            self._wait_no_longer()
        elif self._hang_up is None and not self.transport.is_closing():
            self._wait_for_a_request()

    def on_response_complete(self) -> None:
        super().on_response_complete()
        self._wait_no_longer()  # from here on uvicorn counts, until there is something of the next request
        if self.conn.trailing_data[0] and (self.cycle is None or self.cycle.response_complete):
            self._wait_for_a_request()

    def connection_lost(self, exc: Exception | None) -> None:
        self._wait_no_longer()
        super().connection_lost(exc)

    def _wait_for_a_request(self) -> None:
        self._hang_up = self.loop.call_later(HEAD_WITHIN, self.transport.abort)

    def _wait_no_longer(self) -> None:
        if self._hang_up is not None:
            self._hang_up.cancel()
            self._hang_up = None


class _Quiet(uvicorn.Server):
    """Leaves signals to the process, and says when it listens."""

    def __init__(self, options: uvicorn.Config, listening: asyncio.Event) -> None:
        super().__init__(options)
        self._listening = listening

    async def startup(self, sockets: list[socket.socket] | None = None) -> None:
        await super().startup(sockets)
        self._listening.set()

    @contextmanager
    def capture_signals(self) -> Iterator[None]:
        yield


async def _body(request: Request) -> bytes:
    """Return the body, of one that is too long no more than its beginning."""
    body = bytearray()
    async for piece in request.stream():
        body += piece
        if len(body) > MOST_BYTES:
            break
    return bytes(body)


def updates_only(webhook: Webhook, path: str) -> Starlette:
    """Return the application that takes updates, and nothing else."""
    return Starlette(routes=[Route(path, webhook.__call__, methods=["POST"])])


def application(
    probes: Mapping[str, Probe],
    metrics: Metrics,
    webhook: Webhook | None = None,
    path: str = "/updates",
    look: Callable[[], Awaitable[None]] | None = None,
) -> Starlette:
    """Return the application that says how it is doing, and takes updates if there is a `webhook`. `probes` are asked
    by /readyz, by name; `look` brings the metrics up to date."""

    async def healthz(_: Request) -> Response:
        return PlainTextResponse("ok")

    async def readyz(_: Request) -> Response:
        found = {name: await probe() for name, probe in probes.items()}
        return JSONResponse(found, 200 if all(found.values()) else 503)

    async def show_metrics(_: Request) -> Response:
        if look is not None:
            await look()
        return Response(metrics.text(), media_type="text/plain; version=0.0.4; charset=utf-8")

    routes = [
        Route("/healthz", healthz),
        Route("/readyz", readyz),
        Route("/metrics", show_metrics),
    ]
    if webhook is not None:
        routes.append(Route(path, webhook.__call__, methods=["POST"]))
    return Starlette(routes=routes)
