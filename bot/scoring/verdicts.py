"""Verdicts as cells, bypassing the core for readings that lie within error.

Most readings of a long file do, and then the verdict depends only on the baseline, the new value and the conditions of
both. Readings beyond error, or under other conditions than the baseline, go to `core.judging.change.judge`.
"""

from __future__ import annotations

from collections.abc import Hashable, Sequence
from datetime import timedelta
from decimal import Decimal
from functools import lru_cache
from math import isqrt

from bot.scoring.bounded import REMEMBERED, cache
from bot.scoring.cells import TakenValue
from bot.scoring.output import Judgement, figure, judgement, places
from core.judging.change import (
    NO_BASELINE,
    STARTING,
    Change,
    Verdict,
    judge,
    level_of,
    mdc95,
    mdc95_squared,
    reaches,
    variance,
)
from core.measures.measure import Measure, MeasurementError
from core.quantity import Unit
from core.reading import SAME, Reading

Judged = tuple[Verdict | None, Judgement]  # the verdict only if beyond error: no other raises a flag

FIRST: Judged = (None, judgement(NO_BASELINE, Unit.KILOGRAM))  # it contains nothing with a unit
STARTED = judgement(STARTING, Unit.KILOGRAM)
_WITHIN = Change.WITHIN_ERROR.replace("_", " ")
_LIMITS = 50  # each with its own table; the combinations of conditions are few
_YES_OR_NO = {None: "", True: "yes", False: "no"}


class Limit:
    """MDC95 between two readings of a measure with an absolute error.

    spread: the sum of both variances. cells: of a difference; None if it is beyond error.
    """

    __slots__ = ("cells", "spread")

    def __init__(self, spread: Decimal) -> None:
        self.spread = spread
        self.cells: dict[Decimal, tuple[str, str, str, str] | None] = {}


class Verdicts:
    """The cache for all people."""

    def __init__(self) -> None:
        self._known: dict[Hashable, Judged] = {}
        self._limits: dict[Hashable, Limit] = {}
        self._numbers: dict[Hashable, int] = {}
        self._given = 0

    def known(self, key: Hashable) -> Judged | None:
        return self._known.get(key)

    def keep(self, key: Hashable, judged: Judged | None) -> Judged | None:
        """Cache a verdict, if the key alone determines it."""
        return None if judged is None else cache(self._known, key, judged)

    def number(self, key: Hashable) -> int:
        """A number unique to the key."""
        found = self._numbers.get(key)
        if found is None:
            self._given += 1
            found = cache(self._numbers, key, self._given)
        return found

    def within(
        self,
        measure: Measure,
        baseline: TakenValue,
        text: str,
        now: TakenValue,
        own: Decimal | None = None,
        visits: int = 1,
    ) -> Judgement | None:
        """The cells of a reading within the measure's own error; None if it is beyond, or if more than the values
        decides.

        text: the cell of the baseline's value. own: its variance, if it is a start of several visits and that depends
        on no level.
        """
        before, after, error = baseline.meaning, now.meaning, measure.error
        if error is None or before.conditions is not SAME or after.conditions is not SAME:
            return None
        if error.sem is None and visits > 1:
            return None
        if error.sem is None:
            return within_spread(measure, baseline.value, text, now.value, _spread(error, baseline, now))
        key = (measure.key, own, before.attempts, before.window, after.attempts, after.window)
        limit = self._limits.get(key)
        if limit is None:
            spread = _spread(error, baseline, now)
            if own is not None:
                spread = own + variance(error, now.value, after.attempts, after.window)
            limit = cache(self._limits, key, Limit(spread), _LIMITS)
        difference = now.value - baseline.value
        try:
            cells = limit.cells[difference]
        except KeyError:
            cells = cache(limit.cells, difference, _cells(measure, difference, limit.spread, baseline.value))
        if cells is None:
            return None
        change, mdc95, word, reached = cells
        if measure.important is not None and measure.important.relative:
            reached = _YES_OR_NO[reaches(measure.important, measure.better, baseline.value, difference)]
        return text, change, mdc95, word, reached


def _spread(error: MeasurementError, baseline: TakenValue, now: TakenValue) -> Decimal:
    before, after = baseline.meaning, now.meaning
    level = level_of(baseline.value, now.value)
    return variance(error, level, before.attempts, before.window) + variance(error, level, after.attempts, after.window)


def within_spread(measure: Measure, baseline: Decimal, text: str, now: Decimal, spread: Decimal) -> Judgement | None:
    """The cells of a value within error of the baseline, or None. spread: the sum of both variances."""
    cells = _cells(measure, now - baseline, spread, baseline)
    return None if cells is None else (text, *cells)


def _cells(
    measure: Measure, difference: Decimal, spread: Decimal, baseline: Decimal
) -> tuple[str, str, str, str] | None:
    if difference * difference > mdc95_squared(spread):
        return None
    to = places(measure.unit)
    reached = _YES_OR_NO[reaches(measure.important, measure.better, baseline, difference)]
    return figure(difference, to), figure_of_mdc95(spread, to), _WITHIN, reached


def figure_of_mdc95(spread: Decimal, to: int) -> str:
    """`figure` of `mdc95`, cached by its whole number of half steps, because a Decimal root takes longer.

    Close to a half step the root itself decides, because published errors do give halves: 15 % of 8.5 s is 1.275 s.
    """
    halves, rest = divmod(isqrt(int(mdc95_squared(spread) * _SCALES[to])), _FINE)
    if rest in (0, _FINE - 1):
        return figure(mdc95(spread), to)
    return _figure_of_halves(halves, to)


@lru_cache(maxsize=REMEMBERED)
def _figure_of_halves(halves: int, to: int) -> str:
    return figure(Decimal((halves + 1) // 2).scaleb(-to), to)


_FINE = 10**6
_SCALES = tuple(Decimal((2 * 10**to * _FINE) ** 2) for to in range(4))


def afresh(
    measure: Measure,
    baseline: Reading | None,
    previous: Reading | None,
    now: Reading,
    retest: timedelta,
    error: MeasurementError | None = None,
    visits: Sequence[Reading] = (),
) -> Judged:
    verdict = judge(measure, baseline, previous, now, retest=retest, error=error, visits=visits)
    beyond = verdict is not None and verdict.beyond_error
    return verdict if beyond else None, judgement(verdict, measure.unit)


def too_soon(baseline: Decimal, unit: Unit) -> Judgement:
    return judgement(Verdict(Change.TOO_SOON, baseline=baseline), unit)
