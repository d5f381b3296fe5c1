"""Decide one event of a client's conversation.

    step(state, event, facts, now) -> Outcome(state, effects)

Total: for every state and every input there is an answer, and input never raises. What matters most is the order in
which a text is interpreted:

1. Danger signs, at any point. 2. The answer to an open setting or enrolment question. 3. An everyday question.
4. An edit or a correction. 5. Intents (help, skip, later, ...). 6. Readings: the open question first, then anything
else the plan knows. 7. A reply to the coach, if the coach has just written. 8. What nobody here can answer: an offer
to pass it on, or a friendly "I did not follow".
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta

from core.care import Status
from core.dialogue.client import (
    answers,
    buttons,
    check_in,
    coach_thread,
    cohort_membership,
    corrections,
    effects,
    enrolment,
    everyday,
    health,
    help_and_menu,
    home_bp_week,
    intents,
    leaving,
    needed,
    open_question,
    pausing,
    progress_and_goals,
    safety,
    settings,
    timed_counts,
)
from core.dialogue.client import messages as m
from core.dialogue.client.commands import COMMANDS, Stage
from core.dialogue.client.effects import ChangeClient, DropDelayed, PassOn, Raise
from core.dialogue.client.facts import ClientFacts, StrangerFacts
from core.dialogue.client.open_question import put_again
from core.dialogue.client.start import after_leaving
from core.dialogue.client.states import (
    AlarmAsked,
    Asking,
    AskingConditions,
    Awaiting,
    ChoosingDay,
    Confirming,
    Consenting,
    Counting,
    Enrolling,
    Gate,
    Setting,
    State,
    StopwatchDone,
)
from core.dialogue.client.step import ClientStep, Outcome
from core.dialogue.kit.commands import Argument
from core.dialogue.kit.effects import Erase, Say
from core.dialogue.kit.events import (
    Attachment,
    Command,
    Due,
    Event,
    FromCoach,
    PlanChanged,
    Press,
    Reachability,
    TakenBack,
    Text,
    TimerFired,
)
from core.dialogue.kit.messages import KeptAsItWas, NotForThisRole, NotText, Stranger
from core.language import Intent, Level, plain
from core.language.after_alarm import Later, said_of_alarm
from core.language.danger_signs import (
    Answer,
    Sighting,
    When,
    Who,
    answer_to_alarm,
    complaint_in_a_test,
    denies,
    recognise,
    sightings,
)
from core.language.days import place_first, stay
from core.language.intents import intent_of, place
from core.language.lexicon import Question
from core.language.questions import is_wordy, looks_like_a_question
from core.language.signs import AMISS
from core.language.spoken import opens_a_question
from core.language.text import bare_words
from core.measures import MEASURES
from core.measures.measure import Measure, MeasureKind, Misunderstood, Understood, Why
from core.measures.own_question import OWN_QUESTION
from core.understanding.answers_in_text import Answer as Given
from core.understanding.answers_in_text import correction
from core.understanding.health_facts import HealthSaid, health_in
from core.watching.digest import may_wait
from core.watching.flags import worded

A_PLACE = 5  # words: "I have moved to Trumpton"
PUT_OFF = 6  # words of "I will do it tonight"
FROM_PEOPLE = (Text, Press, Command, Attachment)
SURE = ("forget", "leave", "undo", "coach_change", cohort_membership.LEAVE)  # settings that wait for a yes or no
MUST_BE_ANSWERED = ("forget", "leave", "coach_change", cohort_membership.LEAVE, health.ASK)
ENDS = (Intent.STOP, Intent.LEAVE, Intent.FORGET)
A_REFUSAL = 4  # words; a longer "no ..." tells something
EVERYDAY = (  # what is asked or told in words that also say that something is amiss
    Question.BODY,
    Question.CAN_STOP,
    Question.GRIEF,
    Question.MISSED,
    Question.NO_WEIGHT,
    Question.RESCHEDULE,
)
FINAL = ("forget", "leave")  # settings that are asked back
TALK = (Intent.THANKS, Intent.GREETING, Intent.YES, Intent.NO, Intent.WELL)  # passed to a coach who has just written


def step(state: State, event: Event, facts: ClientFacts, now: datetime) -> Outcome:
    """Advance one client's conversation by one event."""
    d = ClientStep(state, facts, now)
    if state.offer_open and isinstance(event, Text | Command):
        d.become(offer_open=False)
    match event:
        case Text():
            _text(d, event)
        case Press():
            buttons.press(d, event)
        case Command():
            _command(d, event)
        case Attachment():
            waiting = help_and_menu.waiting(d)
            d.say(NotText(event.kind, waiting))
        case Due():
            check_in.due(d, event)
        case TimerFired():
            _timer_fired(d, event)
        case FromCoach():
            coach_thread.from_coach(d, event)
        case TakenBack():
            coach_thread.taken_back(d, event)
        case PlanChanged():
            coach_thread.plan_changed(d, event)
        case Reachability():
            coach_thread.reachability(d, event)
        case _:
            pass  # a group event never belongs to one client's conversation
    if isinstance(event, FROM_PEOPLE) and not any(isinstance(x, Say | Erase) for x in d.effects):
        help_and_menu.not_sure(d)  # every message and press gets an answer
    _call_off(d, state)
    if isinstance(event, Text | Command):
        _in_own_words(d, state.asking, event.text if isinstance(event, Text) else event.argument)
    return d.finish()


