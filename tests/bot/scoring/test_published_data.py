"""Published data through `score`, beside a calculation that shares nothing with it but the published errors."""

from __future__ import annotations

import csv
import io
from datetime import UTC, datetime, timedelta
from pathlib import Path

import numpy as np
import pytest

from bot.scoring import score


def words(text: str) -> list[str]:
    return text.split()


# Weights of 72 young women before and after treatment, in pounds: Hand and others 1993, A Handbook of Small Data Sets,
# data set 285; the values are those of `anorexia` in R's package MASS.
BEFORE = words("""
80.7 89.4 91.8 74 78.1 88.3 87.3 75.1 80.6 78.4 77.6 88.7 81.3 78.1 70.5 77.3 85.2 86 84.1 79.7 85.5 84.4 79.6
77.5 72.3 89 80.5 84.9 81.5 82.6 79.9 88.7 94.9 76.3 81 80.5 85 89.2 81.3 76.5 70 80.4 83.3 83 87.7 84.2 86.4
76.5 80.2 87.8 83.3 79.7 84.5 80.8 87.4 83.8 83.3 86 82.5 86.7 79.6 76.9 94.2 73.4 80.5 81.6 82.1 77.6 83.5 89.9
86 87.3
""")
AFTER = words("""
80.2 80.1 86.4 86.3 76.1 78.1 75.1 86.7 73.5 84.6 77.4 79.5 89.6 81.4 81.8 77.3 84.2 75.4 79.5 73 88.3 84.7 81.4
81.2 88.2 78.8 82.2 85.6 81.4 81.9 76.4 103.6 98.4 93.4 73.4 82.1 96.7 95.3 82.4 72.5 90.9 71.3 85.4 81.6 89.1
83.9 82.7 75.7 82.6 100.4 85.2 83.6 84.6 96.2 86.7 95.2 94.3 91.5 91.9 100.3 76.7 76.8 101.6 94.9 75.2 77.8 95.5
90.7 92.5 93.8 91.7 98
""")
# Heart rates of nine patients at four times: `heart.rate` of R's package ISwR (Dalgaard 2008, Introductory Statistics
# with R); from memory, checked against the analysis of variance printed there.
RATES = np.array(
    [
        [96, 92, 86, 92],
        [110, 106, 108, 114],
        [89, 86, 85, 83],
        [95, 78, 78, 83],
        [128, 124, 118, 118],
        [100, 98, 100, 94],
        [72, 68, 67, 71],
        [79, 75, 74, 74],
        [100, 106, 104, 102],
    ]
)
FIRST = datetime(2026, 1, 5, 7, tzinfo=UTC)


def scored(tmp_path: Path, rows: list[tuple[str, ...]]) -> list[dict[str, str]]:
    path, out, problems = tmp_path / "readings.csv", io.StringIO(), io.StringIO()
    with path.open("w", newline="", encoding="utf-8") as file:
        csv.writer(file).writerows([("person", "taken_at", "measure", "value", "unit"), *rows])
    score(path, None, "csv", out, problems)
    return list(csv.DictReader(io.StringIO(out.getvalue(), newline="")))


def day(weeks: int) -> str:
    return (FIRST + timedelta(weeks=weeks)).isoformat()


def test_weights_before_and_after_are_judged_as_numpy_judges_them(tmp_path):
    before, after = (np.array(values, dtype=float) * 0.45359237 for values in (BEFORE, AFTER))
    assert len(before) == len(after) == 72
    assert np.mean(after - before) / 0.45359237 == pytest.approx(2.76, abs=0.005)  # the mean gain, as MASS has it
    rows = []
    for n, pair in enumerate(zip(BEFORE, AFTER, strict=True)):
        rows += [(f"p{n}", day(8 * when), "weight", value, "lb") for when, value in enumerate(pair)]
    lines = [line for line in scored(tmp_path, rows) if line["measure"] == "weight"]
    retests = [line for line in lines if line["verdict"] != "no baseline"]
    error = 1.96 * np.sqrt(2) * 0.0066 * (before + after) / 2  # Cheuvront 2004, two single readings
    beyond = np.abs(after - before) > error
    assert [line["verdict"] == "changed possible" for line in retests] == list(beyond)
    assert 50 < beyond.sum() < 72
    assert np.allclose([float(line["change"]) for line in retests], after - before, atol=0.0051)
    assert np.allclose([float(line["mdc95"]) for line in retests], error, atol=0.0051)
    matters = np.abs(after - before) >= 0.05 * before
    assert [line["reaches_mcid"] == "yes" for line in retests] == list(matters)


def test_the_rates_are_those_of_the_book():
    means = RATES.mean(axis=1, keepdims=True), RATES.mean(axis=0, keepdims=True)
    residuals = RATES - means[0] - means[1] + RATES.mean()
    squares = [4 * ((means[0] - RATES.mean()) ** 2).sum(), 9 * ((means[1] - RATES.mean()) ** 2).sum()]
    assert [*squares, (residuals**2).sum()] == pytest.approx([8966.6, 151.0, 296.8], abs=0.06)


def test_repeated_pulses_are_judged_as_numpy_judges_them(tmp_path):
    """Read as four retests of a device, at which the error is the published swing between days alone."""
    rows = [
        (f"p{n}", day(4 * when), "resting_heart_rate", str(rate), "bpm")
        for n, rates in enumerate(RATES)
        for when, rate in enumerate(rates)
    ]
    lines = scored(tmp_path, rows)
    bound = 1.96 * np.sqrt(2) * 5
    differences = RATES[:, 1:] - RATES[:, :1]
    retests = np.array([line["verdict"] for line in lines]).reshape(9, 4)[:, 1:]
    beyond = np.abs(differences) > bound
    assert list((retests != "within error").flat) == list(beyond.flat)
    assert beyond.sum() == 2  # of one patient, 17 less at two times: seen twice in a row
    again = beyond[:, 1:] & beyond[:, :-1] & (np.sign(differences[:, 1:]) == np.sign(differences[:, :-1]))
    assert [verdict.endswith("confirmed") for verdict in retests[:, 1:].flat] == list(again.flat)
    assert not any(line["flags"] for line in lines if "change" in line["flags"])  # and a coach is not told
    assert {line["mdc95"] for line in lines if line["mdc95"]} == {f"{bound:.2f}".rstrip("0").rstrip(".")}
