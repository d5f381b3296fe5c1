"""A number inside a sentence about something else is not an answer: "I lifted 60 kg", "bought 5 kg of potatoes".

The words before the number, in its own clause, decide. Known words (the measure's name, fillers, hedges, days, the
unit) introduce an answer; an unknown word, or another person, makes it a story, and then the number is confirmed
before it is stored. Words after the number are remarks: "82.4, slept badly".
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from functools import cache

from core.language import ENGLISH, Intent, Lexicon, WordRole, lexicon_of, plain
from core.language.cache import memoized
from core.language.concepts import Concept
from core.language.text import bare_words
from core.language.tokens import UNKNOWN, Token, tokens
from core.measures.measure import Measure, Misunderstood, Understood, Why
from core.understanding.answers_in_text import Answer

CLAUSE = re.compile(r"[,;:.!?](?=\s)|\n")  # a comma inside a number has no space behind it
LEADING = (Intent.GREETING, Intent.THANKS, Intent.YES, Intent.DONE, Intent.SAME, Intent.RECORD)


def sure(answers: tuple[Answer, ...], text: str, words: Lexicon, asked: Measure | None) -> tuple[Answer, ...]:
    """The same answers, those in a story doubted. One to the open question is confirmed if the value is usual; a number
    that was not asked for is ignored.
    """
    return tuple(_doubted(answer, asked) for answer in answers) if tells(text, words) else answers


def _doubted(answer: Answer, asked: Measure | None) -> Answer:
    heard = answer.heard
    if not isinstance(heard, Understood):
        return answer
    likely = asked is not None and asked.key == answer.measure and heard.value in asked.bounds.usual
    return replace(answer, heard=Misunderstood(Why.NO_NUMBER, heard if likely else None))


@memoized
def tells(text: str, words: Lexicon) -> bool:
    """Whether the words before the first number are about something else."""
    folded = plain(text)
    if any(word in _others(words) for word in bare_words(folded)):
        return any(_number(t) for t in tokens(folded, lexicon_of(words)))
    lead: tuple[Token, ...] = ()
    for clause in CLAUSE.split(folded):
        toks = tokens(clause, lexicon_of(words))
        first = next((i for i, t in enumerate(toks) if _number(t)), None)
        if first is not None:
            lead = tuple(toks[:first]) or lead  # a bare number goes on with what was said before it
            known = _known(words)
            return any(t.word and t.entry is UNKNOWN and t.text not in known and len(t.text) > 1 for t in lead)
        lead = (*lead, *toks)
    return False


def _number(token: Token) -> bool:
    return bool(token.clock) or (token.entry.number is not None and not token.entry.weak)


@cache
def _known(words: Lexicon) -> frozenset[str]:
    """Words that introduce an answer without meaning of their own: days, greetings, a yes."""
    return frozenset(
        word for lexicon in (words, ENGLISH) for phrase in _leading(lexicon) for word in bare_words(phrase)
    )


def _leading(lexicon: Lexicon) -> Iterator[str]:
    calendar = lexicon.calendar
    if calendar is not None:
        for spellings in (*calendar.weekdays, *calendar.months):
            yield from map(plain, spellings)
        for phrases in (calendar.today, calendar.at, calendar.am, calendar.pm):
            yield from map(plain, phrases)
    for intent in LEADING:
        yield from map(plain, lexicon.intents.get(intent, ()))
    yield from map(plain, lexicon.roles.get(WordRole.PLEASE, ()))


@cache
def _others(words: Lexicon) -> frozenset[str]:
    """Words for other people, whose numbers are not the client's."""
    phrases = words.concepts.get(Concept.OTHERS, "").split(",")
    return frozenset(plain(p.strip()) for p in phrases if " " not in p.strip() and "*" not in p and p.strip())
