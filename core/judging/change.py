"""Is a change more than measurement error, is it confirmed at the next retest, and does it matter?

    MDC95 = 1.96 * sqrt(sem_b^2 / n_b + sem_n^2 / n_n)

b is the baseline, n is now. A relative error is a share of the mean of b and n, so that a fall and the rise that undoes
it are judged alike (to a thousandth this is the log ratio). A difference strictly beyond MDC95 once is *possible*;
beyond it again at the next retest, in the same direction and against the same baseline, it is *confirmed*. Whether it
matters (the published important difference) is a separate question, answered separately.

Why a coach needs more than "confirmed": both retests share one noisy baseline. If it happened to be low, both look
high, so two exceedances are far from twice the evidence. And some people vary more than the typical figure says. For
simulated clients with no true change, a plan of seven measures brings 0.8 "confirmed" a client-year: for a coach of
fifty that is nearly a false alarm a week. So a coach is told by all readings together (`core.judging.course`), and a
confirmed change is *firm* if they agree.

Rejected: requiring three retests (eight more weeks of silence for little); a baseline refined with later readings that
stay within error (it would absorb a slow true change, which would go unnoticed).

Independence of errors between readings is assumed; attempts in one sitting are not independent if the error is mostly
between days (`MeasurementError.shared_by_attempts`).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from decimal import Context, Decimal
from enum import StrEnum
from functools import lru_cache
from typing import NamedTuple

from core.measures.measure import ImportantDifference, Measure, MeasurementError
from core.quantity import Better
from core.reading import Reading
from core.reliability import Z95, counting_variance

D = Decimal

# Ours: chance puts a single reading so far out less than once in a thousand client-years of a whole plan. MDC99, which
# was the bound before, was passed 0.4 times a client-year. For an error that differs between people, one SD more.
LARGE_Z = D("4.5")
# Ours: over the ninety retests of a client-year, MDC95 is passed by chance four times and more; this, less than once.
HEARD_Z = D(3)
# Ours, not published: with another scale, tape or time of day, the standard error of a reading is half as large again.
CONDITION_FACTOR = D("1.5")
# With another seat height, corridor or tape site it is a different test, and so is rising with the arms.
ARMS_USED = "arms_used"  # of `Conditions.notes`
INCOMPARABLE = frozenset({"chair", "course", "site", ARMS_USED})
EARLY_BY = timedelta(days=3)  # the official window opens this long before a retest is due

ROOTS = Context(prec=18)  # more digits than any error has; square roots to 28 digits take three times as long
_CONDITION_VARIANCE = CONDITION_FACTOR**2
_Z95_SQUARED = Z95**2


class Change(StrEnum):
    BETTER = "better"
    WORSE = "worse"
    CHANGED = "changed"  # beyond error, on a measure where neither direction is better
    WITHIN_ERROR = "within_error"
    TOO_SOON = "too_soon"
    NO_BASELINE = "no_baseline"
    STARTING = "starting"  # a further visit of the start
    NOT_COMPARABLE = "not_comparable"


BEYOND_ERROR = frozenset({Change.BETTER, Change.WORSE, Change.CHANGED})


class Strength(StrEnum):
    POSSIBLE = "possible"  # beyond MDC95 once
    CONFIRMED = "confirmed"  # and again at the next retest


@dataclass(frozen=True, slots=True)
class Verdict:
    """A judgement with its evidence, all in the measure's unit.

    difference: now minus baseline. mdc95: what error alone would rarely exceed. large: beyond `LARGE_Z` standard
    errors, the bound for a single worsening. heard: beyond `HEARD_Z` standard errors, so that a client hears of it.
    firm: confirmed, and the course of all readings agrees (`core.judging.assess`). reaches_important: at least the
    published important difference; None if none is published. widened: conditions that differed and widened the error,
    or made the readings incomparable. start_alone: the start is one reading, and all later ones are far from it.
    """

    kind: Change
    strength: Strength | None = None
    difference: Decimal | None = None
    mdc95: Decimal | None = None
    large: bool = False
    heard: bool = False
    firm: bool = False
    reaches_important: bool | None = None
    widened: frozenset[str] = frozenset()
    start_alone: bool = False
    baseline: Decimal | None = None
    baseline_at: datetime | None = None

    @property
    def beyond_error(self) -> bool:
        return self.kind in BEYOND_ERROR

    @property
    def certainty(self) -> str:
        """How certain to sound to a client: "possible", "twice" (seen twice, but not firm: see the module docstring),
        "confirmed", or "" if nothing is far enough beyond error to be said (`HEARD_Z`)."""
        if not (self.firm or self.heard):
            return ""
        if self.strength is Strength.CONFIRMED and not self.firm:
            return "twice"
        return self.strength.value if self.strength is not None else ""

    @property
    def chance(self) -> Decimal | None:
        """What a client is told that chance can make: MDC95, or the larger bound if that is passed and not heard of."""
        if self.mdc95 is None or not self.beyond_error or self.certainty:
            return self.mdc95
        return self.mdc95 * HEARD_Z / Z95

    @property
    def rising(self) -> bool | None:
        return None if not self.difference else self.difference > 0


class Side(NamedTuple):
    """One side of a comparison. variance: of `value` after averaging, in the unit squared."""

    value: Decimal
    variance: Decimal

    @property
    def sem(self) -> Decimal:
        return self.variance.sqrt()


NO_BASELINE = Verdict(Change.NO_BASELINE)
STARTING = Verdict(Change.STARTING)


def standard_error(error: MeasurementError, value: Decimal, attempts: int = 1, window: int | None = None) -> Decimal:
    """Standard error of a reading that is the mean of `attempts`, in the measure's unit.

    error: absolute, or relative to `value`. window: seconds over which a pulse was counted.
    """
    return variance(error, value, attempts, window).sqrt()


def variance(error: MeasurementError, value: Decimal, attempts: int = 1, window: int | None = None) -> Decimal:
    """Variance of a reading that is the mean of `attempts`: the square of `standard_error`.

    Raises: ValueError for no attempts, or an error that is neither absolute nor relative (a programming error).
    """
    if attempts < 1 or (error.sem is None and error.cv is None):
        raise ValueError(f"error {error.source.key} over {attempts} attempts")
    if error.sem is not None:
        own = error.sem * error.sem
    elif error.cv is not None:
        own = (error.cv * value) ** 2
    counting = _counting_variance(window) if error.counted and window is not None else D(0)
    if attempts == 1:
        return own + counting
    return own + counting / attempts if error.shared_by_attempts else (own + counting) / attempts


def level_of(before: Decimal, after: Decimal) -> Decimal:
    """The level between two values of which a relative error is taken.

    >>> level_of(Decimal(14), Decimal(12)) == level_of(Decimal(12), Decimal(14))
    True
    """
    return (before + after) / 2


_counting_variance = lru_cache(maxsize=64)(counting_variance)


def side(error: MeasurementError, reading: Reading, level: Decimal, *, widened: bool = False) -> Side:
    """A reading with its error, wider if its conditions differ from the baseline's.

    level: what a relative error is a share of: the mean of both sides (`level_of`).
    """
    own = variance(error, level, reading.attempts, reading.window)
    return Side(reading.value, own * _CONDITION_VARIANCE if widened else own)


def start_variance(error: MeasurementError, visits: Sequence[Reading], level: Decimal) -> Decimal:
    """Variance of a start of one or more visits (`core.judging.start`)."""
    first, *further = visits
    own = variance(error, level, first.attempts, first.window)
    if not further:
        return own
    for visit in further:
        own += side(error, visit, level, widened=bool(unlike(visit, first))).variance
    apart = abs(further[0].value - first.value) / 2
    shared = own / len(visits) ** 2
    if len(visits) == 2 and 4 * apart * apart > mdc95_squared(own):
        return max(shared, apart * apart)
    return shared


def judge(
    measure: Measure,
    baseline: Reading | None,
    previous: Reading | None,
    now: Reading,
    *,
    retest: timedelta | None = None,
    error: MeasurementError | None = None,
    visits: Sequence[Reading] = (),
) -> Verdict | None:
    """Judge `now` against `baseline`, and whether `previous` already showed the same change.

    visits: of the start, if there were several; `baseline` is then what they are together.

    previous: the official reading before `now`; None, or the baseline itself, at the first retest. retest: the
    interval, if the coach set one that differs from the measure's. error: propagated, for a derived measure.

    Returns None for a measure with no known error: it is shown, never judged.
    """
    error = error or measure.error
    if error is None:
        return None
    if baseline is None or baseline is now:
        return NO_BASELINE
    repeat = previous is not None and previous.taken_at > baseline.taken_at
    last = previous if repeat and previous is not None else baseline
    if too_soon(last, now, retest or measure.retest):
        return _unjudged(Change.TOO_SOON, baseline, now, frozenset())
    differing = unlike(now, baseline)
    if differing & INCOMPARABLE:
        return _unjudged(Change.NOT_COMPARABLE, baseline, now, differing)

    level = level_of(baseline.value, now.value)
    before = Side(baseline.value, start_variance(error, visits or (baseline,), level))
    after = side(error, now, level, widened=bool(differing))
    difference = after.value - before.value
    spread = before.variance + after.variance
    squared = difference * difference
    beyond = squared > mdc95_squared(spread)
    strength = None
    if beyond:
        strength = Strength.POSSIBLE
        if repeat and previous is not None and _seen_before(error, baseline, visits, previous, difference):
            strength = Strength.CONFIRMED
    return Verdict(
        kind=direction(measure.better, difference) if beyond else Change.WITHIN_ERROR,
        strength=strength,
        difference=difference,
        mdc95=mdc95(spread),
        heard=squared > HEARD_Z * HEARD_Z * spread,
        large=squared > LARGE_Z * LARGE_Z * (1 + error.spread) ** 2 * spread,
        reaches_important=reaches(measure.important, measure.better, baseline.value, difference),
        widened=differing,
        baseline=baseline.value,
        baseline_at=baseline.taken_at,
    )


def mdc95(spread: Decimal) -> Decimal:
    """What error alone would rarely exceed, 1 time in 20: the minimal detectable change (Weir 2005, J Strength Cond Res
    19(1):231-240). spread: the variances of both sides together.

    >>> round(mdc95(2 * Decimal("0.75") ** 2), 2)
    Decimal('2.08')
    """
    return Z95 * spread.sqrt(ROOTS)


def mdc95_squared(spread: Decimal) -> Decimal:
    """MDC95 squared. Comparing squares saves a root for differences that lie within error."""
    return _Z95_SQUARED * spread


def too_soon(last: Reading, now: Reading, retest: timedelta) -> bool:
    """Whether `now` came before the retest was due, counted from the last official reading."""
    return now.taken_at - last.taken_at < retest - EARLY_BY


def unlike(reading: Reading, baseline: Reading) -> frozenset[str]:
    """The conditions in which a reading is known to differ from its baseline."""
    if reading.conditions is baseline.conditions:
        return reading.conditions.differs
    differing = reading.conditions.unlike(baseline.conditions)
    return differing | (reading.conditions.notes ^ baseline.conditions.notes) & {ARMS_USED}


def _unjudged(kind: Change, baseline: Reading, now: Reading, differing: frozenset[str]) -> Verdict:
    """A verdict without a judgement. A difference that came too soon is withheld, so that nobody can comment on it."""
    return Verdict(
        kind,
        difference=None if kind is Change.TOO_SOON else now.value - baseline.value,
        widened=differing,
        baseline=baseline.value,
        baseline_at=baseline.taken_at,
    )


def _seen_before(
    error: MeasurementError, baseline: Reading, visits: Sequence[Reading], previous: Reading, difference: Decimal
) -> bool:
    """Whether the previous retest was beyond MDC95 in the same direction from the same baseline."""
    differing = unlike(previous, baseline)
    if differing & INCOMPARABLE:
        return False
    level = level_of(baseline.value, previous.value)
    before = start_variance(error, visits or (baseline,), level)
    between = side(error, previous, level, widened=bool(differing))
    earlier = between.value - baseline.value
    same_direction = (earlier > 0) == (difference > 0)
    return same_direction and earlier * earlier > _Z95_SQUARED * (before + between.variance)


def direction(better: Better, difference: Decimal) -> Change:
    """What a difference that is not zero means on this measure."""
    if better is Better.NEITHER:
        return Change.CHANGED
    return Change.BETTER if (difference > 0) == (better is Better.HIGHER) else Change.WORSE


def reaches(
    important: ImportantDifference | None, better: Better, baseline: Decimal, difference: Decimal
) -> bool | None:
    """Whether a difference reaches the published important difference; an equal one does.

    If separate figures are published for improvement and worsening, the direction decides. None if none is published.
    """
    if important is None:
        return None
    needed = important.better
    if important.worse is not None and difference and direction(better, difference) is Change.WORSE:
        needed = important.worse
    if important.relative:
        needed *= abs(baseline)
    return abs(difference) >= needed
