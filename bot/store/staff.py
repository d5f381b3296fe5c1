"""Facts of a coach's or organiser's conversation, loaded according to its `needs`, and only through `caseload`.

Queries: one for the coach, and for each need at most one list of clients and two or three for dependent data.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, time, timedelta, tzinfo
from typing import Any

from sqlalchemy import Connection, and_, bindparam, delete, false, func, insert, not_, or_, select, update

from bot.foundation import log
from bot.store import caseload, coach_thread, codec, cohorts, deputies, invitations, owners, readings, slots
from bot.store import outbox as outbox_store
from bot.store.clients import Client
from bot.store.dialect import among, skip_locked
from bot.store.people import Staff
from bot.store.schema import clients as clients_table
from bot.store.schema import coaches, flags, notes, outbox, people, templates
from bot.store.schema import slots as slots_table
from bot.store.sealed import is_whole, secret
from bot.store.slots import SlotOutcome
from bot.store.zones import zone_of
from core import schedule
from core.care import Plan, Slot, Status
from core.dialogue.client.facts import InvitationFact
from core.dialogue.staff.facts import (
    CardFact,
    CardOf,
    CardsFlagged,
    CardsNamed,
    CardsOfAll,
    Caseload,
    CaseloadOf,
    Cohorts,
    MentionedIn,
    Need,
    OtherCoaches,
    QuarterFact,
    QuarterMeant,
    RepliedTo,
    StaffFacts,
    TemplateFact,
    Templates,
    WordFact,
    WrittenTo,
)
from core.dialogue.staff.names import addressed, meant, mentioned
from core.watching.digest import EMERGENCY_WAITS, IN_CARE, CaseRow, Digest, FlagFact, OpenInvitation, Size
from core.watching.flags import Code, Done, Ended, Severity
from core.watching.practice import PersonFact
from core.watching.practice import meant as quarter_meant

WEEK, A_DAY, A_SECOND = timedelta(days=7), timedelta(days=1), timedelta(seconds=1)
ANSWERED, NOT_ASKED = SlotOutcome.ANSWERED.value, SlotOutcome.NOT_ASKED.value
MOST_CARDS = 12  # clients loaded for an ambiguous name
MOST_FLAGGED = 60  # clients whose histories are loaded for a sheet
MOST_PAGED = 120  # and for a page
THREAD = 20
PAST = 12  # flags that are over, on a card's history
A_YEAR = timedelta(days=366)
SETTLED_WITHIN = timedelta(days=28)
ON_A_PAGE = timedelta(weeks=4)  # the messages a page of everybody shows

_log = log.get("store")


@dataclass(frozen=True, slots=True)
class LookUps:
    """Pure look-ups provided to the core, with data from bot.rendering. See StaffFacts."""

    find_zones: Callable[[str, str], tuple[str, ...]]
    label: Callable[[str, str, str], str]
    size: Callable[[Digest, str, tzinfo], Size]


def facts(
    conn: Connection,
    who: Staff,
    needs: Iterable[Need],
    now: datetime,
    look: LookUps,
    invitation: InvitationFact | None = None,
) -> StaffFacts:
    """The facts for a step: who this is, and what `needs` requests."""
    row = _coach(conn, who)
    slot, name, quiet, wait = None, who.name, True, EMERGENCY_WAITS
    zone_name = who.zone_name or "UTC"
    if row is not None:
        name, quiet, zone_name = row.name, row.quiet_nights, row.zone_name or zone_name
        wait = row.wait_minutes
        if row.weekday is not None and row.at is not None and row.zone_name:
            slot = Slot(row.weekday, row.at, row.zone_name)
    zone = zone_of(zone_name)
    found = StaffFacts(
        person_id=who.person_id,
        name=name,
        language=who.language,
        coach_id=who.coach_id,
        organiser_id=who.organiser_id,
        slot=slot,
        zone=zone,
        zone_name=zone_name,
        night=quiet,
        wait=wait,
        deputy=None if who.coach_id is None else deputies.of(conn, who.coach_id),
        invitation=invitation,
        find_zones=lambda text: look.find_zones(text, who.language),
        zone_of=zone_of,
        label=lambda key, argument: look.label(who.language, key, argument),
        size=lambda made: look.size(made, who.language, zone),
    )
    wanted = tuple(needs)
    if who.organiser_id is not None and Cohorts() in wanted:
        found = replace(found, cohorts=cohorts.mine(conn, who.organiser_id))
    if who.coach_id is not None:
        return _needed(conn, found, who.coach_id, who.chat_id, wanted, now)
    # An organiser who is not a coach has no caseload; they see coaches' names, to choose one.
    return replace(found, coaches=_other_coaches(conn, 0)) if OtherCoaches() in wanted else found


def _coach(conn: Connection, who: Staff) -> Any:
    return None if who.coach_id is None else conn.execute(_COACH, {"coach": who.coach_id}).one_or_none()


_COACH = select(
    coaches.c.name,
    coaches.c.weekday,
    coaches.c.at,
    coaches.c.zone_name,
    coaches.c.quiet_nights,
    coaches.c.wait_minutes,
).where(coaches.c.id == bindparam("coach"))


def _needed(
    conn: Connection, found: StaffFacts, coach_id: int, chat_id: int, needs: tuple[Need, ...], now: datetime
) -> StaffFacts:
    everybody: tuple[Client, ...] | None = None
    rows: tuple[CaseRow, ...] = ()
    waiting: tuple[OpenInvitation, ...] = ()
    cards: dict[int, Client] = {}
    names = caseload.names(conn, coach_id) if needs else {}
    standing_in: dict[int, str] = {}
    paged = False

    def reach(client_id: int) -> None:
        one = caseload.reached(conn, coach_id, client_id, found.today(now))
        if one is not None and _followed(conn, (one.client,), now):
            cards[client_id] = one.client
            if one.for_coach is not None:
                standing_in[client_id] = one.for_coach[1]

    for need in needs:
        match need:
            case CardOf(client_id):
                reach(client_id)
            case WrittenTo(client_id):
                one = caseload.reached(conn, coach_id, client_id, found.today(now))
                if one is not None:
                    found = replace(found, writing_to=names.get(client_id, one.client.name))
            case RepliedTo(ref):
                found = replace(found, replied=outbox_store.about(conn, chat_id, ref))
                if found.replied:
                    reach(found.replied)
            case MentionedIn(text):
                found = replace(found, mentioned=caseload.mentioned(conn, coach_id, text, found.language))
            case CaseloadOf(other):
                stands_in = deputies.away(conn, other, found.today(now))
                if stands_in is not None and stands_in[0] == coach_id:
                    theirs = _followed(conn, caseload.everybody(conn, other), now)
                    rows = _rows(conn, theirs, caseload.names(conn, other), other, now, read_by_deputy=True)
                    found = replace(found, away=_name_of(conn, other))
            case Caseload() | CardsNamed() | CardsFlagged() | CardsOfAll():
                if everybody is None:
                    everybody = _followed(conn, caseload.everybody(conn, coach_id), now)
                if isinstance(need, Caseload):
                    rows = _rows(conn, everybody, names, coach_id, now)
                    waiting = _waiting(conn, coach_id, now)
                elif isinstance(need, CardsNamed):
                    cards |= _named(everybody, names, need, found.language)
                elif isinstance(need, CardsOfAll):
                    paged = True
                    cards |= {c.id: c for c in [c for c in everybody if _in_care(c) and c.whole][:MOST_PAGED]}
                else:
                    flagged = {r.client_id for r in rows or _rows(conn, everybody, names, coach_id, now) if r.flags}
                    cards |= {c.id: c for c in [c for c in everybody if c.id in flagged and c.whole][:MOST_FLAGGED]}
            case QuarterMeant(words):
                found = replace(found, quarter=_quarter(conn, coach_id, words, now, found.zone))
            case Templates():
                found = replace(found, templates=_templates(conn, coach_id))
            case OtherCoaches():
                found = replace(found, coaches=_other_coaches(conn, coach_id))
    found_cards = _cards(conn, coach_id, tuple(cards.values()), names, standing_in, now, worded=paged)
    return replace(found, rows=rows, waiting=waiting, cards=found_cards)


def _followed(conn: Connection, several: Sequence[Client], now: datetime) -> tuple[Client, ...]:
    """Those in care, and those whose care has ended while something urgent of theirs is open."""
    left = [c.id for c in several if c.status is Status.LEFT]
    open_ = open_flags(conn, left, now) if left else {}
    alarmed = {n for n, found in open_.items() if any(f.severity == Severity.URGENT for f in found)}
    return tuple(c for c in several if c.status is not Status.LEFT or c.id in alarmed)


def _name_of(conn: Connection, coach_id: int) -> str:
    return conn.execute(select(coaches.c.name).where(coaches.c.id == coach_id)).scalar_one_or_none() or ""


def _in_care(client: Client) -> bool:
    return client.status.value in IN_CARE


def _quarter(conn: Connection, coach_id: int, words: str, now: datetime, zone: tzinfo) -> QuarterFact | None:
    """Everybody of this coach in a quarter, those who left since among them. Three queries. Dates are the coach's."""
    quarter = quarter_meant(words, now.astimezone(zone).date())
    if quarter is None:
        return None
    since, until = (schedule.instant(day, time(0), zone) for day in (quarter.first, quarter.next.first))
    people = [
        c for c in caseload.everybody(conn, coach_id) if c.created_at < until and c.status is not Status.ENROLLING
    ]
    ids = [c.id for c in people]
    taken = readings.between(conn, ids, since, until) if ids else {}
    check_ins = slots.check_ins(conn, ids) if ids else {}

    def person(c: Client) -> PersonFact:
        programme = c.plan.programme
        return PersonFact(
            c.created_at.astimezone(zone).date(),
            None if c.left_at is None else c.left_at.astimezone(zone).date(),
            None if programme is None else programme.ended,
            tuple(kept for day, kept in check_ins.get(c.id, ()) if day in quarter),
            tuple(r for r in taken.get(c.id, ()) if r.counts),
        )

    return QuarterFact(quarter, tuple(map(person, people)))


