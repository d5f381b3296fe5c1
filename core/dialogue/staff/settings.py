"""A coach's or organiser's own settings: joining, inviting, settings, data, leaving."""

from __future__ import annotations

from dataclasses import replace
from datetime import time, timedelta

from core import schedule
from core.care import Slot
from core.dialogue.client import messages as m
from core.dialogue.kit.effects import Choice, Join, Rows, SendData, number_in
from core.dialogue.kit.messages import AskLanguage, DataSent, LanguageChanged, OldButton, Stranger, WhichPlace
from core.dialogue.kit.step import rows_of
from core.dialogue.staff import messages as sm
from core.dialogue.staff import talk_messages as tm
from core.dialogue.staff.effects import (
    ForgetMe,
    Invite,
    Revoke,
    SetDeputy,
    SetDigest,
    SetLanguage,
    SetNight,
    SetWait,
    SetZone,
)
from core.dialogue.staff.facts import DeputyFact
from core.dialogue.staff.plan import LONGEST_NAME
from core.dialogue.staff.states import AskingSure, ChangingOwn, ChoosingDeputyDays, Inviting, StaffState
from core.dialogue.staff.step import StaffStep
from core.language import LANGUAGES
from core.language.days import days_between
from core.language.intents import weekday_and_time

MOST_COACHES = 12
USUAL_DIGEST = (0, time(8, 0))  # Monday morning, before the week's calls
HOURS = ("06:00", "07:00", "08:00", "09:00", "12:00", "17:00")


def menu(d: StaffStep) -> Rows:
    rows: list[tuple[Choice, ...]] = []
    if d.coach:
        rows.append((Choice("caseload", "list:need:0"), Choice("invite", "invite")))
        rows.append((Choice("digest", "digest"), Choice("settings", "settings")))
        if d.organiser:
            rows.append((Choice("cohorts", "cohorts"),))
    elif d.organiser:
        rows.append((Choice("cohorts", "cohorts"),))
        rows.append((Choice("settings", "settings"), Choice("help", "help")))
    return tuple(rows)


# --- arriving ---------------------------------------------------------------------------------------------------


def start(d: StaffStep, token: str) -> None:
    """/start alone, or with an invitation for an additional role of this chat."""
    invitation = d.facts.invitation
    if invitation is not None and invitation.kind in ("client", "cohort"):
        d.say(sm.UsedForCare())
        return
    if invitation is not None:
        d.do(Join())
        coach, organiser = d.coach or invitation.kind == "coach", d.organiser or invitation.kind == "organiser"
        d.say(sm.StaffWelcome(d.facts.name, coach, organiser), *menu(d))
        return
    if token:  # a used or invalid link
        d.say(Stranger())
        return
    d.say(sm.StaffHelp(d.coach, d.organiser), *menu(d))


def welcome(d: StaffStep) -> None:
    """Just joined: explain what can be done; the digest gets its usual slot, and the town is asked for the time
    zone."""
    d.say(sm.StaffWelcome(d.facts.name, d.coach, d.organiser))
    if d.coach and d.facts.slot is None:
        d.do(SetDigest(Slot(*USUAL_DIGEST, "UTC")))
    d.ask(ChangingOwn("zone"))
    d.say(sm.AskStaffZone(), *menu(d))


def help_(d: StaffStep, argument: str) -> None:
    d.say(sm.StaffHelp(d.coach, d.organiser), *menu(d))


# --- inviting ---------------------------------------------------------------------------------------------------


def invite(d: StaffStep, argument: str) -> None:
    """/invite NAME"""
    name = " ".join(argument.split())[:LONGEST_NAME]
    if name:
        invited(d, name, "")
        return
    d.ask(Inviting())
    templates = tuple(t.name for t in d.facts.templates)
    rows = rows_of(*(Choice("template", f"tpl:{n}", t) for n, t in enumerate(templates)))
    some = ((Choice("my_templates", "templates"),),) if templates else ()
    d.say(sm.AskInvitee(templates), *rows, *some, (Choice("no_keep", "cancel"),))


def invite_pressed(d: StaffStep, value: str) -> None:
    """The button contains no name, so it is always asked for."""
    invite(d, "")


def with_template(d: StaffStep, value: str) -> None:
    """A saved plan was chosen; the name is still to come."""
    names = tuple(t.name for t in d.facts.templates)
    ask_invitee(d, names[int(value)] if value.isdecimal() and int(value) < len(names) else "")


def ask_invitee(d: StaffStep, template: str) -> None:
    d.ask(Inviting(template))
    d.say(sm.AskInvitee(()), (Choice("no_keep", "cancel"),))


def invitee_typed(d: StaffStep, asking: Inviting, text: str) -> None:
    invited(d, " ".join(text.split())[:LONGEST_NAME], asking.template)


def invited(d: StaffStep, name: str, template: str) -> None:
    """Create the link; its text and picture are sent once it exists. Even a single template is not used without
    asking."""
    d.ask(None)
    plan = next((t.plan for t in d.facts.templates if t.name == template), None)
    d.do(Invite("client", name, plan))


