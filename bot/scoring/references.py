"""Results of the published references, looked up once for all values and people with the same result.

The tables of a measure change at a few ages and values only. For frequent measures those are read from the tables
themselves; any other is cached by everything a score may depend on.
"""

from __future__ import annotations

from bisect import bisect, bisect_left, bisect_right
from collections.abc import Callable, Hashable, Iterable, Mapping
from dataclasses import dataclass
from datetime import UTC
from decimal import Decimal
from typing import NamedTuple

from bot.scoring.bounded import cache
from bot.scoring.cells import TakenValue
from bot.scoring.output import reference_cells
from core.client import Profile
from core.judging.assess import Assessment
from core.measures.measure import Measure, Scores, never, no_score
from core.reading import SAME
from core.references import (
    bmi_nice,
    bmi_who,
    chair_stand_cdc,
    chair_stand_rikli_jones,
    rhr_adult_range,
    rhr_nhanes_2011,
    rhr_trade_chart,
    waist_idf,
    waist_nice,
    waist_who,
    whr_trade,
    whr_who,
    whtr_nice,
)
from core.references.boundaries import bmi_for_class
from core.references.ladder import Ladder
from core.watching.flags import NOTHING_AGREED
from core.watching.flags_of_reading import flags_of_reading


class Said(NamedTuple):
    """scores: of the references. cells: band and reference. flags: codes the reading raises on its own, whatever came
    before.
    """

    scores: Scores
    cells: tuple[str, str]
    flags: str


NOTHING_SAID = Said((), ("", ""), "")


@dataclass(frozen=True, slots=True)
class Turns:
    """Where a result may change. ages: in whole years, rising. value: equal for values with the same result.
    background: whether the result depends on it.
    """

    ages: tuple[int, ...]
    value: Callable[[Decimal], Hashable]
    background: bool = False


def _exact(value: Decimal) -> Hashable:
    return value


def _among(*tables: Iterable[Ladder]) -> Callable[[Decimal], Hashable]:
    """Number of table limits below the value, and of those not above it."""
    limits = sorted({step.limit for ladders in tables for ladder in ladders for step in ladder.steps})
    return lambda value: (bisect_left(limits, value), bisect_right(limits, value))


def _among_classes(value: Decimal) -> Hashable:
    return _CLASSES(bmi_for_class(value))


_CLASSES = _among((bmi_who.CLASSES,), bmi_nice.BY_BACKGROUND.values())


def _edges(ranges: Iterable[range]) -> tuple[int, ...]:
    return tuple(sorted({edge for ages in ranges for edge in (ages.start, ages.stop)}))


_OF_THE_CHART = [range(first, 999 if last is None else last + 1) for first, last in rhr_trade_chart.AGES]
_OF_STANDS = [row.ages for table in (chair_stand_cdc.ROWS, chair_stand_rikli_jones.ROWS) for row in table]
_ADULT = (waist_nice.YOUNGEST,)

TURNS: Mapping[str, Turns] = {
    "resting_heart_rate": Turns(
        _edges([*_OF_THE_CHART, range(rhr_adult_range.YOUNGEST, 999), range(rhr_nhanes_2011.YOUNGEST, 999)]), _exact
    ),
    "chair_stand_30s": Turns(_edges(_OF_STANDS), _exact),
    "waist": Turns(
        _ADULT,
        _among(
            waist_nice.BY_SEX.values(),
            waist_who.BY_SEX.values(),
            *(by_sex.values() for by_sex in waist_idf.BY_BACKGROUND.values()),
        ),
        background=True,
    ),
    "bmi": Turns((bmi_who.YOUNGEST,), _among_classes, background=True),
    "waist_to_hip_ratio": Turns(_ADULT, _among(whr_who.BY_SEX.values(), whr_trade.BY_SEX.values())),
    "waist_to_height_ratio": Turns(_ADULT, _among((whtr_nice.BANDS,))),
}


class Alike(NamedTuple):
    """full: a number for people of the same sex, cautions (and whether all are known) and background. short: likewise,
    ignoring the background."""

    full: int
    short: int


class References:
    """The cache for all people."""

    def __init__(self) -> None:
        self._known: dict[Hashable, Said] = {}
        self._kinds: dict[Hashable, int] = {}

    def of(self, measure: Measure, now: TakenValue, who: Alike, profile: Profile) -> Said:
        """The references' result for a reading."""
        if measure.score is no_score and measure.alarm is never:
            return NOTHING_SAID
        age, how, turns = profile.age_on(now.taken_at), now.meaning, TURNS.get(measure.key)
        key: Hashable
        if turns is not None and how.conditions is SAME:
            column = None if age is None else bisect(turns.ages, age)
            key = (measure.key, turns.value(now.value), who.full if turns.background else who.short, column)
        elif how.number:
            key = (how.number, who.full, age)
        else:
            return _said(measure, now, profile)
        return self._known.get(key) or cache(self._known, key, _said(measure, now, profile))

    def kind(self, profile: Profile) -> Alike:
        """The cache numbers of a person."""
        numbers = self._kinds
        alike = (profile.sex, profile.cautions, profile.cautions_known)
        short = numbers.setdefault(alike, len(numbers))
        full = numbers.setdefault((*alike, profile.background), len(numbers))
        return Alike(full, short)


def _said(measure: Measure, now: TakenValue, profile: Profile) -> Said:
    reading = now.reading()
    scores = measure.score(reading, profile)
    alone = Assessment(reading, reading, scores, None)
    flags = flags_of_reading(measure, alone, (), profile, NOTHING_AGREED, zone=UTC, run=1)
    return Said(scores, reference_cells(scores), ";".join(f.code for f in flags))
