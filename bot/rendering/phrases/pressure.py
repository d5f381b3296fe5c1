"""A week of blood pressure: seven days, twice a day, two readings (NICE NG136; see core.measures.home_bp_series)."""

from __future__ import annotations

from bot.rendering.phrases import phrase
from bot.rendering.voice import Voice
from core.dialogue.client import messages as m


@phrase(m.PressureWeekOpens)
def pressure_week_opens(said: m.PressureWeekOpens, v: Voice) -> str:
    return v.sentences(
        v.say("Now comes your blood pressure week. One reading says little, but a week says a lot."),
        v.say(
            "I write twice a day, at {morning} and {evening}. Each time, take two readings, one minute apart.",
            morning=v.time(said.morning),
            evening=v.time(said.evening),
        ),
        v.say("Last day: {day}.", day=v.day(said.last)),
    )


@phrase(m.PressurePrompt)
def pressure_prompt(said: m.PressurePrompt, v: Voice) -> str:
    if said.evening:
        lead = v.say("Good evening. Blood pressure, day {n} of {days}.", n=v.number(said.day), days=v.number(7))
    else:
        lead = v.say("Good morning. Blood pressure, day {n} of {days}.", n=v.number(said.day), days=v.number(7))
    return v.sentences(
        lead,
        v.say(
            "Sit still for 5 minutes. Then send both numbers, like this: {example}.",
            example=v.numbers.isolate("124/78"),
        ),
    )


@phrase(m.PressureAgain)
def pressure_again(said: m.PressureAgain, v: Voice) -> str:
    return v.say(
        "Thank you: {pressure}. Now wait one minute, and send me a second one.",
        pressure=v.pressure(said.systolic, said.diastolic),
    )


@phrase(m.PressureKept)
def pressure_kept(said: m.PressureKept, v: Voice) -> str:
    thanks = v.say("Thank you, both are kept.")
    if said.left <= 0:
        return v.sentences(thanks, v.say("This was the last day."))
    return v.sentences(thanks, v.say_n("{n} day to go.", "{n} days to go.", said.left))


@phrase(m.PressureWeekDone)
def pressure_week_done(said: m.PressureWeekDone, v: Voice) -> str:
    return v.sentences(
        v.say("Your blood pressure week is done. Thank you for your care."),
        v.say(
            "The mean: {pressure}.",
            pressure=v.pressure(said.systolic, said.diastolic),
        ),
        v.say_n(
            "It is made of {n} reading, without day one.",
            "It is made of {n} readings, without day one.",
            said.used,
        ),
    )


@phrase(m.PressureTooFew)
def pressure_too_few(said: m.PressureTooFew, v: Voice) -> str:
    if said.days <= 0:
        came = v.say("The week is over, and no reading came. That is all right.")
    else:
        came = v.say_n(
            "The week is over, and I have {n} day of readings. Thank you for those.",
            "The week is over, and I have {n} days of readings. Thank you for those.",
            said.days,
        )
    return v.sentences(
        came,
        v.say_n(
            "For a fair look I need {n} day. We can try again next time.",
            "For a fair look I need {n} days. We can try again next time.",
            said.needed,
        ),
    )
