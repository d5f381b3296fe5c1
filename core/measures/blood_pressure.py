"""Blood pressure at home: mmHg, upper and lower number, as a series of days. Lower is better unless low.

Value    systolic, with diastolic as `second`: 4 to 7 days, morning and evening, two readings each time.
Error    SEM 8.6 systolic and 5.8 diastolic for one day's pressure (Kato 2010).
One reading is compared only with the levels that call for action (severe, low). `score_mean` compares the mean of a
series with the limits of NICE, AHA/ACC or ESC. No important difference was found. The bounds are ours.
"""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal

from core.client import Caution, Profile
from core.measures.classify import age_at, age_notes
from core.measures.home_bp_series import SERIES_MEAN, diastolic
from core.measures.measure import (
    SIT_QUIETLY,
    AlarmKind,
    Bounds,
    Measure,
    MeasureKind,
    MeasurementError,
    NoReference,
    ProfileFact,
    Protocol,
    ReadingAlarm,
    Repeat,
    Score,
    Scores,
)
from core.measures.parsing import pressure
from core.quantity import Better, Range, Unit
from core.reading import Reading
from core.references import (
    body_errors,
    bp_aha,
    bp_esc,
    bp_low,
    bp_nhs_over_80,
    bp_nice_home,
    bp_severe,
)
from core.references.pressure_bands import PressureBand, PressureTable
from core.sources import Source

D = Decimal

BODIES: dict[str, PressureTable] = {"nice": bp_nice_home.HOME, "aha": bp_aha.HOME, "esc": bp_esc.HOME}
DEFAULT_LIMITS = "nice"
DIASTOLIC_ERROR = MeasurementError(
    source=body_errors.PRESSURE_SOURCE,
    sem=body_errors.DIASTOLIC_SEM,
)


def score(reading: Reading, profile: Profile) -> Scores:
    """A single reading: severe or low, else no comparison. The mean of a series: by NICE."""
    if reading.second is None:
        return (NoReference("one_number_missing", bp_nice_home.SOURCE),)
    age = age_at(reading, profile)
    if SERIES_MEAN in reading.conditions.notes:
        return (score_series(reading, profile, DEFAULT_LIMITS),)
    acted_on = _acted_on(reading.value, reading.second, profile, age)
    return (acted_on or NoReference("single_reading", bp_nice_home.SOURCE),)


def score_series(mean: Reading, profile: Profile, body: str) -> Score | NoReference:
    """`score_mean` of a reading that represents a series (`home_bp_series.as_reading`)."""
    return score_mean(mean.value, diastolic(mean), profile, age=age_at(mean, profile), body=body)


def score_mean(
    systolic: Decimal, diastolic: Decimal, profile: Profile, *, age: int | None, body: str
) -> Score | NoReference:
    """Compare the mean of a home series, unrounded, with the home limits of `body`: "nice", "aha" or "esc".

    age: whole years when it was taken, None if unknown. Either number is enough for the higher category. Over 80, the
    NHS limit for that age replaces NICE's. Severe and low take precedence over any category.

    Raises: KeyError for another body (a programming error).
    """
    return _mean(systolic, diastolic, profile, age, body)


def alarm(reading: Reading, profile: Profile) -> ReadingAlarm | None:
    """Severe from 180 or 120 up, in pregnancy from 160 or 110; low below 90 or 60. Severe wins over low.

    Either number is enough, even if the other is missing or cannot be right: an alarm errs on the side of caution.
    """
    systolic, lower = reading.value, reading.second
    figures: tuple[tuple[str, Decimal], ...] = (("systolic", systolic),)
    if lower is None:
        lower = bp_low.DIASTOLIC_BELOW  # neither low nor severe
    else:
        figures = (*figures, ("diastolic", lower))
    severe, source, caution = severe_for(profile, age_at(reading, profile))
    if severe.reached(systolic, lower):
        return ReadingAlarm(AlarmKind.SEVERE_PRESSURE, source, figures, repeat=True, caution=caution)
    if bp_low.low(systolic, lower):
        return ReadingAlarm(AlarmKind.LOW_PRESSURE, bp_low.SOURCE, figures, repeat=False)
    return None


