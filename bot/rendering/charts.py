"""Charts: a trend, dated ratings from 0 to 10, a blood-pressure week.

Draws what `core.judging.chart_data` chose, and nothing else.

* matplotlib is imported only when something is drawn; Figure is used without pyplot, so nothing is global and threads
  can draw concurrently.
* For a phone held upright: 1080 x 810 pixels, large type, few words. matplotlib shapes Arabic from 3.11 on.
* Nothing is conveyed by colour alone: marks have shapes, bands have hatching or an edge, and labels. The
  colours are those of Okabe and Ito (2008), designed for every kind of colour vision.
* For a right-to-left reader words and their marks run that way; time and numbers still run from the left, and digits
  are 0 to 9, as in every message (`bot.rendering.direction`).
* The caption says the same for those who cannot see the chart.
"""

from __future__ import annotations

import io
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING, Any

from bot.foundation.reader import Reader
from bot.rendering.numbers import PLACES
from bot.rendering.phrases import names
from bot.rendering.voice import Html, Voice, shortened, voice
from core.judging.chart_data import LinePoint, PressureWeekChart, RatingLine, TrendChart, Usual
from core.measures import MEASURES
from core.quantity import Amount, Unit, convert, half_up

if TYPE_CHECKING:
    from matplotlib.artist import Artist
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

INCHES, DPI = (7.2, 5.4), 150  # 1080 x 810
INK, SOFT, LINE, TREND = "#222222", "#6b6b6b", "#0072B2", "#8c4a86"
CHANCE, USUAL, LIMIT = "#9a9a9a", "#009E73", "#D55E00"
BODY, SMALL, TITLE = 15, 13, 19
MOST_DATES = 5
MANY_ROWS = 9  # of ratings: smaller marks, so that none covers another
CHANCE_HATCH: dict[str, Any] = {
    "facecolor": CHANCE,
    "alpha": 0.24,
    "hatch": "///",
    "edgecolor": CHANCE,
    "linewidth": 0,
}


@dataclass(frozen=True, slots=True)
class Scale:
    """How large things are drawn: type and marks in points. steps: most numbers on an axis. trend: with the line."""

    type: float = BODY
    mark: float = 10
    square: float = 13
    line: float = 2.5
    steps: int = 5
    trend: bool = True


WHOLE = Scale()  # a picture of its own


def draw(spec: object, reader: Reader) -> bytes:
    """Draw a value of `core.judging.chart_data` as a PNG.

    Raises: TypeError for anything else (a programming error).
    """
    from matplotlib.backends.backend_agg import FigureCanvasAgg
    from matplotlib.figure import Figure
    from matplotlib.layout_engine import ConstrainedLayoutEngine

    v = voice(reader)
    layout = ConstrainedLayoutEngine(w_pad=0.14, h_pad=0.1)
    figure = Figure(figsize=INCHES, dpi=DPI, facecolor="white", layout=layout)
    FigureCanvasAgg(figure)
    match spec:
        case TrendChart():
            _trend(figure, spec, v)
        case RatingLine():
            _ratings(figure, spec, v)
        case PressureWeekChart():
            _pressure(figure, spec, v)
        case _:
            raise TypeError(f"cannot draw a {type(spec).__name__}")
    buffer = io.BytesIO()
    figure.savefig(buffer, format="png", metadata={"Software": None})
    return buffer.getvalue()


def _axes(figure: Figure, title: str) -> Axes:
    axes: Axes = figure.subplots()
    bare(axes, WHOLE)
    figure.suptitle(title, fontsize=TITLE, color=INK)
    return axes


def bare(axes: Axes, scale: Scale) -> None:
    """Without the frame on the sides that have no numbers."""
    for side in ("top", "right"):
        axes.spines[side].set_visible(False)
    for side in ("left", "bottom"):
        axes.spines[side].set_color(SOFT)
    axes.tick_params(labelsize=scale.type, colors=INK, length=4)


