"""Past readings are previewed, then imported once, and never overwrite a client's own entries."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import select, update

from bot.exports.csv_out import readings_csv
from bot.foundation.errors import UsageError
from bot.operator.imports import Fate, ImportedRow, opened, preview, store
from bot.scoring.dates import order_of
from bot.scoring.tabular import InputTable
from bot.store import readings
from bot.store import schema as tables
from bot.store.database import Database
from core.care import Slot, Status
from core.quantity import Unit
from core.reading import Conditions, How, Reading
from tests.bot.practice import BEN, NOW, ROWAN, Practice, add_client, add_coach, rowan_and_ada, weight

D = Decimal
HEADER = "person,taken_at,measure,value,unit,conditions\n"


@pytest.fixture
def practice(database: Database) -> Practice:
    return database.write_now(rowan_and_ada)


class Desk:
    """Rowan at a spreadsheet."""

    def __init__(self, database: Database, coach: int, folder: Path) -> None:
        self.database, self.coach, self.file = database, coach, folder / "past.csv"

    def looks(self, text: str, now: datetime = NOW, **options: Any) -> tuple[ImportedRow, ...]:
        self.file.write_text(text, encoding="utf-8", newline="")
        with opened(str(self.file)) as sheet:
            return self.database.read_now(
                lambda conn: preview(conn, self.coach, sheet, now, **self.told(sheet, options))
            )

    def keeps(self, text: str, now: datetime = NOW, **options: Any) -> int:
        self.file.write_text(text, encoding="utf-8", newline="")
        with opened(str(self.file)) as sheet:
            return self.database.write_now(
                lambda conn: store(conn, preview(conn, self.coach, sheet, now, **self.told(sheet, options)), now)
            )

    def told(self, sheet: InputTable, options: dict[str, Any]) -> dict[str, Any]:
        """The options, with the order of the file's dates as the command line finds it."""
        order, _ = order_of(((n, cells[1]) for n, (cells, _) in enumerate(sheet.rows(), 2)), sheet.name)
        return {"dates": order} | options

    def fates(self, *rows: str, **options: Any) -> list[Fate]:
        return [line.fate for line in self.looks(HEADER + "\n".join(rows) + "\n", **options)]

    def kept(self, client: int) -> tuple[Reading, ...]:
        return self.database.read_now(lambda conn: readings.everything(conn, [client])).get(client, ())


@pytest.fixture
def desk(database: Database, practice: Practice, tmp_path: Path) -> Desk:
    return Desk(database, practice.coach, tmp_path)


def put(desk: Desk, client: int, *series: Reading) -> None:
    rows = [readings.row(client, f"typed/{n}", r, NOW) for n, r in enumerate(series)]
    desk.database.write_now(readings.put, rows)


GOOD = HEADER + (
    "Ada,2025-11-03T07:30Z,weight,83.0,kg,\n"
    "Ada,2025-11-03T07:31Z,waist,37 in,,site=navel\n"
    "Ada,2025-12-01T07:30+01:00,blood pressure,128/82,,\n"
    "Ada,2025-12-01,resting_heart_rate,18 in 15 s,,\n"
)


def test_looking_writes_nothing(desk: Desk, practice: Practice) -> None:
    assert [line.fate for line in desk.looks(GOOD)] == [Fate.KEPT] * 4
    assert desk.kept(practice.ada) == ()


def test_what_was_looked_at_is_kept_as_imported(desk: Desk, practice: Practice) -> None:
    assert desk.keeps(GOOD) == 4
    kept = {r.measure: r for r in desk.kept(practice.ada)}
    assert {r.how for r in kept.values()} == {How.IMPORTED}
    assert kept["weight"].taken_at == datetime(2025, 11, 3, 7, 30, tzinfo=UTC)
    assert (kept["waist"].value, kept["waist"].unit) == (D("93.98"), Unit.INCH)
    assert kept["waist"].conditions.label("site") == "navel"
    assert (kept["blood_pressure"].value, kept["blood_pressure"].second) == (D(128), D(82))
    assert kept["blood_pressure"].taken_at == datetime(2025, 12, 1, 6, 30, tzinfo=UTC)
    assert (kept["resting_heart_rate"].value, kept["resting_heart_rate"].window) == (D(72), 15)
    actions = desk.database.read_now(lambda conn: conn.execute(select(tables.audit)).all())
    assert [(a.actor, a.action, a.client_id) for a in actions] == [("operator", "imported", practice.ada)]


def test_the_same_file_twice_adds_nothing(desk: Desk, practice: Practice) -> None:
    desk.keeps(GOOD)
    before = desk.kept(practice.ada)
    assert [line.fate for line in desk.looks(GOOD)] == [Fate.ALREADY] * 4
    assert desk.keeps(GOOD, now=NOW + timedelta(days=1)) == 0
    assert desk.kept(practice.ada) == before


