"""The web application, on loopback: pages to look at, forms to act by, and a stream that only says when to look again.

* Host and Origin are checked: no page from elsewhere can act here, or read, whatever it makes of our address.
* Nothing is fetched from anywhere but here, and no script or style runs that is not a file of ours.
* The stream ends before the server stops, so an open page does not hold it up.
"""

from __future__ import annotations

import asyncio
import json
import signal
import socket
from collections.abc import AsyncIterator, Awaitable, Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from urllib.parse import parse_qsl

import uvicorn
from starlette.applications import Starlette
from starlette.requests import Request
from starlette.responses import HTMLResponse, PlainTextResponse, Response, StreamingResponse
from starlette.routing import Mount, Route
from starlette.staticfiles import StaticFiles
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from demo.rehearsal import acts
from demo.rehearsal.page import Page
from demo.rehearsal.practices import SEASON, practice
from demo.rehearsal.stage import CannotDo, CannotRead, Stage
from demo.tape import read

MOST_BYTES = 2_000_000  # of a form: a tape of some ten thousand lines
STILL_HERE_EVERY = 20.0  # seconds without anything to look at
_HEADERS = (
    (
        b"content-security-policy",
        b"default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; "
        b"form-action 'self'; base-uri 'none'; frame-ancestors 'none'",
    ),
    (b"x-content-type-options", b"nosniff"),
    (b"referrer-policy", b"no-referrer"),
    (b"cross-origin-resource-policy", b"same-origin"),
    (b"cross-origin-opener-policy", b"same-origin"),
    (b"cache-control", b"no-store"),
)


class OnlyFromHere:
    """Answers only pages of our own. hosts: how we are called, with the port."""

    def __init__(self, app: ASGIApp, hosts: tuple[str, ...]) -> None:
        self._app = app
        self._hosts = frozenset(host.encode() for host in hosts)
        self._origins = frozenset(f"http://{host}".encode() for host in hosts)

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] != "http":
            await self._app(scope, receive, send)
            return

        async def guarded(message: Message) -> None:
            if message["type"] == "http.response.start":
                message["headers"] = [*message["headers"], *_HEADERS]
            await send(message)

        headers = dict(scope["headers"])
        origin = headers.get(b"origin")
        acting = scope["method"] not in ("GET", "HEAD")
        if headers.get(b"host") not in self._hosts:
            refusal = "This page is called by another name."
        elif origin not in self._origins and (acting or origin is not None):
            refusal = "Only this page itself can do that."
        else:
            await self._app(scope, receive, guarded)
            return
        await PlainTextResponse(refusal, 403)(scope, receive, guarded)


class Rehearsal:
    """The pages of one stage. `stopping` ends the streams."""

    def __init__(self, stage: Stage) -> None:
        self._stage = stage
        self._page = Page(stage)
        self._opening: asyncio.Task[None] | None = None
        self.stopping = False

    def application(self, hosts: tuple[str, ...]) -> ASGIApp:
        routes = [
            Route("/", self._whole),
            Route("/top", self._top),
            Route("/column/{key}", self._column),
            Route("/knows/{key}", self._knows),
            Route("/content/{key}/{number:int}", self._content),
            Route("/looks", self._looks),
            Route("/tape", self._tape),
            Route("/act/{act}", self._act, methods=["POST"]),
            Route("/clock", self._clock, methods=["POST"]),
            Route("/open", self._open, methods=["POST"]),
            Mount("/static", StaticFiles(directory=Path(__file__).with_name("static"))),
        ]
        return OnlyFromHere(
            Starlette(routes=routes, exception_handlers={CannotDo: _cannot, CannotRead: _cannot}), hosts
        )

    async def begin(self, text: str) -> None:
        """Begin with a tape, and play it while the page already answers.

        Raises: CannotRead; CannotDo while another one is being opened.
        """
        if self._opening is not None and not self._opening.done():
            raise CannotDo("another tape is being played to its end; wait a moment")
        read(text)
        self._opening = asyncio.create_task(self._stage.open(text))
        await asyncio.sleep(0)

    async def end(self) -> None:
        """Stop the streams and what is being played."""
        self.stopping = True
        self._stage.signal.bump()
        if self._opening is not None:
            self._opening.cancel()
            await asyncio.gather(self._opening, return_exceptions=True)
        await self._stage.close()

    # --- looking ------------------------------------------------------------------------------------------------

    async def _whole(self, request: Request) -> Response:
        version = self._stage.signal.version
        return HTMLResponse(await self._page.whole(request.query_params.get("only", ""), version))

    async def _top(self, request: Request) -> Response:
        return HTMLResponse(self._page.top())

    async def _column(self, request: Request) -> Response:
        person = self._stage.find(request.path_params["key"])
        return HTMLResponse(await self._page.one_column(person, "all" in request.query_params))

    async def _knows(self, request: Request) -> Response:
        return HTMLResponse(await self._page.knows(self._stage.find(request.path_params["key"])))

    async def _content(self, request: Request) -> Response:
        """A picture or a document the bot sent."""
        person, number = self._stage.find(request.path_params["key"]), request.path_params["number"]
        for message in await self._stage.messages(person):
            if message.message_id == number and message.from_bot and message.content is not None:
                if message.kind == "photo":
                    return Response(message.content, media_type="image/png")
                name = "".join(c for c in message.filename or "file" if c.isalnum() or c in "._-")
                headers = {"Content-Disposition": f'attachment; filename="{name}"'}
                return Response(message.content, headers=headers, media_type="application/octet-stream")
        return PlainTextResponse("There is nothing like that here.", 404)

    async def _tape(self, request: Request) -> Response:
        headers = {"Content-Disposition": 'attachment; filename="rehearsal.tape"'}
        return Response(self._stage.tape, headers=headers, media_type="text/plain; charset=utf-8")

    async def _looks(self, request: Request) -> Response:
        given = request.headers.get("Last-Event-ID") or request.query_params.get("since", "0")
        since = int(given) if given.isdigit() else 0
        return StreamingResponse(self._stream(min(since, self._stage.signal.version)), media_type="text/event-stream")

    async def _stream(self, since: int) -> AsyncIterator[str]:
        yield "retry: 1000\n\n"
        while not self.stopping:
            version = await self._stage.signal.beyond(since, STILL_HERE_EVERY)
            if version == since:
                yield ": still here\n\n"
                continue
            changed = [p.key for name, p in self._stage.people.items() if self._stage.versions.get(name, 0) > since]
            look = {"run": self._stage.run, "changed": changed}
            yield f"id: {version}\nevent: look\ndata: {json.dumps(look)}\n\n"
            since = version

    # --- acting -------------------------------------------------------------------------------------------------

    async def _act(self, request: Request) -> Response:
        fields, act = await _form(request), request.path_params["act"]
        self._check_idle()
        await self._stage.do(lambda: acts.lines(act, fields, self._stage), _run(fields))
        return Response(status_code=204)

    async def _clock(self, request: Request) -> Response:
        fields = await _form(request)
        self._check_idle()
        await self._stage.go(fields.get("by", ""), _run(fields))
        return Response(status_code=204)

    def _check_idle(self) -> None:
        if self._stage.playing is not None:
            raise CannotDo("a tape is being played to its end; wait a moment")

    async def _open(self, request: Request) -> Response:
        fields = await _form(request)
        name, language = fields.get("practice", ""), fields.get("language", "en")
        if name == "tape":
            text = fields.get("tape", "")
            if not text.strip():
                raise CannotDo("choose a file with a tape first")
        elif name == "season":
            text = SEASON.read_text(encoding="utf-8")
        else:
            try:
                text = practice(name, language)
            except KeyError:
                raise CannotDo("there is no practice like that") from None
        await self.begin(text)
        return Response(status_code=204)


