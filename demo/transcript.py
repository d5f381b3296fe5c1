"""The transcript of a tape: one line per message, the same bytes every time.

    [2026-03-02 07:30] bot -> Ada: Hello again. / How is your energy? [0] [1] ... [Later] [Skip]
    [2026-03-02 07:30] Ada -> bot: 7
    [2026-03-02 07:30] bot -> Ada: <trend-weight.png> Your weight ...

Times are local to the tape's zone. Line breaks are shown as ` / `. The token of an invitation is random, so a fixed
word replaces it.
"""

from __future__ import annotations

import re
import unicodedata
from datetime import datetime
from zoneinfo import ZoneInfo

from demo.messenger import SeenMessage

TOKEN = re.compile(r"(?<=[?&]start=)[\w-]+|(?<=[?&]startgroup=)[\w-]+|(?<=/start )[\w-]{16,}")
STAND_IN = "THEIR-OWN-LINK"
_BREAKS = re.compile(r"[ \t]*\n\s*")


def stamp(at: datetime, zone: ZoneInfo) -> str:
    return f"[{at.astimezone(zone):%Y-%m-%d %H:%M}]"


def shown(text: str) -> str:
    """A text on one line: breaks as ` / `, tokens replaced, invisible characters removed."""
    text = TOKEN.sub(STAND_IN, _BREAKS.sub(" / ", text.strip()))
    return "".join(c for c in text if unicodedata.category(c) != "Cf" or c in "\u200d\u200c")


def body(message: SeenMessage) -> str:
    """What a message of the bot shows: file, text, buttons."""
    parts = [f"<{message.filename or message.kind}>"] if message.kind != "text" else []
    if message.text:
        parts.append(shown(message.text))
    parts.extend(f"[{shown(label)}]" for label in message.labels)
    return " ".join(parts)


def plain(text: str) -> str:
    """Normalised for searching: one case, one kind of blank, no invisible characters."""
    visible = "".join(c for c in text if unicodedata.category(c) != "Cf")
    return " ".join(visible.casefold().split())


def says(message: SeenMessage, words: str) -> bool:
    """Whether a message shows these words, in its text, caption or file name; "" is in every message."""
    return plain(words) in plain(f"{message.filename or ''} {message.text}")
