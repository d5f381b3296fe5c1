"""The caseload sheet: one small trend for each flagged client and measure, as a picture or a PDF to print.

Each is drawn by `charts`, smaller: a client's picture and a panel of theirs are the same drawing. Only ratings run
along the time here, because there is no room for a row for each.
"""

from __future__ import annotations

import io
from collections.abc import Sequence
from datetime import date
from typing import TYPE_CHECKING, Any, Literal

from bot.foundation.reader import CAPTION_LIMIT, Reader
from bot.rendering import charts
from bot.rendering.charts import INK, LINE, SOFT, Scale, in_reading_order, on_one_line
from bot.rendering.phrases import names
from bot.rendering.phrases.coach import figure, in_short
from bot.rendering.voice import Html, Voice, shortened, voice
from core.dialogue.staff.messages import Sheet
from core.judging.chart_data import PressureWeekChart, RatingLine, TrendChart
from core.quantity import Amount, Unit
from core.watching.digest import Panel

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

DPI = 150
WIDTH = 7.2  # inches: 1080 pixels
COLUMNS = 2
ROW, HEAD = 3.2, 0.75  # inches: of a row of panels, and of the title
A4 = (8.27, 11.69)
PER_PAGE = 8
COLUMNS_OF_MARKS = 3
TITLE, NAME, SMALL = 17, 15, 12.5
NAME_LIMIT, WHAT_LIMIT = 22, 34
SCALE = Scale(type=SMALL, mark=6.5, square=9, line=2.2, steps=3, trend=False)


