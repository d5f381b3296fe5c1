"""Body mass index of adults, NICE: general limits, and lower ones for some family backgrounds. kg/m2; D1
first."""

from __future__ import annotations

from decimal import Decimal

from core.client import Background
from core.references.boundaries import GENERAL_BMI_LIMITS, LOWER_BMI_LIMITS
from core.references.ladder import Ladder, LadderStep
from core.sources import Seen, Source

SOURCE = Source(
    key="nice_bmi",
    cite="NICE CG189 (2014, updated 2022-23), replaced by NG246 (January 2025)",
    population="adults from 18 in the UK, general",
    seen=Seen.READ,
)
LOWER_SOURCE = Source(
    key="nice_bmi_lower",
    cite="NICE CG189 1.2.8 (updated 2022-23), NG246 1.9 (2025)",
    population="adults from 18 of South Asian, Chinese, other Asian, Middle Eastern, Black African or"
    " African-Caribbean family background",
    seen=Seen.SECOND_HAND,
    note="23 and 27.5 read in a report of the guideline; 32.5 and 37.5 follow from 'reduce class 2 and 3 by 2.5'.",
)
SOURCES = (SOURCE, LOWER_SOURCE)

YOUNGEST = 18
BANDS = ("healthy", "overweight", "obesity_1", "obesity_2", "obesity_3")


def _ladder(source: Source, limits: tuple[Decimal, ...]) -> Ladder:
    return Ladder(source, "underweight", tuple(map(LadderStep, limits, BANDS)))


GENERAL = _ladder(SOURCE, GENERAL_BMI_LIMITS)
LOWER = _ladder(LOWER_SOURCE, LOWER_BMI_LIMITS)

# Mixed or other is left out on purpose: NICE does not say which limits apply, and we do not guess.
BY_BACKGROUND: dict[Background, Ladder] = {
    Background.WHITE: GENERAL,
    Background.SOUTH_CENTRAL_AMERICAN: GENERAL,  # not among the backgrounds NICE names for the lower limits
    Background.SOUTH_ASIAN: LOWER,
    Background.CHINESE: LOWER,
    Background.JAPANESE: LOWER,  # "other Asian"
    Background.OTHER_ASIAN: LOWER,
    Background.MIDDLE_EASTERN: LOWER,
    Background.BLACK_AFRICAN: LOWER,
    Background.AFRICAN_CARIBBEAN: LOWER,
}
