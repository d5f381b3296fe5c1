"""Enrolment: an invitation, consent, and only the questions the plan needs. Every question can be skipped."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import replace
from datetime import date, time, timedelta
from decimal import Decimal

from core.care import NumberVisibility, Slot, Status, Units
from core.client import Background, Caution, Sex
from core.dialogue.client import check_in, cohort_membership
from core.dialogue.client import messages as m
from core.dialogue.client.effects import TURNED_AWAY, CancelTimer, ChangeClient, NotifyCoach, SetTimer
from core.dialogue.client.facts import InvitationFact
from core.dialogue.client.messages_to_coach import ClientEnrolled, ClientLeft, HealthChanged
from core.dialogue.client.states import AlarmAsked, Consenting, Enrolling, Setting, State
from core.dialogue.client.step import ClientStep
from core.dialogue.group.messages import CohortForClients, CohortWelcome
from core.dialogue.kit.effects import Choice, Erase, Join, Rows
from core.dialogue.kit.events import Command, Press, Text
from core.dialogue.kit.messages import OldButton, WhichPlace
from core.dialogue.kit.step import rows_of
from core.language import ENGLISH, Intent, plain
from core.language.days import day_of_week
from core.language.intents import intent_of, weekday_and_time
from core.language.lexicon import Question
from core.language.questions import asked
from core.language.text import bare_words
from core.measures import MEASURES
from core.measures.measure import ProfileFact, Understood
from core.measures.own_question import OWN_QUESTION
from core.measures.weight import WEIGHT
from core.quantity import Better, Unit
from core.understanding.answers_in_text import whole_numbers
from core.understanding.health_facts import HealthFact, Stance, What, health_in
from core.understanding.plausibility import DoubtKind, doubt

ADULT = 18
OLDEST = 110
YEAR = re.compile(r"(?<!\d)(?:19|20)\d\d(?!\d)")
SHORT_DATE = re.compile(r"\d{1,2}[./-]\d{1,2}[./-](\d\d)")
MEDICINE = "medicine:"  # before the name of one among the ticks
SURE = ("young", "too_young", "stature_sure")  # an answer is being confirmed
AGE = ("adult", "young", "too_young")  # not to be skipped: only adults may go on
DOOR_STAYS_OPEN = timedelta(days=1)  # ours: for a mistake in the year of birth; then everything is erased

# In the order asked. A `ProfileFact` is asked only if a measure of the plan needs it, any other always.
QUESTIONS = (
    "birth_year", "sex", "units", "stature", "background", "cautions", "numbers", "own_question",
    "weekday", "time", "zone",
)  # fmt: skip
FACTS = frozenset(fact.value for fact in ProfileFact)

UNIT_SETS = {
    "kg": Units(Unit.KILOGRAM, Unit.CENTIMETRE),
    "lb": Units(Unit.POUND, Unit.INCH),
    "st": Units(Unit.STONE, Unit.INCH),
}
UNITS_CALLED = {
    Unit.KILOGRAM: "kg",
    Unit.CENTIMETRE: "kg",
    Unit.POUND: "lb",
    Unit.STONE: "st",
}
PLAIN = frozenset(  # what anybody may ask before there is an answer to speak of
    {
        Question.FREE,
        Question.WHO_SEES,
        Question.WHO,
        Question.HOW_ARE_YOU,
        Question.PHOTO,
        Question.HOW_LONG,
        Question.MUST,
        Question.MISSED,
    }
)
BACKGROUNDS = tuple(b.value for b in Background)
CAUTIONS = (
    Caution.PREGNANCY, Caution.HEART_CONDITION, Caution.HEART_FAILURE, Caution.RATE_LIMITING_MEDICINE,
    Caution.EATING_WORRIES, Caution.FALLS, Caution.ATHLETE,
)  # fmt: skip
HOURS = ("07:00", "07:30", "08:00", "09:00", "12:00", "17:00", "18:00", "19:00", "20:00")


def arrive(d: ClientStep, invitation: InvitationFact) -> None:
    """A stranger opened a valid link: consent comes first, whatever the invitation is for.

    Somebody must receive what a client may write in distress, so nobody without a coach is admitted.
    """
    name = invitation.for_name or d.facts.name
    if invitation.cohort is not None and not invitation.coach_name:
        d.say(CohortForClients(invitation.cohort.name, invitation.by_name))
        return
    d.do(Join())
    if invitation.cohort is not None:
        coached = invitation.by_name == invitation.coach_name
        d.say(CohortWelcome(invitation.cohort.name, invitation.by_name, invitation.cohort.first, coached))
        ask_consent(d, name, invitation.coach_name)
    elif invitation.kind == "client":
        ask_consent(d, name, invitation.by_name)


def open_invitation(d: ClientStep, event: Command) -> None:
    """A client opened a link."""
    invitation = d.facts.invitation
    assert invitation is not None
    if d.facts.consented and invitation.cohort is not None and d.facts.status is Status.LEFT:
        d.say(m.HasLeft(d.facts.coach_name))
        return
    if d.facts.consented and invitation.cohort is not None:
        cohort_membership.join_by_link(d)
        if isinstance(d.asking, Enrolling):
            ask_question(d, d.asking.question, d.asking.chosen)
        return
    if d.facts.consented:
        if invitation.by_name == d.facts.coach_name and d.facts.status is not Status.LEFT:
            d.say(m.AlreadyHere(d.facts.coach_name))
            return
        _ask_change_coach(d, invitation.by_name, event.argument)
        return
    d.do(Join())
    ask_consent(d, invitation.for_name or d.facts.name, d.facts.coach_name if invitation.cohort else invitation.by_name)


def ask_consent(d: ClientStep, name: str, coach: str) -> None:
    d.ask(Consenting())
    d.say(
        m.Welcome(name, coach),
        (Choice("agree", "consent:yes"), Choice("decline", "consent:no")),
        (Choice("what_is_kept", "consent:what"),),
    )


def _ask_change_coach(d: ClientStep, new: str, token: str) -> None:
    d.ask(Setting("coach_change", token, d.asking))
    _say_change_coach(d, new)


def ask_change_coach_again(d: ClientStep) -> None:
    if d.facts.invitation is not None:
        _say_change_coach(d, d.facts.invitation.by_name)


def _say_change_coach(d: ClientStep, new: str) -> None:
    if d.facts.status is Status.LEFT and new == d.facts.coach_name:
        d.say(m.WelcomeBack(new), (Choice("start_now", "back:yes"), Choice("no_keep", "back:no")))
        return
    d.say(
        m.AskChangeCoach(new, d.facts.coach_name),
        (Choice("move_yes", "move:yes"), Choice("move_no", "move:no")),
    )


# --- consent ----------------------------------------------------------------------------------------------------


def consenting(d: ClientStep, event: Text | Press) -> None:
    said = event.data.removeprefix("consent:") if isinstance(event, Press) else _as_consent(d, event.text)
    match said:
        case "yes":
            d.do(ChangeClient("consented", True), ChangeClient("status", Status.ENROLLING))
            d.facts = replace(d.facts, consented=True, status=Status.ENROLLING)
            for cohort in d.facts.cohorts:
                cohort_membership.welcome(d, cohort)
            _next(d, questions(d))
        case "no":
            d.say(m.ConsentDeclined(d.facts.coach_name), (Choice("agree", "consent:yes"),))
        case "what":
            d.say(
                m.WhatIsKept(d.facts.coach_name),
                *_AGREE,
            )
        case _:
            if not (isinstance(event, Text) and _plain_question(d, event.text, _AGREE)):
                ask_consent(d, d.facts.name, d.facts.coach_name)


_AGREE: Rows = ((Choice("agree", "consent:yes"), Choice("decline", "consent:no")),)


def _plain_question(d: ClientStep, text: str, rows: Rows) -> bool:
    """Answer a question about the bot itself ("is this free?", "who sees it?"); False if it is none."""
    found = asked(text, d.words, d.facts.coach_name)
    if found is None or found.question not in PLAIN:
        return False
    d.say(m.Plainly(found.question.value, d.facts.coach_name, d.emergency_number), *rows)
    return True


def _as_consent(d: ClientStep, text: str) -> str:
    match intent_of(text, d.words):
        case Intent.YES:
            return "yes"
        case Intent.NO | Intent.STOP | Intent.LEAVE:
            return "no"
        case Intent.WHY | Intent.HELP | Intent.MY_DATA:
            return "what"
        case _:
            return ""


# --- questions --------------------------------------------------------------------------------------------------


def questions(d: ClientStep) -> tuple[str, ...]:
    """The questions this plan needs, except those the coach already filled in."""
    planned = [MEASURES[key] for key in d.facts.plan.measures if key in MEASURES]
    needed = {fact.value for measure in planned for fact in measure.needs}
    known = {
        "birth_year": d.facts.profile.birth_year or d.facts.profile.birth_date,
        "sex": d.facts.profile.sex,
        "stature": d.facts.profile.stature,
        "background": d.facts.profile.background,
        "own_question": d.facts.plan.own_question,
        "weekday": d.facts.cohorts and d.facts.slot,  # members who joined by a cohort's link have its day and time
        "time": d.facts.cohorts and d.facts.slot,
    }
    return tuple(
        question for question in QUESTIONS if (question in needed or question not in FACTS) and not known.get(question)
    )


def _next(d: ClientStep, left: tuple[str, ...]) -> None:
    if not left:
        _finish(d)
        return
    question, *rest = left
    repeat(d, Enrolling(question, tuple(rest)))


def repeat(d: ClientStep, asking: Enrolling) -> None:
    """Put a question; what is known of their health is ticked already."""
    if asking.question == "cautions":
        asking = replace(asking, chosen=tuple(dict.fromkeys((*asking.chosen, *sorted(d.facts.profile.cautions)))))
    d.ask(asking)
    ask_question(d, asking.question, asking.chosen)


def ask_question(d: ClientStep, question: str, chosen: tuple[str, ...] = ()) -> None:
    if question in SURE and chosen:
        _ask_if_sure(d, question, chosen[0])
        return
    ticks = tuple(c for c in chosen if not c.startswith(MEDICINE))
    d.say(m.EnrolQuestion(question, d.facts.coach_name, ticks), *choices_for(question, chosen))


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
        case "cautions":
            left = [c.value for c in CAUTIONS if c.value not in chosen]
            rows = rows_of(*(answer(f"caution:{c}", c) for c in left), width=1)
            return (*rows, (answer("done" if chosen else "none_of_these", "done"),))
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


def enrolling(d: ClientStep, event: Text | Press, asking: Enrolling) -> None:
    """An answer to the open question, typed or pressed."""
    question = asking.question
    if isinstance(event, Press):
        verb, _, rest = event.data.partition(":")
        pressed, _, value = rest.partition(":")
        if verb != "e" or pressed != question:  # from before questions were numbered
            d.say(OldButton())
            ask_question(d, question, asking.chosen)
            return
    else:
        value = _typed(d, event.text, question)
        if question != OWN_QUESTION.key and _plain_question(d, event.text, ()):
            ask_question(d, question, asking.chosen)
            return
    if value == "skip" and question not in AGE:
        d.say(m.SkipCost(question))
        _next(d, asking.left)
        return
    answer = CONFIRMED.get(question) or ANSWER[question]
    if value and answer(d, asking, value):
        return
    if question in SURE:
        ask_question(d, question, asking.chosen)
    else:
        d.say(m.EnrolUnclear(question), *choices_for(question, asking.chosen))


def _typed(d: ClientStep, text: str, question: str) -> str:
    intent = intent_of(text, d.words)
    if intent in (Intent.SKIP, Intent.LATER):
        return "skip"
    if question == "cautions" and intent in (Intent.NO, Intent.DONE) and not health_in(text, d.words).facts:
        return "done"
    if question == "adult" or (question in SURE and intent in (Intent.YES, Intent.NO)):
        return {Intent.YES: "yes", Intent.NO: "no"}.get(intent, "") if intent else ""
    if question == "sex" and (sex := _called(d, text)) is not None:
        return sex.value
    if question == "units" and (units := _units_called(d, text)):
        return units
    for row in choices_for(question):
        for choice in row:
            if plain(text) == plain(d.facts.label(choice.label, choice.argument)):
                return choice.data.split(":", 2)[2]
    if question in ("sex", "units", "background"):
        meant = (f.value for f in health_in(text, d.words).facts if f.what.value == question)
        return next(meant, text.strip())
    return text.strip()


def _called(d: ClientStep, text: str) -> Sex | None:
    """The sex a word stands for, in the client's language or in English."""
    said = plain(text).strip(" .!")
    for words in (d.words, ENGLISH):
        for sex, called in words.sexes.items():
            if said in map(plain, called):
                return sex
    return None


