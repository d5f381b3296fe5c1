"""The attack: whoever hears figures adds and subtracts them, in every pair, sequence and multiple. Nothing they work
out is about fewer than five people.

The attacker here shares no code with the rule: exact fractions, every group of one to four people, all figures at once.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from fractions import Fraction
from itertools import combinations

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from core.watching import disclosure
from core.watching.disclosure import Figure, may_be_told, people_in

DAY = date(2026, 4, 6)
WEEK = timedelta(weeks=1)


def of(people: str, *weeks: int) -> Figure:
    """The answers of some people, each a letter, in some weeks."""
    return frozenset((who, DAY + n * WEEK) for who in people for n in weeks or (1,))


def told_of(figures: Sequence[Figure]) -> list[Figure]:
    """Those that may be told, each beside those before it."""
    told: list[Figure] = []
    for figure in figures:
        if may_be_told(told, figure):
            told.append(figure)
    return told


def rank(rows: Sequence[Sequence[int]]) -> int:
    matrix = [[Fraction(x) for x in row] for row in rows]
    done = 0
    for column in range(len(matrix[0]) if matrix else 0):
        pivot = next((n for n in range(done, len(matrix)) if matrix[n][column]), None)
        if pivot is None:
            continue
        matrix[done], matrix[pivot] = matrix[pivot], matrix[done]
        for n in range(done + 1, len(matrix)):
            if matrix[n][column]:
                factor = matrix[n][column] / matrix[done][column]
                matrix[n] = [a - factor * b for a, b in zip(matrix[n], matrix[done], strict=True)]
        done += 1
    return done


def worked_out(told: Sequence[Figure]) -> list[str]:
    """Every group of one to four people about whom some combination of what was told says something."""
    cells = sorted({cell for figure in told for cell in figure})
    everybody = sorted(people_in(cells))
    whole = rank([[cell in figure for cell in cells] for figure in told])
    found = []
    for size in range(1, 5):
        for group in combinations(everybody, size):
            outside = [cell for cell in cells if cell[0] not in group]
            if rank([[cell in figure for cell in outside] for figure in told]) < whole:
                found.append("".join(group))
    return found


def test_the_attacker_can_subtract() -> None:
    assert worked_out([of("abcdef"), of("abcde")]) != []
    assert "p" in worked_out([of("vwxyz"), of("vwxyzabcde"), of("vwxyzfghij"), of("abcdefghijp")])
    assert worked_out([of("abcdef"), of("abcde", 2)]) == []  # another week is another answer


ONE_OR_OTHER = {
    "five people": ([], "abcde", True),
    "four people": ([], "abcd", False),
    "the same people again": (["abcde"], "abcde", True),
    "nobody in common": (["abcde"], "fghij", True),
    "one more": (["abcde"], "abcdef", False),
    "one fewer, who has left": (["abcdef"], "abcde", False),
    "five more": (["abcde"], "abcdefghij", True),
    "a part, with five others left": (["abcdefghij"], "abcde", True),
    "a part, with four others left": (["abcdefghi"], "abcde", False),
    "five and five others, three in common": (["abcdefgh"], "fghijklm", True),
    "four and five others": (["abcdefgh"], "efghijklm", False),
    "five and four others": (["efghijklm"], "abcdefgh", False),
    "two parts that leave one": (["abcdefghijk", "abcde"], "fghij", False),
    "every pair is fine, and three leave one": (["vwxyz", "vwxyzabcde", "vwxyzfghij"], "abcdefghijp", False),
    "every pair is fine, and three leave four": (["vwxyz", "vwxyzabcde", "vwxyzfghij"], "abcdefghijpqrs", False),
    "every pair is fine, and three leave five": (["vwxyz", "vwxyzabcde", "vwxyzfghij"], "abcdefghijpqrst", True),
}


@pytest.mark.parametrize(("told", "figure", "may"), ONE_OR_OTHER.values(), ids=ONE_OR_OTHER.keys())
def test_a_figure_may_be_told(told: list[str], figure: str, may: bool) -> None:
    before = [of(people) for people in told]
    assert told_of(before) == before
    assert may_be_told(before, of(figure)) is may


def test_one_of_a_longer_time_may_be_told_if_what_it_adds_is_about_five() -> None:
    weeks = [of("abcdefg", 1), of("abcdef", 2), of("abcdefg", 3)]
    assert told_of(weeks) == weeks
    assert may_be_told(weeks, of("abcdefg", 1) | of("abcdef", 2) | of("abcdefg", 3))  # their sum tells nothing new
    assert not may_be_told(weeks, of("abcdefg", 1, 2, 3))  # g's answer of week 2
    assert may_be_told(weeks, of("abcdefg", 1) | of("abcdef", 2) | of("abcdefg", 3, 4))


def test_who_is_erased_stays_in_what_was_told() -> None:
    """Their answer is gone from every later figure, and would be the difference."""
    assert not may_be_told([of("abcdef")], of("abcde"))


def test_what_would_take_too_long_to_look_at_is_not_told(monkeypatch: pytest.MonkeyPatch) -> None:
    assert may_be_told([of("abcdefgh")], of("fghijklm"))
    monkeypatch.setattr(disclosure, "MOST_TRIES", 0)
    assert not may_be_told([of("abcdefgh")], of("fghijklm"))


LETTERS = "abcdefghijklm"
figures = st.lists(
    st.frozensets(st.tuples(st.sampled_from(LETTERS), st.sampled_from([DAY, DAY + WEEK])), min_size=1, max_size=22),
    min_size=2,
    max_size=6,
)


@settings(max_examples=60, deadline=None)
@given(figures)
@example([of("vwxyz"), of("vwxyzabcde"), of("vwxyzfghij"), of("abcdefghijp")])
def test_no_sequence_of_figures_gives_anybody_away(asked: list[Figure]) -> None:
    told = told_of(asked)
    assert worked_out(told) == []
    for one, other in combinations(told, 2):
        if one & other:
            assert all(len(people_in(more)) not in range(1, 5) for more in (one - other, other - one))


people = st.sampled_from(LETTERS)
histories = st.lists(  # what happens to two groups, week by week: somebody joins, leaves, is erased, or does not answer
    st.tuples(st.sampled_from(["join", "leave", "erase", "silent", "week"]), st.sampled_from([0, 1]), people),
    min_size=4,
    max_size=24,
)


@settings(max_examples=80, deadline=None)
@given(st.frozensets(people, min_size=5), st.frozensets(people, min_size=5), histories)
def test_no_history_of_two_groups_gives_anybody_away(
    first: frozenset[str], second: frozenset[str], history: list[tuple[str, int, str]]
) -> None:
    groups, erased, silent = [set(first), set(second)], set[str](), set[str]()
    told: list[Figure] = []
    number = 0
    for what, which, who in history:
        match what:
            case "join":
                groups[which].add(who)
            case "leave":
                groups[which].discard(who)
            case "erase":
                erased.add(who)
            case "silent":
                silent.add(who)
            case "week":
                number += 1
                for group in groups if which else reversed(groups):
                    week = of("".join(sorted(group - erased - silent)), number)
                    if may_be_told(told, week):
                        told.append(week)
                silent.clear()
    for group in groups:  # at the end, the whole time of each, of those who are still there
        whole = frozenset(cell for n in range(1, number + 1) for who in group - erased for cell in of(who, n))
        if may_be_told(told, whole):
            told.append(whole)
    assert worked_out(told) == []
