"""Timed up and go at normal pace: 12 seconds or more is associated with a raised risk of falling."""

from __future__ import annotations

from decimal import Decimal

from core.references.by_age import OLDER
from core.sources import Seen, Source

SOURCE = Source(
    key="timed_up_and_go_cdc",
    cite="Centers for Disease Control and Prevention (2017). STEADI assessment: timed up and go.",
    population="older adults, USA; no age limit printed, taken from 60 (ours)",
    seen=Seen.SECOND_HAND,
)
SOURCES = (SOURCE,)
AGES = OLDER
FROM = Decimal(12)  # s


def raised_risk(seconds: Decimal) -> bool:
    """12 s or more, to 0.1 s."""
    return seconds >= FROM
