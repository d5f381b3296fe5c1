"""A number inside a sentence about something else is not an answer: "I lifted 60 kg", "bought 5 kg of potatoes".

The words before the number, in its own clause, decide. Known words (the measure's name, fillers, hedges, days, the
unit) introduce an answer; an unknown word, or another person, makes it a story, and then the number is confirmed
before it is stored. Words after the number are remarks: "82.4, slept badly".
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import cache

from core.language import ENGLISH, Intent, Lexicon, WordRole, lexicon_of, plain
from core.language.cache import memoized
from core.language.concepts import Concept
from core.language.phrases import Table, compiled, cut, read
from core.language.text import bare_words
from core.language.tokens import UNKNOWN, Token, tokens
from core.measures import MEASURES
from core.measures.measure import Measure, MeasureKind, Misunderstood, Understood, Why
from core.understanding.answers_in_text import Answer

CLAUSE = re.compile(r"[,;:.!?](?=\s)|\n")  # a comma inside a number has no space behind it
DEEDS = {"de": re.compile(r"ge\w{2,}(?:t|en)|\w{2,5}ge\w{2,}(?:t|en)|\w{3,}iert")}  # past participles, by language
MARKS_FOR = {  # behind "ten out of ten", what the marks are given to
    "en": ("for",), "es": ("por", "para"), "de": ("für",), "fr": ("pour",), "pl": ("za", "dla"), "ar": ("على", "ل"),
}  # fmt: skip
FEWEST_BEFORE_A_DEED = 3  # words
MOST_WORDS = 3  # in a description or a greeting
AFTER_REACH = 3  # words from "after" to what was done
LEADING = (Intent.GREETING, Intent.THANKS, Intent.YES, Intent.DONE, Intent.SAME, Intent.RECORD)


def sure(answers: tuple[Answer, ...], text: str, words: Lexicon, asked: Measure | None) -> tuple[Answer, ...]:
    """The same answers, those in a story doubted. One to the open question is confirmed if the value is usual; a number
    that was not asked for is ignored.
    """
    answers = tuple(_at_rest(answer, text, words) for answer in answers)
    if not answers or not tells(text, words) or _describes(answers, text, words, asked):
        return answers
    toks = tokens(plain(text), lexicon_of(words))
    if _only_an_article(toks, words) or _says_of_another(toks, words):
        asked = None  # nothing to offer
    return tuple(_doubted(answer, asked) for answer in answers)


def _at_rest(answer: Answer, text: str, words: Lexicon) -> Answer:
    """The same answer; one that counts only at rest is asked about if effort is told: "72 after the stairs"."""
    measure = MEASURES.get(answer.measure)
    heard = answer.heard
    if measure is None or not measure.protocol.at_rest or not isinstance(heard, Understood):
        return answer
    if heard.second is not None and heard.value not in measure.bounds.usual:
        return answer  # a severe pressure is not argued about
    if not _after_effort(text, words):
        return answer
    return replace(answer, heard=Misunderstood(Why.NOT_AT_REST, heard))


@memoized
def _after_effort(text: str, words: Lexicon) -> bool:
    """Whether a message says that its number was taken after or during effort, or a coffee, and not after rest."""
    table = effort_words(words)
    toks = tokens(plain(text), lexicon_of(words))
    for i, token in enumerate(toks):
        if not token.has(WordRole.AFTER) or _any_number(token):
            continue
        near_by = toks[i + 1 : i + 2 + AFTER_REACH]
        said = read(cut(" ".join(t.text for t in near_by), words.elision), table, False)
        starts = {key for k in range(len(said.words)) for key in said.spans(k)}
        if Concept.REST in starts:
            continue
        if starts or any(t.has(WordRole.STIRRING) for t in near_by):
            return True
    return False


@cache
def effort_words(words: Lexicon) -> Table[Concept]:
    return compiled({c: words.concepts.get(c, "") for c in (Concept.EFFORT, Concept.TASKS, Concept.REST)}, words)


def _says_of_another(toks: Sequence[Token], words: Lexicon) -> bool:
    """Whether the number is another person's: nothing but a verb stands between, "my husband weighs 90"."""
    others = _others(words)
    first = next((i for i, t in enumerate(toks) if _number(t)), None)
    if first is None:
        return False
    for t in reversed(toks[:first]):
        if any(word in others or word.removesuffix("s") in others for word in bare_words(t.text)):
            return True  # "my mum's is 94", too
        if not (t.has(WordRole.LEAD) or t.has(WordRole.FILLER) or t.has(WordRole.HEDGE) or t.entry.measures):
            return False
    return False


def _describes(answers: tuple[Answer, ...], text: str, words: Lexicon, asked: Measure | None) -> bool:
    """Whether a few words describe the rating that follows by itself: "slept badly, 4"."""
    if asked is None or asked.kind is not MeasureKind.RATING or [a.measure for a in answers] != [asked.key]:
        return False
    *before, last = [c for c in CLAUSE.split(plain(text)) if c.strip()]
    said = bare_words(" ".join(before))
    if not 0 < len(said) <= MOST_WORDS or any(word in _others(words) for word in said):
        return False
    compiled = lexicon_of(words)
    return not any(_number(t) for t in tokens(" ".join(said), compiled)) and all(
        t.entry is not UNKNOWN or t.digits for t in tokens(last.strip(), compiled) if t.word
    )


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
    whole = tokens(folded, lexicon_of(words))
    others = _others(words)
    if any(word in others for t in whole if t.word and not _introduces(t) for word in bare_words(t.text)):
        return any(map(_any_number, whole))
    if any(t.has(WordRole.FAREWELL) for t in whole):
        return any(map(_any_number, whole))
    if _only_an_article(whole, words) or _ends_in_a_deed(whole, words) or _gives_marks(whole, words):
        return True
    lead: tuple[Token, ...] = ()
    for clause in CLAUSE.split(folded):
        toks = tokens(clause, lexicon_of(words))
        first = next((i for i, t in enumerate(toks) if _number(t)), None)
        if first is None and _greets(toks, words):
            continue
        if first is not None:
            if _counts_things(toks, first):
                return True
            lead = _after_greeting(toks[:first], words) or lead  # a bare number goes on with what was said before it
            known = _known(words)
            return any(t.word and t.entry is UNKNOWN and t.text not in known and len(t.text) > 1 for t in lead)
        lead = (*lead, *toks)
    return False


