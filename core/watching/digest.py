"""A coach's week on one screen: who needs attention, firm changes, who went quiet, and one line for the rest.

Order: urgent flags first, then this week's, worst and oldest first; then confirmed changes; then clients who went
quiet, are unreachable or paused. Every entry names its evidence and its date.

The life cycle of a flag in the digest:

| the flag is                         | in the digest                                                |
|-------------------------------------|--------------------------------------------------------------|
| open, not seen                      | in full                                                      |
| open, seen, urgent or this week's   | in short, marked as seen, behind the unseen ones of its kind |
| open, seen, a note                  | not listed: it stays on the card                             |
| urgent, seen, and it happened again | in full, as if it were new                                   |
| cleared                             | gone; if it recurs, it is a new flag                         |
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field, replace
from datetime import date, datetime, time, timedelta, tzinfo
from decimal import Decimal

from core.judging.chart_data import PressureWeekChart, RatingLine, TrendChart
from core.schedule import instant
from core.watching.flags import Code, Flag, Severity

CHANGES = frozenset({Code.CHANGE_BETTER_CONFIRMED, Code.CHANGE_WORSE_CONFIRMED, Code.CHANGE_CONFIRMED})
QUIET = frozenset({Code.MISSED_CHECK_INS})
UNREACHABLE = frozenset({Code.UNREACHABLE})
GRAVITY = {Severity.URGENT: 0, Severity.THIS_WEEK: 1, Severity.NOTE: 2}

IN_CARE = ("active", "paused", "finished")  # whoever is not still arriving, and has not left

NIGHT_BEGINS, NIGHT_ENDS = time(22, 0), time(7, 0)
LIMIT = 4096  # characters of one message on the platform
ROOM = 3900  # ours: leaves some room for another language, if the coach changes it before delivery


@dataclass(frozen=True, slots=True)
class FlagFact:
    """An open flag of a client in the caseload, as stored. refreshed_at: when it last recurred."""

    id: int
    code: str
    severity: str
    measure: str | None
    evidence: tuple[tuple[str, str | Decimal], ...]
    since: datetime
    seen_at: datetime | None = None
    refreshed_at: datetime | None = None

    @property
    def seen(self) -> bool:
        """Whether a coach has seen it since it last mattered: an urgent flag that recurs counts as new."""
        if self.seen_at is None:
            return False
        again = self.refreshed_at is not None and self.refreshed_at > self.seen_at
        return not (again and self.severity == Severity.URGENT)


@dataclass(frozen=True, slots=True)
class CaseRow:
    """One client's row in a caseload.

    answered: local date of the last answered check-in.  asked: whether a check-in fell within the week of the digest.
    kept: whether it was answered.  status: "invited", "enrolling", "active", "paused", "finished", "left".
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
class DigestEntry:
    """One client in a digest, with the flags that put them there, most serious first."""

    client_id: int
    name: str
    flags: tuple[FlagFact, ...]

    @property
    def urgent(self) -> bool:
        return any(f.severity == Severity.URGENT for f in self.flags)


@dataclass(frozen=True, slots=True)
class Digest:
    """day: local date of the coach.  needs: clients who need attention.  changes: confirmed changes.  quiet: clients
    who missed two or more check-ins.  paused: name and until when.  asked, kept: the week's check-ins over the whole
    caseload. often: how many weigh often. rest: clients with nothing to report. left_out: how many entries did not fit.
    brief: evidence is omitted so that every urgent entry fits."""

    day: date
    needs: tuple[DigestEntry, ...] = ()
    changes: tuple[DigestEntry, ...] = ()
    quiet: tuple[DigestEntry, ...] = ()
    unreachable: tuple[DigestEntry, ...] = ()
    paused: tuple[tuple[str, date], ...] = ()
    asked: int = 0
    kept: int = 0
    often: int = 0
    rest: int = 0
    left_out: int = 0
    brief: bool = False

    @property
    def calm(self) -> bool:
        """True if nobody needs attention and there is nothing beyond one line to report."""
        return not (self.needs or self.changes or self.quiet or self.unreachable or self.left_out)

    @property
    def shown(self) -> tuple[int, ...]:
        """Ids of every flag in it, which are marked as seen."""
        return tuple(dict.fromkeys(f.id for e in self.entries for f in e.flags))

    @property
    def entries(self) -> tuple[DigestEntry, ...]:
        """All entries, in display order."""
        return (*self.needs, *self.changes, *self.quiet, *self.unreachable)


