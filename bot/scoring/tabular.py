"""Read a table from a text file as written by spreadsheets: any of four delimiters, byte order mark, CRLF.

A file is read twice (the first time to check its order), so standard input is copied to a temporary file first. Only
the current row is held in memory.
"""

from __future__ import annotations

import csv
import io
import shutil
import sys
from collections.abc import Callable, Iterator, Sequence
from contextlib import ExitStack, contextmanager
from dataclasses import dataclass
from operator import itemgetter
from pathlib import Path
from tempfile import TemporaryFile
from typing import BinaryIO, TextIO

from bot.foundation.errors import UsageError

STDIN = "-"
DELIMITERS = (",", ";", "\t", "|")
LONGEST_CELL = 1_000_000  # characters; an unclosed quote would otherwise swallow the rest of the file

Cells = tuple[str, ...]
Columns = tuple[tuple[str, ...], tuple[str, ...]]  # required and optional ones


@dataclass(frozen=True)
class InputTable:
    """A table with a header. columns: those we read, in our order; one missing from the file reads as empty. path:
    where it can be read again; empty if it could be read only once.
    """

    name: str
    columns: tuple[str, ...]
    header: tuple[str, ...]
    delimiter: str
    opened: Callable[[], TextIO]
    path: str = ""

    def rows(self) -> Iterator[tuple[Cells, bool]]:
        """Each row's cells, unchanged, and whether it has more of them than the header.

        Blank lines are skipped.

        Raises: UsageError for text that is not UTF-8, or an endless cell.
        """
        width = len(self.header)
        pick = itemgetter(*(self.header.index(c) if c in self.header else width for c in self.columns))
        for row in self._raw():
            if len(row) == width:
                row.append("")
                yield pick(row), False
            elif len(row) < width:
                row.extend("" for _ in range(width + 1 - len(row)))
                yield pick(row), False
            else:
                beyond = any(cell.strip() for cell in row[width:])
                row[width] = ""
                yield pick(row), beyond

    def _raw(self) -> Iterator[list[str]]:
        with self.opened() as text:
            found = filter(None, _reader(text, self.name, self.delimiter))
            next(found)  # the header
            yield from found


@contextmanager
def open_sheet(path: str, required: Sequence[str], optional: Sequence[str]) -> Iterator[InputTable]:
    """Find delimiter and columns of the file at `path`, or of standard input for "-".

    Raises: UsageError for a file that is missing, empty, not UTF-8, or lacks a required column.
    """
    name = "standard input" if path == STDIN else Path(path).name
    with ExitStack() as kept:
        again, opened = _opener(path, name, kept)
        yield _sheet(name, again, opened, required, optional)


def _sheet(
    name: str, path: str, opened: Callable[[], TextIO], required: Sequence[str], optional: Sequence[str]
) -> InputTable:
    with opened() as text:
        try:
            first = next((line for line in text if line.strip()), "")
        except UnicodeDecodeError as error:
            raise _not_utf8(name, error) from error
    wanted = (*required, *optional)
    delimiter = max(DELIMITERS, key=lambda d: len(set(_titles(first, d)) & set(wanted)))
    header = _titles(first, delimiter)
    missing = [column for column in required if column not in header]
    if missing:
        raise UsageError(
            f"{name} has no column {' and no column '.join(missing)}: the first line must name the columns"
            f" {','.join(wanted)}."
        )
    return InputTable(name, wanted, header, delimiter, opened, path)


def _titles(line: str, delimiter: str) -> tuple[str, ...]:
    cells = next(csv.reader([line], delimiter=delimiter), [])
    return tuple(cell.strip().casefold().replace(" ", "_") for cell in cells)


def _opener(path: str, name: str, kept: ExitStack) -> tuple[str, Callable[[], TextIO]]:
    if path == STDIN:
        return "", _opener_of_copy(sys.stdin.buffer, kept)
    try:
        with open(path, "rb") as file:
            if not file.seekable():
                return "", _opener_of_copy(file, kept)
    except OSError as error:
        raise UsageError(f"{name} cannot be read: {error.strerror}.") from error
    return path, lambda: open(path, encoding="utf-8-sig", newline="")


def _opener_of_copy(file: BinaryIO, kept: ExitStack) -> Callable[[], TextIO]:
    """For input that can be read only once; the copy is deleted when `kept` is closed."""
    copy = kept.enter_context(TemporaryFile())  # noqa: SIM115
    shutil.copyfileobj(file, copy)
    copy.flush()

    def opened() -> TextIO:
        return io.TextIOWrapper(io.BufferedReader(_Again(copy)), encoding="utf-8-sig", newline="")

    return opened


class _Again(io.RawIOBase):
    """Reads a file from its start with its own position; closing it leaves the file open."""

    def __init__(self, file: BinaryIO) -> None:
        self._file = file
        self._place = 0

    def readable(self) -> bool:
        return True

    def readinto(self, buffer: memoryview) -> int:  # type: ignore[override]
        self._file.seek(self._place)
        data = self._file.read(len(buffer))
        buffer[: len(data)] = data
        self._place += len(data)
        return len(data)


def _reader(text: TextIO, name: str, delimiter: str) -> Iterator[list[str]]:
    csv.field_size_limit(LONGEST_CELL)
    rows = csv.reader(text, delimiter=delimiter)
    try:
        yield from rows
    except UnicodeDecodeError as error:
        raise _not_utf8(name, error) from error
    except csv.Error as error:
        raise UsageError(f"{name}, line {rows.line_num}: {error}. Is a quotation mark left open?") from error


def _not_utf8(name: str, error: UnicodeDecodeError) -> UsageError:
    return UsageError(f"{name} is not UTF-8 text ({error.reason}): save it again as CSV with the encoding UTF-8.")
