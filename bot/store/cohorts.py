"""Cohorts: organiser, members, pooled figures, linked group chat.

Authorisation: an organiser reaches a cohort only through `mine` and `one_of_mine`. Readings leave this module only
inside a `Participant`, for `core.watching.cohort` to pool; only its results are shown to anybody.

Whose answers are in a told figure is kept under pseudonyms made with each person's key (`told_beside`, `record`): they
can be compared for as long as it matters, and nobody can tell whose they were once the key is destroyed.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime, tzinfo
from typing import Any

from sqlalchemy import Connection, bindparam, delete, exists, func, insert, select, update

from bot.store import codec, owners, readings
from bot.store.dialect import among, insert_new, one_at_a_time, skip_locked, upsert
from bot.store.invitations import InvitationKind
from bot.store.keyring import of_connection
from bot.store.schema import (
    clients,
    coaches,
    cohort_members,
    cohort_told,
    cohort_weeks,
    cohorts,
    groups,
    invitations,
    organisers,
    people,
    slots,
)
from bot.store.sealed import secret
from bot.store.slots import SlotOutcome
from bot.store.zones import zone_of
from core.care import Slot
from core.dialogue.client.facts import Membership
from core.dialogue.staff.facts import CohortFact, MemberFact
from core.watching.cohort import (
    ATTENDANCE,
    MEASURE_OF,
    MOST_BY_ONE_LINK,
    Closing,
    CohortWeek,
    Counted,
    Participant,
    Terms,
    Told,
)
from core.watching.disclosure import Cell, Figure

MOST_SHOWN = 12  # cohorts of one organiser in a list
AT_ONCE = 500  # values of one query
TELLING = 7_364_686  # ours; no other lock of the database has this number
_Figures = dict[str, list[Figure]]  # by what they are about


@dataclass(frozen=True, slots=True)
class Cohort:
    """A cohort as stored. organiser_chat, organiser_person: None if they are gone. coach_id: the coach of newcomers.
    language: of its group chat."""

    id: int
    name: str
    terms: Terms
    zone: tzinfo
    language: str
    organiser_id: int | None
    organiser_name: str
    organiser_chat: int | None
    organiser_person: int | None
    organiser_coach: int | None
    coach_id: int | None
    coach_name: str
    next_at: datetime | None
    closed: bool
    closing: Closing | None
    most: int


_own_coach = coaches.alias("organisers_coach")
_FROM = (
    cohorts.outerjoin(organisers, organisers.c.id == cohorts.c.organiser_id)
    .outerjoin(people, people.c.id == organisers.c.person_id)
    .outerjoin(_own_coach, _own_coach.c.person_id == organisers.c.person_id)
    .outerjoin(coaches, coaches.c.id == cohorts.c.coach_id)
)
_COLUMNS = (
    *cohorts.c,
    organisers.c.name.label("organiser_name"),
    people.c.chat_id.label("organiser_chat"),
    people.c.id.label("organiser_person"),
    _own_coach.c.id.label("organiser_coach"),
    coaches.c.name.label("coach_name"),
    coaches.c.left_at.label("coach_left"),
)
_ALL = select(*_COLUMNS).select_from(_FROM)


def _cohort(r: Any) -> Cohort:
    slot = Slot(r.weekday, r.at, r.zone_name)
    looked_after = r.coach_left is None
    return Cohort(
        r.id,
        r.name,
        Terms(r.starts, r.weeks, slot, Counted(codec.loads_as(str, r.counts))),
        zone_of(r.zone_name),
        r.language,
        r.organiser_id,
        r.organiser_name or "",
        r.organiser_chat,
        r.organiser_person,
        r.organiser_coach,
        r.coach_id if looked_after else None,
        (r.coach_name or "") if looked_after else "",
        r.next_at,
        r.closed_at is not None,
        codec.loads_as(Closing, r.closing) if r.closing else None,
        r.most,
    )


# --- making and finding -----------------------------------------------------------------------------------------


def add(
    conn: Connection,
    now: datetime,
    *,
    organiser_id: int,
    coach_id: int | None,
    name: str,
    terms: Terms,
    language: str,
    next_at: datetime | None,
    most: int = MOST_BY_ONE_LINK,
) -> int:
    """Create a cohort; return its id. most: people whom one link lets in."""
    row = {
        "organiser_id": organiser_id,
        "coach_id": coach_id,
        "name": name,
        "starts": terms.starts,
        "weeks": terms.weeks,
        "weekday": terms.slot.weekday,
        "at": terms.slot.at,
        "zone_name": terms.slot.zone_name,
        "counts": codec.dumps(terms.counts.value),
        "language": language,
        "created_at": now,
        "next_at": next_at,
        "most": most,
    }
    made: int = conn.execute(insert(cohorts).returning(cohorts.c.id), row).scalar_one()
    return made


def find(conn: Connection, cohort_ids: Iterable[int]) -> dict[int, Cohort]:
    """Cohorts by id, whoever runs them. One query."""
    wanted = list(cohort_ids)
    if not wanted:
        return {}
    return {r.id: _cohort(r) for r in conn.execute(_ALL.where(cohorts.c.id.in_(wanted)))}


def one_of_mine(conn: Connection, organiser_id: int | None, cohort_id: int) -> Cohort | None:
    """A cohort that this organiser runs; None for another organiser's, or if there is none."""
    r = conn.execute(_ALL.where(cohorts.c.id == cohort_id, cohorts.c.organiser_id == organiser_id)).one_or_none()
    return None if r is None or organiser_id is None else _cohort(r)


