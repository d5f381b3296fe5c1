"""Handle the inbox: load facts, let `core` decide, apply its effects, all in one transaction.

Queries per batch, for any number of turns:

    reading   1 claim, 1 who they are (with plan, coach, state), 5 readings, flags, goals, encouragements, cohorts
              1 if somebody opened an invitation, 1 more if it was a cohort's, 1 if strangers wrote
    writing   1 a kind of row (a usual answer: readings, client, slot, timer, outbox, conversation, inbox)
    around    2 for the savepoint

So nine reads and, on a usual Monday, seven writes for up to `limit` chats. Joining, erasing and staff turns add a few
of their own.

A turn that raises affects one person only: none of its effects is written, and it is retried with the next batches,
TRIES times in all, then set aside with its error. If the database rejects the writes of a batch, its turns are repeated
one by one, each in its own savepoint. A database that is gone or locked is not a turn's fault: that error is raised to
the caller, with nothing done.
"""

from __future__ import annotations

import re
import traceback
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, timedelta, tzinfo
from functools import partial
from pathlib import Path
from typing import Protocol

from sqlalchemy import Connection
from sqlalchemy.exc import InterfaceError, OperationalError

from bot.foundation import log
from bot.store import codec, cohorts, deputies, inbox, invitations, outbox
from bot.store import facts as known_facts
from bot.store.clients import Client, StalePlan
from bot.store.cohorts import Cohort
from bot.store.facts import History, Known
from bot.store.inbox import TRIES, ClaimedEvent
from bot.store.invitations import Invitation, InvitationGone, InvitationKind
from bot.store.outbox import ANSWER, BULK, Outgoing
from bot.store.people import Staff, person_of, set_reachable
from bot.store.people import staff as staff_of
from bot.store.zones import zone_of
from bot.turns.apply_effects import TurnEffects, WriteBatch
from bot.turns.joining import FOR_STAFF, joiner, language_from_tag, was_here_before
from core.dialogue.client.effects import Raise
from core.dialogue.client.facts import ClientFacts, InvitationFact, StrangerFacts
from core.dialogue.client.messages import Emergency
from core.dialogue.client.messages_to_coach import ClientUnreachable
from core.dialogue.client.states import Setting, State
from core.dialogue.kit.effects import Erase, Join, Say
from core.dialogue.kit.events import Attachment, Command, Due, Event, Press, Reachability, Text, TimerFired
from core.dialogue.kit.messages import OurFault, Together
from core.language import LANGUAGES
from core.watching.flags import Clears, Code, flag

RETRY_AFTER = (timedelta(seconds=2), timedelta(seconds=15))
STRANGERS_HEAR_EVERY = timedelta(hours=1)
COACH_CHANGE = "coach_change"  # the setting whose confirmation redeems an invitation opened earlier
FROM_A_PERSON = (Text, Press, Command, Attachment)

_log = log.get("turn")


class Decided(Protocol):
    """What a step returns: `core.dialogue.client.step.Outcome` is one."""

    @property
    def state(self) -> object: ...

    @property
    def effects(self) -> Sequence[object]: ...


class DecideForClient(Protocol):
    def __call__(self, state: State, event: Event, facts: ClientFacts, now: datetime, /) -> Decided: ...


class StaffConversation(Protocol):
    """The conversation of coaches and organisers: loads through the caseload, decides, and applies the effects that
    only it has. state: as stored, None at first or if it no longer loads."""

    def step(self, conn: Connection, who: Staff, state: object | None, event: Event, now: datetime) -> Decided: ...

    def apply(self, conn: Connection, who: Staff, effect: object, turn: TurnEffects) -> None: ...


class GroupConversation(Protocol):
    """The conversation of group chats: decides and applies; returns whether the event concerned us."""

    def step(self, conn: Connection, chat_id: int, event: Event, now: datetime) -> bool: ...


def no_zones(text: str, language: str) -> tuple[str, ...]:
    return ()


def no_country(zone_name: str) -> str:
    return ""


def no_label(language: str, key: str, argument: str) -> str:
    return ""


