"""People: one per private chat, with one role."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from sqlalchemy import Connection, insert, select, update

from bot.store import owners
from bot.store.keyring import of_connection
from bot.store.schema import coaches, organisers, people
from bot.store.sealed import secret


class Role(StrEnum):
    CLIENT = "client"
    COACH = "coach"
    ORGANISER = "organiser"


@dataclass(frozen=True, slots=True)
class Staff:
    """A coach, an organiser, or both. chat_id: where they are written to."""

    person_id: int
    chat_id: int
    name: str
    language: str
    zone_name: str | None
    coach_id: int | None
    organiser_id: int | None


def add(
    conn: Connection, chat_id: int, role: Role, name: str, language: str, now: datetime, *, key: str | None = None
) -> int:
    """Make the person of a chat that has none; their id. key: that of the client they are already, None makes one.

    Raises: IntegrityError if the chat already has one (a bug: a chat has one role).
    """
    key = key or of_connection(conn).make(now.date())
    row = {
        "chat_id": chat_id,
        "key_id": key,
        "role": role.value,
        "name": secret(key, name),
        "language": language,
        "created_at": now,
    }
    made: int = conn.execute(insert(people).returning(people.c.id), row).scalar_one()
    owners.remember(conn, key, person=made)
    return made


def person_of(conn: Connection, chat_id: int) -> int | None:
    """The id of the person of a private chat; None for a stranger."""
    return conn.execute(select(people.c.id).where(people.c.chat_id == chat_id)).scalar_one_or_none()


def set_language(conn: Connection, person_id: int, language: str) -> None:
    conn.execute(update(people).where(people.c.id == person_id).values(language=language))


def set_reachable(conn: Connection, chat_id: int, reachable: bool) -> None:
    """Record whether the messenger can deliver to this chat."""
    conn.execute(update(people).where(people.c.chat_id == chat_id).values(reachable=reachable))


def add_coach(conn: Connection, person_id: int, name: str, now: datetime) -> int:
    """Make a person a coach; return the coach's id."""
    row = {"person_id": person_id, "name": secret(owners.of_person(conn, person_id), name), "created_at": now}
    made: int = conn.execute(insert(coaches).returning(coaches.c.id), row).scalar_one()
    return made


def add_organiser(conn: Connection, person_id: int, name: str, now: datetime) -> int:
    """Make a person an organiser (a coach may be one too); return the organiser's id."""
    row = {"person_id": person_id, "name": secret(owners.of_person(conn, person_id), name), "created_at": now}
    made: int = conn.execute(insert(organisers).returning(organisers.c.id), row).scalar_one()
    return made


_staff = (
    select(
        people.c.id,
        people.c.chat_id,
        people.c.name,
        people.c.language,
        people.c.zone_name,
        coaches.c.id.label("coach_id"),
        organisers.c.id.label("organiser_id"),
    )
    .select_from(
        people.outerjoin(coaches, coaches.c.person_id == people.c.id).outerjoin(
            organisers, organisers.c.person_id == people.c.id
        )
    )
    .where(people.c.role != Role.CLIENT.value)
)


def staff(conn: Connection, chat_id: int) -> Staff | None:
    """The coach or organiser of this chat; None for anybody else."""
    r = conn.execute(_staff.where(people.c.chat_id == chat_id)).one_or_none()
    if r is None:
        return None
    return Staff(r.id, r.chat_id, r.name, r.language, r.zone_name, r.coach_id, r.organiser_id)


def coach(conn: Connection, coach_id: int) -> Staff | None:
    """A coach by id, if they have a chat."""
    r = conn.execute(_staff.where(coaches.c.id == coach_id)).one_or_none()
    if r is None:
        return None
    return Staff(r.id, r.chat_id, r.name, r.language, r.zone_name, r.coach_id, r.organiser_id)
