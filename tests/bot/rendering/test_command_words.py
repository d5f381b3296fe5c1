"""Every command has a text in the menu and in /help, in every language."""

from __future__ import annotations

import re

import pytest

from bot.rendering import Reader, render
from bot.rendering.catalogues import extracted
from bot.rendering.menu import describe
from bot.rendering.translations import read
from core.dialogue.client import messages as m
from core.dialogue.commands import CLIENT, STAFF, TABLES
from core.dialogue.kit.commands import Who
from core.dialogue.staff import messages as sm
from core.language import LANGUAGES

ROWS = [row for table in TABLES.values() for row in table]
TEXTS = sorted(
    {row.menu for row in ROWS if isinstance(row.menu, str)}
    | {line.text for row in ROWS if isinstance(row.help, tuple) for line in row.help}
)
TRANSLATED = [language for language in LANGUAGES if language != "en"]


@pytest.fixture(scope="module")
def template() -> set[str]:
    return {message.id for message in extracted() if isinstance(message.id, str)}


@pytest.mark.parametrize("text", TEXTS)
def test_the_words_of_a_command_are_marked_for_the_catalogues(text: str, template: set[str]) -> None:
    assert text in template, "put N_() around it"


@pytest.mark.parametrize("language", TRANSLATED)
def test_the_words_of_a_command_are_in_every_language(language: str) -> None:
    catalogue = read(language)
    assert catalogue is not None
    without = [text for text in TEXTS if (message := catalogue.get(text)) is None or not message.string]
    assert without == []
    assert all(describe(text, language) != text for text in TEXTS if not text.startswith("/"))


NAMED = re.compile(r"(?<![\w<])/[a-z]+")
HELP = {
    Who.CLIENT: (CLIENT, m.Help("Rowan", "112", "")),
    Who.COACH: (STAFF, sm.StaffHelp(True, False)),
    Who.ORGANISER: (STAFF, sm.StaffHelp(False, True)),
}


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("role", HELP)
def test_help_names_every_command_that_is_listed_and_no_other(role: Who, language: str) -> None:
    table, message = HELP[role]
    said = render(message, (), Reader(language)).text
    named = set(NAMED.findall(said))
    listed = {name for line in table.help(role) for name in NAMED.findall(line)}
    assert named == listed
    assert listed - {f"/{row.name}" for row in table if row.who.includes(role)} == set()
