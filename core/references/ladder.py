"""Rising bands, each starting at a limit or just above it.

A published table prints both ends of a band; we store one limit between two bands and the side it falls on, so that no
value belongs to two bands or none.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal
from enum import StrEnum

from core.sources import Source

D = Decimal


class Edge(StrEnum):
    """Whether a band includes its lower limit."""

    AT = "at"  # the limit belongs to the upper band: >=
    ABOVE = "above"  # the limit belongs to the lower band: >


@dataclass(frozen=True, slots=True)
class LadderStep:
    """The limit from which, or above which, `band` applies."""

    limit: Decimal
    band: str
    edge: Edge = Edge.AT


@dataclass(frozen=True, slots=True)
class LadderBand:
    """One band: its key, its position from the lowest (0 first), and its limits by name.

    figures: "from" or "above" the lower limit, "below" or "up_to" the upper one: the name says whether the band
    includes the limit.
    """

    rank: int
    band: str
    figures: tuple[tuple[str, Decimal], ...]


@dataclass(frozen=True, slots=True, eq=False)
class Ladder:
    """A table of rising bands, compared by identity.

    first: the band below the first limit. Limits must rise (a test checks every table).
    """

    source: Source
    first: str
    steps: tuple[LadderStep, ...]
    bands: tuple[LadderBand, ...] = field(init=False)

    def __post_init__(self) -> None:
        lows = [(), *((("from" if s.edge is Edge.AT else "above", s.limit),) for s in self.steps)]
        highs = [*((("below" if s.edge is Edge.AT else "up_to", s.limit),) for s in self.steps), ()]
        bands = [self.first, *(s.band for s in self.steps)]
        rungs = zip(bands, lows, highs, strict=True)
        object.__setattr__(self, "bands", tuple(LadderBand(n, b, (*lo, *hi)) for n, (b, lo, hi) in enumerate(rungs)))

    def find(self, value: Decimal) -> LadderBand:
        """The band of `value`; every value has exactly one."""
        rank = 0
        for step in self.steps:
            if value < step.limit or (value == step.limit and step.edge is Edge.ABOVE):
                break
            rank += 1
        return self.bands[rank]
