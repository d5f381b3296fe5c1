"""A cohort's closing report as a picture for a phone and as a page to print.

Drawn by the rules of `charts`: large type, Okabe and Ito's colours, nothing conveyed by colour alone: a check-in kept
is a filled bar inside the outline of those asked, with both numbers above it; a change is a mark with its interval
beside a dashed line that says "no change".
"""

from __future__ import annotations

import html
import io
import re
import textwrap
from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from bot.foundation.reader import Reader
from bot.rendering.phrases import cohort_figures, names
from bot.rendering.voice import Voice, shortened, voice
from core.quantity import Unit
from core.watching.cohort import Closing, CohortWeek, Paired

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure, SubFigure

WIDTH, DPI = 7.2, 150  # inches: 1080 pixels
A4 = (8.27, 11.69)
HEAD, BARS, CHANGE = 1.15, 3.6, 1.35  # inches: of the title, of the bars, of one change
SHOWN, SHOWN_ON_PAGE = 4, 6  # changes drawn; the page lists all of them as text
INK, SOFT, KEPT, LINE = "#222222", "#6b6b6b", "#56B4E9", "#0072B2"
TITLE, BODY, SMALL = 19, 14, 12.5
WIDEST = 52  # characters of a title that fit on one line on a phone
_TAG = re.compile(r"</?\w+>")


def picture(report: Closing, reader: Reader) -> bytes:
    """Draw a report as a PNG, 1080 pixels wide."""
    v = voice(reader)
    changes = [c for c in report.changes if isinstance(c, Paired)][:SHOWN]
    figure = _figure((WIDTH, HEAD + BARS * bool(report.attendance) + CHANGE * len(changes)))
    _title(figure, report, v)
    _body(figure, report.attendance, changes, v)
    return _saved(figure, "png")


def pdf(report: Closing, reader: Reader) -> bytes:
    """Draw a report on an A4 page, as text and as charts."""
    v = voice(reader)
    changes = [c for c in report.changes if isinstance(c, Paired)][:SHOWN_ON_PAGE]
    figure = _figure(A4)
    lines = [*cohort_figures.took_part(v, report), *(cohort_figures.summed(v, s) for s in report.sums)]
    lines += [cohort_figures.changed(v, c) for c in report.changes]
    text = "\n".join(_wrapped(_plain(line)) for line in lines)
    parts = figure.subfigures(2, 1, squeeze=False, height_ratios=(1 + len(text.splitlines()) * 0.26, 8))
    words, drawn = parts[0][0], parts[1][0]
    _title(figure, report, v)
    words.text(0.06, 0.96, text, fontsize=9.5, color=INK, va="top", ha="left", linespacing=1.6)
    _body(drawn, report.attendance, changes, v)
    return _saved(figure, "pdf")


def _plain(text: str) -> str:
    return html.unescape(_TAG.sub("", text))


def _wrapped(text: str) -> str:
    """Break a long line at a word."""
    return "\n   ".join(textwrap.wrap(text, 96))


def _figure(size: tuple[float, float]) -> Figure:
    from matplotlib.backends.backend_agg import FigureCanvasAgg
    from matplotlib.figure import Figure
    from matplotlib.layout_engine import ConstrainedLayoutEngine

    figure = Figure(figsize=size, dpi=DPI, facecolor="white", layout=ConstrainedLayoutEngine(w_pad=0.16, h_pad=0.12))
    FigureCanvasAgg(figure)
    return figure


def _saved(figure: Figure, kind: str) -> bytes:
    buffer = io.BytesIO()
    metadata = {"Software": None} if kind == "png" else {"Creator": None, "Producer": None, "CreationDate": None}
    figure.savefig(buffer, format=kind, metadata=metadata)
    return buffer.getvalue()


def _title(figure: Figure, report: Closing, v: Voice) -> None:
    days = v.plain("{first} to {last}", first=v.numbers.full_date(report.starts), last=v.numbers.full_date(report.last))
    figure.suptitle(f"{shortened(report.name, 34)}\n{days}", fontsize=TITLE, color=INK, linespacing=1.35)


