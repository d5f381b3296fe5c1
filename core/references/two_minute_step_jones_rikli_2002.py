"""Steps on the spot in two minutes, counting the right knee only; counting both knees roughly doubles the number.

The normal range is the middle half of each age group, both ends included.
"""

from __future__ import annotations

from dataclasses import dataclass

from core.client import Sex
from core.references.by_age import row_for_sex
from core.sources import Seen, Source

SOURCE = Source(
    key="two_minute_step_jones_rikli_2002",
    cite="Jones CJ, Rikli RE (2002). Measuring functional fitness of older adults. J Act Aging 1:24-30.",
    population="community-living adults of 60 to 94 years, USA",
    seen=Seen.SECOND_HAND,
    note="the page read prints 87 under men 65-69 where its own range says 86: taken as a misprint",
)
STANDARD_SOURCE = Source(
    key="two_minute_step_rikli_jones_2013",
    cite="Rikli RE, Jones CJ (2013). Development and validation of criterion-referenced clinically relevant"
    " fitness standards for maintaining physical independence in later years. Gerontologist 53(2):255-267.",
    population="moderately active adults of 60 to 94 years, USA",
    seen=Seen.SECOND_HAND,
    doi="10.1093/geront/gns071",
)
SOURCES = (SOURCE, STANDARD_SOURCE)


@dataclass(frozen=True, slots=True)
class StepTestRow:
    """Steps: mean and SD (Rikli and Jones 1999), range (2002), standard of independence (2013)."""

    sex: Sex
    ages: range
    mean: int
    deviation: int
    low: int
    high: int
    standard: int


ROWS = (
    StepTestRow(Sex.MALE, range(60, 65), 101, 21, 87, 115, 106),
    StepTestRow(Sex.MALE, range(65, 70), 101, 23, 86, 116, 101),
    StepTestRow(Sex.MALE, range(70, 75), 95, 23, 80, 110, 95),
    StepTestRow(Sex.MALE, range(75, 80), 91, 27, 73, 109, 88),
    StepTestRow(Sex.MALE, range(80, 85), 87, 24, 71, 103, 80),
    StepTestRow(Sex.MALE, range(85, 90), 75, 24, 59, 91, 71),
    StepTestRow(Sex.MALE, range(90, 95), 69, 26, 52, 86, 60),
    StepTestRow(Sex.FEMALE, range(60, 65), 91, 24, 75, 107, 97),
    StepTestRow(Sex.FEMALE, range(65, 70), 90, 26, 73, 107, 93),
    StepTestRow(Sex.FEMALE, range(70, 75), 84, 25, 68, 101, 89),
    StepTestRow(Sex.FEMALE, range(75, 80), 84, 24, 68, 100, 84),
    StepTestRow(Sex.FEMALE, range(80, 85), 75, 23, 60, 91, 78),
    StepTestRow(Sex.FEMALE, range(85, 90), 70, 22, 55, 85, 70),
    StepTestRow(Sex.FEMALE, range(90, 95), 58, 21, 44, 72, 60),
)


def row(age: int, sex: Sex) -> StepTestRow | None:
    """Range and independence standard for that age and sex; None outside 60-94 years."""
    return row_for_sex(ROWS, age, sex)
