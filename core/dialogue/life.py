"""The rest of life: help, later, pause, settings, a word to the coach, my data, leaving, being forgotten."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, time, timedelta

from core import schedule
from core.dialogue import checkin, enrolment
from core.dialogue import messages as m
from core.dialogue.coach_messages import ClientBack, ClientLeft, ClientMoved, ClientPaused
from core.dialogue.effects import (
    Choice,
    Erase,
    Join,
    Learn,
    LeaveCohort,
    Lower,
    PassOn,
    Raise,
    SendData,
    Tell,
    Unwake,
    Wake,
)
from core.dialogue.events import FromCoach, PlanChanged, Reachability
from core.dialogue.facts import Numbers, Status
from core.dialogue.outcome import Desk, rows_of
from core.dialogue.safety import number
from core.dialogue.states import Asking, Awaiting, Setting, State
from core.flags import Code, flag
from core.language import plain
from core.language.intents import weekday_and_time, when
from core.measures import MEASURES
from core.quantity import Unit

LANGUAGES = ("en", "es", "de", "fr", "pl", "ar")
LONGEST_PAUSE = timedelta(days=183)
ANSWER_GOES_TO_COACH = timedelta(hours=48)
EVENING = time(19, 0)
PAUSES = {"1w": 7, "2w": 14, "4w": 28}


def waiting(d: Desk) -> str:
    return d.asking.measure if isinstance(d.asking, Awaiting) else ""


def menu(d: Desk) -> tuple[tuple[Choice, ...], ...]:
    return (
        (Choice("today", "set:today"), Choice("progress", "set:progress")),
        (Choice("settings", "set:settings"), Choice("word_to_coach", "word", d.facts.coach_name)),
    )


def help_(d: Desk) -> None:
    """What can be done. An open question stays open and is put again."""
    d.say(m.Help(d.facts.coach_name, number(d), waiting(d)), *menu(d))


def not_sure(d: Desk) -> None:
    d.say(m.NotSure(waiting(d)), *menu(d))


def today(d: Desk) -> None:
    """Start what is due, or say when something is."""
    if d.state.day is not None and isinstance(d.asking, Awaiting):
        checkin.ask(d, MEASURES[d.asking.measure])
        return
    last = schedule.latest_due(d.facts.slot, d.facts.zone, d.now).day if d.facts.slot else d.today
    recent = d.today - last <= timedelta(days=2) and d.facts.answered != last
    if recent or not d.facts.of("energy"):
        checkin.open_check_in(d, last if recent else d.today)
        return
    following = d.next_slot()
    d.say(m.NotToday(following, checkin.agenda_for(d, following) if following else ()))


def skip(d: Desk) -> None:
    """Leave this question out, this time."""
    if not isinstance(d.asking, Awaiting):
        not_sure(d)
        return
    d.say(m.Skipped(d.asking.measure))
    if d.asking.measure == "blood_pressure" and d.state.pressure is not None:
        d.ask(None)
        return
    checkin.ask_next(d)


# --- later, pause, stop -----------------------------------------------------------------------------------------


def later(d: Desk) -> None:
    d.ask(Setting("snooze", "", d.asking))
    d.say(
        m.SnoozeWhen(),
        (Choice("in_two_hours", "snooze:2h"), Choice("this_evening", "snooze:evening")),
        (Choice("tomorrow", "snooze:tomorrow"),),
    )


def snooze(d: Desk, asking: Setting, choice: str) -> None:
    local = d.facts.local(d.now)
    if choice == "2h":
        until = d.now + timedelta(hours=2)
    elif choice == "evening" and local.time() < EVENING:
        until = schedule.instant(local.date(), EVENING, d.facts.zone)
    else:
        at = d.facts.slot.at if d.facts.slot else time(8)
        until = schedule.instant(local.date() + timedelta(days=1), at, d.facts.zone)
    tomorrow = d.facts.local(until).date() != local.date()
    d.ask(asking.back)
    d.do(Unwake("follow_up"), Unwake("snooze"), Wake("snooze", until, d.today.isoformat()))
    d.say(m.Snoozed(until, tomorrow))


def snoozed(d: Desk) -> None:
    """The snooze is over: put the open question again."""
    if isinstance(d.asking, Awaiting):
        checkin.ask(d, MEASURES[d.asking.measure])
    elif d.state.day is not None and d.asking is None:
        checkin.ask_next(d)


def follow_up(d: Desk, mark: str) -> None:
    """The one reminder, a day later, if nothing of that check-in was answered."""
    open_day = d.state.day.isoformat() if d.state.day else ""
    if d.facts.status is not Status.ACTIVE or open_day != mark or not isinstance(d.asking, Awaiting):
        return
    if d.facts.answered is not None and d.facts.answered.isoformat() >= mark:
        return
    measure = MEASURES[d.asking.measure]
    d.say(m.FollowUp(measure.key), *checkin.buttons(d, measure), occasion=f"follow-up/{d.facts.client_id}/{mark}")


def pause(d: Desk, words: str = "") -> None:
    until = when(words, d.words, d.today) if words else None
    if until is not None:
        pause_until(d, until)
        return
    d.ask(Setting("pause", "", d.asking))
    labels = {"1w": "one_week", "2w": "two_weeks", "4w": "four_weeks"}
    d.say(m.PauseWhen(), tuple(Choice(label, f"pause:{key}") for key, label in labels.items()))


def pause_until(d: Desk, until: date) -> None:
    """No questions until a date; at most half a year, so that nobody is forgotten."""
    until = min(max(until, d.today + timedelta(days=1)), d.today + LONGEST_PAUSE)
    d.do(
        Learn("status", Status.PAUSED),
        Learn("paused_until", until),
        Unwake("follow_up"),
        Unwake("snooze"),
        Tell(ClientPaused(d.facts.client_id, d.facts.name, until)),
    )
    d.become(asking=None, agenda=(), day=None)
    d.say(m.Paused(until), (Choice("resume", "resume"),))


def resume(d: Desk) -> None:
    if d.facts.status is Status.PAUSED:
        d.do(Learn("status", Status.ACTIVE), Learn("paused_until", None))
        d.facts = replace(d.facts, status=Status.ACTIVE, paused_until=None)
    d.say(m.Resumed(d.next_slot()))


def stop(d: Desk) -> None:
    """End this check-in without a fuss; offer to pause or to leave."""
    d.do(Unwake("follow_up"), Unwake("snooze"))
    d.become(asking=None, agenda=(), day=None)
    d.say(m.StoppedForNow(d.next_slot()), (Choice("pause", "set:pause"), Choice("leave", "set:leave")))


# --- settings ---------------------------------------------------------------------------------------------------


def settings(d: Desk) -> None:
    slot = d.facts.slot
    d.say(
        m.Settings(
            slot.weekday if slot else None,
            slot.at if slot else None,
            slot.zone_name if slot else "UTC",
            d.facts.units.mass,
            d.facts.units.length,
            d.facts.plan.numbers.value,
        ),
        *rows_of(
            *(Choice(k, f"set:{k}") for k in ("slot", "zone", "language", "units", "numbers", "pause", "goal")),
            Choice("my_data", "set:my_data"),
            Choice("leave", "set:leave"),
            Choice("forget", "set:forget"),
        ),
    )


def change(d: Desk, what: str) -> None:
    """Open one setting."""
    back = d.asking.back if isinstance(d.asking, Setting) else d.asking
    d.ask(Setting(what, "", back))
    match what:
        case "slot":
            d.say(m.AskSlot(), *rows_of(*(Choice(f"weekday:{n}", f"wd:{n}") for n in range(7)), width=4))
        case "zone":
            d.say(m.AskZone())
        case "language":
            d.say(m.AskLanguage(), *rows_of(*(Choice(f"lang:{c}", f"lang:{c}") for c in LANGUAGES), width=3))
        case "units":
            d.say(m.AskUnits(), tuple(Choice(f"units:{u}", f"units:{u}") for u in enrolment.UNIT_SETS))
        case "numbers":
            rows = rows_of(
                *(Choice(f"numbers:{n}", f"numbers:{n}") for n in ("shown", "coach_only", "leave_out")), width=1
            )
            d.say(m.EnrolQuestion("numbers", d.facts.coach_name), *rows)
        case "forget":
            d.say(m.ForgetSure(), (Choice("forget_yes", "forget:yes"), Choice("no_keep", "forget:no")))
        case "leave":
            d.say(m.LeaveSure(d.facts.coach_name), (Choice("leave_yes", "leave:yes"), Choice("no_keep", "leave:no")))
        case _:
            d.ask(back)


def close_setting(d: Desk) -> None:
    """Take up again what was open before."""
    if isinstance(d.asking, Setting):
        back: Asking | None = d.asking.back
        d.ask(back)
        if isinstance(back, Awaiting):
            checkin.ask(d, MEASURES[back.measure])


def set_slot(d: Desk, asking: Setting, weekday: int | None, at: time | None) -> None:
    """Weekday first, then time; or both at once ("Tuesday 7:30")."""
    chosen = int(asking.detail) if asking.detail in tuple("0123456") else None
    weekday = chosen if weekday is None else weekday
    if weekday is not None and at is None and chosen is None:
        d.ask(replace(asking, detail=str(weekday)))
        d.say(
            m.EnrolQuestion("time"),
            *rows_of(*(Choice("hour", f"hr:{h}", h) for h in enrolment.HOURS), width=3),
        )
        return
    if weekday is None and at is None:
        d.say(m.EnrolUnclear("weekday" if chosen is None else "time"))
        return
    slot = enrolment.set_slot(d, weekday=weekday, at=at)
    d.say(m.SlotChanged(slot.weekday, slot.at, d.next_slot() or d.today))
    close_setting(d)


def set_zone(d: Desk, text: str) -> None:
    found = d.facts.find_zones(text)
    if len(found) != 1:
        if not isinstance(d.asking, Setting):
            d.ask(Setting("zone", "", d.asking))
        d.say(m.WhichPlace(found[:6]), *rows_of(*(Choice("place", f"zone:{z}"[:64], z) for z in found[:6])))
        return
    slot = enrolment.set_slot(d, zone_name=found[0])
    d.say(m.ZoneChanged(slot.zone_name, slot.weekday, slot.at))
    close_setting(d)


def set_language(d: Desk, code: str) -> None:
    if code in LANGUAGES:
        d.do(Learn("language", code))
        d.say(m.LanguageChanged())
    close_setting(d)


def set_units(d: Desk, key: str) -> None:
    if key in enrolment.UNIT_SETS:
        units = enrolment.UNIT_SETS[key]
        d.do(Learn("units", units))
        d.facts = replace(d.facts, units=units)
        d.say(m.UnitsChanged(units.mass, Unit.FOOT if units.length is Unit.INCH else units.length))
    close_setting(d)


def set_numbers(d: Desk, value: str) -> None:
    plan = d.facts.plan
    measures = plan.measures
    if value == "leave_out":
        measures = tuple(x for x in measures if x != "weight")
    elif value in {n.value for n in Numbers}:
        plan = replace(plan, numbers=Numbers(value))
        measures = measures if "weight" in measures else ("weight", *measures)
    plan = replace(plan, measures=measures)
    d.do(Learn("plan", plan))
    d.facts = replace(d.facts, plan=plan)
    d.say(m.NumbersChanged(value))
    close_setting(d)


# --- coach ------------------------------------------------------------------------------------------------------


def word(d: Desk, text: str = "") -> None:
    """Pass words on to the coach, or ask for them."""
    if text.strip():
        pass_on(d, text)
        return
    back = d.asking.back if isinstance(d.asking, Setting) else d.asking
    d.ask(Setting("word", "", back))
    d.say(m.AskWord(d.facts.coach_name), (Choice("no_keep", "cancel"),))


def pass_on(d: Desk, text: str, *, reply: bool = False) -> None:
    """Hand words to the coach. An answer to the coach's own message is no new wish for a word."""
    d.do(PassOn(text))
    if not reply:
        d.do(Raise(flag(Code.WANTS_COACH, d.now)))
    d.say(m.WordPassed(d.facts.coach_name))


