"""Time of `samehour --help`, compared with Python doing nothing."""

from __future__ import annotations

import subprocess
import sys
import time

from rich.table import Table

from tests.bench.measuring import RUNS, median, ratio

NOTHING = [sys.executable, "-c", "pass"]
COMMANDS = {
    "samehour --help": [sys.executable, "-m", "bot", "--help"],
    "samehour score --help": [sys.executable, "-m", "bot", "score", "--help"],
}


def _ms(command: list[str]) -> float:
    start = time.perf_counter()
    subprocess.run(command, check=True, capture_output=True)
    return (time.perf_counter() - start) * 1000


def run(runs: int = RUNS) -> Table:
    table = Table("", "median", "against Python alone", title="starting")
    nothing: list[float] = []
    found: dict[str, list[float]] = {name: [] for name in COMMANDS}
    for _ in range(2 * runs):
        nothing.append(_ms(NOTHING))
        for name, command in COMMANDS.items():
            found[name].append(_ms(command))
    table.add_row("python -c pass", f"{median(nothing):.0f} ms", "1.0")
    for name, times in found.items():
        table.add_row(name, f"{median(times):.0f} ms", f"{ratio(times, nothing):.1f}")
    return table