def _units_called(d: ClientStep, text: str) -> str:
    """The set of units that a text names: "stone", "in pounds please"; "" if none, or more than one."""
    said = bare_words(plain(text))
    found = {
        key
        for unit, key in UNITS_CALLED.items()
        for words in (d.words, ENGLISH)
        if any(plain(called) in said for called in words.units.get(unit, ()) if len(called) > 1)
    }
    return found.pop() if len(found) == 1 else ""


def _birth_year(d: ClientStep, asking: Enrolling, value: str) -> bool:
    year = year_in(d, value)
    this_year = d.today.year
    if year is None or not this_year - OLDEST <= year <= this_year:
        return False
    if this_year - year < ADULT:
        _sure_of_age(d, asking, year)
        return True
    d.do(ChangeClient("birth_year", year))
    d.say(m.EnrolNoted(question="birth_year", year=year))
    left = ("adult", *asking.left) if this_year - year == ADULT else asking.left
    _next(d, left)
    return True


def year_in(d: ClientStep, value: str) -> int | None:
    """The year of birth in a text: a year, an age, or a whole date, of which only the year is stored."""
    folded = plain(value)
    years = set(YEAR.findall(folded))
    if len(years) == 1:
        return int(years.pop())
    if (short := SHORT_DATE.fullmatch(folded.strip())) is not None:
        return d.today.year // 100 * 100 - 100 + int(short[1])
    numbers = whole_numbers(value, d.words)
    if len(numbers) != 1:
        return None
    return numbers[0] if numbers[0] > OLDEST else d.today.year - numbers[0]


