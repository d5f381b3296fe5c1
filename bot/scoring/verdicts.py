"""Verdicts as cells, each worked out once for the same values.

Most readings of a long file lie within error, and then a verdict depends on two values only: the baseline's and
the new one's. Those are remembered. Beyond error the reading between them counts as well, and `judge` is asked
again. Whoever looks a verdict up names all that it depends on in the key.
"""

from __future__ import annotations

from collections.abc import Hashable
from datetime import timedelta

from bot.scoring.bounded import remember
from bot.scoring.output import Judgement, judgement
from core.change import Verdict, judge, too_soon
from core.measures.shape import Measure, MeasurementError
from core.reading import SAME, Reading

Judged = tuple[Verdict | None, Judgement]


class Verdicts:
    """One table for all people."""

    def __init__(self) -> None:
        self._known: dict[Hashable, Judged] = {}

    def known(self, key: Hashable) -> Judged | None:
        return self._known.get(key)

    def keep(self, key: Hashable, judged: Judged) -> Judged:
        """Remember a verdict, if nothing but the key decided it."""
        verdict = judged[0]
        if verdict is None or not verdict.beyond_error:
            remember(self._known, key, judged)
        return judged

    def of(
        self,
        measure: Measure,
        baseline: Reading | None,
        previous: Reading | None,
        now: Reading,
        retest: timedelta,
    ) -> Judged:
        """`judge` with the measure's own error."""
        key: Hashable
        if baseline is None:
            key = measure.key
        elif too_soon(previous or baseline, now, retest):
            key = (measure.key, baseline.value)
        elif baseline.conditions is SAME and now.conditions is SAME:
            key = (
                measure.key,
                baseline.value,
                baseline.attempts,
                baseline.window,
                now.value,
                now.attempts,
                now.window,
            )
        else:
            return afresh(measure, baseline, previous, now, retest)
        return self._known.get(key) or self.keep(key, afresh(measure, baseline, previous, now, retest))


def afresh(
    measure: Measure,
    baseline: Reading | None,
    previous: Reading | None,
    now: Reading,
    retest: timedelta,
    error: MeasurementError | None = None,
) -> Judged:
    verdict = judge(measure, baseline, previous, now, retest=retest, error=error)
    return verdict, judgement(verdict, measure.unit)
