"""A coach's talk with clients: to whom words go, what became of them, and what goes to nobody."""

from __future__ import annotations

from bot.rendering.phrases import names, phrase
from bot.rendering.voice import Voice
from core.dialogue.staff import talk_messages as tm

SHOWN = 300  # characters of the words that are asked about


@phrase(tm.AskWhoGets)
def ask_who_gets(said: tm.AskWhoGets, v: Voice) -> str:
    name, words = v.name(said.name), v.say("“{words}”", words=v.typed(said.words, SHOWN))
    if said.why == "late":
        ask = v.say("You wanted to write to {name}, but that was more than ten minutes ago. Send them this?", name=name)
    elif said.others:
        named = v.listed([v.name(other) for other in said.others])
        ask = v.say(
            "This was to go to {name}, and it names somebody else: {others}. I have not sent it. Who should get it?",
            name=name,
            others=named,
        )
    else:
        ask = v.say("Nobody has got this yet. Should I send it to {name}?", name=name)
    return v.paragraphs(ask, words)


@phrase(tm.StillWriting)
def still_writing(said: tm.StillWriting, v: Voice) -> str:
    return v.say("Your next message still goes to {name}. Send “stop” if it should not.", name=v.name(said.name))


@phrase(tm.WritingClosed)
def writing_closed(said: tm.WritingClosed, v: Voice) -> str:
    return v.say("Nothing was sent to {name}, and your next message does not go to them.", name=v.name(said.name))


@phrase(tm.ThanksToNobody)
def thanks_to_nobody(said: tm.ThanksToNobody, v: Voice) -> str:
    return v.say(
        "You are welcome. Your thanks went to nobody: for a client to get them, answer their message, or press Write."
    )


# --- files and pictures ---------------------------------------------------------------------------------------------


@phrase(tm.AskExport)
def ask_export(said: tm.AskExport, v: Voice) -> str:
    return v.say("All readings of {name}: in which form?", name=v.name(said.name))


@phrase(tm.NothingToExport)
def nothing_to_export(said: tm.NothingToExport, v: Voice) -> str:
    return v.say("There are no readings of {name} yet.", name=v.name(said.name))


@phrase(tm.AskPicture)
def ask_picture(said: tm.AskPicture, v: Voice) -> str:
    name = v.name(said.name)
    if said.none:
        return v.say("There is no picture of {name} yet: it takes two readings of the same measure.", name=name)
    if said.measure:
        return v.say(
            "{measure}: there are not two readings of {name} yet. Choose another:",
            measure=names.measure(v, said.measure),
            name=name,
        )
    return v.say("Which picture of {name}?", name=name)


# --- frequent weighing ----------------------------------------------------------------------------------------------


@phrase(tm.AskClinician)
def ask_clinician(said: tm.AskClinician, v: Voice) -> str:
    return v.say(
        "Frequent weighing is only right where a clinician wants it. Who asked for it for {name}? Send the name and the"
        " practice or clinic. {name} will read it.",
        name=v.name(said.name),
    )


@phrase(tm.DirectedSure)
def directed_sure(said: tm.DirectedSure, v: Voice) -> str:
    return v.say(
        "Frequent weighing for {name}, because “{who}” asked for it? I tell them so, no longer slow them down, take a"
        " number alone for a weight, and report a fast gain to you at once.",
        name=v.name(said.name),
        who=v.typed(said.by),
    )
