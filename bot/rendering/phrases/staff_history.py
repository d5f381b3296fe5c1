"""What was done about a flag, and what was flagged and is over."""

from __future__ import annotations

from bot.foundation.reader import length
from bot.rendering.phrases import phrase
from bot.rendering.phrases.coach import DONE, done, ended, followed, told, what
from bot.rendering.voice import Html, Voice
from core.care import Units
from core.dialogue.staff import messages as sm
from core.watching.digest import LIMIT, FlagFact

MOST_ASKED = 8  # flags named in one question
ROOM = LIMIT - 96  # characters; leaves some for the marks of direction


@phrase(sm.FlagsCleared)
def flags_cleared(said: sm.FlagsCleared, v: Voice) -> str:
    noted = [done(v, said.done)] if said.done in DONE else []
    if said.words:
        noted.append(v.say("“{words}”", words=v.typed(said.words, 200)))
    return v.sentences(
        v.say("Dealt with: the flags of {name} are cleared. What happens again is new.", name=v.name(said.name)),
        v.say("Noted: {what}.", what=v.listed(noted)) if noted else "",
    )


@phrase(sm.AskDone)
def ask_done(said: sm.AskDone, v: Voice) -> str:
    return v.lines(
        v.say("What was done about this for {name}? Press one, or write it in a line.", name=v.name(said.name)),
        *(v.say("• {what}", what=what(v, f, said.units)) for f in said.flags[:MOST_ASKED]),
    )


@phrase(sm.AskWhyNothing)
def ask_why_nothing(said: sm.AskWhyNothing, v: Voice) -> str:
    return v.say("Something urgent about {name} was told. In a line: why is nothing needed?", name=v.name(said.name))


@phrase(sm.HistorySaid)
def history_said(said: sm.HistorySaid, v: Voice) -> str:
    """As many as one message holds, the last to end first."""
    if not said.flags:
        return v.say("Nothing about {name} has ended within the last year.", name=v.name(said.name))
    head = v.say("<b>What was flagged for {name}, and how it ended</b>", name=v.name(said.name))
    lines = [head]
    for one in said.flags:
        line = v.say("• {what}", what=_past(v, one, said.units))
        if length("\n".join([*lines, line])) > ROOM:
            lines.append(Html("…"))
            break
        lines.append(line)
    return v.lines(*lines)


def _past(v: Voice, one: FlagFact, units: Units) -> Html:
    day = v.short_date(one.since.astimezone(v.reader.zone).date())
    words = str(dict(one.evidence).get("words", ""))
    return v.sentences(
        v.say("{day}: {what}.", day=day, what=what(v, one, units)),
        v.say("“{words}”", words=v.typed(words, 120)) if words else "",
        told(v, one),
        followed(v, one, units),
        ended(v, one),
    )
