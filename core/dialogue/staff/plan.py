"""A client's plan: view, change button by button, save as a template; new baseline; handing over; ending care.

The client is told of every change in plain words; the next question follows the new plan.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import time, timedelta

from core.care import NumberVisibility, Plan, Programme, Slot
from core.client import Caution
from core.dialogue.client import needed
from core.dialogue.client import programme as client_programme
from core.dialogue.client.messages import EnrolQuestion, EnrolUnclear
from core.dialogue.kit.effects import Choice, Rows, number_in
from core.dialogue.kit.messages import KeptAsItWas
from core.dialogue.kit.step import rows_of
from core.dialogue.staff import messages as sm
from core.dialogue.staff import talk_messages as tm
from core.dialogue.staff.caseload import note_typed, show, sure_of_note
from core.dialogue.staff.effects import ChangePlan, DropTemplate, EndCare, HandOver, SaveTemplate
from core.dialogue.staff.facts import CardFact
from core.dialogue.staff.states import AskingSure, ChangingSlot, NamingClinician, NamingTemplate, NotingOn, Ticking
from core.dialogue.staff.step import StaffStep, about
from core.language.intents import weekday_and_time
from core.measures import ALWAYS_ASKED, CHECK_IN_ORDER, MEASURES
from core.measures.measure import MeasureKind
from core.reading import baseline as baseline_of

INTERVALS = (28, 35, 42)
PRESSURE_BODIES = ("nice", "aha", "esc")
PROGRAMMES = (6, 8, 12, 16, 24, 52)  # weeks
CAUTIONS = tuple(c.value for c in Caution)
OFFERED = tuple(k for k in CHECK_IN_ORDER if k not in ALWAYS_ASKED and MEASURES[k].kind is not MeasureKind.ONCE)
LONGEST_NAME = 40
LONGEST_CLINICIAN = 80


def plan(d: StaffStep, value: str) -> None:
    if (card := _of(d, value)) is not None:
        d.ask(None)
        say_plan(d, card)


def say_plan(d: StaffStep, card: CardFact) -> None:
    cautions = tuple(sorted(c.value for c in card.profile.cautions))
    medicines = tuple(sorted(card.profile.medicines))
    d.say(sm.PlanSaid(card.name, card.plan, card.slot, cautions, medicines), *_choices(card))


def _choices(card: CardFact) -> Rows:
    n, p = card.client_id, card.plan
    return (
        (Choice("change_measures", f"measures:{n}"), Choice("change_interval", f"interval:{n}")),
        (Choice("change_slot", f"slot:{n}"), Choice("change_cautions", f"cautions:{n}")),
        (_switch("directed", n, p.directed_weighing), _switch("loss", n, p.loss_is_planned)),
        (
            Choice("numbers_show", f"numbers:{n}:shown")
            if p.numbers is NumberVisibility.COACH_ONLY
            else Choice("numbers_hide", f"numbers:{n}:coach_only"),
            Choice("pressure_limits", f"bp:{n}"),
        ),
        (Choice("programme", f"programme:{n}"), Choice("new_baseline", f"baseline:{n}")),
        (Choice("save_template", f"template:{n}"),),
        (Choice("open_card", f"card:{n}"),),
    )


def _switch(what: str, client_id: int, on: bool) -> Choice:
    """A button that toggles a setting."""
    other = "off" if on else "on"
    return Choice(f"{what}_{other}", f"{what}:{client_id}:{other}")


def _changed(d: StaffStep, card: CardFact, what: str, new: Plan, detail: str = "") -> None:
    """Apply a change of the plan, confirm it, and show the new plan."""
    d.ask(None)
    if new != card.plan:
        d.do(ChangePlan(card.client_id, what, plan=new, detail=detail))
    d.say(sm.PlanChosen(card.name, what))
    say_plan(d, replace(card, plan=new))


# --- measures and intervals -------------------------------------------------------------------------------------


def measures(d: StaffStep, value: str) -> None:
    """ "17" asks; "17:waist" adds or removes one; "17:done" applies the change."""
    number, _, key = value.partition(":")
    card = _of(d, number)
    if card is None:
        return
    chosen = _ticked(d, card, "measures", card.plan.measures, key, OFFERED)
    if key == "done":
        ordered = tuple(m for m in (*CHECK_IN_ORDER, *chosen) if m in chosen)
        _changed(d, card, "measures", replace(card.plan, measures=tuple(dict.fromkeys(ordered))))
        return
    _say_measures(d, card, chosen)


def _say_measures(d: StaffStep, card: CardFact, chosen: tuple[str, ...]) -> None:
    number = card.client_id
    offered = (Choice("tick_off" if m in chosen else "tick_on", f"measures:{number}:{m}", m) for m in OFFERED)
    d.say(
        sm.AskMeasures(card.name, tuple(m for m in CHECK_IN_ORDER if m in chosen)),
        *rows_of(*offered),
        (Choice("done", f"measures:{number}:done"), Choice("no_keep", "cancel")),
    )


def ticking_again(d: StaffStep, asking: Ticking) -> None:
    """Repeat the open list, with what is ticked so far."""
    if (card := d.card(asking.client_id)) is not None:
        (_say_measures if asking.what == "measures" else _say_cautions)(d, card, asking.chosen)


def _ticked(
    d: StaffStep, card: CardFact, what: str, now: tuple[str, ...], key: str, offered: tuple[str, ...]
) -> tuple[str, ...]:
    """The selection after a tick: it stays in the state and is applied once, with "done", so that the client is told
    once. An old list starts from the current plan."""
    asking = d.asking
    ours = isinstance(asking, Ticking) and (asking.what, asking.client_id) == (what, card.client_id)
    chosen = asking.chosen if ours and isinstance(asking, Ticking) and key else now
    if key in offered:
        chosen = tuple(m for m in chosen if m != key) if key in chosen else (*chosen, key)
    d.ask(Ticking(what, card.client_id, chosen))
    return chosen


def interval(d: StaffStep, value: str) -> None:
    number, _, days = value.partition(":")
    card = _of(d, number)
    if card is None:
        return
    if days.isdecimal() and 28 <= int(days[:4]) <= 42:
        _changed(d, card, "interval", replace(card.plan, retest_days=int(days), per_measure=()))
        return
    d.say(
        sm.AskInterval(card.name, card.plan.retest_days),
        tuple(Choice("in_days", f"interval:{number}:{n}", str(n)) for n in INTERVALS),
    )


# --- the slot ---------------------------------------------------------------------------------------------------


def slot(d: StaffStep, value: str) -> None:
    if (card := _of(d, value)) is not None:
        d.ask(ChangingSlot(card.client_id))
        days = (Choice(f"weekday:{n}", f"slotday:{card.client_id}:{n}") for n in range(7))
        d.say(sm.AskSlotFor(card.name), *rows_of(*days, width=3), (Choice("no_keep", "cancel"),))


def slot_day(d: StaffStep, value: str) -> None:
    number, _, day = value.partition(":")
    card = _of(d, number)
    if card is None:
        return
    if day.isdecimal() and int(day) < 7:
        _ask_time(d, card, int(day))
    else:
        slot(d, number)


def _ask_time(d: StaffStep, card: CardFact, weekday: int) -> None:
    d.ask(ChangingSlot(card.client_id, str(weekday)))
    hours = (Choice("hour", f"slothour:{card.client_id}:{h}", h) for h in needed.HOURS)
    d.say(EnrolQuestion("time"), *rows_of(*hours, width=3))


def slot_again(d: StaffStep, asking: ChangingSlot) -> None:
    """Repeat the open question: the weekday, or the time of the weekday chosen."""
    if not asking.weekday:
        slot(d, str(asking.client_id))
    elif (card := d.card(asking.client_id)) is not None:
        _ask_time(d, card, int(asking.weekday))


def slot_hour(d: StaffStep, value: str) -> None:
    number, _, hour = value.partition(":")
    card = _of(d, number)
    chosen = d.asking.weekday if isinstance(d.asking, ChangingSlot) and str(d.asking.client_id) == number else ""
    if card is None:
        return
    if hour not in needed.HOURS or not chosen:
        slot(d, number)
        return
    _set_slot(d, card, int(chosen), time.fromisoformat(hour))


def slot_typed(d: StaffStep, asking: ChangingSlot, text: str) -> bool:
    """ "Tuesday 7:30", or only what is still missing; True if the text was for it."""
    weekday, at = weekday_and_time(text, d.words)
    if weekday is None and at is None:
        return False
    card = d.card(asking.client_id)
    if card is None:
        d.ask(None)
        return True
    if weekday is None:
        weekday = int(asking.weekday) if asking.weekday else card.slot.weekday if card.slot else None
    if weekday is None:
        d.say(EnrolUnclear("weekday"))
    elif at is None:
        _ask_time(d, card, weekday)
    else:
        _set_slot(d, card, weekday, at)
    return True


def _set_slot(d: StaffStep, card: CardFact, weekday: int, at: time) -> None:
    zone = card.slot.zone_name if card.slot else d.facts.slot.zone_name if d.facts.slot else "UTC"
    new = Slot(weekday, at, zone)
    d.ask(None)
    d.do(ChangePlan(card.client_id, "slot", slot=new))
    d.say(sm.PlanChosen(card.name, "slot"))
    say_plan(d, replace(card, slot=new))


# --- switches ---------------------------------------------------------------------------------------------------


def directed(d: StaffStep, value: str) -> None:
    """Frequent weighing is somebody's order: who gave it is asked, confirmed, and told to the client."""
    number, _, on = value.partition(":")
    card = _of(d, number)
    if card is None:
        return
    if on == "on" and not card.plan.directed_weighing:
        ask_clinician(d, card)
    else:
        _changed(d, card, "directed_weighing_off", replace(card.plan, directed_weighing=False, directed_by=""))


