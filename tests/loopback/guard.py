"""Nothing leaves this machine while the tests run: a connection or name look-up beyond loopback is refused and noted.

`install` works on one process. Children get it through sitecustomize.py beside this, whose folder tests/conftest.py
puts on PYTHONPATH; forks and spawned workers inherit it. Out of reach are programs that are not Python: libpq and the
PostgreSQL server, which the tests give a Unix socket only, and the FHIR validator on Node, which reads local files.
"""

from __future__ import annotations

import os
import sys
from ipaddress import ip_address
from typing import Any

NOTES = "LOOPBACK_NOTES"  # the environment's name for the file to which refusals are appended, one a line

_LOOK_UPS = frozenset({"socket.getaddrinfo", "socket.gethostbyname", "socket.gethostbyaddr"})
_CONNECTIONS = frozenset({"socket.connect", "socket.sendto", "socket.sendmsg"})
_installed = False


class LeavesTheMachine(RuntimeError):
    """Something wanted to talk to another machine. Not an OSError, which code may well take for a bad line."""


def install() -> None:
    """Refuse from now on. For good: an audit hook cannot be taken out again."""
    global _installed
    if not _installed:
        sys.addaudithook(_audit)
        _installed = True


def refuse_unless_here(host: object) -> None:
    """Raise LeavesTheMachine unless `host` is loopback, or no host at all: "" and None mean this machine."""
    name = host.decode() if isinstance(host, bytes) else host
    if not isinstance(name, str) or name in ("", "localhost") or _is_loopback(name):
        return
    if notes := os.environ.get(NOTES):
        with open(notes, "a") as file:
            file.write(f"{name}\n")
    raise LeavesTheMachine(f"the tests reach for {name}; only loopback is allowed")


def _is_loopback(name: str) -> bool:
    try:
        return ip_address(name).is_loopback
    except ValueError:
        return False


def _audit(event: str, given: tuple[Any, ...]) -> None:
    if event in _LOOK_UPS:
        refuse_unless_here(given[0])
    elif event in _CONNECTIONS:
        where = given[1]
        if isinstance(where, tuple) and isinstance(where[0], str | bytes):  # others: a Unix socket's path, the kernel's
            refuse_unless_here(where[0])
    elif event == "socket.__new__":
        _watch_uvloop()


def _watch_uvloop() -> None:
    """Watch uvloop too, which looks names up and connects in C. A loop opens sockets before it does either."""
    uvloop: Any = sys.modules.get("uvloop")
    kind = getattr(uvloop, "Loop", None)
    if kind is None or "getaddrinfo" in vars(kind):
        return
    look_up, connect = kind.getaddrinfo, kind.create_connection

    async def getaddrinfo(self: Any, host: Any, *given: Any, **more: Any) -> Any:
        refuse_unless_here(host)
        return await look_up(self, host, *given, **more)

    async def create_connection(self: Any, protocol_factory: Any, host: Any = None, *given: Any, **more: Any) -> Any:
        refuse_unless_here(host)
        return await connect(self, protocol_factory, host, *given, **more)

    kind.getaddrinfo, kind.create_connection = getaddrinfo, create_connection
