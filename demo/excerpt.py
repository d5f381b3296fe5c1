"""The README's excerpt of the season: ten lines of its transcript and one picture.

Both are made by `python -m demo --excerpt`, never by hand, and a test compares them with a new run of the season.
"""

from __future__ import annotations

import io
import re
import textwrap
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from matplotlib import image

from demo.player import Played

LINES = Path(__file__).with_name("season-excerpt.txt")
PICTURE = Path(__file__).with_name("season-waist.png")
README = Path(__file__).parents[1] / "README.md"
_SENT = "2026-04-27-0930-ada-trend-waist.png"  # as the player names it
_FENCE = re.compile(r"(^```text\n).*?(^```$)", re.MULTILINE | re.DOTALL)  # the README has one
_WIDTH = 112


class NotInTheSeason(Exception):
    """The season no longer contains what the excerpt shows. The message says what is missing."""


@dataclass(frozen=True, slots=True)
class _Scene:
    """Consecutive lines of the transcript. first: how the first of them starts; count: how many."""

    first: str
    count: int


_SCENES = (
    _Scene("[2026-03-04 07:15] Ada -> bot:", 4),  # a weigh-in long before it is due
    _Scene("[2026-03-09 08:00] bot -> Rowan: Digest", 1),  # what her coach reads about it
    _Scene("[2026-04-27 09:30] Ada -> bot: 91", 4),  # a retest of the waist, and what the change means
    _Scene("[2026-04-27 09:30] bot -> Ada: <trend-waist.png>", 1),
)


def lines(transcript: Sequence[str]) -> str:
    """The excerpt, with lines wrapped to the page width.

    Raises: NotInTheSeason.
    """
    chosen: list[str] = []
    for scene in _SCENES:
        start = next((n for n, line in enumerate(transcript) if line.startswith(scene.first)), None)
        if start is None:
            raise NotInTheSeason(f"no line of the season begins with {scene.first!r}")
        chosen.extend(transcript[start : start + scene.count])
    return "".join(f"{_folded(line)}\n" for line in chosen)


def picture(played: Played) -> bytes:
    """The picture, as it was sent.

    Raises: NotInTheSeason.
    """
    for path in played.pictures:
        if path.name == _SENT:
            return path.read_bytes()
    raise NotInTheSeason(f"no picture of the season is called {_SENT}")


def write(played: Played) -> list[Path]:
    """Write both beside the season's tape, and the lines into the README of a checkout; return what was written.

    Raises: NotInTheSeason.
    """
    text, drawn = lines(played.lines), picture(played)
    LINES.write_text(text, encoding="utf-8")
    _save(drawn)
    written = [LINES, PICTURE]
    if README.exists():
        page = README.read_text(encoding="utf-8")
        README.write_text(_FENCE.sub(lambda fence: fence[1] + text + fence[2], page), encoding="utf-8")
        written.append(README)
    return written


def _save(drawn: bytes) -> None:
    """Re-encode the picture, so that it records the library's version, which decides how strictly tests compare."""
    pixels = image.imread(io.BytesIO(drawn))
    image.imsave(PICTURE, (pixels * 255).round().astype("uint8"))


def _folded(line: str) -> str:
    return textwrap.fill(line, _WIDTH, subsequent_indent="    ", break_long_words=False, break_on_hyphens=False)
