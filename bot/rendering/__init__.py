"""From a message to what is sent: words, buttons and pictures in a reader's language.

    render(message, choices, reader) -> Rendered

It happens when a message is delivered, from the stored key and arguments, so a change of language or a better sentence
holds at once. Nothing is decided here: what is said, and to whom, is core's.
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
from core.dialogue.kit.effects import Rows
from core.dialogue.kit.messages import Together

__all__ = ["Reader", "Rendered", "render"]

# Said in one breath: these follow one another on the next line; anything else begins a new paragraph.
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
    """A message that the platform would refuse: a fault of ours."""


def render(message: object, choices: Rows, reader: Reader) -> Rendered:
    """Find the words, the buttons and the picture of a message.

    message: a dataclass of `core.dialogue.client.messages`, `coach_messages` or anything else with registered words;
    `Together` joins several.  A picture's words become its caption.

    Raises: KeyError for a message without words; Unsendable for one the platform would refuse. Both are ours.
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
    """The words of one message, as HTML."""
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
    for row in choices:
        for choice in row:
            if not 1 <= len(choice.data.encode()) <= DATA_LIMIT:
                raise Unsendable(f"callback data of {len(choice.data.encode())} bytes for {choice.label}")
    return tuple(tuple((label(v, choice), choice.data) for choice in row) for row in choices if row)


def _laid_out(text: str, limit: int, reader: Reader) -> str:
    """Give every line its direction, and refuse what the platform would refuse.

    Phrases cut what people typed, so that is never met in practice.
    """
    if reader.right_to_left:
        text = directed(text)
    if length(text) > limit:
        raise Unsendable(f"{length(text)} characters where {limit} are allowed")
    return text
