"""Clients: one row each, read as one value. Coaches access them through `caseload` only.

Writing is per column, so a client's turn and a coach's concurrent edit do not overwrite each other. The plan is one
value that both may change, so it is replaced only if unchanged since it was read (compare-and-set; `StalePlan`
otherwise).
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date, datetime, time, tzinfo
from decimal import Decimal
from functools import lru_cache
from types import SimpleNamespace
from typing import Any

from sqlalchemy import Connection, Text, bindparam, insert, select, type_coerce, update

from bot.foundation import log
from bot.store import codec, owners
from bot.store.keyring import of_connection
from bot.store.schema import clients, people
from bot.store.sealed import Sealed, is_whole, secret
from core import schedule
from core.care import Plan, Slot, Status, Units
from core.client import Background, Caution, Profile, Sex
from core.judging.readiness import UNASKED, Readiness
from core.quantity import Unit

USUAL = Plan()
_SEALED = frozenset(column.name for column in clients.c if isinstance(column.type, Sealed))

_log = log.get("store")


class StalePlan(Exception):
    """The plan was changed by somebody else since it was read; read it again and retry."""


@dataclass(frozen=True, slots=True)
class Client:
    """Everything the row says. chat_id, language, reachable: of the person, once there is one. key: what is theirs is
    sealed with. plan_text: the plan as it is stored, sealed."""

    id: int
    key: str
    person_id: int | None
    chat_id: int | None
    language: str
    reachable: bool
    coach_id: int | None
    status: Status
    name: str
    consented: bool
    profile: Profile
    units: Units
    slot: Slot | None
    plan: Plan
    plan_text: str | None
    paused_until: date | None
    next_due_at: datetime | None
    next_due_day: date | None
    asked: date | None
    answered: date | None
    missed: int
    created_at: datetime
    left_at: datetime | None
    called: str = ""  # by the coach, if not by their name
    readiness: Readiness = UNASKED
    whole: bool = True  # False: the row is corrupt, and plan, profile, units or status are placeholders


COLUMNS = (
    *(column for column in clients.c if column.name not in ("baseline_since",)),
    type_coerce(clients.c.plan, Text).label("plan_text"),
    people.c.chat_id.label("chat_id"),
    people.c.language.label("person_language"),
    people.c.reachable.label("person_reachable"),
)


@lru_cache(maxsize=1024)
def _plan(text: str) -> Plan:
    return codec.loads_as(Plan, text)


@lru_cache(maxsize=1024)
def _readiness(text: str) -> Readiness:
    return codec.loads_as(Readiness, text)


def plan_of(text: str | None) -> Plan:
    """The plan in a column; None is the default plan.

    Raises: CodecError for a corrupt one: a plan is never guessed.
    """
    return USUAL if text is None else _plan(text)


def client_of(r: Any) -> Client:
    """Read a row that has `COLUMNS`.

    Raises: ValueError for a damaged one.
    """
    slot = None
    if not is_whole(r.birth_year, r.birth_date, r.stature):
        raise codec.CodecError("the profile of a client cannot be opened")
    if r.weekday is not None and r.at is not None and r.zone_name is not None:
        slot = Slot(r.weekday, r.at, r.zone_name)
    return Client(
        r.id,
        r.key_id,
        r.person_id,
        r.chat_id,
        r.person_language or "en",
        r.person_reachable is not False,
        r.coach_id,
        Status(r.status),
        r.name,
        r.consented_at is not None,
        Profile(
            Sex(r.sex) if r.sex else None,
            r.birth_year,
            r.birth_date,
            r.stature,
            Background(r.background) if r.background else None,
            frozenset(map(Caution, r.cautions.split(","))) if r.cautions else frozenset(),
            frozenset(r.medicines.split(",")) if r.medicines else frozenset(),
            r.cautions_known,
        ),
        Units(Unit(r.mass_unit), Unit(r.length_unit)),
        slot,
        plan_of(r.plan),
        r.plan_text,
        r.paused_until,
        r.next_due_at,
        r.next_due_day,
        r.asked,
        r.answered,
        r.missed,
        r.created_at,
        r.left_at,
        r.called if is_whole(r.called) else "",
        _readiness(r.readiness) if r.readiness else UNASKED,
    )


def shown(r: Any) -> Client:
    """A client from a row with `COLUMNS`, for lists: a corrupt row must neither hide the others nor be hidden."""
    try:
        return client_of(r)
    except ValueError as error:  # CodecError is one
        _log.error("the row of a client cannot be loaded", row=r.id, fault=log.fault(error))
    known = r.status if r.status in {status.value for status in Status} else Status.ACTIVE.value
    plain = {
        "status": known,
        "sex": None,
        "background": None,
        "cautions": "",
        "medicines": "",
        "plan": None,
        "readiness": None,
    }
    plain |= {"birth_year": None, "birth_date": None, "stature": None}
    plain |= {"mass_unit": Unit.KILOGRAM.value, "length_unit": Unit.CENTIMETRE.value}
    return replace(client_of(SimpleNamespace(**{**r._mapping, **plain})), whole=False)


ALL = select(*COLUMNS).select_from(clients.outerjoin(people, people.c.id == clients.c.person_id))


def add(
    conn: Connection,
    now: datetime,
    *,
    name: str,
    coach_id: int | None,
    person_id: int | None = None,
    plan: Plan | None = None,
) -> int:
    """Create a client who has yet to enrol; return the id."""
    key = of_connection(conn).make(now.date()) if person_id is None else owners.of_person(conn, person_id)
    row = {
        "person_id": person_id,
        "coach_id": coach_id,
        "key_id": key,
        "status": Status.ENROLLING.value,
        "name": secret(key, name),
        "cautions_known": False,
        "plan": None if plan is None else secret(key, codec.dumps(plan)),
        "baseline_since": None if plan is None else plan.baseline_since,
        "created_at": now,
    }
    made: int = conn.execute(insert(clients).returning(clients.c.id), row).scalar_one()
    owners.remember(conn, key, client=made)
    return made


# --- what a turn learns ------------------------------------------------------------------------------------


def columns(field: str, value: Any, now: datetime) -> dict[str, Any]:
    """The columns of one changed field (see `effects.ChangeClient`), `plan`, `language` and `zone` apart.

    Raises: ValueError for an unknown field or an impossible value (a programming error).
    """
    match field, value:
        case "slot", Slot():
            return {"weekday": value.weekday, "at": value.at, "zone_name": value.zone_name}
        case "slot", None:
            return {"weekday": None, "at": None}
        case "units", Units():
            return {"mass_unit": value.mass.value, "length_unit": value.length.value}
        case "status", Status():
            return {"status": value.value, "left_at": now if value is Status.LEFT else None}
        case "consented", bool():
            return {"consented_at": now if value else None}
        case "cautions", frozenset():
            return {"cautions": ",".join(sorted(caution.value for caution in value))}
        case "cautions_known", bool():
            return {"cautions_known": value}
        case "readiness", Readiness():
            return {"readiness": codec.dumps(value)}
        case "medicines", frozenset():
            return {"medicines": ",".join(sorted(value))}
        case "sex", Sex() | None:
            return {"sex": value.value if value else None}
        case "background", Background() | None:
            return {"background": value.value if value else None}
        case "stature", Decimal() | None:
            return {"stature": value}
        case "birth_year", int() | None:
            return {"birth_year": value}
        case (("birth_date" | "paused_until"), date() | None):
            return {field: value}
        case (("name" | "called"), str()):
            return {field: value}
    raise ValueError(f"a client has no {field} of type {type(value).__name__}")


def change(conn: Connection, changes: Mapping[int, Mapping[str, Any]]) -> None:
    """Set columns of clients, by id. One statement per set of columns."""
    theirs = [client_id for client_id, values in changes.items() if not _SEALED.isdisjoint(values)]
    keys = owners.of_clients(conn, theirs)
    grouped: dict[tuple[str, ...], list[dict[str, Any]]] = {}
    for client_id, values in changes.items():
        if values:
            names = tuple(sorted(values))
            new = {f"new_{n}": secret(keys[client_id], values[n]) if n in _SEALED else values[n] for n in names}
            grouped.setdefault(names, []).append(new | {"client": client_id})
    for names, rows in grouped.items():
        conn.execute(_change(names), rows)


@lru_cache(maxsize=256)
def _change(names: tuple[str, ...]) -> Any:
    values = {name: bindparam(f"new_{name}", type_=clients.c[name].type) for name in names}
    return update(clients).where(clients.c.id == bindparam("client")).values(values)


def set_plan(conn: Connection, client: Client, plan: Plan) -> None:
    """Replace a client's plan.

    Raises: StalePlan if it has changed since it was read.
    """
    stored = type_coerce(clients.c.plan, Text)
    unchanged = stored.is_(None) if client.plan_text is None else stored == client.plan_text
    changed = (
        update(clients)
        .where(clients.c.id == client.id, unchanged)
        .values(plan=secret(client.key, codec.dumps(plan)), baseline_since=plan.baseline_since)
    )
    if conn.execute(changed).rowcount != 1:
        raise StalePlan


def next_due(
    status: Status, slot: Slot | None, paused_until: date | None, zone: tzinfo, now: datetime
) -> dict[str, Any]:
    """The columns for when the client is next due: their slot, or the end of their pause."""
    if status is Status.ACTIVE and slot is not None:
        coming = schedule.next_due(slot, zone, now)
        return {"next_due_at": coming.at, "next_due_day": coming.day}
    if status is Status.PAUSED and paused_until is not None:
        return {"next_due_at": schedule.instant(paused_until, time(0), zone), "next_due_day": paused_until}
    return {"next_due_at": None, "next_due_day": None}
