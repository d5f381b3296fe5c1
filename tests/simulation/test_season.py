"""The season of `python -m tests.bench season`, which plays any size, with a hundred clients for three weeks."""

import asyncio
from pathlib import Path

from tests.bench import season
from tests.bench.servers import migrated


def test_a_season_of_a_hundred_clients_leaves_nothing_unanswered_and_nothing_set_aside(tmp_path: Path) -> None:
    report = asyncio.run(season.play(migrated(f"sqlite:///{tmp_path / 'season.db'}"), clients=100, weeks=3))
    assert (report.waiting, report.set_aside) == (0, 0)
    assert report.sent >= report.turns > 1_000
    said = report.said
    assert said["CheckInOpens"] > 2 * 100 - 20  # whoever has not given up is asked every week, Mondays from the second
    assert said["CheckInDone"] > 0.8 * said["CheckInOpens"]
    assert said["VerdictSaid"] and said["Corrected"] and said["FollowUp"] and said["EarlyFirst"] and said["DigestSaid"]
