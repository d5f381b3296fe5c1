"""Twenty middle-aged men from a published data set: weight in pounds, waist in inches, pulse.

Linnerud's exercise data as shipped with scikit-learn: weight (lb), waist (in), pulse (bpm). It has no heights.
"""

from __future__ import annotations

from decimal import Decimal

import numpy as np
import pytest
from sklearn.datasets import load_linnerud

from core.language import words_for
from core.measures import MEASURES, bmi
from core.measures.measure import Misunderstood, Score, Understood
from core.quantity import Unit, convert, half_up
from tests.core.people import by, reading, someone

D = Decimal
WORDS = words_for("en")
MEN = load_linnerud().target  # weight, waist, pulse
POUND, INCH = 0.45359237, 2.54


def heard(key: str, text: str) -> Decimal:
    understand = MEASURES[key].understand
    assert understand is not None
    answer = understand(text, WORDS, None)
    assert isinstance(answer, Understood), answer
    return answer.value


def test_the_data_are_the_ones_we_know():
    assert MEN.shape == (20, 3)
    assert MEN.mean(axis=0) == pytest.approx([178.6, 35.4, 56.1])
    assert list(MEN[0]) == [191, 36, 50]


def test_typed_pounds_and_inches_become_the_kilograms_and_centimetres_numpy_gets():
    weights = [float(heard("weight", f"{int(w)} lb")) for w in MEN[:, 0]]
    waists = [float(heard("waist", f"{int(w)} inches")) for w in MEN[:, 1]]
    assert np.allclose(weights, MEN[:, 0] * POUND, rtol=1e-12, atol=0)
    assert np.allclose(waists, MEN[:, 1] * INCH, rtol=1e-12, atol=0)


def test_the_mean_of_the_converted_is_the_converted_mean():
    kilograms = [convert(D(int(w)), Unit.POUND, Unit.KILOGRAM) for w in MEN[:, 0]]
    assert half_up(sum(kilograms) / 20, 3) == D("81.012")  # 178.6 lb
    assert float(sum(kilograms) / 20) == pytest.approx(178.6 * POUND)


@pytest.mark.parametrize("height", ["165", "170.18", "177.8", "190"])
def test_a_body_mass_index_is_the_one_floating_point_gets_to_many_places(height):
    ours = [float(bmi.index(convert(D(int(w)), Unit.POUND, Unit.KILOGRAM), D(height))) for w in MEN[:, 0]]
    assert np.allclose(ours, MEN[:, 0] * POUND / (float(height) / 100) ** 2, rtol=1e-12, atol=0)


def test_every_pulse_is_placed_where_counting_the_limits_by_numpy_places_it():
    bands = [
        by(
            "bhf_resting_heart_rate",
            MEASURES["resting_heart_rate"].score(reading("resting_heart_rate", int(p)), someone("male", 45)),
        )
        for p in MEN[:, 2]
    ]
    assert bands.count("slow") == int((MEN[:, 2] < 60).sum())
    assert bands.count("fast") == int((MEN[:, 2] > 100).sum())
    assert bands.count("usual") == 20 - bands.count("slow") - bands.count("fast")


def test_every_waist_is_placed_where_counting_the_limits_by_numpy_places_it():
    found = [
        MEASURES["waist"].score(reading("waist", convert(D(int(w)), Unit.INCH, Unit.CENTIMETRE)), someone("male", 45))[
            0
        ]
        for w in MEN[:, 1]
    ]
    ranks = [s.rank for s in found if isinstance(s, Score)]
    centimetres = MEN[:, 1] * INCH
    assert ranks == [int(c >= 94) + int(c > 102) for c in centimetres]
    assert len(set(ranks)) > 1


def test_a_pulse_and_an_impossible_text_are_told_apart():
    understand = MEASURES["resting_heart_rate"].understand
    assert understand is not None
    assert [heard("resting_heart_rate", str(int(p))) for p in MEN[:, 2]] == [D(int(p)) for p in MEN[:, 2]]
    assert isinstance(understand("no idea", WORDS, None), Misunderstood)
