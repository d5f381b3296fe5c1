"""A body measure understands what it displays, in every unit, and no text makes it raise."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.language import words_for
from core.measures import MEASURES
from core.measures.measure import Measure, MeasureKind, Misunderstood, Understood
from core.quantity import Unit, convert, convertible, half_up, in_two_units

D = Decimal
ENGLISH = words_for("en")
ASKED = [m for m in MEASURES.values() if m.kind in (MeasureKind.BODY, MeasureKind.ONCE, MeasureKind.RATING)]
SINGLE = [m for m in ASKED if m.key != "blood_pressure"]
IN_UNITS = [(m, unit) for m in SINGLE for unit in m.units if unit not in (Unit.STONE, Unit.FOOT)]


@pytest.mark.parametrize("measure", ASKED, ids=lambda m: m.key)
@given(text=st.one_of(st.text(max_size=40), st.from_regex(r"[0-9/.,'\" a-z-]{0,16}", fullmatch=True)))
def test_no_text_breaks_it(measure: Measure, text: str):
    assert measure.understand is not None
    assert isinstance(measure.understand(text, ENGLISH, None), Understood | Misunderstood)


@pytest.mark.parametrize("measure, unit", IN_UNITS, ids=[f"{m.key}-{unit}" for m, unit in IN_UNITS])
@given(data=st.data())
def test_a_value_shown_in_a_unit_is_understood_again(measure: Measure, unit: Unit, data):
    low, high = measure.bounds.usual.low, measure.bounds.usual.high
    assert low is not None
    assert high is not None
    places = 2 if unit is Unit.METRE else measure.places
    value = data.draw(st.decimals(low, high, places=measure.places))
    shown = half_up(convert(value, measure.unit, unit) if convertible(measure.unit, unit) else value, places)
    said = "" if unit is Unit.POINT else f" {unit.value}"
    assert measure.understand is not None
    heard = measure.understand(f"{shown:f}{said}", ENGLISH, None)
    assert isinstance(heard, Understood)
    assert heard.value == (convert(shown, unit, measure.unit) if said else shown)


@given(st.decimals(40, 200, places=1))
def test_a_weight_shown_in_stones_and_pounds_is_understood_again(weight: Decimal):
    stones, pounds = in_two_units(weight, Unit.KILOGRAM, Unit.POUND, 14, places=1)
    understand = MEASURES["weight"].understand
    assert understand is not None
    heard = understand(f"{stones} st {pounds} lb", ENGLISH, Unit.STONE)
    assert isinstance(heard, Understood)
    assert heard.value == convert(stones * 14 + pounds, Unit.POUND, Unit.KILOGRAM)


@given(st.decimals(140, 205, places=1))
def test_a_height_shown_in_feet_and_inches_is_understood_again(height: Decimal):
    feet, inches = in_two_units(height, Unit.CENTIMETRE, Unit.INCH, 12, places=1)
    understand = MEASURES["height"].understand
    assert understand is not None
    heard = understand(f"{feet} ft {inches} in", ENGLISH, Unit.INCH)
    assert isinstance(heard, Understood)
    assert heard.value == convert(feet * 12 + inches, Unit.INCH, Unit.CENTIMETRE)


@given(st.integers(85, 185), st.integers(45, 80))
def test_a_pressure_shown_is_understood_again(systolic: int, diastolic: int):
    understand = MEASURES["blood_pressure"].understand
    assert understand is not None
    for text in (f"{systolic}/{diastolic}", f"{systolic} over {diastolic}", f"{systolic}/{diastolic} mmHg"):
        heard = understand(text, ENGLISH, None)
        assert isinstance(heard, Understood)
        assert (heard.value, heard.second) == (D(systolic), D(diastolic))


@pytest.mark.parametrize(
    "typed, key",
    [
        pytest.param("36", "waist", id="a waist in inches"),
        pytest.param("18", "resting_heart_rate", id="beats in 15 seconds"),
        pytest.param("5.7", "height", id="feet and inches"),
        pytest.param("11", "weight", id="stones"),
    ],
)
def test_a_number_of_another_unit_typed_bare_is_never_taken_as_usual(typed: str, key: str):
    measure = MEASURES[key]
    assert measure.understand is not None
    heard = measure.understand(typed, ENGLISH, None)
    assert isinstance(heard, Misunderstood) or heard.value not in measure.bounds.possible
