"""Everyday commands: help, skip, later, pause, slot, place, language, units, messages to the coach, data, leaving."""

from __future__ import annotations

from bot.rendering.phrases import names, phrase
from bot.rendering.phrases.asking import reminder
from bot.rendering.phrases.safety import emergency_number, told
from bot.rendering.voice import N_, Html, Voice
from core.dialogue.client import messages as m
from core.dialogue.commands import CLIENT
from core.dialogue.kit.commands import Who
from core.dialogue.kit.messages import (
    AskLanguage,
    DataSent,
    KeptAsItWas,
    LanguageChanged,
    NotForThisRole,
    OldButton,
    OurFault,
)
from core.quantity import Unit

NEWS: dict[str, str] = {
    "measures": N_("Your coach changed what we measure. You will see it at your next check-in."),
    "interval": N_("Your coach changed how often we measure. You will see it at your next check-in."),
    "slot": N_("Your coach changed the time of your check-in. Send /settings to see it."),
    "directed_weighing": N_(
        "Your coach set up frequent weighing for you, because {detail} asked for it. Weigh as often as you were told to"
        " there. You can send me only the number."
    ),
    "directed_weighing_off": N_("Your coach ended the frequent weighing. From now on we weigh every few weeks."),
    "numbers": N_("Your coach changed how your numbers are shown. Send /settings to see it, or to change it back."),
    "baseline": N_("A new start: from now on I compare with your next results, not with the old ones."),
    "programme": N_("You have a programme with your coach. At its end you get a report."),
    "programme_open": N_("Your programme has no set end now."),
    "hand_over": N_("Somebody else looks after you now: {detail}. Your answers went with you."),
    "end_care": N_(
        "{detail} no longer looks after you here, and I will not ask you anything any more. Your answers stay for a"
        " while. Send /forget to have them deleted. Take good care."
    ),
    "pressure_week": N_("Your coach planned a blood pressure week for you. It comes with your next check-in."),
    "pause": N_("Your coach set a pause for you. You can end it at any time."),
    "goal": N_("Your coach changed your goal. Send /goal to see it."),
}
NEWS_OTHER = N_("Your coach changed something in your plan. You will see it at your next check-in.")

NUMBERS: dict[str, str] = {
    "shown": N_("You see your own numbers."),
    "coach_only": N_("Your body numbers go to your coach and are not shown to you."),
    "leave_out": N_("Weight is left out."),
}


@phrase(m.Help)
def help_(said: m.Help, v: Voice) -> str:
    parts = [
        v.say("Just type what you want, or press a button. For example:"),
        v.lines(*(v.say(line, coach=v.coach(said.coach)) for line in CLIENT.help(Who.CLIENT))),
        v.say(
            "I am not a doctor and I cannot send help. If it is urgent, call {number}. What your doctor says comes"
            " first.",
            number=emergency_number(v, said.number),
        ),
    ]
    if said.waiting:
        parts.append(reminder(v, said.waiting))
    return v.paragraphs(*parts)


@phrase(m.Skipped)
def skipped(said: m.Skipped, v: Voice) -> str:
    return v.say("That is fine, we skip it: {measure}.", measure=names.measure(v, said.measure))


@phrase(m.SnoozeWhen)
def snooze_when(said: m.SnoozeWhen, v: Voice) -> str:
    return v.say("When shall I ask you again?")


@phrase(m.Snoozed)
def snoozed(said: m.Snoozed, v: Voice) -> str:
    if said.tomorrow:
        return v.say("That is fine. I ask again tomorrow at {time}.", time=v.local_time(said.until))
    return v.say("That is fine. I ask again today at {time}.", time=v.local_time(said.until))


@phrase(m.PauseWhen)
def pause_when(said: m.PauseWhen, v: Voice) -> str:
    return v.say("How long do you want a break?")


@phrase(m.Paused)
def paused(said: m.Paused, v: Voice) -> str:
    return v.sentences(
        v.say(
            "Enjoy your break. I am quiet until {day}. If you want to come back sooner, just write to me.",
            day=v.day(said.until),
        ),
        v.say("Your blood pressure week ends here, too. What you sent is kept.") if said.week_ended else "",
    )


