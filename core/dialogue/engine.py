"""One event of a client's conversation, decided.

    step(state, event, facts, now) -> Outcome(state, effects)

Total: whatever the state and whatever was typed or pressed, there is an answer, and nothing raises because of it.
The order in which a text is read is the heart of it:

1. Red-flag words, at any point. 2. What an open setting or enrolment question asks for. 3. An edit or a correction.
4. Wishes (help, skip, later, ...). 5. Readings: the open question first, then anything else the plan knows.
6. Words for the coach, if the coach has just written. 7. A friendly "I did not follow".
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

from core.dialogue import (
    answers,
    checkin,
    counting,
    enrolment,
    life,
    membership,
    pressure,
    safety,
    showing,
)
from core.dialogue import messages as m
from core.dialogue.effects import Choice, Erase, Learn, Say, Unsay
from core.dialogue.events import (
    Attachment,
    Command,
    Due,
    Event,
    FromCoach,
    PlanChanged,
    Press,
    Reachability,
    Text,
    Woke,
)
from core.dialogue.facts import ClientFacts, Status, StrangerFacts
from core.dialogue.outcome import Desk, Outcome
from core.dialogue.states import (
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
    State,
    StopwatchDone,
)
from core.language import Intent, plain
from core.language.intents import intent, place
from core.language.red_flags import recognise
from core.measures import MEASURES
from core.measures.shape import Measure, Misunderstood, Understood
from core.understanding import correction

FROM_PEOPLE = (Text, Press, Command, Attachment)
SURE = ("forget", "leave", "coach_change", membership.LEAVE)  # settings that wait for a yes or no
TALK = (Intent.THANKS, Intent.GREETING, Intent.YES, Intent.NO, Intent.WELL)  # to a coach who has just written


def step(state: State, event: Event, facts: ClientFacts, now: datetime) -> Outcome:
    """Advance one client's conversation by one event."""
    d = Desk(state, facts, now)
    match event:
        case Text():
            _text(d, event)
        case Press():
            _press(d, event)
        case Command():
            _command(d, event)
        case Attachment():
            waiting = life.waiting(d)
            d.say(m.NotText(event.kind, waiting))
        case Due():
            checkin.due(d, event)
        case Woke():
            _woke(d, event)
        case FromCoach():
            life.from_coach(d, event)
        case PlanChanged():
            life.plan_changed(d, event)
        case Reachability():
            life.reachability(d, event)
        case _:
            pass  # a group's event never belongs to one client's conversation
    if isinstance(event, FROM_PEOPLE) and not any(isinstance(x, Say | Erase) for x in d.effects):
        life.not_sure(d)  # whoever writes or presses is answered, whatever was decided
    _call_off(d, state)
    return d.finish()


def _call_off(d: Desk, before: State) -> None:
    """A timed count that is over early, or was left for something else, is not stopped by us any more."""
    count = before.asking
    if not isinstance(count, Counting) or d.now >= count.started + timedelta(seconds=count.seconds):
        return
    asking = d.asking
    while isinstance(asking, Setting | AlarmAsked):
        asking = asking.back
    if asking != count:
        d.effects.insert(0, Unsay())


def step_stranger(event: Event, facts: StrangerFacts) -> Outcome:
    """A chat we do not know: an invitation that is still good is joined, anything else has one fixed answer."""
    desk = Desk(State(), ClientFacts(0, facts.name, "", language=facts.language), event.at)
    invitation = facts.invitation
    if isinstance(event, Command) and event.name == "start" and invitation is not None:
        enrolment.arrive(desk, invitation)
        return desk.finish()
    if isinstance(event, Text | Command | Attachment | Press):
        desk.say(m.Stranger())
    return desk.finish()


# --- text -------------------------------------------------------------------------------------------------------


def _text(d: Desk, event: Text) -> None:
    text = event.text.strip()
    asking = d.asking
    if not text:
        d.say(m.NotText("empty", life.waiting(d)))
        return
    alarm = recognise(text, d.words)
    if alarm is not None and not (isinstance(asking, AlarmAsked) and not alarm.certain):
        safety.alarmed(d, alarm)
        return
    if not d.facts.consented or isinstance(asking, Consenting):
        enrolment.consenting(d, event)
        return
    if isinstance(asking, Enrolling):
        enrolment.enrolling(d, event, asking)
        return
    if event.edited and _edited(d, event):
        return
    if d.facts.status is Status.LEFT:
        _left(d, text)
        return
    if (data := _typed_button(d, text)) is not None:
        _press(d, Press(event.at, data, event.ref))
        return
    if _for_open_question(d, event, text):
        return
    _anything_else(d, event, text)


