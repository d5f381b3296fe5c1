"""What a client hears in a season, in figures: `python -m tests.figures_of_a_season [TRANSCRIPT ...]`.

Counted from transcripts of tapes: messages, words in each, questions a week, sentences that were said before. Numbers
and dates in a sentence are taken as equal, so that "Energy: 6 out of 10." repeats "Energy: 5 out of 10."
"""

from __future__ import annotations

import re
import sys
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

SEASONS = sorted((Path(__file__).parent / "tapes").glob("season_*.txt"))
_SAID = re.compile(r"^\[(\d{4}-\d\d-\d\d) \d\d:\d\d\] bot -> (\w+): (.*)$")
_BUTTONS = re.compile(r"(?: \[[^\]]*\])+$")
_ENDS = re.compile(r"(?<=[.?!؟…])\s+")
_NUMBER = re.compile(r"\d+(?:[.,:/٫]\d+)*")


@dataclass(frozen=True, slots=True)
class Figures:
    """words: in a message, on average. questions: a week. repeated: the share of sentences said before, in percent.
    often: those said most often."""

    messages: int
    words: float
    longest: int
    questions: float
    repeated: int
    often: tuple[tuple[str, int], ...]


def sentences(said: str) -> list[str]:
    """The sentences of a message, without its buttons."""
    parts = _BUTTONS.sub("", said).split(" / ")
    return [found.strip() for part in parts for found in _ENDS.split(part) if found.strip()]


def figures(lines: Iterable[str], client: str = "") -> Figures:
    """Count what one client was told; by default whoever was told most and is not the coach."""
    said = [(date.fromisoformat(m[1]), m[2], m[3]) for line in lines if (m := _SAID.match(line))]
    if not client:
        client = Counter(who for _, who, _ in said if who != "Rowan").most_common(1)[0][0]
    mine = [(day, text) for day, who, text in said if who == client]
    words = [len(_BUTTONS.sub("", text).replace(" / ", " ").split()) for _, text in mine]
    every = [s for _, text in mine for s in sentences(text)]
    weeks = max(((mine[-1][0] - mine[0][0]).days + 6) // 7, 1) + 1
    alike = Counter(_NUMBER.sub("#", s) for s in every)
    return Figures(
        len(mine),
        sum(words) / len(words),
        max(words),
        sum(s.endswith(("?", "؟")) for s in every) / weeks,
        round(100 * sum(n - 1 for n in alike.values()) / len(every)),
        tuple(alike.most_common(5)),
    )


def main(arguments: Sequence[str]) -> None:
    paths = [Path(a) for a in arguments] or SEASONS
    print(f"{'':18}messages  words  longest  questions/week  repeated")
    for path in paths:
        found = figures(path.read_text(encoding="utf-8").splitlines())
        row = f"{found.messages:8}{found.words:7.1f}{found.longest:9}{found.questions:16.1f}{found.repeated:8} %"
        print(f"{path.stem:18}{row}")
        for sentence, times in found.often:
            print(f"{'':20}{times:3} x {sentence}")


if __name__ == "__main__":
    main(sys.argv[1:])
