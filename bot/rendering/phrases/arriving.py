"""Invitation, consent, enrolment, another coach."""

from __future__ import annotations

from datetime import time

from bot.rendering.phrases import names, phrase
from bot.rendering.phrases.asking import example
from bot.rendering.phrases.names import CAUTIONS, SIGNS
from bot.rendering.places import place_name
from bot.rendering.voice import N_, Html, Voice
from core.dialogue.client import enrolment_messages as em
from core.dialogue.client import messages as m
from core.dialogue.kit.messages import Stranger, WhichPlace

QUESTIONS: dict[str, str] = {
    "birth_year": N_(
        "What year were you born? Samehour is for adults, and some tables go by age. For example: {year}."
    ),
    "rating": N_("First, just one thing. How much energy do you have today, from 0 to 10? 10 is the most."),
    "adult": N_("Are you 18 or older today?"),
    "sex": N_("Which tables should I use for you: female or male? The tables know only these two."),
    "stature": N_("How tall are you? It tells me what some of your numbers mean. For example: {height}."),
    "units": N_("Which units do you use at home?"),
    "background": N_(
        "What is your family background? Some limits for weight and waist differ by it. That is the only reason I ask."
    ),
    "cautions": N_("To keep you safe: does any of this fit you? Press all that fit, then Done."),
    "numbers": N_(
        "Do you want to see your own numbers? I can also pass them on to {coach} only, or leave your weight out."
    ),
    "own_question": N_(
        "Is there one thing of your own that you want to rate each week, from 0 to 10? It could be sleep, or how the"
        " stairs feel. Write it in your own words."
    ),
    "own_better": N_("Think of your own question. Which is better, a high number or a low one?"),
    "signs": N_("Before you exercise: have you had any of these lately? Press all that fit, then Done."),
    "regular": N_("In the past three months, were you active three days a week, half an hour each time?"),
    "harder": N_("Would you like to train hard, so that talking is not easy?"),
    "cleared": N_("Has a doctor told you in the past year that exercise is fine for you?"),
    "weekday": N_("I write once a week. Which day is good for you?"),
    "time": N_("And at what time? Press one, or type it, like {time}."),
    "zone": N_("Where do you live? Type a city, like {city}. Then I know your time of day."),
}

UNCLEAR: dict[str, str] = {
    "birth_year": N_("I need the year you were born, with four digits. Send it like this: {year}."),
    "rating": N_("Please send a number from 0 to 10, or press one."),
    "adult": N_("Please press Yes if you are 18 or older, or No if you are not."),
    "sex": N_("Please press one of the buttons, or skip this one."),
    "stature": N_("I could not read your height from that. Send it like this: {height}."),
    "units": N_("Please press the units you like best."),
    "background": N_("Please press the one that fits best, or skip this one."),
    "cautions": N_("Please press all that fit. Then press Done."),
    "numbers": N_("Please press one of the buttons. You can change it later."),
    "own_question": N_("Please write your question in a few words, or skip this one."),
    "own_better": N_("Please press the one that is better for you."),
    "signs": N_("Please press all that fit. Then press Done."),
    "regular": N_("Please press Yes or No."),
    "harder": N_("Please press Yes or No."),
    "cleared": N_("Please press Yes or No."),
    "weekday": N_("Please press a day, or type its name."),
    "time": N_("I could not read a time from that. Send it like this: {time}."),
    "zone": N_("Please type the name of a city near you, like {city}."),
}

SKIPPING: dict[str, str] = {
    "birth_year": N_("That is fine. I just cannot compare you with people your age."),
    "rating": N_("That is fine. There will be other days."),
    "adult": N_("That is fine. Samehour is only for people of 18 and older."),
    "sex": N_("That is fine. Most tables then do not fit, so I compare you with yourself only."),
    "stature": N_("That is fine. I just cannot look at your weight or waist in light of your height."),
    "units": N_("That is fine. I use kilograms and centimetres. You can change that with /settings."),
    "background": N_("That is fine. I leave out the limits that differ by background."),
    "cautions": N_("That is fine. Until I know, I stay on the safe side and leave some tests out."),
    "numbers": N_("That is fine. I show you your numbers. You can change that with /settings."),
    "own_question": N_("That is fine. I leave it out."),
    "own_better": N_("That is fine. I take a higher number as better."),
    "signs": N_("That is fine. Then go gently, and ask your doctor if you are not sure."),
    "regular": N_("That is fine. Then start gently."),
    "harder": N_("That is fine. Then light to moderate is right for now."),
    "cleared": N_("That is fine."),
    "weekday": N_("That is fine. I start with {weekday}. You can change that with /settings."),
    "time": N_("That is fine. I start with {time}. You can change that with /settings."),
    "zone": N_("That is fine. My clock may then differ from yours. You can change that with /settings."),
}

