"""Everyday questions: short and true answers, and an honest "I do not know"."""

from __future__ import annotations

from datetime import date

from bot.rendering.phrases import names, phrase
from bot.rendering.phrases.asking import reminder
from bot.rendering.phrases.safety import emergency_number
from bot.rendering.voice import N_, Html, Voice
from core.dialogue.client import messages as m
from core.measures.weight import WEIGHT

PLAIN: dict[str, str] = {
    "can_stop": N_("Yes. You can stop at any time, or take a break. Just tell me. Nobody minds."),
    "about": N_(
        "Once a week, at your time, I ask you a few short things. You see what changes, and so does {coach}. That shows"
        " you both whether your programme works."
    ),
    "no_tool": N_("That is fine. Leave it out this time. You can send it when you can measure again."),
    "one_of_a_week": N_("One reading says little. When the week is over, I tell you what it means."),
    "wait": N_("Take your time. I am here."),
    "nothing_to_time": N_("There is nothing to time just now."),
    "chat": N_("I wish I could. All I know is your check-ins and your numbers."),
    "already": N_("I have that one already. Thank you."),
    "all_right": N_("All right. I write again at your usual time."),
    "grief": N_("I am so sorry for your loss. Nothing here is urgent. Take all the time you need."),
    "body": N_(
        "You are more than a number. What counts is what helps you feel well. {coach} is glad to talk it over with you."
    ),
    "sorry": N_("No need to be sorry."),
    "may_send": N_("Yes, just send it. Say what it is, like this: pulse 68."),
    "after_start": N_("I can tell you more about that once we have started."),
    "free": N_("I take no money. If your programme has a price, {coach} can tell you."),
    "who_sees": N_(
        "{coach} sees your answers. The people who run this service can reach them too, to keep it working. A group"
        " never sees your numbers."
    ),
    "who": N_(
        "I am Samehour, a computer program. {coach} is a real person and sees what you send. Nobody reads along all"
        " day. If it is urgent, call {number}."
    ),
    "there": N_("Yes, I am here."),
    "how_are_you": N_("Kind of you to ask. I am a program, so my days are all alike. I hope yours is a good one."),
    "photo": N_("I cannot see pictures or hear voice messages. Words and numbers work best."),
    "how_long": N_("Most weeks it takes two or three minutes. When we measure or test, it takes longer."),
    "how_often": N_(
        "A body changes slowly. From one day to the next, most of what you would see is chance. A few weeks apart, a"
        " real change can show."
    ),
    "must": N_("No. You can skip any question, each time. Just say skip."),
    "missed": N_("That is all right. Nothing is lost. I just ask again next time."),
    "glad": N_("Good to hear."),
    "bye": N_("Take care."),
    "swearing": N_("That sounds like a bad moment. I am sorry if I made it worse. You can take a break from me."),
    "rating": N_("There is no right number here. It is how you feel, and I compare it with your other weeks."),
    "medical": N_("That is one for your doctor, nurse or pharmacist. I do not want to guess."),
    "food": N_("What is good to eat depends on you, so I do not guess."),
    "for_coach": N_("I have nobody to pass that on to just now."),
    "unknown": N_("I do not know that."),
}

