"""Vocabulary by language: data only. `Lexicon` is one language's vocabulary.

Typed answers (core.measures.parsing), intents and danger signs are recognised from these tables; the bot's own texts
are in the catalogues. English is understood alongside every language unless it clashes, because people mix languages.
"""

from __future__ import annotations

from core.language.ar import ARABIC
from core.language.de import GERMAN
from core.language.en import ENGLISH
from core.language.es import SPANISH
from core.language.fr import FRENCH
from core.language.lexicon import Intent, Level, Lexicon, UnitPart, WordRole
from core.language.pl import POLISH
from core.language.text import plain
from core.language.tokens import CompiledLexicon, lexicon

# The single list of languages. To add one, add its module and its name here.
LANGUAGES: dict[str, Lexicon] = {words.code: words for words in (ENGLISH, SPANISH, GERMAN, FRENCH, POLISH, ARABIC)}

__all__ = [
    "ENGLISH",
    "LANGUAGES",
    "Intent",
    "Level",
    "Lexicon",
    "UnitPart",
    "WordRole",
    "lexicon_of",
    "plain",
    "words_for",
]


def words_for(code: str) -> Lexicon:
    """The lexicon for a language tag ("de", "de-CH", "pt_BR"); English for an unsupported language."""
    return LANGUAGES.get(code.replace("_", "-").partition("-")[0].casefold(), ENGLISH)


def lexicon_of(words: Lexicon) -> CompiledLexicon:
    """The compiled lexicon, English included; built on first use."""
    return lexicon(words, ENGLISH)
