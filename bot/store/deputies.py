"""Who stands in for a coach: always, for what is urgent and not acknowledged, or for some days, for everything."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from sqlalchemy import Connection, bindparam, delete, insert, or_, select, update

from bot.store import codec
from bot.store.dialect import among
from bot.store.facts import CONTACT, CoachContact, contact_of
from bot.store.schema import clients, coaches, deputies, flags, people
from bot.store.zones import zone_of
from core.dialogue.staff.facts import DeputyFact
from core.watching.digest import FlagFact, acknowledged_by, when_to_tell
from core.watching.flags import Code, Severity


def put(conn: Connection, coach_id: int, deputy: DeputyFact | None) -> None:
    """Set who stands in for a coach; None for nobody."""
    conn.execute(delete(deputies).where(deputies.c.coach_id == coach_id))
    if deputy is not None and deputy.coach_id != coach_id:
        row = {
            "coach_id": coach_id,
            "deputy_id": deputy.coach_id,
            "begins": deputy.begins,
            "ends": deputy.ends,
        }
        conn.execute(insert(deputies), row)


_OF = (
    select(deputies.c.deputy_id, coaches.c.name, deputies.c.begins, deputies.c.ends)
    .join(coaches, coaches.c.id == deputies.c.deputy_id)
    .where(deputies.c.coach_id == bindparam("coach"), coaches.c.left_at.is_(None))
)


def of(conn: Connection, coach_id: int) -> DeputyFact | None:
    """Who stands in for a coach."""
    r = conn.execute(_OF, {"coach": coach_id}).one_or_none()
    return None if r is None else DeputyFact(r.deputy_id, r.name, r.begins, r.ends)


_FOR = (
    select(deputies.c.coach_id, *CONTACT)
    .join(coaches, coaches.c.id == deputies.c.deputy_id)
    .join(people, people.c.id == coaches.c.person_id)
    .where(among(deputies.c.coach_id, "coaches"), coaches.c.left_at.is_(None))
)


def standing_in(conn: Connection, coach_ids: Iterable[int]) -> dict[int, CoachContact]:
    """Who stands in for each of several coaches, whether today or on other days. One query."""
    rows = conn.execute(_FOR, {"coaches": list(coach_ids)})
    return {r.coach_id: contact_of(r) for r in rows}


def set_wait(conn: Connection, coach_id: int, minutes: int) -> None:
    conn.execute(update(coaches).where(coaches.c.id == coach_id).values(wait_minutes=minutes))


def away(conn: Connection, coach_id: int, day: date) -> tuple[int, int] | None:
    """Deputy and their chat on a day on which they stand in for all of a coach's caseload; None on any other."""
    r = conn.execute(_AWAY, {"coach": coach_id, "day": day}).one_or_none()
    return None if r is None else (r.deputy_id, r.chat_id)


_AWAY = (
    select(deputies.c.deputy_id, people.c.chat_id)
    .join(coaches, coaches.c.id == deputies.c.deputy_id)
    .join(people, people.c.id == coaches.c.person_id)
    .where(
        deputies.c.coach_id == bindparam("coach"),
        deputies.c.begins <= bindparam("day"),
        deputies.c.ends >= bindparam("day"),
        coaches.c.left_at.is_(None),
        people.c.reachable,
    )
)


@dataclass(frozen=True, slots=True)
class Waiting:
    """An alarm that nobody has acknowledged. due_at: when it goes to the deputy. chat_id, person_id: of the deputy."""

    flag: FlagFact
    client_id: int
    name: str
    coach_id: int
    coach_name: str
    waited: timedelta
    due_at: datetime
    chat_id: int
    person_id: int


_coach, _deputy = coaches.alias("its_coach"), coaches.alias("its_deputy")
_coach_person, _deputy_person = people.alias("person_of_coach"), people.alias("person_of_deputy")
_WAITING = (
    select(
        flags,
        clients.c.name.label("client_name"),
        clients.c.coach_id,
        _coach.c.name.label("coach_name"),
        _coach.c.zone_name.label("coach_zone"),
        _coach.c.quiet_nights,
        _coach.c.wait_minutes,
        _coach_person.c.chat_id.label("coach_chat"),
        _coach_person.c.reachable.label("coach_reachable"),
        _deputy_person.c.chat_id.label("deputy_chat"),
        _deputy_person.c.id.label("deputy_person"),
        deputies.c.begins,
        deputies.c.ends,
    )
    .select_from(
        deputies.join(clients, clients.c.coach_id == deputies.c.coach_id)
        .join(flags, flags.c.client_id == clients.c.id)
        .join(_coach, _coach.c.id == deputies.c.coach_id)
        .outerjoin(_coach_person, _coach_person.c.id == _coach.c.person_id)
        .join(_deputy, _deputy.c.id == deputies.c.deputy_id)
        .join(_deputy_person, _deputy_person.c.id == _deputy.c.person_id)
    )
    .where(
        flags.c.severity == Severity.URGENT.value,
        flags.c.cleared_at.is_(None),
        or_(flags.c.acknowledged_at.is_(None), flags.c.acknowledged_at < flags.c.refreshed_at),
        or_(flags.c.escalated_at.is_(None), flags.c.escalated_at < flags.c.refreshed_at),
        _deputy.c.left_at.is_(None),
        _deputy_person.c.reachable,
    )
    .order_by(flags.c.id)
)


def waiting(conn: Connection) -> list[Waiting]:
    """Every alarm that waits for a coach who has a deputy, with when it goes to them. One query."""
    found = []
    for r in conn.execute(_WAITING):
        try:
            Code(r.code)
            evidence = codec.loads(r.evidence) if r.evidence else ()
        except (ValueError, codec.CodecError):
            evidence = ()
        fact = FlagFact(r.id, r.code, r.severity, r.measure or None, evidence, r.since)  # type: ignore[arg-type]
        zone = zone_of(r.coach_zone)
        told = when_to_tell(fact, r.refreshed_at, zone, quiet_nights=r.quiet_nights)
        heard = r.coach_chat is not None and r.coach_reachable is not False
        wait = acknowledged_by(fact, timedelta(minutes=r.wait_minutes)) if heard else timedelta(0)
        due = told + wait
        day = due.astimezone(zone).date()
        if r.begins is not None and not r.begins <= day <= r.ends:
            continue
        found.append(
            Waiting(
                fact,
                r.client_id,
                r.client_name,
                r.coach_id,
                r.coach_name or "",
                wait,
                due,
                r.deputy_chat,
                r.deputy_person,
            )
        )
    return found


def escalated(conn: Connection, flag_ids: list[int], now: datetime) -> None:
    conn.execute(update(flags).where(among(flags.c.id, "ids")).values(escalated_at=now), {"ids": flag_ids})


def acknowledge(conn: Connection, client_id: int, now: datetime) -> None:
    """A coach reacts to what is urgent about a client: it goes to nobody else. Authorised by the caller."""
    conn.execute(
        update(flags)
        .where(flags.c.client_id == client_id, flags.c.severity == Severity.URGENT.value, flags.c.cleared_at.is_(None))
        .values(acknowledged_at=now)
    )
