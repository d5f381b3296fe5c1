"""Invariants after a morning, whatever happened during it.

* Every text is stored once and handled; every reading is there once, as typed, including corrections.
* Every occasion occurred once, and its message arrived.
* Every chat shows, in order, exactly what it shows after a morning without faults. Only a message that was in flight
  when a bot was killed, or whose answer was lost, may be there twice in a row: that is counted, with its cause.
* The messenger never had to refuse a message because of its rate limit.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field
from decimal import Decimal
from difflib import unified_diff
from itertools import groupby, pairwise

from sqlalchemy import Connection, select

from bot.store.schema import inbox, outbox, readings, slots
from demo.messenger import SeenMessage
from tests.faults.morning import Morning, lines

Chats = dict[int, tuple[str, ...]]


@dataclass
class Found:
    """The result of a morning. repeats: how often something was sent twice, by cause."""

    kills: Counter[str] = field(default_factory=Counter)
    sent: int = 0
    typed: int = 0
    repeats: Counter[str] = field(default_factory=Counter)
    faults: Counter[str] = field(default_factory=Counter)

    def add(self, other: Found) -> None:
        self.kills += other.kills
        self.repeats += other.repeats
        self.faults += other.faults
        self.sent += other.sent
        self.typed += other.typed


async def chats(morning: Morning) -> Chats:
    """The bot's messages in each client's chat, consecutive repeats merged."""
    found = {}
    for chat in morning.clients:
        shown = [m.text for m in await morning.messenger.seen(chat) if m.from_bot]
        found[chat] = tuple(text for text, _ in groupby(shown))
    return found


async def check(morning: Morning, expected: Chats, *, lossy: int = 0) -> Found:
    """Check everything above against `expected`, the chats of a morning without faults.

    lossy: number of messages accepted without the bot knowing, apart from kills. Raises: AssertionError for the first
    violation.
    """
    found = Found(Counter(end.point or "from outside" for end in morning.ends if end.status == -9))
    assert all(end.status in (0, -9) for end in morning.ends), morning.ends
    kept, said = await morning.store.read(_kept), await morning.store.read(_said)
    _check_inbox(morning, kept)
    _check_readings(morning, await morning.store.read(_readings))
    _check_occasions(morning, await morning.store.read(_slots), said)
    for chat, shown in (await chats(morning)).items():
        assert shown == expected[chat], f"chat {chat}:\n" + "\n".join(unified_diff(expected[chat], shown, lineterm=""))
    for chat in morning.clients:
        found.repeats += _repeats(morning, [m for m in await morning.messenger.seen(chat) if m.from_bot])
    assert found.repeats["lost answer"] <= lossy, found.repeats
    figures = await morning.messenger.figures()
    found.faults = Counter(figures["struck"])
    assert figures["refused_by_flood"] <= found.faults["too_many"]  # fewer, if another fault struck the same request
    found.sent, found.typed = figures["accepted"], morning.typed
    return found


def _check_inbox(morning: Morning, rows: Sequence[tuple[str, str, str | None]]) -> None:
    typed = [key for key, _, _ in rows if key.startswith("telegram/")]
    assert len(typed) == morning.typed == sum(len(lines(n)) for n in range(len(morning.clients)))
    assert [(key, error) for key, status, error in rows if status != "done"] == []
    assert Counter(key.partition("/")[0] for key, _, _ in rows)["due"] == len(morning.clients)


def _check_readings(morning: Morning, rows: Sequence[tuple[int, str, Decimal]]) -> None:
    expected = Counter[tuple[int, str, Decimal]]()
    for number in range(len(morning.clients)):
        expected[number + 1, "energy", Decimal(3 + number % 7)] += 1
        expected[number + 1, "weight", Decimal(f"{60 + number}.6")] += 1
    assert Counter(rows) == expected


def _check_occasions(morning: Morning, asked: Sequence[int], said: Sequence[tuple[str, str | None]]) -> None:
    assert sorted(asked) == list(range(1, len(morning.clients) + 1))
    assert [row for row in said if row[0] == "failed"] == []


ON_ITS_WAY = 1.0  # seconds


def _repeats(morning: Morning, shown: Sequence[SeenMessage]) -> Counter[str]:
    """The cause of each message that appears twice in a row: a kill between the two, or a lost answer."""
    causes: Counter[str] = Counter()
    for first, second in pairwise(shown):
        if first.text == second.text:
            # on its way when the bot was killed, a request is accepted a moment after its end
            since = first.accepted - ON_ITS_WAY
            killed = any(since <= end.at <= second.accepted for end in morning.ends if end.status == -9)
            causes["killed in flight" if killed else "lost answer"] += 1
    return causes


def _kept(conn: Connection) -> list[tuple[str, str, str | None]]:
    columns = select(inbox.c.key, inbox.c.status, inbox.c.error).order_by(inbox.c.id)
    return [(r.key, r.status, r.error) for r in conn.execute(columns)]


def _said(conn: Connection) -> list[tuple[str, str | None]]:
    columns = select(outbox.c.status, outbox.c.error).where(outbox.c.status != "pending")
    return [(r.status, r.error) for r in conn.execute(columns)]


def _readings(conn: Connection) -> list[tuple[int, str, Decimal]]:
    columns = select(readings.c.client_id, readings.c.measure, readings.c.value).where(
        readings.c.withdrawn_at.is_(None)
    )
    return [(r.client_id, r.measure, r.value) for r in conn.execute(columns)]


def _slots(conn: Connection) -> list[int]:
    return list(conn.execute(select(slots.c.client_id)).scalars())