def _named(
    everybody: Sequence[Client], called: Mapping[int, str], need: CardsNamed, language: str
) -> dict[int, Client]:
    names = tuple((c.id, name) for c in everybody for name in dict.fromkeys((called.get(c.id, c.name), c.name)))
    ids = meant(names, need.words) if need.whole else addressed(names, need.words)[0]
    if need.anywhere and not ids:
        ids = mentioned(names, need.words, language)
    found = {c.id: c for c in everybody if c.id in ids[:MOST_CARDS]}
    if not all(c.whole for c in found.values()):
        raise codec.CodecError("the row of a client cannot be loaded")
    return found


# --- rows -------------------------------------------------------------------------------------------------------

_FLAGS = (
    select(flags)
    .where(
        among(flags.c.client_id, "clients"),
        or_(flags.c.cleared_at.is_(None), flags.c.cleared_at > bindparam("at")),
        flags.c.since <= bindparam("at"),
    )
    .order_by(flags.c.since, flags.c.id)
)


def open_flags(conn: Connection, client_ids: Iterable[int], at: datetime) -> dict[int, tuple[FlagFact, ...]]:
    """Clients' flags that are, or were, open at an instant, with their evidence, oldest first. One query. A corrupt
    flag loses its evidence or is skipped, so that it does not hide the others."""
    found: dict[int, list[FlagFact]] = {}
    for r in conn.execute(_FLAGS, {"clients": list(client_ids), "at": at}):
        evidence: object = ()
        try:
            Code(r.code), Severity(r.severity)
            evidence = codec.loads(r.evidence) if r.evidence else ()
        except codec.CodecError as error:
            _log.error("the evidence of a flag cannot be loaded", row=r.id, fault=log.fault(error))
        except ValueError as error:
            _log.error("a flag cannot be loaded", row=r.id, fault=log.fault(error))
            continue
        fact = FlagFact(
            r.id,
            r.code,
            r.severity,
            r.measure or None,
            evidence,  # type: ignore[arg-type]  # written by `flags.raise_`
            r.since,
            r.seen_at if r.seen_at is None or r.seen_at <= at else None,
            r.refreshed_at,
            r.digest_at if r.digest_at is None or r.digest_at <= at else None,
        )
        found.setdefault(r.client_id, []).append(fact)
    return {client: tuple(several) for client, several in found.items()}