def _in_own_words(d: ClientStep, before: Asking | None, text: str) -> None:
    """What was raised by words says which, so that the coach reads them; so does what may be raised later."""
    if text.strip():
        d.effects = [Raise(worded(x.flag, text)) if isinstance(x, Raise) else x for x in d.effects]
        safety.asked_in_words(d, before if isinstance(before, AlarmAsked) else None, text)


def _call_off(d: ClientStep, before: State) -> None:
    """Cancel the stop message of a timed count that ended early or was abandoned."""
    count = before.asking
    if not isinstance(count, Counting) or d.now >= count.started + timedelta(seconds=count.seconds):
        return
    asking = d.asking
    while isinstance(asking, Setting | AlarmAsked):
        asking = asking.back
    if asking != count:
        d.effects.insert(0, DropDelayed())


def step_stranger(event: Event, facts: StrangerFacts) -> Outcome:
    """An unknown chat: a valid invitation is accepted, anything else gets the standard reply."""
    desk = ClientStep(State(), ClientFacts(0, facts.name, "", False, None, language=facts.language), event.at)
    invitation = facts.invitation
    if isinstance(event, Text | Command):  # a stranger may be in need, too
        alarm = recognise(event.text if isinstance(event, Text) else event.argument, desk.words)
        if alarm is not None and alarm.certain and alarm.level is Level.EMERGENCY:
            desk.say(m.Emergency(alarm.sign, desk.emergency_number))
    if isinstance(event, Command) and event.name == "start" and invitation is not None:
        enrolment.arrive(desk, invitation)
        return desk.finish()
    if isinstance(event, Text | Command | Attachment | Press):
        desk.say(Stranger())
    return desk.finish()


# --- text -------------------------------------------------------------------------------------------------------


