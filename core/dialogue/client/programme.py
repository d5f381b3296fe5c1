"""A programme with an end: its last report, the time after it, and a new one."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, time, timedelta, tzinfo

from core import schedule
from core.care import Plan, Programme, Status
from core.dialogue.client.effects import Answered, CancelTimer, ChangeClient, NotifyCoach
from core.dialogue.client.messages_to_coach import NewRound, ProgrammeEnded
from core.dialogue.client.report import Report, report
from core.dialogue.client.report_messages import (
    LastReport,
    LastReportPicture,
    ProgrammeOver,
    ReportForCoach,
    RoundBegins,
)
from core.dialogue.client.results import ResultFacts
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice, Rows
from core.measures import MEASURES

USUAL_WEEKS = 12
GRACE = timedelta(days=7)  # how long the closing check-in is waited for
FRESH = timedelta(days=14)  # ours: the end of one programme is the start of the next, unless it is longer ago


def is_overdue(plan: Plan, day: date) -> bool:
    """Whether the closing check-in was missed, so that the report is given without it."""
    return plan.programme is not None and plan.closes_on(day) and day >= plan.programme.last + GRACE


def next_round(plan: Plan, weeks: int, today: date, now: datetime, zone: tzinfo) -> Plan:
    """The plan with a new programme from today on. What was measured at the end of the last one is its baseline, if
    that is not long ago."""
    ended = plan.programme.ended if plan.programme is not None else None
    if ended is None or today - ended > FRESH:
        since = now
    else:
        since = schedule.instant(ended, time(0), zone)
    return replace(plan, baseline_since=since, programme=Programme(today, weeks))


# --- the end ----------------------------------------------------------------------------------------------------


def finish(d: ClientStep, not_asked: date | None = None) -> None:
    """Give the last report to the client and to the coach, and ask nothing more. not_asked: the date of a check-in that
    came due and is not asked any more."""
    programme = d.facts.plan.programme
    assert programme is not None
    plan = replace(d.facts.plan, programme=replace(programme, ended=d.today))
    check_ins = {day: kept for day, kept in d.facts.check_ins if day != not_asked}
    check_ins |= {date.fromisoformat(e.day): True for e in d.effects if isinstance(e, Answered)}
    d.ask(None)
    d.become(day=None, agenda=(), noted=(), told=(), pressure=None)
    d.do(*(CancelTimer(kind) for kind in ("follow_up", "snooze", "pressure", "pressure_end")))
    d.do(ChangeClient("plan", plan), ChangeClient("status", Status.FINISHED))
    whole = _report(d, programme, check_ins)
    hidden = frozenset(key for key, measure in MEASURES.items() if d.hidden(measure))
    theirs = _report(d, programme, check_ins, hidden)
    d.say(LastReport(theirs))
    d.say(LastReportPicture(theirs))
    d.say(LastReportPicture(theirs, pdf=True), *next_steps())
    key = f"{d.facts.client_id}/{d.today.isoformat()}"
    d.do(
        NotifyCoach(ProgrammeEnded(d.facts.client_id, d.facts.name, whole.kept, whole.asked), occasion=f"ended/{key}"),
        NotifyCoach(ReportForCoach(whole), occasion=f"report/{key}"),
        NotifyCoach(ReportForCoach(whole, pdf=True), occasion=f"report-pdf/{key}"),
    )
    d.facts = replace(d.facts, plan=plan, status=Status.FINISHED)


def _report(
    d: ClientStep,
    programme: Programme,
    check_ins: dict[date, bool],
    hidden: frozenset[str] = frozenset(),
) -> Report:
    """For client and coach alike: the two may lie side by side, so neither calls a change what the other does not."""
    facts = d.facts
    return report(
        ResultFacts(facts.history, facts.profile, facts.plan, facts.zone, facts.units),
        programme,
        d.today,
        check_ins,
        facts.goals,
        client_id=facts.client_id,
        name=facts.name,
        coach=facts.coach_name,
        hidden=hidden,
    )


def next_steps() -> Rows:
    """A new round, a break before it, or goodbye."""
    return (
        (Choice("new_round", "round"), Choice("pause_first", "set:pause")),
        (Choice("goodbye", "set:leave"),),
    )


# --- after it ---------------------------------------------------------------------------------------------------


def say_over(d: ClientStep) -> None:
    programme = d.facts.plan.programme
    ended = programme.ended if programme is not None else None
    d.say(ProgrammeOver(ended, d.facts.coach_name), *next_steps())


def new_round(d: ClientStep) -> None:
    """The client begins again, for as many weeks as before; the coach hears of it."""
    if d.facts.status is Status.FINISHED:
        begin(d)
    say_running(d)


def say_running(d: ClientStep) -> None:
    running = d.facts.plan.programme
    if running is None:
        d.say(RoundBegins(0, None, d.next_slot()))
    else:
        d.say(RoundBegins(running.weeks, running.last, d.next_slot()))


def begin(d: ClientStep) -> None:
    """Start a new programme at once, without a word: whoever calls says it."""
    before = d.facts.plan.programme
    weeks = USUAL_WEEKS if before is None else before.weeks
    plan = next_round(d.facts.plan, weeks, d.today, d.now, d.facts.zone)
    assert plan.programme is not None
    d.do(ChangeClient("plan", plan), ChangeClient("status", Status.ACTIVE), ChangeClient("paused_until", None))
    d.do(NotifyCoach(NewRound(d.facts.client_id, d.facts.name, weeks, plan.programme.last)))
    d.facts = replace(d.facts, plan=plan, status=Status.ACTIVE, paused_until=None)