def ask_clinician(d: StaffStep, card: CardFact) -> None:
    d.ask(NamingClinician(card.client_id))
    d.say(tm.AskClinician(card.name), (Choice("no_keep", "cancel"),))


def clinician_again(d: StaffStep, asking: NamingClinician) -> None:
    if (card := d.card(asking.client_id)) is not None:
        ask_clinician(d, card)


def clinician_named(d: StaffStep, asking: NamingClinician, text: str) -> None:
    card = d.card(asking.client_id)
    d.ask(None)
    if card is not None:
        _sure_directed(d, card, " ".join(text.split())[:LONGEST_CLINICIAN])


def _sure_directed(d: StaffStep, card: CardFact, by: str) -> None:
    _sure(d, tm.DirectedSure(card.name, by), "directed", card, words=by)


def loss(d: StaffStep, value: str) -> None:
    number, _, on = value.partition(":")
    if (card := _of(d, number)) is not None:
        _changed(d, card, "planned_loss", replace(card.plan, loss_is_planned=on == "on"))


def numbers(d: StaffStep, value: str) -> None:
    number, _, where = value.partition(":")
    card = _of(d, number)
    if card is not None:
        known = where if where in {n.value for n in NumberVisibility} else card.plan.numbers.value
        _changed(d, card, "numbers", replace(card.plan, numbers=NumberVisibility(known)))


