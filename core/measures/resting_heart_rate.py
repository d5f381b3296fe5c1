"""Resting heart rate: beats per minute, sitting, after five quiet minutes. Lower is better, within limits.

Value    bpm, the mean of two counts over 15, 30 or 60 s, or a device's reading. Compared as whole beats.
Error    SEM 5 bpm from day to day (2.0 to 6.7 were read), shared by two counts in a sitting; counting adds step^2/6.
No important difference was found. The bounds are ours; `usual` ends where advice begins, so that such a rate is
confirmed. The timer starts at an arbitrary moment and every beat felt counts, the first as one, so the count is
unbiased (studies disagree on starting with one or zero).
"""

from __future__ import annotations

from datetime import timedelta
from decimal import Decimal

from core.client import Caution, Profile
from core.measures.classify import adult, age_at, age_notes, band_score
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
    ShortCount,
)
from core.measures.parsing import pulse
from core.quantity import Better, Range, Unit, half_up
from core.reading import Reading
from core.references import body_errors, rhr_adult_range, rhr_nhanes_2011, rhr_trade_chart
from core.sources import Seen, Source

D = Decimal

HOLLERBACH = Source(
    key="hollerbach_1990",
    cite="Hollerbach AD, Sneed NV (1990), Heart Lung 19:258: 15 s should not be used above 100 bpm (abstract)",
    population="pulses counted by 103 nurses",
    seen=Seen.READ,
)
SHORT_COUNT = ShortCount(seconds=15, up_to=rhr_adult_range.RANGE.steps[1].limit, source=HOLLERBACH)


def score(reading: Reading, profile: Profile) -> Scores:
    """The usual range of adults, the fitness trade's chart by age and sex, then the mean of US adults."""
    rate = half_up(reading.value, 0)
    age = age_at(reading, profile)
    return _range(rate, reading, profile, age), _chart(rate, profile, age), _mean(profile, age)


def alarm(reading: Reading, profile: Profile) -> ReadingAlarm | None:
    """Over 120 or under 40 at rest, unrounded; for everybody, since only a clinician can say it is normal."""
    found = rhr_adult_range.seek_advice(reading.value)
    if found is None:
        return None
    kind = {"fast": AlarmKind.FAST_PULSE, "slow": AlarmKind.SLOW_PULSE}[found]
    return ReadingAlarm(kind, rhr_adult_range.ADVICE_SOURCE, (("rate", reading.value),), repeat=True)


def _range(rate: Decimal, reading: Reading, profile: Profile, age: int | None) -> Score | NoReference:
    too_young = adult(age, rhr_adult_range.YOUNGEST, rhr_adult_range.SOURCE)
    return too_young or band_score(rhr_adult_range.RANGE, rate, _notes(rate, reading, profile, age))


def _notes(rate: Decimal, reading: Reading, profile: Profile, age: int | None) -> tuple[str, ...]:
    notes = list(age_notes(age))
    slowed = Caution.RATE_LIMITING_MEDICINE in profile.cautions
    if slowed:
        notes.append("medicine_slows_the_pulse")
    if rate < rhr_adult_range.RANGE.steps[0].limit:
        if Caution.ATHLETE in profile.cautions:
            notes.append("slow_can_be_usual_when_trained")
        elif not slowed:
            notes.append("slow_worth_a_check")
    if rate > rhr_adult_range.RANGE.steps[1].limit:
        notes.append("rest_and_count_again")
        if SHORT_COUNT.too_short(rate, reading.window):
            notes.append("count_30_or_60_s")
    if rhr_adult_range.seek_advice(reading.value) is not None:
        notes.append("seek_advice_if_it_stays")
    return tuple(notes)


def _chart(rate: Decimal, profile: Profile, age: int | None) -> Score | NoReference:
    source = rhr_trade_chart.SOURCE
    if Caution.RATE_LIMITING_MEDICINE in profile.cautions:
        return NoReference("medicine_slows_the_pulse", source)
    if profile.may_have(Caution.RATE_LIMITING_MEDICINE, age):
        return NoReference("cautions_not_given", source)
    if age is None:
        return NoReference("age_not_given", source)
    if profile.sex is None:
        return NoReference("sex_not_given", source)
    column = rhr_trade_chart.column(profile.sex, age)
    if column is None:
        return NoReference("age_outside_table", source)
    if rate < column.steps[0].limit:
        return NoReference(rhr_trade_chart.BELOW_CHART, source)
    return band_score(column, rate)


def _mean(profile: Profile, age: int | None) -> Score | NoReference:
    if profile.sex is None:
        return NoReference("sex_not_given", rhr_nhanes_2011.SOURCE)
    if age is None or age < rhr_nhanes_2011.YOUNGEST:
        reason = "age_not_given" if age is None else "age_outside_table"
        return NoReference(reason, rhr_nhanes_2011.SOURCE)
    row = rhr_nhanes_2011.MEANS[profile.sex]
    return Score("mean_of_others", rhr_nhanes_2011.SOURCE, figures=(("mean", row.mean),))


RESTING_HEART_RATE = Measure(
    key="resting_heart_rate",
    kind=MeasureKind.BODY,
    unit=Unit.BEATS_PER_MINUTE,
    units=(Unit.BEATS_PER_MINUTE,),
    better=Better.LOWER,
    bounds=Bounds(possible=Range(D(25), D(220)), usual=Range(D(40), D(120)), jump=D(20)),
    protocol=Protocol(
        prepare=("no_coffee_smoking_exercise_30_min", SIT_QUIETLY),
        technique=(
            "two_fingers_below_the_thumb",
            "start_the_timer_at_any_moment",
            "count_every_beat_first_is_one",
            "count_twice",
            "fast_pulse_count_30_or_60_s",
            "irregular_pulse_tell_a_clinician",
        ),
        keep_same=("time_of_day", "posture", "way_of_counting"),
        attempts=2,
        gap=timedelta(minutes=1),
        timers=(15, 30, 60),
    ),
    understand=pulse,
    score=score,
    error=MeasurementError(
        source=body_errors.PULSE_SOURCE,
        sem=body_errors.PULSE_SEM,
        counted=True,
        shared_by_attempts=True,
        borrowed_from=body_errors.PULSE_SOURCE.population,
    ),
    sources=(
        *rhr_adult_range.SOURCES,
        *rhr_trade_chart.SOURCES,
        *rhr_nhanes_2011.SOURCES,
        body_errors.PULSE_SOURCE,
        HOLLERBACH,
    ),
    needs=frozenset({ProfileFact.CAUTIONS, ProfileFact.SEX}),
    alarm=alarm,
    body=None,
    repeat=Repeat(timedelta(minutes=10), count=60),
    short_count=SHORT_COUNT,
    goal=True,
    misled_by=((Caution.RATE_LIMITING_MEDICINE, "medicine_slows_pulse"),),
)
