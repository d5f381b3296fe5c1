"""The numbers of core.references, compared with another library's: phonenumbers."""

import phonenumbers
import pytest
from phonenumbers.shortnumberinfo import is_emergency_number, is_possible_short_number_for_region

from core.references.emergency_numbers import EMERGENCY_NUMBERS, emergency_number
from core.references.helplines import CRISIS, EATING, Helpline

MEDICAL_LINES_THE_LIBRARY_LACKS = {"PE": "106", "MA": "150"}  # it lists police and fire only
EUROPEAN_UNION = (
    "AT", "BE", "BG", "CY", "CZ", "DE", "DK", "EE", "ES", "FI", "FR", "GR", "HR", "HU", "IT", "LT", "LU", "LV",
    "MT", "NL", "PL", "PT", "RO", "SE", "SI", "SK",
)  # fmt: skip
HELPLINES = [(country, line) for table in (CRISIS, EATING) for country, line in table.items() if line.number]


@pytest.mark.parametrize("country", sorted(EMERGENCY_NUMBERS.keys() - MEDICAL_LINES_THE_LIBRARY_LACKS.keys()))
def test_a_number_we_print_is_an_emergency_number_there(country: str) -> None:
    assert is_emergency_number(EMERGENCY_NUMBERS[country].number, country)


@pytest.mark.parametrize("country", EUROPEAN_UNION)
def test_the_european_number_is_printed_all_over_the_union(country: str) -> None:
    found = emergency_number(country)
    assert found is not None
    assert found.number == "112"


def test_a_country_the_library_disagrees_about_is_named_here() -> None:
    ours = {country: EMERGENCY_NUMBERS[country].number for country in MEDICAL_LINES_THE_LIBRARY_LACKS}
    assert ours == MEDICAL_LINES_THE_LIBRARY_LACKS


@pytest.mark.parametrize(("country", "line"), HELPLINES, ids=lambda x: x if isinstance(x, str) else x.name)
def test_a_helpline_can_be_dialled_in_its_country(country: str, line: Helpline) -> None:
    number = phonenumbers.parse(line.number, country)
    assert phonenumbers.is_possible_number(number) or is_possible_short_number_for_region(number, country)
