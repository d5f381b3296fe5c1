"""The recipient of a message, and the rendered message."""

from __future__ import annotations

import html
import re
from dataclasses import dataclass
from datetime import UTC, tzinfo

from core.care import METRIC, Units
from core.language import words_for

TEXT_LIMIT = 4096  # characters after entity parsing, counted as UTF-16 units (Bot API)
CAPTION_LIMIT = 1024
DATA_LIMIT = 64  # bytes
LABEL_LIMIT = 40  # characters; ours: a small phone truncates longer labels


@dataclass(frozen=True, slots=True)
class Reader:
    """language: one of core.language.LANGUAGES, anything else falls back to English. zone: time zone in which instants
    are shown.  name: what this person is called, or ""."""

    language: str = "en"
    units: Units = METRIC
    zone: tzinfo = UTC
    name: str = ""

    @property
    def right_to_left(self) -> bool:
        return words_for(self.language).right_to_left


Keyboard = tuple[tuple[tuple[str, str], ...], ...]


@dataclass(frozen=True, slots=True)
class Rendered:
    """One message, ready to send.

    text, caption: HTML parse mode, escaped.  keyboard: rows of (label, callback data).  photo: PNG, sent under
    `photo_name`.  document: (file name, bytes).  With a photo or a document, the words are in `caption`; when there
    is `text` as well, it is sent first, and the keyboard goes with the last thing sent.
    """

    text: str = ""
    keyboard: Keyboard = ()
    photo: bytes | None = None
    document: tuple[str, bytes] | None = None
    caption: str = ""
    photo_name: str = "picture.png"


_TAG = re.compile(r"</?(?:b|i|u|s|code|pre)>")


def length(text: str) -> int:
    """Length as the platform counts it: after entity parsing, in UTF-16 units."""
    return len(html.unescape(_TAG.sub("", text)).encode("utf-16-le")) // 2
