"""Messages to a cohort's members and to their group chat: no names, no readings, no ranking."""

from __future__ import annotations

from dataclasses import replace

from bot.rendering.phrases import names, phrase
from bot.rendering.phrases.cohort_figures import changed, check_in_name, scope, summed, took_part, total
from bot.rendering.voice import Voice
from core.dialogue.group import messages as cm
from core.watching.cohort import Counted, Paired
from core.watching.disclosure import LEAST_PEOPLE

# --- members ----------------------------------------------------------------------------------------------------


@phrase(cm.CohortWelcome)
def cohort_welcome(said: cm.CohortWelcome, v: Voice) -> str:
    asked = v.say(
        "{by} asks you to join a group: {cohort}. It starts on {day}. The group sees only what all do together.",
        by=v.name(said.by),
        cohort=v.name(said.cohort),
        day=v.day(said.starts),
    )
    return asked if said.coached else v.sentences(asked, v.say("{by} never sees your answers.", by=v.name(said.by)))


@phrase(cm.CohortForClients)
def cohort_for_clients(said: cm.CohortForClients, v: Voice) -> str:
    return v.say(
        "Hello. The group {cohort} is for people who have a coach here. If you would like to join, please ask {by}"
        " how.",
        cohort=v.name(said.cohort),
        by=v.name(said.by),
    )


@phrase(cm.CohortAsks)
def cohort_asks(said: cm.CohortAsks, v: Voice) -> str:
    return v.say("From now on I also ask you each week about this: {measure}.", measure=names.measure(v, said.measure))


@phrase(cm.AlreadyInCohort)
def already_in_cohort(said: cm.AlreadyInCohort, v: Voice) -> str:
    return v.say("You are in {cohort} already. There is nothing you need to do.", cohort=v.name(said.cohort))


@phrase(cm.MyCohorts)
def my_cohorts(said: cm.MyCohorts, v: Voice) -> str:
    if not said.cohorts:
        return v.say("You are in no group right now. Whoever runs one can give you a link.")
    lines = (
        v.say("• {cohort}: from {first} to {last}", cohort=v.name(name), first=v.day(first), last=v.day(last))
        for name, first, last in said.cohorts
    )
    return v.lines(v.say("You are in:"), *lines)


@phrase(cm.LeaveCohortSure)
def leave_cohort_sure(said: cm.LeaveCohortSure, v: Voice) -> str:
    return v.say(
        "Do you want to leave {cohort}? Nobody in the group is told. Your check-ins with me go on as before.",
        cohort=v.name(said.cohort),
    )


@phrase(cm.LeftCohort)
def left_cohort(said: cm.LeftCohort, v: Voice) -> str:
    return v.say(
        "Done. You are out of {cohort}. Thank you for the time you gave it. All else stays as it was.",
        cohort=v.name(said.cohort),
    )


@phrase(cm.TakenOutOfCohort)
def taken_out_of_cohort(said: cm.TakenOutOfCohort, v: Voice) -> str:
    return v.say(
        "{by} took you out of the group {cohort}. All else stays as it was, and your check-ins go on. If you want to"
        " know why, please ask {by}.",
        by=v.name(said.by),
        cohort=v.name(said.cohort),
    )


@phrase(cm.NotInCohort)
def not_in_cohort(said: cm.NotInCohort, v: Voice) -> str:
    return v.say(
        "You are not in the group {cohort} any more. Your coach thinks it is not the right one for you now, and will"
        " be glad to tell you more. Everything else stays as it was.",
        cohort=v.name(said.cohort),
    )


@phrase(cm.CohortOff)
def cohort_off(said: cm.CohortOff, v: Voice) -> str:
    return v.say("The group {cohort} will not go on. All else stays as it was.", cohort=v.name(said.cohort))


@phrase(cm.CohortOver)
def cohort_over(said: cm.CohortOver, v: Voice) -> str:
    lead = v.say("The group {cohort} is over. Thank you for being in it.", cohort=v.name(said.cohort))
    rest = v.say("Your own check-ins go on as before.")
    if not said.kept:
        return v.sentences(lead, rest)
    own = v.say_n(
        "You kept {kept} of your {n} check-in.",
        "You kept {kept} of your {n} check-ins.",
        said.asked,
        kept=v.number(said.kept),
    )
    return v.sentences(lead, own, v.say("Each one was worth it."), rest)


