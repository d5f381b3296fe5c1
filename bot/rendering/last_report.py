"""The last report of a programme as a picture for a phone, and as a PDF: one page for the client, more for the coach.

Drawn by the rules of `charts`: nothing conveyed by colour alone, what can be chance is hatched, the start is a square.
What a client reads has no figure without its words. What a coach reads adds verdicts with their errors, bands and
sources, and can be sent on to whoever referred the person.
"""

from __future__ import annotations

import html
import io
import re
import textwrap
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from bot.foundation.reader import CAPTION_LIMIT, Reader, length
from bot.rendering.charts import heights
from bot.rendering.direction import NO_BREAK, directed
from bot.rendering.phrases import bands, programme
from bot.rendering.phrases.looking_back import activity_line
from bot.rendering.phrases.sources import cited
from bot.rendering.phrases.staff_card import verdict
from bot.rendering.voice import Html, Voice, shortened, voice
from core.dialogue.client.report import Report
from core.dialogue.client.results import Result
from core.judging.chart_data import PressureWeekChart, RatingLine, TrendChart

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

DPI = 150
A4 = (8.27, 11.69)
INK, SOFT, LINE, CHANCE = "#222222", "#5f5f5f", "#0072B2", "#9a9a9a"
MOST_NAME = 34
_TAG = re.compile(r"</?\w+>")
_BEHIND_A_FIGURE = re.compile(r"(?<=\d) (?=\w)")


@dataclass(frozen=True, slots=True)
class Layout:
    """Inches, and points of type. line: between lines of small type. letters: on a line across the page."""

    width: float
    margin: float
    head: float
    row: float
    spark: float
    line: float
    title: float
    name: float
    value: float
    small: float
    letters: int


PHONE = Layout(7.2, 0.35, 1.5, 1.45, 2.3, 0.27, 21, 16, 17, 13.5, 62)
PAPER = Layout(A4[0], 0.7, 1.35, 0.86, 1.9, 0.21, 19, 12.5, 13, 10.5, 88)
FOR_COACH = Layout(A4[0], 0.7, 1.35, 1.3, 1.9, 0.21, 19, 12.5, 13, 10, 92)
LETTER = 0.58  # width of a letter, as a share of its size


@dataclass(frozen=True, slots=True)
class Row:
    """One measure. notes: lines of small type."""

    name: str
    way: str
    notes: tuple[str, ...]
    picture: TrendChart | RatingLine | PressureWeekChart | None


def picture(report: Report, reader: Reader) -> bytes:
    """Draw a report as a PNG, 1080 pixels wide."""
    v = voice(reader)
    rows, below = _rows(report, v), _below(report, v, PHONE)
    high = PHONE.head + PHONE.row * len(rows) + _below_height(below, PHONE) + 0.3
    figure = _figure((PHONE.width, high))
    _page(figure, PHONE, _title(report, v), rows, below, v)
    return _saved(figure, "png")


def pdf(report: Report, reader: Reader) -> bytes:
    """Draw a report on one A4 page."""
    v = voice(reader)
    below = _below(report, v, PAPER)
    room = A4[1] - PAPER.head - _below_height(below, PAPER) - 0.4
    rows = _rows(report, v)
    most = max(int(room / PAPER.row), 1)
    kept = rows[:most]
    if len(rows) > most:
        rest = v.listed([f"{row.name}: {row.way}" for row in rows[most:]])
        below = [*_wrapped(_plain(rest), PAPER), "", *below]
    return _book([(PAPER, kept, below)], _title(report, v), v)


def pdf_for_coach(report: Report, reader: Reader) -> bytes:
    """The same with verdicts, bands and sources, on as many pages as it takes."""
    v = voice(reader)
    rows = _rows(report, v, whole=True)
    most = int((A4[1] - FOR_COACH.head - 0.6) / FOR_COACH.row)
    pages: list[tuple[Layout, Sequence[Row], Sequence[str]]] = [
        (FOR_COACH, rows[n : n + most], ()) for n in range(0, len(rows), most)
    ]
    below = [*_below(report, v, FOR_COACH), "", v.plain_in("page", "Sources")]
    keys = dict.fromkeys(key for one in report.results for key in _sources(one))
    for number, key in enumerate(keys, 1):
        below += textwrap.wrap(f"{number}. {cited(key)}", FOR_COACH.letters)
    lines = int((A4[1] - FOR_COACH.head - 0.6) / FOR_COACH.line)
    pages += [(FOR_COACH, (), below[n : n + lines]) for n in range(0, len(below), lines)]
    return _book(pages, _title(report, v), v)


