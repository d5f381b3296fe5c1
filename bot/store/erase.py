"""Erasing a person: no reading, name or message text of theirs stays, in the database, its log or anywhere else.

Their rows go, and with them every row that names their chat beside an instant. Their key is destroyed after the commit
and the log emptied (`erasures`); their goodbye waits for that. What a log, a replica or a backup still holds of them is
sealed with a key that is nowhere any more.
"""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import Connection, delete, or_, select

from bot.store import audit, conversations, erasures, inbox, mentions, menus, rate_limit, timers, unread
from bot.store.schema import (
    clients,
    coaches,
    cohorts,
    invitations,
    organisers,
    outbox,
    people,
)


def client(conn: Connection, client_id: int, now: datetime, actor: str = "") -> None:
    """Erase a client: their row and everything that depends on it, their chat, and pending messages to staff about
    them.

    Their unhandled inbox rows stay until handled, as coming from a stranger. actor: who requested it, as in `audit`; by
    default the client.
    """
    person = conn.execute(
        select(people.c.id, people.c.chat_id, people.c.key_id)
        .join(clients, clients.c.person_id == people.c.id)
        .where(clients.c.id == client_id)
    ).one_or_none()
    known = conn.execute(select(clients.c.key_id, clients.c.name).where(clients.c.id == client_id)).one_or_none()
    if known is not None:
        mentions.drop(conn, mentions.Erased(client_id, known.name), now)
    conn.execute(delete(outbox).where(outbox.c.about == client_id))
    conn.execute(delete(invitations).where(invitations.c.client_id == client_id))
    conn.execute(delete(clients).where(clients.c.id == client_id))
    if person is not None:
        _person(conn, person.id, person.chat_id, client_id, now)
    audit.note(conn, now, actor or f"client/{client_id}", "erased", client_id)
    erasures.owe(conn, now, {"" if known is None else known.key_id, "" if person is None else person.key_id})


def staff(conn: Connection, person_id: int, now: datetime, actor: str) -> None:
    """Erase a coach or organiser: name, notes, templates, invitations and chat. Clients stay, without a coach."""
    person = conn.execute(select(people.c.chat_id, people.c.key_id).where(people.c.id == person_id)).one_or_none()
    mine = select(coaches.c.id).where(coaches.c.person_id == person_id)
    organised = select(organisers.c.id).where(organisers.c.person_id == person_id)
    run = select(cohorts.c.id).where(or_(cohorts.c.coach_id.in_(mine), cohorts.c.organiser_id.in_(organised)))
    conn.execute(delete(invitations).where(or_(invitations.c.coach_id.in_(mine), invitations.c.cohort_id.in_(run))))
    conn.execute(delete(coaches).where(coaches.c.person_id == person_id))
    conn.execute(delete(organisers).where(organisers.c.person_id == person_id))
    if person is not None:
        _person(conn, person_id, person.chat_id, None, now)
        menus.forget(conn, person.chat_id)
    audit.note(conn, now, actor, "erased")
    erasures.owe(conn, now, () if person is None else (person.key_id,))


def _person(conn: Connection, person_id: int, chat_id: int, client_id: int | None, now: datetime) -> None:
    conn.execute(delete(outbox).where(or_(outbox.c.person_id == person_id, outbox.c.chat_id == chat_id)))
    inbox.erase(conn, chat_id, client_id, now)
    rate_limit.forget_chat(conn, chat_id)
    unread.forget(conn, chat_id)
    timers.forget_chat(conn, chat_id)
    conversations.forget(conn, chat_id)
    conn.execute(delete(people).where(people.c.id == person_id))
