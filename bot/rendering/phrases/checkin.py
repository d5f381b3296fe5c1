"""The check-in itself: opening, asking, thanking, conditions, praise, the next date."""

from __future__ import annotations

from bot.rendering.phrases import names, phrase
from bot.rendering.phrases.asking import ask, reminder
from bot.rendering.phrases.cards import card, has_card
from bot.rendering.voice import N_, Voice
from core.dialogue.client import messages as m
from core.dialogue.client import week_messages as wm
from core.measures import MEASURES
from core.measures.measure import MeasureKind

WEEKLY = (MeasureKind.RATING, MeasureKind.ACTIVITY)

OPENINGS: dict[str, str] = {
    "time_again": N_("Hello. It is time for your check-in."),
    "good_to_see": N_("Good to see you. Here is your check-in for the week."),
    "two_minutes": N_("Hello. Do you have two minutes for your check-in?"),
    "same_hour": N_("Same day, same hour: your check-in is here."),
    "quick_look": N_("Hello. How was your week? Let us take a quick look."),
    "quiet_minute": N_("Find a quiet minute. Your check-in is ready."),
    "week_gone": N_("Another week has gone by. Here are your questions."),
    "short_today": N_("Hello. Here are a few short questions for you."),
    "when_you_are": N_("Your check-in is ready when you are."),
    "no_rush": N_("Hello. There is no rush: your check-in waits for you."),
    "cup_of_tea": N_("Hello. Maybe with a cup of tea: here is your check-in."),
    "hope_well": N_("I hope you had a good week. Here is your check-in."),
    "hello_again": N_("Hello again. Let us see how you are this week."),
    "thanks_for_time": N_("Hello. Thank you for making time for this."),
}

PRAISES: dict[str, str] = {
    "thanks_time": N_("Thank you for taking the time."),
    "whole_picture": N_("Each answer adds to the picture."),
    "keep_at_it": N_("You keep at it. That counts."),
    "kept_plan": N_("You kept to your plan. Good."),
    "time_for_yourself": N_("You made time for this. Good."),
    "small_steps": N_("Small steps go a long way."),
    "plain_answer": N_("Thank you for an honest answer."),
    "showing_up": N_("Showing up is the hard part."),
    "habit": N_("This is how a habit grows."),
    "one_more_page": N_("Good work. One more week done."),
    "keep_going": N_("Good that you keep going."),
    "own_pace": N_("Your own pace is just right."),
    "week_by_week": N_("Week by week, you build something."),
    "patience": N_("This takes patience. You have it."),
    "one_more": N_("One more check-in: good work."),
    "doing_this": N_("Thank you for doing this today."),
    "your_part": N_("You did your part. Thank you."),
    "stayed": N_("You stayed with it. Well done."),
    "in_a_row": N_("One check-in done: a good start."),
    "kept_up": N_("You came back to it. Good."),
}

# What is asked every week is asked in other words after the first time, by turns, and without what is known by then.
ASKED_AGAIN: dict[str, tuple[str, ...]] = {
    "energy": (
        N_("How much energy do you have today, from 0 to 10?"),
        N_("From 0 to 10: how much energy is in you today?"),
        N_("How is your energy today, from 0 to 10?"),
        N_("Think of today. How much energy do you have, from 0 to 10?"),
    ),
    "pain": (
        N_("Any pain this week? From 0, none, to 10, the worst."),
        N_("And the pain this week, from 0 to 10? 10 is the worst."),
        N_("How much pain was there this week, from 0 to 10? 0 is none."),
    ),
    "sleep": (
        N_("And your sleep this week, from 0 to 10? 10 is very well."),
        N_("How did you sleep this week, from 0, very badly, to 10, very well?"),
        N_("From 0 to 10: how well did you sleep this week? 10 is very well."),
    ),
    "activity_minutes": (
        N_("How many brisk minutes did this week have, about? All that left you a little out of breath."),
        N_("And moving: about how many brisk minutes in the past seven days?"),
        N_("The past seven days: for about how many minutes were you active?"),
    ),
    "strength_days": (
        N_("And strength work: on how many of the past seven days?"),
        N_("On how many days this week did you do strength work?"),
    ),
    "sessions_done": (
        N_("And sessions: how many in the past seven days?"),
        N_("How many sessions did this week have?"),
    ),
    "session_effort": (
        N_("How hard was it, from 0, like sitting, to 10, all you can give?"),
        N_("And the effort, from 0 to 10? 10 is all you can give."),
    ),
}

NOTED: dict[str, str] = {
    "arms_used": N_("You used your arms, so the table counts this as 0. That is good to know."),
    "more_than_half_way": N_("You were more than half-way up at the end, so that one counts too."),
    "dizziness": N_("I noted that you felt dizzy."),
    "fainting": N_("I noted that you felt faint."),
}


@phrase(m.CheckInOpens)
def check_in_opens(said: m.CheckInOpens, v: Voice) -> str:
    opening = v.say(OPENINGS.get(said.variant, OPENINGS["time_again"]))
    if said.late <= 0:
        return opening
    return v.sentences(v.say("Sorry, I am late today. That was my fault."), opening)


