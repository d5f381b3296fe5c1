"""Training load of a week, from how hard and how long each session was. In arbitrary units (AU).

    session load = effort (0-10) * minutes        weekly load = their sum
    monotony     = mean daily load / SD of daily load        strain = weekly load * monotony

Over seven days, rest days as 0, with the sample SD (decision D9 in `core.references.boundaries`). Equal days
have no SD to divide by: no monotony then, never infinity. A level of about 2.0 is often called monotonous;
that is from memory and is not used to judge anyone.
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
    """One session: local date, effort 0-10, length in minutes."""

    day: date
    effort: Decimal
    minutes: Decimal

    @property
    def load(self) -> Decimal:
        return session_load(self.effort, self.minutes)


@dataclass(frozen=True, slots=True)
class WeekLoad:
    """total, strain in AU; monotony without unit, None when every day was alike."""

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
    """The seven daily loads up to and with `last_day`, oldest first; days without a session are 0."""
    loads = dict.fromkeys((last_day - timedelta(days=n) for n in reversed(range(DAYS))), Decimal(0))
    for session in sessions:
        if session.day in loads:
            loads[session.day] += session.load
    return tuple(loads.values())


def week(loads: tuple[Decimal, ...]) -> WeekLoad:
    """Sum up seven daily loads.

    Raises: ValueError unless there are seven: a fault of ours, `daily_loads` always gives seven.
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
