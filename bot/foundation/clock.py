"""The only module that reads the system clock. Everything else is passed a `Clock` or an instant."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from time import monotonic
from typing import Protocol

DOUBT = timedelta(seconds=30)  # a clock that is off by less is put right by and by, and harms nobody


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


class Jumps:
    """Notices that a clock was put back or forward, by one that only goes on. monotonic: that one, in seconds."""

    def __init__(self, clock: Clock, monotonic: Callable[[], float] = monotonic, doubt: timedelta = DOUBT) -> None:
        self._clock = clock
        self._monotonic = monotonic
        self._doubt = doubt
        self._seen = (clock.now(), monotonic())

    def look(self) -> timedelta:
        """Return by how much the clock jumped since the last look: 0 if by no more than is in doubt."""
        now, at = self._clock.now(), self._monotonic()
        before, then = self._seen
        self._seen = (now, at)
        jumped = (now - before) - timedelta(seconds=at - then)
        return jumped if abs(jumped) > self._doubt else timedelta(0)


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