WHY: dict[str, str] = {
    "weight": N_("One weight says little. Over months, it shows which way things go."),
    "height": N_("Your height helps me to look at your weight and waist in a fair way."),
    "waist": N_("The waist shows what sits around your organs. The scales cannot see that."),
    "hip": N_("I compare your hips with your waist. The two say more than one."),
    "resting_heart_rate": N_("As people get fitter, the pulse at rest often slows down."),
    "blood_pressure": N_("High blood pressure mostly has no signs. You can only find it if you measure."),
    "energy": N_("How you feel counts as much as any number. Asked each week, it shows a pattern."),
    "own_question": N_("You chose this one. Asked each week, it shows a pattern."),
    "pain": N_("Pain can hold people back. Asked each week, it shows a pattern."),
    "sleep": N_("How you sleep colours your whole week. Asked each week, it shows a pattern."),
    "chair_stand_30s": N_("It shows how strong your legs are. You need them for stairs and to get up."),
    "five_chair_stands": N_("It shows how strong your legs are. You need them for stairs and to get up."),
    "timed_up_and_go": N_("To get up, walk and turn: it shows how sure you are on your feet."),
    "four_stage_balance": N_("Good balance helps you not to fall. It can be trained."),
    "one_leg_stance": N_("Good balance helps you not to fall. It can be trained."),
    "gait_speed_4m": N_("How fast you walk each day says a lot about your strength and health."),
    "two_minute_step": N_("It shows how long your strength lasts, at home and with no machine."),
    "six_minute_walk": N_("How far you get in six minutes shows how long your strength lasts in daily life."),
    "walk_mile": N_("A brisk mile, and your pulse after it, show how fit your heart and lungs are."),
    "activity_minutes": N_("Public health advice counts active minutes in a week. So I count them the same way."),
    "strength_days": N_("Public health advice is strength work on two days a week. So I count the days."),
    "sessions_done": N_("It shows how much of your plan fits into a week. If it is too much, the plan can change."),
    "session_effort": N_("It shows how hard the training feels. It should not be too much, and not too little."),
}
WHY_OTHER = N_("It shows one more side of how you are doing.")

WEIGH: dict[str, str] = {
    "yes": N_("Yes, today is fine. Send me the number when you have it."),
    "directed": N_("Yes. Weigh as your doctor or nurse told you to, and send me the number."),
    "left_out": N_("Weight is not in your plan, so there is no need to."),
    "wait": N_("Better wait. Weight swings from day to day, so a number today says little."),
}

OFFERS = frozenset({"medical", "food", "unknown"})  # what is said before the offer


@phrase(m.Plainly)
def plainly(said: m.Plainly, v: Voice) -> str:
    return v.say(
        PLAIN.get(said.key, PLAIN["unknown"]), coach=v.coach(said.coach), number=emergency_number(v, said.number)
    )


@phrase(m.OfferToPass)
def offer_to_pass(said: m.OfferToPass, v: Voice) -> str:
    offer = v.say("Shall I pass this on to {coach}, just as you wrote it?", coach=v.coach(said.coach))
    return v.sentences(v.say(PLAIN[said.why]) if said.why in OFFERS else "", offer)


@phrase(m.LastReading)
def last_reading(said: m.LastReading, v: Voice) -> str:
    values = {
        "measure": names.measure(v, said.measure),
        "amount": v.amount(said.amount, measure=said.measure, second=said.second),
        "day": v.full_date(said.day),
    }
    if said.first:
        return v.say("At the start, {day}: {measure}, {amount}.", **values)
    return v.say("The last one, {day}: {measure}, {amount}.", **values)


@phrase(m.NoReadingYet)
def no_reading_yet(said: m.NoReadingYet, v: Voice) -> str:
    lead = v.say("I have none yet: {measure}.", measure=names.measure(v, said.measure))
    return v.sentences(lead, _next(v, said.next) if said.next is not None else "")


@phrase(m.OnlyCoachSees)
def only_coach_sees(said: m.OnlyCoachSees, v: Voice) -> str:
    return v.say(
        "You asked me not to show you this: {measure}. {coach} has it and can talk it over with you.",
        measure=names.measure(v, said.measure),
        coach=v.coach(said.coach),
    )


@phrase(m.WhyMeasure)
def why_measure(said: m.WhyMeasure, v: Voice) -> str:
    why = v.say(WHY.get(said.measure, WHY_OTHER))
    return v.say("{measure}: {why}", measure=names.measure(v, said.measure), why=why)


