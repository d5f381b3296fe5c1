"""Timed up and go: mean of each decade with its 95 % interval; worse than average is above the upper limit.

The interval is for the mean, not for individuals: the paper uses only its upper limit, and so do we.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from core.references.by_age import row_for
from core.sources import Seen, Source

SOURCE = Source(
    key="timed_up_and_go_bohannon_2006",
    cite="Bohannon RW (2006). Reference values for the timed up and go test: a descriptive meta-analysis."
    " J Geriatr Phys Ther 29(2):64-68.",
    population="apparently healthy elders, 21 studies pooled; no split by sex",
    seen=Seen.READ,
    doi="10.1519/00139143-200608000-00004",
)
SOURCES = (SOURCE,)


@dataclass(frozen=True, slots=True)
class TimedUpAndGoRow:
    ages: range
    mean: Decimal  # s
    low: Decimal  # s, lower limit of the mean
    high: Decimal  # s, upper limit of the mean


ROWS = (
    TimedUpAndGoRow(range(60, 70), Decimal("8.1"), Decimal("7.1"), Decimal("9.0")),
    TimedUpAndGoRow(range(70, 80), Decimal("9.2"), Decimal("8.2"), Decimal("10.2")),
    TimedUpAndGoRow(range(80, 100), Decimal("11.3"), Decimal("10.0"), Decimal("12.7")),
)


def row(age: int) -> TimedUpAndGoRow | None:
    """The row for the decade of `age`; None outside 60-99 years."""
    return row_for(ROWS, age)
