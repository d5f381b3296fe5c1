"""Charts as SVG: what `bot.rendering.charts` draws as a picture, in the same marks and colours, for a page.

Lengths are in the drawing's own units, 360 across: about a pixel each on a phone. Every word is text; the marks are
explained in a legend beside the drawing, in HTML, so that it wraps and runs the reader's way.
"""

from __future__ import annotations

import html
import math
import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from markupsafe import Markup, escape

from bot.rendering import charts
from bot.rendering.numbers import PLACES
from bot.rendering.phrases import cohort_figures, names
from bot.rendering.voice import Voice
from core.judging.chart_data import Point, Pressure, PressureWeekChart, RatingLine, TrendChart
from core.quantity import Amount, Unit, convert
from core.watching.cohort import CohortWeek, Paired

WIDE, HIGH = 360, 200
TOP, BOTTOM = 12, 26
LETTER = 6.6  # width of a letter at most, on average
GAP = 62  # between the middles of two dates
MOST_DATES = 4
BOLD = 9.4  # and of a bold figure
HALF_A_DATE = 32
_TAG = re.compile(r"</?\w+>")

Chart = TrendChart | RatingLine | PressureWeekChart


@dataclass(frozen=True, slots=True)
class Figure:
    """A picture with what explains it. legend: a mark's class in the style sheet, and its words. head, rows: the
    table."""

    svg: Markup
    legend: tuple[tuple[str, str], ...]
    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


def figure(spec: Chart, v: Voice, name: str) -> Figure:
    """Draw a chart. name: of the drawing, unique on its page: it begins every id in it."""
    match spec:
        case TrendChart():
            return _trend(spec, v, name)
        case RatingLine():
            return _ratings(spec, v, name)
        case PressureWeekChart():
            return _pressure(spec, v, name)


class _Drawing:
    """Shapes, collected. Horizontally from `low` to `high` of the scale between the margins; vertically likewise."""

    def __init__(
        self, across: tuple[float, float], up: tuple[float, float], left: float, right: float, high: int = HIGH
    ) -> None:
        self.across, self.up, self.left, self.right, self.high = across, up, left, WIDE - right, high
        self._shapes: list[str] = []

    def x(self, value: float) -> float:
        low, high = self.across
        return self.left + (value - low) / ((high - low) or 1) * (self.right - self.left)

    def y(self, value: float) -> float:
        low, high = self.up
        return self.high - BOTTOM - (value - low) / ((high - low) or 1) * (self.high - BOTTOM - TOP)

    def _add(self, tag: str, **attributes: object) -> None:
        self._shapes.append(f"<{tag} {_attributes(attributes)}/>")

    def line(self, kind: str, start: tuple[float, float], end: tuple[float, float]) -> None:
        self._add("line", cls=kind, x1=start[0], y1=start[1], x2=end[0], y2=end[1])

    def within(self, kind: str, start: tuple[float, float], end: tuple[float, float]) -> None:
        """The part of a line between the top and the bottom; nothing if it lies outside."""
        (x1, y1), (x2, y2) = start, end
        top, bottom = float(TOP), float(self.high - BOTTOM)
        if y1 == y2:
            shares = [0.0, 1.0] if top <= y1 <= bottom else []
        else:
            edges = sorted(((top - y1) / (y2 - y1), (bottom - y1) / (y2 - y1)))
            shares = [max(edges[0], 0.0), min(edges[1], 1.0)]
        if shares and shares[0] < shares[1]:
            here, there = ((x1 + (x2 - x1) * share, y1 + (y2 - y1) * share) for share in shares)
            self.line(kind, here, there)

    def level(self, kind: str, value: float) -> None:
        self.line(kind, (self.left, self.y(value)), (self.right, self.y(value)))

    def band(self, kind: str, low: float, high: float) -> None:
        top, bottom = self.y(min(high, self.up[1])), self.y(max(low, self.up[0]))
        self._add("rect", cls=kind, x=self.left, y=top, width=self.right - self.left, height=bottom - top)

    def bar(self, kind: str, x: float, half: float, value: float) -> None:
        top, base = self.y(value), self.y(0)
        self._add("rect", cls=kind, x=x - half, y=top, width=2 * half, height=base - top)

    def path(self, kind: str, points: Sequence[tuple[float, float]]) -> None:
        self._add("polyline", cls=kind, points=" ".join(f"{_short(x)},{_short(y)}" for x, y in points))

    def dot(self, kind: str, x: float, y: float) -> None:
        self._add("circle", cls=kind, cx=x, cy=y, r=4)

    def square(self, kind: str, x: float, y: float) -> None:
        self._add("rect", cls=kind, x=x - 4.5, y=y - 4.5, width=9, height=9)

    def diamond(self, kind: str, x: float, y: float) -> None:
        corners = ((x, y - 6), (x + 6, y), (x, y + 6), (x - 6, y))
        self._add("polygon", cls=kind, points=" ".join(f"{_short(a)},{_short(b)}" for a, b in corners))

    def text(self, words: str, x: float, y: float, *, anchor: str = "middle", kind: str = "") -> None:
        self._shapes.append(
            f"<text {_attributes({'cls': kind, 'x': x, 'y': y, 'text-anchor': anchor})}>{escape(words)}</text>"
        )

    def axis(self, ticks: Iterable[tuple[float, str]]) -> None:
        for value, words in ticks:
            self.level("grid", value)
            self.text(words, self.left - 6, self.y(value) + 4, anchor="end")

    def done(self, title: str, described: str, name: str) -> Markup:
        start = (
            f'<svg class="chart" viewBox="0 0 {WIDE} {self.high}" role="img" '
            f'aria-labelledby="{name}-title {name}-desc">'
            f'<title id="{name}-title">{escape(title)}</title><desc id="{name}-desc">{escape(described)}</desc>'
        )
        return Markup(start + "".join(self._shapes) + "</svg>")


