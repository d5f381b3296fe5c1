"""Stands in 30 seconds: below average if the count is below the cut-off for the person's age and sex.

A count equal to the cut-off is not below average. Arms used: the count is 0.
"""

from __future__ import annotations

from dataclasses import dataclass

from core.client import Sex
from core.references.by_age import row_for_sex
from core.sources import Seen, Source

SOURCE = Source(
    key="chair_stand_cdc",
    cite="Centers for Disease Control and Prevention (2017). STEADI assessment: 30-second chair stand.",
    population="community-living adults of 60 to 94 years, USA",
    seen=Seen.SECOND_HAND,
    note="all 14 cells seen in a copy of the sheet; two independent copies agree where both show a cell",
)
SOURCES = (SOURCE,)


@dataclass(frozen=True, slots=True)
class ChairStandCutOffRow:
    sex: Sex
    ages: range
    below_average_under: int  # stands


ROWS = (
    ChairStandCutOffRow(Sex.MALE, range(60, 65), 14),
    ChairStandCutOffRow(Sex.MALE, range(65, 70), 12),
    ChairStandCutOffRow(Sex.MALE, range(70, 75), 12),
    ChairStandCutOffRow(Sex.MALE, range(75, 80), 11),
    ChairStandCutOffRow(Sex.MALE, range(80, 85), 10),
    ChairStandCutOffRow(Sex.MALE, range(85, 90), 8),
    ChairStandCutOffRow(Sex.MALE, range(90, 95), 7),
    ChairStandCutOffRow(Sex.FEMALE, range(60, 65), 12),
    ChairStandCutOffRow(Sex.FEMALE, range(65, 70), 11),
    ChairStandCutOffRow(Sex.FEMALE, range(70, 75), 10),
    ChairStandCutOffRow(Sex.FEMALE, range(75, 80), 10),
    ChairStandCutOffRow(Sex.FEMALE, range(80, 85), 9),
    ChairStandCutOffRow(Sex.FEMALE, range(85, 90), 8),
    ChairStandCutOffRow(Sex.FEMALE, range(90, 95), 4),
)


def cut(age: int, sex: Sex) -> int | None:
    """Cut-off under which a count of stands is below average; None outside 60-94 years."""
    row = row_for_sex(ROWS, age, sex)
    return row.below_average_under if row else None
