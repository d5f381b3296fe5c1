"""Readability of the English texts: word count and US grade of every message a client may receive.

    python -m bot.rendering.readability           every message, the hardest first
    python -m bot.rendering.readability --replies only complete replies to a reading

The grade is Flesch and Kincaid's (0.39 words a sentence + 11.8 syllables a word - 15.59), computed by textstat, one of
the development dependencies. Aim: grade 6 or lower, a reply of at most about 60 words.
"""

from __future__ import annotations

import html
import re
import sys
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any

from bot.foundation.reader import Reader
from bot.rendering import render
from bot.rendering.phrases.bands import BANDS
from bot.rendering.phrases.checkin import PRAISES
from bot.rendering.samples import LONG_DAY, amount, asked, ordinary, second, verdict
from core.dialogue.client import messages as m
from core.dialogue.client import messages_to_coach
from core.dialogue.client import report_messages as rm
from core.dialogue.kit.messages import Together
from core.measures.measure import BodySize, Measure, MeasureKind
from core.quantity import Unit

GRADE, WORDS = 6.0, 60

# Read at leisure, or only once: they may be longer than a reply, but not harder.
WITH_A_NUMBER_TO_FIND = (m.Emergency, m.EmergencyNearby, m.Despair)  # a few words more where no country is known
LONGER = (
    *WITH_A_NUMBER_TO_FIND,
    m.Welcome,
    m.WhatIsKept,
    m.Card,
    m.Help,
    m.EnrolQuestion,
    m.Enrolled,
    m.SourceOf,
    m.SettingsSaid,
    m.Picture,
    rm.LastReport,
)
LONGER_WORDS = 130

_TAG = re.compile(r"</?\w+>")


@dataclass(frozen=True, slots=True)
class Graded:
    """name: of the message class.  words: how many.  grade: US school grade.  text: as plain words."""

    name: str
    words: int
    grade: float
    text: str


def plain(text: str) -> str:
    """Text without tags, one sentence per line where lines end without a full stop."""
    lines = (line.strip() for line in html.unescape(_TAG.sub("", text)).splitlines())
    return " ".join(line if line.endswith((".", "?", "!", ":")) else f"{line}." for line in lines if line)


def grade(text: str) -> float:
    """Flesch-Kincaid grade of English text. Needs textstat."""
    import textstat

    measured: Any = textstat
    return float(measured.flesch_kincaid_grade(text))


def graded(messages: Iterable[object]) -> Iterator[Graded]:
    """Each distinct text once."""
    reader, seen = Reader("en"), set()
    for message in messages:
        text = plain(render(message, (), reader).text)
        if text and text not in seen:
            seen.add(text)
            name = "reply" if isinstance(message, Together) else type(message).__name__
            yield Graded(name, len(text.split()), grade(text), text)


def to_clients() -> Iterator[object]:
    """Every message to a client, without citations, which are names."""
    for message in ordinary():
        if type(message).__module__ != messages_to_coach.__name__ and not isinstance(message, m.SourceOf):
            yield message


def replies() -> Iterator[Together]:
    """Complete replies to the last reading of a check-in: value, band, verdict, context, praise, next date.

    With the longest band, and every possible context of the verdict.
    """
    longest = max(PRAISES, key=lambda key: len(PRAISES[key]))
    for measure in asked():
        if measure.kind not in (MeasureKind.BODY, MeasureKind.FUNCTION):
            continue
        for kind, strength in VERDICTS:
            for context in contexts(measure, kind):
                yield Together(
                    (
                        m.ReadingKept(measure.key, amount(measure), second(measure)),
                        *(() if no_table_fits(measure, context) else _band(measure)),
                        *_verdict(measure, kind, strength),
                        *((m.Context(context),) if context else ()),
                        m.Praise(longest, 5),
                        m.CheckInDone(LONG_DAY),
                    )
                )


VERDICTS = (("within_error", ""), ("better", "possible"), ("better", "confirmed"), ("worse", "confirmed"))


def contexts(measure: Measure, kind: str) -> Iterator[str]:
    """Contexts that `core.judging.assess` may add to such a verdict; "" is none."""
    yield from ("", "different_conditions")
    if measure.beside:
        yield "flat_weight_smaller_waist"
    yield from (said for _, said in measure.misled_by)
    if kind == "within_error":
        yield from ("matters_but_unsure", "early_weeks")
        if measure.body is BodySize.GIRTH:
            yield "one_step_of_tape"
        if measure.unit is Unit.BEATS_PER_MINUTE:
            yield "one_beat_of_the_count"
        if measure.body is BodySize.WEIGHT:
            yield "other_weekday"
    if measure.kind is MeasureKind.FUNCTION and kind == "better":
        yield "practice_counts_too"


def no_table_fits(measure: Measure, context: str) -> bool:
    """Whether a caution takes the place of the band."""
    return any(context == said for _, said in measure.misled_by)


def _verdict(measure: Measure, kind: str, strength: str) -> Iterator[m.VerdictSaid]:
    """None for a measure with unknown error: it is shown, never judged."""
    if measure.error is not None:
        important = strength == "confirmed" and measure.important is not None
        yield verdict(measure, kind, strength, important)


def _band(measure: Measure) -> Iterator[m.BandSaid]:
    """The longest band of the measure's first reference."""
    for source in measure.sources:
        if source.key in BANDS:
            band = max(BANDS[source.key], key=lambda b: len(BANDS[source.key][b]))
            yield m.BandSaid(measure.key, band, source.key)
            return


def main(arguments: list[str]) -> int:
    """Print the table; return 1 if anything exceeds the aim."""
    chosen: Iterable[object] = replies() if "--replies" in arguments else (*to_clients(), *replies())
    found = sorted(graded(chosen), key=lambda g: -g.grade)
    out = sys.stdout.write
    out(f"{'grade':>5} {'words':>5}  message\n")
    for g in found:
        out(f"{g.grade:5.1f} {g.words:5}  {g.name}: {g.text}\n")
    over = [g for g in found if g.grade > GRADE]
    out(f"{len(found)} texts, hardest {found[0].grade:.1f}, over grade {GRADE:.0f}: {len(over)}\n")
    return 1 if over else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
