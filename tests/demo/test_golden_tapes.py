"""Every tape plays exactly as its transcript beside it. `python -m demo --record TAPE ...` rewrites transcripts, which
are reviewed like code."""

from pathlib import Path

import pytest

from demo.player import play
from demo.tape import read

FOLDER = Path(__file__).parents[1] / "tapes"
TAPES = sorted(FOLDER.glob("*.tape"))


@pytest.mark.parametrize("path", TAPES, ids=lambda path: path.stem)
def test_a_tape_plays_as_its_transcript_says(path: Path) -> None:
    played = play(read(path.read_text(encoding="utf-8")))
    assert played.failures == []
    assert played.text == path.with_suffix(".txt").read_text(encoding="utf-8")


def test_there_are_tapes_and_each_transcript_belongs_to_one() -> None:
    assert len(TAPES) >= 25
    assert {path.stem for path in FOLDER.glob("*.txt")} == {path.stem for path in TAPES}


def test_the_tape_of_the_design_is_played_as_it_stands_there() -> None:
    lines = (FOLDER / "example.tape").read_text(encoding="utf-8").splitlines()
    assert lines[0] == "start 2026-03-02 07:00 Europe/London"
    assert lines[-3:] == ["expect Ada sees energy", "expect Rowan sees weighing", "expect-not Ada sees 82.4"]
