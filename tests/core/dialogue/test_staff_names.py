"""Resolving the client a coach names."""

import pytest

from core.dialogue.staff.names import addressed, distinct_names, meant, mentioned, told

NAMES = ((1, "Ada"), (2, "Ann Bell"), (3, "Anna Berg"), (4, "José Díaz"), (5, "Goran"))


@pytest.mark.parametrize(
    ("words", "found"),
    [
        pytest.param("ada", (1,), id="whole-name-any-case"),
        pytest.param("ANN BELL", (2,), id="whole-name-of-two-words"),
        pytest.param("ann", (2, 3), id="the-beginning-of-two"),
        pytest.param("ann b", (2, 3), id="beginnings-in-order"),
        pytest.param("anna", (3,), id="a-longer-beginning"),
        pytest.param("bell", (2,), id="a-family-name"),
        pytest.param("jose diaz", (4,), id="without-accents"),
        pytest.param("ora", (5,), id="inside-a-name"),
        pytest.param("or", (), id="too-short-to-be-inside"),
        pytest.param("b ann", (), id="the-wrong-order"),
        pytest.param("", (), id="nothing"),
        pytest.param("zoe", (), id="nobody"),
    ],
)
def test_whom_words_may_mean(words: str, found: tuple[int, ...]) -> None:
    assert meant(NAMES, words) == found


def test_a_whole_name_is_not_taken_for_the_beginning_of_another() -> None:
    assert meant(((1, "Ann"), (2, "Anna")), "ann") == (1,)


@pytest.mark.parametrize(
    ("text", "found", "rest"),
    [
        pytest.param("Ada well done", (1,), "well done", id="first-word"),
        pytest.param("Ann Bell: rest today", (2,), "rest today", id="whole-name-and-colon"),
        pytest.param("ann rest today", (2, 3), "rest today", id="two-are-meant"),
        pytest.param("Ada line one\nline two", (1,), "line one\nline two", id="line-breaks-stay"),
        pytest.param("Ada", (1,), "", id="a-name-alone"),
        pytest.param("zoe hello", (), "hello", id="nobody"),
        pytest.param("   ", (), "", id="blank"),
    ],
)
def test_who_is_addressed_and_with_which_words(text: str, found: tuple[int, ...], rest: str) -> None:
    assert addressed(NAMES, text) == (found, rest)


def test_two_clients_of_one_name_are_told_apart_by_their_year_or_else_their_number() -> None:
    assert distinct_names([(1, "Ann", 1960), (2, "ann", 1971), (3, "Bo", None)]) == {
        1: "Ann (1960)",
        2: "ann (1971)",
        3: "Bo",
    }
    assert distinct_names([(1, "Ann", 1960), (2, "Ann", 1960)]) == {1: "Ann (1)", 2: "Ann (2)"}


@pytest.mark.parametrize(
    ("language", "text", "found", "after"),
    [
        pytest.param("en", "show me Ada's waist", (1,), "waist", id="english-genitive"),
        pytest.param("en", "tell Ada I'll call: at 5", (1,), "I'll call: at 5", id="as-typed"),
        pytest.param("en", "Adamant about it", (), "", id="only-the-same-letters"),
        pytest.param("en", "Ann Bell and Ada", (1, 2), "", id="two"),
        pytest.param("en", "see Ann's card", (2,), "card", id="a-first-name"),
        pytest.param("de", "Adas Taille", (1,), "Taille", id="german-genitive"),
        pytest.param("fr", "la taille d'Ada", (1,), "", id="french-elision"),
        pytest.param("pl", "waga Ady", (1,), "", id="polish-genitive"),
        pytest.param("pl", "napisz do Gorana", (5,), "", id="polish-of-a-consonant"),
        pytest.param("en", "waga Ady", (), "", id="not-in-another-language"),
        pytest.param("es", "el peso de José", (4,), "", id="without-accents"),
    ],
)
def test_whom_a_text_names_somewhere(language: str, text: str, found: tuple[int, ...], after: str) -> None:
    assert mentioned(NAMES, text, language) == found
    if len(found) == 1:
        assert told(NAMES, text, language) == (found, after)


def test_a_name_is_found_after_what_arabic_writes_together_with_it() -> None:
    assert mentioned(((1, "آدا"),), "أرسل لآدا", "ar") == (1,)


def test_whoever_is_called_just_that_is_meant_by_a_first_name() -> None:
    assert mentioned(((1, "Ann"), (2, "Ann Bell")), "Ann, hello", "en") == (1,)
