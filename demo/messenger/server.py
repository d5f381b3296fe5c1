"""The loopback HTTP server: requests in all four encodings, faults, long polls, files, control."""

import asyncio
import json
import re
import socket
import struct
from collections import Counter
from collections.abc import Awaitable, Callable
from datetime import UTC, datetime
from typing import Any, Self
from urllib.parse import parse_qsl, unquote

from aiohttp import web

from demo.messenger.api import BotApi
from demo.messenger.chats import Clock, World
from demo.messenger.checks import Params, Upload
from demo.messenger.faults import Fault, Faults
from demo.messenger.flood import Flood
from demo.messenger.hands import Hands
from demo.messenger.people import People
from demo.messenger.presses import Presses
from demo.messenger.refusals import CannotDo, Refused, bad_request, too_many_requests
from demo.messenger.seen import SeenMessage, pack, unpack
from demo.messenger.signal import Signal
from demo.messenger.updates import UpdateQueue
from demo.messenger.webhook import MessengerWebhook, take_allowed_updates

DEFAULT_TOKEN = "4242:loopback-token-that-opens-nothing-00"
MAX_BODY = 60 * 1024 * 1024
MAX_POLL = 50
_TOKEN = re.compile(r"[0-9]+:[A-Za-z0-9_-]+")
_LINGER_NOT = struct.pack("ii", 1, 0)


def wall_clock() -> datetime:
    """The machine's time in UTC, the messenger's default clock."""
    return datetime.now(UTC)  # noqa: TID251 (a platform has its own clock)


