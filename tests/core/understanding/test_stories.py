"""A number inside a sentence about something else is not stored without asking."""

from __future__ import annotations

import pytest

from core.language import LANGUAGES
from core.language.lexicon import Lexicon
from core.understanding.stories import tells
from tests.corpus.meant import answers, numbers

ENGLISH: Lexicon = LANGUAGES["en"]


@pytest.mark.parametrize(
    "said",
    [
        "I lifted 60 kg",
        "bought 5 kg of potatoes",
        "weighed my husband, 90",
        "my granddaughter turned 8",
        "bus 42 was late",
        "one nurse came by",
        "see you on 14 March",
    ],
)
def test_a_story_is_told_from_an_answer(said: str) -> None:
    assert tells(said, ENGLISH)


@pytest.mark.parametrize(
    "said", ["82.4", "scales say 82.4", "this morning it's 82.4 kg, slept badly", "about 82", "monday 7"]
)
def test_an_answer_with_remarks_is_no_story(said: str) -> None:
    assert not tells(said, ENGLISH)


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("fr", "une voisine est venue"),
        ("fr", "un chat dort"),
        ("es", "una vecina vino"),
        ("de", "ein Nachbar kam"),
        ("de", "ich habe 60 kg gestemmt"),
        ("pl", "jeden sąsiad przyszedł"),
        ("pl", "do zobaczenia 14"),
    ],
)
def test_an_article_a_farewell_and_a_deed_make_a_story_in_other_languages_too(language: str, said: str) -> None:
    assert tells(said, LANGUAGES[language])


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", "one"),
        ("en", "one hour"),
        ("en", "one today"),
        ("en", "one out of ten"),
        ("fr", "une fois"),
        ("fr", "une heure et demie"),
        ("de", "eine Stunde"),
        ("de", "ich habe 82 kg gewogen"),
        ("es", "una vez"),
        ("es", "135/84 en el brazo izquierdo, sentada"),
        ("pl", "jeden raz"),
    ],
)
def test_a_one_that_answers_is_no_story(language: str, said: str) -> None:
    assert not tells(said, LANGUAGES[language])


@pytest.mark.parametrize("language", LANGUAGES)
def test_answers_as_people_give_them_are_stored(language: str) -> None:
    tuned, held = answers(language, "tune"), answers(language, "held")
    assert tuned.right["answer"] >= 14 and held.right["answer"] >= 10


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("half", ["tune", "held"])
def test_what_strangers_wrote_that_is_no_answer_is_rarely_stored(language: str, half: str) -> None:
    score = numbers(language, half)
    assert score.right["no answer"] * 100 >= 80 * score.counts["no answer"]


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", "ten out of ten for your patience"),
        ("en", "10/10 for the app"),
        ("es", "diez de diez por tu paciencia"),
        ("de", "zehn von zehn für deine Geduld"),
        ("fr", "dix sur dix pour votre patience"),
        ("pl", "dziesięć na dziesięć za cierpliwość"),
        ("ar", "عشرة من عشرة على صبرك"),
    ],
)
def test_full_marks_for_somebody_are_no_energy(language: str, said: str) -> None:
    assert tells(said, LANGUAGES[language])


@pytest.mark.parametrize("said", ["10/10", "10/10 for energy today", "ten out of ten for today"])
def test_full_marks_for_oneself_are(said: str) -> None:
    assert not tells(said, ENGLISH)
