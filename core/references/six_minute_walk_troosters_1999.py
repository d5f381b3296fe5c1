"""Six-minute walk: expected distance with strong encouragement in a long corridor.

It expects at least 100 m more than Enright 1998 for the same person, so a percentage must name its equation.
"""

from __future__ import annotations

from decimal import Decimal

from core.client import Sex
from core.sources import Seen, Source

SOURCE = Source(
    key="six_minute_walk_troosters_1999",
    cite="Troosters T, Gosselink R, Decramer M (1999). Six minute walking distance in healthy elderly"
    " subjects. Eur Respir J 14(2):270-274.",
    population="51 healthy people of 50 to 85 years, encouraged every 30 s in a 50 m corridor; r2 0.66",
    seen=Seen.READ,
    doi="10.1034/j.1399-3003.1999.14b06.x",
)
SOURCES = (SOURCE,)
AGES = range(50, 86)
FOR_MEN = Decimal("51.31")


def expected(sex: Sex, age: int, stature: Decimal, weight: Decimal) -> Decimal | None:
    """Expected metres from cm and kg; None outside 50-85 years."""
    if age not in AGES:
        return None
    metres = 218 + Decimal("5.14") * stature - Decimal("5.32") * age - Decimal("1.80") * weight
    return metres + (FOR_MEN if sex is Sex.MALE else 0)
