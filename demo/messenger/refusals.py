"""Errors, by whose fault they are.

Refused    the server refuses a bot's request: an HTTP error with the platform's wording, never a bug here
CannotDo   a driver asked for something a person could not do: a mistake in a test or tape
"""

from collections.abc import Mapping
from typing import Any


class Refused(Exception):
    """An answer with `ok: false`: an HTTP error code, the platform's description, and its `parameters`."""

    def __init__(self, code: int, description: str, **parameters: Any) -> None:
        super().__init__(f"{code} {description}")
        self.code = code
        self.description = description
        self.parameters: Mapping[str, Any] = parameters


class CannotDo(Exception):
    """A person cannot do this: no such button, a link payload too long, writing to a bot they blocked."""


def bad_request(reason: str, **parameters: Any) -> Refused:
    return Refused(400, f"Bad Request: {reason}", **parameters)


def forbidden(reason: str) -> Refused:
    return Refused(403, f"Forbidden: {reason}")


def conflict(reason: str) -> Refused:
    return Refused(409, f"Conflict: {reason}")


def too_many_requests(seconds: int) -> Refused:
    return Refused(429, f"Too Many Requests: retry after {seconds}", retry_after=seconds)
