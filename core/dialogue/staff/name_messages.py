"""What a coach is told about the name under which they see a client."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class AskCalled:
    """What should the coach see them as? own: what they call themselves, if the coach calls them otherwise now."""

    name: str
    own: str


@dataclass(frozen=True, slots=True)
class Called:
    """The name a client is seen under from now on. own: it is the one they call themselves. taken: another client has
    it too, so a year or a number stands beside it."""

    name: str
    own: bool
    taken: bool = False
