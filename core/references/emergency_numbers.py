"""Emergency telephone numbers by country, with the provenance of each, and what to say if the country is unknown.

READ: seen on the page named. SECOND_HAND: seen in a page that reports the source. MEMORY: common knowledge, not looked
up; to be checked before a country is served.
"""

from __future__ import annotations

from dataclasses import dataclass

from core.sources import Seen, Source


@dataclass(frozen=True, slots=True)
class EmergencyNumber:
    """The published number: the ambulance's if it has its own, else the general one."""

    number: str
    source: str
    seen: Seen


SOURCE = Source(
    key="emergency_numbers",
    cite="Emergency numbers as they are printed for the public; each row names where it was seen",
    population="anybody in the country",
    seen=Seen.MEMORY,
    note="Held in the tests against the short numbers of the phonenumbers library.",
)
SOURCES = (SOURCE,)

EU = "frequentbusinesstraveler.com 2012, emergency numbers for travellers: 112 is the standard across the EU"
TRAVEL = "frequentbusinesstraveler.com 2012, emergency numbers for travellers"
FCC = "US Federal Communications Commission on 112 in the European Union and 911 at home, as reproduced on a web page"
KNOWN = "common knowledge"

READ, SECOND_HAND, MEMORY = Seen.READ, Seen.SECOND_HAND, Seen.MEMORY

DEFAULT = "112"  # also reached from mobile phones in most countries
UNKNOWN_COUNTRY: tuple[tuple[str, str], ...] = (("112", "Europe"), ("911", "North America"))
"""For "your local emergency number (112 in Europe, 911 in North America)": never one flat number for a country that
is not known."""

EMERGENCY_NUMBERS: dict[str, EmergencyNumber] = {  # by ISO 3166 code
    **{
        code: EmergencyNumber("112", EU, SECOND_HAND)
        for code in (
            "AT", "BE", "BG", "CY", "CZ", "DE", "DK", "EE", "ES", "FI", "FR", "GR", "HR", "HU", "IT", "LT", "LU",
            "LV", "MT", "NL", "PL", "PT", "RO", "SE", "SI", "SK",
        )
    },
    "GB": EmergencyNumber("999", "starsinsider.com on the history of emergency numbers", SECOND_HAND),
    "IE": EmergencyNumber("999", KNOWN, MEMORY),
    "US": EmergencyNumber("911", FCC, SECOND_HAND),
    "CA": EmergencyNumber("911", KNOWN, MEMORY),
    "NZ": EmergencyNumber("111", "wildabouttravel.boardingarea.com 2016", SECOND_HAND),
    "AU": EmergencyNumber("000", "wildabouttravel.boardingarea.com 2016", SECOND_HAND),
    "IL": EmergencyNumber("101", TRAVEL, SECOND_HAND),
    "TR": EmergencyNumber("112", TRAVEL, SECOND_HAND),
    **{
        code: EmergencyNumber(number, KNOWN, MEMORY)
        for code, number in (
            ("CH", "144"), ("NO", "113"), ("IS", "112"), ("UA", "103"), ("MX", "911"), ("AR", "911"), ("CL", "131"),
            ("CO", "123"), ("PE", "106"), ("UY", "911"), ("EC", "911"), ("BR", "192"), ("IN", "112"), ("JP", "119"),
            ("SG", "995"), ("ZA", "112"), ("EG", "123"), ("SA", "997"), ("AE", "998"), ("JO", "911"), ("MA", "150"),
            ("DZ", "14"), ("TN", "190"), ("LB", "140"), ("IQ", "122"), ("KW", "112"), ("QA", "999"), ("BH", "999"),
            ("OM", "9999"),
        )
    },
}  # fmt: skip


def emergency_number(country: str) -> EmergencyNumber | None:
    """The number of a country; None if unknown: then say `UNKNOWN_COUNTRY` instead of a number."""
    return EMERGENCY_NUMBERS.get(country.upper())


def number_for(country: str) -> str:
    """The number to print for a country; 112 if unknown."""
    known = emergency_number(country)
    return known.number if known else DEFAULT
