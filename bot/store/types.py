"""Column types: instants that are always UTC, text that every database accepts."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any

from sqlalchemy import BigInteger, DateTime, Dialect, Integer, Text
from sqlalchemy.types import TypeDecorator

from bot.foundation.writable import writable

Key = BigInteger().with_variant(Integer, "sqlite")  # SQLite assigns row ids only in INTEGER columns


class Instant(TypeDecorator[datetime]):
    """An instant. Rejects naive datetimes; always returned aware and in UTC."""

    impl = DateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        if value is None:
            return None
        if value.tzinfo is None:
            raise ValueError("a naive datetime is not an instant")
        value = value.astimezone(UTC)
        return value.replace(tzinfo=None) if dialect.name == "sqlite" else value

    def bind_processor(self, dialect: Dialect) -> Any:
        """A turn stores a dozen instants: for SQLite one step writes what SQLAlchemy's four would."""
        return _written if dialect.name == "sqlite" else super().bind_processor(dialect)

    def process_result_value(self, value: Any, dialect: Dialect) -> datetime | None:
        if value is None:
            return None
        at: datetime = value
        return at.replace(tzinfo=UTC) if at.tzinfo is None else at.astimezone(UTC)


def _written(value: datetime | None) -> str | None:
    if value is None:
        return None
    if value.tzinfo is None:
        raise ValueError("a naive datetime is not an instant")
    return value.astimezone(UTC).isoformat(" ", "microseconds")[:_UTC_OFFSET]


_UTC_OFFSET = -len("+00:00")


class Typed(TypeDecorator[str]):
    """Text typed by a person. Drops what a database or UTF-8 cannot store: NUL characters and lone surrogates."""

    impl = Text
    cache_ok = True

    def process_bind_param(self, value: str | None, dialect: Dialect) -> str | None:
        return None if value is None else writable(value)

    def process_result_value(self, value: Any, dialect: Dialect) -> str | None:
        return None if value is None else str(value)
