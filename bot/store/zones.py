"""Zones by name: making one reads a file, so the core is lent what is made here."""

from __future__ import annotations

from datetime import UTC, tzinfo
from zoneinfo import ZoneInfo


def zone_of(name: str | None) -> tzinfo:
    """Return a zone; UTC for none, and for one that left the tz database."""
    try:
        return ZoneInfo(name) if name else UTC
    except (ValueError, OSError, KeyError):
        return UTC
