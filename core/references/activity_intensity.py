"""Intensity of an activity without a pulse: the talk test, effort from 0 to 10, metabolic equivalents (MET)."""

from __future__ import annotations

from decimal import Decimal

from core.references.heart_rate_intensity import Intensity
from core.sources import Seen, Source

SOURCE = Source(
    key="activity_intensity_pag_2018",
    cite="US Department of Health and Human Services (2018). Physical Activity Guidelines for Americans, 2nd ed.",
    population="adults",
    seen=Seen.READ,
    note="effort 0 is sitting and 10 the most one can do; 0-4 as light and 9-10 as near maximal are ours",
)
TALK = Source(
    key="talk_test_cdc",
    cite="Centers for Disease Control and Prevention. Measuring physical activity intensity: the talk test.",
    population="adults",
    seen=Seen.READ,
)
SOURCES = (SOURCE, TALK)


def by_effort(effort: Decimal) -> Intensity:
    """5-6 moderate, 7-8 vigorous. A half belongs to the step below: 6.5 is still moderate."""
    if effort >= 9:
        return Intensity.NEAR_MAXIMAL
    if effort >= 7:
        return Intensity.VIGOROUS
    if effort >= 5:
        return Intensity.MODERATE
    return Intensity.LIGHT if effort >= 1 else Intensity.VERY_LIGHT


def by_talking(*, can_talk: bool, can_sing: bool) -> Intensity:
    """Can sing: light. Can talk but not sing: moderate. Only a few words at a time: vigorous."""
    if can_sing:
        return Intensity.LIGHT
    return Intensity.MODERATE if can_talk else Intensity.VIGOROUS


def by_met(met: Decimal) -> Intensity:
    """Light below 3.0, vigorous from 6.0."""
    if met >= 6:
        return Intensity.VIGOROUS
    return Intensity.MODERATE if met >= 3 else Intensity.LIGHT


def met_minutes(met: Decimal, minutes: Decimal) -> Decimal:
    """Energy expenditure in MET-minutes: 150 to 300 moderate minutes are about 500 to 1000."""
    return met * minutes
