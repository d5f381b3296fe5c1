"""Safety: what public guidance says, in plain words. No diagnosis; the local number; the coach is notified.

Facts: function.md 9.1 (signs and what public pages say of them), body.md 4.3, 4.4 and 3.1 (pressure and pulse), with
the sources named in core.references.bp_severe, bp_low and rhr_adult_range.
"""

from __future__ import annotations

from datetime import datetime
from decimal import Decimal

from bot.rendering.phrases import names, phrase
from bot.rendering.voice import N_, Html, Voice
from core.dialogue.client import messages as m
from core.language.signs import AMISS
from core.quantity import Amount, Unit
from core.references import low_sugar
from core.references.emergency_numbers import UNKNOWN_COUNTRY
from core.references.helplines import FIND_ONE

# Danger signs in their stand-alone form, after a colon.
SIGNS: dict[str, str] = {
    "chest_pain": N_("chest pain or tightness"),
    "faint": N_("fainting"),
    "breathless_at_rest": N_("trouble breathing at rest"),
    "stroke_signs": N_("weakness, a drooping face, or trouble speaking or seeing"),
    "leg_swelling_with_breathlessness": N_("a swollen leg, with chest pain or trouble breathing"),
    "leg_swelling": N_("swelling in one leg"),
    "swollen_legs": N_("swollen legs"),
    "palpitations": N_("a racing or uneven heartbeat"),
    "breathless_on_usual_tasks": N_("getting out of breath with everyday things"),
    "breathless": N_("getting out of breath"),
    "dizzy": N_("feeling dizzy"),
    "dizziness": N_("feeling dizzy"),
    "fainting": N_("fainting"),
    "severe_headache": N_("a very bad headache"),
    "arm_jaw_neck_pain": N_("pain in the arm, jaw or neck"),
    "nausea": N_("feeling sick"),
    "cold_sweat": N_("a cold sweat"),
    "new_joint_pain": N_("new pain in a muscle or joint"),
    "unusual_fatigue": N_("feeling far more tired than usual"),
    "despair": N_("thoughts of hurting yourself"),
    "eating_worry": N_("worries about food or weight"),
    "allergic_reaction": N_("a bad allergic reaction"),
    "bleeding": N_("a lot of bleeding, or blood where it should not be"),
    "call_for_help": N_("a call for help"),
    "overdose": N_("too much of a medicine"),
    "seizure": N_("a fit or seizure"),
    "head_injury": N_("a knock on the head"),
    "low_sugar": N_("low blood sugar"),
    "cannot_pass_water": N_("not being able to pass water, or numbness between the legs"),
    "carbon_monoxide": N_("poisonous gas in the air"),
    "infection": N_("signs of a serious infection"),
    "amiss": N_("feeling very unwell, or an accident"),
    "gate_signs": N_("a sign from the list before the test"),
    "gate_unwell": N_("not feeling well before the test"),
}
SIGN_OTHER = N_("a sign to take seriously")


def sign(v: Voice, key: str) -> Html:
    return v.say(SIGNS.get(key, SIGN_OTHER))


def _number(v: Voice, number: str) -> Html:
    return v.bold(v.numbers.isolate(number)) if number else _local(v)


def _local(v: Voice) -> Html:
    """What to call if the country is unknown: never one number for everybody."""
    (first, _), (second, _) = UNKNOWN_COUNTRY
    # Translators: stands where a number would, so in every sentence behind the same words: "call {number}".
    return v.say(
        "your local emergency number ({europe} in Europe, {america} in North America)",
        europe=v.numbers.isolate(first),
        america=v.numbers.isolate(second),
    )


def emergency_number(v: Voice, number: str) -> Html:
    """The number to call; if it is unknown, how to find it."""
    return Html(v.numbers.isolate(number)) if number else _local(v)


def told(v: Voice, coach: str, at: datetime | None) -> Html:
    """That the coach has been told, or when they will be; with an empty name, that they could not be."""
    if not coach:
        return v.say("I could not tell your coach just now.")
    if at is not None:
        return v.say(
            "These are quiet hours for {coach}. I will pass it on at {time}.", coach=v.coach(coach), time=v.time(at)
        )
    return v.say("I have told {coach}.", coach=v.coach(coach))


