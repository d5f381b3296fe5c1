"""Scores of the sentences in tests/corpus/<language>: destructive requests, numbers as answers, health remarks."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

from core.language import LANGUAGES, Intent, words_for
from core.language.intents import intent_of
from core.measures import MEASURES
from core.measures.measure import Understood
from core.understanding.answers_in_text import answers_in
from core.understanding.health_facts import HealthFact, Stance, What, health_in
from core.understanding.stories import sure

HERE = Path(__file__).parent


@dataclass
class Score:
    """counts: sentences by kind, and those that were right.  wrong: sentence, meaning, result."""

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
    """Whether a sentence triggers the question before deleting or leaving; the question itself deletes nothing."""
    score = Score()
    for kind, sentence in lines(language, "destructive", half):
        intent = intent_of(sentence, words_for(language))
        score.add(kind, sentence, kind, DESTROYS.get(intent, "harmless") if intent is not None else "harmless")
    return score


def numbers(language: str, half: str, name: str = "numbers") -> Score:
    """What is stored without asking. "stored" counts answers understood correctly, "asked" those confirmed first; for
    anything that is not an answer, only storing nothing is right."""
    score = Score()
    words = words_for(language)
    for asked, meaning, sentence in lines(language, name, half):
        measure = MEASURES.get(asked)
        others = [x for x in MEASURES.values() if x.understand is not None and x is not measure]
        found = answers_in(sentence, words, measure, others)
        found = sure(found, sentence, words, measure)
        intent = intent_of(sentence, words)
        stored = {} if intent is not None else {a.measure: a.heard for a in found if isinstance(a.heard, Understood)}
        if meaning == "not_answer":
            score.add("no answer", sentence, "", "; ".join(f"{k}={h.value}" for k, h in stored.items()))
            continue
        meant = meaning.removeprefix("answers:").replace("answer:", f"{asked}=").split(";")
        said = [f"{k}={_figures(h)}" for k, h in stored.items()]
        same = len(said) == len(meant) and all(_near(a, b) for a, b in zip(sorted(meant), sorted(said), strict=True))
        score.add("answer", sentence, "; ".join(meant), "; ".join(meant) if same else "; ".join(said))
    return score


def _figures(heard: Understood) -> str:
    if heard.second is not None and not heard.value:  # vigorous minutes alone
        return f"{float(heard.second):.4g}"
    return f"{float(heard.value):.4g}" + ("" if heard.second is None else f"/{float(heard.second):.4g}")


def _near(meant: str, said: str) -> bool:
    (one, value), (other, heard) = meant.split("=", 1), said.split("=", 1)
    pairs = list(zip(value.split("/"), heard.split("/"), strict=False))
    return (
        one == other and value.count("/") == heard.count("/") and all(abs(float(a) - float(b)) < 0.11 for a, b in pairs)
    )


_OF_A_FACT = {What.STATURE: "height", What.BIRTH_YEAR: "born", What.SEX: "sex", What.UNITS: "units"}


def health(language: str, half: str) -> Score:
    """What a sentence says of somebody's health. "taken": noted at once, and said back with a button to undo it;
    "asked": asked about first; "nothing" is right only if nothing is noted or asked."""
    score = Score()
    for meaning, sentence in lines(language, "health_facts", half):
        facts = [f for f in health_in(sentence, words_for(language)).facts if f.stance is not Stance.DENIED]
        said = sorted({_named(f) for f in facts})
        meant = meaning.partition(":")[0] if meaning.startswith("moved") else meaning
        right = said == ([] if meant == "none" else [meant])
        asked = any(not f.sure for f in facts)
        kind = "nothing" if meant == "none" else "asked" if right and asked else "fact"
        score.add(kind, sentence, meant, meant if right else " ".join(said) + (" (asked)" if asked else ""))
    return score


def _named(fact: HealthFact) -> str:
    over = fact.stance is Stance.OVER
    match fact.what:
        case What.MEDICINE:
            return "stopped_medicine" if over else "rate_limiting_medicine"
        case What.MOVED:
            return "moved"
        case What.CAUTION:
            return "not_pregnant_any_more" if over and fact.value == "pregnancy" else fact.value
        case What.BACKGROUND:
            return f"background:{fact.value}"
        case _:
            return f"{_OF_A_FACT[fact.what]}:{_figure(fact)}"


def _figure(fact: HealthFact) -> str:
    return f"{float(fact.value):.0f}" if fact.what is What.STATURE else fact.value


def answers(language: str, half: str) -> Score:
    """`numbers` of answers alone, as people give them to the question that is open."""
    return numbers(language, half, "answers")


SUBJECTS = {"answers": answers, "destructive": destructive, "health": health, "numbers": numbers}
__all__ = ["LANGUAGES", "SUBJECTS", "Score", "answers", "destructive", "health", "lines", "numbers"]
