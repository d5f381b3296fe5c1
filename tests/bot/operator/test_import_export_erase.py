"""`import`, `export` and `erase` as an operator uses them."""

import csv
import io
import json
import os
import stat
from collections.abc import Callable, Iterator
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import icalendar
import pytest
from fhir.resources.R4B.bundle import Bundle
from sqlalchemy import select, update

from bot.foundation.errors import UsageError
from bot.foundation.spreadsheet import FORMULAS
from bot.operator import cli
from bot.operator.commands.import_export_erase import erase_client, on_terminal
from bot.store import readings
from bot.store import schema as tables
from bot.store.database import Database
from core.care import Status
from core.reading import How
from tests.bot.practice import (
    ADA,
    BEN,
    MONDAY,
    ROWAN,
    SLOT,
    Practice,
    add_client,
    add_coach,
    rename,
    rowan_and_ada,
    weight,
)
from tests.bot.store.bytes_of import mark_of, stored

AT = datetime(2025, 11, 3, 7, 30, tzinfo=UTC)
Samehour = Callable[..., tuple[int, str, list[str]]]


@pytest.fixture
def samehour(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> Samehour:
    """Run a command; (exit code, stdout, lines of stderr)."""
    for name in [name for name in os.environ if name.startswith("SAMEHOUR_")]:
        monkeypatch.delenv(name)
    monkeypatch.setenv("SAMEHOUR_DATABASE_URL", f"sqlite:///{tmp_path}/samehour.db")

    def run(*arguments: str) -> tuple[int, str, list[str]]:
        code = cli.run(list(arguments))
        out, err = capsys.readouterr()
        return code, out, err.splitlines()

    return run


@pytest.fixture
def store(tmp_path: Path, sqlite_template: bytes) -> Iterator[Database]:
    (tmp_path / "samehour.db").write_bytes(sqlite_template)
    with closing(Database(f"sqlite:///{tmp_path}/samehour.db")) as database:
        yield database


@pytest.fixture
def practice(store: Database) -> Practice:
    """Ada has two weights and an early one; Ben, of the same coach, has one."""
    made = store.write_now(rowan_and_ada)

    def fill(conn: Any) -> None:
        ben = add_client(conn, made.coach, BEN, "Ben")
        rows = [
            readings.row(made.ada, "a", weight("82.4", AT), AT),
            readings.row(made.ada, "b", weight("82.1", AT + timedelta(days=2), how=How.EARLY), AT),
            readings.row(made.ada, "c", weight("81.9", AT + timedelta(days=28)), AT),
            readings.row(ben, "a", weight("91.7", AT), AT),
        ]
        readings.put(conn, rows)

    store.write_now(fill)
    return made


def rows_of(text: str) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(text)))


# --- import ------------------------------------------------------------------------------------------------

PAST = "person,taken_at,measure,value,unit,conditions\nAda,2025-06-03,waist,94,cm,\nZoe,2025-06-03,waist,94,cm,\n"


def test_an_import_shows_every_row_and_writes_nothing_until_told_to(
    samehour: Samehour, practice: Practice, tmp_path: Path
) -> None:
    (tmp_path / "past.csv").write_text(PAST)
    call = ("import", str(tmp_path / "past.csv"), "--coach", "Rowan")
    code, out, err = samehour(*call)
    assert code == 0
    assert [(r["row"], r["person"], r["what"]) for r in rows_of(out)] == [
        ("2", "Ada", "kept"),
        ("3", "Zoe", "unknown person"),
    ]
    said = "1 of 2 rows would be kept; 1 unknown person. Nothing was written: add --write to keep them."
    assert err == [said]
    assert samehour(*call)[2] == [said]
    assert samehour(*call, "--write")[2] == ["1 of 2 rows kept; 1 unknown person."]
    assert samehour(*call, "--write")[2] == ["0 of 2 rows kept; 1 already there, 1 unknown person."]


def test_a_doubtful_value_is_kept_once_somebody_has_checked(
    samehour: Samehour, practice: Practice, tmp_path: Path
) -> None:
    (tmp_path / "past.csv").write_text("person,taken_at,measure,value\nAda,2025-06-03,weight,291 kg\n")
    call = ("import", str(tmp_path / "past.csv"), "--coach", "Rowan", "--write")
    assert samehour(*call)[2] == ["0 of 1 rows kept; 1 doubtful."]
    assert samehour(*call, "--doubtful")[2] == ["1 of 1 rows kept."]


