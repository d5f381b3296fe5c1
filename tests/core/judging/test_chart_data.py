"""Chart contents. People and values are invented."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from decimal import Decimal
from zoneinfo import ZoneInfo

import pytest

from core.client import Background, Profile, Sex
from core.judging.change import mdc95
from core.judging.chart_data import (
    MOST_MARKS,
    USUAL_BAND,
    LinePoint,
    Point,
    Pressure,
    Usual,
    pressure_week,
    rating_line,
    trend,
    usual,
)
from core.measures import MEASURES
from core.quantity import Unit
from core.reading import How, Reading

D = Decimal
START = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)
ADA = Profile(Sex.FEMALE, 1956, None, D(165), Background.WHITE)
LONDON = ZoneInfo("Europe/London")


def readings(key: str, values: list[str], days: int = 28, how: How = How.ASKED) -> tuple[Reading, ...]:
    return tuple(
        Reading(key, D(v), START + timedelta(days=days * n), how=how, attempts=1) for n, v in enumerate(values)
    )


def test_an_early_weight_is_never_on_a_picture() -> None:
    official = readings("weight", ["82.4", "81.6"])
    early = Reading("weight", D("85.5"), START + timedelta(days=3), how=How.EARLY)
    drawn = trend(MEASURES["weight"], (official[0], early, official[1]), ADA, UTC)
    assert [p.value for p in drawn.points] == [D("82.4"), D("81.6")]
    assert drawn == trend(MEASURES["weight"], official, ADA, UTC)  # not even in an axis or the band


def test_the_first_reading_of_the_programme_is_the_baseline() -> None:
    series = readings("weight", ["90", "82.4", "81.6"])
    drawn = trend(MEASURES["weight"], series, ADA, UTC, since=START + timedelta(days=1))
    assert drawn.baseline == Point(date(2026, 3, 30), D("82.4"))
    assert len(drawn.points) == 2


def test_a_new_programme_without_readings_shows_the_old_ones() -> None:
    series = readings("weight", ["90", "82.4"])
    assert len(trend(MEASURES["weight"], series, ADA, UTC, since=START + timedelta(days=300)).points) == 2


def test_the_error_band_is_the_one_changes_are_judged_with() -> None:
    weight = MEASURES["weight"]
    assert weight.error is not None
    assert weight.error.cv is not None
    drawn = trend(weight, readings("weight", ["80", "81"]), ADA, UTC)
    assert drawn.error == pytest.approx(mdc95(2 * (weight.error.cv * 80) ** 2))


def test_values_band_and_error_are_in_the_clients_unit() -> None:
    metric = trend(MEASURES["waist"], readings("waist", ["101.6", "99.06"]), ADA, UTC)
    inches = trend(MEASURES["waist"], readings("waist", ["101.6", "99.06"]), ADA, UTC, Unit.INCH)
    assert [p.value for p in inches.points] == [D(40), D(39)]
    assert metric.error is not None
    assert inches.error == pytest.approx(metric.error / D("2.54"))
    assert inches.usual is not None
    assert inches.usual.high == pytest.approx(D(80) / D("2.54"))


def test_dates_are_the_clients_own() -> None:
    late = Reading("energy", D(7), datetime(2026, 6, 1, 23, 30, tzinfo=UTC))
    assert rating_line(MEASURES["energy"], (late,), LONDON).points[0].day == date(2026, 6, 2)


@pytest.mark.parametrize(
    ("key", "value", "band"),
    [
        ("waist", "95", Usual(None, D(80), "nice_waist")),  # NICE: low below 80 cm for women
        ("waist", "75", Usual(None, D(80), "nice_waist")),  # found from inside the band and from outside
        ("resting_heart_rate", "72", Usual(D(60), D(100), "bhf_resting_heart_rate")),
        ("resting_heart_rate", "110", Usual(D(60), D(100), "bhf_resting_heart_rate")),
        ("timed_up_and_go", "9.9", Usual(None, D("10.2"), "timed_up_and_go_bohannon_2006")),
    ],
)
def test_the_usual_band_is_the_printed_one(key: str, value: str, band: Usual) -> None:
    person = Profile(Sex.FEMALE, 1950, None, D(165), Background.WHITE)
    reading = readings(key, [value])[0]
    found = usual(MEASURES[key], reading, person, MEASURES[key].unit)
    assert found == band


def test_no_band_where_no_reference_fits() -> None:
    waist = MEASURES["waist"]
    assert usual(waist, readings("waist", ["95"])[0], Profile(), waist.unit) is None
    assert usual(MEASURES["weight"], readings("weight", ["95"])[0], ADA, Unit.KILOGRAM) is None


def test_every_band_that_is_drawn_belongs_to_a_reference_of_a_measure() -> None:
    known = {source.key for measure in MEASURES.values() for source in measure.sources}
    assert sorted(set(USUAL_BAND) - known) == []


def test_nothing_to_draw_is_a_fault_of_ours() -> None:
    with pytest.raises(ValueError, match="weight"):
        trend(MEASURES["weight"], readings("weight", ["82.4"], how=How.EARLY), ADA, UTC)


def test_a_rating_line_shows_the_newest_marks() -> None:
    drawn = rating_line(MEASURES["energy"], readings("energy", [str(n % 11) for n in range(20)], 7), UTC)
    assert len(drawn.points) == MOST_MARKS
    assert drawn.points[-1].value == D(19 % 11)


def test_only_the_clients_own_question_carries_their_words() -> None:
    series = readings("energy", ["5"])
    assert rating_line(MEASURES["energy"], series, UTC, "Stairs?").question == ""
    assert rating_line(MEASURES["own_question"], series, UTC, "Stairs?").question == "Stairs?"


def week(days: int) -> tuple[Reading, ...]:
    return tuple(
        Reading("blood_pressure", D(140 - day), datetime(2026, 3, 2 + day, hour, n, tzinfo=UTC), second=D(90 - day))
        for day in range(days)
        for hour in (7, 19)
        for n in range(2)
    )


def test_a_pressure_week_leaves_the_first_day_out_of_the_mean() -> None:
    drawn = pressure_week(week(7), UTC, Profile())
    assert [d.used for d in drawn.days] == [False, *[True] * 6]
    assert drawn.mean == Pressure(D("136.5"), D("86.5"))
    assert drawn.limit == Pressure(D(135), D(85))
    assert drawn.days[0].morning == drawn.days[0].evening == Pressure(D(140), D(90))


def test_too_few_days_are_shown_without_a_mean() -> None:
    drawn = pressure_week(week(3), UTC, Profile())
    assert (drawn.mean, [d.used for d in drawn.days]) == (None, [False] * 3)


def test_a_missing_evening_stays_empty() -> None:
    drawn = pressure_week(week(4)[:-2], UTC, Profile())
    assert drawn.days[-1].evening is None
    assert drawn.days[-1].morning is not None


def test_an_older_series_is_not_on_the_newest_picture() -> None:
    later = tuple(
        Reading("blood_pressure", D(120), datetime(2026, 4, 6 + d, 7, tzinfo=UTC), second=D(70)) for d in range(4)
    )
    assert [d.day.month for d in pressure_week((*week(7), *later), UTC, Profile()).days] == [4] * 4


def test_no_readings_make_an_empty_week() -> None:
    assert pressure_week((), UTC, Profile()).days == ()


def test_the_trend_is_drawn_with_its_interval_from_the_fourth_reading_on() -> None:
    def line(*values: str) -> tuple[LinePoint, LinePoint] | None:
        return trend(MEASURES["waist"], readings("waist", list(values)), ADA, LONDON, Unit.INCH).line

    assert line("96", "95", "94") is None
    first, last = line("96", "95", "94", "93") or pytest.fail("no line")
    assert (first.day, last.day) == (date(2026, 3, 2), date(2026, 5, 25))
    assert first.low < first.value < first.high
    assert round(first.value, 3) == round(D(96) / D("2.54"), 3)  # the points lie on the line; it is in inches


def test_the_grey_of_a_picture_is_what_the_words_beside_it_say_chance_can_make() -> None:
    series = readings("waist", ["101.6", "99.06"])
    assert trend(MEASURES["waist"], series, ADA, UTC, chance=Decimal("7.62")).error == Decimal("7.62")
    assert trend(MEASURES["waist"], series, ADA, UTC, Unit.INCH, chance=Decimal("7.62")).error == 3


def test_the_start_stays_on_a_long_line_of_ratings() -> None:
    drawn = rating_line(MEASURES["energy"], readings("energy", ["3"] + ["6"] * 30, days=7), UTC)
    assert (drawn.points[0], len(drawn.points)) == (Point(date(2026, 3, 2), D(3)), MOST_MARKS)


def test_days_of_a_pressure_week_are_numbered_as_they_were_lived() -> None:
    kept = tuple(r for r in week(7) if r.taken_at.day != 4)
    assert [d.number for d in pressure_week(kept, UTC, Profile()).days] == [1, 2, 4, 5, 6, 7]


def test_a_mean_that_one_day_makes_is_said_without_it_too() -> None:
    def with_day(systolic: int) -> tuple[Pressure | None, int]:
        taken = [
            Reading("blood_pressure", D(systolic if d == 4 else 126), START + timedelta(days=d, hours=h), second=D(80))
            for d in range(7)
            for h in (0, 11)
        ]
        drawn = pressure_week(taken, UTC, Profile())
        return drawn.without, drawn.odd

    assert with_day(190) == (Pressure(D(126), D(80)), 5)
    assert with_day(140) == (None, 0)


def test_a_point_is_beyond_chance_where_its_words_say_so() -> None:
    drawn = trend(MEASURES["waist"], readings("waist", ["100", "95", "94.9"]), ADA, UTC, chance=D(5))
    assert [drawn.beyond(point) for point in drawn.points] == [False, False, True]
