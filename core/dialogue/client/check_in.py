"""One check-in: its questions, their order, and how each is put."""

from __future__ import annotations

from datetime import date, timedelta
from decimal import Decimal

from core import schedule
from core.care import Status
from core.dialogue.client import help_and_menu, looking_back, needed, programme
from core.dialogue.client import messages as m
from core.dialogue.client.effects import Answered, CancelTimer, Lower, NotAsked, Raise, SetTimer
from core.dialogue.client.encouragement import OF_A_REGULAR, OF_THE_SLOT, OPENINGS, PRAISES
from core.dialogue.client.states import Asking, Awaiting, Enrolling, Gate, PressureWeek, Setting
from core.dialogue.client.step import ClientStep
from core.dialogue.client.week_messages import AnotherDay
from core.dialogue.kit.effects import Choice, Rows
from core.dialogue.kit.events import Due
from core.dialogue.kit.step import rows_of
from core.judging import readiness
from core.judging.start import counted_from
from core.measures import ALWAYS_ASKED, CHECK_IN_ORDER, MEASURES
from core.measures.blood_pressure import BLOOD_PRESSURE
from core.measures.cautions import ASK_FIRST
from core.measures.measure import BodySize, Measure, MeasureKind
from core.measures.resting_heart_rate import RESTING_HEART_RATE
from core.reading import How
from core.watching.flags import ClientWeek, Code, Ended, WhatFollowed, cleared, flag, flags_of_week

PRESSURE_DAYS = 7
OTHER_DAY = "another_day"  # of `State.cautioned`
LATE_TIMES, LATEST = 3, 4  # check-ins answered late on one weekday; days late at most
HINT_EVERY = 4  # check-ins: how often it is said that a line about the week is welcome
RETESTED = (MeasureKind.BODY, MeasureKind.FUNCTION)
ASKED_IN_VAIN = 2  # check-ins
STARTS_AGAIN = "starts_again"  # of what was told in a check-in
TOLD_AGAIN_AFTER = 4  # ours, check-ins: a coach who has dealt with it need not do so every week


def due(d: ClientStep, event: Due) -> None:
    """The weekly slot is due."""
    if d.facts.status is not Status.ACTIVE:
        return
    lateness = schedule.late_policy(event.late_by)
    if lateness is schedule.Lateness.NOT_ASKED:
        d.do(NotAsked(event.day.isoformat()))
        return
    if programme.is_overdue(d.facts.plan, event.day):
        d.do(NotAsked(event.day.isoformat()))
        programme.finish(d, not_asked=event.day)
        return
    if d.facts.plan.programme is not None and d.facts.plan.programme.ended is not None:  # after a break
        programme.begin(d)
        programme.say_running(d)
    late = int(event.late_by / timedelta(hours=1)) if lateness is schedule.Lateness.APOLOGISE else 0
    watch_week(d)
    watch_retests(d, event.day)
    open_check_in(d, event.day, late=late, occasion=f"reminder/{d.facts.client_id}/{event.day.isoformat()}")
    d.do(SetTimer("follow_up", schedule.follow_up(d.now, d.facts.zone), event.day.isoformat()))


def watch_week(d: ClientStep) -> None:
    """Once a week: flag silence, and clear flags that expire with time."""
    d.do(*(Raise(f) for f in flags_of_week(ClientWeek(missed=d.facts.missed), d.now)))
    early = [r.taken_at for r in d.weights() if r.how is How.EARLY]
    again = early[-1] if early else None
    for open_flag in d.facts.flags:
        weighing = open_flag.code == Code.WEIGHING_OFTEN
        if cleared(Code(open_flag.code), open_flag.since, WhatFollowed(again_at=again if weighing else None), d.now):
            d.do(Lower(open_flag.code, open_flag.measure, Ended.TIME))


def watch_retests(d: ClientStep, day: date) -> None:
    """Flag a retest that stood in two check-ins that were answered, and was given in neither. One that nobody saw,
    because the check-in itself was not answered, is not counted. The number of an open flag is kept current."""
    before = dict(d.state.owed)
    owed = []
    for key in agenda_for(d, day):
        if MEASURES[key].kind not in RETESTED or not d.facts.of(key) or d.starts_again(key, day):
            continue
        times = before.get(key, -1) + (key not in before or not d.facts.missed)
        owed.append((key, times))
        told = any(f.code == Code.RETEST_MISSED and f.measure == key for f in d.facts.flags)
        again = times >= ASKED_IN_VAIN and (times - ASKED_IN_VAIN) % TOLD_AGAIN_AFTER == 0
        if (again or told) and not d.facts.missed:
            d.do(Raise(flag(Code.RETEST_MISSED, d.now, key, times=Decimal(times))))
    d.become(owed=tuple(owed))


