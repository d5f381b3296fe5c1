"""Fast weight gain, for people who were told to weigh themselves because of heart failure. kg, days.

At least five different rules are published. Ours is a cautious union of three; NICE gives no number.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from core.references.ladder import Edge
from core.sources import Seen, Source

D = Decimal

THREE_DAYS_SOURCE = Source(
    key="esc_fast_gain",
    cite="Heart Failure Association of the ESC, heartfailurematters.org: more than 2 kg in 3 days",
    population="people with heart failure",
    seen=Seen.READ,
    note="The page adds '3 pounds', which does not match; the kilograms are used.",
)
DAY_AND_WEEK_SOURCE = Source(
    key="leaflet_fast_gain",
    cite="NHS and US leaflets on heart failure: 2 to 3 lb overnight, or more than 5 lb in a week",
    population="people with heart failure",
    seen=Seen.READ,
    note="The union with the ESC rule is ours.",
)
SOURCES = (THREE_DAYS_SOURCE, DAY_AND_WEEK_SOURCE)


@dataclass(frozen=True, slots=True)
class GainRule:
    """A gain of at least (or above) `gain` kg within `days`."""

    days: int
    gain: Decimal
    edge: Edge
    source: Source

    def met(self, gain: Decimal, days: int) -> bool:
        over = gain > self.gain or (gain == self.gain and self.edge is Edge.AT)
        return 0 <= days <= self.days and over


RULES = (
    GainRule(1, D("1.36"), Edge.AT, DAY_AND_WEEK_SOURCE),  # 3 lb
    GainRule(3, D(2), Edge.ABOVE, THREE_DAYS_SOURCE),
    GainRule(7, D("2.27"), Edge.ABOVE, DAY_AND_WEEK_SOURCE),  # 5 lb
)


def fast(before: Decimal, after: Decimal, days: int) -> GainRule | None:
    """The first rule met by two weights in kg, `days` whole days apart, or None."""
    for rule in RULES:
        if rule.met(after - before, days):
            return rule
    return None