def _attributes(named: dict[str, object]) -> str:
    def said(value: object) -> str:
        return _short(value) if isinstance(value, float | int) else str(escape(value))

    return " ".join(f'{key.replace("cls", "class")}="{said(value)}"' for key, value in named.items() if value != "")


def _short(value: float) -> str:
    return f"{value:.1f}".removesuffix(".0")


def _described(spec: Chart, v: Voice) -> str:
    return html.unescape(_TAG.sub("", charts.caption(spec, v))).replace("\n", " ")


# --- scales -----------------------------------------------------------------------------------------------------


def steps(low: float, high: float, *, whole: bool) -> tuple[Decimal, ...]:
    """Two to five round values between two limits, a step of 1, 2 or 5 apart."""
    rough = (high - low) / 4 or 1.0
    size = Decimal(10) ** math.floor(math.log10(rough))
    step = next(size * n for n in (1, 2, 5, 10) if float(size * n) >= rough)
    step = max(step, Decimal(1)) if whole else step
    first = math.ceil(low / float(step))
    last = math.floor(high / float(step))
    return tuple(step * n for n in range(first, last + 1))


def _ticks(low: float, high: float, unit: Unit, v: Voice) -> tuple[tuple[float, str], ...]:
    """Where the axis has numbers, and which. Stones are drawn as pounds."""

    def written(value: Decimal) -> str:
        if unit is Unit.STONE:
            return v.amount(Amount(convert(value, Unit.POUND, Unit.STONE), Unit.STONE))
        return v.numbers.plain(value, 2)

    whole = PLACES[unit] == 0 or unit is Unit.STONE
    return tuple((float(value), written(value)) for value in steps(low, high, whole=whole))


def _margin(words: Iterable[str]) -> float:
    return max((len(w) for w in words), default=0) * LETTER + 12


def _dates(drawing: _Drawing, days: Sequence[date], v: Voice) -> None:
    """A few dates below, the last one always, none over another."""
    drawing.line("axis", (drawing.left, drawing.high - BOTTOM), (drawing.right, drawing.high - BOTTOM))
    kept: list[date] = []
    for day in sorted(set(days), reverse=True):
        if not kept or drawing.x(kept[-1].toordinal()) - drawing.x(day.toordinal()) >= GAP:
            kept.append(day)
    for day in kept[:MOST_DATES]:
        drawing.text(v.short_date(day), drawing.x(day.toordinal()), drawing.high - 8)


def _across(days: Sequence[date]) -> tuple[float, float]:
    first, last = min(days).toordinal(), max(days).toordinal()
    return first - (last - first or 7) * 0.06, last


# --- a trend ----------------------------------------------------------------------------------------------------


