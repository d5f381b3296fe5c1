"""Is a goal sensible, and how far along is the client?

A goal is a target in the measure's unit and a date. It is questioned, with a gentler target where there is one, if it
is faster than published rates of loss, leads to underweight, is too small for the measurement to show, or lies in the
past. Weight and girth are not goals at all in pregnancy or if food and weight are a worry.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from decimal import ROUND_CEILING, Decimal
from enum import StrEnum

from core.client import Caution, Profile
from core.judging.change import level_of, variance
from core.measures.measure import BodySize, Measure, MeasurementError
from core.quantity import Better
from core.reading import Reading
from core.references import weight_loss_rates
from core.references.boundaries import bmi_for_class
from core.reliability import Z95

D = Decimal
LOWEST_BMI = D("18.5")  # WHO: below it is underweight


@dataclass(frozen=True, slots=True)
class Goal:
    """measure: its key. target: in the measure's unit. by: a local date."""

    measure: str
    target: Decimal
    by: date


class GoalDoubt(StrEnum):
    """Why a goal does not make sense as it stands; most serious first."""

    PREGNANCY = "pregnancy"  # not for weight or girth
    EATING_WORRIES = "eating_worries"  # not for weight or girth
    BMI_UNDER_18_5 = "bmi_under_18_5"
    IN_THE_PAST = "in_the_past"
    ALREADY_THERE = "already_there"
    WRONG_DIRECTION = "wrong_direction"
    FASTER_THAN_PUBLISHED = "faster_than_published"
    SMALLER_THAN_ERROR = "smaller_than_error"


@dataclass(frozen=True, slots=True)
class GoalSense:
    """doubts: most serious first; empty for a sensible goal. suggest: a gentler target for the same date, or None."""

    doubts: tuple[GoalDoubt, ...] = ()
    suggest: Decimal | None = None

    @property
    def sensible(self) -> bool:
        return not self.doubts


def check(
    measure: Measure,
    goal: Goal,
    current: Reading,
    profile: Profile,
    today: date,
    *,
    error: MeasurementError | None = None,
) -> GoalSense:
    """Check whether a goal is sensible, given the newest official reading.

    today: the client's own date.  error: propagated, for a derived measure.
    """
    doubts = {doubt for doubt, caution in _NOT_FOR_SIZE.items() if caution in profile.cautions}
    if not measure.hideable:
        doubts = set()
    elif doubts:
        return GoalSense(_in_order(doubts))
    to_go = goal.target - current.value
    days = (goal.by - today).days
    lowest = _lowest(measure, profile)
    if lowest is not None and to_go < 0 and _bmi_at(measure, goal.target, profile) < LOWEST_BMI:
        doubts.add(GoalDoubt.BMI_UNDER_18_5)
    if days <= 0:
        doubts.add(GoalDoubt.IN_THE_PAST)
    if to_go == 0:
        doubts.add(GoalDoubt.ALREADY_THERE)
    elif measure.better is not Better.NEITHER and (to_go > 0) != (measure.better is Better.HIGHER):
        doubts.add(GoalDoubt.WRONG_DIRECTION)
    rated = measure.body is BodySize.WEIGHT and days > 0
    if rated and not weight_loss_rates.rate(current.value, goal.target, days).accepted:
        doubts.add(GoalDoubt.FASTER_THAN_PUBLISHED)
    smallest = _smallest(measure, current, goal.target, error)
    if to_go and abs(to_go) <= smallest:
        doubts.add(GoalDoubt.SMALLER_THAN_ERROR)
    return GoalSense(_in_order(doubts), _kinder(doubts, measure, current, days, lowest, smallest))


_NOT_FOR_SIZE = {GoalDoubt.PREGNANCY: Caution.PREGNANCY, GoalDoubt.EATING_WORRIES: Caution.EATING_WORRIES}


def _in_order(doubts: set[GoalDoubt]) -> tuple[GoalDoubt, ...]:
    return tuple(d for d in GoalDoubt if d in doubts)


def _bmi_at(measure: Measure, target: Decimal, profile: Profile) -> Decimal:
    """Rounded as the classes are (D1), so that a target shown as 18.5 is 18.5."""
    if measure.body is BodySize.MASS_INDEX or profile.stature is None:
        return bmi_for_class(target)
    return bmi_for_class(target / (profile.stature / 100) ** 2)


def _lowest(measure: Measure, profile: Profile) -> Decimal | None:
    """The lowest target, in the measure's unit, that is not underweight; None if it cannot be worked out."""
    if measure.body is BodySize.MASS_INDEX:
        return LOWEST_BMI
    if measure.body is BodySize.WEIGHT and profile.stature:
        return (LOWEST_BMI * (profile.stature / 100) ** 2).quantize(D("0.1"), ROUND_CEILING)
    return None


def _smallest(measure: Measure, current: Reading, target: Decimal, error: MeasurementError | None) -> Decimal:
    """The smallest change worth aiming for: MDC95 from the current reading to the target; 0 if the error is unknown."""
    known = error or measure.error
    if known is None:
        return D(0)
    level = level_of(current.value, target)
    return Z95 * (2 * variance(known, level, current.attempts, current.window)).sqrt()


def _kinder(
    doubts: set[GoalDoubt],
    measure: Measure,
    current: Reading,
    days: int,
    lowest: Decimal | None,
    smallest: Decimal,
) -> Decimal | None:
    """Half a kilogram a week (NICE's slower end) by the same date, never underweight, and large enough to be
    detected."""
    if not doubts & {GoalDoubt.FASTER_THAN_PUBLISHED, GoalDoubt.BMI_UNDER_18_5} or days <= 0:
        return None
    target = lowest
    if measure.body is BodySize.WEIGHT:
        slow = current.value - weight_loss_rates.SLOWER_PER_WEEK * days / 7
        target = slow if lowest is None else max(slow, lowest)
    if target is None:
        return None
    target = target.quantize(D(1).scaleb(-measure.places), ROUND_CEILING)
    return target if current.value - target > smallest else None


@dataclass(frozen=True, slots=True)
class Progress:
    """percent: of the way from baseline to target, a whole number from 0 to 100. reached: at or beyond the target."""

    percent: int
    reached: bool


def progress(goal: Goal, baseline: Reading, now: Reading) -> Progress:
    """How far along, at a retest. Never called for a side note: a reading between retests is not discussed."""
    way, gone = goal.target - baseline.value, now.value - baseline.value
    if way == 0:
        return Progress(100, True)
    share = gone / way
    return Progress(int(min(max(share, D(0)), D(1)) * 100), share >= 1)
