"""Six-minute walk: expected distance of older adults."""

from __future__ import annotations

from decimal import Decimal

from core.client import Sex
from core.sources import Seen, Source

SOURCE = Source(
    key="six_minute_walk_enright_2003",
    cite="Enright PL et al. (2003). The 6-min walk test: a quick measure of functional status in elderly"
    " adults. Chest 123(2):387-398.",
    population="older adults, USA, from 68 years",
    seen=Seen.READ,
    doi="10.1378/chest.123.2.387",
    note="the equations were read; the age from which they hold is from memory",
)
SOURCES = (SOURCE,)
AGES = range(68, 101)
CONSTANT = {Sex.MALE: Decimal(510), Sex.FEMALE: Decimal(493)}


def expected(sex: Sex, age: int, stature: Decimal, weight: Decimal) -> Decimal | None:
    """Expected metres from cm and kg; None under 68 years."""
    if age not in AGES:
        return None
    return CONSTANT[sex] + Decimal("2.2") * stature - Decimal("0.93") * weight - Decimal("5.3") * age
