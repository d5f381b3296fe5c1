"""The digest as text: one screen, the most serious first; each entry says who, what, since when and what next."""

from __future__ import annotations

import html
import re
from collections.abc import Sequence
from datetime import date

from bot.foundation.reader import length
from bot.rendering.direction import FSI, PDI, directed
from bot.rendering.phrases import phrase
from bot.rendering.phrases.coach import ended, figure, flag, followed, in_short, told, what
from bot.rendering.voice import N_, Html, Voice
from core.care import Units
from core.dialogue.staff import messages as sm
from core.watching.digest import LIMIT, NOBODY, Detail, Digest, DigestEntry, FlagFact, Size, fitted
from core.watching.flags import RULES, Code

WIDTH = 42  # characters of a line on a phone of 6 inches with the messenger's usual type (ours, an estimate)
MANY = 10**6  # lines: once it is cut to a screen, only the platform's limit remains
MOST_KNOWN = 6  # names in a line of what is known; the buttons have all of them
MOST_WORDS = 80  # characters of somebody's own words in a line of the digest
LOOK = "look"  # the step for what is over
NEXT: dict[str, str] = {
    "ring_now": N_("Ring now."),
    "ring": N_("Ring today."),
    "ask_again": N_("Ask for the repeat."),
    "doctor": N_("Suggest their doctor."),
    "write": N_("Write to them."),
    "another_way": N_("Reach them another way."),
    "look": N_("Look at the card."),
    "tell": N_("Tell them you saw it."),
    "help": N_("Offer help."),
    "new_link": N_("Send a new link."),
    "the_bot": N_("Look whether the bot runs."),
}
_TAG = re.compile("</?b>|[" + FSI + PDI + "]")


@phrase(sm.DigestSaid)
def digest_said(said: sm.DigestSaid, v: Voice) -> str:
    """One message in any language: the digest was cut to the coach's language then, which may have changed since."""
    return _whole(fitted(said.digest, lambda made: size(made, v), Size(LIMIT, MANY)), v)


@phrase(sm.PeopleNamed)
def people_named(said: sm.PeopleNamed, v: Voice) -> str:
    if said.pages == 1:
        return v.say("Everybody the digest names. Press one to open the card.")
    return v.say(
        "Everybody the digest names, page {page} of {pages}. Press one to open the card.",
        page=v.number(said.page + 1),
        pages=v.number(said.pages),
    )


def size(made: Digest, v: Voice) -> Size:
    """Of a digest as this reader gets it, without a limit."""
    whole = _whole(made, v)
    return Size(length(directed(whole) if v.reader.right_to_left else whole), lines(whole))


def lines(text: str) -> int:
    """How many lines a text takes on a phone."""
    return sum(map(_wrapped, html.unescape(_TAG.sub("", text)).split("\n")))


def _wrapped(paragraph: str) -> int:
    used, count = 0, 1
    for word in paragraph.split(" "):
        if used and used + 1 + len(word) > WIDTH:
            used, count = 0, count + 1
        used += len(word) + bool(used)
        count, used = count + max(0, used - 1) // WIDTH, used - max(0, used - 1) // WIDTH * WIDTH
    return count


def _whole(d: Digest, v: Voice) -> Html:
    return v.paragraphs(
        _head(d, v),
        v.lines(_section(v, "", d.needs), _still_open(d, v)),
        _section(v, v.say("Worth knowing"), d.changes),
        _section(v, v.say("Gone quiet"), d.quiet),
        v.lines(_left_out(d, v), _known(d, v), _away(d, v), _week(d, v)),
    )


def _head(d: Digest, v: Voice) -> Html:
    if d.needed:
        today = v.say_n("{n} person needs you today", "{n} people need you today", d.needed)
    else:
        today = v.say("nobody needs you today")
    return v.say("<b>Digest of {day}: {today}</b>", day=v.day(d.day), today=today)


def _week(d: Digest, v: Voice) -> Html:
    """The week in a line: how many of those asked have answered, and that nobody else has anything."""
    counts = {"kept": v.number(d.kept), "asked": v.number(d.asked)}
    quiet = d.calm and not d.needed
    if quiet and not d.asked:
        return v.say("A quiet week: no check-in was due.")
    if quiet and d.kept and not d.known and not d.often:
        return v.say("A quiet week. Checked in: {kept} of {asked} asked. Nobody is weighing too often.", **counts)
    often = ""
    if d.often:
        often = v.say_n("Still weighing often, as you know: {n}.", "Still weighing often, as you know: {n}.", d.often)
    if quiet and d.kept:
        return v.sentences(v.say("A quiet week. Checked in: {kept} of {asked} asked.", **counts), often)
    return v.sentences(
        v.say("Checked in this week: {kept} of {asked} asked.", **counts) if d.asked else "",
        often if d.calm else "",
        v.say_n("{n} other client: nothing to say.", "{n} other clients: nothing to say.", d.rest) if d.rest else "",
    )


