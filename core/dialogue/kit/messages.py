"""Messages shared by all conversations, as values: no texts here, `bot.rendering.phrases` has them."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Together:
    """Several things said in one message, a blank line between them."""

    parts: tuple[object, ...]


@dataclass(frozen=True, slots=True)
class Stranger:
    """The standard reply to an unknown chat, and to any invalid link."""


@dataclass(frozen=True, slots=True)
class NotText:
    """We read text only. kind: "voice", "photo", ...; measure: the one being asked, or ""."""

    kind: str
    measure: str = ""


@dataclass(frozen=True, slots=True)
class OldButton:
    """The button belongs to a question that is over."""

    waiting: str = ""


@dataclass(frozen=True, slots=True)
class NotForThisRole:
    """A command or button that is not this person's."""


@dataclass(frozen=True, slots=True)
class KeptAsItWas:
    """A change was cancelled."""


@dataclass(frozen=True, slots=True)
class AskLanguage:
    pass


@dataclass(frozen=True, slots=True)
class LanguageChanged:
    pass


@dataclass(frozen=True, slots=True)
class WhichPlace:
    """Several places have this name, or none was found (places empty)."""

    places: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class DataSent:
    """Everything stored is on its way, as text and CSV."""


@dataclass(frozen=True, slots=True)
class OurFault:
    """Their message was received, but something failed on our side; a person will look at it."""
