"""Run the benchmarks: `python -m tests.bench [NAME ...]`. A new one is a module with `run() -> Table`, and a row.

    python -m tests.bench season [--clients 10000] [--weeks 12]

plays a season of a practice through the real engine, store and outbox; `tests/bench/season.py` says more.
"""

from __future__ import annotations

import importlib
import sys

from rich.console import Console

from tests.bench.measuring import machine

BENCHES = {
    "score": "tests.bench.bench_score",
    "turn": "tests.bench.bench_turn",
    "workers": "tests.bench.bench_workers",
    "send": "tests.bench.bench_send",
    "sweep": "tests.bench.bench_sweep",
    "start": "tests.bench.bench_start",
    "digest": "tests.bench.bench_digest",
    "rehearsal": "tests.bench.bench_rehearsal",
    "seal": "tests.bench.bench_seal",
    "signs": "tests.bench.bench_signs",
}


def main(arguments: list[str]) -> int:
    if arguments[:1] == ["season"]:
        from tests.bench import season

        return season.main(arguments[1:])
    unknown = [name for name in arguments if name not in BENCHES]
    if unknown:
        print(f"No benchmark {', '.join(unknown)}: there are {', '.join(BENCHES)}, season.", file=sys.stderr)
        return 2
    console = Console()
    for name in arguments or BENCHES:
        console.print(f"[bold]{name}[/bold]: {machine()}")
        console.print(importlib.import_module(BENCHES[name]).run())
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