def mine(conn: Connection, organiser_id: int) -> tuple[CohortFact, ...]:
    """The newest cohorts that an organiser runs or ran, as facts for their conversation. Five queries."""
    found = [
        _cohort(r)
        for r in conn.execute(
            _ALL.where(cohorts.c.organiser_id == organiser_id).order_by(cohorts.c.id.desc()).limit(MOST_SHOWN)
        )
    ]
    ids = [c.id for c in found]
    if not ids:
        return ()
    members = _members(conn, found)
    told = weeks(conn, ids)
    people_of = people_told(conn, ids)
    grouped = set(conn.execute(select(groups.c.cohort_id).where(groups.c.cohort_id.in_(ids))).scalars())
    return tuple(
        CohortFact(
            c.id,
            c.name,
            c.terms,
            c.zone,
            members.get(c.id, ()),
            c.id in grouped,
            told.get(c.id, ()),
            c.closed,
            c.closing,
            people_of.get((c.id, MEASURE_OF.get(c.terms.counts, ATTENDANCE)), 0),
        )
        for c in found
    )


def _members(conn: Connection, several: Sequence[Cohort]) -> dict[int, tuple[MemberFact, ...]]:
    """Names of the members who have consented."""
    zones = {c.id: c.zone for c in several}
    rows = conn.execute(
        select(cohort_members, clients.c.name)
        .join(clients, clients.c.id == cohort_members.c.client_id)
        .where(cohort_members.c.cohort_id.in_(list(zones)), clients.c.consented_at.is_not(None))
        .order_by(cohort_members.c.client_id)
    )
    found: dict[int, list[MemberFact]] = {}
    for r in rows:
        zone = zones[r.cohort_id]
        left = None if r.left_at is None else r.left_at.astimezone(zone).date()
        found.setdefault(r.cohort_id, []).append(
            MemberFact(
                r.client_id, r.name, r.joined_at.astimezone(zone).date(), left, left is None and r.agreed_at is None
            )
        )
    return {cohort: tuple(several) for cohort, several in found.items()}


def ensure_organiser(conn: Connection, person_id: int, name: str, now: datetime) -> int:
    """The organiser id of a person, created if needed: a coach may run a cohort without an invitation."""
    row = {"person_id": person_id, "name": secret(owners.of_person(conn, person_id), name), "created_at": now}
    insert_new(conn, organisers, [row], ("person_id",))
    made: int = conn.execute(select(organisers.c.id).where(organisers.c.person_id == person_id)).scalar_one()
    return made