@dataclass(frozen=True)
class Steps:
    """The decision functions and their look-ups.

    find_zones(text, language), country_of(zone name), label(language, key, argument): of `bot.rendering`.
    languages: those supported; English for anybody else.
    """

    client: DecideForClient
    stranger: Callable[[Event, StrangerFacts], Decided]
    staff: StaffConversation | None = None
    group: GroupConversation | None = None
    find_zones: Callable[[str, str], tuple[str, ...]] = no_zones
    country_of: Callable[[str], str] = no_country
    label: Callable[[str, str, str], str] = no_label
    languages: tuple[str, ...] = tuple(LANGUAGES)


@dataclass
class _Batch:
    """One pass over claimed rows. strangers: rows of chats without a person, which leave no trace."""

    conn: Connection
    steps: Steps
    now: datetime
    known: dict[int, Known] = field(default_factory=dict)
    histories: dict[int, History] = field(default_factory=dict)
    invitations: dict[str, Invitation] = field(default_factory=dict)
    cohorts: dict[int, Cohort] = field(default_factory=dict)
    told: frozenset[int] = frozenset()
    writes: WriteBatch = field(default_factory=WriteBatch)
    done: list[int] = field(default_factory=list)
    strangers: list[int] = field(default_factory=list)
    failed: list[tuple[ClaimedEvent, Exception]] = field(default_factory=list)


def work_batch(conn: Connection, steps: Steps, now: datetime, limit: int = 32) -> int:
    """Handle the oldest row of up to `limit` chats; return how many were claimed, including failures.

    The caller owns the transaction, and calls again until nothing is left.

    Raises: OperationalError or InterfaceError if the database itself fails; roll back and retry later.
    """
    rows = inbox.claim(conn, now, limit)
    if not rows:
        return 0
    try:
        with conn.begin_nested():
            failed = _work(conn, steps, rows, now)
    except (OperationalError, InterfaceError):
        raise
    except Exception:
        failed = [failure for row in rows for failure in _alone(conn, steps, row, now)]
    for row, error in failed:
        _failed(conn, row, error, now)
    return len(rows)


def _alone(conn: Connection, steps: Steps, row: ClaimedEvent, now: datetime) -> list[tuple[ClaimedEvent, Exception]]:
    try:
        with conn.begin_nested():
            return _work(conn, steps, [row], now)
    except (OperationalError, InterfaceError):
        raise
    except Exception as error:
        return [(row, error)]


def _work(
    conn: Connection, steps: Steps, rows: Sequence[ClaimedEvent], now: datetime
) -> list[tuple[ClaimedEvent, Exception]]:
    """Decide and write; return the rows whose turn failed, with their errors. Raises if writing itself fails."""
    batch = _Batch(conn, steps, now)
    events = _events(batch, rows)
    _load(batch, events)
    # staff come last, so that their changes are not overwritten from client facts loaded earlier
    for row, event in sorted(events, key=lambda pair: _is_staff(batch, pair[0])):
        try:
            _turn(batch, row, event)
        except (OperationalError, InterfaceError):
            raise
        except Exception as error:
            batch.failed.append((row, error))
    batch.writes.write(conn, now)
    inbox.done(conn, batch.done)
    inbox.forget(conn, batch.strangers)
    return batch.failed


def _is_staff(batch: _Batch, row: ClaimedEvent) -> bool:
    known = batch.known.get(row.chat_id)
    return known is not None and known.staff is not None


# --- loading -----------------------------------------------------------------------------------------------


def _events(batch: _Batch, rows: Sequence[ClaimedEvent]) -> list[tuple[ClaimedEvent, Event]]:
    events = []
    for row in rows:
        try:
            event = codec.load_again(row.event)
            if not isinstance(event, Event):
                raise codec.CodecError("this is not an event")
        except codec.CodecError as error:
            batch.failed.append((row, error))
        else:
            events.append((row, event))
    return events


