"""When things come due: weekly slots, follow-ups, retests and the prompts of a blood-pressure week.

The daylight-saving rule, defined here and used for every local time below: an ambiguous time means its first
occurrence; a skipped one moves past the gap by its length (02:30 becomes 03:30), as calendars do (RFC 5545, 3.3.5). So
a slot has exactly one instant on each of its dates, whatever a zone does.

Instants are aware datetimes in UTC; a zone is a `tzinfo` from the caller, because creating one reads files.
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
SILENTLY_LATE = timedelta(hours=2)  # ours: nobody minds, so the delay is not mentioned
STILL_ASKED = timedelta(hours=12)  # ours: after that the day is over for most
STARTS_WITHIN = timedelta(days=21)  # ours: a week before the first retest, a start is over
WINDOW_OPENS = timedelta(days=3)  # a retest may come this long before its date, so that it coincides with a slot
FOLLOW_UP_AFTER = timedelta(hours=24)
DAY_BEGINS, DAY_ENDS = time(8, 0), time(20, 30)  # when a follow-up may be sent
MORNING, EVENING = time(8, 0), time(20, 0)  # of a blood-pressure week

EVERY_CHECK_IN = frozenset(m.key for m in MEASURES.values() if m.kind in (MeasureKind.RATING, MeasureKind.ACTIVITY))
ONCE = frozenset(m.key for m in MEASURES.values() if m.kind is MeasureKind.ONCE)


@dataclass(frozen=True, slots=True)
class Occurrence:
    """One occurrence of a slot: its local date and its instant."""

    day: date
    at: datetime


@dataclass(frozen=True, slots=True)
class Prompt:
    """One prompt of a blood-pressure week. number: day of the series, from 1."""

    day: date
    number: int
    evening: bool
    at: datetime


class Lateness(StrEnum):
    """What to do about a slot that is processed late."""

    SILENT = "silent"  # ask without mentioning the delay
    APOLOGISE = "apologise"
    NOT_ASKED = "not_asked"  # record it as not asked, which does not count against the client


def instant(day: date, at: time, zone: tzinfo) -> datetime:
    """The instant of local time `at` on `day`, by the daylight-saving rule.

    fold=0 implements the rule: the first of two occurrences, and in a gap the offset from before it.
    """
    return datetime.combine(day, at.replace(fold=0, tzinfo=None), zone).astimezone(UTC)


def instants(slot: Slot, zone: tzinfo, after: datetime, until: datetime) -> Iterator[Occurrence]:
    """Yield the slot's occurrences in (after, until], in order; a caller that advances `after` misses none."""
    day = after.astimezone(UTC).date() - timedelta(days=3)  # further than any zone, a skipped day included
    day += timedelta(days=(slot.weekday - day.weekday()) % 7)
    while (at := instant(day, slot.at, zone)) <= until:
        if at > after:
            yield Occurrence(day, at)
        day += WEEK


def next_due(slot: Slot, zone: tzinfo, after: datetime) -> Occurrence:
    """The first occurrence after an instant, which itself is excluded."""
    return next(instants(slot, zone, after, after + 2 * WEEK))


def latest_due(slot: Slot, zone: tzinfo, at: datetime) -> Occurrence:
    """The last occurrence at or before an instant."""
    return list(instants(slot, zone, at - 2 * WEEK, at))[-1]


def late_policy(late_by: timedelta) -> Lateness:
    """What to do about a slot that is `late_by` late; both limits are inclusive in the client's favour."""
    if late_by <= SILENTLY_LATE:
        return Lateness.SILENT
    return Lateness.APOLOGISE if late_by <= STILL_ASKED else Lateness.NOT_ASKED


def interval(measure: str, retest_days: int) -> timedelta:
    """Time between two readings: a week for measures asked at every check-in, else according to the plan."""
    return WEEK if measure in EVERY_CHECK_IN else timedelta(days=retest_days)


def retest_due(measure: str, last: datetime | None, interval_days: int, slot_day: date, zone: tzinfo) -> bool:
    """Whether the check-in of `slot_day` asks for `measure`.

    last: instant of the last accepted reading, or None. interval_days: from the plan. Due if last local date + interval
    <= slot date + 3 days; a measure asked only once is due until it has been taken.
    """
    if last is None:
        return True
    if measure in ONCE:
        return False
    return last.astimezone(zone).date() + interval(measure, interval_days) <= slot_day + WINDOW_OPENS


def start_again_due(first: datetime, last: datetime, slot_day: date, zone: tzinfo) -> bool:
    """Whether the check-in of `slot_day` may ask for a further visit of a start. first, last: of the visits so far."""
    begun, newest = (at.astimezone(zone).date() for at in (first, last))
    return newest + WEEK <= slot_day + WINDOW_OPENS and slot_day <= begun + STARTS_WITHIN


def opens_on(measure: str, last: datetime, interval_days: int, zone: tzinfo) -> date:
    """The first local date on which a new reading of `measure` is welcome again."""
    return last.astimezone(zone).date() + interval(measure, interval_days) - WINDOW_OPENS


def follow_up(asked: datetime, zone: tzinfo) -> datetime:
    """When to send the only reminder: 24 hours later, or at the start of the next daytime hours."""
    return daytime(asked + FOLLOW_UP_AFTER, zone)


def daytime(at: datetime, zone: tzinfo) -> datetime:
    """`at` if it is within daytime hours for non-urgent messages, else the start of the next day's."""
    local = at.astimezone(zone)
    if local.time() < DAY_BEGINS:
        return instant(local.date(), DAY_BEGINS, zone)
    if local.time() > DAY_ENDS:
        return instant(local.date() + timedelta(days=1), DAY_BEGINS, zone)
    return at.astimezone(UTC)


def pressure_prompts(first_day: date, days: int, zone: tzinfo) -> tuple[Prompt, ...]:
    """The prompts of a home blood-pressure series, two a day, in order."""
    return tuple(
        Prompt(day, number, evening, instant(day, EVENING if evening else MORNING, zone))
        for number, day in ((n + 1, first_day + timedelta(days=n)) for n in range(days))
        for evening in (False, True)
    )
