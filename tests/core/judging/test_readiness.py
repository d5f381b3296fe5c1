"""Before exercise: the table of the published screening, and what is asked for it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from core.client import Caution
from core.judging.readiness import UNASKED, Asked, Readiness, Verdict, diseases, next_question, verdict
from core.references.exercise_screening_acsm_2015 import DISEASE, TABLE, Advice, Sign, advice
from tests.core.people import someone

WELL = Readiness(signs=(), regular=None, harder=None, cleared=None)
NOBODY = someone("female", 60)
HEART = someone("male", 60, cautions=(Caution.HEART_CONDITION,))
BREATHLESS = someone("male", 60, cautions=(Caution.BREATHLESS_AT_REST,))
NOT_ASKED = replace(NOBODY, cautions_known=False)

AS_YOU_ARE, GENTLY, DOCTOR = Verdict.AS_YOU_ARE, Verdict.LIGHT_TO_MODERATE, Verdict.DOCTOR_FIRST


@pytest.mark.parametrize(
    ("who", "signs", "regular", "harder", "cleared", "expected"),
    [
        pytest.param(NOBODY, (), True, None, None, AS_YOU_ARE, id="active and well goes on"),
        pytest.param(NOBODY, (), True, True, None, AS_YOU_ARE, id="and may go harder step by step"),
        pytest.param(NOBODY, (), False, None, None, GENTLY, id="not active begins gently"),
        pytest.param(NOBODY, (), None, None, None, GENTLY, id="not said is read as not active"),
        pytest.param(NOBODY, ("chest",), True, False, True, DOCTOR, id="a sign, whatever else"),
        pytest.param(NOBODY, None, True, None, True, None, id="signs not answered: no verdict"),
        pytest.param(HEART, (), True, False, None, GENTLY, id="disease, active, not harder"),
        pytest.param(HEART, (), True, None, None, GENTLY, id="disease, active, wish not said"),
        pytest.param(HEART, (), True, True, False, DOCTOR, id="disease, wants to go harder, no word"),
        pytest.param(HEART, (), True, True, None, DOCTOR, id="disease, wants to go harder, word not said"),
        pytest.param(HEART, (), True, True, True, AS_YOU_ARE, id="disease, wants to go harder, a doctor agreed"),
        pytest.param(HEART, (), False, None, False, DOCTOR, id="disease, not active"),
        pytest.param(HEART, (), None, None, None, DOCTOR, id="disease, nothing more said"),
        pytest.param(HEART, (), False, None, True, GENTLY, id="disease, not active, a doctor agreed"),
        pytest.param(HEART, None, True, None, True, None, id="disease, signs not answered"),
        pytest.param(BREATHLESS, (), True, None, True, DOCTOR, id="a sign said at another time"),
        pytest.param(NOT_ASKED, (), True, None, None, None, id="diseases not asked for"),
        pytest.param(NOT_ASKED, ("dizzy",), None, None, None, DOCTOR, id="a sign is enough"),
    ],
)  # fmt: skip
def test_the_verdict(who, signs, regular, harder, cleared, expected):
    assert verdict(Readiness(signs, regular, harder, cleared), who) == expected


@pytest.mark.parametrize("disease", sorted(DISEASE))
def test_each_known_disease_counts(disease):
    person = someone("female", 50, cautions=(disease,))
    assert diseases(person) == (disease,)
    assert verdict(replace(WELL, regular=False), person) is DOCTOR


@pytest.mark.parametrize("other", sorted(set(Caution) - DISEASE - {Caution.BREATHLESS_AT_REST}))
def test_no_other_caution_counts(other):
    assert verdict(replace(WELL, regular=True), someone("female", 30, cautions=(other,))) is AS_YOU_ARE


@pytest.mark.parametrize("sign", list(Sign))
def test_each_sign_counts(sign):
    assert verdict(replace(WELL, signs=(sign.value,), regular=True), NOBODY) is DOCTOR


@pytest.mark.parametrize(
    ("who", "said", "asked", "expected"),
    [
        (NOBODY, UNASKED, (), Asked.SIGNS),
        (NOBODY, replace(UNASKED, signs=("chest",)), ("signs",), None),
        (NOBODY, UNASKED, ("signs",), None),  # left open: nothing else would help
        (NOBODY, WELL, ("signs",), Asked.REGULAR),
        (NOBODY, replace(WELL, regular=True), ("signs", "regular"), None),
        (NOBODY, replace(WELL, regular=False), ("signs", "regular"), None),
        (HEART, replace(WELL, regular=True), ("signs", "regular"), Asked.HARDER),
        (HEART, replace(WELL, regular=True, harder=False), ("signs", "regular", "harder"), None),
        (HEART, replace(WELL, regular=True, harder=True), ("signs", "regular", "harder"), Asked.CLEARED),
        (HEART, replace(WELL, regular=False), ("signs", "regular"), Asked.CLEARED),
        (HEART, replace(WELL, regular=False, cleared=True), ("signs", "regular", "cleared"), None),
    ],
)
def test_only_what_decides_is_asked(who, said, asked, expected):
    assert next_question(said, who, asked) == expected


def test_the_table_has_one_cell_for_everybody():
    for regular in (False, True):
        for disease in (False, True):
            for signs in (False, True):
                cells = [r for r in TABLE if r.regular is regular and r.signs is signs and r.disease in (None, disease)]
                assert len(cells) == 1
                assert advice(regular=regular, disease=disease, signs=signs) is cells[0].advice
    assert {row.advice for row in TABLE} == set(Advice)
