"""Home blood pressure of people over 80, NHS. mmHg.

A table in a heart journal gives 140/85 for 80 and over; we follow the page that also states the general limits, and
read "over 80" as 81 and older.
"""

from __future__ import annotations

from core.references.pressure_bands import table
from core.sources import Seen, Source

SOURCE = Source(
    key="nhs_home_blood_pressure_over_80",
    cite="High blood pressure, public page made from NHS text",
    population="people over 80; mean at home",
    seen=Seen.READ,
)
SOURCES = (SOURCE,)

OVER = 80
HOME = table(SOURCE, "below_home_limit", {"raised": (145, 85)})
