"""`python -m tests.corpus fuzz --texts N`: short texts around the grammar of numbers, for every measure.

Nothing a client types may raise. The texts are in six languages, drawn from each lexicon's
own phrases: numbers, units, roles, names of measures, and marks.
"""

from __future__ import annotations

import random
from collections.abc import Iterator
from functools import cache

from core.language import LANGUAGES, Lexicon, words_for
from core.language.lexicon import WordRole
from core.measures import MEASURES
from core.measures.measure import Measure, Misunderstood, Understood
from core.understanding.answers_in_text import answers_in, correction, whole_numbers
from core.understanding.stories import sure

MARKS = ("/", ",", ".", "-", "+", ":", "?", "x", "'", '"', "1/2", "½", "¼", "٫", "، ", "%", "~", "(", ")", "\n")
FIGURES = (
    "0", "1", "2", "3", "7", "11", "12", "36", "75", "82", "82.4", "82,4", "7/10", "128/82", "1:02", "14:30", "1h30",
    "1.2.3", "12345678901234", "٨٢", "٨٢٫٤", "-5", "1,200", "0.5", "5'7\"", "11½", "1e9", "²",
)  # fmt: skip
UNUSUAL_NAMES = ("Rowan", "zzz", "ß", "ﷺ", "😄", "I")
Raised = tuple[str, str, str, BaseException]


@cache
def phrases_of(words: Lexicon) -> tuple[tuple[str, ...], ...]:
    """The pools a text is drawn from; numbers and units come up most often."""
    numbers = tuple(words.numbers)
    units = tuple(p for spelled in (*words.units.values(), *words.parts.values()) for p in spelled)
    whole = (*words.amounts, *words.local_pound)
    roles = tuple(p for role in WordRole for p in words.roles.get(role, ()))
    names = tuple(p for spelled in words.names.values() for p in spelled)
    pools = (FIGURES, numbers, units, FIGURES, units, whole, roles, MARKS, names, UNUSUAL_NAMES)
    return tuple(pool for pool in pools if pool)


def texts(words: Lexicon, chance: random.Random) -> Iterator[str]:
    pools = phrases_of(words)
    while True:
        pieces = [chance.choice(chance.choice(pools)) for _ in range(chance.randint(1, 6))]
        yield chance.choice((" ", " ", " ", "")).join(pieces)[:200]


def fuzz(count: int, seed: int = 20260302) -> list[Raised]:
    """What raised: language, measure, text, error."""
    chance = random.Random(seed)  # repeatable, no secret
    measures = [m for m in MEASURES.values() if m.understand is not None]
    sources = [(code, words_for(code), texts(words_for(code), chance)) for code in LANGUAGES]
    raised: list[Raised] = []
    for n in range(count):
        language, words, source = sources[n % len(sources)]
        text, asked = next(source), measures[n // len(sources) % len(measures)]
        try:
            read(text, words, asked, measures)
        except Exception as error:  # whatever it is, it is counted
            raised.append((language, asked.key, text, error))
    return raised


def read(text: str, words: Lexicon, asked: Measure, measures: list[Measure]) -> None:
    """Everything a message goes through before something is stored."""
    others = [m for m in measures if m is not asked]
    prefer = asked.units[len(text) % len(asked.units)] if asked.units else None
    for answer in sure(answers_in(text, words, asked, others, prefer), text, words, asked):
        assert isinstance(answer.heard, Understood | Misunderstood)
        meant = answer.heard if isinstance(answer.heard, Understood) else answer.heard.guess
        if meant is not None:
            assert meant.value.is_finite()
    answers_in(text, words, None, measures)
    correction(text, words)
    whole_numbers(text, words)
