"""Independent figures for standing on one leg and for days of strengthening work.

R: read in the text of the source; R2: in a page that reports it.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from core.measures import MEASURES
from core.quantity import half_up
from core.references import one_leg_stance_springer_2007 as springer
from tests.core.people import by, reading, someone

D = Decimal


@pytest.mark.parametrize(
    "age, printed",
    [
        pytest.param(30, 43, id="18-39-R2"),
        pytest.param(45, 40, id="40-49-R2"),
        pytest.param(55, 37, id="50-59-R2"),
        pytest.param(85, 6, id="80-99-a-little-over-5-R2"),
    ],
)
def test_the_means_of_three_are_those_a_public_page_prints_rounded(age, printed):
    """The page's figures for 60 to 79 match neither column and are left out."""
    row = springer.row(age)
    assert row is not None
    assert half_up(row.mean_of_three, 0) == printed


@pytest.mark.parametrize(
    "seconds, band",
    [
        pytest.param("4.9", "raised_risk", id="unable-to-hold-5-s-R"),
        pytest.param("5.0", "usual_risk", id="held-5-s-R"),
    ],
)
def test_less_than_five_seconds_on_one_leg_goes_with_injurious_falls(seconds, band):
    scores = MEASURES["one_leg_stance"].score(reading("one_leg_stance", seconds), someone(age=70))
    assert by("one_leg_stance_vellas_1997", scores) == band


@pytest.mark.parametrize(
    "days, band", [pytest.param(1, "some", id="one-day"), pytest.param(2, "meets", id="two-days-who-2020-R")]
)
def test_two_days_of_strengthening_work_meet_the_recommendation(days, band):
    scores = MEASURES["strength_days"].score(reading("strength_days", days), someone(age=50))
    assert by("who_activity", scores) == band
