"""Medicines that hold the pulse down are found by name, inflected and misspelt."""

from __future__ import annotations

import pytest

from core.language.rate_limiting_medicines import RATE_LIMITING_MEDICINES, rate_limiting_medicine


@pytest.mark.parametrize(
    ("typed", "name"),
    [
        ("I am on Bisoprolol 2.5 mg", "bisoprolol"),
        ("biorę bisoprololem rano", "bisoprolol"),
        ("tomo metroprolol por la noche", "metoprolol"),
        ("seit März nehme ich Ivabradin", "ivabradine"),
        ("أتناول بيسوبرولول", "bisoprolol"),
        ("they put me on beta blockers", "beta-blocker"),
        ("je prends un bêtabloquant", "beta-blocker"),
    ],
)
def test_a_medicine_is_found_in_a_text(typed, name):
    assert rate_limiting_medicine(typed) == name


@pytest.mark.parametrize("typed", ["aspirin and ramipril", "no medicines", "82.4", ""])
def test_other_medicines_are_none_of_them(typed):
    assert rate_limiting_medicine(typed) is None


@pytest.mark.parametrize("name", RATE_LIMITING_MEDICINES)
def test_each_is_found_by_every_spelling(name):
    assert {rate_limiting_medicine(stem) for stem in RATE_LIMITING_MEDICINES[name]} == {name}