def _edited(d: Desk, event: Text) -> bool:
    if answers.edited(d, event):
        return True
    if isinstance(d.asking, Confirming) and d.asking.ref == event.ref:
        d.ask(Awaiting(d.asking.measure))
        return False
    if d.asking is None:
        d.say(m.EditTooOld())
        return True
    return False


def _typed_button(d: Desk, text: str) -> str | None:
    """The data of a button of the open question whose words were typed instead of pressed."""
    wanted = plain(text)
    for label, data in _open_buttons(d.asking):
        if wanted == plain(d.facts.label(label, "")):
            return data
    return None


def _open_buttons(asking: Asking | None) -> Iterator[tuple[str, str]]:
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


def _for_open_question(d: Desk, event: Text, text: str) -> bool:
    """Give a text to the question it answers; True when it did."""
    wish = intent(text, d.words)
    match d.asking:
        case AlarmAsked() as asking if wish in (Intent.YES, Intent.NO):
            safety.alarm_answered(d, asking, wish is Intent.YES)
        case Gate(signs=False) if wish is Intent.NO and _denies_a_sign(d, text):
            safety.ask_well(d)  # "no chest pain" says neither well nor unwell: the question stands
        case Gate() as asking if wish in (Intent.YES, Intent.NO, Intent.WELL, Intent.NOT_WELL):
            # the first question asks whether one is well, the second whether there is a sign
            well = wish in (Intent.YES, Intent.WELL) if not asking.signs else wish in (Intent.NO, Intent.WELL)
            safety.gate_answered(d, asking, well)
        case Confirming() as asking if wish in (Intent.YES, Intent.NO):
            answers.confirmed(d, asking, wish is Intent.YES)
        case AskingConditions() as asking if wish in (
            Intent.SAME,
            Intent.YES,
            Intent.DIFFERENT,
            Intent.NO,
            Intent.DONE,
        ):
            same = wish in (Intent.SAME, Intent.YES)
            answers.conditions_answered(d, asking, "done" if wish is Intent.DONE else "same" if same else "differed")
        case Counting() as asking if counting.counted(d, asking, event):
            pass
        case StopwatchDone() as asking if wish in (Intent.YES, Intent.NO):
            counting.watch_answered(d, asking, wish is Intent.YES, event.ref, event.at)
        case Setting(what="early_reason") as asking if wish not in (None, *TALK) or _holds_a_reading(d, text):
            d.ask(asking.back)
            return False
        case Setting() as asking if wish in (Intent.STOP, Intent.NO) and asking.what not in SURE:
            d.say(m.KeptAsItWas())
            life.close_setting(d)
        case Setting(what="forget") if wish in (Intent.YES, Intent.NO):
            life.forget(d, wish is Intent.YES)
        case Setting(what="leave") if wish in (Intent.YES, Intent.NO):
            life.leave(d, wish is Intent.YES)
        case Setting(what=membership.LEAVE) as asking if wish in (Intent.YES, Intent.NO):
            membership.gone(d, asking, wish is Intent.YES)
            life.close_setting(d)
        case Setting(what="coach_change") if wish in (Intent.YES, Intent.NO):
            life.change_coach(d, wish is Intent.YES)
        case Setting() as asking if showing.goal_typed(d, asking, text) or life.typed_setting(d, asking, text):
            pass
        case _:
            return False
    return True


def _asked(d: Desk) -> Measure | None:
    """The measure an unnamed number belongs to."""
    match d.asking:
        case Awaiting(measure=key) | Repeating(measure=key) | Counting(measure=key) | Confirming(measure=key):
            return MEASURES.get(key)
        case Setting(back=Awaiting(measure=key)):  # a setting was opened over the question, which may be answered
            return MEASURES.get(key)
        case _:
            return None