def _text(d: ClientStep, event: Text) -> None:
    text = event.text.strip()
    asking = d.asking
    if not text:
        d.say(NotText("empty", help_and_menu.waiting(d)))
        return
    if _danger(d, event):
        return
    if not d.facts.consented or isinstance(asking, Consenting):
        enrolment.consenting(d, event)
        return
    if isinstance(asking, Enrolling) and not asking.measure:
        if not health.while_enrolling(d, text, asking):
            enrolment.enrolling(d, event, asking)
        return
    if event.edited and _edited(d, event):
        return
    if (data := buttons.typed(d, text)) is not None:
        buttons.act(d, Press(event.at, data, event.ref))
        return
    if d.facts.status is Status.LEFT:
        after_leaving(d, text)
        return
    if isinstance(asking, Enrolling) and _for_needed_fact(d, event, asking):
        return
    if (question := everyday.question(d, text)) is not None and not health_in(text, d.words).facts:
        if d.asking is None and question.question in everyday.FOR_WHO_WROTE and _coach_wrote_recently(d):
            coach_thread.pass_on(d, text, reply=True)
            return
        if beside := everyday.rest_with_reading(d, question):
            _other_text(d, replace(event, text=beside), beside)
        if not beside or question.question not in everyday.ANSWERED_BY_READING:
            everyday.answer(d, question, text)
        return
    if _for_open_question(d, event, text):
        return
    _other_text(d, event, text)


def _for_needed_fact(d: ClientStep, event: Text, asking: Enrolling) -> bool:
    """Pass a text to the fact that a measure needs, unless it asks something or is a reading that says what it is."""
    own_words = asking.question == OWN_QUESTION.key
    if not own_words and everyday.question(d, event.text) is not None:
        return False
    return enrolment.answered_in_words(d, event, asking)


def _danger(d: ClientStep, event: Text) -> bool:
    """Handle a danger sign in a text, or what is said of one; True if there was one."""
    text, asking = event.text.strip(), d.asking
    alarm = recognise(text, d.words)
    if alarm is not None and _puts_off(d, text, alarm):
        alarm = None
    if safety.in_a_test(asking):
        if alarm is None:
            alarm = complaint_in_a_test(text, d.words)
        elif alarm.sign != AMISS and alarm.who is Who.ME and alarm.when is not When.LONG_AGO:
            alarm = replace(alarm, certain=True)  # no test goes on while a question is open
    if isinstance(asking, AlarmAsked):
        answer = None if opens_a_question(text, d.words) else answer_to_alarm(text, d.words)
        denied = denies(text, asking.sign, d.words) if alarm is None else None
        if denied is not None:
            answer = Answer.NO if denied else None
        if alarm is not None and alarm.certain:
            answers.alarmed(d, alarm, event)
        elif alarm is not None and safety.graver(asking, alarm):
            safety.heard_while_asked(d, asking, alarm)  # "my mum had a stroke last year" answers nothing
        elif answer is not None:
            answers.alarm_answered(d, asking, safety.TYPED[answer])
        elif alarm is not None:
            safety.heard_while_asked(d, asking, alarm)
        elif denied is False or intent_of(text, d.words) is Intent.DONT_KNOW:
            safety.say_question(d, asking.sign)
        else:
            return False
        return True
    if alarm is None:
        # "same" as last time, and "no, no" to what cannot be undone, say nothing of it; "I want to stop" neither
        ours = isinstance(asking, AskingConditions) or (isinstance(asking, Setting) and asking.what in FINAL)
        awaited = safety.standing(d) is not None and not ours and intent_of(text, d.words) not in ENDS
        later = said_of_alarm(text, d.words) if awaited else None
        if later in (Later.BETTER, Later.NOT_MEANT):
            asked = everyday.question(d, text)
            if _coach_wrote_recently(d) or (asked is not None and asked.question is Question.CHAT):
                return False  # "better, I walk without my stick" answers the coach; "tell me a joke" was none
        if later is not None:
            safety.said_later(d, later)
        return later is not None
    if isinstance(asking, Enrolling) and alarm.when is When.LONG_AGO and alarm.who is Who.ME:
        safety.past_illness(d, alarm.sign)
        needed.put(d, asking)
    else:
        answers.alarmed(d, alarm, event)
        if alarm.certain and alarm.who is Who.ME and alarm.level is not Level.EMERGENCY and d.facts.consented:
            _health_beside_a_sign(d, event)
    return True


