"""Safety first: danger signs at any point, the gate before function tests, severe readings.

Recognition errs on the side of caution; replies give public guidance, never a diagnosis; the coach is notified at once.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import datetime, time, timedelta

from core import schedule
from core.care import Status
from core.client import Caution
from core.dialogue.client import check_in, needed
from core.dialogue.client import messages as m
from core.dialogue.client.effects import (
    NEXT_MORNING,
    SIGN_UNANSWERED,
    Amend,
    CancelTimer,
    ChangeClient,
    Lower,
    NotifyCoach,
    Raise,
    SetTimer,
)
from core.dialogue.client.messages_to_coach import ClientIll, SignAnswered
from core.dialogue.client.readings import by_key, raise_flags
from core.dialogue.client.states import (
    Alarm,
    AlarmAsked,
    Asking,
    Awaiting,
    Confirming,
    Consenting,
    Counting,
    Enrolling,
    Gate,
    Repeating,
    StopwatchDone,
)
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice
from core.language import Level
from core.language.after_alarm import Later
from core.language.danger_signs import Answer, Sighting, When, Who
from core.language.signs import AMISS
from core.measures import MEASURES
from core.measures.measure import AlarmKind, Measure, MeasureKind, ProfileFact, ReadingAlarm, Understood
from core.reading import Reading
from core.references.helplines import Topic, helpline
from core.watching.flags import Code, Ended, Flag, flag, in_short, worded

REPEATED_WITHIN = timedelta(hours=2)  # ours: a second reading within this time is the requested repeat


# --- words ------------------------------------------------------------------------------------------------------


MORNING = time(9)  # ours, when an alarm is followed up
SOONEST = timedelta(hours=6)  # ours: somebody who wrote at five in the morning is asked on the same day
STANDS_FOR = timedelta(hours=48)  # ours: how long "better" is taken to be about the alarm
UNANSWERED_AFTER = timedelta(minutes=15)  # ours: after this the coach is told that the question is unanswered
GRAVITY = (Level.TALK, Level.STOP_REST, Level.SAME_DAY, Level.EMERGENCY)
A_CONDITION = frozenset({"chest_pain", "stroke_signs", "palpitations"})  # long ago, these speak for asking a doctor


def answered(answer: str) -> tuple[CancelTimer, Lower]:
    """Effects, once the question is answered. answer: the data of one of ALARM_ANSWERS."""
    lower = Lower(Code.SIGN_UNANSWERED, ended=Ended.ANSWER, after=(("answer", answer),))
    return CancelTimer(SIGN_UNANSWERED), lower


def alarmed(d: ClientStep, alarm: Sighting) -> None:
    """A sign was named. If certain, say what to do; if perhaps past, or of somebody elsewhere, ask once."""
    if not alarm.certain:
        ask_alarm(d, alarm.sign, alarm.level, now=_perhaps_now(alarm))
    elif alarm.who is Who.WITH_ME:
        act_nearby(d, alarm.sign, alarm.level)
    else:
        give_advice(d, alarm.sign, alarm.level)


def _perhaps_now(alarm: Sighting) -> bool:
    return alarm.when is not When.LONG_AGO and alarm.who in (Who.ME, Who.WITH_ME)


def ask_alarm(d: ClientStep, sign: str, level: Level, *, now: bool) -> None:
    """Ask whether it is happening now, and to whom; if it stays unanswered for a while, notify the coach.

    now: it may well be; then the question about an emergency says whom to call meanwhile.
    """
    if isinstance(d.asking, AlarmAsked):
        d.ask(replace(d.asking, sign=sign, level=level.value, perhaps_now=now))
    else:
        d.ask(AlarmAsked(sign, level.value, d.asking, perhaps_now=now))
    d.do(SetTimer(SIGN_UNANSWERED, d.now + UNANSWERED_AFTER))
    say_question(d, sign)


def asked_in_words(d: ClientStep, before: AlarmAsked | None, text: str) -> None:
    """The question keeps the words in which its sign was named. before: the question that stood before this text."""
    if isinstance(asking := d.asking, AlarmAsked):
        same = before is not None and before.sign == asking.sign
        d.ask(replace(asking, words=before.words if before and same else in_short(text)))


def say_question(d: ClientStep, sign: str) -> None:
    asking = d.asking
    perhaps_now = isinstance(asking, AlarmAsked) and asking.perhaps_now and asking.level == Level.EMERGENCY
    urgent = perhaps_now and sign != AMISS
    d.say(m.AskAlarm(sign, urgent, d.emergency_number if urgent else ""), *ALARM_ANSWERS)


def graver(asking: AlarmAsked, alarm: Sighting) -> bool:
    """Whether another sign is named, and a graver one than is being asked about."""
    return alarm.sign != asking.sign and GRAVITY.index(alarm.level) > GRAVITY.index(Level(asking.level))


def heard_while_asked(d: ClientStep, asking: AlarmAsked, alarm: Sighting) -> None:
    """A second, uncertain sign while the first is being asked about: ask about the more serious one, and close
    nothing."""
    graver = max(Level(asking.level), alarm.level, key=GRAVITY.index)
    now = asking.perhaps_now or _perhaps_now(alarm)
    ask_alarm(d, alarm.sign if graver is alarm.level else asking.sign, graver, now=now)


def give_advice(d: ClientStep, sign: str, urgency: Level, said: Later | None = None) -> None:
    """Give advice for a sign and notify the coach; today's function tests are cancelled. said: what the client now says
    of an earlier alarm."""
    _say_advice(d, sign, urgency)
    _alarm_raised(d, Alarm(sign, urgency.value, d.now), said)


def _say_advice(d: ClientStep, sign: str, urgency: Level) -> None:
    match urgency:
        case Level.EMERGENCY | Level.TALK if sign == "despair":
            line = helpline(Topic.CRISIS, d.facts.country)
            found = (line.name, line.number, line.site) if line is not None else ("", "", "")
            d.say(m.Despair(d.emergency_number, *found))
        case Level.EMERGENCY:
            d.say(m.Emergency(sign, d.emergency_number))
        case Level.SAME_DAY:
            d.say(m.SameDay(sign, d.emergency_number))
        case Level.STOP_REST:
            d.say(m.StopAndRest(sign, d.emergency_number))
        case _:
            line = helpline(Topic.EATING, d.facts.country)
            found_here = (line.name, line.site) if line is not None else ("", "")
            word = Choice("word_to_coach", "word", d.facts.coach_name)
            d.say(m.EatingWorry(d.facts.coach_name, *found_here), (word,))


def _alarm_raised(d: ClientStep, alarm: Alarm, said: Later | None) -> None:
    """Notify the coach, and follow it up the next morning; once, whatever comes of that."""
    d.do(*answered("nearby" if alarm.nearby else "me"), Raise(_flag_of(d, alarm, said)))
    if said is None:
        d.become(alarm=alarm)
        if alarm.sign != "eating_worry":
            d.do(SetTimer(NEXT_MORNING, _next_morning(d)))
    d.say_coach_told()
    call_off_tests(d)


def _flag_of(d: ClientStep, alarm: Alarm, said: Later | None) -> Flag:
    about = {"about": "nearby"} if alarm.nearby else {}
    later = {"now": said.value} if said is not None else {}
    return flag(Code.RED_FLAG_WORDS, d.now, level=alarm.level, sign=alarm.sign, **about, **later)


def _next_morning(d: ClientStep) -> datetime:
    """The first morning of the client's that is some hours away."""
    soonest = d.now + SOONEST
    day = d.facts.local(soonest).date()
    at = schedule.instant(day, MORNING, d.facts.zone)
    return at if at >= soonest else schedule.instant(day + timedelta(days=1), MORNING, d.facts.zone)