OTHER_QUESTION = N_("Please answer in your own words, or skip this one.")
OTHER_SKIPPING = N_("That is fine. I leave it out.")


def _values(v: Voice, coach: str = "") -> dict[str, object]:
    return {
        "year": v.numbers.isolate("1958"),
        "height": example(v, "height", v.reader.units.length),
        "coach": v.coach(coach),
        "time": v.time(time(8, 0)),
        "weekday": v.weekday(0),
        "city": v.name(place_name("Europe/Lisbon", v.reader.language)),
    }


@phrase(Stranger)
def stranger(said: Stranger, v: Voice) -> str:
    return v.say("Hello. This chat is for people who have been invited. Please ask your coach for a new link.")


@phrase(m.Welcome)
def welcome(said: m.Welcome, v: Voice) -> str:
    coach = v.coach(said.coach)
    hello = v.say("Hello {name}.", name=v.name(said.name)) if said.name else v.say("Hello.")
    return v.paragraphs(
        v.sentences(
            hello,
            v.say("I am Samehour. I help {coach}, your coach.", coach=coach)
            if said.coach.strip()
            else v.say("I am Samehour. I help your coach."),
        ),
        v.say("Once a week I ask you a few things, and show you what changes."),
        v.say("I am not a doctor, and I cannot send help. What your doctor or nurse tells you comes first."),
        v.say("May I keep your answers and show them to {coach}? You can stop at any time.", coach=coach),
    )


@phrase(em.ConsentUnclear)
def consent_unclear(said: em.ConsentUnclear, v: Voice) -> str:
    return v.sentences(
        v.say("First I need your yes or no."),
        v.say("May I keep your answers and show them to {coach}? You can stop at any time.", coach=v.coach(said.coach)),
    )


@phrase(em.EnrolStillUnclear)
def enrol_still_unclear(said: em.EnrolStillUnclear, v: Voice) -> str:
    if said.skippable:
        return v.say("I still cannot read it. Press a button if one fits, or leave it out for now.")
    return v.say("I still cannot read it. Press a button if one fits, or ask your coach.")


@phrase(m.WhatIsKept)
def what_is_kept(said: m.WhatIsKept, v: Voice) -> str:
    coach = v.coach(said.coach)
    return v.paragraphs(
        v.say("I keep your name, what you answer, and when you sent it."),
        v.say(
            "{coach} sees your answers. The people who run this service can reach them too, to keep it working. A"
            " group never sees your numbers.",
            coach=coach,
        ),
        v.say("Send /mydata to get all of it. Send /forget to have all of it deleted."),
    )


@phrase(m.ConsentDeclined)
def consent_declined(said: m.ConsentDeclined, v: Voice) -> str:
    return v.say(
        "That is fine. I will not ask you anything. If you change your mind, press the button below, or talk to"
        " {coach}.",
        coach=v.coach(said.coach),
    )


@phrase(m.EnrolQuestion)
def enrol_question(said: m.EnrolQuestion, v: Voice) -> str:
    question = v.say(QUESTIONS.get(said.question, OTHER_QUESTION), **_values(v, said.coach))
    if not said.chosen:
        return question
    return v.lines(question, v.say("So far:"), *(Html(f"• {_tick(v, said.question, key)}") for key in said.chosen))


def _tick(v: Voice, question: str, key: str) -> str:
    if question == "signs":
        return v.say(SIGNS.get(key, key))
    return v.say_in("caution", CAUTIONS.get(key, key))


@phrase(em.FirstValue)
def first_value(said: em.FirstValue, v: Voice) -> str:
    value = v.say(
        "Thank you. {measure}: {amount}.",
        measure=names.measure(v, said.measure),
        amount=v.amount(said.value, measure=said.measure),
    )
    start = v.say("That is your start, and I compare you only with yourself.")
    if said.by_chance is None:
        return v.lines(value, start)
    swing = v.say("Up to {size} more or less can be just the day.", size=v.size(said.by_chance, said.measure))
    return v.lines(value, v.sentences(start, swing))


@phrase(em.AllAnswered)
def all_answered(said: em.AllAnswered, v: Voice) -> str:
    return v.say("That is all, thank you. I will not ask it again.")