@dataclass(frozen=True, slots=True)
class Panel:
    """One small chart of a caseload sheet: whose, and why it is shown. code: of the flag."""

    name: str
    code: str
    picture: TrendChart | RatingLine | PressureWeekChart


@dataclass(frozen=True, slots=True)
class _Parts:
    needs: list[DigestEntry] = field(default_factory=list)
    changes: list[DigestEntry] = field(default_factory=list)
    quiet: list[DigestEntry] = field(default_factory=list)
    unreachable: list[DigestEntry] = field(default_factory=list)


def digest(rows: tuple[CaseRow, ...], day: date) -> Digest:
    """Order a caseload the way a coach needs it. Clients who left or are not enrolled yet are omitted."""
    here = [r for r in rows if r.status in IN_CARE]
    parts = _Parts()
    for row in here:
        for part, flags in zip(
            (parts.needs, parts.changes, parts.quiet, parts.unreachable), _sorted_out(row), strict=True
        ):
            if flags:
                part.append(DigestEntry(row.client_id, row.name, flags))
    named = {e.client_id for part in (parts.needs, parts.changes, parts.quiet, parts.unreachable) for e in part}
    return Digest(
        day=day,
        needs=tuple(sorted(parts.needs, key=_entry_order)),
        changes=tuple(sorted(parts.changes, key=_entry_order)),
        quiet=tuple(sorted(parts.quiet, key=_entry_order)),
        unreachable=tuple(sorted(parts.unreachable, key=_entry_order)),
        paused=tuple((r.name, r.paused_until) for r in here if r.status == "paused" and r.paused_until),
        asked=sum(r.asked for r in here),
        kept=sum(r.kept for r in here),
        often=sum(any(f.code == Code.WEIGHING_OFTEN for f in r.flags) for r in here),
        rest=sum(r.client_id not in named and r.status == "active" for r in here),
    )


def _sorted_out(row: CaseRow) -> Iterator[tuple[FlagFact, ...]]:
    """A client's flags for each part of the digest. A paused client is not missing; a seen note stays on the card."""
    worth = sorted((f for f in row.flags if not (f.seen and f.severity == Severity.NOTE)), key=_worst_first)
    paused = row.status == "paused"
    yield tuple(f for f in worth if Code(f.code) not in CHANGES | QUIET | UNREACHABLE)
    yield tuple(f for f in worth if Code(f.code) in CHANGES)
    yield () if paused else tuple(f for f in worth if Code(f.code) in QUIET)
    yield tuple(f for f in worth if Code(f.code) in UNREACHABLE)


def _worst_first(flag: FlagFact) -> tuple[int, bool, datetime]:
    return GRAVITY[Severity(flag.severity)], flag.seen, flag.since


def _entry_order(entry: DigestEntry) -> tuple[tuple[int, bool, datetime], str]:
    return _worst_first(entry.flags[0]), entry.name


def by_need(rows: tuple[CaseRow, ...]) -> tuple[CaseRow, ...]:
    """A caseload in list order: by gravest unseen flag, then missed check-ins, then name."""

    def order(row: CaseRow) -> tuple[bool, tuple[int, bool, datetime] | tuple[()], int, str]:
        flags = sorted(row.flags, key=_worst_first)
        return (not flags, _worst_first(flags[0]) if flags else (), -row.missed, row.name.casefold())

    return tuple(sorted(rows, key=order))