def _puts_off(d: ClientStep, text: str, alarm: Sighting) -> bool:
    """Whether "will do it tonight" answers what is asked just now: it says nothing else, and no alarm stands. Neither
    do hard words about one's own body say that something is amiss."""
    if alarm.sign == AMISS:
        body = everyday.question(d, text)
        return body is not None and body.question in EVERYDAY
    found = everyday.question(d, text) if isinstance(d.asking, Awaiting | Enrolling) else None
    standing = safety.standing(d)
    brief = len(bare_words(plain(text))) <= PUT_OFF and (standing is None or standing.sign != alarm.sign)
    return found is not None and found.question is Question.NOT_NOW and alarm.sign == "despair" and brief


def _health_beside_a_sign(d: ClientStep, event: Text) -> None:
    """ "My heart races, so they put me on bisoprolol": after the advice the fact is noted, not beside an emergency."""
    facts = [fact for fact in health_in(event.text.strip(), d.words).facts if fact.sure]
    if not facts:
        return
    if isinstance(d.asking, Enrolling) and d.asking.question == "cautions":
        enrolment.enrolling(d, event, d.asking)
    else:
        health.note(d, facts)
        put_again(d)


def _edited(d: ClientStep, event: Text) -> bool:
    if corrections.edited(d, event):
        return True
    if isinstance(d.asking, Confirming) and d.asking.ref == event.ref:
        d.ask(Awaiting(d.asking.measure))
        return False
    if d.asking is None and not health_in(event.text.strip(), d.words).facts:
        d.say(m.EditTooOld())
        return True
    return False


def _for_open_question(d: ClientStep, event: Text, text: str) -> bool:
    """Pass a text to the question it answers; True if it did."""
    intent = _answer(d, text)
    match d.asking:
        case Gate(signs=False) if intent is Intent.NO and _denies_a_sign(d, text):
            safety.ask_well(d)  # "no chest pain" means neither well nor unwell: the question stays open
        case Gate() | AskingConditions() if intent is Intent.DONT_KNOW:
            put_again(d)
        case Gate(signs=True) if intent is Intent.YES and answer_to_alarm(text, d.words) is not Answer.YES:
            safety.ask_signs(d)  # "ok" to a list of signs may mean "ok, none": ask again
        case Gate() as asking if intent in (Intent.YES, Intent.NO, Intent.WELL, Intent.NOT_WELL):
            # the first question asks whether one is well, the second whether there is a sign
            well = intent in (Intent.YES, Intent.WELL) if not asking.signs else intent in (Intent.NO, Intent.WELL)
            safety.gate_answered(d, asking, well)
        case Confirming() as asking if intent in (Intent.YES, Intent.NO):
            open_question.confirmed(d, asking, intent is Intent.YES)
        case ChoosingDay() as asking if intent in (Intent.NO, Intent.STOP):
            open_question.day_chosen(d, asking, "none")
        case AskingConditions() as asking if intent in (
            Intent.SAME,
            Intent.YES,
            Intent.DIFFERENT,
            Intent.NO,
            Intent.DONE,
        ):
            same = intent in (Intent.SAME, Intent.YES)
            answers.conditions_answered(d, asking, "done" if intent is Intent.DONE else "same" if same else "differed")
        case Counting() as asking if timed_counts.counted(d, asking, event):
            pass
        case StopwatchDone() as asking if intent in (Intent.YES, Intent.NO):
            timed_counts.watch_answered(d, asking, intent is Intent.YES, event.ref, event.at)
        case Setting(what="early_reason") as asking if intent not in (None, *TALK) or _holds_a_reading(d, text):
            d.ask(asking.back)
            return False
        case Setting() as asking if intent in (Intent.STOP, Intent.NO) and asking.what not in (*SURE, health.ASK):
            d.say(KeptAsItWas())
            check_in.close_setting(d)
        case Setting(what="forget" | "leave" as what) if intent is Intent.YES:
            settings.change(d, what)  # a yes may have been meant for something else: ask again
        case Setting(what=cohort_membership.LEAVE) as asking if intent is Intent.YES:
            cohort_membership.leave(d, asking.detail)
        case Setting(what="forget") if intent is Intent.NO:
            leaving.forget(d, False)
        case Setting(what="leave") if intent is Intent.NO:
            leaving.leave(d, False)
        case Setting(what=cohort_membership.LEAVE) as asking if intent is Intent.NO:
            cohort_membership.leave_answered(d, asking, False)
            check_in.close_setting(d)
        case Setting(what="undo") as asking if intent in (Intent.YES, Intent.NO):
            corrections.undo_answered(d, asking, intent is Intent.YES)
        case Setting(what="coach_change") if intent in (Intent.YES, Intent.NO):
            coach_thread.change_coach(d, intent is Intent.YES)
        case Setting(what=health.ASK) as asking if intent in (Intent.YES, Intent.NO):
            health.answered(d, asking, intent is Intent.YES)
            put_again(d)
        case Setting() as asking if progress_and_goals.goal_typed(d, asking, text) or settings.typed_setting(
            d, asking, text
        ):
            pass
        case _:
            return False
    return True


