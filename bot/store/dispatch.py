"""One exchange between a sender and the store: record the last results, and claim the next messages.

One transaction does both, which guarantees that a message is recorded as sent before the next one of its chat can be
claimed, and that claims stay within the rate limits shared by all workers.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from sqlalchemy import Connection

from bot.foundation.retry import MOST_ATTEMPTS, Broken, Moved, RetryDecision, Sent, Unreachable, Wait
from bot.store import codec, erasures, inbox, outbox, rate_limit
from bot.store.dialect import by_index
from core.dialogue.kit.events import GroupEvent, Reachability
from core.dialogue.kit.messages import OurFault
from core.dialogue.staff.step import about
from core.dialogue.staff.talk_messages import TakingBack, WordsTakenBack

LONGEST_SEND = timedelta(seconds=115)  # a text and a picture, with every timeout reached
LEASE = timedelta(seconds=150)  # how long after a crash another worker tries
HOLD = LEASE - LONGEST_SEND  # after claiming; a send started later could still be in flight when the lease ends
# how far ahead one worker reserves sends: replies wait no longer than this behind bulk messages
WITHIN = timedelta(milliseconds=250)
UNREACHABLE = "unreachable"
INSTEAD = "instead/"  # prefix of an apology's occasion, for a message that could not be rendered or was refused


@dataclass(frozen=True, slots=True)
class Postponed:
    """Not tried: release it, to be claimed from `until` on."""

    until: datetime


@dataclass(frozen=True, slots=True)
class SendResult:
    """The result for one claimed row. done: for a message in several parts, how many have been sent."""

    row: outbox.ClaimedMessage
    outcome: Sent | RetryDecision | Postponed
    done: int = 0


@dataclass(frozen=True, slots=True)
class SendJob:
    """One message to send at `at`; `done` parts have already been sent. Sending must start before `until`,
    or the message is released."""

    row: outbox.ClaimedMessage
    at: datetime
    until: datetime
    done: int = 0


@dataclass(frozen=True, slots=True)
class Next:
    """jobs: to send. again: when there may be more, None if nothing is pending. events: whether inbox events were
    created (somebody blocked us, a group moved)."""

    jobs: tuple[SendJob, ...] = ()
    again: datetime | None = None
    events: bool = False


def claim_and_settle(
    conn: Connection,
    worker: str,
    now: datetime,
    results: Sequence[SendResult],
    want: int,
    rates: rate_limit.Rates | None,
) -> Next:
    """Record `results`, then claim up to `want` messages within `rates` (None: no limit)."""
    events = _record(conn, worker, now, results)
    if want <= 0:
        return Next(events=events)
    by_index(conn)
    room = rate_limit.Room(now, want)
    if rates is not None:
        room = rate_limit.room(conn, now, WITHIN, rates)
        if room.count == 0:
            return Next((), room.first, events)
    limit = min(want, room.count)
    claimed = outbox.claim(conn, worker, now, LEASE, limit)
    again = now if len(claimed) == limit else outbox.next_due(conn)
    if rates is None:
        return Next(_jobs(claimed, [now] * len(claimed), now + HOLD), again, events)

    free = rate_limit.chats_free(conn, ((row.chat_id, row.is_group) for row in claimed), rates)
    taken = [row for row in claimed if free.get(row.chat_id, now) <= now]
    early = [(row.id, free[row.chat_id]) for row in claimed if free.get(row.chat_id, now) > now]
    outbox.hand_back(conn, worker, early)
    rate_limit.take(conn, room, len(taken), rates)
    at = [room.first + place * rates.apart for place in range(len(taken))]
    rate_limit.take_chats(conn, ((row.chat_id, row.is_group, when) for row, when in zip(taken, at, strict=True)), rates)
    if early and again is not None:
        again = min([again, *(until for _, until in early)])
    elif early:
        again = min(until for _, until in early)
    if len(taken) == room.count:
        again = room.first + len(taken) * rates.apart - WITHIN / 2  # come back before the reserved sends are used up
    return Next(_jobs(taken, at, now + HOLD), again, events)


# --- recording ---------------------------------------------------------------------------------------------


def _record(conn: Connection, worker: str, now: datetime, results: Sequence[SendResult]) -> bool:
    sent: list[tuple[int, str | None]] = []
    back: list[tuple[int, datetime]] = []
    events: list[inbox.NewEvent] = []
    goodbyes = [r.row for r in results if r.row.kind is outbox.DeliveryKind.FAREWELL and isinstance(r.outcome, _FINAL)]
    for result in results:
        row = result.row
        if row in goodbyes:
            continue
        if row.kind is outbox.DeliveryKind.DELETE and isinstance(result.outcome, _FINAL):
            _tell_writer(conn, row, result.outcome, now)
            sent.append((row.id, None))
            continue
        match result.outcome:
            case Sent(message_id):
                sent.append((row.id, None if message_id is None else str(message_id)))
            case Postponed(until):
                back.append((row.id, until))
            case Wait(until, everybody, error):
                done = result.done if row.kind is outbox.DeliveryKind.MESSAGE else 0
                outbox.mark_retry(conn, worker, row.id, until, error, done=done)
                if everybody:
                    rate_limit.halt(conn, until)
            case Moved(chat_id):
                outbox.mark_retry(conn, worker, row.id, now)
                outbox.move_chat(conn, row.chat_id, chat_id)
                event = GroupEvent(now, "migrated", other_chat=chat_id)
                events.append(inbox.NewEvent(f"moved/{row.chat_id}", row.chat_id, event, is_group=True))
            case Unreachable(reason):
                outbox.hold_chat(conn, row.chat_id, now, reason)
                events.append(_gone(row, now))
            case Broken(error) if error == UNREACHABLE:
                outbox.hold(conn, row.id, now, error)
            case Broken(error):
                outbox.mark_failed(conn, row.id, now, error)
                if _was_an_answer(row):
                    instead = outbox.Outgoing(
                        row.chat_id, OurFault(), row.due_at, person_id=row.person_id, occasion=f"{INSTEAD}{row.id}"
                    )
                    outbox.put(conn, [instead], now)
    outbox.mark_sent(conn, sent, now)
    outbox.hand_back(conn, worker, back)
    if goodbyes:  # said, or not to be said: this was the last that was kept of them
        outbox.forget(conn, [row.id for row in goodbyes])
        for row in goodbyes:
            rate_limit.forget_chat(conn, row.chat_id)
        erasures.owe(conn, now)
    return inbox.put(conn, events, now) > 0


_FINAL = (Sent, Unreachable, Broken)


def _tell_writer(conn: Connection, row: outbox.ClaimedMessage, outcome: object, now: datetime) -> None:
    """Tell a coach what became of words they took back."""
    order = codec.loads_as(TakingBack, row.message)
    how = "never" if not row.ref else "deleted" if isinstance(outcome, Sent) else "stays"
    said = WordsTakenBack(order.name, how)
    told = outbox.Outgoing(order.chat_id, said, now, about(order.client_id), order.person_id, about=order.client_id)
    outbox.put(conn, [told], now)


def _was_an_answer(row: outbox.ClaimedMessage) -> bool:
    """Whether a person is waiting for it and would get no reply. After a day of retries it is too old to mention."""
    answer = row.kind is outbox.DeliveryKind.MESSAGE and row.priority == outbox.ANSWER and row.person_id is not None
    again = (row.occasion or "").startswith(INSTEAD)
    return answer and not again and row.attempts + 1 < MOST_ATTEMPTS


def _gone(row: outbox.ClaimedMessage, now: datetime) -> inbox.NewEvent:
    """Notify the conversation, as the messenger's own update would."""
    event = GroupEvent(now, "removed") if row.is_group else Reachability(now, False)
    return inbox.NewEvent(f"gone/{row.id}", row.chat_id, event, is_group=row.is_group)


def _jobs(rows: Sequence[outbox.ClaimedMessage], at: Sequence[datetime], until: datetime) -> tuple[SendJob, ...]:
    return tuple(SendJob(row, when, until, _done(row)) for row, when in zip(rows, at, strict=True))


def _done(row: outbox.ClaimedMessage) -> int:
    """How many parts of a message were sent before it had to wait."""
    return int(row.ref) if row.kind is outbox.DeliveryKind.MESSAGE and row.ref.isdigit() else 0