class Messenger(Hands):
    """The messenger in this process: `async with Messenger() as messenger`.

    Args:
        token: the bot's token; requests with another are refused.
        clock: dates messages and ages updates and presses; flood limits have their own (see `Flood`).
        flood: limits on sending; None is `Flood()`, the platform's limits.
        faults: seeded faults; None is none.
        port: 0 takes a free one.
        bot_username: without `@`.
        webhook_first_delay, webhook_longest_delay: seconds between repeats of a failing webhook call.
    """

    def __init__(
        self,
        *,
        token: str = DEFAULT_TOKEN,
        clock: Clock = wall_clock,
        flood: Flood | None = None,
        faults: Faults | None = None,
        port: int = 0,
        bot_username: str = "local_test_bot",
        webhook_first_delay: float = 1.0,
        webhook_longest_delay: float = 60.0,
    ) -> None:
        if not _TOKEN.fullmatch(token):
            raise ValueError("a token is digits, a colon, then letters, digits, _ and -")
        self.token = token
        self.flood = flood or Flood()
        self.faults = faults or Faults()
        self.requests: Counter[str] = Counter()
        self.codes: Counter[int] = Counter()
        self._given_clock = clock
        self._held_now: datetime | None = None
        self._port = port
        self._in_flight = 0
        self._runner: web.ServerRunner | None = None
        signal = self._signal = Signal()
        self.world = World(int(token.partition(":")[0]), bot_username, self._clock, signal)
        self.queue = UpdateQueue(self.world.now, signal, self.faults)
        presses = Presses(self.world.now)
        self.people = People(self.world, self.queue, presses)
        self.api = BotApi(self.world, self.people, presses, self.flood)
        self._webhook = MessengerWebhook(
            self.queue,
            self.world.now,
            self.api.call,
            first_delay=webhook_first_delay,
            longest_delay=webhook_longest_delay,
        )
        self.api.methods |= self._webhook.methods
        self._waits: dict[str, Callable[..., Awaitable[Any]]] = {
            "changed": signal.beyond,
            "wait_for_messages": self._wait_for_messages,
            "wait_for_mark": self._wait_for_mark,
            "settled": self._wait_until_settled,
        }
        self._acts: dict[str, Callable[..., Any]] = {
            "add_fault": self._add_fault,
            "clear_faults": self._clear_faults,
            "set_flood": self._set_flood,
            "reset_counts": self._reset_counts,
            "figures": self._figures,
            "set_now": self._set_now,
            "menu": self._menu,
        }
        for name in dir(self.people):
            if not name.startswith("_") and name != "bot_leaves":
                self._acts[name] = getattr(self.people, name)

    def _clock(self) -> datetime:
        return self._held_now or self._given_clock()

    async def start(self) -> Self:
        """Listen on loopback; `base_url` and `base_file_url` are known from then on."""
        server = web.Server(self._handle, request_factory=_request, handler_cancellation=True, access_log=None)
        self._runner = web.ServerRunner(server, shutdown_timeout=0.05)
        await self._runner.setup()
        site = web.TCPSite(self._runner, "127.0.0.1", self._port, backlog=1024)
        await site.start()
        self._port = self._runner.addresses[0][1]
        self.url = f"http://127.0.0.1:{self._port}"
        self.base_url = f"{self.url}/bot"
        self.base_file_url = f"{self.url}/file/bot"
        return self

    async def stop(self) -> None:
        """End polls and pushes and close the port; messages stay readable."""
        self.queue.end_poll("terminated by other getUpdates request; the messenger stops")
        await self._webhook.close()
        if self._runner is not None:
            await self._runner.cleanup()

    async def __aenter__(self) -> Self:
        return await self.start()

    async def __aexit__(self, *_: object) -> None:
        await self.stop()

    # The bot's requests.

    async def _handle(self, request: web.BaseRequest) -> web.StreamResponse:
        if not self._is_local(request):
            return _refusal(Refused(403, "Forbidden: no page of a browser has anything to ask here"))
        path, _, query = request.raw_path.partition("?")
        if path.startswith("/bot"):
            token, _, method = unquote(path[4:]).partition("/")
            if token == self.token:
                return await self._answer(request, method.lower(), query)
            return _refusal(_wrong_token(token))
        if path == "/control" and request.method == "POST":
            return await self._control(request)
        if path.startswith("/file/bot"):
            return self._file(unquote(path[9:]))
        return _refusal(Refused(404, "Not Found"))

    def _is_local(self, request: web.BaseRequest) -> bool:
        """Whether this comes from a program on this machine. Pages in its browser can reach loopback too: they are
        recognised by their Origin header, or by a DNS name for this address."""
        return "Origin" not in request.headers and request.host in (
            f"127.0.0.1:{self._port}",
            f"localhost:{self._port}",
        )

    async def _answer(self, request: web.BaseRequest, method: str, query: str) -> web.StreamResponse:
        self.requests[method] += 1
        polling = method == "getupdates"
        if not polling:
            self._in_flight += 1
        try:
            faults = self.faults.for_request(method)
            params = await _parameters(request, query)
            if faults:
                broken = await self._before(request, faults)
                if broken is not None:
                    return broken
            if polling:
                result = await self._get_updates(params)
            else:
                result = self.api.call(method, params)
            self.codes[200] += 1
            response = _ok(result)
            return await self._after(request, faults, response) if faults else response
        except Refused as refusal:
            self.codes[refusal.code] += 1
            return _refusal(refusal)
        finally:
            if not polling:
                self._in_flight -= 1
                if not self._in_flight:
                    self._signal.bump()

    async def _get_updates(self, params: Params) -> list[dict[str, Any]]:
        offset, limit = params.integer("offset", 0), params.integer("limit", 100)
        timeout = min(max(params.integer("timeout", 0), 0), MAX_POLL)
        take_allowed_updates(params, self.queue)
        limit = limit if 1 <= limit <= 100 else 100
        return [update.wire() for update in await self.queue.get(offset, limit, timeout)]

    async def _before(self, request: web.BaseRequest, faults: list[Fault]) -> web.StreamResponse | None:
        """Apply the faults that prevent a request from being executed."""
        for fault in faults:
            match fault.kind:
                case "server_error":
                    code = int(fault.detail.get("code", 502))
                    self.codes[code] += 1
                    return web.Response(status=code, text="<html>Bad Gateway</html>", content_type="text/html")
                case "reset":
                    return _reset(request)
                case "too_many":
                    self.flood.refused += 1
                    raise too_many_requests(int(fault.detail.get("retry_after", 1)))
                case "silence":
                    self._signal.bump()
                    await asyncio.Event().wait()  # ends when the client disconnects
        return None

    async def _after(
        self, request: web.BaseRequest, faults: list[Fault], response: web.StreamResponse
    ) -> web.StreamResponse:
        """Apply the faults that suppress the answer to an executed request."""
        for fault in faults:
            if fault.kind == "lost_answer":
                return _reset(request)
            if fault.kind == "delay":
                await asyncio.sleep(fault.detail.get("ms", 50) / 1000)
        return response

    def _file(self, path: str) -> web.StreamResponse:
        token, _, name = path.partition("/")
        if token != self.token:
            return _refusal(_wrong_token(token))
        match = re.fullmatch(r"files/([^/]+)/[^/]+", name)
        file = self.world.files.get(match.group(1)) if match else None
        if file is None:
            return _refusal(Refused(404, "Not Found"))
        return web.Response(body=file.content, content_type="application/octet-stream")

    # The drivers' requests.

    async def do(self, act: str, /, **arguments: Any) -> Any:
        wait = self._waits.get(act)
        if wait is not None:
            return await wait(**arguments)
        if act == "many":
            return [self._act(name, given) for name, given in arguments["acts"]]
        return self._act(act, arguments)

    def _act(self, act: str, arguments: dict[str, Any]) -> Any:
        function = self._acts.get(act)
        if function is None:
            raise CannotDo(f"there is no act {act!r}")
        return function(**arguments)

    async def _control(self, request: web.BaseRequest) -> web.StreamResponse:
        asked = json.loads(await request.read(), object_hook=unpack)
        try:
            result = await self.do(asked["act"], **asked["arguments"])
            body, status = {"result": result}, 200
        except (CannotDo, TimeoutError, TypeError, ValueError) as error:
            body, status = {"error": str(error), "kind": type(error).__name__}, 400
        return web.Response(body=json.dumps(body, default=pack), status=status, content_type="application/json")

    async def _until(self, true: Callable[[], bool], timeout: float) -> None:
        async with asyncio.timeout(timeout):
            while not true():
                await self._signal.beyond(self._signal.version, timeout)

    async def _wait_for_messages(
        self, user: int, count: int, after: int, chat: int | None, timeout: float
    ) -> list[SeenMessage]:
        room = user if chat is None else chat
        self.people.action(user, chat=chat)  # checks that they may look at all

        def found() -> list[SeenMessage]:
            return [message for message in self.people.sent(after=after) if message.chat == room]

        await self._until(lambda: len(found()) >= count, timeout)
        return found()

    async def _wait_for_mark(self, seq: int, timeout: float) -> None:
        await self._until(lambda: self.people.mark() >= seq, timeout)

    async def _wait_until_settled(self, timeout: float) -> None:
        await self._until(lambda: self.queue.unconfirmed == 0 and self._in_flight == 0, timeout)

    def _add_fault(self, kind: str, **settings: Any) -> None:
        self.faults.add(kind, **settings)

    def _clear_faults(self) -> None:
        self.faults.clear()
        self.queue.release_late()

    def _set_flood(self, **settings: Any) -> None:
        for name, value in settings.items():
            if name not in ("enabled", "per_chat", "burst", "per_group", "overall"):
                raise ValueError(f"flood has no setting {name!r}")
            setattr(self.flood, name, value)

    def _reset_counts(self) -> None:
        self.flood.reset_counts()
        self.requests.clear()
        self.codes.clear()

    def _figures(self) -> dict[str, Any]:
        return {
            "accepted": self.flood.accepted,
            "refused_by_flood": self.flood.refused,
            "highest_per_second": self.flood.highest_per_second,
            "unconfirmed": self.queue.unconfirmed,
            "in_flight": self._in_flight,
            "polling": self.queue.polled,
            "requests": dict(self.requests),
            "answers": {str(code): count for code, count in self.codes.items()},
            "struck": dict(self.faults.struck),
        }

    def _set_now(self, now: datetime | None) -> None:
        self._held_now = now

    def _menu(self, user: int, chat: int | None) -> list[dict[str, str]]:
        person = self.world.people.get(user)
        if person is None:
            raise CannotDo(f"nobody has the id {user}")
        return self.api.menus.shown(user, chat or user, person.language_code)


