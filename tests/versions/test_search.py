"""What breaks something is named, alone or with what it takes besides."""

from __future__ import annotations

from collections.abc import Sequence
from string import ascii_lowercase

from tests.versions.search import culprits


def breaking(**causes: str):
    """Each thing, and the letters that must all have changed for it to break; and how often that was asked."""
    asked = []

    def breaks(changes: Sequence[str]) -> frozenset[str]:
        asked.append(tuple(changes))
        return frozenset(thing for thing, letters in causes.items() if set(letters) <= set(changes))

    return breaks, asked


def test_where_nothing_breaks_nobody_is_named_after_one_look() -> None:
    breaks, asked = breaking(cli="?")
    assert list(culprits(ascii_lowercase, breaks)) == []
    assert len(asked) == 1


def test_the_one_that_breaks_something_is_named_after_few_looks() -> None:
    breaks, asked = breaking(cli="q")
    assert list(culprits(ascii_lowercase, breaks)) == [(("q",), {"cli"})]
    assert len(asked) <= 11


def test_two_that_each_break_something_are_named_apart() -> None:
    breaks, _ = breaking(cli="c", charts="d", words="y")
    assert list(culprits(ascii_lowercase, breaks)) == [(("c",), {"cli"}), (("d",), {"charts"}), (("y",), {"words"})]


def test_two_that_break_it_only_together_are_named_together() -> None:
    breaks, _ = breaking(cli="cx")
    assert list(culprits(ascii_lowercase, breaks)) == [(("c", "x"), {"cli"})]


def test_one_that_breaks_alone_hides_nothing_that_takes_two() -> None:
    breaks, _ = breaking(cli="b", trend="ay")
    assert set(culprits(ascii_lowercase, breaks)) == {(("b",), frozenset({"cli"})), (("a", "y"), frozenset({"trend"}))}