def revoke(d: StaffStep, value: str) -> None:
    """The button under an invitation: this link no longer works. Others for the same name stay valid."""
    if value.isascii() and value.isdecimal() and len(value) < 10:
        d.do(Revoke(int(value)))
    else:  # from when buttons contained the name: which link it was is unknown
        d.say(OldButton())


def cut_to(data: str, limit: int = 64) -> str:
    """Button data are at most 64 bytes: a longer name is cut at a character boundary."""
    return data.encode()[:limit].decode(errors="ignore")


# --- settings ---------------------------------------------------------------------------------------------------


def settings(d: StaffStep, argument: str) -> None:
    slot = d.facts.slot
    weekday, at = (slot.weekday, slot.at) if slot else USUAL_DIGEST
    zone = slot.zone_name if slot else d.facts.zone_name
    own = (Choice("own_zone", "own:zone"), Choice("language", "own:language"))
    if not d.coach:
        d.say(sm.StaffSettings(weekday, at, zone, d.facts.night, False), own)
        return
    night = Choice("night_off", "night:off") if d.facts.night else Choice("night_on", "night:on")
    when = (
        (Choice("digest_slot", "own:digest"), Choice("digest_off", "nodigest"))
        if slot
        else (Choice("digest_on", "own:digest"),)
    )
    deputy = (Choice("deputy", "deputy"),)
    d.say(sm.StaffSettings(weekday, at, zone, d.facts.night, slot is not None), when, (night,), own, deputy)


def own(d: StaffStep, value: str) -> None:
    what, _, rest = value.partition(":")
    match what:
        case "digest" if d.coach and rest.isdecimal() and int(rest) < 7:
            _ask_time(d, int(rest))
        case "digest" if d.coach:
            d.ask(ChangingOwn("digest"))
            days = (Choice(f"weekday:{n}", f"own:digest:{n}") for n in range(7))
            d.say(sm.AskDigestSlot(), *rows_of(*days, width=3))
        case "hour" if rest in HOURS and isinstance(d.asking, ChangingOwn) and d.asking.weekday:
            _set_slot(d, int(d.asking.weekday), time.fromisoformat(rest))
        case "zone":
            d.ask(ChangingOwn("zone"))
            d.say(sm.AskStaffZone())
        case "language" if rest in LANGUAGES:
            d.ask(None)
            d.do(SetLanguage(rest))
            d.say(LanguageChanged())
        case "language":
            d.ask(ChangingOwn("language"))
            d.say(AskLanguage(), *rows_of(*(Choice(f"lang:{c}", f"own:language:{c}") for c in LANGUAGES)))
        case _:
            settings(d, "")


def own_again(d: StaffStep, asking: ChangingOwn) -> None:
    """Repeat the open question about a setting of one's own."""
    if asking.weekday:
        _ask_time(d, int(asking.weekday))
    else:
        own(d, asking.what)


def _ask_time(d: StaffStep, weekday: int) -> None:
    d.ask(ChangingOwn("digest", str(weekday)))
    d.say(m.EnrolQuestion("time"), *rows_of(*(Choice("hour", f"own:hour:{h}", h) for h in HOURS), width=3))


def own_typed(d: StaffStep, asking: ChangingOwn, text: str) -> bool:
    """Plain text while a setting is open; True if it was for the setting."""
    match asking.what:
        case "zone":
            found = d.facts.find_zones(text)
            if not found:
                return False
            zone_found(d, found)
        case "language":
            named = {d.facts.label(f"lang:{c}", "").casefold(): c for c in LANGUAGES} | {c: c for c in LANGUAGES}
            code = named.get(text.strip().casefold())
            if code is None:
                return False
            own(d, f"language:{code}")
        case _:
            weekday, at = weekday_and_time(text, d.words)
            if weekday is None and asking.weekday:
                weekday = int(asking.weekday)
            if weekday is None and at is None:
                return False
            if weekday is None:
                weekday = d.facts.slot.weekday if d.facts.slot else USUAL_DIGEST[0]
            if at is None:
                _ask_time(d, weekday)
            else:
                _set_slot(d, weekday, at)
    return True


def zone_found(d: StaffStep, found: tuple[str, ...]) -> None:
    if len(found) > 1:
        d.say(WhichPlace(found[:6]), *rows_of(*(Choice("place", cut_to(f"zone:{z}"), z) for z in found[:6])))
        return
    set_zone(d, found[0])


def zone(d: StaffStep, value: str) -> None:
    """A place was chosen by its button."""
    if d.facts.find_zones(value) == (value,):
        set_zone(d, value)
    else:
        own(d, "zone")


def set_zone(d: StaffStep, name: str) -> None:
    d.ask(None)
    d.do(SetZone(name))
    slot = d.facts.slot or (Slot(*USUAL_DIGEST, name) if d.coach else None)
    d.facts = replace(d.facts, zone=d.facts.zone_of(name), zone_name=name)
    if slot is None:
        settings(d, "")
    else:
        _set_slot(d, slot.weekday, slot.at)


