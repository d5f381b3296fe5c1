"""A cohort's figures in words: totals, attendance, the closing report."""

from __future__ import annotations

from decimal import Decimal

from bot.rendering.phrases import names
from bot.rendering.phrases.cohort_labels import COUNTS
from bot.rendering.voice import N_, Html, Voice
from core.quantity import Amount, Unit
from core.watching.cohort import Closing, CohortWeek, Counted, Paired, Sum, TooFew

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
    "coach": N_("Please press one of the buttons."),
}


def counted(v: Voice, counts: str) -> str:
    return v.say(COUNTS.get(counts, COUNTS["check_ins"]))


def total(v: Voice, counts: str, n: int) -> Html:
    """An amount of the pooled measure."""
    figure = v.numbers.isolate(v.number(n))
    match counts:
        case Counted.MINUTES:
            return v.say_n("{figure} active minute", "{figure} active minutes", n, figure=figure)
        case Counted.SESSIONS:
            return v.say_n("{figure} session", "{figure} sessions", n, figure=figure)
        case _:
            return v.say_n("{figure} check-in kept", "{figure} check-ins kept", n, figure=figure)


def kept_of(v: Voice, kept: int, asked: int) -> Html:
    return v.say("{kept} of {asked}", kept=v.number(kept), asked=v.number(asked))


def check_in_name(v: Voice, week: CohortWeek) -> Html:
    return v.say("Week {number}", number=v.number(week.number)) if week.number else v.say_in("picture", "Start")


def report(v: Voice, r: Closing) -> Html:
    """The closing report as text."""
    return v.paragraphs(
        v.say("<b>{name}</b>: the closing report", name=v.name(r.name)),
        v.lines(*took_part(v, r)),
        _attendance(v, r.attendance) if r.attendance else "",
        v.lines(*(summed(v, s) for s in r.sums)),
        v.lines(*(changed(v, c) for c in r.changes)),
    )


def _attendance(v: Voice, weeks: tuple[CohortWeek, ...]) -> Html:
    if all(week.kept is None for week in weeks):
        return v.say("{counted}: {withheld}", counted=counted(v, Counted.CHECK_INS.value), withheld=withheld(v))
    return v.lines(v.say("How many checked in:"), *(attended(v, week) for week in weeks))


def took_part(v: Voice, r: Closing) -> list[Html]:
    people = v.say_n("{n} person took part", "{n} people took part", r.members)
    if r.stayed != r.members:
        people = v.listed([people, v.say_n("{n} stayed to the end", "{n} stayed to the end", r.stayed)])
    lines = [people]
    if r.completion is not None and r.kept is not None and r.asked is not None:
        lines.append(
            v.say(
                "Check-ins kept: {kept} ({percent} %)",
                kept=kept_of(v, r.kept, r.asked),
                percent=v.number(r.completion, 0),
            )
        )
    return lines


def attended(v: Voice, week: CohortWeek) -> Html:
    if week.kept is None or week.asked is None:
        return v.say("• {week}: {withheld}", week=check_in_name(v, week), withheld=withheld(v))
    return v.say("• {week}: {kept}", week=check_in_name(v, week), kept=kept_of(v, week.kept, week.asked))


def withheld(v: Voice) -> Html:
    """Instead of a figure. It does not say why this one: that would say something of the people in it."""
    return v.say("not shown, so that nobody can be made out")


def summed(v: Voice, s: Sum) -> Html:
    if s.total is None:
        return v.say("{counted}: {withheld}", counted=counted(v, s.counts), withheld=withheld(v))
    return v.say("{total} ({scope})", total=total(v, s.counts, s.total), scope=scope(v, s.weeks, s.people or 0))


def scope(v: Voice, weeks: int, people: int) -> Html:
    """Of how many weeks and people a total is."""
    if not weeks:  # of a report made before it was counted
        return v.say_n("{n} person", "{n} people", people)
    return v.listed([v.say_n("{n} week", "{n} weeks", weeks), v.say_n("{n} person", "{n} people", people)])


def changed(v: Voice, c: Paired | TooFew) -> Html:
    measure = names.measure(v, c.measure)
    if isinstance(c, TooFew):
        return v.say("{counted}: {withheld}", counted=measure, withheld=withheld(v))
    return v.say_n(
        "{measure}: {before} at the start, {after} at the end. Change: {mean}, 95 % interval {low} to {high}, of {n}"
        " person",
        "{measure}: {before} at the start, {after} at the end. Change: {mean}, 95 % interval {low} to {high}, of {n}"
        " people",
        c.n,
        measure=measure,
        before=figure(v, c.before, c.unit),
        after=figure(v, c.after, c.unit),
        mean=figure(v, c.mean, c.unit, sign=True),
        low=figure(v, c.low, c.unit, sign=True),
        high=figure(v, c.high, c.unit, sign=True),
    )


def figure(v: Voice, value: Decimal, unit: Unit, *, sign: bool = False) -> str:
    """A mean to one decimal, with its unit; a rating without."""
    rounded = value.quantize(Decimal("0.1"))
    rounded = abs(rounded) if rounded == 0 else rounded
    if unit is Unit.POINT:
        bare = v.numbers.plain(abs(rounded), 1)
        mark = "" if not sign else "\u2212" if rounded < 0 else "+" if rounded > 0 else ""
        return v.numbers.isolate(f"{mark}{bare}")
    return v.signed(Amount(rounded, unit)) if sign else v.amount(Amount(rounded, unit))