@phrase(m.UsualFor)
def usual_for(said: m.UsualFor, v: Voice) -> str:
    measure = names.measure(v, said.measure)
    low, high = (
        None if x is None else v.amount(x, measure=said.measure, second=said.second) for x in (said.low, said.high)
    )
    if low is not None and high is not None:
        range_ = v.say(
            "For people like you, a table has this range: {measure}, {low} to {high}.",
            measure=measure,
            low=low,
            high=high,
        )
    elif high is not None:
        range_ = v.say("For people like you, a table has this: {measure}, below {high}.", measure=measure, high=high)
    else:
        range_ = v.say("For people like you, a table has this: {measure}, {low} or more.", measure=measure, low=low)
    return v.sentences(range_, v.say("A table is about many people. Your own start tells more about you."))


@phrase(m.NoUsual)
def no_usual(said: m.NoUsual, v: Voice) -> str:
    if said.measure == WEIGHT.key:
        return v.say("There is no normal weight for an age. Your own start tells more about you.")
    return v.say(
        "I have no table that fits you here: {measure}. I compare it with your own start.",
        measure=names.measure(v, said.measure),
    )


@phrase(m.ChanceMeans)
def chance_means(said: m.ChanceMeans, v: Voice) -> str:
    if said.error is None:
        return v.say("No number is exact. I call it a change only when it is more than day-to-day swing.")
    return v.sentences(
        v.say(
            "No number is exact. Even if nothing in you changes, two of them can differ by up to {error}.",
            error=v.size(said.error, said.measure),
        ),
        v.say("Only more than that is a change."),
    )


@phrase(m.WeighToday)
def weigh_today(said: m.WeighToday, v: Voice) -> str:
    answer = v.say(WEIGH[said.answer])
    if said.on is None:
        return answer
    return v.sentences(answer, v.say("It counts again from {day}.", day=v.day(said.on)))


@phrase(m.ByRecord)
def by_record(said: m.ByRecord, v: Voice) -> str:
    return v.say("Thank you for telling me. I go by what we measured here, weeks apart.")


@phrase(m.OnlyOne)
def only_one(said: m.OnlyOne, v: Voice) -> str:
    lead = v.say("So far I have one to go by, so I cannot tell yet: {measure}.", measure=names.measure(v, said.measure))
    return lead if said.next is None else v.sentences(lead, v.say("We look again on {day}.", day=v.day(said.next)))


@phrase(m.Doing)
def doing(said: m.Doing, v: Voice) -> str:
    parts = [
        _shelf(v, N_("Better, by more than chance: {measures}."), said.better),
        _shelf(v, N_("Changed, by more than chance: {measures}."), said.changed),
        _shelf(v, N_("About the same as at the start: {measures}."), said.same),
        _shelf(v, N_("Not as good as at the start: {measures}."), said.worse),
        _shelf(v, N_("Too early to tell: {measures}."), said.early),
    ]
    if not any(parts):
        return v.say("It is too early to tell. What counts for now is that you are here.")
    return v.lines(*parts)


def _shelf(v: Voice, text: str, measures: tuple[str, ...]) -> str:
    return v.say(text, measures=names.measures(v, measures)) if measures else ""


@phrase(m.EndOf)
def end_of(said: m.EndOf, v: Voice) -> str:
    return v.say("{name}: the last check-in is on {day}.", name=v.name(said.name), day=v.full_date(said.last))


@phrase(m.NoEnd)
def no_end(said: m.NoEnd, v: Voice) -> str:
    lead = v.say("It goes on. No last day is set, and {coach} can tell you more.", coach=v.coach(said.coach))
    return lead if said.next is None else v.sentences(lead, _next(v, said.next))


@phrase(m.StillOpen)
def still_open(said: m.StillOpen, v: Voice) -> str:
    return reminder(v, said.measure)


@phrase(m.NotStored)
def not_stored(said: m.NotStored, v: Voice) -> str:
    return v.say("I did not keep that as a number of yours. If it is one, send just the number.")


def _next(v: Voice, day: date) -> Html:
    return v.say("Next check-in: {day}.", day=v.day(day))