def _denies_a_sign(d: Desk, text: str) -> bool:
    """Whether a sign is named once the word that denies it is taken away."""
    return recognise(text.partition(" ")[2], d.words) is not None


def _holds_a_reading(d: Desk, text: str) -> bool:
    return any(isinstance(a.heard, Understood) for a in answers.listen(d, text, None))


def _anything_else(d: Desk, event: Text, text: str) -> None:
    """A correction, readings, a wish, words for the coach: whatever it is, it is answered."""
    rest = correction(text, d.words)
    if rest is not None and d.state.written and not _fits_open(d, rest):
        answers.correct(d, d.state.written[-1], rest, event)
        return
    asked = _asked(d)
    wish = intent(text, d.words)
    heard = answers.listen(d, text, asked) if wish is None else ()
    understood = tuple(a for a in heard if isinstance(a.heard, Understood))
    if wish is Intent.ZONE and (town := place(text, d.words)) is not None and d.facts.find_zones(town):
        life.set_zone(d, town)
    elif wish in TALK and _talking(d):
        life.pass_on(d, text, reply=True)
    elif wish is not None:  # a wish holds a number only where one belongs ("pause until 20 March")
        _wish(d, wish, text)
    elif understood:
        if isinstance(d.asking, Confirming | Counting):  # a fresh number replaces the doubtful or counted one
            d.ask(Awaiting(d.asking.measure))
        elif isinstance(d.asking, Setting) and d.asking.what not in SURE:
            d.ask(d.asking.back)
        answers.take(d, event, understood, asked)
    elif _talking(d) and not heard:
        life.pass_on(d, text, reply=True)
    elif (
        heard and isinstance(heard[0].heard, Misunderstood) and (asked is not None or heard[0].heard.guess is not None)
    ):
        answers.not_understood(d, MEASURES[heard[0].measure], heard[0].heard, event)
    elif asked is None and answers.ask_which(d, text):
        pass
    else:
        life.not_sure(d)


def _talking(d: Desk) -> bool:
    """The coach has written lately: plain words are an answer."""
    return d.state.word_until is not None and d.now < d.state.word_until


def _fits_open(d: Desk, rest: str) -> bool:
    """Does "no, 82.4" answer a doubtful value that was just asked back?"""
    return isinstance(d.asking, Confirming) and not d.asking.replaces


def _wish(d: Desk, wish: Intent, text: str) -> None:
    match wish:
        case Intent.HELP | Intent.WHY | Intent.DONT_KNOW if isinstance(d.asking, Awaiting) and wish is not Intent.HELP:
            card(d, d.asking.measure)
        case Intent.HELP | Intent.WHY | Intent.DONT_KNOW:
            life.help_(d)
        case Intent.SKIP | Intent.NOT_SAY:
            life.skip(d)
        case Intent.NO if isinstance(d.asking, Awaiting):
            life.skip(d)
        case Intent.LATER:
            life.later(d)
        case Intent.STOP:
            life.stop(d)
        case Intent.UNDO:
            answers.undo(d)
        case Intent.COACH:
            life.word(d)
        case Intent.PAUSE:
            life.pause(d, text)
        case Intent.RESUME:
            life.resume(d)
        case Intent.TODAY | Intent.RECORD | Intent.START | Intent.CONTINUE | Intent.REPEAT:
            life.today(d)
        case Intent.PROGRESS:
            showing.progress(d)
        case Intent.GOAL:
            showing.goal(d)
        case Intent.SETTINGS:
            life.settings(d)
        case Intent.SOURCE:
            sources(d)
        case Intent.THANKS | Intent.GREETING | Intent.WELL:
            _courtesy(d, wish)
        case Intent.NOT_WELL:
            safety.unwell(d)
        case Intent.MY_DATA:
            life.my_data(d)
        case Intent.FORGET:
            life.change(d, "forget")
        case Intent.LEAVE:
            life.change(d, "leave")
        case Intent.LANGUAGE | Intent.UNITS | Intent.ZONE | Intent.SLOT:
            life.change(d, wish.value)
        case _:
            life.not_sure(d)


