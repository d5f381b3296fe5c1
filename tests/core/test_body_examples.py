"""Worked examples of body mass index, girths and conversion: in, out, whose example, how it was seen.

read: in the source's own text; 2nd: in a report of it; derived: arithmetic or logic from a limit that was
read; memory: neither. W numbers are our own names of the examples.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from core.client import Caution
from core.measures import (
    bmi,
    waist,
    waist_to_height_ratio,
    waist_to_hip_ratio,
)
from core.measures.measure import NoReference
from core.quantity import Unit, convert, half_up, in_two_units
from tests.core.people import by, cm, kg, reading, someone

D = Decimal
KG, LB, CM, IN = Unit.KILOGRAM, Unit.POUND, Unit.CENTIMETRE, Unit.INCH


# --- body mass index ---

INDICES = [
    # id, weight, height, places, index, source, seen
    ("W01", "70", KG, "175", CM, 1, "22.9", "WHO page", "read"),
    ("W01-raw", "70", KG, "175", CM, 3, "22.857", "WHO page", "read"),
    ("W03", "68", KG, "165", CM, 2, "24.98", "CDC", "read"),
    ("W04", "150", LB, "65", IN, 2, "24.96", "CDC (with factor 703)", "read"),
    ("W05", "150", LB, "65", IN, 4, "24.9611", "exact units", "derived"),
    ("W08", "37.25", LB, "41.5", IN, 1, "15.2", "CDC growth-chart training", "read"),
    ("W09-raw", "80", KG, "179", CM, 3, "24.968", "Dutch public-health slide", "read"),
    ("W09", "80", KG, "179", CM, 1, "25.0", "decision D1", "derived"),
    ("W11", "124", LB, "69", IN, 1, "18.3", "CDC table", "read"),
    ("W12-raw", "125", LB, "69", IN, 2, "18.46", "CDC table (18.457 with 703, 18.459 exact)", "derived"),
    ("W12", "125", LB, "69", IN, 1, "18.5", "CDC table", "read"),
    ("W13", "168", LB, "69", IN, 1, "24.8", "CDC table", "read"),
    ("W15", "202", LB, "69", IN, 1, "29.8", "CDC table", "read"),
    ("W16", "203", LB, "69", IN, 1, "30.0", "CDC table", "read"),
    ("W17", "236", LB, "69", IN, 3, "34.851", "CDC table, exact units", "derived"),
    ("W19", "270", LB, "69", IN, 1, "39.9", "CDC table", "read"),
    ("W20", "271", LB, "69", IN, 1, "40.0", "CDC table", "read"),
]


@pytest.mark.parametrize(
    "weight, unit, height, length, places, expected",
    [pytest.param(*row[1:7], id=f"{row[0]} {row[7]} [{row[8]}]") for row in INDICES],
)
def test_a_body_mass_index_is_the_one_printed(weight, unit, height, length, places, expected):
    assert half_up(bmi.index(kg(weight, unit), cm(height, length)), places) == D(expected)


@pytest.mark.parametrize(
    "weight, unit, height, length, wrong",
    [
        pytest.param("70", KG, "175", CM, ("23", "23.3"), id="W02 height squared rounded first"),
        pytest.param("150", LB, "65", IN, ("25.01",), id="W06 the old factor 704.5"),
    ],
)
def test_a_known_mistake_in_the_index_does_not_happen(weight, unit, height, length, wrong):
    exact = bmi.index(kg(weight, unit), cm(height, length))
    assert not {D(w) for w in wrong} & {half_up(exact, places) for places in (1, 2)}


CDC = [  # weight in lb at 69 in; the class CDC prints, whose limits are those of NICE (general)
    ("W11", "124", "underweight"),
    ("W12", "125", "healthy"),
    ("W13", "168", "healthy"),
    ("W14", "169", "overweight"),
    ("W15", "202", "overweight"),
    ("W16", "203", "obesity_1"),
    ("W17", "236", "obesity_1"),
    ("W18", "237", "obesity_2"),
    ("W19", "270", "obesity_2"),
    ("W20", "271", "obesity_3"),
]


@pytest.mark.parametrize("weight, band", [pytest.param(*row[1:], id=f"{row[0]} CDC table [read]") for row in CDC])
def test_the_ten_rows_of_the_cdc_table_fall_into_its_classes(weight, band):
    value = bmi.index(kg(weight, LB), cm("69", IN))
    assert by("nice_bmi", bmi.score(reading("bmi", value), someone(background="white"))) == band


CLASSES = [
    # id, index, person, reference, band, source, seen
    ("W01", "22.857", someone(), "who_bmi", "normal", "WHO page", "read"),
    ("W09", "24.968", someone(background="white"), "nice_bmi", "overweight", "decision D1", "derived"),
    ("W22a", "15.9", someone(), "who_bmi", "severe_thinness", "WHO limits", "read"),
    ("W22b", "16.0", someone(), "who_bmi", "moderate_thinness", "WHO limits", "read"),
    ("W22c", "16.9", someone(), "who_bmi", "moderate_thinness", "WHO limits", "read"),
    ("W22d", "17.0", someone(), "who_bmi", "mild_thinness", "WHO limits", "read"),
    ("W22e", "18.4", someone(), "who_bmi", "mild_thinness", "WHO limits", "read"),
    ("W22f", "18.5", someone(), "who_bmi", "normal", "WHO limits", "read"),
    ("W23a", "22.9", someone(background="chinese"), "nice_bmi_lower", "healthy", "NICE", "2nd"),
    ("W23b", "23.0", someone(background="chinese"), "nice_bmi_lower", "overweight", "NICE", "2nd"),
    ("W23c", "27.4", someone(background="chinese"), "nice_bmi_lower", "overweight", "NICE", "2nd"),
    ("W23d", "27.5", someone(background="chinese"), "nice_bmi_lower", "obesity_1", "NICE", "2nd"),
    ("W24a", "32.4", someone(background="south_asian"), "nice_bmi_lower", "obesity_1", "NICE", "derived"),
    ("W24b", "32.5", someone(background="south_asian"), "nice_bmi_lower", "obesity_2", "NICE", "derived"),
    ("W24c", "37.4", someone(background="south_asian"), "nice_bmi_lower", "obesity_2", "NICE", "derived"),
    ("W24d", "37.5", someone(background="south_asian"), "nice_bmi_lower", "obesity_3", "NICE", "derived"),
    ("W25", "27.5", someone(background="white"), "nice_bmi", "overweight", "NICE", "derived"),
    (
        "W26",
        "26",
        someone(background="white", cautions=(Caution.PREGNANCY,)),
        "who_bmi",
        "no: pregnant",
        "NIH/CDC chart note",
        "read",
    ),
    ("W27", "22", someone(age=17), "who_bmi", "no: age_outside_table", "NICE", "2nd"),
    ("W08", "15.2", someone(age=4), "who_bmi", "no: age_outside_table", "CDC growth charts", "read"),
]


@pytest.mark.parametrize(
    "value, who, key, band", [pytest.param(*r[1:5], id=f"{r[0]} {r[5]} [{r[6]}]") for r in CLASSES]
)
def test_an_index_falls_into_its_class(value, who, key, band):
    assert by(key, bmi.score(reading("bmi", value), who)) == band


HEADS = (24, 25, 26, 27, 28, 29, 30, 32, 34, 36, 38, 40)
# Inches: pounds under each index. NIH/CDC, read; at 70 in the usual print has 209 for 207, both pass.
CHART = {
    58: (115, 119, 124, 129, 134, 138, 143, 153, 162, 172, 181, 191),
    60: (123, 128, 133, 138, 143, 148, 153, 163, 174, 184, 194, 204),
    61: (127, 132, 137, 143, 148, 153, 158, 169, 180, 190, 201, 211),
    62: (131, 136, 142, 147, 153, 158, 164, 175, 186, 196, 207, 218),
    64: (140, 145, 151, 157, 163, 169, 174, 186, 197, 209, 221, 232),
    65: (144, 150, 156, 162, 168, 174, 180, 192, 204, 216, 228, 240),
    66: (148, 155, 161, 167, 173, 179, 186, 198, 210, 223, 235, 247),
    68: (158, 164, 171, 177, 184, 190, 197, 210, 223, 236, 249, 262),
    69: (162, 169, 176, 182, 189, 196, 203, 216, 230, 243, 257, 270),
    70: (167, 174, 181, 188, 195, 202, 207, 222, 236, 250, 264, 278),
    72: (177, 184, 191, 199, 206, 213, 221, 235, 250, 265, 279, 294),
    73: (182, 189, 197, 204, 212, 219, 227, 242, 257, 272, 288, 302),
    74: (186, 194, 202, 210, 218, 225, 233, 249, 264, 280, 295, 311),
    76: (197, 205, 213, 221, 230, 238, 246, 263, 279, 295, 312, 328),
}
CELLS = [(h, w, head) for h, row in CHART.items() for w, head in zip(row, HEADS, strict=True)]


@pytest.mark.parametrize(
    "height, weight, head", [pytest.param(*cell, id=f"W21-{cell[0]}in-{cell[1]}lb") for cell in CELLS]
)
def test_every_cell_of_the_nih_chart_has_the_index_at_its_head(height, weight, head):
    exact = bmi.index(kg(str(weight), LB), cm(str(height), IN))
    assert half_up(exact, 0) == head


# --- waist and the two ratios ---


WAISTS = [
    # id, waist cm, sex, background, reference, band, source, seen
    ("W28a", "93.9", "male", None, "nice_waist", "low", "NICE NG7", "read"),
    ("W28b", "94.0", "male", None, "nice_waist", "high", "NICE NG7", "read"),
    ("W28c", "102.0", "male", None, "nice_waist", "high", "NICE NG7", "read"),
    ("W28d", "102.1", "male", None, "nice_waist", "very_high", "NICE NG7", "read"),
    ("W29a", "79.9", "female", None, "nice_waist", "low", "NICE NG7", "read"),
    ("W29b", "80.0", "female", None, "nice_waist", "high", "NICE NG7", "read"),
    ("W29c", "88.0", "female", None, "nice_waist", "high", "NICE NG7", "read"),
    ("W29d", "88.1", "female", None, "nice_waist", "very_high", "NICE NG7", "read"),
    ("W28-WHO", "93.9", "male", None, "who_waist", "not_increased", "WHO 2008, D3", "2nd"),
    ("W28-WHO-94", "94.0", "male", None, "who_waist", "increased", "WHO 2008, D3", "2nd"),
    ("W28-WHO-102", "102.0", "male", None, "who_waist", "increased", "WHO 2008, D4", "2nd"),
    ("W29-WHO-88.1", "88.1", "female", None, "who_waist", "substantially_increased", "WHO 2008", "2nd"),
    ("W30a", "90.0", "male", "south_asian", "idf_waist", "central_obesity", "IDF", "read"),
    ("W30b", "80.0", "female", "south_asian", "idf_waist", "central_obesity", "IDF", "read"),
    ("IDF-1", "89.9", "male", "south_asian", "idf_waist", "below_limit", "IDF", "derived"),
    ("IDF-2", "93.9", "male", "white", "idf_waist", "below_limit", "IDF", "derived"),
    ("IDF-3", "94.0", "male", "black_african", "idf_waist", "central_obesity", "IDF", "read"),
    ("IDF-4", "90.0", "male", "chinese", "idf_waist", "central_obesity", "IDF", "read"),
    ("IDF-5", "85.0", "male", "japanese", "idf_waist", "central_obesity", "IDF 2005", "read"),
    ("IDF-6", "89.9", "female", "japanese", "idf_waist", "below_limit", "IDF 2005", "derived"),
    ("IDF-7", "90.0", "male", "south_central_american", "idf_waist", "central_obesity", "IDF", "read"),
    (
        "IDF-8",
        "90.0",
        "male",
        "mixed_or_other",
        "idf_waist",
        "no: background_outside_table",
        "IDF",
        "derived",
    ),
]


@pytest.mark.parametrize(
    "value, sex, background, key, band",
    [pytest.param(*r[1:6], id=f"{r[0]} {r[6]} [{r[7]}]") for r in WAISTS],
)
def test_a_waist_falls_into_its_band(value, sex, background, key, band):
    assert by(key, waist.score(reading("waist", value), someone(sex, background=background))) == band


RATIOS = [
    ("W31", "33", "44", 2, "0.75", "diet page", "read"),
    ("W32-in", "28", "35", 2, "0.80", "ratio page", "read"),
    ("W32-cm", "71", "89", 3, "0.798", "ratio page", "read"),
    ("W33", "24", "40", 2, "0.60", "ratio page", "read"),
    ("W34", "86", "100", 2, "0.86", "calculator text", "read"),
]


@pytest.mark.parametrize(
    "girth, hip, places, ratio", [pytest.param(*r[1:5], id=f"{r[0]} {r[5]} [{r[6]}]") for r in RATIOS]
)
def test_a_waist_to_hip_ratio_is_the_one_printed(girth, hip, places, ratio):
    parts = {"waist": reading("waist", girth), "hip": reading("hip", hip)}
    derived = waist_to_hip_ratio.derive(parts, someone())
    assert derived is not None
    assert half_up(derived.value, places) == D(ratio)


HIP_BANDS = [
    ("W34a", "0.86", "male", "who", "not_increased", "calculator text", "read"),
    ("W34b", "0.86", "female", "who", "substantially_increased", "calculator text", "read"),
    ("W35a", "0.90", "male", "who", "substantially_increased", "WHO 2008", "2nd"),
    ("W35b", "0.85", "female", "who", "substantially_increased", "WHO 2008", "2nd"),
    ("W36a", "0.95", "male", "trade", "low", "trade chart, closed form", "derived"),
    ("W36b", "0.955", "male", "trade", "moderate", "trade chart, closed form", "derived"),
    ("W36c", "1.00", "male", "trade", "moderate", "trade chart, closed form", "derived"),
    ("W36d", "1.001", "male", "trade", "high", "trade chart, closed form", "derived"),
    ("trade-w1", "0.80", "female", "trade", "low", "trade chart", "read"),
    ("trade-w2", "0.81", "female", "trade", "moderate", "trade chart", "read"),
    ("trade-w3", "0.85", "female", "trade", "moderate", "trade chart", "read"),
    ("trade-w4", "0.86", "female", "trade", "high", "trade chart", "read"),
    ("lenient", "0.92", "male", "trade", "low", "trade chart", "read"),
    ("not-at-WHO", "0.92", "male", "who", "substantially_increased", "WHO 2008", "2nd"),
]


@pytest.mark.parametrize(
    "value, sex, key, band", [pytest.param(*r[1:5], id=f"{r[0]} {r[5]} [{r[6]}]") for r in HIP_BANDS]
)
def test_a_waist_to_hip_ratio_falls_into_its_band(value, sex, key, band):
    found = waist_to_hip_ratio.score(reading("waist_to_hip_ratio", value), someone(sex))
    assert by(f"{key}_waist_to_hip", found) == band


@pytest.mark.parametrize(
    "girth, ratio, band",
    [
        pytest.param("29", "0.453", "healthy", id="W37a NICE, press example [2nd]"),
        pytest.param("32", "0.500", "increased", id="W37b NICE, press example [2nd]"),
    ],
)
def test_a_waist_is_compared_with_half_of_the_height(girth, ratio, band):
    who = someone(stature=str(cm("64", IN)))
    derived = waist_to_height_ratio.derive({"waist": reading("waist", cm(girth, IN))}, who)
    assert derived is not None
    assert half_up(derived.value, 3) == D(ratio)
    assert by("nice_waist_to_height", waist_to_height_ratio.score(derived, who)) == band


@pytest.mark.parametrize(
    "value, band",
    [
        pytest.param("0.399", "below_named_bands", id="D5 below what NICE names"),
        pytest.param("0.4", "healthy", id="D5 0.4"),
        pytest.param("0.497", "healthy", id="D5 0.497 is less than half"),
        pytest.param("0.5999", "increased", id="D5 0.5999"),
        pytest.param("0.6", "high", id="D5 0.6"),
    ],
)
def test_a_waist_to_height_ratio_is_compared_unrounded(value, band):
    found = waist_to_height_ratio.score(reading("waist_to_height_ratio", value), someone())
    assert by("nice_waist_to_height", found) == band


def test_no_reference_is_a_value_with_its_reason():
    (found,) = waist_to_height_ratio.score(
        reading("waist_to_height_ratio", "0.5", notes=("bmi_35_or_more",)), someone()
    )
    assert isinstance(found, NoReference)
    assert found.reason == "bmi_35_or_more"


# --- conversion ---


CONVERSIONS = [
    ("W79", "100", LB, KG, 6, "45.359237", "exact factor", "read"),
    ("W80", "160", LB, KG, 2, "72.57", "conversion page", "read"),
    ("W81-lb", "11", Unit.STONE, LB, 0, "154", "conversion page", "read"),
    ("W81-kg", "11", Unit.STONE, KG, 2, "69.85", "conversion page", "read"),
    ("W82", "70", KG, LB, 2, "154.32", "conversion page", "read"),
    ("W83", "34", LB, KG, 1, "15.4", "Scottish MUST form", "read"),
    ("W84", "2", KG, LB, 3, "4.409", "BHF", "read"),
    ("W85", "67", IN, CM, 2, "170.18", "calculator page", "read"),
    ("W85-ft", "5", Unit.FOOT, IN, 0, "60", "exact", "memory"),
]


@pytest.mark.parametrize(
    "value, unit, to, places, expected",
    [pytest.param(*r[1:6], id=f"{r[0]} {r[6]} [{r[7]}]") for r in CONVERSIONS],
)
def test_a_conversion_is_the_one_printed(value, unit, to, places, expected):
    assert half_up(convert(D(value), unit, to), places) == D(expected)


def test_stones_and_pounds_come_apart_and_together():  # W81, W83
    assert in_two_units(D(154), LB, LB, 14) == (11, D(0))
    assert 2 * convert(D(1), Unit.STONE, LB) + 6 == 34


def test_ounces_and_half_inches_are_decimals_of_their_unit():  # W87 CDC, read
    assert D(37) + D(4) / 16 == D("37.25")
    assert half_up(bmi.index(kg("37.25", LB), cm("41.5", IN)), 1) == D("15.2")
