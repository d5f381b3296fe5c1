"""Usual gait speed: under 1.0 m/s was the group at higher risk. Exactly 1.0 is not."""

from __future__ import annotations

from decimal import Decimal

from core.sources import Seen, Source

SOURCE = Source(
    key="gait_speed_cesari_2005",
    cite="Cesari M et al. (2005). Prognostic value of usual gait speed in well-functioning older people:"
    " results from the Health, Aging and Body Composition study. J Am Geriatr Soc 53(10):1675-1680.",
    population="3,047 well-functioning people, mean 74 years, walking 6 m",
    seen=Seen.READ,
    doi="10.1111/j.1532-5415.2005.53501.x",
    note="the ages of the cohort, 70 to 79, are from memory; the walk was 6 m, ours is 4 m",
)
SOURCES = (SOURCE,)
AGES = range(70, 80)
UNDER = Decimal("1.0")  # m/s


def higher_risk(metres_per_second: Decimal) -> bool:
    """Less than 1.0 m/s, to 0.01 m/s."""
    return metres_per_second < UNDER
