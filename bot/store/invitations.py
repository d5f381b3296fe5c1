"""Invitations: a link with a token of 128 random bits, of which only a hash is stored.

A token is looked up by its hash, so a copy of the database gives no access. It is valid once (a cohort's for a set
number of uses), for 14 days, unless revoked.
"""

from __future__ import annotations

import hashlib
import secrets
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum

from sqlalchemy import Connection, bindparam, delete, insert, or_, select, update

from bot.store import codec, owners
from bot.store.dialect import among
from bot.store.schema import invitations
from bot.store.sealed import secret
from core.care import Plan

GOOD_FOR = timedelta(days=14)
TOKEN_BYTES = 16  # 128 bits: 22 characters of A-Z a-z 0-9 _ -, as allowed in a link
LONGEST = 64  # longest token the platform passes on


class InvitationKind(StrEnum):
    CLIENT = "client"
    COACH = "coach"
    ORGANISER = "organiser"
    COHORT = "cohort"
    GROUP = "group"  # links a group chat to a cohort: opened in the group, never by a person


@dataclass(frozen=True, slots=True)
class Invitation:
    """A valid invitation. plan: set up by the coach for the client; None is the default."""

    id: int
    kind: InvitationKind
    coach_id: int | None
    by_name: str
    for_name: str
    plan: Plan | None
    client_id: int | None
    cohort_id: int | None


class InvitationGone(Exception):
    """The invitation was used, revoked or expired between lookup and use."""


def hashed(token: str) -> str:
    return hashlib.sha256(token.encode("utf-8", "replace")).hexdigest()


def make(
    conn: Connection,
    kind: InvitationKind,
    now: datetime,
    *,
    by_name: str = "",
    for_name: str = "",
    coach_id: int | None = None,
    plan: Plan | None = None,
    client_id: int | None = None,
    cohort_id: int | None = None,
    uses: int = 1,
    good_for: timedelta = GOOD_FOR,
) -> str:
    """Create an invitation; return its token, which cannot be retrieved again."""
    token = secrets.token_urlsafe(TOKEN_BYTES)
    key = owners.passing(conn, now) if client_id is None else owners.of_clients(conn, [client_id])[client_id]
    conn.execute(
        insert(invitations),
        {
            "token_hash": hashed(token),
            "kind": kind.value,
            "coach_id": coach_id,
            "by_name": secret(key, by_name),
            "for_name": secret(key, for_name),
            "plan": None if plan is None else secret(key, codec.dumps(plan)),
            "client_id": client_id,
            "cohort_id": cohort_id,
            "uses_left": uses,
            "created_at": now,
            "expires_at": now + good_for,
        },
    )
    return token


_good = (
    invitations.c.uses_left > 0,
    invitations.c.revoked_at.is_(None),
    invitations.c.expires_at > bindparam("now"),
)
_FIND = select(invitations).where(among(invitations.c.token_hash, "hashes"), *_good)


def find(conn: Connection, tokens: Iterable[str], now: datetime) -> dict[str, Invitation]:
    """The invitations of those tokens that are still valid. One query for any number."""
    wanted = {hashed(token): token for token in tokens if 0 < len(token) <= LONGEST}
    if not wanted:
        return {}
    found = {}
    for r in conn.execute(_FIND, {"hashes": list(wanted), "now": now}):
        plan = None if r.plan is None else codec.loads_as(Plan, r.plan)
        found[wanted[r.token_hash]] = Invitation(
            r.id, InvitationKind(r.kind), r.coach_id, r.by_name, r.for_name, plan, r.client_id, r.cohort_id
        )
    return found


_USE = (
    update(invitations)
    .where(invitations.c.id == bindparam("invitation"), *_good)
    .values(uses_left=invitations.c.uses_left - 1, used_at=bindparam("now"))
)


def use(conn: Connection, invitation: Invitation, now: datetime) -> None:
    """Redeem an invitation once; after the last use, its name and plan are deleted.

    Raises: InvitationGone if somebody else was first.
    """
    if conn.execute(_USE, {"invitation": invitation.id, "now": now}).rowcount != 1:
        raise InvitationGone
    conn.execute(
        update(invitations)
        .where(invitations.c.id == invitation.id, invitations.c.uses_left == 0)
        .values(for_name="", plan=None)
    )


def revoke(conn: Connection, invitation_id: int, coach_id: int, now: datetime) -> bool:
    """Revoke an unused invitation of this coach; return whether there was one."""
    mine = (
        update(invitations)
        .where(
            invitations.c.id == invitation_id,
            invitations.c.coach_id == coach_id,
            invitations.c.uses_left > 0,
            invitations.c.revoked_at.is_(None),
        )
        .values(revoked_at=now)
    )
    return conn.execute(mine).rowcount == 1


def open_of(conn: Connection, coach_id: int, now: datetime) -> tuple[tuple[int, str, datetime], ...]:
    """A coach's valid invitations: id, for whom, until when."""
    rows = conn.execute(
        select(invitations.c.id, invitations.c.for_name, invitations.c.expires_at)
        .where(invitations.c.coach_id == coach_id, *_good)
        .order_by(invitations.c.id),
        {"now": now},
    )
    return tuple((r.id, r.for_name, r.expires_at) for r in rows)


def unopened(conn: Connection, coach_id: int, now: datetime) -> tuple[tuple[int, str, datetime], ...]:
    """A coach's valid links for one client each who has no row yet: id, for whom, until when."""
    rows = conn.execute(
        select(invitations.c.id, invitations.c.for_name, invitations.c.expires_at)
        .where(
            invitations.c.coach_id == coach_id,
            invitations.c.kind == InvitationKind.CLIENT.value,
            invitations.c.client_id.is_(None),
            *_good,
        )
        .order_by(invitations.c.id),
        {"now": now},
    )
    return tuple((r.id, r.for_name, r.expires_at) for r in rows)


def purge(conn: Connection, before: datetime) -> int:
    """Delete invitations that expired, were used or revoked before an instant; return how many."""
    over = or_(
        invitations.c.expires_at < before,
        invitations.c.revoked_at < before,
        (invitations.c.uses_left == 0) & (invitations.c.used_at < before),
    )
    return conn.execute(delete(invitations).where(over)).rowcount
