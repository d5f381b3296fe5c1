"""Button labels: short, plain text, never HTML. A label key may have a prefix ("aspect:scales")."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache

from bot.foundation.reader import LABEL_LIMIT, Reader
from bot.rendering.phrases import cohort_labels, names, staff_labels
from bot.rendering.places import place_name
from bot.rendering.voice import N_, NC_, Voice, shortened, voice
from core.dialogue.kit.effects import Choice
from core.language import LANGUAGES

LABELS: dict[str, str] = {
    "agree": N_("Yes, I agree"),
    "decline": N_("No, thank you"),
    "what_is_kept": N_("What do you keep?"),
    "skip": N_("Skip"),
    "done": N_("Done"),
    "none_of_these": N_("None of these"),
    "yes": N_("Yes"),
    "no": N_("No"),
    "same_as_last_time": N_("Same as last time"),
    "something_differed": N_("Something was different"),
    "how": N_("How do I measure?"),
    "ruler": N_("I have no tape measure"),
    "source": N_("Where is this from?"),
    "later": N_("Later"),
    "not_today": N_("Not today"),
    "help": N_("Help"),
    "word_to_coach": N_("Message {coach}"),
    "pass_on": N_("Pass it on"),
    "energy": N_("Rate my energy"),
    "walk": N_("Go for a walk"),
    "waist": N_("Measure my waist"),
    "start_now": N_("Start now"),
    "at_my_time": N_("At my usual time"),
    "time_it": N_("Time me"),
    "start": N_("Start"),
    "stop": N_("Stop"),
    "i_have_number": N_("I have my number"),
    "well_yes": N_("Yes, I feel well"),
    "well_no": N_("No, not today"),
    "signs_none": N_("None of these"),
    "signs_some": N_("One or more of these"),
    "feel_dizzy": N_("I feel dizzy or faint"),
    "alarm_me": N_("Yes, to me"),
    "alarm_nearby": N_("To somebody with me"),
    "alarm_over": N_("It is over"),
    "alarm_none": N_("It was no sign"),
    "now_better": N_("Better"),
    "now_same": N_("Still the same"),
    "now_worse": N_("Worse"),
    "keep_it": N_("Keep it"),
    "earlier_slip": N_("The earlier one was a slip"),
    "time_again": N_("Time me again"),
    "one_week": N_("One week"),
    "two_weeks": N_("Two weeks"),
    "four_weeks": N_("Four weeks"),
    "twelve_weeks": N_("Twelve weeks"),
    "new_round": N_("A new round"),
    "pause_first": N_("A break first"),
    "goodbye": N_("Say goodbye"),
    "in_two_hours": N_("In two hours"),
    "this_evening": N_("This evening"),
    "tomorrow": N_("Tomorrow"),
    "slot": N_("Day and time"),
    "zone": N_("Place"),
    "language": N_("Language"),
    "units": N_("Units"),
    "numbers": N_("My numbers"),
    "pause": N_("Take a break"),
    "goal": N_("My goal"),
    "goal_drop": N_("No goal for now"),
    "progress": N_("My picture"),
    "today": N_("What is due?"),
    "my_data": N_("My data"),
    "forget": N_("Delete my data"),
    "leave": N_("Leave"),
    "year_again": N_("The year was wrong"),
    "forget_yes": N_("Yes, delete it all"),
    "leave_yes": N_("Yes, leave"),
    "no_keep": N_("No, keep it as it is"),
    "move_yes": N_("Yes, move"),
    "move_no": N_("No, stay"),
    "resume": N_("End the break"),
    "record": N_("Send a number"),
    "undo": N_("Take it back"),
    "settings": N_("Settings"),
    "fact_wrong": N_("That is not right"),
    "about_me": N_("About me"),
    "ask_missing": N_("Ask me what is missing"),
    "take_off": N_("Take it off the list"),
    "seen": N_("Seen"),
    "open_card": N_("Open card"),
    "write": N_("Write"),
    **staff_labels.LABELS,
    **cohort_labels.LABELS,
}


def _medicine_off(v: Voice, argument: str) -> str:
    medicine = v.plain_in("medicine", names.MEDICINES.get(argument, argument))
    return v.plain("I stopped {medicine}", medicine=medicine)


ABOUT = {**staff_labels.ABOUT, **cohort_labels.ABOUT, "medicine_off": _medicine_off}  # labels that need their argument

# Labels that include the argument of the choice.
WITH_ARGUMENT = frozenset({"word_to_coach"})

BACKGROUNDS: dict[str, str] = {
    "white": NC_("background", "White"),
    "south_asian": NC_("background", "South Asian"),
    "chinese": NC_("background", "Chinese"),
    "japanese": NC_("background", "Japanese"),
    "other_asian": NC_("background", "Other Asian"),
    "middle_eastern": NC_("background", "Middle Eastern"),
    "black_african": NC_("background", "Black African"),
    "african_caribbean": NC_("background", "African Caribbean"),
    "south_central_american": NC_("background", "South or Central American"),
    "mixed_or_other": NC_("background", "Mixed or other"),
}

SEXES: dict[str, str] = {"female": NC_("sex", "Female"), "male": NC_("sex", "Male")}

UNITS: dict[str, str] = {
    "kg": N_("kg and cm"),
    "lb": N_("pounds and inches"),
    "st": N_("stones and inches"),
    "cm": N_("cm"),
    "in": N_("inches"),
}

GROUPS: dict[str, dict[str, str]] = {
    "aspect": names.ASPECTS,
    "measure": names.MEASURES,
    "background": BACKGROUNDS,
    "caution": names.CAUTIONS,
    "sign": names.SIGNS,
    "my": {
        "birth_year": N_("Year of birth"),
        "sex": N_("Tables for me"),
        "stature": N_("My height"),
        "background": N_("Family background"),
        "cautions": N_("My health"),
        "medicines": N_("My medicines"),
    },
    "unit": UNITS,
    "units": UNITS,
    "sex": SEXES,
    "numbers": {
        "shown": N_("Show me my numbers"),
        "coach_only": N_("Only to my coach"),
        "leave_out": N_("Leave weight out"),
    },
    "counts": cohort_labels.COUNTS,
    "better": {"higher": N_("A higher number"), "lower": N_("A lower number")},
    "lang": {words.code: words.own_name for words in LANGUAGES.values()},  # so that everybody can find theirs
}
UNTRANSLATED = frozenset({"lang"})
CONTEXT = {"background": "background", "caution": "caution", "sex": "sex"}


def label(v: Voice, choice: Choice) -> str:
    """A button's label. Total: a key without a label shows its last part; a test checks that all keys have one."""
    return shortened(_label(v, choice), LABEL_LIMIT)