_OVER = (
    select(flags, coaches.c.name.label("by_name"))
    .select_from(flags.outerjoin(coaches, coaches.c.id == flags.c.done_by))
    .where(among(flags.c.client_id, "clients"), flags.c.cleared_at > bindparam("since"))
    .order_by(flags.c.cleared_at.desc(), flags.c.id.desc())
)
_SETTLED = _OVER.where(
    flags.c.severity == Severity.URGENT.value,
    or_(flags.c.ended != Ended.BY_COACH.value, flags.c.done_by != bindparam("reader")),
    or_(
        flags.c.digest_at.is_(None),
        flags.c.digest_at < flags.c.cleared_at,
        flags.c.digest_at >= bindparam("still_news"),
    ),
)


def settled_flags(
    conn: Connection, client_ids: Iterable[int], coach_id: int, at: datetime, *, read_by_deputy: bool = False
) -> dict[int, tuple[FlagFact, ...]]:
    """Urgent flags that ended by themselves within four weeks, or that somebody else than their coach has dealt with,
    and that no digest has told the end of. One query. read_by_deputy: the coach's digest of this very day, which has
    told them, does not count: the deputy reads the same."""
    news = at - A_DAY if read_by_deputy else at + A_DAY
    given = {"clients": list(client_ids), "reader": coach_id, "since": at - SETTLED_WITHIN, "still_news": news}
    return _over(conn.execute(_SETTLED, given))