def _introduces(token: Token) -> bool:
    return _number(token) or token.has(WordRole.LEAD) or token.has(WordRole.FILLER)


def _ends_in_a_deed(toks: Sequence[Token], words: Lexicon) -> bool:
    """Whether the verb that says what the number is about comes last, as in German: "ich habe 60 kg gestemmt"."""
    deed = DEEDS.get(words.code)
    if deed is None or len(toks) < FEWEST_BEFORE_A_DEED:
        return False
    last = toks[-1]
    return (
        last.entry is UNKNOWN and deed.fullmatch(last.text) is not None and any(t.has(WordRole.LEAD) for t in toks[:-1])
    )


def _gives_marks(toks: Sequence[Token], words: Lexicon) -> bool:
    """Whether full marks are given to somebody or something: "ten out of ten for your patience"."""
    numbers = [i for i, t in enumerate(toks) if _number(t)]
    if len(numbers) != 2 or toks[numbers[0]].entry.number != toks[numbers[1]].entry.number:
        return False
    between, after = toks[numbers[0] + 1 : numbers[1]], toks[numbers[1] + 1 :]
    marks = {plain(word) for word in MARKS_FOR.get(words.code, ())}
    known = _known(words)
    return (
        any(t.has(WordRole.OUT_OF) for t in between)
        and bool(after)
        and after[0].text in marks
        and any(
            t.word and not t.entry.measures and not t.has(WordRole.FILLER) and t.text not in known for t in after[1:]
        )
    )


def _only_an_article(toks: Sequence[Token], words: Lexicon) -> bool:
    """Whether the only number is a word for one that counts a thing, or "oh": "une voisine", "one of these days"."""
    numbers = [i for i, t in enumerate(toks) if _any_number(t)]
    if len(numbers) != 1 or toks[numbers[0]].digits or toks[numbers[0]].entry.number not in (0, 1):
        return False
    if toks[numbers[0]].entry.number == 0:
        return toks[numbers[0]].has(WordRole.LEAD)
    one, after = toks[numbers[0]], toks[numbers[0] + 1 : numbers[0] + 2]
    if one.entry.units or one.has(WordRole.TIMES) or not after or not after[0].word:
        return False
    follows = after[0]
    return follows.has(WordRole.OUT_OF) or (follows.entry is UNKNOWN and follows.text not in _known(words))


def _counts_things(toks: Sequence[Token], first: int) -> bool:
    """Whether the number counts things that another number is about: "two bags of 20 kg"."""
    after = toks[first + 1 : first + 2]
    return bool(after) and after[0].has(WordRole.FOREIGN) and any(_number(t) for t in toks[first + 2 :])


def _after_greeting(lead: Sequence[Token], words: Lexicon) -> tuple[Token, ...]:
    """The words before a number, without a greeting and the name behind it: "morning Rowan 82.4"."""
    i = 0
    while i < len(lead) and lead[i].text in _greetings(words):
        i += 1
    if i and i < len(lead) and lead[i].entry is UNKNOWN:
        i += 1
    return tuple(lead[i:])


def _greets(toks: Sequence[Token], words: Lexicon) -> bool:
    """Whether a clause is a greeting, with at most a name behind it: "Good morning Rowan!"."""
    known = _known(words)
    unknown = [t for t in toks if t.word and t.entry is UNKNOWN and t.text not in known]
    return len(toks) <= MOST_WORDS + 1 and len(unknown) <= 1 and bool(toks) and toks[0].text in _greetings(words)


@cache
def _greetings(words: Lexicon) -> frozenset[str]:
    phrases = (p for lexicon in (words, ENGLISH) for p in lexicon.intents.get(Intent.GREETING, ()))
    return frozenset(word for p in phrases for word in bare_words(plain(p)))


def _any_number(token: Token) -> bool:
    """Whether it is a number, or an article that may be one."""
    return bool(token.clock) or token.entry.number is not None


def _number(token: Token) -> bool:
    return bool(token.clock) or (token.entry.number is not None and not token.entry.weak)


@cache
def _known(words: Lexicon) -> frozenset[str]:
    """Words that introduce an answer without meaning of their own: days, greetings, a short yes. A longer phrase ("fine
    with me") lends its words no such license."""
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
        yield from (plain(p) for p in lexicon.intents.get(intent, ()) if len(bare_words(plain(p))) < 3)
    yield from map(plain, lexicon.roles.get(WordRole.PLEASE, ()))


@cache
def _others(words: Lexicon) -> frozenset[str]:
    """Words for other people, whose numbers are not the client's."""
    phrases = words.concepts.get(Concept.OTHERS, "").split(",")
    return frozenset(plain(p.strip()) for p in phrases if " " not in p.strip() and "*" not in p and p.strip())
