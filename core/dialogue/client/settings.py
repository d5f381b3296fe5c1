"""A client's settings: slot, place, language, units."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, time, timedelta

from core import schedule
from core.care import NumberVisibility
from core.dialogue.client import about_me, check_in, coach_thread, enrolment, health, needed, pausing
from core.dialogue.client import messages as m
from core.dialogue.client.effects import HOME, CancelTimer, ChangeClient, SetTimer
from core.dialogue.client.states import Setting
from core.dialogue.client.step import ClientStep
from core.dialogue.kit.effects import Choice
from core.dialogue.kit.messages import AskLanguage, LanguageChanged
from core.dialogue.kit.step import rows_of
from core.language import LANGUAGES, plain
from core.language.intents import weekday_and_time, when
from core.measures.weight import WEIGHT
from core.quantity import Unit

# --- later, pause, stop -----------------------------------------------------------------------------------------


# --- settings ---------------------------------------------------------------------------------------------------


def settings(d: ClientStep) -> None:
    slot = d.facts.slot
    about_me.say_facts(d)
    d.say(
        m.SettingsSaid(
            slot.weekday if slot else None,
            slot.at if slot else None,
            slot.zone_name if slot else "UTC",
            d.facts.units.mass,
            d.facts.units.length,
            d.facts.plan.numbers.value,
        ),
        *rows_of(
            *(Choice(k, f"set:{k}") for k in ("slot", "zone", "language", "units", "numbers", "pause", "goal")),
            Choice("about_me", "set:about_me"),
            Choice("my_data", "set:my_data"),
            Choice("leave", "set:leave"),
            Choice("forget", "set:forget"),
        ),
    )


def change(d: ClientStep, what: str) -> None:
    """Open one setting."""
    if what in about_me.FACTS:
        about_me.change(d, what)
        return
    back = d.asking.back if isinstance(d.asking, Setting) else d.asking
    d.ask(Setting(what, "", back))
    match what:
        case "slot":
            d.say(m.AskSlot(), *rows_of(*(Choice(f"weekday:{n}", f"wd:{n}") for n in range(7)), width=4))
        case "zone":
            d.say(m.AskZone())
        case "language":
            d.say(AskLanguage(), *rows_of(*(Choice(f"lang:{c}", f"lang:{c}") for c in LANGUAGES), width=3))
        case "units":
            d.say(m.AskUnits(), tuple(Choice(f"units:{u}", f"units:{u}") for u in needed.UNIT_SETS))
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


def set_slot(d: ClientStep, asking: Setting, weekday: int | None, at: time | None) -> None:
    """Weekday first, then time; or both at once ("Tuesday 7:30")."""
    chosen = int(asking.detail) if asking.detail in tuple("0123456") else None
    weekday = chosen if weekday is None else weekday
    if weekday is not None and at is None and chosen is None:
        d.ask(replace(asking, detail=str(weekday)))
        say_hours(d)
        return
    if weekday is None and at is None:
        d.say(m.EnrolUnclear("weekday" if chosen is None else "time"))
        return
    slot = enrolment.set_slot(d, weekday=weekday, at=at)
    d.say(m.SlotChanged(slot.weekday, slot.at, d.next_slot() or d.today))
    check_in.close_setting(d)


def say_hours(d: ClientStep) -> None:
    hours = rows_of(*(Choice("hour", f"hr:{h}", h) for h in needed.HOURS), width=3)
    d.say(m.EnrolQuestion("time"), *hours)


def set_zone(d: ClientStep, text: str, until: date | None = None) -> None:
    """Move the clock to a place: for good, or until a day, after which it goes back by itself."""
    found = d.facts.find_zones(text)
    if len(found) != 1:
        if not isinstance(d.asking, Setting):
            d.ask(Setting("zone", "", d.asking))
        health.which_place(d, found)
        return
    home = d.state.home or (d.facts.slot.zone_name if d.facts.slot else "")
    d.do(CancelTimer(HOME))
    slot = enrolment.set_slot(d, zone_name=found[0])
    if until is not None and home and home != found[0]:
        d.become(home=home)
        d.do(SetTimer(HOME, schedule.instant(until, schedule.MORNING, d.facts.zone_of(home))))
        d.say(m.ZoneForNow(slot.zone_name, slot.weekday, slot.at, until))
    else:
        d.become(home="")
        d.say(m.ZoneChanged(slot.zone_name, slot.weekday, slot.at))
    check_in.close_setting(d)


def home_again(d: ClientStep) -> None:
    """The stay is over: the clock is that of home again."""
    if d.state.home:
        slot = enrolment.set_slot(d, zone_name=d.state.home)
        d.become(home="")
        d.say(m.ZoneChanged(slot.zone_name, slot.weekday, slot.at, home=True))


def set_language(d: ClientStep, code: str) -> None:
    if code in LANGUAGES:
        d.do(ChangeClient("language", code))
        d.say(LanguageChanged())
    check_in.close_setting(d)


def set_units(d: ClientStep, key: str) -> None:
    if key in needed.UNIT_SETS:
        units = needed.UNIT_SETS[key]
        d.do(ChangeClient("units", units))
        d.facts = replace(d.facts, units=units)
        d.say(m.UnitsChanged(units.mass, Unit.FOOT if units.length is Unit.INCH else units.length))
    check_in.close_setting(d)


def set_numbers(d: ClientStep, value: str) -> None:
    plan = d.facts.plan
    measures = plan.measures
    if value == "leave_out":
        measures = tuple(x for x in measures if x != WEIGHT.key)
    elif value in {n.value for n in NumberVisibility}:
        plan = replace(plan, numbers=NumberVisibility(value))
        measures = measures if "weight" in measures else ("weight", *measures)
    plan = replace(plan, measures=measures)
    d.do(ChangeClient("plan", plan))
    d.facts = replace(d.facts, plan=plan)
    d.say(m.NumbersChanged(value))
    check_in.close_setting(d)


# --- coach ------------------------------------------------------------------------------------------------------


# --- leaving ----------------------------------------------------------------------------------------------------


def typed_setting(d: ClientStep, asking: Setting, text: str) -> bool:
    """Plain text while a setting is open; True if it was for the setting."""
    if asking.what in about_me.FACTS:
        return about_me.typed(d, asking, text)
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
            if until is None or until <= d.today:  # "are we weighing today?" names no end of a break
                return False
            d.ask(asking.back)
            pausing.pause_until(d, until)
        case "snooze":
            labels = {"in_two_hours": "2h", "this_evening": "evening", "tomorrow": "tomorrow", "not_today": "tomorrow"}
            said = next((v for k, v in labels.items() if plain(text) == plain(d.facts.label(k, ""))), "")
            if said:
                pausing.snooze(d, asking, said)
                return True
            until = when(text, d.words, d.today)
            if until is None or until > d.today + timedelta(days=1):
                return False
            pausing.snooze(d, asking, "tomorrow" if until > d.today else "evening")
        case "word" | "early_reason":
            coach_thread.pass_on(
                d, text, reply=asking.what == "early_reason"
            )  # an answer to our question is not a request to talk
            if asking.what == "early_reason":
                d.say(m.EarlyReason(d.facts.coach_name))
            health.overhear(d, text)
            check_in.close_setting(d)
        case "language" | "units" | "numbers":
            prefix = {"language": "lang", "units": "units", "numbers": "numbers"}[asking.what]
            chosen = _by_label(d, prefix, text)
            if not chosen:
                return False
            {"language": set_language, "units": set_units, "numbers": set_numbers}[asking.what](d, chosen)
        case _:
            return False
    return True


def _by_label(d: ClientStep, prefix: str, text: str) -> str:
    options = {
        "lang": tuple(LANGUAGES),
        "units": tuple(needed.UNIT_SETS),
        "numbers": ("shown", "coach_only", "leave_out"),
    }[prefix]
    wanted = plain(text)
    return next((o for o in options if wanted in (o, plain(d.facts.label(f"{prefix}:{o}", "")))), "")