def _run(fields: acts.Fields) -> int | None:
    given = fields.get("run", "")
    return int(given) if given.isdigit() else None


async def _cannot(request: Request, error: Exception) -> Response:
    """Say in a sentence why something was not done."""
    said = error.wrong if isinstance(error, CannotRead) else str(error)
    return PlainTextResponse(said[:1].upper() + said[1:] + ("" if said.endswith((".", "?")) else "."), 409)


async def _form(request: Request) -> dict[str, str]:
    """Return the fields of a form that was sent as a page's forms are."""
    body = bytearray()
    async for piece in request.stream():
        body += piece
        if len(body) > MOST_BYTES:
            raise CannotDo("that is too long")
    return dict(parse_qsl(body.decode("utf-8", "replace"), keep_blank_values=True))


# --- serving --------------------------------------------------------------------------------------------------------


class _SignalsAreOurs(uvicorn.Server):
    """Signals are ours to handle: the streams must end first."""

    @contextmanager
    def capture_signals(self) -> Iterator[None]:
        yield


async def serve(stage: Stage, tape: str, port: int, ready: Callable[[str], None], stop: asyncio.Event) -> None:
    """Serve the page on loopback until `stop` is set. ready: called with its address. port: 0 for a free one.

    Raises: CannotRead for a tape that cannot be read; OSError when the port is taken.
    """
    with socket.socket(socket.AF_INET, socket.SOCK_STREAM) as listening:
        listening.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        listening.bind(("127.0.0.1", port))
        listening.listen()  # who comes before the server is ready waits, rather than being refused
        number = listening.getsockname()[1]
        rehearsal = Rehearsal(stage)
        app = rehearsal.application((f"127.0.0.1:{number}", f"localhost:{number}"))
        options = uvicorn.Config(
            app, log_config=None, access_log=False, lifespan="off", server_header=False, timeout_graceful_shutdown=5
        )
        server = _SignalsAreOurs(options)
        serving: asyncio.Task[None] | None = None
        try:
            await rehearsal.begin(tape)
            serving = asyncio.create_task(server.serve(sockets=[listening]))
            ready(f"http://127.0.0.1:{number}/")
            await _first(serving, stop.wait())
        finally:
            await rehearsal.end()
            server.should_exit = True
            if serving is not None:
                await serving


async def _first(serving: asyncio.Task[None], stopped: Awaitable[object]) -> None:
    """Return when either is done."""
    waiting = asyncio.ensure_future(stopped)
    await asyncio.wait((serving, waiting), return_when=asyncio.FIRST_COMPLETED)
    waiting.cancel()


def run(tape: str, port: int, ready: Callable[[str], None]) -> None:
    """Serve until the process is told to end."""

    async def until_told() -> None:
        stop = asyncio.Event()
        loop = asyncio.get_running_loop()
        for number in (signal.SIGINT, signal.SIGTERM):
            loop.add_signal_handler(number, stop.set)
        await serve(Stage(), tape, port, ready, stop)

    asyncio.run(until_told())
