"""Shared by the scoring of body measures: who counts as an adult, and a ladder's band as a score."""

from __future__ import annotations

from decimal import Decimal
from functools import cache

from core.client import Profile
from core.measures.measure import NoReference, Score
from core.reading import Reading
from core.references.ladder import Ladder
from core.sources import Source

AGE_NOT_GIVEN = "age_not_given"  # a note: assumed to be an adult, because all our clients are


def band_score(ladder: Ladder, value: Decimal, notes: tuple[str, ...] = ()) -> Score:
    """The band of `value` in a table."""
    found = ladder.find(value)
    if not notes:
        return _without_notes(ladder)[found.rank]
    return Score(found.band, ladder.source, found.rank, found.figures, notes)


@cache
def _without_notes(ladder: Ladder) -> tuple[Score, ...]:
    """Most scores have no notes, and creating one costs more than finding its band, so they are created once."""
    return tuple(Score(p.band, ladder.source, p.rank, p.figures) for p in ladder.bands)


def age_at(reading: Reading, profile: Profile) -> int | None:
    """Age in whole years when the reading was taken; None if the birth year is unknown."""
    return profile.age_on(reading.taken_at.date())


def adult(age: int | None, youngest: int, source: Source) -> NoReference | None:
    """Why a table for adults does not apply, or None if it does. If age is unknown, assume an adult."""
    if age is not None and age < youngest:
        return NoReference("age_outside_table", source)
    return None


def age_notes(age: int | None) -> tuple[str, ...]:
    return (AGE_NOT_GIVEN,) if age is None else ()