def _load(batch: _Batch, events: Sequence[tuple[ClaimedEvent, Event]]) -> None:
    conn, now = batch.conn, batch.now
    private = [row.chat_id for row, _ in events if not row.is_group]
    batch.known = known_facts.who(conn, private) if private else {}
    _load_deputies(batch)
    theirs = [known.client for known in batch.known.values() if known.client is not None]
    batch.histories = known_facts.histories(conn, theirs, now)
    tokens = [token for row, event in events if (token := _token(batch, row, event))]
    found = invitations.find(conn, tokens, now)
    batch.invitations = {token: one for token, one in found.items() if one.kind is not InvitationKind.GROUP}
    batch.cohorts = cohorts.find(conn, {i.cohort_id for i in batch.invitations.values() if i.cohort_id is not None})
    strangers = [chat for chat in private if chat not in batch.known]
    batch.told = outbox.written_to(conn, strangers, now - STRANGERS_HEAR_EVERY)


def _load_deputies(batch: _Batch) -> None:
    """Who stands in for the coach of those whom a deputy has written to: their answers go there. No query on a usual
    day."""
    wanted = {
        chat: known.coach.id
        for chat, known in batch.known.items()
        if known.coach is not None and _BY_DEPUTY.search(known.state or "")
    }
    if wanted:
        found = deputies.standing_in(batch.conn, set(wanted.values()))
        for chat, coach in wanted.items():
            batch.known[chat] = replace(batch.known[chat], deputy=found.get(coach))


_BY_DEPUTY = re.compile(r'"word_to":[1-9]')


def _token(batch: _Batch, row: ClaimedEvent, event: Event) -> str:
    """The token of the invitation this event opens or accepts; "" for none."""
    if row.is_group:
        return ""
    if isinstance(event, Command):
        return event.argument if event.name == "start" else ""
    known = batch.known.get(row.chat_id)
    if known is not None and known.client is not None and COACH_CHANGE in (known.state or ""):
        asking = codec.load_state(known.state).asking
        if isinstance(asking, Setting) and asking.what == COACH_CHANGE:
            return asking.detail
    return ""


# --- one turn ----------------------------------------------------------------------------------------------


def _turn(batch: _Batch, row: ClaimedEvent, event: Event) -> None:
    """Decide one row and collect its writes."""
    if isinstance(event, Due | TimerFired):
        event = replace(event, late_by=max(event.late_by, batch.now - event.at))
    known = batch.known.get(row.chat_id)
    if row.is_group:
        _group(batch, row, event)
    elif known is None:
        _stranger(batch, row, event)
    else:
        _note_reachable(batch, known, row, event)
        if known.staff is not None:
            _staff(batch, row, known.staff, known, event)
        elif known.client is not None:
            _client(batch, row, known, event)
        else:
            raise LookupError("a client's chat without a client")
    batch.done.append(row.id)


def _note_reachable(batch: _Batch, known: Known, row: ClaimedEvent, event: Event) -> None:
    """A person who writes is reachable, whatever the messenger said before."""
    reachable = event.reachable if isinstance(event, Reachability) else True
    if known.reachable is not reachable and isinstance(event, (*FROM_A_PERSON, Reachability)):
        set_reachable(batch.conn, row.chat_id, reachable)
        if reachable:
            outbox.deliver_held(batch.conn, row.chat_id, batch.now)


def _turn_effects(
    batch: _Batch, row: ClaimedEvent, known: Known | None, event: Event, invitation: Invitation | None
) -> TurnEffects:
    client = None if known is None else known.client
    staff = None if known is None else known.staff
    at = batch.now if known is None or known.state_at is None else max(batch.now, known.state_at)
    name = row.name if staff is None else staff.name
    turn = TurnEffects(batch.conn, batch.now, at, row.chat_id, joiner(invitation, name))
    turn.is_group = row.is_group
    turn.priority = BULK if isinstance(event, Due) else ANSWER
    turn.language = language_from_tag(row.language, batch.steps.languages)
    if client is not None and known is not None:
        turn.client, turn.coach, turn.person_id, turn.language = client, known.coach, client.person_id, client.language
        turn.deputy = known.deputy
    if staff is not None:
        turn.person_id, turn.language = staff.person_id, staff.language
    return turn


