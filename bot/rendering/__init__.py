"""Render a message: text, buttons and pictures in the reader's language.

    render(message, choices, reader) -> Rendered

Messages are rendered at delivery from stored keys and arguments, so a new language or a better sentence applies at
once. Nothing is decided here: the core decides what is said to whom.
"""

from __future__ import annotations

from dataclasses import replace

from bot.foundation.reader import CAPTION_LIMIT, DATA_LIMIT, TEXT_LIMIT, Keyboard, Reader, Rendered, length
from bot.rendering.attachments import attachment_for
from bot.rendering.direction import directed
from bot.rendering.phrases import phrase_for
from bot.rendering.phrases.labels import label
from bot.rendering.voice import Voice, voice
from core.dialogue.client import messages as m
from core.dialogue.kit.effects import Choice, Rows
from core.dialogue.kit.messages import Together

__all__ = ["Reader", "Rendered", "render"]

# These continue the previous message on the next line; anything else begins a new paragraph.
_RESULTS = (
    m.ReadingKept,
    m.KeptHidden,
    m.KeptBeforeTime,
    m.BandSaid,
    m.VerdictSaid,
    m.Context,
    m.ConditionsNoted,
    m.GoalProgress,
    m.Corrected,
)
_CLOSING = (m.Praise, m.CheckInDone)


class Unsendable(ValueError):
    """A message that the platform would refuse: a bug."""


def render(message: object, choices: Rows, reader: Reader) -> Rendered:
    """Render the text, buttons and picture of a message.

    message: a dataclass of `core.dialogue.client.messages`, `coach_messages` or anything else with a registered phrase;
    `Together` joins several. A picture's text becomes its caption.

    Raises: KeyError for a message without a phrase; Unsendable for one the platform would refuse. Both are bugs.
    """
    v = voice(reader)
    parts = message.parts if isinstance(message, Together) else (message,)
    keyboard = _keyboard(v, choices)
    attached = [make(part, v) for part in parts if (make := attachment_for(type(part))) is not None]
    text = _laid_out(joined([part for part in parts if attachment_for(type(part)) is None], v), TEXT_LIMIT, reader)
    if not attached:
        return Rendered(text, keyboard)
    last = attached[-1]
    return replace(last, text=text, keyboard=keyboard, caption=_laid_out(last.caption, CAPTION_LIMIT, reader))


def words(message: object, v: Voice) -> str:
    """The text of one message, as HTML."""
    return phrase_for(type(message))(message, v)


def joined(parts: list[object], v: Voice) -> str:
    """Several messages as one text."""
    text = ""
    last: object = None
    for part in parts:
        said = words(part, v)
        if not said:
            continue
        if text:
            text += "\n" if _one_breath(last, part) else "\n\n"
        text += said
        last = part
    return text


def _one_breath(last: object, part: object) -> bool:
    return any(isinstance(last, kinds) and isinstance(part, kinds) for kinds in (_RESULTS, _CLOSING))


def _keyboard(v: Voice, choices: Rows) -> Keyboard:
    return tuple(tuple((label(v, choice), _callback(choice)) for choice in row) for row in choices if row)


def _callback(choice: Choice) -> str:
    callback = choice.callback
    size = len(callback.encode())
    if not 1 <= size <= DATA_LIMIT:
        raise Unsendable(f"callback data of {size} bytes for {choice.label}")
    return callback


def _laid_out(text: str, limit: int, reader: Reader) -> str:
    """Set the direction of every line, and refuse what the platform would refuse.

    Phrases truncate what people typed, so the limit is not met in practice.
    """
    if reader.right_to_left:
        text = directed(text)
    if length(text) > limit:
        raise Unsendable(f"{length(text)} characters where {limit} are allowed")
    return text
