"""Shared by the scoring of function tests: whom a table applies to, rounding, two-sided limits.

A rank rises with the value, whichever direction is better: 0 is the side of the smaller values.
"""

from __future__ import annotations

from collections.abc import Container
from dataclasses import dataclass
from decimal import Decimal

from core.client import Profile, Sex
from core.measures.classify import age_at
from core.measures.measure import NoReference, Score
from core.quantity import half_up
from core.reading import Reading
from core.sources import Source

ARMS_USED = "arms_used"  # of `Conditions.notes`: a stand was helped with the arms


@dataclass(frozen=True, slots=True)
class AgeAndSex:
    """The facts that a table by age and sex needs."""

    age: int
    sex: Sex


def rounded(reading: Reading, places: int) -> Decimal:
    """The value at the instrument's resolution, rounded before any comparison: 11.96 s is 12.0 s."""
    return half_up(reading.value, places)


def in_ages(reading: Reading, profile: Profile, ages: Container[int], source: Source) -> NoReference | None:
    """Why a reference does not apply at this age, or None if it does."""
    age = age_at(reading, profile)
    if age is None:
        return NoReference("age_not_given", source)
    return None if age in ages else NoReference("age_outside_table", source)


def person(reading: Reading, profile: Profile, source: Source) -> AgeAndSex | NoReference:
    """Age and sex, or which of them is unknown."""
    age = age_at(reading, profile)
    if age is None:
        return NoReference("age_not_given", source)
    if profile.sex is None:
        return NoReference("sex_not_given", source)
    return AgeAndSex(age, profile.sex)


def split(source: Source, limit: Decimal, upper: bool, bands: tuple[str, str]) -> Score:
    """The side of a limit on which a value lies. bands: of the smaller values, of the larger ones."""
    return Score(bands[upper], source, rank=int(upper), figures=(("limit", limit),))
