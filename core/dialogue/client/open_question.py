"""Repeat the open question: after a button of another question, nobody should have to scroll."""

from __future__ import annotations

from datetime import timedelta

from core.dialogue.client import (
    about_me,
    answers,
    check_in,
    coach_thread,
    cohort_membership,
    corrections,
    enrolment,
    health,
    needed,
    pausing,
    progress_and_goals,
    safety,
    settings,
    timed_counts,
    weighing_guard,
)
from core.dialogue.client.answers import OLD_ANSWER
from core.dialogue.client.states import (
    AlarmAsked,
    Asking,
    AskingConditions,
    Awaiting,
    ChoosingDay,
    Confirming,
    Consenting,
    Counting,
    Enrolling,
    Gate,
    Repeating,
    Setting,
    StopwatchDone,
)
from core.dialogue.client.step import ClientStep
from core.measures import MEASURES


def put_again(d: ClientStep) -> None:
    """Repeat the open question with its buttons; nothing if none is open. The state is unchanged."""
    open_now = d.asking
    _say(d)
    d.ask(open_now)


def confirmed(d: ClientStep, asking: Confirming, yes: bool) -> None:
    """The answer to a doubt or to an offered change; a question that stood before is put again."""
    answers.confirmed(d, asking, yes)
    _return_to(d, asking.back)


def doubt_answered(d: ClientStep, asking: Confirming, value: str) -> None:
    """A button under a doubt: yes, no, or yes and the earlier reading was the slip."""
    if value == "earlier":
        answers.earlier_was_wrong(d, asking)
    confirmed(d, asking, value in ("yes", "earlier"))


def day_chosen(d: ClientStep, asking: ChoosingDay, value: str) -> bool:
    """The day of a correction; a question that stood before is put again. False if the day is none of them."""
    if not answers.day_chosen(d, asking, value):
        return False
    _return_to(d, asking.back)
    return True


def _return_to(d: ClientStep, back: Asking | None) -> None:
    if back is not None and d.asking is back:
        put_again(d)


def _say(d: ClientStep) -> None:
    match d.asking:
        case Awaiting(measure=key) if key in MEASURES:
            check_in.ask(d, MEASURES[key])
        case Confirming(measure=key) as asking if key in MEASURES:
            if asking.kind == OLD_ANSWER:
                answers.ask_about_old_answer(d, asking)
            else:
                answers.ask_if_sure(d, MEASURES[key], asking.meant, asking.kind)
        case AskingConditions():
            answers.put_conditions_again(d)
        case ChoosingDay(measure=key) as asking if key in MEASURES:
            answers.say_which_day(d, asking)
        case Gate(signs=signs):
            (safety.ask_signs if signs else safety.ask_well)(d)
        case AlarmAsked(sign=sign):
            safety.say_question(d, sign)
        case Repeating() as asking:
            safety.ask_to_repeat(d, asking)
        case StopwatchDone() as asking if asking.measure in MEASURES:
            timed_counts.say_stopwatch(d, asking)
        case Counting(measure=key, seconds=0, started=started) if d.now - started < timedelta(hours=1):
            timed_counts.say_running(d, key)
        case Consenting():
            enrolment.ask_consent(d, d.facts.name, d.facts.coach_name)
        case Enrolling() as asking:
            needed.say_question(d, asking)
        case Setting() as asking:
            _setting(d, asking)
        case _:
            pass


def _setting(d: ClientStep, asking: Setting) -> None:
    match asking.what:
        case "pause" | "snooze":
            d.ask(asking.back)
            (pausing.pause if asking.what == "pause" else pausing.later)(d)
        case what if what in about_me.FACTS:
            about_me.say(d, asking)
        case health.ASK if (fact := health.asked_about(asking)) is not None:
            health.say_question(d, fact)
        case "word":
            coach_thread.message_coach(d)
        case "undo":
            corrections.ask_undo(d, asking.detail)
        case "early_reason":
            weighing_guard.ask_reason(d)
        case "goal":
            progress_and_goals.goal(d)
        case "goal_target":
            progress_and_goals.goal_for(d, asking.detail)
        case "goal_date":
            progress_and_goals.say_goal_date(d, asking.detail.partition("=")[0])
        case "coach_change":
            enrolment.ask_change_coach_again(d)
        case cohort_membership.LEAVE:
            cohort_membership.leave(d, asking.detail)
        case "slot" if asking.detail:
            settings.say_hours(d)
        case "slot" | "zone" | "language" | "units" | "numbers" | "forget" | "leave" as what:
            settings.change(d, what)
        case _:
            pass
