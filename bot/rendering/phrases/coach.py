"""Messages to the coach from a client's turn. Coaches read numbers and reasons; the reading level is not tested
here."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from decimal import Decimal

from bot.rendering.phrases import names, phrase
from bot.rendering.phrases.safety import sign
from bot.rendering.voice import N_, NC_, Html, Voice
from core.care import Units
from core.dialogue.client import messages_to_coach as cm
from core.measures import MEASURES
from core.quantity import Amount, Unit, convertible
from core.references import must
from core.watching.digest import CHANGES, FlagFact
from core.watching.flags import Code, Evidence

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
    "energy_dropped": N_("Energy was well under the usual mean at the last check-in."),
    "weighing_often": N_("Weighing often: early weigh-ins that were kept as side notes."),
    "missed_check_ins": N_("Check-ins in a row without an answer."),
    "symptom_reported": N_("A sign before a function test. No test was done."),
    "red_flag_words": N_("Wrote words that call for help. They got public advice at once."),
    "sign_unanswered": N_("Named a sign, and has not said yet whether it is happening now."),
    "identical_values": N_("The same value many times in a row."),
    "unreachable": N_("Messages cannot be delivered at the moment."),
    "wants_coach": N_("Would like a word with you."),
    "doctor_first": N_("Before exercise: should see their doctor first."),
    "retest_missed": N_("A retest was asked for at two check-ins, and was not given."),
    "bp_week_short": N_("A blood pressure week ended with too few days."),
    "stuck_enrolling": N_("Has joined, and has not answered the first questions."),
    "invitation_unused": N_("Nobody has opened the link for a week."),
    "caseload_quiet": N_("Nobody at all has answered this week."),
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
    "reason": NC_("evidence", "Reason"),
    "level": NC_("evidence", "Level"),
    "about": NC_("evidence", "Note"),
    "now": NC_("evidence", "Now"),
    "times": NC_("evidence", "Times"),
    "words": NC_("evidence", "In their words"),
    "needed": NC_("evidence", "Days needed"),
    "asked": NC_("evidence", "Asked"),
}

LEVELS: dict[str, str] = {
    "emergency": N_("emergency"),
    "same_day": N_("same day"),
    "stop_rest": N_("stop and rest"),
    "talk": N_("a talk"),
}

REASONS: dict[str, str] = {
    "signs": N_("signs"),
    "disease": N_("a known disease"),
}

ABOUT: dict[str, str] = {
    "nearby": N_("of somebody with them, not their own"),
    "over": N_("they say that it is over"),
    "better": N_("they say that it is better"),
    "same": N_("they say that it is still the same"),
    "worse": N_("they say that it is worse"),
    "start_alone": N_("perhaps only an unusual first reading"),
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


def evidence(v: Voice, measure: str | None, pairs: Evidence, units: Units | None = None) -> Html:
    """The evidence of a flag in one line: "Reading: 186/112 mmHg, Before: 190/110 mmHg". units: the client's, in which
    they will talk about it; None for the reader's own."""
    said: list[str] = []
    for name, value in _paired(v, pairs):
        if name in _KEYS_OF_TABLES:
            continue  # already in the flag's text
        shown = value if isinstance(value, Html) else _value(v, measure, name, value, units)
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


def _value(v: Voice, measure: str | None, name: str, value: str | Decimal, units: Units | None) -> str:
    if isinstance(value, str):
        if name in ("sign", "symptom"):
            return sign(v, value)
        if name == "caution":
            return v.say_in("caution", names.CAUTIONS.get(value, value))
        if name == "reason":
            return v.say(REASONS.get(value, value))
        if name in ("about", "now"):
            return v.say(ABOUT.get(value, value))
        if name == "words":
            return v.say("“{words}”", words=v.typed(value))
        if name == "level":
            return v.say(LEVELS.get(value, value))
        if name == "since" and (day := _day(value)) is not None:
            return v.full_date(day)
        return v.numbers.isolate(value)
    if name == "rate":
        return v.amount(Amount(value, Unit.BEATS_PER_MINUTE))
    if name in _IN_THE_MEASURES_UNIT and (amount := in_unit_of(v, measure, value, units)) is not None:
        return v.signed(amount) if name in _DIFFERENCES else v.amount(amount, measure=measure or "")
    return v.number(value, 1)


def _day(text: str) -> date | None:
    try:
        return date.fromisoformat(text[:10])
    except ValueError:
        return None


