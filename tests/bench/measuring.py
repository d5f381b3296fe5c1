"""Shared by all benchmarks: medians of alternating runs, and a description of the machine."""

from __future__ import annotations

import os
import platform
import statistics
from collections.abc import Sequence
from pathlib import Path

RUNS = 5


def machine() -> str:
    """Processors, load and versions: absolute figures mean little without them."""
    load = " ".join(f"{n:.1f}" for n in os.getloadavg())
    return f"{os.cpu_count()} processors, load {load}, Python {platform.python_version()}, {_processor()}"


def _processor() -> str:
    try:
        lines = Path("/proc/cpuinfo").read_text(encoding="utf-8").splitlines()
    except OSError:
        return platform.machine()
    names = [line.partition(":")[2].strip() for line in lines if line.startswith("model name")]
    return names[0] if names else platform.machine()


def median(runs: Sequence[float]) -> float:
    return statistics.median(runs)


def percentile(values: Sequence[float], share: float) -> float:
    """The smallest value that `share` (0 to 1) of all do not exceed."""
    ordered = sorted(values)
    return ordered[min(int(len(ordered) * share), len(ordered) - 1)]


def ratio(ours: Sequence[float], yardstick: Sequence[float]) -> float:
    """The median ratio of paired runs: anything else the machine did affected both."""
    return statistics.median(a / b for a, b in zip(ours, yardstick, strict=True))
