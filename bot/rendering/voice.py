"""A voice: one language's texts, with numbers formatted for the reader.

A phrase says whole sentences with named {placeholders}:

    v.say("Thanks, {name}.", name=...)                 one sentence or several
    v.say_n("{n} day", "{n} days", n)                  a whole number decides the form (gettext, not CLDR)
    v.say_in("button", "Open")                         the same English word in another sense
    N_("Low"), NC_("button", "Low")                    mark a text in a table; v.say(TABLE[key]) says it

What goes into a placeholder is escaped, unless it is `Html` already, so phrases nest; one that says a text out of a
table gets a name first, since versions of Babel differ in what they read there. `plain` is for buttons and pictures,
where nothing is escaped.
"""

from __future__ import annotations

import html
import re
from collections.abc import Mapping, Sequence
from datetime import date, datetime, time
from decimal import Decimal
from functools import lru_cache

from bot.foundation.reader import Reader
from bot.rendering.direction import FSI, PDI, isolate_numbers, signs_first
from bot.rendering.numbers import MINUS, NO_BREAK, PLACES, numbers
from bot.rendering.translations import translations
from core.measures import MEASURES
from core.measures.measure import BodySize
from core.quantity import Amount, Unit, convert, half_up, in_two_units

POUNDS_TO_THE_STONE, INCHES_TO_THE_FOOT = 14, 12


class Html(str):
    """Text that is already escaped."""

    __slots__ = ()


class Common(str):
    """A common noun that stands for a name: it takes a capital where a sentence begins."""

    __slots__ = ()


_FIGURE = re.compile(r"\d+(?:[.,\u00a0\u202f]\d+)*")
_BEFORE_A_STOP = re.compile(r"\{(\w+)\}(</b>)?\.(?!\.)")
_BEGINS = r"(?:^|(?<=[.!?]\s)|(?<=\n))((?:<b>|[¿¡«„“\"(])*)\{%s\}"


def filled(text: str, values: Mapping[str, str]) -> str:
    """A text with its placeholders filled. An abbreviation that ends a sentence ("17 Min.") is its full stop, too."""
    if any(_ends_in_a_dot(value) for value in values.values()):
        text = _BEFORE_A_STOP.sub(lambda found: found[0][: -1 if _ends_in_a_dot(values[found[1]]) else None], text)
    return text.format_map(values)


def _ends_in_a_dot(value: str) -> bool:
    return value.rstrip(FSI + PDI).endswith(".")


def _with_capitals(text: str, values: Mapping[str, object]) -> tuple[str, dict[str, object]]:
    """The text and its values, where a common noun that begins a sentence has a capital."""
    said = dict(values)
    for name, value in values.items():
        if isinstance(value, Common):
            text = re.sub(_BEGINS % name, rf"\1{{{name}_}}", text)
            said[f"{name}_"] = value[:1].upper() + value[1:]
    return text, said


def N_(text: str) -> str:
    """Mark `text` for the catalogues; a voice translates it later."""
    return text


def NC_(context: str, text: str) -> str:
    """Like `N_` for a text whose sense depends on its context; say it with `say_in` and the same context."""
    return text