def _client(batch: _Batch, row: ClaimedEvent, known: Known, event: Event) -> None:
    assert known.client is not None
    invitation = batch.invitations.get(_token(batch, row, event))
    if invitation is not None and invitation.kind in FOR_STAFF:
        invitation = None  # one chat, one role
    turn = _turn_effects(batch, row, known, event, invitation)
    opened = None if invitation is None else _invitation_fact(batch, invitation, was_here_before(known.client))
    facts = client_facts(batch.steps, known, batch.histories.get(known.client.id, History()), opened)
    decided = batch.steps.client(codec.load_state(known.state), event, facts, batch.now)
    turn.open_flags = frozenset(one.code for one in facts.flags)
    _reached(turn, known.client, known.reachable, event)
    _apply(batch, turn, decided)


def _reached(turn: TurnEffects, client: Client, reachable: bool, event: Event) -> None:
    """Notify the coach at once that a client is unreachable; clear that flag when the client writes again."""
    if isinstance(event, Reachability) and not event.reachable:
        day = turn.now.date().isoformat()
        turn.apply((Raise(flag(Code.UNREACHABLE, turn.now)),))
        turn.notify_coach(ClientUnreachable(client.id, client.name), occasion=f"unreachable/{client.id}/{day}")
    elif not reachable:
        turn.clear_flags(client, Clears.HEARD)


def _apply(batch: _Batch, turn: TurnEffects, decided: Decided) -> None:
    """Apply a decision. Immediate database changes happen in a savepoint, to be rolled back if they fail."""
    if any(isinstance(effect, Join | Erase) for effect in decided.effects):
        with batch.conn.begin_nested():
            turn.apply(decided.effects)
    else:
        turn.apply(decided.effects)
    turn.store_state(codec.dump_for_soon(decided.state))
    batch.writes.add(turn.writes)


def _stranger(batch: _Batch, row: ClaimedEvent, event: Event) -> None:
    invitation = batch.invitations.get(_token(batch, row, event))
    turn = _turn_effects(batch, row, None, event, invitation)
    fact = None if invitation is None else _invitation_fact(batch, invitation, False)
    decided = batch.steps.stranger(event, StrangerFacts(turn.language, row.name, fact))
    if invitation is not None and any(isinstance(effect, Join) for effect in decided.effects):
        if invitation.kind in FOR_STAFF:
            _new_staff(batch, row, event, turn, decided)
        else:
            _apply(batch, turn, decided)
        return
    batch.strangers.append(row.id)
    if row.chat_id not in batch.told or any(map(_says_to_call, decided.effects)):
        turn.apply(effect for effect in decided.effects if isinstance(effect, Say))
        batch.writes.add(turn.writes)


def _says_to_call(effect: object) -> bool:
    """Whether it tells somebody to call for help, which no limit holds back."""
    message = effect.message if isinstance(effect, Say) else None
    return any(isinstance(part, Emergency) for part in (message.parts if isinstance(message, Together) else (message,)))


def _new_staff(batch: _Batch, row: ClaimedEvent, event: Event, turn: TurnEffects, decided: Decided) -> None:
    """Somebody has just become staff: their staff conversation greets them, given the same event."""
    with batch.conn.begin_nested():
        turn.apply(decided.effects)
        who = staff_of(batch.conn, row.chat_id)
        if who is not None and batch.steps.staff is not None:
            _step_staff(batch, turn, who, None, event)
    batch.writes.add(turn.writes)


def _staff(batch: _Batch, row: ClaimedEvent, who: Staff, known: Known, event: Event) -> None:
    if batch.steps.staff is None:
        return
    invitation = batch.invitations.get(_token(batch, row, event))
    if invitation is not None and invitation.kind not in FOR_STAFF:
        invitation = None  # one chat, one role
    turn = _turn_effects(batch, row, known, event, invitation)
    with batch.conn.begin_nested():
        _step_staff(batch, turn, who, known.state, event)
    batch.writes.add(turn.writes)


def _step_staff(batch: _Batch, turn: TurnEffects, who: Staff, kept: str | None, event: Event) -> None:
    assert batch.steps.staff is not None
    try:
        state = None if kept is None else codec.loads(kept)
    except codec.CodecError:
        state = None
    decided = batch.steps.staff.step(batch.conn, who, state, event, batch.now)
    for effect in decided.effects:
        if type(effect).__module__ == Say.__module__:
            turn.apply((effect,))
        else:
            batch.steps.staff.apply(batch.conn, who, effect, turn)
    turn.store_state(codec.dumps(decided.state))


