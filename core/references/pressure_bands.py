"""Blood-pressure categories: one ladder per number; the higher category applies. mmHg."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal

from core.references.ladder import Edge
from core.sources import Source

D = Decimal


@dataclass(frozen=True, slots=True)
class PressureBand:
    """From `systolic` or `diastolic` up (either is enough) the category is at least this one.

    None: that number alone never leads to this category.
    """

    band: str
    systolic: Decimal | None
    diastolic: Decimal | None
    edge: Edge = Edge.AT

    def reached(self, systolic: Decimal, diastolic: Decimal) -> bool:
        at = self.edge is Edge.AT
        for value, limit in ((systolic, self.systolic), (diastolic, self.diastolic)):
            if limit is not None and (value > limit or (at and value == limit)):
                return True
        return False

    @property
    def figures(self) -> tuple[tuple[str, Decimal], ...]:
        said = (("systolic", self.systolic), ("diastolic", self.diastolic))
        return tuple((name, limit) for name, limit in said if limit is not None)


@dataclass(frozen=True, slots=True)
class PressureTable:
    """lowest: the category below the first band; bands rise."""

    source: Source
    lowest: str
    bands: tuple[PressureBand, ...]

    def find(self, systolic: Decimal, diastolic: Decimal) -> tuple[int, str, tuple[tuple[str, Decimal], ...]]:
        """Rank, category and limits of the highest band that either number reaches."""
        for rank in range(len(self.bands), 0, -1):
            band = self.bands[rank - 1]
            if band.reached(systolic, diastolic):
                return rank, band.band, band.figures
        return 0, self.lowest, ()


def table(source: Source, lowest: str, limits: Mapping[str, tuple[int | None, int | None]]) -> PressureTable:
    """Build a table from {category: (systolic, diastolic)} in rising order, limits included."""
    bands = tuple(
        PressureBand(name, None if s is None else D(s), None if d is None else D(d)) for name, (s, d) in limits.items()
    )
    return PressureTable(source, lowest, bands)