def act_nearby(d: ClientStep, sign: str, urgency: Level, said: Later | None = None) -> None:
    """Somebody with the client needs help: say what to do for them; the coach is told that it is not the client."""
    _say_advice_nearby(d, sign, urgency)
    _alarm_raised(d, Alarm(sign, urgency.value, d.now, nearby=True), said)


def _say_advice_nearby(d: ClientStep, sign: str, urgency: Level) -> None:
    number = d.emergency_number
    d.say(m.EmergencyNearby(sign, number) if urgency is Level.EMERGENCY else m.AdviceNearby(sign, number))


# --- after an alarm ---------------------------------------------------------------------------------------------


def standing(d: ClientStep) -> Alarm | None:
    """The alarm that the client has not said to be over."""
    alarm = d.state.alarm
    return alarm if alarm is not None and d.now - alarm.since < STANDS_FOR else None


def ask_how_it_is(d: ClientStep, late_by: timedelta) -> None:
    """The next morning: how are they? Asked once, and not at all if we were away for so long that it would be odd."""
    alarm = standing(d)
    if alarm is None or not d.facts.consented or d.facts.status is Status.LEFT or late_by > SOONEST:
        return
    d.say(m.HowIsItNow(alarm.sign, alarm.nearby), tuple(Choice(f"now_{x}", f"now:{x}") for x in ASKED_LATER))