def in_unit_of(v: Voice, measure: str | None, value: Decimal, units: Units | None = None) -> Amount | None:
    """A value in somebody's preferred unit, the reader's if not said otherwise; None for an unknown measure."""
    found = MEASURES.get(measure or "")
    if found is None:
        return None
    amount = Amount(value, found.unit)
    whose = v.reader.units if units is None else units
    for liked in (whose.mass, whose.length):
        if liked is not found.unit and liked in found.units and convertible(found.unit, liked):
            return amount.to(liked)
    return amount


# --- a flag in a few words --------------------------------------------------------------------------------------

# A flag in a few words, for use beside others.
SHORT: dict[str, str] = {
    "bp_severe": N_("very high blood pressure"),
    "bp_severe_repeated": N_("very high blood pressure, twice"),
    "bp_high_mean": N_("blood pressure week above the limit"),
    "bp_low": N_("low blood pressure with a sign"),
    "pulse_fast": N_("very fast resting pulse"),
    "pulse_slow": N_("very slow resting pulse"),
    "fast_gain": N_("fast weight gain"),
    "unplanned_loss_over_5": N_("unplanned weight loss"),
    "must_medium": N_("malnutrition screening: one point"),
    "must_high": N_("malnutrition screening: two points or more"),
    "falls_risk": N_("on the risk side of a falls limit"),
    "change_better_confirmed": N_("better, confirmed"),
    "change_worse_confirmed": N_("worse, confirmed"),
    "change_confirmed": N_("changed, confirmed"),
    "change_worse_large": N_("one large change for the worse"),
    "energy_falling": N_("energy falling"),
    "energy_dropped": N_("energy well under the usual"),
    "weighing_often": N_("weighing often"),
    "missed_check_ins": N_("check-ins without an answer"),
    "symptom_reported": N_("a sign before a test"),
    "red_flag_words": N_("words that call for help"),
    "sign_unanswered": N_("a sign, the question unanswered"),
    "identical_values": N_("the same value many times"),
    "unreachable": N_("cannot be reached"),
    "doctor_first": N_("see a doctor before exercise"),
    "wants_coach": N_("would like a word"),
    "retest_missed": N_("retest not given"),
    "bp_week_short": N_("blood pressure week too short"),
    "stuck_enrolling": N_("first questions not answered"),
    "invitation_unused": N_("link not opened for a week"),
    "caseload_quiet": N_("nobody has answered this week"),
}
OF_A_MEASURE = frozenset(  # codes whose words do not say what was measured
    {
        "change_better_confirmed", "change_worse_confirmed", "change_confirmed", "change_worse_large", "falls_risk",
        "identical_values", "retest_missed",
    }
)  # fmt: skip


def in_short(v: Voice, code: str) -> Html:
    return v.say(SHORT.get(code, FLAG_OTHER))


def what(v: Voice, one: FlagFact, units: Units) -> Html:
    """What a flag is about, with its number: "Waist: worse, confirmed, +6 cm"."""
    number = figure(v, one, units)
    said = v.listed([in_short(v, one.code), *([number] if number else []), *_note(v, one)])
    if one.measure and one.code in OF_A_MEASURE:
        return v.say("{measure}: {what}", measure=names.measure(v, one.measure), what=said)
    return said


def _note(v: Voice, one: FlagFact) -> Iterator[Html]:
    """What else must be known wherever a change is told: that only its start may have been out of the ordinary."""
    if ("about", "start_alone") in one.evidence:
        drifts = ABOUT["start_alone"]
        yield v.say(drifts)


