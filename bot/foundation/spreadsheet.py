"""CSV safe for spreadsheets: cells that look like a formula are escaped, and unescaped on reading."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Sequence
from decimal import Decimal

from core.quantity import half_up

FORMULAS = ("=", "+", "-", "@", "\t", "\r")
LONGEST = 10  # most decimals, read back exactly: enough for hundredths of a pound

CsvRow = Sequence[str]


def table(columns: Sequence[str], rows: Iterable[CsvRow]) -> str:
    """Write a table as CSV."""
    text = io.StringIO()
    writer = csv.writer(text, lineterminator="\r\n")
    writer.writerow(columns)
    writer.writerows([escaped(cell) for cell in row] for row in rows)
    return text.getvalue()


def figure(value: Decimal) -> str:
    """A plain decimal without trailing zeros."""
    text = format(half_up(value, LONGEST), "f").rstrip("0").rstrip(".")
    return text or "0"


def escaped(text: str) -> str:
    """Keep a spreadsheet from evaluating what somebody typed."""
    return f"'{text}" if text.startswith(FORMULAS) and not _is_number(text) else text


def unescaped(cell: str) -> str:
    """Undo `escaped`."""
    return cell[1:] if cell.startswith("'") and cell[1:].startswith(FORMULAS) else cell


def _is_number(text: str) -> bool:
    return text[1:].replace(".", "", 1).isdecimal()
