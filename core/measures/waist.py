"""Waist: girth in cm half-way between last rib and top of the hip bone. Lower is better, above low risk.

Value    cm, the mean of two, with its site: 94 cm at the navel is not 94 cm half-way.
Error    SEM 1.9 cm, the worst technical error of self-measurement in Barrios 2016.
Matters  5 % of the baseline (Verweij 2012; the 3 % printed beside it lies inside the error).
The bounds are ours: 36 in typed without its unit falls outside `possible`, 46 in outside `usual`.
"""

from __future__ import annotations

from decimal import Decimal

from core.client import Caution, Profile
from core.measures import circumference_protocol
from core.measures.classify import adult, age_at, age_notes, band_score
from core.measures.measure import (
    BodySize,
    Bounds,
    ImportantDifference,
    Measure,
    MeasureKind,
    NoReference,
    ProfileFact,
    Protocol,
    Score,
    Scores,
    never,
)
from core.measures.parsing import quantity_in
from core.quantity import Better, Range, Unit
from core.reading import Reading
from core.references import body_errors, repeats, waist_idf, waist_nice, waist_who

D = Decimal

MIDPOINT = "midpoint"
SITES = (MIDPOINT, "navel", "hip_bone_top", "narrowest")  # values of the label "site"
OTHER_SITE = "other_site"  # a note: the limits are for the half-way site


def site_notes(reading: Reading) -> tuple[str, ...]:
    """A note if the tape is known not to have been at the site the limits require."""
    return () if reading.conditions.label("site") in (None, MIDPOINT) else (OTHER_SITE,)


def girth_not_for(reading: Reading, profile: Profile) -> str | None:
    """Why girth limits do not apply to this person, or None."""
    if adult(age_at(reading, profile), waist_nice.YOUNGEST, waist_nice.SOURCE) is not None:
        return "age_outside_table"
    return "pregnant" if Caution.PREGNANCY in profile.cautions else None


def score(reading: Reading, profile: Profile) -> Scores:
    """NICE's band by sex, WHO's, then IDF's limit by sex and family background."""
    sources = (waist_nice.SOURCE, waist_who.SOURCE, waist_idf.EUROPID_SOURCE)
    why = girth_not_for(reading, profile) or ("sex_not_given" if profile.sex is None else None)
    if why is not None or profile.sex is None:
        return tuple(NoReference(why or "sex_not_given", source) for source in sources)
    notes = (*age_notes(age_at(reading, profile)), *site_notes(reading))
    return (
        band_score(waist_nice.BY_SEX[profile.sex], reading.value, notes),
        band_score(waist_who.BY_SEX[profile.sex], reading.value, notes),
        _idf(reading.value, profile, notes),
    )


def _idf(value: Decimal, profile: Profile, notes: tuple[str, ...]) -> Score | NoReference:
    if profile.background is None:
        return NoReference("background_not_given", waist_idf.EUROPID_SOURCE)
    by_sex = waist_idf.BY_BACKGROUND.get(profile.background)
    if by_sex is None or profile.sex is None:
        return NoReference("background_outside_table", waist_idf.EUROPID_SOURCE)
    if profile.background in waist_idf.DISPUTED:
        notes = (*notes, "copies_disagree")
    return band_score(by_sex[profile.sex], value, notes)


WAIST = Measure(
    key="waist",
    kind=MeasureKind.BODY,
    unit=Unit.CENTIMETRE,
    units=circumference_protocol.UNITS,
    places=1,
    better=Better.LOWER,
    bounds=Bounds(possible=Range(D(40), D(220)), usual=Range(D(58), D(165)), jump=D(10)),
    protocol=Protocol(
        prepare=circumference_protocol.PREPARE,
        technique=("find_last_rib", "find_top_of_hip_bone", "tape_half_way_between", *circumference_protocol.ROUND),
        keep_same=circumference_protocol.KEEP_SAME,
        attempts=2,
        site=MIDPOINT,
    ),
    understand=quantity_in(Unit.CENTIMETRE, Unit.INCH, attempts=True),
    score=score,
    start_visits=2,
    error=circumference_protocol.ERROR,
    important=ImportantDifference(
        source=body_errors.WAIST_CHANGE_SOURCE, better=body_errors.WAIST_CHANGE, relative=True
    ),
    must_not=circumference_protocol.MUST_NOT,
    sources=(
        *waist_nice.SOURCES,
        *waist_who.SOURCES,
        *waist_idf.SOURCES,
        body_errors.GIRTH_SOURCE,
        body_errors.WAIST_CHANGE_SOURCE,
        repeats.GIRTH_SOURCE,
    ),
    needs=frozenset(
        {ProfileFact.CAUTIONS, ProfileFact.SEX, ProfileFact.UNITS, ProfileFact.STATURE, ProfileFact.BACKGROUND}
    ),
    alarm=never,
    body=BodySize.GIRTH,
    goal=True,
    beside="weight",
)
