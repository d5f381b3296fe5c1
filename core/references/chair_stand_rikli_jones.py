"""Stands in 30 seconds: the middle half of each age group, and the scores associated with staying independent.

Normal is the 25th to the 75th percentile, both ends included.
"""

from __future__ import annotations

from dataclasses import dataclass

from core.client import Sex
from core.references.by_age import row_for_sex
from core.sources import Seen, Source

SOURCE = Source(
    key="chair_stand_rikli_jones",
    cite="Rikli RE, Jones CJ (1999). Functional fitness normative scores for community-residing older adults,"
    " ages 60-94. J Aging Phys Act 7(2):162-181.",
    population="community-living adults of 60 to 94 years, USA, n = 7,183",
    seen=Seen.SECOND_HAND,
    doi="10.1123/japa.7.2.162",
)
STANDARD_SOURCE = Source(
    key="chair_stand_rikli_jones_2013",
    cite="Rikli RE, Jones CJ (2013). Development and validation of criterion-referenced clinically relevant"
    " fitness standards for maintaining physical independence in later years. Gerontologist 53(2):255-267.",
    population="moderately active adults of 60 to 94 years, USA",
    seen=Seen.MEMORY,
    doi="10.1093/geront/gns071",
    note="all 14 scores from memory: check against the paper before relying on them",
)
SOURCES = (SOURCE, STANDARD_SOURCE)


@dataclass(frozen=True, slots=True)
class ChairStandRangeRow:
    sex: Sex
    ages: range
    low: int  # stands, 25th percentile
    high: int  # stands, 75th percentile
    standard: int  # stands associated with staying independent; from memory


ROWS = (
    ChairStandRangeRow(Sex.MALE, range(60, 65), 14, 19, 17),
    ChairStandRangeRow(Sex.MALE, range(65, 70), 12, 18, 16),
    ChairStandRangeRow(Sex.MALE, range(70, 75), 12, 17, 15),
    ChairStandRangeRow(Sex.MALE, range(75, 80), 11, 17, 14),
    ChairStandRangeRow(Sex.MALE, range(80, 85), 10, 15, 13),
    ChairStandRangeRow(Sex.MALE, range(85, 90), 8, 14, 11),
    ChairStandRangeRow(Sex.MALE, range(90, 95), 7, 12, 9),
    ChairStandRangeRow(Sex.FEMALE, range(60, 65), 12, 17, 15),
    ChairStandRangeRow(Sex.FEMALE, range(65, 70), 11, 16, 15),
    ChairStandRangeRow(Sex.FEMALE, range(70, 75), 10, 15, 14),
    ChairStandRangeRow(Sex.FEMALE, range(75, 80), 10, 15, 13),
    ChairStandRangeRow(Sex.FEMALE, range(80, 85), 9, 14, 12),
    ChairStandRangeRow(Sex.FEMALE, range(85, 90), 8, 13, 11),
    ChairStandRangeRow(Sex.FEMALE, range(90, 95), 4, 11, 9),
)


def row(age: int, sex: Sex) -> ChairStandRangeRow | None:
    """Normal range and independence standard for that age and sex; None outside 60-94 years."""
    return row_for_sex(ROWS, age, sex)
