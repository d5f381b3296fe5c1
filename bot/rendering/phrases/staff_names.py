"""The name under which a coach sees a client, as text."""

from __future__ import annotations

from bot.rendering.phrases import phrase
from bot.rendering.voice import Voice
from core.dialogue.staff import name_messages as nm


@phrase(nm.AskCalled)
def ask_called(said: nm.AskCalled, v: Voice) -> str:
    lead = v.say(
        "What should I call {name} when I write to you? An initial or a word is enough. I do not show it to them, but"
        " it is in their data when they ask for it.",
        name=v.name(said.name),
    )
    if not said.own:
        return lead
    return v.sentences(lead, v.say("They call themselves {name}.", name=v.name(said.own)))


@phrase(nm.Called)
def called(said: nm.Called, v: Voice) -> str:
    if said.own:
        lead = v.say("Done: I call them {name} again, as they do.", name=v.name(said.name))
    else:
        lead = v.say("Done: to you I call them {name}.", name=v.name(said.name))
    if not said.taken:
        return lead
    return v.sentences(lead, v.say("Another client has that name, so I put a year or a number beside it."))