def _left_out(d: Digest, v: Voice) -> Html:
    if not d.left_out:
        return Html("")
    return v.say_n("And {n} more: /caseload", "And {n} more: /caseload", d.left_out)


def _still_open(d: Digest, v: Voice) -> Html:
    """What is urgent and no news, and nobody has dealt with yet: below what is new."""
    names_ = [v.name(e.name) for e in d.known if e.urgent]
    if not names_:
        return Html("")
    return v.say_n(
        "{n} urgent and still open: {names}", "{n} urgent and still open: {names}", len(names_), names=v.listed(names_)
    )


def _known(d: Digest, v: Voice) -> Html:
    """What is unchanged and not urgent, in a line."""
    names_ = [v.name(e.name) for e in d.known if not e.urgent]
    count, names_ = len(names_), [*names_[:MOST_KNOWN], *(["…"] if len(names_) > MOST_KNOWN else [])]
    return v.say_n("{n} known: {names}", "{n} known: {names}", count, names=v.listed(names_)) if names_ else Html("")


def _away(d: Digest, v: Voice) -> Html:
    if not d.away:
        return Html("")
    people = [
        v.say("{name} (until {day})", name=v.name(e.name), day=v.short_date(e.until)) if e.until else v.name(e.name)
        for e in d.away
    ]
    return v.say("Taking a break: {people}", people=v.listed(people))


def _section(v: Voice, title: str, entries: Sequence[DigestEntry]) -> Html:
    """The entries there is room for, and the names of the others. title: "" where the first line is one."""
    told = [entry(v, e) for e in entries if e.detail is not Detail.NAMED]
    others = [v.name(e.name) for e in entries if e.detail is Detail.NAMED]
    if others:
        told.append(v.say("• {names}", names=v.listed(others)))
    return v.lines(v.say("<b>{title}</b>", title=title) if title else "", *told) if told else Html("")


def entry(v: Voice, one: DigestEntry) -> Html:
    """One client: who, what with its number and since when, their own words, the next step."""
    (gravest, *_) = one.matters
    if one.client_id == NOBODY and not one.name:
        return v.sentences(
            v.say("• <b>{what}</b>", what=flag(v, gravest.code)),
            v.say("{facts}.", facts=figure(v, gravest)),
            _next(v, gravest),
        )
    whole = one.detail is Detail.FULL
    open_ = [v.listed([what(v, f, one.units), _since(v, f)]) for f in one.told if not f.over]
    more = len(one.matters) - len(one.told)
    facts = v.say("{facts}.", facts=_joined(v, open_)) if open_ else Html("")
    said = v.sentences(
        facts,
        *(_settled(v, f, one.units, whole=whole) for f in one.told if f.over),
        v.say_n("And {n} more.", "And {n} more.", more) if more else "",
        *(_words(v, f) for f in one.matters if whole and not f.over),
        _still(v, one),
        _state(v, one) if whole or one.status == "left" else "",
        _next(v, (*one.still, gravest)[0]) if whole else "",
    )
    return v.say("• <b>{name}</b>: {what}", name=v.name(one.name), what=said)


def _still(v: Voice, one: DigestEntry) -> Html:
    """The gravest of what was told before, is urgent and still open; its figures were told then."""
    if not one.still:
        return Html("")
    return v.say("Still open: {what}.", what=v.listed([in_short(v, one.still[0].code), _since(v, one.still[0])]))


def _settled(v: Voice, one: FlagFact, units: Units, *, whole: bool) -> Html:
    """An alarm that is over: what, when, what they were told (if there is room), what followed."""
    return v.sentences(
        v.say("{facts}.", facts=v.listed([what(v, one, units), v.short_date(_day(v, one))])),
        _words(v, one) if whole else "",
        told(v, one) if whole else "",
        followed(v, one, units) or ended(v, one),
    )


def _joined(v: Voice, parts: Sequence[Html]) -> Html:
    (said, *others) = parts
    for other in others:
        said = v.say("{one}; {other}", one=said, other=other)
    return said


def _since(v: Voice, one: FlagFact) -> Html:
    return v.say("since {day}", day=v.short_date(_day(v, one)))


def _day(v: Voice, one: FlagFact) -> date:
    return one.since.astimezone(v.reader.zone).date()


def _words(v: Voice, one: FlagFact) -> Html:
    said = dict(one.evidence).get("words", "")
    return v.say("“{words}”", words=v.typed(str(said), MOST_WORDS)) if said else Html("")


def _state(v: Voice, one: DigestEntry) -> Html:
    if one.status == "left":
        return v.say("Care has ended.")
    if one.until is not None:
        return v.say("On a break until {day}.", day=v.short_date(one.until))
    return Html("")


def _next(v: Voice, one: FlagFact) -> Html:
    text = NEXT[LOOK] if one.over else NEXT[RULES[Code(one.code)].step]
    step = v.say(text)
    return v.say("→ {step}", step=step)
