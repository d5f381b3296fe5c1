"""Blood pressure by AHA/ACC 2017, unchanged 2025: in the office, and the same levels at home. mmHg."""

from __future__ import annotations

from decimal import Decimal

from core.references.pressure_bands import table
from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="aha_blood_pressure",
    cite="Whelton PK and others (2017), ACC/AHA guideline; the 2025 AHA/ACC guideline keeps the categories",
    population="adults; office readings",
    seen=Seen.READ,
)
HOME_SOURCE = Source(
    key="aha_home_blood_pressure",
    cite="2017 ACC/AHA guideline, corresponding values in different settings (kept 2025)",
    population="adults; means at home",
    seen=Seen.READ,
    note="The office limits of each category carried to home by that table.",
)
SOURCES = (SOURCE, HOME_SOURCE)

YOUNGEST = 18
OFFICE = table(SOURCE, "normal", {"elevated": (120, None), "stage_1": (130, 80), "stage_2": (140, 90)})
HOME = table(HOME_SOURCE, "normal", {"elevated": (120, None), "stage_1": (130, 80), "stage_2": (135, 85)})

Pair = tuple[Decimal, Decimal]
HOME_TO_OFFICE: dict[Pair, Pair] = {  # systolic and diastolic; only these pairs are printed
    (D(120), D(80)): (D(120), D(80)),
    (D(130), D(80)): (D(130), D(80)),
    (D(135), D(85)): (D(140), D(90)),
    (D(145), D(90)): (D(160), D(100)),
}
