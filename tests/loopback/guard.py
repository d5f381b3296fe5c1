"""No network traffic leaves this machine during tests: connections and name look-ups beyond loopback are refused and
recorded.

`install` works on one process. Children get it through sitecustomize.py beside this, whose folder tests/conftest.py
puts on PYTHONPATH; forks and spawned workers inherit it. Not covered are programs other than Python: libpq and the
PostgreSQL server, which the tests restrict to a Unix socket, and the FHIR validator on Node, which reads local files.
"""

from __future__ import annotations

import os
import sys
from ipaddress import ip_address
from typing import Any

NOTES = "LOOPBACK_NOTES"  # environment variable for the file to which refusals are appended, one per line

_LOOK_UPS = frozenset({"socket.getaddrinfo", "socket.gethostbyname", "socket.gethostbyaddr"})
_CONNECTIONS = frozenset({"socket.connect", "socket.sendto", "socket.sendmsg"})
_installed = False


class LeavesTheMachine(RuntimeError):
    """Something tried to contact another machine. Not an OSError, which code may mistake for a bad connection."""


def install() -> None:
    """Refuse from now on. This is permanent: an audit hook cannot be removed."""
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
    """Guard uvloop too, which resolves names and connects in C. A loop opens sockets before it does either."""
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
