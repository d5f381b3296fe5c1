"""Resting heart rate of adults: the usual range, and when to seek advice. Whole beats per minute.

BHF and AHA count both 60 and 100 as usual; one US survey calls 100 itself fast. We follow the first two.
"""

from __future__ import annotations

from decimal import Decimal

from core.references.ladder import Edge, Ladder, LadderStep
from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="bhf_resting_heart_rate",
    cite="British Heart Foundation, Your heart rate; the American Heart Association prints the same range",
    population="adults at rest",
    seen=Seen.READ,
    note="The American page is known from memory. A slow pulse can be usual in trained people and with some medicines.",
)
ADVICE_SOURCE = Source(
    key="nhs_pulse_advice",
    cite="Checking your pulse, public page made from NHS text",
    population="adults; such a rate may still be usual for one person",
    seen=Seen.READ,
    note="Meant for a rate that stays there.",
)
SOURCES = (SOURCE, ADVICE_SOURCE)

YOUNGEST = 18
RANGE = Ladder(SOURCE, "slow", (LadderStep(D(60), "usual"), LadderStep(D(100), "fast", Edge.ABOVE)))

ADVICE_ABOVE = D(120)
ADVICE_BELOW = D(40)


def seek_advice(rate: Decimal) -> str | None:
    """Whether a persistent resting rate calls for advice from a clinician: "fast", "slow" or None.

    rate: beats per minute, unrounded (120.5 of two counts is over); 120 and 40 themselves do not.
    """
    if rate > ADVICE_ABOVE:
        return "fast"
    if rate < ADVICE_BELOW:
        return "slow"
    return None
