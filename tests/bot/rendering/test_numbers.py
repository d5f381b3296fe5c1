"""Amounts, differences, dates and times as each language writes them."""

from __future__ import annotations

from datetime import UTC, date, datetime, time
from decimal import Decimal
from zoneinfo import ZoneInfo

import pytest

from bot.foundation.reader import Reader
from bot.rendering.direction import FSI, PDI
from bot.rendering.voice import Html, Voice, voice
from core.language import LANGUAGES
from core.quantity import Amount, Unit, convert

D = Decimal


def amount(value: str, unit: Unit, language: str = "en", measure: str = "", second: str = "") -> str:
    said = voice(Reader(language)).amount(Amount(D(value), unit), measure=measure, second=D(second) if second else None)
    return said.replace("\u202f", " ").replace("\u00a0", " ").replace(FSI, "").replace(PDI, "")


@pytest.mark.parametrize(
    ("value", "unit", "language", "said"),
    [
        ("82.4", Unit.KILOGRAM, "en", "82.4 kg"),
        ("82.0", Unit.KILOGRAM, "en", "82 kg"),  # 82 typed is 82 shown
        ("82.4", Unit.KILOGRAM, "de", "82,4 kg"),
        ("82.4", Unit.KILOGRAM, "fr", "82,4 kg"),
        ("82.4", Unit.KILOGRAM, "pl", "82,4 kg"),
        ("82.4", Unit.KILOGRAM, "es", "82,4 kg"),
        ("82.4", Unit.KILOGRAM, "ar", "82.4 كغم"),
        ("37.37916666666666666666666667", Unit.KILOGRAM, "en", "37.4 kg"),
        ("24.95", Unit.KILOGRAM_PER_SQUARE_METRE, "en", "25"),  # half up (D1), not to even
        ("172", Unit.STONE, "en", "172 st"),
        ("33.5", Unit.INCH, "en", "33.5 in"),
        ("72", Unit.BEATS_PER_MINUTE, "en", "72 beats a minute"),
        ("1", Unit.REPETITION, "en", "1 stand"),
        ("12", Unit.REPETITION, "en", "12 stands"),
        ("0.6", Unit.SESSION, "en", "1 session"),  # the form follows the rounded number
        ("7", Unit.POINT, "en", "7 out of 10"),
        ("0.851", Unit.RATIO, "de", "0,85"),
        ("150", Unit.MINUTE, "en", "150 minutes"),
        ("8.44", Unit.SECOND, "de", "8,4 Sekunden"),
        ("1.0", Unit.SECOND, "de", "1 Sekunde"),  # a whole number takes the form of a whole number
        ("25.0", Unit.SECOND, "pl", "25 sekund"),
        ("22.5", Unit.SECOND, "pl", "22,5 sekundy"),
        ("1.6", Unit.REPETITION, "fr", "1,6 lever"),  # in French all below two is singular
        ("2.5", Unit.REPETITION, "fr", "2,5 levers"),
        ("1.6", Unit.REPETITION, "en", "1.6 stands"),
        ("90", Unit.MINUTE, "pl", "90 minut"),
        ("1234.5", Unit.METRE, "en", "1,234.5 m"),
        ("-2.1", Unit.KILOGRAM, "en", "-2.1 kg"),
    ],
)
def test_an_amount_reads(value: str, unit: Unit, language: str, said: str) -> None:
    assert amount(value, unit, language) == said


def test_stones_and_pounds_are_composed_and_carry() -> None:
    assert amount("12.2857142857", Unit.STONE) == "12 st 4 lb"
    assert amount(str(convert(D("13.98"), Unit.POUND, Unit.STONE)), Unit.STONE) == "1 st"  # never 0 st 14 lb
    assert amount(str(convert(D("9.5"), Unit.POUND, Unit.STONE)), Unit.STONE) == "9.5 lb"


def test_only_a_height_in_inches_is_told_in_feet() -> None:
    assert amount("66", Unit.INCH, measure="height") == "5 ft 6 in"
    assert amount("66", Unit.INCH, measure="waist") == "66 in"
    assert amount("72", Unit.INCH, measure="height") == "6 ft"


def test_a_mile_is_told_in_minutes_and_seconds_with_the_pulse() -> None:
    assert amount("14.5", Unit.MINUTE, measure="walk_mile", second="120") == "14 min 30 sec, 120 beats a minute"


@pytest.mark.parametrize(
    ("language", "said"), [("en", "128/82 mmHg"), ("de", "128/82 mmHg"), ("ar", "128/82 ملم زئبقي")]
)
def test_a_pressure_is_two_numbers_and_one_unit(language: str, said: str) -> None:
    assert amount("128.4", Unit.MILLIMETRE_OF_MERCURY, language, second="81.6") == said


def test_a_difference_is_told_without_its_sign_and_in_small_units() -> None:
    v = voice(Reader("en"))
    assert v.size(Amount(D("-2.1"), Unit.KILOGRAM)) == "2.1 kg"
    assert v.size(Amount(D("-0.3"), Unit.STONE)) == "4.2\u00a0lb" or v.size(Amount(D("-0.3"), Unit.STONE)) == "4.2 lb"
    assert v.size(Amount(D("-1"), Unit.POINT)) == "1 point"
    assert v.size(Amount(D("-8"), Unit.BEATS_PER_MINUTE)) == "8 beats"