@pytest.mark.parametrize("typed", ['=1+1|"cmd"', "+cmd", "-2+3", "@SUM(A1)"])
def test_what_a_spreadsheet_would_run_is_shown_as_text(
    samehour: Samehour, practice: Practice, tmp_path: Path, typed: str
) -> None:
    with (tmp_path / "past.csv").open("w", newline="") as file:
        csv.writer(file).writerows([("person", "taken_at", "measure", "value"), ("Ada", "2025-06-03", typed, typed)])
    _, out, _ = samehour("import", str(tmp_path / "past.csv"), "--coach", "Rowan")
    (row,) = rows_of(out)
    assert [cell for cell in row.values() if cell.startswith(FORMULAS)] == []
    assert f"'{typed}" in row.values()


WRONG = {
    "no such coach": ("import", "past.csv", "--coach", "Zoe"),
    "no such file": ("import", "nowhere.csv", "--coach", "Rowan"),
    "export of nobody": ("export", "Zoe", "--coach", "Rowan"),
    "export of another coach's": ("export", "Goran", "--coach", "Rowan"),
    "export by half a name": ("export", "Ad", "--coach", "Rowan"),
    "export of a form nobody knows": ("export", "Ada", "--coach", "Rowan", "--to", "pdf"),
    "erasing nobody": ("erase", "Zoe", "--coach", "Rowan", "--yes"),
    "erasing another coach's": ("erase", "Goran", "--coach", "Rowan", "--yes"),
}


@pytest.mark.parametrize("call", WRONG.values(), ids=WRONG.keys())
def test_a_wrong_call_is_one_line_and_exit_code_2(
    samehour: Samehour,
    store: Database,
    practice: Practice,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    call: tuple[str, ...],
) -> None:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "past.csv").write_text(PAST)
    store.write_now(lambda conn: add_client(conn, add_coach(conn, ROWAN + 1, "Farah"), BEN + 1, "Goran"))
    code, out, err = samehour(*call)
    assert (code, out, len(err)) == (2, "", 1)
    assert len(store.read_now(lambda conn: conn.execute(select(tables.clients)).all())) == 3


def test_nothing_is_done_without_a_database_and_none_is_made(samehour: Samehour, tmp_path: Path) -> None:
    code, _, err = samehour("export", "Ada", "--coach", "Rowan")
    assert (code, err) == (1, ["The database is not ready. Run `samehour migrate`."])
    assert not (tmp_path / "samehour.db").exists()


# --- export ------------------------------------------------------------------------------------------------


def test_one_clients_readings_as_csv_without_side_notes(samehour: Samehour, practice: Practice) -> None:
    code, out, err = samehour("export", "ada", "--coach", "Rowan")
    assert (code, err) == (0, [])
    assert [(r["person"], r["value"], r["unit"]) for r in rows_of(out)] == [
        ("Ada", "82.4", "kg"),
        ("Ada", "81.9", "kg"),
    ]
    assert len(rows_of(samehour("export", "Ada", "--coach", "Rowan", "--side-notes")[1])) == 3


def test_a_caseload_as_csv_comes_back_in_as_already_there(
    samehour: Samehour, practice: Practice, tmp_path: Path
) -> None:
    code, out, _ = samehour("export", "--coach", "Rowan", "--out", str(tmp_path / "all.csv"))
    assert (code, out) == (0, f"Wrote {tmp_path}/all.csv (2 clients).\n")
    assert stat.S_IMODE((tmp_path / "all.csv").stat().st_mode) == 0o600
    _, out, err = samehour("import", str(tmp_path / "all.csv"), "--coach", "Rowan", "--write")
    assert {r["what"] for r in rows_of(out)} == {"already there"}
    assert err == ["0 of 3 rows kept; 3 already there."]


