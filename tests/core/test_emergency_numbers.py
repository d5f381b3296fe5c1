"""The numbers of core.references.emergency_numbers, held against the short numbers of the phonenumbers library."""

import pytest
from phonenumbers.shortnumberinfo import is_emergency_number

from core.references.emergency_numbers import DEFAULT, NUMBERS, number_for

MEDICAL_LINES_THE_LIBRARY_LACKS = {"PE": "106", "MA": "150"}  # it lists police and fire only
EUROPE = (
    "AT", "BE", "BG", "CY", "CZ", "DE", "DK", "EE", "ES", "FI", "FR", "GR", "HR", "HU", "IT", "LT", "LU", "LV",
    "NL", "PL", "PT", "RO", "SE", "SI", "SK",
)  # fmt: skip


@pytest.mark.parametrize("country", sorted(NUMBERS.keys() - MEDICAL_LINES_THE_LIBRARY_LACKS.keys()))
def test_a_number_we_print_is_an_emergency_number_there(country: str) -> None:
    assert is_emergency_number(number_for(country), country)


@pytest.mark.parametrize("country", EUROPE)
def test_the_european_number_is_one_wherever_we_print_it_for_want_of_another(country: str) -> None:
    assert number_for(country) == DEFAULT
    assert is_emergency_number(DEFAULT, country)


def test_a_country_the_library_disagrees_about_is_named_here() -> None:
    assert {c: NUMBERS[c] for c in MEDICAL_LINES_THE_LIBRARY_LACKS} == MEDICAL_LINES_THE_LIBRARY_LACKS
