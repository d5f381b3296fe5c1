"""Worked examples of weekly activity, intensity and session load (W88-W99), one row each.

Each row: number of the example, the source of the figures, their provenance (read, second-hand, derived).
"""

from __future__ import annotations

from datetime import UTC, datetime
from decimal import Decimal

import pytest

from core.client import Profile
from core.judging import training_load
from core.measures.activity_minutes import ACTIVITY_MINUTES
from core.quantity import half_up
from core.reading import Reading
from core.references import activity_intensity
from core.references.activity_intensity import Intensity

D = Decimal
AT = datetime(2026, 3, 30, 9, 0, tzinfo=UTC)
ADA = Profile(birth_year=1976)


def week_of(moderate: str, vigorous: str | None) -> Reading:
    return Reading("activity_minutes", D(moderate), AT, second=D(vigorous) if vigorous else None)


ACTIVITY = [  # moderate minutes, vigorous minutes, counted, band
    pytest.param("0", "75", "150", "meets", id="W88-pag-read"),
    pytest.param("0", "15", "30", "some", id="W89-pag-read"),
    pytest.param("60", "40", "140", "some", id="W90-acsm-aha-2007-derived"),
    pytest.param("90", "30", "150", "meets", id="W91-derived"),
    pytest.param("149", None, "149", "some", id="W92-who-derived-149"),
    pytest.param("150", None, "150", "meets", id="W92-who-derived-150"),
    pytest.param("60", None, "60", "some", id="W94-vital-sign-read"),
    pytest.param("0", None, "0", "inactive", id="W95-vital-sign-derived"),
    pytest.param("300", None, "300", "meets", id="who-read-300-is-not-more-than-300"),
    pytest.param("301", None, "301", "more", id="who-read-more-than-300"),
]


@pytest.mark.parametrize(("moderate", "vigorous", "minutes", "expected"), ACTIVITY)
def test_a_week_of_activity_counts_vigorous_minutes_twice(moderate, vigorous, minutes, expected):
    (answer,) = ACTIVITY_MINUTES.score(week_of(moderate, vigorous), ADA)
    assert answer.band == expected
    assert dict(answer.figures)["counted"] == D(minutes)


def test_w96_derived_an_hour_at_effort_7_is_a_load_of_420():
    assert training_load.session_load(D(7), D(60)) == 420


def test_w98_derived_five_hard_days_and_two_of_rest():
    week = training_load.week((*[D(300)] * 5, D(0), D(0)))
    assert week.total == 1500
    assert half_up(week.monotony, 2) == D("1.46")
    # The other reading of the formula, with the population SD, would give 1.58: not ours (D9).
    assert half_up(week.monotony * (D(7) / D(6)).sqrt(), 2) == D("1.58")


@pytest.mark.parametrize(
    ("effort", "expected"),
    [
        (4, Intensity.LIGHT),
        (5, Intensity.MODERATE),
        (6, Intensity.MODERATE),
        (7, Intensity.VIGOROUS),
        (8, Intensity.VIGOROUS),
    ],
)
def test_pag_read_effort_from_0_to_10(effort, expected):
    assert activity_intensity.by_effort(D(effort)) is expected
