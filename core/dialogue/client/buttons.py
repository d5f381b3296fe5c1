"""Buttons: pressed, typed as their label, or pressed long after their question was closed."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import timedelta
from decimal import Decimal
from enum import Enum, auto
from typing import Any, TypeVar

from core.care import Status
from core.client import Background, Sex
from core.dialogue.client import (
    about_me,
    answers,
    check_in,
    coach_thread,
    cohort_membership,
    corrections,
    enrolment,
    health,
    help_and_menu,
    home_bp_week,
    intents,
    leaving,
    pausing,
    programme,
    progress_and_goals,
    readings,
    safety,
    settings,
    timed_counts,
    weighing_guard,
)
from core.dialogue.client import messages as m
from core.dialogue.client.open_question import day_chosen, doubt_answered, put_again
from core.dialogue.client.start import after_leaving
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
from core.dialogue.kit.commands import HalfMade
from core.dialogue.kit.effects import undrawn
from core.dialogue.kit.events import Press, Text
from core.dialogue.kit.messages import KeptAsItWas, OldButton
from core.language import plain
from core.language.after_alarm import Later
from core.measures import MEASURES
from core.measures.measure import Measure, MeasureKind, Understood
from core.reading import How

TOP = 10  # highest rating


def asked_measure(d: ClientStep) -> Measure | None:
    """The measure to which a number without a name belongs."""
    match d.asking:
        case Awaiting(measure=key) | Repeating(measure=key) | Counting(measure=key) | Confirming(measure=key):
            return MEASURES.get(key)
        case Setting(back=Awaiting(measure=key)):  # a setting was opened over the question, which can still be answered
            return MEASURES.get(key)
        case _:
            return None


def typed(d: ClientStep, text: str) -> str | None:
    """The data of the open question's button whose label was typed instead of pressed."""
    wanted = plain(text)
    for label, data in open_buttons(d.asking):
        if wanted == plain(d.facts.label(label, "")):
            return data
    if isinstance(d.asking, ChoosingDay):
        days = answers.days_of(d, d.asking)
        return next((data for data, day in days if wanted == plain(d.facts.label("on_day", day))), None)
    return None


def open_buttons(asking: Asking | None) -> Iterator[tuple[str, str]]:
    """Label key and data of the buttons under the open question, where words alone are not enough."""
    match asking:
        case AskingConditions(measure=key, picking=True) if key in MEASURES:
            yield from ((f"aspect:{a}", f"cond:{a}") for a in MEASURES[key].protocol.keep_same)
            yield "done", "cond:done"
        case AskingConditions():
            yield "same_as_last_time", "cond:same"
            yield "something_differed", "cond:differed"
        case Gate(signs=True):
            yield "signs_none", "gate:none"
            yield "signs_some", "gate:some"
        case Gate():
            yield "well_yes", "gate:well"
            yield "well_no", "gate:unwell"
        case AlarmAsked():
            yield from ((choice.label, choice.data) for row in safety.ALARM_ANSWERS for choice in row)
        case StopwatchDone():
            yield "keep_it", "watch:keep"
            yield "time_again", "watch:again"
        case Setting(what="forget"):
            yield "forget_yes", "forget:yes"
            yield "no_keep", "forget:no"
        case Setting(what="leave"):
            yield "leave_yes", "leave:yes"
            yield "no_keep", "leave:no"
        case Setting(what=cohort_membership.LEAVE):
            yield "leave_yes", "cogone:yes"
            yield "no_keep", "cogone:no"
        case Setting(what="sex"):
            yield from ((f"sex:{s.value}", f"me:{s.value}") for s in Sex)
        case Setting(what="background"):
            yield from ((f"background:{b.value}", f"me:{b.value}") for b in Background)
        case Setting(what="cautions"):
            yield from ((f"caution:{c}", f"me:{c}") for c in about_me.CAUTIONS)
            yield "done", f"me:{about_me.DONE}"
        case Setting(what=health.ASK):
            yield "yes", "note:yes"
            yield "no", "note:no"
        case Setting(what="snooze"):
            yield "in_two_hours", "snooze:2h"
            yield "this_evening", "snooze:evening"
            yield "tomorrow", "snooze:tomorrow"
        case Setting(what="pause"):
            yield from (("one_week", "pause:1w"), ("two_weeks", "pause:2w"), ("four_weeks", "pause:4w"))
        case _:
            return


