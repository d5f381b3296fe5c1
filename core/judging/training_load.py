"""Weekly training load from the effort and length of each session, in arbitrary units (AU).

    session load = effort (0-10) * minutes        weekly load = their sum
    monotony     = mean daily load / SD of daily load        strain = weekly load * monotony

Over seven days, with rest days as 0 and the sample SD (decision D9 in `core.references.boundaries`). Seven equal days
have an SD of 0: monotony is then None, never infinity. A level of about 2.0 is often called monotonous; that is from
memory, and nobody is judged by it.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import Decimal

from core.references.boundaries import LOAD_SD_DEGREES_OF_FREEDOM

DAYS = 7


@dataclass(frozen=True, slots=True)
class Session:
    """A training session on a local date: effort from 0 to 10, length in minutes."""

    day: date
    effort: Decimal
    minutes: Decimal

    @property
    def load(self) -> Decimal:
        return session_load(self.effort, self.minutes)


@dataclass(frozen=True, slots=True)
class WeekLoad:
    """total, strain: in AU. monotony: without unit; None if every day was the same."""

    total: Decimal
    monotony: Decimal | None
    strain: Decimal | None


def session_load(effort: Decimal, minutes: Decimal) -> Decimal:
    """Load of one session in AU.

    >>> session_load(Decimal(7), Decimal(60))
    Decimal('420')
    """
    return effort * minutes


def daily_loads(sessions: Iterable[Session], last_day: date) -> tuple[Decimal, ...]:
    """The seven daily loads up to and including `last_day`, oldest first; days without a session are 0."""
    loads = dict.fromkeys((last_day - timedelta(days=n) for n in reversed(range(DAYS))), Decimal(0))
    for session in sessions:
        if session.day in loads:
            loads[session.day] += session.load
    return tuple(loads.values())


def week(loads: tuple[Decimal, ...]) -> WeekLoad:
    """Summarise seven daily loads.

    Raises: ValueError unless there are seven (`daily_loads` always returns seven).
    """
    if len(loads) != DAYS:
        raise ValueError(f"a week has {DAYS} days, not {len(loads)}")
    total = sum(loads, Decimal(0))
    mean = total / DAYS
    variance = sum(((load - mean) ** 2 for load in loads), Decimal(0)) / (DAYS - LOAD_SD_DEGREES_OF_FREEDOM)
    if min(loads) == max(loads):
        return WeekLoad(total, None, None)
    monotony = mean / variance.sqrt()
    return WeekLoad(total, monotony, total * monotony)
