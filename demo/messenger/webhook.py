"""Push updates to the bot's web server, as set with `setWebhook`.

Updates of one lane (a chat's messages; one person's button presses) are sent one at a time in order, lanes
concurrently. Anything but a 2xx answer is retried: at once, then with exponential back-off, or after the answer's
Retry-After; until the update expires. A 2xx answer may carry one method call in its body. Nothing beyond loopback is
ever called; there, plain HTTP is allowed, which the platform would refuse.
"""

import asyncio
import re
from collections import deque
from collections.abc import Callable
from typing import Any
from urllib.parse import urlsplit

import aiohttp

from demo.messenger.checks import Params
from demo.messenger.refusals import Refused, bad_request
from demo.messenger.update import Update
from demo.messenger.updates import UpdateQueue

MAX_RETRY_AFTER = 3600
_LOOPBACK = ("127.0.0.1", "localhost", "::1")
_BODYLESS = re.compile(r"get|setwebhook|deletewebhook|close|logout", re.IGNORECASE)


def take_allowed_updates(params: Params, queue: UpdateQueue) -> None:
    """Set the kinds of updates the bot gets from now on; unchanged if absent, the default if empty."""
    kinds = params.structure("allowed_updates", "allowed updates")
    if kinds is None:
        return
    if not isinstance(kinds, list) or not all(isinstance(kind, str) for kind in kinds):
        raise bad_request("can't parse allowed updates: expected an Array of String")
    queue.allowed = frozenset(kinds) if kinds else None


class MessengerWebhook:
    """The webhook and its three methods.

    `first_delay` seconds before the second repeat (the first is at once), doubling up to `longest_delay`.
    """

    def __init__(
        self,
        queue: UpdateQueue,
        now: Callable[[], int],
        call: Callable[[str, Params], Any],
        *,
        first_delay: float = 1.0,
        longest_delay: float = 60.0,
    ) -> None:
        self._queue = queue
        self._now = now
        self._call = call
        self._first_delay = first_delay
        self._longest_delay = longest_delay
        self._url = ""
        self._secret: str | None = None
        self._slots = asyncio.Semaphore(40)
        self._max_connections = 40
        self._lanes: dict[tuple[str, int], deque[Update]] = {}
        self._tasks: set[asyncio.Task[None]] = set()
        self._session: aiohttp.ClientSession | None = None
        self._last_error: tuple[int, str] | None = None
        self.methods: dict[str, Callable[[Params], Any]] = {
            "setwebhook": self.set,
            "deletewebhook": self.delete,
            "getwebhookinfo": self.info,
        }

    def set(self, params: Params) -> bool:
        url = params.text("url") or ""
        if not url:
            return self.delete(params)
        parts = urlsplit(url)
        local = parts.hostname in _LOOPBACK
        if parts.scheme != "https" and not (parts.scheme == "http" and local):
            raise bad_request("bad webhook: An HTTPS URL must be provided for webhook")
        if not local:
            raise bad_request("bad webhook: Failed to resolve host: Name or service not known")
        secret = params.text("secret_token") or None
        if secret is not None and not re.fullmatch(r"[A-Za-z0-9_-]{1,256}", secret):
            raise bad_request("secret token contains unallowed characters")
        connections = params.integer("max_connections", 40)
        if not 1 <= connections <= 100:
            raise bad_request("max_connections must be between 1 and 100")
        take_allowed_updates(params, self._queue)
        self._stop()
        if params.boolean("drop_pending_updates"):
            self._queue.drop_all()
        self._url, self._secret = url, secret
        self._max_connections = connections
        self._slots = asyncio.Semaphore(connections)
        self._queue.end_poll("terminated by setWebhook request")
        self._queue.webhook_set = True
        self._queue.on_arrival = self._arrive
        for update in self._queue.pending.values():
            self._arrive(update)
        return True

    def delete(self, params: Params) -> bool:
        self._stop()
        self._url, self._last_error = "", None
        self._queue.webhook_set = False
        self._queue.on_arrival = None
        if params.boolean("drop_pending_updates"):
            self._queue.drop_all()
        return True

    def info(self, params: Params) -> dict[str, Any]:
        result: dict[str, Any] = {
            "url": self._url,
            "has_custom_certificate": False,
            "pending_update_count": self._queue.unconfirmed,
        }
        if self._url:
            result["max_connections"] = self._max_connections
        if self._last_error:
            result["last_error_date"], result["last_error_message"] = self._last_error
        if self._queue.allowed is not None:
            result["allowed_updates"] = sorted(self._queue.allowed)
        return result

    async def close(self) -> None:
        tasks = list(self._tasks)
        self._stop()
        await asyncio.gather(*tasks, return_exceptions=True)
        if self._session is not None:
            await self._session.close()

    def _stop(self) -> None:
        for task in self._tasks:
            task.cancel()
        self._tasks.clear()
        self._lanes.clear()

    def _arrive(self, update: Update) -> None:
        lane = self._lanes.get(update.lane)
        if lane is not None:
            lane.append(update)
            return
        lane = self._lanes[update.lane] = deque([update])
        task = asyncio.get_running_loop().create_task(self._work(update.lane, lane))
        self._tasks.add(task)
        task.add_done_callback(self._tasks.discard)

    async def _work(self, name: tuple[str, int], lane: deque[Update]) -> None:
        while lane:
            await self._deliver(lane[0])
            lane.popleft()
        if self._lanes.get(name) is lane:
            del self._lanes[name]

    async def _deliver(self, update: Update) -> None:
        failures = 0
        while True:
            if update.expires <= self._now():
                self._queue.drop_expired()
                return
            async with self._slots:
                wait = await self._post(update)
            if wait is None:
                self._queue.confirm(update)
                return
            failures += 1
            if wait == 0 and failures > 1:
                wait = min(self._first_delay * 2 ** (failures - 2), self._longest_delay)
            await asyncio.sleep(wait)

    async def _post(self, update: Update) -> float | None:
        """Send once. Returns None if accepted, else the seconds the bot asked us to wait (0: none)."""
        if self._session is None:
            connector = aiohttp.TCPConnector(limit=0, ssl=False)
            self._session = aiohttp.ClientSession(connector=connector)
        headers = {"X-Telegram-Bot-Api-Secret-Token": self._secret} if self._secret else {}
        try:
            async with self._session.post(
                self._url, json=update.wire(), headers=headers, allow_redirects=False
            ) as response:
                if 200 <= response.status < 300:
                    await self._call_in(response)
                    return None
                self._last_error = (
                    self._now(),
                    f"Wrong response from the webhook: {response.status} {response.reason}",
                )
                asked = response.headers.get("Retry-After", "")
                return float(min(int(asked), MAX_RETRY_AFTER)) if asked.isdecimal() else 0.0
        except (aiohttp.ClientError, OSError, TimeoutError) as error:
            self._last_error = (self._now(), f"Connection failed: {type(error).__name__}")
            return 0.0

    async def _call_in(self, response: aiohttp.ClientResponse) -> None:
        """Execute the method call in an answer's body, if any; its result is discarded."""
        if response.content_type != "application/json":
            return
        try:
            body = await response.json()
        except ValueError:
            return
        method = body.pop("method", None) if isinstance(body, dict) else None
        if isinstance(method, str) and not _BODYLESS.match(method):
            try:
                self._call(method, Params(body))
            except Refused as refusal:
                self._last_error = (self._now(), refusal.description)
