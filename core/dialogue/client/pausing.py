"""Snoozing, pausing, the follow-up, stopping for now."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, time, timedelta

from core import schedule
from core.care import Status
from core.dialogue.client import check_in, home_bp_week, needed, programme
from core.dialogue.client import messages as m
from core.dialogue.client.effects import CancelTimer, ChangeClient, NotifyCoach, SetTimer
from core.dialogue.client.messages_to_coach import ClientPaused
from core.dialogue.client.states import Awaiting, Enrolling, Setting
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice
from core.language.days import away_until
from core.measures import MEASURES

LONGEST_PAUSE = timedelta(days=183)
EVENING = time(19, 0)
PAUSES = {"1w": 7, "2w": 14, "4w": 28}


def later(d: ClientStep) -> None:
    d.ask(Setting("snooze", "", d.asking))
    d.say(
        m.SnoozeWhen(),
        (Choice("in_two_hours", "snooze:2h"), Choice("this_evening", "snooze:evening")),
        (Choice("tomorrow", "snooze:tomorrow"),),
    )


def snooze(d: ClientStep, asking: Setting, choice: str) -> None:
    local = d.facts.local(d.now)
    if choice == "2h":
        until = d.now + timedelta(hours=2)
    elif choice == "evening" and local.time() < EVENING:
        until = schedule.instant(local.date(), EVENING, d.facts.zone)
    else:
        at = d.facts.slot.at if d.facts.slot else time(8)
        until = schedule.instant(local.date() + timedelta(days=1), at, d.facts.zone)
    tomorrow = d.facts.local(until).date() != local.date()
    d.ask(asking.back)
    d.do(CancelTimer("follow_up"), CancelTimer("snooze"), SetTimer("snooze", until, d.today.isoformat()))
    d.say(m.Snoozed(until, tomorrow))


def snoozed(d: ClientStep) -> None:
    """The snooze is over: repeat the open question."""
    if isinstance(d.asking, Awaiting):
        check_in.ask(d, MEASURES[d.asking.measure])
    elif isinstance(d.asking, Enrolling):
        needed.say_question(d, d.asking)
    elif d.state.day is not None and d.asking is None:
        check_in.ask_next(d)


def follow_up(d: ClientStep, mark: str) -> None:
    """The only reminder, a day later, if nothing of that check-in was answered."""
    open_day = d.state.day.isoformat() if d.state.day else ""
    if d.facts.status is not Status.ACTIVE or open_day != mark or not isinstance(d.asking, Awaiting | Enrolling):
        return
    if d.facts.answered is not None and d.facts.answered.isoformat() >= mark:
        return
    occasion = f"follow-up/{d.facts.client_id}/{mark}"
    if isinstance(d.asking, Enrolling):
        needed.say_question(d, d.asking, occasion=occasion)
        return
    measure = MEASURES[d.asking.measure]
    again = m.FollowUp(measure.key, d.today.toordinal() // 7)
    d.say(again, *check_in.buttons(d, measure), occasion=occasion)


def pause(d: ClientStep, words: str = "") -> None:
    until = away_until(words, d.words, d.today) if words else None
    if until is not None:
        pause_until(d, until)
        return
    d.ask(Setting("pause", "", d.asking))
    labels = {"1w": "one_week", "2w": "two_weeks", "4w": "four_weeks"}
    d.say(m.PauseWhen(), tuple(Choice(label, f"pause:{key}") for key, label in labels.items()))


def pause_until(d: ClientStep, until: date) -> None:
    """No questions until a date; at most half a year, so that nobody gets lost."""
    until = min(max(until, d.today + timedelta(days=1)), d.today + LONGEST_PAUSE)
    week_ended = home_bp_week.call_off(d)
    d.do(
        ChangeClient("status", Status.PAUSED),
        ChangeClient("paused_until", until),
        CancelTimer("follow_up"),
        CancelTimer("snooze"),
        NotifyCoach(ClientPaused(d.facts.client_id, d.facts.name, until)),
    )
    d.become(asking=None, agenda=(), day=None)
    d.say(m.Paused(until, week_ended), (Choice("resume", "resume"),))


def resume(d: ClientStep) -> None:
    if d.facts.status is Status.FINISHED:
        programme.new_round(d)
        return
    if d.facts.status is Status.PAUSED:
        d.do(ChangeClient("status", Status.ACTIVE), ChangeClient("paused_until", None))
        d.facts = replace(d.facts, status=Status.ACTIVE, paused_until=None)
    d.say(m.Resumed(d.next_slot()))


def stop(d: ClientStep) -> None:
    """End this check-in; offer to pause or to leave."""
    d.do(CancelTimer("follow_up"), CancelTimer("snooze"))
    d.become(asking=None, agenda=(), day=None)
    d.say(m.StoppedForNow(d.next_slot()), (Choice("pause", "set:pause"), Choice("leave", "set:leave")))
