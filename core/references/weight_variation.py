"""Day-to-day variation of body weight without true change. kg, fractions of the weight."""

from __future__ import annotations

from decimal import Decimal

from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="cheuvront_2004",
    cite="Cheuvront SN and others (2004). Daily body mass variability and stability in active men. Aviat"
    " Space Environ Med",
    population="65 active men, morning weight on 4 to 15 days",
    seen=Seen.READ,
)
WEEK_SOURCE = Source(
    key="turicchi_2020",
    cite="Turicchi J and others (2020). Weekly, seasonal and holiday body weight fluctuation. PLoS ONE 15:e0232152",
    population="1,421 adults",
    seen=Seen.READ,
    note="Up at weekends.",
)
SOURCES = (SOURCE, WEEK_SOURCE)

DAY_TO_DAY = D("0.0066")  # coefficient of variation
DAY_TO_DAY_SPREAD = D("0.24") / D("0.66")  # the SD between people (0.24 %), as a fraction of the coefficient
DAY_TO_DAY_SD = D("0.51")  # kg
WITHIN_WEEK = D("0.0035")


def ordinary(before: Decimal, after: Decimal) -> bool:
    """Whether two weights in kg differ by no more than one usual day-to-day variation of the first."""
    return abs(after - before) <= before * DAY_TO_DAY
