"""Several processes score a long file byte for byte like one, and none is left behind."""

from __future__ import annotations

import csv
import io
import multiprocessing
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path
from random import Random

import pytest

from bot.foundation.errors import UsageError
from bot.scoring import OPTIONAL, REQUIRED, score
from bot.scoring.processes import CHANGED, WORTH_IT_FROM, ScoringTask, how_many, scored_by
from bot.scoring.scorer import Counts
from tests.bot.scoring.test_scoring import HEADER, invented

PEOPLE = "person,sex,birth_date,height\np0,female,1957-05-20,165\np1,male,1950,180\np3,female,1990,170\n"


@pytest.fixture
def readings(tmp_path: Path) -> Path:
    """Unordered rows of five people, some unusable, more than fit in a block."""
    rows = [(f"p{n}", *row[1:]) for n in range(5) for row in invented(n, 70)]
    rows += [("", "2025-03-01", "weight", "80", "", ""), ("p0", "2025-03-01", "mood", 'so "so", fine', "", "")]
    rows += [("żółw", "2025-03-01", "weight", "80", "", ""), ("p1", "yesterday", "weight", "80", "", "")]
    rows.sort(key=lambda row: row[1])
    path = tmp_path / "readings.csv"
    with path.open("w", newline="", encoding="utf-8") as file:
        csv.writer(file).writerows((HEADER, *rows))
    (tmp_path / "people.csv").write_text(PEOPLE, encoding="utf-8")
    assert len(rows) > 1000
    return path


@pytest.fixture(autouse=True)
def nobody_left() -> Iterator[None]:
    yield
    assert multiprocessing.active_children() == []


def run(readings: Path, to: str, processes: int | None) -> tuple[str, str]:
    out, err = io.StringIO(), io.StringIO()
    score(readings, readings.parent / "people.csv", to, out, err, processes)
    return out.getvalue(), err.getvalue()


@pytest.mark.parametrize(("to", "processes"), [("csv", 2), ("csv", 3), ("json", 2)])
def test_several_processes_write_what_one_writes_and_count_as_it_counts(readings, to, processes):
    assert run(readings, to, processes) == run(readings, to, 1)


def test_no_rows_by_several_are_an_empty_list(tmp_path):
    path = tmp_path / "readings.csv"
    path.write_text(",".join(HEADER) + "\n", encoding="utf-8")
    (tmp_path / "people.csv").write_text(PEOPLE, encoding="utf-8")
    assert run(path, "json", 2)[0] == "[]\n"


def test_rows_out_of_order_of_time_are_for_one_process(readings, monkeypatch):
    monkeypatch.setattr("bot.scoring.scored_by", lambda *_: pytest.fail("shared, though nobody may run ahead"))
    header, *rows = readings.read_text(encoding="utf-8").splitlines()
    Random(1).shuffle(rows)
    readings.write_text("\n".join((header, *rows)) + "\n", encoding="utf-8")
    assert len(run(readings, "csv", 2)[0].splitlines()) > len(rows)


def job(readings: Path) -> ScoringTask:
    return ScoringTask(str(readings), (REQUIRED, OPTIONAL), {}, "csv", "nice")


@pytest.mark.parametrize("counted", [1000, 5000], ids=["more", "fewer"])
def test_a_file_that_has_other_rows_than_were_counted_is_said_plainly(readings, counted):
    with pytest.raises(UsageError, match=CHANGED):
        list(scored_by(2, job(readings), counted, Counts(), lambda rows: None))


@pytest.fixture
def long(readings: Path) -> Path:
    """So long that no process can finish unless its output is read."""
    header, *rows = readings.read_text(encoding="utf-8").splitlines(keepends=True)
    readings.write_text("".join((header, *rows * 20)), encoding="utf-8")
    return readings


def test_who_stops_half_way_leaves_no_process_behind(long):
    with closing(scored_by(2, job(long), 20_000, Counts(), lambda rows: None)) as texts:
        assert next(texts).count("\n") >= 1000
        assert len(multiprocessing.active_children()) == 2


def test_a_process_that_ends_early_is_an_error_and_no_endless_wait(long):
    with closing(scored_by(2, job(long), 20_000, Counts(), lambda rows: None)) as texts:
        next(texts)
        multiprocessing.active_children()[0].kill()
        with pytest.raises(ChildProcessError, match="ended early"):
            list(texts)


def test_what_a_process_meets_is_raised_here(tmp_path):
    with pytest.raises(UsageError, match="cannot be read"):
        list(scored_by(2, job(tmp_path / "gone.csv"), 10, Counts(), lambda rows: None))


def test_a_short_file_is_for_one_process():
    assert how_many(WORTH_IT_FROM - 1) == 1
    assert 1 <= how_many(10**7) <= 4
