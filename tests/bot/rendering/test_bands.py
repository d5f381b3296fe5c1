"""Every score has a text: checked across ages, sexes, backgrounds, cautions and values."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime
from decimal import Decimal

import pytest

from bot.rendering.phrases.bands import BANDS, NOTES, REASONS
from core.client import Background, Caution, Profile, Sex
from core.measures import MEASURES
from core.measures.measure import Measure, Score
from core.reading import Conditions, Reading
from core.references import bp_aha, bp_esc

D = Decimal
AT = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)
YEARS = (None, 2012, 2000, 1985, 1970, 1962, 1958, 1953, 1948, 1943, 1939, 1934, 1920)
NOTED = (frozenset[str](), frozenset({"series_mean"}), frozenset({"arms_used"}))


def profiles() -> Iterator[Profile]:
    for sex in (None, *Sex):
        for year in YEARS:
            yield Profile(sex=sex, birth_year=year, stature=D(170), background=Background.WHITE)
    for background in Background:
        yield Profile(sex=Sex.MALE, birth_year=1960, stature=D(170), background=background)
    for caution in Caution:
        yield Profile(Sex.FEMALE, 1960, None, D(170), Background.WHITE, frozenset({caution}))
    yield Profile(sex=Sex.FEMALE, birth_year=1960)


def readings(measure: Measure) -> Iterator[Reading]:
    low, high = measure.bounds.possible.low or D(0), measure.bounds.possible.high
    high = D(100) if high is None else high
    shares = (D("0.4"), D("0.62"), D("0.8"), D("1.1")) if measure.key in ("blood_pressure", "walk_mile") else ()
    for n in range(61):
        value = low + (high - low) * n / 60
        for notes in NOTED:
            for second in (None, *(value * s for s in shares)):
                yield Reading(measure.key, value, AT, second=second, conditions=Conditions(notes=notes))


@pytest.mark.parametrize("key", MEASURES)
def test_every_band_note_and_reason_has_words(key: str) -> None:
    measure, silent = MEASURES[key], set()
    for profile in profiles():
        for reading in readings(measure):
            for score in measure.score(reading, profile):
                if not isinstance(score, Score):
                    silent |= {("reason", score.reason)} - {("reason", r) for r in REASONS}
                    continue
                if score.band not in BANDS.get(score.source.key, {}):
                    silent.add((score.source.key, score.band))
                silent |= {("note", note) for note in score.notes if note not in NOTES}
    assert sorted(silent) == []


@pytest.mark.parametrize("table", [bp_aha.HOME, bp_esc.HOME], ids=lambda t: t.source.key)
def test_other_bodies_home_limits_have_words(table: object) -> None:
    words = BANDS[table.source.key]  # type: ignore[attr-defined]
    assert {table.lowest, *(b.band for b in table.bands)} == set(words)  # type: ignore[attr-defined]
