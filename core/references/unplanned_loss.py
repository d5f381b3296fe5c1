"""Unplanned weight loss in older adults: 5 percent in 6 to 12 months.

One review of 2014 prints "more than" 5 percent, its successor of 2021 "5 percent or more". We use the second: it errs
on the side of caution, and MUST also starts at 5.0.
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
    """Whether an unplanned loss (percent of the earlier weight, within twelve months) needs attention."""
    return percent >= PERCENT
