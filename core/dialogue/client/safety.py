"""Safety first: red-flag words at any point, the gate before function tests, severe readings.

Recognition errs to caution, names no diagnosis, says what public guidance says, and tells the coach at once.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from decimal import Decimal

from core.dialogue.client import check_in
from core.dialogue.client import messages as m
from core.dialogue.client.effects import Amend, Raise
from core.dialogue.client.readings import by_key, raise_flags
from core.dialogue.client.states import AlarmAsked, Awaiting, Gate, Repeating
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice
from core.language import Level
from core.language.danger_signs import Sighting
from core.measures import MEASURES
from core.measures.home_bp_series import Level as PressureLevel
from core.measures.home_bp_series import level
from core.measures.measure import Kind, Measure, Understood
from core.reading import Reading
from core.watching.flags import Code, flag

REPEATED_WITHIN = timedelta(hours=2)  # ours: a second reading this soon is the repeat we asked for
PULSE_HIGH, PULSE_LOW = Decimal(120), Decimal(40)  # "over 120 or under 40": body.md 3.1, NHS-derived page


# --- words ------------------------------------------------------------------------------------------------------


def alarmed(d: ClientStep, alarm: Sighting) -> None:
    """A sign was named. Sure: say what to do. Perhaps past, or another person's: ask once."""
    if not alarm.certain:
        back = d.asking if not isinstance(d.asking, AlarmAsked) else d.asking.back
        d.ask(AlarmAsked(alarm.sign, alarm.level.value, back))
        d.say(m.AskAlarm(alarm.sign), (Choice("alarm_yes", "alarm:yes"), Choice("alarm_no", "alarm:no")))
        return
    act(d, alarm.sign, alarm.level)


def act(d: ClientStep, sign: str, urgency: Level) -> None:
    """Advice for a sign, the coach told; function tests of today are off."""
    match urgency:
        case Level.EMERGENCY | Level.TALK if sign == "despair":
            d.say(m.Despair(d.emergency_number))
        case Level.EMERGENCY:
            d.say(m.Emergency(sign, d.emergency_number))
        case Level.SAME_DAY:
            d.say(m.SameDay(sign, d.emergency_number))
        case Level.STOP_REST:
            d.say(m.StopAndRest(sign, d.emergency_number))
        case _:
            d.say(m.EatingWorry(d.facts.coach_name), (Choice("word_to_coach", "word", d.facts.coach_name),))
    d.do(Raise(flag(Code.RED_FLAG_WORDS, d.now, level=urgency.value, sign=sign)))
    d.say(m.CoachTold(d.facts.coach_name))
    call_off_tests(d)


def call_off_tests(d: ClientStep) -> None:
    """No function test today; the open question is dropped, other questions wait for a plain word."""
    resting = tuple(k for k in d.state.agenda if MEASURES[k].kind is not Kind.FUNCTION)
    d.become(asking=None, agenda=resting, gate_passed=None)


def alarm_answered(d: ClientStep, asking: AlarmAsked, now_yes: bool) -> None:
    if now_yes:
        act(d, asking.sign, Level(asking.level))
        return
    d.say(m.StoodDown())
    d.ask(asking.back)
    match asking.back:
        case Awaiting(measure=key):
            check_in.ask(d, MEASURES[key])
        case Gate(signs=signs):
            (ask_signs if signs else ask_well)(d)
        case _:
            pass


# --- the gate ---------------------------------------------------------------------------------------------------


def ask_well(d: ClientStep) -> None:
    d.ask(Gate())
    d.say(m.GateWell(), (Choice("well_yes", "gate:well"), Choice("well_no", "gate:unwell")))


def ask_signs(d: ClientStep) -> None:
    d.ask(Gate(signs=True))
    d.say(m.GateSigns(), (Choice("signs_none", "gate:none"), Choice("signs_some", "gate:some")))


def gate_answered(d: ClientStep, asking: Gate, fine: bool) -> None:
    """Both answers must be fine; else no test today, plain advice, and the coach is told."""
    if not fine:
        d.say(m.GateStopped(d.emergency_number, d.facts.coach_name))
        d.do(Raise(flag(Code.SYMPTOM_REPORTED, d.now, sign="gate_signs" if asking.signs else "gate_unwell")))
        call_off_tests(d)
        check_in.ask_next(d, quietly=True)
    elif asking.signs:
        d.become(gate_passed=d.today, asking=None)
        check_in.ask_next(d)
    else:
        ask_signs(d)


