"""`samehour score`: every row is output in its place, with its problems in plain words."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Iterable
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from decimal import Decimal
from pathlib import Path
from random import Random

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from bot.foundation.errors import UsageError
from bot.scoring import score
from bot.scoring.output import COLUMNS, VERDICTS, judgement, reference_cells
from bot.scoring.parse_row import instant, understand
from bot.scoring.people import profile
from bot.scoring.scorer import Scorer
from core.client import Background, Caution, Profile, Sex
from core.judging.assess import assess, derive_all
from core.measures import MEASURES
from core.measures.measure import MeasureKind
from core.quantity import Unit
from core.reading import How, Reading
from core.watching.flags import NOTHING_AGREED
from core.watching.flags_of_reading import flags_of_reading

D = Decimal
DATA = Path(__file__).parent / "data"
HEADER = ("person", "taken_at", "measure", "value", "unit", "conditions")
ADA = Profile(
    sex=Sex.FEMALE,
    birth_date=datetime(1957, 5, 20).date(),
    stature=D(165),
    background=Background.WHITE,
    cautions_known=True,
)

Row = dict[str, str]


def run(readings: Path, people: Path | None = None, to: str = "csv") -> tuple[str, str]:
    out, err = io.StringIO(), io.StringIO()
    score(readings, people, to, out, err)
    return out.getvalue(), err.getvalue()


def written(tmp_path: Path, rows: Iterable[tuple[str, ...]], header: tuple[str, ...] = HEADER) -> Path:
    path = tmp_path / "readings.csv"
    with path.open("w", newline="", encoding="utf-8") as file:
        csv.writer(file).writerows((header, *rows))
    return path


def scored(tmp_path: Path, *rows: tuple[str, ...]) -> list[Row]:
    filled = [(*row, *[""] * (len(HEADER) - len(row))) for row in rows]
    return list(csv.DictReader(io.StringIO(run(written(tmp_path, filled))[0], newline="")))


def first(*cells: str, people: dict[str, Profile] | None = None) -> Row:
    """The output for one row, without derived lines."""
    filled = (*cells, *[""] * (len(HEADER) - len(cells)))
    return dict(zip(COLUMNS, Scorer(people or {}).lines(2, filled)[0], strict=True))


# --- the whole of it


def test_a_spreadsheet_of_mixed_units_and_faults_comes_back_row_by_row():
    out, err = run(DATA / "score_readings.csv", DATA / "score_people.csv")
    assert out == (DATA / "score_expected.csv").read_text(encoding="utf-8")
    assert err.startswith("13 rows scored, 10 could not be used, 2 to check.")


def test_nothing_but_the_rows_goes_to_standard_output(tmp_path, capsys):
    score(written(tmp_path, [("ada", "2026-01-05", "weight", "82.4", "kg", "")]), None, "csv")
    out, err = capsys.readouterr()
    assert out.splitlines()[0] == ",".join(COLUMNS)
    assert len(out.splitlines()) == 2
    assert err == "1 rows scored, 0 could not be used, 0 to check.\n"


# --- what is wrong with a row


@pytest.mark.parametrize(
    ("cells", "problem"),
    [
        pytest.param(("ada", "2026-01-05", "weight", ""), "no value; write one like 82.4 kg", id="empty"),
        pytest.param(("ada", "2026-01-05", "weight", "824"), "perhaps 82.4 kg?", id="slipped-point"),
        pytest.param(("ada", "2026-01-05", "weight", "5"), "outside 25 to 350 kg", id="impossible"),
        pytest.param(
            ("ada", "2026-01-05", "waist", "94", "kg"), "this unit does not belong to waist", id="kg-of-waist"
        ),
        pytest.param(("ada", "2026-01-05", "waist", "94", "cubits"), "the unit is not known; write cm", id="cubits"),
        pytest.param(
            ("ada", "2026-01-05", "weight", "82 kg", "lb"), "the value says kg, the unit column lb", id="two-units"
        ),
        pytest.param(("ada", "2026-01-05", "weight", "12.4", "st"), "if 12 st 4 lb is meant", id="stones-with-a-point"),
        pytest.param(("ada", "2026-01-05", "weight", "82 to 84"), "the value is a range", id="range"),
        pytest.param(("ada", "2026-01-05", "weight", "-82"), "there is no number to use", id="minus"),
        pytest.param(
            ("ada", "2026-01-05", "blood_pressure", "128"), "one of two numbers is missing", id="half-a-pressure"
        ),
        pytest.param(("ada", "2026-01-05", "blood_pressure", "82/128"), "perhaps 128/82?", id="swapped-pressure"),
        pytest.param(("ada", "2026-01-05", "resting_heart_rate", "18"), "write 18 in 15 s", id="beats-counted"),
        pytest.param(("ada", "2026-01-05", "five_chair_stands", "stopped after 3"), "not finished", id="not-finished"),
        pytest.param(("ada", "2026-01-05", "bmi", "25"), "bmi is derived here", id="derived"),
        pytest.param(("ada", "2026-01-05", "mood", "7"), "this measure is not known", id="unknown-measure"),
        pytest.param(("ada", "2026-01-05", "", "7"), "no measure", id="no-measure"),
        pytest.param(("", "2026-01-05", "energy", "7"), "no person", id="no-person"),
        pytest.param(("ada", "", "energy", "7"), "no time", id="no-time"),
        pytest.param(("ada", "05.13.2026 at noon", "energy", "7"), "the time is not understood", id="day-first"),
        pytest.param(("ada", "2026-02-30", "energy", "7"), "the time is not understood", id="no-such-day"),
        pytest.param(("ada", "0026-02-03", "energy", "7"), "the year cannot be right", id="odd-year"),
    ],
)
def test_a_row_that_cannot_be_used_says_why(cells, problem):
    row = first(*cells)
    assert problem in row["problem"]
    assert not any(row[c] for c in ("band", "baseline", "change", "verdict", "flags"))
    assert (row["person"], row["taken_at"], row["value"]) == (cells[0], cells[1], cells[3])


def test_every_problem_of_a_row_is_named_at_once():
    row = first("", "yesterday", "mood", "7")
    assert row["problem"].count(";") >= 2
    assert "no person" in row["problem"]
    assert "the time" in row["problem"]
    assert "this measure" in row["problem"]


def test_an_unusual_value_is_scored_and_named():
    row = first("ada", "2026-01-05", "weight", "230")
    assert row["verdict"] == "no baseline"
    assert "please check: an unusual value" in row["problem"]


def test_a_weight_far_from_the_last_is_scored_and_named(tmp_path):
    rows = scored(tmp_path, ("ada", "2026-01-05", "weight", "82.4"), ("ada", "2026-02-02", "weight", "92.1"))
    assert "far from the previous reading" in rows[1]["problem"]
    assert rows[1]["verdict"] == "changed possible"


def test_the_same_reading_twice_counts_once_and_names_its_twin(tmp_path):
    row = ("ada", "2026-01-05T07:30", "weight", "82.4")
    rows = scored(tmp_path, row, ("ada", "2026-01-05T07:30", "weight", "82.40", "kg"), row)
    assert [r["problem"] for r in rows] == ["", *["the same reading as in row 2; it is counted once"] * 2]


def test_two_equal_pressures_on_a_date_alone_are_two_pressures(tmp_path):
    rows = scored(tmp_path, *[("ada", "2026-01-05", "blood_pressure", "128/82")] * 2)
    assert [r["problem"] for r in rows] == ["", ""]


# --- what is understood


@pytest.mark.parametrize(
    ("measure", "value", "unit", "out"),
    [
        ("weight", "82,4", "", ("82.4", "kg")),
        ("weight", "181", "lb", ("82.1", "kg")),
        ("weight", "12 st 4", "", ("78.02", "kg")),
        ("weight", "12 st 4", "st", ("78.02", "kg")),
        ("Body weight", "82.4 kg", "kg", ("82.4", "kg")),
        ("waist", "37", "in", ("93.98", "cm")),
        ("pulse", "18 in 15 s", "", ("72", "bpm")),
        ("resting_heart_rate", "18", "in 15 s", ("72", "bpm")),
        ("height", "5 ft 5", "", ("165.1", "cm")),
        ("blood_pressure", "128 over 82", "mmHg", ("128/82", "mmHg")),
        ("energy", "7/10", "", ("7", "points")),
    ],
)
def test_a_value_as_people_write_it_comes_out_in_the_measures_own_unit(measure, value, unit, out):
    row = first("ada", "2026-01-05", measure, value, unit)
    assert (row["value"], row["unit"], row["problem"]) == (*out, "")


@pytest.mark.parametrize("key", [k for k, m in MEASURES.items() if m.understand is not None])
def test_the_unit_that_comes_out_of_any_measure_may_go_in_again(key):
    measure = MEASURES[key]
    usual = measure.bounds.usual
    value = "128/82" if measure.unit is Unit.MILLIMETRE_OF_MERCURY else str(int(usual.low or 0) + 1)
    row = first("ada", "2026-01-05", key, value, str(measure.unit))
    again = first("ada", "2026-01-05", key, row["value"], row["unit"])
    assert row["problem"] == ""
    assert (again["value"], again["unit"]) == (row["value"], row["unit"])


@pytest.mark.parametrize(
    ("text", "at"),
    [
        ("2026-01-05", datetime(2026, 1, 5, tzinfo=UTC)),
        ("2026-01-05T07:30", datetime(2026, 1, 5, 7, 30, tzinfo=UTC)),
        (" 2026-01-05 07:30Z ", datetime(2026, 1, 5, 7, 30, tzinfo=UTC)),
        ("2026-01-05T07:30+01:00", datetime(2026, 1, 5, 6, 30, tzinfo=UTC)),
    ],
)
def test_a_time_without_a_zone_is_utc_and_a_date_alone_is_its_midnight(text, at):
    assert instant(text) == at


def test_conditions_are_names_differences_and_what_happened():
    found = understand(1, "chair_stand_30s", "12", "", "chair=Kitchen; arms, different time of day; sunny")
    assert found.conditions.labels == (("chair", "kitchen"),)
    assert found.conditions.differs == {"time_of_day"}
    assert found.conditions.notes == {"arms_used"}
    assert found.heard is not None
    assert found.heard.value == 0  # the arms helped: CDC counts none
    assert found.remark == "ignored, because not understood: sunny"


def test_a_person_is_read_as_far_as_it_is_understood():
    said: list[str] = []
    found = profile("F", "1957", "5 ft 5", "South Asian", "athlete; falls, nonsense", say=said.append)
    assert found == Profile(
        sex=Sex.FEMALE,
        birth_year=1957,
        stature=D("165.10"),
        background=Background.SOUTH_ASIAN,
        cautions=frozenset({Caution.ATHLETE, Caution.FALLS}),
        cautions_known=False,  # whatever the nonsense meant
    )
    assert len(said) == 1
    assert said[0].startswith("a caution not understood")
    assert profile("x", "5/20/57", "tall", "martian", "", say=said.append) == Profile(cautions_known=True)
    assert len(said) == 5


@pytest.mark.parametrize("cell", ["", "none", "No", "-", "falls; athlete"])
def test_a_cautions_cell_that_is_empty_or_understood_says_all_there_is(cell):
    said: list[str] = []
    assert profile("f", "1957", "165", "", cell, say=said.append).cautions_known
    assert said == []


@pytest.mark.parametrize(
    ("header", "cells", "compared"),
    [
        pytest.param("", "", True, id="no-column"),
        pytest.param(",cautions", ",", True, id="empty"),
        pytest.param(",cautions", ",bisoprolol", False, id="not-understood"),
        pytest.param(",cautions", ",rate_limiting_medicine", False, id="a-medicine-slows-the-pulse"),
    ],
)
def test_a_pulse_is_compared_with_a_table_unless_a_caution_may_slow_it(tmp_path, header, cells, compared):
    people = tmp_path / "people.csv"
    people.write_text(
        f"person,sex,birth_date{header}\nben,f,1957{',' * bool(header)}\nada,f,1957{cells}\n", encoding="utf-8"
    )
    readings = written(tmp_path, [(who, "2026-01-05", "resting_heart_rate", "72", "", "") for who in ("ben", "ada")])
    ben, ada = csv.DictReader(io.StringIO(run(readings, people)[0], newline=""))
    assert "above average" in ben["band"]
    assert ("above average" in ada["band"]) is compared


def test_what_is_left_out_of_the_people_file_is_said_without_a_name(tmp_path):
    people = tmp_path / "people.csv"
    people.write_text("person,sex\nada,unknown\n", encoding="utf-8")
    _, err = run(written(tmp_path, []), people)
    assert "people.csv, row 2: sex not understood" in err
    assert "ada" not in err


# --- the file


@pytest.mark.parametrize("delimiter", [",", ";", "\t", "|"])
@pytest.mark.parametrize("start", ["", "\ufeff"], ids=["no-mark", "byte-order-mark"])
@pytest.mark.parametrize("end", ["\n", "\r\n"], ids=["lf", "crlf"])
def test_files_as_spreadsheets_write_them_are_read(tmp_path, delimiter, start, end):
    rows = ["Value,extra,measure,Taken at,person", "82.4,x,weight,2026-01-05,ada", "", "81,y,weight,2026-02-02,ada"]
    text = start + end.join(row.replace(",", delimiter) for row in rows) + end
    path = tmp_path / "readings.csv"
    path.write_bytes(text.encode())
    found = list(csv.DictReader(io.StringIO(run(path)[0], newline="")))
    assert [r["verdict"] for r in found] == ["no baseline", "within error"]


def test_a_missing_column_is_named(tmp_path):
    path = written(tmp_path, [], ("person", "taken_at", "value"))
    with pytest.raises(UsageError, match="no column measure"):
        run(path)


@pytest.mark.parametrize(
    ("content", "said"),
    [
        pytest.param(b"", "no column person", id="empty"),
        pytest.param(b"person,taken_at,measure,value\nad\xe9,2026-01-05,energy,7\n", "not UTF-8", id="latin-1"),
        pytest.param("person,taken_at,measure,value\n".encode("utf-16"), "not UTF-8", id="utf-16"),
        pytest.param(
            b'person,taken_at,measure,value\nada,2026-01-05,energy,"7' + b"7" * 1_000_001,
            "quotation mark",
            id="open-quote",
        ),
    ],
)
def test_a_file_that_is_no_table_is_one_clear_line_and_no_output(tmp_path, content, said):
    path = tmp_path / "readings.csv"
    path.write_bytes(content)
    out = io.StringIO()
    with pytest.raises(UsageError, match=said):
        score(path, None, "csv", out, io.StringIO())
    assert out.getvalue() == ""


def test_a_file_that_is_not_there_is_one_clear_line(tmp_path):
    with pytest.raises(UsageError, match="cannot be read"):
        run(tmp_path / "nowhere.csv")


def test_a_dash_reads_standard_input(tmp_path, monkeypatch):
    data = written(
        tmp_path, [("ada", "2026-02-02", "energy", "7", "", ""), ("ada", "2026-01-05", "energy", "6", "", "")]
    )
    piped = io.TextIOWrapper(io.BytesIO(data.read_bytes()))
    monkeypatch.setattr("sys.stdin", piped)
    out = io.StringIO()
    score("-", None, "csv", out, io.StringIO())
    assert out.getvalue() == run(data)[0]


def test_a_value_with_an_unquoted_comma_is_seen_as_a_cell_too_many(tmp_path):
    path = tmp_path / "readings.csv"
    path.write_text("person,taken_at,measure,value,unit\nada,2026-01-05,weight,82,4,kg\n", encoding="utf-8")
    assert "put a value with a comma in quotation marks" in run(path)[0]


# --- the forms


def test_json_is_the_same_rows_with_numbers_lists_and_nulls():
    out, _ = run(DATA / "score_readings.csv", DATA / "score_people.csv", "json")
    rows = json.loads(out)
    expected = list(csv.DictReader(io.StringIO((DATA / "score_expected.csv").read_text(encoding="utf-8"))))
    assert [list(r) for r in rows] == [list(COLUMNS)] * len(expected)
    assert [r["value"] or "" for r in rows] == [r["value"] for r in expected]
    assert [("" if r["change"] is None else f"{r['change']:g}") for r in rows] == [r["change"] for r in expected]
    assert [r["flags"] for r in rows] == [r["flags"].split(";") if r["flags"] else [] for r in expected]


def test_no_rows_are_an_empty_list(tmp_path):
    assert json.loads(run(written(tmp_path, []), to="json")[0]) == []


def test_the_table_names_every_row(tmp_path):
    out, _ = run(DATA / "score_readings.csv", DATA / "score_people.csv", "table")
    assert out.count("2026-") >= 31
    assert "12 st 4" in out


def test_a_form_that_is_not_known_is_wrong_use(tmp_path):
    with pytest.raises(UsageError, match="csv, json, table"):
        run(written(tmp_path, []), to="xml")


# --- derived measures, series, verdicts


def test_derived_measures_follow_the_row_that_makes_them_possible(tmp_path):
    rows = scored(
        tmp_path,
        ("ada", "2026-01-05T07:30", "waist", "94"),
        ("ada", "2026-01-05T07:31", "hip", "102"),
        ("ada", "2026-01-05T07:32", "weight", "82.4"),
        ("ada", "2026-01-05T07:33", "height", "165"),
    )
    assert [r["measure"] for r in rows] == [
        *("waist", "hip", "waist_to_hip_ratio", "weight"),
        *("height", "bmi", "waist_to_height_ratio"),
    ]
    assert [r["value"] for r in rows if r["measure"] in ("bmi", "waist_to_hip_ratio")] == ["0.922", "30.27"]


def test_a_new_waist_waits_for_its_own_hip(tmp_path):
    rows = scored(
        tmp_path,
        *(("ada", f"2026-01-{day:02}", measure, "94") for day in (5, 12) for measure in ("waist", "hip")),
    )
    assert [r["measure"] for r in rows] == ["waist", "hip", "waist_to_hip_ratio"] * 2


def test_the_mean_of_a_pressure_series_comes_from_the_fourth_day_on_without_the_first(tmp_path):
    days = [("180/100"), ("130/80"), ("134/82"), ("138/84")]
    rows = scored(tmp_path, *(("ada", f"2026-01-0{5 + n}", "blood_pressure", v) for n, v in enumerate(days)))
    assert [r["measure"] for r in rows] == ["blood_pressure"] * 4 + ["blood_pressure_mean"]
    assert (rows[-1]["value"], rows[-1]["band"]) == ("134/82", "below the home limit")
    assert [r["flags"] for r in rows] == ["bp_severe", "", "", "", ""]
    assert {r["verdict"] for r in rows[:4]} == {"part of a series"}


def test_a_weight_two_days_later_is_too_soon_and_its_difference_withheld(tmp_path):
    rows = scored(tmp_path, ("ada", "2026-01-05", "weight", "82.4"), ("ada", "2026-01-07", "weight", "79"))
    assert (rows[1]["verdict"], rows[1]["change"], rows[1]["mdc95"]) == ("too soon", "", "")


def test_a_second_reading_of_an_instant_is_compared_with_the_one_before_that_instant(tmp_path):
    days = ("2026-01-05", "2026-02-02", "2026-03-02", "2026-03-02")
    rows = scored(
        tmp_path, *(("ada", day, "weight", v) for day, v in zip(days, ("82", "80", "79.9", "79.8"), strict=True))
    )
    assert [r["verdict"] for r in rows] == ["no baseline", "changed possible", *["changed confirmed"] * 2]


def test_equal_values_of_two_people_are_confirmed_only_for_the_one_who_was_there_before(tmp_path):
    rows = scored(
        tmp_path,
        ("ada", "2026-01-05", "weight", "82"),
        ("ada", "2026-02-02", "weight", "80"),
        ("ben", "2026-01-05", "weight", "82"),
        ("ben", "2026-02-02", "weight", "82.1"),
        ("ben", "2026-03-02", "weight", "80"),
        ("ada", "2026-03-02", "weight", "80"),
    )
    assert [r["verdict"] for r in rows[-2:]] == ["changed possible", "changed confirmed"]


def test_unplanned_loss_is_seen_against_the_highest_weight_of_the_year(tmp_path):
    rows = scored(
        tmp_path,
        *(
            ("ada", day, "weight", v)
            for day, v in [
                ("2026-01-05", "80"),
                ("2026-02-02", "86"),
                ("2026-03-02", "82"),
                ("2026-03-30", "81.7"),
            ]
        ),
    )
    assert ["unplanned_loss_over_5" in r["flags"] for r in rows] == [False, False, False, True]


# --- the same answers as the core gives with the whole history

PLAN = ("weight", "waist", "hip", "resting_heart_rate", "chair_stand_30s", "energy", "own_question", "six_minute_walk")


def invented(seed: int, weeks: int = 60) -> list[tuple[str, ...]]:
    """Chronological rows of one person, with gaps, early readings and equal values."""
    draw = Random(seed)
    rows = []
    at = datetime(2025, 1, 6, 7, 30, tzinfo=UTC)
    for _ in range(weeks):
        at += timedelta(days=draw.choice((1, 6, 7, 7, 7, 14, 28)), minutes=draw.randrange(60))
        for n, measure in enumerate(draw.sample((*PLAN, "blood_pressure", "blood_pressure"), k=draw.randrange(1, 7))):
            centre = {"weight": 80, "waist": 94, "hip": 104, "resting_heart_rate": 70, "six_minute_walk": 400}
            value = draw.gauss(centre.get(measure, 7), centre.get(measure, 7) / 30)
            text = f"{value:.1f}" if measure in ("weight", "waist", "hip") else f"{value:.0f}"
            if measure == "blood_pressure":
                text = f"{draw.randrange(100, 150)}/{draw.randrange(60, 90)}"
            where = draw.choice(("", "", "", "different scales", "site=navel", "site=midpoint"))
            rows.append(("ada", (at + timedelta(minutes=n)).isoformat(), measure, text, "", where))
    return rows


@pytest.mark.parametrize("seed", range(8))
def test_what_little_is_kept_gives_the_verdicts_and_flags_of_the_whole_history(seed):
    scorer = Scorer({"ada": ADA})
    history: dict[str, list[Reading]] = {}
    compared = 0
    for number, cells in enumerate(invented(seed), start=2):
        lines = [dict(zip(COLUMNS, line, strict=True)) for line in scorer.lines(number, cells)]
        meaning = understand(1, *cells[2:])
        measure, heard, at = meaning.measure, meaning.heard, instant(cells[1])
        if lines[0]["problem"] and lines[0]["verdict"] == "":
            continue
        assert measure is not None
        assert heard is not None
        assert isinstance(at, datetime)
        reading = Reading(
            measure=measure.key, value=heard.value, taken_at=at, second=heard.second, unit=heard.unit,
            conditions=meaning.conditions, how=How.IMPORTED, attempts=heard.attempts, window=heard.window,
        )  # fmt: skip
        past = history.setdefault(measure.key, [])
        found = assess(measure, reading, past, ADA, baseline_since=None, retest=None, zone=UTC)
        flags = {f.code for f in flags_of_reading(measure, found, past, ADA, NOTHING_AGREED, zone=UTC)}
        series = [line for line in lines if line["measure"] in (measure.key, "blood_pressure_mean")]
        assert set(filter(None, ";".join(line["flags"] for line in series).split(";"))) == flags
        cell = judgement(found.verdict, measure.unit)
        if measure.key != "blood_pressure" or found.judged is not reading:
            assert tuple(series[-1][c] for c in COLUMNS[7:12]) == cell
            assert (series[-1]["band"], series[-1]["reference"]) == reference_cells(found.scores)
            compared += 1
        past.append(reading)
    assert compared > 50


def test_derived_rows_have_the_values_and_bands_of_the_core(tmp_path):
    scorer = Scorer({"ada": ADA})
    at = datetime(2026, 1, 5, tzinfo=UTC)
    latest = {
        key: Reading(key, D(value), at)
        for key, value in (("weight", "82.4"), ("waist", "94"), ("hip", "102"), ("six_minute_walk", "410"))
    }
    lines = [
        dict(zip(COLUMNS, line, strict=True))
        for n, (key, r) in enumerate(latest.items())
        for line in scorer.lines(n, ("ada", "2026-01-05", key, str(r.value), "", ""))
    ]
    expected = {
        d.measure.key: reference_cells(d.measure.score(d.reading, ADA)) for d in derive_all(latest, ADA, MEASURES)
    }
    assert len(expected) == 4
    found = {
        x["measure"]: (x["band"], x["reference"]) for x in lines if MEASURES[x["measure"]].kind is MeasureKind.DERIVED
    }
    assert found == expected


def test_energy_has_fallen_from_the_weeks_before_a_long_silence(tmp_path):
    rated = zip(("01-13", "01-27", "02-17", "02-24", "03-03", "03-10", "04-21"), "8787833", strict=True)
    rows = scored(tmp_path, *(("ada", f"2025-{day}", "energy", rating) for day, rating in rated))
    assert [r["flags"] for r in rows] == [*[""] * 6, "energy_falling"]


def test_a_file_in_any_order_has_the_verdicts_of_one_in_order_of_time(tmp_path):
    people = tmp_path / "people.csv"
    people.write_text("person,sex,birth_date,height\nada,female,1957-05-20,165\n", encoding="utf-8")
    rows = [tuple(r) for seed in range(3) for r in ((f"p{seed}", *row[1:]) for row in invented(seed, 30))]
    in_order = run(written(tmp_path, rows), people)[0].splitlines()
    shuffled = rows[:]
    Random(5).shuffle(shuffled)
    out = run(written(tmp_path, shuffled), people)[0].splitlines()
    assert sorted(out) == sorted(in_order)
    own = [r for r in csv.reader(out[1:]) if MEASURES.get(r[2]) and MEASURES[r[2]].kind is not MeasureKind.DERIVED]
    assert [(r[0], r[1], r[2]) for r in own] == [r[:3] for r in shuffled]


# --- whatever is typed

TEXT = st.text(st.characters(codec="utf-8"), max_size=30)
TELLING = """ada 2026-01-05 0001-01-01T00:00+10:00 9999-12-31 weight energy blood_pressure height 82.4 128/82 1e9
    NaN Infinity kg arms = site= ;"""
CELL = st.one_of(TEXT, st.sampled_from(TELLING.split()))


@given(st.lists(st.tuples(CELL, CELL, CELL, CELL, CELL, CELL), max_size=6))
@example([("ada", "0001-01-01T00:00+10:00", "energy", "7", "", "")])
@example([("ada", "2026-01-05", "weight", "9" * 400, "", "")])
@example([("ada\r", "2026-01-05", "weight", '8"2', "", "\x00")])
@example([("", "", "", "", "", "")])
@example([("ada", "2026-01-05", "aerobic_estimate", "30", "", "")])
@settings(deadline=None, max_examples=150, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_every_row_has_its_line_in_its_place_whatever_is_typed(tmp_path, rows):
    out, _ = run(written(tmp_path, rows))
    found = list(csv.DictReader(io.StringIO(out, newline="")))
    derived = {"blood_pressure_mean", *(k for k, m in MEASURES.items() if m.kind is MeasureKind.DERIVED)}
    own = [r for r in found if r["measure"] not in derived or r["problem"]]  # one that was typed is refused
    assert [(r["person"], r["taken_at"]) for r in own] == [r[:2] for r in rows]
    for row in found:
        assert row["verdict"] in (*VERDICTS, "")
        assert bool(row["verdict"]) or bool(row["problem"])


def test_what_is_kept_does_not_grow_with_the_file():
    scorer = Scorer({})
    start = datetime(2020, 1, 1, tzinfo=UTC)
    sizes = []
    for day in range(1500):
        at = (start + timedelta(days=day)).isoformat()
        for measure, value in (
            ("weight", f"{80 + day % 7 / 10}"),
            ("energy", str(day % 10)),
            ("blood_pressure", "128/82"),
        ):
            scorer.lines(day, ("ada", at, measure, value, "", ""))
        if day in (500, 1499):
            tracks = scorer._people["ada"].tracks
            sizes.append(
                (
                    len(tracks["weight"].history(start)),
                    len(tracks["energy"].history(start)),
                    len(tracks["blood_pressure"].days),
                )
            )
    assert sizes[1][0] <= 7
    assert sizes[1][1] <= 5 * 28 + 1
    assert sizes[1][2] <= 7


def test_the_tables_of_what_is_remembered_start_anew_when_full():
    from bot.scoring.bounded import REMEMBERED, cache

    table: dict[int, int] = {}
    for n in range(REMEMBERED + 10):
        assert cache(table, n, n) == n
    assert len(table) == 10


def test_a_reading_replaced_by_height_changes_the_index(tmp_path):
    rows = scored(tmp_path, ("a", "2026-01-05", "height", "165"), ("a", "2026-01-06", "weight", "82.4"))
    assert rows[-1]["value"] == "30.27"
    assert replace(ADA, stature=D(165)) == ADA


def test_the_days_of_a_pressure_are_those_of_the_zone_its_time_gives(tmp_path):
    """Four evenings and mornings in New York are four days there, and five by UTC, whose first holds one reading."""
    taken = [f"2026-01-0{day}T{hour}-05:00" for day in (5, 6, 7, 8) for hour in ("07:00", "21:00")]
    values = ["180/100", "180/100", "130/80", "130/80", "134/82", "134/82", "138/84", "138/84"]
    rows = scored(tmp_path, *(("ada", at, "blood_pressure", v) for at, v in zip(taken, values, strict=True)))
    means = [r for r in rows if r["measure"] == "blood_pressure_mean"]
    assert [r["taken_at"][:10] for r in means] == ["2026-01-08", "2026-01-08"]
    assert means[-1]["value"] == "134/82"  # without the whole first day


def test_a_day_never_goes_back_when_somebody_travels(tmp_path):
    taken = ["2026-01-05T08:00+12:00", "2026-01-06T08:00+12:00", "2026-01-05T21:00-08:00", "2026-01-07T08:00-08:00"]
    rows = scored(tmp_path, *(("ada", at, "blood_pressure", "130/80") for at in taken))
    assert {r["measure"] for r in rows} == {"blood_pressure"}  # three days, not four


@pytest.mark.parametrize(
    ("limits", "band", "reference", "flags"),
    [
        ("nice", "below the home limit", "nice_home_blood_pressure", ""),
        ("aha", "stage 1", "aha_home_blood_pressure", "bp_high_mean"),
        ("esc", "elevated", "esc_home_blood_pressure", "bp_high_mean"),
    ],
)
def test_a_mean_is_compared_with_the_limits_that_are_chosen(tmp_path, limits, band, reference, flags):
    path = written(tmp_path, [("ada", f"2026-01-0{5 + n}", "blood_pressure", "132/78", "", "") for n in range(4)])
    out = io.StringIO()
    score(path, None, "csv", out, io.StringIO(), limits=limits)
    *_, mean = csv.DictReader(io.StringIO(out.getvalue(), newline=""))
    assert (mean["measure"], mean["band"], mean["reference"], mean["flags"]) == (
        "blood_pressure_mean", band, reference, flags,
    )  # fmt: skip


def test_limits_that_are_not_known_are_named(tmp_path):
    with pytest.raises(UsageError, match="nice, aha, esc"):
        score(written(tmp_path, []), None, "csv", io.StringIO(), io.StringIO(), limits="who")


def test_a_band_is_in_words_that_a_reader_of_the_source_knows():
    ada = {"ada": ADA}
    scorer = Scorer(ada)
    lines = scorer.lines(2, ("ada", "2026-01-05", "weight", "85", "", ""))
    assert lines[1][5:7] == ("obese class I | obesity class 1", "who_bmi | nice_bmi")
    (pulse,) = scorer.lines(3, ("ada", "2026-01-05", "resting_heart_rate", "72", "", ""))
    assert pulse[5].startswith("usual | above average | mean of adults 7")
