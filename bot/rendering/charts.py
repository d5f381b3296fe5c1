"""Pictures: a trend, the 0-10 line with dated marks, a blood-pressure week. Only draws what `core.chart` chose.

* matplotlib is imported when a picture is wanted, never before; its Figure is used alone, without pyplot, so nothing
  is global and threads may draw side by side.
* For a phone held upright: 1080 x 810 pixels, large type, few words. matplotlib shapes Arabic from 3.11 on.
* Nothing is told by colour alone: marks have shapes, bands have hatching or an edge, and words of their own. The
  colours are those of Okabe and Ito (2008), made for every kind of colour vision.
* Whoever cannot see it reads the same in the caption.
"""

from __future__ import annotations

import io
from collections.abc import Iterable, Sequence
from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING, Any

from bot.rendering.numbers import PLACES
from bot.rendering.phrases import names
from bot.rendering.reader import Reader
from bot.rendering.voice import Voice, shortened, voice
from core.chart import PressureWeek, RatingLine, Trend, Usual
from core.quantity import Amount, Unit

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

INCHES, DPI = (7.2, 5.4), 150  # 1080 x 810
INK, SOFT, LINE = "#222222", "#6b6b6b", "#0072B2"
CHANCE, USUAL, LIMIT = "#9a9a9a", "#009E73", "#D55E00"
BODY, SMALL, TITLE = 15, 13, 19
MOST_DATES = 5


def draw(spec: object, reader: Reader) -> bytes:
    """Draw a value of `core.chart` as a PNG.

    Raises: TypeError for anything else: a fault of ours.
    """
    from matplotlib.backends.backend_agg import FigureCanvasAgg
    from matplotlib.figure import Figure

    v = voice(reader)
    figure = Figure(figsize=INCHES, dpi=DPI, facecolor="white", layout="constrained")
    FigureCanvasAgg(figure)
    match spec:
        case Trend():
            _trend(figure, spec, v)
        case RatingLine():
            _ratings(figure, spec, v)
        case PressureWeek():
            _pressure(figure, spec, v)
        case _:
            raise TypeError(f"no picture of a {type(spec).__name__}")
    buffer = io.BytesIO()
    figure.savefig(buffer, format="png", metadata={"Software": None})
    return buffer.getvalue()


def _axes(figure: Figure, title: str) -> Axes:
    axes: Axes = figure.subplots()
    for side in ("top", "right"):
        axes.spines[side].set_visible(False)
    for side in ("left", "bottom"):
        axes.spines[side].set_color(SOFT)
    axes.tick_params(labelsize=BODY, colors=INK, length=4)
    figure.suptitle(title, fontsize=TITLE, color=INK)
    return axes


def _dates(axes: Axes, days: Sequence[date], v: Voice) -> None:
    """A few dates of readings below the axis, the first and the last among them."""
    shown = list(dict.fromkeys(days))
    if len(shown) > MOST_DATES:
        step = (len(shown) - 1) / (MOST_DATES - 1)
        shown = [shown[round(n * step)] for n in range(MOST_DATES)]
    shown = _apart(shown, (days[-1] - days[0]).days / (MOST_DATES + 1))
    axes.set_xticks([d.toordinal() for d in shown], [v.numbers.short_date(d) for d in shown])
    span = max((days[-1] - days[0]).days, 7)
    axes.set_xlim(days[0].toordinal() - span * 0.06, days[-1].toordinal() + span * 0.16)


def _apart(days: list[date], gap: float) -> list[date]:
    """Leave out dates whose labels would touch; the last one stays."""
    kept = [days[-1]]
    for day in reversed(days[:-1]):
        if (kept[-1] - day).days >= gap:
            kept.append(day)
    return kept[::-1]


def _number_axis(axes: Any, v: Voice, unit: Unit) -> None:
    from matplotlib.ticker import FuncFormatter, MaxNLocator

    axes.set_major_locator(MaxNLocator(nbins=5, min_n_ticks=3, integer=PLACES[unit] == 0))
    axes.set_major_formatter(FuncFormatter(lambda x, _: v.numbers.plain(Decimal(str(round(float(x), 4))), 2)))