# --- members ----------------------------------------------------------------------------------------------------


def join(conn: Connection, cohort_id: int, client_id: int, now: datetime, *, agreed: bool) -> None:
    """Add a client. Nothing changes for a current member; one who had left counts again from now on.

    agreed: they count at once; else as soon as `agree` says so.
    """
    conn.execute(
        delete(cohort_members).where(
            cohort_members.c.cohort_id == cohort_id,
            cohort_members.c.client_id == client_id,
            cohort_members.c.left_at.is_not(None),
        )
    )
    row = {"cohort_id": cohort_id, "client_id": client_id, "joined_at": now, "agreed_at": now if agreed else None}
    insert_new(conn, cohort_members, [row | {"left_at": None}], ("cohort_id", "client_id"))


def waits(conn: Connection, cohort_id: int, client_id: int) -> bool:
    """Whether a member's coach was asked about them and has not answered."""
    return conn.execute(
        select(
            exists().where(
                cohort_members.c.cohort_id == cohort_id,
                cohort_members.c.client_id == client_id,
                cohort_members.c.left_at.is_(None),
                cohort_members.c.agreed_at.is_(None),
            )
        )
    ).scalar_one()


def agree(conn: Connection, cohort_id: int, client_id: int, now: datetime) -> bool:
    """Let a member count from now on; return whether they did not yet."""
    waits = update(cohort_members).where(
        cohort_members.c.cohort_id == cohort_id,
        cohort_members.c.client_id == client_id,
        cohort_members.c.left_at.is_(None),
        cohort_members.c.agreed_at.is_(None),
    )
    return conn.execute(waits.values(agreed_at=now)).rowcount == 1


def leave(conn: Connection, client_id: int, now: datetime, cohort_id: int | None = None) -> int:
    """Remove a client from one cohort, or from all; return from how many."""
    gone = update(cohort_members).where(cohort_members.c.client_id == client_id, cohort_members.c.left_at.is_(None))
    if cohort_id is not None:
        gone = gone.where(cohort_members.c.cohort_id == cohort_id)
    return conn.execute(gone.values(left_at=now)).rowcount


@dataclass(frozen=True, slots=True)
class Member:
    """A member's chat. reachable: whether they can be written to."""

    client_id: int
    name: str
    person_id: int
    chat_id: int
    reachable: bool


def current_members(conn: Connection, cohort_id: int) -> tuple[Member, ...]:
    """Members of a cohort who have consented and have a chat."""
    rows = conn.execute(
        select(clients.c.id, clients.c.name, people.c.id.label("person"), people.c.chat_id, people.c.reachable)
        .select_from(
            cohort_members.join(clients, clients.c.id == cohort_members.c.client_id).join(
                people, people.c.id == clients.c.person_id
            )
        )
        .where(
            cohort_members.c.cohort_id == cohort_id,
            cohort_members.c.left_at.is_(None),
            clients.c.consented_at.is_not(None),
        )
        .order_by(clients.c.id)
    )
    return tuple(Member(r.id, r.name, r.person, r.chat_id, bool(r.reachable)) for r in rows)


def membership(c: Cohort) -> Membership:
    """A cohort as its members see it."""
    return Membership(c.id, c.name, c.terms.first, c.terms.last, c.terms.counts.value)


_OF_CLIENTS = (
    select(cohort_members.c.client_id, *_COLUMNS)
    .select_from(_FROM.join(cohort_members, cohort_members.c.cohort_id == cohorts.c.id))
    .where(
        among(cohort_members.c.client_id, "clients"),
        cohort_members.c.left_at.is_(None),
        cohorts.c.closed_at.is_(None),
    )
    .order_by(cohorts.c.id)
)


def memberships(conn: Connection, client_ids: Iterable[int]) -> dict[int, tuple[Membership, ...]]:
    """The cohorts of each client that are not over. One query."""
    found: dict[int, list[Membership]] = {}
    for r in conn.execute(_OF_CLIENTS, {"clients": list(client_ids)}):
        found.setdefault(r.client_id, []).append(membership(_cohort(r)))
    return {client: tuple(several) for client, several in found.items()}