@phrase(m.GateWell)
def gate_well(said: m.GateWell, v: Voice) -> str:
    return v.say(
        "Before we test: do you feel well today? Please press No if you are ill, hurt, or have just changed a medicine."
    )


@phrase(m.GateSigns)
def gate_signs(said: m.GateSigns, v: Voice) -> str:
    return v.lines(
        v.say("One more thing. Do you have any of these today?"),
        v.say("• chest pain or a tight chest"),
        v.say("• feeling dizzy or faint"),
        v.say("• more out of breath than usual"),
        v.say("• a racing or uneven heartbeat"),
        v.say("• swelling in one leg"),
        v.say("• new weakness, or trouble speaking or seeing"),
    )


@phrase(m.GateStopped)
def gate_stopped(said: m.GateStopped, v: Voice) -> str:
    return v.sentences(
        v.say("Then we do no test today. Please rest, and ask a doctor or nurse if it is new or does not go away."),
        _when_to_call(v, said.number),
        told(v, said.coach, said.at),
    )


@phrase(m.RestWhileIll)
def rest_while_ill(said: m.RestWhileIll, v: Voice) -> str:
    return v.sentences(
        v.say("I am sorry you are ill. Rest comes first, and the rest of my questions can wait."),
        v.say("I ask for no test until you are well."),
        _when_to_call(v, said.number),
        v.say("{coach} will hear that you are ill.", coach=v.coach(said.coach)) if said.coach else "",
    )


def _when_to_call(v: Voice, number: str) -> Html:
    return v.say(
        "For chest pain, fainting, trouble breathing or sudden weakness, call {number} now.",
        number=_number(v, number),
    )


def _what_first(v: Voice, said: m.Emergency | m.EmergencyNearby) -> Html:
    number = emergency_number(v, said.number)
    if said.sign == "carbon_monoxide":  # out of it before anything else (public guidance, from memory)
        return v.say("<b>Go out into the fresh air now, all of you. Then call {number}.</b>", number=number)
    if isinstance(said, m.EmergencyNearby):
        return v.say(
            "<b>Call {number} now, for them.</b> Put the phone on loudspeaker and stay with them.", number=number
        )
    return v.say("Please stop now, and sit or lie down. <b>Call {number} now.</b>", number=number)


@phrase(m.Emergency)
def emergency(said: m.Emergency, v: Voice) -> str:
    if said.sign == "low_sugar":
        return _low_sugar(said, v)
    return v.paragraphs(
        _what_first(v, said),
        v.sentences(
            v.say("This can be serious: {sign}.", sign=sign(v, said.sign)),
            v.say("Public advice is to get help at once and not to wait. If someone is near, call out to them."),
        ),
        v.say("I am not a doctor, and I cannot call for you."),
    )


def _if_it_grows_worse(v: Voice, number: str) -> Html:
    return v.say(
        "If you get chest pain, feel faint or cannot get your breath, call {number} now.", number=_number(v, number)
    )


def _low_sugar(said: m.Emergency, v: Voice) -> str:
    """Sugar comes before the call: figures of core.references.low_sugar."""
    few, many = low_sugar.GLUCOSE_TABLETS
    return v.paragraphs(
        v.say(
            "<b>Take sugar now:</b> a glass of fruit juice, a sweet drink that is not a diet one, or {few} to {many}"
            " glucose tablets. Sit down, and call out to somebody near.",
            few=v.number(few),
            many=v.number(many),
        ),
        v.say(
            "<b>Then call {number}</b> if you get worse, feel sleepy or confused, or are not better in {time}."
            " If you cannot swallow, call at once.",
            number=emergency_number(v, said.number),
            time=v.amount(Amount(Decimal(low_sugar.BETTER_WITHIN), Unit.MINUTE)),
        ),
        v.say("I am not a doctor, and I cannot call for you."),
    )


@phrase(m.SameDay)
def same_day(said: m.SameDay, v: Voice) -> str:
    return v.sentences(
        v.say("Thank you for telling me. This should be looked at: {sign}.", sign=sign(v, said.sign)),
        v.say("Public advice is to talk to a doctor or nurse today. Please do no test and no hard work today."),
        _if_it_grows_worse(v, said.number),
    )


