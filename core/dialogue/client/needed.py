"""Facts about the client that a question needs: which are missing, and how each is asked.

At the start only what everybody is asked: the year of birth (adults only), a first rating, the slot. All else is asked
when a measure first needs it, for its band or for safety, and never twice. `enrolment` takes the answers.
"""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from core.care import METRIC, NumberVisibility, Units
from core.client import Background, Caution
from core.dialogue.client import messages as m
from core.dialogue.client.states import Enrolling
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice, Rows
from core.dialogue.kit.step import rows_of
from core.judging import readiness
from core.measures import ALWAYS_ASKED, CHECK_IN_ORDER, MEASURES
from core.measures.measure import Measure, ProfileFact
from core.quantity import Unit
from core.references.exercise_screening_acsm_2015 import Sign

AT_THE_START = ("birth_year", "rating", "weekday", "time", "zone")
# In the order asked: what keeps somebody safe, then what may make the rest needless.
WHEN_NEEDED = ("own_question", "cautions", "numbers", "units", "stature", "sex", "background")
FIRST_RATING = MEASURES[next(key for key in CHECK_IN_ORDER if key in ALWAYS_ASKED)]
READINESS = tuple(question.value for question in readiness.Asked)
SIGNS_TO_TICK = tuple(sign.value for sign in Sign)
SURE = ("young", "too_young", "stature_sure")  # an answer is being confirmed
MEDICINE = "medicine:"  # before the name of one among the ticks
BEFORE_EXERCISE = "!"  # in place of a measure: the check before exercise, at the end of a check-in
ALL_OF_THEM = "*"  # in place of a measure: every fact the plan needs, because the client wants it done

UNIT_SETS = {
    "kg": Units(Unit.KILOGRAM, Unit.CENTIMETRE),
    "lb": Units(Unit.POUND, Unit.INCH),
    "st": Units(Unit.STONE, Unit.INCH),
}
BACKGROUNDS = tuple(b.value for b in Background)
CAUTIONS = (
    Caution.PREGNANCY, Caution.HEART_CONDITION, Caution.HEART_FAILURE, Caution.KIDNEY_DISEASE, Caution.DIABETES,
    Caution.RATE_LIMITING_MEDICINE, Caution.EATING_WORRIES, Caution.FALLS, Caution.ATHLETE,
)  # fmt: skip
HOURS = ("07:00", "07:30", "08:00", "09:00", "12:00", "17:00", "18:00", "19:00", "20:00")


# --- which ------------------------------------------------------------------------------------------------------


def at_the_start(d: ClientStep) -> tuple[str, ...]:
    """The questions before "all set", except those already answered."""
    by_cohort = bool(d.facts.cohorts and d.facts.slot)  # members who joined by a cohort's link have its day and time
    known = {
        "birth_year": bool(d.facts.profile.birth_year or d.facts.profile.birth_date),
        "rating": bool(d.facts.of(FIRST_RATING.key)),
        "weekday": by_cohort,
        "time": by_cohort,
    }
    return tuple(q for q in AT_THE_START if not known.get(q) and q not in d.state.met)


def for_measure(d: ClientStep, measure: Measure) -> tuple[str, ...]:
    """What must be asked before this measure."""
    return _missing(d, measure.needs)


def for_plan(d: ClientStep) -> tuple[str, ...]:
    """Everything the plan will need some day."""
    return _missing(
        d, frozenset(fact for key in d.facts.plan.measures if key in MEASURES for fact in MEASURES[key].needs)
    )


def before_exercise(d: ClientStep) -> tuple[str, ...]:
    """What must be asked before a test or any exercise. Of somebody who joined before it was asked, only once another
    fact has been asked since, or they told of a disease (`before_exercise.ask_again`)."""
    if not d.state.met:
        return ()
    if not d.facts.profile.cautions_known and "cautions" not in d.state.met:
        return ("cautions",)
    question = readiness.next_question(d.facts.readiness, d.facts.profile, d.state.met)
    return (question.value,) if question is not None else ()


def _missing(d: ClientStep, needs: frozenset[ProfileFact]) -> tuple[str, ...]:
    """Of somebody who joined before facts were asked when needed, all but the cautions were asked at the start."""
    asked_before = WHEN_NEEDED if not d.state.met else d.state.met
    return tuple(
        question
        for question in WHEN_NEEDED
        if ProfileFact(question) in needs and not _known(d, question)
        and (question not in asked_before or (question == ProfileFact.CAUTIONS and not d.state.met))
    )  # fmt: skip


