"""The README's excerpt matches the current season. `python -m demo --excerpt` regenerates it."""

from pathlib import Path

import numpy as np
import pytest
from PIL import Image

from demo import excerpt
from demo.__main__ import SEASON
from demo.player import Played, play
from demo.tape import read


@pytest.fixture(scope="module")
def season(tmp_path_factory: pytest.TempPathFactory) -> Played:
    return play(read(SEASON.read_text(encoding="utf-8")), pictures=tmp_path_factory.mktemp("pictures"))


def test_every_expectation_of_the_season_holds(season: Played) -> None:
    assert season.failures == []


def test_the_ten_lines_are_those_the_season_makes_now(season: Played) -> None:
    made = excerpt.lines(season.lines)
    assert excerpt.LINES.read_text(encoding="utf-8") == made
    assert sum(line.startswith("[") for line in made.splitlines()) == 10


def test_a_season_without_these_lines_is_refused_by_name(season: Played) -> None:
    without = [line for line in season.lines if "Digest" not in line]
    with pytest.raises(excerpt.NotInTheSeason, match="09 08:00"):
        excerpt.lines(without)


def test_the_readme_shows_these_lines_and_this_picture() -> None:
    page = excerpt.README.read_text(encoding="utf-8")
    assert f"```text\n{excerpt.LINES.read_text(encoding='utf-8')}```\n" in page
    assert f"]({excerpt.PICTURE.relative_to(excerpt.README.parent).as_posix()})" in page


def test_the_picture_is_the_one_the_season_draws_now(season: Played, monkeypatch: pytest.MonkeyPatch, tmp_path) -> None:
    monkeypatch.setattr(excerpt, "PICTURE", tmp_path / "now.png")
    monkeypatch.setattr(excerpt, "LINES", tmp_path / "now.txt")
    monkeypatch.setattr(excerpt, "README", tmp_path / "README.md")
    stored = Image.open(Path(excerpt.__file__).with_name("season-waist.png"))
    excerpt.write(season)
    now = Image.open(excerpt.PICTURE)
    assert now.size == stored.size
    apart = np.abs(np.asarray(now, dtype=int) - np.asarray(stored, dtype=int)).max(axis=2)
    assert stored.info["Software"].startswith("Matplotlib version")
    if now.info["Software"] == stored.info["Software"]:
        assert not apart.any()
    else:  # another release may render text slightly differently, but lines and bands are in the same place
        assert (apart > 50).mean() < 0.03
