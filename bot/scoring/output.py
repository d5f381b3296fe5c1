"""Output rows: their cells as text, and CSV, JSON and table formats.

value, unit     in the measure's own unit, a plain decimal: at most two places, ratios three.
band            the band of every applicable published reference in words, the main one first, separated by " | ".
reference       their keys in the same order; then, for those that do not apply, "none: " and the reason.
baseline        what the reading is compared with (for a rating the mean of its first four weeks, for a blood
                pressure the systolic mean of the first series, and the visits of a start together).
change, mdc95   now minus baseline, and what error alone would rarely exceed; both in `unit`.
verdict         one of VERDICTS.
reaches_mcid    yes or no: does the change reach the published important one? Empty if none is published.
flags           codes of `core.watching.flags`, separated by ";".
problem         why a row could not be used, or what to check in one that was.
as_given        the value in the unit it was given in, if that is another: 12 st 4 lb.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Iterable, Iterator, Sequence
from decimal import ROUND_HALF_UP, Decimal
from itertools import islice
from typing import NamedTuple, TextIO

from rich.console import Console
from rich.table import Table

from core.judging.change import BEYOND_ERROR, Change, Strength, Verdict
from core.measures.measure import Score, Scores
from core.quantity import FACTOR, Dimension, Unit, convert, convertible, in_two_units

COLUMNS = (
    "person",
    "taken_at",
    "measure",
    "value",
    "unit",
    "band",
    "reference",
    "baseline",
    "change",
    "mdc95",
    "verdict",
    "reaches_mcid",
    "flags",
    "problem",
    "as_given",
)
OutputCells = tuple[str, ...]  # the cells of a row, in the order of COLUMNS
Judgement = tuple[str, str, str, str, str]  # baseline, change, mdc95, verdict, reaches_mcid

NOT_JUDGED = "not judged"  # no error is published for this measure
IN_SERIES = "part of a series"  # the mean of the series is judged, in its own row
VERDICTS = (
    *(f"{kind} {strength}" for kind in sorted(BEYOND_ERROR) for strength in Strength),
    *(kind.replace("_", " ") for kind in Change if kind not in BEYOND_ERROR),
    NOT_JUDGED,
    IN_SERIES,
)
SEVERAL = " | "
NOTHING: Judgement = ("", "", "", NOT_JUDGED, "")
PART_OF_SERIES: Judgement = ("", "", "", IN_SERIES, "")
_STEPS = tuple(Decimal(1).scaleb(-places) for places in range(4))
_ROWS_OF_A_TABLE = 200


def places(unit: Unit) -> int:
    return 3 if unit is Unit.RATIO else 2


def figure(value: Decimal, places: int = 2) -> str:
    """A plain decimal, rounded half up, without trailing zeros.

    >>> figure(Decimal("82.1002")), figure(Decimal("-0.001")), figure(Decimal(120))
    ('82.1', '0', '120')
    """
    text = str(value.quantize(_STEPS[places], ROUND_HALF_UP))
    if places:
        text = text.rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def value_cell(value: Decimal, second: Decimal | None, unit: Unit) -> str:
    if second is not None and unit is Unit.MILLIMETRE_OF_MERCURY:
        return f"{figure(value)}/{figure(second)}"
    return figure(value, places(unit))


_SMALLER = {Unit.STONE: (Unit.POUND, 14), Unit.FOOT: (Unit.INCH, 12)}  # as people say them: 12 st 4 lb


def as_given(value: Decimal, unit: Unit, given: Unit | None) -> str:
    """A mass or length in the unit somebody gave it in, to two places; "" if that is the measure's own, or neither.

    >>> as_given(Decimal("78.01788764"), Unit.KILOGRAM, Unit.STONE)
    '12 st 4 lb'
    """
    if given is None or given is unit or not convertible(given, unit) or FACTOR[unit][0] is Dimension.TIME:
        return ""
    if given not in _SMALLER:
        return f"{figure(convert(value, unit, given))} {given}"
    small, parts = _SMALLER[given]
    large, rest = in_two_units(value, unit, small, parts, 2)
    return f"{large} {given} {figure(rest)} {small}"


def reference_cells(scores: Scores) -> tuple[str, str]:
    """The cells band and reference."""
    bands, keys, none = [], [], []
    for score in scores:
        if isinstance(score, Score):
            bands.append(band_words(score))
            keys.append(score.source.key)
        elif (reason := "none: " + score.reason.replace("_", " ")) not in none:
            none.append(reason)
    return SEVERAL.join(bands), SEVERAL.join(keys + none)


def band_words(score: Score) -> str:
    """A band as a reader of the table knows it: the words its source prints, or what the key stands for.

    >>> _in_words("severe_thinness"), _in_words("stage_1")
    ('severe thinness', 'stage 1')
    """
    figures = dict(score.figures)
    if score.band == "mean_of_others":
        return f"mean of adults {figure(figures['mean'])}"
    return _in_words(score.band)


def _in_words(band: str) -> str:
    return _AS_PRINTED.get(band, band.replace("_", " "))


# Keys whose words alone would not say what they mean.
_AS_PRINTED = {
    "obese_1": "obese class I",
    "obese_2": "obese class II",
    "obese_3": "obese class III",
    "obesity_1": "obesity class 1",
    "obesity_2": "obesity class 2",
    "obesity_3": "obesity class 3",
    "pre_obese": "pre-obese",
    "below_named_bands": "below 0.4, no band named",
    "non_elevated": "not elevated",
    "below_home_limit": "below the home limit",
    "at_or_above_mean": "at or above the mean",
    "below_mean": "below the mean",
    "below_lower_limit": "below the lower limit",
    "not_below_lower_limit": "not below the lower limit",
    "at_standard": "at the fitness standard",
    "below_standard": "below the fitness standard",
}


def judgement(verdict: Verdict | None, unit: Unit) -> Judgement:
    if verdict is None:
        return NOTHING
    kind, to = verdict.kind, places(unit)
    word = kind.replace("_", " ") if verdict.strength is None else f"{kind} {verdict.strength}"
    return (
        "" if verdict.baseline is None else figure(verdict.baseline, to),
        "" if verdict.difference is None else figure(verdict.difference, to),
        "" if verdict.mdc95 is None else figure(verdict.mdc95, to),
        word,
        "" if verdict.reaches_important is None else "yes" if verdict.reaches_important else "no",
    )


class OutputFormat(NamedTuple):
    """An output format. start, end: of the file; between: blocks of lines; empty: if there are no rows."""

    text: Callable[[Sequence[OutputCells]], str]
    start: str
    between: str
    end: str
    empty: str


def write_texts(form: OutputFormat, texts: Iterable[str], out: TextIO) -> None:
    """Write blocks of lines that are already text."""
    before = form.start
    for text in texts:
        out.write(before + text)
        before = form.between
    out.write(form.empty if before is form.start else form.end)


def texts_of(form: OutputFormat, lines: Iterable[OutputCells]) -> Iterator[str]:
    """Blocks of lines as text: formatting them together takes half the time."""
    found = iter(lines)
    while block := list(islice(found, _LINES_AT_ONCE)):
        yield form.text(block)


_LINES_AT_ONCE = 100


def _as_csv(block: Sequence[OutputCells]) -> str:
    """Comma, quotation marks only where needed, lines that end in \\n.

    The library's writer would leave a carriage return inside a cell unquoted, and takes twice as long. Most blocks have
    nothing to quote, which one search shows.
    """
    text = "\n".join([",".join(line) for line in block])
    parted = text.count(",") == _COMMAS * len(block) and text.count("\n") == len(block) - 1
    if not parted or '"' in text or "\r" in text:
        text = "\n".join([",".join(map(_quoted, line)) for line in block])
    return text + "\n"


_COMMAS = len(COLUMNS) - 1
_TO_QUOTE = re.compile(r'[",\r\n]')


def _quoted(cell: str) -> str:
    return '"' + cell.replace('"', '""') + '"' if _TO_QUOTE.search(cell) else cell


_NUMBERS = frozenset({"baseline", "change", "mdc95"})


def _as_json(block: Sequence[OutputCells]) -> str:
    """Objects of a list, one per line: empty cells are null, baseline, change and mdc95 are numbers, flags a list,
    reaches_mcid true or false.
    """
    return ",\n".join([_object(line) for line in block])


def _object(line: OutputCells) -> str:
    fields = (f"{json.dumps(name)}: {_json(name, cell)}" for name, cell in zip(COLUMNS, line, strict=True))
    return f"{{{', '.join(fields)}}}"


def _json(name: str, cell: str) -> str:
    if name == "flags":
        return json.dumps(cell.split(";") if cell else [])
    if not cell:
        return "null"
    if name == "reaches_mcid":
        return "true" if cell == "yes" else "false"
    return cell if name in _NUMBERS else json.dumps(cell, ensure_ascii=False)


def write_table(lines: Iterable[OutputCells], out: TextIO) -> None:
    """For people: tables of up to 200 rows each, so that a long file is not held in memory; empty columns are left
    out."""
    console = Console(file=out, width=None if out.isatty() else 200, highlight=False, markup=False)
    found = iter(lines)
    for first in found:
        rows = [first, *islice(found, _ROWS_OF_A_TABLE - 1)]
        used = [i for i in range(len(COLUMNS)) if any(row[i] for row in rows)]
        table = Table(*(COLUMNS[i].replace("_", " ") for i in used))
        for row in rows:
            table.add_row(*(row[i] for i in used))
        console.print(table)


_HEADER = ",".join(COLUMNS) + "\n"
FORMS = {
    "csv": OutputFormat(_as_csv, start=_HEADER, between="", end="", empty=_HEADER),
    "json": OutputFormat(_as_json, start="[\n", between=",\n", end="\n]\n", empty="[]\n"),
}
TABLE = "table"


def write(to: str, lines: Iterable[OutputCells], out: TextIO) -> None:
    """Write lines in format `to`: a key of FORMS, or TABLE."""
    if to == TABLE:
        write_table(lines, out)
    else:
        write_texts(FORMS[to], texts_of(FORMS[to], lines), out)
