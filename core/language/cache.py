"""Remembering what short texts mean: people answer "7" and "82.4 kg" again and again, and one message is read from
several sides. Longer ones, what people tell of themselves, are read anew and never kept."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache, update_wrapper
from typing import Any, Concatenate, ParamSpec, TypeVar, cast

P = ParamSpec("P")
R = TypeVar("R")

SHORT = 24  # characters
MOST = 4096  # texts kept for each function


def memoized(read: Callable[Concatenate[str, P], R]) -> Callable[Concatenate[str, P], R]:
    """Keep what a pure function of a text returns, while the text is short. Its other arguments must be hashable,
    and what it returns must not be changed by anybody."""
    kept: Callable[Concatenate[str, P], R] = cast(Any, lru_cache(MOST)(read))

    def of(text: str, *args: P.args, **kwargs: P.kwargs) -> R:
        return kept(text, *args, **kwargs) if len(text) <= SHORT else read(text, *args, **kwargs)

    return cast(Callable[Concatenate[str, P], R], update_wrapper(of, read))