def _title(measure: str, unit: Unit, v: Voice) -> str:
    name = v.plain(names.named(names.MEASURES, measure))
    sign = v.unit_name(unit) if unit is not Unit.STONE else v.unit_name(Unit.STONE)
    return f"{name} ({sign})" if sign else name


# --- a trend ----------------------------------------------------------------------------------------------------


def _trend(figure: Figure, spec: Trend, v: Voice) -> None:
    axes = _axes(figure, _title(spec.measure, spec.unit, v))
    xs = [p.day.toordinal() for p in spec.points]
    ys = [float(p.value) for p in spec.points]
    start, error = float(spec.baseline.value), float(spec.error or 0)
    _dates(axes, [p.day for p in spec.points], v)
    low, high = _view(ys, start, error, spec.usual)
    axes.set_ylim(low, high)
    _number_axis(axes.yaxis, v, spec.unit)
    if spec.usual is not None:
        _usual(axes, spec.usual, low, high, v)
    if error:
        axes.axhspan(
            start - error,
            start + error,
            facecolor=CHANCE,
            alpha=0.22,
            hatch="///",
            edgecolor=CHANCE,
            linewidth=0,
            zorder=1,
        )
        _along(axes, start - error, v.plain("Grey: can be chance"), SOFT, "bottom")
    axes.axhline(start, color=SOFT, linewidth=1.2, linestyle=(0, (4, 3)), zorder=2)
    axes.plot(xs, ys, color=LINE, linewidth=2.5, marker="o", markersize=10, zorder=4, clip_on=False)
    axes.plot(
        [spec.baseline.day.toordinal()], [start], "s", color="white", markeredgecolor=INK, markeredgewidth=2.5,
        markersize=13, zorder=5, clip_on=False,
    )  # fmt: skip
    axes.annotate(
        v.plain("Start"), (spec.baseline.day.toordinal(), start), (0, 15), textcoords="offset points", fontsize=SMALL,
        ha="center", color=INK, zorder=6, bbox=_PAPER,
    )  # fmt: skip
    axes.annotate(
        _short(v, spec.points[-1].value, spec.unit), (xs[-1], ys[-1]), (14, 0), textcoords="offset points",
        fontsize=BODY, fontweight="bold", va="center", color=INK, zorder=6, annotation_clip=False,
    )  # fmt: skip


_PAPER = {"boxstyle": "round,pad=0.15", "facecolor": "white", "edgecolor": "none", "alpha": 0.75}


def _short(v: Voice, value: Decimal, unit: Unit) -> str:
    if unit is Unit.STONE:
        return v.amount(Amount(value, unit))
    return v.numbers.plain(value, PLACES[unit])


def _view(ys: Sequence[float], start: float, error: float, usual: Usual | None) -> tuple[float, float]:
    """Limits of the axis: all points and the error band; a limit of the reference only if it is not far away."""
    low, high = min(*ys, start - error), max(*ys, start + error)
    reach = (high - low) or abs(start) * 0.1 or 1
    for edge in (usual.low, usual.high) if usual else ():
        if edge is not None and low - reach <= float(edge) <= high + reach:
            low, high = min(low, float(edge) - reach * 0.08), max(high, float(edge) + reach * 0.08)
    margin = (high - low or reach) * 0.12
    return low - margin, high + margin


def _usual(axes: Axes, usual: Usual, low: float, high: float, v: Voice) -> None:
    """The published band, with a firm edge where it ends inside the picture."""
    bottom = low if usual.low is None else max(float(usual.low), low)
    top = high if usual.high is None else min(float(usual.high), high)
    if bottom >= top:
        return
    axes.axhspan(bottom, top, facecolor=USUAL, alpha=0.13, linewidth=0, zorder=0)
    for edge in (usual.low, usual.high):
        if edge is not None and low < float(edge) < high:
            axes.axhline(float(edge), color=USUAL, linewidth=2, zorder=1)
    _along(axes, top, v.plain("Green: published range"), "#00664b", "top")