@phrase(m.StopAndRest)
def stop_and_rest(said: m.StopAndRest, v: Voice) -> str:
    return v.sentences(
        v.say("Please stop and rest. You wrote about this: {sign}.", sign=sign(v, said.sign)),
        v.say("If it does not ease with rest, or comes back, ask a doctor or nurse today."),
        _if_it_grows_worse(v, said.number),
    )


@phrase(m.Despair)
def despair(said: m.Despair, v: Voice) -> str:
    return v.paragraphs(
        v.say("I am so sorry that you feel like this. You matter, and you do not have to go through it alone."),
        v.say(
            "Please talk to someone now: a friend, your doctor, or a crisis line. If you might hurt yourself, call"
            " {number} right away.",
            number=_number(v, said.number),
        ),
        _helpline(v, said),
    )


def _helpline(v: Voice, said: m.Despair) -> Html:
    if not said.line:
        return v.say("You can find a crisis line near you at {site}.", site=v.numbers.isolate(FIND_ONE))
    both = said.line if said.dial in said.line.split() else f"{said.line} {said.dial}".strip()  # "Línea 024", "3114"
    name = v.bold(v.numbers.isolate(both))
    if not said.site:
        return v.say("A crisis line where you live: {line}.", line=name)
    return v.say("A crisis line where you live: {line}, {site}.", line=name, site=v.numbers.isolate(said.site))


@phrase(m.EatingWorry)
def eating_worry(said: m.EatingWorry, v: Voice) -> str:
    charity = v.listed([v.numbers.isolate(part) for part in (said.line, said.site) if part])
    return v.sentences(
        v.say("Thank you for telling me. That sounds hard, and you are not the only one who feels like this."),
        v.say(
            "A talk can help: with {coach}, with your doctor, or with a charity for eating worries.",
            coach=v.coach(said.coach),
        )
        if said.coach
        else v.say("A talk can help: with your doctor, or with a charity for eating worries."),
        v.say("One is this: {charity}.", charity=charity) if said.line else "",
        v.say("You can leave weight out at any time. Just send /settings."),
    )


@phrase(m.AskAlarm)
def ask_alarm(said: m.AskAlarm, v: Voice) -> str:
    if said.sign == AMISS:
        return v.say(
            "I want to be sure that I understand you. Is something wrong right now, with you or someone near you?"
        )
    question = v.say("I want to be sure. You wrote about this: {sign}. Is it happening now?", sign=sign(v, said.sign))
    if not said.urgent:
        return question
    return v.sentences(
        question,
        v.say("If it is, do not wait for me: <b>call {number} now.</b>", number=emergency_number(v, said.number)),
    )


@phrase(m.EmergencyNearby)
def emergency_nearby(said: m.EmergencyNearby, v: Voice) -> str:
    if said.sign == "low_sugar":
        number = emergency_number(v, said.number)
        return v.paragraphs(
            v.say(
                "<b>If they are awake and can swallow, give them sugar now:</b> juice, a sweet drink or glucose"
                " tablets."
            ),
            v.say(
                "<b>Call {number} at once</b> if they are sleepy, confused or pass out, and then give nothing by mouth."
                " Call as well if they are not better in {time}.",
                number=number,
                time=v.amount(Amount(Decimal(low_sugar.BETTER_WITHIN), Unit.MINUTE)),
            ),
            v.say("I am not a doctor, and I cannot call for you."),
        )
    return v.paragraphs(
        _what_first(v, said),
        v.sentences(
            v.say("This can be serious: {sign}.", sign=sign(v, said.sign)),
            v.say("The people you call will tell you what to do. If someone else is near, ask them to help."),
        ),
        v.say("I am not a doctor, and I cannot call for you."),
    )


@phrase(m.AdviceNearby)
def advice_nearby(said: m.AdviceNearby, v: Voice) -> str:
    return v.sentences(
        v.say("Thank you for looking after them. You wrote about this: {sign}.", sign=sign(v, said.sign)),
        v.say("Public advice is that they talk to a doctor or nurse today."),
        v.say(
            "If they get chest pain, faint or cannot get their breath, call {number} for them.",
            number=_number(v, said.number),
        ),
    )