def test_the_same_reading_in_other_words_and_another_order_adds_nothing(desk: Desk, practice: Practice) -> None:
    desk.keeps(HEADER + "Ada,2025-11-03T07:30Z,weight,83.0,kg,\nAda,2025-12-03T07:30Z,weight,82.5,kg,\n")
    again = HEADER + "ADA,2025-12-03T08:30+01:00,Weight,82.50 kg,,\nada,2025-11-03T07:30:00+00:00,weight,83,,\n"
    assert desk.keeps(again) == 0
    assert len(desk.kept(practice.ada)) == 2


def test_what_was_taken_back_does_not_come_back(desk: Desk, practice: Practice) -> None:
    desk.keeps(GOOD)
    weights = [r for r in desk.kept(practice.ada) if r.measure == "weight"]
    desk.database.write_now(readings.withdraw, [(practice.ada, weights[0].key)], NOW)
    assert desk.keeps(GOOD) == 0
    assert [r for r in desk.kept(practice.ada) if r.measure == "weight"] == []


def test_what_a_client_typed_is_never_overwritten(desk: Desk, practice: Practice) -> None:
    at = datetime(2025, 11, 3, 7, 30, tzinfo=UTC)
    put(desk, practice.ada, weight("82.4", at))
    line, whole_day = desk.looks(HEADER + "Ada,2025-11-03T07:30Z,weight,83,kg,\nAda,2025-11-03,weight,83.2,kg,\n")
    assert (line.fate, line.detail) == (Fate.OWN_STAYS, "it says 82.4")
    assert whole_day.fate is Fate.OWN_STAYS
    assert desk.fates("Ada,2025-11-03,weight,82.4,kg,") == [Fate.ALREADY]
    assert desk.keeps(HEADER + "Ada,2025-11-03T07:30Z,weight,83,kg,\n") == 0
    assert [r.value for r in desk.kept(practice.ada)] == [D("82.4")]


ONE_ROW = {
    "kept": ("Ada,2025-11-03,weight,83,kg,", Fate.KEPT),
    "kept by number": ("#{ada},2025-11-03,weight,83,kg,", Fate.KEPT),
    "nobody of this name": ("Zoe,2025-11-03,weight,83,kg,", Fate.UNKNOWN_PERSON),
    "part of a name": ("Ad,2025-11-03,weight,83,kg,", Fate.UNKNOWN_PERSON),
    "no name": (",2025-11-03,weight,83,kg,", Fate.UNUSABLE),
    "no such measure": ("Ada,2025-11-03,mood ring,83,kg,", Fate.UNKNOWN_MEASURE),
    "worked out, not given": ("Ada,2025-11-03,bmi,25,,", Fate.UNUSABLE),
    "impossible": ("Ada,2025-11-03,weight,8300,kg,", Fate.UNUSABLE),
    "unusual": ("Ada,2025-11-03,weight,291,kg,", Fate.DOUBTFUL),
    "not a number": ("Ada,2025-11-03,weight,heavy,kg,", Fate.UNUSABLE),
    "not a time": ("Ada,yesterday,weight,83,kg,", Fate.UNUSABLE),
    "tomorrow": ("Ada,2026-03-31,weight,83,kg,", Fate.IN_THE_FUTURE),
    "in an hour": ("Ada,2026-03-30T07:31Z,weight,83,kg,", Fate.IN_THE_FUTURE),
    "today": ("Ada,2026-03-30,weight,83,kg,", Fate.KEPT),
    "long ago": ("Ada,2015-11-03,weight,83,kg,", Fate.TOO_OLD),
    "too many cells": ("Ada,2025-11-03,weight,83,kg,,more", Fate.UNUSABLE),
    "lower pressure higher": ("Ada,2025-11-03,blood_pressure,82/128,,", Fate.UNUSABLE),
}


@pytest.mark.parametrize("row, fate", ONE_ROW.values(), ids=ONE_ROW.keys())
def test_a_row_has_the_fate(desk: Desk, practice: Practice, row: str, fate: Fate) -> None:
    assert desk.fates(row.format(ada=practice.ada)) == [fate]


def test_every_row_that_is_not_kept_is_of_no_client_and_no_reading(desk: Desk, practice: Practice) -> None:
    rows = "\n".join(row.format(ada=practice.ada) for row, fate in ONE_ROW.values() if fate is not Fate.KEPT)
    assert {(line.client_id, line.reading, line.key) for line in desk.looks(HEADER + rows)} == {(None, None, "")}
    assert desk.keeps(HEADER + rows) == 0