def figure(v: Voice, one: FlagFact, units: Units | None = None) -> Html:
    """The number a flag is about, in a few words, "" if it is about none: one flag has one number, wherever it is told.

    units: as in `evidence`.
    """
    known = dict(one.evidence)

    def said(name: str) -> str:
        value = known.get(name)
        return "" if value is None else _value(v, one.measure, name, value, units)

    match Code(one.code):
        case Code.BP_SEVERE | Code.BP_SEVERE_REPEATED | Code.BP_HIGH_MEAN | Code.BP_LOW:
            pairs = [value for name, value in _paired(v, one.evidence) if name == "reading"]
            return Html(str(pairs[0])) if pairs else Html("")
        case Code.PULSE_FAST | Code.PULSE_SLOW:
            name = "rate"
        case Code.FAST_GAIN:
            name = "gain"
        case Code.UNPLANNED_LOSS_OVER_5 if "from" in known and "to" in known:
            return v.say("{first} → {last}", first=said("from"), last=said("to"))
        case Code.MUST_MEDIUM | Code.MUST_HIGH if "percent" in known and not _thin(known.get("bmi")):
            return v.say("{percent} % less weight", percent=said("percent"))
        case Code.MUST_MEDIUM | Code.MUST_HIGH if "bmi" in known:
            return v.say("BMI {value}", value=said("bmi"))
        case Code.FALLS_RISK:
            name = "value"
        case c if c in CHANGES or c is Code.CHANGE_WORSE_LARGE:
            name = "difference"
        case Code.ENERGY_FALLING | Code.ENERGY_DROPPED if "rating" in known and "mean" in known:
            return v.say("{now}, usually {mean}", now=said("rating"), mean=v.number(Decimal(known["mean"]), 1))
        case Code.WEIGHING_OFTEN | Code.IDENTICAL_VALUES | Code.RETEST_MISSED:
            times = known.get("count", known.get("times"))
            if not isinstance(times, Decimal):
                return Html("")
            often = v.say_n("{n} time", "{n} times", int(times))
            return v.listed([said("value"), often]) if "value" in known else often
        case Code.MISSED_CHECK_INS:
            missed = known.get("missed")
            return v.say_n("{n} in a row", "{n} in a row", int(missed)) if isinstance(missed, Decimal) else Html("")
        case Code.RED_FLAG_WORDS | Code.SIGN_UNANSWERED | Code.SYMPTOM_REPORTED:
            parts = [said(name) for name in ("sign", "about", "now")]
            return v.listed([part for part in parts if part])
        case Code.DOCTOR_FIRST:
            return v.listed([said("reason")] if "reason" in known else [])
        case Code.BP_WEEK_SHORT if "days" in known and "needed" in known:
            return v.say("{days} of {needed} days", days=said("days"), needed=said("needed"))
        case Code.CASELOAD_QUIET:
            return v.say("0 of {asked}", asked=said("asked"))
        case _:
            return Html("")
    return v.listed([said(name)] if known.get(name) is not None else [])


def _thin(bmi: object) -> bool:
    """Whether malnutrition screening gives points for the body mass index, and not for a loss alone."""
    return isinstance(bmi, Decimal) and must.bmi_points(bmi) > 0


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


@phrase(cm.RepeatTaken)
def repeat_taken(said: cm.RepeatTaken, v: Voice) -> str:
    facts = {"name": v.name(said.name), "what": in_short(v, said.code), "value": measured(v, said.measure, said.after)}
    if said.slip:
        return v.say("<b>{name}</b>: the figures of the alarm ({what}) were a slip, put right to {value}.", **facts)
    return v.sentences(
        v.say("<b>{name}</b>: measured since the alarm ({what}): {value}.", **facts),
        v.say("It no longer alarms.") if said.settled else v.say("It alarms as well."),
    )


@phrase(cm.SignAnswered)
def sign_answered(said: cm.SignAnswered, v: Voice) -> str:
    return v.say(
        "<b>{name}</b> has answered the question that stood: it was no sign ({sign}).",
        name=v.name(said.name),
        sign=sign(v, said.sign),
    )


# What the client was told when a flag was raised, by its code or, for words, by their level.
TOLD: dict[str, str] = {
    "bp_severe": N_("Told: rest, take it again, and when to call for help."),
    "bp_severe_repeated": N_("Told: call a clinician now."),
    "bp_low": N_("Told: see a clinician today."),
    "pulse_fast": N_("Told: sit still and count again, and when to call for help."),
    "pulse_slow": N_("Told: sit still and count again, and when to call for help."),
    "fast_gain": N_("Told: call the clinic that asked for the weighing."),
    "symptom_reported": N_("Told: no test today, and when to call for help."),
    "emergency": N_("Told: call for help now, with the number."),
    "same_day": N_("Told: see a clinician today."),
    "stop_rest": N_("Told: stop and rest, and when to call for help."),
    "talk": N_("Told: whom to talk to."),
    "sign_unanswered": N_("Asked: is it happening now?"),
}
ANSWERS: dict[str, str] = {
    "me": N_("They answered: yes, to me."),
    "nearby": N_("They answered: somebody with me."),
    "over": N_("They answered: it is over."),
    "none": N_("They answered: it was no sign."),
}
DONE: dict[str, str] = {
    "rang": N_("Rang"),
    "wrote": N_("Wrote"),
    "met": N_("Met"),
    "referred": N_("Referred on"),
    "nothing": N_("Nothing needed"),
}
ENDED: dict[str, str] = {
    "reading": N_("Settled by the next measurement, {day}."),
    "answer": N_("Over when they answered, {day}."),
    "heard": N_("Over when they wrote again, {day}."),
    "time": N_("Over after four quiet weeks, {day}."),
    "corrected": N_("It was a slip, put right {day}."),
}


