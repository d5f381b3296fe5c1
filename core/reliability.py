"""Measurement error: from published study figures to a standard error of measurement (SEM), and what a change may mean.

All arguments and results are Decimals in the measure's own unit unless stated otherwise. SEM, technical error of
measurement, typical error and within-subject SD are four names for the same thing: the SD of one person's repeated
values without true change.

All functions raise ValueError for an impossible argument, which means a fault in our tables, never in a client's input.

Sources: Weir 2005, J Strength Cond Res 19(1):231-240 (SEM, MDC); Hopkins 2000, Sports Med 30(1):1-15 (typical
error); Bland & Altman 1996, BMJ 312:1654 and 313:744, and 1986, Lancet 327:307-310 (within-subject SD,
repeatability, limits of agreement); Jacobson & Truax 1991, J Consult Clin Psychol 59(1):12-19 (reliable
change); Hopkins 2004, sportsci.org (smallest worthwhile change). The pulse rule is our own arithmetic.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from statistics import NormalDist
from typing import NamedTuple

D = Decimal
Z90, Z95, Z99 = D("1.645"), D("1.96"), D("2.576")  # two-sided, as the papers print them
ROOT_2 = D(2).sqrt()
TEAM_FRACTION = D("0.2")  # of the SD between people (Hopkins 2004)


def mean(values: Sequence[Decimal]) -> Decimal:
    if not values:
        raise ValueError("no values")
    return sum(values, D(0)) / len(values)


def sample_variance(values: Sequence[Decimal]) -> Decimal:
    """Sample variance, with n - 1 in the denominator."""
    if len(values) < 2:
        raise ValueError("one value has no variance")
    centre = mean(values)
    return sum(((v - centre) ** 2 for v in values), D(0)) / (len(values) - 1)


def sample_sd(values: Sequence[Decimal]) -> Decimal:
    """The sample SD: the typical error, if `values` are one person's repeats.

    >>> round(sample_sd([D(72), D(76), D(74), D(79), D(79), D(77)]), 1)
    Decimal('2.8')
    """
    return sample_variance(values).sqrt()


def sem_from_reliability(sd: Decimal, reliability: Decimal) -> Decimal:
    """SEM = SD * sqrt(1 - ICC): `sd` between people, `reliability` in 0 to 1.

    >>> sem_from_reliability(D(10), D("0.91"))
    Decimal('3.0')
    """
    if sd < 0 or not 0 <= reliability <= 1:
        raise ValueError(f"sd {sd}, reliability {reliability}")
    return sd * (1 - reliability).sqrt()


def sem_from_mdc(mdc: Decimal, *, z: Decimal = Z95) -> Decimal:
    """SEM = MDC / (z * sqrt 2), for a minimal detectable change between two single readings."""
    if mdc <= 0 or z <= 0:
        raise ValueError(f"mdc {mdc}, z {z}")
    return mdc / (z * ROOT_2)


def typical_error(differences: Sequence[Decimal]) -> Decimal:
    """SD(differences) / sqrt 2, from each person's second value minus the first. A shift of the mean does not
    contribute.
    """
    return sample_sd(differences) / ROOT_2


def within_subject_sd(differences: Sequence[Decimal]) -> Decimal:
    """sqrt(sum d^2 / 2n) from pairs, if no shift of the mean is expected."""
    if not differences:
        raise ValueError("no pairs")
    return (sum((d * d for d in differences), D(0)) / (2 * len(differences))).sqrt()


def within_subject_sd_of_repeats(people: Sequence[Sequence[Decimal]]) -> Decimal:
    """Square root of the mean within-person variance, each person measured equally often."""
    return mean([sample_variance(person) for person in people]).sqrt()


def root_mean_square(sds: Sequence[Decimal]) -> Decimal:
    """One SEM from several people's SDs; a mean of SDs would be too small."""
    return mean([sd * sd for sd in sds]).sqrt()


def together(*errors: Decimal) -> Decimal:
    """Independent sources of error add as squares: sqrt(a^2 + b^2 + ...)."""
    return sum((e * e for e in errors), D(0)).sqrt()


def averaged(sem: Decimal, n: int) -> Decimal:
    """SEM of the mean of n values whose errors are independent: SEM / sqrt n."""
    if n < 1:
        raise ValueError(f"mean of {n} values")
    return sem / D(n).sqrt()


def percent_mdc(mdc: Decimal, centre: Decimal) -> Decimal:
    """MDC as a percentage of the mean it was found at."""
    return 100 * mdc / centre


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


class Agreement(NamedTuple):
    """Bias between two methods, and the limits expected to contain 95 % of differences."""

    low: Decimal
    bias: Decimal
    high: Decimal


def limits_of_agreement(differences: Sequence[Decimal]) -> Agreement:
    """mean(d) -/+ 1.96 SD(d)."""
    bias, spread = mean(differences), Z95 * sample_sd(differences)
    return Agreement(bias - spread, bias, bias + spread)


class ReliableChange(NamedTuple):
    """in_errors: the change in units of its own error. reliable: beyond 1.96, strictly."""

    in_errors: Decimal
    standard_error: Decimal
    of_difference: Decimal
    reliable: bool


def reliable_change(before: Decimal, after: Decimal, *, sd: Decimal, reliability: Decimal) -> ReliableChange:
    """RC = (after - before) / (sqrt 2 * SD * sqrt(1 - r)): the same question as MDC95, for one change."""
    error = sem_from_reliability(sd, reliability)
    of_difference = ROOT_2 * error
    in_errors = (after - before) / of_difference
    return ReliableChange(in_errors, error, of_difference, abs(in_errors) > Z95)


def smallest_worthwhile_change(sd: Decimal, fraction: Decimal = TEAM_FRACTION) -> Decimal:
    """0.2 of the SD between people; the usual default if no important difference is published."""
    return fraction * sd


class Chances(NamedTuple):
    """Probabilities that the true change is better, too small to matter, or worse; they add up to 1."""

    better: float
    trivial: float
    worse: float


def chances(change: Decimal, *, sem: Decimal, worthwhile: Decimal) -> Chances:
    """How likely the true change exceeds the smallest worthwhile one, in either direction, given one observed `change`.

    The true change is assumed normal around the observed one with SD = SEM * sqrt 2: 1 - Phi((SWC - change) /
    SD).
    """
    spread = NormalDist(float(change), float(sem * ROOT_2))
    better = 1 - spread.cdf(float(worthwhile))
    worse = spread.cdf(-float(worthwhile))
    return Chances(better, 1 - better - worse, worse)
