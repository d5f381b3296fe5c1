"""Messages to an organiser about a cohort. In texts it is a "group"; the group chat is called a chat."""

from __future__ import annotations

from datetime import date

from bot.rendering.phrases import cohort_figures, phrase
from bot.rendering.voice import N_, Html, Voice
from core.dialogue.client import messages_to_coach
from core.dialogue.organiser import messages as om
from core.watching.cohort import LONGEST, MOST_EVER, SHORTEST, CohortWeek, Counted
from core.watching.disclosure import LEAST_PEOPLE

STAGES: dict[str, str] = {
    "coming": N_("{name}: starts {day}"),
    "running": N_("{name}: running until {day}"),
    "over": N_("{name}: over since {day}"),
    "called_off": N_("{name}: called off"),
}
UNCLEAR: dict[str, str] = {
    "name": N_("What should the group be called? Send a short name."),
    "start": N_("I need a day from today on, at most half a year ahead. Press one, or send it like 4 May."),
    "weeks": N_("A group runs for {low} to {high} weeks. Press a number, or send one."),
    "time": N_("I need a time of day, like 18:00. You can send a day with it, like Tuesday 18:00."),
    "counts": N_("Please press what the group adds up."),
    "most": N_("I need a number from {least} to {most}."),
    "coach": N_("Please press one of the buttons."),
}


# --- setting one up ---------------------------------------------------------------------------------------------


@phrase(om.AskCohortName)
def ask_cohort_name(said: om.AskCohortName, v: Voice) -> str:
    question = UNCLEAR["name"]
    ask = v.say(question)
    if not said.first:
        return ask
    lead = v.say(
        "A group starts together and runs for 4 to 12 weeks. It adds up check-ins, minutes or sessions: never weight or"
        " waist. You see how the group does as a whole, and nobody is compared with anybody."
    )
    return v.paragraphs(lead, ask)


@phrase(om.AskCohortStart)
def ask_cohort_start(said: om.AskCohortStart, v: Voice) -> str:
    return v.say("When does {name} start? Press a day, or send one.", name=v.name(said.name))


@phrase(om.AskCohortWeeks)
def ask_cohort_weeks(said: om.AskCohortWeeks, v: Voice) -> str:
    return v.say("For how many weeks?")


@phrase(om.AskCohortTime)
def ask_cohort_time(said: om.AskCohortTime, v: Voice) -> str:
    return v.say(
        "When do they check in? Press a time for {weekday}, or send another day with a time, like Tuesday 18:00."
        " Members who check in at a time of their own keep it.",
        weekday=v.weekday(said.weekday),
    )


@phrase(om.AskCohortCounts)
def ask_cohort_counts(said: om.AskCohortCounts, v: Voice) -> str:
    return v.say("What does the group add up?")


@phrase(om.AskCohortMost)
def ask_cohort_most(said: om.AskCohortMost, v: Voice) -> str:
    return v.say(
        "How many people may one link let in? Press a number, or send one. If a link travels further than you meant, it"
        " stops there. You hear of everybody who joins."
    )


@phrase(om.AskCohortCoach)
def ask_cohort_coach(said: om.AskCohortCoach, v: Voice) -> str:
    return v.say(
        "Who looks after people who are new here? Their answers go to that coach, never to you. Without one, only"
        " people who have a coach here already can join."
    )


@phrase(om.CohortUnclear)
def cohort_unclear(said: om.CohortUnclear, v: Voice) -> str:
    return v.say(
        UNCLEAR.get(said.question, UNCLEAR["name"]),
        low=v.number(SHORTEST),
        high=v.number(LONGEST),
        least=v.number(LEAST_PEOPLE),
        most=v.number(MOST_EVER),
    )


@phrase(om.CohortMade)
def cohort_made(said: om.CohortMade, v: Voice) -> str:
    return v.paragraphs(
        v.bold(v.name(said.name)),
        v.lines(
            _first_and_last(v, said.first, said.last, said.weeks),
            v.say("Check-in: {weekday}, {time}", weekday=v.weekday(said.weekday), time=v.time(said.at)),
            v.say("Added up: {counted}", counted=cohort_figures.counted(v, said.counts)),
        ),
    )


def _first_and_last(v: Voice, first: date, last: date, weeks: int) -> Html:
    return v.say_n(
        "{n} week, from {first} to {last}", "{n} weeks, from {first} to {last}", weeks, first=v.day(first),
        last=v.day(last),
    )  # fmt: skip


@phrase(om.JoinLink)
def join_link(said: om.JoinLink, v: Voice) -> str:
    who = (
        v.say("It works for everybody, until this day: {day}.", day=v.day(said.until))
        if said.newcomers
        else v.say("It works for people who have a coach here already, until this day: {day}.", day=v.day(said.until))
    )
    return v.paragraphs(
        v.say("Pass this link on to whoever should be in <b>{name}</b>:", name=v.name(said.cohort)),
        Html(said.link),
        v.lines(
            who,
            v.say_n("It lets in {n} person.", "It lets in {n} people at most.", said.most) if said.most else "",
        ),
    )


