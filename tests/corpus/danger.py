"""How many danger signs are recognised: counts over the corpora of six languages.

The corpora are invented sentences. Those of `tune` may be read and learnt from; those of `held` are only counted, never
read by anybody who works on the recogniser.
"""

from __future__ import annotations

import random
import unicodedata
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

from core.language import words_for
from core.language.danger_signs import Answer, Sighting, answer_to_alarm, recognise

HERE = Path(__file__).parent
LANGUAGES = ("en", "es", "de", "fr", "pl", "ar")
POLITE = {
    "en": ("Hello there, sorry to bother you,", "thank you"),
    "es": ("Hola, perdona que moleste,", "gracias"),
    "de": ("Hallo, entschuldige die Störung,", "danke dir"),
    "fr": ("Bonjour, désolé de déranger,", "merci"),
    "pl": ("Dzień dobry, przepraszam że zawracam głowę,", "dziękuję"),
    "ar": ("السلام عليكم، آسف على الإزعاج،", "شكرا"),
}
LONG_WORD = 7  # letters
MEANINGS = {
    "yes": Answer.YES,
    "hesitant_yes": Answer.HESITANT,
    "other_person": Answer.OTHER_PERSON,
    "over": Answer.OVER,
    "not_a_sign": Answer.NOT_A_SIGN,
    "no": Answer.NO,
    "unclear": None,
}


@dataclass(frozen=True)
class Line:
    kind: str
    category: str
    level: str  # "a|b": either is right
    sentence: str

    @property
    def levels(self) -> frozenset[str]:
        return frozenset(self.level.split("|"))


@dataclass
class Score:
    """Counts for one language. wrong: lines not recognised correctly, with the result."""

    counts: Counter[str] = field(default_factory=Counter)
    wrong: list[tuple[Line, str]] = field(default_factory=list)

    def share(self, part: str, whole: str) -> float:
        return self.counts[part] / self.counts[whole] if self.counts[whole] else 1.0


def lines(language: str, half: str) -> list[Line]:
    text = (HERE / language / f"danger_signs.{half}.tsv").read_text("utf-8")
    rows = (line.split("\t") for line in text.splitlines() if line.strip() and not line.startswith("#"))
    return [Line(*row[:4]) for row in rows]


def score(language: str, half: str) -> Score:
    """Count what is recognised in one language's corpus, with the same client language."""
    found = Score()
    for line in lines(language, half):
        heard = recognise(line.sentence, words_for(language))
        acted = heard is not None and heard.certain
        found.counts[line.kind] += 1
        right = _right(line, heard)
        found.counts[f"{line.kind}/{line.category}"] += 1
        found.counts[f"{line.kind}/{line.category}:right"] += right
        if heard is not None:
            found.counts[f"{line.kind}:heard"] += 1
        if acted:
            found.counts[f"{line.kind}:acted"] += 1
        elif heard is not None:
            found.counts[f"{line.kind}:asked"] += 1
        if heard is not None and heard.level.value in line.levels:
            found.counts[f"{line.kind}:level"] += 1
        if line.kind == "alarm":
            _mutated(found, line, language, heard)
        if not right:
            found.wrong.append((line, _shown(heard)))
    return found


def _right(line: Line, heard: Sighting | None) -> bool:
    match line.kind:
        case "alarm" | "other_now":
            return heard is not None and heard.certain and heard.level.value in line.levels
        case "past" | "other_elsewhere":
            return heard is not None and not heard.certain
        case _:
            return heard is None


def _shown(heard: Sighting | None) -> str:
    if heard is None:
        return "nothing"
    return f"{heard.sign} {heard.level} {heard.when} {heard.who} {'acts' if heard.certain else 'asks'}"


def _mutated(found: Score, line: Line, language: str, heard: Sighting | None) -> None:
    for name, typed in mutations(line.sentence, language):
        again = recognise(typed, words_for(language))
        found.counts["mutated"] += 1
        found.counts[f"mutated:{name}"] += 1
        if (again is None) == (heard is None) and (again is None or heard is None or again.level is heard.level):
            found.counts["mutated:same"] += 1
            found.counts[f"mutated:{name}:same"] += 1


def mutations(sentence: str, language: str) -> Iterator[tuple[str, str]]:
    """The same sentence typed less carefully, with fixed choices for each sentence."""
    chance = random.Random(sentence)
    words = sentence.split()
    long = [i for i, w in enumerate(words) if len(w) >= LONG_WORD and w.isalpha()]
    if long:
        i = chance.choice(long)
        at = chance.randrange(2, len(words[i]) - 2)
        word = words[i]
        slipped = chance.choice(
            (word[:at] + word[at + 1 :], word[:at] + word[at + 1] + word[at] + word[at + 2 :], word[:at] + word[at:])
        )
        yield "typo", " ".join([*words[:i], slipped, *words[i + 1 :]])
    bare = "".join(c for c in unicodedata.normalize("NFD", sentence) if unicodedata.category(c) != "Mn")
    yield "bare", bare.replace("ł", "l").replace("Ł", "L").replace("ø", "o")
    before, after = POLITE[language]
    yield "polite", f"{before} {sentence}, {after}"
    head, comma, tail = sentence.partition(", ")
    if comma:
        yield "order", f"{tail}, {head}"


def answers(language: str) -> tuple[int, int, list[tuple[str, str, str]]]:
    """Of the answers to "Is it happening now?": how many, how many understood, and those that were not."""
    text = (HERE / language / "yes_no.tsv").read_text("utf-8")
    rows = [line.split("\t") for line in text.splitlines() if line.strip() and not line.startswith("#")]
    wrong = []
    for meaning, sentence, *_ in rows:
        heard = answer_to_alarm(sentence, words_for(language))
        if heard is not MEANINGS[meaning]:
            wrong.append((meaning, sentence, str(heard)))
    return len(rows), len(rows) - len(wrong), wrong