@phrase(m.AlarmOver)
def alarm_over(said: m.AlarmOver, v: Voice) -> str:
    return v.sentences(
        v.say("Thank you for telling me. It is good that it has passed."),
        v.say("If it was in the last days, or no doctor knows of it yet, please call a doctor or nurse today."),
        v.say("If it comes back, call {number} at once.", number=_number(v, said.number)),
    )


@phrase(m.AlarmBetter)
def alarm_better(said: m.AlarmBetter, v: Voice) -> str:
    return v.sentences(
        v.say("Thank you for telling me. It is good that it is better."),
        v.say(
            "If some of it is still there, or it comes back, or no doctor knows of it yet, please call a doctor or"
            " nurse today."
        ),
        v.say("If it gets worse, call {number} at once.", number=_number(v, said.number)),
    )


@phrase(m.HowIsItNow)
def how_is_it_now(said: m.HowIsItNow, v: Voice) -> str:
    about = v.say("You wrote to me about this: {sign}.", sign=sign(v, said.sign))
    return v.sentences(about, v.say("How are they now?") if said.nearby else v.say("How are you now?"))


@phrase(m.NotMeant)
def not_meant(said: m.NotMeant, v: Voice) -> str:
    return v.sentences(
        v.say("Thank you for telling me. I always take such words to be true, to be on the safe side."),
        v.say("If it is ever real, call {number} at once.", number=_number(v, said.number)),
    )


@phrase(m.AlarmClosed)
def alarm_closed(said: m.AlarmClosed, v: Voice) -> str:
    return v.sentences(
        v.say("That was the button of an old question."),
        v.say("If something is wrong now, write it to me, or call {number}.", number=_number(v, said.number)),
    )


@phrase(m.KeptAside)
def kept_aside(said: m.KeptAside, v: Voice) -> str:
    what: list[str] = [names.measure(v, said.measure)]
    if said.amount is not None:
        what.append(v.amount(said.amount, measure=said.measure, second=said.second))
    return v.sentences(
        v.say("I have set this aside: {what}.", what=v.listed(what)),
        v.say("It does not count yet. Please send it again when you are well."),
    )


@phrase(m.PastIllness)
def past_illness(said: m.PastIllness, v: Voice) -> str:
    return v.sentences(
        v.say("Thank you for telling me. I have noted that you had this in the past: {sign}.", sign=sign(v, said.sign)),
        v.say("If you ever have it again, tell me, or call for help at once."),
    )


@phrase(m.CoachNotReached)
def coach_not_reached(said: m.CoachNotReached, v: Voice) -> str:
    if not said.coach:
        return v.sentences(
            v.say("You have no coach here at the moment, so nobody but me has read this."),
            v.say("Please do not wait for an answer: if you need help, call somebody now."),
        )
    return v.sentences(
        v.say("My messages do not reach {coach} at the moment.", coach=v.coach(said.coach)),
        v.say("I keep what you wrote, and send it on when they are back.") if said.kept else "",
        v.say("Please do not wait for an answer: if you need help, call somebody now."),
    )


@phrase(m.StoodDown)
def stood_down(said: m.StoodDown, v: Voice) -> str:
    return v.say("Good to hear that it is not happening now. If it comes, please get help at once.")


@phrase(m.CoachTold)
def coach_told(said: m.CoachTold, v: Voice) -> str:
    if said.at is not None:
        return v.sentences(
            told(v, said.coach, said.at), v.say("Please do not wait for that if you need help before then.")
        )
    return v.say(
        "I have told {coach}. Please do not wait for an answer if you need help now.", coach=v.coach(said.coach)
    )


@phrase(m.PressureRepeat)
def pressure_repeat(said: m.PressureRepeat, v: Voice) -> str:
    return v.paragraphs(
        v.say(
            "That is a very high reading. Please sit still for 5 minutes, without talking. Then measure again and send"
            " me both numbers."
        ),
        _pressure_signs(v, said.number),
    )


def _pressure_signs(v: Voice, number: str) -> Html:
    return v.lines(
        v.say("Do not wait: call {number} now if you have any of these:", number=_number(v, number)),
        v.say("• a sudden bad headache"),
        v.say("• trouble breathing"),
        v.say("• sudden pain in the chest, back or belly"),
        v.say("• numbness or weakness"),
        v.say("• trouble seeing or speaking"),
    )


