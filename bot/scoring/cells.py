"""A reading while it is scored: parsed cells, value and instant.

A core `Reading` takes twenty times as long to create, and most rows need none, so one is created only for rules that
use it.
"""

from __future__ import annotations

from datetime import datetime
from decimal import Decimal

from bot.scoring.parse_row import Meaning
from core.measures.measure import Measure
from core.reading import How, Reading


class TakenValue:
    """value: in the measure's own unit; for a mean of several it differs from the value parsed from the cells."""

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
        """The core's form of this reading."""
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
    """From a reading that the core made."""
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
