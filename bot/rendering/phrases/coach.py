"""Messages to the coach from a client's turn. Coaches read numbers and reasons; the reading level is not tested
here."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from decimal import Decimal

from bot.rendering.phrases import names, phrase
from bot.rendering.phrases.safety import sign
from bot.rendering.voice import N_, NC_, Html, Voice
from core.dialogue.client import messages_to_coach as cm
from core.measures import MEASURES
from core.quantity import Amount, Unit, convertible
from core.watching.flags import Evidence

# One line for each flag code (core.watching.flags.Code).
FLAGS: dict[str, str] = {
    "bp_severe": N_("A very high blood pressure. A repeat after five minutes has been asked for."),
    "bp_severe_repeated": N_("A very high blood pressure again after rest. They were told to call a clinician now."),
    "bp_high_mean": N_("The mean of a home blood pressure week is at or above the limit."),
    "bp_low": N_("A low blood pressure with dizziness or fainting."),
    "pulse_fast": N_("A resting pulse over 120. A repeat has been asked for."),
    "pulse_slow": N_("A resting pulse under 40. A repeat has been asked for."),
    "fast_gain": N_("Weight has gone up fast, and weighing is directed by a clinician."),
    "unplanned_loss_over_5": N_("Weight loss that was not planned: 5 in 100 or more."),
    "must_medium": N_("One point on the malnutrition screening."),
    "must_high": N_("Two points or more on the malnutrition screening."),
    "falls_risk": N_("A function test on the risk side of a falls limit."),
    "change_better_confirmed": N_("A change for the better, shown by all the readings together."),
    "change_worse_confirmed": N_("A change for the worse, shown by all the readings together."),
    "change_confirmed": N_("A change, shown by all the readings together."),
    "change_worse_large": N_("One large change for the worse, not yet confirmed."),
    "energy_falling": N_("Energy was well under the usual mean at two check-ins in a row."),
    "weighing_often": N_("Weighing often: early weigh-ins that were kept as side notes."),
    "missed_check_ins": N_("Check-ins in a row without an answer."),
    "symptom_reported": N_("A sign before a function test. No test was done."),
    "red_flag_words": N_("Wrote words that call for help. They got public advice at once."),
    "sign_unanswered": N_("Named a sign, and has not said yet whether it is happening now."),
    "identical_values": N_("The same value many times in a row."),
    "unreachable": N_("Messages cannot be delivered at the moment."),
    "wants_coach": N_("Would like a word with you."),
}
FLAG_OTHER = N_("Something you should know.")

EVIDENCE: dict[str, str] = {
    "reading": NC_("evidence", "Reading"),
    "caution": NC_("evidence", "Limit for"),
    "days": NC_("evidence", "Days"),
    "band": NC_("evidence", "Band"),
    "symptom": NC_("evidence", "Sign"),
    "rate": NC_("evidence", "Rate"),
    "gain": NC_("evidence", "Gain"),
    "from": NC_("evidence", "From"),
    "to": NC_("evidence", "To"),
    "percent": NC_("evidence", "Percent"),
    "since": NC_("evidence", "Since"),
    "points": NC_("evidence", "Points"),
    "bmi": NC_("evidence", "BMI"),
    "value": NC_("evidence", "Value"),
    "source": NC_("evidence", "Source"),
    "difference": NC_("evidence", "Difference"),
    "mdc95": NC_("evidence", "Can be chance, up to"),
    "baseline": NC_("evidence", "Start"),
    "level_before": NC_("evidence", "Level before"),
    "rating": NC_("evidence", "Rating"),
    "before": NC_("evidence", "Before"),
    "mean": NC_("evidence", "Mean"),
    "count": NC_("evidence", "Count"),
    "missed": NC_("evidence", "Missed"),
    "sign": NC_("evidence", "Sign"),
    "level": NC_("evidence", "Level"),
    "about": NC_("evidence", "Note"),
    "now": NC_("evidence", "Now"),
    "times": NC_("evidence", "Times"),
}

LEVELS: dict[str, str] = {
    "emergency": N_("emergency"),
    "same_day": N_("same day"),
    "stop_rest": N_("stop and rest"),
    "talk": N_("a talk"),
}

ABOUT: dict[str, str] = {
    "nearby": N_("of somebody with them, not their own"),
    "over": N_("they say that it is over"),
    "better": N_("they say that it is better"),
    "same": N_("they say that it is still the same"),
    "worse": N_("they say that it is worse"),
    "not_meant": N_("they say that it was not meant"),
}

_LOWER_OF = {"systolic": "diastolic", "before_systolic": "before_diastolic"}
_TOGETHER = {"systolic": "reading", "before_systolic": "before"}
_IN_THE_MEASURES_UNIT = frozenset(
    {"from", "to", "gain", "value", "difference", "mdc95", "baseline", "level_before", "mean", "rating"}
)
_DIFFERENCES = frozenset({"difference", "gain"})
_KEYS_OF_TABLES = frozenset({"band", "source"})


def flag(v: Voice, code: str) -> Html:
    """What a flag code means, in one line."""
    return v.say(FLAGS.get(code, FLAG_OTHER))


def evidence(v: Voice, measure: str | None, pairs: Evidence) -> Html:
    """The evidence of a flag in one line: "Reading: 186/112 mmHg, Before: 190/110 mmHg"."""
    said: list[str] = []
    for name, value in _paired(v, pairs):
        if name in _KEYS_OF_TABLES:
            continue  # already in the flag's text
        shown = value if isinstance(value, Html) else _value(v, measure, name, value)
        called = v.say_in("evidence", EVIDENCE.get(name, name))
        said.append(v.say("{name}: {value}", name=called, value=shown))
    return v.listed(said)


def _paired(v: Voice, pairs: Evidence) -> Iterator[tuple[str, str | Decimal]]:
    """Upper and lower pressure as a pair: 186/112."""
    known = dict(pairs)
    for name, value in pairs:
        lower = known.get(_LOWER_OF.get(name, ""))
        if isinstance(value, Decimal) and isinstance(lower, Decimal):
            yield _TOGETHER[name], Html(v.pressure(value, lower))
        elif name not in _LOWER_OF.values():
            yield name, value


def _value(v: Voice, measure: str | None, name: str, value: str | Decimal) -> str:
    if isinstance(value, str):
        if name in ("sign", "symptom"):
            return sign(v, value)
        if name == "caution":
            return v.say_in("caution", names.CAUTIONS.get(value, value))
        if name in ("about", "now"):
            return v.say(ABOUT.get(value, value))
        if name == "level":
            return v.say(LEVELS.get(value, value))
        if name == "since" and (day := _day(value)) is not None:
            return v.full_date(day)
        return v.numbers.isolate(value)
    if name == "rate":
        return v.amount(Amount(value, Unit.BEATS_PER_MINUTE))
    if name in _IN_THE_MEASURES_UNIT and (amount := in_unit_of(v, measure, value)) is not None:
        return v.signed(amount) if name in _DIFFERENCES else v.amount(amount, measure=measure or "")
    return v.number(value, 1)


def _day(text: str) -> date | None:
    try:
        return date.fromisoformat(text[:10])
    except ValueError:
        return None


def in_unit_of(v: Voice, measure: str | None, value: Decimal) -> Amount | None:
    """A value in this reader's preferred unit; None for an unknown measure."""
    found = MEASURES.get(measure or "")
    if found is None:
        return None
    amount = Amount(value, found.unit)
    for liked in (v.reader.units.mass, v.reader.units.length):
        if liked is not found.unit and liked in found.units and convertible(found.unit, liked):
            return amount.to(liked)
    return amount


