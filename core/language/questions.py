"""Everyday questions and remarks: "is that good?", "can I weigh myself today?", "can Rowan ring me".

A lexicon has lines of word groups for each `Question` (`core.language.word_groups`); one clause must hold a phrase of
every group of a line, in any order. A group that starts with ! holds what must not stand there; a phrase that starts
with ^ stands at the beginning of the clause. "@" is the coach: their name, or a word for them.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache

from core.language.cache import memoized
from core.language.lexicon import Lexicon, Question
from core.language.spoken import in_full, opens_a_question, opens_a_statement, without_fillers
from core.language.text import bare_words, plain
from core.language.word_groups import groups_of, phrases_of, stands_at

COACH = "@"
LONGEST = 16  # words of a clause; a longer one tells a story
TWO, A_FEW, WORDY, A_SENTENCE = 2, 3, 4, 5  # words
NUMBERS = frozenset(  # what may hold a number
    {
        Question.CHANGED,
        Question.CHAT,
        Question.FOR_COACH,
        Question.GOAL,
        Question.GOOD,
        Question.HOW_OFTEN,
        Question.MEDICAL,
        Question.OVER,
        Question.RESCHEDULE,
        Question.SINCE,
    }
)
_CLAUSE = re.compile(r"[,;:.!?،؛؟]+(?=\s|$)|\n+")
_TWO_LETTERS = re.compile(r"([aou])e")
_DIGIT_LETTER = re.compile(r"(?<=\d)(?=[^\W\d_])")


@dataclass(frozen=True, slots=True)
class Asked:
    """A question, the rest of the message without it, and whether its own clause holds a number."""

    question: Question
    rest: str = ""
    number: bool = False


@dataclass(frozen=True, slots=True)
class _Line:
    question: Question
    wanted: int  # bits of groups that must be there
    unwanted: int


class _Table:
    """The lines of one language, with every phrase under its first word."""

    def __init__(self, questions: Mapping[Question, Sequence[str]]) -> None:
        self.whole: dict[str, list[tuple[tuple[str, ...], bool, int]]] = {}
        self.open: dict[str, list[tuple[tuple[str, ...], bool, int]]] = {}  # "sav*", by its first letter
        self.lines: list[_Line] = []
        bits: dict[str, int] = {}
        for question in Question:
            for line in questions.get(question, ()):
                wanted = unwanted = 0
                for group in groups_of(line):
                    bare = group.removeprefix("!")
                    if bare not in bits:
                        bits[bare] = 1 << len(bits)
                        self._add(bare, bits[bare])
                    if bare == group:
                        wanted |= bits[bare]
                    else:
                        unwanted |= bits[bare]
                self.lines.append(_Line(question, wanted, unwanted))

    def _add(self, group: str, bit: int) -> None:
        for phrase in group.split("|"):
            first = phrase.strip().startswith("^")
            bare = phrase.strip().removeprefix("^")
            for parts in [(COACH,)] if bare == COACH else phrases_of(bare):
                shelf, key = (self.open, parts[0][:1]) if parts[0].endswith("*") else (self.whole, parts[0])
                shelf.setdefault(key, []).append((parts, first, bit))

    def ask(self, said: Sequence[str]) -> Question | None:
        found = 0
        for i, word in enumerate(said):
            for parts, first, bit in (*self.whole.get(word, ()), *self.open.get(word[:1], ())):
                if not found & bit and not (first and i) and stands_at(said, i, parts):
                    found |= bit
        number = any(w[0].isdecimal() for w in said)
        return next(
            (
                line.question
                for line in self.lines
                if line.wanted & found == line.wanted
                and not line.unwanted & found
                and (not number or line.question in NUMBERS)
            ),
            None,
        )


@cache
def _table(words: Lexicon) -> _Table:
    return _Table(words.questions)


@memoized
def asked(text: str, words: Lexicon, coach: str) -> Asked | None:
    """The everyday question of a message, or None. coach: their name, "" for none."""
    table = _table(words)
    names = frozenset(bare_words(plain(coach)))
    clauses = [c for c in _CLAUSE.split(text) if c.strip()]
    for i, clause in enumerate(clauses):
        said = _words(clause, names)
        if 0 < len(said) <= LONGEST and (found := _heard(table, said, words)) is not None:
            if found is Question.GOOD and "?" not in text and opens_a_statement(said, words):
                continue
            rest = ". ".join(c.strip() for c in (*clauses[:i], *clauses[i + 1 :]))
            return Asked(found, rest, any(w[0].isdecimal() for w in said))
    whole = _words(text, names)
    if len(clauses) > 1 and len(whole) <= LONGEST and (found := _heard(table, whole, words)) is not None:
        return Asked(found, "", any(w[0].isdecimal() for w in whole))
    return None


def _heard(table: _Table, said: Sequence[str], words: Lexicon) -> Question | None:
    """The question of a clause; then of "koennte" as "könnte" where umlauts may be two letters, and without dialect and
    small words."""
    single = [_TWO_LETTERS.sub(r"\1", word) for word in said] if words.umlauts else list(said)
    full = in_full(single, words)
    ways = (said, single, full, without_fillers(full, words))
    tried = dict.fromkeys(tuple(way) for way in ways if way)
    return next((found for way in tried if (found := table.ask(way)) is not None), None)


def _words(text: str, names: frozenset[str]) -> list[str]:
    said: list[str] = []
    for word in bare_words(_DIGIT_LETTER.sub(" ", plain(text))):
        if word not in names:
            said.append(word)
        elif said[-1:] != [COACH]:
            said.append(COACH)
    return said


def looks_like_a_question(text: str, words: Lexicon) -> bool:
    """Whether a text ends as a question does, and has a few words; or opens like one."""
    marked = ends_as_a_question(text) and len(bare_words(plain(text))) >= A_FEW
    return marked or opens_a_question(text, words)


def ends_as_a_question(text: str) -> bool:
    """Whether a text has a question mark at its end."""
    return text.rstrip().endswith(("?", "؟"))


def is_wordy(text: str, *, few: bool = False) -> bool:
    """Whether a text says something in words rather than trying to be an answer. few: two words are enough."""
    return sum(not w[0].isdecimal() for w in bare_words(plain(text))) >= (TWO if few else WORDY)


def is_a_remark(text: str) -> bool:
    """Whether a text that answers nothing tells something all the same: a sentence, or a few words around a number."""
    said = bare_words(plain(text))
    words = sum(not w[0].isdecimal() for w in said)
    return words >= (TWO if words < len(said) else A_SENTENCE)
