"""How much further (+) or less far (-) than expected somebody walked in six minutes. Derived; metres.

Value   metres walked minus metres expected by Enright & Sherrill 1998, from age, height, sex and the newest weight.
Second  the weight used, in kg, so that other equations can be applied to the same reading.
Below the lower limit of normal is a difference under -153 m (men) or -139 m (women). Later equations give other
distances, so a percentage always names its equation.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from decimal import Decimal

from core.client import Profile, Sex
from core.measures.classify import age_at
from core.measures.measure import Bounds, Measure, MeasureKind, NoReference, Score, Scores, never
from core.quantity import Better, Range, Unit, half_up
from core.reading import Reading
from core.references import six_minute_walk_enright_1998 as enright
from core.references import six_minute_walk_enright_2003 as later
from core.references import six_minute_walk_troosters_1999 as troosters
from core.sources import Source

D = Decimal
KEY = "six_minute_walk_difference"
SOURCES = (enright.SOURCE, troosters.SOURCE, later.SOURCE)


def derive(newest: Mapping[str, Reading], profile: Profile) -> Reading | None:
    """The difference, at the instant of the walk; None if an input is unknown or the age is outside 40-80."""
    walk, weight = newest.get("six_minute_walk"), newest.get("weight")
    if walk is None or weight is None or profile.sex is None or profile.stature is None:
        return None
    age = age_at(walk, profile)
    if age is None:
        return None
    expected = enright.expected(profile.sex, age, profile.stature, weight.value)
    if expected is None:
        return None
    difference = half_up(walk.value, 0) - expected
    return replace(walk, measure=KEY, value=difference, second=weight.value, unit=Unit.METRE, id=None)


def score(reading: Reading, profile: Profile) -> Scores:
    """Against the lower limit of normal first; then as a percentage of the distance expected by two other equations."""
    age, weight = age_at(reading, profile), reading.second
    if age is None:
        return (NoReference("age_not_given", enright.SOURCE),)
    if profile.sex is None:
        return (NoReference("sex_not_given", enright.SOURCE),)
    if profile.stature is None:
        return (NoReference("stature_not_given", enright.SOURCE),)
    if weight is None:
        return (NoReference("weight_not_given", enright.SOURCE),)
    expected = enright.expected(profile.sex, age, profile.stature, weight)
    if expected is None:
        return (NoReference("age_outside_table", enright.SOURCE),)
    walked = reading.value + expected
    return (
        _against_limit(walked, expected, profile.sex),
        _share(walked, troosters.expected(profile.sex, age, profile.stature, weight), troosters.SOURCE),
        _share(walked, later.expected(profile.sex, age, profile.stature, weight), later.SOURCE),
    )


def _against_limit(walked: Decimal, expected: Decimal, sex: Sex) -> Score:
    limit = enright.lower_limit(sex, expected)
    figures = (("expected", expected), ("limit", limit), ("percent", _percent(walked, expected)))
    if walked < limit:
        return Score("below_lower_limit", enright.SOURCE, 0, figures)
    return Score("not_below_lower_limit", enright.SOURCE, 1, figures)


def _share(walked: Decimal, expected: Decimal | None, source: Source) -> Score | NoReference:
    if expected is None:
        return NoReference("age_outside_table", source)
    rank = int(walked >= expected)
    figures = (("expected", expected), ("percent", _percent(walked, expected)))
    return Score(("less_than_expected", "as_expected")[rank], source, rank, figures)


def _percent(walked: Decimal, expected: Decimal) -> Decimal:
    return half_up(100 * walked / expected, 1)


SIX_MINUTE_WALK_DIFFERENCE = Measure(
    key=KEY,
    kind=MeasureKind.DERIVED,
    unit=Unit.METRE,
    better=Better.HIGHER,
    bounds=Bounds(possible=Range(D(-1000), D(700)), usual=Range(D(-400), D(300))),
    score=score,
    derived_from=("six_minute_walk", "weight"),
    derive=derive,
    sources=SOURCES,
    needs=frozenset(),
    alarm=never,
    body=None,
    said_with="six_minute_walk",
)