def _courtesy(d: Desk, wish: Intent) -> None:
    """A thank-you or a hello: answered in kind; an open question is put again."""
    said = m.Hello() if wish is Intent.GREETING else m.YouAreWelcome()
    d.say(said, *(() if life.waiting(d) else life.menu(d)))
    if isinstance(d.asking, Awaiting):
        checkin.ask(d, MEASURES[d.asking.measure])


def _left(d: Desk, text: str) -> None:
    """Somebody who left may still have their data, be forgotten, or come back through the coach."""
    match intent(text, d.words):
        case Intent.MY_DATA:
            life.my_data(d)
        case Intent.FORGET:
            life.change(d, "forget")
        case Intent.YES if isinstance(d.asking, Setting) and d.asking.what == "forget":
            life.forget(d, True)
        case _:
            d.say(m.HasLeft(d.facts.coach_name), (Choice("my_data", "set:my_data"), Choice("forget", "set:forget")))


def card(d: Desk, key: str, *, ruler: bool = False) -> None:
    """How to take a measure; the question stays open."""
    measure = MEASURES.get(key)
    if measure is None or not measure.protocol.technique:
        life.help_(d)
        return
    girth = measure.key in ("waist", "hip")
    extra = ((Choice("ruler", f"ruler:{key}"),),) if girth and not ruler else ()
    rows = checkin.buttons(d, measure)[-1:] if isinstance(d.asking, Awaiting) else ()
    timers = ((Choice("time_it", f"time:{key}"),),) if measure.protocol.timers and rows else ()
    d.say(m.Card(key, ruler), *extra, *timers, *rows)


def sources(d: Desk) -> None:
    if d.state.sources:
        d.say(m.SourceOf(d.state.sources))
    else:
        life.not_sure(d)


# --- buttons ----------------------------------------------------------------------------------------------------


def _press(d: Desk, event: Press) -> None:
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
        _left(d, "")
        return
    if not _pressed(d, event, verb, value):
        d.say(m.OldButton())
        if isinstance(d.asking, Awaiting):
            checkin.ask(d, MEASURES[d.asking.measure])


def _pressed(d: Desk, event: Press, verb: str, value: str) -> bool:
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
            counting.stopped(d, asking, event.at)
        case "watch", StopwatchDone() as asking:
            counting.watch_answered(d, asking, value == "keep", "", event.at)
        case "have", Awaiting() as asking:
            checkin.ask(d, MEASURES[asking.measure])
        case "snooze", Setting(what="snooze") as asking:
            life.snooze(d, asking, value)
        case "pause", Setting(what="pause") as asking if value in life.PAUSES:
            from datetime import timedelta

            life.pause_until(d, d.today + timedelta(days=life.PAUSES[value]))
        case "wd", Setting(what="slot") as asking if value.isdigit() and int(value) < 7:
            life.set_slot(d, asking, int(value), None)
        case "hr", Setting(what="slot") as asking if asking.detail:
            life.typed_setting(d, asking, value)
        case "zone", Setting(what="zone") if d.facts.find_zones(value):
            life.set_zone(d, value)
        case "lang", Setting(what="language"):
            life.set_language(d, value)
        case "units", Setting(what="units"):
            life.set_units(d, value)
        case "numbers", Setting(what="numbers") if value in ("shown", "coach_only", "leave_out"):
            life.set_numbers(d, value)
        case "forget", Setting(what="forget"):
            life.forget(d, value == "yes")
        case "leave", Setting(what="leave"):
            life.leave(d, value == "yes")
        case "cogone", Setting(what=membership.LEAVE) as asking:
            membership.gone(d, asking, value == "yes")
            life.close_setting(d)
        case "move", Setting(what="coach_change"):
            life.change_coach(d, value == "yes")
        case "back", Setting(what="coach_change"):
            life.come_back(d, value == "yes")
        case "goal", Setting(what="goal"):
            showing.goal_for(d, value)
        case "goaldate", Setting(what="goal_date") as asking if value.isdigit():
            showing.goal_set(d, asking, int(value))
        case "goaldrop", _:
            showing.goal_drop(d)
        case "cancel", Setting():
            d.say(m.KeptAsItWas())
            life.close_setting(d)
        case _:
            return _any_time(d, event, verb, value)
    return True


