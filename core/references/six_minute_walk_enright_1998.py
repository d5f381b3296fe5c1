"""Six-minute walk: expected distance and lower limit of normal, by age, height and weight, for each sex.

Only for 40-80 years. The constants 153 and 139 apply to the lower limit only, never to the expected distance.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from core.client import Sex
from core.sources import Seen, Source

SOURCE = Source(
    key="six_minute_walk_enright_1998",
    cite="Enright PL, Sherrill DL (1998). Reference equations for the six-minute walk in healthy adults."
    " Am J Respir Crit Care Med 158(5):1384-1387.",
    population="healthy adults of 40 to 80 years, first test, 117 men and 173 women; r2 0.42 and 0.38",
    seen=Seen.READ,
    doi="10.1164/ajrccm.158.5.9710086",
    note="the lower limits were seen second-hand",
)
SOURCES = (SOURCE,)
AGES = range(40, 81)


@dataclass(frozen=True, slots=True)
class WalkEquation:
    """Metres = height * cm + age * years + weight * kg + constant; the lower limit is `below` metres less."""

    height: Decimal
    age: Decimal
    weight: Decimal
    constant: Decimal
    below: Decimal
    median: Decimal  # m, of those measured


ROWS = {
    Sex.MALE: WalkEquation(
        Decimal("7.57"), Decimal("-5.02"), Decimal("-1.76"), Decimal(-309), Decimal(153), Decimal(576)
    ),
    Sex.FEMALE: WalkEquation(
        Decimal("2.11"), Decimal("-5.78"), Decimal("-2.29"), Decimal(667), Decimal(139), Decimal(494)
    ),
}


def expected(sex: Sex, age: int, stature: Decimal, weight: Decimal) -> Decimal | None:
    """Expected metres from cm and kg; None outside 40-80 years."""
    if age not in AGES:
        return None
    row = ROWS[sex]
    return row.height * stature + row.age * age + row.weight * weight + row.constant


def lower_limit(sex: Sex, expected_metres: Decimal) -> Decimal:
    """The lower limit of normal, in metres, for that expected distance."""
    return expected_metres - ROWS[sex].below