@phrase(m.Ask)
def ask_measure(said: m.Ask, v: Voice) -> str:
    again = ASKED_AGAIN.get(said.measure, ())
    parts = []
    if said.again:
        parts.append(v.say("Once more, so that your start is solid."))
    parts.append(v.say(again[said.turn % len(again)]) if again and said.turn else ask(v, said.measure, said.unit))
    if said.attempts > 1:
        parts.append(
            v.say_n(
                "Do it once. Send the number.",
                "Do it {n} times. Send all the numbers in one message.",
                said.attempts,
            )
        )
    if said.first and has_card(said.measure):
        parts.append(v.say("This is your first one. The button below shows you how."))
    return v.sentences(*parts)


@phrase(m.AskOwn)
def ask_own(said: m.AskOwn, v: Voice) -> str:
    return v.lines(
        v.typed(said.question, 200),
        v.say("What number fits today, from 0 to 10?"),
    )


@phrase(m.Card)
def measure_card(said: m.Card, v: Voice) -> str:
    return card(v, said.measure, ruler=said.ruler)


@phrase(m.ReadingKept)
def kept(said: m.ReadingKept, v: Voice) -> str:
    values = {
        "measure": names.measure(v, said.measure),
        "amount": v.amount(said.amount, measure=said.measure, second=said.second),
    }
    known = MEASURES.get(said.measure)
    if known is not None and known.kind in WEEKLY and not known.in_every_check_in:
        value = v.say("{measure}: {amount}.", **values)  # thanked for the first answer of the week, not for each
    else:
        value = v.say("Thank you. {measure}: {amount}.", **values)
    return v.sentences(value, *(v.say(NOTED[note]) for note in said.noted if note in NOTED))


@phrase(m.KeptHidden)
def kept_hidden(said: m.KeptHidden, v: Voice) -> str:
    return v.say("Thank you. {measure}: kept for your coach.", measure=names.measure(v, said.measure))


@phrase(m.KeptBeforeTime)
def kept_before_time(said: m.KeptBeforeTime, v: Voice) -> str:
    return v.sentences(
        v.say(
            "Thank you. {measure}: {amount}.",
            measure=names.measure(v, said.measure),
            amount=v.amount(said.amount, measure=said.measure, second=said.second),
        ),
        v.say("It is too soon to compare it. Next time for that: {day}.", day=v.day(said.on)),
    )


@phrase(m.Praise)
def praise(said: m.Praise, v: Voice) -> str:
    if said.key == "in_a_row" and said.count > 1:
        return v.say_n(
            "{n} check-in in a row: well done.",
            "{n} check-ins in a row: well done.",
            said.count,
        )
    if said.key == "kept_up" and said.count > 1:
        return v.say_n(
            "{n} check-in kept up. Good effort.",
            "{n} check-ins kept up. Good effort.",
            said.count,
        )
    return v.say(PRAISES.get(said.key, PRAISES["thanks_time"]))


@phrase(m.AskConditions)
def ask_conditions(said: m.AskConditions, v: Voice) -> str:
    return v.say("All the same as last time? That means: {aspects}.", aspects=names.aspects(v, said.aspects))


@phrase(m.KeepTheSame)
def keep_the_same(said: m.KeepTheSame, v: Voice) -> str:
    return v.say("Please keep these the same each time: {aspects}.", aspects=names.aspects(v, said.aspects))


@phrase(m.AskWhatDiffered)
def ask_what_differed(said: m.AskWhatDiffered, v: Voice) -> str:
    question = v.say("What was different? Press all that fit. Then press Done.")
    if not said.aspects:
        return question
    return v.sentences(question, v.say("So far: {list}.", list=names.aspects(v, said.aspects)))


@phrase(m.ConditionsNoted)
def conditions_noted(said: m.ConditionsNoted, v: Voice) -> str:
    if not said.aspects:
        return v.say("Noted, thank you.")
    return v.say("Noted: {aspects}. I allow for that.", aspects=names.aspects(v, said.aspects))


@phrase(m.CheckInDone)
def check_in_done(said: m.CheckInDone, v: Voice) -> str:
    following = v.say("Next check-in: {day}.", day=v.day(said.next))
    if not said.hint:
        return following
    return v.sentences(
        following, v.say("If there is something about this week, just write it. It stays with your answers.")
    )


@phrase(wm.AnotherDay)
def another_day(said: wm.AnotherDay, v: Voice) -> str:
    return v.say(
        "This day often suits you better: {weekday}. Shall I ask you then? Press the button, and choose.",
        weekday=v.weekday(said.weekday),
    )


@phrase(m.WeekNoted)
def week_noted(said: m.WeekNoted, v: Voice) -> str:
    return v.say("Thank you. I keep that with the answers of this week. {coach} sees it.", coach=v.coach(said.coach))


@phrase(m.NotToday)
def not_today(said: m.NotToday, v: Voice) -> str:
    if said.next is None:
        return v.say("Nothing is due, and no check-in is planned right now.")
    parts = [v.say("Nothing is due right now. Next check-in: {day}.", day=v.day(said.next))]
    if said.measures:
        parts.append(v.say("I will ask for: {measures}.", measures=names.measures(v, said.measures)))
    return v.sentences(*parts)


STILL_OPEN = (
    N_("Your check-in is still open. You can finish it now, or skip it this week. Both are fine."),
    N_("There is still time for your check-in. If it does not fit this week, skip it. That is fine, too."),
    N_("A small reminder: your check-in waits for you. Now, or not this week, just as it suits you."),
)


@phrase(m.FollowUp)
def follow_up(said: m.FollowUp, v: Voice) -> str:
    return v.sentences(
        v.say(STILL_OPEN[said.turn % len(STILL_OPEN)]),
        reminder(v, said.waiting) if said.waiting else "",
    )