def press(d: ClientStep, event: Press) -> None:
    """A button was pressed, perhaps of an old message: it acts only if it belongs to what is open now."""
    data, question = undrawn(event.data)
    event = replace(event, data=data)
    if data.startswith("alarm:"):  # safe at any time, in any state
        _alarm(d, data.removeprefix("alarm:"), ours=question == d.state.question)
        return
    button = BUTTONS.get(data.partition(":")[0])
    lasts = button.lasts if button is not None else Lasts.OPEN
    if lasts is Lasts.ALWAYS or question == d.state.question:
        d.used_up = lasts is Lasts.ONCE
        act(d, event)
    else:
        _over(d, event, question)


def _alarm(d: ClientStep, answer: str, *, ours: bool) -> None:
    """ours: it belongs to the question that is open now."""
    if isinstance(d.asking, AlarmAsked) and ours:
        answers.alarm_answered(d, d.asking, answer)
    else:
        safety.old_answer(d, answer)


def _over(d: ClientStep, event: Press, question: int | None) -> None:
    """This button's question is closed: report the current answer, offer to change it, repeat the open question."""
    written = next((w for w in reversed(d.state.written) if question and w.question == question), None)
    reading = readings.by_key(d, written.key) if written is not None else None
    measure = MEASURES.get(reading.measure) if reading is not None else None
    if reading is None or measure is None:
        d.say(OldButton())
        put_again(d)
        return
    verb, _, value = event.data.partition(":")
    free = d.asking is None or isinstance(d.asking, Awaiting | answers.RETURNED_TO)
    rated = verb == "n" and measure.kind is MeasureKind.RATING and value.isdecimal() and int(value) <= TOP
    if rated and free and Decimal(value) != reading.value:
        answers.offer_to_correct(d, measure, reading, Understood(Decimal(value), measure.unit), event.at)
        return
    hidden = d.hidden(measure) or reading.how is How.EARLY
    amount = None if hidden else d.shown(measure, reading.value)
    d.say(
        m.AnswerStands(measure.key, d.facts.local(reading.taken_at).date(), amount, None if hidden else reading.second)
    )
    put_again(d)


def act(d: ClientStep, event: Press) -> None:
    """Act on a button, given its data."""
    verb, _, value = event.data.partition(":")
    if verb == "consent" and (not d.facts.consented or isinstance(d.asking, Consenting)):
        enrolment.consenting(d, event)
        return
    if not d.facts.consented:
        enrolment.ask_consent(d, d.facts.name, d.facts.coach_name)
        return
    if isinstance(d.asking, Enrolling) and verb != "fact" and (verb == "e" or not d.asking.measure):
        enrolment.enrolling(d, event, d.asking)
        return
    if d.facts.status is Status.LEFT and verb not in ("set", "forget", "back", "move"):
        after_leaving(d, "")
        return
    if not _pressed(d, event, verb, value):
        d.used_up = False
        d.say(OldButton())
        put_again(d)


# --- one row for each button ------------------------------------------------------------------------------------

AskingT = TypeVar("AskingT")
Fits = bool | None  # False: it turns out not to fit what is open now


class Lasts(Enum):
    """How long a button stays valid."""

    OPEN = auto()  # while its question is open
    ONCE = auto()  # the same, but for a single tap
    ALWAYS = auto()  # always, whatever is open


