"""A turn of a coach or organiser: load what the step needs through the caseload, and apply its effects.

`StaffTurn` is plugged into `bot.turns.turn.Steps`. Rights are checked twice: the step sees only clients of the
caseload, and an effect on a client goes through `caseload` again before anything is written. Everything is written at
once, in the turn's savepoint; news for a client goes into the client's inbox, and their own conversation delivers it.
"""

from __future__ import annotations

import secrets
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime, tzinfo

from sqlalchemy import Connection

from bot.store import (
    audit,
    caseload,
    clients,
    coach_thread,
    deputies,
    erase,
    inbox,
    invitations,
    outbox,
    people,
    readings,
    timers,
)
from bot.store import cohorts as cohort_store
from bot.store import staff as store
from bot.store.clients import Client
from bot.store.inbox import NewEvent
from bot.store.invitations import GOOD_FOR, InvitationKind
from bot.store.outbox import Outgoing
from bot.store.people import Staff
from bot.store.staff import LookUps
from bot.store.zones import zone_of
from bot.turns import cohorts
from bot.turns.apply_effects import TurnEffects
from core.care import Plan, Status
from core.client import Caution
from core.dialogue.client.facts import InvitationFact
from core.dialogue.engines import staff
from core.dialogue.kit.effects import Say
from core.dialogue.kit.events import Command, Event, FromCoach, PlanChanged
from core.dialogue.staff import effects as fx
from core.dialogue.staff import messages as sm
from core.dialogue.staff import talk_messages as tm
from core.dialogue.staff.cohort_effects import CohortEffect
from core.dialogue.staff.facts import DeputyFact
from core.dialogue.staff.settings import invitation_rows
from core.dialogue.staff.states import FRESH_STAFF, StaffState
from core.dialogue.staff.step import StaffOutcome, about
from core.reading import Reading
from core.watching.digest import Digest, Size


def look_ups() -> LookUps:
    """The look-ups of `bot.rendering`."""
    from bot.rendering import Reader
    from bot.rendering.phrases.labels import labeller
    from bot.rendering.phrases.staff_digest import size
    from bot.rendering.places import find_zones
    from bot.rendering.voice import voice

    def digest_size(made: Digest, language: str, zone: tzinfo) -> Size:
        return size(made, voice(Reader(language, zone=zone)))

    return LookUps(find_zones, lambda language, key, argument: labeller(language)(key, argument), digest_size)


Exporter = Callable[[str, Client, Sequence[Reading], datetime], str]  # form, whose, readings, now


def nothing_to_export(form: str, client: Client, readings: Sequence[Reading], now: datetime) -> str:
    return ""


