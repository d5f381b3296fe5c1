"""Who a row is about: one answer for `score`, `import`, `export` and `erase`.

A person is written as a full name, or as the number that `samehour` shows (#12 is always the number). Case, accents,
spacing, hyphens and a spreadsheet's apostrophe make no difference. A part of a name is nobody: it is not enough to file
somebody's health data under.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from typing import Protocol, TypeVar

from bot.foundation.spreadsheet import unescaped
from core.language import plain


class Named(Protocol):
    """Somebody with a name, perhaps not the only one, and a number of their own."""

    @property
    def id(self) -> int: ...

    @property
    def name(self) -> str: ...


Somebody = TypeVar("Somebody", bound=Named)


def filed_under(cell: str) -> str:
    """What all spellings of one person have in common; "" for nobody.

    >>> filed_under(" JOSÉ "), filed_under("#012")
    ('jose', '12')
    """
    said = unescaped(cell.strip())
    number = said.removeprefix("#").strip()
    if number.isdecimal():
        return str(int(number))
    return plain(said).strip() or said


def named(people: Iterable[Somebody], cell: str) -> list[Somebody]:
    """Everybody whom a cell may mean: by full name, else by number."""
    key = filed_under(cell)
    if not key:
        return []
    everybody = list(people)
    by_name = [one for one in everybody if filed_under(one.name) == key and not cell.strip().startswith("#")]
    return by_name or [one for one in everybody if str(one.id) == key]


def unmistakable(people: Sequence[Named]) -> dict[int, str]:
    """How to write each person, by number, so that `named` finds nobody else: the name, or else the number."""
    keys = {one.id: filed_under(one.name) for one in people}
    count = Counter(keys.values())
    return {
        one.id: one.name
        if keys[one.id] and count[keys[one.id]] == 1 and not keys[one.id].isdecimal()
        else f"{'#' if str(one.id) in count else ''}{one.id}"
        for one in people
    }
