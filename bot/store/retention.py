"""Retention periods, and the job that enforces them."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta

from sqlalchemy import Connection, Delete, delete, select, update

from bot.store import (
    audit,
    cohorts,
    encouragement_history,
    erase,
    erasures,
    inbox,
    invitations,
    outbox,
    rate_limit,
    unread,
)
from bot.store.schema import clients, flags, readings, words
from core.care import Status
from core.reading import How
from core.watching.flags import QUIET, RULES, Clears

TOLD = timedelta(days=366)  # longer than any cohort: no figure of those days can be told any more
STRANGERS = timedelta(hours=1)  # after that they may get the standard reply again


@dataclass(frozen=True, slots=True)
class RetentionPeriods:
    """How long. inbox: keys of handled events (what was in them goes when they are handled), updates nobody could read.
    sent: what became of messages, and their occasions (what they said goes when they are sent). left: the data of
    clients who left. side_notes: early weights; the guard looks back over one cycle, of 42 days at most. withdrawn:
    readings taken back. words: between clients and coaches. audit: who did what, without content."""

    inbox: timedelta = timedelta(days=30)
    sent: timedelta = timedelta(days=90)
    left: timedelta = timedelta(days=365)
    side_notes: timedelta = timedelta(days=90)
    withdrawn: timedelta = timedelta(days=30)
    words: timedelta = timedelta(days=365)
    audit: timedelta = timedelta(days=3 * 365)


def tidy(conn: Connection, now: datetime, kept: RetentionPeriods) -> int:
    """Delete everything past its retention period, and clear flags quiet for four weeks; return the number of rows.

    To be run occasionally: each statement scans old rows once.
    """
    return sum(_tidied(conn, now, kept))


def _tidied(conn: Connection, now: datetime, kept: RetentionPeriods) -> Iterable[int]:
    yield outbox.purge_strangers(conn, now - STRANGERS)
    yield inbox.purge(conn, now - kept.inbox)
    yield unread.purge(conn, now - kept.inbox)
    yield outbox.purge(conn, now - kept.sent)
    yield invitations.purge(conn, now - kept.inbox)
    yield encouragement_history.purge(conn, now)
    yield audit.purge(conn, now - kept.audit)
    yield rate_limit.forget(conn, now)
    yield cohorts.forget_told(conn, (now - TOLD).date())
    yield _quiet(conn, now)
    yield _gone(
        conn,
        now,
        delete(readings).where(readings.c.how == How.EARLY.value, readings.c.taken_at < now - kept.side_notes),
    )
    yield _gone(conn, now, delete(readings).where(readings.c.withdrawn_at < now - kept.withdrawn))
    yield _gone(conn, now, delete(words).where(words.c.at < now - kept.words))
    for client_id in _long_gone(conn, now - kept.left):
        erase.client(conn, client_id, now, actor="retention")
        yield 1


def _gone(conn: Connection, now: datetime, old: Delete) -> int:
    """Delete expired rows, without leaving traces in the file; return how many."""
    count = conn.execute(old).rowcount
    if count:
        erasures.owe(conn, now)
    return count


def _quiet(conn: Connection, now: datetime) -> int:
    codes = [code.value for code, rule in RULES.items() if rule.clears is Clears.FOUR_QUIET_WEEKS]
    over = (
        update(flags)
        .where(flags.c.cleared_at.is_(None), flags.c.code.in_(codes), flags.c.refreshed_at <= now - QUIET)
        .values(cleared_at=now)
    )
    return conn.execute(over).rowcount


def _long_gone(conn: Connection, before: datetime) -> list[int]:
    gone = select(clients.c.id).where(clients.c.status == Status.LEFT.value, clients.c.left_at < before)
    return list(conn.execute(gone).scalars())