def _body(figure: Figure | SubFigure, weeks: Sequence[CohortWeek], changes: Sequence[Paired], v: Voice) -> None:
    heights = [*([BARS] if weeks else []), *(CHANGE for _ in changes)]
    if not heights:
        return
    grid = figure.subplots(len(heights), 1, squeeze=False, height_ratios=heights)
    cells = [row[0] for row in grid]
    if weeks:
        _bars(cells.pop(0), weeks, v)
    for cell, change in zip(cells, changes, strict=True):
        _change(cell, change, v)


def _plainly(axes: Axes, *sides: str) -> None:
    for side in ("top", "right", "left", "bottom"):
        axes.spines[side].set_visible(side in sides)
        axes.spines[side].set_color(SOFT)
    axes.tick_params(labelsize=SMALL, colors=INK, length=0)


def _bars(axes: Axes, weeks: Sequence[CohortWeek], v: Voice) -> None:
    """Who was asked, as an outline; who checked in, filled."""
    _plainly(axes, "bottom")
    most = max((w.asked for w in weeks if w.asked is not None), default=1) or 1
    for w in weeks:
        if w.asked is None or w.kept is None:  # withheld: a gap
            continue
        axes.bar(w.number, w.asked, width=0.66, facecolor="none", edgecolor=SOFT, linewidth=1.4, linestyle=(0, (4, 2)))
        axes.bar(w.number, w.kept, width=0.66, facecolor=KEPT, edgecolor=INK, linewidth=1.4)
        kept, asked = v.numbers.plain(w.kept), v.numbers.plain(w.asked)
        over: dict[str, Any] = {"textcoords": "offset points", "ha": "center", "fontsize": SMALL, "color": INK}
        if len(weeks) <= 8:
            axes.annotate(f"{kept}/{asked}", (w.number, w.asked), (0, 5), **over)
        else:  # side by side they would overlap: one above the outline, the other in the bar
            axes.annotate(asked, (w.number, w.asked), (0, 5), **over)
            axes.annotate(kept, (w.number, w.kept), (0, -16 if w.kept > most * 0.1 else 3), **over)
    ticks = [w.number for w in weeks]
    start = v.plain_in("picture", "Start")
    axes.set_xticks(ticks, [v.numbers.plain(n) if n else start for n in ticks])
    axes.set_yticks([])
    axes.set_ylim(0, most * 1.2)
    axes.set_xlim(min(ticks) - 0.6, max(ticks) + 0.6)
    axes.set_title(v.plain("Check-ins kept of those asked, week by week"), fontsize=BODY, color=INK, loc="center")


def _change(axes: Axes, change: Paired, v: Voice) -> None:
    """One mean change with its interval; no change is a dashed line."""
    _plainly(axes)
    low, mean, high = float(change.low), float(change.mean), float(change.high)
    reach = max(abs(low), abs(high), 0.05) * 1.25
    axes.set_xlim(-reach, reach)
    axes.set_ylim(-1, 1)
    axes.set_yticks([])
    axes.axvline(0, color=SOFT, linewidth=1.6, linestyle=(0, (5, 3)), zorder=1)
    style: dict[str, Any] = {"color": LINE, "linewidth": 3.2, "solid_capstyle": "butt", "zorder": 3}
    axes.plot([low, high], [0, 0], **style)
    axes.plot(
        [low, high], [0, 0], linestyle="none", marker="|", markersize=13, markeredgewidth=3.2, color=LINE, zorder=3
    )
    axes.plot([mean], [0], marker="D", markersize=9, color="white", markeredgecolor=LINE, markeredgewidth=2.6, zorder=4)
    axes.set_xticks([0], [v.plain_in("picture", "No change")])
    measure = v.plain(names.named(names.MEASURES, change.measure))
    said = v.plain(
        "{measure}: {mean} (95 %: {low} to {high})",
        measure=measure,
        mean=cohort_figures.figure(v, change.mean, change.unit, sign=True),
        low=_bare(v, change.low, change.unit),
        high=_bare(v, change.high, change.unit),
    )
    people = v.plain_n("{n} person", "{n} people", change.n)
    title = f"{said}{v.comma}{people}"
    axes.set_title("\n".join(textwrap.wrap(title, WIDEST)), fontsize=BODY if len(title) <= WIDEST else SMALL, color=INK)


def _bare(v: Voice, value: Any, unit: Unit) -> str:
    return cohort_figures.figure(v, value, unit, sign=True)
