"""When a single blood-pressure reading calls for an immediate repeat, and then for advice. mmHg.

It is taken again after five quiet minutes; if still severe, the client calls a clinician; with any danger sign
(core.language.danger_signs) it is an emergency (NHLBI).
"""

from __future__ import annotations

from decimal import Decimal

from core.references.boundaries import SEVERE_PRESSURE
from core.references.pressure_bands import PressureBand
from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="severe_blood_pressure",
    cite="NICE NG136 (severe: 180 or 120 and above); NHLBI, high blood pressure symptoms (wait 5 minutes, repeat)",
    population="adults",
    seen=Seen.READ,
    note="AHA/ACC prints 'above' 180 or 120; see decision D6. One council page uses 110 for the lower number.",
)
PREGNANCY_SOURCE = Source(
    key="severe_blood_pressure_pregnancy",
    cite="NICE NG133, hypertension in pregnancy (2019)",
    population="pregnant women",
    seen=Seen.MEMORY,
    note="160 or 110. Kept because it errs to caution. Check before relying on it.",
)
PREGNANCY_ADVICE_SOURCE = Source(
    key="severe_blood_pressure_pregnancy_advice",
    cite="NHS, pre-eclampsia; RCOG, self-monitoring of blood pressure in pregnancy (2020)",
    population="pregnant women, and the first weeks after a birth",
    seen=Seen.MEMORY,
    note="From memory: rest, repeat, call the maternity unit; the signs that make it an emergency. Check before relying"
    " on it.",
)
SOURCES = (SOURCE, PREGNANCY_SOURCE, PREGNANCY_ADVICE_SOURCE)

MINUTES_BEFORE_REPEAT = 5
SEVERE = PressureBand("severe", D(180), D(120), SEVERE_PRESSURE)
SEVERE_IN_PREGNANCY = PressureBand("severe", D(160), D(110), SEVERE_PRESSURE)
