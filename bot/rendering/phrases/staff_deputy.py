"""Who stands in for a coach: what the coach sets, and what the deputy hears."""

from __future__ import annotations

from datetime import date

from bot.rendering.phrases import phrase
from bot.rendering.phrases.coach import figure, flag
from bot.rendering.phrases.staff_digest import digest_said
from bot.rendering.voice import Html, Voice
from core.care import METRIC
from core.dialogue.staff import messages as sm
from core.watching.digest import FlagFact
from core.watching.flags import Code, Severity


@phrase(sm.DeputyShown)
def deputy_shown(said: sm.DeputyShown, v: Voice) -> str:
    who = v.say("Nobody stands in for you.")
    if said.name:
        who = v.sentences(v.say("{name} stands in for you.", name=v.name(said.name)), _days(v, said.begins, said.ends))
    return v.paragraphs(
        who,
        v.say_n(
            "An emergency you have not acknowledged goes to them after {n} minute, what is less pressing after four"
            " times as long. Press a name or a time to change it.",
            "An emergency you have not acknowledged goes to them after {n} minutes, what is less pressing after four"
            " times as long. Press a name or a time to change it.",
            said.wait,
        ),
    )


def _days(v: Voice, begins: date | None, ends: date | None) -> Html:
    if begins is None or ends is None:
        return v.say("Always, for what is urgent and not acknowledged.")
    return v.say("From {begins} to {ends}, the digest as well.", begins=v.day(begins), ends=v.day(ends))


@phrase(sm.AskDeputyDays)
def ask_deputy_days(said: sm.AskDeputyDays, v: Voice) -> str:
    return v.say(
        "When should {name} stand in? Press one, or type the days, such as 6 to 19 April, until Friday, or next week.",
        name=v.name(said.name),
    )


@phrase(sm.YouStandIn)
def you_stand_in(said: sm.YouStandIn, v: Voice) -> str:
    return v.sentences(
        v.say("You stand in for {name} from now on.", name=v.name(said.name))
        if said.begins is None
        else v.say("You stand in for {name}.", name=v.name(said.name)),
        _days(v, said.begins, said.ends),
    )


@phrase(sm.DeputyAlarm)
def deputy_alarm(said: sm.DeputyAlarm, v: Voice) -> str:
    one = FlagFact(0, Code(said.code).value, Severity.URGENT, said.measure, said.evidence, said.since)
    words = str(dict(said.evidence).get("words", ""))
    return v.lines(
        v.say(
            "<b>{name}</b>, whom {coach} looks after: {what}",
            name=v.name(said.name),
            coach=v.coach(said.coach),
            what=flag(v, said.code),
        ),
        v.say("{facts}.", facts=facts) if (facts := figure(v, one, METRIC)) else "",
        v.say("“{words}”", words=v.typed(words)) if words else "",
        v.say("Since: {day}, {time}", day=v.local_day(said.since), time=v.local_time(said.since)),
        v.say_n(
            "Nobody has acknowledged it for {n} minute. You stand in.",
            "Nobody has acknowledged it for {n} minutes. You stand in.",
            said.waited,
        )
        if said.waited
        else v.say("{coach} cannot be reached. You stand in.", coach=v.coach(said.coach)),
    )


@phrase(sm.DigestFor)
def digest_for(said: sm.DigestFor, v: Voice) -> str:
    head = v.say("You stand in for {name}. This is the week:", name=v.coach(said.coach))
    return v.paragraphs(head, digest_said(sm.DigestSaid(said.digest), v))