def _set_slot(d: StaffStep, weekday: int, at: time) -> None:
    d.ask(None)
    slot = Slot(weekday, at, d.facts.zone_name)
    d.do(SetDigest(slot))
    d.facts = replace(d.facts, slot=slot)
    coming = schedule.next_due(slot, d.facts.zone, d.now).day
    d.say(sm.DigestSlotChanged(weekday, at, coming, slot.zone_name), *menu(d))


def no_digest(d: StaffStep, value: str) -> None:
    d.do(SetDigest(None))
    d.say(sm.DigestStopped(), (Choice("digest_on", "own:digest"),))


def night(d: StaffStep, value: str) -> None:
    quiet = value == "on"
    d.do(SetNight(quiet))
    d.say(sm.NightChanged(quiet))


# --- standing in ------------------------------------------------------------------------------------------------

WAITS = ("15", "30", "60", "120")  # minutes
DEPUTY_DAYS = {"always": 0, "one_week": 7, "two_weeks": 14, "four_weeks": 28}


def deputy(d: StaffStep, value: str) -> None:
    """ "": who stands in now; "8": from when to when; "8:one_week": set; "0:nobody": nobody."""
    number, _, days = value.partition(":")
    name = dict(d.facts.coaches).get(number_in(number), "")
    if days == "nobody":
        d.ask(None)
        d.do(SetDeputy(None))
        _show_deputy(d, None)
    elif name and days in DEPUTY_DAYS:
        ends = d.today + timedelta(days=DEPUTY_DAYS[days] - 1) if DEPUTY_DAYS[days] else None
        _set_deputy(d, DeputyFact(int(number), name, None if ends is None else d.today, ends))
    elif name:
        d.ask(ChoosingDeputyDays(int(number)))
        d.say(
            sm.AskDeputyDays(name),
            *rows_of(*(Choice(f"deputy_{one}", f"deputy:{number}:{one}") for one in DEPUTY_DAYS)),
            (Choice("no_keep", "cancel"),),
        )
    else:
        _show_deputy(d, d.facts.deputy)


def deputy_typed(d: StaffStep, asking: ChoosingDeputyDays, text: str) -> bool:
    """ "6 to 19 April", "next week", "until Friday"; True if it was that."""
    name = dict(d.facts.coaches).get(asking.coach_id, "")
    days = days_between(text, d.words, d.today)
    if not name or days is None:
        return False
    _set_deputy(d, DeputyFact(asking.coach_id, name, *days))
    return True


def _set_deputy(d: StaffStep, deputy: DeputyFact) -> None:
    d.ask(None)
    d.do(SetDeputy(deputy))
    _show_deputy(d, deputy)


def _show_deputy(d: StaffStep, deputy: DeputyFact | None) -> None:
    name, begins, ends = (deputy.name, deputy.begins, deputy.ends) if deputy is not None else ("", None, None)
    others = tuple((number, who) for number, who in d.facts.coaches if deputy is None or number != deputy.coach_id)
    none = ((Choice("deputy_none", "deputy:0:nobody"),),) if deputy is not None else ()
    d.say(
        sm.DeputyShown(name, begins, ends, d.facts.wait),
        *rows_of(*(Choice("coach_named", f"deputy:{number}", who) for number, who in others[:MOST_COACHES])),
        *none,
        *rows_of(*(Choice("in_minutes", f"wait:{one}", one) for one in WAITS), width=4),
    )


def wait(d: StaffStep, value: str) -> None:
    if value in WAITS:
        d.do(SetWait(int(value)))
        d.facts = replace(d.facts, wait=int(value))
    _show_deputy(d, d.facts.deputy)


# --- data and leaving -------------------------------------------------------------------------------------------


def my_data(d: StaffStep, argument: str) -> None:
    d.do(SendData())
    d.say(DataSent())


def forget(d: StaffStep, argument: str) -> None:
    """Every client has a coach, so a coach can be erased only when they have no clients left."""
    clients = sum(r.status != "left" for r in d.facts.rows)
    if clients:
        d.say(sm.StaffForgetSure(clients), (Choice("caseload", "list:name:0"),))
        return
    d.ask(AskingSure("forget"))
    d.say(sm.StaffForgetSure(0), (Choice("forget_yes", "forget"), Choice("no_keep", "cancel")))


def forget_pressed(d: StaffStep, value: str) -> None:
    """The confirmation counts only while the question is open; else it is repeated."""
    if isinstance(d.asking, AskingSure) and d.asking.what == "forget" and not d.facts.rows:
        d.state = StaffState()
        d.do(ForgetMe(sm.StaffForgotten()))
    else:
        forget(d, "")


def greeted(d: StaffStep) -> None:
    d.say(sm.StaffGreeting(), *menu(d))


def thanked(d: StaffStep) -> None:
    """Thanks that are an answer to nobody: a coach may have meant a client."""
    if d.coach:
        d.say(tm.ThanksToNobody(), (Choice("write", "write"), Choice("caseload", "list:need:0")))
    else:
        greeted(d)


def invitation_rows(invitation_id: int) -> Rows:
    """The buttons under an invitation that was just made (`bot.turns.staff_turn` sends it once the link exists)."""
    return ((Choice("revoke", f"revoke:{invitation_id}"), Choice("invite_another", "invite")),)