def _trend(spec: TrendChart, v: Voice, name: str) -> Figure:
    height = charts.heights(spec.unit)
    low, high = charts.view(spec)
    ticks = _ticks(low, high, spec.unit, v)
    last = spec.points[-1]
    said = _value(last.value, spec.unit, v)
    days = [spec.baseline.day, *(p.day for p in spec.points)]
    left = max(_margin(words for _, words in ticks), 34)
    drawing = _Drawing(_across(days), (low, high), left, max(len(said) * BOLD + 14, HALF_A_DATE))
    legend = [("start", v.plain_in("picture", "Start"))]
    start, error = height(spec.baseline.value), height(spec.error or Decimal(0))
    if (usual := charts.visible_band(spec)) is not None:
        drawing.band("usual", *usual)
        for edge in usual:
            if low < edge < high:
                drawing.level("usual-edge", edge)
        legend.append(("usual", v.plain_in("picture", "Published range")))
    if error:
        drawing.band("chance", start - error, start + error)
        drawing.band("hatch", start - error, start + error)
        legend.insert(1, ("chance", v.plain_in("picture", "Can be chance")))
    drawing.axis(ticks)
    if spec.line is not None:
        first, end = spec.line
        edges = (("unsure", first.low, end.low), ("unsure", first.high, end.high))
        for kind, here, there in (("trend", first.value, end.value), *edges):
            drawing.within(kind, _at(drawing, first.day, height(here)), _at(drawing, end.day, height(there)))
        legend.append(("trend", v.plain_in("picture", "Trend")))
    drawing.level("from-start", start)
    at = [_at(drawing, p.day, height(p.value)) for p in spec.points]
    drawing.path("course", at)
    for x, y in at:
        drawing.dot("reading", x, y)
    drawing.square("start", *_at(drawing, spec.baseline.day, start))
    drawing.text(said, at[-1][0] + 9, at[-1][1] + 4, anchor="start", kind="last")
    _dates(drawing, days, v)
    title = charts.title(spec.measure, spec.unit, v)
    points = spec.points if spec.baseline in spec.points else (spec.baseline, *spec.points)
    return Figure(
        drawing.done(title, _described(spec, v), name), tuple(legend), *_table(points, spec.measure, spec.unit, v)
    )


def _at(drawing: _Drawing, day: date, height: float) -> tuple[float, float]:
    return drawing.x(day.toordinal()), drawing.y(height)


def _value(value: Decimal, unit: Unit, v: Voice) -> str:
    if unit is Unit.STONE:
        return v.amount(Amount(value, unit))
    return v.numbers.plain(value, 1 if unit is Unit.POINT else PLACES[unit])


def _table(
    points: Sequence[Point], measure: str, unit: Unit, v: Voice
) -> tuple[tuple[str, ...], tuple[tuple[str, ...], ...]]:
    head = (v.plain_in("page", "Date"), v.plain(names.named(names.MEASURES, measure)))
    return head, tuple((v.full_date(p.day), v.amount(Amount(p.value, unit), measure=measure)) for p in points)


# --- ratings ----------------------------------------------------------------------------------------------------


def _ratings(spec: RatingLine, v: Voice, name: str) -> Figure:
    days = [p.day for p in spec.points]
    said = v.numbers.plain(spec.points[-1].value, 1)
    drawing = _Drawing(_across(days), (-0.5, 10.5), 34, max(len(said) * BOLD + 14, HALF_A_DATE), 170)
    drawing.axis((float(n), v.numbers.plain(n)) for n in (0, 5, 10))
    at = [_at(drawing, p.day, float(p.value)) for p in spec.points]
    drawing.path("course", at)
    for x, y in at:
        drawing.dot("reading", x, y)
    drawing.text(said, at[-1][0] + 9, at[-1][1] + 4, anchor="start", kind="last")
    _dates(drawing, days, v)
    title = spec.question or v.plain(names.named(names.MEASURES, spec.measure))
    return Figure(drawing.done(title, _described(spec, v), name), (), *_table(spec.points, spec.measure, Unit.POINT, v))


# --- a week of blood pressure -----------------------------------------------------------------------------------


def _pressure(spec: PressureWeekChart, v: Voice, name: str) -> Figure:
    limits = () if spec.limit is None else (float(spec.limit.systolic), float(spec.limit.diastolic))
    means = () if spec.mean is None else (spec.mean.systolic, spec.mean.diastolic)
    halves = [(n, evening, half, day.used or spec.mean is None) for n, day in enumerate(spec.days)
              for evening, half in ((False, day.morning), (True, day.evening)) if half is not None]  # fmt: skip
    heights = [*limits, *map(float, means), *(float(p) for _, _, h, _ in halves for p in (h.systolic, h.diastolic))]
    low, high = min(heights) - 10, max(heights) + 10
    ticks = _ticks(low, high, Unit.MILLIMETRE_OF_MERCURY, v)
    last = max(len(spec.days) - 1, 3) + (1 if means else 0)
    drawing = _Drawing((-0.5, last + 0.2), (low, high), _margin(w for _, w in ticks), 40 if means else 8, 230)
    drawing.axis(ticks)
    for limit in limits:
        drawing.level("limit", limit)
    for n, evening, half, used in halves:
        x = drawing.x(n + (0.16 if evening else -0.16))
        top, bottom = drawing.y(float(half.systolic)), drawing.y(float(half.diastolic))
        drawing.line("stem" if used else "stem unused", (x, top), (x, bottom))
        for y in (top, bottom):
            kind = "" if used else " unused"
            drawing.square(f"evening{kind}", x, y) if evening else drawing.dot(f"reading{kind}", x, y)
    for mean in means:
        x, y = drawing.x(last), drawing.y(float(mean))
        drawing.diamond("mean", x, y)
        drawing.text(v.numbers.plain(mean, 0), x + 10, y + 4, anchor="start", kind="last")
    base = drawing.high - BOTTOM
    drawing.line("axis", (drawing.left, base), (drawing.right, base))
    for n in range(len(spec.days)):
        drawing.text(v.numbers.plain(n + 1), drawing.x(n), drawing.high - 8)
    legend = [("reading", v.plain_in("picture", "Morning")), ("evening", v.plain_in("picture", "Evening"))]
    if means:
        legend.append(("mean", v.plain_in("picture", "Mean")))
    if any(not used for *_, used in halves):
        legend.append(("unused", v.plain_in("picture", "Not counted")))
    if spec.limit is not None:
        limit_said = f"{v.numbers.plain(spec.limit.systolic, 0)}/{v.numbers.plain(spec.limit.diastolic, 0)}"
        legend.append(("limit", v.plain_in("picture", "Limit {limit}", limit=v.numbers.isolate(limit_said))))
    title = charts.title("blood_pressure", Unit.MILLIMETRE_OF_MERCURY, v)
    head = (
        v.plain_in("page", "Date"),
        v.plain_in("picture", "Morning"),
        v.plain_in("picture", "Evening"),
    )
    rows = tuple((v.short_date(d.day), _half(d.morning, v), _half(d.evening, v)) for d in spec.days)
    return Figure(drawing.done(title, _described(spec, v), name), tuple(legend), head, rows)


