"""The queue of updates for the bot, consumed by a long poll or a webhook.

An update stays until it is confirmed: by a `getUpdates` with an offset above its id, or by a 2xx answer
of the webhook. It is dropped unconfirmed 24 h after it happened, a button press after 150 s (the
server's own figures). Ids are sequential.
"""

import asyncio
import math
from collections import OrderedDict, deque
from collections.abc import Callable
from dataclasses import dataclass
from itertools import islice
from typing import Any

from demo.messenger.faults import Faults
from demo.messenger.refusals import conflict
from demo.messenger.signal import Signal
from demo.messenger.update import Update

MESSAGE_LIFE = 86_400
QUERY_LIFE = 150
NOT_BY_DEFAULT = frozenset({"chat_member", "message_reaction", "message_reaction_count"})
_REMEMBERED = 256


@dataclass(slots=True)
class _Held:
    """An update that a fault holds back until `behind` later ones have been delivered."""

    behind: int
    kind: str
    payload: dict[str, Any]
    lane: tuple[str, int]
    expires: int


class UpdateQueue:
    """Unconfirmed updates in order of id."""

    def __init__(self, now: Callable[[], int], signal: Signal, faults: Faults, first_id: int = 1) -> None:
        self._now = now
        self._signal = signal
        self._faults = faults
        self._next = first_id
        self._poll: asyncio.Future[None] | None = None
        self._arrived: asyncio.Future[None] | None = None
        self._held: list[_Held] = []
        self._confirmed: deque[Update] = deque(maxlen=_REMEMBERED)
        self.pending: OrderedDict[int, Update] = OrderedDict()
        self._first_expiry: float = math.inf
        self.allowed: frozenset[str] | None = None
        self.webhook_set = False
        self.on_arrival: Callable[[Update], None] | None = None

    def add(self, kind: str, payload: dict[str, Any], lane: tuple[str, int]) -> None:
        """Queue an update, unless the bot does not want this kind."""
        if self.allowed is None:
            if kind in NOT_BY_DEFAULT:
                return
        elif kind not in self.allowed:
            return
        expires = self._now() + (QUERY_LIFE if kind == "callback_query" else MESSAGE_LIFE)
        behind = self._faults.late()
        if behind:
            self._held.append(_Held(behind, kind, payload, lane, expires))
            return
        self._append(kind, payload, lane, expires)
        if self._held:
            for held in self._held:
                held.behind -= 1
            self._release(only_due=True)

    def _append(self, kind: str, payload: dict[str, Any], lane: tuple[str, int], expires: int) -> None:
        update = Update(self._next, kind, payload, lane, expires)
        self._next += 1
        self.pending[update.id] = update
        self._first_expiry = min(self._first_expiry, expires)
        if self.on_arrival is not None:
            self.on_arrival(update)
        if self._arrived is not None and not self._arrived.done():
            self._arrived.set_result(None)

    def release_late(self) -> None:
        """Release every update that a fault still holds back."""
        self._release(only_due=False)

    def _release(self, *, only_due: bool) -> None:
        due = [entry for entry in self._held if not only_due or entry.behind <= 0]
        self._held = [entry for entry in self._held if only_due and entry.behind > 0]
        for late in due:
            self._append(late.kind, late.payload, late.lane, late.expires)

    @property
    def unconfirmed(self) -> int:
        """Number of unconfirmed updates, including those held back by a fault."""
        return len(self.pending) + len(self._held)

    def drop_expired(self) -> None:
        now = self._now()
        if now < self._first_expiry:
            return
        for update in list(self.pending.values()):
            if update.expires <= now:
                del self.pending[update.id]
        self._first_expiry = min((update.expires for update in self.pending.values()), default=math.inf)
        self._signal.bump()

    def drop_all(self) -> None:
        self._held.clear()
        self.pending.clear()
        self._signal.bump()

    def confirm(self, update: Update) -> None:
        """Remove one update (a webhook confirms them one by one)."""
        if self.pending.pop(update.id, None) is not None:
            self._confirmed.append(update)
            self._signal.bump()

    def _confirm_below(self, offset: int) -> None:
        before = len(self.pending)
        while self.pending and next(iter(self.pending)) < offset:
            self._confirmed.append(self.pending.popitem(last=False)[1])
        if len(self.pending) != before:
            self._signal.bump()

    def end_poll(self, reason: str) -> None:
        """Answer a waiting long poll with 409 and `reason`."""
        if self._poll is not None and not self._poll.done():
            self._poll.set_exception(conflict(reason))

    async def get(self, offset: int, limit: int, timeout: int) -> list[Update]:
        """Execute `getUpdates`: confirm below `offset`, then return up to `limit`, waiting if need be.

        Raises: Refused 409 while a webhook is set, and in this poll when a newer one starts.
        """
        if self.webhook_set:
            raise conflict(
                "can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first"
            )
        self.end_poll("terminated by other getUpdates request; make sure that only one bot instance is running")
        if offset < 0:
            offset = list(self.pending)[max(len(self.pending) + offset, 0)] if self.pending else 0
        self._confirm_below(offset)
        self.drop_expired()
        if not self.pending and timeout > 0:
            self._release(only_due=False)
        if not self.pending and timeout > 0:
            await self._wait(timeout)
            self.drop_expired()
        batch = list(islice(self.pending.values(), limit))
        if batch:
            batch = self._faults.tampered(batch, list(self._confirmed))[:limit]
        return batch

    async def _wait(self, timeout: int) -> None:
        loop = asyncio.get_running_loop()
        poll, arrived = loop.create_future(), loop.create_future()
        self._poll, self._arrived = poll, arrived
        self._signal.bump()  # the bot is idle: wake anybody waiting for that
        try:
            await asyncio.wait((poll, arrived), timeout=timeout, return_when=asyncio.FIRST_COMPLETED)
            if poll.done():
                poll.result()
        finally:
            for future in (poll, arrived):
                future.cancel()
            if self._poll is poll:
                self._poll = None
            if self._arrived is arrived:
                self._arrived = None

    @property
    def polled(self) -> bool:
        """Whether a long poll is waiting."""
        return self._poll is not None
