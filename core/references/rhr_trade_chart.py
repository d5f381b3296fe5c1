"""Resting heart rate by age and sex, the fitness trade's seven-band chart. Whole beats per minute.

It rates fitness and does not describe a population: a woman of 30 with the US mean of 74 is "average" in it. Age 65 is
in two columns (56-65, 65+). We use the first, as every other column includes its last year. Copies disagree about the
athlete row, and nothing is printed below it: such a pulse belongs to an athlete or should be checked, and is never
rated better.
"""

from __future__ import annotations

from decimal import Decimal

from core.client import Sex
from core.references.ladder import Ladder, LadderStep
from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="trade_resting_heart_rate",
    cite="Chart of the trade, said to be from the YMCA fitness manual (attribution from memory)",
    population="adults from 18; how many and who is not said",
    seen=Seen.READ,
    note="Read in two copies, which differ in the athlete row for men.",
)
SOURCES = (SOURCE,)

BELOW_CHART = "athlete_or_check"
BANDS = ("athlete", "excellent", "good", "above_average", "average", "below_average", "poor")
AGES = ((18, 25), (26, 35), (36, 45), (46, 55), (56, 65), (66, None))

# The lowest rate of each band, one row per age column; each band ends just below the next.
LOWEST: dict[Sex, tuple[tuple[int, ...], ...]] = {
    Sex.MALE: (
        (49, 56, 62, 66, 70, 74, 82),
        (49, 55, 62, 66, 71, 75, 82),
        (50, 57, 63, 67, 71, 76, 83),
        (50, 58, 64, 68, 72, 77, 84),
        (51, 57, 62, 68, 72, 76, 82),
        (50, 56, 62, 66, 70, 74, 80),
    ),
    Sex.FEMALE: (
        (54, 61, 66, 70, 74, 79, 85),
        (54, 60, 65, 69, 73, 77, 83),
        (54, 60, 65, 70, 74, 79, 85),
        (54, 61, 66, 70, 74, 78, 84),
        (54, 60, 65, 69, 74, 78, 84),
        (54, 60, 65, 69, 73, 77, 85),
    ),
}
COLUMNS: dict[Sex, tuple[Ladder, ...]] = {
    sex: tuple(
        Ladder(SOURCE, BELOW_CHART, tuple(LadderStep(D(low), band) for low, band in zip(row, BANDS, strict=True)))
        for row in rows
    )
    for sex, rows in LOWEST.items()
}


def column(sex: Sex, age: int) -> Ladder | None:
    """The column for an age in whole years; None if the chart has none."""
    for (youngest, oldest), ladder in zip(AGES, COLUMNS[sex], strict=True):
        if age >= youngest and (oldest is None or age <= oldest):
            return ladder
    return None
