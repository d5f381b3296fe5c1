"""Facts about the people whose chats are being processed: one query per kind of fact, for any number of chats.

Six queries for any number of clients: who they are (with plan, coach and the conversation's state), readings, open
flags, goals, recent encouragements, cohorts.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Any

from sqlalchemy import Connection, select

from bot.store import clients, cohorts, encouragement_history, flags, goals, readings, slots
from bot.store.clients import Client
from bot.store.dialect import among
from bot.store.people import Role, Staff
from bot.store.schema import clients as clients_table
from bot.store.schema import coaches, conversations, organisers, people
from core.dialogue.client.facts import GoalFact, Membership, OpenFlag
from core.reading import Reading


@dataclass(frozen=True, slots=True)
class CoachContact:
    """Contact details of a client's coach. chat_id: None if they no longer have a chat. reachable: whether messages
    arrive."""

    id: int
    name: str
    person_id: int | None
    chat_id: int | None
    zone_name: str | None
    quiet_nights: bool
    reachable: bool


CONTACT = (
    coaches.c.id,
    coaches.c.name,
    coaches.c.person_id,
    people.c.chat_id,
    coaches.c.zone_name,
    coaches.c.quiet_nights,
    people.c.reachable,
)


def contact_of(r: Any) -> CoachContact:
    """The coach in a row that has `CONTACT`."""
    reachable = r.chat_id is not None and bool(r.reachable)
    return CoachContact(r.id, r.name, r.person_id, r.chat_id, r.zone_name, r.quiet_nights, reachable)


@dataclass(frozen=True, slots=True)
class Known:
    """The person of a chat: a client (with their coach, if any) or staff. state: as `codec` text. deputy: who stands in
    for that coach, where it matters."""

    client: Client | None
    coach: CoachContact | None
    staff: Staff | None
    reachable: bool
    state: str | None
    state_at: datetime | None
    deputy: CoachContact | None = None


@dataclass(frozen=True, slots=True)
class History:
    """A client's history: the rest of the facts."""

    readings: tuple[Reading, ...] = ()
    flags: tuple[OpenFlag, ...] = ()
    goals: tuple[GoalFact, ...] = ()
    said: frozenset[str] = frozenset()
    cohorts: tuple[Membership, ...] = ()
    check_ins: tuple[tuple[date, bool], ...] = ()


_theirs = coaches.alias("their_coach")
_own = coaches.alias("own_coach")
_coach_person = people.alias("coach_person")
_WHO = (
    select(
        *clients.COLUMNS,
        people.c.id.label("who"),
        people.c.role.label("role"),
        people.c.name.label("person_name"),
        people.c.zone_name.label("person_zone"),
        _theirs.c.name.label("coach_name"),
        _theirs.c.zone_name.label("coach_zone"),
        _theirs.c.quiet_nights.label("coach_quiet"),
        _coach_person.c.id.label("coach_person"),
        _coach_person.c.chat_id.label("coach_chat"),
        _coach_person.c.reachable.label("coach_reachable"),
        _own.c.id.label("own_coach"),
        organisers.c.id.label("own_organiser"),
        conversations.c.state.label("state"),
        conversations.c.updated_at.label("state_at"),
    )
    .select_from(
        people.outerjoin(clients_table, clients_table.c.person_id == people.c.id)
        .outerjoin(_theirs, _theirs.c.id == clients_table.c.coach_id)
        .outerjoin(_coach_person, _coach_person.c.id == _theirs.c.person_id)
        .outerjoin(_own, _own.c.person_id == people.c.id)
        .outerjoin(organisers, organisers.c.person_id == people.c.id)
        .outerjoin(conversations, conversations.c.chat_id == people.c.chat_id)
    )
    .where(among(people.c.chat_id, "chats"))
)


def who(conn: Connection, chats: Iterable[int]) -> dict[int, Known]:
    """The person of each private chat; strangers are omitted. One query."""
    found: dict[int, Known] = {}
    for r in conn.execute(_WHO, {"chats": list(chats)}):
        client = coach = staff = None
        if r.role == Role.CLIENT.value:
            client = clients.client_of(r) if r.id is not None else None
            if r.coach_id is not None:
                coach = CoachContact(
                    r.coach_id,
                    r.coach_name,
                    r.coach_person,
                    r.coach_chat,
                    r.coach_zone,
                    r.coach_quiet,
                    r.coach_chat is not None and r.coach_reachable is not False,
                )
        else:
            staff = Staff(
                r.who, r.chat_id, r.person_name, r.person_language, r.person_zone, r.own_coach, r.own_organiser
            )
        found[r.chat_id] = Known(client, coach, staff, r.person_reachable, r.state, r.state_at)
    return found


def histories(conn: Connection, theirs: Iterable[Client], now: datetime) -> dict[int, History]:
    """The histories of clients. Five queries; two more if a programme is about to end, for its report."""
    several = list(theirs)
    wanted = [client.id for client in several]
    if not wanted:
        return {}
    series = readings.histories(conn, wanted, now)
    ending = [client.id for client in several if _ends(client, now)]
    check_ins: dict[int, tuple[tuple[date, bool], ...]] = {}
    if ending:
        series |= readings.everything(conn, ending)
        check_ins = slots.check_ins(conn, ending)
    open_flags = flags.open_flags(conn, wanted)
    aims = goals.load(conn, wanted)
    heard = encouragement_history.load(conn, wanted, now)
    member_of = cohorts.memberships(conn, wanted)
    return {
        client: History(
            series.get(client, ()),
            open_flags.get(client, ()),
            aims.get(client, ()),
            heard.get(client, frozenset()),
            member_of.get(client, ()),
            check_ins.get(client, ()),
        )
        for client in wanted
    }


def _ends(client: Client, now: datetime) -> bool:
    """A day early, so that it holds wherever they live."""
    programme = client.plan.programme
    return programme is not None and programme.ended is None and now.date() >= programme.last - timedelta(days=1)