# --- one message ------------------------------------------------------------------------------------------------


def fitted(whole: Digest, length: Callable[[Digest], int], room: int = ROOM) -> Digest:
    """Cut a digest to one message, with the number of entries left out. Urgent entries are the last to go.

    length: counts the characters of a digest as rendered for the coach.

    Entries are dropped from the end of the least pressing part: seen ones and notes, unreachable, quiet, changes, this
    week's. If the urgent ones alone are too long, their evidence is dropped (it is on the card). Only if their bare
    names are too long for one message, with well over thirty urgent clients in a week, are the newest dropped.
    """
    if length(whole) <= room:
        return whole
    keep = len(whole.entries)
    order = _by_weight(whole)
    urgent = sum(e.urgent for e in whole.entries)
    short = replace(whole, paused=())
    for candidate in (short, replace(short, brief=True)):
        floor = urgent if not candidate.brief else 0
        low, high = floor, keep
        if length(_only(candidate, order, low)) > room:
            continue
        while low < high:  # binary search for the most entries that fit
            middle = (low + high + 1) // 2
            if length(_only(candidate, order, middle)) <= room:
                low = middle
            else:
                high = middle - 1
        return _only(candidate, order, low)
    return _only(replace(short, brief=True), order, 0)


def _by_weight(whole: Digest) -> tuple[tuple[str, DigestEntry], ...]:
    """Every entry with its part, the ones to keep first."""
    parts = ("needs", "changes", "quiet", "unreachable")
    every = [(part, entry) for part in parts for entry in getattr(whole, part)]
    place = {part: n for n, part in enumerate(parts)}

    def order(item: tuple[str, DigestEntry]) -> tuple[bool, int, int, bool]:
        part, entry = item
        gravity = min(GRAVITY[Severity(f.severity)] for f in entry.flags)
        return not entry.urgent, gravity, place[part], all(f.seen for f in entry.flags)

    return tuple(sorted(every, key=order))


def _only(whole: Digest, order: tuple[tuple[str, DigestEntry], ...], keep: int) -> Digest:
    kept = set(order[:keep])

    def part(name: str) -> tuple[DigestEntry, ...]:
        return tuple(e for e in getattr(whole, name) if (name, e) in kept)

    return replace(
        whole,
        needs=part("needs"),
        changes=part("changes"),
        quiet=part("quiet"),
        unreachable=part("unreachable"),
        left_out=whole.left_out + len(order) - keep,
    )


# --- telling at once --------------------------------------------------------------------------------------------


def when_to_tell(flag: Flag | FlagFact, now: datetime, zone: tzinfo, *, quiet_nights: bool) -> datetime:
    """When to notify a coach of an urgent flag: `now`, or at the end of the night if it may wait and the coach chose
    so.

    zone: the coach's.  Emergencies and severe readings never wait.
    """
    local = now.astimezone(zone)
    night = local.time() >= NIGHT_BEGINS or local.time() < NIGHT_ENDS
    if not (quiet_nights and night and _may_wait(flag)):
        return now
    day = local.date() + timedelta(days=local.time() >= NIGHT_BEGINS)
    return instant(day, NIGHT_ENDS, zone)


def may_wait(level: str, sign: str) -> bool:
    """Whether words about a sign may wait for the end of the night. Despair never does, whatever its level."""
    return level in ("same_day", "stop_rest", "talk") and sign != "despair"


def _may_wait(flag: Flag | FlagFact) -> bool:
    """True for what public guidance calls a same-day matter, or for no more than "not well today"."""
    evidence = dict(flag.evidence)
    match Code(flag.code):
        case Code.RED_FLAG_WORDS | Code.SIGN_UNANSWERED:
            return may_wait(str(evidence.get("level")), str(evidence.get("sign")))
        case Code.SYMPTOM_REPORTED:
            return evidence.get("sign") == "gate_unwell"
        case Code.FAST_GAIN:
            return True
        case _:
            return False
