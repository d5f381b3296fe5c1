"""Waist of adults, NICE: three bands by sex. cm."""

from __future__ import annotations

from decimal import Decimal

from core.client import Sex
from core.references.boundaries import WAIST_RAISED, WAIST_TOP_BAND
from core.references.ladder import Ladder, LadderStep
from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="nice_waist",
    cite="NICE NG7 and PH53, glossaries",
    population="adults in the UK",
    seen=Seen.READ,
    note="Useful below a body mass index of 35. Waist half-way between the last rib and the hip bone.",
)
SOURCES = (SOURCE,)

YOUNGEST = 18


def _bands(raised: int, top: int) -> Ladder:
    return Ladder(
        SOURCE, "low", (LadderStep(D(raised), "high", WAIST_RAISED), LadderStep(D(top), "very_high", WAIST_TOP_BAND))
    )


BY_SEX: dict[Sex, Ladder] = {Sex.MALE: _bands(94, 102), Sex.FEMALE: _bands(80, 88)}