def past_flags(conn: Connection, client_id: int, at: datetime) -> tuple[FlagFact, ...]:
    """A client's flags of a year that are over, the last to end first. One query."""
    return _over(conn.execute(_OVER, {"clients": [client_id], "since": at - A_YEAR})).get(client_id, ())[:PAST]


def _over(rows: Iterable[Any]) -> dict[int, tuple[FlagFact, ...]]:
    """A damaged flag is skipped, so that it does not hide the others."""
    found: dict[int, list[FlagFact]] = {}
    for r in rows:
        try:
            fact = FlagFact(
                r.id,
                Code(r.code).value,
                Severity(r.severity).value,
                r.measure or None,
                codec.loads(r.evidence) if r.evidence else (),  # type: ignore[arg-type]
                r.since,
                r.seen_at,
                r.refreshed_at,
                r.digest_at,
                r.cleared_at,
                r.ended,
                codec.loads(r.followed) if r.followed else (),  # type: ignore[arg-type]
                r.done,
                "" if not is_whole(r.done_words) else r.done_words or "",
                "" if not is_whole(r.by_name) else r.by_name or "",
            )
        except (ValueError, codec.CodecError) as error:
            _log.error("a flag cannot be loaded", row=r.id, fault=log.fault(error))
            continue
        found.setdefault(r.client_id, []).append(fact)
    return {client: tuple(several) for client, several in found.items()}


def _rows(
    conn: Connection,
    everybody: Sequence[Client],
    names: Mapping[int, str],
    coach_id: int,
    now: datetime,
    *,
    read_by_deputy: bool = False,
) -> tuple[CaseRow, ...]:
    """Everybody of a coach with their flags and the outcomes of last week's slots. Three queries."""
    ids = [c.id for c in everybody]
    if not ids:
        return ()
    open_ = open_flags(conn, ids, now)
    settled = settled_flags(conn, ids, coach_id, now, read_by_deputy=read_by_deputy)
    week = _week(conn, ids, now)
    return tuple(
        CaseRow(
            client_id=c.id,
            name=names.get(c.id, c.name),
            status=c.status.value,
            answered=c.answered,
            asked=week.get(c.id, NOT_ASKED) != NOT_ASKED,
            kept=week.get(c.id) == ANSWERED,
            missed=c.missed,
            paused_until=c.paused_until,
            reachable=c.reachable,
            flags=open_.get(c.id, ()),
            units=c.units,
            joined=c.created_at,
            settled=settled.get(c.id, ()),
        )
        for c in everybody
    )


def _waiting(conn: Connection, coach_id: int, now: datetime) -> tuple[OpenInvitation, ...]:
    """Links for clients that nobody has opened, of those who have no row yet. One query."""
    return tuple(
        OpenInvitation(number, name, until - invitations.GOOD_FOR)
        for number, name, until in invitations.unopened(conn, coach_id, now)
    )


_SLOTS = (
    select(slots_table.c.client_id, slots_table.c.outcome)
    .where(
        among(slots_table.c.client_id, "clients"),
        slots_table.c.due_at > bindparam("since"),
        or_(slots_table.c.outcome == ANSWERED, slots_table.c.due_at <= bindparam("settled")),
    )
    .order_by(slots_table.c.due_at)
)


def _week(conn: Connection, ids: Sequence[int], now: datetime) -> dict[int, str]:
    """The outcome of each client's newest slot that is answered or at least a day old: a slot half an hour ago says
    nothing about the week yet. One query."""
    rows = conn.execute(_SLOTS, {"clients": list(ids), "since": now - WEEK - A_DAY, "settled": now - A_DAY})
    return {r.client_id: r.outcome for r in rows}


