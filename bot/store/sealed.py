"""Columns whose values are sealed with somebody's key (`bot.store.keyring`).

Reading needs no thought: a sealed value says which key it is of. Writing takes a `Secret`, which says whose it is; a
bare value is refused, so that nothing is stored in clear by mistake. The empty text is stored as it is.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal, InvalidOperation
from typing import Any

from sqlalchemy import Dialect, Text
from sqlalchemy.types import TypeDecorator

from bot.foundation.writable import writable
from bot.store.keyring import UNOPENED, Keyring, Unopened


@dataclass(frozen=True, slots=True)
class Secret:
    """A value to be sealed. key: the number of the key."""

    key: str
    value: Any = field(repr=False)  # a fault of the database quotes what was to be written


def secret(key: str, value: Any) -> Any:
    """Return what a sealed column takes for a value; None stays None."""
    return None if value is None else Secret(key, value)


_OF: dict[str, Callable[[str], Any]] = {"text": str, "decimal": Decimal, "int": int, "date": date.fromisoformat}


class Sealed(TypeDecorator[Any]):
    """place: "table.column".  of: "text", "decimal", "int" or "date"."""

    impl = Text
    cache_ok = True

    def __init__(self, place: str, of: str = "text") -> None:
        super().__init__()
        self.place = place
        self.of = of

    def process_bind_param(self, value: Any, dialect: Dialect) -> str | None:
        if value is None or value == "":
            return value  # type: ignore[no-any-return]
        if not isinstance(value, Secret):
            raise TypeError(f"{self.place} is stored sealed: say whose it is")
        text = value.value if type(value.value) is str else str(value.value)
        if not text:
            return text
        ring: Keyring = dialect.keyring  # type: ignore[attr-defined]
        return ring.seal(value.key, self.place, writable(text))

    def process_result_value(self, value: Any, dialect: Dialect) -> Any:
        if not value:
            return value
        return opened(dialect.keyring, self.place, value, self.of)  # type: ignore[attr-defined]


def opened(ring: Keyring, place: str, sealed: str, of: str = "text") -> Any:
    """Return a sealed value as what it was; `UNOPENED` if it cannot be had."""
    text = ring.open(place, sealed)
    if of == "text" or text is UNOPENED:
        return text
    try:
        return _OF[of](text)
    except (ValueError, InvalidOperation):
        return UNOPENED


def is_whole(*values: Any) -> bool:
    """Whether all of these values could be opened."""
    return not any(isinstance(value, Unopened) for value in values)