def _request(message: Any, payload: Any, protocol: Any, writer: Any, task: Any) -> web.BaseRequest:
    loop = asyncio.get_running_loop()
    return web.BaseRequest(message, payload, protocol, writer, task, loop, client_max_size=MAX_BODY)


async def _parameters(request: web.BaseRequest, query: str) -> Params:
    """The request's parameters, in any of the four encodings."""
    values: dict[str, Any] = dict(parse_qsl(query, keep_blank_values=True)) if query else {}
    if request.method != "POST":
        return Params(values)
    kind = request.headers.get("Content-Type", "")
    if kind.startswith("application/json"):
        body = await request.read()
        try:
            given = json.loads(body) if body else {}
        except ValueError:
            raise bad_request("can't parse request: JSON expected") from None
        if not isinstance(given, dict):
            raise bad_request("can't parse request: JSON object expected")
        return Params({**values, **given} if values else given)
    if kind.startswith("application/x-www-form-urlencoded"):
        body = await request.read()
        values |= parse_qsl(body.decode(), keep_blank_values=True)
        return Params(values)
    if not kind.startswith("multipart/form-data"):
        return Params(values)
    files: dict[str, Upload] = {}
    for name, value in (await request.post()).items():
        if isinstance(value, web.FileField):
            with value.file as opened:
                files[name] = Upload(value.filename, opened.read(), value.content_type)
        else:
            values[name] = value
    return Params(values, files)


def _ok(result: Any) -> web.Response:
    body = json.dumps({"ok": True, "result": result}).encode()
    return web.Response(body=body, content_type="application/json")


def _refusal(refusal: Refused) -> web.Response:
    answer: dict[str, Any] = {"ok": False, "error_code": refusal.code, "description": refusal.description}
    if refusal.parameters:
        answer["parameters"] = refusal.parameters
    return web.Response(body=json.dumps(answer).encode(), status=refusal.code, content_type="application/json")


def _wrong_token(token: str) -> Refused:
    return Refused(401, "Unauthorized") if _TOKEN.fullmatch(token) else Refused(404, "Not Found")


def _reset(request: web.BaseRequest) -> web.Response:
    """Break the connection so that the client sees a reset, not an orderly close."""
    transport = request.transport
    if transport is not None:
        connection = transport.get_extra_info("socket")
        connection.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, _LINGER_NOT)
        transport.abort()
    return web.Response()