@phrase(om.JoiningOver)
def joining_over(said: om.JoiningOver, v: Voice) -> str:
    return v.say(
        "Half-time of {name} was on {day}, and nobody can join after that.",
        name=v.name(said.cohort),
        day=v.day(said.until),
    )


@phrase(om.JoinLinksRevoked)
def join_links_revoked(said: om.JoinLinksRevoked, v: Voice) -> str:
    return v.say("Done. No link for {name} made so far works any more. Who is in stays in.", name=v.name(said.cohort))


@phrase(om.NamedAsCoach)
def named_as_coach(said: om.NamedAsCoach, v: Voice) -> str:
    return v.say(
        "{by} runs a group, {name}, and named you as its coach. People who are new here and join it come into your"
        " caseload. If that is a mistake, please tell {by}.",
        by=v.name(said.by),
        name=v.name(said.cohort),
    )


@phrase(messages_to_coach.ClientInCohort)
def client_in_cohort(said: messages_to_coach.ClientInCohort, v: Voice) -> str:
    return v.say(
        "{name} has joined a group: {cohort}, run by {by}. Is that all right? They stay with you, and {by} sees no"
        " readings of theirs. Until you say yes, {name} does not count there.",
        name=v.name(said.name),
        cohort=v.name(said.cohort),
        by=v.name(said.by),
    )


@phrase(om.AskOrganiser)
def ask_organiser(said: om.AskOrganiser, v: Voice) -> str:
    return v.say("Who should be able to run groups? Send their name, and I make a link for them.")


# --- looking after one ------------------------------------------------------------------------------------------


def _line(v: Voice, line: om.CohortLine) -> Html:
    day = line.starts if line.stage == "coming" else line.last
    return v.say(STAGES.get(line.stage, STAGES["coming"]), name=v.bold(v.name(line.name)), day=v.day(day))


@phrase(om.CohortList)
def cohort_list(said: om.CohortList, v: Voice) -> str:
    return v.paragraphs(v.say("Your groups:"), v.lines(*(_line(v, line) for line in said.rows)))


@phrase(om.CohortSaid)
def cohort_said(said: om.CohortSaid, v: Voice) -> str:
    people = v.say_n("{n} person takes part", "{n} people take part", said.here)
    if said.gone:
        people = v.listed([people, v.say_n("{n} has left", "{n} have left", said.gone)])
    together = sum(w.total for w in said.told if w.total is not None)
    return v.paragraphs(
        _line(v, said.line),
        v.lines(
            _first_and_last(v, said.line.starts, said.line.last, said.weeks),
            v.say("Check-in: {weekday}, {time}", weekday=v.weekday(said.weekday), time=v.time(said.at)),
            v.say("Added up: {counted}", counted=cohort_figures.counted(v, said.counts)),
            people,
            v.say("A group chat is connected.") if said.grouped else v.say("No group chat is connected."),
        ),
        v.lines(*(_week(v, w, said.counts) for w in said.told)),
        v.say(
            "Together so far: {total} ({scope}).",
            total=cohort_figures.total(v, said.counts, together),
            scope=cohort_figures.scope(v, sum(w.total is not None for w in said.told), said.people),
        )
        if together
        else "",
    )


def _week(v: Voice, week: CohortWeek, counts: str) -> Html:
    name = cohort_figures.check_in_name(v, week)
    if week.kept is None or week.asked is None:
        attended = v.say("{week}: {withheld}", week=name, withheld=cohort_figures.withheld(v))
    else:
        kept = cohort_figures.kept_of(v, week.kept, week.asked)
        attended = v.say("{week}: {kept} checked in", week=name, kept=kept)
    if counts == Counted.CHECK_INS or not week.number:
        return attended
    if week.total is None:
        hidden = v.say(
            "{counted}: {withheld}",
            counted=cohort_figures.counted(v, counts),
            withheld=cohort_figures.withheld(v),
        )
        return v.lines(attended, hidden) if week.kept is not None else attended
    return v.listed([attended, cohort_figures.total(v, counts, week.total)])


@phrase(om.CohortNotYours)
def cohort_not_yours(said: om.CohortNotYours, v: Voice) -> str:
    return v.say("There is no such group of yours, or nobody like that in it. Send /cohort to see your groups.")


