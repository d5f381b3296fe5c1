"""A client's card and plan as text, in the client's own units, because those are what they will talk about."""

from __future__ import annotations

from bot.foundation.reader import length
from bot.rendering.phrases import bands, names, phrase
from bot.rendering.phrases.coach import evidence, flag
from bot.rendering.phrases.health import facts
from bot.rendering.phrases.staff import STATUS
from bot.rendering.voice import N_, Html, Voice
from core.care import Programme, Slot
from core.dialogue.client.messages import VerdictSaid
from core.dialogue.staff import messages as sm
from core.watching.digest import LIMIT

VERDICTS: dict[str, str] = {
    "no_baseline": N_("first one"),
    "starting": N_("part of the start"),
    "too_soon": N_("too soon to compare"),
    "within_error": N_("within chance"),
    "better": N_("better"),
    "worse": N_("worse"),
    "changed": N_("changed"),
    "not_comparable": N_("taken in another way"),
}
STRENGTHS: dict[str, str] = {
    "possible": N_("possible, not confirmed"),
    "twice": N_("seen twice, not certain yet"),
    "confirmed": N_("confirmed"),
}
NUMBERS: dict[str, str] = {
    "shown": N_("They see their numbers."),
    "coach_only": N_("Body numbers come to you and are not shown to them."),
}
BODIES: dict[str, str] = {"nice": N_("British"), "aha": N_("American"), "esc": N_("European")}
MOST_FLAGS = 8


@phrase(sm.CardSaid)
def card_said(said: sm.CardSaid, v: Voice) -> str:
    """One message: if it is too long, bands are dropped first, then older flags, and the note is truncated."""
    full = _card(said, v, bands_too=True, flags=MOST_FLAGS, note=1000)
    if length(full) <= LIMIT:
        return full
    short = _card(said, v, bands_too=False, flags=MOST_FLAGS, note=500)
    return short if length(short) <= LIMIT else _card(said, v, bands_too=False, flags=3, note=200)


def _card(said: sm.CardSaid, v: Voice, *, bands_too: bool, flags: int, note: int) -> Html:
    return v.paragraphs(
        head(said, v),
        _results(said, v, bands_too=bands_too),
        _flags(said, v, flags),
        v.say("<b>Note</b>: {note}", note=v.typed(said.note, note)) if said.note else "",
    )


def head(said: sm.CardSaid, v: Voice) -> Html:
    who = v.bold(v.name(said.name))
    if said.age is not None:
        who = v.listed([who, v.say_n("{n} year", "{n} years", said.age)])
    state: str = ""
    if said.status == "paused" and said.paused_until is not None:
        state = v.say("Takes a break until this day: {day}.", day=v.day(said.paused_until))
    elif said.status == "finished":
        state = v.say("The programme is over; nothing is asked.")
    elif said.status == "invited":
        invited = v.say(STATUS[said.status])
        state = v.say("Is {status}.", status=invited)
    elif said.status == "left":
        state = v.say("Care has ended.")
    elif said.status in STATUS:
        state = v.say("Not there yet: still answering the first questions.")
    return v.lines(
        who,
        v.say("They call themselves {name}.", name=v.name(said.own_name)) if said.own_name else "",
        v.say("You stand in for {name}.", name=v.name(said.for_coach)) if said.for_coach else "",
        state,
        "" if said.reachable else v.say("Messages to them do not arrive at the moment."),
        slot_line(v, said.slot),
        v.say("Last check-in: {day}", day=v.day(said.answered)) if said.answered else v.say("No check-in yet."),
        v.say("Measures: {measures}", measures=names.measures(v, said.measures)),
        cautions_line(v, said.cautions, said.medicines),
        before_exercise(v, said.before_exercise),
        directed_line(v, said.directed_by) if said.directed else "",
        v.say(NUMBERS.get(said.numbers, "")) if said.numbers == "coach_only" else "",
    )


def directed_line(v: Voice, by: str) -> Html:
    """Frequent weighing, and who asked for it, where that was noted."""
    if by:
        return v.say("Frequent weighing, at the request of {who}.", who=v.typed(by))
    return v.say("Weighing is directed by a clinician: as often as they asked.")


def slot_line(v: Voice, slot: Slot | None) -> Html:
    if slot is None:
        return Html("")
    return v.say("Check-in: {weekday}, {time}", weekday=v.weekday(slot.weekday), time=v.time(slot.at))


def before_exercise(v: Voice, verdict: str) -> Html:
    advice = names.before_exercise(v, verdict)
    return v.say("Before exercise: {verdict}", verdict=advice) if advice else Html("")