ASKED_LATER = (Later.BETTER, Later.SAME, Later.WORSE)


def said_later(d: ClientStep, said: Later) -> None:
    """What the client says of an alarm that stands: the coach hears of it, and the advice is given again if need be."""
    alarm = standing(d)
    if alarm is None:
        d.say(m.AlarmClosed(d.emergency_number))
        return
    if said in (Later.SAME, Later.WORSE):
        at = GRAVITY.index(Level(alarm.level)) + (said is Later.WORSE)
        level = GRAVITY[min(at, len(GRAVITY) - 1)] if alarm.level != Level.TALK else Level.TALK
        (act_nearby if alarm.nearby else give_advice)(d, alarm.sign, level, said)
        d.become(alarm=replace(alarm, level=level.value))
        return
    d.become(alarm=None)
    d.do(CancelTimer(NEXT_MORNING), Raise(_flag_of(d, alarm, said)))
    match said:
        case Later.OVER:
            d.say(m.AlarmOver(alarm.sign, d.emergency_number))
        case Later.BETTER:
            d.say(m.AlarmBetter(alarm.sign, d.emergency_number))
        case _:
            d.say(m.NotMeant(d.emergency_number))
    d.say_coach_told()


def old_answer(d: ClientStep, answer: str) -> None:
    """A button of an alarm question that is closed. Somebody who presses "to me, now" is heard, whatever is open."""
    alarm = standing(d)
    sign, level = (alarm.sign, Level(alarm.level)) if alarm is not None else ("call_for_help", Level.EMERGENCY)
    nearby = answer == "nearby"
    twice = alarm is not None and alarm.nearby is nearby and d.now - alarm.since < UNANSWERED_AFTER
    match answer:
        case "me" | "yes" | "nearby" if twice:  # a second tap: the coach has heard of it
            (_say_advice_nearby if nearby else _say_advice)(d, sign, level)
        case "me" | "yes":
            give_advice(d, sign, level)
        case "nearby":
            act_nearby(d, sign, level)
        case "over" | "none" | "no" if isinstance(d.asking, AlarmAsked):
            say_question(d, d.asking.sign)  # it may not be said of this sign
        case "over" if alarm is not None:
            said_later(d, Later.OVER)
        case "none" | "no" if alarm is not None:
            said_later(d, Later.NOT_MEANT)
        case _:
            d.say(m.AlarmClosed(d.emergency_number))


def still_unanswered(d: ClientStep) -> None:
    """The question has been unanswered for a while: notify the coach. It stays open."""
    if isinstance(asking := d.asking, AlarmAsked):
        found = flag(Code.SIGN_UNANSWERED, d.now, level=asking.level, sign=asking.sign)
        d.do(Raise(worded(found, asking.words) if asking.words else found))


