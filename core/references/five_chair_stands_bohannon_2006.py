"""Five chair stands: worse than average if the time is above the limit for the decade; the limit itself is not."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from core.references.by_age import row_for
from core.sources import Seen, Source

SOURCE = Source(
    key="five_chair_stands_bohannon_2006",
    cite="Bohannon RW (2006). Reference values for the five-repetition sit-to-stand test: a descriptive"
    " meta-analysis of data from elders. Percept Mot Skills 103(1):215-222.",
    population="community-living elders, 13 papers pooled; no split by sex",
    seen=Seen.READ,
    doi="10.2466/pms.103.1.215-222",
)
SOURCES = (SOURCE,)


@dataclass(frozen=True, slots=True)
class FiveChairStandsRow:
    ages: range
    worse_above: Decimal  # s


ROWS = (
    FiveChairStandsRow(range(60, 70), Decimal("11.4")),
    FiveChairStandsRow(range(70, 80), Decimal("12.6")),
    FiveChairStandsRow(range(80, 90), Decimal("14.8")),
)


def limit(age: int) -> Decimal | None:
    """Seconds above which five stands are worse than average; None outside 60-89 years."""
    row = row_for(ROWS, age)
    return row.worse_above if row else None
