"""Aerobic capacity from a one-mile walk: time, pulse at the finish, weight, age and sex.

Weight is passed in kilograms and converted to the equation's pounds inside, so the two cannot be mixed up.
"""

from __future__ import annotations

from decimal import Decimal

from core.client import Sex
from core.quantity import Unit, convert
from core.sources import Seen, Source

SOURCE = Source(
    key="kline_1987",
    cite="Kline GM et al. (1987). Estimation of VO2max from a one-mile track walk, gender, age, and body"
    " weight. Med Sci Sports Exerc 19(3):253-259.",
    population="343 healthy adults of 30 to 69 years, 165 men and 178 women",
    seen=Seen.SECOND_HAND,
    note="the ml/kg/min form and its error were read second-hand",
)
SOURCES = (SOURCE,)
AGES = range(30, 70)
STANDARD_ERROR = Decimal("5.0")  # ml/kg/min, of the estimate


def aerobic_capacity(sex: Sex, age: int, weight: Decimal, minutes: Decimal, pulse: Decimal) -> Decimal | None:
    """Estimate in ml/kg/min from kg, decimal minutes and bpm at the finish; None outside 30-69 years."""
    if age not in AGES:
        return None
    return (
        Decimal("132.853")
        - Decimal("0.0769") * convert(weight, Unit.KILOGRAM, Unit.POUND)
        - Decimal("0.3877") * age
        + (Decimal("6.315") if sex is Sex.MALE else 0)
        - Decimal("3.2649") * minutes
        - Decimal("0.1565") * pulse
    )
