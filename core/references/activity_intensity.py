"""How hard an activity is, by the effort it takes from 0 to 10."""

from __future__ import annotations

from decimal import Decimal
from enum import IntEnum

from core.sources import Seen, Source

SOURCE = Source(
    key="activity_intensity_pag_2018",
    cite="US Department of Health and Human Services (2018). Physical Activity Guidelines for Americans, 2nd ed.",
    population="adults",
    seen=Seen.READ,
    note="effort 0 is sitting and 10 the most one can do; 0-4 as light and 9-10 as near maximal are ours",
)
SOURCES = (SOURCE,)


class Intensity(IntEnum):
    VERY_LIGHT = 0
    LIGHT = 1
    MODERATE = 2
    VIGOROUS = 3
    NEAR_MAXIMAL = 4


def by_effort(effort: Decimal) -> Intensity:
    """5-6 moderate, 7-8 vigorous. A half belongs to the step below: 6.5 is still moderate."""
    if effort >= 9:
        return Intensity.NEAR_MAXIMAL
    if effort >= 7:
        return Intensity.VIGOROUS
    if effort >= 5:
        return Intensity.MODERATE
    return Intensity.LIGHT if effort >= 1 else Intensity.VERY_LIGHT