# --- cards ------------------------------------------------------------------------------------------------------


def _cards(
    conn: Connection,
    coach_id: int,
    several: Sequence[Client],
    names: Mapping[int, str],
    standing_in: Mapping[int, str],
    now: datetime,
    *,
    worded: bool = False,
) -> tuple[CardFact, ...]:
    """Cards of clients authorised through `caseload`. Two queries, and for a single card its thread and note; for
    several that are `worded` two more."""
    ids = [c.id for c in several]
    if not ids:
        return ()
    histories = readings.histories(conn, ids, now, skip_damaged=True)
    open_ = open_flags(conn, ids, now)
    said, noted = _words_and_notes(conn, coach_id, several, now, worded=worded)
    return tuple(
        CardFact(
            client_id=c.id,
            name=names.get(c.id, c.name),
            status=c.status.value,
            profile=c.profile,
            plan=c.plan,
            slot=c.slot,
            zone=zone_of(c.slot.zone_name if c.slot else None),
            units=c.units,
            history=histories.get(c.id, ()),
            flags=open_.get(c.id, ()),
            note=noted.get(c.id, ""),
            thread=said.get(c.id, ()),
            answered=c.answered,
            missed=c.missed,
            paused_until=c.paused_until,
            reachable=c.reachable,
            past=past_flags(conn, c.id, now) if len(several) == 1 else (),
            for_coach=standing_in.get(c.id, ""),
            own_name=c.name if c.called else "",
            readiness=c.readiness,
        )
        for c in several
    )


def note(conn: Connection, client: Client, coach_id: int) -> str:
    """The note on a client's card, "" for none."""
    kept = coach_thread.notes_on(conn, client, coach_id)
    return kept[-1][0] if kept else ""


def _words_and_notes(
    conn: Connection, coach_id: int, several: Sequence[Client], now: datetime, *, worded: bool
) -> tuple[dict[int, tuple[WordFact, ...]], dict[int, str]]:
    if len(several) == 1:
        (only,) = several
        return {only.id: _facts_of(coach_thread.thread(conn, only, THREAD))}, {only.id: note(conn, only, coach_id)}
    if not worded:
        return {}, {}
    ids = [c.id for c in several]
    said = coach_thread.threads(conn, ids, now - ON_A_PAGE)
    return {c: _facts_of(words[-THREAD:]) for c, words in said.items()}, coach_thread.last_notes(conn, ids, coach_id)


def _facts_of(said: Sequence[coach_thread.Word]) -> tuple[WordFact, ...]:
    return tuple(WordFact(w.at, w.direction is coach_thread.Direction.TO_COACH, w.text) for w in said)


# --- what only a coach has --------------------------------------------------------------------------------------


def _templates(conn: Connection, coach_id: int) -> tuple[TemplateFact, ...]:
    rows = conn.execute(
        select(templates.c.name, templates.c.plan).where(templates.c.coach_id == coach_id).order_by(templates.c.id)
    )
    found = (TemplateFact(r.name, codec.loads_as(Plan, r.plan)) for r in rows)
    return tuple(sorted(found, key=lambda template: template.name))


def save_template(conn: Connection, coach_id: int, name: str, plan: Plan, now: datetime) -> None:
    """Save a plan under a name, in place of the one there was. The caller has the coach's turn in hand."""
    drop_template(conn, coach_id, name)
    key = _key(conn, coach_id)
    row = {"coach_id": coach_id, "name": secret(key, name), "plan": secret(key, codec.dumps(plan)), "created_at": now}
    conn.execute(insert(templates), row)


def drop_template(conn: Connection, coach_id: int, name: str) -> None:
    mine = conn.execute(select(templates.c.id, templates.c.name).where(templates.c.coach_id == coach_id)).all()
    conn.execute(delete(templates).where(templates.c.id.in_([r.id for r in mine if r.name == name])))


def _key(conn: Connection, coach_id: int) -> str:
    person = select(coaches.c.person_id).where(coaches.c.id == coach_id)
    return owners.of_person(conn, conn.execute(person).scalar_one())


def _other_coaches(conn: Connection, coach_id: int) -> tuple[tuple[int, str], ...]:
    """Other active coaches, who have a chat."""
    rows = conn.execute(
        select(coaches.c.id, coaches.c.name)
        .join(people, people.c.id == coaches.c.person_id)
        .where(coaches.c.id != coach_id, coaches.c.left_at.is_(None))
        .order_by(coaches.c.id)
    )
    return tuple(sorted(((r.id, r.name) for r in rows), key=lambda pair: pair[1]))