def test_a_slip_of_the_hand_is_found_beside_the_reading_before_it_and_kept_only_when_told_to(
    desk: Desk, practice: Practice
) -> None:
    swapped, before = desk.looks(HEADER + "Ada,2025-12-03,weight,48.2,kg,\nAda,2025-11-03,weight,84.2,kg,\n")
    assert (swapped.fate, before.fate) == (Fate.DOUBTFUL, Fate.KEPT)
    assert "perhaps 84.2 kg?" in swapped.detail
    jump = ("Ada,2025-11-03,waist,94,cm,", "Ada,2025-12-03,waist,118,cm,")
    assert desk.fates(*jump) == [Fate.KEPT, Fate.DOUBTFUL]
    assert desk.fates(*jump, doubtful=True) == [Fate.KEPT, Fate.KEPT]


def test_the_same_row_twice_in_one_file_counts_once(desk: Desk, practice: Practice) -> None:
    row = "Ada,2025-11-03T07:30Z,weight,83,kg,"
    assert desk.fates(row, row) == [Fate.KEPT, Fate.TWICE]
    assert desk.keeps(HEADER + f"{row}\n{row}\n") == 1


def test_two_values_of_one_time_are_both_refused_and_each_names_the_other(desk: Desk, practice: Practice) -> None:
    text = HEADER + (
        "Ada,2025-11-03T07:30Z,weight,83,kg,\n"
        "Ada,2025-11-03T07:30Z,waist,94,cm,\n"
        f"#{practice.ada},2025-11-03T08:30+01:00,weight,12 st 8,,\n"
        "Ada,2025-11-04,weight,82,kg,\n"
        "ADA,4.11.2025,weight,81,kg,\n"
        "Ada,2025-11-05T07:30Z,weight,81,kg,\n"
    )
    lines = desk.looks(text + "Ada,15.11.2025,energy,7,,\n")
    assert [line.fate for line in lines] == [
        Fate.TWO_VALUES, Fate.KEPT, Fate.TWO_VALUES, Fate.TWO_VALUES, Fate.TWO_VALUES, Fate.KEPT, Fate.KEPT,
    ]  # fmt: skip
    assert lines[0].detail == "row 4 has 12 st 8; keep the one that is right"
    assert lines[2].detail == "row 2 has 83 kg; keep the one that is right"
    assert "row 6 has 81 kg" in lines[3].detail
    assert desk.keeps(text + "Ada,15.11.2025,energy,7,,\n") == 3


def test_another_value_of_a_time_that_was_imported_before_is_refused(desk: Desk, practice: Practice) -> None:
    desk.keeps(HEADER + "Ada,2025-11-03T07:30Z,weight,83,kg,\n")
    (line,) = desk.looks(HEADER + "Ada,2025-11-03T07:30Z,weight,84,kg,\n")
    assert (line.fate, line.detail) == (Fate.TWO_VALUES, "83 was imported before; take that back first")


def test_several_pressures_of_a_day_are_no_two_values(desk: Desk, practice: Practice) -> None:
    rows = ("Ada,2025-11-03,blood_pressure,128/82,,", "Ada,2025-11-03,blood_pressure,124/80,,")
    assert desk.fates(*rows) == [Fate.KEPT] * 2
    timed = [row.replace("2025-11-03", "2025-11-03T07:30Z") for row in rows]
    assert desk.fates(*timed) == [Fate.TWO_VALUES] * 2


def test_dates_are_read_in_the_order_of_the_file(desk: Desk, practice: Practice) -> None:
    desk.keeps(HEADER + "Ada,1.2.2026,weight,83,kg,\nAda,15/02/2026 07:30,weight,82.6,kg,\nAda,1-3-26,weight,82,kg,\n")
    assert [r.taken_at for r in desk.kept(practice.ada)] == [
        datetime(2026, 2, 1, 12, 0, tzinfo=UTC),
        datetime(2026, 2, 15, 7, 30, tzinfo=UTC),
        datetime(2026, 3, 1, 12, 0, tzinfo=UTC),
    ]


def test_two_of_one_name_are_told_apart_by_number(desk: Desk, practice: Practice) -> None:
    other = desk.database.write_now(add_client, practice.coach, BEN, "Ada")
    (line,) = desk.looks(HEADER + "Ada,2025-11-03,weight,83,kg,\n")
    assert line.fate is Fate.SEVERAL_PEOPLE
    assert str(practice.ada) in line.detail
    assert str(other) in line.detail
    assert desk.keeps(HEADER + f"{other},2025-11-03,weight,83,kg,\n") == 1
    assert len(desk.kept(other)) == 1