def caption(report: Report, v: Voice) -> Html:
    """The same as text, for those who cannot see it."""
    lines: list[str] = [v.say("{name}, the report: {days}", name=v.name(report.name), days=programme.span(v, report))]
    lines.append(programme.attendance(v, report))
    for one in (*report.changed, *report.unsure):
        line = v.say(
            "• {measure}: {way}. {verdict}.",
            measure=programme.called(v, one),
            way=programme.way(v, one),
            verdict=programme.direction(v, one),
        )
        if length("\n".join((*lines, line))) > CAPTION_LIMIT - 60:
            lines.append(Html("…"))
            break
        lines.append(line)
    return v.lines(*lines)


# --- what it says -----------------------------------------------------------------------------------------------


def _plain(said: str) -> str:
    return html.unescape(_TAG.sub("", said))


def _title(report: Report, v: Voice) -> tuple[str, str, str]:
    return (
        _plain(v.say("The programme of {name}", name=v.numbers.isolate(shortened(report.name, MOST_NAME)))),
        _plain(programme.span(v, report)),
        _plain(programme.attendance(v, report)),
    )


def _rows(report: Report, v: Voice, *, whole: bool = False) -> list[Row]:
    """What changed first, then what cannot be told yet, then what is counted every week and the rest."""
    told = (*report.changed, *report.unsure)
    rest = tuple(one for one in report.results if one not in told and (whole or one.picture is not None))
    return [_row(one, v, whole=whole) for one in (*told, *rest)]


def _row(one: Result, v: Voice, *, whole: bool) -> Row:
    notes: list[str] = []
    if whole:
        if one.verdict is not None:
            notes.append(_plain(verdict(v, one.verdict)))
        if one.verdict is not None and one.verdict.difference is None and one.verdict.error is not None:
            error = v.size(one.verdict.error, one.measure)
            notes.append(_plain(v.say("Can be chance: up to {error}", error=error)))
        notes += [_plain(v.say("“{band}”", band=bands.band(v, b.source, b.band))) for b in one.bands[:1]]
    elif one.start is not None:
        said = programme.direction(v, one)
        if one.verdict is not None and one.verdict.error is not None:
            error = v.size(one.verdict.error, one.measure)
            said = v.say("{what}. Can be chance: up to {error}.", what=said, error=error)
        notes.append(_plain(said))
    name = shortened(_plain(programme.called(v, one)), MOST_NAME)
    return Row(name, _plain(programme.way(v, one)), tuple(notes), one.picture)


def _below(report: Report, v: Voice, layout: Layout) -> list[str]:
    said: list[str] = [_plain(programme.goal(v, one)) for one in report.goals]
    said += [_plain(activity_line(v, line)) for line in report.lines]
    if report.keep:
        said += ["", _plain(v.say("What to keep doing")), *map(_plain, programme.keep(v, report))]
    care = v.say("Measured at home, with guidance. It shows a course; it is no diagnosis.")
    return [line for text in (*said, "", _plain(care)) for line in (_wrapped(text, layout) or [""])]


def _wrapped(text: str, layout: Layout) -> list[str]:
    return wrapped(text, layout.letters)


def wrapped(text: str, letters: int) -> list[str]:
    """Lines of a text of at most so many letters. A figure stays on the line of its unit."""
    return textwrap.wrap(_BEHIND_A_FIGURE.sub(NO_BREAK, text), letters)


def _below_height(lines: Sequence[str], layout: Layout) -> float:
    return len(lines) * layout.line + 0.2


def _sources(one: Result) -> Iterable[str]:
    yield from (key for key in (one.error_source, one.important_source) if key)
    yield from (band.source for band in one.bands)


# --- drawing ----------------------------------------------------------------------------------------------------


def _figure(size: tuple[float, float]) -> Figure:
    from matplotlib.backends.backend_agg import FigureCanvasAgg
    from matplotlib.figure import Figure

    figure = Figure(figsize=size, dpi=DPI, facecolor="white")
    FigureCanvasAgg(figure)
    return figure


def _saved(figure: Figure, kind: str) -> bytes:
    buffer = io.BytesIO()
    figure.savefig(buffer, format=kind, metadata={"Software": None})
    return buffer.getvalue()


def _book(pages: Sequence[tuple[Layout, Sequence[Row], Sequence[str]]], title: tuple[str, str, str], v: Voice) -> bytes:
    from matplotlib.backends.backend_pdf import PdfPages

    buffer = io.BytesIO()
    with PdfPages(buffer, metadata={"Creator": None, "Producer": None, "CreationDate": None}) as book:
        for layout, rows, below in pages:
            figure = _figure(A4)
            _page(figure, layout, title, rows, below, v)
            book.savefig(figure)
    return buffer.getvalue()


