"""When an answer is unclear: one question back, never a reproach."""

from __future__ import annotations

from decimal import Decimal

from bot.rendering.phrases import names, phrase
from bot.rendering.phrases.asking import example, reminder
from bot.rendering.voice import N_, Html, Voice
from core.dialogue.client import messages as m
from core.dialogue.client.slip_messages import AskWhichIsRight, EarlierTakenOut
from core.dialogue.kit.messages import NotText
from core.quantity import Amount

WHY: dict[str, str] = {
    "no_number": N_("I could not find a number in that."),
    "other_unit": N_("That looks like another kind of number."),
    "a_range": N_("I see a range. Please pick the one number that fits best."),
    "too_many_numbers": N_("I see more than one number, and I am not sure which one to take."),
    "one_number_missing": N_("One of the two numbers is missing."),
    "not_whole": N_("Here I need a whole number."),
    "one_stage": N_("Please add up the seconds of all the stages."),
    "not_at_rest": N_("This one counts only after five quiet minutes on a chair."),
    "not_completed": N_("It was not finished this time, and that is all right. You can try again or skip it."),
}

DOUBTS: dict[str, str] = {
    "slipped_point": N_("Maybe the point slipped. Did you mean {amount}?"),
    "wrong_unit": N_("Maybe it was another unit. Did you mean {amount}?"),
    "swapped_digits": N_("Maybe two digits changed places. Did you mean {amount}?"),
    "systolic_diastolic_swapped": N_("Maybe the two numbers changed places. Did you mean {amount}?"),
    "weight_for_height": N_("Maybe weight and height changed places. Did you mean this? {measure}: {amount}."),
    "not_at_rest": N_(
        "I read {amount}. Did you sit still for five minutes just before? If not, rest first, and take it once more."
    ),
    "one_stage": N_("With all the stages added up, that would be {amount}. Is that right?"),
    "short_count": N_(
        "I read {amount}. It is easy to miscount a fast pulse in 15 seconds, and this one is your start. Please count"
        " once more, for 30 or 60 seconds."
    ),
    "beats_counted": N_("Maybe you counted for 15 seconds. That would be {amount}. Is that right?"),
}
DOUBT_OTHER = N_("Just to be sure: did you mean {amount}?")

KINDS: dict[str, str] = {
    "voice": N_("I am sorry, I cannot listen to voice messages. Please type it."),
    "photo": N_("I am sorry, I cannot read pictures. Please type it."),
    "video": N_("I am sorry, I cannot watch videos. Please type it."),
    "sticker": N_("Thank you. I can only read words and numbers, so please type it."),
    "document": N_("I am sorry, I cannot read files. Please type it."),
    "location": N_("Thank you. I cannot read a map. Please type the name of the place."),
    "contact": N_("I am sorry, I cannot read contacts. Please type it."),
}
KIND_OTHER = N_("I am sorry, I can only read words and numbers. Please type it.")


@phrase(m.AskAgain)
def ask_again(said: m.AskAgain, v: Voice) -> str:
    why = v.say(WHY.get(said.why, WHY["no_number"]))
    if said.why == "not_completed":
        return why
    return v.sentences(
        why,
        v.say(
            "What I need: {measure}. Send it like this: {example}.",
            measure=names.measure(v, said.measure),
            example=example(v, said.measure, said.unit),
        ),
    )


@phrase(m.AskEither)
def ask_either(said: m.AskEither, v: Voice) -> str:
    return v.say("Here I need a whole number. Which one fits best?")


@phrase(m.SendRight)
def send_right(said: m.SendRight, v: Voice) -> str:
    return v.sentences(
        v.say("All right, I have not kept it."),
        v.say(
            "What I need: {measure}. Send it like this: {example}.",
            measure=names.measure(v, said.measure),
            example=example(v, said.measure, said.unit),
        ),
    )


@phrase(m.AskWhichDay)
def ask_which_day(said: m.AskWhichDay, v: Voice) -> str:
    if said.new is None:
        return v.say("Which day's answer shall I change? {measure}", measure=names.measure(v, said.measure))
    return v.say(
        "Which day's answer shall I change? {measure}: {amount}",
        measure=names.measure(v, said.measure),
        amount=v.amount(said.new, measure=said.measure, second=said.second),
    )


@phrase(m.NotRead)
def not_read(said: m.NotRead, v: Voice) -> str:
    return v.say("I did not quite get that.")


@phrase(m.StillUnclear)
def still_unclear(said: m.StillUnclear, v: Voice) -> str:
    return v.say(
        "I still cannot read it. Press a button if one fits, or send only the number. {measure}",
        measure=names.measure(v, said.measure),
    )


@phrase(m.DidYouMean)
def did_you_mean(said: m.DidYouMean, v: Voice) -> str:
    return v.say(
        DOUBTS.get(said.kind, DOUBT_OTHER),
        amount=v.amount(said.amount, measure=said.measure, second=said.second),
        measure=names.measure(v, said.measure),
    )


def _read(said: m.AskIfSure | m.CannotBe | AskWhichIsRight, v: Voice) -> Html:
    return v.say(
        "I read this: {measure}, {amount}.",
        measure=names.measure(v, said.measure),
        amount=v.amount(said.amount, measure=said.measure, second=said.second),
    )


