"""The worked examples of change statistics, each with the source and provenance of its figures.

Published values are compared as printed; everything else with numpy or plain arithmetic written out here.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from random import Random
from typing import Any

import numpy as np
import pytest

from core import reliability as r
from core.judging.change import mdc95, standard_error
from core.measures.measure import MeasurementError
from core.sources import Seen, Source

D = Decimal


@dataclass(frozen=True)
class Row:
    id: str
    got: Any
    wanted: str  # as printed; compared at its own number of decimals
    source: str
    seen: Seen = Seen.DERIVED


def shown(value: Decimal | float, like: str) -> str:
    """Rounded to as many decimals as `like` has."""
    places = len(like.partition(".")[2])
    return f"{D(value):.{places}f}"


BY_HAND = Source("by_hand", "typed into the test", "nobody", Seen.OURS)

SAMPLE = [D(v) for v in (72, 76, 74, 79, 79, 77)]


def mdc(sem: Decimal, *, before: int = 1, after: int = 1) -> Decimal:
    """Of means of so many readings on each side, with the error of one."""
    return mdc95(sem * sem / before + sem * sem / after)


ROWS = [
    Row("37a", mdc(D(21)), "58.21", "formula"),
    Row("56b", mdc(D(3)), "8.316", "formula"),
    Row("58", mdc(D("0.9")), "2.5", "Goldberg 2012, printed MDC95", Seen.READ),
    Row("59a", 100 * D("3.5") / D("29.8"), "11.74", "Huang 2011", Seen.READ),
    Row("59b", r.sem_from_mdc(D("3.5")), "1.263", "Huang 2011", Seen.READ),
    Row("60a", r.sem_from_mdc(D(82)), "29.58", "Steffen & Seney 2008", Seen.READ),
    Row("60b", r.sem_from_mdc(D("0.18")), "0.0649", "Steffen & Seney 2008", Seen.READ),
    Row("61", r.sem_from_mdc(D("9.26")), "3.34", "Beckerman 2001", Seen.READ),
    Row("65a", r.mean(SAMPLE), "76.2", "Hopkins 2001, slides", Seen.READ),
    *(
        Row(f"74-mdc-{n}", mdc(D(4), before=n, after=n), wanted, "standard theory")
        for n, wanted in ((1, "11.09"), (2, "7.84"), (3, "6.40"), (5, "4.96"), (7, "4.19"))
    ),
    Row("75", mdc(D(4), before=3, after=1), "9.05", "standard theory"),
    Row("76a", r.counting_step(15), "4", "arithmetic"),
    Row("76b", r.counting_step(30), "2", "arithmetic"),
    Row("77a", r.counting_variance(15).sqrt(), "1.633", "random start of the window"),
    Row("77b", mdc(r.counting_variance(15).sqrt()), "4.53", "random start of the window"),
]


@pytest.mark.parametrize("row", ROWS, ids=[f"{row.id}-{row.seen}" for row in ROWS])
def test_a_worked_example_comes_out_as_printed(row):
    assert shown(row.got, row.wanted) == row.wanted, row.source


@pytest.mark.parametrize("window", [10, 15, 30, 60])
def test_counting_beats_in_a_window_scatters_as_step_squared_over_six(window):
    """Compared with actual counting at every rate from 50 to 110, in a window that opens anywhere in a beat."""
    dice, errors = Random(4), []
    for _ in range(40_000):
        rate = dice.uniform(50, 110)
        period, start = 60 / rate, dice.random()
        beats = sum(1 for k in range(window * 2 + 2) if start * period + k * period < window)
        errors.append(beats * 60 / window - rate)
    assert np.std(errors) == pytest.approx(float(r.counting_variance(window).sqrt()), rel=0.03)
    assert abs(np.mean(errors)) < 0.1


def test_two_counts_in_one_sitting_share_the_days_pulse_but_not_the_counting_error():
    pulse = MeasurementError(BY_HAND, sem=D("2.05"), counted=True, shared_by_attempts=True)
    once, twice = (standard_error(pulse, D(70), n, 15) for n in (1, 2))
    assert shown(once, "2.621") == "2.621"
    assert float(twice) ** 2 == pytest.approx(2.05**2 + 16 / 12)
    assert standard_error(pulse, D(70), 2, None) == D("2.05")  # a device counts no window


def test_a_relative_error_grows_with_the_value():
    weight = MeasurementError(BY_HAND, cv=D("0.0066"), shared_by_attempts=True)
    assert standard_error(weight, D(100)) == D("0.66")
    assert standard_error(weight, D(100), 3) == D("0.66")
    assert float(standard_error(MeasurementError(BY_HAND, cv=D("0.1")), D(50), 4)) == pytest.approx(2.5)


@pytest.mark.parametrize(
    "wrong",
    [
        lambda: r.sem_from_mdc(D(0)),
        lambda: r.counting_step(0),
        lambda: r.mean([]),
        lambda: standard_error(MeasurementError(BY_HAND), D(1)),
        lambda: standard_error(MeasurementError(BY_HAND, sem=D(1)), D(1), 0),
    ],
)
def test_an_impossible_figure_in_our_own_tables_is_refused(wrong):
    with pytest.raises(ValueError, match=r".+"):
        wrong()