def save_note(conn: Connection, client: Client, coach_id: int, text: str, now: datetime) -> None:
    """Replace a note; an empty one deletes it. Authorised by the caller through `caseload`."""
    conn.execute(delete(notes).where(notes.c.client_id == client.id, notes.c.coach_id == coach_id))
    if text:
        coach_thread.note(conn, client, coach_id, text, now)


def mark_seen(conn: Connection, coach_id: int, flag_ids: Sequence[int], until: datetime, now: datetime) -> int:
    """Mark open flags as seen, only for clients this coach may reach; return how many. until: when they were told; one
    that has recurred since was not told in this."""
    mine = {c.id for c in caseload.everybody(conn, coach_id)}
    about = conn.execute(select(flags.c.client_id).where(flags.c.id.in_(list(flag_ids))).distinct()).scalars()
    mine |= {n for n in about if n not in mine and caseload.reached(conn, coach_id, n, now.date()) is not None}
    seen = (
        update(flags)
        .where(
            flags.c.id.in_(list(flag_ids)),
            flags.c.client_id.in_(list(mine)),
            flags.c.cleared_at.is_(None),
            flags.c.refreshed_at < until + A_SECOND,
        )
        .values(seen_at=now)
    )
    reacted = (
        update(flags)
        .where(
            flags.c.client_id.in_(
                select(flags.c.client_id).where(flags.c.id.in_(list(flag_ids)), flags.c.client_id.in_(list(mine)))
            ),
            flags.c.severity == Severity.URGENT.value,
            flags.c.cleared_at.is_(None),
            flags.c.refreshed_at < until + A_SECOND,
        )
        .values(acknowledged_at=now)
    )
    marked = conn.execute(seen).rowcount
    conn.execute(reacted)  # whoever sees one alarm of a person has heard of those before it
    return marked


def told_in_digest(conn: Connection, coach_id: int, flag_ids: Sequence[int], now: datetime) -> int:
    """Note which flags a weekly digest has named, only for clients of this caseload; return how many. The first that
    names a flag counts, and the first that tells its end."""
    mine = {c.id for c in caseload.everybody(conn, coach_id)}
    again = and_(flags.c.severity == Severity.URGENT.value, flags.c.refreshed_at > flags.c.digest_at)
    told = (
        update(flags)
        .where(
            flags.c.id.in_(list(flag_ids)),
            flags.c.client_id.in_(list(mine)),
            or_(flags.c.digest_at.is_(None), again, flags.c.cleared_at > flags.c.digest_at),
        )
        .values(digest_at=now)
    )
    return conn.execute(told).rowcount


def answered(conn: Connection, client: Client, coach_id: int, now: datetime) -> None:
    """Clear a client's request to talk after the coach has written. Authorised by the caller through `caseload`."""
    conn.execute(
        update(flags)
        .where(flags.c.client_id == client.id, flags.c.code == Code.WANTS_COACH.value, flags.c.cleared_at.is_(None))
        .values(cleared_at=now, ended=Ended.BY_COACH.value, done=Done.WROTE.value, done_by=coach_id)
    )


def clear(
    conn: Connection, client: Client, coach_id: int, flag_ids: Sequence[int], done: str, words: str, now: datetime
) -> int:
    """Clear open flags of a client with what was done; return how many. Authorised by the caller through `caseload`."""
    ended = (
        update(flags)
        .where(flags.c.id.in_(list(flag_ids)), flags.c.client_id == client.id, flags.c.cleared_at.is_(None))
        .values(
            cleared_at=now,
            ended=Ended.BY_COACH.value,
            done=Done(done).value,
            done_words=secret(client.key, words or None),
            done_by=coach_id,
        )
    )
    return conn.execute(ended).rowcount


def hand_over(conn: Connection, client: Client, coach_id: int, to_coach: int) -> None:
    """Hand a client, with the note on their card and the name it stands under, over to another coach. Pending messages
    about them to the former coach are dropped. Authorised by the caller through `caseload`."""
    conn.execute(update(clients_table).where(clients_table.c.id == client.id).values(coach_id=to_coach))
    conn.execute(
        update(notes).where(notes.c.client_id == client.id, notes.c.coach_id == coach_id).values(coach_id=to_coach)
    )
    conn.execute(delete(outbox).where(outbox.c.about == client.id, outbox.c.status == "pending"))