def _along(axes: Axes, height: float, words: str, colour: str, va: str) -> None:
    """Words at the right end of a band, just inside its edge."""
    axes.annotate(
        words, (1.0, height), (-4, 4 if va == "bottom" else -4), xycoords=("axes fraction", "data"),
        textcoords="offset points", fontsize=SMALL, color=colour, ha="right", va=va, zorder=3, bbox=_PAPER,
    )  # fmt: skip


# --- the line from 0 to 10 --------------------------------------------------------------------------------------


def _ratings(figure: Figure, spec: RatingLine, v: Voice) -> None:
    title = v.plain(names.named(names.MEASURES, spec.measure))
    if spec.question:
        title = v.numbers.island(shortened(spec.question, 48))
    axes = _axes(figure, title)
    rows = list(range(len(spec.points)))
    axes.set_ylim(len(rows) - 0.4, -0.6)
    axes.set_xlim(-0.4, 10.4)
    axes.set_xticks(range(11), [v.numbers.plain(n) for n in range(11)])
    axes.set_yticks(rows, [v.numbers.short_date(p.day) for p in spec.points])
    axes.spines["left"].set_visible(False)
    axes.tick_params(axis="y", length=0)
    for row in rows:
        axes.plot([0, 10], [row, row], color="#cfcfcf", linewidth=2, zorder=1, solid_capstyle="round")
    values = [float(p.value) for p in spec.points]
    axes.plot(values, rows, color=LINE, linewidth=1.5, alpha=0.6, zorder=2)
    axes.plot(values[:-1], rows[:-1], "o", color=LINE, markersize=13, zorder=3, clip_on=False)
    if values:
        axes.plot(values[-1:], rows[-1:], "D", color=INK, markersize=14, zorder=4, clip_on=False)
        axes.annotate(
            v.number(spec.points[-1].value, 1), (values[-1], rows[-1]), (0, 14), textcoords="offset points",
            ha="center", fontsize=BODY, fontweight="bold", color=INK, bbox=_PAPER,
        )  # fmt: skip


# --- a week of blood pressure -----------------------------------------------------------------------------------


def _pressure(figure: Figure, spec: PressureWeek, v: Voice) -> None:
    axes = _axes(figure, _title("blood_pressure", Unit.MILLIMETRE_OF_MERCURY, v))
    slots = []
    for n, day in enumerate(spec.days):
        for shift, half, marker in ((-0.16, day.morning, "o"), (0.16, day.evening, "s")):
            if half is not None:
                slots.append(
                    (n + shift, float(half.systolic), float(half.diastolic), marker, day.used or spec.mean is None)
                )
    limits = (float(spec.limit.systolic), float(spec.limit.diastolic))
    heights = [*limits, *(s for _, s, _, _, _ in slots), *(d for _, _, d, _, _ in slots)]
    axes.set_ylim(min(heights) - 12, max(heights) + 16)
    axes.set_xlim(-0.6, max(len(spec.days) - 1, 3) + 1.1)
    axes.set_xticks(range(len(spec.days)), [v.numbers.plain(n + 1) for n in range(len(spec.days))])
    axes.set_xlabel(v.plain("Day"), fontsize=BODY, color=INK)
    _number_axis(axes.yaxis, v, Unit.MILLIMETRE_OF_MERCURY)
    for limit in limits:
        axes.axhline(limit, color=LIMIT, linewidth=2, linestyle=(0, (6, 3)), zorder=1)
        axes.annotate(
            v.numbers.plain(Decimal(repr(limit)), 0), (1.0, limit), (-2, 3), xycoords=("axes fraction", "data"),
            textcoords="offset points", ha="right", va="bottom", fontsize=SMALL, color="#a34700", bbox=_PAPER,
        )  # fmt: skip
    for x, upper, lower, marker, used in slots:
        colour = LINE if used else CHANCE
        axes.plot([x, x], [lower, upper], color=colour, linewidth=4, alpha=0.45, zorder=2)
        face = colour if marker == "o" else "white"
        axes.plot([x, x], [upper, lower], marker, color=face, markeredgecolor=colour, markeredgewidth=2.2,
                  markersize=9.5, linestyle="none", zorder=3)  # fmt: skip
    if spec.mean is not None:
        _mean(axes, spec, v)
    _legend(axes, v, unused=any(not used for *_, used in slots))