def past_illness(d: ClientStep, sign: str) -> None:
    """A past illness mentioned during enrolment is a caution, not an alarm."""
    if sign in A_CONDITION:
        cautions = d.facts.profile.cautions | {Caution.HEART_CONDITION}
        d.do(ChangeClient("cautions", cautions))
        d.facts = replace(d.facts, profile=replace(d.facts.profile, cautions=cautions))
    d.say(m.PastIllness(sign))


def _must_be_answered(asking: Asking | None) -> bool:
    """Whether an alarm leaves the question open: of somebody arriving, and the one that keeps them safe."""
    return isinstance(asking, Enrolling) and (not asking.measure or asking.question == ProfileFact.CAUTIONS)


def call_off_tests(d: ClientStep) -> None:
    """No function test today; the open question is dropped, other questions wait until the client continues."""
    resting = tuple(k for k in d.state.agenda if MEASURES[k].kind is not MeasureKind.FUNCTION)
    arriving = isinstance(d.asking, Consenting) or _must_be_answered(
        d.asking
    )  # without their question they would be stuck
    d.become(asking=d.asking if arriving else None, agenda=resting, gate_passed=None)


# The meaning of each button and each typed answer to the question.
ALARM_ANSWERS = (
    (Choice("alarm_me", "alarm:me"), Choice("alarm_nearby", "alarm:nearby")),
    (Choice("alarm_over", "alarm:over"), Choice("alarm_none", "alarm:none")),
)
TYPED = {
    Answer.YES: "me",
    Answer.HESITANT: "me",
    Answer.OTHER_PERSON: "nearby",
    Answer.OVER: "over",
    Answer.NO: "none",
    Answer.NOT_A_SIGN: "none",
}


def alarm_answered(d: ClientStep, asking: AlarmAsked, answer: str) -> None:
    """answer: the data of one of ALARM_ANSWERS; anything else repeats the question."""
    level = Level(asking.level)
    match answer:
        case "me" | "yes":  # "yes" and "no" are on buttons still in old messages
            give_advice(d, asking.sign, level)
        case "nearby":
            act_nearby(d, asking.sign, level)
        case "over":
            over = flag(Code.RED_FLAG_WORDS, d.now, level=level.value, sign=asking.sign, about="over")
            d.do(*answered("over"), Raise(over))
            d.say(m.AlarmOver(asking.sign, d.emergency_number))
            d.say_coach_told()
            call_off_tests(d)
        case "none" | "no":
            d.do(*answered("none"))
            if any(f.code == Code.SIGN_UNANSWERED for f in d.facts.flags):  # the coach was told that it stood
                said = SignAnswered(d.facts.client_id, d.facts.name, asking.sign)
                d.do(NotifyCoach(said))
            d.say(m.StoodDown())
            _back_to(d, asking)
        case _:
            ask_alarm(d, asking.sign, level, now=asking.perhaps_now)


def _back_to(d: ClientStep, asking: AlarmAsked) -> None:
    d.ask(asking.back)
    match asking.back:
        case Awaiting(measure=key):
            check_in.ask(d, MEASURES[key])
        case Gate(signs=signs):
            (ask_signs if signs else ask_well)(d)
        case Enrolling() as fact:
            needed.say_question(d, fact)
        case _:
            pass


# --- the gate ---------------------------------------------------------------------------------------------------


def ask_well(d: ClientStep) -> None:
    d.ask(Gate())
    d.say(m.GateWell(), (Choice("well_yes", "gate:well"), Choice("well_no", "gate:unwell")))


def ask_signs(d: ClientStep) -> None:
    d.ask(Gate(signs=True))
    d.say(m.GateSigns(), (Choice("signs_none", "gate:none"), Choice("signs_some", "gate:some")))


def _stopped(d: ClientStep, sign: str, *row: Choice) -> None:
    d.do(Raise(flag(Code.SYMPTOM_REPORTED, d.now, sign=sign)))
    d.say(m.GateStopped(d.emergency_number, d.facts.told, d.told_at()), *((row,) if row else ()))