def _label(v: Voice, choice: Choice) -> str:
    key, argument = choice.label, choice.argument
    if key in ABOUT:
        return ABOUT[key](v, argument)
    group, _, rest = key.partition(":")
    match group:
        case "number" | "hour":
            return v.numbers.isolate(argument or rest)
        case "seconds":
            if argument == "0":
                return v.plain("Stopwatch")
            return v.plain_n("{n} second", "{n} seconds", int(argument)) if argument.isdigit() else argument
        case "weekday" if rest.isdigit() and int(rest) < 7:
            return _capital(v.weekday(int(rest)))
        case "place":
            return place_name(argument or rest, v.reader.language, with_country=True)
        case _:
            pass
    if rest and rest in (table := GROUPS.get(group, {})):
        if group in UNTRANSLATED:
            return table[rest]
        said = v.plain_in(CONTEXT[group], table[rest]) if group in CONTEXT else v.plain(table[rest])
        return _capital(said)
    if key in LABELS:
        return v.plain(LABELS[key], coach=v.coach(argument)) if key in WITH_ARGUMENT else v.plain(LABELS[key])
    return _capital((rest or group).replace("_", " "))


@lru_cache(maxsize=16)
def labeller(language: str) -> Callable[[str, str], str]:
    """Looks up button labels for `core.dialogue`, so that somebody may type them (`ClientFacts.label`)."""
    v = voice(Reader(language))

    def words(key: str, argument: str) -> str:
        return label(v, Choice(key, "", argument))

    return words


def known(label_key: str) -> bool:
    """Whether a label key has a label."""
    group, _, rest = label_key.partition(":")
    if group in ("number", "hour", "seconds", "place"):
        return True
    if group == "weekday":
        return rest.isdigit() and int(rest) < 7
    return label_key in LABELS or label_key in ABOUT or (bool(rest) and rest in GROUPS.get(group, {}))


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
