"""Joining: an opened invitation creates or links a client, a coach or an organiser.

One chat has one role. An existing client can move to another coach, come back, or enter a cohort, but never become
staff in the same chat; the caller does not pass such an invitation on.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from sqlalchemy import Connection, select

from bot.store import audit, clients, invitations, people
from bot.store import cohorts as store
from bot.store.clients import Client
from bot.store.facts import CONTACT, CoachContact, contact_of, who
from bot.store.invitations import Invitation, InvitationKind
from bot.store.people import Role
from bot.store.schema import clients as clients_table
from bot.store.schema import coaches
from bot.store.schema import people as people_table
from bot.turns.apply_effects import TurnEffects
from core.dialogue.client.messages_to_coach import ClientEnrolled

FOR_STAFF = frozenset({InvitationKind.COACH, InvitationKind.ORGANISER})


def joiner(invitation: Invitation | None, name: str) -> Callable[[TurnEffects], None]:
    """A function that applies `Join` for the invitation an event opened. name: as known to the messenger."""

    def join(turn: TurnEffects) -> None:
        if invitation is None:
            return  # used or expired in the meantime: the step's reply stands
        invitations.use(turn.conn, invitation, turn.now)
        if invitation.kind is InvitationKind.GROUP:
            raise ValueError("a group's link was opened by a person")
        if invitation.kind in FOR_STAFF:
            _staff(turn, invitation, invitation.for_name or name)
        elif turn.client is None:
            _new_client(turn, invitation, invitation.for_name or name)
        elif invitation.kind is InvitationKind.CLIENT:
            _other_coach(turn, invitation, turn.client)
        if invitation.kind is InvitationKind.COHORT:
            _cohort(turn, invitation)

    return join


def _staff(turn: TurnEffects, invitation: Invitation, name: str) -> None:
    role = Role.COACH if invitation.kind is InvitationKind.COACH else Role.ORGANISER
    if turn.person_id is None:
        turn.person_id = people.add(turn.conn, turn.chat_id, role, name, turn.language, turn.now)
    if invitation.kind is InvitationKind.COACH:
        made = people.add_coach(turn.conn, turn.person_id, name, turn.now)
    else:
        made = people.add_organiser(turn.conn, turn.person_id, name, turn.now)
    audit.note(turn.conn, turn.now, f"{role.value}/{made}", "joined")


def _new_client(turn: TurnEffects, invitation: Invitation, name: str) -> None:
    """Create the person, and their client row unless the coach had set one up in advance."""
    waiting = select(clients_table.c.id, clients_table.c.key_id).where(
        clients_table.c.id == invitation.client_id, clients_table.c.person_id.is_(None)
    )
    before = turn.conn.execute(waiting).one_or_none()
    key = None if before is None else before.key_id
    person_id = people.add(turn.conn, turn.chat_id, Role.CLIENT, name, turn.language, turn.now, key=key)
    cohort = (
        None
        if invitation.cohort_id is None
        else store.find(turn.conn, [invitation.cohort_id]).get(invitation.cohort_id)
    )
    coach_id = invitation.coach_id if cohort is None else cohort.coach_id
    client_id = None if before is None else before.id
    if client_id is None:
        client_id = clients.add(
            turn.conn, turn.now, name=name, coach_id=coach_id, person_id=person_id, plan=invitation.plan
        )
    else:
        clients.change(turn.conn, {client_id: {"person_id": person_id}})
    if cohort is not None:  # members who join by a cohort's link share its slot until they choose another
        clients.change(turn.conn, {client_id: clients.columns("slot", cohort.terms.slot, turn.now)})
    turn.person_id = person_id
    audit.note(turn.conn, turn.now, f"client/{client_id}", "joined", client_id)
    known = who(turn.conn, [turn.chat_id])[turn.chat_id]
    turn.client, turn.coach = known.client, known.coach


def _other_coach(turn: TurnEffects, invitation: Invitation, client: Client) -> None:
    """Move a client with their consent, or let them come back. Their new coach is notified."""
    if invitation.coach_id is None:
        return
    clients.change(turn.conn, {client.id: {"coach_id": invitation.coach_id, "called": ""}})
    audit.note(turn.conn, turn.now, f"client/{client.id}", "changed_coach", client.id)
    turn.client = replace(client, coach_id=invitation.coach_id)
    turn.coach = _coach(turn.conn, invitation.coach_id)
    turn.notify_coach(ClientEnrolled(client.id, client.name))


def _coach(conn: Connection, coach_id: int) -> CoachContact | None:
    with_person = coaches.outerjoin(people_table, people_table.c.id == coaches.c.person_id)
    r = conn.execute(select(*CONTACT).select_from(with_person).where(coaches.c.id == coach_id)).one_or_none()
    return None if r is None else contact_of(r)


def _cohort(turn: TurnEffects, invitation: Invitation) -> None:
    """Enter a cohort, even after its start. The step does the talking, and says when they are in (`EnterCohort`)."""
    if invitation.cohort_id is None or turn.client is None:
        return
    store.join(turn.conn, invitation.cohort_id, turn.client.id, turn.now, agreed=False)
    audit.note(turn.conn, turn.now, f"client/{turn.client.id}", "joined_cohort", turn.client.id)


def was_here_before(client: Client | None) -> bool:
    """Whether the person opening an invitation was here before."""
    return client is not None and client.consented


def language_from_tag(language: str | None, languages: tuple[str, ...]) -> str:
    """The language to write in, from the messenger's IETF tag: "de-AT" is "de"; English if unknown."""
    short = (language or "").split("-")[0].split("_")[0].lower()
    return short if short in languages else "en"