@phrase(m.Resumed)
def resumed(said: m.Resumed, v: Voice) -> str:
    if said.next is None:
        return v.say("Welcome back. It is good to have you here.")
    return v.say("Welcome back. It is good to have you here. Next check-in: {day}.", day=v.day(said.next))


@phrase(m.StoppedForNow)
def stopped_for_now(said: m.StoppedForNow, v: Voice) -> str:
    stop = v.say("That is fine, I stop here. You can take a break, or leave for good, if that is what you want.")
    if said.next is None:
        return stop
    return v.sentences(stop, v.say("If not, the next check-in comes on {day}.", day=v.day(said.next)))


@phrase(m.AskSlot)
def ask_slot(said: m.AskSlot, v: Voice) -> str:
    return v.say("Which day and time are good for you? Press a day, or type it, such as a day and an hour.")


@phrase(m.SlotChanged)
def slot_changed(said: m.SlotChanged, v: Voice) -> str:
    return v.sentences(
        v.say("Done. Your time: {weekday}, {time}.", weekday=v.weekday(said.weekday), time=v.time(said.at)),
        v.say("Next check-in: {day}.", day=v.day(said.next)),
    )


@phrase(m.AskZone)
def ask_zone(said: m.AskZone, v: Voice) -> str:
    return v.say("Where are you now? Type the name of a city. Then I use the clock there.")


@phrase(m.ZoneChanged)
def zone_changed(said: m.ZoneChanged, v: Voice) -> str:
    from bot.rendering.places import place_name

    place = v.name(place_name(said.zone_name, v.reader.language))
    if said.home:
        when = v.say("Your time: {weekday}, {time}", weekday=v.weekday(said.weekday), time=v.time(said.at))
        return v.lines(v.say("I am back on your own clock: {place}.", place=place), when)
    return v.sentences(
        v.say("Done. I use the clock there: {place}.", place=place),
        v.say("Your time there: {weekday}, {time}.", weekday=v.weekday(said.weekday), time=v.time(said.at)),
    )


@phrase(m.ZoneForNow)
def zone_for_now(said: m.ZoneForNow, v: Voice) -> str:
    from bot.rendering.places import place_name

    return v.sentences(
        v.say(
            "Have a good time. Until then I use the clock there: {place}.",
            place=v.name(place_name(said.zone_name, v.reader.language)),
        ),
        v.say("I change back on {day}.", day=v.day(said.until)),
    )


@phrase(AskLanguage)
def ask_language(said: AskLanguage, v: Voice) -> str:
    return v.say("Which language do you want?")


@phrase(LanguageChanged)
def language_changed(said: LanguageChanged, v: Voice) -> str:
    return v.say("Done. I write to you in this language now.")


@phrase(m.AskUnits)
def ask_units(said: m.AskUnits, v: Voice) -> str:
    return v.say("Which units do you like to use?")


@phrase(m.UnitsChanged)
def units_changed(said: m.UnitsChanged, v: Voice) -> str:
    return v.say("Done. Your units: {units}.", units=units(v, said.mass, said.length))


def units(v: Voice, mass: Unit, length: Unit) -> Html:
    masses = [v.unit_name(mass)]
    if mass is Unit.STONE:
        masses.append(v.unit_name(Unit.POUND))
    return v.listed([*masses, v.unit_name(length)])


@phrase(m.SettingsSaid)
def settings(said: m.SettingsSaid, v: Voice) -> str:
    from bot.rendering.places import place_name

    when = ""
    if said.weekday is not None and said.at is not None:
        when = v.say("Your time: {weekday}, {time}", weekday=v.weekday(said.weekday), time=v.time(said.at))
    return v.lines(
        v.say("This is how it is set for you. Press what you want to change."),
        when,
        v.say("Place: {place}", place=v.name(place_name(said.zone_name, v.reader.language))),
        v.say("Units: {units}", units=units(v, said.mass, said.length)),
        v.say(NUMBERS.get(said.numbers, NUMBERS["shown"])),
    )


