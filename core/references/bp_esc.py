"""Blood pressure by ESC 2024: in the office, and at home. mmHg. The home limits are from memory."""

from __future__ import annotations

from core.references.pressure_bands import table
from core.sources import Seen, Source

SOURCE = Source(
    key="esc_blood_pressure",
    cite="McEvoy JW and others (2024). 2024 ESC Guidelines for elevated blood pressure and hypertension."
    " Eur Heart J 45:3912-4018",
    population="adults; office readings",
    seen=Seen.READ,
    doi="10.1093/eurheartj/ehae178",
    note="DOI from memory.",
)
HOME_SOURCE = Source(
    key="esc_home_blood_pressure",
    cite="2024 ESC Guidelines, home equivalents",
    population="adults; means at home",
    seen=Seen.MEMORY,
    note="The texts read only say that home equivalents exist. Check before relying on it.",
)
SOURCES = (SOURCE, HOME_SOURCE)

YOUNGEST = 18
OFFICE = table(SOURCE, "non_elevated", {"elevated": (120, 70), "hypertension": (140, 90)})
HOME = table(HOME_SOURCE, "non_elevated", {"elevated": (120, 70), "hypertension": (135, 85)})
