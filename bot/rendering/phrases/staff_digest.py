"""The digest as text: one message, most serious first; each entry says who, what, which numbers, and since when."""

from __future__ import annotations

from collections.abc import Iterable

from bot.foundation.reader import length
from bot.rendering.direction import directed
from bot.rendering.phrases import names, phrase
from bot.rendering.phrases.coach import FLAG_OTHER, evidence, flag
from bot.rendering.voice import N_, Html, Voice
from core.dialogue.staff import messages as sm
from core.watching.digest import LIMIT, Digest, DigestEntry, FlagFact, fitted

# A flag in a few words, for use beside others.
SHORT: dict[str, str] = {
    "bp_severe": N_("very high blood pressure"),
    "bp_severe_repeated": N_("very high blood pressure, twice"),
    "bp_high_mean": N_("blood pressure week above the limit"),
    "bp_low": N_("low blood pressure with a sign"),
    "pulse_fast": N_("very fast resting pulse"),
    "pulse_slow": N_("very slow resting pulse"),
    "fast_gain": N_("fast weight gain"),
    "unplanned_loss_over_5": N_("unplanned weight loss"),
    "must_medium": N_("malnutrition screening: one point"),
    "must_high": N_("malnutrition screening: two points or more"),
    "falls_risk": N_("falls limit"),
    "change_better_confirmed": N_("better, confirmed"),
    "change_worse_confirmed": N_("worse, confirmed"),
    "change_confirmed": N_("changed, confirmed"),
    "change_worse_large": N_("one large change for the worse"),
    "energy_falling": N_("energy falling"),
    "weighing_often": N_("weighing often"),
    "missed_check_ins": N_("check-ins without an answer"),
    "symptom_reported": N_("a sign before a test"),
    "red_flag_words": N_("words that call for help"),
    "sign_unanswered": N_("a sign, the question unanswered"),
    "identical_values": N_("the same value many times"),
    "unreachable": N_("cannot be reached"),
    "wants_coach": N_("would like a word"),
}


def in_short(v: Voice, code: str) -> Html:
    return v.say(SHORT.get(code, FLAG_OTHER))


@phrase(sm.DigestSaid)
def digest_said(said: sm.DigestSaid, v: Voice) -> str:
    """One message in any language: the digest was cut to the coach's language then, which may have changed since."""
    return _whole(fitted(said.digest, lambda made: characters(made, v), LIMIT), v)


def characters(made: Digest, v: Voice) -> int:
    """Length of a digest as rendered for this reader, without a limit."""
    whole = _whole(made, v)
    return length(directed(whole) if v.reader.right_to_left else whole)


def _whole(d: Digest, v: Voice) -> Html:
    head = v.say("<b>Digest of {day}</b>", day=v.day(d.day))
    if d.calm:
        return v.paragraphs(head, v.lines(_calm(d, v), _paused(d, v)))
    return v.paragraphs(
        head,
        _part(v, v.say("Needs you"), d.needs, brief=d.brief),
        _part(v, v.say("Changed for certain"), d.changes, brief=d.brief),
        _part(v, v.say("Gone quiet"), d.quiet, brief=d.brief),
        _part(v, v.say("Not reachable"), d.unreachable, brief=d.brief),
        v.lines(_paused(d, v), _left_out(d, v), _rest(d, v)),
    )


def _calm(d: Digest, v: Voice) -> Html:
    """A week with nothing to report takes one line."""
    if not d.asked:
        return v.say("A quiet week: no check-in was due, nobody needs a call and nobody is weighing too often.")
    if d.often:  # seen before, still open
        return v.sentences(
            v.say("A quiet week: {kept} of {asked} checked in, nobody needs a call.", **_counts(d, v)),
            v.say_n("Still weighing often, as you know: {n}.", "Still weighing often, as you know: {n}.", d.often),
        )
    return v.say(
        "A quiet week: {kept} of {asked} checked in, nobody needs a call and nobody is weighing too often.",
        **_counts(d, v),
    )


def _counts(d: Digest, v: Voice) -> dict[str, str]:
    return {"kept": v.number(d.kept), "asked": v.number(d.asked)}


def _rest(d: Digest, v: Voice) -> Html:
    week = v.say("Checked in this week: {kept} of {asked}.", **_counts(d, v))
    if not d.rest:
        return week
    return v.sentences(v.say_n("{n} other client: nothing to say.", "{n} other clients: nothing to say.", d.rest), week)


def _left_out(d: Digest, v: Voice) -> Html:
    if not d.left_out:
        return Html("")
    return v.say_n("And {n} more: /caseload", "And {n} more: /caseload", d.left_out)


def _paused(d: Digest, v: Voice) -> Html:
    if not d.paused:
        return Html("")
    people = [v.say("{name} (until {day})", name=v.name(name), day=v.short_date(until)) for name, until in d.paused]
    return v.say("Taking a break: {people}", people=v.listed(people))


def _part(v: Voice, title: Html, entries: Iterable[DigestEntry], *, brief: bool) -> Html:
    lines = [_brief(v, e) if brief else _entry(v, e) for e in entries]
    return v.lines(v.say("<b>{title}</b>", title=title), *lines) if lines else Html("")


def _brief(v: Voice, entry: DigestEntry) -> Html:
    """Who and what, without evidence, so that every urgent entry fits."""
    what = v.listed([in_short(v, f.code) for f in entry.flags[:1]])
    return v.say("• {name}: {what}", name=v.name(entry.name), what=what)


def _entry(v: Voice, entry: DigestEntry) -> Html:
    """One client: unseen flags in full, seen ones in brief."""
    told = [_flag(v, f) for f in entry.flags if not f.seen]
    seen = [_seen(v, f) for f in entry.flags if f.seen]
    return v.say("• <b>{name}</b>: {what}", name=v.name(entry.name), what=v.sentences(*told, *seen))


def _flag(v: Voice, one: FlagFact) -> Html:
    pairs = tuple(pair for pair in one.evidence if pair[0] != "since")  # two dates in one line would be confusing
    facts = evidence(v, one.measure, pairs)
    about = names.measure(v, one.measure) if one.measure else Html("")
    return v.sentences(
        v.say("{measure}: {what}", measure=about, what=flag(v, one.code)) if about else flag(v, one.code),
        v.say("{facts}.", facts=facts) if facts else "",
        v.say("Since {day}.", day=v.short_date(one.since.astimezone(v.reader.zone).date())),
    )


def _seen(v: Voice, one: FlagFact) -> Html:
    day = v.short_date(one.since.astimezone(v.reader.zone).date())
    return v.say("Seen: {what}, since {day}.", what=in_short(v, one.code), day=day)