@dataclass(frozen=True, slots=True)
class ClientButton:
    """A button. verb: its data up to the colon; what follows is the value.  lasts: how long it is valid.

    question: the open question it belongs to, None for a button that always fits. setting: which one, if the question
    is a `Setting`; "" for any.  act: what it does, given the open question, the value and the press.
    """

    verb: str
    question: type | None
    setting: str
    act: Callable[[ClientStep, Any, str, Press], Fits]
    lasts: Lasts


def _answers(
    verb: str, question: type[AskingT], act: Callable[[ClientStep, AskingT, str, Press], Fits]
) -> ClientButton:
    """A button under a question."""
    return ClientButton(verb, question, "", act, Lasts.OPEN)


def _sets(verb: str, setting: str, act: Callable[[ClientStep, Setting, str], Fits]) -> ClientButton:
    """A button under an open setting."""
    return ClientButton(verb, Setting, setting, lambda d, asking, value, _: act(d, asking, value), Lasts.OPEN)


def _any_time(verb: str, act: Callable[[ClientStep, str, Press], Fits], lasts: Lasts = Lasts.ALWAYS) -> ClientButton:
    """A button that always fits."""
    return ClientButton(verb, None, "", lambda d, _, value, event: act(d, value, event), lasts)


def _while_fresh(verb: str, act: Callable[[ClientStep, str, Press], Fits]) -> ClientButton:
    """A button under a message without a question, which must not act twice or much later."""
    return _any_time(verb, act, Lasts.ONCE)


def _pressed(d: ClientStep, event: Press, verb: str, value: str) -> bool:
    """Act on a button; False if it does not fit what is open now."""
    button = BUTTONS.get(verb)
    if button is None or (button.question is not None and not isinstance(d.asking, button.question)):
        return False
    if button.setting and isinstance(d.asking, Setting) and d.asking.what != button.setting:
        return False
    return button.act(d, d.asking, value, event) is not False


def _number(d: ClientStep, asking: Awaiting, value: str, event: Press) -> Fits:
    measure = MEASURES[asking.measure]
    if not value.isdigit() or measure.understand is None:
        return False
    as_text = Text(event.at, value, "")
    answers.take_answers(d, as_text, answers.readings_in(d, value, measure), measure)
    return True


def _now(d: ClientStep, value: str, event: Press) -> Fits:
    """What is said of an alarm the morning after."""
    if value not in safety.ASKED_LATER:
        return False
    safety.said_later(d, Later(value))
    return True


def _gate(d: ClientStep, asking: Gate, value: str, event: Press) -> Fits:
    if (value in ("none", "some")) != asking.signs:
        return False
    safety.gate_answered(d, asking, value in ("well", "none"))
    return True


def _stop(d: ClientStep, asking: Counting, value: str, event: Press) -> Fits:
    if asking.seconds:
        return False
    timed_counts.stopped(d, asking, event.at)
    return True


def _pause(d: ClientStep, asking: Setting, value: str) -> Fits:
    if value not in pausing.PAUSES:
        return False
    pausing.pause_until(d, d.today + timedelta(days=pausing.PAUSES[value]))
    return True


def _weekday(d: ClientStep, asking: Setting, value: str) -> Fits:
    if not value.isdigit() or int(value) >= 7:
        return False
    settings.set_slot(d, asking, int(value), None)
    return True


def _hour(d: ClientStep, asking: Setting, value: str) -> Fits:
    if not asking.detail:
        return False
    settings.typed_setting(d, asking, value)
    return True


def _zone(d: ClientStep, asking: Setting, value: str) -> Fits:
    if not d.facts.find_zones(value):
        return False
    settings.set_zone(d, value)
    return True


def _numbers(d: ClientStep, asking: Setting, value: str) -> Fits:
    if value not in ("shown", "coach_only", "leave_out"):
        return False
    settings.set_numbers(d, value)
    return True


def _leave_cohort(d: ClientStep, asking: Setting, value: str) -> Fits:
    cohort_membership.leave_answered(d, asking, value == "yes")
    check_in.close_setting(d)
    return True