def agenda_for(d: ClientStep, day: date) -> tuple[str, ...]:
    """The questions of the check-in of `day`, in order: how the week was, then what is due, tests last."""
    wanted = asked_of(d)
    return tuple(key for key in CHECK_IN_ORDER if key in wanted and askable(d, MEASURES[key]) and is_due(d, key, day))


def asked_of(d: ClientStep) -> set[str]:
    """Measures this client's check-ins may ask: the plan, those asked of everybody, and a question of their own."""
    own = (key for key, measure in MEASURES.items() if measure.client_words)
    return {*ALWAYS_ASKED, *d.facts.plan.measures, *own}


def askable(d: ClientStep, measure: Measure) -> bool:
    """Whether a measure is not derived and not excluded for this person."""
    if measure.kind is MeasureKind.DERIVED or (measure.client_words and not _own_words(d, measure)):
        return False
    if measure.must_not and measure.kind is MeasureKind.FUNCTION and needed.left_open(d, "cautions"):
        return False  # nobody can say that it is safe for them
    agreed = agreed_to(d, measure)
    if any(x.key == ASK_FIRST for x in measure.must_not) and not agreed and _doctor_first(d):
        return False
    return not any(
        x.caution in d.facts.profile.cautions and not (agreed and x.key == ASK_FIRST) for x in measure.must_not
    )


def agreed_to(d: ClientStep, measure: Measure) -> bool:
    """Whether a clinician has approved this test, says the coach."""
    return measure.key in d.facts.plan.cleared


def _doctor_first(d: ClientStep) -> bool:
    """Whether a test of exertion waits: they should see a doctor first, or left the signs open."""
    verdict = readiness.verdict(d.facts.readiness, d.facts.profile)
    return verdict is readiness.Verdict.DOCTOR_FIRST or (verdict is None and "signs" in d.state.met)


def _own_words(d: ClientStep, measure: Measure) -> bool:
    """Whether a question of the client's own is there, or can still be asked for."""
    coming = measure.key in d.facts.plan.measures and bool(needed.for_measure(d, measure))
    return bool(d.facts.plan.own_question) or coming


def is_due(d: ClientStep, key: str, day: date) -> bool:
    measure, taken = MEASURES[key], d.facts.of(key)
    if measure.body is BodySize.STATURE and d.facts.profile.stature is not None:
        return False
    if d.starts_again(key, day):
        return True
    last = counted_from(measure, d.begun(key) or taken[-1:])
    return schedule.retest_due(key, last, d.facts.plan.interval(key), day, d.facts.zone)


def open_check_in(d: ClientStep, day: date, *, late: int = 0, occasion: str | None = None) -> None:
    """Greet and ask the first question. A check-in that is still open is closed; its questions are asked again. At a
    slot that was promised there is always the first question, even if all else was answered a few days ago."""
    agenda = agenda_for(d, day)
    if not agenda and occasion is not None and not _given_today(d):
        agenda = (needed.FIRST_RATING.key,)
    d.become(asking=None, agenda=agenda, day=day, noted=(), told=())
    if not agenda:
        d.say(m.NotToday(d.next_slot()))
        d.become(day=None)
        return
    opening = pick(d, OPENINGS, _untrue(d, at_the_slot=occasion is not None and not late))
    d.say(m.CheckInOpens(opening, late), said=opening, occasion=occasion)
    ask_next(d)


def _given_today(d: ClientStep) -> bool:
    taken = d.facts.of(needed.FIRST_RATING.key)
    return bool(taken) and d.facts.local(taken[-1].taken_at).date() == d.today


def _untrue(d: ClientStep, *, at_the_slot: bool) -> frozenset[str]:
    """Openings that would not be true: "again" of the first, "same hour" of one that comes at another."""
    first = not d.facts.of(needed.FIRST_RATING.key)
    return (OF_A_REGULAR if first else frozenset()) | (frozenset() if at_the_slot else OF_THE_SLOT)