def from_coach(d: Desk, event: FromCoach) -> None:
    d.become(word_until=d.now + ANSWER_GOES_TO_COACH)
    d.say(m.CoachWrites(event.coach, event.text), (Choice("word_to_coach", "word", event.coach),))


def plan_changed(d: Desk, event: PlanChanged) -> None:
    """What the coach changed applies from the next question on; an open one that is gone is not asked again."""
    wanted = {"energy", "own_question", *d.facts.plan.measures}
    d.become(agenda=tuple(k for k in d.state.agenda if k in wanted))
    gone = isinstance(d.asking, Awaiting) and d.asking.measure not in wanted
    if event.what:
        d.say(m.PlanNews(event.what, event.detail))
    if gone:
        checkin.ask_next(d)


def reachability(d: Desk, event: Reachability) -> None:
    """Blocked: nothing can be said. Let in again: welcome back, without questions of the past."""
    if event.reachable and d.facts.consented and d.facts.status is not Status.LEFT:
        d.do(Tell(ClientBack(d.facts.client_id, d.facts.name)), Lower(Code.UNREACHABLE))
        d.say(m.WelcomeBack(d.facts.coach_name), *menu(d))


def change_coach(d: Desk, yes: bool) -> None:
    old = d.facts.coach_name
    if yes:
        assert isinstance(d.asking, Setting)
        d.ask(None)
        d.do(Tell(ClientMoved(d.facts.name)), Join())
        if d.facts.invitation is not None:
            d.say(m.CoachChanged(d.facts.invitation.by_name))
        else:
            d.say(m.Stranger())
        return
    d.ask(d.asking.back if isinstance(d.asking, Setting) else None)
    d.say(m.AlreadyHere(old))


