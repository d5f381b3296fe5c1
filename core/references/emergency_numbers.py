"""Emergency telephone numbers by country: what is printed for the public to ring for an ambulance.

112 also works on mobile phones in most countries. A test holds the table against another library's.
"""

from __future__ import annotations

from core.sources import Seen, Source

SOURCE = Source(
    key="emergency_numbers",
    cite="Emergency numbers as national authorities print them for the public",
    population="anybody in the country",
    seen=Seen.MEMORY,
    note="From memory; held in the tests against the short numbers of the phonenumbers library.",
)
SOURCES = (SOURCE,)

DEFAULT = "112"
NUMBERS: dict[str, str] = {  # ISO 3166 country code -> the number printed for the public (from memory, well known)
    "GB": "999", "IE": "999", "MT": "112",
    "US": "911", "CA": "911", "MX": "911", "AR": "911", "CL": "131", "CO": "123", "PE": "106",
    "AU": "000", "NZ": "111", "IN": "112", "JP": "119", "SG": "995", "ZA": "112", "BR": "192",
    "EG": "123", "SA": "997", "AE": "998", "JO": "911", "MA": "150", "DZ": "14", "TN": "190", "LB": "140", "IQ": "122",
    "CH": "144", "NO": "113", "TR": "112", "UA": "103", "IL": "101",
}  # fmt: skip


def number_for(country: str) -> str:
    """The ambulance or general emergency number to print for a country; 112 where we do not know better."""
    return NUMBERS.get(country.upper(), DEFAULT)