def _answer(d: ClientStep, text: str) -> Intent | None:
    """The intent of an answer. The "no" of "no diabetes, but I fell" is none; in "yes, and I am pregnant" a fact is
    noted along with the answer."""
    intent = intent_of(text, d.words)
    if intent not in (Intent.YES, Intent.NO) or (isinstance(d.asking, Setting) and d.asking.what == health.ASK):
        return intent
    said = health_in(text, d.words)
    if not said.facts:
        return intent
    rest = intent_of(said.rest, d.words) if said.rest else None
    if rest is not None:
        health.heard(d, said.facts)
    return rest


def _denies_a_sign(d: ClientStep, text: str) -> bool:
    """Whether the text says of a sign that it is not there."""
    return any(s.denied for s in sightings(text, d.words))


def _holds_a_reading(d: ClientStep, text: str) -> bool:
    return any(isinstance(a.heard, Understood) for a in answers.readings_in(d, text, None))


def _other_text(d: ClientStep, event: Text, text: str) -> None:
    """A correction, readings, an intent, a message for the coach: everything is answered."""
    if isinstance(d.asking, Setting) and d.asking.what not in MUST_BE_ANSWERED and is_wordy(text):
        d.ask(d.asking.back)  # a sentence about something else: a setting is no trap
    rest = correction(text, d.words)
    if rest is not None and not _fits_open(d, rest) and (written := corrections.target(d, text)) is not None:
        (corrections.correct if corrections.fresh(d, written) else corrections.late)(d, written, rest, event)
        return
    said = health_in(text, d.words)
    if said.facts and _of_health(d, event, text, said):
        return
    asked = buttons.asked_measure(d)
    intent = intent_of(text, d.words)
    if intent is Intent.NO and asked is not None and asked.kind is MeasureKind.ACTIVITY:
        intent = None if _is_none(d, text, asked) else intent  # "none" is a number of sessions
    if intent is Intent.NO and isinstance(d.asking, Awaiting) and len(bare_words(plain(text))) > A_REFUSAL:
        intent = None  # "don't write to me on Sundays" leaves no question out
    given = answers.readings_in(d, text, asked) if intent is None else ()
    understood = tuple(a for a in given if isinstance(a.heard, Understood))
    if intent is Intent.ZONE and _is_no_place(d, text):
        intent = None
    if town := _where(d, text, intent):
        settings.set_zone(d, town, stay(text, d.words, d.today))
    elif intent in TALK and _coach_wrote_recently(d):
        coach_thread.pass_on(d, text, reply=True)
    elif intent is Intent.NO and _denies_a_sign(d, text):  # not a "no" to the question
        _denied_unprompted(d)
    elif intent is Intent.YES and d.asking is None and coach_thread.offer_accepted(d):
        pass
    elif intent is not None:  # an intent includes a number only where one belongs ("pause until 20 March")
        intents.act_on_intent(d, intent, text)
    elif understood:
        if isinstance(d.asking, Confirming | Counting):  # a new number replaces the doubtful or counted one
            d.ask(Awaiting(d.asking.measure))
        elif isinstance(d.asking, Setting) and d.asking.what not in SURE:
            d.ask(d.asking.back)
        answers.take_answers(d, event, understood, asked)
    elif _coach_wrote_recently(d) and not any(_tries(a.heard) for a in given):
        coach_thread.pass_on(d, text, reply=True)
        everyday.remind(d)
    elif looks_like_a_question(text, d.words) and everyday.hand_on(d, text):
        everyday.remind(d)
    elif _denies_a_sign(d, text) and not any(_tries(a.heard) for a in given):
        _denied_unprompted(d)  # before it is taken for an answer that holds no number
    elif (aside := answers.for_put_aside(d, text, asked)) is not None:
        answers.take_answers(d, event, (aside,), MEASURES[aside.measure])
    elif isinstance(d.asking, Awaiting) and not _offers(given) and everyday.about_the_week(d, text):
        pass
    elif given and isinstance(given[0].heard, Misunderstood) and _asks_back(d, given[0].heard):
        answers.not_understood(d, MEASURES[given[0].measure], given[0].heard, event)
    elif (
        (asked is None and (answers.directed_weight(d, event, text) or answers.ask_which(d, text)))
        or everyday.about_the_week(d, text)
        or everyday.hand_on(d, text)
    ):
        pass
    elif d.asking is None or isinstance(d.asking, Awaiting):
        help_and_menu.not_sure(d)
    elif isinstance(d.asking, Enrolling):
        enrolment.unclear(d, d.asking)
    else:
        d.say(m.NotRead())
        open_question.put_again(d)


