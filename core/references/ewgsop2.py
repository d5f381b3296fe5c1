"""The European consensus on sarcopenia: cut-offs of three function tests. The comparison operators differ on
purpose."""

from __future__ import annotations

from decimal import Decimal

from core.references.by_age import OLDER
from core.sources import Seen, Source

SOURCE = Source(
    key="ewgsop2",
    cite="Cruz-Jentoft AJ et al. (2019). Sarcopenia: revised European consensus on definition and diagnosis."
    " Age Ageing 48(1):16-31.",
    population="older adults; no age limit printed, taken from 60 (ours)",
    seen=Seen.SECOND_HAND,
    doi="10.1093/ageing/afy169",
)
SOURCES = (SOURCE,)
AGES = OLDER
FIVE_STANDS_ABOVE = Decimal(15)  # s: low strength
GAIT_SPEED_UP_TO = Decimal("0.8")  # m/s: low performance
UP_AND_GO_FROM = Decimal(20)  # s: low performance


def low_strength_by_five_stands(seconds: Decimal) -> bool:
    """More than 15 s for five rises."""
    return seconds > FIVE_STANDS_ABOVE


def low_gait_speed(metres_per_second: Decimal) -> bool:
    """0.8 m/s or less, to 0.01 m/s."""
    return metres_per_second <= GAIT_SPEED_UP_TO


def low_by_up_and_go(seconds: Decimal) -> bool:
    """20 s or more."""
    return seconds >= UP_AND_GO_FROM
