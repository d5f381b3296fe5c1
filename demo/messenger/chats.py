"""People, chats and messages: the platform's state, and its wire format.

One counter numbers the messages of private chats and groups, as the platform does for one account; a second one (`seq`)
numbers the bot's accepted messages, so that order and repeats can be checked later.
"""

import time
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from demo.messenger.signal import Signal

Clock = Callable[[], datetime]


@dataclass(slots=True)
class Account:
    """Somebody with an account."""

    id: int
    first_name: str
    last_name: str | None = None
    username: str | None = None
    language_code: str | None = None
    opened: bool = False
    blocked: bool = False
    deactivated: bool = False

    def wire(self) -> dict[str, Any]:
        user: dict[str, Any] = {"id": self.id, "is_bot": False, "first_name": self.first_name}
        if self.last_name:
            user["last_name"] = self.last_name
        if self.username:
            user["username"] = self.username
        if self.language_code:
            user["language_code"] = self.language_code
        return user


@dataclass(slots=True)
class File:
    """An uploaded picture or document."""

    id: str
    content: bytes
    filename: str | None = None
    mime_type: str | None = None
    width: int = 0
    height: int = 0


@dataclass(slots=True)
class Chat:
    """A private chat (its id is the person's) or a group. `bot` is the bot's standing in a group."""

    id: int
    kind: str
    title: str = ""
    person: Account | None = None
    members: set[int] = field(default_factory=set)
    bot: str = "left"
    migrated_to: int | None = None
    messages: "dict[int, Message]" = field(default_factory=dict)
    action: tuple[str, datetime] | None = None

    def wire(self) -> dict[str, Any]:
        if self.person is None:
            return {"id": self.id, "type": self.kind, "title": self.title}
        chat: dict[str, Any] = {"id": self.id, "type": "private", "first_name": self.person.first_name}
        if self.person.last_name:
            chat["last_name"] = self.person.last_name
        if self.person.username:
            chat["username"] = self.person.username
        return chat


@dataclass(slots=True)
class Message:
    """One message as stored. `sender` is None for the bot's own; `extra` holds other kinds' own fields."""

    id: int
    chat: Chat
    sender: Account | None
    date: int
    kind: str = "text"
    text: str = ""
    entities: list[dict[str, Any]] = field(default_factory=list)
    raw: str = ""
    markup: dict[str, Any] | None = None
    file: File | None = None
    extra: dict[str, Any] | None = None
    reply_to: int | None = None
    edit_date: int | None = None
    edits: int = 0
    seq: int = 0
    accepted: float = 0.0


class World:
    """The complete state, with the bot's identity and the clock that dates messages."""

    def __init__(self, bot_id: int, bot_username: str, clock: Clock, signal: Signal) -> None:
        self.bot_id = bot_id
        self.bot_username = bot_username
        self.bot_name = "Local test bot"
        self.clock = clock
        self.signal = signal
        self.people: dict[int, Account] = {}
        self.chats: dict[int, Chat] = {}
        self.files: dict[str, File] = {}
        self.sent: list[Message] = []
        self.privacy = True
        self._last_message = 0
        self._last_file = 0

    def now(self) -> int:
        """The clock's time in whole Unix seconds, as in `date` fields."""
        return int(self.clock().timestamp())

    def bot_wire(self) -> dict[str, Any]:
        return {
            "id": self.bot_id,
            "is_bot": True,
            "first_name": self.bot_name,
            "username": self.bot_username,
        }

    def private(self, person: Account) -> Chat:
        """The chat between the bot and `person`, created on first use."""
        chat = self.chats.get(person.id)
        if chat is None:
            chat = self.chats[person.id] = Chat(person.id, "private", person=person, members={person.id})
        return chat

    def store(self, chat: Chat, sender: Account | None, **fields: Any) -> Message:
        """Add a message to `chat`. One from the bot gets its sequence number and instant here."""
        self._last_message += 1
        message = Message(self._last_message, chat, sender, self.now(), **fields)
        chat.messages[message.id] = message
        if sender is None:
            self.sent.append(message)
            message.seq = len(self.sent)
            message.accepted = time.monotonic()
            chat.action = None
        self.signal.bump()
        return message

    def keep_file(
        self, content: bytes, filename: str | None, mime_type: str | None, width: int = 0, height: int = 0
    ) -> File:
        self._last_file += 1
        file = File(f"file-{self.bot_id}-{self._last_file}", content, filename, mime_type, width, height)
        self.files[file.id] = file
        return file

    def wire(self, message: Message, *, nested: bool = False) -> dict[str, Any]:
        """`message` in the Bot API's format; a reply contains the message it replies to, one level deep."""
        result: dict[str, Any] = {
            "message_id": message.id,
            "from": self.bot_wire() if message.sender is None else message.sender.wire(),
            "chat": message.chat.wire(),
            "date": message.date,
        }
        if message.edit_date is not None:
            result["edit_date"] = message.edit_date
        if message.reply_to is not None and not nested:
            replied = message.chat.messages.get(message.reply_to)
            if replied is not None:
                result["reply_to_message"] = self.wire(replied, nested=True)
        if message.kind == "text":
            result["text"] = message.text
            if message.entities:
                result["entities"] = message.entities
        else:
            if message.file is not None:
                result[message.kind] = _file_wire(message.kind, message.file)
            if message.text:
                result["caption"] = message.text
                if message.entities:
                    result["caption_entities"] = message.entities
            if message.extra:
                result.update(message.extra)
        if message.markup is not None and "inline_keyboard" in message.markup:
            result["reply_markup"] = message.markup
        return result


def _file_wire(kind: str, file: File) -> Any:
    common: dict[str, Any] = {
        "file_id": file.id,
        "file_unique_id": "u" + file.id,
        "file_size": len(file.content),
    }
    if kind == "photo":
        return [{**common, "width": file.width, "height": file.height}]
    if kind == "sticker":
        return {
            **common,
            "type": "regular",
            "width": 512,
            "height": 512,
            "is_animated": False,
            "is_video": False,
        }
    if file.mime_type:
        common["mime_type"] = file.mime_type
    if kind in ("voice", "audio", "video"):
        common["duration"] = 1
    if kind == "video":
        common |= {"width": file.width, "height": file.height}
    if kind in ("document", "audio", "video") and file.filename:
        common["file_name"] = file.filename
    return common