def _mean(axes: Axes, spec: PressureWeek, v: Voice) -> None:
    assert spec.mean is not None
    x = max(len(spec.days) - 1, 3) + 0.75
    for value in (spec.mean.systolic, spec.mean.diastolic):
        axes.plot([x], [float(value)], "D", color=INK, markersize=12, zorder=4)
        axes.annotate(
            v.numbers.plain(value, 0), (x, float(value)), (0, -12), textcoords="offset points", ha="center", va="top",
            fontsize=BODY, fontweight="bold", color=INK, bbox=_PAPER,
        )  # fmt: skip


def _legend(axes: Axes, v: Voice, *, unused: bool) -> None:
    from matplotlib.lines import Line2D

    def mark(marker: str, words: str, face: str = LINE, edge: str = LINE) -> Line2D:
        return Line2D([], [], marker=marker, color=face, markeredgecolor=edge, markeredgewidth=2, markersize=9,
                      linestyle="none", label=words)  # fmt: skip

    marks = [
        mark("o", v.plain("Morning")),
        mark("s", v.plain("Evening"), "white"),
        mark("D", v.plain("Mean"), INK, INK),
    ]
    if unused:
        marks.append(mark("o", v.plain("Not counted"), CHANCE, CHANCE))
    axes.figure.legend(
        handles=marks, loc="outside lower center", ncols=len(marks), frameon=False, fontsize=SMALL, handletextpad=0.2,
        columnspacing=1.2,
    )  # fmt: skip


# --- the same in words ------------------------------------------------------------------------------------------


def caption(spec: object, v: Voice) -> str:
    """What the picture shows, for whoever cannot see it. HTML."""
    match spec:
        case Trend():
            return _trend_in_words(spec, v)
        case RatingLine():
            return _ratings_in_words(spec, v)
        case PressureWeek():
            return _pressure_in_words(spec, v)
        case _:
            raise TypeError(f"no picture of a {type(spec).__name__}")


def _trend_in_words(spec: Trend, v: Voice) -> str:
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
        error = v.size(Amount(spec.error, spec.unit), spec.measure)
        said.append(v.say("Grey shows what can be chance: up to {error} from the start.", error=error))
    if spec.usual is not None:
        said.append(_usual_in_words(spec.usual, amount, v))
    return v.lines(*said)


def _usual_in_words(usual: Usual, amount: Any, v: Voice) -> str:
    if usual.low is None:
        return v.say("Green is a published range: below {high}.", high=amount(usual.high))
    if usual.high is None:
        return v.say("Green is a published range: {low} or more.", low=amount(usual.low))
    return v.say("Green is a published range: {low} to {high}.", low=amount(usual.low), high=amount(usual.high))


def _ratings_in_words(spec: RatingLine, v: Voice) -> str:
    title = v.typed(spec.question, 100) if spec.question else names.measure(v, spec.measure)
    marks = [
        v.say("{date}: {n}", date=v.numbers.island(v.numbers.short_date(p.day)), n=v.number(p.value, 1))
        for p in spec.points
    ]
    if not marks:
        return v.bold(title)
    return v.lines(v.bold(title), v.say("From 0 to 10, by date: {list}.", list=v.listed(marks)))


def _pressure_in_words(spec: PressureWeek, v: Voice) -> str:
    said = [v.bold(names.measure(v, "blood_pressure"))]
    said.append(v.say_n("The picture shows {n} day.", "The picture shows {n} days.", len(spec.days)))
    if spec.mean is not None:
        said.append(v.say("Mean: {pressure}.", pressure=v.pressure(spec.mean.systolic, spec.mean.diastolic)))
        said.append(v.say("The first day is not counted."))
    said.append(
        v.say("Dashed lines show the limit: {limit}.", limit=v.pressure(spec.limit.systolic, spec.limit.diastolic))
    )
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


def _halves(spec: PressureWeek) -> Iterable[Any]:
    for day in spec.days:
        yield from (half for half in (day.morning, day.evening) if half is not None)