def told(v: Voice, one: FlagFact) -> Html:
    """What the client was told when this flag was raised; "" for nothing."""
    level = str(dict(one.evidence).get("level", ""))
    key = level if one.code == Code.RED_FLAG_WORDS else one.code
    return v.say(TOLD[key]) if key in TOLD else Html("")


def followed(v: Voice, one: FlagFact, units: Units | None = None) -> Html:
    """What came after a flag that is over: the next measurement, or what they answered."""
    after = dict(one.after)
    answer = after.get("answer")
    if isinstance(answer, str):
        return v.say(ANSWERS[answer]) if answer in ANSWERS else Html("")
    value = measured(v, one.measure, one.after, units)
    return v.say("Then {value}.", value=value) if value else Html("")


def measured(v: Voice, measure: str | None, after: Evidence, units: Units | None = None) -> Html:
    """What was measured next, without its name: "150/94 mmHg"."""
    return v.listed(
        [
            shown if isinstance(shown, Html) else _value(v, measure, name, shown, units)
            for name, shown in _paired(v, after)
        ]
    )


def ended(v: Voice, one: FlagFact) -> Html:
    """How a flag ended: by itself, or who dealt with it and how."""
    if one.cleared_at is None:
        return Html("")
    day = v.short_date(one.cleared_at.astimezone(v.reader.zone).date())
    if one.ended in ENDED:
        return v.say(ENDED[one.ended], day=day)
    by = v.say("{name}, {day}", name=v.name(one.by), day=day) if one.by else day
    parts = [done(v, one.done)] if one.done in DONE else []
    if one.words:
        parts.append(v.say("“{words}”", words=v.typed(one.words, 200)))
    what = v.listed(parts)
    return v.say("Dealt with ({by}): {what}.", by=by, what=what) if parts else v.say("Dealt with ({by}).", by=by)


def done(v: Voice, key: str) -> Html:
    return v.say(DONE[key])


@phrase(cm.ClientWord)
def client_word(said: cm.ClientWord, v: Voice) -> str:
    return v.paragraphs(
        v.say("<b>{name} writes:</b>", name=v.name(said.name)),
        v.typed(said.text),
    )


@phrase(cm.DoctorFirst)
def doctor_first(said: cm.DoctorFirst, v: Voice) -> str:
    signs = v.listed([v.say(names.SIGNS.get(key, key)) for key in said.signs])
    diseases = v.listed([v.say_in("caution", names.CAUTIONS.get(key, key)) for key in said.diseases])
    return v.lines(
        v.say("<b>{name}</b>, before exercise: should see their doctor first.", name=v.name(said.name)),
        v.say("Signs: {list}", list=signs) if signs else "",
        v.say("Known: {list}", list=diseases) if diseases else "",
        v.say("They were told so. Until then nothing harder than their everyday life."),
    )


@phrase(cm.ClientEnrolled)
def client_enrolled(said: cm.ClientEnrolled, v: Voice) -> str:
    lead = v.say("{name} has joined and answered the first questions.", name=v.name(said.name))
    if not said.alike:
        return lead
    return v.sentences(
        lead,
        v.say(
            "Another of your clients is called {name}, too. You can give either a name that only you see: open the"
            " card, and press Rename.",
            name=v.name(said.alike),
        ),
    )


@phrase(cm.ClientLeft)
def client_left(said: cm.ClientLeft, v: Voice) -> str:
    return v.say("{name} has left. Nothing more is asked.", name=v.name(said.name))


@phrase(cm.ClientPaused)
def client_paused(said: cm.ClientPaused, v: Voice) -> str:
    return v.say("{name} takes a break until this day: {day}.", name=v.name(said.name), day=v.day(said.until))


@phrase(cm.ClientIll)
def client_ill(said: cm.ClientIll, v: Voice) -> str:
    return v.say("{name} is ill, as people are now and then. I ask for no test today.", name=v.name(said.name))


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