def pressure_body(d: StaffStep, value: str) -> None:
    number, _, body = value.partition(":")
    card = _of(d, number)
    if card is None:
        return
    if body in PRESSURE_BODIES:
        _changed(d, card, "pressure_body", replace(card.plan, pressure_body=body))
        return
    bodies = tuple(Choice(f"pressure_{b}", f"bp:{number}:{b}") for b in PRESSURE_BODIES)
    d.say(sm.AskPressureBody(card.name, card.plan.pressure_body), bodies)


def programme(d: StaffStep, value: str) -> None:
    """ "17" asks; "17:12" sets twelve weeks, "17:0" no end."""
    number, _, weeks = value.partition(":")
    card = _of(d, number)
    if card is None:
        return
    now = card.plan.programme
    if weeks == "0":
        _changed(d, card, "programme_open", replace(card.plan, programme=None))
    elif weeks in map(str, PROGRAMMES):
        _changed(d, card, "programme", _with_programme(d, card, int(weeks)), weeks)
    else:
        choices = (Choice("in_weeks", f"programme:{number}:{n}", str(n)) for n in PROGRAMMES)
        d.say(
            sm.AskProgramme(card.name, now.weeks if now is not None and now.ended is None else 0),
            *rows_of(*choices, width=3),
            (Choice("no_end", f"programme:{number}:0"), Choice("no_keep", "cancel")),
        )


