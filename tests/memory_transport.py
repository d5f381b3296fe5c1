"""A transport that records what was sent, for tests without a network.

It passes the same contract tests as the real one (tests/contracts/test_transport.py).
"""

from __future__ import annotations

import itertools
from collections import defaultdict, deque
from collections.abc import Iterable
from dataclasses import dataclass, replace

from bot.foundation.reader import Rendered
from bot.foundation.retry import Blocked, Elsewhere, Rejected, SendFailure, Sent


@dataclass(frozen=True, slots=True)
class SentMessage:
    """One message as it stands now."""

    chat_id: int
    message_id: int
    message: Rendered


class MemoryTransport:
    """chats: those that exist; None for any. `fail_next` makes the next sends fail as given."""

    def __init__(self, chats: Iterable[int] | None = None) -> None:
        self.chats = None if chats is None else set(chats)
        self.blocked: set[int] = set()
        self.moved: dict[int, int] = {}
        self.sent: list[SentMessage] = []
        self.answered: list[str] = []
        self._failures: deque[SendFailure] = deque()
        self._next: dict[int, itertools.count[int]] = defaultdict(lambda: itertools.count(1))

    def fail_next(self, *failures: SendFailure) -> None:
        self._failures.extend(failures)

    def to(self, chat_id: int) -> list[Rendered]:
        """What this chat shows, oldest first."""
        return [kept.message for kept in self.sent if kept.chat_id == chat_id]

    async def send(self, chat_id: int, message: Rendered) -> Sent | SendFailure:
        failure = self._refusal(chat_id)
        if failure is None and not (message.text or message.photo or message.document):
            failure = Rejected("message text is empty")
        if failure is not None:
            return failure
        number = next(self._next[chat_id])
        self.sent.append(SentMessage(chat_id, number, message))
        return Sent(number)

    async def drop_buttons(self, chat_id: int, ref: str) -> Sent | SendFailure:
        failure = self._refusal(chat_id)
        if failure is not None:
            return failure
        for place, kept in enumerate(self.sent):
            if kept.chat_id == chat_id and str(kept.message_id) == ref:
                self.sent[place] = replace(kept, message=replace(kept.message, keyboard=()))
        return Sent()

    async def delete(self, chat_id: int, ref: str) -> Sent | SendFailure:
        failure = self._refusal(chat_id)
        if failure is None:
            self.sent = [one for one in self.sent if (one.chat_id, str(one.message_id)) != (chat_id, ref)]
        return Sent() if failure is None else failure

    async def answer(self, query: str) -> None:
        self.answered.append(query)

    def _refusal(self, chat_id: int) -> SendFailure | None:
        if self._failures:
            return self._failures.popleft()
        if chat_id in self.moved:
            return Elsewhere(self.moved[chat_id])
        if chat_id in self.blocked:
            return Blocked("blocked")
        if self.chats is not None and chat_id not in self.chats:
            return Rejected("chat not found")
        return None
