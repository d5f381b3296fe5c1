"""A reading, the conditions it was taken under, and the choice of a baseline."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime
from decimal import Decimal
from enum import StrEnum

from core.quantity import Unit


class How(StrEnum):
    """How a reading came about."""

    ASKED = "asked"
    UNASKED = "unasked"  # volunteered by the client when it was welcome
    EARLY = "early"  # too soon: a side note, never scored, charted or commented on
    IMPORTED = "imported"


@dataclass(frozen=True, slots=True)
class Conditions:
    """The conditions a reading was taken under, relative to the last time.

    differs: aspects the client says were different from last time, e.g. {"scales", "time_of_day"}.
    labels: named aspects, sorted, e.g. (("course", "hall"), ("site", "navel")).
    notes: facts of the attempt itself, e.g. {"arms_used", "more_than_half_way"}.
    words: what the client wrote about the week, as they wrote it.
    """

    differs: frozenset[str] = field(default_factory=frozenset)
    labels: tuple[tuple[str, str], ...] = ()
    notes: frozenset[str] = field(default_factory=frozenset)
    words: str = ""

    def label(self, aspect: str) -> str | None:
        return dict(self.labels).get(aspect)

    def unlike(self, other: Conditions) -> frozenset[str]:
        """Aspects in which two readings are known to differ, by report or by label."""
        if not self.labels or not other.labels:
            return self.differs
        mine, theirs = dict(self.labels), dict(other.labels)
        return self.differs | {a for a in mine.keys() & theirs.keys() if mine[a] != theirs[a]}


SAME = Conditions()


@dataclass(frozen=True, slots=True)
class Reading:
    """One value given by a client.

    value: in the measure's own unit (kg, cm, bpm, mmHg systolic, s, ...).
    second: the diastolic pressure of a blood pressure, the end pulse of a mile walk; else None.
    taken_at: the instant, aware, UTC.
    as_typed, unit: the original text, and the unit in which it was understood.
    attempts: how many attempts `value` is the mean of.
    window: seconds over which a pulse was counted; None for a device's reading.
    id: of the stored row; None until stored.  key: its identifier in the conversation (see effects.Record).
    """

    measure: str
    value: Decimal
    taken_at: datetime
    second: Decimal | None = None
    as_typed: str = ""
    unit: Unit | None = None
    conditions: Conditions = SAME
    how: How = How.ASKED
    attempts: int = 1
    window: int | None = None
    id: int | None = None
    key: str = ""

    @property
    def counts(self) -> bool:
        """Whether it counts: side notes are stored but never scored, charted or compared."""
        return self.how is not How.EARLY


def baseline(series: tuple[Reading, ...], since: datetime | None = None) -> Reading | None:
    """The first reading that counts, taken at or after `since` (a coach may start a new programme)."""
    counting = [r for r in series if r.counts and (since is None or r.taken_at >= since)]
    return min(counting, key=lambda r: r.taken_at, default=None)
