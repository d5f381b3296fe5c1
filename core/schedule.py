"""When things come due: weekly slots, follow-ups, retests and the prompts of a blood-pressure week.

The clock-change rule, made once here and used for every wall time below: a wall time that comes twice means
its first pass; one that is skipped moves past the gap by as much as the gap is long (02:30 becomes 03:30), as
calendars do (RFC 5545, 3.3.5). So a slot has exactly one instant on each of its dates, whatever a zone does.

Instants are aware datetimes in UTC; a zone is a `tzinfo` the caller made, because making one reads files.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta, tzinfo
from enum import StrEnum

from core.care import Slot
from core.measures import MEASURES
from core.measures.measure import MeasureKind

WEEK = timedelta(days=7)
SILENTLY_LATE = timedelta(hours=2)  # ours: nobody minds, so nothing is said
STILL_ASKED = timedelta(hours=12)  # ours: after that the day is over for most
WINDOW_OPENS = timedelta(days=3)  # a retest may come this much before its date, so that it falls on a slot
FOLLOW_UP_AFTER = timedelta(hours=24)
DAY_BEGINS, DAY_ENDS = time(8, 0), time(20, 30)  # when a follow-up may come
MORNING, EVENING = time(8, 0), time(20, 0)  # of a blood-pressure week

EVERY_CHECK_IN = frozenset(m.key for m in MEASURES.values() if m.kind in (MeasureKind.RATING, MeasureKind.ACTIVITY))
ONCE = frozenset(m.key for m in MEASURES.values() if m.kind is MeasureKind.ONCE)


@dataclass(frozen=True, slots=True)
class Occurrence:
    """One coming of a slot: the local date it belongs to, and the instant."""

    day: date
    at: datetime


@dataclass(frozen=True, slots=True)
class Prompt:
    """One prompt of a blood-pressure week. number: day of the week-long series, from 1."""

    day: date
    number: int
    evening: bool
    at: datetime


class Lateness(StrEnum):
    """What to do about a slot that is worked off late."""

    SILENT = "silent"  # ask as if nothing had happened
    APOLOGISE = "apologise"
    NOT_ASKED = "not_asked"  # record it as not asked, which is no fault of the client's


def instant(day: date, at: time, zone: tzinfo) -> datetime:
    """Return the one instant of wall time `at` on `day`, by the clock-change rule.

    fold=0 is the rule: of a repeated time it is the first pass, and a gap counts with the offset from before.
    """
    return datetime.combine(day, at.replace(fold=0, tzinfo=None), zone).astimezone(UTC)


def instants(slot: Slot, zone: tzinfo, after: datetime, until: datetime) -> Iterator[Occurrence]:
    """Yield the slot's occurrences in (after, until], in order: who moves `after` on misses none."""
    day = after.astimezone(UTC).date() - timedelta(days=3)  # further than any zone, a skipped day included
    day += timedelta(days=(slot.weekday - day.weekday()) % 7)
    while (at := instant(day, slot.at, zone)) <= until:
        if at > after:
            yield Occurrence(day, at)
        day += WEEK


def next_due(slot: Slot, zone: tzinfo, after: datetime) -> Occurrence:
    """Return the first occurrence after an instant; an occurrence at that very instant is over."""
    return next(instants(slot, zone, after, after + 2 * WEEK))


def latest_due(slot: Slot, zone: tzinfo, at: datetime) -> Occurrence:
    """Return the last occurrence at or before an instant."""
    return list(instants(slot, zone, at - 2 * WEEK, at))[-1]


def late_policy(late_by: timedelta) -> Lateness:
    """Say what becomes of a slot that is `late_by` late: both limits still belong to the kinder answer."""
    if late_by <= SILENTLY_LATE:
        return Lateness.SILENT
    return Lateness.APOLOGISE if late_by <= STILL_ASKED else Lateness.NOT_ASKED


def interval(measure: str, retest_days: int) -> timedelta:
    """Time between two readings: a week for what every check-in asks, else what the plan says."""
    return WEEK if measure in EVERY_CHECK_IN else timedelta(days=retest_days)


def retest_due(measure: str, last: datetime | None, interval_days: int, slot_day: date, zone: tzinfo) -> bool:
    """Say whether the check-in of `slot_day` asks for `measure`.

    last: instant of the last accepted reading, None when there is none. interval_days: what the plan says.
    Due when last local date + interval <= slot date + 3 days; what is asked once is due until it is there.
    """
    if last is None:
        return True
    if measure in ONCE:
        return False
    return last.astimezone(zone).date() + interval(measure, interval_days) <= slot_day + WINDOW_OPENS


def opens_on(measure: str, last: datetime, interval_days: int, zone: tzinfo) -> date:
    """Return the first local date on which a new reading of `measure` is welcome again."""
    return last.astimezone(zone).date() + interval(measure, interval_days) - WINDOW_OPENS


def follow_up(asked: datetime, zone: tzinfo) -> datetime:
    """Return when the one friendly reminder goes: 24 hours after, or when the next day's hours begin."""
    return daytime(asked + FOLLOW_UP_AFTER, zone)


def daytime(at: datetime, zone: tzinfo) -> datetime:
    """Return `at` if people may be written to then without need, else when their next day begins."""
    local = at.astimezone(zone)
    if local.time() < DAY_BEGINS:
        return instant(local.date(), DAY_BEGINS, zone)
    if local.time() > DAY_ENDS:
        return instant(local.date() + timedelta(days=1), DAY_BEGINS, zone)
    return at.astimezone(UTC)


def pressure_prompts(first_day: date, days: int, zone: tzinfo) -> tuple[Prompt, ...]:
    """Return the prompts of a home blood-pressure series, two a day, in order."""
    return tuple(
        Prompt(day, number, evening, instant(day, EVENING if evening else MORNING, zone))
        for number, day in ((n + 1, first_day + timedelta(days=n)) for n in range(days))
        for evening in (False, True)
    )
