"""Where a published number comes from, and how sure we are that it was copied correctly."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Seen(StrEnum):
    """Provenance of a figure. A figure from memory must be checked before anyone relies on it."""

    READ = "read"  # in the text of the source itself
    SECOND_HAND = "second_hand"  # in a page that reports the source
    MEMORY = "memory"  # not confirmed in any text
    DERIVED = "derived"  # arithmetic or logic from other figures
    COMMON_PRACTICE = "common_practice"  # a fact of the trade, no study named
    OURS = "ours"  # our own choice, not published


@dataclass(frozen=True, slots=True)
class Source:
    """A citation.

    key: short name used in output and tests, e.g. "who_bmi"; unique. cite: authors, year, title, journal; enough to
    find it. population: whom the figures describe. seen: the provenance of the figures. doi: without the resolver
    address, or "". note: a caution for whoever relies on it, or "".
    """

    key: str
    cite: str
    population: str
    seen: Seen
    doi: str = ""
    note: str = ""