@phrase(m.AskIfSure)
def ask_if_sure(said: m.AskIfSure, v: Voice) -> str:
    return v.sentences(_read(said, v), v.say("Is that right? If not, just send the right one."))


@phrase(AskWhichIsRight)
def ask_which_is_right(said: AskWhichIsRight, v: Voice) -> str:
    return v.sentences(
        _read(said, v), v.say("That is far from the one of {day}. Is it right?", day=v.day_of_year(said.earlier))
    )


@phrase(EarlierTakenOut)
def earlier_taken_out(said: EarlierTakenOut, v: Voice) -> str:
    return v.say(
        "I took out the one of {day}: {measure}.", day=v.day_of_year(said.day), measure=names.measure(v, said.measure)
    )


@phrase(m.AskChangeAnswer)
def ask_change_answer(said: m.AskChangeAnswer, v: Voice) -> str:
    """The current answer, its day, and the proposed one."""
    if said.old is None or said.new is None:
        return v.sentences(
            v.say("You have answered this one."),
            v.say(
                "Shall I change this answer? {measure}, {day}",
                measure=names.measure(v, said.measure),
                day=v.day(said.day),
            ),
        )
    return v.sentences(
        v.say("You have answered this one."),
        v.say(
            "{measure}, {day}: {old}.",
            measure=names.measure(v, said.measure),
            day=v.day(said.day),
            old=v.amount(said.old, measure=said.measure),
        ),
        v.say("Shall I change it to this? {new}", new=v.amount(said.new, measure=said.measure)),
    )


@phrase(m.AnswerStands)
def answer_stands(said: m.AnswerStands, v: Voice) -> str:
    lead = v.say("You have answered this one.")
    if said.amount is None:
        return lead
    return v.sentences(
        lead,
        v.say(
            "{measure}, {day}: {old}.",
            measure=names.measure(v, said.measure),
            day=v.day(said.day),
            old=v.amount(said.amount, measure=said.measure, second=said.second),
        ),
    )


@phrase(m.CannotBe)
def cannot_be(said: m.CannotBe, v: Voice) -> str:
    return v.sentences(
        _read(said, v),
        v.say("I think something slipped in. Could you look once more, and send it again?"),
    )


@phrase(NotText)
def not_text(said: NotText, v: Voice) -> str:
    lead = v.say(KINDS.get(said.kind, KIND_OTHER))
    return v.sentences(lead, reminder(v, said.measure)) if said.measure else lead


@phrase(m.NotSure)
def not_sure(said: m.NotSure, v: Voice) -> str:
    if said.waiting:
        return v.sentences(v.say("I did not quite get that."), reminder(v, said.waiting))
    return v.say("I did not quite get that. Send /help to see what I can do, or write to your coach with /coach.")


@phrase(m.Corrected)
def corrected(said: m.Corrected, v: Voice) -> str:
    return v.say(
        "Thank you, I changed it. {measure}: {amount}.",
        measure=names.measure(v, said.measure),
        amount=v.amount(said.amount, measure=said.measure, second=said.second),
    )


@phrase(m.CorrectedHidden)
def corrected_hidden(said: m.CorrectedHidden, v: Voice) -> str:
    return v.say("Thank you, I changed it. {measure}: kept for your coach.", measure=names.measure(v, said.measure))


@phrase(m.Undone)
def undone(said: m.Undone, v: Voice) -> str:
    return v.say("Done, I took it back: {measure}.", measure=_with_amount(v, said.measure, said.amount))


@phrase(m.AskUndo)
def ask_undo(said: m.AskUndo, v: Voice) -> str:
    what = _with_amount(v, said.measure, said.amount, said.second)
    return v.sentences(
        v.say("The last one is from {day}: {what}.", day=v.day(said.day), what=what),
        v.say("Later ones are compared with it.") if said.baseline else "",
        v.say("Shall I take it back?"),
    )


def _with_amount(v: Voice, measure: str, amount: Amount | None, second: Decimal | None = None) -> Html:
    """ "weight", or "weight, 82.4 kg" if the number is shown."""
    name = names.measure(v, measure)
    return name if amount is None else v.listed((name, v.amount(amount, measure=measure, second=second)))


@phrase(m.NothingToUndo)
def nothing_to_undo(said: m.NothingToUndo, v: Voice) -> str:
    return v.say("There is nothing to take back right now.")


@phrase(m.YouAreWelcome)
def you_are_welcome(said: m.YouAreWelcome, v: Voice) -> str:
    return v.say("You are welcome.")


@phrase(m.Hello)
def hello(said: m.Hello, v: Voice) -> str:
    return v.say("Hello. Good to hear from you. What can I do for you?")


@phrase(m.WhichMeasure)
def which_measure(said: m.WhichMeasure, v: Voice) -> str:
    return v.say("Thank you. What is that number? Please press what it is.")


@phrase(m.EditTooOld)
def edit_too_old(said: m.EditTooOld, v: Voice) -> str:
    return v.say("I saw your edit, but I am past that one. To change a number, just send the new one.")