@phrase(cm.UrgentFlag)
def urgent_flag(said: cm.UrgentFlag, v: Voice) -> str:
    head = v.say("<b>{name}</b>: {what}", name=v.name(said.name), what=flag(v, said.code))
    about = names.measure(v, said.measure) if said.measure else ""
    facts = evidence(v, said.measure, said.evidence)
    return v.lines(
        head,
        v.say("{measure}. {evidence}", measure=about, evidence=facts) if about and facts else about or facts,
        v.say("Since: {day}, {time}", day=v.local_day(said.since), time=v.local_time(said.since)),
    )


@phrase(cm.ClientWord)
def client_word(said: cm.ClientWord, v: Voice) -> str:
    return v.paragraphs(
        v.say("<b>{name} writes:</b>", name=v.name(said.name)),
        v.typed(said.text),
    )


@phrase(cm.ClientEnrolled)
def client_enrolled(said: cm.ClientEnrolled, v: Voice) -> str:
    return v.say("{name} has joined and answered the first questions.", name=v.name(said.name))


@phrase(cm.ClientLeft)
def client_left(said: cm.ClientLeft, v: Voice) -> str:
    return v.say("{name} has left. Nothing more is asked.", name=v.name(said.name))


@phrase(cm.ClientPaused)
def client_paused(said: cm.ClientPaused, v: Voice) -> str:
    return v.say("{name} takes a break until this day: {day}.", name=v.name(said.name), day=v.day(said.until))


@phrase(cm.ClientMoved)
def client_moved(said: cm.ClientMoved, v: Voice) -> str:
    return v.say("{name} has moved to another coach. You no longer see their answers.", name=v.name(said.name))


@phrase(cm.ClientUnreachable)
def client_unreachable(said: cm.ClientUnreachable, v: Voice) -> str:
    return v.say(
        "Messages to {name} do not arrive. Perhaps they blocked this chat. Please reach them another way.",
        name=v.name(said.name),
    )


@phrase(cm.ClientBack)
def client_back(said: cm.ClientBack, v: Voice) -> str:
    return v.say("{name} is back: messages arrive again.", name=v.name(said.name))