def _group(batch: _Batch, row: ClaimedEvent, event: Event) -> None:
    if batch.steps.group is None:
        return
    with batch.conn.begin_nested():
        concerned = batch.steps.group.step(batch.conn, row.chat_id, event, batch.now)
    if not concerned:
        batch.strangers.append(row.id)  # a group of no cohort leaves no trace


# --- facts -------------------------------------------------------------------------------------------------


def client_facts(steps: Steps, known: Known, history: History, opened: InvitationFact | None = None) -> ClientFacts:
    """Build the facts of a client's step."""
    client = known.client
    assert client is not None
    zone_name = client.slot.zone_name if client.slot else None
    zone: tzinfo = zone_of(zone_name) if zone_name else UTC
    return ClientFacts(
        client_id=client.id,
        name=client.name,
        coach_name=known.coach.name if known.coach else "",
        coach_reachable=known.coach is not None and known.coach.reachable,
        deputy=None if known.deputy is None or not known.deputy.reachable else (known.deputy.id, known.deputy.name),
        coach_nights=zone_of(known.coach.zone_name) if known.coach is not None and known.coach.quiet_nights else None,
        coach_zone=(known.coach.zone_name or "") if known.coach is not None else "",
        language=client.language,
        country=steps.country_of(zone_name) if zone_name else "",
        status=client.status,
        consented=client.consented,
        units=client.units,
        slot=client.slot,
        zone=zone,
        profile=client.profile,
        plan=client.plan,
        paused_until=client.paused_until,
        history=history.readings,
        flags=history.flags,
        said=history.said,
        goals=history.goals,
        missed=client.missed,
        answered=client.answered,
        check_ins=history.check_ins,
        cohorts=history.cohorts,
        invitation=opened,
        readiness=client.readiness,
        find_zones=partial(_find_zones, steps, client.language),
        zone_of=zone_of,
        label=partial(steps.label, client.language),
    )


def _find_zones(steps: Steps, language: str, text: str) -> tuple[str, ...]:
    return steps.find_zones(text, language)


def _invitation_fact(batch: _Batch, invitation: Invitation, before: bool) -> InvitationFact:
    fact = InvitationFact(invitation.kind.value, invitation.by_name, invitation.for_name, before)
    cohort = batch.cohorts.get(invitation.cohort_id or 0)
    if cohort is None:
        return fact
    return replace(fact, cohort=cohorts.membership(cohort), coach_name=cohort.coach_name)


# --- when a turn fails -------------------------------------------------------------------------------------


def _failed(conn: Connection, row: ClaimedEvent, error: Exception, now: datetime) -> None:
    """Schedule a retry, or set the row aside and tell the sender that their message was received."""
    where = place(error)
    if isinstance(error, InvitationGone | StalePlan) and row.attempts + 1 < TRIES:
        inbox.retry_later(conn, row.id, now, where)  # somebody else was first: read again, at once
        return
    if row.attempts + 1 < TRIES:
        inbox.retry_later(conn, row.id, now + RETRY_AFTER[row.attempts], where)
        return
    _log.error("a turn was set aside", row=row.id, fault=type(error).__name__, where=where)
    inbox.set_aside(conn, row.id, where)
    if row.is_group or not _typed(row):
        return
    person = person_of(conn, row.chat_id)
    if person is None:
        return
    out = Outgoing(row.chat_id, OurFault(), now, person_id=person, occasion=f"fault/{row.id}")
    outbox.put(conn, [out], now)


def _typed(row: ClaimedEvent) -> bool:
    """Whether a person wrote this; assumed so for a row too corrupt to tell."""
    try:
        return isinstance(codec.loads(row.event), FROM_A_PERSON)
    except codec.CodecError:
        return True


def place(error: BaseException) -> str:
    """What failed and where, without content: the exception class, and the last code locations."""
    frames = traceback.extract_tb(error.__traceback__)
    ours = [f for f in frames if "/site-packages/" not in f.filename][-2:]
    return " < ".join([type(error).__name__, *(f"{Path(f.filename).stem}:{f.lineno}" for f in reversed(ours))])
