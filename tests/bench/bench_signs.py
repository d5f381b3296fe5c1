"""What it costs to look for a sign of danger in a text, beside looking up each of its words once in a dictionary.

Texts of six languages, each of them new, so that none comes from the cache for short texts: what people answer, what
they tell, and signs. Processor time, in microseconds a text. The commit before, in a worktree of its own, is "before".
"""

from __future__ import annotations

import time
from collections.abc import Callable, Sequence

from rich.table import Table

from core.language import LANGUAGES, Lexicon, plain, words_for
from core.language.danger_signs import recognise
from core.language.text import bare_words
from tests.bench.measuring import RUNS, median, ratio
from tests.corpus.danger import lines
from tests.corpus.meant import lines as rows

Typed = tuple[str, Lexicon]


def _told(kinds: Sequence[str]) -> list[Typed]:
    return [(x.sentence, words_for(code)) for code in LANGUAGES for x in lines(code, "tune") if x.kind in kinds]


def _answers() -> list[Typed]:
    return [(row[2], words_for(code)) for code in LANGUAGES for row in rows(code, "numbers", "tune")]


TEXTS: dict[str, Callable[[], list[Typed]]] = {
    "answers and remarks with a number": _answers,
    "remarks that are no sign": lambda: _told(("innocent", "denial")),
    "signs": lambda: _told(("alarm", "other_now", "past")),
}
KNOWN = {word for words in LANGUAGES.values() for phrases in words.concepts.values() for word in phrases.split()}


def _searched(texts: Sequence[Typed], run: int) -> float:
    start = time.process_time()
    for typed, words in texts:
        recognise(f"{typed} ({run})", words)
    return time.process_time() - start


def _looked_up(texts: Sequence[Typed], run: int) -> float:
    start = time.process_time()
    for typed, _ in texts:
        _ = [word in KNOWN for word in bare_words(plain(f"{typed} ({run})"))]
    return time.process_time() - start


def run(runs: int = RUNS) -> Table:
    table = Table(title="a text searched for signs of danger, and its words looked up once")
    for column in ("texts", "how many", "searched", "looked up", "ratio"):
        table.add_column(column, justify="left" if column == "texts" else "right")
    for name, of in TEXTS.items():
        texts = of()
        _searched(texts, -1)  # single words are kept, as in a service that has been running
        searched, looked_up = [], []
        for number in range(runs):
            searched.append(_searched(texts, number))
            looked_up.append(_looked_up(texts, number))
        each = 1_000_000 / len(texts)
        table.add_row(
            name,
            str(len(texts)),
            f"{median(searched) * each:.0f} µs",
            f"{median(looked_up) * each:.0f} µs",
            f"{ratio(searched, looked_up):.0f}",
        )
    return table
