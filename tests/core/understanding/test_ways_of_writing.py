"""The corpus of ways people write readings: nearly all are understood; the rest are asked back, never stored."""

from __future__ import annotations

import re
from dataclasses import dataclass
from decimal import Decimal

import pytest

from core.client import Profile
from core.language import words_for
from core.measures import MEASURES
from core.measures.measure import Misunderstood, Understood
from core.quantity import Unit, convert
from core.understanding.answers_in_text import answers_in
from core.understanding.plausibility import doubt
from tests.core.understanding.ways_of_writing import CORPUS

D = Decimal
RIGHT_AT_LEAST = D("0.98")
LINE = re.compile(r"(\w+) (\S+): ?(.*) → (.+)")


@dataclass(frozen=True)
class Row:
    """One line of the corpus."""

    language: str
    measure: str
    prefer: Unit
    typed: str
    meaning: str


def rows() -> list[Row]:
    found = []
    for language, text in CORPUS.items():
        for line in text.strip("\n").split("\n"):
            parts = LINE.fullmatch(line)
            assert parts is not None, line
            measure, unit, typed, meaning = parts.groups()
            found.append(Row(language, measure, Unit(unit), typed, meaning))
    return found


ROWS = rows()


def heard(row: Row) -> Understood | Misunderstood | None:
    """The result of the whole path from message to value, when the measure was asked for."""
    asked = MEASURES[row.measure]
    others = [MEASURES[k] for k in ("weight", "energy", "waist", "hip", "blood_pressure") if k != row.measure]
    answers = answers_in(row.typed, words_for(row.language), asked, others, row.prefer)
    return next((a.heard for a in answers if a.measure == row.measure), None)


def outcome(row: Row) -> tuple[str, Understood | None]:
    """ "kept" with the value that would be stored, or "ask" with the guess."""
    understood = heard(row)
    if understood is None:
        return "ask", None
    if isinstance(understood, Misunderstood):
        return "ask", understood.guess
    doubted = doubt(MEASURES[row.measure], understood, None, Profile())
    return ("kept", understood) if doubted is None else ("ask", doubted.meant)


def amount(text: str, measure: str) -> Decimal:
    number, unit = text.split()
    return convert(D(number), Unit(unit), MEASURES[measure].unit)


def right(row: Row) -> bool:
    kind, meant = outcome(row)
    if row.meaning.startswith("ask"):
        guess = row.meaning.removeprefix("ask").strip()
        return kind == "ask" and (not guess or (meant is not None and meant.value == amount(guess, row.measure)))
    return kind == "kept" and meant is not None and says(meant, row)


def says(meant: Understood, row: Row) -> bool:
    if row.measure == "blood_pressure":
        return f"{meant.value}/{meant.second}" == row.meaning
    said = row.meaning.split()
    attempts = next((int(w[1:]) for w in said if w[0] == "x"), 1)
    window = next((int(w[1:]) for w in said if w[0] == "@"), None)
    second = next((D(w[1:]) for w in said if w[0] == "/"), None)
    same = meant.value == amount(" ".join(said[:2]), row.measure)
    return same and (meant.attempts, meant.window, meant.second) == (attempts, window, second)


def test_the_corpus_is_large_and_no_line_is_there_twice():
    assert len(ROWS) >= 300
    assert len({(r.language, r.measure, r.prefer, r.typed) for r in ROWS}) == len(ROWS)
    assert all(sum(r.language == language for r in ROWS) >= 50 for language in CORPUS)


@pytest.mark.parametrize("language", CORPUS)
def test_nearly_all_of_a_language_is_understood(language):
    mine = [r for r in ROWS if r.language == language]
    wrong = [f"{r.measure}: {r.typed} → {r.meaning}, not {outcome(r)}" for r in mine if not right(r)]
    assert len(wrong) <= (1 - RIGHT_AT_LEAST) * len(mine), "\n".join(wrong)


def test_what_is_not_understood_is_asked_back_and_never_stored():
    stored = [f"{r.language} {r.measure}: {r.typed} → {outcome(r)}" for r in ROWS if not right(r)]
    assert not [line for line in stored if "'kept'" in line], "\n".join(stored)