@dataclass(frozen=True)
class StaffTurn:
    """link, group_link: of an invitation's token, for a person and for a group chat.  look: pure look-ups provided to
    the core.  export: makes a file of readings."""

    look: LookUps
    link: Callable[[str], str]
    group_link: Callable[[str], str] = str
    export: Exporter = nothing_to_export

    def step(self, conn: Connection, who: Staff, state: object | None, event: Event, now: datetime) -> StaffOutcome:
        """Decide one event. state: None at first, when the event is the invitation."""
        kept = state if isinstance(state, StaffState) else FRESH_STAFF
        opened = isinstance(event, Command) and event.name == "start"
        if state is None and opened:
            return staff.joined(store.facts(conn, who, (), now, self.look), now)
        invitation = _opened(conn, event.argument, now) if isinstance(event, Command) and opened else None
        facts = store.facts(conn, who, staff.needs(kept, event, who.language), now, self.look, invitation)
        return staff.step(kept, event, facts, now)

    def apply(self, conn: Connection, who: Staff, effect: object, turn: TurnEffects) -> None:
        """Apply one effect that only staff have.

        Raises: ValueError if it is not a staff effect; StalePlan if a client's plan was changed concurrently.
        """
        match effect:
            case _ if isinstance(effect, CohortEffect):
                cohorts.apply(conn, who, effect, turn, cohorts.Links(self.link, self.group_link))
            case fx.ForgetMe(farewell):
                _forget(conn, who, turn, farewell)
            case fx.SetLanguage(language):
                people.set_language(conn, who.person_id, language)
            case fx.SetZone(zone_name):
                store.set_zone(conn, who, zone_name)
            case _ if who.coach_id is not None:
                self._of_coach(conn, who, who.coach_id, effect, turn)
            case _:
                raise ValueError(f"{type(effect).__name__} is an effect of a coach's conversation")

    def _of_coach(self, conn: Connection, who: Staff, coach_id: int, effect: object, turn: TurnEffects) -> None:
        now = turn.now
        match effect:
            case fx.Invite():
                self._invite(conn, who, coach_id, effect, turn)
            case fx.Revoke(number):
                names = {n: name for n, name, _ in invitations.open_of(conn, coach_id, now)}
                gone = invitations.revoke(conn, number, coach_id, now)
                turn.say(Say(sm.InvitationRevoked(names.get(number, "") if gone else "")))
            case fx.MarkSeen(flag_ids, until):
                store.mark_seen(conn, coach_id, flag_ids, until, now)
            case fx.ToldInDigest(flag_ids):
                store.told_in_digest(conn, coach_id, flag_ids, now)
            case fx.SaveTemplate(name, plan):
                store.save_template(conn, coach_id, name, plan, now)
            case fx.DropTemplate(name):
                store.drop_template(conn, coach_id, name)
            case fx.SetDigest(slot):
                store.set_digest(conn, coach_id, slot, now)
            case fx.SetNight(quiet):
                store.set_nights(conn, coach_id, quiet)
            case fx.SetDeputy(deputy):
                _set_deputy(conn, who, coach_id, deputy, now)
            case fx.SetWait(minutes):
                deputies.set_wait(conn, coach_id, minutes)
            case fx.WriteTo() | fx.ClearFlags():
                day = now.astimezone(zone_of(who.zone_name)).date()
                reached = caseload.reached(conn, coach_id, effect.client_id, day)
                if reached is not None:
                    deputies.acknowledge(conn, reached.client.id, now)
                    _of_client(conn, who, coach_id, reached.client, effect, turn)
            case fx.Export(client_id, form):
                client = caseload.client(conn, coach_id, client_id)
                if client is not None:
                    self._export(conn, who, coach_id, client, form, now)
            case fx.ChangePlan() | fx.SaveNote() | fx.CallClient() | fx.HandOver() | fx.EndCare() | fx.AnswerCohort():
                client = caseload.client(conn, coach_id, effect.client_id)
                if client is not None:
                    _of_client(conn, who, coach_id, client, effect, turn)
            case _:
                raise ValueError(f"{type(effect).__name__} is not an effect of a coach's conversation")

    def _export(self, conn: Connection, who: Staff, coach_id: int, client: Client, form: str, now: datetime) -> None:
        """Send a coach all readings of a client of theirs, side notes left out."""
        series = readings.everything(conn, [client.id]).get(client.id, ())
        called = caseload.names(conn, coach_id).get(client.id, client.name)
        said: object = tm.NothingToExport(called)
        if any(reading.counts for reading in series):
            day = now.astimezone(zone_of(who.zone_name)).date()
            said = tm.ClientFile(called, form, day, self.export(form, client, series, now))
        out = Outgoing(who.chat_id, said, now, about(client.id), who.person_id, about=client.id)
        outbox.put(conn, [out], now)
        audit.note(conn, now, f"coach/{coach_id}", f"exported_{form}", client.id)

    def _invite(self, conn: Connection, who: Staff, coach_id: int, effect: fx.Invite, turn: TurnEffects) -> None:
        """Create and send the link: the text first, so that it can be forwarded, then the picture."""
        kind = InvitationKind(effect.kind)
        token = invitations.make(
            conn,
            kind,
            turn.now,
            by_name=who.name,
            for_name=effect.for_name,
            coach_id=coach_id,
            plan=effect.plan,
            cohort_id=effect.cohort_id,
        )
        link = self.link(token)
        until = (turn.now + GOOD_FOR).astimezone(zone_of(who.zone_name)).date()
        rows = invitation_rows(invitations.find(conn, [token], turn.now)[token].id)
        turn.say(Say(sm.InvitationMade(kind.value, effect.for_name, link, until), rows))
        turn.say(Say(sm.LinkPicture(link, effect.for_name)))
        audit.note(conn, turn.now, f"coach/{coach_id}", f"invited_{kind.value}")


def _set_deputy(conn: Connection, who: Staff, coach_id: int, deputy: DeputyFact | None, now: datetime) -> None:
    """Set who stands in, and tell them; only another coach who is here can."""
    to = None if deputy is None else people.coach(conn, deputy.coach_id)
    if deputy is not None and (to is None or deputy.coach_id == coach_id):
        return
    deputies.put(conn, coach_id, deputy)
    if deputy is not None and to is not None:
        said = sm.YouStandIn(who.name, deputy.begins, deputy.ends)
        outbox.put(conn, [Outgoing(to.chat_id, said, now, (), to.person_id)], now)
    audit.note(conn, now, f"coach/{coach_id}", "set_deputy" if deputy is not None else "dropped_deputy")


def _opened(conn: Connection, token: str, now: datetime) -> InvitationFact | None:
    """The invitation opened by existing staff, if valid."""
    found = invitations.find(conn, [token], now).get(token)
    if found is None or found.kind is InvitationKind.GROUP:
        return None
    return InvitationFact(found.kind.value, found.by_name, found.for_name, True)


# --- on one client ----------------------------------------------------------------------------------------------


