"""Which values are confirmed before they are stored, and what is suggested instead."""

from __future__ import annotations

from datetime import UTC, datetime
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.client import Profile
from core.language import words_for
from core.measures import MEASURES
from core.measures.measure import Understood
from core.quantity import Unit
from core.reading import Reading
from core.understanding.plausibility import Doubt, DoubtKind, doubt, is_jump

D = Decimal
EN = words_for("en")
NOBODY = Profile()
AT = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)


def asked_about(
    measure: str, typed: str, last: str = "", profile: Profile = NOBODY, prefer: Unit | None = None
) -> Doubt | None:
    """The doubt about the answer `typed` to the question for `measure`; last: the value of the newest reading, if
    any."""
    understand = MEASURES[measure].understand
    assert understand is not None
    understood = understand(typed, EN, prefer)
    assert isinstance(understood, Understood)
    upper, _, lower = last.partition("/")
    reading = Reading(measure, D(upper), AT, second=D(lower) if lower else None) if last else None
    return doubt(MEASURES[measure], understood, reading, profile)


@pytest.mark.parametrize(
    ("measure", "typed", "last"),
    [
        ("weight", "82.4", ""),
        ("weight", "82.4", "82"),
        ("weight", "79.1", "82"),
        ("weight", "181", "180"),
        ("weight", "212", "211"),  # above the usual, as it was last time
        ("waist", "94", "96"),
        ("resting_heart_rate", "72", "64"),
        ("resting_heart_rate", "38", "39"),
        ("blood_pressure", "128/82", "131/84"),
        ("energy", "0", "10"),
        ("height", "1.65", ""),
        ("activity_minutes", "0", "300"),
    ],
)
def test_a_likely_value_is_kept_without_asking(measure, typed, last):
    assert asked_about(measure, typed, last) is None


@pytest.mark.parametrize(
    ("measure", "typed", "last", "kind", "meant"),
    [
        pytest.param("weight", "824", "", DoubtKind.SLIPPED_POINT, "82.4", id="a-point-forgotten"),
        pytest.param("weight", "824", "82", DoubtKind.SLIPPED_POINT, "82.4", id="a-point-forgotten-with-history"),
        pytest.param("weight", "8.24", "82.4", DoubtKind.SLIPPED_POINT, "82.4", id="a-point-too-early"),
        pytest.param("waist", "945", "", DoubtKind.SLIPPED_POINT, "94.5", id="girth"),
        pytest.param("weight", "28.4", "82", DoubtKind.SWAPPED_DIGITS, "82.4", id="digits"),
        pytest.param("waist", "49", "94", DoubtKind.SWAPPED_DIGITS, "94", id="digits-of-a-girth"),
        pytest.param("resting_heart_rate", "27", "72", DoubtKind.SWAPPED_DIGITS, "72", id="digits-of-a-pulse"),
        pytest.param("weight", "181", "82", DoubtKind.WRONG_UNIT, "82.10021897", id="pounds"),
        pytest.param("waist", "36", "", DoubtKind.WRONG_UNIT, "91.44", id="inches"),
        pytest.param("height", "67", "", DoubtKind.WRONG_UNIT, "170.18", id="stature-in-inches"),
        pytest.param("resting_heart_rate", "18", "", DoubtKind.BEATS_COUNTED, "72", id="beats-in-15-s"),
        pytest.param("resting_heart_rate", "36", "72", DoubtKind.BEATS_COUNTED, "72", id="beats-in-30-s"),
        pytest.param("energy", "70", "", DoubtKind.SLIPPED_POINT, "7", id="out-of-a-hundred"),
        pytest.param("blood_pressure", "120/130", "", DoubtKind.SYSTOLIC_DIASTOLIC_SWAPPED, "130/120", id="W63"),
        pytest.param(
            "blood_pressure", "82/128", "", DoubtKind.SYSTOLIC_DIASTOLIC_SWAPPED, "128/82", id="the-wrong-way-round"
        ),
        pytest.param("blood_pressure", "12/8", "", DoubtKind.SLIPPED_POINT, "120/80", id="centimetres-of-mercury"),
    ],
)
def test_a_slip_is_asked_back_with_its_likely_meaning(measure, typed, last, kind, meant):
    found = asked_about(measure, typed, last)
    assert found is not None
    assert found.kind is kind
    assert found.meant is not None
    upper, _, lower = meant.partition("/")
    assert found.meant.value == D(upper)
    assert found.meant.second == (D(lower) if lower else None)


