"""What a coach asks for in plain words: "who needs me", "show me Ada's waist", "export Ada".

A lexicon has lines of word groups for each `Request` (`core.language.word_groups`); the text must hold a phrase
of every group of a line, in any order. A group that starts with ! holds what must not stand there; a phrase that
starts with ^ stands at the beginning.
"""

from __future__ import annotations

import re

from core.language import ENGLISH, Lexicon
from core.language.cache import memoized
from core.language.lexicon import Request
from core.language.text import bare_words, plain
from core.language.word_groups import groups_of, phrases_of, stands_at

LONGEST = 8  # words; a longer text says something to somebody
LEADING = (Request.WRITE, Request.NOTE)  # may have any number of words after them
OF_A_MEASURE = frozenset({Request.ADD, Request.DROP})  # nothing in a text that names none
OF_NOBODY = frozenset(
    {
        Request.DONE_THEM,
        Request.DIGEST_DAY,
        Request.QUIET,
        Request.STAND_IN,
        Request.INVITE,
        Request.REPORT,
        Request.NEEDS_ME,
        Request.CASELOAD,
        Request.WEEK,
    }
)
_ADDRESSED = re.compile(r"\s*[^\W\d_]+\s*[,:،]")


@memoized
def requests_in(text: str, words: Lexicon) -> tuple[Request, ...]:
    """Everything a text may ask for, the likeliest first. Words addressed to somebody ("Ada, show me ...") are for
    them."""
    folded = plain(text)
    said = bare_words(folded.replace("'", " ") if words.elision else folded)
    if _ADDRESSED.match(text):
        return (Request.NOTE,) if _leads(said, Request.NOTE, words) else ()
    if len(said) > LONGEST:
        return tuple(request for request in LEADING if _leads(said, request, words))
    return tuple(request for request in Request if any(_asks(said, request, one) for one in (words, ENGLISH)))


def leads(text: str, request: Request, words: Lexicon) -> bool:
    """Whether a text begins as this request does, so that what follows may be the words it is about."""
    folded = plain(text)
    return _leads(bare_words(folded.replace("'", " ") if words.elision else folded), request, words)


def _leads(said: list[str], request: Request, words: Lexicon) -> bool:
    """By a phrase that stands at the beginning."""
    lines = [groups_of(line) for one in (words, ENGLISH) for line in one.requests.get(request, ())]
    anchored = [groups for groups in lines if groups[0].startswith("^")]
    return any(all(_holds(said[:LONGEST], group) for group in groups) for groups in anchored)


def _asks(said: list[str], request: Request, words: Lexicon) -> bool:
    return any(all(_holds(said, group) for group in groups_of(line)) for line in words.requests.get(request, ()))


def _holds(said: list[str], group: str) -> bool:
    if group.startswith("!"):
        return not _holds(said, group[1:])
    for phrase in group.split("|"):
        places = range(1) if phrase.strip().startswith("^") else range(len(said))
        if any(stands_at(said, i, parts) for parts in phrases_of(phrase.strip().removeprefix("^")) for i in places):
            return True
    return False
