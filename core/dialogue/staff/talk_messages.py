"""Messages of a coach's talk with clients: to whom words go, what became of them, and what goes to nobody."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class AskWhoGets:
    """To whom should these words go? why: "named" (they name somebody else than the client they were for), "late" (the
    writing was closed by then), "offer" (they were for nobody, and name somebody). others: whom they name."""

    name: str
    others: tuple[str, ...]
    words: str
    why: str


@dataclass(frozen=True, slots=True)
class StillWriting:
    """The next words still go to this client."""

    name: str


@dataclass(frozen=True, slots=True)
class WritingClosed:
    """The next words do not go to this client any more, and nothing was sent."""

    name: str


@dataclass(frozen=True, slots=True)
class ThanksToNobody:
    """Thanks that no client was meant to get: they went nowhere."""