class Voice:
    """Everything a phrase needs to write for one reader."""

    def __init__(self, reader: Reader) -> None:
        self.reader = reader
        self.numbers = numbers(reader.language)
        self._translations = translations(reader.language)

    # --- words ---

    def say(self, text: str, **values: object) -> Html:
        return self._filled(self._translations.gettext(text), values)

    def say_n(self, one: str, many: str, n: int, /, **values: object) -> Html:
        """`n` chooses the form and is the placeholder {n}."""
        return self._filled(self._translations.ngettext(one, many, n), {"n": self.number(n), **values})

    def say_in(self, context: str, text: str, **values: object) -> Html:
        return self._filled(self._translations.pgettext(context, text), values)

    def plain(self, text: str, **values: object) -> str:
        return self._plain(self._translations.gettext(text), values)

    def plain_n(self, one: str, many: str, n: int, /, **values: object) -> str:
        return self._plain(self._translations.ngettext(one, many, n), {"n": self.number(n), **values})

    def plain_in(self, context: str, text: str, **values: object) -> str:
        return self._plain(self._translations.pgettext(context, text), values)

    def _plain(self, text: str, values: dict[str, object]) -> str:
        text, values = _with_capitals(text, values)
        return filled(text, {name: str(value) for name, value in values.items()})

    def _filled(self, text: str, values: dict[str, object]) -> Html:
        if self.numbers.right_to_left:
            text = isolate_numbers(text)
        if not values:
            return Html(text)
        text, values = _with_capitals(text, values)
        return Html(filled(text, {name: self._safe(value) for name, value in values.items()}))

    def _safe(self, value: object) -> str:
        return value if isinstance(value, Html) else html.escape(str(value), quote=False)

    def name(self, text: str) -> str:
        """A person's or a place's own name: short, and isolated where letters run the other way."""
        return self.numbers.isolate(shortened(text, 64)) if text.strip() else self.plain("(no name)")

    def coach(self, text: str) -> str:
        """A coach's name, or what to call them if there is none."""
        return self.name(text) if text.strip() else Common(self.plain("your coach"))

    def typed(self, text: str, limit: int = 3000) -> Html:
        """What somebody typed, cut to fit one message."""
        return Html(html.escape(self.numbers.isolate(shortened(text, limit)), quote=False))

    def bold(self, text: str) -> Html:
        return Html(f"<b>{self._safe(text)}</b>")

    def lines(self, *parts: str) -> Html:
        """Parts on separate lines; empty ones are left out."""
        return Html("\n".join(part for part in parts if part))

    def paragraphs(self, *parts: str) -> Html:
        return Html("\n\n".join(part for part in parts if part))

    def sentences(self, *parts: str) -> Html:
        return Html(" ".join(part for part in parts if part))

    def steps(self, *parts: str) -> Html:
        """Numbered lines."""
        return Html("\n".join(f"{self.number(n)}. {part}" for n, part in enumerate(parts, 1)))

    def listed(self, parts: Sequence[str]) -> Html:
        """Items separated by commas: safe in every language, whatever their case."""
        return Html(self.comma.join(self._safe(p) for p in parts))

    @property
    def comma(self) -> str:
        return "، " if self.numbers.right_to_left else ", "

    # --- numbers ---

    def number(self, value: Decimal | int, places: int = 2) -> str:
        return self.numbers.number(value, places)

    def amount(self, amount: Amount, *, measure: str = "", second: Decimal | None = None) -> str:
        """A value with its unit; `second` is the lower pressure, or the pulse at the end of a walk."""
        if amount.unit is Unit.MILLIMETRE_OF_MERCURY and second is not None:
            return self.pressure(amount.value, second)
        said = self._amount(amount.value, amount.unit, measure)
        if second is not None:
            pulse = self._amount(second, Unit.BEATS_PER_MINUTE, "")
            return f"{said}{self.comma}{pulse}"
        return said

    def span(self, low: Amount, high: Amount, *, measure: str = "", second: Decimal | None = None) -> tuple[str, str]:
        """Both ends of a range, for "{low} to {high}". What both would say the same way behind their figures, the unit,
        is said once: "60 to 100 beats a minute"."""
        first, last = (self.amount(x, measure=measure, second=second) for x in (low, high))
        figure, unit = _figure_and_unit(first)
        if second is None and unit and _figure_and_unit(last)[1] == unit:
            return self.numbers.isolate(figure), last
        return first, last

    def pressure(self, systolic: Decimal, diastolic: Decimal) -> str:
        upper, lower = self.numbers.plain(systolic, 0), self.numbers.plain(diastolic, 0)
        unit = str(self.numbers.with_unit(Decimal(0), Unit.MILLIMETRE_OF_MERCURY))
        return self.numbers.isolate(unit.replace(self.numbers.plain(0), f"{upper}/{lower}", 1))

    def size(self, amount: Amount, measure: str = "") -> str:
        """The size of a difference without its sign: the words around it say more or less."""
        value = abs(amount.value)
        if amount.unit is Unit.POINT:
            return self._counted_points(value)
        if amount.unit is Unit.BEATS_PER_MINUTE:
            exact = half_up(value, 0)
            figure = self.numbers.plain(exact, 0)
            return self.numbers.isolate(self.plain_n("{n} beat", "{n} beats", int(exact), n=figure))
        if amount.unit is Unit.STONE and value < 1:
            return self._amount(convert(value, Unit.STONE, Unit.POUND), Unit.POUND, measure)
        return self._amount(value, amount.unit, measure)

    def signed(self, amount: Amount, measure: str = "") -> str:
        """A difference with its sign, for a coach: "+1.4 kg"."""
        sign = MINUS if amount.value < 0 else "+" if amount.value > 0 else ""
        said = f"{sign}{self.size(amount, measure).strip(FSI + PDI)}"
        return self.numbers.isolate(signs_first(said) if self.numbers.right_to_left else said)

    def _amount(self, value: Decimal, unit: Unit, measure: str) -> str:
        return self.numbers.isolate(self._bare(value, unit, measure))

    def _bare(self, value: Decimal, unit: Unit, measure: str) -> str:
        n = self.numbers
        if unit is Unit.STONE and value >= 0:
            return self._two(value, unit, Unit.POUND, POUNDS_TO_THE_STONE, 1)
        if unit is Unit.FOOT or (unit is Unit.INCH and _is_stature(measure)):
            return self._two(value, unit, Unit.INCH, INCHES_TO_THE_FOOT, 1)
        if unit is Unit.MINUTE and _to_the_second(measure) and value >= 0:
            return self._two(value, unit, Unit.SECOND, 60, 0)
        if (said := n.with_unit(value, unit)) is not None:
            return said
        exact = half_up(value, PLACES[unit])
        figure, whole = n.plain(exact, PLACES[unit]), n.plural(exact)
        match unit:
            case Unit.BEATS_PER_MINUTE:
                return self.plain_n("{n} beat a minute", "{n} beats a minute", whole, n=figure)
            case Unit.REPETITION:
                return self.plain_n("{n} stand", "{n} stands", whole, n=figure)
            case Unit.STEP:
                return self.plain_n("{n} step", "{n} steps", whole, n=figure)
            case Unit.SESSION:
                return self.plain_n("{n} session", "{n} sessions", whole, n=figure)
            case Unit.POINT:
                most = n.plain(10)
                return self.plain("{n} out of {most}", n=figure, most=most)
            case Unit.MILLILITRE_PER_KILOGRAM_MINUTE:
                return f"{figure} ml/kg/min"
            case _:  # a ratio, a body mass index, a load: a bare number
                return figure

    def _counted_points(self, value: Decimal) -> str:
        exact = half_up(value, PLACES[Unit.POINT])
        figure = self.numbers.plain(exact, PLACES[Unit.POINT])
        return self.numbers.isolate(self.plain_n("{n} point", "{n} points", self.numbers.plural(exact), n=figure))

    def _two(self, value: Decimal, unit: Unit, small: Unit, per_large: int, places: int) -> str:
        large_unit = {Unit.POUND: Unit.STONE, Unit.INCH: Unit.FOOT, Unit.SECOND: Unit.MINUTE}[small]
        large, rest = in_two_units(value, unit, small, per_large, places)
        parts = [self.numbers.with_unit(Decimal(large), large_unit, short=True)] if large else []
        if rest or not large:
            parts.append(self.numbers.with_unit(rest, small, short=True))
        return " ".join(part.replace(" ", NO_BREAK) for part in parts if part)

    def unit_name(self, unit: Unit) -> str:
        """A unit's symbol: "kg"."""
        said = self.numbers.with_unit(Decimal(5), unit, short=True)
        if said is None:
            return ""
        return said.replace(self.numbers.plain(5), "").strip(" \u00a0\u202f")

    # --- dates and times ---

    def day(self, day: date) -> str:
        return self.numbers.isolate(self.numbers.day(day))

    def full_date(self, day: date) -> str:
        return self.numbers.isolate(self.numbers.full_date(day))

    def day_of_year(self, day: date) -> str:
        """Day and month, for a recent day: "2 March"."""
        return self.numbers.isolate(self.numbers.day_of_year(day))

    def short_date(self, day: date) -> str:
        """Day and month in the shortest form, for a list: "2 Mar"."""
        return self.numbers.isolate(self.numbers.short_date(day))

    def time(self, at: time | datetime) -> str:
        return self.numbers.isolate(self.numbers.time(at))

    def local_time(self, at: datetime) -> str:
        """The local time of an instant for the reader."""
        return self.time(at.astimezone(self.reader.zone))

    def local_day(self, at: datetime) -> str:
        return self.day(at.astimezone(self.reader.zone).date())

    def weekday(self, number: int) -> str:
        return self.numbers.weekday(number)


