"""One message with several answers, and corrections."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from core.language import LANGUAGES, words_for
from core.measures import MEASURES
from core.measures.measure import Misunderstood, Understood, Why
from core.quantity import Unit
from core.understanding.answers_in_text import Answer, answers_in, correction, whole_numbers

D = Decimal
OFFERED = (
    *("weight", "waist", "hip", "energy", "resting_heart_rate", "blood_pressure", "activity_minutes", "sessions_done"),
    *("timed_up_and_go", "strength_days"),
)


def said(typed: str, asked: str = "", language: str = "en", prefers: dict[str, Unit] | None = None) -> dict[str, str]:
    """The parsed message, by measure: the value, "128/82", or why it was not understood."""
    measure = MEASURES[asked] if asked else None
    others = [MEASURES[k] for k in OFFERED if k != asked]
    answers = answers_in(typed, words_for(language), measure, others, None, prefers)
    assert len({a.measure for a in answers}) == len(answers)
    return {a.measure: shown(a) for a in answers}


def shown(answer: Answer) -> str:
    if isinstance(answer.heard, Misunderstood):
        return answer.heard.why.value
    value = format(answer.heard.value.normalize(), "f")
    return value if answer.heard.second is None else f"{value}/{answer.heard.second}"


@pytest.mark.parametrize(
    ("asked", "typed", "answers"),
    [
        ("weight", "82.4 and energy 7", {"weight": "82.4", "energy": "7"}),
        ("energy", "7, 82.4 kg", {"energy": "7", "weight": "82.4"}),
        ("waist", "waist 94 hip 102", {"waist": "94", "hip": "102"}),
        ("energy", "waist 94, hip 102", {"waist": "94", "hip": "102"}),
        ("energy", "94 waist, 102 hip", {"waist": "94", "hip": "102"}),
        ("waist", "94 waist 102 hip", {"waist": "94", "hip": "102"}),
        ("energy", "7 waist 94 hip 102", {"energy": "7", "waist": "94", "hip": "102"}),
        ("waist", "94 hip 102", {"waist": "94", "hip": "102"}),
        ("energy", "energy: 7\nweight: 82,4 kg\nwaist: 94", {"energy": "7", "weight": "82.4", "waist": "94"}),
        ("waist", "waist, 94", {"waist": "94"}),
        ("energy", "energy seven and weight eighty two point four", {"energy": "7", "weight": "82.4"}),
        ("blood_pressure", "128/82 pulse 70", {"blood_pressure": "128/82", "resting_heart_rate": "70"}),
        ("blood_pressure", "128/82, 70 bpm", {"blood_pressure": "128/82", "resting_heart_rate": "70"}),
        ("energy", "7, 128/82", {"energy": "7", "blood_pressure": "128/82"}),
        ("energy", "pulse 36 in 30 s and energy 7", {"resting_heart_rate": "72", "energy": "7"}),
        ("walk_mile", "14:30, pulse 140", {"walk_mile": "14.5/140"}),
        ("walk_mile", "14:30, 140 bpm", {"walk_mile": "14.5/140"}),
    ],
)
def test_several_answers_in_one_message(asked, typed, answers):
    assert said(typed, asked) == answers


@pytest.mark.parametrize(
    ("asked", "typed", "answers"),
    [
        ("waist", "94 and 94.5", {"waist": "94.25"}),
        ("resting_heart_rate", "18 and 17 in 15 s", {"resting_heart_rate": "70"}),
        ("weight", "12 stone and 4 pounds", {"weight": "78.01788764"}),
        ("weight", "my hip hurts, 82.4", {"weight": "82.4"}),
        ("energy", "I feel a bit tired today, 6", {"energy": "6"}),
        ("weight", "82.4, 84.2", {"weight": "too_many_numbers"}),
        ("energy", "tired", {"energy": "no_number"}),
        ("weight", "94 cm", {"weight": "other_unit"}),
        ("blood_pressure", "128/82 after 5 min of rest", {"blood_pressure": "128/82"}),
        ("weight", "is 82 too much?", {"weight": "no_number"}),
        ("waist", "94 / 95 cm", {"waist": "94.5"}),
    ],
)
def test_one_answer_stays_one(asked, typed, answers):
    assert said(typed, asked) == answers


def test_a_unit_that_several_measures_share_belongs_to_none_of_them():
    assert said("94 cm") == {}


@pytest.mark.parametrize(
    ("typed", "answers"),
    [
        ("82.4 kg", {"weight": "82.4"}),
        ("weight 82.4", {"weight": "82.4"}),
        ("128/82", {"blood_pressure": "128/82"}),
        ("82.4", {}),
        ("hello", {}),
        ("", {}),
    ],
)
def test_with_nothing_asked_only_what_is_named_or_has_its_own_unit_counts(typed, answers):
    assert said(typed) == answers


def test_a_measure_that_is_not_offered_takes_nothing_from_the_one_that_is_asked():
    answers = answers_in("energy 7, waist 94", words_for("en"), MEASURES["energy"], ())
    assert answers == (Answer("energy", Understood(D(7), Unit.POINT)),)


def test_a_bare_number_is_not_the_asked_measure_when_that_one_is_named_elsewhere():
    assert said("82.4, energy 7", "energy") == {"energy": "7"}


def test_each_measure_is_read_in_the_unit_its_client_prefers():
    prefers = {"weight": Unit.POUND, "waist": Unit.INCH}
    answers = said("weight 181, waist 37", "energy", prefers=prefers)
    assert answers == {"weight": "82.10021897", "waist": "93.98"}


@pytest.mark.parametrize(
    ("language", "typed", "answers"),
    [
        ("es", "82,4 y energía 7", {"weight": "82.4", "energy": "7"}),
        ("es", "cintura 94 cadera 102", {"waist": "94", "hip": "102"}),
        ("de", "82,4 und Energie 7", {"weight": "82.4", "energy": "7"}),
        ("de", "Taille 94, Hüfte 102", {"waist": "94", "hip": "102"}),
        ("fr", "82,4 et énergie 7", {"weight": "82.4", "energy": "7"}),
        ("fr", "taille 94 hanches 102", {"waist": "94", "hip": "102"}),
        ("pl", "82,4 i energia 7", {"weight": "82.4", "energy": "7"}),
        ("pl", "talia 94 biodra 102", {"waist": "94", "hip": "102"}),
        ("ar", "٨٢٫٤ وطاقة ٧", {"weight": "82.4", "energy": "7"}),
        ("ar", "خصر ٩٤ ورك ١٠٢", {"waist": "94", "hip": "102"}),
        ("ar", "الخصر ٩٤، الورك ١٠٢", {"waist": "94", "hip": "102"}),
        ("de", "weight 82.4, waist 94", {"weight": "82.4", "waist": "94"}),  # people mix in English
    ],
)
def test_several_answers_in_every_language(language, typed, answers):
    assert said(typed, "weight", language) == answers


def test_more_numbers_than_a_check_in_has_are_asked_about():
    typed = " ".join(str(n) for n in range(40))
    assert said(typed, "weight") == {"weight": Why.TOO_MANY_NUMBERS.value}


# --- corrections --------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("language", "typed", "rest"),
    [
        ("en", "no, 82.4", "82.4"),
        ("en", "No 82.4", "82.4"),
        ("en", "I meant 82.4", "82.4"),
        ("en", "sorry 82.6", "82.6"),
        ("en", "sorry, it's 82.6", "82.6"),
        ("en", "oops, waist 94", "waist 94"),
        ("en", "not 82.4 but 82.6", "82.6"),
        ("en", "no not 82.4, 82.6", "82.6"),
        ("en", "*82.6", "82.6"),
        ("en", "it should be 82.6 kg", "82.6 kg"),
        ("en", "82.6 instead", "82.6 instead"),
        ("en", "correction: 128/82", "128/82"),
        ("es", "no, 82,4", "82,4"),
        ("es", "quise decir 82,4", "82,4"),
        ("es", "no 82,4 sino 82,6", "82,6"),
        ("de", "nein, 82,4", "82,4"),
        ("de", "ich meinte 82,4", "82,4"),
        ("de", "nicht 82,4 sondern 82,6", "82,6"),
        ("fr", "non, 82,4", "82,4"),
        ("fr", "je voulais dire 82,4", "82,4"),
        ("pl", "nie, 82,4", "82,4"),
        ("pl", "miało być 82,4", "82,4"),
        ("ar", "لا، 82.4", "82.4"),
        ("ar", "قصدت ٨٢٫٤", "82.4"),
    ],
)
def test_a_correction_says_what_was_meant(language, typed, rest):
    assert correction(typed, words_for(language)) == rest


@pytest.mark.parametrize(
    ("language", "typed"),
    [
        ("en", "82.4"),
        ("en", "no"),
        ("en", "no pain, 7"),
        ("en", "sorry I'm late, 82.4"),
        ("en", "no problem, 82.4 kg"),
        ("es", "no me duele, 7"),
        ("de", "keine Schmerzen, 7"),
        ("de", "nein danke"),
        ("fr", "pas mal, 7"),
        ("pl", "nie boli, 7"),
        ("ar", "لا ألم، 7"),
    ],
)
def test_what_only_begins_like_a_correction_is_none(language, typed):
    assert correction(typed, words_for(language)) is None


@pytest.mark.parametrize(
    ("typed", "numbers"),
    [("born in 1968", [1968]), ("1968", [1968]), ("nineteen", [19]), ("7 and 8", [7, 8]), ("7.5", []), ("no", [])],
)
def test_whole_numbers_of_a_text(typed, numbers):
    assert whole_numbers(typed, words_for("en")) == numbers


@settings(max_examples=300)
@given(st.text(max_size=120), st.sampled_from(sorted(LANGUAGES)), st.sampled_from(["", *sorted(MEASURES)]))
@example("waist " * 900, "en", "weight")
@example("no " * 1000 + "7", "en", "weight")
@example("1 " * 2000, "ar", "energy")
@example("7 waist hip", "en", "")
def test_no_message_breaks_the_hearing(typed, language, asked):
    words = words_for(language)
    measure = MEASURES[asked] if asked else None
    for answer in answers_in(typed, words, measure, [MEASURES[k] for k in OFFERED if k != asked]):
        meant = answer.heard.guess if isinstance(answer.heard, Misunderstood) else answer.heard
        assert meant is None or meant.value.is_finite()
    rest = correction(typed, words)
    assert rest is None or rest in typed.casefold() or len(rest) <= 5000
    assert len(whole_numbers(typed, words)) <= 12


@pytest.mark.parametrize("typed", ["3andi wja3 f sedri", "9albi kaydreb bezzaf", "so2al 3an el tamarin"])
def test_digits_that_stand_for_arabic_letters_are_no_number(typed):
    assert said(typed, "energy", "ar") == {"energy": "no_number"}


@pytest.mark.parametrize(("typed", "value"), [("energy7", "7"), ("t3ban chwiya 7", "7")])
def test_a_number_beside_such_words_is_one(typed, value):
    assert said(typed, "energy", "ar")["energy"] == value
