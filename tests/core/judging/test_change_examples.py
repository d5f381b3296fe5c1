"""The worked examples of change statistics, each with the source and provenance of its figures.

Published values are compared as printed; everything else is compared with numpy, scipy or arithmetic written out here.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from random import Random
from typing import Any

import numpy as np
import pytest
from scipy import stats

from core import reliability as r
from core.judging.change import minimal_detectable_change, standard_error
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
BLAND_ALTMAN = "Bland & Altman 1996, BMJ 313:106, peak flow"
WRIGHT_MINI = "Bland & Altman 1986, Lancet 327:307, peak flow"

CHILDREN = [
    [int(v) for v in row.split()]
    for row in """190 220 200 200
220 200 240 230
260 260 240 280
210 300 280 265
270 265 280 270
280 280 270 275
260 280 280 300
275 275 275 305
280 290 300 290
320 290 300 290
300 300 310 300
270 250 330 370
320 330 330 330
335 320 335 375
350 320 340 365
360 320 350 345""".splitlines()
]
FROM_MEMORY = [[330, 340, 380, 390], [335, 385, 360, 370], [400, 420, 425, 420], [430, 460, 480, 470]]  # 17-20
WRIGHT_1 = [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427]
WRIGHT_2 = [490, 397, 512, 401, 470, 611, 415, 431, 638, 429, 420, 633, 275, 492, 165, 372, 421]
MINI_1 = [512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451]
MINI_2 = [525, 415, 508, 444, 500, 625, 460, 390, 642, 432, 420, 605, 227, 467, 268, 370, 443]


def decimals(values: list[int]) -> list[Decimal]:
    return [D(v) for v in values]


def differences(first: list[int], second: list[int]) -> list[Decimal]:
    return [D(a - b) for a, b in zip(first, second, strict=True)]


REPEATABILITY = r.Z95 * r.ROOT_2
WRIGHT, MINI = differences(WRIGHT_1, WRIGHT_2), differences(MINI_1, MINI_2)


def twice_rms(values: list[Decimal]) -> Decimal:
    return 2 * (sum(v * v for v in values) / len(values)).sqrt()


JACOBSON = r.reliable_change(D("32.5"), D("47.5"), sd=D("7.5"), reliability=D("0.80"))
SAMPLE = [D(v) for v in (72, 76, 74, 79, 79, 77)]
STANDS = r.chances(D(3), sem=D("0.9"), worthwhile=D("0.8"))
WALK = r.chances(D(30), sem=D(21), worthwhile=D(10))
mdc = minimal_detectable_change

ROWS = [
    Row("37a", mdc(D(21)), "58.21", "formula"),
    Row("37b", mdc(D(21), z=r.Z90), "48.85", "formula"),
    Row("56a", r.sem_from_reliability(D(10), D("0.91")), "3.000", "formula"),
    Row("56b", mdc(D(3)), "8.316", "formula"),
    Row("57a", r.sem_from_reliability(D(4), D("0.90")), "1.265", "formula"),
    Row("57b", mdc(r.sem_from_reliability(D(4), D("0.90"))), "3.506", "formula"),
    Row("57c", mdc(r.sem_from_reliability(D(4), D("0.90")), z=r.Z90), "2.943", "formula"),
    Row("58", mdc(D("0.9")), "2.5", "Goldberg 2012, printed MDC95", Seen.READ),
    Row("59a", 100 * D("3.5") / D("29.8"), "11.74", "Huang 2011", Seen.READ),
    Row("59b", r.sem_from_mdc(D("3.5")), "1.263", "Huang 2011", Seen.READ),
    Row("59c", r.percent_mdc(D("3.5"), 100 * D("3.5") / D("29.8")), "29.8", "Huang 2011", Seen.READ),
    Row("60a", r.sem_from_mdc(D(82)), "29.58", "Steffen & Seney 2008", Seen.READ),
    Row("60b", r.sem_from_mdc(D("0.18")), "0.0649", "Steffen & Seney 2008", Seen.READ),
    Row("61", r.sem_from_mdc(D("9.26")), "3.34", "Beckerman 2001", Seen.READ),
    Row("62a", JACOBSON.standard_error, "3.354", "Jacobson & Truax 1991", Seen.MEMORY),
    Row("62b", JACOBSON.of_difference, "4.743", "Jacobson & Truax 1991", Seen.MEMORY),
    Row("62c", JACOBSON.in_errors, "3.16", "Jacobson & Truax 1991", Seen.MEMORY),
    Row("65a", r.mean(SAMPLE), "76.2", "Hopkins 2001, slides", Seen.READ),
    Row("65b", r.sample_sd(SAMPLE), "2.8", "Hopkins 2001, slides", Seen.READ),
    Row(
        "66",
        r.root_mean_square([D("5.7"), D("4.2"), D("5.7"), D("2.8"), D("2.1")]),
        "4.356",
        "gait-analysis page, SD of five persons",
        Seen.READ,
    ),
    Row("67a", r.mean(decimals(CHILDREN[0])), "202.50", BLAND_ALTMAN, Seen.READ),
    Row("67b", r.sample_sd(decimals(CHILDREN[0])), "12.58", BLAND_ALTMAN, Seen.READ),
    Row("69a", r.mean(decimals(CHILDREN[11])), "305.00", BLAND_ALTMAN, Seen.READ),
    Row("69b", r.sample_sd(decimals(CHILDREN[11])), "55.08", BLAND_ALTMAN, Seen.READ),
    Row("70a", r.within_subject_sd_of_repeats([decimals(c) for c in CHILDREN]), "21.378", BLAND_ALTMAN, Seen.READ),
    Row(
        "70b",
        r.within_subject_sd_of_repeats([decimals(c) for c in CHILDREN + FROM_MEMORY]),
        "21.46",
        BLAND_ALTMAN + ", all twenty",
        Seen.MEMORY,
    ),
    Row("71a", r.mean(WRIGHT), "4.941", WRIGHT_MINI, Seen.READ),
    Row("71b", r.sample_sd(WRIGHT), "21.724", WRIGHT_MINI, Seen.READ),
    Row("71c", r.typical_error(WRIGHT), "15.361", WRIGHT_MINI, Seen.READ),
    Row("71d", r.within_subject_sd(WRIGHT), "15.307", WRIGHT_MINI, Seen.READ),
    Row("71e", REPEATABILITY * r.within_subject_sd(WRIGHT), "42.43", WRIGHT_MINI, Seen.READ),
    Row("71f", twice_rms(WRIGHT), "43.29", WRIGHT_MINI + " (43.2 printed, from memory)", Seen.MEMORY),
    Row("72a", r.mean(MINI), "-2.882", WRIGHT_MINI, Seen.READ),
    Row("72b", r.sample_sd(MINI), "28.872", WRIGHT_MINI, Seen.READ),
    Row("72c", r.within_subject_sd(MINI), "19.911", WRIGHT_MINI, Seen.READ),
    Row("72d", REPEATABILITY * r.within_subject_sd(MINI), "55.19", WRIGHT_MINI, Seen.READ),
    Row("72e", twice_rms(MINI), "56.32", WRIGHT_MINI + " (56.4 printed, from memory)", Seen.MEMORY),
    *(
        Row(f"74-{n}", r.averaged(D(4), n), sem, "standard theory")
        for n, sem in ((1, "4.000"), (2, "2.828"), (3, "2.309"), (5, "1.789"), (7, "1.512"))
    ),
    *(
        Row(f"74-mdc-{n}", mdc(D(4), before=n, after=n), wanted, "standard theory")
        for n, wanted in ((1, "11.09"), (2, "7.84"), (3, "6.40"), (5, "4.96"), (7, "4.19"))
    ),
    Row("75", mdc(D(4), before=3, after=1), "9.05", "standard theory"),
    Row("76a", r.counting_step(15), "4", "arithmetic"),
    Row("76b", r.counting_step(30), "2", "arithmetic"),
    Row("77a", r.counting_variance(15).sqrt(), "1.633", "random start of the window"),
    Row("77b", mdc(r.counting_variance(15).sqrt()), "4.53", "random start of the window"),
    Row("78a", r.together(D("2.05"), r.counting_variance(15).sqrt()), "2.621", "independent sources of error"),
    Row("78b", mdc(r.together(D("2.05"), r.counting_variance(15).sqrt())), "7.26", "independent sources"),
    Row("80", r.smallest_worthwhile_change(D("7.21")), "1.442", "Hopkins 2004, 0.2 SD", Seen.READ),
    Row("82a", STANDS.better, "0.958", "after Hopkins 2004"),
    Row("82b", STANDS.trivial, "0.041", "after Hopkins 2004"),
    Row("82c", STANDS.worse, "0.001", "after Hopkins 2004"),
    Row("83a", WALK.better, "0.750", "after Hopkins 2004"),
    Row("83b", WALK.trivial, "0.161", "after Hopkins 2004"),
    Row("83c", WALK.worse, "0.089", "after Hopkins 2004"),
]


@pytest.mark.parametrize("row", ROWS, ids=[f"{row.id}-{row.seen}" for row in ROWS])
def test_a_worked_example_comes_out_as_printed(row):
    assert shown(row.got, row.wanted) == row.wanted, row.source


def test_a_reliable_change_is_beyond_1_96_of_its_own_error():
    assert JACOBSON.reliable
    just_not = D("1.96") * JACOBSON.of_difference
    assert not r.reliable_change(D(0), just_not, sd=D("7.5"), reliability=D("0.80")).reliable  # strictly


@pytest.mark.parametrize("values", [WRIGHT, MINI], ids=["wright", "mini"])
def test_limits_of_agreement_are_what_numpy_makes_of_the_published_pairs(values):
    found, outside = r.limits_of_agreement(values), np.array(values, float)
    half = 1.96 * outside.std(ddof=1)
    assert [float(v) for v in found] == pytest.approx([outside.mean() - half, outside.mean(), outside.mean() + half])


def test_the_spread_within_children_is_the_error_of_a_one_way_analysis_of_variance():
    """The residual mean square, here from scipy's F: F = between / within."""
    f = stats.f_oneway(*CHILDREN).statistic
    between = 4 * np.var([np.mean(c) for c in CHILDREN], ddof=1)
    found = r.within_subject_sd_of_repeats([decimals(c) for c in CHILDREN])
    assert float(found) ** 2 == pytest.approx(between / f)
    assert shown(found * found, "457.03") == "457.03"


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
        lambda: mdc(D(0)),
        lambda: mdc(D(1), before=0),
        lambda: r.sem_from_reliability(D(1), D("1.1")),
        lambda: r.sem_from_mdc(D(0)),
        lambda: r.averaged(D(1), 0),
        lambda: r.counting_step(0),
        lambda: r.sample_variance([D(1)]),
        lambda: r.mean([]),
        lambda: r.within_subject_sd([]),
        lambda: standard_error(MeasurementError(BY_HAND), D(1)),
        lambda: standard_error(MeasurementError(BY_HAND, sem=D(1)), D(1), 0),
    ],
)
def test_an_impossible_figure_in_our_own_tables_is_refused(wrong):
    with pytest.raises(ValueError, match=r".+"):
        wrong()
