"""What a new language must provide; whatever is missing is named. The list of languages is in `core.language`."""

from __future__ import annotations

import dataclasses
import importlib
import pkgutil
from pathlib import Path

import pytest
from babel import Locale

from core import language as home
from core.language import ENGLISH, LANGUAGES, WordRole
from core.language.lexicon import Answer, Calendar, Lexicon
from core.language.signs import SIGNS
from tests.core.language.test_danger_signs import TABLES
from tests.core.understanding.ways_of_writing import CORPUS

README = Path(__file__).parents[3] / "README.md"
# Tests done with somebody present and rarely named in a message; only English has names for them.
NAMED_IN_ENGLISH_ONLY = {"five_chair_stands", "timed_up_and_go"}
MUST_HAVE = [
    field.name
    for field in dataclasses.fields(Calendar)
    if field.default is dataclasses.MISSING and field.default_factory is dataclasses.MISSING
]


@pytest.fixture(params=LANGUAGES.values(), ids=LANGUAGES)
def words(request: pytest.FixtureRequest) -> Lexicon:
    return request.param


def test_every_lexicon_stands_in_the_list() -> None:
    modules = [importlib.import_module(f"core.language.{one.name}") for one in pkgutil.iter_modules(home.__path__)]
    written = {one.code for module in modules for one in vars(module).values() if isinstance(one, Lexicon)}
    assert written == set(LANGUAGES)


def test_a_language_is_named_and_runs_as_babel_says(words: Lexicon) -> None:
    outside = Locale.parse(words.code)
    assert words.own_name.casefold() == outside.get_language_name().casefold()
    assert words.right_to_left == (outside.text_direction == "rtl")


def test_a_language_has_each_small_word(words: Lexicon) -> None:
    assert [role for role in WordRole if not words.roles.get(role)] == []


def test_a_language_spells_each_unit(words: Lexicon) -> None:
    assert [unit for unit in ENGLISH.units if not words.units.get(unit)] == []


def test_a_language_names_each_measure(words: Lexicon) -> None:
    wanted = ENGLISH.names.keys() - (NAMED_IN_ENGLISH_ONLY if words is not ENGLISH else set())
    assert sorted(key for key in wanted if not words.names.get(key)) == []


def test_a_language_has_days_months_and_hours(words: Lexicon) -> None:
    assert words.calendar is not None
    assert (len(words.calendar.weekdays), len(words.calendar.months)) == (7, 12)
    assert [name for name in MUST_HAVE if not getattr(words.calendar, name)] == []


def test_a_language_has_words_for_what_each_sign_of_danger_is_made_of(words: Lexicon) -> None:
    needed = {concept for sign in SIGNS for part in sign.parts for concept in part}
    assert sorted(c.name for c in needed if not words.concepts.get(c)) == []


def test_a_language_has_each_answer_to_whether_it_is_happening_now(words: Lexicon) -> None:
    assert [answer.name for answer in Answer if not words.answers.get(answer)] == []


def test_the_tests_try_every_language() -> None:
    assert set(TABLES) == set(CORPUS) == set(LANGUAGES)


def test_the_readme_says_how_good_each_language_is(words: Lexicon) -> None:
    english = Locale.parse(words.code).get_display_name("en")
    rows = [line for line in README.read_text().splitlines() if line.startswith("|")]
    assert any(english in row for row in rows)
