"""The only place that asks the machine for the time. Everything else is given a `Clock`, or an instant."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Protocol


class Clock(Protocol):
    """Something that knows what time it is: the machine, or a tape that says so."""

    def now(self) -> datetime:
        """Return the instant, aware, in UTC."""
        ...


def now() -> datetime:
    """Return the machine's time, aware, in UTC."""
    return datetime.now(UTC)  # noqa: TID251


class MachineClock:
    """The machine's clock."""

    def now(self) -> datetime:
        return now()


class SharedClock:
    """The machine's clock, put right by one that all machines share. Before the first `agree` it is the machine's.

    Rates, leases and slots of several machines meet in one database: only there does a clock that is off matter.
    """

    def __init__(self) -> None:
        self._off = timedelta(0)

    def now(self) -> datetime:
        return now() + self._off

    def agree(self, there: datetime, before: datetime, after: datetime) -> None:
        """Learn that the shared clock said `there` when the machine's stood between `before` and `after`.

        A difference that those two leave in doubt changes nothing, so the clock does not tremble.
        """
        off = there - (before + (after - before) / 2)
        if abs(off - self._off) > (after - before) / 2:
            self._off = off


class HeldClock:
    """A clock that stands still until it is moved: tapes and tests."""

    def __init__(self, at: datetime) -> None:
        self._at = at

    def now(self) -> datetime:
        return self._at

    def move_to(self, at: datetime) -> None:
        """Stand at `at` from now on.

        Raises: ValueError if that is not aware, or is in this clock's past.
        """
        if at.tzinfo is None or at < self._at:
            raise ValueError("a clock moves forward, in aware instants")
        self._at = at.astimezone(UTC)
