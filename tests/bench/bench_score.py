"""`samehour score` beside a plain loop that only parses the same file and divides.

The people and readings are our own invention, drawn with a fixed seed: 2,000 people, each with a plan of weight,
waist, hip, pulse and chair stands every four weeks, energy every week and a blood-pressure week now and then; kg,
lb, stones, cm and inches mixed, one row in 200 not usable. Rows are chronological, as a chat would write them.
"""

from __future__ import annotations

import csv
import io
import os
import resource
import statistics
import subprocess
import sys
import tempfile
import time
import tracemalloc
from collections.abc import Callable, Iterator
from contextlib import suppress
from datetime import UTC, datetime, timedelta
from decimal import Decimal
from pathlib import Path
from random import Random

from rich.table import Table

PEOPLE = 2_000
SIZES = (10_000, 100_000)
ONCE = (300_000,)  # for memory: by 100,000 rows everybody has readings of everything; nothing may grow after that
RUNS = 5
SEVERAL = 2  # processes
START = datetime(2025, 1, 6, 7, 30, tzinfo=UTC)
BACKGROUNDS = ("white", "south_asian", "chinese", "black_african", "")


def write_people(path: Path, people: int = PEOPLE) -> None:
    draw = Random(1)
    with path.open("w", newline="", encoding="utf-8") as file:
        rows = csv.writer(file)
        rows.writerow(("person", "sex", "birth_date", "height", "background", "cautions"))
        for n in range(people):
            sex, year = draw.choice(("female", "male")), draw.randrange(1940, 1990)
            height = round(draw.gauss(163 if sex == "female" else 176, 7))
            rows.writerow((f"p{n:04}", sex, year, height, draw.choice(BACKGROUNDS), ""))


def write_readings(path: Path, readings: int, people: int = PEOPLE) -> None:
    draw = Random(2)
    truth = [_person(draw) for _ in range(people)]
    with path.open("w", newline="", encoding="utf-8") as file:
        rows = csv.writer(file)
        rows.writerow(("person", "taken_at", "measure", "value", "unit", "conditions"))
        written = 0
        for week in range(readings):
            for n in range(people):
                for minute, (measure, value, unit) in enumerate(_answers(draw, truth[n], week, n)):
                    at = START + timedelta(weeks=week, minutes=minute + n % 60)
                    if draw.random() < 0.005:
                        value = draw.choice(("", "none today", "824000"))
                    rows.writerow((f"p{n:04}", at.isoformat(), measure, value, unit, ""))
                    written += 1
                    if written == readings:
                        return


def _person(draw: Random) -> dict[str, float]:
    return {
        "weight": draw.gauss(82, 14),
        "waist": draw.gauss(95, 11),
        "hip": draw.gauss(104, 9),
        "resting_heart_rate": draw.gauss(71, 8),
        "chair_stand_30s": draw.gauss(12, 3),
        "energy": draw.gauss(6, 1.3),
        "systolic": draw.gauss(131, 14),
    }


def _answers(draw: Random, truth: dict[str, float], week: int, n: int) -> Iterator[tuple[str, str, str]]:
    yield "energy", str(min(10, max(0, round(draw.gauss(truth["energy"], 1))))), ""
    if week % 4 == n % 4:
        yield "resting_heart_rate", str(round(draw.gauss(truth["resting_heart_rate"], 4))), "bpm"
        weight = max(40, draw.gauss(truth["weight"], 0.6))
        kind = n % 10
        if kind == 0:
            yield "weight", f"{weight / 0.45359237:.1f}", "lb"
        elif kind == 1:
            pounds = round(weight / 0.45359237)
            yield "weight", f"{pounds // 14} st {pounds % 14}", ""
        else:
            yield "weight", f"{weight:.1f}", "kg"
        for girth in ("waist", "hip"):
            size = max(60, draw.gauss(truth[girth], 1.2))
            yield girth, f"{size / 2.54:.1f}" if kind == 0 else f"{size:.1f}", "in" if kind == 0 else "cm"
        yield "chair_stand_30s", str(max(1, round(draw.gauss(truth["chair_stand_30s"], 0.9)))), "reps"
    if n % 20 == week % 20:
        upper = round(draw.gauss(truth["systolic"], 8))
        yield "blood_pressure", f"{upper}/{round(upper * 0.62)}", "mmHg"