def coached_by_all(conn: Connection, c: Cohort) -> bool:
    """Whether the organiser coaches everybody who ever took part, and so knows the readings anyway."""
    if c.organiser_coach is None:
        return False
    others = (
        select(cohort_members.c.client_id)
        .join(clients, clients.c.id == cohort_members.c.client_id)
        .where(
            cohort_members.c.cohort_id == c.id,
            (clients.c.coach_id != c.organiser_coach) | clients.c.coach_id.is_(None),
        )
    )
    return not conn.execute(select(exists(others))).scalar()


# --- what they did ----------------------------------------------------------------------------------------------

_PEOPLE = (
    select(cohort_members.c.client_id, cohort_members.c.agreed_at, cohort_members.c.left_at, clients.c.zone_name)
    .join(clients, clients.c.id == cohort_members.c.client_id)
    .where(
        cohort_members.c.cohort_id == bindparam("cohort"),
        cohort_members.c.agreed_at.is_not(None),
        clients.c.consented_at.is_not(None),
    )
    .order_by(cohort_members.c.client_id)
)
_SLOTS = select(slots).where(
    among(slots.c.client_id, "clients"),
    slots.c.day >= bindparam("since"),
    slots.c.outcome != SlotOutcome.NOT_ASKED.value,
)


def participants(conn: Connection, c: Cohort) -> tuple[Participant, ...]:
    """Everybody who consented and took part, with their check-ins and readings, for pooling. Three queries.

    Whose coach was asked and has not answered is not among them.
    """
    rows = conn.execute(_PEOPLE, {"cohort": c.id}).all()
    ids = [r.client_id for r in rows]
    if not ids:
        return ()
    asked: dict[int, list[tuple[date, bool]]] = {}
    for s in conn.execute(_SLOTS, {"clients": ids, "since": c.terms.starts}):
        asked.setdefault(s.client_id, []).append((s.day, s.outcome == SlotOutcome.ANSWERED.value))
    history = readings.everything(conn, ids)
    ring, keys = of_connection(conn), owners.of_clients(conn, ids)
    found = []
    for r in rows:
        zone = zone_of(r.zone_name) if r.zone_name else c.zone
        left = None if r.left_at is None else r.left_at.astimezone(zone).date()
        found.append(
            Participant(
                r.client_id,
                ring.fingerprint(keys[r.client_id], "cohorts"),
                r.agreed_at.astimezone(zone).date(),
                left,
                zone,
                tuple(asked.get(r.client_id, ())),
                tuple(x for x in history.get(r.client_id, ()) if x.counts),
            )
        )
    return tuple(found)


def weeks(conn: Connection, cohort_ids: Iterable[int]) -> dict[int, tuple[CohortWeek, ...]]:
    """The published figures of each cohort, in order. One query."""
    found: dict[int, list[CohortWeek]] = {}
    rows = conn.execute(
        select(cohort_weeks).where(cohort_weeks.c.cohort_id.in_(list(cohort_ids))).order_by(cohort_weeks.c.number)
    )
    for r in rows:
        found.setdefault(r.cohort_id, []).append(CohortWeek(r.number, r.asked, r.kept, r.people, r.total))
    return {cohort: tuple(several) for cohort, several in found.items()}


def publish(conn: Connection, cohort_id: int, week: CohortWeek, now: datetime) -> None:
    """Store a week's figures as published. Figures already published stay unchanged."""
    row = {
        "cohort_id": cohort_id,
        "number": week.number,
        "asked": week.asked,
        "kept": week.kept,
        "people": week.people,
        "total": week.total,
        "told_at": now,
    }
    insert_new(conn, cohort_weeks, [row], ("cohort_id", "number"))


