"""Everyday questions, answered from what the bot knows: short, true, with the source at hand. What it does not know it
says, and offers to pass the words on to the coach. A question is never stored as a reading."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from decimal import Decimal

from core.dialogue.client import (
    answers,
    check_in,
    coach_thread,
    corrections,
    help_and_menu,
    intents,
    looking_back,
    pausing,
    progress_and_goals,
    readings,
    safety,
    settings,
    timed_counts,
)
from core.dialogue.client import messages as m
from core.dialogue.client.effects import Amend
from core.dialogue.client.needed import FIRST_RATING
from core.dialogue.client.open_question import put_again
from core.dialogue.client.states import AlarmAsked, Awaiting, Confirming, Setting
from core.dialogue.client.step import ClientStep
from core.dialogue.client.weighing_guard import guard_decision
from core.dialogue.kit.effects import Choice
from core.judging import chart_data
from core.judging.change import Change
from core.language import Intent
from core.language.days import day_of_week, since
from core.language.intents import intent_of, weekday_and_time
from core.language.lexicon import Question
from core.language.questions import Asked, asked, ends_as_a_question, is_a_remark, is_wordy, looks_like_a_question
from core.measures import MEASURES
from core.measures.measure import BodySize, Measure, MeasureKind, Understood
from core.measures.weight import WEIGHT
from core.quantity import Amount, Unit
from core.reading import How, Reading
from core.references.weight_variation import SOURCES as WEIGHT_SWINGS
from core.understanding.answers_in_text import correction, names_in, whole_numbers
from core.watching.weighing_guard import EARLY, GuardStep

BEGINS_WITH_NO = frozenset(  # "no quiero pesarme": more than the no it begins with
    {Question.NO_WEIGHT, Question.NO_TOOL, Question.NOT_NOW, Question.BODY, Question.GRIEF}
)
FOR_WHO_WROTE = frozenset(  # small talk, meant for a coach who has just written
    {
        Question.GLAD,
        Question.BYE,
        Question.SORRY,
        Question.CHAT,
        Question.HOW_ARE_YOU,
        Question.THERE,
        Question.WAIT,
    }
)
ANSWERED_BY_READING = frozenset(  # sent with it
    {Question.GOOD, Question.MEANING, Question.LAST, Question.CHANGED, Question.GLAD, Question.SORRY, Question.WAIT}
)
SAYS_IT_ALL = frozenset(  # no reminder behind it
    {
        Question.NEXT,
        Question.BYE,
        Question.SWEARING,
        Question.GLAD,
        Question.GOAL,
        Question.GRIEF,
        Question.ILL,
        Question.NO_WEIGHT,
        Question.NOT_NOW,
        Question.RESCHEDULE,
        Question.TAKE_OUT,
        Question.TIME_ME,
        Question.WAIT,
    }
)
MOST_SOURCES = 3
SAME_WEEK = timedelta(days=1)  # after a check-in: what is written then is about its week
LONGEST_NOTE = 500  # characters
ANSWERS_TO_US = (Intent.YES, Intent.NO, Intent.WELL, Intent.NOT_WELL, Intent.SAME, Intent.DIFFERENT, Intent.DONE)


def question(d: ClientStep, text: str) -> Asked | None:
    """The everyday question of a text; None if it is none, or answers ours."""
    asking = d.asking
    if isinstance(asking, AlarmAsked) or (isinstance(asking, Setting) and asking.what == "word"):
        return None
    found = asked(text, d.words, d.facts.coach_name)
    if found is None:
        return None
    answers_us = asking is not None and intent_of(text, d.words) in ANSWERS_TO_US
    if answers_us and found.question not in BEGINS_WITH_NO:
        return None
    if found.question in (Question.SORRY, Question.WAIT) and correction(text, d.words) is not None:
        return None  # "sorry, 82.6"
    return found


def rest_with_reading(d: ClientStep, found: Asked) -> str:
    """What else the message says, if that holds a reading."""
    return found.rest if found.rest and _reads(d, found.rest) else ""


def _reads(d: ClientStep, text: str) -> bool:
    asked_now = MEASURES.get(d.asking.measure) if isinstance(d.asking, Awaiting | Confirming) else None
    return any(isinstance(a.heard, Understood) for a in answers.readings_in(d, text, asked_now))


def answer(d: ClientStep, found: Asked, text: str) -> None:
    """Answer a question, then put the open one again."""
    if found.number and found.question is Question.GOOD and not _says_last(d, text):
        (_normal if _named(d, text) else _not_stored)(d, text)
    else:
        ANSWERS[found.question](d, text)
    if isinstance(d.asking, Setting) and d.asking.what == "undo" and found.question is not Question.TAKE_OUT:
        d.ask(d.asking.back)  # a yes after something else must not take anything back
    if found.question not in SAYS_IT_ALL:
        remind(d)


def _not_stored(d: ClientStep, text: str) -> None:
    d.say(m.NotStored())


def _says_last(d: ClientStep, text: str) -> bool:
    """Whether the number in a text is that of the reading it is about: "is 94 good?", after 94."""
    reading = _meant(d, text)
    return reading is not None and int(reading.value) in whole_numbers(text, d.words)


def remind(d: ClientStep) -> None:
    """Say briefly what is open: a measure by its name, anything else as it was asked."""
    if isinstance(d.asking, Awaiting):
        measure = MEASURES[d.asking.measure]
        d.say(m.StillOpen(measure.key), *check_in.buttons(d, measure))
    elif not isinstance(d.asking, Setting):
        put_again(d)


def about_the_week(d: ClientStep, text: str) -> bool:
    """Keep a line about the week with its answers, for the coach, and put an open question again; False if nothing was
    answered lately that it could be kept with."""
    snoozing = isinstance(d.asking, Setting) and d.asking.what == "snooze"  # when to ask again can wait
    if not (snoozing or isinstance(d.asking, Awaiting | None)) or ends_as_a_question(text):
        return False
    if looks_like_a_question(text, d.words) or not (
        is_wordy(text, few=True) if d.asking is None else is_a_remark(text)
    ):
        return False
    since = min(d.today - SAME_WEEK, d.state.day or d.today)
    lately = [r for r in d.facts.history if r.counts and d.facts.local(r.taken_at).date() >= since]
    rated = [r for r in lately if r.measure == FIRST_RATING.key] or (lately if d.asking is not None else [])
    if not rated:
        return False
    reading = rated[-1]
    words = f"{reading.conditions.words} / {text}" if reading.conditions.words else text
    changed = replace(reading, conditions=replace(reading.conditions, words=words[:LONGEST_NOTE]))
    d.do(Amend(reading.key, changed))
    d.say(m.WeekNoted(d.facts.coach_name))
    if snoozing:
        put_again(d)
    remind(d)
    return True


def hand_on(d: ClientStep, text: str) -> bool:
    """Offer the coach what nobody here can answer; False if the text says too little, or there is no coach."""
    if not d.facts.coach_name or not (looks_like_a_question(text, d.words) or (d.asking is None and is_wordy(text))):
        return False
    coach_thread.offer(d, text, "unknown")
    return True


# --- which reading is meant -------------------------------------------------------------------------------------


def _named(d: ClientStep, text: str) -> str:
    known = names_in(text, d.words)
    return next((key for key in (*d.facts.plan.measures, *MEASURES) if key in known), "")


def _last(d: ClientStep) -> Reading | None:
    """The reading spoken of last; else the newest that counts."""
    written = (readings.by_key(d, w.key) for w in reversed(d.state.written))
    return next((r for r in written if r is not None), next((r for r in reversed(d.facts.history) if r.counts), None))


def _meant(d: ClientStep, text: str) -> Reading | None:
    """The reading a question is about: of the measure it names, else the last."""
    if key := _named(d, text):
        taken = d.facts.of(key)
        return taken[-1] if taken else None
    return _last(d)


def _measure(d: ClientStep, text: str) -> Measure | None:
    """The measure a question is about: named, asked for at the moment, or spoken of last."""
    asking = d.asking
    open_now = asking.measure if isinstance(asking, Awaiting | Confirming) else ""
    last = _last(d)
    return MEASURES.get(_named(d, text) or open_now or (last.measure if last is not None else ""))


def _say(d: ClientStep, message: object, sources: tuple[str, ...]) -> None:
    """Say something that leans on sources, which a button shows."""
    d.become(sources=sources)
    d.say(message, *(((Choice("source", "src"),),) if sources else ()))


def _plain(key: str) -> Callable[[ClientStep, str], None]:
    return lambda d, _: d.say(m.Plainly(key, d.facts.coach_name, d.emergency_number))


def _offered(why: str) -> Callable[[ClientStep, str], None]:
    def say(d: ClientStep, text: str) -> None:
        if d.facts.coach_name:
            coach_thread.offer(d, text, why)
        else:
            d.say(m.Plainly(why, "", d.emergency_number))

    return say


# --- answers ----------------------------------------------------------------------------------------------------


def _good(d: ClientStep, text: str) -> None:
    """Band, then change, of the reading meant; honest where no table fits."""
    reading = _meant(d, text)
    if reading is None or reading.measure not in MEASURES:
        _no_reading(d, _named(d, text))
        return
    measure = MEASURES[reading.measure]
    if reading.how is How.EARLY:
        _weigh(d, text) if measure.guarded else d.say(m.ChanceMeans(measure.key, None))
        return
    if d.hidden(measure):
        d.say(m.OnlyCoachSees(measure.key, d.facts.coach_name))
        return
    if measure.kind is MeasureKind.RATING:
        d.say(m.Plainly("rating", d.facts.coach_name))
        return
    if measure.series and d.state.pressure is not None:  # what it means is said when the week is over
        d.say(_value(d, measure, reading))
        d.say(m.Plainly("one_of_a_week", d.facts.coach_name))
        return
    found = readings.assessed(d, measure, reading)
    band = answers.band_for(d, measure, reading, found)
    sources = [band.source] if band is not None else []
    if measure.error is not None and found.verdict is not None:
        sources.append(measure.error.source.key)
    d.become(sources=tuple(sources))
    d.say(_value(d, measure, reading), *(((Choice("source", "src"),),) if sources else ()))
    d.say(band if band is not None else m.NoUsual(measure.key))
    if found.verdict is not None:
        d.say(readings.verdict_said(d, measure, found))


def _value(d: ClientStep, measure: Measure, reading: Reading, first: bool = False) -> m.LastReading:
    day = d.facts.local(reading.taken_at).date()
    return m.LastReading(measure.key, d.shown(measure, reading.value), reading.second, day, first)


def _no_reading(d: ClientStep, key: str) -> None:
    if key:
        asked_now = isinstance(d.asking, Awaiting) and d.asking.measure == key
        d.say(m.NoReadingYet(key, None if asked_now else d.next_slot()))
    elif isinstance(d.asking, Awaiting):
        check_in.today(d)
    else:  # what is not due is not begun by a question about it
        d.say(m.NoReadingYet(next(iter(d.facts.plan.measures)), d.next_slot()))


def _meaning(d: ClientStep, text: str) -> None:
    reading = _meant(d, text)
    measure = MEASURES.get(reading.measure) if reading is not None else None
    if reading is None or measure is None or not reading.counts or d.hidden(measure):
        d.say(m.ChanceMeans("", None))
        return
    verdict = readings.assessed(d, measure, reading).verdict
    error = None if verdict is None or verdict.chance is None else d.shown(measure, verdict.chance)
    source = () if measure.error is None else (measure.error.source.key,)
    _say(d, m.ChanceMeans(measure.key, error), source)


def _why_test(d: ClientStep, text: str) -> None:
    measure = _measure(d, text)
    if measure is None:
        help_and_menu.help_(d)
        return
    sources = tuple(source.key for source in measure.sources[:MOST_SOURCES])
    _say(d, m.WhyMeasure(measure.key), sources)


def _normal(d: ClientStep, text: str) -> None:
    """The published range for this person, if there is one."""
    measure = _measure(d, text)
    if measure is None:
        help_and_menu.help_(d)
        return
    if d.hidden(measure):
        d.say(m.OnlyCoachSees(measure.key, d.facts.coach_name))
        return
    if measure.series:
        limit, source = chart_data.home_limit(d.facts.profile, d.facts.profile.age_on(d.today))
        if limit is not None:
            high = Amount(limit.systolic, Unit.MILLIMETRE_OF_MERCURY)
            _say(d, m.UsualFor(measure.key, None, high, limit.diastolic), (source,))
            return
    usual = chart_data.usual(measure, _any_reading(d, measure), d.facts.profile, d.unit(measure))
    if usual is None:
        d.say(m.NoUsual(measure.key))
        return
    low, high_end = (None if x is None else Amount(x, d.unit(measure)) for x in (usual.low, usual.high))
    _say(d, m.UsualFor(measure.key, low, high_end), (usual.source,))


def _any_reading(d: ClientStep, measure: Measure) -> Reading:
    """The last reading, or one in the middle: a table is looked up by a value, and shows its ranges then."""
    taken = d.facts.of(measure.key)
    if taken:
        return taken[-1]
    low, high = measure.bounds.usual.low or Decimal(0), measure.bounds.usual.high
    return Reading(measure.key, low if high is None else (low + high) / 2, d.now)


def _weigh(d: ClientStep, text: str) -> None:
    """What the guard would say, before anything is on the scales."""
    found = guard_decision(d)
    coach = d.facts.coach_name
    match found.step:
        case GuardStep.WELCOME:
            d.say(m.WeighToday("yes", coach))
        case GuardStep.DIRECTED:
            d.say(m.WeighToday("directed", coach))
        case GuardStep.LEFT_OUT:
            d.say(m.WeighToday("left_out", coach))
        case _ if found.step in EARLY:
            _say(d, m.WeighToday("wait", coach, found.opens), tuple(source.key for source in WEIGHT_SWINGS))


def _often(d: ClientStep, text: str) -> None:
    _say(d, m.Plainly("how_often", d.facts.coach_name), tuple(source.key for source in WEIGHT_SWINGS))


def _doing(d: ClientStep, text: str) -> None:
    """Every measure by its verdict, as it was told; numbers and hidden ones left out."""
    found = looking_back.shelves(d)
    same = (*found["steps"], *found["same"])
    said = m.Doing(found["better"], same, found["changed"], found["worse"], found["early"], found["unsure"])
    d.say(said, (Choice("progress", "set:progress"),))


def _since(d: ClientStep, text: str) -> None:
    day = since(text, d.words, d.today)
    progress_and_goals.progress(d, _named(d, text), day.isoformat() if day is not None else "")


def _changed(d: ClientStep, text: str) -> None:
    """What the record says of a change, which is not what the scales said this morning."""
    measure = MEASURES[_named(d, text) or "weight"]
    if d.hidden(measure):
        d.say(m.OnlyCoachSees(measure.key, d.facts.coach_name))
        return
    taken = d.facts.of(measure.key)
    if not taken:
        d.say(m.NoReadingYet(measure.key, d.next_slot()))
        return
    found = readings.assessed(d, measure, taken[-1])
    if len(taken) == 1 or found.verdict is None or found.verdict.kind is Change.NO_BASELINE:
        d.say(m.OnlyOne(measure.key, d.due_on(measure.key, taken[-1].taken_at)))
        return
    d.say(m.ByRecord())
    sources = () if measure.error is None else (measure.error.source.key,)
    _say(d, readings.verdict_said(d, measure, found), sources)


def _value_said(d: ClientStep, text: str, *, first: bool) -> None:
    reading = _last(d) if not _named(d, text) else None
    if reading is None:
        measure = _measure(d, text)
        taken = d.facts.of(measure.key) if measure is not None else ()
        if measure is None or not taken:
            _no_reading(d, measure.key if measure is not None else "")
            return
        reading = taken[-1]
    measure = MEASURES[reading.measure]
    if d.hidden(measure):
        d.say(m.OnlyCoachSees(measure.key, d.facts.coach_name))
    elif not reading.counts:
        d.say(m.WeighToday("wait", d.facts.coach_name, guard_decision(d).opens))
    else:
        reading = d.facts.of(measure.key)[0] if first else reading
        d.say(_value(d, measure, reading, first))


def _over(d: ClientStep, text: str) -> None:
    running = [c for c in d.facts.cohorts if c.last >= d.today]
    for cohort in running:
        d.say(m.EndOf(cohort.name, cohort.last))
    if not running:
        d.say(m.NoEnd(d.facts.coach_name, d.next_slot()))


def _swearing(d: ClientStep, text: str) -> None:
    word = Choice("word_to_coach", "word", d.facts.coach_name)
    d.say(m.Plainly("swearing", d.facts.coach_name), (Choice("pause", "set:pause"), word))


def _time_me(d: ClientStep, text: str) -> None:
    measure = MEASURES.get(d.asking.measure) if isinstance(d.asking, Awaiting) else None
    if measure is not None and measure.protocol.timers:
        timed_counts.offer(d, measure)
    else:
        d.say(m.Plainly("nothing_to_time", d.facts.coach_name))
        remind(d)


def _grief(d: ClientStep, text: str) -> None:
    word = Choice("word_to_coach", "word", d.facts.coach_name)
    d.say(m.Plainly("grief", d.facts.coach_name), (Choice("pause", "set:pause"), word))


def _body(d: ClientStep, text: str) -> None:
    d.say(m.Plainly("body", d.facts.coach_name), (Choice("word_to_coach", "word", d.facts.coach_name),))


def _may_send(d: ClientStep, text: str) -> None:
    if _named(d, text) == WEIGHT.key:
        _weigh(d, text)
    else:
        d.say(m.Plainly("may_send", d.facts.coach_name))


def _no_tool(d: ClientStep, text: str) -> None:
    """A string serves as a tape; everything else can be left out."""
    asked_now = MEASURES.get(d.asking.measure) if isinstance(d.asking, Awaiting) else None
    if asked_now is not None and asked_now.body is BodySize.GIRTH:
        intents.card(d, asked_now.key, ruler=True)
    else:
        d.say(m.Plainly("no_tool", d.facts.coach_name))


def _another_time(d: ClientStep, text: str) -> None:
    """A new day or time that is named is set at once; else it is asked."""
    day, at = weekday_and_time(text, d.words)
    two_days = day is not None and day_of_week(text, d.words, d.today) != day  # "not on Monday, on Wednesday"
    if (day is None and at is None) or two_days:
        settings.change(d, Intent.SLOT.value)
        return
    asking = Setting(Intent.SLOT.value, "", d.asking.back if isinstance(d.asking, Setting) else d.asking)
    d.ask(asking)
    settings.typed_setting(d, asking, text)


def _take_out(d: ClientStep, text: str) -> None:
    corrections.undo(d, names_in(text, d.words))


def _bye(d: ClientStep, text: str) -> None:
    d.say(m.Plainly("bye", d.facts.coach_name))
    if d.asking is None and (following := d.next_slot()) is not None:
        d.say(m.CheckInDone(following))


ANSWERS: dict[Question, Callable[[ClientStep, str], None]] = {
    Question.MEDICAL: _offered("medical"),
    Question.FOOD: _offered("food"),
    Question.CAN_STOP: _plain("can_stop"),
    Question.ABOUT: _plain("about"),
    Question.ILL: lambda d, _: safety.ill(d),
    Question.RESCHEDULE: _another_time,
    Question.TAKE_OUT: _take_out,
    Question.NO_TOOL: _no_tool,
    Question.WAIT: _plain("wait"),
    Question.TIME_ME: _time_me,
    Question.CHAT: _plain("chat"),
    Question.SORRY: _plain("sorry"),
    Question.BODY: _body,
    Question.GRIEF: _grief,
    Question.GOAL: lambda d, _: progress_and_goals.goal(d),
    Question.NO_WEIGHT: lambda d, _: settings.change(d, "numbers"),
    Question.MAY_SEND: _may_send,
    Question.NOT_NOW: lambda d, _: pausing.later(d),
    Question.FREE: _plain("free"),
    Question.WHO_SEES: _plain("who_sees"),
    Question.FOR_COACH: _offered("for_coach"),
    Question.WHO: _plain("who"),
    Question.HOW_ARE_YOU: _plain("how_are_you"),
    Question.THERE: _plain("there"),
    Question.PHOTO: _plain("photo"),
    Question.HOW_LONG: _plain("how_long"),
    Question.HOW_OFTEN: _often,
    Question.MUST: _plain("must"),
    Question.MISSED: _plain("missed"),
    Question.WEIGH: _weigh,
    Question.CHANGED: _changed,
    Question.SINCE: _since,
    Question.FIRST: lambda d, text: _value_said(d, text, first=True),
    Question.LAST: lambda d, text: _value_said(d, text, first=False),
    Question.OVER: _over,
    Question.NEXT: lambda d, _: check_in.today(d),
    Question.NORMAL: _normal,
    Question.WHY_TEST: _why_test,
    Question.MEANING: _meaning,
    Question.DOING: _doing,
    Question.GOOD: _good,
    Question.SWEARING: _swearing,
    Question.BYE: _bye,
    Question.GLAD: _plain("glad"),
}
