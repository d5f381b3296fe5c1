"""Structured logs without content: no reading, name, text, token or chat id ever reaches a log line.

* The event is a literal sentence; its context uses keys of `ALLOWED`. Any other key is dropped, and so is a value that
  is not a number or a short plain word.
* Of an exception only its type and code locations are logged: its message may quote a row or a person.
* Log records of libraries become "library", with the logger's name, level and location; never their text.

    log = bot.foundation.log.get("delivery")
    log.warning("set aside", row=17, code="400")
"""

from __future__ import annotations

import logging
import re
import sys
from collections.abc import MutableMapping
from pathlib import Path
from types import TracebackType
from typing import Any, TextIO

import structlog

ALLOWED = frozenset(
    {
        "event", "level", "timestamp", "part",  # structlog's own, and the part of the bot that logs
        "row", "count", "attempt", "seconds", "code", "kind", "method",  # the subject
        "host", "port", "database", "revision", "language", "signal", "version",  # the environment
        "fault", "where", "library",  # the error and its origin
    }
)  # fmt: skip
_PLAIN = re.compile(r"[A-Za-z0-9_.:/@+<> ()-]{0,160}")
_LEVELS = {"debug": logging.DEBUG, "info": logging.INFO, "warning": logging.WARNING, "error": logging.ERROR}

Line = MutableMapping[str, Any]


def get(part: str) -> Any:
    """The logger of one part of the bot."""
    return structlog.get_logger(part=part)  # lazy: applies what `set_up` configures later


def set_up(level: str = "info", form: str = "auto", stream: TextIO | None = None) -> None:
    """Send all logs to `stream` (stderr): form "json", "console", or "auto" (console on a terminal)."""
    stream = stream or sys.stderr
    if form == "auto":
        form = "console" if stream.isatty() else "json"
    last: Any = (
        structlog.dev.ConsoleRenderer(colors=stream.isatty())
        if form == "console"
        else structlog.processors.JSONRenderer(sort_keys=True)
    )
    structlog.configure(
        processors=[
            structlog.processors.add_log_level,
            structlog.processors.TimeStamper(fmt="iso", utc=True),
            without_messages,
            without_content,
            last,
        ],
        wrapper_class=structlog.make_filtering_bound_logger(_LEVELS[level]),
        logger_factory=structlog.WriteLoggerFactory(file=stream),
        cache_logger_on_first_use=False,
    )
    root = logging.getLogger()
    for handler in list(root.handlers):
        root.removeHandler(handler)
    root.addHandler(_FromLibraries())
    root.setLevel(logging.WARNING)


def without_messages(_: Any, __: str, line: Line) -> Line:
    """Replace an exception by its type and code locations."""
    given = line.pop("exc_info", None)
    if given is True:
        given = sys.exc_info()
    error = given[1] if isinstance(given, tuple) else given
    if isinstance(error, BaseException):
        line["fault"], line["where"] = fault(error), places(error)
    return line


def without_content(_: Any, __: str, line: Line) -> Line:
    """Drop every key not in `ALLOWED`, and every value that is not a number or a short plain word."""
    return {key: value for key, value in line.items() if key in ALLOWED and is_plain(value)}


def fault(error: BaseException) -> str:
    """The types of `error` and its causes, outermost first, without their messages."""
    names: list[str] = []
    current: BaseException | None = error
    while current is not None and len(names) < 5:
        names.append(type(current).__name__)
        current = current.__cause__ or (None if current.__suppress_context__ else current.__context__)
    return " from ".join(names)


def places(error: BaseException, most: int = 4) -> str:
    """The last code locations of `error`, innermost first: "turn.py:88 < worker.py:31"."""
    found: list[str] = []
    trace: TracebackType | None = error.__traceback__
    while trace is not None:
        found.append(f"{Path(trace.tb_frame.f_code.co_filename).name}:{trace.tb_lineno}")
        trace = trace.tb_next
    return " < ".join(reversed(found[-most:]))


def is_plain(value: Any) -> bool:
    if isinstance(value, str):
        return _PLAIN.fullmatch(value) is not None
    return value is None or isinstance(value, (bool, int))


class _FromLibraries(logging.Handler):
    """Logs that a library logged something, and where; its text may quote anything."""

    def emit(self, record: logging.LogRecord) -> None:
        log = structlog.get_logger()
        say = log.error if record.levelno >= logging.ERROR else log.warning
        error = record.exc_info[1] if record.exc_info else None
        place = f"{Path(record.pathname).name}:{record.lineno}"
        if error is None:
            say("library", library=record.name, where=place)
        else:
            say("library", library=record.name, exc_info=error)
