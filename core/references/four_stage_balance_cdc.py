"""Four-stage balance: heel to toe held for less than 10 seconds is associated with a raised risk of falling."""

from __future__ import annotations

from decimal import Decimal

from core.references.by_age import OLDER
from core.sources import Seen, Source

SOURCE = Source(
    key="four_stage_balance_cdc",
    cite="Centers for Disease Control and Prevention (2017). STEADI assessment: 4-stage balance test.",
    population="older adults, USA; no age limit printed, taken from 60 (ours)",
    seen=Seen.SECOND_HAND,
    note="a pass says little: in 29 adults over 50, 78 % of those who had fallen passed",
)
SOURCES = (SOURCE,)
AGES = OLDER
TANDEM_UNDER = Decimal(10)  # s


def raised_risk(tandem_seconds: Decimal) -> bool:
    """Less than 10 s heel to toe, to 0.1 s."""
    return tandem_seconds < TANDEM_UNDER
