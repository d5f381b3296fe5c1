"""Readings as CSV, with the columns that `samehour score` and `samehour import` read.

    person,taken_at,measure,value,unit,conditions,how,attempts,as_given

Values are in the measure's own unit, so that each measure has one unit. Somebody who uses another finds theirs in
as_given, and it comes back with the reading: 12 st 4 lb. A cell that a spreadsheet would treat as a formula gets a
leading apostrophe, which is removed on reading.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from bot.foundation.spreadsheet import figure, table
from bot.scoring.output import as_given
from core.measures import MEASURES
from core.measures.chair_stand_30s import HALF_WAY
from core.measures.score_function_tests import ARMS_USED
from core.quantity import Unit
from core.reading import Conditions, Reading

COLUMNS = ("person", "taken_at", "measure", "value", "unit", "conditions", "how", "attempts", "as_given")


def readings_csv(people: Iterable[tuple[str, Sequence[Reading]]], *, side_notes: bool = False) -> str:
    """CSV of readings. people: (name, readings), oldest first.

    side_notes: include readings that never count.
    """
    rows = (row(name, r) for name, series in people for r in series if side_notes or r.counts)
    return table(COLUMNS, rows)


def row(person: str, reading: Reading) -> tuple[str, ...]:
    """One reading's cells, in the order of `COLUMNS`."""
    value, unit = value_cells(reading)
    return (
        person,
        reading.taken_at.isoformat(),
        reading.measure,
        value,
        unit,
        conditions_cell(reading.conditions),
        reading.how.value,
        str(reading.attempts),
        as_given(reading.value, MEASURES[reading.measure].unit, reading.unit),
    )


def value_cells(reading: Reading) -> tuple[str, str]:
    """The cells value and unit, which read back to the same reading."""
    measure, value, second = MEASURES[reading.measure], reading.value, reading.second
    if measure.unit is Unit.MILLIMETRE_OF_MERCURY and second is not None:
        return f"{figure(value)}/{figure(second)}", measure.unit.value
    if reading.window is not None and not (beats := value * reading.window / 60) % 1:
        return f"{figure(beats)} in {reading.window} s", ""  # the counting window determines the error
    if measure.second_called and second is not None:
        return f"{figure(value)} min, {figure(second)}", ""
    if reading.measure == "activity_minutes" and second is not None:
        return f"{figure(value)} moderate, {figure(second)} vigorous", measure.unit.value
    notes = reading.conditions.notes
    if reading.measure == "chair_stand_30s" and HALF_WAY in notes and ARMS_USED not in notes and value >= 1:
        value -= 1  # the last half rise is added again on reading
    return figure(value), measure.unit.value


def conditions_cell(conditions: Conditions) -> str:
    """The conditions in the format that `bot.scoring.parse_row` reads.

    >>> conditions_cell(Conditions(frozenset({"scales"}), (("site", "navel"),), frozenset({"arms_used"})))
    'site=navel; different scales; arms used'
    """
    parts = [f"{aspect}={name}" for aspect, name in conditions.labels]
    parts += [f"different {aspect.replace('_', ' ')}" for aspect in sorted(conditions.differs)]
    parts += [note.replace("_", " ") for note in sorted(conditions.notes)]
    return "; ".join(parts)