def gate_answered(d: ClientStep, asking: Gate, fine: bool) -> None:
    """Both answers must be fine; else no test today, plain advice, and the coach is notified."""
    if not fine:
        _stopped(d, "gate_signs" if asking.signs else "gate_unwell")
        call_off_tests(d)
        check_in.ask_next(d, quietly=True)
    elif asking.signs:
        d.become(gate_passed=d.today, asking=None)
        check_in.ask_next(d)
    else:
        ask_signs(d)


# --- severe readings --------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Said:
    """Messages to a client about an alarm. Each is created with the emergency number.

    repeat: take it again after rest. still: it alarms again. settled: it no longer does; None if the usual reply to a
    reading is enough. once: for an alarm that is not repeated.
    """

    repeat: Callable[[str], object] | None = None
    still: Callable[[str], object] | None = None
    settled: Callable[[str], object] | None = None
    once: Callable[[str], object] | None = None


# By the kind of alarm, and the caution that set its limit if it is not everybody's.
WORDS: dict[tuple[AlarmKind, Caution | None], Said] = {
    (AlarmKind.SEVERE_PRESSURE, None): Said(m.PressureRepeat, m.PressureSevere, lambda number: m.PressureSettled()),
    (AlarmKind.SEVERE_PRESSURE, Caution.PREGNANCY): Said(
        m.PregnancyPressureRepeat, m.PregnancyPressureSevere, lambda number: m.PregnancyPressureSettled()
    ),
    (AlarmKind.LOW_PRESSURE, None): Said(once=m.PressureLow),
    (AlarmKind.FAST_PULSE, None): Said(m.PulseRepeat, m.PulseAdvice),
    (AlarmKind.SLOW_PULSE, None): Said(m.PulseRepeat, m.PulseAdvice),
}


def cannot_wait(d: ClientStep, measure: Measure, understood: Understood, meant: Understood | None) -> bool:
    """A value that alarms and could be real is stored and repeated after rest; it never waits for "are you sure?".

    meant: the more likely meaning. It is confirmed first, unless it would alarm as well.
    """
    if meant is not None and not _alarms(d, measure, meant):
        return False
    return _alarms(d, measure, understood)


def _alarms(d: ClientStep, measure: Measure, understood: Understood) -> bool:
    """Whether a value not yet stored could be real and must be taken again."""
    bounds = measure.bounds
    if understood.value not in bounds.possible:
        return False
    if measure.series and (understood.second is None or understood.second >= understood.value):
        return False  # not a pressure: the lower number is missing, or not lower
    if (
        understood.second is not None
        and bounds.second_possible is not None
        and understood.second not in bounds.second_possible
    ):
        return False
    reading = Reading(measure.key, understood.value, d.now, second=understood.second, window=understood.window)
    return alarming(d, measure, reading) is not None


def alarming(d: ClientStep, measure: Measure, reading: Reading) -> ReadingAlarm | None:
    """Why this client's reading must be taken again after rest; None if it need not be."""
    found = measure.alarm(reading, d.facts.profile)
    return found if found is not None and found.repeat else None


def after_reading(d: ClientStep, measure: Measure, reading: Reading, replaced: Reading | None) -> bool:
    """Respond to an alarming reading at once; True if that takes over the conversation.

    replaced: the earlier version, if this reading corrects it. A correction is not a repeat.
    """
    alarm = measure.alarm(reading, d.facts.profile)
    first = d.asking.first if isinstance(d.asking, Repeating) and d.asking.measure == measure.key else None
    if alarm is not None and alarm.repeat:
        said = WORDS[alarm.kind, alarm.caution]
        raise_flags(d, measure, reading)
        repeats = first not in (None, reading.key) or _alarm_before(d, measure, reading) is not None
        if said.repeat is not None and not repeats:
            d.ask(Repeating(measure.key, reading.key))
            d.say(said.repeat(d.emergency_number), (_again(measure),))
            return True
        d.ask(None)
        if said.still is not None:
            d.say(said.still(d.emergency_number))
        d.say_coach_told()
        if not measure.series:
            check_in.ask_next(d, quietly=True)
        return True
    if first == reading.key:  # the alarm was a typo: nothing is left to repeat
        d.ask(Awaiting(measure.key) if d.state.pressure is not None and measure.series else None)
    elif first is not None and replaced is None:
        d.ask(None)
        if (settled := _settled(d, measure, first)) is not None:
            d.say(settled)
            raise_flags(d, measure, reading)
            return True
    if alarm is not None and (once := WORDS[alarm.kind, alarm.caution].once) is not None:
        d.say(once(d.emergency_number), (Choice("feel_dizzy", f"low:{reading.key}"),))
    return False


