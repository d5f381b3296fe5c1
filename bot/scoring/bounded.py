"""Caches of bounded size."""

from __future__ import annotations

from collections.abc import Hashable
from typing import TypeVar

REMEMBERED = 20_000  # entries

T = TypeVar("T")
K = TypeVar("K", bound=Hashable)


def cache(table: dict[K, T], key: K, value: T, most: int = REMEMBERED) -> T:
    """Cache `value`. A full table is cleared, which costs less than tracking what was used last."""
    if len(table) >= most:
        table.clear()
    table[key] = value
    return value