def _with_programme(d: StaffStep, card: CardFact, weeks: int) -> Plan:
    """One that runs gets another length; else a new one begins, with the first reading if there was none before."""
    before, today = card.plan.programme, d.now.astimezone(card.zone).date()
    if before is not None and before.ended is None:
        return replace(card.plan, programme=replace(before, weeks=weeks))
    if before is not None:
        return client_programme.next_round(card.plan, weeks, today, d.now, card.zone)
    first = baseline_of(card.history, card.plan.baseline_since)
    starts = today if first is None else first.taken_at.astimezone(card.zone).date()
    return replace(card.plan, programme=Programme(max(starts, today - timedelta(weeks=weeks)), weeks))


def cautions(d: StaffStep, value: str) -> None:
    number, _, key = value.partition(":")
    card = _of(d, number)
    if card is None:
        return
    held = tuple(sorted(c.value for c in card.profile.cautions))
    chosen = tuple(sorted(_ticked(d, card, "cautions", held, key, CAUTIONS)))
    if key == "done":
        d.ask(None)
        if chosen != held:
            d.do(ChangePlan(card.client_id, "cautions", cautions=frozenset(chosen)))
        d.say(sm.PlanChosen(card.name, "cautions"))
        slowed = Caution.RATE_LIMITING_MEDICINE.value in chosen
        medicines = card.profile.medicines if slowed else frozenset()
        profile = replace(card.profile, cautions=frozenset(Caution(c) for c in chosen), medicines=medicines)
        say_plan(d, replace(card, profile=profile))
        return
    _say_cautions(d, card, chosen)


def _say_cautions(d: StaffStep, card: CardFact, chosen: tuple[str, ...]) -> None:
    number = card.client_id
    offered = (Choice("tick_off" if c in chosen else "tick_on", f"cautions:{number}:{c}", c) for c in CAUTIONS)
    d.say(
        sm.AskCautions(card.name, chosen),
        *rows_of(*offered),
        (Choice("done", f"cautions:{number}:done"), Choice("no_keep", "cancel")),
    )


# --- what cannot be taken back ----------------------------------------------------------------------------------


def _sure(d: StaffStep, message: object, what: str, card: CardFact, to: int = 0, words: str = "") -> None:
    d.ask(AskingSure(what, card.client_id, to, words))
    d.say(message, (Choice("yes", f"sure:{what}:{card.client_id}"), Choice("no_keep", "cancel")))


def baseline(d: StaffStep, value: str) -> None:
    if (card := _of(d, value)) is not None:
        _sure(d, sm.AskBaseline(card.name), "baseline", card)


def end(d: StaffStep, value: str) -> None:
    if (card := _of(d, value)) is not None:
        _sure(d, sm.AskEnd(card.name), "end", card)