def _page(
    figure: Figure, layout: Layout, title: tuple[str, str, str], rows: Sequence[Row], below: Sequence[str], v: Voice
) -> None:
    wide, high = figure.get_size_inches()
    right = v.reader.right_to_left
    edge = 1 - layout.margin / wide if right else layout.margin / wide
    side = "right" if right else "left"

    def write(text: str, down: float, size: float, **how: Any) -> None:
        text = directed(text) if right else text  # a line that begins with a number would run from the left
        figure.text(edge, 1 - down / high, text, fontsize=size, ha=side, va="top", **({"color": INK} | how))

    first, *others = title
    write(first, 0.4, layout.title, fontweight="bold")
    for n, text in enumerate(filter(None, others)):
        write(text, 0.4 + layout.title / 72 * 1.5 + n * layout.line * 1.15, layout.small, color=SOFT)
    down = layout.head
    for row in rows:
        _rule(figure, layout, down, high)
        write(row.name, down + 0.1, layout.name, fontweight="bold")
        room = wide - 2 * layout.margin - (layout.spark + 0.2 if row.picture is not None else 0)
        fits = room / (len(row.way) * LETTER / 72) if row.way else layout.value
        write(row.way, down + 0.1 + layout.name / 72 * 1.45, min(layout.value, fits))
        after = down + 0.1 + (layout.name + layout.value) / 72 * 1.45
        letters = int(layout.letters * room / (wide - 2 * layout.margin))
        lines = [line for note in row.notes for line in wrapped(note, letters)]
        for n, line in enumerate(lines[: max(int((down + layout.row - after) / layout.line), 1)]):
            write(line, after + n * layout.line, layout.small, color=SOFT)
        if row.picture is not None:
            left = layout.margin if right else wide - layout.margin - layout.spark
            box = (left / wide, 1 - (down + layout.row - 0.14) / high, layout.spark / wide, (layout.row - 0.3) / high)
            _spark(figure.add_axes(box), row.picture)
        down += layout.row
    _rule(figure, layout, down, high)
    for n, line in enumerate(below):
        write(line, down + 0.16 + n * layout.line, layout.small)


def _rule(figure: Figure, layout: Layout, down: float, high: float) -> None:
    from matplotlib.lines import Line2D

    wide = figure.get_size_inches()[0]
    ends = [layout.margin / wide, 1 - layout.margin / wide]
    figure.add_artist(Line2D(ends, [1 - down / high] * 2, color="#d9d9d9", linewidth=1))


def _spark(axes: Axes, spec: TrendChart | RatingLine | PressureWeekChart) -> None:
    """A small course without numbers, which stand beside it."""
    axes.set_axis_off()
    course: dict[str, Any] = {"color": LINE, "linewidth": 2.2, "marker": "o", "markersize": 5.5, "clip_on": False}
    match spec:
        case TrendChart():
            height = heights(spec.unit)
            start, error = height(spec.baseline.value), height(spec.error) if spec.error else 0.0
            if error:
                chance: dict[str, Any] = {"facecolor": CHANCE, "alpha": 0.24, "hatch": "///", "edgecolor": CHANCE}
                axes.axhspan(start - error, start + error, linewidth=0, zorder=1, **chance)
            axes.plot([p.day.toordinal() for p in spec.points], [height(p.value) for p in spec.points], **course)
            square: dict[str, Any] = {"color": "white", "markeredgecolor": INK, "markeredgewidth": 1.8}
            axes.plot([spec.baseline.day.toordinal()], [start], "s", markersize=7.5, clip_on=False, zorder=5, **square)
        case RatingLine():
            axes.set_ylim(-0.5, 10.5)
            axes.plot([p.day.toordinal() for p in spec.points], [float(p.value) for p in spec.points], **course)
        case PressureWeekChart():
            for n, day in enumerate(spec.days):
                for shift, half in ((-0.15, day.morning), (0.15, day.evening)):
                    if half is not None:
                        ends = [float(half.diastolic), float(half.systolic)]
                        axes.plot([n + shift] * 2, ends, color=LINE, linewidth=2, marker="o", markersize=3)
            if spec.limit is not None:
                for limit in (spec.limit.systolic, spec.limit.diastolic):
                    axes.axhline(float(limit), color="#D55E00", linewidth=1.5, linestyle=(0, (6, 3)), zorder=1)
