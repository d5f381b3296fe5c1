"""The flags a single reading raises: pressure, pulse, weight, energy, fall-risk limits, changes, identical values.

The table of all codes, with the rules in words, is in `core.watching.flags`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta, tzinfo
from decimal import Decimal
from itertools import takewhile
from math import log, pi, sqrt

from core.client import Caution, Profile
from core.judging.assess import Assessment
from core.judging.change import Change, direction, variance
from core.judging.course import CLIP, OWN_DF, winsorised
from core.measures.blood_pressure import DEFAULT_LIMITS, mean_limits
from core.measures.home_bp_series import SeriesMean, day_of
from core.measures.measure import (
    AlarmKind,
    BodySize,
    Bounds,
    Measure,
    MeasureKind,
    MeasurementError,
    ReadingAlarm,
    Score,
)
from core.quantity import Unit, convert, convertible
from core.reading import Reading
from core.references import fast_gain, must, unplanned_loss
from core.reliability import counting_step, mean
from core.understanding.plausibility import is_jump
from core.watching.flags import Agreed, Code, Flag, flag

D = Decimal


SYMPTOMS = ("dizziness", "fainting")  # of `Conditions.notes`
REPEAT_WITHIN = timedelta(days=1)
HALF_A_YEAR, A_YEAR = timedelta(days=183), timedelta(days=365)
FALLS_BANDS = frozenset(
    {
        ("chair_stand_cdc", "below_average"),
        ("timed_up_and_go_cdc", "raised_risk"),
        ("four_stage_balance_cdc", "raised_risk"),
    }
)
TOP_RATING = D(10)  # no mean is higher
ENERGY_WINDOW = timedelta(weeks=10)  # before the last two; a turn knows twelve weeks
LONGEST_FALL = 4  # ratings: then the course of four-week means sees it
ENERGY_FEWEST = 3  # fewest ratings for a mean to compare with (ours)
FEWEST_IDENTICAL = 4
UNLIKELY = 0.001
# Ours: with normal moods that swing as published, 1 client-year in 1,700; where people differ as `RATING_SPREAD` says,
# 1 in 70 has a week or a fall beyond it, and beyond 4.5, the bound before, 1 in 30.
FALL_Z = 5.0
_MUST_IS_QUIET_FROM = D(21)  # kg/m2: MUST gives no points above 20, after rounding


@dataclass(frozen=True, slots=True)
class AlarmCodes:
    """Flags of an alarm: at once, only with a symptom, and when the previous reading raised the same alarm."""

    at_once: Code | None = None
    with_symptom: Code | None = None
    again: Code | None = None


ALARM_CODES: dict[AlarmKind, AlarmCodes] = {
    AlarmKind.SEVERE_PRESSURE: AlarmCodes(at_once=Code.BP_SEVERE, again=Code.BP_SEVERE_REPEATED),
    AlarmKind.LOW_PRESSURE: AlarmCodes(with_symptom=Code.BP_LOW),
    AlarmKind.FAST_PULSE: AlarmCodes(at_once=Code.PULSE_FAST),
    AlarmKind.SLOW_PULSE: AlarmCodes(at_once=Code.PULSE_SLOW),
}


def flags_of_reading(
    measure: Measure,
    assessment: Assessment,
    history: Sequence[Reading],
    profile: Profile,
    agreed: Agreed,
    *,
    zone: tzinfo,
    run: int | None = None,
    limits: str = DEFAULT_LIMITS,
) -> tuple[Flag, ...]:
    """Every flag this reading raises, in table order within each subject.

    history: earlier readings of the measure that count, oldest first. run: length of the run of equal values ending
    with this one, for a caller that tracks it without the full history; counted here if None. limits: whose, for a
    blood-pressure mean.
    """
    at, verdict = assessment.reading.taken_at, assessment.verdict
    if run is None or (history and history[-1].taken_at >= at):
        history = [r for r in history if r.taken_at < at and r.counts]
    before = history
    found: list[Flag] = []
    found.extend(_of_alarm(measure, assessment.reading, before, profile))
    if isinstance(assessment.series, SeriesMean):
        found.extend(_of_series(assessment.series, assessment.reading, profile, limits))
    if measure.body is BodySize.WEIGHT:
        found.extend(_of_weight(assessment.reading, before, profile, agreed, zone, measure.bounds))
    if measure.fall is not None:
        found.extend(_of_fall(assessment.reading, before, measure.fall, measure.error))
    if measure.kind is MeasureKind.FUNCTION:
        found.extend(_of_falls(assessment))
    told = (verdict is not None and verdict.large) or assessment.course is not None
    if told and measure.kind is not MeasureKind.DERIVED:
        found.extend(_of_change(measure, assessment, before))  # a ratio would only repeat its parts
    if measure.kind in (MeasureKind.BODY, MeasureKind.FUNCTION) and (run is None or run >= FEWEST_IDENTICAL):
        found.extend(_of_sameness(measure, assessment.reading, before, run))
    return tuple(found)


def _of_alarm(measure: Measure, now: Reading, before: Sequence[Reading], profile: Profile) -> Iterator[Flag]:
    found = measure.alarm(now, profile)
    if found is None:
        return
    codes, evidence = ALARM_CODES[found.kind], _evidence(found)
    if codes.at_once is not None:
        yield flag(codes.at_once, now.taken_at, now.measure, **evidence)
    if codes.with_symptom is not None:
        symptom = next((s for s in SYMPTOMS if s in now.conditions.notes), None)
        if symptom is not None:
            yield flag(codes.with_symptom, now.taken_at, now.measure, **evidence, symptom=symptom)
    last = before[-1] if before else None
    if codes.again is not None and last is not None and now.taken_at - last.taken_at <= REPEAT_WITHIN:
        earlier = measure.alarm(last, profile)
        if earlier is not None and earlier.kind is found.kind:
            figures = {f"before_{name}": value for name, value in earlier.figures}
            yield flag(codes.again, last.taken_at, now.measure, **evidence, **figures)


def _evidence(found: ReadingAlarm) -> dict[str, str | Decimal]:
    of_person: dict[str, str | Decimal] = {} if found.caution is None else {"caution": found.caution.value}
    return {**dict(found.figures), **of_person}


def _of_series(series: SeriesMean, now: Reading, profile: Profile, body: str) -> Iterator[Flag]:
    rank, band, _ = mean_limits(profile.age_on(now.taken_at.date()), body).find(series.systolic, series.diastolic)
    if rank:
        yield flag(
            Code.BP_HIGH_MEAN,
            now.taken_at,
            now.measure,
            systolic=series.systolic,
            diastolic=series.diastolic,
            days=D(series.days),
            band=band,
        )


def _of_weight(
    now: Reading, before: Sequence[Reading], profile: Profile, agreed: Agreed, zone: tzinfo, bounds: Bounds
) -> Iterator[Flag]:
    if agreed.directed_weighing:
        yield from _fast_gain(now, before, zone)
    in_a_year = [r for r in believed(bounds, (*before, now)) if now.taken_at - r.taken_at <= A_YEAR]
    if in_a_year and not agreed.loss_is_planned:
        top = max(in_a_year, key=lambda r: r.value)
        percent = must.percent_loss(top.value, now.value)
        if unplanned_loss.noticeable(percent):
            yield flag(
                Code.UNPLANNED_LOSS_OVER_5,
                now.taken_at,
                now.measure,
                percent=percent,
                to=now.value,
                since=top.taken_at.date().isoformat(),
                **{"from": top.value},
            )
    yield from _must(now, [r for r in in_a_year if now.taken_at - r.taken_at <= HALF_A_YEAR], profile, agreed)


def believed(bounds: Bounds, weights: Sequence[Reading]) -> Iterator[Reading]:
    """The earlier weights that a loss may be reckoned from, oldest first, without `odd_one` among them.

    weights: the present one last. It is believed at once: a loss that is real must not wait for the next weighing.
    """
    yield from weights[:1] if len(weights) > 1 else ()
    for n in range(1, len(weights) - 1):
        if not odd_one(bounds, *(r.value for r in weights[n - 1 : n + 2])):
            yield weights[n]


def odd_one(bounds: Bounds, before: D, weight: D, after: D) -> bool:
    """Whether a weight was so far above both its neighbours that it was asked back, and those two agree.

    Who lost so much within two weighings, and had gained as much, has it in no third one. A slip has it in one only.
    """
    return (
        weight > max(before, after)
        and is_jump(bounds, weight, before)
        and is_jump(bounds, after, weight)
        and not is_jump(bounds, after, before)
    )


def weight_says_nothing(now: Decimal, highest: Decimal | None, stature: Decimal | None) -> bool:
    """True if no rule here can apply to a weight and nothing is agreed, so that the caller need not gather the rules'
    inputs. False means undecided.

    highest: of the earlier weights over at least a year; None if it is the first. kg, kg, cm.
    """
    if highest is not None and must.percent_loss(highest, now) >= unplanned_loss.PERCENT:
        return False
    return not stature or now * 10000 >= _MUST_IS_QUIET_FROM * stature * stature


def _fast_gain(now: Reading, before: Sequence[Reading], zone: tzinfo) -> Iterator[Flag]:
    """Compare with every weight of the last seven days; the fastest rule met is reported."""
    today = day_of(now, zone)
    for earlier in reversed(before):
        days = (today - day_of(earlier, zone)).days
        if days > fast_gain.RULES[-1].days:
            return
        if fast_gain.fast(earlier.value, now.value, days) is not None:
            yield flag(
                Code.FAST_GAIN,
                now.taken_at,
                now.measure,
                gain=now.value - earlier.value,
                days=D(days),
                to=now.value,
                **{"from": earlier.value},
            )
            return


def _must(now: Reading, half_year: Sequence[Reading], profile: Profile, agreed: Agreed) -> Iterator[Flag]:
    """Steps 1 and 2 of MUST; step 3 (acutely ill and not eating) is for bedside staff."""
    evidence: dict[str, str | Decimal] = {}
    points, thin = 0, False
    if profile.stature and Caution.PREGNANCY not in profile.cautions:
        bmi = now.value / (profile.stature / 100) ** 2
        by_bmi = must.bmi_points(bmi)
        points, thin, evidence["bmi"] = by_bmi, by_bmi > 0, bmi
    if half_year and (thin or not agreed.loss_is_planned):
        percent = must.percent_loss(max(r.value for r in half_year), now.value)
        points += must.loss_points(percent)
        evidence["percent"] = percent
    risk = must.risk(points)
    if risk == "high" or (risk == "medium" and not agreed.loss_is_planned):
        code = Code.MUST_HIGH if risk == "high" else Code.MUST_MEDIUM
        yield flag(code, now.taken_at, now.measure, points=D(points), **evidence)


def falls(now: Decimal, last: Decimal, usual: Sequence[Decimal], by: Decimal, error: MeasurementError) -> bool:
    """Whether the last ratings, two or up to `LONGEST_FALL`, all lie at least `by` below the level of the weeks before
    them, and further than moods swing.

        t = (level of n before - mean of the r last) / sqrt(s2 * (1 / r + 1 / n))

    is beyond `FALL_Z`. The level is a winsorised mean, and s2 this person's own variance shrunken to the published one,
    both as in `core.judging.course`. Two points under the mean of four weeks, the rule before, came by chance 0.4 times
    a client-year. A steep fall is told here within three weeks, a lesser one by the course of four-week means. A fall
    that lasts is compared with the weeks before it, not with itself.
    """
    ratings = [*usual, last, now]
    if now > max(ratings) - by:  # no level is higher
        return False
    return any(
        _far_below([float(r) for r in ratings[:-low]], ratings[-low:], by, error)
        for low in range(2, min(LONGEST_FALL, len(ratings) - ENERGY_FEWEST) + 1)
    )


def drops(now: Decimal, usual: Sequence[Decimal], by: Decimal, error: MeasurementError) -> bool:
    """Whether one rating lies at least `by` below the level of the weeks before it, and further than moods swing.

    It is `falls` of a single rating. Two points under the mean of four weeks came by chance about twice a client-year.
    """
    return len(usual) >= ENERGY_FEWEST and _far_below([float(r) for r in usual], [now], by, error)


def far_below_usual(measure: Measure, value: Decimal, at: datetime, before: Sequence[Reading]) -> bool:
    """Whether one rating would be told to the coach as a drop. before: earlier ones that count."""
    if measure.fall is None or measure.error is None or value > TOP_RATING - measure.fall:
        return False
    return drops(value, [r.value for r in before if r.taken_at >= at - ENERGY_WINDOW], measure.fall, measure.error)


def _far_below(before: Sequence[float], low: Sequence[Decimal], by: Decimal, error: MeasurementError) -> bool:
    published = float(variance(error, low[-1]))
    now, apart = float(sum(low)) / len(low), 1 / len(low) + 1 / len(before)
    least = published * OWN_DF / (OWN_DF + len(before) - 1)
    if max(before) - now <= FALL_Z * sqrt(least * apart):  # no level is higher, no swing smaller
        return False
    level = winsorised(before, published)
    if float(max(low)) > level - float(by):
        return False
    scatter = sum(min((r - level) ** 2 / published, CLIP * CLIP) for r in before)
    own = published * (OWN_DF + scatter) / (OWN_DF + len(before) - 1)
    return level - now > FALL_Z * sqrt(own * apart)


def _of_fall(now: Reading, before: Sequence[Reading], by: Decimal, error: MeasurementError | None) -> Iterator[Flag]:
    if not before or error is None:
        return
    last = before[-1]
    if now.value > TOP_RATING - by:
        return
    usual = [r.value for r in before[:-1] if r.taken_at >= last.taken_at - ENERGY_WINDOW]
    if falls(now.value, last.value, usual, by, error):
        yield flag(
            Code.ENERGY_FALLING,
            last.taken_at,
            now.measure,
            rating=now.value,
            before=last.value,
            mean=mean(usual),
        )
    elif drops(now.value, usual := _in_window(before, now), by, error):
        yield flag(Code.ENERGY_DROPPED, now.taken_at, now.measure, rating=now.value, mean=mean(usual))


def _in_window(before: Sequence[Reading], now: Reading) -> list[Decimal]:
    return [r.value for r in before if r.taken_at >= now.taken_at - ENERGY_WINDOW]


def _of_falls(assessment: Assessment) -> Iterator[Flag]:
    for score in assessment.scores:
        if isinstance(score, Score) and (score.source.key, score.band) in FALLS_BANDS:
            now = assessment.judged
            yield flag(
                Code.FALLS_RISK,
                now.taken_at,
                now.measure,
                value=now.value,
                band=score.band,
                source=score.source.key,
            )


CONFIRMED_CODE = {
    Change.BETTER: Code.CHANGE_BETTER_CONFIRMED,
    Change.WORSE: Code.CHANGE_WORSE_CONFIRMED,
    Change.CHANGED: Code.CHANGE_CONFIRMED,
}


def _of_change(measure: Measure, assessment: Assessment, before: Sequence[Reading]) -> Iterator[Flag]:
    """A sure change of level in the readings at hand, else one large worsening."""
    verdict, now, course = assessment.verdict, assessment.judged, assessment.course
    if course is not None:
        places = D(1).scaleb(-max(measure.places, 1))
        yield flag(
            CONFIRMED_CODE[direction(measure.better, D(course.difference))],
            now.taken_at,
            now.measure,
            difference=D(course.difference).quantize(places),
            mdc95=D(course.error95).quantize(places),
            level_before=D(course.before).quantize(places),
            since=course.since.date().isoformat(),
            **({"about": "start_alone"} if course.start_alone else {}),
        )
        return
    if verdict is None or verdict.difference is None or verdict.mdc95 is None or verdict.baseline_at is None:
        return
    if verdict.kind is Change.WORSE and verdict.large and _asked_back(measure, assessment, before):
        yield flag(
            Code.CHANGE_WORSE_LARGE,
            now.taken_at,
            now.measure,
            difference=verdict.difference,
            mdc95=verdict.mdc95,
            baseline=verdict.baseline or D(0),
            since=verdict.baseline_at.date().isoformat(),
        )


def _asked_back(measure: Measure, assessment: Assessment, before: Sequence[Reading]) -> bool:
    """Whether a large worsening is hardly a slip of the finger: a mean of several days, or a value that was so far from
    the last one that it was asked back."""
    if measure.series or measure.kind is MeasureKind.RATING:
        return True
    return bool(before) and is_jump(measure.bounds, assessment.reading.value, before[-1].value)


def _of_sameness(measure: Measure, now: Reading, before: Sequence[Reading], run: int | None) -> Iterator[Flag]:
    if measure.error is None or now.value == 0:
        return
    if run is None:
        same = takewhile(lambda r: (r.value, r.second) == (now.value, now.second), reversed(before))
        run = 1 + sum(1 for _ in same)
    if run >= FEWEST_IDENTICAL and run >= implausible_run(measure, now):
        yield flag(Code.IDENTICAL_VALUES, now.taken_at, now.measure, value=now.value, times=D(run))


def implausible_run(measure: Measure, reading: Reading) -> int:
    """How many equal values in a row are implausible, given the resolution of the value and its variability.

    Two honest values read to a step h with SD s are equal with probability of about h / (2 s sqrt pi); a run of n needs
    that n - 1 times;  Whole numbers are assumed to be read to a whole unit, so
    that a tape read to the centimetre, or a count of stands that does repeat, is not suspected.
    """
    if measure.error is None:
        raise ValueError(f"{measure.key} has no known error")
    swing = variance(measure.error, reading.value, reading.attempts, reading.window).sqrt()
    chance = float(_step(measure, reading)) / (2 * float(swing) * sqrt(pi))
    if chance >= 1:
        return 10**6  # the scale is too coarse to say anything
    return max(FEWEST_IDENTICAL, 1 + -int(log(UNLIKELY) // -log(chance)))


def _step(measure: Measure, reading: Reading) -> Decimal:
    if reading.window is not None:
        return counting_step(reading.window)
    finest = D(1).scaleb(-measure.places)
    unit = reading.unit or measure.unit
    if not convertible(unit, measure.unit):
        return finest
    typed = convert(reading.value, measure.unit, unit)
    whole = convert(D(1), unit, measure.unit) if unit is not Unit.STONE else convert(D(1), Unit.POUND, measure.unit)
    return max(finest, whole) if abs(typed - round(typed)) < D("0.001") else finest