def _goal_date(d: ClientStep, asking: Setting, value: str) -> Fits:
    if not value.isdigit():
        return False
    progress_and_goals.goal_set(d, asking, int(value))
    return True


def _note(d: ClientStep, asking: Setting, value: str) -> Fits:
    health.answered(d, asking, value == "yes")
    put_again(d)
    return True


def _about_me(d: ClientStep, asking: Setting, value: str) -> Fits:
    return about_me.pressed(d, asking, value)


def _fact_wrong(d: ClientStep, value: str, event: Press) -> Fits:
    if not health.undo(d, value):
        return False
    put_again(d)
    return True


def _cancel(d: ClientStep, asking: Setting, value: str) -> Fits:
    d.say(KeptAsItWas())
    check_in.close_setting(d)
    return True


def _how(d: ClientStep, value: str, *, ruler: bool) -> Fits:
    if value not in MEASURES:
        return False
    intents.card(d, value, ruler=ruler)
    return True


def _time(d: ClientStep, value: str, event: Press) -> Fits:
    if value not in MEASURES or asked_measure(d) is not MEASURES[value]:
        return False
    timed_counts.offer(d, MEASURES[value])
    return True


def _count(d: ClientStep, value: str, event: Press) -> Fits:
    key, _, seconds = value.partition(":")
    if key not in MEASURES or asked_measure(d) is not MEASURES[key]:
        return False
    timed_counts.start(d, MEASURES[key], int(seconds) if seconds.isdigit() else 0, event.at)
    return True


def _begin(d: ClientStep, value: str, event: Press) -> Fits:
    if d.facts.status is not Status.ACTIVE or d.state.day is not None:
        return False
    enrolment.begin(d, value)
    return True


def _which(d: ClientStep, value: str, event: Press) -> Fits:
    key, _, text = value.partition(":")
    if key not in MEASURES or not (d.asking is None or isinstance(d.asking, Awaiting | AskingConditions)):
        return False
    given = d.asking.key if isinstance(d.asking, AskingConditions) and d.asking.measure == key else ""
    if (written := next((w for w in d.state.written if w.key == given), None)) is not None:
        corrections.correct(d, written, text, Text(event.at, text))  # of the reading whose conditions are being asked
    else:
        answers.measure_chosen(d, value, event)
    return True


def _end_pressure_week(d: ClientStep, value: str, event: Press) -> Fits:
    if d.state.pressure is None:
        return False
    home_bp_week.stop(d)
    return True


def _early(d: ClientStep, value: str, event: Press) -> Fits:
    """Alternatives for a client who wants to weigh too early."""
    if value in weighing_guard.OFFERED and d.asking is None:
        d.become(agenda=())
        check_in.ask(d, MEASURES[value])
    elif value == "walk":
        d.say(m.WalkInstead())
    else:
        return False
    return True


def _open_setting(d: ClientStep, what: str, event: Press) -> Fits:
    match what:
        case "today":
            check_in.today(d)
        case "progress":
            progress_and_goals.progress(d)
        case "settings":
            settings.settings(d)
        case "my_data":
            leaving.my_data(d)
        case "about_me":
            about_me.page(d)
        case "exercise":
            enrolment.check_again(d)
        case "missing":
            if not enrolment.ask_the_rest(d):
                about_me.page(d)
        case "pause":
            pausing.pause(d)
        case "goal":
            progress_and_goals.goal(d)
        case "slot" | "zone" | "language" | "units" | "numbers" | "forget" | "leave":
            settings.change(d, what)
        case _ if what in about_me.FACTS:
            settings.change(d, what)
        case _:
            help_and_menu.not_sure(d)
    return True


def _by_verb(*buttons: ClientButton) -> Mapping[str, ClientButton]:
    found = {button.verb: button for button in buttons}
    if len(found) != len(buttons):
        raise HalfMade("two client buttons have the same verb")
    return found


