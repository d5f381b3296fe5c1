"""Six-minute walk: resting values above which it needs a clinician to start; the limits themselves are allowed."""

from __future__ import annotations

from decimal import Decimal

from core.sources import Seen, Source

SOURCE = Source(
    key="six_minute_walk_ats_2002",
    cite="American Thoracic Society (2002). ATS statement: guidelines for the six-minute walk test."
    " Am J Respir Crit Care Med 166(1):111-117.",
    population="adults about to take a six-minute walk",
    seen=Seen.SECOND_HAND,
    doi="10.1164/ajrccm.166.1.at1102",
)
TECHNICAL_STANDARD = Source(
    key="field_walking_tests_ers_ats_2014",
    cite="Holland AE et al. (2014). An official European Respiratory Society/American Thoracic Society"
    " technical standard: field walking tests in chronic respiratory disease. Eur Respir J 44(6):1428-1446.",
    population="adults with chronic respiratory disease",
    seen=Seen.READ,
    doi="10.1183/09031936.00150314",
    note="two tests because of learning: read; the learning gain of 26 m: memory",
)
SOURCES = (SOURCE, TECHNICAL_STANDARD)
PULSE_ABOVE, SYSTOLIC_ABOVE, DIASTOLIC_ABOVE = Decimal(120), Decimal(180), Decimal(100)


def resting_cautions(
    pulse: Decimal | None = None, systolic: Decimal | None = None, diastolic: Decimal | None = None
) -> frozenset[str]:
    """Reasons not to start: "pulse" (over 120 bpm), "blood_pressure" (over 180 or over 100 mmHg)."""
    found = set()
    if pulse is not None and pulse > PULSE_ABOVE:
        found.add("pulse")
    if (systolic is not None and systolic > SYSTOLIC_ABOVE) or (diastolic is not None and diastolic > DIASTOLIC_ABOVE):
        found.add("blood_pressure")
    return frozenset(found)
