"""Enrolment: an invitation, consent, and only the questions the plan needs. Every question can be skipped."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import replace
from datetime import date, time, timedelta
from decimal import ROUND_FLOOR, Decimal

from core.care import NumberVisibility, Slot, Status
from core.client import Background, Caution, Sex
from core.dialogue.client import before_exercise, check_in, coach_thread, cohort_membership, needed, readings
from core.dialogue.client import enrolment_messages as em
from core.dialogue.client import messages as m
from core.dialogue.client.effects import TURNED_AWAY, CancelTimer, ChangeClient, NotifyCoach, SetTimer
from core.dialogue.client.facts import InvitationFact
from core.dialogue.client.messages_to_coach import ClientEnrolled, ClientLeft, HealthChanged
from core.dialogue.client.states import AlarmAsked, Awaiting, Consenting, Enrolling, Setting, State
from core.dialogue.client.step import ClientStep
from core.dialogue.group.messages import CohortForClients, CohortWelcome
from core.dialogue.kit.effects import Choice, Erase, Join, Rows
from core.dialogue.kit.events import Command, Press, Text
from core.dialogue.kit.messages import OldButton, WhichPlace
from core.dialogue.kit.step import rows_of
from core.judging.change import mdc95
from core.language import ENGLISH, Intent, plain
from core.language.concepts import Concept
from core.language.days import born_in, day_of_week
from core.language.health_words import HEALTH_WORDS, Topic
from core.language.intents import intent_of, weekday_and_time
from core.language.lexicon import Question
from core.language.questions import asked, looks_like_a_question
from core.language.text import bare_words
from core.language.word_groups import group_of, holds
from core.measures import MEASURES
from core.measures.measure import Measure, MeasureKind, Misunderstood, Understood
from core.measures.own_question import OWN_QUESTION
from core.measures.weight import WEIGHT
from core.quantity import Amount, Better, Unit
from core.reading import How, Reading
from core.understanding.answers_in_text import Answer, whole_numbers
from core.understanding.health_facts import HealthFact, Stance, What, health_in
from core.understanding.plausibility import DoubtKind, doubt
from core.understanding.stories import sure

ADULT = 18
OLDEST = 110
YEAR = re.compile(r"(?<!\d)(?:19|20)\d\d(?!\d)")
SHORT_DATE = re.compile(r"\d{1,2}[./-]\d{1,2}[./-](\d\d)")
AGE = ("adult", "young", "too_young")  # not to be skipped: only adults may go on
DOOR_STAYS_OPEN = timedelta(days=1)  # ours: for a mistake in the year of birth; then everything is erased

UNITS_CALLED = {
    Unit.KILOGRAM: "kg",
    Unit.CENTIMETRE: "kg",
    Unit.POUND: "lb",
    Unit.STONE: "st",
}
PLAIN = frozenset(  # what anybody may ask before there is an answer to speak of
    {
        Question.ABOUT,
        Question.CAN_STOP,
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
            needed.say_question(d, d.asking)
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
            question, *rest = needed.at_the_start(d)
            needed.put(d, Enrolling(question, tuple(rest)))
        case "no":
            d.say(m.ConsentDeclined(d.facts.coach_name), (Choice("agree", "consent:yes"),))
        case "what":
            d.say(
                m.WhatIsKept(d.facts.coach_name),
                *_AGREE,
            )
        case "about":
            d.say(m.Plainly(Question.ABOUT.value, d.facts.coach_name), *_AGREE)
        case _:
            if not (isinstance(event, Text) and _plain_question(d, event.text, _AGREE)):
                d.say(em.ConsentUnclear(d.facts.coach_name), *_AGREE, (Choice("what_is_kept", "consent:what"),))


_AGREE: Rows = ((Choice("agree", "consent:yes"), Choice("decline", "consent:no")),)


def _plain_question(d: ClientStep, text: str, rows: Rows) -> bool:
    """Answer a question about the bot itself ("is this free?", "who sees it?"); False if it is none."""
    found = asked(text, d.words, d.facts.coach_name)
    if found is None or found.question not in PLAIN:
        return False
    d.say(m.Plainly(found.question.value, d.facts.coach_name, d.emergency_number), *rows)
    return True


def _as_consent(d: ClientStep, text: str) -> str:
    """What a text says of consent; a question agrees to nothing and refuses nothing ("can I stop when I like?")."""
    if asked(text, d.words, d.facts.coach_name) is not None:
        return ""
    question = looks_like_a_question(text, d.words)
    match intent_of(text, d.words):
        case Intent.YES:
            return "" if question or _with_a_but(d, text) else "yes"
        case Intent.NO | Intent.STOP | Intent.LEAVE:
            return "" if question else "no"
        case Intent.WHY | Intent.MY_DATA:
            return "what"
        case Intent.HELP:
            return "about"
        case _:
            return ""


# --- questions --------------------------------------------------------------------------------------------------


def _with_a_but(d: ClientStep, text: str) -> bool:
    """Whether a yes is taken back in part: "yes, but my daughter says"."""
    said = bare_words(plain(text))
    return holds(said, group_of(d.words.concepts.get(Concept.BUT, "")))


def _next(d: ClientStep, asking: Enrolling, left: tuple[str, ...]) -> None:
    """This question is answered or skipped, and not asked again: put the next one, or go on."""
    _met(d, asking)
    if asking.measure and not _still_wanted(d, asking.measure):  # "leave my weight out": its height is not needed
        left = ()
    if asking.question in needed.READINESS or (not left and _exercises(asking.measure)):
        left = needed.before_exercise(d)
        if asking.question in needed.READINESS and not left:
            before_exercise.say_verdict(d)
    if left:
        needed.put(d, replace(asking, question=left[0], left=left[1:], chosen=(), tries=0))
    elif asking.measure:
        go_on(d, quietly=asking.question in needed.READINESS and before_exercise.doctor_first(d))
    else:
        _finish(d)


def _exercises(key: str) -> bool:
    """Whether the check before exercise follows the facts asked for this."""
    if key in (needed.BEFORE_EXERCISE, needed.ALL_OF_THEM):
        return True
    return key in MEASURES and MEASURES[key].kind is MeasureKind.FUNCTION


def _met(d: ClientStep, asking: Enrolling) -> None:
    if asking.question not in d.state.met:
        # somebody who was asked for everything at the start is now asked for the cautions, and again for nothing else
        before = () if d.state.met or asking.question != "cautions" else needed.WHEN_NEEDED
        d.become(met=tuple(dict.fromkeys((*before, *d.state.met, asking.question))))


def _still_wanted(d: ClientStep, key: str) -> bool:
    return key not in MEASURES or (key in check_in.asked_of(d) and check_in.askable(d, MEASURES[key]))


def go_on(d: ClientStep, *, quietly: bool = False) -> None:
    """What the measure needed is known: ask for it, unless it does not fit this person. quietly: see `check_in`."""
    all_of_them = isinstance(d.asking, Enrolling) and d.asking.measure == needed.ALL_OF_THEM
    d.become(asking=None, agenda=tuple(k for k in d.state.agenda if _still_wanted(d, k)))
    if d.state.day is not None:
        check_in.ask_next(d, quietly=quietly)
    elif all_of_them:
        d.say(em.AllAnswered())


def ask_the_rest(d: ClientStep) -> bool:
    """Put every question the plan will need, one after the other; False if there is none."""
    missing = needed.for_plan(d) or needed.before_exercise(d)
    if not missing:
        return False
    _put_aside(d)
    needed.put(d, Enrolling(missing[0], missing[1:], measure=needed.ALL_OF_THEM))
    return True


def check_again(d: ClientStep) -> None:
    """The check before exercise once more, because something is different."""
    before_exercise.ask_again(d)
    _put_aside(d)
    question, *rest = needed.before_exercise(d)
    needed.put(d, Enrolling(question, tuple(rest), measure=needed.BEFORE_EXERCISE))


def _put_aside(d: ClientStep) -> None:
    """A measure that is being asked comes again afterwards."""
    if isinstance(d.asking, Awaiting) and d.state.day is not None:
        d.become(agenda=(d.asking.measure, *d.state.agenda))


def enrolling(d: ClientStep, event: Text | Press, asking: Enrolling) -> None:
    """An answer to the open question, typed or pressed."""
    question = asking.question
    if isinstance(event, Press):
        verb, _, rest = event.data.partition(":")
        pressed, _, value = rest.partition(":")
        if verb != "e" or pressed != question:  # from before questions were numbered
            d.say(OldButton())
            needed.say_question(d, asking)
            return
    else:
        value = _typed(d, event.text, question)
        if question != OWN_QUESTION.key and _plain_question(d, event.text, ()):
            needed.say_question(d, asking)
            return
    if _answered(d, asking, value, event):
        return
    if isinstance(event, Text) and _asks_something(d, event.text):
        needed.say_question(d, asking)
    else:
        unclear(d, asking)


def _asks_something(d: ClientStep, text: str) -> bool:
    """Answer a question that has to wait until the start, or offer it to the coach; False if the text asks nothing."""
    if asked(text, d.words, "") is not None:  # with a name it may be said to the coach
        d.say(m.Plainly("after_start", d.facts.coach_name))
        return True
    if looks_like_a_question(text, d.words) and d.facts.coach_name:
        coach_thread.offer(d, text, "unknown")
        return True
    return False


def answered_in_words(d: ClientStep, event: Text, asking: Enrolling) -> bool:
    """An answer typed to a question that a measure has raised; False if the text is anything else."""
    if intent_of(event.text, d.words) in (Intent.LATER, Intent.STOP):
        return False
    return _answered(d, asking, _typed(d, event.text, asking.question), event)


def _answered(d: ClientStep, asking: Enrolling, value: str, event: Text | Press) -> bool:
    """Take an answer, or leave the question out; False if it is not understood."""
    question = asking.question
    if value == "skip" and question not in AGE:
        d.say(m.SkipCost(question))
        if question in needed.READINESS:
            before_exercise.left_open(d, question)
        _next(d, asking, (AGE[0], *asking.left) if question == "birth_year" else asking.left)
        return True
    if question in needed.READINESS:
        if not value or not before_exercise.answered(d, asking, value):
            return False
        if d.asking is asking:  # not one more tick
            _next(d, asking, ())
        return True
    if question == "rating":
        return bool(value) and _rating(d, asking, value, event)
    if question == "weekday":  # the number of a button is no number that somebody types
        return bool(value) and _weekday(d, asking, value, pressed=value != _said(event))
    answer = CONFIRMED.get(question) or ANSWER[question]
    return bool(value) and answer(d, asking, value)


def unclear(d: ClientStep, asking: Enrolling) -> None:
    """Say what an answer looks like; the second time in other words, with the coach at hand."""
    if asking.question in needed.SURE:
        needed.say_question(d, asking)
        return
    d.ask(replace(asking, tries=asking.tries + 1))
    rows = needed.rows_for(d, asking.question, asking.chosen)
    if asking.tries == 0:
        nowhere = asking.question == "zone"
        d.say(WhichPlace(()) if nowhere else m.EnrolUnclear(asking.question), *rows)
    else:
        coach = ((Choice("word_to_coach", "word", d.facts.coach_name),),) if d.facts.coach_name else ()
        d.say(em.EnrolStillUnclear(skippable=asking.question not in AGE), *rows, *coach)


def _typed(d: ClientStep, text: str, question: str) -> str:
    intent = intent_of(text, d.words)
    if intent in (Intent.SKIP, Intent.LATER):
        return "skip"
    if question in ("cautions", "signs") and intent in (Intent.NO, Intent.DONE) and not health_in(text, d.words).facts:
        return "done"
    yes_or_no = question == "adult" or (question in needed.READINESS and question != "signs")
    if yes_or_no or (question in needed.SURE and intent in (Intent.YES, Intent.NO)):
        return {Intent.YES: "yes", Intent.NO: "no"}.get(intent, "") if intent else ""
    if question == "sex" and (sex := _called(d, text)) is not None:
        return sex.value
    if question == "units" and (units := _units_called(d, text)):
        return units
    for row in needed.choices_for(question):
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


def _by_chance(d: ClientStep, measure: Measure) -> Amount | None:
    """The largest whole difference of two ratings that error alone may make; None without a known error."""
    error = measure.error
    if error is None or error.sem is None:
        return None
    return d.shown(measure, mdc95(2 * error.sem * error.sem).to_integral_value(rounding=ROUND_FLOOR))


def _rating(d: ClientStep, asking: Enrolling, value: str, event: Text | Press) -> bool:
    """The first rating: a start, and already something to tell."""
    measure = needed.FIRST_RATING
    heard = measure.understand(value, d.words, None) if measure.understand is not None else None
    if isinstance(heard, Misunderstood) and heard.either:
        choices = (Choice("number", f"e:rating:{n}", str(n)) for n in heard.either)
        d.say(m.AskEither(measure.key, heard.either), tuple(choices), needed.choices_for("rating")[-1])
        return True
    if heard is not None:  # "oh I forgot, I take metformin" is no zero
        (heard,) = (a.heard for a in sure((Answer(measure.key, heard),), value, d.words, measure))
    if not isinstance(heard, Understood) or heard.value not in measure.bounds.possible:
        return False
    ref = event.ref if isinstance(event, Text) else ""
    reading = Reading(
        measure=measure.key,
        value=heard.value,
        taken_at=event.at,
        as_typed=value[:200],
        unit=heard.unit,
        how=How.UNASKED,  # of no check-in
        key=f"{ref or event.at.isoformat()}:{measure.key}",
    )
    readings.record(d, reading, ref)
    d.say(em.FirstValue(measure.key, d.shown(measure, heard.value), _by_chance(d, measure)))
    _next(d, asking, asking.left)
    return True


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
    _next(d, asking, left)
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
    born = born_in(folded, d.words) or holds(bare_words(folded), group_of(HEALTH_WORDS[d.words.code][Topic.BORN]))
    if numbers[0] < 100 and born:  # "born in 48"
        this_year = d.today.year
        return next((c + numbers[0] for c in (1900, 2000) if ADULT <= this_year - c - numbers[0] <= OLDEST), None)
    return numbers[0] if numbers[0] > OLDEST else d.today.year - numbers[0]


def _sure_of_age(d: ClientStep, asking: Enrolling, year: int) -> None:
    """Ask before enrolment ends: a slip of the thumb must not close the door."""
    d.ask(replace(asking, question="young", chosen=(str(year),)))
    needed.ask_question(d, "young", (str(year),))


def _young(d: ClientStep, asking: Enrolling, value: str) -> bool:
    if value == "yes":
        d.ask(replace(asking, question="too_young"))
        d.do(SetTimer(TURNED_AWAY, d.now + DOOR_STAYS_OPEN))
        needed.ask_question(d, "too_young", asking.chosen)
        return True
    return _year_again(d, asking, "" if value == "no" else value)


def _year_again(d: ClientStep, asking: Enrolling, year: str) -> bool:
    """The year of birth once more; "" asks for it."""
    again = replace(asking, question="birth_year", chosen=())
    d.ask(again)
    if not year:
        needed.ask_question(d, "birth_year")
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
        _next(d, asking, asking.left)
        return True
    if value == "no":
        _sure_of_age(d, asking, d.today.year - ADULT)
        return True
    return False


def _sex(d: ClientStep, asking: Enrolling, value: str) -> bool:
    if value not in {s.value for s in Sex}:
        return False
    d.do(ChangeClient("sex", Sex(value)))
    _next(d, asking, asking.left)
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
        d.ask(replace(asking, question="stature_sure", chosen=(kept,)))
        needed.ask_question(d, "stature_sure", (kept,))
        return True
    _keep_stature(d, asking, meant.value)
    return True


def _keep_stature(d: ClientStep, asking: Enrolling, centimetres: Decimal) -> None:
    d.do(ChangeClient("stature", centimetres))
    d.say(m.EnrolNoted("stature", height=d.shown(MEASURES["height"], centimetres)))
    _next(d, asking, asking.left)


def _stature_sure(d: ClientStep, asking: Enrolling, value: str) -> bool:
    if value == "yes" and asking.chosen:
        _keep_stature(d, asking, Decimal(asking.chosen[0]))
        return True
    again = replace(asking, question="stature", chosen=())
    d.ask(again)
    if value == "no":
        needed.ask_question(d, "stature")
        return True
    if _stature(d, again, value):
        return True
    d.ask(asking)
    return False


def _units(d: ClientStep, asking: Enrolling, value: str) -> bool:
    if value not in needed.UNIT_SETS:
        return False
    d.do(ChangeClient("units", needed.UNIT_SETS[value]))
    d.facts = replace(d.facts, units=needed.UNIT_SETS[value])
    _next(d, asking, asking.left)
    return True


def _background(d: ClientStep, asking: Enrolling, value: str) -> bool:
    if value not in needed.BACKGROUNDS:
        return False
    d.do(ChangeClient("background", Background(value)))
    _next(d, asking, asking.left)
    return True


def _cautions(d: ClientStep, asking: Enrolling, value: str) -> bool:
    """A tick, a sentence that ticks what it says and nothing else, or the end."""
    if value == "done":
        _keep_cautions(d, asking)
        return True
    if value in {c.value for c in needed.CAUTIONS}:
        chosen = frozenset({*asking.chosen, value})
    else:
        facts = [f for f in health_in(value, d.words).facts if f.sure and f.what in (What.CAUTION, What.MEDICINE)]
        chosen = ticked(frozenset(asking.chosen), facts)
        if chosen == frozenset(asking.chosen):
            return False
    kept = tuple(c for c in asking.chosen if c in chosen)
    asking = replace(asking, chosen=(*kept, *sorted(chosen - set(kept))))
    d.ask(asking)
    needed.ask_question(d, "cautions", asking.chosen)
    return True


def ticked(chosen: frozenset[str], facts: Iterable[HealthFact]) -> frozenset[str]:
    """The ticks after a sentence: what it says is so, without what it denies."""
    ticks = set(chosen)
    for fact in facts:
        medicine = fact.what is What.MEDICINE
        if fact.stance is Stance.SO:
            ticks |= {Caution.RATE_LIMITING_MEDICINE.value, needed.MEDICINE + fact.value} if medicine else {fact.value}
        elif not medicine:
            ticks.discard(fact.value)
        else:
            ticks.discard(needed.MEDICINE + fact.value)
            if not any(tick.startswith(needed.MEDICINE) for tick in ticks):
                ticks.discard(Caution.RATE_LIMITING_MEDICINE.value)
    return frozenset(ticks)


def _keep_cautions(d: ClientStep, asking: Enrolling) -> None:
    cautions = frozenset(Caution(c) for c in asking.chosen if not c.startswith(needed.MEDICINE))
    medicines = frozenset(c.removeprefix(needed.MEDICINE) for c in asking.chosen if c.startswith(needed.MEDICINE))
    medicines |= d.facts.profile.medicines
    d.do(ChangeClient("cautions", cautions))
    if medicines != d.facts.profile.medicines:
        d.do(ChangeClient("medicines", medicines))
    d.do(ChangeClient("cautions_known", True))
    d.facts = replace(
        d.facts, profile=replace(d.facts.profile, cautions=cautions, medicines=medicines, cautions_known=True)
    )
    if Caution.HEART_FAILURE in cautions and not d.facts.plan.directed_weighing:
        begun = tuple(sorted(cautions))
        d.do(NotifyCoach(HealthChanged(d.facts.client_id, d.facts.name, begun, (), (), (), (), undirected=True)))
    left = asking.left
    if Caution.EATING_WORRIES in cautions:  # the safe default: weight is neither asked, shown nor charted
        _leave_weight_out(d)
        left = tuple(q for q in left if q != "numbers")
    _next(d, asking, left)


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
    _next(d, asking, asking.left)
    return True


def _own_question(d: ClientStep, asking: Enrolling, value: str) -> bool:
    plan = replace(d.facts.plan, own_question=value[:200])
    d.do(ChangeClient("plan", plan))
    d.facts = replace(d.facts, plan=plan)
    _next(d, asking, ("own_better", *asking.left))
    return True


def _own_better(d: ClientStep, asking: Enrolling, value: str) -> bool:
    if value not in (Better.HIGHER.value, Better.LOWER.value):
        return False
    plan = replace(d.facts.plan, own_better=Better(value))
    d.do(ChangeClient("plan", plan))
    d.facts = replace(d.facts, plan=plan)
    _next(d, asking, asking.left)
    return True


def _weekday(d: ClientStep, asking: Enrolling, value: str, *, pressed: bool = True) -> bool:
    if pressed and value.isdigit() and len(value) == 1:
        day: int | None = int(value)
        at = None
    else:
        day, at = day_of_week(value, d.words, d.today), weekday_and_time(value, d.words)[1]
    if day is None or not 0 <= day <= 6:
        return False
    set_slot(d, weekday=day, at=at)
    _next(d, asking, tuple(q for q in asking.left if q != "time" or at is None))
    return True


def _said(event: Text | Press) -> str:
    return event.text.strip() if isinstance(event, Text) else ""


def _at(d: ClientStep) -> str:
    """The word that stands before an hour: "at "."""
    calendar = d.words.calendar
    return f"{calendar.at[0]} " if calendar is not None and calendar.at else ""


def _time(d: ClientStep, asking: Enrolling, value: str) -> bool:
    day, at = weekday_and_time(value, d.words)
    if day is None and at is None:  # "nueve y media": the question was when, so an hour needs no word before it
        _, at = weekday_and_time(_at(d) + value, d.words)
    if day is not None:
        meant = day_of_week(value, d.words, d.today)
        kept = d.facts.slot.weekday if d.facts.slot is not None else day
        day = kept if meant != day != kept else meant  # "Mondays are bad" is no wish for Monday
    if day is not None:
        set_slot(d, weekday=day)
    if at is None:
        if day is not None:  # another day, and the time is still open
            needed.say_question(d, asking)
        return day is not None
    set_slot(d, at=at)
    _next(d, asking, asking.left)
    return True


def _zone(d: ClientStep, asking: Enrolling, value: str) -> bool:
    found = d.facts.find_zones(value)
    if not found:
        return False
    if len(found) > 1:
        d.say(
            WhichPlace(found[:6]),
            *rows_of(*(Choice("place", f"e:zone:{z}"[:64], z) for z in found[:6])),
            (Choice("skip", "e:zone:skip"),),
        )
        return True
    set_slot(d, zone_name=found[0])
    d.say(m.EnrolNoted("zone", place=found[0], clock=d.facts.local(d.now).time()))
    _next(d, asking, asking.left)
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
    d.state = State(met=d.state.met, written=d.state.written)
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
