"""When a weight or a girth is measured again at once, and which attempts are averaged."""

from __future__ import annotations

from decimal import Decimal

from core.sources import Seen, Source

D = Decimal

SOURCE = Source(
    key="phenx_weight",
    cite="PhenX 021501, measured weight: a third weighing when two differ by 200 g; the closest two are averaged",
    population="adults weighed in studies",
    seen=Seen.READ,
    note="It also prints 0.25 lb, which is 113 g; the grams are used.",
)
GIRTH_SOURCE = Source(
    key="who_girth_repeat",
    cite="WHO expert consultation on waist circumference and waist-hip ratio (2011): twice, again if 1 cm apart",
    population="adults measured in surveys",
    seen=Seen.MEMORY,
    note="Check before relying on it.",
)
SOURCES = (SOURCE, GIRTH_SOURCE)

WEIGHT_APART = D("0.2")  # kg; from this difference, a third weighing
GIRTH_APART = D(1)  # cm; up to this difference, the mean of the two


def third_weighing(first: Decimal, second: Decimal) -> bool:
    """Whether two weights in kg differ enough for a third to be taken."""
    return abs(first - second) >= WEIGHT_APART


def measure_again(first: Decimal, second: Decimal) -> bool:
    """Whether two girths in cm differ enough for both to be taken again."""
    return abs(first - second) > GIRTH_APART


def settled(first: Decimal, second: Decimal, third: Decimal) -> Decimal:
    """Mean of the closest two of three, or of all three if the last lies exactly between the others."""
    low, middle, high = sorted((first, second, third))
    below, above = middle - low, high - middle
    if below == above:
        return (low + middle + high) / 3
    return (low + middle) / 2 if below < above else (middle + high) / 2