def pick(d: ClientStep, keys: tuple[str, ...], without: frozenset[str] = frozenset()) -> str:
    """A key not used in the last eight weeks; deterministic, with a different start for each client and week."""
    start = (d.facts.client_id * 7 + d.today.toordinal() // 7) % len(keys)
    turned = [key for key in keys[start:] + keys[:start] if key not in without]
    return next((k for k in turned if k not in d.facts.said), turned[0])


def ask_next(d: ClientStep, *, quietly: bool = False) -> None:
    """Put the next question of the agenda, or close the check-in. quietly: see `close`."""
    if not d.state.agenda:
        last = d.state.day is not None and d.facts.plan.closes_on(d.state.day)
        if d.state.day is not None and not quietly and not last and (first := needed.before_exercise(d)):
            needed.put(d, Enrolling(first[0], measure=needed.BEFORE_EXERCISE))
            return
        close(d, quietly=quietly)
        return
    key, *rest = d.state.agenda
    measure = MEASURES[key]
    if too_high := _too_high_at_rest(d, measure):
        d.become(agenda=tuple(rest))
        d.say(m.RestTooHigh(key, tuple(sorted(too_high))))
        ask_next(d, quietly=quietly)
        return
    if missing := needed.for_measure(d, measure):  # the measure stays on the agenda meanwhile
        needed.put(d, Enrolling(missing[0], missing[1:], measure=key))
        return
    if measure.kind is MeasureKind.FUNCTION and (first := needed.before_exercise(d)):
        needed.put(d, Enrolling(first[0], measure=key))
        return
    if measure.kind is MeasureKind.FUNCTION and d.state.gate_passed != d.today:
        d.ask(Gate())
        d.say(m.GateWell(), (Choice("well_yes", "gate:well"), Choice("well_no", "gate:unwell")))
        return
    d.become(agenda=tuple(rest))
    if measure.series:
        if not (d.state.day is not None and d.facts.plan.closes_on(d.state.day)):  # nothing is asked after the last one
            open_pressure_week(d)
        ask_next(d)
        return
    ask(d, measure)


def _too_high_at_rest(d: ClientStep, measure: Measure) -> frozenset[str]:
    """Why a test must not start: the last pulse and pressure of today, if they were taken."""
    if measure.rest_limits is None:
        return frozenset()
    today = {r.measure: r for r in d.facts.history if r.counts and d.facts.local(r.taken_at).date() == d.today}
    pulse, pressure = today.get(RESTING_HEART_RATE.key), today.get(BLOOD_PRESSURE.key)
    return measure.rest_limits(
        pulse.value if pulse is not None else None,
        pressure.value if pressure is not None else None,
        pressure.second if pressure is not None else None,
    )


def ask(d: ClientStep, measure: Measure, tries: int = 0) -> None:
    """Put one question."""
    d.ask(Awaiting(measure.key, tries))
    if measure.client_words:
        d.say(m.AskOwn(d.facts.plan.own_question), *buttons(d, measure))
        return
    first = not d.facts.of(measure.key) and measure.kind in (MeasureKind.BODY, MeasureKind.FUNCTION)
    attempts = measure.protocol.attempts_to_name
    weekly = measure.kind in (MeasureKind.RATING, MeasureKind.ACTIVITY) and d.facts.of(measure.key)
    turn = d.today.toordinal() // 7 if weekly else 0
    again = STARTS_AGAIN not in d.state.told and d.starts_again(measure.key, d.state.day or d.today)
    if again:  # why it comes so soon is said once in a check-in
        d.become(told=(*d.state.told, STARTS_AGAIN))
    d.say(m.Ask(measure.key, d.asked_in(measure), first, attempts, turn, again), *buttons(d, measure))


def buttons(d: ClientStep, measure: Measure) -> Rows:
    """The buttons under a question: quick answers, help, and a way out."""
    out = (Choice("later", "later"), Choice("skip", "skip"))
    if measure.kind is MeasureKind.RATING:
        return (*rows_of(*(Choice("number", f"n:{n}", str(n)) for n in range(11)), width=6), out)
    if measure.kind is MeasureKind.ACTIVITY:
        return (*rows_of(*(Choice("number", f"n:{n}", str(n)) for n in measure.quick), width=6), out)
    how = [Choice("how", f"how:{measure.key}")]
    if measure.protocol.timers:
        how.append(Choice("time_it", f"time:{measure.key}"))
    return (tuple(how), out)


def open_pressure_week(d: ClientStep) -> None:
    """Start a home series tomorrow: two prompts a day for seven days."""
    first = d.today + timedelta(days=1)
    last = first + timedelta(days=PRESSURE_DAYS - 1)
    d.become(pressure=PressureWeek(first, last))
    for prompt in schedule.pressure_prompts(first, PRESSURE_DAYS, d.facts.zone):
        d.do(SetTimer("pressure", prompt.at, f"{prompt.number}{'e' if prompt.evening else 'm'}"))
    end = schedule.instant(last + timedelta(days=1), schedule.MORNING, d.facts.zone)
    d.do(SetTimer("pressure_end", end))
    d.say(
        m.PressureWeekOpens(schedule.MORNING, schedule.EVENING, last),
        (Choice("how", "how:blood_pressure"), Choice("not_today", "pressure:stop")),
    )


def close(d: ClientStep, *, quietly: bool = False) -> None:
    """Everything asked today is answered, skipped or postponed. quietly: without praise, which would be out of
    place."""
    answered, day = d.state.day is not None, d.state.day
    if day is not None and d.facts.plan.closes_on(day):
        programme.finish(d)
        return
    d.ask(None)
    d.become(day=None, noted=(), told=())
    if not answered:
        return
    d.do(CancelTimer("follow_up"))
    seen: looking_back.Shelves | None = None
    if day is not None and not quietly and looking_back.is_due(d, day):
        seen = looking_back.look_back(d, day)
    elif not quietly:
        praise = pick(d, PRAISES)
        d.say(m.Praise(praise, kept_in_a_row(d)), said=praise)
    following = d.next_slot()
    if following is not None:
        hint = len(d.facts.of("energy")) % HINT_EVERY == 1
        row: tuple[Choice, ...] = (Choice("progress", "set:progress"), Choice("source", "src"))
        better = better_day(d)
        if better is not None:
            d.say(AnotherDay(better))
            d.become(cautioned=(*d.state.cautioned, OTHER_DAY))
            row = (Choice("slot", "set:slot"), *row)
        d.say(m.CheckInDone(following, hint and better is None), row)
    if seen is not None:
        looking_back.picture(d, seen)


def better_day(d: ClientStep) -> int | None:
    """The weekday on which the last check-ins were answered, if each was late; said once."""
    if d.facts.slot is None or OTHER_DAY in d.state.cautioned:
        return None
    days = [d.facts.local(r.taken_at).date() for r in d.facts.of("energy")[-LATE_TIMES:]]
    weekdays = {day.weekday() for day in days}
    if len(set(days)) < LATE_TIMES or len(weekdays) > 1 or days[-1] != d.today:
        return None
    late_by = (days[-1].weekday() - d.facts.slot.weekday) % 7
    return days[-1].weekday() if 0 < late_by <= LATEST else None


def kept_in_a_row(d: ClientStep) -> int:
    """Consecutive check-ins answered, including this one, within the last twelve weeks."""
    days = sorted(
        {d.facts.local(r.taken_at).date() for r in d.facts.of("energy") if r.how is not How.UNASKED}, reverse=True
    )
    count, last = 1, d.today
    for day in days:
        if day == last:
            continue
        if last - day > timedelta(days=10):
            break
        count, last = count + 1, day
    return count


def note_answer(d: ClientStep) -> None:
    """Part of this check-in was answered: the slot counts as kept and no reminder is needed."""
    if d.state.day is None:
        return
    d.do(Answered(d.state.day.isoformat()))
    for open_flag in d.facts.flags:
        if cleared(Code(open_flag.code), open_flag.since, WhatFollowed(answered_at=d.now), d.now):
            d.do(Lower(open_flag.code, open_flag.measure))


def today(d: ClientStep) -> None:
    """Start what is due, or say when something is."""
    if d.facts.status is Status.FINISHED:
        programme.say_over(d)
        return
    if d.state.day is not None and isinstance(d.asking, Awaiting):
        ask(d, MEASURES[d.asking.measure])
        return
    if isinstance(d.asking, Enrolling):
        needed.say_question(d, d.asking)
        return
    last = schedule.latest_due(d.facts.slot, d.facts.zone, d.now).day if d.facts.slot else d.today
    recent = d.today - last <= timedelta(days=2) and d.facts.answered != last
    if recent or d.facts.answered is None:
        open_check_in(d, last if recent else d.today)
        return
    following = d.next_slot()
    d.say(m.NotToday(following, agenda_for(d, following) if following else ()))


def skip(d: ClientStep) -> None:
    """Leave this question out, this time."""
    if not isinstance(d.asking, Awaiting):
        help_and_menu.not_sure(d)
        return
    d.say(m.Skipped(d.asking.measure))
    if MEASURES[d.asking.measure].series and d.state.pressure is not None:
        d.ask(None)
        return
    ask_next(d)


def close_setting(d: ClientStep) -> None:
    """Return to the question that was open before."""
    if isinstance(d.asking, Setting):
        back: Asking | None = d.asking.back
        d.ask(back)
        if isinstance(back, Awaiting):
            ask(d, MEASURES[back.measure])
        elif isinstance(back, Enrolling):
            needed.say_question(d, back)
