"""Retry rules for failed sends, by kind of failure. Pure.

    Busy         rate limited: 429 with the delay to wait            -> Wait, everybody
    NoAnswer     a timeout or a broken connection: it may have arrived -> Wait, this chat, longer each time
    Trouble      5xx: the platform is in trouble                     -> Wait, this chat, longer each time
    Shut         our token is refused                                -> Wait, everybody; an operator must act
    Blocked      403: blocked by this person or group                -> Gone: they are unreachable
    Elsewhere    the group has a new id                              -> Moved: send there
    Rejected     400: our message is invalid                         -> Broken: set aside with its error

`spread` is the caller's random number from 0 up to 1 (jitter): chats that failed together do not retry together.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

FIRST_DELAY = timedelta(seconds=1)
LONGEST_DELAY = timedelta(minutes=15)
MOST_ATTEMPTS = 250  # more than a day, whatever the spread: a messenger that is down for a day loses nothing
MARGIN = timedelta(milliseconds=100)  # the platform counts whole seconds: retry just after
SHUT_DELAY = timedelta(minutes=1)
MOST_REFUSALS = (
    3  # of the token in a row, SHUT_DELAY apart: a slip of the platform's ends nothing, a revoked token does
)


@dataclass(frozen=True, slots=True)
class Sent:
    """Accepted. message_id is the platform's; None if nothing new was sent (buttons removed)."""

    message_id: int | None = None


@dataclass(frozen=True, slots=True)
class Busy:
    seconds: float


@dataclass(frozen=True, slots=True)
class NoAnswer:
    error: str


@dataclass(frozen=True, slots=True)
class Trouble:
    error: str


@dataclass(frozen=True, slots=True)
class Shut:
    pass


@dataclass(frozen=True, slots=True)
class Blocked:
    reason: str


@dataclass(frozen=True, slots=True)
class Elsewhere:
    chat_id: int


@dataclass(frozen=True, slots=True)
class Rejected:
    error: str


SendFailure = Busy | NoAnswer | Trouble | Shut | Blocked | Elsewhere | Rejected


@dataclass(frozen=True, slots=True)
class Wait:
    """Try again at `until`. everybody: nothing is sent to anybody before then."""

    until: datetime
    everybody: bool
    error: str


@dataclass(frozen=True, slots=True)
class Unreachable:
    reason: str


@dataclass(frozen=True, slots=True)
class Moved:
    chat_id: int


@dataclass(frozen=True, slots=True)
class Broken:
    error: str


RetryDecision = Wait | Unreachable | Moved | Broken


def decide(attempt: int, failure: SendFailure, now: datetime, spread: float = 0.0) -> RetryDecision:
    """Decide what becomes of a message whose `attempt`-th try (from 1) failed at `now`.

    A rate limit or a refused token is not the message's fault and never exhausts its attempts.
    """
    match failure:
        case Busy(seconds):
            return Wait(now + timedelta(seconds=seconds) + MARGIN, True, "429")
        case Shut():
            return Wait(now + SHUT_DELAY, True, "the token is refused")
        case NoAnswer(error) | Trouble(error):
            if attempt >= MOST_ATTEMPTS:
                return Broken(f"{error} ({attempt} attempts)")
            return Wait(now + backoff(attempt, spread), False, error)
        case Blocked(reason):
            return Unreachable(reason)
        case Elsewhere(chat_id):
            return Moved(chat_id)
        case Rejected(error):
            return Broken(error)


def backoff(attempt: int, spread: float = 0.0) -> timedelta:
    """Delay after the `attempt`-th failure: exponential, from a second to a quarter of an hour.

    `spread` (0 up to 1) is jitter that takes off at most half of it.
    """
    whole: timedelta = min(FIRST_DELAY * 2 ** min(attempt - 1, 20), LONGEST_DELAY)
    return whole * (1 - spread / 2)
