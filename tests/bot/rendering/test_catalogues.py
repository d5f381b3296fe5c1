"""The catalogue tool, on catalogues created here."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from babel.messages.catalog import Catalog
from babel.messages.pofile import read_po, write_po

from bot.rendering import Reader, render
from bot.rendering.catalogues import extracted, problems, problems_of, update
from bot.rendering.translations import PSEUDO, accented, compiled, pseudo, template, translations
from core.dialogue.client import messages as m
from core.language import LANGUAGES

LOCALES = Path(__file__).parents[3] / "locales"
A_SENTENCE = 3  # words
SOURCE = """
from bot.rendering.voice import N_, NC_
TABLE = {"low": N_("Low"), "start": NC_("button", "Start")}
def words(v, n):
    v.say("Send {name} a <b>word</b>, or /help.", name="x")
    v.say_n("{n} day, {name}", "{n} days, {name}", n, name="x")
    low = TABLE["low"]
    v.plain(low)
"""


@pytest.fixture
def project(tmp_path: Path) -> Path:
    (tmp_path / "bot" / "rendering").mkdir(parents=True)
    (tmp_path / "bot" / "rendering" / "words.py").write_text(SOURCE)
    from bot.rendering.catalogues import extract

    extract(tmp_path)
    update(tmp_path)
    return tmp_path


def fill(project: Path, language: str, replace: dict[str, str]) -> None:
    """Translate everything with itself, except what `replace` changes."""
    path = project / "locales" / language / "LC_MESSAGES" / "messages.po"
    with path.open("rb") as file:
        catalogue = read_po(file, locale=language)
    for message in catalogue:
        if not message.id:
            continue
        if isinstance(message.id, tuple):
            many = replace.get(message.id[1], message.id[1])
            message.string = (many,) * catalogue.num_plurals
        else:
            message.string = replace.get(str(message.id), str(message.id))
    with path.open("wb") as file:
        write_po(file, catalogue)


def found(project: Path, language: str) -> list[str]:
    return sorted(line for line in problems(project) if line.startswith(f"{language}:"))


def test_texts_contexts_and_plurals_are_extracted(project: Path) -> None:
    ids = {(m.id, m.context) for m in extracted(project) if m.id}
    assert ids == {
        ("Low", None),
        ("Start", "button"),
        ("Send {name} a <b>word</b>, or /help.", None),
        (("{n} day, {name}", "{n} days, {name}"), None),
    }


def test_each_language_gets_its_own_number_of_plural_forms(project: Path) -> None:
    text = (project / "locales/ar/LC_MESSAGES/messages.po").read_text()
    assert "msgstr[5]" in text
    assert "msgstr[6]" not in text
    assert "not yet reviewed by a native-speaking practitioner" in text


def test_an_empty_catalogue_is_reported_and_english_needs_no_words(project: Path) -> None:
    assert len(found(project, "pl")) == 4
    assert found(project, "en") == []


def test_a_whole_catalogue_has_no_problems(project: Path) -> None:
    fill(project, "pl", {})
    assert found(project, "pl") == []


@pytest.mark.parametrize(
    ("text", "wrong"),
    [
        ("Send {nome} a <b>word</b>, or /help.", "placeholders"),
        ("Send a <b>word</b>, or /help.", "placeholders"),
        ("Send {name a <b>word</b>, or /help.", "broken placeholder"),
        ("Send {name} a <b>word, or /help.", "tags"),
        ("Send {name} a </b>word<b>, or /help.", "tags"),
        ("Send {name} a <b>word</b>, or /ayuda.", "commands"),
    ],
)
def test_a_broken_sentence_is_found(project: Path, text: str, wrong: str) -> None:
    fill(project, "es", {"Send {name} a <b>word</b>, or /help.": text})
    (line,) = found(project, "es")
    assert wrong in line


def test_a_broken_placeholder_in_one_plural_form_is_found(project: Path) -> None:
    fill(project, "pl", {"{n} days, {name}": "{n} dni"})
    assert any("placeholders" in line for line in found(project, "pl"))


def test_a_plural_form_may_leave_its_number_out(project: Path) -> None:
    fill(project, "ar", {"{n} days, {name}": "يومان، {name}"})
    assert found(project, "ar") == []


def test_a_text_that_is_new_or_gone_is_found_until_updated(project: Path) -> None:
    fill(project, "de", {})
    source = project / "bot" / "rendering" / "words.py"
    source.write_text(SOURCE.replace('"Low"', '"High"'))
    assert [line.split(": ")[1] for line in found(project, "de")] == ["missing", "stale"]
    assert "messages.pot: stale; run extract" in problems(project)
    update(project)
    assert [line.split(": ")[1] for line in found(project, "de")] == ["no words"]


def test_an_update_keeps_what_is_translated_and_never_guesses(project: Path) -> None:
    fill(project, "de", {"Low": "Niedrig"})
    source = project / "bot" / "rendering" / "words.py"
    source.write_text(SOURCE.replace('"Low"', '"Lower"'))
    update(project)
    text = (project / "locales/de/LC_MESSAGES/messages.po").read_text()
    assert "Niedrig" not in text
    assert "fuzzy" not in text


def test_updating_twice_changes_nothing(project: Path) -> None:
    before = {p: p.read_bytes() for p in project.rglob("*.po")}
    update(project)
    assert {p: p.read_bytes() for p in project.rglob("*.po")} == before


def test_a_fuzzy_entry_is_a_problem_and_is_never_spoken() -> None:
    catalogue = Catalog(locale="de")
    message = catalogue.add("Hello", "Hallo vielleicht", flags=["fuzzy"])
    assert "fuzzy" in list(problems_of(message, 2))
    assert compiled(catalogue).gettext("Hello") == "Hello"


def test_context_and_plurals_are_spoken() -> None:
    catalogue = Catalog(locale="pl")
    catalogue.add("Start", "Początek", context="picture")
    catalogue.add("Start", "Zacznij")
    catalogue.add(("{n} day", "{n} days"), ("{n} dzień", "{n} dni", "{n} dni."))
    spoken = compiled(catalogue)
    assert (spoken.gettext("Start"), spoken.pgettext("picture", "Start")) == ("Zacznij", "Początek")
    assert [spoken.ngettext("{n} day", "{n} days", n) for n in (1, 2, 5)] == ["{n} dzień", "{n} dni", "{n} dni."]


def test_the_templates_lie_in_the_package_and_are_up_to_date() -> None:
    there = {(str(m.id), m.context) for m in template() if m.id}
    needed = {(str(m.id), m.context) for m in extracted() if m.id}
    assert there == needed


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_catalogue_is_never_broken(language: str) -> None:
    """Texts may be missing, but those present are intact."""
    lines = [line for line in problems() if line.startswith(f"{language}:")]
    assert [line for line in lines if ": no words: " not in line] == []


def test_the_pseudo_language_keeps_placeholders_tags_and_commands() -> None:
    assert accented("Send {name} a <b>word</b>, or /help.") == "⟦Šéñd {name} á <b>wóřd</b>, óř /help.⟧".replace(
        "Š", "S"
    )


def test_the_pseudo_language_is_made_of_the_template() -> None:
    catalogue = pseudo(template())
    assert len(catalogue) == len(template())
    assert translations(PSEUDO).gettext("You are welcome.") == accented("You are welcome.")
    assert render(m.YouAreWelcome(), (), Reader(PSEUDO)).text == accented("You are welcome.")


def test_a_language_without_a_catalogue_reads_english() -> None:
    assert translations("xx").gettext("You are welcome.") == "You are welcome."


def test_no_message_stands_in_another_languages_catalogue_word_for_word() -> None:
    """A line pasted into the wrong catalogue reads well to every other check. Names alone may be the same."""
    said: dict[tuple[str | None, str], dict[str, str]] = {}
    for language in LANGUAGES:
        if language == "en":
            continue
        with (LOCALES / language / "LC_MESSAGES" / "messages.po").open("rb") as file:
            catalogue = read_po(file, locale=language)
        for message in catalogue:
            key = message.id[0] if isinstance(message.id, tuple) else message.id
            text = message.string[0] if isinstance(message.string, tuple | list) else message.string
            words = re.findall(r"[^\W\d_]+", re.sub(r"<[^>]*>|\{\w+\}", "", text))
            if key and len(words) >= A_SENTENCE:
                said.setdefault((message.context, key), {"en": key})[language] = text
    assert [texts for texts in said.values() if len(set(texts.values())) < len(texts)] == []
