"""What a reading means: band, change with measurement error, one piece of context, sources."""

from __future__ import annotations

from bot.rendering.phrases import bands, phrase
from bot.rendering.phrases.sources import cited
from bot.rendering.voice import N_, Html, Voice
from core.dialogue.client import messages as m
from core.dialogue.client import start_messages as sm

# The measurement error with its causes. One sentence each: other languages would decline the causes.
_TAPE = N_("Too close to call: a tape can differ by up to {error}.")
_SCALES = N_("Too close to call: weight swings by up to {error}.")
_FEELING = N_("Too close to call: how one feels swings by up to {error}.")
_CLOCK = N_("Too close to call: such a time varies by up to {error}.")
CHANCE: dict[str, str] = {
    "weight": _SCALES,
    "bmi": N_("Too close to call: this swings by up to {error}."),
    "waist": _TAPE,
    "hip": _TAPE,
    "resting_heart_rate": N_("Too close to call: a pulse varies by up to {error}."),
    "blood_pressure": N_("Too close to call: a week of blood pressure varies by up to {error}."),
    "energy": _FEELING,
    "own_question": _FEELING,
    "pain": _FEELING,
    "sleep": _FEELING,
    "five_chair_stands": _CLOCK,
    "timed_up_and_go": _CLOCK,
    "gait_speed_4m": N_("Too close to call: a walking pace varies by up to {error}."),
    "walk_mile": _CLOCK,
}
CHANCE_OTHER = N_("Too close to call: this varies by up to {error}.")

CONTEXT: dict[str, str] = {
    "first_reading": N_("I compare later ones with this one."),
    "start_again": N_("I ask once more next week, so that your start is solid."),
    "start_alone": N_("A first value can be unusual, and the next ones drift back. So I wait and see."),
    "different_conditions": N_("Some things differed: less sure."),
    "flat_weight_smaller_waist": N_("A waist can change when weight does not."),
    "matters_but_unsure": N_("One reading alone cannot show more."),
    "early_weeks": N_("It is early: a change takes weeks."),
    "one_step_of_tape": N_("One step on the tape is no change yet."),
    "one_beat_of_the_count": N_("One beat in the count does this."),
    "other_weekday": N_("Weight also swings over the week."),
    "small_steps": N_("A small step the right way, each time. It is a hopeful sign, but not sure yet."),
    "practice_counts_too": N_("Practice helps the second time, too."),
    "medicine_slows_pulse": N_("Your medicine slows the pulse, so no table fits."),
    "series_too_few_days": N_("A few more days are needed."),
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
        case "starting":
            return v.say("This is part of your starting point.")
        case "too_soon":
            return v.say("It is too soon to compare it with your first one.")
        case "not_comparable":
            return v.say("It was done in another way, so I do not compare it with your first one.")
        case "within_error" if said.difference is not None:
            return _moved(said, v)  # its size, and no meaning: chance does that too, some time in a year
        case "within_error":
            return v.sentences(_same(said, v), _chance(said, v))
        case _:
            return v.sentences(_moved(said, v), _meaning(said, v))


def _same(said: m.VerdictSaid, v: Voice) -> Html:
    if said.since is None:
        return v.say("About the same as at the start.")
    return v.say("About the same as on {date}.", date=v.day_of_year(said.since))


def _chance(said: m.VerdictSaid, v: Voice) -> Html:
    if said.error is None:
        return Html("")
    return v.say(CHANCE.get(said.measure, CHANCE_OTHER), error=v.size(said.error, said.measure))


def _moved(said: m.VerdictSaid, v: Voice) -> Html:
    """The size of the change against the error. "More" and "less" are neutral, whichever is better."""
    unspecific = v.say("This is more than day-to-day swing.")
    if said.difference is None or said.error is None or said.since is None:
        return unspecific
    size, error = v.size(said.difference, said.measure), v.size(said.error, said.measure)
    if size == error:  # "1.5 kg less (chance: up to 1.5 kg)" is exact and reads like a mistake
        return unspecific
    values = {"size": size, "date": v.day_of_year(said.since), "error": error}
    if said.kind == "within_error":  # more than the error, and not enough to be given a meaning: see `Verdict.chance`
        less = said.difference.value < 0
        moved = (
            v.say("That is {size} less than on {date}.", **values)
            if less
            else v.say("That is {size} more than on {date}.", **values)
        )
        return v.sentences(moved, v.say("Now and then, chance does that too."))
    if said.difference.value < 0:
        return v.say("That is {size} less than on {date}. Daily swing: up to {error}.", **values)
    return v.say("That is {size} more than on {date}. Daily swing: up to {error}.", **values)


def _meaning(said: m.VerdictSaid, v: Voice) -> Html:
    confirmed = said.strength == "confirmed"
    match said.kind:
        case "better" if said.strength == "twice":
            return v.say("Two checks point the same way: a good sign, but not sure yet.")
        case "changed" if said.strength == "twice":
            return v.say("Two checks point the same way, but it is not sure yet.")
        case "better" if confirmed and said.important:
            return v.say("Twice now: better, and enough to notice.")
        case "better" if confirmed and said.important is False:
            return v.say("Twice now: a bit better.")
        case "better" if confirmed:
            return v.say("Twice now: a change for the better.")
        case "better" if said.last:
            return v.say("It looks better. Seen once, it is not sure.")
        case "better":
            return v.say("It looks better. Next time will tell.")
        case "worse" if confirmed or said.strength == "twice":
            return v.say("Twice now: please tell your coach.")
        case "worse" if said.last:
            return v.say("It can pass. If it stays, tell your coach.")
        case "worse":
            return v.say("It can pass. Next time will tell.")
        case _ if confirmed:
            return v.say("Twice now, so it is a real change.")
        case _ if said.last:
            return v.say("Seen once, it is not sure.")
        case _:
            return v.say("Next time will tell if it stays.")


@phrase(sm.StartTaken)
def start_taken(said: sm.StartTaken, v: Voice) -> str:
    if said.again:
        return v.say(
            "Your two values are far apart. That happens. I ask once more next week, to be sure of your start."
        )
    amount = v.amount(said.amount, measure=said.measure)
    return v.say("Taken together, your start is {amount}. I compare later ones with it.", amount=amount)


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
