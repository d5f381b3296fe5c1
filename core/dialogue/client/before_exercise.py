"""Before exercise: the answers to a short check, and what comes of it. The rule is in `core.judging.readiness`."""

from __future__ import annotations

from dataclasses import replace

from core.dialogue.client import enrolment_messages as em
from core.dialogue.client import needed
from core.dialogue.client.effects import ChangeClient, Lower, NotifyCoach, Raise
from core.dialogue.client.messages_to_coach import DoctorFirst
from core.dialogue.client.states import Enrolling
from core.dialogue.client.step import ClientStep
from core.judging.readiness import Asked, Readiness, Verdict, diseases, signs, verdict
from core.watching.flags import Code, Ended, flag

ANSWERS = {"yes": True, "no": False}


def answered(d: ClientStep, asking: Enrolling, value: str) -> bool:
    """Keep an answer, or tick one more sign; False if it is none."""
    said = d.facts.readiness
    match Asked(asking.question):
        case Asked.SIGNS if value in needed.SIGNS_TO_TICK:
            needed.put(d, replace(asking, chosen=tuple(dict.fromkeys((*asking.chosen, value)))))
            return True
        case Asked.SIGNS if value == "done":
            _keep(d, replace(said, signs=asking.chosen))
        case Asked.REGULAR if value in ANSWERS:
            _keep(d, replace(said, regular=ANSWERS[value]))
        case Asked.HARDER if value in ANSWERS:
            _keep(d, replace(said, harder=ANSWERS[value]))
        case Asked.CLEARED if value in ANSWERS:
            _keep(d, replace(said, cleared=ANSWERS[value]))
        case _:
            return False
    return True


def left_open(d: ClientStep, question: str) -> None:
    """An older answer does not stand for one that was not given now."""
    _keep(d, replace(d.facts.readiness, **{question: None}))


def _keep(d: ClientStep, said: Readiness) -> None:
    if said != d.facts.readiness:
        d.do(ChangeClient("readiness", said))
        d.facts = replace(d.facts, readiness=said)


def say_verdict(d: ClientStep) -> None:
    """What the answers come to, for the client and, if a doctor is to be seen, for the coach at once."""
    found = verdict(d.facts.readiness, d.facts.profile)
    if found is None:  # what that costs was said with the skip
        return
    named = signs(d.facts.readiness, d.facts.profile) or ()
    d.say(em.BeforeExercise(found.value, bool(named), d.facts.told, d.emergency_number))
    tell(d, anew=bool(named))


def doctor_first(d: ClientStep) -> bool:
    return verdict(d.facts.readiness, d.facts.profile) is Verdict.DOCTOR_FIRST


def tell(d: ClientStep, *, anew: bool = False) -> None:
    """Raise what the coach should know, or lower it once it is so no more. anew: say it, even if they know."""
    stands = any(open_flag.code == Code.DOCTOR_FIRST for open_flag in d.facts.flags)
    if not doctor_first(d):
        if stands:
            d.do(Lower(Code.DOCTOR_FIRST, ended=Ended.ANSWER))
        return
    named = signs(d.facts.readiness, d.facts.profile) or ()
    ill = tuple(caution.value for caution in diseases(d.facts.profile))
    d.do(Raise(flag(Code.DOCTOR_FIRST, d.now, reason="signs" if named else "disease")))
    if anew or not stands:
        d.do(NotifyCoach(DoctorFirst(d.facts.client_id, d.facts.name, named, ill)))


def ask_again(d: ClientStep) -> None:
    """A disease is new, or over: the check is asked again at the end of the next check-in, or before the next test.
    What a doctor said was said before it."""
    if not d.state.met:
        d.become(met=needed.WHEN_NEEDED)  # somebody who was asked for everything at the start
    d.become(met=tuple(question for question in d.state.met if question not in needed.READINESS))
    _keep(d, replace(d.facts.readiness, cleared=None))
