"""`score` and `import` agree on who is who."""

import io
from dataclasses import dataclass
from pathlib import Path

import pytest

from bot.scoring import score
from bot.scoring.identity import filed_under, named, unmistakable


@dataclass(frozen=True)
class Client:
    id: int
    name: str


ADA, ADAM, JOSE, TWELVE = Client(3, "Ada"), Client(4, "Adam"), Client(5, "José Ann-Marie"), Client(9, "12")
SPELLINGS = {
    "as it is": ("Ada", [ADA]),
    "other case": (" aDA ", [ADA]),
    "without its accent and hyphen": ("jose  ann marie", [JOSE]),
    "by number": ("#3", [ADA]),
    "by number, as a spreadsheet pads it": ("003", [ADA]),
    "a name that is a number comes first": ("12", [TWELVE]),
    "a part of a name": ("Ad", []),
    "nobody": ("  ", []),
}


@pytest.mark.parametrize(("cell", "found"), SPELLINGS.values(), ids=SPELLINGS.keys())
def test_a_cell_means(cell: str, found: list[Client]) -> None:
    assert named([ADA, ADAM, JOSE, TWELVE], cell) == found


def test_what_is_written_for_somebody_finds_them_and_nobody_else() -> None:
    people = [ADA, ADAM, JOSE, TWELVE, Client(20, "ADA"), Client(21, ""), Client(22, "@home"), Client(23, "21")]
    for number, cell in unmistakable(people).items():
        assert [one.id for one in named(people, cell)] == [number]


@pytest.mark.parametrize("cells", [("Ada", "ADA"), ("#3", "3"), ("José", "jose"), ("'@home", "@home")])
def test_every_spelling_is_one_person_to_score(cells: tuple[str, str], tmp_path: Path) -> None:
    assert filed_under(cells[0]) == filed_under(cells[1])
    file, people = tmp_path / "readings.csv", tmp_path / "people.csv"
    file.write_text(f"person,taken_at,measure,value\n{cells[0]},2026-01-05,waist,94\n{cells[1]},2026-03-05,waist,86\n")
    people.write_text(f"person,sex\n{cells[1]},female\n")
    out, err = io.StringIO(), io.StringIO()
    score(file, people, "csv", out, err)
    first, second = out.getvalue().splitlines()[1:]
    assert "no baseline" in first
    assert ",94,-8," in second
    assert "without a row" not in err.getvalue()


def test_processes_send_every_spelling_to_the_same_one(tmp_path: Path) -> None:
    rows = [f"{('Ada', 'ADA', ' ada ', '#7', '07')[n % 5]},2026-01-{n + 1:02},waist,{90 + n % 3}" for n in range(28)]
    file = tmp_path / "readings.csv"
    file.write_text("person,taken_at,measure,value\n" + "\n".join(rows) + "\n")
    outs = []
    for processes in (1, 2):
        out = io.StringIO()
        score(file, None, "csv", out, io.StringIO(), processes)
        outs.append(out.getvalue())
    assert outs[0] == outs[1]
    assert outs[0].count("no baseline") == 2
