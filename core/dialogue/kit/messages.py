"""Messages that every conversation may say, as values: no words here, `bot.rendering.phrases` finds them."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Together:
    """Several things said in one message, a blank line between them."""

    parts: tuple[object, ...]


@dataclass(frozen=True, slots=True)
class Stranger:
    """The one fixed answer to a chat we do not know, and to any link that cannot be used."""


@dataclass(frozen=True, slots=True)
class NotText:
    """We read text only. kind: "voice", "photo", ...; measure: what is open, or ""."""

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
    """A change was called off."""


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
    """Everything we hold is on its way, as text and CSV."""


@dataclass(frozen=True, slots=True)
class OurFault:
    """Their message was kept, but something on our side failed; a person will look at it."""
