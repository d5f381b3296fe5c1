"""Places: the time zone of a city or country named in any shipped language, and the name of a zone.

The names are CLDR's, through Babel: the example city of each zone, the countries, and the zone keys themselves
("Europe/Lisbon"). Names from every language are accepted in every language, because people keep using their own names
for places.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable
from difflib import get_close_matches
from functools import lru_cache
from zoneinfo import available_timezones

from babel import Locale
from babel.core import get_global
from babel.dates import get_timezone, get_timezone_location

from bot.rendering.numbers import LOCALES
from core.language import LANGUAGES
from core.references.emergency_numbers import number_for

CLOSE = 0.8  # ours: tolerates one typo in a word of five or more letters
LEAD = 5  # words, with a name misspelt at the end: "i am now in lisbonn"
SHORTEST_GUESS = 4
MOST = 12

# Cities without a zone of their own in CLDR (our choice by population and capitals; common knowledge).
OTHER_CITIES: dict[str, str] = {
    "barcelona": "Europe/Madrid", "sevilla": "Europe/Madrid", "valencia": "Europe/Madrid",
    "munich": "Europe/Berlin", "munchen": "Europe/Berlin", "hamburg": "Europe/Berlin", "cologne": "Europe/Berlin",
    "koln": "Europe/Berlin", "frankfurt": "Europe/Berlin", "stuttgart": "Europe/Berlin", "leipzig": "Europe/Berlin",
    "dresden": "Europe/Berlin", "monachium": "Europe/Berlin",
    "manchester": "Europe/London", "birmingham": "Europe/London", "leeds": "Europe/London",
    "liverpool": "Europe/London", "bristol": "Europe/London", "glasgow": "Europe/London",
    "york": "Europe/London", "sheffield": "Europe/London", "nottingham": "Europe/London", "oxford": "Europe/London",
    "cambridge": "Europe/London", "leicester": "Europe/London", "bath": "Europe/London", "norwich": "Europe/London",
    "edinburgh": "Europe/London", "cardiff": "Europe/London", "belfast": "Europe/London",
    "lyon": "Europe/Paris", "marseille": "Europe/Paris", "toulouse": "Europe/Paris", "bordeaux": "Europe/Paris",
    "lille": "Europe/Paris", "nice": "Europe/Paris", "nantes": "Europe/Paris", "strasbourg": "Europe/Paris",
    "krakow": "Europe/Warsaw", "cracow": "Europe/Warsaw", "gdansk": "Europe/Warsaw", "wroclaw": "Europe/Warsaw",
    "poznan": "Europe/Warsaw", "lodz": "Europe/Warsaw", "katowice": "Europe/Warsaw", "lublin": "Europe/Warsaw",
    "porto": "Europe/Lisbon", "geneva": "Europe/Zurich", "geneve": "Europe/Zurich", "genf": "Europe/Zurich",
    "basel": "Europe/Zurich", "bern": "Europe/Zurich", "milan": "Europe/Rome", "milano": "Europe/Rome",
    "naples": "Europe/Rome", "the hague": "Europe/Amsterdam", "rotterdam": "Europe/Amsterdam",
    "boston": "America/New_York", "washington": "America/New_York", "miami": "America/New_York",
    "philadelphia": "America/New_York", "atlanta": "America/New_York", "houston": "America/Chicago",
    "dallas": "America/Chicago", "san francisco": "America/Los_Angeles", "seattle": "America/Los_Angeles",
    "san diego": "America/Los_Angeles", "montreal": "America/Toronto", "ottawa": "America/Toronto",
    "guadalajara": "America/Mexico_City", "medellin": "America/Bogota", "cordoba": "America/Argentina/Cordoba",
    "rio de janeiro": "America/Sao_Paulo", "mumbai": "Asia/Kolkata", "delhi": "Asia/Kolkata",
    "new delhi": "Asia/Kolkata", "alexandria": "Africa/Cairo", "marrakesh": "Africa/Casablanca",
    "rabat": "Africa/Casablanca", "jeddah": "Asia/Riyadh", "mecca": "Asia/Riyadh", "abu dhabi": "Asia/Dubai",
    "gizeh": "Africa/Cairo", "cape town": "Africa/Johannesburg",
    "الاسكندريه": "Africa/Cairo", "جده": "Asia/Riyadh", "مكه": "Asia/Riyadh", "ابو ظبي": "Asia/Dubai",
    "الرباط": "Africa/Casablanca", "مراكش": "Africa/Casablanca",
}  # fmt: skip

# States and provinces that tell a city from its namesake: "Paris, Texas". The zone where most of their people live.
STATES: dict[str, str] = {
    **dict.fromkeys(
        ("alabama", "arkansas", "illinois", "iowa", "kansas", "louisiana", "minnesota", "mississippi", "missouri",
         "nebraska", "north dakota", "oklahoma", "south dakota", "tennessee", "texas", "wisconsin"),
        "America/Chicago",
    ),
    **dict.fromkeys(
        ("connecticut", "delaware", "florida", "kentucky", "maine", "maryland", "massachusetts", "michigan",
         "new hampshire", "new jersey", "new york state", "north carolina", "ohio", "pennsylvania", "rhode island",
         "south carolina", "vermont", "virginia", "west virginia"),
        "America/New_York",
    ),
    **dict.fromkeys(("colorado", "montana", "new mexico", "utah", "wyoming"), "America/Denver"),
    **dict.fromkeys(("california", "nevada", "oregon", "washington state"), "America/Los_Angeles"),
    "arizona": "America/Phoenix", "idaho": "America/Boise", "indiana": "America/Indiana/Indianapolis",
    "alaska": "America/Anchorage", "hawaii": "Pacific/Honolulu", "ontario": "America/Toronto",
    "quebec": "America/Toronto", "british columbia": "America/Vancouver", "alberta": "America/Edmonton",
}  # fmt: skip

# Countries with several zones when only the country is named: only these few are guessed, where nearly everybody lives
# in one zone.
MAIN_ZONE = {
    "ES": "Europe/Madrid", "PT": "Europe/Lisbon", "DE": "Europe/Berlin", "NZ": "Pacific/Auckland",
    "CN": "Asia/Shanghai", "CY": "Asia/Nicosia", "CL": "America/Santiago", "EC": "America/Guayaquil",
    "AR": "America/Argentina/Buenos_Aires", "UA": "Europe/Kyiv", "MY": "Asia/Kuala_Lumpur", "PS": "Asia/Gaza",
    "UZ": "Asia/Tashkent", "VN": "Asia/Ho_Chi_Minh",
}  # fmt: skip

# Large countries named alone: the zones where most people live, most populous first.
LARGE: dict[str, tuple[str, ...]] = {
    "US": ("America/New_York", "America/Chicago", "America/Los_Angeles", "America/Denver", "America/Phoenix",
           "Pacific/Honolulu"),
    "CA": ("America/Toronto", "America/Vancouver", "America/Edmonton", "America/Winnipeg", "America/Halifax",
           "America/St_Johns"),
    "AU": ("Australia/Sydney", "Australia/Brisbane", "Australia/Perth", "Australia/Adelaide", "Australia/Darwin"),
    "BR": ("America/Sao_Paulo", "America/Fortaleza", "America/Manaus", "America/Cuiaba", "America/Rio_Branco"),
    "MX": ("America/Mexico_City", "America/Monterrey", "America/Tijuana", "America/Cancun", "America/Hermosillo"),
    "RU": ("Europe/Moscow", "Asia/Yekaterinburg", "Asia/Novosibirsk", "Europe/Samara", "Asia/Vladivostok"),
    "ID": ("Asia/Jakarta", "Asia/Makassar", "Asia/Jayapura"),
    "KZ": ("Asia/Almaty",),
}  # fmt: skip

# Short and everyday country names missing from CLDR.
COUNTRY_WORDS: dict[str, str] = {
    "uk": "GB", "england": "GB", "scotland": "GB", "wales": "GB", "northern ireland": "GB", "great britain": "GB",
    "britain": "GB", "inglaterra": "GB", "angleterre": "GB", "grossbritannien": "GB", "anglia": "GB", "szkocja": "GB",
    "escocia": "GB", "ecosse": "GB", "schottland": "GB", "انجلترا": "GB", "بريطانيا": "GB",
    "usa": "US", "us": "US", "america": "US", "ee uu": "US", "eeuu": "US", "etats unis": "US", "امريكا": "US",
    "holland": "NL", "holanda": "NL", "hollande": "NL", "holandia": "NL", "هولندا": "NL", "uae": "AE",
    "emirates": "AE", "السعوديه": "SA", "saudi": "SA", "الامارات": "AE",
}  # fmt: skip

_ALIF = str.maketrans({"أ": "ا", "إ": "ا", "آ": "ا", "ة": "ه", "ى": "ي", "ـ": None, "ł": "l", "ß": "ss", "đ": "d"})


def plain(text: str) -> str:
    """Fold case, accents and punctuation: "São Paulo" is "sao paulo"."""
    folded = unicodedata.normalize("NFKD", text.casefold().translate(_ALIF))
    kept = "".join(" " if not c.isalnum() else c for c in folded if not unicodedata.combining(c))
    return " ".join(kept.split())


@lru_cache(maxsize=1)
def territory_of() -> dict[str, str]:
    """Zone key -> country code."""
    territories = get_global("zone_territories").items()
    return {zone: code for zone, code in territories if len(code) == 2 and code.isalpha() and code != "ZZ"}


@lru_cache(maxsize=1)
def _zones() -> tuple[str, ...]:
    """Zones somebody may live in: of a country, canonical, and known to this machine."""
    aliases = get_global("zone_aliases")
    known = available_timezones()
    return tuple(sorted(z for z in territory_of() if z in known and z not in aliases and not z.startswith("Etc/")))


@lru_cache(maxsize=len(LANGUAGES))
def _cities(language: str) -> dict[str, str]:
    """Zone key -> name of its city in a language."""
    locale = Locale.parse(LOCALES.get(language, language))
    named = {}
    for zone in _zones():
        named[zone] = str(get_timezone_location(get_timezone(zone), locale=locale, return_city=True))
    return named


@lru_cache(maxsize=1)
def _index() -> dict[str, tuple[str, ...]]:
    """Folded name -> candidate zones, in every shipped language."""
    found: dict[str, dict[str, None]] = {}

    def add(name: str, zones: Iterable[str]) -> None:
        if key := plain(name):
            found.setdefault(key, {}).update(dict.fromkeys(zones))

    for language in LANGUAGES:
        for zone, city in _cities(language).items():
            add(city, (zone,))
    for zone in _zones():
        add(zone.rpartition("/")[2], (zone,))
        add(zone, (zone,))
    for alias, zone in get_global("zone_aliases").items():
        if zone in territory_of() and "/" in alias and not alias.startswith(("Etc/", "US/", "SystemV/")):
            add(alias.rpartition("/")[2], (zone,))
    for name, zone in OTHER_CITIES.items():
        if plain(name) not in found:
            add(name, (zone,))
    for language in LANGUAGES:
        territories = Locale.parse(LOCALES.get(language, language)).territories
        for code, zones in _by_country().items():
            if named := territories.get(code):
                add(str(named), _of_country(code, zones))
    for name, code in COUNTRY_WORDS.items():
        add(name, _of_country(code, _by_country().get(code, ())))
    return {name: tuple(zones) for name, zones in found.items()}


def _of_country(code: str, zones: tuple[str, ...]) -> tuple[str, ...]:
    return (MAIN_ZONE[code],) if code in MAIN_ZONE else LARGE.get(code, zones)


@lru_cache(maxsize=1)
def _by_country() -> dict[str, tuple[str, ...]]:
    found: dict[str, list[str]] = {}
    for zone in _zones():
        found.setdefault(territory_of()[zone], []).append(zone)
    return {code: tuple(zones) for code, zones in found.items()}


@lru_cache(maxsize=4096)
def find_zones(text: str, language: str = "en") -> tuple[str, ...]:
    """Candidate zones for a place, most likely first; empty if nothing is similar.

    text: a city, country or zone key as people write it, in any shipped language, possibly with a typo or inside a
    sentence ("I am in Lisbon now"). language: whose names take precedence if a typo is ambiguous.
    """
    said = plain(text[:200])
    if not said:
        return ()
    index = _index()
    if said in index:
        return index[said]
    words = said.split()
    for state, zone in STATES.items():
        if said == state or said.endswith(f" {state}"):
            return (zone,)
    for length in range(min(4, len(words)), 0, -1):  # a name inside a sentence, longest first
        for start in range(len(words) - length + 1):
            piece = " ".join(words[start : start + length])
            if piece in index and (length > 1 or len(piece) >= SHORTEST_GUESS) and piece not in COUNTRY_WORDS:
                return index[piece]
    return _close(said, language) or (_close(words[-1], language) if len(words) <= LEAD else ())


def _close(said: str, language: str) -> tuple[str, ...]:
    if len(said) < SHORTEST_GUESS:
        return ()
    own = {plain(city): zone for zone, city in _cities(language if language in LANGUAGES else "en").items()}
    near = get_close_matches(said, list(own), n=3, cutoff=CLOSE) or get_close_matches(said, list(_index()), 3, CLOSE)
    near = [name for name in near if name[0] == said[0]]  # slips hardly ever hit the first letter; "woman" is not Oman
    found: dict[str, None] = {}
    for name in near:
        found.update(dict.fromkeys(_index()[name]))
    return tuple(found)[:MOST]


def country_of(zone: str) -> str:
    """The country code of a zone, or "" if it has none (UTC)."""
    return territory_of().get(zone) or territory_of().get(get_global("zone_aliases").get(zone, ""), "")


def emergency_number(country: str) -> str:
    """The number to call in a country: see `core.references.emergency_numbers`; 112 if unknown."""
    return number_for(country)


def place_name(zone: str, language: str, *, with_country: bool = False) -> str:
    """Name of a zone's city: "Lissabon". with_country: "Lissabon (Portugal)", to tell two apart."""
    language = language if language in LANGUAGES else "en"
    canonical = get_global("zone_aliases").get(zone, zone)
    city = _cities(language).get(canonical)
    if city is None:
        return zone.rpartition("/")[2].replace("_", " ") or zone
    country = country_of(canonical)
    if not with_country or not country:
        return city
    name = Locale.parse(LOCALES.get(language, language)).territories.get(country, country)
    return city if name == city else f"{city} ({name})"
