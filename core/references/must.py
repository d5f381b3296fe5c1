"""Malnutrition Universal Screening Tool: points for a low body mass index, for unplanned loss and for acute
illness."""

from __future__ import annotations

from decimal import Decimal

from core.references.boundaries import MUST_NO_POINTS, bmi_for_class
from core.references.ladder import Edge, Ladder, LadderStep
from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="must",
    cite="BAPEN, Malnutrition Universal Screening Tool (2003, revised 2011)",
    population="adults; loss unplanned, within the past 3 to 6 months",
    seen=Seen.READ,
    note="A screening score for care staff; nobody is told a number.",
)
SOURCES = (SOURCE,)

BMI = Ladder(SOURCE, "2", (LadderStep(D("18.5"), "1"), LadderStep(D(20), "0", MUST_NO_POINTS)))
# Percent of the earlier weight; 5.0 and 10.0 both score 1.
LOSS = Ladder(SOURCE, "0", (LadderStep(D(5), "1"), LadderStep(D(10), "2", Edge.ABOVE)))


def percent_loss(before: Decimal, after: Decimal) -> Decimal:
    """Loss in percent of the earlier weight; negative for a gain. Same unit for both; `before` > 0."""
    return (before - after) * 100 / before


def bmi_points(bmi: Decimal) -> int:
    """Step 1. kg/m2, rounded by D1 here."""
    return int(BMI.find(bmi_for_class(bmi)).band)


def loss_points(percent: Decimal) -> int:
    """Step 2. Unplanned loss in percent, unrounded."""
    return int(LOSS.find(percent).band)


def risk(points: int) -> str:
    """The risk category for the total of the three steps: "low" (0), "medium" (1) or "high" (2 and more)."""
    return ("low", "medium", "high")[min(points, 2)]
