"""Low blood pressure: below 90 or below 60 mmHg. It matters only with dizziness, fainting or falls.

One topic page prints "90/60 or lower"; we keep "below", as NHS and NHLBI do.
"""

from __future__ import annotations

from decimal import Decimal

from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="low_blood_pressure",
    cite="NHLBI, hypotension; NHS text on blood pressure",
    population="adults",
    seen=Seen.READ,
    note="Taken as low when either number is; a concern only with symptoms.",
)
SOURCES = (SOURCE,)

SYSTOLIC_BELOW = D(90)
DIASTOLIC_BELOW = D(60)
STANDING_DROP = D(20)  # NICE NG136 1.1.6: a fall of the upper number by 20 or more on standing up


def low(systolic: Decimal, diastolic: Decimal) -> bool:
    """Say whether either number is low."""
    return systolic < SYSTOLIC_BELOW or diastolic < DIASTOLIC_BELOW


def drops_on_standing(resting: Decimal, standing: Decimal) -> bool:
    """Say whether the systolic pressure falls by 20 mmHg or more from sitting or lying to standing."""
    return resting - standing >= STANDING_DROP