def hand(d: StaffStep, value: str) -> None:
    """ "17" asks to whom; "17:3" asks whether that is sure."""
    number, _, to = value.partition(":")
    card = _of(d, number)
    if card is None:
        return
    others = dict(d.facts.coaches)
    if not others:
        d.say(sm.NoOtherCoach(), *about(card.client_id))
    elif to.isdecimal() and int(to) in others:
        _sure(d, sm.HandOverSure(card.name, others[int(to)]), "hand_over", card, int(to))
    else:
        rows = rows_of(*(Choice("coach_named", f"hand:{number}:{n}", name) for n, name in d.facts.coaches))
        d.say(sm.AskHandOver(card.name, tuple(others.values())), *rows, (Choice("no_keep", "cancel"),))


def sure_again(d: StaffStep, asking: AskingSure) -> None:
    """Repeat the open confirmation."""
    number = str(asking.client_id)
    match asking.what:
        case "baseline":
            baseline(d, number)
        case "end":
            end(d, number)
        case "hand_over":
            hand(d, f"{number}:{asking.to}")
        case "note":
            sure_of_note(d, asking.client_id, asking.words)
        case "directed" if (card := _of(d, number)) is not None:
            _sure_directed(d, card, asking.words)
        case _:
            pass


def sure(d: StaffStep, value: str) -> None:
    """A confirmation button, which counts only while that same question is open."""
    what, _, number = value.partition(":")
    if isinstance(d.asking, AskingSure) and (d.asking.what, str(d.asking.client_id)) == (what, number):
        confirmed(d, d.asking)
    elif (card := _of(d, number)) is not None:
        show(d, card)


def confirmed(d: StaffStep, asking: AskingSure) -> None:
    d.ask(None)
    card = d.card(asking.client_id)
    if card is None:
        return
    match asking.what:
        case "note":
            note_typed(d, NotingOn(card.client_id), asking.words)
        case "baseline":
            _changed(d, card, "baseline", replace(card.plan, baseline_since=d.now))
        case "directed":
            new = replace(card.plan, directed_weighing=True, directed_by=asking.words)
            _changed(d, card, "directed_weighing", new, asking.words)
        case "end":
            d.do(EndCare(card.client_id))
            d.say(sm.CareEnded(card.name))
        case "hand_over":
            to = dict(d.facts.coaches).get(asking.to)
            if to is None:
                d.say(sm.NoOtherCoach())
                return
            d.do(HandOver(card.client_id, asking.to))
            d.say(sm.HandedOver(card.name, to))
        case _:
            d.say(KeptAsItWas())


# --- templates --------------------------------------------------------------------------------------------------


def template(d: StaffStep, value: str) -> None:
    if (card := _of(d, value)) is not None:
        d.ask(NamingTemplate(card.client_id))
        d.say(sm.AskTemplateName(card.name), (Choice("no_keep", "cancel"),))


def template_named(d: StaffStep, asking: NamingTemplate, text: str) -> None:
    card = d.card(asking.client_id)
    d.ask(None)
    if card is not None:
        name = " ".join(text.split())[:LONGEST_NAME]
        d.do(SaveTemplate(name, for_anybody(card.plan)))
        d.say(sm.TemplateSaved(name), (Choice("invite", "invite"), *about(card.client_id)[0][1:]))


def for_anybody(plan: Plan) -> Plan:
    """A plan without personal parts: the client's own question, their baseline and programme, a clinician's wish."""
    return replace(plan, own_question="", baseline_since=None, directed_weighing=False, directed_by="", programme=None)


def drop_template(d: StaffStep, value: str) -> None:
    kept = tuple(t.name for t in d.facts.templates)
    if value.isdecimal() and int(value) < len(kept):
        d.do(DropTemplate(kept[int(value)]))
        d.say(sm.TemplateDropped(kept[int(value)]))
    else:
        templates(d, "")


def templates(d: StaffStep, value: str) -> None:
    kept = tuple(t.name for t in d.facts.templates)
    d.say(sm.TemplatesKept(kept), *rows_of(*(Choice("drop_template", f"droptpl:{n}", t) for n, t in enumerate(kept))))


def _of(d: StaffStep, value: str) -> CardFact | None:
    return d.card(number_in(value))
