"""Home blood pressure by NICE: limits for the mean of a series. mmHg.

A stage also needs a clinic reading, so the categories here name the home limit reached, not a stage: "raised" from 135
or 85 (with clinic 140/90 it would be stage 1), "clearly_raised" from 150 or 95 (stage 2).
"""

from __future__ import annotations

from core.references.pressure_bands import table
from core.sources import Seen, Source

SOURCE = Source(
    key="nice_home_blood_pressure",
    cite="NICE NG136 (2019, updated 2023)",
    population="adults; mean of a home series, at least 4 days, morning and evening, first day dropped",
    seen=Seen.READ,
)
SOURCES = (SOURCE,)

YOUNGEST = 18
HOME = table(SOURCE, "below_home_limit", {"raised": (135, 85), "clearly_raised": (150, 95)})
