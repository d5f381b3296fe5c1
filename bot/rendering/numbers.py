"""Numbers, units, dates and times in a language: Babel formats them, this module decides how.

* Never a float: Babel formats Decimals exactly.
* English dates and times are British ("Monday 30 March", "07:30"): nobody can misread the day or the hour.
* Trailing zeros are left out: if 82 was typed, 82 kg is shown.
* In a right-to-left language a number with its unit is isolated (`direction`), so that "128/82" or a minus sign is not
  split by the text around it.
* An amount always shows its number. CLDR's Arabic expresses one and two by the noun alone; if 2 was typed, 2 is shown.
"""

from __future__ import annotations

import re
from datetime import date, datetime, time
from decimal import Decimal
from functools import lru_cache
from typing import Literal

from babel import Locale
from babel.dates import format_date, format_skeleton, format_time, get_day_names
from babel.numbers import format_decimal
from babel.units import format_unit

from bot.rendering import direction
from core.language import LANGUAGES
from core.quantity import Unit, half_up

D = Decimal

LOCALES = {"en": "en_GB"}
MINUS = "\u2212"
NO_BREAK = direction.NO_BREAK

PLACES: dict[Unit, int] = {  # most decimals shown
    Unit.KILOGRAM: 1,
    Unit.POUND: 1,
    Unit.STONE: 1,
    Unit.CENTIMETRE: 1,
    Unit.METRE: 2,
    Unit.INCH: 1,
    Unit.FOOT: 2,
    Unit.BEATS_PER_MINUTE: 0,
    Unit.MILLIMETRE_OF_MERCURY: 0,
    Unit.SECOND: 1,
    Unit.MINUTE: 1,
    Unit.METRE_PER_SECOND: 2,
    Unit.REPETITION: 1,
    Unit.STEP: 0,
    Unit.POINT: 1,
    Unit.DAY: 0,
    Unit.SESSION: 0,
    Unit.RATIO: 2,
    Unit.KILOGRAM_PER_SQUARE_METRE: 1,
    Unit.MILLILITRE_PER_KILOGRAM_MINUTE: 0,
    Unit.LOAD: 0,
}

# CLDR's key and the length of its name: not everybody knows "s" for second.
CLDR: dict[Unit, tuple[str, str]] = {
    Unit.KILOGRAM: ("mass-kilogram", "short"),
    Unit.POUND: ("mass-pound", "short"),
    Unit.STONE: ("mass-stone", "short"),
    Unit.CENTIMETRE: ("length-centimeter", "short"),
    Unit.METRE: ("length-meter", "short"),
    Unit.INCH: ("length-inch", "short"),
    Unit.FOOT: ("length-foot", "short"),
    Unit.MILLIMETRE_OF_MERCURY: ("pressure-millimeter-ofhg", "short"),
    Unit.SECOND: ("duration-second", "long"),
    Unit.MINUTE: ("duration-minute", "long"),
    Unit.METRE_PER_SECOND: ("speed-meter-per-second", "short"),
    Unit.DAY: ("duration-day", "long"),
}

_LIKE: dict[str, dict[str, int]] = {"fr": {"one": 1}, "pl": {"other": 2}}  # integers of that plural form, if not 100
_YEAR = re.compile(r"(\s*'[^']*')?[\s,،]*y+\s*('[^']*')?$")
_FIRST = re.compile(r"\b1\b")
_RIGHT_TO_LEFT_LETTER = re.compile("[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufeff]")