# --- severe readings --------------------------------------------------------------------------------------------


def cannot_wait(measure: Measure, heard: Understood) -> bool:
    """A severe value that could be real is kept and repeated after rest; it never waits behind "are you sure?"."""
    bounds = measure.bounds
    if heard.value not in bounds.possible:
        return False
    if measure.key == "blood_pressure":
        low = heard.second
        if low is None or low >= heard.value or (bounds.second_possible and low not in bounds.second_possible):
            return False
    return severe(measure, heard.value, heard.second)


def severe(measure: Measure, value: Decimal, second: Decimal | None) -> bool:
    """Whether a value is one of those that are repeated after rest."""
    if measure.key == "blood_pressure":
        return second is not None and level(value, second) is PressureLevel.SEVERE
    return measure.key == "resting_heart_rate" and not PULSE_LOW <= value <= PULSE_HIGH


def after_reading(d: ClientStep, measure: Measure, reading: Reading) -> bool:
    """Deal with a severe pressure or pulse at once; True when the conversation now belongs to it."""
    if measure.key == "blood_pressure":
        return _pressure(d, reading)
    if measure.key == "resting_heart_rate":
        return _pulse(d, reading)
    return False


def _pressure(d: ClientStep, reading: Reading) -> bool:
    found = level(reading.value, reading.second or Decimal(0))
    repeating = isinstance(d.asking, Repeating) and d.asking.measure == "blood_pressure"
    if found is PressureLevel.SEVERE:
        if not repeating:
            raise_flags(d, MEASURES["blood_pressure"], reading)
            d.ask(Repeating("blood_pressure", reading.key))
            d.say(m.PressureRepeat(d.emergency_number), (Choice("how", "how:blood_pressure"),))
            return True
        raise_flags(d, MEASURES["blood_pressure"], reading)
        d.ask(None)
        d.say(m.PressureSevere(d.emergency_number))
        d.say(m.CoachTold(d.facts.coach_name))
        return True
    if repeating:
        d.ask(None)
        d.say(m.PressureSettled())
        raise_flags(d, MEASURES["blood_pressure"], reading)
        return True
    if found is PressureLevel.LOW:
        d.say(m.PressureLow(d.emergency_number), (Choice("feel_dizzy", f"low:{reading.key}"),))
    return False


def _pulse(d: ClientStep, reading: Reading) -> bool:
    """The second in a row is not asked for again, however it was counted."""
    pulse = MEASURES["resting_heart_rate"]
    if severe(pulse, reading.value, None):
        repeating = any(
            r.key != reading.key and severe(pulse, r.value, None) and reading.taken_at - r.taken_at < REPEATED_WITHIN
            for r in d.facts.of("resting_heart_rate")
        )
        raise_flags(d, MEASURES["resting_heart_rate"], reading)
        if not repeating:
            d.ask(Repeating("resting_heart_rate", reading.key))
            d.say(m.PulseRepeat(d.emergency_number), (Choice("time_it", "count:resting_heart_rate:60"),))
            return True
        d.ask(None)
        d.say(m.PulseAdvice(d.emergency_number))
        d.say(m.CoachTold(d.facts.coach_name))
        check_in.ask_next(d, quietly=True)
        return True
    return False


def unwell(d: ClientStep) -> None:
    """ "I do not feel well": no test today, ask about signs, and leave the rest for another day."""
    d.say(m.GateStopped(d.emergency_number, d.facts.coach_name), (Choice("word_to_coach", "word", d.facts.coach_name),))
    d.do(Raise(flag(Code.SYMPTOM_REPORTED, d.now, sign="gate_unwell")))
    call_off_tests(d)


def dizzy_with_low_pressure(d: ClientStep, key: str) -> bool:
    """A low reading matters with dizziness or fainting: advice for today, and the coach is told. False: unknown key."""
    reading = by_key(d, key)
    if reading is None or reading.measure != "blood_pressure":
        return False
    noted = replace(reading.conditions, notes=reading.conditions.notes | {"dizziness"})
    reading = replace(reading, conditions=noted)
    d.do(Amend(key, reading))
    raise_flags(d, MEASURES["blood_pressure"], reading)
    d.say(m.SameDay("dizzy", d.emergency_number))
    d.say(m.CoachTold(d.facts.coach_name))
    return True