@phrase(m.PressureSevere)
def pressure_severe(said: m.PressureSevere, v: Voice) -> str:
    return v.paragraphs(
        v.say("It is still very high. Public advice is to call your doctor or nurse now, today."),
        _pressure_signs(v, said.number),
    )


@phrase(m.PregnancyPressureRepeat)
def pregnancy_pressure_repeat(said: m.PregnancyPressureRepeat, v: Voice) -> str:
    return v.paragraphs(
        v.say(
            "That is very high in pregnancy or after a birth. Sit still for 5 minutes, then measure again and send"
            " both numbers."
        ),
        v.say("Call your maternity unit today in any case."),
        _pregnancy_signs(v, said.number),
    )


def _pregnancy_signs(v: Voice, number: str) -> Html:
    return v.lines(
        v.say("Call the unit or {number} now for:", number=_number(v, number)),
        v.say("• a bad headache"),
        v.say("• pain below the ribs"),
        v.say("• vomiting"),
        v.say("• sudden swelling"),
        v.say("• a fit"),
        v.say("• trouble seeing or breathing"),
    )


@phrase(m.PregnancyPressureSevere)
def pregnancy_pressure_severe(said: m.PregnancyPressureSevere, v: Voice) -> str:
    return v.paragraphs(
        v.say(
            "It is still very high. Public advice is to call your maternity unit now, by day or night. If you cannot"
            " reach them, call {number}.",
            number=_number(v, said.number),
        ),
        _pregnancy_signs(v, said.number),
    )


@phrase(m.PregnancyPressureSettled)
def pregnancy_pressure_settled(said: m.PregnancyPressureSettled, v: Voice) -> str:
    return v.sentences(
        v.say("Thank you for taking it again. This one is not in the very high range. I have kept both."),
        v.say("Please still tell your midwife or maternity unit about both today."),
    )


@phrase(m.PregnancyPressureWeek)
def pregnancy_pressure_week(said: m.PregnancyPressureWeek, v: Voice) -> str:
    return v.say(
        "The usual limits for such a week are not made for pregnancy. Please show these numbers to your midwife or"
        " doctor."
    )


@phrase(m.PressureLow)
def pressure_low(said: m.PressureLow, v: Voice) -> str:
    return v.sentences(
        v.say("That is on the low side. If you feel well, it is mostly no problem."),
        v.say(
            "If you feel dizzy or faint, lie down and ask a doctor or nurse today. If you pass out or do not feel"
            " better lying down, call {number}.",
            number=_number(v, said.number),
        ),
    )


@phrase(m.PressureSettled)
def pressure_settled(said: m.PressureSettled, v: Voice) -> str:
    return v.say("Thank you for taking it again. This one is not in the very high range. I have kept both.")


@phrase(m.PulseRepeat)
def pulse_repeat(said: m.PulseRepeat, v: Voice) -> str:
    return v.sentences(
        v.say(
            "That is an unusual pulse at rest. Please sit still for 10 minutes. Then count again for 60 seconds, and"
            " send me the number."
        ),
        _pulse_signs(v, said.number),
    )


def _pulse_signs(v: Voice, number: str) -> Html:
    return v.say(
        "If you have chest pain, feel faint or cannot get your breath, call {number} now.", number=_number(v, number)
    )


@phrase(m.PulseAdvice)
def pulse_advice(said: m.PulseAdvice, v: Voice) -> str:
    return v.sentences(
        v.say(
            "Thank you for counting again. It is still not usual for a pulse at rest. Please ask a doctor or nurse"
            " about it today. It may be simple, such as a medicine."
        ),
        _pulse_signs(v, said.number),
    )


@phrase(m.FastGain)
def fast_gain(said: m.FastGain, v: Voice) -> str:
    """Public heart-failure guidance on a fast gain: call the team that asked for the weighing."""
    return v.sentences(
        v.say("Your weight has gone up fast. Please call your doctor or nurse today, as you were asked to."),
        v.say("If it is hard to breathe, call {number}.", number=_number(v, said.number)),
        told(v, said.coach, said.at),
    )
