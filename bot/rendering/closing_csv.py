"""A cohort's closing report as CSV: one line per figure, in plain numbers.

    what,key,asked,kept,people,value,low,high,weeks

| what                  | key                    | figures                                                             |
|-----------------------|------------------------|---------------------------------------------------------------------|
| took_part             |                        | people: all members; value: those who stayed to the end             |
| check_ins             |                        | asked, kept over the weeks shown; value: kept in percent            |
| attendance            | number of the check-in | asked, kept; people: who reported; value: their total               |
| total                 | the pooled measure     | people; value: their total; weeks: of how many                      |
| before, after, change | a measure              | people with both; value: mean; low, high: 95 % interval (of change) |

An empty cell is a figure that is withheld, so that nobody can be made out (`core.watching.disclosure`).
"""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from bot.foundation.spreadsheet import figure, table
from core.watching.cohort import Closing, Paired

COLUMNS = ("what", "key", "asked", "kept", "people", "value", "low", "high", "weeks")


def closing_csv(report: Closing) -> bytes:
    """Write a report as CSV, UTF-8 with a byte order mark for spreadsheets."""
    return table(COLUMNS, _rows(report)).encode("utf-8-sig")


def _rows(r: Closing) -> Iterator[tuple[str, ...]]:
    yield ("took_part", "", "", "", str(r.members), str(r.stayed), "", "", "")
    percent = "" if r.completion is None else str(r.completion)
    yield ("check_ins", "", _shown(r.asked), _shown(r.kept), "", percent, "", "", "")
    for w in r.attendance:
        people, total = _shown(w.people), _shown(w.total)
        yield ("attendance", str(w.number), _shown(w.asked), _shown(w.kept), people, total, "", "", "")
    for s in r.sums:
        yield ("total", s.counts.value, "", "", _shown(s.people), _shown(s.total), "", "", str(s.weeks or ""))
    for c in r.changes:
        if isinstance(c, Paired):
            n = str(c.n)
            yield ("before", c.measure, "", "", n, _figure(c.before), "", "", "")
            yield ("after", c.measure, "", "", n, _figure(c.after), "", "", "")
            yield ("change", c.measure, "", "", n, _figure(c.mean), _figure(c.low), _figure(c.high), "")
        else:
            yield ("change", c.measure, "", "", "", "", "", "", "")


def _shown(figure: int | None) -> str:
    return "" if figure is None else str(figure)


def _figure(value: Decimal) -> str:
    """Rounded to hundredths, whatever the measure's unit."""
    return figure(value.quantize(Decimal("0.01")))
