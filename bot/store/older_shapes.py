"""How a value that an earlier version queued is read by this one: what waits in the outbox outlives an upgrade.

A row is needed for a class that has lost a field, or whose field has become another: a new field with a default needs
none. It is given the fields as they were stored, parts already values, and returns them as the class has them now.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

from core.watching.cohort import CohortWeek
from core.watching.digest import NOBODY, DigestEntry, FlagFact
from core.watching.disclosure import LEAST_PEOPLE
from core.watching.flags import Severity

Fields = dict[str, Any]


def _digest(old: Fields) -> Fields:
    """Who could not be reached, and who took a break, had sections of their own; nobody counted who needs a person."""
    new = {name: value for name, value in old.items() if name not in ("unreachable", "paused", "brief")}
    away = tuple(DigestEntry(NOBODY, name, (), status="paused", until=until) for name, until in old.get("paused", ()))
    grave = tuple(e for e in old.get("unreachable", ()) if e.flags)
    pressing = sum(any(_pressing(f) for f in e.flags) for e in old.get("needs", ()))
    return {**new, "quiet": (*old.get("quiet", ()), *grave), "away": away, "needed": pressing}


def _pressing(flag: FlagFact) -> bool:
    return flag.severity != Severity.NOTE


def _group_week(old: Fields) -> Fields:
    """The total was a bare number, which did not say of how many; a count of fewer than five was still told."""
    week = old["week"]
    if isinstance(week, CohortWeek) and (week.asked or 0) < LEAST_PEOPLE:
        week = replace(week, asked=None, kept=None)
    if isinstance(week, CohortWeek) and week.total is None:
        week = replace(week, people=None)
    return {**old, "week": week, "together": None}


def _without(*gone: str) -> Callable[[Fields], Fields]:
    return lambda old: {name: value for name, value in old.items() if name not in gone}


OLDER: Mapping[str, Callable[[Fields], Fields]] = {
    "cohort.TooFew": _without("n"),
    "cohort_messages.GroupWeek": _group_week,
    "digest.Digest": _digest,
}
