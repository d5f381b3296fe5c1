"""Asking for a measure: one sentence each, and an example in the client's own units."""

from __future__ import annotations

from decimal import Decimal

from bot.rendering.phrases import names
from bot.rendering.voice import N_, Html, Voice
from core.measures import MEASURES
from core.quantity import Amount, Unit

D = Decimal

EXAMPLES: dict[Unit, Decimal] = {
    Unit.KILOGRAM: D("71.5"),
    Unit.POUND: D(157),
    Unit.STONE: D(11) + D(4) / 14,
    Unit.CENTIMETRE: D("84.5"),
    Unit.INCH: D("33.5"),
    Unit.METRE: D(320),
    Unit.FOOT: D(1050),
    Unit.SECOND: D("11.4"),
    Unit.MINUTE: D(90),
    Unit.BEATS_PER_MINUTE: D(68),
    Unit.REPETITION: D(11),
    Unit.STEP: D(84),
    Unit.POINT: D(6),
    Unit.DAY: D(2),
    Unit.SESSION: D(3),
    Unit.METRE_PER_SECOND: D("1.1"),
}
EXAMPLES_OF: dict[tuple[str, Unit], Decimal] = {
    ("height", Unit.CENTIMETRE): D(168),
    ("height", Unit.METRE): D("1.68"),
    ("height", Unit.INCH): D(66),
    ("height", Unit.FOOT): D("5.5"),
    ("hip", Unit.CENTIMETRE): D("101.5"),
    ("hip", Unit.INCH): D(40),
    ("gait_speed_4m", Unit.SECOND): D("4.2"),
    ("four_stage_balance", Unit.SECOND): D(32),
    ("one_leg_stance", Unit.SECOND): D(21),
    ("walk_mile", Unit.MINUTE): D("17.5"),
}

ASK: dict[str, str] = {
    "weight": N_("What is your weight today? Send it like this: {example}."),
    "height": N_("How tall are you? Send it like this: {example}."),
    "waist": N_("What does the tape say around your waist? Send it like this: {example}."),
    "hip": N_("What does the tape say around your hips, at the widest part? Send it like this: {example}."),
    "resting_heart_rate": N_(
        "What is your pulse at rest? Sit still for 5 minutes first. Send the beats in one minute, like this: {example}."
    ),
    "blood_pressure": N_("What is your blood pressure? Send both numbers, like this: {example}."),
    "energy": N_("How much energy do you have today, from 0 to 10? 10 is the most. A higher number is better."),
    "own_question": N_("Your own question: what number fits today, from 0 to 10?"),
    "pain": N_("How much pain did you have this week, from 0 to 10? 0 is none, 10 is the worst you can think of."),
    "sleep": N_("How well did you sleep this week, from 0 to 10? 0 is very badly, 10 is very well."),
    "chair_stand_30s": N_("How many times could you stand up in 30 seconds? Send it like this: {example}."),
    "five_chair_stands": N_("How long did five chair stands take you? Send it like this: {example}."),
    "timed_up_and_go": N_(
        "How long did it take you to get up, walk to the line, come back and sit down? Send it like this: {example}."
    ),
    "six_minute_walk": N_("How far did you walk in six minutes? Send it like this: {example}."),
    "four_stage_balance": N_("How many seconds did you hold all four stands, added up? Send it like this: {example}."),
    "one_leg_stance": N_("How long could you stand on one leg? Send your best of three, like this: {example}."),
    "gait_speed_4m": N_("How long did you take to walk 4 metres? Send it like this: {example}."),
    "two_minute_step": N_("How many times did your right knee come up in two minutes? Send it like this: {example}."),
    "walk_mile": N_(
        "How long did you take for the mile, and what was your pulse at the end? Send it like this: {example}."
    ),
    "activity_minutes": N_(
        "For how many minutes were you active in the past seven days? Count what was brisk and left you slightly out"
        " of breath. Send it like this: {example}."
    ),
    "strength_days": N_("On how many of the past seven days did you do strength work? Send it like this: {example}."),
    "sessions_done": N_("How many sessions did you do in the past seven days? Send it like this: {example}."),
    "session_effort": N_("How hard was the session, from 0 to 10? 0 is like sitting, 10 is all you can give."),
}
ASK_OTHER = N_("What I need: {measure}. Send it like this: {example}.")


def example(v: Voice, measure: str, unit: Unit) -> str:
    """An example answer as this client would write it."""
    known = MEASURES.get(measure)
    if known is not None and known.series:
        return v.numbers.isolate("124/78")
    value = EXAMPLES_OF.get((measure, unit), EXAMPLES.get(unit, D(5)))
    if known is not None and known.second_called:
        return v.amount(Amount(value, unit), measure=measure, second=D(124))
    if unit in (Unit.POINT, Unit.STEP, Unit.REPETITION, Unit.SESSION, Unit.DAY, Unit.BEATS_PER_MINUTE):
        return v.number(value)
    return v.amount(Amount(value, unit), measure=measure)


def ask(v: Voice, measure: str, unit: Unit) -> Html:
    """The question for a measure."""
    return v.say(ASK.get(measure, ASK_OTHER), example=example(v, measure, unit), measure=names.measure(v, measure))


def reminder(v: Voice, measure: str, unit: Unit | None = None) -> Html:
    """A short reminder of the pending question. Without a unit, the client's or the measure's own is used."""
    unit = unit or unit_of(v, measure)
    if unit is None:
        return v.say("Still open: {measure}.", measure=names.measure(v, measure))
    return v.say(
        "Still open: {measure}. Send it like this: {example}.",
        measure=names.measure(v, measure),
        example=example(v, measure, unit),
    )


def unit_of(v: Voice, measure: str) -> Unit | None:
    """The unit in which this client would answer: as in `core.dialogue.client.step.ClientStep.asked_in`."""
    found = MEASURES.get(measure)
    if found is None:
        return None
    if found.unit is Unit.METRE_PER_SECOND:
        return Unit.SECOND
    units = found.units or (found.unit,)
    for liked in (v.reader.units.mass, v.reader.units.length):
        if liked in units:
            return liked
    return units[0]
