"""The longer tables, typed a second time from the same sources, so that a typo in either shows."""

from __future__ import annotations

from decimal import Decimal

import pytest

from core.client import Sex
from core.references import (
    chair_stand_cdc,
    chair_stand_rikli_jones,
    five_chair_stands_bohannon_2006,
    one_leg_stance_springer_2007,
    timed_up_and_go_bohannon_2006,
    two_minute_step_jones_rikli_2002,
)

D = Decimal
BANDS = ("60-64", "65-69", "70-74", "75-79", "80-84", "85-89", "90-94")
STANDS = {  # 25th and 75th percentile; the first is the cut of the CDC too
    Sex.MALE: "14 19, 12 18, 12 17, 11 17, 10 15, 8 14, 7 12",
    Sex.FEMALE: "12 17, 11 16, 10 15, 10 15, 9 14, 8 13, 4 11",
}
STANDS_STANDARD = {  # from memory, on both sides
    Sex.MALE: (17, 16, 15, 14, 13, 11, 9),
    Sex.FEMALE: (15, 15, 14, 13, 12, 11, 9),
}
STEPS = {
    Sex.MALE: "87 115, 86 116, 80 110, 73 109, 71 103, 59 91, 52 86",
    Sex.FEMALE: "75 107, 73 107, 68 101, 68 100, 60 91, 55 85, 44 72",
}
STEPS_STANDARD = {
    Sex.MALE: (106, 101, 95, 88, 80, 71, 60),
    Sex.FEMALE: (97, 93, 89, 84, 78, 70, 60),
}
STEPS_MEAN = {
    Sex.MALE: "101 21, 101 23, 95 23, 91 27, 87 24, 75 24, 69 26",
    Sex.FEMALE: "91 24, 90 26, 84 25, 84 24, 75 23, 70 22, 58 21",
}
each_sex = pytest.mark.parametrize("sex", list(Sex))


def ages(band: str) -> range:
    first, last = map(int, band.split("-"))
    return range(first, last + 1)


def pairs(printed: str) -> list[tuple[int, int]]:
    return [(int(low), int(high)) for low, high in (cell.split() for cell in printed.split(","))]


@each_sex
def test_chair_stands_by_age(sex):
    for band, (low, high), standard in zip(BANDS, pairs(STANDS[sex]), STANDS_STANDARD[sex], strict=True):
        for age in ages(band):
            row = chair_stand_rikli_jones.row(age, sex)
            assert (row.low, row.high, row.standard) == (low, high, standard)
            assert chair_stand_cdc.cut(age, sex) == low


@each_sex
def test_two_minute_steps_by_age(sex):
    printed = zip(BANDS, pairs(STEPS[sex]), pairs(STEPS_MEAN[sex]), STEPS_STANDARD[sex], strict=True)
    for band, (low, high), (mean, deviation), standard in printed:
        for age in ages(band):
            row = two_minute_step_jones_rikli_2002.row(age, sex)
            assert (row.low, row.high, row.standard) == (low, high, standard)
            assert (row.mean, row.deviation) == (mean, deviation)


@each_sex
def test_the_printed_range_of_steps_is_about_two_thirds_of_a_deviation_either_side_of_the_mean(sex):
    """An independent check: for a normal spread the middle half is mean -/+ 0.674 SD, and the two papers agree so."""
    for row in (r for r in two_minute_step_jones_rikli_2002.ROWS if r.sex is sex):
        half = D("0.6745") * row.deviation
        assert abs(row.low - (row.mean - half)) < 2
        assert abs(row.high - (row.mean + half)) < 2


@pytest.mark.parametrize(("band", "limit"), [("60-69", "11.4"), ("70-79", "12.6"), ("80-89", "14.8")])
def test_five_stands_by_decade(band, limit):
    assert {five_chair_stands_bohannon_2006.limit(age) for age in ages(band)} == {D(limit)}


@pytest.mark.parametrize(
    ("band", "printed"), [("60-69", "8.1 7.1 9.0"), ("70-79", "9.2 8.2 10.2"), ("80-99", "11.3 10.0 12.7")]
)
def test_up_and_go_by_decade(band, printed):
    for age in ages(band):
        row = timed_up_and_go_bohannon_2006.row(age)
        assert [row.mean, row.low, row.high] == [D(cell) for cell in printed.split()]


@pytest.mark.parametrize(
    ("band", "printed"),
    [
        ("18-39", "44.7 43.3"),
        ("40-49", "41.9 40.3"),
        ("50-59", "41.2 37.0"),
        ("60-69", "32.1 26.9"),
        ("70-79", "21.5 15.0"),
        ("80-99", "9.4 6.2"),
    ],
)
def test_one_leg_by_age_from_memory_on_both_sides(band, printed):
    for age in ages(band):
        row = one_leg_stance_springer_2007.row(age)
        assert [row.best_of_three, row.mean_of_three] == [D(cell) for cell in printed.split()]
