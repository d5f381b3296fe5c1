"""Messages about two readings so far apart that one of them may be a slip, as values. The earlier number is never said:
a weight between weigh-ins is not for looking at."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from core.quantity import Amount


@dataclass(frozen=True, slots=True)
class AskWhichIsRight:
    """Far from the reading of an earlier day: is it right, and if so, was the earlier one?"""

    measure: str
    amount: Amount
    second: Decimal | None
    earlier: date


@dataclass(frozen=True, slots=True)
class EarlierTakenOut:
    """The reading of that day was a slip, and no longer counts."""

    measure: str
    day: date