def come_back(d: Desk, yes: bool) -> None:
    """A client who left opens the coach's new invitation."""
    if not yes:
        d.ask(None)
        d.say(m.KeptAsItWas())
        return
    d.state = State()
    d.do(Join(), Learn("status", Status.ACTIVE), Learn("paused_until", None))
    d.facts = replace(d.facts, status=Status.ACTIVE)
    d.say(m.Resumed(d.next_slot()))


# --- leaving ----------------------------------------------------------------------------------------------------


def my_data(d: Desk) -> None:
    d.say(m.DataSent())
    d.do(SendData())


def forget(d: Desk, yes: bool) -> None:
    if yes:
        d.state = State()
        d.do(Tell(ClientLeft(d.facts.name)), Erase(m.Forgotten()))
        return
    d.say(m.KeptAsItWas())
    close_setting(d)


def leave(d: Desk, yes: bool) -> None:
    if yes:
        d.state = State()
        d.do(
            Learn("status", Status.LEFT),
            Unwake("follow_up"), Unwake("snooze"), Unwake("pressure"), Unwake("pressure_end"),
            Tell(ClientLeft(d.facts.name)),
            *(LeaveCohort(c.cohort_id) for c in d.facts.cohorts),
        )  # fmt: skip
        d.say(m.HasLeft(d.facts.coach_name), (Choice("forget", "set:forget"),))
        return
    d.say(m.KeptAsItWas())
    close_setting(d)


