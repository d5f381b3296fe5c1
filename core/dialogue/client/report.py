"""The last report of a programme: start and end of what was measured, kept check-ins, goals, what to keep doing.

The same value is read by the client, as a picture, a PDF and a few lines, and by the coach, who also gets bands, errors
and sources, and every number. What does not show beyond error is said to be unknown, never to be "no change".
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from core.care import Programme
from core.dialogue.client.facts import GoalFact
from core.dialogue.client.results import Result, ResultFacts, results, shown
from core.dialogue.client.week_messages import ActivityLine
from core.judging.activity_course import activity_course
from core.judging.change import BEYOND_ERROR
from core.judging.goals import Goal, progress
from core.measures import MEASURES
from core.measures.measure import MeasureKind
from core.quantity import Amount
from core.reading import Reading, baseline
from core.references.who_activity_2020 import ActivityAmount, amount, enough_strength

LATELY = 4  # weeks of activity whose mean decides what to keep doing
KEPT_WELL = Decimal("0.75")  # ours: three check-ins of four
_BEYOND = frozenset(kind.value for kind in BEYOND_ERROR)


@dataclass(frozen=True, slots=True)
class GoalSaid:
    """A goal at the end. percent: of the way, 0 to 100; 0 unless the change is beyond error, as in a check-in."""

    measure: str
    target: Amount
    by: date
    percent: int
    reached: bool


@dataclass(frozen=True, slots=True)
class Report:
    """A programme from its first to its last day.

    asked, kept: its check-ins. keep: keys of what to keep doing, or to try next. lines: activity beside public advice.
    """

    client_id: int
    name: str
    coach: str
    programme: Programme
    ended: date
    asked: int
    kept: int
    results: tuple[Result, ...] = ()
    goals: tuple[GoalSaid, ...] = ()
    keep: tuple[str, ...] = ()
    lines: tuple[ActivityLine, ...] = ()

    @property
    def changed(self) -> tuple[Result, ...]:
        """Beyond error."""
        return tuple(r for r in self.results if r.verdict is not None and r.verdict.kind in _BEYOND)

    @property
    def unsure(self) -> tuple[Result, ...]:
        """What cannot be told yet: within error, taken differently, or too soon after the start."""
        return tuple(r for r in self.results if r.start is not None and r not in self.changed)

    @property
    def activity(self) -> tuple[Result, ...]:
        """What is counted every week, and compared with nothing."""
        return tuple(r for r in self.results if MEASURES[r.measure].kind is MeasureKind.ACTIVITY)


def report(
    whose: ResultFacts,
    programme: Programme,
    ended: date,
    check_ins: Mapping[date, bool],
    goals: Iterable[GoalFact],
    *,
    client_id: int,
    name: str,
    coach: str,
    hidden: frozenset[str] = frozenset(),
) -> Report:
    """Report on a programme.

    check_ins: local dates of those asked, and whether each was answered; others than the programme's are left out.
    hidden: measures that its reader does not wish to see.
    """
    of_it = [kept for day, kept in check_ins.items() if programme.starts <= day <= ended]
    found = tuple(r for r in results(whose) if r.measure not in hidden)
    return Report(
        client_id,
        name,
        coach,
        programme,
        ended,
        len(of_it),
        sum(of_it),
        found,
        tuple(_goal(whose, goal, found) for goal in goals if goal.measure not in hidden and whose.of(goal.measure)),
        tuple(_to_keep(whose, len(of_it), sum(of_it))),
        activity_lines(whose),
    )


def activity_lines(whose: ResultFacts) -> tuple[ActivityLine, ...]:
    """What public advice names, of this programme: a usual week now, and the first one."""
    since = whose.plan.baseline_since
    found = []
    for key, measure in MEASURES.items():
        if measure.kind is not MeasureKind.ACTIVITY:
            continue
        taken = [r for r in whose.of(key) if since is None or r.taken_at >= since]
        course = activity_course(measure, taken, whose.profile)
        if course is not None:
            amounts = (shown(measure, x, whose.units) for x in (course.lately, course.start, course.advised))
            found.append(ActivityLine(key, *amounts))
    return tuple(found)


def _goal(whose: ResultFacts, fact: GoalFact, found: tuple[Result, ...]) -> GoalSaid:
    measure, taken = MEASURES[fact.measure], whose.of(fact.measure)
    start = baseline(taken, whose.plan.baseline_since) or taken[0]
    way = progress(Goal(fact.measure, Decimal(fact.target), fact.by), start, taken[-1])
    sure = any(r.measure == fact.measure and r.verdict is not None and r.verdict.kind in _BEYOND for r in found)
    target = shown(measure, Decimal(fact.target), whose.units)
    return GoalSaid(fact.measure, target, fact.by, way.percent if sure or way.reached else 0, way.reached)


def _to_keep(whose: ResultFacts, asked: int, kept: int) -> Iterable[str]:
    """From the last four weeks, beside public advice."""
    if asked and Decimal(kept) / asked >= KEPT_WELL:
        yield "same_hour"
    minutes = whose.of("activity_minutes")[-LATELY:]
    if minutes:
        yield "keep_active" if amount(_mean_of(minutes)) >= ActivityAmount.MEETS else "more_active"
    strength = whose.of("strength_days")[-LATELY:]
    if strength:
        yield "keep_strength" if enough_strength(_mean_of(strength)) else "more_strength"


def _mean_of(readings: tuple[Reading, ...]) -> Decimal:
    return sum((r.value for r in readings), Decimal(0)) / len(readings)