def test_two_of_one_name_are_exported_by_number(samehour: Samehour, store: Database, practice: Practice) -> None:
    other = store.write_now(lambda conn: add_client(conn, practice.coach, BEN + 1, "Ada"))
    store.write_now(lambda conn: readings.put(conn, [readings.row(other, "a", weight("70", AT), AT)]))
    people = {r["person"] for r in rows_of(samehour("export", "--coach", "Rowan")[1])}
    assert people == {str(practice.ada), str(other), "Ben"}


def test_fhir_is_read_by_another_library_and_names_nobody(samehour: Samehour, practice: Practice) -> None:
    _, out, _ = samehour("export", "Ada", "--coach", "Rowan", "--to", "fhir")
    found = Bundle.model_validate_json(out)
    assert [e.resource.get_resource_type() for e in found.entry] == ["Patient", "Observation", "Observation"]
    assert "Ada" not in out
    _, named, _ = samehour("export", "--coach", "Rowan", "--to", "fhir", "--names")
    names = [e["resource"]["name"][0]["text"] for e in json.loads(named)["entry"] if "name" in e["resource"]]
    assert sorted(names) == ["Ada", "Ben"]


def events(text: str) -> list[Any]:
    return list(icalendar.Calendar.from_ical(text).walk("VEVENT"))


def test_slots_are_those_of_who_is_asked(samehour: Samehour, store: Database, practice: Practice) -> None:
    assert len(events(samehour("export", "--coach", "Rowan", "--to", "ics")[1])) == 2
    later = datetime(2099, 1, 1, tzinfo=UTC)
    store.write_now(
        lambda conn: conn.execute(
            update(tables.clients)
            .where(tables.clients.c.id == practice.ada)
            .values(status=Status.PAUSED.value, paused_until=later.date())
        )
    )
    store.write_now(
        lambda conn: conn.execute(
            update(tables.clients).where(tables.clients.c.id != practice.ada).values(status=Status.LEFT.value)
        )
    )
    (event,) = events(samehour("export", "--coach", "Rowan", "--to", "ics", "--names")[1])
    assert str(event["SUMMARY"]) == "Check-in: Ada"
    assert event["DTSTART"].dt.astimezone(UTC) >= later
    assert event["DTSTART"].dt.weekday() == SLOT.weekday == MONDAY.weekday()


def test_an_export_overwrites_nothing(samehour: Samehour, practice: Practice, tmp_path: Path) -> None:
    (tmp_path / "all.csv").write_text("precious")
    code, _, err = samehour("export", "--coach", "Rowan", "--out", str(tmp_path / "all.csv"))
    assert (code, len(err)) == (1, 1)
    assert (tmp_path / "all.csv").read_text() == "precious"


def test_an_export_is_in_the_audit_trail_without_content(
    samehour: Samehour, store: Database, practice: Practice
) -> None:
    samehour("export", "Ada", "--coach", "Rowan", "--to", "fhir")
    (line,) = store.read_now(lambda conn: conn.execute(select(tables.audit)).all())
    assert (line.actor, line.action, line.client_id) == ("operator", "exported_fhir", practice.ada)


# --- erase -------------------------------------------------------------------------------------------------


def test_a_client_is_erased_to_the_last_byte(samehour: Samehour, store: Database, practice: Practice) -> None:
    store.write_now(rename, practice.ada, "Quillfeather")
    theirs = mark_of(store, ADA)
    assert theirs in stored(store)
    code, out, err = samehour("erase", "quillfeather", "--coach", "rowan", "--yes")
    assert (code, err) == (0, [])
    assert out.startswith(f"Client {practice.ada} is erased, with 3 readings.")
    assert theirs not in stored(store)
    assert store.read_now(lambda conn: list(conn.execute(select(tables.clients.c.name)).scalars())) == ["Ben"]


def test_nobody_is_erased_unless_the_operator_is_sure(
    samehour: Samehour, store: Database, practice: Practice, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked: list[int] = []

    def no(number: int) -> bool:
        asked.append(number)
        return False

    assert erase_client("Ada", "Rowan", no) == "Nothing was erased."
    assert asked == [3]
    monkeypatch.setattr("sys.stdin", io.StringIO())
    with pytest.raises(UsageError, match="--yes"):
        on_terminal(3)
    assert samehour("erase", "Ada", "--coach", "Rowan")[0] == 2
    assert len(store.read_now(lambda conn: conn.execute(select(tables.clients)).all())) == 2