# --- the digest's slot ------------------------------------------------------------------------------------------


def set_digest(conn: Connection, coach_id: int, slot: Slot | None, now: datetime) -> None:
    """Set the slot of a coach's digest; None ends it."""
    values: dict[str, object] = {"weekday": None, "at": None, "next_digest_at": None}
    if slot is not None:
        coming = schedule.next_due(slot, zone_of(slot.zone_name), now)
        values = {
            "weekday": slot.weekday,
            "at": slot.at,
            "zone_name": slot.zone_name,
            "next_digest_at": coming.at,
        }
    conn.execute(update(coaches).where(coaches.c.id == coach_id).values(values))


def set_zone(conn: Connection, who: Staff, zone_name: str) -> None:
    conn.execute(update(people).where(people.c.id == who.person_id).values(zone_name=zone_name))
    if who.coach_id is not None:
        conn.execute(update(coaches).where(coaches.c.id == who.coach_id).values(zone_name=zone_name))


def set_nights(conn: Connection, coach_id: int, quiet: bool) -> None:
    conn.execute(update(coaches).where(coaches.c.id == coach_id).values(quiet_nights=quiet))


@dataclass(frozen=True, slots=True)
class DueCoach:
    """A coach whose digest is due. chat_id: None if there is nobody to write to."""

    id: int
    chat_id: int | None
    slot: Slot | None
    due_at: datetime


_DUE = skip_locked(
    select(
        coaches.c.id,
        coaches.c.weekday,
        coaches.c.at,
        coaches.c.zone_name,
        coaches.c.next_digest_at,
        people.c.chat_id,
        people.c.reachable,
    )
    .select_from(coaches.outerjoin(people, people.c.id == coaches.c.person_id))
    .where(coaches.c.next_digest_at <= bindparam("now"))
    .order_by(coaches.c.next_digest_at, coaches.c.id)
    .limit(bindparam("limit")),
    of=coaches,
)


def due(conn: Connection, now: datetime, limit: int) -> list[DueCoach]:
    """Coaches whose digest is due and whom no other sweep has locked. The caller sets a later instant for each."""
    return [
        DueCoach(
            r.id,
            r.chat_id if r.reachable else None,
            None if r.weekday is None or r.at is None or not r.zone_name else Slot(r.weekday, r.at, r.zone_name),
            r.next_digest_at,
        )
        for r in conn.execute(_DUE, {"now": now, "limit": limit})
    ]


def set_next(conn: Connection, coach_id: int, at: datetime | None) -> None:
    conn.execute(update(coaches).where(coaches.c.id == coach_id).values(next_digest_at=at))


_NEXT = (
    select(coaches.c.next_digest_at)
    .where(coaches.c.next_digest_at.is_not(None))
    .order_by(coaches.c.next_digest_at)
    .limit(1)
)


def next_digest(conn: Connection) -> datetime | None:
    """When the next digest is due; None if none ever is."""
    return conn.execute(_NEXT).scalar_one_or_none()


def by_name(conn: Connection, name: str) -> dict[int, str]:
    """The coaches matching a name, by id; for the operator, on the command line."""
    rows = conn.execute(select(coaches.c.id, coaches.c.name).where(coaches.c.left_at.is_(None))).all()
    ids = meant(tuple((r.id, r.name) for r in rows), name)
    return {r.id: r.name for r in rows if r.id in ids}


@dataclass(frozen=True, slots=True)
class Unheard:
    """Clients in care whom nobody hears. coaches: those who cannot be reached; clients: theirs, and those without a
    coach."""

    coaches: int
    clients: int


_HEARD = and_(people.c.chat_id.is_not(None), people.c.reachable, coaches.c.left_at.is_(None))
_UNHEARD = (
    select(func.count(coaches.c.id.distinct()), func.count())
    .select_from(
        clients_table.outerjoin(coaches, coaches.c.id == clients_table.c.coach_id).outerjoin(
            people, people.c.id == coaches.c.person_id
        )
    )
    .where(clients_table.c.status != Status.LEFT.value, not_(func.coalesce(_HEARD, false())))
)


def unheard(conn: Connection) -> Unheard:
    """Numbers only, for the operator."""
    return Unheard(*conn.execute(_UNHEARD).one())
