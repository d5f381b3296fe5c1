"""The chat library's HTTP client over aiohttp, through its extension point, `telegram.request.BaseRequest`.

The library's own client rescans its whole pool on every event and slows down with concurrency; aiohttp does not.
`tests/bench` measures both on the same server.

* JSON for plain calls, multipart with files; HTTP/1.1, connections kept open.
* No request is retried here: `bot.foundation.retry` decides whether a message without an answer may be sent again.
* No error contains the URL, which includes the token, or a response body, which includes what people wrote.
"""

from __future__ import annotations

import io
import json
from typing import Any

import aiohttp
from telegram.error import NetworkError, TelegramError, TimedOut
from telegram.request import BaseRequest, RequestData

from bot.transports import salvage

KEEP_ALIVE = 25.0  # seconds; shorter than the platform's: we rarely write on a connection it has closed
_JSON = {"Content-Type": "application/json"}
_UNSAID: Any = BaseRequest.DEFAULT_NONE  # what the library hands over where a caller says nothing of a timeout


class AiohttpRequest(BaseRequest):
    """One pool of at most `pool_size` connections. Timeouts are in seconds, None for none.

    connect_timeout covers waiting for a free connection and opening one; upload_timeout is added for a request with
    files. The session belongs to the running event loop and is created by `initialize`.
    """

    __slots__ = (
        "_connect_timeout",
        "_pool_size",
        "_read_timeout",
        "_session",
        "_timeouts",
        "_upload_timeout",
    )

    def __init__(
        self,
        pool_size: int = 128,
        *,
        read_timeout: float | None = 15.0,
        connect_timeout: float | None = 10.0,
        upload_timeout: float = 60.0,
    ) -> None:
        self._pool_size = pool_size
        self._read_timeout = read_timeout
        self._connect_timeout = connect_timeout
        self._upload_timeout = upload_timeout
        self._session: aiohttp.ClientSession | None = None
        self._timeouts: dict[tuple[float | None, float | None, bool], aiohttp.ClientTimeout] = {}

    @property
    def read_timeout(self) -> float | None:
        return self._read_timeout

    async def initialize(self) -> None:
        if self._session is None or self._session.closed:
            connector = aiohttp.TCPConnector(limit=self._pool_size, keepalive_timeout=KEEP_ALIVE)
            headers = {"User-Agent": self.USER_AGENT}
            self._session = aiohttp.ClientSession(
                connector=connector, headers=headers, cookie_jar=aiohttp.DummyCookieJar()
            )

    async def shutdown(self) -> None:
        if self._session is not None:
            await self._session.close()
            self._session = None

    async def do_request(
        self,
        url: str,
        method: str,
        request_data: RequestData | None = None,
        read_timeout: Any = _UNSAID,
        write_timeout: Any = _UNSAID,
        connect_timeout: Any = _UNSAID,
        pool_timeout: Any = _UNSAID,
    ) -> tuple[int, bytes]:
        """Send one request; return the status and the body.

        Raises: TimedOut or NetworkError, which do not tell whether the request was executed.
        """
        if self._session is None:
            raise RuntimeError("initialize() comes first")
        files = request_data is not None and request_data.contains_files
        read = self._read_timeout if isinstance(read_timeout, type(_UNSAID)) else read_timeout
        connect = self._connect_timeout if isinstance(connect_timeout, type(_UNSAID)) else connect_timeout
        timeout = self._timeout(read, connect, files)
        body, headers = _body(request_data)
        try:
            async with self._session.request(method, url, data=body, headers=headers, timeout=timeout) as response:
                content = await response.read()
        except TimeoutError as error:  # includes aiohttp's timeouts
            raise TimedOut(f"no answer in time ({type(error).__name__})") from None
        except aiohttp.ClientConnectorError as error:
            raise NetworkError(f"no connection to {error.host}:{error.port} ({error.strerror})") from None
        except (aiohttp.ClientError, OSError) as error:
            raise NetworkError(f"the connection broke ({type(error).__name__})") from None
        if response.status >= 400 and not content.lstrip().startswith(b"{"):
            content = b"{}"  # a proxy's page: useless, and it must not end up in an error message
        return response.status, content

    def _timeout(self, read: float | None, connect: float | None, files: bool) -> aiohttp.ClientTimeout:
        key = (read, connect, files)
        timeout = self._timeouts.get(key)
        if timeout is None:
            if len(self._timeouts) > 64:  # callers use a handful; this bounds memory if one does not
                self._timeouts.clear()
            total = None if read is None else read + (connect or 0.0) + (self._upload_timeout if files else 0.0)
            timeout = aiohttp.ClientTimeout(
                total=total, connect=connect, sock_connect=connect, sock_read=None if files else read
            )
            self._timeouts[key] = timeout
        return timeout

    @staticmethod
    def parse_json_payload(payload: bytes) -> dict[str, Any]:
        """Read the platform's answer. The library's own way logs an unreadable one, with what people wrote.

        Of an answer with updates those that can be read are; see `salvage`.
        Raises: TelegramError without the payload.
        """
        try:
            answer = json.loads(payload)
        except (ValueError, RecursionError):
            found = salvage.updates(payload)
            if found is None:
                raise TelegramError("the answer is not JSON") from None
            return {"ok": True, "result": found}
        if not isinstance(answer, dict):
            raise TelegramError("the answer is none")
        return answer


def _body(data: RequestData | None) -> tuple[Any, dict[str, str] | None]:
    if data is None:
        return None, None
    if not data.contains_files:
        return json.dumps(data.parameters).encode(), _JSON
    form = aiohttp.FormData()
    for name, value in data.json_parameters.items():
        form.add_field(name, value)
    for name, (filename, content, kind) in data.multipart_data.items():
        file = io.BytesIO(content) if isinstance(content, bytes) else content
        form.add_field(name, file, filename=filename, content_type=kind)
    return form, None
