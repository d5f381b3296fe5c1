"""A reading while it is scored: what its cells mean, its value and its instant.

A `Reading` of the core costs twenty times as much to make, and most rows need none: so one is made only for a rule
that asks for it.
"""

from __future__ import annotations

from datetime import datetime
from decimal import Decimal

from bot.scoring.parse_row import Meaning
from core.measures.measure import Measure
from core.reading import How, Reading


class TakenValue:
    """value: in the measure's own unit; the mean of several has another than its meaning's cells."""

    __slots__ = ("meaning", "taken_at", "value")

    def __init__(self, meaning: Meaning, value: Decimal, taken_at: datetime) -> None:
        self.meaning = meaning
        self.value = value
        self.taken_at = taken_at

    @property
    def attempts(self) -> int:
        return self.meaning.attempts

    @property
    def window(self) -> int | None:
        return self.meaning.window

    def reading(self) -> Reading:
        """The same for the core."""
        how = self.meaning
        return Reading(
            how.key,
            self.value,
            self.taken_at,
            second=how.second,
            unit=how.typed,
            conditions=how.conditions,
            how=How.IMPORTED,
            attempts=how.attempts,
            window=how.window,
        )


def taken(measure: Measure, reading: Reading) -> TakenValue:
    """A reading that the core made."""
    how = Meaning(
        0,
        measure.key,
        measure,
        conditions=reading.conditions,
        second=reading.second,
        typed=reading.unit,
        attempts=reading.attempts,
        window=reading.window,
    )
    return TakenValue(how, reading.value, reading.taken_at)
