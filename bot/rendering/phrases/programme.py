"""The end of a programme, in words: a report that is glad of what was kept, and honest about what cannot be told."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from bot.rendering.phrases import names, phrase
from bot.rendering.phrases.looking_back import activity_line
from bot.rendering.voice import N_, Html, Voice
from core.dialogue.client import messages_to_coach as cm
from core.dialogue.client import report_messages as rm
from core.dialogue.client.report import GoalSaid, Report
from core.dialogue.client.results import Result

KEEP: dict[str, str] = {
    "same_hour": N_("Keep your day and your hour. It is what made this work."),
    "keep_active": N_("Keep moving as you do. It is what health advice asks for."),
    "more_active": N_("Move a little more, bit by bit. Health advice is 150 minutes a week, and each walk counts."),
    "keep_strength": N_("Keep up your strength work on two days a week."),
    "more_strength": N_("Try strength work on two days a week. Standing up from a chair counts."),
}
DIRECTIONS: dict[str, str] = {
    "better": N_("Better"),
    "worse": N_("Worth a talk with your coach"),
    "changed": N_("Changed"),
}
ONCE: dict[str, str] = {
    "better": N_("Looks better, seen once"),
    "worse": DIRECTIONS["worse"],
    "changed": N_("Looks changed, seen once"),
}
TWICE: dict[str, str] = {  # and not sure yet: `core.judging.change`
    "better": N_("Looks better, seen twice"),
    "worse": DIRECTIONS["worse"],
    "changed": N_("Looks changed, seen twice"),
}
BY_STRENGTH = {"possible": ONCE, "twice": TWICE}
UNSURE = N_("Too close to call")
MOST_SAID = 6  # results in a message; the picture has them all


def span(v: Voice, said: Report) -> Html:
    return v.say("{first} to {last}", first=v.full_date(said.programme.starts), last=v.full_date(said.ended))


def attendance(v: Voice, said: Report) -> Html:
    if not said.asked:
        return Html("")
    return v.say("Check-ins kept: {kept} of {asked}", kept=v.number(said.kept), asked=v.number(said.asked))


def called(v: Voice, one: Result) -> Html:
    return v.typed(one.question, 60) if one.question else names.measure(v, one.measure)


def way(v: Voice, one: Result) -> Html:
    """From start to end: "104 cm → 94 cm". The arrow runs with the reader."""
    if one.start is None or one.now is None:
        only = one.now or one.last
        return Html(v.amount(only.amount, measure=one.measure, second=only.second))
    start = v.amount(one.start.amount, measure=one.measure, second=one.start.second)
    now = v.amount(one.now.amount, measure=one.measure, second=one.now.second)
    return v.say("{first} → {last}", first=start, last=now)


def goal(v: Voice, one: GoalSaid) -> Html:
    measure = names.measure(v, one.measure)
    target = v.amount(one.target, measure=one.measure)
    if one.reached:
        return v.say("{measure}, goal {target}: reached.", measure=measure, target=target)
    if not one.percent:
        return v.say("{measure}, goal {target}: no change yet that is sure.", measure=measure, target=target)
    return v.say(
        "{measure}, goal {target}: {percent} % of the way.",
        measure=measure,
        target=target,
        percent=v.number(one.percent),
    )


def keep(v: Voice, said: Report) -> list[Html]:
    return [v.say(KEEP[key]) for key in said.keep]


def direction(v: Voice, one: Result) -> Html:
    """How it changed, and how sure that is."""
    if one.verdict is None:
        return v.say(UNSURE)
    known = BY_STRENGTH.get(one.verdict.strength, DIRECTIONS)
    return v.say(known.get(one.verdict.kind, UNSURE))


@phrase(rm.LastReport)
def last_report(said: rm.LastReport, v: Voice) -> str:
    report = said.report
    return v.paragraphs(
        v.lines(
            v.say("That was your programme: {days}.", days=span(v, report)),
            v.say("Thank you for staying with it. {kept}.", kept=attendance(v, report)) if report.asked else "",
        ),
        *_groups(v, (*report.changed, *report.unsure)[:MOST_SAID]),
        v.lines(*(goal(v, one) for one in report.goals), *(activity_line(v, line) for line in report.lines)),
        v.lines(*keep(v, report)),
        v.say("Your report comes as a picture and as a PDF. What would you like next?"),
    )


def _groups(v: Voice, found: Sequence[Result]) -> Iterable[Html]:
    """What changed, the surest first; then what cannot be told yet."""
    for text in dict.fromkeys((*DIRECTIONS.values(), *TWICE.values(), *ONCE.values(), UNSURE)):
        title = v.say(text)
        of_it = [one for one in found if direction(v, one) == title]
        lines = [v.say("• {measure}: {way}", measure=called(v, one), way=way(v, one)) for one in of_it]
        yield v.lines(v.bold(title), *lines) if lines else Html("")


@phrase(rm.ProgrammeOver)
def programme_over(said: rm.ProgrammeOver, v: Voice) -> str:
    first = (
        v.say("Your programme is over.")
        if said.ended is None
        else v.say("Your programme ended on {day}.", day=v.full_date(said.ended))
    )
    rest = v.say(
        "I am quiet until a new one begins. You can begin one here, or talk to {coach}.",
        coach=v.coach(said.coach),
    )
    return v.sentences(first, rest)


@phrase(rm.RoundBegins)
def round_begins(said: rm.RoundBegins, v: Voice) -> str:
    coming = "" if said.coming is None else v.say("Next check-in: {day}.", day=v.day(said.coming))
    if said.last is None:
        return v.sentences(v.say("Your programme runs."), coming)
    return v.sentences(
        v.say_n(
            "A new start: your programme takes {n} week.", "A new start: your programme takes {n} weeks.", said.weeks
        ),
        v.say("It ends around {day}.", day=v.full_date(said.last)),
        coming,
    )


@phrase(cm.ProgrammeEnded)
def programme_ended(said: cm.ProgrammeEnded, v: Voice) -> str:
    name = v.name(said.name)
    if not said.asked:
        return v.say("The programme of {name} is over. The report follows.", name=name)
    return v.say(
        "The programme of {name} is over: {kept} of {asked} check-ins kept. The report follows.",
        name=name,
        kept=v.number(said.kept),
        asked=v.number(said.asked),
    )


@phrase(cm.NewRound)
def new_round(said: cm.NewRound, v: Voice) -> str:
    return v.say(
        "{name} begins a new programme. Weeks: {weeks}. It ends about this day: {day}.",
        name=v.name(said.name),
        weeks=v.number(said.weeks),
        day=v.full_date(said.last),
    )
