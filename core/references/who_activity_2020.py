"""How much weekly activity is recommended. A vigorous minute counts as two moderate ones; every minute
counts.
"""

from __future__ import annotations

from decimal import Decimal
from enum import IntEnum

from core.sources import Seen, Source

SOURCE = Source(
    key="who_activity_2020",
    cite="World Health Organization (2020). WHO guidelines on physical activity and sedentary behaviour. Geneva.",
    population="adults of 18 years and over",
    seen=Seen.READ,
    note="that bouts under 10 minutes count since 2020 is from memory",
)
EQUIVALENCE = Source(
    key="activity_equivalence_pag_2018",
    cite="US Department of Health and Human Services (2018). Physical Activity Guidelines for Americans, 2nd ed.",
    population="adults",
    seen=Seen.READ,
    note="an example of 2007 accepts 2 x 30 brisk + 2 x 20 jogging as enough; one for two makes that 140",
)
VITAL_SIGN = Source(
    key="exercise_vital_sign",
    cite="Coleman KJ et al. (2012), Young DR et al. (2014). Exercise as a vital sign: days a week times minutes.",
    population="adults of 18 years and over, USA",
    seen=Seen.READ,
    note="the classes were read; the 2012 paper's title from memory",
)
SOURCES = (SOURCE, EQUIVALENCE, VITAL_SIGN)
YOUNGEST = 18  # years: the guideline has other advice for children
LEAST, MOST = Decimal(150), Decimal(300)  # moderate minutes a week
STRENGTH_DAYS = 2  # a week, at least
VIGOROUS_COUNTS = 2


class ActivityAmount(IntEnum):
    """Classes of the activity vital sign: 0 inactive, 1-149 some, 150 and over meets it, over 300 more benefit."""

    INACTIVE = 0
    SOME = 1
    MEETS = 2
    MORE = 3


def equivalent(moderate: Decimal, vigorous: Decimal = Decimal(0)) -> Decimal:
    """A week's moderate and vigorous minutes as equivalent moderate minutes.

    >>> equivalent(Decimal(90), Decimal(30))
    Decimal('150')
    """
    return moderate + VIGOROUS_COUNTS * vigorous


def amount(minutes: Decimal) -> ActivityAmount:
    """The class of a week's moderate-equivalent minutes: 150 meets, exactly 300 is not yet more."""
    if minutes > MOST:
        return ActivityAmount.MORE
    if minutes >= LEAST:
        return ActivityAmount.MEETS
    return ActivityAmount.SOME if minutes > 0 else ActivityAmount.INACTIVE


def enough_strength(days: Decimal) -> bool:
    """Two or more days of strengthening in the week."""
    return days >= STRENGTH_DAYS