def picture(sheet: Sheet, reader: Reader) -> bytes:
    """Draw a sheet as one PNG, 1080 pixels wide."""
    v = voice(reader)
    columns = min(COLUMNS, len(sheet.panels))
    rows = -(-len(sheet.panels) // columns)
    figure = _figure((WIDTH, HEAD + ROW * rows * (1 if columns > 1 else 1.35)))
    _fill(figure, sheet.panels, rows, columns, _title(sheet, v), v)
    return _saved(figure, "png")


def pdf(sheet: Sheet, reader: Reader) -> bytes:
    """Draw a sheet on A4 pages of eight panels, with page numbers."""
    from matplotlib.backends.backend_pdf import PdfPages

    v = voice(reader)
    pages = [sheet.panels[n : n + PER_PAGE] for n in range(0, len(sheet.panels), PER_PAGE)]
    buffer = io.BytesIO()
    with PdfPages(buffer, metadata={"Creator": None, "Producer": None, "CreationDate": None}) as book:
        for number, panels in enumerate(pages, 1):
            figure = _figure(A4)
            title = _title(sheet, v)
            if len(pages) > 1:
                page = v.numbers.isolate(f"{v.numbers.plain(number)}/{v.numbers.plain(len(pages))}")
                title = f"{title}   {page}"
            _fill(figure, panels, PER_PAGE // COLUMNS, COLUMNS, title, v)
            book.savefig(figure)
    return buffer.getvalue()


def caption(sheet: Sheet, v: Voice) -> Html:
    """The same as text, for those who cannot see it: who, which measure, first and last value."""
    head = v.say("Whoever is flagged, with what was measured: {day}", day=v.day(sheet.day))
    lines: list[str] = [head]
    for panel in sheet.panels:
        line = _described(panel, v)
        if sum(len(one) + 1 for one in (*lines, line)) > CAPTION_LIMIT - 80:
            lines.append(Html("…"))
            break
        lines.append(line)
    if sheet.left_out:
        lines.append(v.say_n("{n} more is in the PDF.", "{n} more are in the PDF.", sheet.left_out))
    return v.lines(*lines)


def _described(panel: Panel, v: Voice) -> Html:
    measure = names.measure(v, _measure(panel))
    first, last = _ends(panel.picture, v)
    drawn = v.say("{first} → {last}", first=first, last=last)
    return v.say(
        "• {name}, {measure}: {what}",
        name=v.name(panel.name),
        measure=measure,
        what=v.say("{what} ({picture})", what=_why(panel, v), picture=drawn),
    )


def _why(panel: Panel, v: Voice) -> Html:
    """Why it is drawn, with the figure that the digest and the card give."""
    number = figure(v, panel.flag, panel.units) if panel.flag is not None else ""
    return v.listed([in_short(v, panel.code), *([number] if number else [])])


def _measure(panel: Panel) -> str:
    return "blood_pressure" if isinstance(panel.picture, PressureWeekChart) else panel.picture.measure


def _unit(panel: Panel) -> Unit:
    match panel.picture:
        case PressureWeekChart():
            return Unit.MILLIMETRE_OF_MERCURY
        case TrendChart():
            return panel.picture.unit
        case _:
            return Unit.POINT


def _ends(spec: TrendChart | RatingLine | PressureWeekChart, v: Voice) -> tuple[str, str]:
    match spec:
        case PressureWeekChart():
            halves = [h for day in spec.days for h in (day.morning, day.evening) if h is not None]
            said = [v.pressure(h.systolic, h.diastolic) for h in halves]
            return said[0], said[-1]
        case TrendChart():
            return (
                v.amount(Amount(spec.points[0].value, spec.unit), measure=spec.measure),
                v.amount(Amount(spec.points[-1].value, spec.unit), measure=spec.measure),
            )
        case _:
            return v.number(spec.points[0].value, 1), v.number(spec.points[-1].value, 1)


# --- drawing ----------------------------------------------------------------------------------------------------


def _figure(size: tuple[float, float]) -> Figure:
    from matplotlib.backends.backend_agg import FigureCanvasAgg
    from matplotlib.figure import Figure
    from matplotlib.layout_engine import ConstrainedLayoutEngine

    figure = Figure(figsize=size, dpi=DPI, facecolor="white", layout=ConstrainedLayoutEngine(w_pad=0.16, h_pad=0.14))
    FigureCanvasAgg(figure)
    return figure


def _saved(figure: Figure, kind: str) -> bytes:
    buffer = io.BytesIO()
    figure.savefig(buffer, format=kind, metadata={"Software": None})
    return buffer.getvalue()


def _title(sheet: Sheet, v: Voice) -> str:
    return v.plain("Caseload sheet: {day}", day=v.numbers.full_date(sheet.day))


def _fill(figure: Figure, panels: Sequence[Panel], rows: int, columns: int, title: str, v: Voice) -> None:
    figure.suptitle(title, fontsize=TITLE, color=INK)
    grid = figure.subplots(rows, columns, squeeze=False)
    cells = [cell for row in grid for cell in (row[::-1] if v.reader.right_to_left else row)]
    said: dict[str, Any] = {}  # marks of the legend, by their words
    for cell, panel in zip(cells, panels, strict=False):
        for mark in _panel(cell, panel, v):
            said.setdefault(mark.get_label(), mark)
    marks = list(said.values())
    for cell in cells[len(panels) :]:
        cell.set_axis_off()
    if marks:
        figure.legend(
            handles=in_reading_order(marks, COLUMNS_OF_MARKS, v),
            loc="outside lower center",
            ncols=COLUMNS_OF_MARKS,
            markerfirst=not v.reader.right_to_left,
            frameon=False,
            fontsize=SMALL,
        )


def _panel(axes: Axes, panel: Panel, v: Voice) -> list[Any]:
    """Draw one; returns the marks of its legend."""
    name = v.numbers.isolate(shortened(panel.name, NAME_LIMIT))
    measure = v.plain(names.named(names.MEASURES, _measure(panel)))
    sign = v.unit_name(_unit(panel))
    what = shortened(_plain(_why(panel, v)), WHAT_LIMIT)
    side: Literal["left", "right"] = "right" if v.reader.right_to_left else "left"
    axes.set_title(name, fontsize=NAME, color=INK, loc=side, fontweight="bold", pad=44)
    lines = f"{shortened(measure, 26)} ({sign})\n{what}" if sign else f"{shortened(measure, WHAT_LIMIT)}\n{what}"
    at = 1 if side == "right" else 0
    axes.text(at, 1.05, lines, ha=side, transform=axes.transAxes, fontsize=SMALL, color=SOFT, linespacing=1.25)
    charts.bare(axes, SCALE)
    match panel.picture:
        case TrendChart():
            marks = charts.trend(axes, panel.picture, v, SCALE)
            _two_dates(axes, [p.day for p in panel.picture.points], v)
            return marks
        case RatingLine():
            _ratings(axes, panel.picture, v)
            return []
        case PressureWeekChart():
            return charts.pressure_week(axes, panel.picture, v, SCALE)


def _plain(said: Html) -> str:
    import html

    return html.unescape(str(said))


def _two_dates(axes: Axes, days: Sequence[date], v: Voice) -> None:
    """The first and the last date: more would overlap."""
    span = max((days[-1] - days[0]).days, 7)
    shown = list(dict.fromkeys((days[0], days[-1])))
    axes.set_xticks([d.toordinal() for d in shown], [v.numbers.short_date(d) for d in shown])
    on_one_line(axes, SMALL, v)
    axes.set_xlim(days[0].toordinal() - span * 0.12, days[-1].toordinal() + span * 0.34)


def _ratings(axes: Axes, spec: RatingLine, v: Voice) -> None:
    """Along the time: there is no room for a row for each."""
    xs = [p.day.toordinal() for p in spec.points]
    ys = [float(p.value) for p in spec.points]
    axes.set_ylim(-0.6, 10.6)
    axes.set_yticks([0, 5, 10], [v.numbers.plain(n) for n in (0, 5, 10)])
    axes.plot(xs, ys, color=LINE, linewidth=SCALE.line, marker="o", markersize=SCALE.mark, zorder=4, clip_on=False)
    charts.said(axes, v.numbers.plain(spec.points[-1].value, 1), (xs[-1], ys[-1]), SCALE)
    _two_dates(axes, [p.day for p in spec.points], v)