def yardstick(readings: Path) -> int:
    """Only parse and divide: the minimum for any program that reads this file."""
    rows = 0
    with readings.open(newline="", encoding="utf-8") as file:
        for row in csv.DictReader(file):
            datetime.fromisoformat(row["taken_at"])
            if row["value"][:1].isdigit():
                with suppress(ArithmeticError):  # 12 st 4, 128/82
                    Decimal(row["value"]) / 2
            rows += 1
    return rows


def ours(readings: Path, people: Path, processes: int = 1) -> None:
    from bot.scoring import score

    with open(os.devnull, "w", encoding="utf-8") as out:
        score(str(readings), str(people), "csv", out, io.StringIO(), processes)


def main(folder: Path) -> Table:
    table = Table(
        *("readings", "by", "processor", "clock", "yardstick", "ratio", "memory", "traced"),
        caption="by: processes. processor, yardstick, ratio: processor time of all of them. clock: on the wall, with"
        " whatever else this machine does. memory: peak of the largest process. traced: of Python's objects.",
    )
    people = folder / "people.csv"
    write_people(people)
    for size in (*SIZES, *ONCE):
        readings = folder / f"readings_{size}.csv"
        write_readings(readings, size)
        runs = 1 if size in ONCE else RUNS
        for processes in (1, SEVERAL) if size > SIZES[0] else (1,):
            mine, clock, plain = [], [], []
            for _ in range(runs):  # alternating, so that both run under the same conditions
                plain.append(_seconds(lambda r=readings: yardstick(r))[0])
                processor, wall = _seconds(lambda r=readings, n=processes: ours(r, people, n))
                mine.append(processor)
                clock.append(wall)
            us, it = statistics.median(mine), statistics.median(plain)
            peak, traced = _memory(readings, people, processes)
            table.add_row(
                f"{size:,}",
                str(processes),
                f"{us:.2f} s",
                f"{statistics.median(clock):.2f} s",
                f"{it:.3f} s",
                f"{us / it:.1f}",
                f"{peak:.0f} MB",
                f"{traced:.1f} MB" if processes == 1 else "",
            )
    return table


def _seconds(call: Callable[[], object]) -> tuple[float, float]:
    """CPU time of this process and its finished children, which other programs disturb less, and wall time."""
    start, wall = _processor(), time.perf_counter()
    call()
    return _processor() - start, time.perf_counter() - wall


def _processor() -> float:
    used = os.times()
    return used.user + used.system + used.children_user + used.children_system


def _memory(readings: Path, people: Path, processes: int) -> tuple[float, float]:
    """Peak memory in MB of the largest of a fresh process and its children; and, in another run of one process, of the
    Python objects allocated while scoring.
    """
    found = [0.0, 0.0]
    for place, how in enumerate(("rss", "traced") if processes == 1 else ("rss",)):
        command = [sys.executable, "-m", "tests.bench.bench_score", how, str(readings), str(people), str(processes)]
        # Started from a small process, because a child inherits its parent's peak.
        small = ["sh", "-c", '"$@"; exit $?', "sh", *command]
        done = subprocess.run(small, check=True, capture_output=True, text=True)
        found[place] = float(done.stdout)
    return found[0], found[1]


def _measure_memory(how: str, readings: Path, people: Path, processes: int) -> float:
    if how == "rss":
        ours(readings, people, processes)
        who = (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN)
        return max(resource.getrusage(one).ru_maxrss for one in who) / 1024
    from bot.scoring import score  # imported before tracing starts

    assert score
    tracemalloc.start()
    ours(readings, people)
    return tracemalloc.get_traced_memory()[1] / 1e6


def run() -> Table:
    with tempfile.TemporaryDirectory() as folder:
        return main(Path(folder))


if __name__ == "__main__":
    print(_measure_memory(sys.argv[1], Path(sys.argv[2]), Path(sys.argv[3]), int(sys.argv[4])))
