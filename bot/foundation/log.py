"""Structured logs without content: no reading, name, text, token or chat ever gets into a line.

* What happened is a literal sentence; what goes with it is a key of `ALLOWED`. Any other key is dropped, and
  a value that is not a number or a short plain word is too.
* Of an exception only its type and the places it passed are kept: its message may quote a row or a person.
* Lines of the libraries we use become "library", with the logger's name, level and place; never their text.

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
        "event", "level", "timestamp", "part",  # structlog's own, and the part of the bot that speaks
        "row", "count", "attempt", "seconds", "code", "kind", "method",  # what it was about
        "host", "port", "database", "revision", "language", "signal", "version",  # the surroundings
        "fault", "where", "library",  # what went wrong, and whose line it is
    }
)  # fmt: skip
_PLAIN = re.compile(r"[A-Za-z0-9_.:/@+<> ()-]{0,160}")
_LEVELS = {"debug": logging.DEBUG, "info": logging.INFO, "warning": logging.WARNING, "error": logging.ERROR}

Line = MutableMapping[str, Any]


def get(part: str) -> Any:
    """Return the logger of one part of the bot."""
    return structlog.get_logger(part=part)  # lazy: what `set_up` says later holds for it too


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
    """Replace an exception by its type and the places it passed."""
    given = line.pop("exc_info", None)
    if given is True:
        given = sys.exc_info()
    error = given[1] if isinstance(given, tuple) else given
    if isinstance(error, BaseException):
        line["fault"], line["where"] = fault(error), places(error)
    return line


def without_content(_: Any, __: str, line: Line) -> Line:
    """Drop every key that is not in `ALLOWED`, and every value that is not a number or a short plain word."""
    return {key: value for key, value in line.items() if key in ALLOWED and is_plain(value)}


def fault(error: BaseException) -> str:
    """Return the types of `error` and of what it came from, outermost first, without their messages."""
    names: list[str] = []
    current: BaseException | None = error
    while current is not None and len(names) < 5:
        names.append(type(current).__name__)
        current = current.__cause__ or (None if current.__suppress_context__ else current.__context__)
    return " from ".join(names)


def places(error: BaseException, most: int = 4) -> str:
    """Return the last places `error` passed, innermost first: "turn.py:88 < worker.py:31"."""
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
    """Passes on that a library had something to say, and where; its text may quote anything."""

    def emit(self, record: logging.LogRecord) -> None:
        log = structlog.get_logger()
        say = log.error if record.levelno >= logging.ERROR else log.warning
        error = record.exc_info[1] if record.exc_info else None
        place = f"{Path(record.pathname).name}:{record.lineno}"
        if error is None:
            say("library", library=record.name, where=place)
        else:
            say("library", library=record.name, exc_info=error)