class Numbers:
    """One language's formats for numbers, units, dates and times."""

    def __init__(self, language: str) -> None:
        self.language = language if language in LANGUAGES else "en"
        self.locale = Locale.parse(LOCALES.get(self.language, self.language))
        self.unit_locale = Locale.parse(self.language)  # "min", where British short units would say "mins"
        self.right_to_left = LANGUAGES[self.language].right_to_left

    def isolate(self, text: str) -> str:
        """Isolate a piece of text if the letters around it run, or may run, the other way."""
        if text and (self.right_to_left or _RIGHT_TO_LEFT_LETTER.search(text)):
            return direction.isolate(text)
        return text

    def plain(self, value: Decimal | int, places: int = 2) -> str:
        """A number without isolation: "82,4", "1.234"."""
        exact = half_up(D(value), places)
        pattern = "#,##0" + ("." + "#" * places if places else "")
        return str(format_decimal(exact, format=pattern, locale=self.locale))

    def number(self, value: Decimal | int, places: int = 2) -> str:
        return self.isolate(self.plain(value, places))

    def plural(self, value: Decimal) -> int:
        """The integer whose plural form a value takes, by CLDR's rule: gettext knows integers only, and "0,5 point" is
        one in French. Polish has a form for fractions alone; most of its nouns have the few's there ("1,5 sekundy").
        """
        if value == int(value):
            return int(value)
        return _LIKE.get(self.locale.language, {}).get(self.locale.plural_form(value), 100)

    def with_unit(self, value: Decimal, unit: Unit, *, short: bool = False) -> str | None:
        """A value with CLDR's unit name, without isolation; None if CLDR has no such unit.

        short: the shortest usual form, for axes and where space is tight.
        """
        if unit not in CLDR:
            return None
        key, length = CLDR[unit]
        places = PLACES[unit]
        exact = half_up(value, places)
        if exact == exact.to_integral_value():  # "5" is shown, so it takes the plural form of 5, not of 5.0
            exact = exact.quantize(D(1))
        width: Literal["short", "long"] = "short" if short or length == "short" else "long"
        said, figure = self._unit(exact, key, width, places), self.plain(exact, places)
        if figure not in said:
            said = self._unit(D(100), key, width, places).replace(self.plain(100), figure, 1)
        if unit is Unit.MILLIMETRE_OF_MERCURY and self.language == "de":  # as doctors and devices write it there
            said = said.replace("mm Hg", "mmHg")
        return direction.signs_first(said) if self.right_to_left else said

    def _unit(self, value: Decimal, key: str, width: Literal["short", "long"], places: int) -> str:
        pattern = "#,##0" + ("." + "#" * places if places else "")
        said = str(format_unit(value, key, length=width, format=pattern, locale=self.unit_locale))
        if key in said:  # Babel has no long name: days, in Arabic
            said = str(format_unit(value, key, length="short", format=pattern, locale=self.unit_locale))
        return said

    def weekday(self, number: int) -> str:
        """Monday is 0. The stand-alone form, not the one used inside a sentence."""
        return str(get_day_names("wide", context="stand-alone", locale=self.locale)[number])

    def day(self, day: date) -> str:
        """Weekday, day and month: "Monday, 30 March". Write it after a colon: other languages would decline it."""
        return self._first(str(format_date(day, format=_full_without_year(self.locale), locale=self.locale)), day)

    def full_date(self, day: date) -> str:
        """Day, month and year: "30 March 2026"."""
        return self._first(str(format_date(day, format="long", locale=self.locale)), day)

    def day_of_year(self, day: date) -> str:
        """Day and month: "30 March", "30. März", "30 marca"."""
        return self._first(str(format_skeleton("MMMMd", day, locale=self.locale)), day)

    def short_date(self, day: date) -> str:
        """Day and month, short, for axes: "30 Mar", "30. Sept."."""
        return self._first(str(format_skeleton("MMMd", day, locale=self.locale)), day)

    def _first(self, said: str, day: date) -> str:
        """French counts the first day of a month as an ordinal, and CLDR does not: "1er mars"."""
        return _FIRST.sub("1er", said, count=1) if self.language == "fr" and day.day == 1 else said

    def time(self, at: time | datetime) -> str:
        """Hours and minutes of a local time, 24-hour clock: "07:30"."""
        return str(format_time(at, format="HH:mm", locale=self.locale))


@lru_cache(maxsize=32)
def _full_without_year(locale: Locale) -> str:
    pattern = str(locale.date_formats["full"].pattern)
    return _YEAR.sub("", pattern)


@lru_cache(maxsize=len(LANGUAGES))
def numbers(language: str) -> Numbers:
    return Numbers(language)
