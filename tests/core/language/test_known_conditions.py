"""A condition one lives with is no emergency; what happens now is, whoever says it."""

from __future__ import annotations

import pytest

from core.language import words_for
from core.language.danger_signs import When, recognise

LIVED_WITH = {
    "en": "I have epilepsy; I'm epileptic; I have atrial fibrillation; I am a stroke survivor; I have heart failure;"
    " I'm a heart patient; I had asthma as a child; I have had asthma since I was a child",
    "es": "tengo epilepsia; tengo fibrilación auricular; tengo insuficiencia cardíaca; soy cardiópata;"
    " tuve asma de pequeño; tengo asma desde niña",
    "de": "ich habe Epilepsie; ich habe Vorhofflimmern; Zustand nach Herzinfarkt; ich habe Herzinsuffizienz;"
    " ich bin herzkrank; als Kind hatte ich Asthma; ich habe seit der Kindheit Asthma",
    "fr": "je suis épileptique; j'ai une fibrillation auriculaire; je suis cardiaque; j'avais de l'asthme enfant;"
    " j'ai de l'asthme depuis l'enfance",
    "pl": "mam padaczkę; jestem po zawale; jestem po udarze; mam migotanie przedsionków; mam niewydolność serca;"
    " choruję na serce; w dzieciństwie miałam astmę; mam astmę od dziecka",
    "ar": "عندي صرع; عندي رجفان أذيني; أنا مريض قلب; عندي قصور في القلب; كان عندي ربو وأنا صغير; عندي ربو من الطفولة",
}
PERHAPS_NOW = {
    "en": "I have angina", "es": "tengo angina", "de": "ich habe Angina pectoris", "fr": "j'ai une angine de poitrine",
    "pl": "mam dusznicę bolesną", "ar": "عندي ذبحة صدرية",
}  # fmt: skip
HAPPENING = {
    "en": "I have epilepsy and I just had a fit; I have angina, it is bad right now; I had a heart attack just now;"
    " I am epileptic and my chest hurts",
    "es": "soy epiléptica y me acaba de dar un ataque; tengo angina y me duele mucho el pecho ahora",
    "de": "ich habe Epilepsie und gerade einen Krampfanfall; ich habe Vorhofflimmern und Brustschmerzen",
    "fr": "je suis épileptique et je viens de faire une crise; j'ai une angine de poitrine, ça serre maintenant",
    "pl": "jestem po zawale i boli mnie w klatce; mam padaczkę i właśnie miałem atak",
    "ar": "عندي ذبحة صدرية الآن وصدري يؤلمني",
}


def said(table: dict[str, str]) -> list[tuple[str, str]]:
    return [(code, text.strip()) for code, listed in table.items() for text in listed.split(";")]


@pytest.mark.parametrize(("language", "text"), said(LIVED_WITH))
def test_what_somebody_lives_with_is_no_sign(language: str, text: str) -> None:
    assert recognise(text, words_for(language)) is None


@pytest.mark.parametrize(("language", "text"), said(PERHAPS_NOW))
def test_words_that_may_also_mean_now_are_asked_about(language: str, text: str) -> None:
    found = recognise(text, words_for(language))
    assert found is not None and found.when is When.LONG_AGO and not found.certain


@pytest.mark.parametrize(("language", "text"), said(HAPPENING))
def test_what_happens_now_is_an_alarm_whatever_else_is_told(language: str, text: str) -> None:
    found = recognise(text, words_for(language))
    assert found is not None and found.certain
