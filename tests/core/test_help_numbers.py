"""Emergency numbers and helplines by country, each with its source."""

from __future__ import annotations

from core.references.emergency_numbers import EMERGENCY_NUMBERS, UNKNOWN_COUNTRY, emergency_number, number_for
from core.references.helplines import HELPLINES, Topic, helpline
from core.sources import Seen


def test_a_country_has_its_own_number_and_an_unknown_one_has_none():
    known = emergency_number("gb")
    assert known is not None and known.number == "999"
    assert emergency_number("") is None
    assert ("112", "Europe") in UNKNOWN_COUNTRY and ("911", "North America") in UNKNOWN_COUNTRY


def test_the_short_form_falls_back_to_112():
    assert (number_for("US"), number_for("PL"), number_for("XX")) == ("911", "112", "112")


def test_every_number_is_digits_and_says_where_it_is_from():
    for entry in EMERGENCY_NUMBERS.values():
        assert entry.number.isdecimal() and entry.source
    assert {e.seen for e in EMERGENCY_NUMBERS.values()} <= {Seen.READ, Seen.SECOND_HAND, Seen.MEMORY}


def test_a_helpline_is_known_by_country_or_not_at_all():
    line = helpline(Topic.CRISIS, "gb")
    assert line is not None and line.number == "116 123"
    assert helpline(Topic.EATING, "gb") is not None
    assert helpline(Topic.CRISIS, "XX") is None


def test_every_helpline_can_be_reached_and_says_where_it_is_from():
    for table in HELPLINES.values():
        for line in table.values():
            assert (line.number or line.site) and line.name and line.source