@phrase(om.CohortPeople)
def cohort_people(said: om.CohortPeople, v: Voice) -> str:
    head = v.bold(v.name(said.cohort))
    if said.pages > 1:
        page = v.say("page {page} of {pages}", page=v.number(said.page + 1), pages=v.number(said.pages))
        head = v.listed([head, page])
    if not said.people:
        return v.paragraphs(head, v.say("Nobody has joined yet."))
    lines = [
        v.say("{name}: since {day}", name=v.name(name), day=v.day_of_year(joined))
        if left is None
        else v.say(
            "{name}: from {day} to {left}", name=v.name(name), day=v.day_of_year(joined), left=v.day_of_year(left)
        )
        for name, joined, left in said.people
    ]
    names = v.listed([v.name(name) for name in said.waiting])
    waiting = v.say("Waiting for a yes of their coach: {names}", names=names) if said.waiting else ""
    return v.paragraphs(head, v.lines(*lines), waiting)


@phrase(om.SomebodyJoined)
def somebody_joined(said: om.SomebodyJoined, v: Voice) -> str:
    lines = [
        v.say("{name} has joined {cohort}.", name=v.name(said.name), cohort=v.name(said.cohort)),
        v.say_n("{n} person takes part", "{n} people take part", said.here),
    ]
    if said.coach:
        waits = v.say(
            "I asked {coach}, who looks after {name}. Until they say yes, {name} does not count.",
            coach=v.name(said.coach),
            name=v.name(said.name),
        )
        lines.append(waits)
    return v.lines(*lines)


@phrase(om.CoachSaidNo)
def coach_said_no(said: om.CoachSaidNo, v: Voice) -> str:
    return v.say("{name} is not in {cohort}: their coach said no.", name=v.name(said.name), cohort=v.name(said.cohort))


@phrase(om.CountsInCohort)
def counts_in_cohort(said: om.CountsInCohort, v: Voice) -> str:
    return v.say("Good. {name} counts in {cohort} from now on.", name=v.name(said.name), cohort=v.name(said.cohort))


@phrase(om.RemoveSure)
def remove_sure(said: om.RemoveSure, v: Voice) -> str:
    return v.say(
        "Take {name} out of {cohort}? I tell them kindly. What they did until today still counts.",
        name=v.name(said.name),
        cohort=v.name(said.cohort),
    )


@phrase(om.MemberRemoved)
def member_removed(said: om.MemberRemoved, v: Voice) -> str:
    return v.say("{name} is no longer in {cohort}, and knows.", name=v.name(said.name), cohort=v.name(said.cohort))


@phrase(om.EndCohortSure)
def end_cohort_sure(said: om.EndCohortSure, v: Voice) -> str:
    if said.begun:
        return v.say(
            "End {cohort} now? The closing report is made of what there is. It cannot be undone.",
            cohort=v.name(said.cohort),
        )
    return v.say("Call {cohort} off? Everybody in it is told. It cannot be undone.", cohort=v.name(said.cohort))


@phrase(om.CohortCalledOff)
def cohort_called_off(said: om.CohortCalledOff, v: Voice) -> str:
    return v.say("{cohort} is called off, and everybody in it is told.", cohort=v.name(said.cohort))


# --- the group chat ---------------------------------------------------------------------------------------------


@phrase(om.GroupLink)
def group_link(said: om.GroupLink, v: Voice) -> str:
    return v.paragraphs(
        v.say(
            "Open this link and choose the chat of {name}. It works once, for you, until this day: {day}.",
            name=v.name(said.cohort),
            day=v.day(said.until),
        ),
        Html(said.link),
        v.say("Or bring me into the chat and send there: /cohort bind"),
        v.say("The chat hears only figures of five people or more. What is said there I neither keep nor answer."),
    )


@phrase(om.GroupIsTied)
def group_is_tied(said: om.GroupIsTied, v: Voice) -> str:
    return v.say("A group chat is connected to {name}.", name=v.name(said.cohort))


@phrase(om.GroupTied)
def group_tied(said: om.GroupTied, v: Voice) -> str:
    return v.say("The group chat is connected to {name}, and I said hello there.", name=v.name(said.cohort))


@phrase(om.GroupUntied)
def group_untied(said: om.GroupUntied, v: Voice) -> str:
    return v.say("No group chat hears of {name} any more.", name=v.name(said.cohort))


@phrase(om.GroupLost)
def group_lost(said: om.GroupLost, v: Voice) -> str:
    return v.say(
        "I was taken out of the group chat of {name}, so it hears nothing more from me. The group itself goes on.",
        name=v.name(said.cohort),
    )


@phrase(om.NothingToTie)
def nothing_to_tie(said: om.NothingToTie, v: Voice) -> str:
    return v.say("You wanted to connect a chat, but no group of yours can be connected to it.")


@phrase(om.TieWhich)
def tie_which(said: om.TieWhich, v: Voice) -> str:
    return v.say("Which group do you want to connect to that chat? Press it, and I make a link for it.")


# --- the end ----------------------------------------------------------------------------------------------------


@phrase(om.ClosingSaid)
def closing_said(said: om.ClosingSaid, v: Voice) -> str:
    return cohort_figures.report(v, said.report)
