"""Intended weight loss: how much is useful, and which rate is accepted. Fractions of the start weight; kg a week."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="cdc_useful_loss",
    cite="CDC, Losing Weight: 5 to 10 percent of the start weight",
    population="adults with a body mass index of 25 or more who want to lose weight",
    seen=Seen.READ,
)
RATE_SOURCE = Source(
    key="nice_loss_rate",
    cite="NICE CG43 (2006) and its advice for the public: at most 0.5 to 1 kg a week",
    population="adults who want to lose weight",
    seen=Seen.READ,
    note="CDC prints 1 to 2 lb a week.",
)
PROGRAMME_SOURCE = Source(
    key="nice_programme_loss",
    cite="NICE PH53 (2014): about 3 percent on average in a lifestyle programme",
    population="adults in lifestyle weight programmes",
    seen=Seen.SECOND_HAND,
)
SOURCES = (SOURCE, RATE_SOURCE, PROGRAMME_SOURCE)

USEFUL = D("0.05")
PROGRAMME_AVERAGE = D("0.03")
SLOWER_PER_WEEK = D("0.5")
FASTEST_PER_WEEK = D(1)


@dataclass(frozen=True, slots=True)
class Rate:
    """kg lost a week, and whether that is within the accepted rate."""

    per_week: Decimal
    accepted: bool


def rate(before: Decimal, after: Decimal, days: int) -> Rate:
    """The rate of loss between two weights in kg, `days` apart (> 0); a gain is negative.

    Exactly 1 kg a week is accepted.
    """
    per_week = (before - after) * 7 / days
    return Rate(per_week, per_week <= FASTEST_PER_WEEK)
