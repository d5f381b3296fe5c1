"""Messages about a run of weeks, as values: a look back, and activity beside public advice and its own start."""

from __future__ import annotations

from dataclasses import dataclass

from core.quantity import Amount


@dataclass(frozen=True, slots=True)
class ActivityLine:
    """A usual week lately, the first week, and what public advice asks for at least."""

    measure: str
    lately: Amount
    start: Amount
    advised: Amount


@dataclass(frozen=True, slots=True)
class AnotherDay:
    """The last check-ins were all answered late, on the same weekday (Monday 0): would that be a better one?"""

    weekday: int


@dataclass(frozen=True, slots=True)
class LookBack:
    """The last four weeks in a few lines; a picture goes with it.

    kept: of the last `weeks` check-ins, how many were answered. better, changed, worse: measures that moved by more
    than chance. steps: those that took one small step after another the right way, each within it. same: within it.
    unsure: beyond it, and too little so to be given a meaning. early: without anything to compare yet.
    """

    kept: int
    weeks: int
    better: tuple[str, ...] = ()
    changed: tuple[str, ...] = ()
    worse: tuple[str, ...] = ()
    steps: tuple[str, ...] = ()
    same: tuple[str, ...] = ()
    early: tuple[str, ...] = ()
    activity: tuple[ActivityLine, ...] = ()
    unsure: tuple[str, ...] = ()