def severe_for(profile: Profile, age: int | None) -> tuple[PressureBand, Source, Caution | None]:
    """The severe limits for this person, their source, and the caution that sets them, if any.

    Whoever may be pregnant, as far as is known, gets the limits for pregnancy; the words name it only if they said so.
    """
    if profile.may_have(Caution.PREGNANCY, age):
        said = Caution.PREGNANCY if Caution.PREGNANCY in profile.cautions else None
        return bp_severe.SEVERE_IN_PREGNANCY, bp_severe.PREGNANCY_SOURCE, said
    return bp_severe.SEVERE, bp_severe.SOURCE, None


def _mean(systolic: Decimal, diastolic: Decimal, profile: Profile, age: int | None, body: str) -> Score | NoReference:
    table = mean_limits(age, body)
    acted_on = _acted_on(systolic, diastolic, profile, age)
    if acted_on is not None:
        return acted_on
    if Caution.PREGNANCY in profile.cautions:
        return NoReference("pregnant", table.source)
    rank, band, figures = table.find(systolic, diastolic)
    return Score(band, table.source, rank, figures, age_notes(age))


def mean_limits(age: int | None, body: str) -> PressureTable:
    """The limits for a home mean at an age: over 80, the NHS limit replaces NICE's."""
    older = body == "nice" and age is not None and age > bp_nhs_over_80.OVER
    return bp_nhs_over_80.HOME if older else BODIES[body]


def _acted_on(systolic: Decimal, diastolic: Decimal, profile: Profile, age: int | None) -> Score | NoReference | None:
    """Severe, low, or not a possible pressure: common to a single reading and a mean."""
    if diastolic >= systolic:
        return NoReference("lower_number_not_lower", bp_nice_home.SOURCE)
    severe, source, _ = severe_for(profile, age)
    if severe.reached(systolic, diastolic):
        return Score("severe", source, 1, severe.figures, ("rest_5_min_and_repeat",))
    if age is not None and age < bp_nice_home.YOUNGEST:
        return NoReference("age_outside_table", bp_nice_home.SOURCE)
    if bp_low.low(systolic, diastolic):
        figures = (("systolic", bp_low.SYSTOLIC_BELOW), ("diastolic", bp_low.DIASTOLIC_BELOW))
        return Score("low", bp_low.SOURCE, 0, figures, ("matters_only_with_dizziness",))
    return None


BLOOD_PRESSURE = Measure(
    key="blood_pressure",
    kind=MeasureKind.BODY,
    unit=Unit.MILLIMETRE_OF_MERCURY,
    units=(Unit.MILLIMETRE_OF_MERCURY,),
    better=Better.LOWER,
    bounds=Bounds(
        possible=Range(D(60), D(280)),
        usual=Range(D(85), D(185)),
        jump=D(40),
        second_possible=Range(D(30), D(180)),
        second_usual=Range(D(45), D(120)),
    ),
    protocol=Protocol(
        prepare=(
            "no_coffee_smoking_exercise_30_min",
            "empty_bladder",
            SIT_QUIETLY,
            "cuff_on_bare_upper_arm",
        ),
        technique=(
            "back_supported_feet_flat",
            "arm_supported_at_heart_height",
            "do_not_talk",
            "two_readings_a_minute_apart",
            "morning_and_evening",
            "four_to_seven_days",
        ),
        keep_same=("monitor", "arm", "time_of_day"),
        attempts=2,
        attempts_in_question=True,
        gap=timedelta(minutes=1),
    ),
    understand=pressure,
    score=score,
    error=MeasurementError(
        source=body_errors.PRESSURE_SOURCE,
        sem=body_errors.SYSTOLIC_SEM,
        spread=body_errors.SYSTOLIC_SPREAD,
    ),
    sources=(
        *bp_nice_home.SOURCES,
        *bp_nhs_over_80.SOURCES,
        *bp_aha.SOURCES,
        *bp_esc.SOURCES,
        *bp_severe.SOURCES,
        *bp_low.SOURCES,
        body_errors.PRESSURE_SOURCE,
    ),
    needs=frozenset({ProfileFact.CAUTIONS}),
    alarm=alarm,
    body=None,
    repeat=Repeat(timedelta(minutes=bp_severe.MINUTES_BEFORE_REPEAT)),
    series=True,
)