def _half(half: Pressure | None, v: Voice) -> str:
    return "–" if half is None else v.pressure(half.systolic, half.diastolic)


# --- of many people ---------------------------------------------------------------------------------------------


def interval(change: Paired, v: Voice, name: str) -> Figure:
    """One mean change with its interval; no change is a dashed line."""
    low, mean, high = float(change.low), float(change.mean), float(change.high)
    reach = max(abs(low), abs(high), 0.05) * 1.25
    drawing = _Drawing((-reach, reach), (0, 1), 20, 20, 76)
    zero, base = drawing.x(0), drawing.high - BOTTOM
    drawing.line("from-start", (zero, 6.0), (zero, float(base)))
    drawing.text(v.plain_in("picture", "No change"), zero, drawing.high - 8)
    y = 24.0
    ends = drawing.x(low), drawing.x(high)
    drawing.line("course", (ends[0], y), (ends[1], y))
    for end in ends:
        drawing.line("course", (end, y - 7), (end, y + 7))
    drawing.diamond("pooled", drawing.x(mean), y)
    said = html.unescape(_TAG.sub("", cohort_figures.changed(v, change)))
    head = (
        v.plain_in("page", "Change"),
        v.plain_in("page", "from"),
        v.plain_in("page", "to"),
        v.plain_in("page", "People"),
    )
    row = tuple(cohort_figures.figure(v, n, change.unit, sign=True) for n in (change.mean, change.low, change.high))
    title = v.plain(names.named(names.MEASURES, change.measure))
    return Figure(drawing.done(title, said, name), (), head, ((*row, v.number(change.n)),))


def bars(weeks: Sequence[CohortWeek], v: Voice, name: str) -> Figure:
    """Check-ins, week by week: who was asked, as an outline; who checked in, filled. A week that is withheld is a
    gap."""
    most = max((w.asked for w in weeks if w.asked is not None), default=1) or 1
    drawing = _Drawing((-0.5, len(weeks) - 0.5), (0, most * 1.15), 12, 12)
    half = min((drawing.x(1) - drawing.x(0)) * 0.33, 18.0)
    rows: list[tuple[str, ...]] = []
    for n, week in enumerate(weeks):
        drawing.text(v.numbers.plain(week.number), drawing.x(n), drawing.high - 8)
        if week.asked is None or week.kept is None:
            rows.append((v.number(week.number), cohort_figures.withheld(v), "–"))
            continue
        drawing.bar("asked", drawing.x(n), half, week.asked)
        drawing.bar("kept", drawing.x(n), half, week.kept)
        drawing.text(v.numbers.plain(week.kept), drawing.x(n), drawing.y(week.asked) - 4)
        rows.append((v.number(week.number), v.number(week.kept), v.number(week.asked)))
    legend = (("kept", v.plain_in("page", "Kept")), ("asked", v.plain_in("page", "Asked")))
    head = (v.plain_in("page", "Week"), v.plain_in("page", "Kept"), v.plain_in("page", "Asked"))
    title = v.plain("Check-ins kept of those asked, week by week")
    said = v.comma.join(_plain(cohort_figures.attended(v, w)) for w in weeks)
    return Figure(drawing.done(title, said, name), legend, head, tuple(rows))


def _plain(said: str) -> str:
    return html.unescape(_TAG.sub("", said)).removeprefix("• ")
