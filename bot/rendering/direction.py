"""Right-to-left text with embedded numbers, commands and foreign names (Unicode, UAX 9).

The bidirectional algorithm handles most of it. It needs help where a piece would be split or read from the wrong end:

* an amount, a date or a name is isolated (FSI ... PDI), so that nothing around it reorders its parts;
* a sign stands to the left of its figure, as CLDR writes it in Arabic: sign and figure run left to right (LRI ... PDI),
  and the unit follows on their left;
* a command keeps its slash in front, likewise;
* text that a no-break space ties to a number, a placeholder or a command belongs to it: "30 seconds", "{n} days";
* a line takes its direction from its first letter. The standard skips isolates when looking for that letter; not every
  messenger does, so a line that starts with anything but a letter gets a right-to-left mark (RLM).

Digits are 0 to 9 in every language, Arabic too, in words and in pictures: Babel's default for plain `ar`. Other digits
are still understood when typed.
"""

from __future__ import annotations

import re
import unicodedata
from functools import lru_cache

LRI, FSI, PDI, RLM = "\u2066", "\u2068", "\u2069", "\u200f"
NO_BREAK = "\u00a0"

_TIED = rf"(?:{NO_BREAK}(?:[\w\u064b-\u0652]+|%))*"  # with Arabic vowel signs, which \w does not match
_COMMAND = re.compile(rf"(?<![\w<])/[a-z]+\b{_TIED}")
_NUMBER = re.compile(rf"(?:\d+(?:[.,:/]\d+)*|\{{\w+\}}(?={NO_BREAK})){_TIED}")
_SIGNED = re.compile(r"[-+\u2212]\d[\d.,]*")
_TAG = re.compile(r"</?\w+>")
_ISLAND = re.compile(rf"[{LRI}{FSI}][^{LRI}{FSI}{PDI}]*{PDI}")


def isolate(text: str) -> str:
    """Isolate a piece of text; each line separately, since an isolate ends with its line."""
    return "\n".join(f"{FSI}{line}{PDI}" if line else "" for line in text.split("\n"))


def signs_first(text: str) -> str:
    """The sign to the left of its figure, whatever letters follow."""
    return _SIGNED.sub(lambda found: f"{LRI}{found[0]}{PDI}", text)


@lru_cache(maxsize=4096)
def isolate_numbers(text: str) -> str:
    """Isolate the numbers and commands in a catalogue text, before its placeholders are filled."""
    return _NUMBER.sub(lambda found: isolate(found[0]), _COMMAND.sub(lambda found: f"{LRI}{found[0]}{PDI}", text))


def directed(text: str) -> str:
    """Make every line of a right-to-left text start on the right. Lines entirely in other scripts stay unchanged."""
    return "\n".join(map(_directed, text.split("\n")))


def _directed(line: str) -> str:
    bare = _TAG.sub("", line)
    if not bare or _direction(bare[0]) == "R":
        return line
    outside = bare
    while (without := _ISLAND.sub("", outside)) != outside:
        outside = without
    own = {_direction(letter) for letter in outside} - {""}
    first = "R" if "R" in own else "L" if own else next(filter(None, map(_direction, bare)), "")
    return f"{RLM}{line}" if first == "R" else line


def _direction(letter: str) -> str:
    """R or L for a letter, "" for anything without a direction of its own."""
    kind = unicodedata.bidirectional(letter)
    return "R" if kind in ("R", "AL") else "L" if kind == "L" else ""
