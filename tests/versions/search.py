"""Which of many changes made at once breaks something: halves of them are tried by themselves, until one is left."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

Breaks = Callable[[Sequence[str]], frozenset[str]]


def culprits(changes: Sequence[str], breaks: Breaks) -> Iterator[tuple[tuple[str, ...], frozenset[str]]]:
    """Each change that breaks something by itself, or the fewest found that do so together, and what they break.

    `breaks` makes the changes, and none besides, and says what is broken then.
    """
    yield from _within(tuple(changes), breaks(changes), breaks)


def _within(
    changes: tuple[str, ...], broken: frozenset[str], breaks: Breaks
) -> Iterator[tuple[tuple[str, ...], frozenset[str]]]:
    if not broken:
        return
    if len(changes) == 1:
        yield changes, broken
        return
    middle = len(changes) // 2
    explained: frozenset[str] = frozenset()
    for half in (changes[:middle], changes[middle:]):
        alone = breaks(half)
        explained |= alone
        yield from _within(half, alone, breaks)
    if together := broken - explained:
        yield _fewest(changes, together, breaks), together


def _fewest(changes: tuple[str, ...], broken: frozenset[str], breaks: Breaks) -> tuple[str, ...]:
    """Leave out, one after another, each without which it is still broken."""
    for change in changes:
        rest = tuple(other for other in changes if other != change)
        if broken <= breaks(rest):
            changes = rest
    return changes
