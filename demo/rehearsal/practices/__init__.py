"""Practices to begin with: tapes that hold `{language}` and `{zone}`, and buttons by their English labels.

Everything typed in them is a number, a command or a name, so that each can be played in any language the bot speaks.
"""

from __future__ import annotations

import re
from functools import lru_cache
from pathlib import Path

from bot.rendering.phrases.labels import GROUPS, LABELS, labeller
from core.language import LANGUAGES
from demo.tape import escaped
from demo.transcript import shown

TITLES = {
    "empty": "An empty practice",
    "twelve": "Twelve clients in week 6",
    "last_day": "A group on its last day",
}
ZONES = {
    "en": "Europe/London",
    "de": "Europe/Berlin",
    "es": "Europe/Madrid",
    "fr": "Europe/Paris",
    "pl": "Europe/Warsaw",
    "ar": "Africa/Cairo",
}
SEASON = Path(__file__).parents[2] / "season.tape"
_PRESSES = re.compile(r"^(\w+ presses )(.+)$", re.MULTILINE)


def practice(name: str, language: str) -> str:
    """Return the tape of a practice in which everybody speaks `language`.

    Raises: KeyError for a practice or a language there is not.
    """
    if name not in TITLES or language not in LANGUAGES:
        raise KeyError(name, language)
    text = Path(__file__).with_name(f"{name}.tape").read_text(encoding="utf-8")
    text = text.replace("{language}", language).replace("{zone}", ZONES[language])
    return _PRESSES.sub(lambda found: found[1] + escaped(in_language(found[2], language)), text)


def in_language(label: str, language: str) -> str:
    """The label of a button in another language; itself where it is the same in all of them, as a time is."""
    return _labels(language).get(label, label)


@lru_cache(maxsize=len(LANGUAGES))
def _labels(language: str) -> dict[str, str]:
    english, theirs = labeller("en"), labeller(language)
    keys = [(key, "") for key in LABELS]
    keys += [(f"{group}:{key}", "") for group, table in GROUPS.items() for key in table]
    keys += [("in_weeks", weeks) for weeks in ("4", "6", "8", "12")]
    return {english(*key): shown(theirs(*key)) for key in keys}
