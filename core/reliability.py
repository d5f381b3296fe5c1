"""How big an error is: from what a study prints to a standard error of measurement (SEM).

All arguments and results are Decimals in the measure's own unit unless stated otherwise. SEM, technical error of
measurement, typical error and within-subject SD are four names for the same thing: the SD of one person's repeated
values without true change.

All functions raise ValueError for an impossible argument, which means a fault in our tables, never in a client's input.

Sources: Weir 2005, J Strength Cond Res 19(1):231-240 (SEM, MDC). The pulse rule is our own arithmetic.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

D = Decimal
Z95 = D("1.96")  # two-sided, as the papers print it
ROOT_2 = D(2).sqrt()


def mean(values: Sequence[Decimal]) -> Decimal:
    if not values:
        raise ValueError("no values")
    return sum(values, D(0)) / len(values)


def sem_from_mdc(mdc: Decimal, *, z: Decimal = Z95) -> Decimal:
    """SEM = MDC / (z * sqrt 2), for a minimal detectable change between two single readings."""
    if mdc <= 0 or z <= 0:
        raise ValueError(f"mdc {mdc}, z {z}")
    return mdc / (z * ROOT_2)


def counting_step(window: int) -> Decimal:
    """Resolution in bpm of whole beats counted for `window` seconds: 4 for 15 s."""
    if window <= 0:
        raise ValueError(f"a count over {window} s")
    return D(60) / window


def counting_variance(window: int) -> Decimal:
    """Variance in bpm^2 added by counting whole beats for `window` seconds: step^2 / 6.

    The clock starts at a random moment of a beat, so both ends of the window are cut at random: the count is one too
    few or too many with a probability equal to the fraction cut off. Averaged over all rates that is step^2 / 6, twice
    the step^2 / 12 of rounding to the nearest step.

    >>> round(counting_variance(15).sqrt(), 3)
    Decimal('1.633')
    """
    step = counting_step(window)
    return step * step / 6
