"""Catalogues: .po files, read at run time and compiled in memory with Babel, once a language.

There is no build step that can be forgotten. English is the source text. An entry marked fuzzy is not used: half a
safety message in the right language is worse than a whole one in English.

    python -m bot.rendering.catalogues extract    source text -> locales/messages.pot
    python -m bot.rendering.catalogues update     .pot -> every .po; new entries come empty, gone ones are dropped
    python -m bot.rendering.catalogues check      says what is wrong; exit code 1 if anything is
"""

from __future__ import annotations

import gettext
import io
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
    """The catalogue of a language as it lies in the package; None when there is none."""
    found = files("locales").joinpath(language, "LC_MESSAGES", "messages.po")
    if not found.is_file():
        return None
    with found.open("rb") as file:
        return read_po(file, locale=language)


@lru_cache(maxsize=16)
def translations(language: str) -> gettext.NullTranslations:
    """What `bot.rendering.voice` speaks from. An unknown language, and English, is the source text."""
    if language == "en":
        return gettext.NullTranslations()
    catalogue = read(language)
    return compiled(catalogue) if catalogue is not None else gettext.NullTranslations()
