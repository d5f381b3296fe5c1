"""A quarter of a practice: figures of five or more people, and no way from two reports to one person."""

from __future__ import annotations

import random
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal
from itertools import combinations, pairwise

import pytest

from core.reading import Reading
from core.watching.cohort import Paired, TooFew
from core.watching.practice import PersonFact, Quarter, finished, meant, practice, quarter_of

Q1 = Quarter(2026, 1)
START = datetime(2026, 1, 5, 8, tzinfo=UTC)
WEEK = timedelta(weeks=1)
TODAY = date(2026, 4, 6)


def waists(*values: str, start: datetime = START) -> tuple[Reading, ...]:
    return tuple(Reading("waist", Decimal(v), start + 4 * n * WEEK) for n, v in enumerate(values))


def person(*values: str, joined: date = date(2025, 11, 3), kept: int = 10, asked: int = 12) -> PersonFact:
    return PersonFact(joined, None, None, tuple(n < kept for n in range(asked)), waists(*values))


SIX = tuple(person(str(100 + n), "98", str(97 + n)) for n in range(6))


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("", Q1), ("2026q1", Q1), ("2026 Q1", Q1), ("q1 2026", Q1), ("2025q4", Quarter(2025, 4)),
        ("2026q2", None), ("2026q5", None), ("2027q1", None), ("spring", None), ("q1", None), ("999q1", None),
    ],
)  # fmt: skip
def test_a_quarter_is_meant_by_its_year_and_number_if_it_is_over(words: str, expected: Quarter | None) -> None:
    assert meant(words, TODAY) == expected


def test_quarters_follow_one_another_without_a_gap() -> None:
    four = finished(TODAY)
    assert [q.key for q in four] == ["2026q1", "2025q4", "2025q3", "2025q2"]
    assert all(later.first == earlier.last + timedelta(days=1) for later, earlier in pairwise(four))
    assert quarter_of(date(2025, 12, 31)) == Quarter(2025, 4)


def test_a_change_is_the_mean_of_everybody_s_own_with_its_interval() -> None:
    (waist,) = practice(SIX, Q1).changes
    assert isinstance(waist, Paired) and (waist.n, waist.mean) == (6, Decimal(-3)) and waist.low == waist.high == -3


def test_attendance_adds_up_over_everybody() -> None:
    made = practice(SIX, Q1)
    assert (made.kept, made.asked) == (60, 72)


@pytest.mark.parametrize("people", [1, 2, 3, 4])
def test_of_fewer_than_five_nothing_is_told_not_even_how_few(people: int) -> None:
    made = practice(SIX[:people], Q1)
    assert made.asked is None and made.kept is None
    assert made.changes == (TooFew("waist"),)


@pytest.mark.parametrize(("people", "told"), [(0, 0), (1, None), (4, None), (5, 5), (6, 6)])
def test_how_many_joined_and_ended_is_told_of_nobody_and_of_five_or_more(people: int, told: int | None) -> None:
    here = tuple(replace(p, joined=date(2026, 1, 5), ended=date(2026, 3, 30)) for p in SIX[:people])
    made = practice((*here, *SIX), Q1)
    assert (made.joined, made.ended) == (told, told)


def test_an_end_sooner_than_a_retest_is_no_change() -> None:
    soon = tuple(replace(p, readings=waists("100")[:1] + waists("97", start=START + 3 * WEEK)) for p in SIX)
    assert practice(soon, Q1).changes == ()


def test_energy_is_compared_as_means_of_four_weeks() -> None:
    ratings = tuple(Reading("energy", Decimal(4 if n < 4 else 7), START + n * WEEK) for n in range(12))
    (energy,) = practice([replace(p, readings=ratings) for p in SIX], Q1).changes
    assert isinstance(energy, Paired) and (energy.before, energy.after) == (4, 7)


def test_who_left_before_the_quarter_or_came_after_it_is_not_in_it() -> None:
    gone = replace(SIX[0], left=date(2025, 12, 31))
    late = replace(SIX[1], joined=date(2026, 4, 1))
    assert practice((gone, late, *SIX), Q1) == practice(SIX, Q1)


def test_no_two_reports_over_time_can_be_subtracted_to_leave_one_to_four_people() -> None:
    """Over random caseloads: every count that is told is of five or more, and no two are of the same people's days, so
    that no difference of two of them is a difference of two nested sets."""
    chance = random.Random(7)
    seen = 0
    for _ in range(300):
        people = []
        for _ in range(chance.randrange(1, 40)):
            joined = date(2025, 7, 1) + timedelta(days=chance.randrange(250))
            left = joined + timedelta(days=chance.randrange(200)) if chance.random() < 0.4 else None
            people.append(replace(person(), joined=joined, left=left, ended=left))
        told: list[frozenset[int]] = []
        for quarter in finished(TODAY)[:3]:
            made = practice(people, quarter)
            sets = (
                (made.joined, frozenset(n for n, p in enumerate(people) if p.joined in quarter)),
                (made.ended, frozenset(n for n, p in enumerate(people) if p.ended in quarter)),
            )
            for count, who in sets:
                assert count is None if 0 < len(who) < 5 else count == len(who)
            told.append(sets[0][1])
            seen += made.joined is not None and made.joined > 0
        assert all(not (a & b) for a, b in combinations(told, 2))
    assert seen > 100
