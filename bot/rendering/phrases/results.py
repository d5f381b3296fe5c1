"""What a reading means: a band, a change with the size of the error, one piece of context, the sources."""

from __future__ import annotations

from bot.rendering.phrases import bands, phrase
from bot.rendering.phrases.sources import cited
from bot.rendering.voice import N_, Html, Voice
from core.dialogue import messages as m

# The size of the error, with what makes it. One sentence each: the causes decline in other languages.
CHANCE: dict[str, str] = {
    "weight": N_("A difference of up to {error} can be the scales and the day."),
    "bmi": N_("A difference of up to {error} can be the scales and the day."),
    "waist": N_("A difference of up to {error} can be the tape and the day."),
    "hip": N_("A difference of up to {error} can be the tape and the day."),
    "waist_to_hip_ratio": N_("A difference of up to {error} can be the tape and the day."),
    "waist_to_height_ratio": N_("A difference of up to {error} can be the tape and the day."),
    "resting_heart_rate": N_("A difference of up to {error} can be the count and the day."),
    "blood_pressure": N_("A difference of up to {error} can be the cuff and the week."),
    "energy": N_("A difference of up to {error} can be just the day."),
    "own_question": N_("A difference of up to {error} can be just the day."),
    "five_chair_stands": N_("A difference of up to {error} can be the clock and the day."),
    "timed_up_and_go": N_("A difference of up to {error} can be the clock and the day."),
    "gait_speed_4m": N_("A difference of up to {error} can be the clock and the day."),
    "walk_mile": N_("A difference of up to {error} can be the clock and the day."),
}
CHANCE_OTHER = N_("A difference of up to {error} can be just chance.")

CONTEXT: dict[str, str] = {
    "first_reading": N_("Later ones are set beside this one."),
    "different_conditions": N_("Some things were not as last time, so I look with more care."),
    "flat_weight_smaller_waist": N_("Weight can stay the same while the waist changes. Both are part of the picture."),
    "matters_but_unsure": N_("It may be a real change. One reading alone cannot show it."),
    "early_weeks": N_("It is early. Most bodies need more than six weeks to show a change."),
    "one_step_of_tape": N_("One step on the tape is not a change yet."),
    "one_beat_of_the_count": N_("One beat more or less in the count makes this difference."),
    "other_weekday": N_("It was another day of the week. Weight swings a little over the week."),
    "practice_counts_too": N_("Practice plays a part the second time, too."),
    "medicine_slows_pulse": N_("Your medicine slows the pulse, so the tables do not fit you."),
    "series_too_few_days": N_("A few more days are needed before this says something."),
    "side_by_side": N_("It helps to look at several weeks, not at one day."),
}


@phrase(m.BandSaid)
def band_said(said: m.BandSaid, v: Voice) -> str:
    words = [bands.band(v, said.source, said.band)]
    words.extend(bands.note(v, note) for note in said.notes)
    return v.sentences(*words)


@phrase(m.VerdictSaid)
def verdict_said(said: m.VerdictSaid, v: Voice) -> str:
    match said.kind:
        case "no_baseline":
            return v.say("This is your starting point.")
        case "too_soon":
            return v.say("It is too soon to set it beside your first one.")
        case "not_comparable":
            return v.say("It was done in another way, so I do not set it beside your first one.")
        case "within_error":
            return v.sentences(_same(said, v), _chance(said, v))
        case _:
            return v.sentences(_moved(said, v), _meaning(said, v), _importance(said, v))


def _same(said: m.VerdictSaid, v: Voice) -> Html:
    if said.since is None:
        return v.say("That is about the same as at the start.")
    return v.say("That is about the same as on {date}.", date=v.full_date(said.since))


def _chance(said: m.VerdictSaid, v: Voice) -> Html:
    if said.error is None:
        return Html("")
    return v.say(CHANCE.get(said.measure, CHANCE_OTHER), error=v.size(said.error, said.measure))


def _moved(said: m.VerdictSaid, v: Voice) -> Html:
    """How far, and beyond what. More and less are neutral words, whatever is better."""
    if said.difference is None or said.error is None or said.since is None:
        return v.say("That is a change beyond what chance makes.")
    values = {
        "size": v.size(said.difference, said.measure),
        "date": v.full_date(said.since),
        "error": v.size(said.error, said.measure),
    }
    if said.difference.value < 0:
        return v.say("That is {size} less than on {date}. Up to {error} can be chance.", **values)
    return v.say("That is {size} more than on {date}. Up to {error} can be chance.", **values)


def _meaning(said: m.VerdictSaid, v: Voice) -> Html:
    confirmed = said.strength == "confirmed"
    match said.kind:
        case "better" if confirmed:
            return v.say("You have now seen it twice: a change for the better.")
        case "better":
            return v.say("It looks like a change for the better. Next time will show if it stays.")
        case "worse" if confirmed:
            return v.say("You have now seen it twice, so it is worth a talk with your coach.")
        case "worse":
            return v.say("It can pass again. Next time will show.")
        case _ if confirmed:
            return v.say("You have now seen it twice, so it is a real change.")
        case _:
            return v.say("Next time will show if it stays.")


def _importance(said: m.VerdictSaid, v: Voice) -> Html:
    if said.important is None or said.kind != "better" or said.strength != "confirmed":
        return Html("")
    if said.important:
        return v.say("People tend to notice a change of this size.")
    return v.say("It is still a small one.")


@phrase(m.Context)
def context(said: m.Context, v: Voice) -> str:
    return v.say(CONTEXT.get(said.key, CONTEXT["side_by_side"]))


@phrase(m.SourceOf)
def source_of(said: m.SourceOf, v: Voice) -> str:
    if not said.sources:
        return v.say("My last answer did not lean on a published table.")
    lines = [v.say("My last answer leans on this:")]
    lines.extend(v.say("• {source}", source=cited(key)) for key in dict.fromkeys(said.sources))
    return v.lines(*lines)
