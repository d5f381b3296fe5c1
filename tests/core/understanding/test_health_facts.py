"""What people say of their health, clause by clause: so, no longer so, denied, somebody else's, unsure."""

from __future__ import annotations

import pytest

from core.language import LANGUAGES, words_for
from core.language.health_words import HEALTH_WORDS, Topic
from core.understanding.health_facts import ABOUT, HealthFact, Stance, What, health_in

SO, OVER, DENIED = Stance.SO, Stance.OVER, Stance.DENIED


def said(text: str, language: str = "en") -> set[tuple[str, Stance]]:
    return {(fact.value, fact.stance) for fact in health_in(text, words_for(language)).facts}


@pytest.mark.parametrize(
    ("text", "facts"),
    [
        ("no heart problems but I take metoprolol", {("heart_condition", DENIED), ("metoprolol", SO)}),
        ("not pregnant, but I fell last week", {("pregnancy", DENIED), ("falls", SO)}),
        (
            "no diabetes, heart problems or falls",
            {("diabetes", DENIED), ("heart_condition", DENIED), ("falls", DENIED)},
        ),
        ("my kidneys only work at 40 percent but no diabetes", {("kidney_disease", SO), ("diabetes", DENIED)}),
        ("no, I am pregnant", {("pregnancy", SO)}),
        ("no I am pregnant", {("pregnancy", SO)}),
        ("stopped atenolol and started sotalol", {("atenolol", OVER), ("sotalol", SO)}),
        ("I am not on the verapamil any more", {("verapamil", OVER)}),
        ("stopped taking my beta blocker", {("beta-blocker", OVER)}),
        ("I no longer have heart failure", {("heart_failure", OVER)}),
        ("my beta blocker is bisoprolol", {("bisoprolol", SO)}),
    ],
)
def test_a_sentence_is_read_clause_by_clause(text: str, facts: set[tuple[str, Stance]]) -> None:
    assert said(text) == facts


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("es", "del corazón nada, pero tomo metoprolol y no estoy embarazada"),
        ("de", "nicht schwanger, aber ich nehme metoprolol"),
        ("fr", "pas enceinte, mais je prends du métoprolol"),
        ("pl", "nie jestem w ciąży, ale biorę metoprolol"),
        ("ar", "مش حامل بس باخد ميتوبرولول"),
    ],
)
def test_no_but_is_read_in_every_language(language: str, text: str) -> None:
    assert said(text, language) == {("pregnancy", DENIED), ("metoprolol", SO)}


@pytest.mark.parametrize(
    "text",
    [
        "my daughter is pregnant",
        "my brother is on bisoprolol",
        "he fell off the ladder",
        "my granddad had heart failure",
        "is bisoprolol the one that slows your pulse?",
        "I am thinking of moving to Lisbon",
        "I had asthma as a child",
        "I fell ten years ago",
        "fell asleep before the reminder",
        "a fall in temperature",
        "I have not stopped my bisoprolol",
        "my mum was born in 1930",
        "the table is 172 cm long",
        "82.4",
        "",
    ],
)
def test_what_is_not_the_clients_or_not_so_is_no_fact(text: str) -> None:
    assert said(text) == set()


@pytest.mark.parametrize(
    ("text", "fact"),
    [
        ("I think I might be pregnant", "pregnancy"),
        ("I had a fall in 2015", "falls"),
        ("bisoprolol", "bisoprolol"),
        ("gave birth on friday", "pregnancy"),
        ("my family is from pakistan", "south_asian"),
        ("my height is 212 cm", "212"),
    ],
)
def test_what_is_likely_but_not_plain_is_not_sure(text: str, fact: str) -> None:
    [found] = health_in(text, words_for("en")).facts
    assert (found.value, found.sure) == (fact, False)


@pytest.mark.parametrize(
    ("text", "fact"),
    [
        ("I am 172 cm tall", HealthFact(What.STATURE, "172")),
        ("I was born in 1956", HealthFact(What.BIRTH_YEAR, "1956")),
        ("please use the table for women", HealthFact(What.SEX, "female")),
        ("I would prefer stones and pounds", HealthFact(What.UNITS, "st")),
        ("can we do kilos instead of pounds", HealthFact(What.UNITS, "kg")),
        ("we moved to Lisbon", HealthFact(What.MOVED, "lisbon")),
        ("I lost the baby in may", HealthFact(What.CAUTION, "pregnancy", Stance.OVER, grief=True)),
    ],
)
def test_figures_places_and_units_are_facts_too(text: str, fact: HealthFact) -> None:
    assert health_in(text, words_for("en")).facts == (fact,)


@pytest.mark.parametrize(
    ("text", "rest"),
    [
        ("82.4 and I am pregnant", "82.4"),
        ("carvedilol 6.25 twice a day, energy 7", "energy 7"),
        ("energy 6, 82.4", "energy 6, 82.4"),
    ],
)
def test_the_numbers_of_a_fact_are_no_readings(text: str, rest: str) -> None:
    assert health_in(text, words_for("en")).rest == rest


def test_english_is_understood_when_the_clients_language_sees_nothing() -> None:
    assert said("they put me on bisoprolol, I am pregnant", "pl") >= {("bisoprolol", SO)}


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_language_has_words_for_every_topic(language: str) -> None:
    assert {topic for topic in Topic if not HEALTH_WORDS[language].get(topic)} == set()
    assert {key for key in ABOUT if isinstance(key, Topic)} <= set(HEALTH_WORDS[language])
