"""Updates of an answer that cannot be read as a whole, and what is left of one that cannot be read at all.

One number of five thousand digits, one byte that is no UTF-8 or one update nested too deeply, and no JSON reader reads
the answer it stands in. So that such an update does not hold up the others of its batch, the answer is taken apart by
its brackets alone, which needs no reader, and each update is then read by itself.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Mapping
from typing import Any

from bot.transports.incoming import Unread

LARGEST = 2**63 - 1  # what a database's number holds, and the platform's
MOST_KEPT = 16_384  # bytes of one update
PARTS = re.compile(rb'"(?:[^"\\]|\\.)*"|[\[\]{}]', re.DOTALL)
_NUMBER = re.compile(rb'"update_id"\s*:\s*(\d{1,19})(?!\d)')
_CHAT = re.compile(rb'"chat"\s*:\s*\{[^{}]*?"id"\s*:\s*(-?\d{1,19})(?!\d)')
_GROUP = re.compile(rb'"type"\s*:\s*"(?:group|supergroup|channel)"')
_DEEPEST = 12  # levels of a group's update whose form is kept


class Broken(bytes):
    """The bytes of an update that is not JSON, where a list holds updates."""


def updates(payload: bytes) -> list[Any] | None:
    """Return the updates of an answer that could not be read, each as read or `Broken`; None if it is no answer."""
    found = list(_elements(payload))
    return [read(one) for one in found] if found else None


def read(body: bytes) -> Any:
    """Return what is in `body`, or `Broken`."""
    try:
        return json.loads(body)
    except (ValueError, RecursionError):
        return Broken(body)


def _elements(payload: bytes) -> Iterator[bytes]:
    """The objects directly in the list that an answer's "result" is."""
    depth, start, after = 0, 0, False
    inside = False
    for part in PARTS.finditer(payload):
        token = part[0]
        if token[:1] == b'"':
            if depth == 1:
                after = token == b'"result"'
        elif token in b"[{":
            inside = inside or (depth == 1 and after and token == b"[")
            depth += 1
            if inside and depth == 3:
                start = part.start()
        else:
            depth -= 1
            if inside and depth == 2:
                yield payload[start : part.end()]
            elif inside and depth == 1:
                return


def set_aside(raw: Any, why: str, body: bytes | None = None) -> Unread:
    """Return what is kept of an update that cannot be read. body: the bytes it came in, where they are known."""
    number, chat, is_group = _place(raw)
    if body is None:
        body = raw if isinstance(raw, Broken) else _written(raw)
    if isinstance(raw, Broken):
        number, chat, is_group = _place_in_bytes(raw)
    if is_group or (chat is not None and chat < 0):
        body = b"" if isinstance(raw, Broken) else _written(form(raw))
    return Unread(None if number is None else f"telegram/{number}", chat, body[:MOST_KEPT], why)


def number_of(raw: Any) -> int | None:
    """Return the number by which an update is confirmed, None where it says none that can be one."""
    if isinstance(raw, Broken):
        return _place_in_bytes(raw)[0]
    return _counted(raw.get("update_id")) if isinstance(raw, Mapping) else None


def form(value: Any, depth: int = 0) -> Any:
    """Return the form of an update without what anybody said: its keys, and the kind of each value."""
    if depth > _DEEPEST:
        return "..."
    if isinstance(value, Mapping):
        return {str(key)[:64]: form(inner, depth + 1) for key, inner in list(value.items())[:64]}
    if isinstance(value, list):
        return [form(inner, depth + 1) for inner in value[:8]]
    return type(value).__name__


def _written(raw: Any) -> bytes:
    try:
        return json.dumps(raw).encode()
    except (ValueError, TypeError, RecursionError):
        return b""


def fits(number: Any) -> bool:
    """Whether this is a whole number that a database and the platform can hold."""
    return type(number) is int and -LARGEST <= number <= LARGEST


def _counted(number: Any) -> int | None:
    """The number of an update, if it can be one."""
    return number if fits(number) and 0 <= number < LARGEST else None


def _place(raw: Any) -> tuple[int | None, int | None, bool]:
    """The number of an update, its chat, and whether that is a group, as far as it says so."""
    if not isinstance(raw, Mapping):
        return None, None, False
    found = _counted(raw.get("update_id"))
    for inner in raw.values():
        if not isinstance(inner, Mapping):
            continue
        message = inner.get("message")
        for holder in (inner, message if isinstance(message, Mapping) else {}):
            chat = holder.get("chat")
            if isinstance(chat, Mapping):
                which = chat.get("id")
                return found, which if fits(which) else None, chat.get("type") not in ("private", None)
    return found, None, False


def _place_in_bytes(body: bytes) -> tuple[int | None, int | None, bool]:
    number, chat = _NUMBER.search(body), _CHAT.search(body)
    found = None if number is None or int(number[1]) >= LARGEST else int(number[1])
    which = None if chat is None or not fits(int(chat[1])) else int(chat[1])
    return found, which, _GROUP.search(body) is not None