def ask_to_repeat(d: ClientStep, asking: Repeating) -> None:
    """Ask once more for the repeat after rest."""
    reading = by_key(d, asking.first)
    alarm = alarming(d, MEASURES[reading.measure], reading) if reading is not None else None
    if reading is not None and alarm is not None and (again := WORDS[alarm.kind, alarm.caution].repeat) is not None:
        d.say(again(d.emergency_number), (_again(MEASURES[reading.measure]),))


def _settled(d: ClientStep, measure: Measure, first: str) -> object | None:
    """The message about a repeat that no longer alarms, depending on the reading it repeats."""
    reading = by_key(d, first)
    alarm = alarming(d, measure, reading) if reading is not None else None
    words = WORDS[alarm.kind, alarm.caution].settled if alarm is not None else None
    return words(d.emergency_number) if words is not None else None


def _alarm_before(d: ClientStep, measure: Measure, reading: Reading) -> ReadingAlarm | None:
    """The alarm this reading repeats: that of the preceding reading, if recent enough."""
    before = [r for r in d.facts.of(measure.key) if r.key != reading.key and r.taken_at <= reading.taken_at]
    if not before or reading.taken_at - before[-1].taken_at >= REPEATED_WITHIN:
        return None
    return alarming(d, measure, before[-1])


def _again(measure: Measure) -> Choice:
    """The button under the request: a timed count if there is one, else how to take it."""
    seconds = measure.repeat.count if measure.repeat is not None else None
    if seconds is None:
        return Choice("how", f"how:{measure.key}")
    return Choice("time_it", f"count:{measure.key}:{seconds}")


def ill(d: ClientStep) -> None:
    """ "I have the flu": rest, and the coach hears of it as news. Somebody about to take a test is asked for more."""
    if in_a_test(d.asking):
        unwell(d)
        return
    d.do(NotifyCoach(ClientIll(d.facts.client_id, d.facts.name)))
    rows = ((Choice("pause", "set:pause"), Choice("word_to_coach", "word", d.facts.coach_name)),)
    d.say(m.RestWhileIll(d.emergency_number, d.facts.told), *rows)
    call_off_tests(d)


def in_a_test(asking: Asking | None) -> bool:
    """Whether a function test is about to be taken, or is being taken."""
    match asking:
        case Gate():
            return True
        case Awaiting(measure=key) | Counting(measure=key) | StopwatchDone(measure=key) | Confirming(measure=key):
            return key in MEASURES and MEASURES[key].kind is MeasureKind.FUNCTION
        case _:
            return False


def unwell(d: ClientStep) -> None:
    """ "I do not feel well": no test today, ask about danger signs, and postpone the rest."""
    _stopped(d, "gate_unwell", Choice("word_to_coach", "word", d.facts.coach_name))
    call_off_tests(d)


def dizzy_with_low_pressure(d: ClientStep, key: str) -> bool:
    """A low reading matters with dizziness or fainting: advice for today, and the coach is notified. False: unknown
    key."""
    reading = by_key(d, key)
    if reading is None:
        return False
    measure = MEASURES[reading.measure]
    alarm = measure.alarm(reading, d.facts.profile)
    if alarm is None or WORDS[alarm.kind, alarm.caution].once is None:
        return False
    noted = replace(reading.conditions, notes=reading.conditions.notes | {"dizziness"})
    reading = replace(reading, conditions=noted)
    d.do(Amend(key, reading))
    raise_flags(d, measure, reading)
    d.say(m.SameDay("dizzy", d.emergency_number))
    d.say_coach_told()
    return True
