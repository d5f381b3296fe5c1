"""A coach's week on one screen: who needs a person, what changed for certain, who went quiet, one line for the rest.

Order: urgent flags first, then this week's, worst and oldest first; then confirmed changes; then who went quiet, is
unreachable or paused. Every entry names its evidence and since when. A seen flag stays while it is open, behind the
unseen ones of its kind; a cleared one is gone; one that comes back is new again.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal

from core.flags import Code, Severity

CHANGES = frozenset({Code.CHANGE_BETTER_CONFIRMED, Code.CHANGE_WORSE_CONFIRMED, Code.CHANGE_CONFIRMED})
QUIET = frozenset({Code.MISSED_CHECK_INS})
UNREACHABLE = frozenset({Code.UNREACHABLE})
GRAVITY = {Severity.URGENT: 0, Severity.THIS_WEEK: 1, Severity.NOTE: 2}


@dataclass(frozen=True, slots=True)
class FlagFact:
    """An open flag of somebody in the caseload, as stored."""

    id: int
    code: str
    severity: str
    measure: str | None
    evidence: tuple[tuple[str, str | Decimal], ...]
    since: datetime
    seen_at: datetime | None = None


@dataclass(frozen=True, slots=True)
class CaseRow:
    """One client as a caseload list knows them.

    answered: local date of the last answered check-in.  asked: whether a slot came within the week of the digest.
    kept: whether that one was answered.  status: "invited", "enrolling", "active", "paused", "left".
    """

    client_id: int
    name: str
    status: str
    answered: date | None = None
    asked: bool = False
    kept: bool = False
    missed: int = 0
    paused_until: date | None = None
    reachable: bool = True
    flags: tuple[FlagFact, ...] = ()


@dataclass(frozen=True, slots=True)
class Entry:
    """One line of a digest: who, and the flags that put them there, gravest first."""

    client_id: int
    name: str
    flags: tuple[FlagFact, ...]


@dataclass(frozen=True, slots=True)
class Digest:
    """day: local date of the coach.  needs: who needs a person.  changes: confirmed changes.  quiet: two slots or more
    missed.  paused: name and until when.  asked, kept: check-ins of the week over the whole caseload.
    often: how many are weighing often.  rest: clients with nothing to say about."""

    day: date
    needs: tuple[Entry, ...]
    changes: tuple[Entry, ...]
    quiet: tuple[Entry, ...]
    unreachable: tuple[Entry, ...]
    paused: tuple[tuple[str, date], ...]
    asked: int
    kept: int
    often: int
    rest: int

    @property
    def calm(self) -> bool:
        """Nothing that needs a person or more than one line."""
        return not (self.needs or self.changes or self.quiet or self.unreachable)


def digest(rows: tuple[CaseRow, ...], day: date) -> Digest:
    """Put a caseload in the order a coach needs it. Clients who left or are not enrolled yet are not in it."""
    here = [r for r in rows if r.status in ("active", "paused")]
    needs, changes, quiet, unreachable = [], [], [], []
    for row in here:
        flags = tuple(sorted(row.flags, key=_worst_first))
        grave = tuple(f for f in flags if Code(f.code) not in CHANGES | QUIET | UNREACHABLE)
        if grave:
            needs.append(Entry(row.client_id, row.name, grave))
        if changed := tuple(f for f in flags if Code(f.code) in CHANGES and f.seen_at is None):
            changes.append(Entry(row.client_id, row.name, changed))
        if silent := tuple(f for f in flags if Code(f.code) in QUIET):
            quiet.append(Entry(row.client_id, row.name, silent))
        if gone := tuple(f for f in flags if Code(f.code) in UNREACHABLE):
            unreachable.append(Entry(row.client_id, row.name, gone))
    named = {e.client_id for part in (needs, changes, quiet, unreachable) for e in part}
    paused = tuple((r.name, r.paused_until) for r in here if r.status == "paused" and r.paused_until)
    return Digest(
        day=day,
        needs=tuple(sorted(needs, key=_entry_order)),
        changes=tuple(sorted(changes, key=_entry_order)),
        quiet=tuple(sorted(quiet, key=_entry_order)),
        unreachable=tuple(sorted(unreachable, key=_entry_order)),
        paused=paused,
        asked=sum(r.asked for r in here),
        kept=sum(r.kept for r in here),
        often=sum(any(f.code == Code.WEIGHING_OFTEN for f in r.flags) for r in here),
        rest=sum(r.client_id not in named and r.status == "active" for r in here),
    )


def _worst_first(flag: FlagFact) -> tuple[int, bool, datetime]:
    return GRAVITY[Severity(flag.severity)], flag.seen_at is not None, flag.since


def _entry_order(entry: Entry) -> tuple[tuple[int, bool, datetime], str]:
    return _worst_first(entry.flags[0]), entry.name
