"""Waist-to-hip ratio of adults, WHO: one limit by sex. No unit; compare unrounded."""

from __future__ import annotations

from decimal import Decimal

from core.client import Sex
from core.references.ladder import Ladder, LadderStep
from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="who_waist_to_hip",
    cite="WHO expert consultation on waist circumference and waist-hip ratio, Geneva, 8-11 December 2008 (2011)",
    population="adults",
    seen=Seen.SECOND_HAND,
    note="Another report prints 'above' where this one prints 'from'; we keep 'from', the more cautious.",
)
SOURCES = (SOURCE,)

YOUNGEST = 18

BY_SEX: dict[Sex, Ladder] = {
    Sex.MALE: Ladder(SOURCE, "not_increased", (LadderStep(D("0.90"), "substantially_increased"),)),
    Sex.FEMALE: Ladder(SOURCE, "not_increased", (LadderStep(D("0.85"), "substantially_increased"),)),
}
