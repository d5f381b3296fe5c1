"""A condition somebody lives with, told in the present: "I have epilepsy", "jestem po zawale". It is no sign by itself.

Data for `core.language.danger_signs`. Some words are also used while it happens ("I have angina"): these are asked
about, once, and at enrolment noted as an old illness.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache

from core.language.lexicon import Lexicon
from core.language.text import plain

LIVED_WITH, PERHAPS_NOW = "lived_with", "perhaps_now"

KNOWN: dict[str, dict[str, str]] = {
    "en": {
        LIVED_WITH: (
            "have epilepsy, got epilepsy, live with epilepsy, i am epileptic, i'm epileptic, im epileptic, "
            "stroke survivor, heart attack survivor, have atrial fibrillation, got atrial fibrillation, have afib, "
            "got afib"
        ),
        PERHAPS_NOW: (
            "have angina, got angina, live with angina, suffer from angina, have stable angina"
        ),
    },
    "es": {
        LIVED_WITH: (
            "tengo epilepsia, padezco epilepsia, soy epiléptico, soy epiléptica, tengo fibrilación auricular, "
            "padezco fibrilación auricular"
        ),
        PERHAPS_NOW: (
            "tengo angina, padezco angina, tengo angina de pecho, padezco angina de pecho"
        ),
    },
    "de": {
        LIVED_WITH: (
            "habe epilepsie, leide an epilepsie, bin epileptiker, bin epileptikerin, habe vorhofflimmern, "
            "leide an vorhofflimmern, zustand nach herzinfarkt, zustand nach schlaganfall, zustand nach infarkt"
        ),
        PERHAPS_NOW: (
            "habe angina pectoris, leide an angina pectoris"
        ),
    },
    "fr": {
        LIVED_WITH: (
            "suis épileptique, ai une épilepsie, fais de l'épilepsie, ai une fibrillation auriculaire, "
            "fais de la fibrillation auriculaire"
        ),
        PERHAPS_NOW: (
            "ai une angine de poitrine, ai de l'angine de poitrine, fais de l'angine de poitrine"
        ),
    },
    "pl": {
        LIVED_WITH: (
            "mam padaczkę, choruję na padaczkę, leczę się na padaczkę, mam epilepsję, choruję na epilepsję, "
            "mam migotanie przedsionków, jestem po zawale serca, jestem po zawale, jestem po udarze, "
            "jestem po przebytym zawale, jestem po przebytym udarze"
        ),
        PERHAPS_NOW: (
            "mam dusznicę, mam dusznicę bolesną, choruję na dusznicę, mam dławicę, mam dławicę piersiową"
        ),
    },
    "ar": {
        LIVED_WITH: "عندي صرع, عندي الصرع, مصاب بالصرع, مصابة بالصرع, عندي رجفان أذيني, لدي صرع, لدي رجفان أذيني",
        PERHAPS_NOW: "عندي ذبحة صدرية, عندي ذبحة, لدي ذبحة صدرية, أعاني من ذبحة صدرية",
    },
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Known:
    """perhaps_now: its words may also mean that it is happening.  rest: the message without those words."""

    perhaps_now: bool
    rest: str


def known_conditions(folded: str, words: Lexicon) -> Known | None:
    """The conditions a folded text says somebody lives with, in their language or in English; None if it names none."""
    named = {kind: _phrases(words.code, kind) for kind in (LIVED_WITH, PERHAPS_NOW)}
    if not any(pattern.search(folded) for pattern in named.values()):
        return None
    rest = folded
    for pattern in named.values():
        rest = pattern.sub(" ", rest)
    return Known(bool(named[PERHAPS_NOW].search(folded)), rest)


@cache
def _phrases(code: str, kind: str) -> re.Pattern[str]:
    listed = ", ".join(KNOWN[language][kind] for language in dict.fromkeys((code, "en")))
    phrases = sorted({plain(p.strip()) for p in listed.split(",")}, key=len, reverse=True)
    return re.compile(r"\b(?:" + "|".join(map(re.escape, phrases)) + r")\b")
