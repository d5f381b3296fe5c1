"""Scores of the sentences in tests/corpus/<language>: what destroys, what a number answers, what is said of health."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

from core.language import LANGUAGES, Intent, words_for
from core.language.intents import intent

HERE = Path(__file__).parent


@dataclass
class Score:
    """counts: sentences by kind, and those that were right.  wrong: sentence, what it means, what was heard."""

    counts: Counter[str] = field(default_factory=Counter)
    right: Counter[str] = field(default_factory=Counter)
    wrong: list[tuple[str, str, str]] = field(default_factory=list)

    def add(self, kind: str, sentence: str, meant: str, heard: str) -> None:
        self.counts[kind] += 1
        if heard == meant:
            self.right[kind] += 1
        else:
            self.wrong.append((sentence, meant, heard))


def lines(language: str, name: str, half: str) -> Iterator[list[str]]:
    for line in (HERE / language / f"{name}.{half}.tsv").read_text(encoding="utf-8").splitlines():
        if line and not line.startswith("#"):
            yield line.split("\t")


DESTROYS = {Intent.FORGET: "delete", Intent.LEAVE: "leave"}


def destructive(language: str, half: str) -> Score:
    """Whether a sentence opens the question before deleting or leaving; the question itself destroys nothing."""
    score = Score()
    for kind, sentence in lines(language, "destructive", half):
        wish = intent(sentence, words_for(language))
        score.add(kind, sentence, kind, DESTROYS.get(wish, "harmless") if wish is not None else "harmless")
    return score


SUBJECTS = {"destructive": destructive}
__all__ = ["LANGUAGES", "SUBJECTS", "Score", "destructive", "lines"]
