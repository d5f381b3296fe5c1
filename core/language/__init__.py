"""What people say, by language: data only. `Words` is one language's lexicon.

The understanding of a typed answer (core.measures.parsing), intents and red flags read these tables; the words the
bot itself says live in the catalogues, not here. English is understood in every language where it does not clash:
people mix.
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

# The one list: whatever asks which languages there are reads it. A new one is its module, and its name here.
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
    """Return the lexicon of a language tag ("de", "de-CH", "pt_BR"); English for a language we do not have."""
    return LANGUAGES.get(code.replace("_", "-").partition("-")[0].casefold(), ENGLISH)


def lexicon_of(words: Lexicon) -> CompiledLexicon:
    """Return the compiled lexicon, English included; built at first use."""
    return lexicon(words, ENGLISH)