BUTTONS = _by_verb(
    # under a question
    _answers("n", Awaiting, _number),
    _answers("have", Awaiting, lambda d, asking, *_: check_in.ask(d, MEASURES[asking.measure])),
    _answers("skip", Awaiting, lambda d, *_: check_in.skip(d)),
    _answers("later", Awaiting, lambda d, *_: pausing.later(d)),
    _answers("ok", Confirming, lambda d, asking, value, _: doubt_answered(d, asking, value)),
    _answers("cond", AskingConditions, lambda d, asking, value, _: answers.conditions_answered(d, asking, value)),
    _answers("day", ChoosingDay, lambda d, asking, value, _: day_chosen(d, asking, value)),
    _answers("gate", Gate, _gate),
    _answers("stop", Counting, _stop),
    _answers(
        "watch",
        StopwatchDone,
        lambda d, asking, value, event: timed_counts.watch_answered(d, asking, value == "keep", "", event.at),
    ),
    # under an open setting
    _sets("snooze", "snooze", pausing.snooze),
    _sets("pause", "pause", _pause),
    _sets("wd", "slot", _weekday),
    _sets("hr", "slot", _hour),
    _sets("zone", "zone", _zone),
    _sets("lang", "language", lambda d, _, value: settings.set_language(d, value)),
    _sets("units", "units", lambda d, _, value: settings.set_units(d, value)),
    _sets("numbers", "numbers", _numbers),
    _sets("forget", "forget", lambda d, _, value: leaving.forget(d, value == "yes")),
    _sets("leave", "leave", lambda d, _, value: leaving.leave(d, value == "yes")),
    _sets("cogone", cohort_membership.LEAVE, _leave_cohort),
    _sets("move", "coach_change", lambda d, _, value: coach_thread.change_coach(d, value == "yes")),
    _sets("back", "coach_change", lambda d, _, value: coach_thread.come_back(d, value == "yes")),
    _sets("goal", "goal", lambda d, _, value: progress_and_goals.goal_for(d, value)),
    _sets("goaldate", "goal_date", _goal_date),
    _sets("undo", "undo", lambda d, asking, value: corrections.undo_answered(d, asking, value == "yes")),
    _sets("note", health.ASK, _note),
    _sets("me", "", _about_me),
    _sets("cancel", "", _cancel),
    # whatever is open
    _any_time("how", lambda d, value, _: _how(d, value, ruler=False)),
    _any_time("ruler", lambda d, value, _: _how(d, value, ruler=True)),
    _any_time("time", _time, Lasts.OPEN),
    _any_time("count", _count, Lasts.OPEN),
    _while_fresh("begin", _begin),
    _any_time("pass", lambda d, value, *_: coach_thread.pass_offered(d, value)),
    _any_time("word", lambda d, *_: coach_thread.message_coach(d)),
    _any_time("alarm", lambda d, value, _: _alarm(d, value, ours=True)),
    _any_time("now", _now),
    _any_time("low", lambda d, value, _: safety.dizzy_with_low_pressure(d, value)),
    _any_time("fact", _fact_wrong),
    _any_time("src", lambda d, *_: intents.sources(d)),
    _while_fresh("which", _which),
    _any_time("round", lambda d, *_: programme.new_round(d)),
    _any_time("resume", lambda d, *_: pausing.resume(d)),
    _any_time("pressure", _end_pressure_week),
    _any_time("chart", lambda d, value, _: progress_and_goals.progress(d, *value.split(":", 1))),
    _while_fresh("goaldrop", lambda d, *_: progress_and_goals.goal_drop(d)),
    _while_fresh("early", _early),
    _any_time("cohorts", lambda d, *_: cohort_membership.list_cohorts(d)),
    _any_time("coleave", lambda d, value, _: cohort_membership.leave(d, value)),
    _any_time("set", _open_setting),
)
