"""Weekly slots as a calendar file (RFC 5545).

One event per client, recurring weekly at local time, with the zone's rules included. Unlike a list of instants, it
stays correct indefinitely: RFC 5545 (3.3.5, 3.3.10) resolves a local time at a clock change exactly as `core.schedule`
does, to the first of two occurrences, and past a gap by its length.

The title names nobody unless requested: calendars are shared and lie open on desks.
"""

from __future__ import annotations

import uuid
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

from icalendar import Calendar, Event

from core.care import Slot
from core.schedule import WEEK, next_due

TITLE = "Check-in"
LASTS = timedelta(minutes=10)
BY_DAY = ("MO", "TU", "WE", "TH", "FR", "SA", "SU")
RULES_FOR = timedelta(days=3660)  # ten years of a zone's changes are written out; programs know the zone by name anyway
_NAMESPACE = uuid.UUID("3f900ab7-fc74-50c1-be42-c8c3c886c0c2")


@dataclass(frozen=True, slots=True)
class Weekly:
    """A client's slot.

    id, since: of the client's row, for a stable event UID. name: shown in the title.

    begins: first date it is asked (after a pause); None for now.
    """

    id: int
    since: datetime
    slot: Slot
    zone: ZoneInfo
    name: str = ""
    begins: datetime | None = None


def calendar(slots: Iterable[Weekly], now: datetime) -> bytes:
    """The calendar file with every slot from `now` on; without slots, an empty calendar."""
    made = Calendar()
    made.add("prodid", "-//Samehour//Weekly slots//EN")
    made.add("version", "2.0")
    made.add("method", "PUBLISH")
    for weekly in slots:
        made.add_component(_event(weekly, now))
    made.add_missing_timezones(first_date=now.date() - WEEK, last_date=now.date() + RULES_FOR)
    return bytes(made.to_ical())


def _event(weekly: Weekly, now: datetime) -> Event:
    first = next_due(weekly.slot, weekly.zone, max(now, weekly.begins or now))
    event = Event()
    event.add("uid", f"{uuid.uuid5(_NAMESPACE, f'slot/{weekly.id}/{weekly.since.isoformat()}')}")
    event.add("dtstamp", now.astimezone(UTC))
    event.add("dtstart", datetime.combine(first.day, weekly.slot.at, weekly.zone))
    event.add("duration", LASTS)
    event.add("rrule", {"freq": "weekly", "byday": BY_DAY[weekly.slot.weekday]})
    event.add("summary", f"{TITLE}: {weekly.name}" if weekly.name else TITLE)
    event.add("transp", "TRANSPARENT")  # it does not mark anybody as busy
    return event
