"""Readings as CSV: read back by another library, by `score`, and by an import."""

import io
from datetime import UTC, datetime, timedelta
from decimal import Decimal
from pathlib import Path
from typing import Any

import pandas
import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.exports.csv_out import COLUMNS, readings_csv, row
from bot.foundation.spreadsheet import escaped, table, unescaped
from bot.scoring import OPTIONAL, REQUIRED, score
from bot.scoring.parse_row import Meaning, instant, understand
from core.measures import MEASURES
from core.quantity import Unit, convert
from core.reading import SAME, Conditions, How, Reading

D = Decimal
AT = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)


def a_reading(measure: str, value: Any, **more: Any) -> Reading:
    return Reading(measure, D(value), more.pop("taken_at", AT), **more)


def read_back(reading: Reading) -> Meaning:
    cells = dict(zip(COLUMNS, row("Ada", reading), strict=True))
    return understand(1, cells["measure"], cells["value"], cells["unit"], cells["conditions"])


STONES = convert(D(172), Unit.POUND, Unit.KILOGRAM)
READINGS = {
    "weight": a_reading("weight", "82.4"),
    "weight typed in stones": a_reading("weight", STONES, unit=Unit.STONE),
    "height": a_reading("height", "165"),
    "girth of two attempts": a_reading("waist", "94.25", conditions=Conditions(labels=(("site", "navel"),))),
    "girth typed in inches": a_reading("hip", convert(D("40.5"), Unit.INCH, Unit.CENTIMETRE)),
    "pulse counted": a_reading("resting_heart_rate", "72", window=15),
    "pulse by a device": a_reading("resting_heart_rate", "71"),
    "mean of two counts": a_reading("resting_heart_rate", "71", window=30, attempts=2),
    "pressure": a_reading("blood_pressure", "128", second=D(82), conditions=Conditions(notes=frozenset({"dizziness"}))),
    "rating": a_reading("energy", "7"),
    "own question": a_reading("own_question", "0"),
    "pain": a_reading("pain", "3"),
    "sleep": a_reading("sleep", "8"),
    "stands": a_reading("chair_stand_30s", "12"),
    "stands, half way up": a_reading(
        "chair_stand_30s", "13", conditions=Conditions(notes=frozenset({"more_than_half_way"}))
    ),
    "stands with arms": a_reading("chair_stand_30s", "0", conditions=Conditions(notes=frozenset({"arms_used"}))),
    "five stands": a_reading("five_chair_stands", "12.4"),
    "get up and walk": a_reading("timed_up_and_go", "9.8"),
    "balance": a_reading("four_stage_balance", "27.4"),
    "one leg": a_reading("one_leg_stance", "14.2", conditions=Conditions(labels=(("leg", "left"),))),
    "pace": a_reading("gait_speed_4m", "0.92"),
    "steps": a_reading("two_minute_step", "84"),
    "walk": a_reading("six_minute_walk", "410", conditions=Conditions(differs=frozenset({"course", "walking_aid"}))),
    "mile": a_reading("walk_mile", "14.52", second=D(132)),
    "mile without a pulse": a_reading("walk_mile", "14.5"),
    "minutes": a_reading("activity_minutes", "150"),
    "minutes of two kinds": a_reading("activity_minutes", "90", second=D(30)),
    "days": a_reading("strength_days", "2"),
    "sessions": a_reading("sessions_done", "3"),
    "effort": a_reading("session_effort", "6"),
}


@pytest.mark.parametrize("reading", READINGS.values(), ids=READINGS.keys())
def test_a_reading_is_read_back_as_it_was(reading: Reading) -> None:
    found = read_back(reading)
    assert found.problem == ""
    assert found.heard is not None
    assert (found.heard.value, found.heard.second) == (reading.value, reading.second)
    assert found.conditions == reading.conditions
    if reading.window is not None and reading.value * reading.window / 60 % 1 == 0:
        assert found.heard.window == reading.window


def test_every_measure_that_is_asked_is_among_them() -> None:
    assert {r.measure for r in READINGS.values()} == {k for k, m in MEASURES.items() if m.understand is not None}


@given(st.integers(min_value=3500, max_value=25000), st.sampled_from([Unit.KILOGRAM, Unit.POUND]))
def test_no_weight_is_rounded_on_the_way(hundredths: int, unit: Unit) -> None:
    reading = a_reading("weight", convert(D(hundredths) / 100, unit, Unit.KILOGRAM))
    found = read_back(reading)
    if found.problem == "":  # otherwise it is not a possible weight
        assert found.heard is not None
        assert found.heard.value == reading.value


def test_a_spreadsheet_library_reads_the_same_numbers() -> None:
    series = [READINGS["weight"], READINGS["pressure"], a_reading("weight", "81.9", taken_at=AT + timedelta(days=28))]
    found = pandas.read_csv(io.StringIO(readings_csv([("Ada, the first", series)])), dtype={"value": str})
    assert tuple(found.columns) == COLUMNS
    assert list(found["value"]) == ["82.4", "128/82", "81.9"]
    assert set(found["person"]) == {"Ada, the first"}
    assert list(pandas.to_datetime(found["taken_at"])) == [AT, AT, AT + timedelta(days=28)]


def test_score_reads_what_was_exported(tmp_path: Path) -> None:
    assert set(REQUIRED) | set(OPTIONAL) <= set(COLUMNS)
    file = tmp_path / "readings.csv"
    series = [a_reading("weight", "82.4"), a_reading("weight", "79.9", taken_at=AT + timedelta(days=56))]
    file.write_text(readings_csv([("Ada", series)]), encoding="utf-8", newline="")
    out, err = io.StringIO(), io.StringIO()
    score(str(file), None, "csv", out, err)
    assert "2 rows scored, 0 could not be used" in err.getvalue()
    assert "82.4,-2.5," in out.getvalue()


def test_side_notes_stay_out_unless_asked_for() -> None:
    early = a_reading("weight", "82", how=How.EARLY)
    assert readings_csv([("Ada", [early])]).count("\r\n") == 1
    assert readings_csv([("Ada", [early])], side_notes=True).count("\r\n") == 2


FORMULAS = ("=1+1", "+1+1", "-cmd", "@x", "\tx", "\rx")


@pytest.mark.parametrize("text", FORMULAS, ids=repr)
def test_what_a_spreadsheet_would_run_is_told_as_text_and_read_back(text: str) -> None:
    assert escaped(text) == f"'{text}"
    assert unescaped(escaped(text)) == text


@pytest.mark.parametrize("text", ["-2.5", "+7", "Ada", "'quoted'", "", "O'Neill"])
def test_a_number_or_a_name_is_left_as_it_is(text: str) -> None:
    assert escaped(text) == text
    assert unescaped(text) == text


def test_cells_with_commas_quotes_and_lines_survive() -> None:
    cells = ('a, "b"\nc', "=x", "ü")
    found = pandas.read_csv(io.StringIO(table(("one", "two", "three"), [cells])))
    assert [unescaped(cell) for cell in found.iloc[0]] == list(cells)


def test_the_instant_is_exact() -> None:
    reading = a_reading("weight", "82.4", taken_at=AT + timedelta(microseconds=7))
    assert instant(row("Ada", reading)[1]) == reading.taken_at
    assert read_back(reading).conditions is SAME
