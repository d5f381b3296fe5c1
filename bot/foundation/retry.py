"""What to do about a message that was not sent: failures sorted by what the sender should do. Pure.

    Busy         the platform says wait: 429 with its delay        -> Wait, everybody
    NoAnswer     a timeout or a broken connection: it may have arrived  -> Wait, this chat, longer each time
    Trouble      5xx: the platform has a bad moment                -> Wait, this chat, longer each time
    Shut         our token is refused                              -> Wait, everybody; an operator must act
    Blocked      403: this person or group does not want us        -> Gone: they are unreachable
    Elsewhere    the group has a new id                            -> Moved: send there
    Rejected     400: our message is wrong                         -> Broken: set aside with its error

`spread` is a random number from 0 up to 1, given by the caller: many chats that failed together do not come
back together.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

FIRST_DELAY = timedelta(seconds=1)
LONGEST_DELAY = timedelta(minutes=15)
MOST_ATTEMPTS = 200  # with the longest delay that is one day or two: a messenger that is down for a day loses nothing
MARGIN = timedelta(milliseconds=100)  # the platform counts whole seconds: come back just after
SHUT_DELAY = timedelta(minutes=1)


@dataclass(frozen=True, slots=True)
class Sent:
    """Accepted. message_id is the platform's, None where nothing new was made (buttons taken off)."""

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
    """Try again at `until`. everybody: nothing at all is sent before then."""

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
    """Say what becomes of a message whose `attempt`-th try (from 1) failed at `now`.

    A wait the platform asked for, and a refused token, are not the message's fault: they never use it up.
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
    """Return the wait after the `attempt`-th failure: doubling from a second to a quarter of an hour.

    `spread` (0 up to 1) takes off at most half of it.
    """
    whole: timedelta = min(FIRST_DELAY * 2 ** min(attempt - 1, 20), LONGEST_DELAY)
    return whole * (1 - spread / 2)