def _is_none(d: ClientStep, text: str, asked: Measure) -> bool:
    """Whether a text says that there was none, rather than no."""
    said = bare_words(plain(text))
    no = bare_words(plain(d.words.intents[Intent.NO][0]))
    if said == no:  # "no" leaves the question out
        return False
    if said[: len(no)] == no:  # "no, none" is a number, "no wait" is not
        text = " ".join(said[len(no) :])
    return any(isinstance(a.heard, Understood) and not a.heard.value for a in answers.readings_in(d, text, asked))


def _offers(given: Sequence[Given]) -> bool:
    """Whether a text that was not understood has a likely meaning."""
    return any(isinstance(a.heard, Misunderstood) and (a.heard.guess or a.heard.either) for a in given)


def _asks_back(d: ClientStep, heard: Misunderstood) -> bool:
    """Whether to ask back about a measure: it is asked for, or there is a likely meaning to offer."""
    if heard.guess is not None:
        return True
    return isinstance(d.asking, Awaiting) or (d.asking is None and bool(heard.either))


def _of_health(d: ClientStep, event: Text, text: str, said: HealthSaid) -> bool:
    """Note what a message says of the client's health; readings in the rest of it are taken as usual."""
    open_before = d.asking
    noted = health.heard(d, said.facts)
    health.settle(d)
    asked = buttons.asked_measure(d)
    found = answers.readings_in(d, said.rest, asked) if said.rest else ()
    given = tuple(a for a in found if isinstance(a.heard, Understood))
    if given:
        answers.take_answers(d, event, given, asked)
    asks = health.ask_first(d, said.facts)
    if not (noted or given or asks):
        return False
    if _coach_wrote_recently(d):
        coach_thread.pass_on(d, text, reply=True)
    if noted and not given and d.asking == open_before:
        put_again(d)
    return True


