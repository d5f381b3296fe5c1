"""Expected maximal heart rate by age. The SD between people is 10 to 12 bpm: a guide, not a limit.

Medicines that slow the pulse make every such figure misleading.
"""

from __future__ import annotations

from decimal import Decimal

from core.sources import Seen, Source

FOX = Source(
    key="heart_rate_max_fox_1971",
    cite="Fox SM, Naughton JP, Haskell WL (1971). Physical activity and the prevention of coronary heart"
    " disease. Ann Clin Res 3(6):404-432.",
    population="adults; never derived from one study of its own",
    seen=Seen.READ,
    note="the formula and its SD were read in later papers; the citation is from memory",
)
SOURCE = Source(
    key="heart_rate_max_tanaka_2001",
    cite="Tanaka H, Monahan KD, Seals DR (2001). Age-predicted maximal heart rate revisited."
    " J Am Coll Cardiol 37(1):153-156.",
    population="healthy adults",
    seen=Seen.SECOND_HAND,
    doi="10.1016/S0735-1097(00)01054-8",
)
SOURCES = (SOURCE, FOX)
STANDARD_DEVIATION = Decimal(12)  # bpm between people of one age, the wider of 10 to 12
ADULTS = range(18, 120)


def tanaka(age: int) -> Decimal | None:
    """208 - 0.7 * age, bpm; None for children."""
    return 208 - Decimal("0.7") * age if age in ADULTS else None


def fox(age: int) -> Decimal | None:
    """220 - age, bpm; None for children."""
    return Decimal(220 - age) if age in ADULTS else None