def _sure_of_age(d: ClientStep, asking: Enrolling, year: int) -> None:
    """Ask before enrolment ends: a slip of the thumb must not close the door."""
    d.ask(Enrolling("young", asking.left, (str(year),)))
    ask_question(d, "young", (str(year),))


def _young(d: ClientStep, asking: Enrolling, value: str) -> bool:
    if value == "yes":
        d.ask(Enrolling("too_young", asking.left, asking.chosen))
        d.do(SetTimer(TURNED_AWAY, d.now + DOOR_STAYS_OPEN))
        ask_question(d, "too_young", asking.chosen)
        return True
    return _year_again(d, asking, "" if value == "no" else value)


def _year_again(d: ClientStep, asking: Enrolling, year: str) -> bool:
    """The year of birth once more; "" asks for it."""
    again = Enrolling("birth_year", asking.left)
    d.ask(again)
    if not year:
        ask_question(d, "birth_year")
        return True
    if _birth_year(d, again, year):
        return True
    d.ask(asking)
    return False


def _turned_away(d: ClientStep, asking: Enrolling, value: str) -> bool:
    """Too young, as they say: a mistake can be put right, and nothing is erased by a single press."""
    if value == "erase":
        _erase(d)
        return True
    if value in ("yes", "no") or not _year_again(d, asking, "" if value == "again" else value):
        return False
    d.do(CancelTimer(TURNED_AWAY))
    return True


