"""Flags and their life cycle: open, seen, cleared; if raised again after that, a new flag."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import Connection, bindparam, select, text, update

from bot.store import codec, owners
from bot.store.dialect import among, upsert
from bot.store.schema import flags
from bot.store.sealed import secret
from core.dialogue.client.facts import OpenFlag
from core.watching.flags import Code, Ended, Evidence, Flag, Severity

_open = flags.c.cleared_at.is_(None)
_OPEN = (
    select(flags.c.client_id, flags.c.code, flags.c.measure, flags.c.since)
    .where(among(flags.c.client_id, "clients"), _open)
    .order_by(flags.c.since, flags.c.id)
)


@dataclass(frozen=True, slots=True)
class StoredFlag:
    """A flag as stored. since: when it was opened; refreshed_at: when it last recurred."""

    id: int
    client_id: int
    flag: Flag
    refreshed_at: datetime
    seen_at: datetime | None
    cleared_at: datetime | None


def open_flags(conn: Connection, client_ids: Iterable[int]) -> dict[int, tuple[OpenFlag, ...]]:
    """The open flags of clients, oldest first. One query."""
    wanted = list(client_ids)
    found: dict[int, list[OpenFlag]] = {}
    if wanted:
        for r in conn.execute(_OPEN, {"clients": wanted}):
            found.setdefault(r.client_id, []).append(OpenFlag(r.code, r.measure or None, r.since))
    return {client: tuple(several) for client, several in found.items()}


def raise_(conn: Connection, raised: Sequence[tuple[int, Flag]], now: datetime) -> None:
    """Open flags, as (client, flag), or refresh the evidence of open ones with the same code and measure.

    No two may be the same flag. A seen flag that recurs stays seen.
    """
    keys = owners.of_clients(conn, [client for client, _ in raised])
    rows = [
        {
            "client_id": client,
            "code": flag.code.value,
            "measure": flag.measure or "",
            "severity": flag.severity.value,
            "evidence": secret(keys[client], codec.dumps(flag.evidence)),
            "since": flag.since,
            "refreshed_at": now,
            "told_at": now if flag.severity is Severity.URGENT else None,
        }
        for client, flag in raised
    ]
    upsert(
        conn,
        flags,
        rows,
        ("client_id", "code", "measure"),
        ("severity", "evidence", "refreshed_at", "told_at"),
        where=text("cleared_at IS NULL"),
    )


@dataclass(frozen=True, slots=True)
class Lowering:
    """How a flag ended by itself. after: what followed, as in `core.watching.flags`."""

    ended: Ended
    after: Evidence = ()


_LOWER = (
    update(flags)
    .where(
        flags.c.client_id == bindparam("client"),
        flags.c.code == bindparam("what"),
        flags.c.measure == bindparam("of"),
        _open,
    )
    .values(cleared_at=bindparam("now"), ended=bindparam("how"), followed=bindparam("what_followed"))
)


def lower(conn: Connection, lowered: Mapping[tuple[int, str, str | None], Lowering], now: datetime) -> None:
    """Clear the open flags with these clients, codes and measures, if they are open."""
    if not lowered:
        return
    keys = owners.of_clients(conn, [client for client, _, _ in lowered])
    rows = [
        {
            "client": client,
            "what": what,
            "of": of or "",
            "now": now,
            "how": how.ended.value,
            "what_followed": secret(keys[client], codec.dumps(how.after)) if how.after else None,
        }
        for (client, what, of), how in lowered.items()
        if client in keys
    ]
    conn.execute(_LOWER, rows)


def seen(conn: Connection, client_id: int, code: str, measure: str | None, now: datetime) -> bool:
    """Mark an open flag as seen by the coach; return whether there was an unseen one. Authorised by the caller through
    `caseload`."""
    looked_at = (
        update(flags)
        .where(
            flags.c.client_id == client_id,
            flags.c.code == code,
            flags.c.measure == (measure or ""),
            flags.c.seen_at.is_(None),
            _open,
        )
        .values(seen_at=now)
    )
    return conn.execute(looked_at).rowcount > 0


_KEPT = select(flags).where(among(flags.c.client_id, "clients")).order_by(flags.c.since, flags.c.id)


def history(conn: Connection, client_ids: Iterable[int], since: datetime | None = None) -> tuple[StoredFlag, ...]:
    """Flags of clients, oldest first: all open ones, and those cleared after `since` (None: all). One query."""
    rows = conn.execute(_KEPT, {"clients": list(client_ids)})
    return tuple(
        StoredFlag(
            r.id,
            r.client_id,
            Flag(Code(r.code), Severity(r.severity), r.measure or None, _evidence(r.evidence), r.since),
            r.refreshed_at,
            r.seen_at,
            r.cleared_at,
        )
        for r in rows
        if r.cleared_at is None or since is None or r.cleared_at > since
    )


def _evidence(text: str | None) -> Evidence:
    found: Evidence = codec.loads(text) if text else ()  # type: ignore[assignment]
    return found