def _legend(axes: Axes, marks: Sequence[Any], v: Voice) -> None:
    """Below the chart, where it covers nothing."""
    across = min(len(marks), 3)
    axes.figure.legend(
        handles=in_reading_order(marks, across, v),
        loc="outside lower center",
        ncols=across,
        markerfirst=not v.reader.right_to_left,
        frameon=False,
        fontsize=SMALL,
        handletextpad=0.4,
        columnspacing=1.3,
    )


def in_reading_order(marks: Sequence[Any], across: int, v: Voice) -> list[Any]:
    """Legend marks, starting where this reader starts reading. The library fills columns from the left."""
    return list(marks[::-1] if v.reader.right_to_left and len(marks) <= across else marks)


def on_one_line(axes: Axes, size: float, v: Voice) -> None:
    """Align axis labels by their baseline: Arabic letters differ in height, and would be uneven if aligned at the
    top."""
    if v.reader.right_to_left:
        axes.tick_params(axis="x", pad=size + 4)
        for label in axes.get_xticklabels():
            label.set_verticalalignment("baseline")


def _mark(marker: str, words: str, face: str = LINE, edge: str = LINE) -> Any:
    from matplotlib.lines import Line2D

    return Line2D(
        [],
        [],
        marker=marker,
        color=face,
        markeredgecolor=edge,
        markeredgewidth=2,
        markersize=9,
        linestyle="none",
        label=words,
    )


