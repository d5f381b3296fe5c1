"""Dates as people in Europe and elsewhere write them, where a whole file agrees on one order.

    1.2.2026   01/02/2026   1-2-26   1. 2. 2026 7:30        day and month in the order of the file
    2026-02-01   2026/2/1   2026.02.01                      always year, month, day

Which order a file has is not guessed: one date that fits only one of them decides, two that contradict each other are
refused, and if all of them fit both, somebody has to say. A year of two digits is one of this century.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import date
from enum import StrEnum

from bot.foundation.errors import UsageError

_TIME = r"(?:(?:\s+|,\s*|T)(\d{1,2}):(\d\d)(?::(\d\d))?)?"
_YEAR_LAST = re.compile(rf"(\d{{1,2}})([./-])\s?(\d{{1,2}})\2\s?(\d{{4}}|\d\d){_TIME}", re.ASCII)
_YEAR_FIRST = re.compile(rf"(\d{{4}})([./-])(\d{{1,2}})\2(\d{{1,2}}){_TIME}", re.ASCII)
_CENTURY = 2000


class Order(StrEnum):
    DAY_FIRST = "day-first"
    MONTH_FIRST = "month-first"


def iso(text: str, order: Order | None) -> str | None:
    """A date, with its time if it has one, as ISO 8601 writes it; None if it is none, or its order is not known.

    >>> iso("1.2.2026 7:30", Order.DAY_FIRST), iso("1/2/26", Order.MONTH_FIRST), iso("2026/2/1", None)
    ('2026-02-01T07:30:00', '2026-01-02', '2026-02-01')
    """
    text = text.strip()
    if (found := _YEAR_FIRST.fullmatch(text)) is not None:
        year, _, month, day, *time = found.groups()
    elif order is not None and (found := _YEAR_LAST.fullmatch(text)) is not None:
        first, _, second, year, *time = found.groups()
        day, month = (first, second) if order is Order.DAY_FIRST else (second, first)
    else:
        return None
    whole = int(year) if len(year) == 4 else _CENTURY + int(year)
    try:
        said = date(whole, int(month), int(day)).isoformat()
    except ValueError:
        return None
    hour, minute, seconds = time
    return said if hour is None else f"{said}T{hour:>02}:{minute}:{seconds or '00'}"


@dataclass
class DateOrders:
    """What the dates of one file say about their order. `look` at each cell, then `settle`."""

    _only: dict[Order, tuple[int, str]] = field(default_factory=dict)  # the first row that fits this order only
    _either: tuple[int, str] | None = None  # the first row that fits both, and is another day in each

    def look(self, row: int, text: str) -> None:
        """Note one cell. row: its number in the file."""
        if _YEAR_LAST.fullmatch(text.strip()) is None:
            return
        as_read = {order: iso(text, order) for order in Order}
        fits = [order for order, day in as_read.items() if day is not None]
        if len(fits) == 1:
            self._only.setdefault(fits[0], (row, text.strip()))
        elif fits and len(set(as_read.values())) > 1 and self._either is None:
            self._either = row, text.strip()

    @property
    def any(self) -> bool:
        """Whether any of them depends on the order."""
        return bool(self._only) or self._either is not None

    def settle(self, name: str, asked: Order | None = None) -> tuple[Order, str]:
        """The order of the file, and a sentence that says so; "" if no date depends on it.

        asked: what somebody says it is.

        Raises: UsageError if the dates contradict each other or `asked`, or fit both orders and nobody said.
        """
        if len(self._only) > 1:
            (row, text), (other, another) = (self._only[order] for order in Order)
            raise UsageError(
                f"{name} has dates in two orders: row {row} ({text}) can only have the day first,"
                f" row {other} ({another}) only the month. Write all of them like 2026-01-31."
            )
        if self._only:
            ((order, (row, text)),) = self._only.items()
            if asked not in (None, order):
                raise UsageError(f"{name} is not {asked}: row {row} ({text}) can only be {order}.")
            return order, f"Dates are read {_SAID[order]}, as row {row} shows ({text})."
        if asked is not None:
            return asked, f"Dates are read {_SAID[asked]}, as asked." if self._either else ""
        if self._either is None:
            return Order.DAY_FIRST, ""  # none of them, or those that are the same day either way
        row, text = self._either
        raise UsageError(
            f"The dates of {name} fit two orders, like {text} in row {row}. Say which: --dates {Order.DAY_FIRST} or"
            f" --dates {Order.MONTH_FIRST}."
        )


_SAID = {Order.DAY_FIRST: "day first", Order.MONTH_FIRST: "month first"}


def order_of(rows: Iterable[tuple[int, str]], name: str, asked: Order | None = None) -> tuple[Order, str]:
    """The order of the dates in a file's rows (number, cell), as `DateOrders.settle` has it."""
    orders = DateOrders()
    for row, text in rows:
        orders.look(row, text)
    return orders.settle(name, asked)
