"""The `key=value` part of a tape's lines: keys and their values."""

from __future__ import annotations

import re
import shlex
from collections.abc import Callable, Mapping
from datetime import time
from zoneinfo import ZoneInfo

from core.client import Background, Caution, Sex
from core.language import LANGUAGES
from core.measures import MEASURES

WEEKDAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")


class CannotRead(Exception):
    """A line that cannot be parsed. The message says which, what is wrong and how to write it."""

    def __init__(self, number: int, line: str, wrong: str, write: str = "") -> None:
        hint = f" Write: {write}" if write else ""
        super().__init__(f"line {number}: {wrong}.{hint}\n    {line}")
        self.number = number
        self.wrong = wrong


def zone(name: str) -> ZoneInfo | None:
    """A zone of the tz database; None for anything else."""
    try:
        return ZoneInfo(name)
    except (KeyError, ValueError, OSError):  # OSError: the name of a folder of the database
        return None


def _one_of(*values: str) -> Callable[[str], str]:
    return lambda value: "" if value in values else f"one of {', '.join(values)}"


def _some_of(*values: str) -> Callable[[str], str]:
    return lambda value: "" if set(value.split(",")) <= set(values) else f"some of {', '.join(values)}, commas between"


def _year(value: str) -> str:
    return "" if re.fullmatch(r"(19|20)\d\d", value) else "a year, such as 1968"


def _anything(value: str) -> str:
    return "" if value.strip() else "some words"


def _slot(value: str) -> str:
    return "" if slot(value) is not None else '"Mon 07:30"'


def _known_zone(value: str) -> str:
    return "" if zone(value) is not None else "a time zone, such as Europe/London"


def _interval(value: str) -> str:
    return "" if intervals(value) is not None else "days, or measure:days with commas between"


def slot(value: str) -> tuple[int, time] | None:
    """Parse "Mon 07:30" as weekday (Monday 0) and local time; None if it is not one."""
    match = re.fullmatch(r"([A-Za-z]{3})[a-z]* (\d\d):(\d\d)", value)
    if match is None or match[1].lower() not in WEEKDAYS or int(match[2]) > 23 or int(match[3]) > 59:
        return None
    return WEEKDAYS.index(match[1].lower()), time(int(match[2]), int(match[3]))


def intervals(value: str) -> dict[str, int] | None:
    """Parse "35" as {"": 35} and "weight:7,waist:42" as pairs; None if it is neither."""
    found: dict[str, int] = {}
    for part in value.split(","):
        key, _, days = part.rpartition(":")
        if not days.isdigit() or not int(days) or (key and key not in MEASURES):
            return None
        found[key] = int(days)
    return found


def _weeks(value: str) -> str:
    return "" if re.fullmatch(r"[1-9]\d?", value) else "a number of weeks, such as 12"


_YES = _one_of("yes", "no")
PERSON_KEYS = {"lang": _one_of(*LANGUAGES)}
COACH_KEYS = {**PERSON_KEYS, "zone": _known_zone, "slot": _slot}
ORGANISER_KEYS = {**PERSON_KEYS, "zone": _known_zone}
CLIENT_KEYS: dict[str, Callable[[str], str]] = {
    **COACH_KEYS,
    "born": _year,
    "sex": _one_of(*(s.value for s in Sex)),
    "height": _anything,
    "units": _one_of("kg", "lb", "st"),
    "background": _one_of(*(b.value for b in Background)),
    "cautions": _some_of(*(c.value for c in Caution)),
    "numbers": _one_of("shown", "coach_only", "leave_out"),
    "measures": _some_of(*MEASURES),
    "interval": _interval,
    "directed": _YES,
    "planned_loss": _YES,
    "programme": _weeks,
    "own": _anything,
    "own_better": _one_of("higher", "lower"),
}


def pairs(number: int, line: str, text: str, keys: Mapping[str, Callable[[str], str]]) -> dict[str, str]:
    """Parse `key=value key="value with blanks"`."""
    try:
        words = shlex.split(text)
    except ValueError:
        raise CannotRead(number, line, "a quotation mark is not closed", 'slot="Mon 07:30"') from None
    found: dict[str, str] = {}
    for word in words:
        key, equals, value = word.partition("=")
        if not equals or key not in keys:
            raise CannotRead(number, line, f"{word!r} is no key=value known here", f"{'=..., '.join(keys)}=...")
        if key in found:
            raise CannotRead(number, line, f"{key} is given twice", f"{key}=... once")
        wrong = keys[key](value)
        if wrong:
            raise CannotRead(number, line, f"{key}={value} cannot be read", f"{key}= {wrong}")
        found[key] = value
    return found