def _where(d: ClientStep, text: str, intent: Intent | None) -> str:
    """The place somebody says they are in: "I am in Lisbon", or "in Spain this week"; "" if it is none."""
    if intent is Intent.ZONE:
        named = place(text, d.words)
        return named if named is not None and d.facts.find_zones(named) else ""
    if intent is not None:
        return ""
    town = place_first(text, d.words)
    known = town is not None and len(d.facts.find_zones(town)) == 1
    return town if town and known and stay(text, d.words, d.today) is not None else ""


def _is_no_place(d: ClientStep, text: str) -> bool:
    """Whether what follows "I am in" is long and no place: "I'm in bed with my back"."""
    named = place(text, d.words)
    return bool(named) and not d.facts.find_zones(named or "") and len(bare_words(plain(text))) > A_PLACE


def _tries(heard: Understood | Misunderstood) -> bool:
    """Whether a text tries to be an answer: it has a number, or what could be one."""
    return isinstance(heard, Understood) or heard.why is not Why.NO_NUMBER or heard.guess is not None


def _denied_unprompted(d: ClientStep) -> None:
    """An unprompted denial ("no chest pain"): good to hear; an open question stays open."""
    d.say(m.StoodDown())
    put_again(d)


def _coach_wrote_recently(d: ClientStep) -> bool:
    """Whether the coach has written recently, so that plain text is a reply."""
    return d.state.word_until is not None and d.now < d.state.word_until


def _fits_open(d: ClientStep, rest: str) -> bool:
    """Whether "no, 82.4" answers a doubtful value that is being confirmed."""
    return isinstance(d.asking, Confirming) and not d.asking.replaces


# --- commands and timers ----------------------------------------------------------------------------------------


def _command(d: ClientStep, event: Command) -> None:
    row = COMMANDS.named(event.name)
    if (
        event.argument
        and (row is None or row.argument is not Argument.LINK)
        and _danger(d, Text(event.at, event.argument, event.ref))
    ):
        if event.name == "coach" and d.facts.consented:  # words for the coach reach them unchanged, when the flag does
            alarm = recognise(event.argument, d.words)
            deputy = coach_thread.answers_go_to(d)
            urgent = alarm is not None and not may_wait(alarm.level, alarm.sign)
            d.do(PassOn(event.argument, urgent=urgent, to=deputy[0] if deputy else 0))
        return
    stage = Stage.ENROLLED if row is None else row.stage
    if stage is not Stage.ARRIVED and not d.facts.consented:
        enrolment.ask_consent(d, d.facts.name, d.facts.coach_name)
    elif stage is Stage.ENROLLED and isinstance(d.asking, Enrolling) and not d.asking.measure:
        needed.say_question(d, d.asking)
    elif row is None:
        d.say(NotForThisRole())
    elif row.argument is Argument.TEXT and event.argument:
        _other_text(d, Text(event.at, event.argument, event.ref), event.argument)
    else:
        row.act(d, event.argument)
        if event.name == "coach" and event.argument:
            health.overhear(d, event.argument)


def _timer_fired(d: ClientStep, event: TimerFired) -> None:
    match event.purpose:
        case "follow_up":
            pausing.follow_up(d, event.mark)
        case "snooze":
            pausing.snoozed(d)
        case "pressure":
            home_bp_week.prompted(d, event)
        case "pressure_end":
            home_bp_week.week_over(d, event.at)
        case effects.SIGN_UNANSWERED:
            safety.still_unanswered(d)
        case effects.TURNED_AWAY:
            enrolment.turned_away_for_long(d)
        case effects.NEXT_MORNING:
            safety.ask_how_it_is(d, event.late_by)
        case effects.HOME:
            settings.home_again(d)
        case "resume":
            d.do(ChangeClient("status", Status.ACTIVE), ChangeClient("paused_until", None))
            d.say(m.Resumed(d.next_slot()))
        case _:
            pass
