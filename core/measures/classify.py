"""What the scoring of body measures shares: who counts as an adult, and a ladder's place as a score."""

from __future__ import annotations

from decimal import Decimal
from functools import cache

from core.client import Profile
from core.measures.measure import NoReference, Score
from core.reading import Reading
from core.references.ladder import Ladder
from core.sources import Source

AGE_NOT_GIVEN = "age_not_given"  # a note: read as an adult, because we look after adults only


def placed(ladder: Ladder, value: Decimal, notes: tuple[str, ...] = ()) -> Score:
    """The band of `value` in a table."""
    place = ladder.place(value)
    if not notes:
        return _without_notes(ladder)[place.rank]
    return Score(place.band, ladder.source, place.rank, place.figures, notes)


@cache
def _without_notes(ladder: Ladder) -> tuple[Score, ...]:
    """Most scores have no notes, and making one costs more than finding its band: so they are made once."""
    return tuple(Score(p.band, ladder.source, p.rank, p.figures) for p in ladder.places)


def age_at(reading: Reading, profile: Profile) -> int | None:
    """Age in whole years when the reading was taken; None when no birth year is known."""
    return profile.age_on(reading.taken_at.date())


def adult(age: int | None, youngest: int, source: Source) -> NoReference | None:
    """Why a table for adults does not apply, or None when it does. An unknown age is read as an adult's."""
    if age is not None and age < youngest:
        return NoReference("age_outside_table", source)
    return None


def age_notes(age: int | None) -> tuple[str, ...]:
    return (AGE_NOT_GIVEN,) if age is None else ()
