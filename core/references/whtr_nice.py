"""Waist-to-height ratio, NICE: both sexes, every background. No unit; compare unrounded (D5)."""

from __future__ import annotations

from decimal import Decimal

from core.references.boundaries import WAIST_TO_HEIGHT
from core.references.ladder import Ladder, LadderStep
from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="nice_waist_to_height",
    cite="NICE CG189 (2022), carried into NG246 (2025)",
    population="adults with a body mass index below 35, both sexes, all backgrounds, also very muscular people",
    seen=Seen.SECOND_HAND,
    note="Not in pregnancy.",
)
SOURCES = (SOURCE,)

YOUNGEST = 18
BMI_BELOW = D(35)
LOWEST = D("0.4")  # NICE names no band below; "below_named_bands" is our word for that

BANDS = Ladder(
    SOURCE,
    "below_named_bands",
    (
        LadderStep(LOWEST, "healthy"),
        LadderStep(D("0.5"), "increased", WAIST_TO_HEIGHT),
        LadderStep(D("0.6"), "high", WAIST_TO_HEIGHT),
    ),
)