@phrase(cm.NumberInGroup)
def number_in_group(said: cm.NumberInGroup, v: Voice) -> str:
    return v.say(
        "I saw a number from you in the group chat. I did not keep it, and I said nothing there. If it was meant for"
        " me, please send it here. You may want to delete it there."
    )


@phrase(cm.NumberInGroupOfStaff)
def number_in_group_of_staff(said: cm.NumberInGroupOfStaff, v: Voice) -> str:
    return v.say(
        "I saw a number from you in the group chat that may be somebody's reading. I did not keep it. You may want to"
        " delete it there."
    )


# --- the group chat ---------------------------------------------------------------------------------------------


@phrase(cm.GroupHello)
def group_hello(said: cm.GroupHello, v: Voice) -> str:
    return v.paragraphs(
        v.say_n(
            "Hello. I am Samehour. I go along with <b>{cohort}</b>: {n} week, from {first} on.",
            "Hello. I am Samehour. I go along with <b>{cohort}</b>: {n} weeks, from {first} on.",
            said.weeks,
            cohort=v.name(said.cohort),
            first=v.day(said.first),
        ),
        v.say(
            "Here I only say what you all did together, never a name and never anybody's number. I keep nothing you"
            " write here. Please send me your own numbers in our private chat."
        ),
    )


@phrase(cm.GroupGoodbye)
def group_goodbye(said: cm.GroupGoodbye, v: Voice) -> str:
    return v.say("From here on I say no more about {cohort} in this chat. All the best.", cohort=v.name(said.cohort))


@phrase(cm.GroupStarts)
def group_starts(said: cm.GroupStarts, v: Voice) -> str:
    return v.say_n(
        "<b>{cohort}</b> starts today: {n} week together. The first check-in comes in your private chat with me.",
        "<b>{cohort}</b> starts today: {n} weeks together. The first check-in comes in your private chat with me.",
        said.weeks,
        cohort=v.name(said.cohort),
    )


@phrase(cm.GroupWeek)
def group_week(said: cm.GroupWeek, v: Voice) -> str:
    week = said.week
    if week.number:
        head = v.say("<b>Week {number} of {weeks}</b>", number=v.number(week.number), weeks=v.number(said.weeks))
    else:
        head = v.bold(check_in_name(v, week))
    lines = [head]
    if week.kept is not None:
        lines.append(v.say_n("{n} of you checked in.", "{n} of you checked in.", week.kept))
    if week.total is not None and said.counts != Counted.CHECK_INS:
        lines.append(v.say("This week, together: {total}.", total=total(v, said.counts, week.total)))
    so_far = said.together
    if so_far is not None and so_far.total is not None and week.number:
        whole = total(v, said.counts, so_far.total)
        of = scope(v, so_far.weeks, so_far.people or 0)
        lines.append(v.say("So far, together: {total} ({scope}).", total=whole, scope=of))
    return v.lines(*lines)


@phrase(cm.GroupMilestone)
def group_milestone(said: cm.GroupMilestone, v: Voice) -> str:
    return v.say("🎉 Together you have passed {total}.", total=total(v, said.counts, said.reached))


@phrase(cm.GroupClosing)
def group_closing(said: cm.GroupClosing, v: Voice) -> str:
    r = said.report
    everybody = replace(r, stayed=r.members)  # members who left are not pointed out in front of everybody
    lines = took_part(v, everybody) if r.members >= LEAST_PEOPLE else []
    lines += [summed(v, s) for s in r.sums if s.total is not None]
    lines += [changed(v, c) for c in r.changes if isinstance(c, Paired)]
    return v.paragraphs(
        v.say("<b>{cohort}</b> is over. Thank you, all of you.", cohort=v.name(r.name)),
        v.lines(*lines),
        v.say("Your own part is in your private chat with me."),
    )
