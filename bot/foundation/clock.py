"""The only module that reads the system clock. Everything else is passed a `Clock` or an instant."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Protocol


class Clock(Protocol):
    """A source of the current time: the machine, or a tape."""

    def now(self) -> datetime:
        """The current instant, aware, in UTC."""
        ...


def now() -> datetime:
    """The machine's time, aware, in UTC."""
    return datetime.now(UTC)  # noqa: TID251


class MachineClock:
    """The machine's clock."""

    def now(self) -> datetime:
        return now()


class SharedClock:
    """The machine's clock, corrected by one that all machines share. Before the first `agree` there is no correction.

    Rate limits, leases and slots of several machines meet in one database, so their clocks must agree.
    """

    def __init__(self) -> None:
        self._off = timedelta(0)

    def now(self) -> datetime:
        return now() + self._off

    def agree(self, there: datetime, before: datetime, after: datetime) -> None:
        """Note that the shared clock read `there` while the machine's was between `before` and `after`.

        An offset within that uncertainty changes nothing, so the clock does not jitter.
        """
        off = there - (before + (after - before) / 2)
        if abs(off - self._off) > (after - before) / 2:
            self._off = off


class HeldClock:
    """A clock that stands still until it is moved, for tapes and tests."""

    def __init__(self, at: datetime) -> None:
        self._at = at

    def now(self) -> datetime:
        return self._at

    def move_to(self, at: datetime) -> None:
        """Move the clock to `at`.

        Raises: ValueError if `at` is not aware, or lies in this clock's past.
        """
        if at.tzinfo is None or at < self._at:
            raise ValueError("a clock moves forward, in aware instants")
        self._at = at.astimezone(UTC)
