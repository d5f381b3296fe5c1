"""Rate limits: the platform's published limits, as settings, and actual usage.

One chat allows about a message a second with short bursts, one group 20 a minute, all chats together about 30 a second
(Bots FAQ). A sender told to wait is refused until the wait is over. Usage is counted even while the limits are off.
"""

import math
import time
from collections import deque
from collections.abc import Callable
from dataclasses import dataclass, field

from demo.messenger.refusals import too_many_requests


@dataclass(slots=True)
class _Pace:
    """One chat's bucket: `tokens` left at `at`, and until when it is closed after a refusal."""

    tokens: float
    at: float
    shut_until: float = -math.inf
    minute: deque[float] = field(default_factory=deque)


class Flood:
    """Limits and counts of messages sent. `clock` gives monotonic seconds; tests pass their own.

    per_chat      messages a second to one chat in the long run
    burst         messages one chat allows at once
    per_group     messages in any 60 s to one group
    overall       messages in any 1 s to all chats together; None for no limit
    """

    def __init__(
        self,
        *,
        enabled: bool = True,
        per_chat: float = 1.0,
        burst: int = 5,
        per_group: int = 20,
        overall: int | None = 30,
        clock: Callable[[], float] = time.monotonic,
    ) -> None:
        self.enabled = enabled
        self.per_chat = per_chat
        self.burst = burst
        self.per_group = per_group
        self.overall = overall
        self._clock = clock
        self._paces: dict[int, _Pace] = {}
        self._second: deque[float] = deque()
        self._shut_until = -math.inf
        self.accepted = 0
        self.refused = 0
        self.highest_per_second = 0

    @classmethod
    def off(cls) -> "Flood":
        """Limits that refuse nothing and only count."""
        return cls(enabled=False)

    def take(self, chat_id: int) -> None:
        """Count one message to `chat_id`.

        Raises: Refused 429 with the whole seconds to wait, if it exceeds a limit.
        """
        now = self._clock()
        second = self._second
        while second and second[0] <= now - 1:
            second.popleft()
        if self.enabled:
            wait = self._wait(chat_id, now)
            if wait > 0:
                self.refused += 1
                raise too_many_requests(math.ceil(wait))
        second.append(now)
        self.accepted += 1
        if len(second) > self.highest_per_second:
            self.highest_per_second = len(second)

    def reset_counts(self) -> None:
        self.accepted = self.refused = self.highest_per_second = 0

    def _wait(self, chat_id: int, now: float) -> float:
        """The seconds `chat_id` must wait; or 0, after taking a token."""
        if now < self._shut_until:
            return self._shut_until - now
        pace = self._paces.get(chat_id)
        if pace is None:
            pace = self._paces[chat_id] = _Pace(float(self.burst), now)
        if now < pace.shut_until:
            return pace.shut_until - now
        if self.overall is not None and len(self._second) >= self.overall:
            seconds = math.ceil(self._second[-self.overall] + 1 - now)
            self._shut_until = now + seconds
            return seconds
        wait = self._chat_wait(pace, chat_id, now)
        if wait > 0:
            pace.shut_until = now + math.ceil(wait)
        return wait

    def _chat_wait(self, pace: _Pace, chat_id: int, now: float) -> float:
        if chat_id < 0:
            while pace.minute and pace.minute[0] <= now - 60:
                pace.minute.popleft()
            if len(pace.minute) >= self.per_group:
                return pace.minute[0] + 60 - now
        pace.tokens = min(self.burst, pace.tokens + (now - pace.at) * self.per_chat)
        pace.at = now
        if pace.tokens < 1 - 1e-9:
            return (1 - pace.tokens) / self.per_chat
        pace.tokens -= 1
        if chat_id < 0:
            pace.minute.append(now)
        return 0.0