def test_another_coachs_client_is_a_stranger_by_name_and_by_number(desk: Desk, practice: Practice) -> None:
    def elsewhere(conn: Any) -> int:
        return add_client(conn, add_coach(conn, ROWAN + 1, "Farah"), BEN, "Ben")

    ben = desk.database.write_now(elsewhere)
    rows = ("Ben,2025-11-03,weight,83,kg,", f"{ben},2025-11-03,weight,83,kg,")
    assert desk.fates(*rows) == [Fate.UNKNOWN_PERSON] * 2
    assert desk.keeps(HEADER + "\n".join(rows)) == 0


REFUSED = {
    "not agreed yet": ({"consented_at": None}, Fate.NOT_AGREED),
    "left": ({"status": Status.LEFT.value}, Fate.HAS_LEFT),
}


@pytest.mark.parametrize("columns, fate", REFUSED.values(), ids=REFUSED.keys())
def test_nothing_is_filed_under_somebody_who(
    desk: Desk, practice: Practice, columns: dict[str, Any], fate: Fate
) -> None:
    desk.database.write_now(
        lambda conn: conn.execute(update(tables.clients).where(tables.clients.c.id == practice.ada).values(**columns))
    )
    assert desk.fates("Ada,2025-11-03,weight,83,kg,") == [fate]


def test_a_date_alone_is_that_day_where_the_client_lives(desk: Desk, practice: Practice) -> None:
    slot = Slot(0, NOW.time(), "Pacific/Auckland")
    kiwi = desk.database.write_now(lambda conn: add_client(conn, practice.coach, BEN, "Ben", slot=slot))
    desk.keeps(HEADER + "Ben,2025-07-03,weight,83,kg,\n")
    (reading,) = desk.kept(kiwi)
    assert reading.taken_at == datetime(2025, 7, 3, 0, 0, tzinfo=UTC)  # noon at UTC+12


def test_what_was_exported_comes_in_as_it_was_and_side_notes_stay_out(desk: Desk, practice: Practice) -> None:
    at = datetime(2025, 11, 3, 7, 30, tzinfo=UTC)
    navel = Conditions(labels=(("site", "navel"),))
    series = (
        replace(weight("82.4", at), unit=Unit.KILOGRAM),
        Reading("waist", D("94.25"), at, conditions=navel, attempts=2),
        weight("82", at + timedelta(days=2), how=How.EARLY),
        Reading("energy", D(7), at),
    )
    text = readings_csv([("Ada", series)], side_notes=True)
    assert [line.fate for line in desk.looks(text)] == [Fate.KEPT, Fate.KEPT, Fate.SIDE_NOTE, Fate.KEPT]
    assert desk.keeps(text) == 3
    assert {(r.measure, r.value, r.attempts, r.conditions) for r in desk.kept(practice.ada)} == {
        (r.measure, r.value, r.attempts, r.conditions) for r in series if r.counts
    }


def test_importing_an_export_of_what_is_there_adds_nothing(desk: Desk, practice: Practice) -> None:
    put(desk, practice.ada, weight("82.4", datetime(2025, 11, 3, 7, 30, tzinfo=UTC)))
    text = readings_csv([("Ada", desk.kept(practice.ada))])
    assert [line.fate for line in desk.looks(text)] == [Fate.ALREADY]


def test_stones_come_back_as_stones(desk: Desk, practice: Practice) -> None:
    desk.keeps(HEADER + "Ada,2025-11-03T07:30Z,weight,12 st 4,,\nAda,2025-12-03T07:30Z,weight,12 st 2.5,,\n")
    before = desk.kept(practice.ada)
    assert [r.unit for r in before] == [Unit.STONE] * 2
    text = readings_csv([("Ada", before)])
    assert "78.01788764,kg" in text and text.count("12 st 4 lb") == text.count("12 st 2.5 lb") == 1
    other = desk.database.write_now(add_client, practice.coach, BEN, "Ben")
    desk.keeps(text.replace("Ada", "Ben"))
    assert [(r.value, r.unit) for r in desk.kept(other)] == [(r.value, r.unit) for r in before]
    assert [line.fate for line in desk.looks(text)] == [Fate.ALREADY] * 2


def test_a_value_that_is_not_what_was_given_is_refused(desk: Desk, practice: Practice) -> None:
    header = HEADER.replace("conditions", "as_given")
    (line,) = desk.looks(header + "Ada,2025-11-03,weight,87,kg,12 st 4 lb\n")
    assert (line.fate, "not the same amount" in line.detail) == (Fate.UNUSABLE, True)


def test_each_row_moves_the_progress_on(desk: Desk, practice: Practice) -> None:
    steps: list[int] = []
    desk.looks(GOOD, advance=lambda: steps.append(1))
    assert len(steps) == 4


def test_a_file_without_a_needed_column_is_refused(desk: Desk) -> None:
    with pytest.raises(UsageError, match="no column value"):
        desk.looks("person,taken_at,measure\nAda,2025-11-03,weight\n")