def _figure_and_unit(said: str) -> tuple[str, str]:
    """Both parts of an amount; the unit is "" if it is anything but a figure and its unit, as "11 st 4 lb" is."""
    bare = said.strip(FSI + PDI)
    figures = _FIGURE.findall(bare)
    if len(figures) != 1 or not bare.startswith(figures[0]):
        return bare, ""
    return figures[0], bare.removeprefix(figures[0])


def shortened(text: str, limit: int) -> str:
    """Cut at a word if there is one near the end, with an ellipsis."""
    text = text.strip()
    if len(text) <= limit:
        return text
    head = text[: limit - 1]
    space = head.rfind(" ", limit - 40)
    return (head[:space] if space > 0 else head).rstrip() + "…"


def rounded(amount: Amount) -> Amount:
    """As displayed."""
    return Amount(half_up(amount.value, PLACES[amount.unit]), amount.unit)


@lru_cache(maxsize=256)
def voice(reader: Reader) -> Voice:
    return Voice(reader)


def _is_stature(measure: str) -> bool:
    """Whether inches are said as feet and inches."""
    return measure in MEASURES and MEASURES[measure].body is BodySize.STATURE


def _to_the_second(measure: str) -> bool:
    """Whether minutes are a time that was clocked, and said with their seconds."""
    return measure in MEASURES and MEASURES[measure].places > 0