@pytest.mark.parametrize(
    ("measure", "typed", "last", "kind"),
    [
        ("weight", "3", "", DoubtKind.IMPOSSIBLE),
        ("weight", "0", "", DoubtKind.IMPOSSIBLE),
        ("height", "82", "", DoubtKind.IMPOSSIBLE),
        ("energy", "11", "", DoubtKind.IMPOSSIBLE),
        ("blood_pressure", "120/120", "", DoubtKind.IMPOSSIBLE),
        ("blood_pressure", "400/90", "", DoubtKind.IMPOSSIBLE),
        ("weight", "230 kg", "", DoubtKind.UNUSUAL),
        ("resting_heart_rate", "131", "", DoubtKind.UNUSUAL),
        ("weight", "75", "82", DoubtKind.JUMP),
        ("weight", "88", "82", DoubtKind.JUMP),
        ("weight", "78", "83", DoubtKind.JUMP),  # 87 would be no nearer
        ("waist", "80", "94", DoubtKind.JUMP),
    ],
)
def test_what_cannot_be_guessed_is_asked_about_without_a_guess(measure, typed, last, kind):
    assert asked_about(measure, typed, last) == Doubt(kind)


def test_a_weight_that_equals_the_stature_is_asked_about():
    assert asked_about("weight", "165", profile=Profile(stature=D(165))) == Doubt(DoubtKind.WEIGHT_FOR_HEIGHT)
    assert asked_about("weight", "165", last="164", profile=Profile(stature=D(165))) is None
    assert asked_about("weight", "165 kg", profile=Profile(stature=D(165))) is None


def test_a_weight_no_body_of_that_stature_has_is_asked_about():
    found = asked_about("weight", "190", profile=Profile(stature=D(158)))
    assert found is not None
    assert found.kind is DoubtKind.WRONG_UNIT
    assert found.meant is not None
    assert found.meant.unit is Unit.POUND


def test_a_client_who_uses_stones_most_likely_meant_pounds():
    found = asked_about("weight", "172", prefer=Unit.STONE)
    assert found is not None
    assert (found.kind, found.meant and found.meant.unit) == (DoubtKind.WRONG_UNIT, Unit.POUND)


def test_a_unit_that_was_typed_is_believed():
    assert asked_about("weight", "181 kg") is None
    found = asked_about("waist", "36 cm")
    assert found is not None
    assert found.kind is not DoubtKind.WRONG_UNIT


NUMBERS = st.one_of(
    st.decimals(min_value=-1000, max_value=100000, allow_nan=False),
    st.sampled_from([D("NaN"), D("Infinity"), D("-Infinity"), D("1E+400")]),
)


@given(
    st.sampled_from(sorted(MEASURES)), NUMBERS, st.none() | NUMBERS, st.none() | st.decimals(min_value=0, max_value=300)
)
def test_nothing_impossible_is_ever_kept_unasked(key, value, second, last):
    measure = MEASURES[key]
    reading = None if last is None else Reading(key, last, AT)
    found = doubt(measure, Understood(value, measure.unit, second=second), reading, Profile(stature=D(165)))
    fits = value.is_finite() and value in measure.bounds.possible
    assert found is not None or fits
    if found is not None and found.meant is not None:
        assert found.meant.value in measure.bounds.possible


@given(
    st.sampled_from(["weight", "waist", "resting_heart_rate", "six_minute_walk", "energy"]),
    st.decimals(min_value=0, max_value=400, places=1),
    st.decimals(min_value=0, max_value=400, places=1),
    st.none() | st.sampled_from([D(82), D(165), D(200)]),
    st.booleans(),
)
def test_what_is_likely_without_a_last_reading_stays_likely_with_one_unless_it_jumps(key, value, last, stature, said):
    measure, person = MEASURES[key], Profile(stature=stature)
    heard = Understood(value, measure.unit, said_unit=said)
    if doubt(measure, heard, None, person) is None and not is_jump(measure.bounds, value, last):
        assert doubt(measure, heard, Reading(key, last, AT), person) is None
