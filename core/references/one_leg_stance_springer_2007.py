"""Standing on one leg, eyes open, up to 45 seconds: means of healthy adults. No sex effect was found."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from core.references.by_age import row_for
from core.sources import Seen, Source

SOURCE = Source(
    key="one_leg_stance_springer_2007",
    cite="Springer BA et al. (2007). Normative values for the unipedal stance test with eyes open and closed."
    " J Geriatr Phys Ther 30(1):8-15.",
    population="549 healthy adults of 18 to 99 years, USA",
    seen=Seen.MEMORY,
    doi="10.1519/00139143-200704000-00003",
    note="the abstract was read; both columns of means are from memory: check before relying on them",
)
INJURY = Source(
    key="one_leg_stance_vellas_1997",
    cite="Vellas BJ et al. (1997). One-leg balance is an important predictor of injurious falls in older"
    " persons. J Am Geriatr Soc 45(6):735-738.",
    population="community-living older adults; no age limit seen, taken from 60 (ours)",
    seen=Seen.SECOND_HAND,
    doi="10.1111/j.1532-5415.1997.tb01479.x",
    note="the fact was read in a page that reports it; that this is its paper is from memory",
)
SOURCES = (SOURCE, INJURY)
LONGEST = Decimal(45)  # s: the test is stopped here
INJURY_UNDER = Decimal(5)  # s


@dataclass(frozen=True, slots=True)
class OneLegStanceRow:
    ages: range
    best_of_three: Decimal  # s
    mean_of_three: Decimal  # s


ROWS = (  # both columns from memory
    OneLegStanceRow(range(18, 40), Decimal("44.7"), Decimal("43.3")),
    OneLegStanceRow(range(40, 50), Decimal("41.9"), Decimal("40.3")),
    OneLegStanceRow(range(50, 60), Decimal("41.2"), Decimal("37.0")),
    OneLegStanceRow(range(60, 70), Decimal("32.1"), Decimal("26.9")),
    OneLegStanceRow(range(70, 80), Decimal("21.5"), Decimal("15.0")),
    OneLegStanceRow(range(80, 100), Decimal("9.4"), Decimal("6.2")),
)


def row(age: int) -> OneLegStanceRow | None:
    """Means for the age group; None outside 18-99 years."""
    return row_for(ROWS, age)


def raised_injury_risk(seconds: Decimal) -> bool:
    """Held for less than 5 s, to 0.1 s."""
    return seconds < INJURY_UNDER
