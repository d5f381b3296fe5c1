"""Before exercise: may somebody go on as they are, gently, or should they see their doctor first?

The rule is that of `core.references.exercise_screening_acsm_2015`, asked in our own words and as briefly as it allows:

    signs        one or more              -> see your doctor first; nothing else is asked
    regular      and no known disease     -> as you are
    not regular  and no known disease     -> light to moderate
    regular      and a known disease      -> light to moderate; whoever wants to go harder needs a doctor's word
    not regular  and a known disease      -> see your doctor first, unless a doctor has said that exercise is fine

What is not known is read on the safe side, and never as a no to a disease: without the cautions, or without an answer
about signs, there is no verdict, and the client is asked to go gently. It screens; it does not diagnose, and the advice
of the client's own clinicians comes first. Pregnancy is not part of it: the measures exclude what is not for it.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from core.client import Caution, Profile
from core.references.exercise_screening_acsm_2015 import DISEASE, Advice, Sign, advice


class Verdict(StrEnum):
    AS_YOU_ARE = "as_you_are"
    LIGHT_TO_MODERATE = "light_to_moderate"
    DOCTOR_FIRST = "doctor_first"


class Asked(StrEnum):
    """What is asked for it, in this order, as far as it decides anything."""

    SIGNS = "signs"
    REGULAR = "regular"
    HARDER = "harder"
    CLEARED = "cleared"


@dataclass(frozen=True, slots=True)
class Readiness:
    """Answers; None for what was not answered. signs: values of `Sign`, empty for none of them.  regular: exercises
    regularly.  harder: wishes to train hard.  cleared: a doctor has said within a year that exercise is fine."""

    signs: tuple[str, ...] | None
    regular: bool | None
    harder: bool | None
    cleared: bool | None


UNASKED = Readiness(signs=None, regular=None, harder=None, cleared=None)


def diseases(profile: Profile) -> tuple[Caution, ...]:
    """The known diseases that matter here."""
    return tuple(sorted(DISEASE & profile.cautions))


def signs(said: Readiness, profile: Profile) -> tuple[str, ...] | None:
    """The signs, of which one may have been said at another time; None if nobody knows."""
    if Caution.BREATHLESS_AT_REST in profile.cautions:
        return tuple(dict.fromkeys((*(said.signs or ()), Sign.BREATH.value)))
    return said.signs


def verdict(said: Readiness, profile: Profile) -> Verdict | None:
    """The answer, None while too much is unknown. Whoever does not say that they exercise regularly is taken not to,
    and whoever does not say that a doctor agreed is taken to have no such word."""
    found = signs(said, profile)
    if found:
        return Verdict.DOCTOR_FIRST
    if found is None or not profile.cautions_known:
        return None
    match advice(regular=said.regular is True, disease=bool(diseases(profile)), signs=False):
        case Advice.FREE:
            return Verdict.AS_YOU_ARE
        case Advice.START_GENTLY:
            return Verdict.LIGHT_TO_MODERATE
        case Advice.MODERATE_ONLY if said.harder is True:
            return Verdict.AS_YOU_ARE if said.cleared is True else Verdict.DOCTOR_FIRST
        case Advice.MODERATE_ONLY:
            return Verdict.LIGHT_TO_MODERATE
        case _:
            return Verdict.LIGHT_TO_MODERATE if said.cleared is True else Verdict.DOCTOR_FIRST


def next_question(said: Readiness, profile: Profile, asked: tuple[str, ...]) -> Asked | None:
    """What to ask next; None if nothing would change the answer. asked: what was asked already."""
    for question in Asked:
        if question not in asked and _decides(question, said, profile):
            return question
    return None


def _decides(question: Asked, said: Readiness, profile: Profile) -> bool:
    if question is Asked.SIGNS:
        return True
    if signs(said, profile) != ():  # there is one, or nobody knows
        return False
    ill = bool(diseases(profile))
    match question:
        case Asked.REGULAR:
            return True
        case Asked.HARDER:
            return ill and said.regular is True
        case _:
            return ill and (said.regular is not True or said.harder is True)