def turned_away_for_long(d: ClientStep) -> None:
    """The day for putting a mistake right is over."""
    asking = d.asking
    while isinstance(asking, Setting | AlarmAsked):
        asking = asking.back
    if isinstance(asking, Enrolling) and asking.question == "too_young":
        _erase(d)


def _erase(d: ClientStep) -> None:
    d.state = State()
    d.do(NotifyCoach(ClientLeft(d.facts.name)), Erase(m.TooYoung(d.facts.coach_name)))


def _adult(d: ClientStep, asking: Enrolling, value: str) -> bool:
    if value == "yes":
        _next(d, asking.left)
        return True
    if value == "no":
        _sure_of_age(d, asking, d.today.year - ADULT)
        return True
    return False


def _sex(d: ClientStep, asking: Enrolling, value: str) -> bool:
    if value not in {s.value for s in Sex}:
        return False
    d.do(ChangeClient("sex", Sex(value)))
    _next(d, asking.left)
    return True


def _stature(d: ClientStep, asking: Enrolling, value: str) -> bool:
    height = MEASURES["height"]
    assert height.understand is not None
    heard = height.understand(value, d.words, None)
    meant, sure = (heard, True) if isinstance(heard, Understood) else (heard.guess, False)
    if meant is None:
        return False
    doubtful = doubt(height, meant, None, d.facts.profile)
    if doubtful is not None:
        if doubtful.kind is DoubtKind.IMPOSSIBLE and doubtful.meant is None:
            return False
        meant, sure = doubtful.meant or meant, False
    if not sure:
        kept = str(meant.value)
        d.ask(Enrolling("stature_sure", asking.left, (kept,)))
        ask_question(d, "stature_sure", (kept,))
        return True
    _keep_stature(d, asking, meant.value)
    return True


