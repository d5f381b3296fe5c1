"""Waist of adults, WHO: two levels of risk by sex. cm.

One copy of the table prints "more than" at both levels, the 2009 joint statement "from" at both; D3 and D4 decide.
"""

from __future__ import annotations

from decimal import Decimal

from core.client import Sex
from core.references.boundaries import WAIST_RAISED, WAIST_TOP_BAND
from core.references.ladder import Ladder, LadderStep
from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="who_waist",
    cite="WHO expert consultation on waist circumference and waist-hip ratio, Geneva, 8-11 December 2008 (2011)",
    population="adults; from data on people of European descent",
    seen=Seen.SECOND_HAND,
    note="Read as a table in a journal article.",
)
SOURCES = (SOURCE,)

YOUNGEST = 18


def _bands(raised: int, top: int) -> Ladder:
    steps = (
        LadderStep(D(raised), "increased", WAIST_RAISED),
        LadderStep(D(top), "substantially_increased", WAIST_TOP_BAND),
    )
    return Ladder(SOURCE, "not_increased", steps)


BY_SEX: dict[Sex, Ladder] = {Sex.MALE: _bands(94, 102), Sex.FEMALE: _bands(80, 88)}