def cautions_line(v: Voice, cautions: tuple[str, ...], medicines: tuple[str, ...]) -> Html:
    if not cautions:
        return Html("")
    return v.say("Bear in mind: {cautions}", cautions=facts(v, cautions, medicines))


def _results(said: sm.CardSaid, v: Voice, *, bands_too: bool) -> Html:
    lines = [result_line(v, one, bands_too=bands_too) for one in said.lines]
    if not lines:
        return Html("")
    head = v.say("<b>Last results</b>, with what a client reads about them")
    return v.lines(head if bands_too else v.say("<b>Last results</b>"), *lines)


def result_line(v: Voice, one: sm.CardLine, *, bands_too: bool = True) -> Html:
    """The newest value of one measure, with its verdict and what a client reads about it."""
    about = [
        v.amount(one.amount, measure=one.measure, second=one.second),
        v.short_date(one.on),
    ]
    if one.verdict is not None:
        about.append(verdict(v, one.verdict))
    value = v.say("{measure}: {about}", measure=names.measure(v, one.measure), about=v.listed(about))
    line = Html(f"• {value}.")
    if one.words:
        line = v.sentences(line, v.say("In their words: “{words}”", words=v.typed(one.words, 300)))
    if one.band is None or not bands_too:
        return line
    return v.sentences(line, v.say("“{band}”", band=bands.band(v, one.band.source, one.band.band)))


def verdict(v: Voice, said: VerdictSaid) -> Html:
    """The verdict in a few words: "worse (+4 cm, chance up to 2.1 cm), confirmed"."""
    what = v.say(VERDICTS.get(said.kind, VERDICTS["changed"]))
    if said.difference is not None and said.error is not None:
        what = v.say(
            "{what} ({difference}, chance up to {error})",
            what=what,
            difference=v.signed(said.difference, said.measure),
            error=v.size(said.error, said.measure),
        )
    return v.listed([what, v.say(STRENGTHS[said.strength])]) if said.strength in STRENGTHS else what


def _flags(said: sm.CardSaid, v: Voice, most: int) -> Html:
    flags = said.flags
    if not flags:
        return Html("")
    lines = []
    for one in flags[:most]:
        facts = evidence(v, one.measure, one.evidence, said.units)
        since = v.say("Since {day}.", day=v.short_date(one.since.astimezone(v.reader.zone).date()))
        seen = v.say("Seen.") if one.seen else ""
        lines.append(
            v.sentences(Html("•"), flag(v, one.code), v.say("{facts}.", facts=facts) if facts else "", since, seen)
        )
    more = len(flags) - most
    return v.lines(
        v.say("<b>Open flags</b>"), *lines, v.say_n("And {n} more.", "And {n} more.", more) if more > 0 else ""
    )


def _programme(v: Voice, programme: Programme | None) -> Html:
    if programme is None:
        return v.say("Programme: no set end")
    if programme.ended is not None:
        return v.say("Programme: over since {day}", day=v.full_date(programme.ended))
    return v.say_n(
        "Programme: {n} week, until {day}",
        "Programme: {n} weeks, until {day}",
        programme.weeks,
        day=v.full_date(programme.last),
    )


@phrase(sm.PlanSaid)
def plan_said(said: sm.PlanSaid, v: Voice) -> str:
    p = said.plan
    own = [
        v.say("{measure}: every {days} days", measure=names.measure(v, m), days=v.number(n)) for m, n in p.per_measure
    ]
    body = v.say(BODIES.get(p.pressure_body, p.pressure_body))
    return v.lines(
        v.say("<b>Plan of {name}</b>", name=v.name(said.name)),
        v.say("Measures: {measures}", measures=names.measures(v, p.measures)),
        v.say_n("Retests every {n} day", "Retests every {n} days", p.retest_days),
        *own,
        slot_line(v, said.slot),
        cautions_line(v, said.cautions, said.medicines),
        directed_line(v, p.directed_by) if p.directed_weighing else v.say("Between weigh-ins I slow weighing down."),
        v.say("Losing weight is agreed.") if p.loss_is_planned else v.say("Losing weight is not planned."),
        v.say(NUMBERS.get(p.numbers.value, NUMBERS["shown"])),
        v.say("Blood pressure limits: {body}", body=body),
        _programme(v, p.programme),
        v.say("Compared with the start on {day}.", day=v.full_date(p.baseline_since.astimezone(v.reader.zone).date()))
        if p.baseline_since
        else "",
    )