def _keep_stature(d: ClientStep, asking: Enrolling, centimetres: Decimal) -> None:
    d.do(ChangeClient("stature", centimetres))
    d.say(m.EnrolNoted("stature", height=d.shown(MEASURES["height"], centimetres)))
    _next(d, asking.left)


def _stature_sure(d: ClientStep, asking: Enrolling, value: str) -> bool:
    if value == "yes" and asking.chosen:
        _keep_stature(d, asking, Decimal(asking.chosen[0]))
        return True
    again = Enrolling("stature", asking.left)
    d.ask(again)
    if value == "no":
        ask_question(d, "stature")
        return True
    if _stature(d, again, value):
        return True
    d.ask(asking)
    return False


def _units(d: ClientStep, asking: Enrolling, value: str) -> bool:
    if value not in UNIT_SETS:
        return False
    d.do(ChangeClient("units", UNIT_SETS[value]))
    d.facts = replace(d.facts, units=UNIT_SETS[value])
    _next(d, asking.left)
    return True


def _background(d: ClientStep, asking: Enrolling, value: str) -> bool:
    if value not in BACKGROUNDS:
        return False
    d.do(ChangeClient("background", Background(value)))
    _next(d, asking.left)
    return True


def _cautions(d: ClientStep, asking: Enrolling, value: str) -> bool:
    """A tick, a sentence that ticks what it says and nothing else, or the end."""
    if value == "done":
        _keep_cautions(d, asking)
        return True
    if value in {c.value for c in CAUTIONS}:
        chosen = frozenset({*asking.chosen, value})
    else:
        facts = [f for f in health_in(value, d.words).facts if f.sure and f.what in (What.CAUTION, What.MEDICINE)]
        chosen = ticked(frozenset(asking.chosen), facts)
        if chosen == frozenset(asking.chosen):
            return False
    kept = tuple(c for c in asking.chosen if c in chosen)
    asking = replace(asking, chosen=(*kept, *sorted(chosen - set(kept))))
    d.ask(asking)
    ask_question(d, "cautions", asking.chosen)
    return True


def ticked(chosen: frozenset[str], facts: Iterable[HealthFact]) -> frozenset[str]:
    """The ticks after a sentence: what it says is so, without what it denies."""
    ticks = set(chosen)
    for fact in facts:
        medicine = fact.what is What.MEDICINE
        if fact.stance is Stance.SO:
            ticks |= {Caution.RATE_LIMITING_MEDICINE.value, MEDICINE + fact.value} if medicine else {fact.value}
        elif not medicine:
            ticks.discard(fact.value)
        else:
            ticks.discard(MEDICINE + fact.value)
            if not any(tick.startswith(MEDICINE) for tick in ticks):
                ticks.discard(Caution.RATE_LIMITING_MEDICINE.value)
    return frozenset(ticks)


def _keep_cautions(d: ClientStep, asking: Enrolling) -> None:
    cautions = frozenset(Caution(c) for c in asking.chosen if not c.startswith(MEDICINE))
    medicines = frozenset(c.removeprefix(MEDICINE) for c in asking.chosen if c.startswith(MEDICINE))
    medicines |= d.facts.profile.medicines
    d.do(ChangeClient("cautions", cautions))
    if medicines != d.facts.profile.medicines:
        d.do(ChangeClient("medicines", medicines))
    d.facts = replace(d.facts, profile=replace(d.facts.profile, cautions=cautions, medicines=medicines))
    if Caution.HEART_FAILURE in cautions and not d.facts.plan.directed_weighing:
        begun = tuple(sorted(cautions))
        d.do(NotifyCoach(HealthChanged(d.facts.client_id, d.facts.name, begun, (), (), (), (), undirected=True)))
    left = asking.left
    if Caution.EATING_WORRIES in cautions:  # the safe default: weight is neither asked, shown nor charted
        _leave_weight_out(d)
        left = tuple(q for q in left if q != "numbers")
    _next(d, left)


def _leave_weight_out(d: ClientStep) -> None:
    plan = replace(d.facts.plan, measures=tuple(x for x in d.facts.plan.measures if x != WEIGHT.key))
    d.do(ChangeClient("plan", plan))
    d.facts = replace(d.facts, plan=plan)