@phrase(em.BeforeExercise)
def before_exercise(said: em.BeforeExercise, v: Voice) -> str:
    match said.verdict:
        case "as_you_are":
            return v.say("Good. Go on as you are, and add a little at a time.")
        case "light_to_moderate":
            return v.say("Light to moderate is fine: move so that you can still talk. Add a little at a time.")
    told = v.say("I have told {coach}.", coach=v.coach(said.told)) if said.told else ""
    see = v.say("Please see your doctor first, before you exercise more than you do now.")
    if not said.signs:
        return v.sentences(see, told)
    call = (
        v.say("If it is there now, or gets worse, call {number}.", number=v.numbers.isolate(said.number))
        if said.number
        else v.say("If it is there now, or gets worse, call your local emergency number.")
    )
    return v.lines(v.sentences(see, told), call)


@phrase(m.EnrolUnclear)
def enrol_unclear(said: m.EnrolUnclear, v: Voice) -> str:
    return v.say(UNCLEAR.get(said.question, OTHER_QUESTION), **_values(v))


@phrase(m.EnrolNoted)
def enrol_noted(said: m.EnrolNoted, v: Voice) -> str:
    if said.year is not None:
        return v.say("Noted: you were born in {year}.", year=v.numbers.isolate(str(said.year)))
    if said.height is not None:
        return v.say("Noted: your height is {height}.", height=v.amount(said.height, measure="height"))
    city = v.name(place_name(said.place, v.reader.language, with_country=True))
    noted = v.say("Noted: your clock is that of {city}.", city=city)
    return (
        noted if said.clock is None else v.sentences(noted, v.say("It is {time} there now.", time=v.time(said.clock)))
    )


@phrase(m.AskBirthYear)
def ask_birth_year(said: m.AskBirthYear, v: Voice) -> str:
    return v.sentences(
        v.say("Samehour is for people of 18 and older."),
        v.say("I read that you were born around {year}. Is that right?", year=v.numbers.isolate(str(said.year))),
    )


@phrase(m.SkipCost)
def skip_cost(said: m.SkipCost, v: Voice) -> str:
    return v.say(SKIPPING.get(said.question, OTHER_SKIPPING), **_values(v))


@phrase(m.TooYoung)
def too_young(said: m.TooYoung, v: Voice) -> str:
    return v.say(
        "Samehour is for people of 18 and older, so I stop here. I have not kept the year you were born. Please ask"
        " {coach} what is right for you.",
        coach=v.coach(said.coach),
    )


@phrase(m.ForAdults)
def for_adults(said: m.ForAdults, v: Voice) -> str:
    return v.paragraphs(
        v.say(
            "Samehour is for people of 18 and older, so I stop here. Please ask {coach} what is right for you.",
            coach=v.coach(said.coach),
        ),
        v.say("Was the year wrong? Press the button, or type it again. In a day I delete all I have about you."),
    )


@phrase(WhichPlace)
def which_place(said: WhichPlace, v: Voice) -> str:
    if said.places:
        return v.say("I know more than one place like that. Which one is it?")
    return v.say("I do not know that place. Please type a big city near you, with the same time on the clock.")


@phrase(m.Enrolled)
def enrolled(said: m.Enrolled, v: Voice) -> str:
    return v.paragraphs(
        v.lines(
            v.say("All set, thank you. Anything else I ask when I need it."),
            v.say("Your time: {weekday}, {time}", weekday=v.weekday(said.weekday), time=v.time(said.at)),
            v.say("First check-in: {day}", day=v.day(said.first)),
        ),
        v.say(
            "I cannot send help. If you feel very ill, call your local emergency number."
            " You can start now, or at your usual time."
        ),
    )


@phrase(m.AlreadyHere)
def already_here(said: m.AlreadyHere, v: Voice) -> str:
    return v.say("You are with {coach}, as before. There is nothing you need to do.", coach=v.coach(said.coach))


@phrase(m.AskChangeCoach)
def ask_change_coach(said: m.AskChangeCoach, v: Voice) -> str:
    return v.say(
        "{new} invites you. Right now you are with {old}. If you move, {new} sees your answers, and {old} does not any"
        " more. Do you want to move?",
        new=v.coach(said.new),
        old=v.coach(said.old),
    )


@phrase(m.CoachChanged)
def coach_changed(said: m.CoachChanged, v: Voice) -> str:
    return v.say("Done. Your coach is now: {coach}.", coach=v.coach(said.coach))


@phrase(m.WelcomeBack)
def welcome_back(said: m.WelcomeBack, v: Voice) -> str:
    return v.say(
        "Welcome back. It is good to hear from you. We can go on where we left off, with {coach}.",
        coach=v.coach(said.coach),
    )
