"""Look up the row for an age. Without a row there is no comparison; the nearest row is never used instead."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Protocol, TypeVar

from core.client import Sex

# "Older adults" without a printed age limit: from 60, where the chair-stand tables of the same bodies begin
# (ours).
OLDER = range(60, 120)


class Aged(Protocol):
    @property
    def ages(self) -> range: ...


class AgedAndSexed(Aged, Protocol):
    @property
    def sex(self) -> Sex: ...


A = TypeVar("A", bound=Aged)
S = TypeVar("S", bound=AgedAndSexed)


def row_for(rows: Iterable[A], age: int) -> A | None:
    """The row whose ages include `age`, in whole years; None outside the table."""
    return next((row for row in rows if age in row.ages), None)


def row_for_sex(rows: Iterable[S], age: int, sex: Sex) -> S | None:
    """The row for that sex whose ages include `age`; None outside the table."""
    return next((row for row in rows if row.sex is sex and age in row.ages), None)