def told_beside(conn: Connection, cohort_id: int, people: Iterable[Participant]) -> Told:
    """What was told of a cohort, and of every other that its figures could be compared with: those with a person in
    common, and those that have one in common with one of them. Until the end of the transaction nobody else reads it:
    two workers that told at once would not know of each other's figures.
    """
    one_at_a_time(conn, TELLING)
    found: dict[int, dict[tuple[str, int], set[Cell]]] = {}
    seen: set[str] = set()
    cohorts_left, people_left = {cohort_id}, {p.who for p in people}
    while cohorts_left or people_left:
        seen |= people_left
        for some in _slices(people_left):
            near = select(cohort_told.c.cohort_id).where(cohort_told.c.who.in_(some)).distinct()
            cohorts_left |= set(conn.execute(near).scalars()) - found.keys()
        people_left = set()
        for one in cohorts_left:
            figures = found.setdefault(one, {})
            for r in conn.execute(select(cohort_told).where(cohort_told.c.cohort_id == one)):
                figures.setdefault((r.what, r.number), set()).add((r.who, r.day))
                people_left.add(r.who)
        cohorts_left = set()
        people_left -= seen
    every, own = _Figures(), _Figures()
    for one, figures in found.items():
        for (what, _), cells in sorted(figures.items()):
            every.setdefault(what, []).append(frozenset(cells))
            if one == cohort_id:
                own.setdefault(what, []).append(frozenset(cells))
    return Told(every, own)


def _slices(values: Iterable[str]) -> Iterable[list[str]]:
    several = sorted(values)
    return (several[n : n + AT_ONCE] for n in range(0, len(several), AT_ONCE))


def record(conn: Connection, cohort_id: int, told: Told) -> None:
    """Keep whose answers are in the figures that `told` has gained."""
    mine = cohort_told.c.cohort_id == cohort_id
    wanted = select(cohort_told.c.what, func.max(cohort_told.c.number)).where(mine).group_by(cohort_told.c.what)
    last: dict[str, int] = {r[0]: r[1] for r in conn.execute(wanted)}
    rows = []
    for what, figure in told.new:
        last[what] = last.get(what, -1) + 1
        rows += [
            {"cohort_id": cohort_id, "what": what, "number": last[what], "who": who, "day": day} for who, day in figure
        ]
    told.new.clear()
    if rows:
        conn.execute(insert(cohort_told), rows)


def people_told(conn: Connection, cohort_ids: Iterable[int]) -> dict[tuple[int, str], int]:
    """How many people are in what was told of each cohort, by what it is about. One query."""
    number = func.count(cohort_told.c.who.distinct())
    wanted = (
        select(cohort_told.c.cohort_id, cohort_told.c.what, number)
        .where(cohort_told.c.cohort_id.in_(list(cohort_ids)))
        .group_by(cohort_told.c.cohort_id, cohort_told.c.what)
    )
    return {(cohort_id, what): people for cohort_id, what, people in conn.execute(wanted)}


def forget_told(conn: Connection, before: date) -> int:
    """Delete the record of what was told of days so long ago that no figure of them can be told any more."""
    return conn.execute(delete(cohort_told).where(cohort_told.c.day < before)).rowcount


# --- its time ---------------------------------------------------------------------------------------------------

_DUE = skip_locked(
    select(cohorts.c.id)
    .where(cohorts.c.next_at <= bindparam("now"), cohorts.c.closed_at.is_(None))
    .order_by(cohorts.c.next_at, cohorts.c.id)
    .limit(bindparam("limit")),
    of=cohorts,
)


def due(conn: Connection, now: datetime, limit: int) -> list[Cohort]:
    """Cohorts with tasks due that no other sweep has locked. The caller sets the next instant."""
    ids = list(conn.execute(_DUE, {"now": now, "limit": limit}).scalars())
    found = find(conn, ids)
    return [found[i] for i in ids if i in found]


def set_next(conn: Connection, cohort_id: int, at: datetime | None) -> None:
    conn.execute(update(cohorts).where(cohorts.c.id == cohort_id).values(next_at=at))


_NEXT = (
    select(cohorts.c.next_at)
    .where(cohorts.c.next_at.is_not(None), cohorts.c.closed_at.is_(None))
    .order_by(cohorts.c.next_at)
    .limit(1)
)


