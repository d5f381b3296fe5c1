"""Waist-to-hip ratio, the fitness trade's three-band chart. No unit; compare unrounded.

As printed it leaves gaps (0.95-0.96, 0.80-0.81) and puts 1.0 for men in two bands; this is a version without gaps.
For men it is more lenient than WHO: 0.90 to 0.95 is low here and raised there, so the chart is always named.
"""

from __future__ import annotations

from decimal import Decimal

from core.client import Sex
from core.references.ladder import Edge, Ladder, LadderStep
from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="trade_waist_to_hip",
    cite="Chart printed in training rooms and trade manuals; no study named",
    population="adults; whom it was made from is not said",
    seen=Seen.READ,
    note="Gaps closed by us: a limit belongs to the lower band.",
)
SOURCES = (SOURCE,)

YOUNGEST = 18


def _bands(moderate: str, high: str) -> Ladder:
    steps = (LadderStep(D(moderate), "moderate", Edge.ABOVE), LadderStep(D(high), "high", Edge.ABOVE))
    return Ladder(SOURCE, "low", steps)


BY_SEX: dict[Sex, Ladder] = {Sex.MALE: _bands("0.95", "1.00"), Sex.FEMALE: _bands("0.80", "0.85")}
