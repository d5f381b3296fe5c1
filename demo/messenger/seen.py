"""What a person sees in a chat, as values that can be sent over HTTP unchanged."""

import base64
from collections.abc import Mapping
from dataclasses import asdict, dataclass
from datetime import UTC, datetime
from typing import Any

from demo.messenger.chats import Message


@dataclass(frozen=True, slots=True)
class Button:
    """A button under a message (`data` or `url`) or of the keyboard below the chat (neither)."""

    label: str
    data: str | None = None
    url: str | None = None


@dataclass(frozen=True, slots=True)
class SeenMessage:
    """One message in its current form.

    text       plain, after entity parsing; a picture's or document's caption
    raw        what the bot sent, before parsing (a person's own text: the same as `text`)
    seq        number of the bot's message in order of acceptance; 0 for other people's
    accepted   `time.monotonic()` of that instant, in the messenger's process; 0.0 for other people's
    """

    message_id: int
    chat: int
    sender: int | None
    kind: str
    text: str
    raw: str
    entities: tuple[Mapping[str, Any], ...]
    buttons: tuple[tuple[Button, ...], ...]
    keyboard: tuple[tuple[Button, ...], ...]
    filename: str | None
    content: bytes | None
    reply_to: int | None
    date: datetime
    edits: int
    seq: int
    accepted: float

    @property
    def from_bot(self) -> bool:
        return self.sender is None

    @property
    def labels(self) -> list[str]:
        """The labels of all its buttons, in reading order."""
        return [button.label for row in (*self.buttons, *self.keyboard) for button in row]


@dataclass(frozen=True, slots=True)
class PressAnswer:
    """A pressed button and the bot's answer to the press (not the messages sent afterwards)."""

    query_id: str
    data: str
    answered: bool
    text: str
    alert: bool


def seen(message: Message) -> SeenMessage:
    """The view of a stored message."""
    markup = message.markup or {}
    file = message.file
    return SeenMessage(
        message_id=message.id,
        chat=message.chat.id,
        sender=None if message.sender is None else message.sender.id,
        kind=message.kind,
        text=message.text,
        raw=message.raw,
        entities=tuple(message.entities),
        buttons=_rows(markup.get("inline_keyboard", [])),
        keyboard=_rows(markup.get("keyboard", [])),
        filename=file.filename if file else None,
        content=file.content if file else None,
        reply_to=message.reply_to,
        date=datetime.fromtimestamp(message.date, UTC),
        edits=message.edits,
        seq=message.seq,
        accepted=message.accepted,
    )


def _rows(rows: list[list[dict[str, Any]]]) -> tuple[tuple[Button, ...], ...]:
    return tuple(
        tuple(Button(button["text"], button.get("callback_data"), button.get("url")) for button in row) for row in rows
    )


def pack(value: Any) -> Any:
    """Convert `value` for `json.dumps(..., default=pack)`: bytes, instants and the classes above."""
    if isinstance(value, bytes):
        return {"!": "bytes", "is": base64.b64encode(value).decode()}
    if isinstance(value, datetime):
        return {"!": "datetime", "is": value.isoformat()}
    if isinstance(value, PressAnswer):
        return {"!": "answer", "is": asdict(value)}
    if isinstance(value, SeenMessage):
        fields = {name: getattr(value, name) for name in SeenMessage.__slots__}
        for name in ("buttons", "keyboard"):
            fields[name] = [[[b.label, b.data, b.url] for b in row] for row in fields[name]]
        return {"!": "seen", "is": fields}
    raise TypeError(f"{type(value).__name__} does not travel")


def unpack(value: dict[str, Any]) -> Any:
    """Undo `pack`, as the `object_hook` of `json.loads`."""
    match value.get("!"):
        case "bytes":
            return base64.b64decode(value["is"])
        case "datetime":
            return datetime.fromisoformat(value["is"])
        case "answer":
            return PressAnswer(**value["is"])
        case "seen":
            fields = value["is"]
            for name in ("buttons", "keyboard"):
                fields[name] = tuple(tuple(Button(*button) for button in row) for row in fields[name])
            fields["entities"] = tuple(fields["entities"])
            return SeenMessage(**fields)
    return value