def next_at(conn: Connection) -> datetime | None:
    """When the next cohort task is due; None if never."""
    return conn.execute(_NEXT).scalar_one_or_none()


def close(conn: Connection, cohort_id: int, now: datetime, report: Closing | None) -> None:
    """Close a cohort: store its report (None: cancelled) and revoke its links."""
    values = {"closed_at": now, "next_at": None, "closing": None if report is None else codec.dumps(report)}
    conn.execute(update(cohorts).where(cohorts.c.id == cohort_id).values(values))
    conn.execute(
        update(invitations)
        .where(invitations.c.cohort_id == cohort_id, invitations.c.revoked_at.is_(None))
        .values(revoked_at=now)
    )


def revoke_links(conn: Connection, cohort_id: int, now: datetime) -> int:
    """Revoke every joining link of a cohort; return how many."""
    return conn.execute(
        update(invitations)
        .where(
            invitations.c.cohort_id == cohort_id,
            invitations.c.kind == InvitationKind.COHORT.value,
            invitations.c.revoked_at.is_(None),
        )
        .values(revoked_at=now)
    ).rowcount


# --- group chats ------------------------------------------------------------------------------------------------


def tied_to(conn: Connection, chat_id: int) -> Cohort | None:
    """The cohort linked to a group chat, or None."""
    found = conn.execute(select(groups.c.cohort_id).where(groups.c.chat_id == chat_id)).scalar_one_or_none()
    return None if found is None else find(conn, [found]).get(found)


def group_of(conn: Connection, cohort_id: int) -> int | None:
    """The group chat of a cohort, or None."""
    chat: int | None = conn.execute(
        select(groups.c.chat_id).where(groups.c.cohort_id == cohort_id)
    ).scalar_one_or_none()
    return chat


def free_of(conn: Connection, organiser_id: int) -> tuple[Cohort, ...]:
    """An organiser's cohorts that are not over and have no group, newest first."""
    rows = conn.execute(
        _ALL.where(
            cohorts.c.organiser_id == organiser_id,
            cohorts.c.closed_at.is_(None),
            ~exists().where(groups.c.cohort_id == cohorts.c.id),
        )
        .order_by(cohorts.c.id.desc())
        .limit(MOST_SHOWN)
    )
    return tuple(_cohort(r) for r in rows)


def tie(conn: Connection, cohort_id: int, chat_id: int, language: str, now: datetime) -> None:
    """Link a group chat to a cohort, one to one: previous links of either are removed."""
    conn.execute(delete(groups).where(groups.c.cohort_id == cohort_id, groups.c.chat_id != chat_id))
    row = {"chat_id": chat_id, "cohort_id": cohort_id, "language": language, "bound_at": now, "removed_at": None}
    upsert(conn, groups, [row], ("chat_id",), ("cohort_id", "language", "bound_at", "removed_at"))


def untie(conn: Connection, cohort_id: int) -> None:
    """Unlink a group chat and delete everything about it."""
    conn.execute(delete(groups).where(groups.c.cohort_id == cohort_id))


def move_group(conn: Connection, old: int, new: int) -> bool:
    """Change the id of a group chat; return whether it was one of ours. Idempotent."""
    if old == new or tied_to(conn, old) is None:
        return False
    conn.execute(delete(groups).where(groups.c.chat_id == new))
    return conn.execute(update(groups).where(groups.c.chat_id == old).values(chat_id=new)).rowcount == 1


def drop(conn: Connection, cohort_id: int) -> None:
    """Delete a cohort with everything that depends on it, because its organiser is being erased."""
    conn.execute(delete(groups).where(groups.c.cohort_id == cohort_id))
    conn.execute(delete(invitations).where(invitations.c.cohort_id == cohort_id))
    conn.execute(delete(cohorts).where(cohorts.c.id == cohort_id))


def run_by(conn: Connection, organiser_id: int) -> tuple[Cohort, ...]:
    """Every cohort an organiser runs or ran."""
    rows = conn.execute(_ALL.where(cohorts.c.organiser_id == organiser_id).order_by(cohorts.c.id))
    return tuple(_cohort(r) for r in rows)
