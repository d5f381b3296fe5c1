"""Goals, progress, pictures."""

from __future__ import annotations

from bot.rendering.phrases import names, phrase
from bot.rendering.phrases.asking import example
from bot.rendering.voice import N_, Voice
from core.dialogue.client import messages as m

DOUBTS: dict[str, str] = {
    "pregnancy": N_("In these months, weight and size are no goals. How about a goal for what you do?"),
    "eating_worries": N_("I leave weight and size out of goals, to be kind to you. How about a goal for what you do?"),
    "bmi_under_18_5": N_("That goal is lower than is good for your height."),
    "in_the_past": N_("That day has gone by. Please send a day that is still to come."),
    "already_there": N_("You are there already. What would you like next?"),
    "wrong_direction": N_("That goal points the other way from what is better. Did you mean it like that?"),
    "faster_than_published": N_("That is faster than health advice goes. A slower pace is easier to keep."),
    "smaller_than_error": N_("That step is so small that we could not see it. A bigger one shows more."),
}
NO_SIZE = frozenset({"pregnancy", "eating_worries"})  # doubts of people to whom no weight is ever suggested
# With a target suggested behind it: one question in a message is enough.
DOUBTS_BEFORE_A_QUESTION: dict[str, str] = {
    **DOUBTS,
    "already_there": N_("You are there already."),
    "wrong_direction": N_("That goal points the other way from what is better."),
}
DOUBT_OTHER = N_("I am not sure that goal fits. Please talk it over with your coach.")


# How far along, in words: per cent of the way, at most.
WAY: tuple[tuple[int, str], ...] = (
    (17, N_("You have made a start.")),
    (29, N_("About a quarter of the way.")),
    (41, N_("About a third of the way.")),
    (58, N_("About half of the way.")),
    (70, N_("About two thirds of the way.")),
    (85, N_("About three quarters of the way.")),
    (100, N_("You are almost there.")),
)


@phrase(m.AskGoal)
def ask_goal(said: m.AskGoal, v: Voice) -> str:
    return v.say("What would you like a goal for?")


@phrase(m.AskGoalTarget)
def ask_goal_target(said: m.AskGoalTarget, v: Voice) -> str:
    return v.say(
        "{measure}: what do you want to reach? Send it like this: {example}.",
        measure=names.measure(v, said.measure),
        example=example(v, said.measure, said.unit),
    )


@phrase(m.AskGoalDate)
def ask_goal_date(said: m.AskGoalDate, v: Voice) -> str:
    return v.say("By when? Send a date, or a number of weeks, such as 12.")


@phrase(m.GoalSet)
def goal_set(said: m.GoalSet, v: Voice) -> str:
    return v.say(
        "Your goal is set. {measure}: {amount}, by {date}.",
        measure=names.measure(v, said.measure),
        amount=v.amount(said.amount, measure=said.measure),
        date=v.full_date(said.by),
    )


@phrase(m.GoalDoubt)
def goal_doubt(said: m.GoalDoubt, v: Voice) -> str:
    if said.suggest is None or said.reason in NO_SIZE:
        return v.say(DOUBTS.get(said.reason, DOUBT_OTHER))
    return v.sentences(
        v.say(DOUBTS_BEFORE_A_QUESTION.get(said.reason, DOUBT_OTHER)),
        v.say("How about {amount}?", amount=v.amount(said.suggest, measure=said.measure)),
    )


@phrase(m.GoalDropped)
def goal_dropped(said: m.GoalDropped, v: Voice) -> str:
    return v.say("That is fine. I have put the goal away.")


@phrase(m.GoalProgress)
def goal_progress(said: m.GoalProgress, v: Voice) -> str:
    goal = v.say(
        "Your goal: {amount}, by {date}.",
        amount=v.amount(said.amount, measure=said.measure),
        date=v.full_date(said.by),
    )
    if said.percent >= 100:
        return v.sentences(goal, v.say("You are there."))
    if said.percent <= 0:
        return v.sentences(goal, v.say("There is still time."))
    so_far = v.say(next(text for most, text in WAY if said.percent <= most))
    return v.sentences(goal, so_far, _ahead(said, v))


def _ahead(said: m.GoalProgress, v: Voice) -> str:
    """When it would be reached, as a range, or honestly that the readings cannot say."""
    if said.earliest is not None and said.latest is not None:
        return v.say(
            "At the pace so far, you get there between these days: {early}, {late}. It can take longer: change often"
            " slows down.",
            early=v.full_date(said.earliest),
            late=v.full_date(said.latest),
        )
    if said.why in ("no_clear_trend", "other_way", "too_far_ahead"):
        return v.say("The numbers do not show yet when you will get there.")
    return ""


@phrase(m.NoGoalYet)
def no_goal_yet(said: m.NoGoalYet, v: Voice) -> str:
    start = v.say("A goal starts from a first reading. After that you can set one.")
    return start if said.next is None else v.sentences(start, v.say("Next check-in: {day}.", day=v.day(said.next)))


@phrase(m.NothingToShow)
def nothing_to_show(said: m.NothingToShow, v: Voice) -> str:
    if said.next is None:
        return v.say("There is nothing to draw yet. A few check-ins will change that.")
    return v.say(
        "There is nothing to draw yet. A few check-ins will change that. Next one: {day}.", day=v.day(said.next)
    )


@phrase(m.AskProgress)
def ask_progress(said: m.AskProgress, v: Voice) -> str:
    return v.say("Which picture would you like to see?")
