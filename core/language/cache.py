"""A cache for the meaning of short texts: people answer "7" and "82.4 kg" again and again, and several readers parse
each message. Longer texts, in which people write about themselves, are parsed anew and never cached."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache, update_wrapper
from typing import Any, Concatenate, ParamSpec, TypeVar, cast

P = ParamSpec("P")
R = TypeVar("R")

SHORT = 24  # characters
MOST = 4096  # texts cached per function


def memoized(read: Callable[Concatenate[str, P], R]) -> Callable[Concatenate[str, P], R]:
    """Cache the results of a pure function for short texts. Its other arguments must be hashable, and nobody may change
    its results."""
    kept: Callable[Concatenate[str, P], R] = cast(Any, lru_cache(MOST)(read))

    def of(text: str, *args: P.args, **kwargs: P.kwargs) -> R:
        return kept(text, *args, **kwargs) if len(text) <= SHORT else read(text, *args, **kwargs)

    return cast(Callable[Concatenate[str, P], R], update_wrapper(of, read))
