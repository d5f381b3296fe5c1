"""A home blood pressure is a series of days; a single reading only shows whether to act at once."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from decimal import Decimal
from zoneinfo import ZoneInfo

import pytest

from core.measures.home_bp_series import (
    SERIES_MEAN,
    SeriesMean,
    TooFewDays,
    as_reading,
    mean_of,
    means,
    split,
    standing_drop,
)
from core.quantity import half_up
from core.reading import Conditions, How, Reading
from core.references import bp_nice_home

D = Decimal
MONDAY = datetime(2026, 3, 2, 7, tzinfo=UTC)
W50 = """152/96 148/94 150/95 146/92
142/90 138/88 140/89 136/86
139/88 135/86 137/87 133/85
138/87 134/85 136/86 132/84"""


def pressure(number: str, at: datetime, **rest) -> Reading:
    systolic, diastolic = number.split("/")
    return Reading("blood_pressure", D(systolic), at, second=D(diastolic), **rest)


def days(text: str, start: datetime = MONDAY) -> tuple[Reading, ...]:
    """One line per day: two readings a minute apart in the morning, two in the evening."""
    times = (timedelta(0), timedelta(minutes=1), timedelta(hours=12), timedelta(hours=12, minutes=1))
    return tuple(
        pressure(number, start + timedelta(days=day) + after)
        for day, line in enumerate(text.splitlines())
        for number, after in zip(line.split(), times, strict=False)
    )


def rounded(found: SeriesMean) -> tuple[Decimal, Decimal]:
    return half_up(found.systolic, 2), half_up(found.diastolic, 2)


def test_w50_derived_from_nice_the_first_day_is_dropped_and_the_rest_averaged():
    found = mean_of(days(W50), UTC)
    assert rounded(found) == (D("136.67"), D("86.75"))
    assert (found.used, found.used_days, found.days) == (12, 3, 4)
    assert bp_nice_home.HOME.find(found.systolic, found.diastolic)[1] == "raised"


def test_w51_derived_keeping_the_first_day_would_read_higher():
    found = mean_of(days(W50), UTC, drop_days=0)
    assert (found.systolic, half_up(found.diastolic, 2), found.used) == (D("139.75"), D("88.63"), 16)


def test_w52_derived_three_days_are_too_few():
    assert mean_of(days("\n".join(W50.splitlines()[:3])), UTC) == TooFewDays(days=3, needed=4)


def test_w53_read_seven_full_days_use_24_readings():
    found = mean_of(days("\n".join(["130/80 130/80 130/80 130/80"] * 7)), UTC)
    assert (found.used, found.used_days) == (24, 6)


@pytest.mark.parametrize(
    ("systolic", "diastolic", "band"),
    [
        pytest.param("134.9", "84.9", "below_home_limit", id="W54a derived"),
        pytest.param("135.0", "70", "raised", id="W54b derived"),
        pytest.param("120", "85.0", "raised", id="W54c derived"),
    ],
)
def test_either_number_is_enough_to_be_raised(systolic, diastolic, band):
    assert bp_nice_home.HOME.find(D(systolic), D(diastolic))[1] == band


def test_days_are_the_clients_own_not_those_of_greenwich():
    auckland = ZoneInfo("Pacific/Auckland")
    late_evenings = days("130/80\n130/80\n130/80\n130/80", datetime(2026, 3, 2, 10, tzinfo=UTC))
    shifted = (*late_evenings, pressure("150/90", late_evenings[-1].taken_at + timedelta(hours=2)))
    assert mean_of(shifted, UTC).days == 4
    assert mean_of(shifted, auckland).days == 5


def test_a_silence_of_more_than_three_days_begins_a_new_series():
    first = days(W50)
    after_three, after_four = (days(W50, MONDAY + timedelta(days=3 + n)) for n in (3, 4))
    assert len(list(split((*first, *after_three), UTC))) == 2  # seven days are full
    assert [len(s) for s in split((*first[:4], *days(W50, MONDAY + timedelta(days=3))), UTC)] == [20]
    assert [len(s) for s in split((*first, *after_four), UTC)] == [16, 16]


def test_somebody_who_measures_every_day_makes_weeks():
    month = days("\n".join(["130/80 130/80"] * 28))
    assert [len(s) for s in split(month, UTC)] == [14, 14, 14, 14]
    assert [m.attempts for m in means(month, UTC)] == [6, 6, 6, 6]


def test_a_mean_stands_for_its_days_and_keeps_its_conditions():
    raw = list(days(W50))
    raw[5] = pressure("138/88", raw[5].taken_at, conditions=Conditions(frozenset({"arm"})))
    found = as_reading(mean_of(raw, UTC), raw)
    assert (found.attempts, found.taken_at, found.conditions.differs) == (3, raw[-1].taken_at, {"arm"})
    assert SERIES_MEAN in found.conditions.notes


def test_means_of_a_history_leave_out_side_notes_and_short_series():
    early = pressure("199/99", MONDAY + timedelta(days=1, hours=1), how=How.EARLY)
    short = days("150/90\n150/90", MONDAY + timedelta(days=28))
    kept = pressure("131/81", MONDAY + timedelta(days=60), conditions=Conditions(notes=frozenset({SERIES_MEAN})))
    found = means((*days(W50)[:6], early, *days(W50)[6:], *short, kept), UTC)
    assert [half_up(m.value, 0) for m in found] == [D(137), D(131)]


def test_w64_derived_a_fall_of_20_on_standing_counts():
    lying, standing = pressure("140/80", MONDAY), pressure("118/76", MONDAY)
    assert standing_drop(lying, standing)
    assert standing_drop(lying, pressure("120/76", MONDAY))
    assert not standing_drop(lying, pressure("121/76", MONDAY))
