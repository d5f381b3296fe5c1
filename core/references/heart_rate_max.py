"""Expected maximal heart rate by age. The SD between people is 10 to 12 bpm: a guide, not a limit.

Medicines that slow the pulse make every such figure misleading.
"""

from __future__ import annotations

from decimal import Decimal

from core.sources import Seen, Source

SOURCE = Source(
    key="heart_rate_max_tanaka_2001",
    cite="Tanaka H, Monahan KD, Seals DR (2001). Age-predicted maximal heart rate revisited."
    " J Am Coll Cardiol 37(1):153-156.",
    population="healthy adults",
    seen=Seen.SECOND_HAND,
    doi="10.1016/S0735-1097(00)01054-8",
)
SOURCES = (SOURCE,)
ADULTS = range(18, 120)


def tanaka(age: int) -> Decimal | None:
    """208 - 0.7 * age, bpm; None for children."""
    return 208 - Decimal("0.7") * age if age in ADULTS else None
