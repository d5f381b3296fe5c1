"""Derived readings: one value computed from the newest readings of other measures, with their time and conditions."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import timedelta
from decimal import Decimal

from core.client import Profile
from core.quantity import Unit
from core.reading import SAME, Conditions, How, Reading

TOGETHER = timedelta(days=14)  # ours: girths taken further apart than this do not form a ratio


def combined(measure: str, value: Decimal, unit: Unit, *parts: Reading, notes: frozenset[str] = frozenset()) -> Reading:
    """A reading of `measure`, dated by the last of its parts, with the combined conditions of all.

    A label on which two parts disagree is left out. The reading counts only if every part counts.
    """
    last = max(parts, key=lambda part: part.taken_at)
    return Reading(
        measure=measure,
        value=value,
        unit=unit,
        taken_at=last.taken_at,
        conditions=_of_all(parts, notes),
        how=last.how if all(part.counts for part in parts) else How.EARLY,
        attempts=min(part.attempts for part in parts),
    )


def _of_all(parts: tuple[Reading, ...], notes: frozenset[str]) -> Conditions:
    if not notes and all(part.conditions is SAME for part in parts):
        return SAME
    if len(parts) == 1:
        return Conditions(parts[0].conditions.differs, parts[0].conditions.labels, notes)
    labels = {pair for part in parts for pair in part.conditions.labels}
    aspects = [aspect for aspect, _ in labels]
    return Conditions(
        differs=frozenset().union(*(part.conditions.differs for part in parts)),
        labels=tuple(sorted(pair for pair in labels if aspects.count(pair[0]) == 1)),
        notes=notes,
    )


def stature(readings: Mapping[str, Reading], profile: Profile) -> Decimal | None:
    """Height in cm: the newest reading, else from the profile."""
    return readings["height"].value if "height" in readings else profile.stature
