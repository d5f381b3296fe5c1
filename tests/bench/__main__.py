"""Run the benchmarks: `python -m tests.bench [NAME ...]`. A new one is a module with `run() -> Table`, and a row."""

from __future__ import annotations

import importlib
import sys

from rich.console import Console

BENCHES = {
    "score": "tests.bench.bench_score",
}


def main(names: list[str]) -> int:
    unknown = [name for name in names if name not in BENCHES]
    if unknown:
        print(f"No benchmark {', '.join(unknown)}: there are {', '.join(BENCHES)}.", file=sys.stderr)
        return 2
    for name in names or BENCHES:
        Console().print(importlib.import_module(BENCHES[name]).run())
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