def left_open(d: ClientStep, question: str) -> bool:
    """Whether it was asked and not answered."""
    return question in d.state.met and not _known(d, question)


def _known(d: ClientStep, question: str) -> bool:
    profile, plan = d.facts.profile, d.facts.plan
    return {
        "own_question": bool(plan.own_question),
        "cautions": profile.cautions_known,
        "numbers": plan.numbers is not NumberVisibility.SHOWN,
        "units": d.facts.units != METRIC,
        "stature": profile.stature is not None,
        "sex": profile.sex is not None,
        "background": profile.background is not None,
    }[question]


# --- asking -----------------------------------------------------------------------------------------------------


def put(d: ClientStep, asking: Enrolling) -> None:
    """Put a question; what is known of their health is ticked already."""
    if asking.question == "cautions":
        asking = replace(asking, chosen=tuple(dict.fromkeys((*asking.chosen, *sorted(d.facts.profile.cautions)))))
    d.ask(asking)
    say_question(d, asking)


def say_question(d: ClientStep, asking: Enrolling, *, occasion: str | None = None) -> None:
    ask_question(d, asking.question, asking.chosen, occasion=occasion)


def ask_question(d: ClientStep, question: str, chosen: tuple[str, ...] = (), *, occasion: str | None = None) -> None:
    if question in SURE and chosen:
        _ask_if_sure(d, question, chosen[0])
        return
    ticks = tuple(c for c in chosen if not c.startswith(MEDICINE))
    d.say(m.EnrolQuestion(question, d.facts.coach_name, ticks), *rows_for(d, question, chosen), occasion=occasion)


def rows_for(d: ClientStep, question: str, chosen: tuple[str, ...] = ()) -> Rows:
    """The buttons of a question, for this client: most live where their coach does."""
    near = d.facts.coach_zone if question == "zone" else ""
    place = ((Choice("place", f"e:zone:{near}"[:64], near),),) if "/" in near else ()
    return (*place, *choices_for(question, chosen))


def _ask_if_sure(d: ClientStep, question: str, value: str) -> None:
    """Ask about a birth year that would end enrolment or has ended it, or a height that is far from usual."""
    if question == "young":
        d.say(m.AskBirthYear(int(value)), *choices_for(question))
    elif question == "too_young":
        d.say(m.ForAdults(d.facts.coach_name), *choices_for(question))
    else:
        d.say(m.AskIfSure("height", d.shown(MEASURES["height"], Decimal(value))), *choices_for(question))


def choices_for(question: str, chosen: tuple[str, ...] = ()) -> Rows:
    """The buttons of a question; the last row skips it."""

    def answer(label: str, value: str, argument: str = "") -> Choice:
        return Choice(label, f"e:{question}:{value}", argument)

    match question:
        case "rating":
            rows = rows_of(*(answer("number", str(n), str(n)) for n in range(11)), width=6)
        case "sex":
            rows = rows_of(answer("sex:female", "female"), answer("sex:male", "male"))
        case "adult" | "young" | "stature_sure":
            return ((answer("yes", "yes"), answer("no", "no")),)
        case "too_young":
            return ((answer("year_again", "again"),), (answer("forget_yes", "erase"),))
        case "units":
            rows = rows_of(*(answer(f"units:{u}", u) for u in UNIT_SETS), width=3)
        case "background":
            rows = rows_of(*(answer(f"background:{b}", b) for b in BACKGROUNDS))
        case "cautions" | "signs":
            kind, ticks = ("caution", CAUTIONS) if question == "cautions" else ("sign", SIGNS_TO_TICK)
            rows = rows_of(*(answer(f"{kind}:{tick}", tick) for tick in ticks if tick not in chosen), width=1)
            return (*rows, (answer("done" if chosen else "none_of_these", "done"),))
        case "regular" | "harder" | "cleared":
            rows = ((answer("yes", "yes"), answer("no", "no")),)
        case "numbers":
            return rows_of(*(answer(f"numbers:{n}", n) for n in ("shown", "coach_only", "leave_out")), width=1)
        case "own_better":
            return ((answer("better:higher", "higher"), answer("better:lower", "lower")),)
        case "weekday":
            rows = rows_of(*(answer(f"weekday:{n}", str(n)) for n in range(7)), width=4)
        case "time":
            rows = rows_of(*(answer("hour", h, h) for h in HOURS), width=3)
        case _:
            rows = ()
    return (*rows, (answer("skip", "skip"),))
