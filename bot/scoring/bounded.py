"""Tables that remember what was worked out, and never grow beyond a size."""

from __future__ import annotations

from collections.abc import Hashable
from typing import TypeVar

REMEMBERED = 20_000  # entries

T = TypeVar("T")
K = TypeVar("K", bound=Hashable)


def remember(table: dict[K, T], key: K, value: T, most: int = REMEMBERED) -> T:
    """Keep `value`. A full table starts anew, which costs less than knowing what was used last."""
    if len(table) >= most:
        table.clear()
    table[key] = value
    return value