def typed_setting(d: Desk, asking: Setting, text: str) -> bool:
    """Plain words while a setting is open; True when they were for it."""
    match asking.what:
        case "slot":
            weekday, at = weekday_and_time(text, d.words)
            if weekday is None and at is None:
                return False
            set_slot(d, asking, weekday, at)
        case "zone":
            set_zone(d, text)
        case "pause":
            until = when(text, d.words, d.today)
            if until is None:
                return False
            d.ask(asking.back)
            pause_until(d, until)
        case "snooze":
            labels = {"in_two_hours": "2h", "this_evening": "evening", "tomorrow": "tomorrow", "not_today": "tomorrow"}
            said = next((v for k, v in labels.items() if plain(text) == plain(d.facts.label(k, ""))), "")
            if said:
                snooze(d, asking, said)
                return True
            until = when(text, d.words, d.today)
            if until is None or until > d.today + timedelta(days=1):
                return False
            snooze(d, asking, "tomorrow" if until > d.today else "evening")
        case "word" | "early_reason":
            pass_on(d, text, reply=asking.what == "early_reason")  # an answer to our question is no wish for a word
            if asking.what == "early_reason":
                d.say(m.EarlyReason(d.facts.coach_name))
            close_setting(d)
        case "language" | "units" | "numbers":
            prefix = {"language": "lang", "units": "units", "numbers": "numbers"}[asking.what]
            chosen = _by_label(d, prefix, text)
            if not chosen:
                return False
            {"language": set_language, "units": set_units, "numbers": set_numbers}[asking.what](d, chosen)
        case _:
            return False
    return True


def _by_label(d: Desk, prefix: str, text: str) -> str:
    options = {
        "lang": LANGUAGES,
        "units": tuple(enrolment.UNIT_SETS),
        "numbers": ("shown", "coach_only", "leave_out"),
    }[prefix]
    wanted = plain(text)
    return next((o for o in options if wanted in (o, plain(d.facts.label(f"{prefix}:{o}", "")))), "")