def _numbers(d: ClientStep, asking: Enrolling, value: str) -> bool:
    if value == "leave_out":
        _leave_weight_out(d)
    elif value in {n.value for n in NumberVisibility}:
        plan = replace(d.facts.plan, numbers=NumberVisibility(value))
        d.do(ChangeClient("plan", plan))
        d.facts = replace(d.facts, plan=plan)
    else:
        return False
    _next(d, asking.left)
    return True


def _own_question(d: ClientStep, asking: Enrolling, value: str) -> bool:
    plan = replace(d.facts.plan, own_question=value[:200])
    d.do(ChangeClient("plan", plan))
    d.facts = replace(d.facts, plan=plan)
    _next(d, ("own_better", *asking.left))
    return True


def _own_better(d: ClientStep, asking: Enrolling, value: str) -> bool:
    if value not in (Better.HIGHER.value, Better.LOWER.value):
        return False
    plan = replace(d.facts.plan, own_better=Better(value))
    d.do(ChangeClient("plan", plan))
    d.facts = replace(d.facts, plan=plan)
    _next(d, asking.left)
    return True


def _weekday(d: ClientStep, asking: Enrolling, value: str) -> bool:
    if value.isdigit() and len(value) == 1:
        day: int | None = int(value)
        at = None
    else:
        day, at = day_of_week(value, d.words, d.today), weekday_and_time(value, d.words)[1]
    if day is None or not 0 <= day <= 6:
        return False
    set_slot(d, weekday=day, at=at)
    _next(d, tuple(q for q in asking.left if q != "time" or at is None))
    return True


def _time(d: ClientStep, asking: Enrolling, value: str) -> bool:
    _, at = weekday_and_time(value, d.words)
    if at is None:
        return False
    set_slot(d, at=at)
    _next(d, asking.left)
    return True


def _zone(d: ClientStep, asking: Enrolling, value: str) -> bool:
    found = d.facts.find_zones(value)
    if len(found) != 1:
        d.say(
            WhichPlace(found[:6]),
            *rows_of(*(Choice("place", f"e:zone:{z}"[:64], z) for z in found[:6])),
            (Choice("skip", "e:zone:skip"),),
        )
        return True
    set_slot(d, zone_name=found[0])
    d.say(m.EnrolNoted("zone", place=found[0], clock=d.facts.local(d.now).time()))
    _next(d, asking.left)
    return True


ANSWER = {
    "birth_year": _birth_year,
    "adult": _adult,
    "sex": _sex,
    "stature": _stature,
    "units": _units,
    "background": _background,
    "cautions": _cautions,
    "numbers": _numbers,
    "own_question": _own_question,
    "own_better": _own_better,
    "weekday": _weekday,
    "time": _time,
    "zone": _zone,
}


CONFIRMED = {"young": _young, "too_young": _turned_away, "stature_sure": _stature_sure}


def set_slot(
    d: ClientStep, *, weekday: int | None = None, at: time | None = None, zone_name: str | None = None
) -> Slot:
    """Change parts of the slot; the rest stays."""
    old = d.facts.slot or Slot(0, time(8, 0), "UTC")
    slot = Slot(
        old.weekday if weekday is None else weekday,
        old.at if at is None else at,
        old.zone_name if zone_name is None else zone_name,
    )
    d.do(ChangeClient("slot", slot))
    zone = d.facts.zone if slot.zone_name == old.zone_name else d.facts.zone_of(slot.zone_name)
    d.facts = replace(d.facts, slot=slot, zone=zone)
    return slot


def _finish(d: ClientStep) -> None:
    slot = d.facts.slot or set_slot(d)
    d.do(ChangeClient("status", Status.ACTIVE), NotifyCoach(ClientEnrolled(d.facts.client_id, d.facts.name)))
    d.facts = replace(d.facts, status=Status.ACTIVE)
    d.state = State()
    first: date = d.next_slot() or d.today
    d.say(
        m.Enrolled(slot.weekday, slot.at, first, d.facts.coach_name),
        (Choice("start_now", "begin:now"), Choice("at_my_time", "begin:slot")),
    )


def begin(d: ClientStep, value: str) -> None:
    """The button under "all set": start the first check-in now, or wait for the slot."""
    if value == "now":
        check_in.open_check_in(d, d.today)
    else:
        d.say(m.NotToday(d.next_slot(), ()))