@phrase(m.NumbersChanged)
def numbers_changed(said: m.NumbersChanged, v: Voice) -> str:
    return v.sentences(v.say("Done."), v.say(NUMBERS.get(said.numbers, NUMBERS["shown"])))


@phrase(m.AskWord)
def ask_word(said: m.AskWord, v: Voice) -> str:
    return v.say(
        "What do you want to say to {coach}? Write it here, and I pass it on as it is.", coach=v.coach(said.coach)
    )


@phrase(m.WordPassed)
def word_passed(said: m.WordPassed, v: Voice) -> str:
    if said.at is not None:
        return v.sentences(told(v, said.coach, said.at), v.say("The answer comes here."))
    return v.say("I passed it on to {coach}. The answer comes here.", coach=v.coach(said.coach))


@phrase(m.CoachWrites)
def coach_writes(said: m.CoachWrites, v: Voice) -> str:
    return v.paragraphs(
        v.say("<b>{coach} writes:</b>", coach=v.coach(said.coach)),
        v.typed(said.text),
    )


@phrase(DataSent)
def data_sent(said: DataSent, v: Voice) -> str:
    return v.say("Here is all I have about you. You get it twice: as text to read, and as a table.")


@phrase(m.ForgetSure)
def forget_sure(said: m.ForgetSure, v: Voice) -> str:
    return v.paragraphs(
        v.say(
            "Do you want me to delete all I have about you? Your answers, your name and your messages will be gone for"
            " good."
        ),
        _mean_it(v, "Yes, delete it all"),
    )


@phrase(m.Forgotten)
def forgotten(said: m.Forgotten, v: Voice) -> str:
    return v.say("Done. I have deleted all of it. Thank you for the time you spent here. Take good care.")


@phrase(m.LeaveSure)
def leave_sure(said: m.LeaveSure, v: Voice) -> str:
    return v.paragraphs(
        v.say(
            "Do you want to leave? I will not ask you anything any more, and {coach} will know that you left.",
            coach=v.coach(said.coach),
        ),
        _mean_it(v, "Yes, leave"),
    )


# Ending something takes more than a yes: its button, or the button's text.
MEAN_IT = N_("If you mean it, tap the button or type what is on it: <b>{words}</b>")


def _mean_it(v: Voice, words: str) -> str:
    button = v.plain(words)
    return v.say(MEAN_IT, words=button)


@phrase(m.HasLeft)
def has_left(said: m.HasLeft, v: Voice) -> str:
    return v.say(
        "You have left, and I will be quiet. Your answers stay for a while, in case you come back. Send /forget to have"
        " them deleted. If you want to come back, ask {coach} for a link. Take good care.",
        coach=v.coach(said.coach),
    )


@phrase(KeptAsItWas)
def kept_as_it_was(said: KeptAsItWas, v: Voice) -> str:
    return v.say("That is fine. It all stays as it was.")


@phrase(m.PlanNews)
def plan_news(said: m.PlanNews, v: Voice) -> str:
    if said.what == "programme" and said.detail.isdecimal():
        return v.say_n(
            "You have a programme of {n} week with your coach. At its end you get a report.",
            "You have a programme of {n} weeks with your coach. At its end you get a report.",
            int(said.detail),
        )
    return v.say(NEWS.get(said.what, NEWS_OTHER), detail=v.name(said.detail))


@phrase(NotForThisRole)
def not_for_this_role(said: NotForThisRole, v: Voice) -> str:
    return v.say("That one is not for this chat. Send /help to see what you can do here.")


@phrase(OldButton)
def old_button(said: OldButton, v: Voice) -> str:
    lead = v.say("That was the button of an old question.")
    return v.sentences(lead, reminder(v, said.waiting)) if said.waiting else lead


@phrase(OurFault)
def our_fault(said: OurFault, v: Voice) -> str:
    return v.say(
        "I have your message, but something on our side went wrong. It is not your fault. A person will look at it."
    )


@phrase(m.JoinedCohort)
def joined_cohort(said: m.JoinedCohort, v: Voice) -> str:
    return v.say(
        "You are in: {cohort}. It starts on {day}. The group sees what all do together, never your own numbers.",
        cohort=v.name(said.cohort),
        day=v.day(said.starts),
    )
