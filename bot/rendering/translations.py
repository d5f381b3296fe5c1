"""Catalogues at run time: .po files compiled in memory with Babel, once per language, on first use.

There is no build step to forget. English is the source text. An entry marked fuzzy is not used: half a
safety message in the right language is worse than a whole one in English.
"""

from __future__ import annotations

import gettext
import io
import re
from functools import lru_cache
from importlib.resources import files

from babel.messages.catalog import Catalog
from babel.messages.mofile import write_mo
from babel.messages.pofile import read_po

PSEUDO = "x-pseudo"


def compiled(catalogue: Catalog) -> gettext.GNUTranslations:
    """Compile a catalogue in memory."""
    buffer = io.BytesIO()
    write_mo(buffer, catalogue, use_fuzzy=False)
    buffer.seek(0)
    return gettext.GNUTranslations(buffer)


def read(language: str) -> Catalog | None:
    """A language's catalogue as shipped in the package; None if there is none."""
    found = files("locales").joinpath(language, "LC_MESSAGES", "messages.po")
    if not found.is_file():
        return None
    with found.open("rb") as file:
        return read_po(file, locale=language)


@lru_cache(maxsize=16)
def translations(language: str) -> gettext.NullTranslations:
    """Translations for `bot.rendering.voice`. English, and any unknown language, uses the source text."""
    if language == "en":
        return gettext.NullTranslations()
    if language == PSEUDO:
        return compiled(pseudo(template()))
    catalogue = read(language)
    return compiled(catalogue) if catalogue is not None else gettext.NullTranslations()


def template() -> Catalog:
    """The template as shipped in the package."""
    with files("locales").joinpath("messages.pot").open("rb") as file:
        return read_po(file)


# --- a language for tests ---------------------------------------------------------------------------------------

_ACCENTS = str.maketrans("aeiouyAEIOUcnslzr", "áéíóúýÁÉÍÓÚçñšłžř")
_KEEP = re.compile(r"(\{[^}]*\}|</?\w+>|(?<![\w<])/[a-z]+\b)")


def accented(text: str) -> str:
    """ "Thanks, {name}." -> "⟦Tháñkš, {name}.⟧": text without brackets bypassed the catalogue."""
    parts = [part if _KEEP.fullmatch(part) else part.translate(_ACCENTS) for part in _KEEP.split(text)]
    return f"⟦{''.join(parts)}⟧"


def pseudo(source: Catalog) -> Catalog:
    """A pseudo-language made from a template, which nobody speaks and every tester can read."""
    catalogue = Catalog(locale="en", fuzzy=False)
    for message in source:
        if message.id:
            words = accented(message.id) if isinstance(message.id, str) else tuple(map(accented, message.id))
            catalogue.add(message.id, words, context=message.context)
    return catalogue
