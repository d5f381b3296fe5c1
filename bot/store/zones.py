"""Zones by name: creating one reads a file, so the core gets them from here."""

from __future__ import annotations

from datetime import UTC, tzinfo
from zoneinfo import ZoneInfo


def zone_of(name: str | None) -> tzinfo:
    """The zone of a name; UTC for none, or for one missing from the tz database."""
    try:
        return ZoneInfo(name) if name else UTC
    except (ValueError, OSError, KeyError):
        return UTC