def _dates(axes: Axes, days: Sequence[date], v: Voice) -> None:
    """Dates of a few readings below the axis, evenly spaced from the last one back."""
    each = list(dict.fromkeys(days))
    step = -(-(len(each) - 1) // (MOST_DATES - 1)) or 1
    span = max((days[-1] - days[0]).days, 7)
    shown = _apart(each[::-1][::step], span / (MOST_DATES + 1))
    axes.set_xticks([d.toordinal() for d in shown], [v.numbers.short_date(d) for d in shown])
    on_one_line(axes, BODY, v)
    axes.set_xlim(days[0].toordinal() - span * 0.07, days[-1].toordinal() + span * 0.16)


def _apart(days: Sequence[date], gap: float) -> list[date]:
    """Leave out dates whose labels would overlap. days: newest first; the newest stays."""
    kept = [days[0]]
    for day in days[1:]:
        if (kept[-1] - day).days >= gap:
            kept.append(day)
    return kept[::-1]


def number_axis(axis: Any, v: Voice, unit: Unit, scale: Scale = WHOLE) -> None:
    from matplotlib.ticker import FuncFormatter, MaxNLocator

    def written(x: float, _: object) -> str:
        value = Decimal(str(round(float(x), 4)))
        if unit is Unit.STONE:  # drawn in pounds, so that axis steps are whole numbers
            return v.amount(Amount(convert(value, Unit.POUND, Unit.STONE), Unit.STONE))
        return v.numbers.plain(value, 2)

    whole = PLACES[unit] == 0 or unit is Unit.STONE
    axis.set_major_locator(MaxNLocator(nbins=scale.steps, min_n_ticks=min(3, scale.steps - 1), integer=whole))
    axis.set_major_formatter(FuncFormatter(written))


def title(measure: str, unit: Unit, v: Voice) -> str:
    name = v.plain(names.named(names.MEASURES, measure))
    sign = "" if unit is Unit.STONE else v.unit_name(unit)
    return f"{name} ({sign})" if sign else name


# --- a trend ----------------------------------------------------------------------------------------------------


def _trend(figure: Figure, spec: TrendChart, v: Voice) -> None:
    axes = _axes(figure, title(spec.measure, spec.unit, v))
    _dates(axes, [p.day for p in spec.points], v)
    _legend(axes, trend(axes, spec, v), v)


def trend(axes: Axes, spec: TrendChart, v: Voice, scale: Scale = WHOLE) -> list[Any]:
    """Draw a trend without its dates; returns the marks of its legend."""
    from matplotlib.patches import Patch

    height = heights(spec.unit)
    xs = [p.day.toordinal() for p in spec.points]
    ys = [height(p.value) for p in spec.points]
    start, error = height(spec.baseline.value), height(spec.error or Decimal(0))
    low, high = view(spec)
    axes.set_ylim(low, high)
    number_axis(axes.yaxis, v, spec.unit, scale)
    legend = [_mark("s", v.plain_in("picture", "Start"), "white", INK)]
    if error:
        axes.axhspan(start - error, start + error, zorder=1, **CHANCE_HATCH)
        legend.append(Patch(label=v.plain_in("picture", "Can be chance"), **CHANCE_HATCH))
    if (band := visible_band(spec)) is not None:
        axes.axhspan(*band, facecolor=USUAL, alpha=0.13, linewidth=0, zorder=0)
        for edge in band:
            if low < edge < high:  # a solid edge where the range ends, none where the chart does
                axes.axhline(edge, color=USUAL, linewidth=2, zorder=1)
        legend.append(
            Patch(
                facecolor=USUAL, alpha=0.3, edgecolor=USUAL, linewidth=2, label=v.plain_in("picture", "Published range")
            )
        )
    if spec.line is not None and scale.trend:
        legend.append(_line_through(axes, spec.line, height, v))
    axes.axhline(start, color=SOFT, linewidth=1.2, linestyle=(0, (4, 3)), zorder=2)
    axes.plot(xs, ys, color=LINE, linewidth=scale.line, zorder=4, clip_on=False)
    round_: dict[str, Any] = {"markeredgecolor": LINE, "markeredgewidth": scale.line, "markersize": scale.mark}
    for x, y, point in zip(xs, ys, spec.points, strict=True):  # hollow inside the grey, filled beyond it
        face = LINE if spec.beyond(point) or not error else "white"
        axes.plot([x], [y], "o", color=face, zorder=4, clip_on=False, **round_)
    square: dict[str, Any] = {"markeredgecolor": INK, "markeredgewidth": scale.line, "markersize": scale.square}
    axes.plot([spec.baseline.day.toordinal()], [start], "s", color="white", zorder=5, clip_on=False, **square)
    said(axes, _short(v, spec.points[-1].value, spec.unit), (xs[-1], ys[-1]), scale)
    return legend


def _line_through(
    axes: Axes, line: tuple[LinePoint, LinePoint], height: Callable[[Decimal], float], v: Voice
) -> Artist:
    """The trend as a dashed line between two dotted edges; returns its legend mark."""
    xs = [end.day.toordinal() for end in line]
    axes.plot(xs, [height(end.value) for end in line], color=TREND, linewidth=2, linestyle=(0, (6, 3)), zorder=3)
    for edge in ([height(end.low) for end in line], [height(end.high) for end in line]):
        axes.plot(xs, edge, color=TREND, linewidth=1.2, linestyle=":", zorder=3)
    from matplotlib.lines import Line2D

    return Line2D([], [], color=TREND, linewidth=2, linestyle=(0, (6, 3)), label=v.plain_in("picture", "Trend"))


_PAPER = {"boxstyle": "round,pad=0.15", "facecolor": "white", "edgecolor": "none", "alpha": 0.75}


def said(axes: Axes, words: str, at: tuple[float, float], scale: Scale = WHOLE) -> None:
    """Write a number to the right of its mark."""
    axes.annotate(
        words,
        at,
        (scale.square, 0),
        textcoords="offset points",
        fontsize=scale.type,
        fontweight="bold",
        ha="left",
        va="center",
        color=INK,
        zorder=6,
        annotation_clip=False,
        bbox=_PAPER,
    )


def _short(v: Voice, value: Decimal, unit: Unit) -> str:
    if unit is Unit.STONE:
        return v.amount(Amount(value, unit))
    return v.numbers.plain(value, PLACES[unit])


def heights(unit: Unit) -> Callable[[Decimal], float]:
    """Converts a value to its position on the axis: stones are drawn as pounds."""
    return lambda value: float(convert(value, Unit.STONE, Unit.POUND) if unit is Unit.STONE else value)


def _edges(usual: Usual, unit: Unit) -> tuple[float | None, float | None]:
    """Limits of the published range; None where it is open."""
    height = heights(unit)
    return None if usual.low is None else height(usual.low), None if usual.high is None else height(usual.high)


def view(spec: TrendChart) -> tuple[float, float]:
    """Limits of the axis: all points and the error band; a limit of the reference only if it is not far away."""
    height = heights(spec.unit)
    ys = [height(p.value) for p in spec.points]
    start, error = height(spec.baseline.value), height(spec.error or Decimal(0))
    low, high = min(*ys, start - error), max(*ys, start + error)
    reach = (high - low) or abs(start) * 0.1 or 1
    for edge in () if spec.usual is None else _edges(spec.usual, spec.unit):
        if edge is not None and low - reach <= edge <= high + reach:
            low, high = min(low, edge - reach * 0.08), max(high, edge + reach * 0.08)
    margin = (high - low or reach) * 0.12
    return low - margin, high + margin


def visible_band(spec: TrendChart) -> tuple[float, float] | None:
    """The visible part of the published range; None if none is visible or there is no such range."""
    if spec.usual is None:
        return None
    (bottom, top), (low, high) = _edges(spec.usual, spec.unit), view(spec)
    bottom, top = low if bottom is None else max(bottom, low), high if top is None else min(top, high)
    return (bottom, top) if bottom < top else None


# --- the line from 0 to 10 --------------------------------------------------------------------------------------


def _ratings(figure: Figure, spec: RatingLine, v: Voice) -> None:
    title = v.plain(names.named(names.MEASURES, spec.measure))
    if spec.question:
        title = v.numbers.isolate(shortened(spec.question, 48))
    axes = _axes(figure, title)
    rows = list(range(len(spec.points)))
    axes.set_ylim(len(rows) - 0.4, -0.6)
    axes.set_xlim(-0.4, 11.1)  # room for a label to the right of 10
    axes.set_xticks(range(11), [v.numbers.plain(n) for n in range(11)])
    axes.set_yticks(rows, [v.numbers.short_date(p.day) for p in spec.points])
    axes.spines["left"].set_visible(False)
    axes.tick_params(axis="y", length=0)
    for row in rows:
        axes.plot([0, 10], [row, row], color="#cfcfcf", linewidth=2, zorder=1, solid_capstyle="round")
    values = [float(p.value) for p in spec.points]
    axes.plot(values, rows, color=LINE, linewidth=1.5, alpha=0.6, zorder=2)
    small = 13 if len(rows) <= MANY_ROWS else 10
    axes.plot(values[:-1], rows[:-1], "o", color=LINE, markersize=small, zorder=3, clip_on=False)
    if values:
        axes.plot(values[-1:], rows[-1:], "D", color=INK, markersize=14, zorder=4, clip_on=False)
        words = v.numbers.plain(spec.points[-1].value, 1)
        said(axes, words, (values[-1], rows[-1]))


# --- a week of blood pressure -----------------------------------------------------------------------------------


def _pressure(figure: Figure, spec: PressureWeekChart, v: Voice) -> None:
    axes = _axes(figure, title("blood_pressure", Unit.MILLIMETRE_OF_MERCURY, v))
    _legend(axes, pressure_week(axes, spec, v), v)


def pressure_week(axes: Axes, spec: PressureWeekChart, v: Voice, scale: Scale = WHOLE) -> list[Any]:
    """Draw a week of pressures; returns the marks of its legend."""
    slots = list(_slots(spec))
    limits = () if spec.limit is None else (float(spec.limit.systolic), float(spec.limit.diastolic))
    levels = [*limits, *(y for slot in slots for y in slot[1:3])]
    axes.set_ylim(min(levels) - 12, max(levels) + 12)
    places = [_place(n, spec) for n in range(len(spec.days))]
    last = max([*places, 3])
    axes.set_xlim(-0.6, last + 1.5)
    axes.set_xticks(places, [v.numbers.plain(n + 1) for n in places])
    axes.set_xlabel(v.plain_in("picture", "Day"), fontsize=scale.type, color=INK)
    number_axis(axes.yaxis, v, Unit.MILLIMETRE_OF_MERCURY, scale)
    for limit in limits:
        axes.axhline(limit, color=LIMIT, linewidth=2, linestyle=(0, (6, 3)), zorder=1)
    for x, upper, lower, marker, used in slots:
        colour = LINE if used else CHANCE
        axes.plot([x, x], [lower, upper], color=colour, linewidth=scale.line * 1.6, alpha=0.45, zorder=2)
        axes.plot(
            [x, x],
            [upper, lower],
            marker,
            color=colour if marker == "o" else "white",
            markeredgecolor=colour,
            markeredgewidth=2.2,
            markersize=scale.mark * 0.95,
            linestyle="none",
            zorder=3,
        )
    if spec.mean is not None:
        for value in (spec.mean.systolic, spec.mean.diastolic):
            at = (last + 0.75, float(value))
            axes.plot([at[0]], [at[1]], "D", color=INK, markersize=scale.mark * 1.2, zorder=4)
            said(axes, v.numbers.plain(value, 0), at, scale)
    return _pressure_legend(spec, v, unused=any(not used for *_, used in slots))


def _slots(spec: PressureWeekChart) -> Iterable[tuple[float, float, float, str, bool]]:
    """For each half-day: x, upper, lower, its mark, and whether it is part of the mean."""
    for n, day in enumerate(spec.days):
        for shift, half, marker in ((-0.16, day.morning, "o"), (0.16, day.evening, "s")):
            if half is not None:
                used = day.used or spec.mean is None
                yield _place(n, spec) + shift, float(half.systolic), float(half.diastolic), marker, used


def _place(n: int, spec: PressureWeekChart) -> int:
    """Where the nth day with a reading stands: days are counted as they were lived, also those without one."""
    return spec.days[n].number - 1 if spec.days[n].number else n


def _pressure_legend(spec: PressureWeekChart, v: Voice, *, unused: bool) -> list[Any]:
    from matplotlib.lines import Line2D

    marks = [_mark("o", v.plain_in("picture", "Morning")), _mark("s", v.plain_in("picture", "Evening"), "white")]
    if spec.mean is not None:
        marks.append(_mark("D", v.plain_in("picture", "Mean"), INK, INK))
    if unused:
        marks.append(_mark("o", v.plain_in("picture", "Not counted"), CHANCE, CHANCE))
    if spec.limit is not None:
        limit = f"{v.numbers.plain(spec.limit.systolic, 0)}/{v.numbers.plain(spec.limit.diastolic, 0)}"
        words = v.plain_in("picture", "Limit {limit}", limit=v.numbers.isolate(limit))
        marks.append(Line2D([], [], color=LIMIT, linewidth=2, linestyle=(0, (4, 2)), label=words))
    return marks


def file_name(spec: object) -> str:
    """The chart's file name: "trend-weight.png".

    Raises: TypeError for anything but a value of `core.judging.chart_data` (a programming error).
    """
    match spec:
        case TrendChart(measure=measure):
            kind = f"trend-{measure}"
        case RatingLine(measure=measure):
            kind = f"line-{measure}"
        case PressureWeekChart():
            kind = "pressure-week"
        case _:
            raise TypeError(f"cannot draw a {type(spec).__name__}")
    return f"{kind.replace('_', '-')}.png"


# --- the same in words ------------------------------------------------------------------------------------------


def caption(spec: object, v: Voice) -> Html:
    """What the chart shows, for those who cannot see it. HTML."""
    match spec:
        case TrendChart():
            return _trend_in_words(spec, v)
        case RatingLine():
            return _ratings_in_words(spec, v)
        case PressureWeekChart():
            return _pressure_in_words(spec, v)
        case _:
            raise TypeError(f"cannot draw a {type(spec).__name__}")


def _trend_in_words(spec: TrendChart, v: Voice) -> Html:
    def amount(value: Decimal) -> str:
        return v.amount(Amount(value, spec.unit), measure=spec.measure)

    last = spec.points[-1]
    said = [
        v.bold(names.measure(v, spec.measure)),
        v.say(
            "Start: {first}, {date}. Last: {last}, {day}.",
            first=amount(spec.baseline.value),
            date=v.full_date(spec.baseline.day),
            last=amount(last.value),
            day=v.full_date(last.day),
        ),
        v.say_n("The picture shows {n} reading.", "The picture shows {n} readings.", len(spec.points)),
    ]
    if spec.error:
        measure = MEASURES[spec.measure]
        wide = half_up(spec.error, measure.places) if spec.unit is measure.unit else spec.error  # as in a message
        error = v.size(Amount(wide, spec.unit), spec.measure)
        said.append(v.say("Grey shows what can be chance: up to {error} from the start.", error=error))
        if len(spec.points) > 1:
            outside = spec.beyond(last)
            said.append(v.say("The last one lies outside it.") if outside else v.say("The last one lies inside it."))
    if spec.line is not None:
        said.append(v.say("The dashed line is the trend. The dotted lines show how sure it is."))
    if spec.usual is not None and visible_band(spec) is not None:
        said.append(_usual_in_words(spec.usual, spec, v))
    return v.lines(*said)


def _usual_in_words(usual: Usual, spec: TrendChart, v: Voice) -> Html:
    low, high = (None if edge is None else Amount(edge, spec.unit) for edge in (usual.low, usual.high))
    if low is not None and high is not None:
        first, last = v.span(low, high, measure=spec.measure)
        return v.say("Green is a published range: {low} to {high}.", low=first, high=last)
    if high is not None:
        return v.say("Green is a published range: below {high}.", high=v.amount(high, measure=spec.measure))
    least = v.amount(low or Amount(Decimal(0), spec.unit), measure=spec.measure)
    return v.say("Green is a published range: {low} or more.", low=least)


def _ratings_in_words(spec: RatingLine, v: Voice) -> Html:
    title = v.typed(spec.question, 100) if spec.question else names.measure(v, spec.measure)
    marks = [
        v.say("{date}: {n}", date=v.numbers.isolate(v.numbers.short_date(p.day)), n=v.number(p.value, 1))
        for p in spec.points
    ]
    if not marks:
        return v.bold(title)
    return v.lines(v.bold(title), v.say("From 0 to 10, by date: {list}.", list=v.listed(marks)))


def _pressure_in_words(spec: PressureWeekChart, v: Voice) -> Html:
    said = [v.bold(names.measure(v, "blood_pressure"))]
    said.append(v.say_n("The picture shows {n} day.", "The picture shows {n} days.", len(spec.days)))
    if spec.mean is not None:
        said.append(v.say("Mean: {pressure}.", pressure=v.pressure(spec.mean.systolic, spec.mean.diastolic)))
        said.append(v.say("The first day is not counted."))
    if spec.without is not None:
        without = v.pressure(spec.without.systolic, spec.without.diastolic)
        said.append(
            v.say("One day makes much of it. Without day {n}: {pressure}.", n=v.number(spec.odd), pressure=without)
        )
    if spec.limit is not None:
        limit = v.pressure(spec.limit.systolic, spec.limit.diastolic)
        said.append(v.say("Dashed lines show the limit: {limit}.", limit=limit))
    uppers = [float(h.systolic) for h in _halves(spec)]
    if uppers:
        said.append(
            v.say(
                "The upper number was between {low} and {high}.",
                low=v.number(round(min(uppers)), 0),
                high=v.number(round(max(uppers)), 0),
            )
        )
    return v.lines(*said)


def _halves(spec: PressureWeekChart) -> Iterable[Any]:
    for day in spec.days:
        yield from (half for half in (day.morning, day.evening) if half is not None)