def _any_time(d: Desk, event: Press, verb: str, value: str) -> bool:
    """Buttons that fit whatever is open."""
    match verb:
        case "how" | "ruler" if value in MEASURES:
            card(d, value, ruler=verb == "ruler")
        case "time" if value in MEASURES and _asked(d) is MEASURES[value]:
            counting.offer(d, MEASURES[value])
        case "count" if (key := value.partition(":")[0]) in MEASURES and _asked(d) is MEASURES[key]:
            seconds = value.partition(":")[2]
            counting.start(d, MEASURES[key], int(seconds) if seconds.isdigit() else 0, event.at)
        case "skip" if isinstance(d.asking, Awaiting):
            life.skip(d)
        case "later" if isinstance(d.asking, Awaiting):
            life.later(d)
        case "begin" if d.facts.status is Status.ACTIVE and d.state.day is None:
            enrolment.begin(d, value)
        case "word":
            life.word(d)
        case "src":
            sources(d)
        case "which" if value.partition(":")[0] in MEASURES and _asked(d) is None:
            answers.named(d, value, event)
        case "resume":
            life.resume(d)
        case "pressure" if d.state.pressure is not None:
            pressure.stop(d)
        case "chart":
            showing.progress(d, value)
        case "early" if value in ("energy", "waist") and d.asking is None:
            d.become(agenda=())
            checkin.ask(d, MEASURES[value])
        case "early" if value == "walk":
            d.say(m.WalkInstead())
        case "cohorts":
            membership.mine(d)
        case "coleave":
            membership.leave(d, value)
        case "set":
            _setting(d, value)
        case _:
            return False
    return True


def _setting(d: Desk, what: str) -> None:
    match what:
        case "today":
            life.today(d)
        case "progress":
            showing.progress(d)
        case "settings":
            life.settings(d)
        case "my_data":
            life.my_data(d)
        case "pause":
            life.pause(d)
        case "goal":
            showing.goal(d)
        case "slot" | "zone" | "language" | "units" | "numbers" | "forget" | "leave":
            life.change(d, what)
        case _:
            life.not_sure(d)


# --- commands and timers ----------------------------------------------------------------------------------------


def _command(d: Desk, event: Command) -> None:
    if event.name == "start":
        _start(d, event)
        return
    if not d.facts.consented:
        enrolment.ask_consent(d, d.facts.name, d.facts.coach_name)
        return
    if event.name == "forget":
        life.change(d, "forget")
        return
    if isinstance(d.asking, Enrolling):
        enrolment.ask_question(d, d.asking.question, d.asking.chosen)
        return
    match event.name:
        case "help":
            life.help_(d)
        case "settings":
            life.settings(d)
        case "today" | "record":
            if event.argument:
                _anything_else(d, Text(event.at, event.argument, event.ref), event.argument)
            else:
                life.today(d)
        case "progress":
            showing.progress(d, event.argument.strip())
        case "goal":
            showing.goal(d)
        case "pause":
            life.pause(d, event.argument)
        case "undo":
            answers.undo(d)
        case "coach":
            life.word(d, event.argument)
        case "mydata":
            life.my_data(d)
        case "cohort":
            membership.mine(d)
        case _:
            d.say(m.NotForThisRole())


def _start(d: Desk, event: Command) -> None:
    """A link was opened, or somebody pressed Start again."""
    if d.facts.invitation is not None:
        enrolment.open_invitation(d, event)
    elif event.argument:
        d.say(m.Stranger())
    elif not d.facts.consented:
        enrolment.ask_consent(d, d.facts.name, d.facts.coach_name)
    elif isinstance(d.asking, Enrolling):
        enrolment.ask_question(d, d.asking.question, d.asking.chosen)
    elif d.facts.status is Status.LEFT:
        _left(d, "")
    else:
        life.help_(d)


def _woke(d: Desk, event: Woke) -> None:
    match event.purpose:
        case "follow_up":
            life.follow_up(d, event.mark)
        case "snooze":
            life.snoozed(d)
        case "pressure":
            pressure.prompted(d, event)
        case "pressure_end":
            pressure.week_over(d, event.at)
        case "resume":
            d.do(Learn("status", Status.ACTIVE), Learn("paused_until", None))
            d.say(m.Resumed(d.next_slot()))
        case _:
            pass