def test_a_coach_reads_signs() -> None:
    v = voice(Reader("de"))
    assert v.signed(Amount(D("-2.1"), Unit.KILOGRAM)).replace("\u00a0", " ") == "\u22122,1 kg"
    assert v.signed(Amount(D("2.1"), Unit.KILOGRAM)).replace("\u00a0", " ") == "+2,1 kg"
    assert not v.signed(Amount(D(0), Unit.KILOGRAM)).startswith(("+", "\u2212"))


@pytest.mark.parametrize(
    ("language", "day", "full", "short"),
    [
        ("en", "Monday, 30 March", "30 March 2026", "30 Mar"),
        ("de", "Montag, 30. März", "30. März 2026", "30. März"),
        ("es", "lunes, 30 de marzo", "30 de marzo de 2026", "30 mar"),
        ("fr", "lundi 30 mars", "30 mars 2026", "30 mars"),
        ("pl", "poniedziałek, 30 marca", "30 marca 2026", "30 mar"),
        ("ar", "الاثنين، 30 مارس", "30 مارس 2026", "30 مارس"),
    ],
)
def test_a_date_reads(language: str, day: str, full: str, short: str) -> None:
    n = voice(Reader(language)).numbers
    at = date(2026, 3, 30)
    assert (n.day(at), n.full_date(at), n.short_date(at)) == (day, full, short)


def test_the_first_of_a_month_is_an_ordinal_in_french() -> None:
    n, first, eleventh = voice(Reader("fr")).numbers, date(2026, 3, 1), date(2026, 3, 11)
    assert (n.day(first), n.full_date(first)) == ("dimanche 1er mars", "1er mars 2026")
    assert (n.day_of_year(first), n.short_date(first)) == ("1er mars", "1er mars")
    assert (n.day(eleventh), n.full_date(eleventh)) == ("mercredi 11 mars", "11 mars 2026")
    assert voice(Reader("en")).numbers.full_date(first) == "1 March 2026"


def test_a_short_date_is_an_abbreviation_where_the_language_marks_one() -> None:
    april = date(2026, 4, 20)
    assert voice(Reader("de")).short_date(april) == "20. Apr."
    assert voice(Reader("fr")).short_date(april) == "20 avr."


def test_an_abbreviation_at_the_end_of_a_sentence_is_its_full_stop() -> None:
    v = voice(Reader("de"))
    time_taken = v.amount(Amount(D("17.5"), Unit.MINUTE), measure="walk_mile")
    assert time_taken.replace("\u00a0", " ") == "17 Min. 30 Sek."
    assert v.say("So: {what}.", what=time_taken) == f"So: {time_taken}"
    assert v.say("So: <b>{what}</b>.", what=time_taken) == f"So: <b>{time_taken}</b>"
    assert v.plain("So: {what}.", what=time_taken) == f"So: {time_taken}"
    assert v.say("So: {what}. And {other}.", what=time_taken, other="4 kg") == f"So: {time_taken} And 4 kg."


def test_a_range_names_its_unit_once() -> None:
    v = voice(Reader("en"))
    pulse = v.span(Amount(D(60), Unit.BEATS_PER_MINUTE), Amount(D(100), Unit.BEATS_PER_MINUTE))
    assert pulse == ("60", "100 beats a minute")
    odd = v.span(Amount(D(1), Unit.REPETITION), Amount(D(8), Unit.REPETITION))
    assert odd == ("1 stand", "8 stands")  # "1 to 8 stands" would be as good, but not in every language
    assert v.span(Amount(D(4), Unit.POINT), Amount(D(6), Unit.POINT)) == ("4 out of 10", "6 out of 10")
    pressure = Amount(D(110), Unit.MILLIMETRE_OF_MERCURY), Amount(D(130), Unit.MILLIMETRE_OF_MERCURY)
    assert v.span(*pressure, second=D(80)) == ("110/80 mmHg", "130/80 mmHg")


def test_a_coach_without_a_name_has_a_capital_where_a_sentence_begins() -> None:
    v = voice(Reader("en"))
    nobody = v.coach("")
    assert v.say("{coach} reads it. {coach} and {coach}.", coach=nobody) == (
        "Your coach reads it. Your coach and your coach."
    )
    assert v.plain("{coach}!", coach=nobody) == "Your coach!"
    assert v.say("{coach} reads it.", coach=v.coach("de la Cruz")) == "de la Cruz reads it."


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_day_carries_no_year_and_a_time_has_24_hours(language: str) -> None:
    n = voice(Reader(language)).numbers
    assert "2026" not in n.day(date(2026, 3, 30))
    assert n.time(time(19, 5)) == "19:05"


def test_an_instant_is_told_on_the_readers_own_clock() -> None:
    v = voice(Reader("en", zone=ZoneInfo("Asia/Tokyo")))
    at = datetime(2026, 3, 29, 22, 30, tzinfo=UTC)
    assert (v.local_day(at), v.local_time(at)) == ("Monday, 30 March", "07:30")


def test_values_are_escaped_once_and_phrases_nest() -> None:
    v = voice(Reader("en"))
    inner = v.say("<b>{name}</b>", name="A & B")
    assert v.say("{inner}, {more}", inner=inner, more="<") == "<b>A &amp; B</b>, &lt;"
    assert isinstance(v.typed("<"), Html)


def test_an_unknown_language_reads_english() -> None:
    assert voice(Reader("xx")).amount(Amount(D("82.4"), Unit.KILOGRAM)) == "82.4 kg"


def test_a_reader_can_be_a_key() -> None:
    assert voice(Reader("en")) is voice(Reader("en"))
    assert isinstance(voice(Reader("en")), Voice)
