"""How hard an effort is, by heart rate: bands of the heart-rate reserve and of the maximum. Half-open, as
printed: 40 % is moderate, 60 % is vigorous."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from enum import IntEnum

from core.quantity import half_up
from core.sources import Seen, Source

SOURCE = Source(
    key="heart_rate_intensity_acsm",
    cite="Garber CE et al. (2011). Quantity and quality of exercise for developing and maintaining fitness in"
    " apparently healthy adults. Med Sci Sports Exerc 43(7):1334-1359.",
    population="apparently healthy adults",
    seen=Seen.READ,
    doi="10.1249/MSS.0b013e318213fefb",
    note="read in tables taken from the paper; one copy ends vigorous at 84 % of the reserve",
)
KARVONEN = Source(
    key="heart_rate_reserve_karvonen_1957",
    cite="Karvonen MJ, Kentala E, Mustala O (1957). The effects of training on heart rate: a longitudinal"
    " study. Ann Med Exp Biol Fenn 35(3):307-315.",
    population="young men in training",
    seen=Seen.SECOND_HAND,
    note="the formula was read in pages that use it; the citation is from memory",
)
CDC = Source(
    key="heart_rate_max_share_cdc_2020",
    cite="Centers for Disease Control and Prevention (2020). Target heart rate and estimated maximum heart rate.",
    population="adults, USA",
    seen=Seen.SECOND_HAND,
    note="older prints of the page say 50-70 % and 70-85 %: obsolete",
)
SOURCES = (SOURCE, KARVONEN, CDC)


class Intensity(IntEnum):
    VERY_LIGHT = 0
    LIGHT = 1
    MODERATE = 2
    VIGOROUS = 3
    NEAR_MAXIMAL = 4


@dataclass(frozen=True, slots=True)
class IntensityRow:
    intensity: Intensity
    reserve_from: int  # per cent of the heart-rate reserve
    maximum_from: int  # per cent of the maximal heart rate


ROWS = (
    IntensityRow(Intensity.NEAR_MAXIMAL, 90, 96),
    IntensityRow(Intensity.VIGOROUS, 60, 77),
    IntensityRow(Intensity.MODERATE, 40, 64),
    IntensityRow(Intensity.LIGHT, 30, 57),
    IntensityRow(Intensity.VERY_LIGHT, 0, 0),
)
CDC_SHARES = {Intensity.MODERATE: (64, 76), Intensity.VIGOROUS: (77, 93)}  # per cent of the maximum


def by_reserve(percent: Decimal) -> Intensity:
    """The band of a percentage of the heart-rate reserve; below rest counts as very light."""
    return next((row.intensity for row in ROWS if percent >= row.reserve_from), Intensity.VERY_LIGHT)


def by_maximum(percent: Decimal) -> Intensity:
    """The band of a percentage of the maximal heart rate."""
    return next((row.intensity for row in ROWS if percent >= row.maximum_from), Intensity.VERY_LIGHT)


def target(maximum: Decimal, resting: Decimal, percent: Decimal) -> Decimal:
    """The heart rate at that percentage of the reserve, in bpm.

    >>> target(Decimal(180), Decimal(80), Decimal(60))
    Decimal('140')
    """
    return (maximum - resting) * percent / 100 + resting


def zone_by_maximum(maximum: Decimal, intensity: Intensity) -> tuple[Decimal, Decimal]:
    """From and to, in whole bpm. `intensity` moderate or vigorous, the two the page gives; else KeyError."""
    low, high = CDC_SHARES[intensity]
    return half_up(maximum * low / 100, 0), half_up(maximum * high / 100, 0)
