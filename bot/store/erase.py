"""Erasing a person: no reading, name or message text of theirs stays, in the file or in its log.

SQLite overwrites what is deleted (secure_delete), and its log is emptied after the commit (`scrub_after`). On
PostgreSQL deleted rows are overwritten when VACUUM next passes. A backup made before still has everything.
"""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import Connection, delete, or_, select

from bot.store import audit, conversations, timers, unread
from bot.store.database import scrub_after
from bot.store.schema import (
    clients,
    coaches,
    cohorts,
    inbox,
    invitations,
    organisers,
    outbox,
    people,
)


def client(conn: Connection, client_id: int, now: datetime, actor: str = "") -> None:
    """Erase a client: their row and everything that hangs on it, their chat, and what staff would still be told.

    What they typed meanwhile and nobody has handled stays until it is: then it comes from a stranger. actor: who
    asked, as in `audit`; the client themselves unless said.
    """
    person = conn.execute(
        select(people.c.id, people.c.chat_id)
        .join(clients, clients.c.person_id == people.c.id)
        .where(clients.c.id == client_id)
    ).one_or_none()
    conn.execute(delete(outbox).where(outbox.c.about == client_id))
    conn.execute(delete(invitations).where(invitations.c.client_id == client_id))
    conn.execute(delete(clients).where(clients.c.id == client_id))
    if person is not None:
        _person(conn, person.id, person.chat_id)
    audit.note(conn, now, actor or f"client/{client_id}", "erased", client_id)
    scrub_after(conn)


def staff(conn: Connection, person_id: int, now: datetime, actor: str) -> None:
    """Erase a coach or organiser: their name, notes, templates, invitations and chat. Clients stay, without a coach."""
    chat_id = conn.execute(select(people.c.chat_id).where(people.c.id == person_id)).scalar_one_or_none()
    mine = select(coaches.c.id).where(coaches.c.person_id == person_id)
    organised = select(organisers.c.id).where(organisers.c.person_id == person_id)
    run = select(cohorts.c.id).where(or_(cohorts.c.coach_id.in_(mine), cohorts.c.organiser_id.in_(organised)))
    conn.execute(delete(invitations).where(or_(invitations.c.coach_id.in_(mine), invitations.c.cohort_id.in_(run))))
    conn.execute(delete(coaches).where(coaches.c.person_id == person_id))
    conn.execute(delete(organisers).where(organisers.c.person_id == person_id))
    if chat_id is not None:
        _person(conn, person_id, chat_id)
    audit.note(conn, now, actor, "erased")
    scrub_after(conn)


def _person(conn: Connection, person_id: int, chat_id: int) -> None:
    conn.execute(delete(outbox).where(or_(outbox.c.person_id == person_id, outbox.c.chat_id == chat_id)))
    conn.execute(delete(inbox).where(inbox.c.chat_id == chat_id, inbox.c.status == "set_aside"))
    unread.forget(conn, chat_id)
    timers.forget_chat(conn, chat_id)
    conversations.forget(conn, chat_id)
    conn.execute(delete(people).where(people.c.id == person_id))
