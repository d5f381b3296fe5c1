"""A coach's talk with clients: to whom words go, what became of them, and what goes to nobody."""

from __future__ import annotations

from bot.rendering.phrases import names, phrase
from bot.rendering.phrases.staff_card import result_line
from bot.rendering.voice import N_, Html, Voice
from core.dialogue.staff import messages as sm
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


@phrase(tm.WordsDropped)
def words_dropped(said: tm.WordsDropped, v: Voice) -> str:
    return v.say("What you wrote before was not sent to {name}.", name=v.name(said.name))


@phrase(tm.NoteKept)
def note_kept(said: tm.NoteKept, v: Voice) -> str:
    return v.paragraphs(
        v.say("Your note on {name} now says this. They do not see it here.", name=v.name(said.name)),
        v.say("“{words}”", words=v.typed(said.note, SHOWN)),
    )


@phrase(tm.NoteSure)
def note_sure(said: tm.NoteSure, v: Voice) -> str:
    return v.paragraphs(
        v.say("I was waiting for your note on {name}. Should I save this as the note?", name=v.name(said.name)),
        v.say("“{words}”", words=v.typed(said.words, SHOWN)),
    )


@phrase(tm.NoteTakenBack)
def note_taken_back(said: tm.NoteTakenBack, v: Voice) -> str:
    name = v.name(said.name)
    words = v.say("“{words}”", words=v.typed(said.note, SHOWN)) if said.note else ""
    if said.changed:
        return v.paragraphs(v.say("The note on {name} has changed since, so I left it.", name=name), words)
    if words:
        return v.paragraphs(v.say("Taken back. The note on {name} is as it was:", name=name), words)
    return v.say("Taken back. There is no note on {name}.", name=name)


THEIRS: dict[str, str] = {
    "pause": N_(
        "Only {name} can take a break: they write “pause” to me, or press it in /settings. You can tell them so."
        " Nothing was changed."
    ),
    "correct": N_(
        "Readings belong to {name}, and only they can correct one: they write me the right number, such as “I meant"
        " 71.5 kg”. You can tell them so. Nothing was changed."
    ),
}


@phrase(tm.TheirsToDo)
def theirs_to_do(said: tm.TheirsToDo, v: Voice) -> str:
    return v.say(THEIRS[said.what], name=v.name(said.name))


@phrase(tm.NewDay)
def new_day(said: tm.NewDay, v: Voice) -> str:
    return v.say("The check-in of {name}: {day}.", name=v.name(said.name), day=v.weekday(said.weekday))


@phrase(sm.LastSaid)
def last_said(said: sm.LastSaid, v: Voice) -> Html:
    name = v.name(said.name)
    if said.line is None:
        return v.say("{measure}: {name} has not sent any yet.", measure=names.measure(v, said.measure), name=name)
    return v.lines(v.bold(name), result_line(v, said.line))


@phrase(tm.ThanksToNobody)
def thanks_to_nobody(said: tm.ThanksToNobody, v: Voice) -> str:
    return v.say(
        "You are welcome. Your thanks went to nobody: for a client to get them, answer their message, or press Write."
    )


BACK: dict[str, str] = {
    "never": N_("Taken back. It had not reached {name}, and will not."),
    "deleted": N_("Taken back: it is deleted from the chat of {name}. They may have read it before."),
    "stays": N_("It could not be taken back: the messenger did not delete it, so {name} has it."),
}


@phrase(tm.WordsTakenBack)
def words_taken_back(said: tm.WordsTakenBack, v: Voice) -> str:
    return v.say(BACK[said.how], name=v.name(said.name))


@phrase(tm.TooLateToTakeBack)
def too_late_to_take_back(said: tm.TooLateToTakeBack, v: Voice) -> str:
    return v.say(
        "That was more than a minute ago, so {name} has it. You can write to them to put it right.",
        name=v.name(said.name),
    )


UNDONE: dict[str, str] = {
    "flags": N_("Undone: what you had dealt with is open again for {name}."),
    "plan": N_("Undone: the plan of {name} is as it was, and they are told."),
    "seen": N_("Undone: it counts as not seen again."),
    "own": N_("Undone: your setting is as it was."),
}


@phrase(tm.ActionUndone)
def action_undone(said: tm.ActionUndone, v: Voice) -> str:
    return v.say(UNDONE[said.what], name=v.name(said.name))


@phrase(tm.NothingToUndo)
def nothing_to_undo(said: tm.NothingToUndo, v: Voice) -> str:
    return v.say(
        "There is nothing I can undo. Words can be taken back for a minute; what you dealt with or saw, a change of a"
        " plan and your own settings for a day, if you have done nothing else since."
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
