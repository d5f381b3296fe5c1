"""Unplanned weight loss in older adults: 5 percent in 6 to 12 months.

One review of 2014 prints "more than" 5 percent, its successor of 2021 "5 percent or more". We take the
second: it errs to caution, and MUST begins at 5.0 too.
"""

from __future__ import annotations

from decimal import Decimal

from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="afp_unintentional_loss",
    cite="Unintentional weight loss in older adults. Am Fam Physician 2021;104:34",
    population="older adults, loss not intended, over 6 to 12 months",
    seen=Seen.SECOND_HAND,
)
EARLIER_SOURCE = Source(
    key="afp_unintentional_loss_2014",
    cite="Unintentional weight loss in older adults. Am Fam Physician 2014;89:718",
    population="older adults, loss not intended, over 6 to 12 months",
    seen=Seen.READ,
    note="Prints 'more than' 5 percent.",
)
SOURCES = (SOURCE, EARLIER_SOURCE)

PERCENT = D(5)


def noticeable(percent: Decimal) -> bool:
    """Say whether an unplanned loss (percent of the earlier weight, within twelve months) asks for
    attention."""
    return percent >= PERCENT
