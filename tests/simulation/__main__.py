"""`python -m tests.simulation`: how many lines a digest has, week by week, for three habits of a coach."""

from __future__ import annotations

import sys
import tempfile
from pathlib import Path

from tests.simulation.practice import Habit, Season, first_fold, played, table


def main() -> int:
    seasons: list[Season] = []
    with tempfile.TemporaryDirectory() as folder:
        for habit in Habit:
            (place := Path(folder) / habit.name).mkdir()
            seasons.append(played(place, habit))
            seasons[-1].database.close()
    sys.stdout.write(f"{table(seasons)}\n")
    for season in seasons:
        below = sum(not first_fold(t, d) for t, d in zip(season.texts, season.digests, strict=True))
        sys.stdout.write(
            f"{season.habit.value}: urgent below the first screen in {below} of {len(season.texts)} weeks\n"
        )
    if "--texts" in sys.argv:
        for season in seasons:
            for text in season.texts:
                sys.stdout.write(f"\n--- {season.habit.value}\n{text}\n")
    return 0


if __name__ == "__main__":
    sys.exit(main())