def _of_client(conn: Connection, who: Staff, coach_id: int, client: Client, effect: object, turn: TurnEffects) -> None:
    """Apply an effect on one client of this caseload."""
    now = turn.now
    match effect:
        case fx.WriteTo(_, text):
            coach_thread.put(conn, [(client.id, coach_id, coach_thread.Direction.TO_CLIENT, text)], now)
            store.answered(conn, client, coach_id, now)
            by = 0 if client.coach_id == coach_id else coach_id
            _notify_client(conn, client, [FromCoach(now, who.name, text, by)], now)
        case fx.ChangePlan():
            _change(conn, client, effect, now)
        case fx.SaveNote(_, text):
            store.save_note(conn, client, coach_id, text, now)
        case fx.CallClient(_, name):
            clients.change(conn, {client.id: clients.columns("called", name, now)})
        case fx.ClearFlags(_, flag_ids, done, words):
            store.clear(conn, client, coach_id, flag_ids, done, words, now)
        case fx.HandOver(_, to_coach):
            _hand_over(conn, who, coach_id, client, to_coach, now)
        case fx.EndCare():
            _end(conn, who, client, now)
        case fx.AnswerCohort(_, cohort_id, yes):
            cohorts.answered(conn, client, cohort_id, turn, yes=yes)
    audit.note(conn, now, f"coach/{coach_id}", CODES[type(effect)], client.id)


CODES: dict[type, str] = {
    fx.WriteTo: "wrote",
    fx.ChangePlan: "changed_plan",
    fx.SaveNote: "noted",
    fx.CallClient: "named",
    fx.ClearFlags: "cleared_flags",
    fx.HandOver: "handed_over",
    fx.EndCare: "ended_care",
    fx.AnswerCohort: "answered_cohort",
}


def _notify_client(conn: Connection, client: Client, events: Sequence[Event], now: datetime) -> None:
    """Put events into a client's inbox, if they have a chat, for their own conversation to handle."""
    if client.chat_id is not None:
        rows = [NewEvent(f"coach/{secrets.token_hex(12)}", client.chat_id, event) for event in events]
        inbox.put(conn, rows, now)


def _change(conn: Connection, client: Client, effect: fx.ChangePlan, now: datetime) -> None:
    values: dict[str, object] = {}
    if effect.plan is not None:
        clients.set_plan(conn, client, effect.plan)
        if _begins_anew(client, effect.plan):
            values |= clients.columns("status", Status.ACTIVE, now)
            zone = zone_of(client.slot.zone_name if client.slot else None)
            values |= clients.next_due(Status.ACTIVE, client.slot, None, zone, now)
    if effect.slot is not None:
        values |= clients.columns("slot", effect.slot, now)
        zone = zone_of(effect.slot.zone_name)
        values |= clients.next_due(client.status, effect.slot, client.paused_until, zone, now)
    if effect.cautions is not None:
        values |= clients.columns("cautions", frozenset(Caution(c) for c in effect.cautions), now)
        values |= clients.columns("cautions_known", True, now)
        if Caution.RATE_LIMITING_MEDICINE not in effect.cautions:
            values |= clients.columns("medicines", frozenset(), now)
    clients.change(conn, {client.id: values})
    if effect.what:
        _notify_client(conn, client, [PlanChanged(now, effect.what, effect.detail)], now)


def _begins_anew(client: Client, plan: Plan) -> bool:
    """Whether somebody whose programme was over has a new one, or one without an end."""
    over = plan.programme is not None and plan.programme.ended is not None
    return client.status is Status.FINISHED and not over


def _hand_over(conn: Connection, who: Staff, coach_id: int, client: Client, to_coach: int, now: datetime) -> None:
    """Hand a client over to an active coach and notify both. From then on the former coach has no access."""
    to = people.coach(conn, to_coach)
    if to is None or to_coach == coach_id:
        return
    store.hand_over(conn, client, coach_id, to_coach)
    told = Outgoing(
        to.chat_id,
        sm.TakenOver(client.id, caseload.names(conn, to_coach).get(client.id, client.name), who.name),
        now,
        about(client.id),
        to.person_id,
        about=client.id,
    )
    outbox.put(conn, [told], now)
    _notify_client(conn, client, [PlanChanged(now, "hand_over", to.name)], now)


def _end(conn: Connection, who: Staff, client: Client, now: datetime) -> None:
    """End care: the client is told, and nothing more is asked; their data stays until erased by them or by
    retention."""
    values = clients.columns("status", Status.LEFT, now)
    values |= clients.next_due(Status.LEFT, None, None, zone_of(None), now)
    clients.change(conn, {client.id: values})
    cohort_store.leave(conn, client.id, now)
    if client.chat_id is not None:
        timers.forget_chat(conn, client.chat_id)
    _notify_client(conn, client, [PlanChanged(now, "end_care", who.name)], now)


def _forget(conn: Connection, who: Staff, turn: TurnEffects, farewell: object) -> None:
    """Erase a coach or organiser, but never a coach who still has clients, whatever the step assumed."""
    if who.coach_id is not None and any(c.status is not Status.LEFT for c in caseload.everybody(conn, who.coach_id)):
        turn.say(Say(sm.StaffForgetSure(1)))
        return
    if who.organiser_id is not None:
        cohorts.end_all(conn, who.organiser_id, turn.now)
    actor = f"coach/{who.coach_id}" if who.coach_id is not None else f"organiser/{who.organiser_id}"
    erase.staff(conn, who.person_id, turn.now, actor)
    turn.person_id, turn.erased = None, True
    turn.say(Say(farewell))
