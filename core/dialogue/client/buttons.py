"""Buttons: pressed, typed as the words on them, or pressed long after their question was over."""

from __future__ import annotations

from collections.abc import Iterator

from core.care import Status
from core.dialogue.client import (
    answers,
    check_in,
    coach_thread,
    cohort_membership,
    enrolment,
    help_and_menu,
    home_bp_week,
    intents,
    leaving,
    pausing,
    progress_and_goals,
    safety,
    settings,
    timed_counts,
)
from core.dialogue.client import messages as m
from core.dialogue.client.states import (
    AlarmAsked,
    Asking,
    AskingConditions,
    Awaiting,
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
from core.dialogue.kit.events import Press, Text
from core.dialogue.kit.messages import KeptAsItWas, OldButton
from core.language import plain
from core.measures import MEASURES
from core.measures.measure import Measure


def asked_measure(d: ClientStep) -> Measure | None:
    """The measure an unnamed number belongs to."""
    match d.asking:
        case Awaiting(measure=key) | Repeating(measure=key) | Counting(measure=key) | Confirming(measure=key):
            return MEASURES.get(key)
        case Setting(back=Awaiting(measure=key)):  # a setting was opened over the question, which may be answered
            return MEASURES.get(key)
        case _:
            return None


def typed(d: ClientStep, text: str) -> str | None:
    """The data of a button of the open question whose words were typed instead of pressed."""
    wanted = plain(text)
    for label, data in open_buttons(d.asking):
        if wanted == plain(d.facts.label(label, "")):
            return data
    return None


def open_buttons(asking: Asking | None) -> Iterator[tuple[str, str]]:
    """Label key and data of the buttons under the open question, where words alone would not do."""
    match asking:
        case AskingConditions(measure=key, picking=True) if key in MEASURES:
            yield from ((f"aspect:{a}", f"cond:{a}") for a in MEASURES[key].protocol.keep_same)
            yield "done", "cond:done"
        case AskingConditions():
            yield "same_as_last_time", "cond:same"
            yield "first_time", "cond:first"
            yield "something_differed", "cond:differed"
        case Gate(signs=True):
            yield "signs_none", "gate:none"
            yield "signs_some", "gate:some"
        case Gate():
            yield "well_yes", "gate:well"
            yield "well_no", "gate:unwell"
        case AlarmAsked():
            yield "alarm_yes", "alarm:yes"
            yield "alarm_no", "alarm:no"
        case StopwatchDone():
            yield "keep_it", "watch:keep"
            yield "time_again", "watch:again"
        case Setting(what="snooze"):
            yield "in_two_hours", "snooze:2h"
            yield "this_evening", "snooze:evening"
            yield "tomorrow", "snooze:tomorrow"
        case Setting(what="pause"):
            yield from (("one_week", "pause:1w"), ("two_weeks", "pause:2w"), ("four_weeks", "pause:4w"))
        case _:
            return


def press(d: ClientStep, event: Press) -> None:
    """A button, perhaps of a message of long ago: it acts only if it fits what is open, else it is said kindly."""
    verb, _, value = event.data.partition(":")
    if verb == "consent" and (not d.facts.consented or isinstance(d.asking, Consenting)):
        enrolment.consenting(d, event)
        return
    if not d.facts.consented:
        enrolment.ask_consent(d, d.facts.name, d.facts.coach_name)
        return
    if isinstance(d.asking, Enrolling):
        enrolment.enrolling(d, event, d.asking)
        return
    if d.facts.status is Status.LEFT and verb not in ("set", "forget", "back", "move"):
        intents.after_leaving(d, "")
        return
    if not _pressed(d, event, verb, value):
        d.say(OldButton())
        if isinstance(d.asking, Awaiting):
            check_in.ask(d, MEASURES[d.asking.measure])


def _pressed(d: ClientStep, event: Press, verb: str, value: str) -> bool:
    """Act on a button; False when it does not fit what is open now."""
    match verb, d.asking:
        case "n", Awaiting(measure=key) if value.isdigit() and MEASURES[key].understand is not None:
            as_text = Text(event.at, value, "")
            answers.take(d, as_text, answers.listen(d, value, MEASURES[key]), MEASURES[key])
        case "ok", Confirming() as asking:
            answers.confirmed(d, asking, value == "yes")
        case "cond", AskingConditions() as asking:
            answers.conditions_answered(d, asking, value)
        case "gate", Gate() as asking if (value in ("none", "some")) == asking.signs:
            safety.gate_answered(d, asking, value in ("well", "none"))
        case "alarm", AlarmAsked() as asking:
            safety.alarm_answered(d, asking, value == "yes")
        case "stop", Counting(seconds=0) as asking:
            timed_counts.stopped(d, asking, event.at)
        case "watch", StopwatchDone() as asking:
            timed_counts.watch_answered(d, asking, value == "keep", "", event.at)
        case "have", Awaiting() as asking:
            check_in.ask(d, MEASURES[asking.measure])
        case "snooze", Setting(what="snooze") as asking:
            pausing.snooze(d, asking, value)
        case "pause", Setting(what="pause") as asking if value in pausing.PAUSES:
            from datetime import timedelta

            pausing.pause_until(d, d.today + timedelta(days=pausing.PAUSES[value]))
        case "wd", Setting(what="slot") as asking if value.isdigit() and int(value) < 7:
            settings.set_slot(d, asking, int(value), None)
        case "hr", Setting(what="slot") as asking if asking.detail:
            settings.typed_setting(d, asking, value)
        case "zone", Setting(what="zone") if d.facts.find_zones(value):
            settings.set_zone(d, value)
        case "lang", Setting(what="language"):
            settings.set_language(d, value)
        case "units", Setting(what="units"):
            settings.set_units(d, value)
        case "numbers", Setting(what="numbers") if value in ("shown", "coach_only", "leave_out"):
            settings.set_numbers(d, value)
        case "forget", Setting(what="forget"):
            leaving.forget(d, value == "yes")
        case "leave", Setting(what="leave"):
            leaving.leave(d, value == "yes")
        case "cogone", Setting(what=cohort_membership.LEAVE) as asking:
            cohort_membership.gone(d, asking, value == "yes")
            check_in.close_setting(d)
        case "move", Setting(what="coach_change"):
            coach_thread.change_coach(d, value == "yes")
        case "back", Setting(what="coach_change"):
            coach_thread.come_back(d, value == "yes")
        case "goal", Setting(what="goal"):
            progress_and_goals.goal_for(d, value)
        case "goaldate", Setting(what="goal_date") as asking if value.isdigit():
            progress_and_goals.goal_set(d, asking, int(value))
        case "goaldrop", _:
            progress_and_goals.goal_drop(d)
        case "cancel", Setting():
            d.say(KeptAsItWas())
            check_in.close_setting(d)
        case _:
            return _any_time(d, event, verb, value)
    return True


def _any_time(d: ClientStep, event: Press, verb: str, value: str) -> bool:
    """Buttons that fit whatever is open."""
    match verb:
        case "how" | "ruler" if value in MEASURES:
            intents.card(d, value, ruler=verb == "ruler")
        case "time" if value in MEASURES and asked_measure(d) is MEASURES[value]:
            timed_counts.offer(d, MEASURES[value])
        case "count" if (key := value.partition(":")[0]) in MEASURES and asked_measure(d) is MEASURES[key]:
            seconds = value.partition(":")[2]
            timed_counts.start(d, MEASURES[key], int(seconds) if seconds.isdigit() else 0, event.at)
        case "skip" if isinstance(d.asking, Awaiting):
            check_in.skip(d)
        case "later" if isinstance(d.asking, Awaiting):
            pausing.later(d)
        case "begin" if d.facts.status is Status.ACTIVE and d.state.day is None:
            enrolment.begin(d, value)
        case "word":
            coach_thread.word(d)
        case "low" if safety.dizzy_with_low_pressure(d, value):
            pass
        case "src":
            intents.sources(d)
        case "which" if value.partition(":")[0] in MEASURES and asked_measure(d) is None:
            answers.named(d, value, event)
        case "resume":
            pausing.resume(d)
        case "pressure" if d.state.pressure is not None:
            home_bp_week.stop(d)
        case "chart":
            progress_and_goals.progress(d, value)
        case "early" if value in ("energy", "waist") and d.asking is None:
            d.become(agenda=())
            check_in.ask(d, MEASURES[value])
        case "early" if value == "walk":
            d.say(m.WalkInstead())
        case "cohorts":
            cohort_membership.mine(d)
        case "coleave":
            cohort_membership.leave(d, value)
        case "set":
            _setting(d, value)
        case _:
            return False
    return True


def _setting(d: ClientStep, what: str) -> None:
    match what:
        case "today":
            check_in.today(d)
        case "progress":
            progress_and_goals.progress(d)
        case "settings":
            settings.settings(d)
        case "my_data":
            leaving.my_data(d)
        case "pause":
            pausing.pause(d)
        case "goal":
            progress_and_goals.goal(d)
        case "slot" | "zone" | "language" | "units" | "numbers" | "forget" | "leave":
            settings.change(d, what)
        case _:
            help_and_menu.not_sure(d)
