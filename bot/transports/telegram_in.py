"""From the platform's updates to events. User input never raises here.

An update we have no use for is None: it is confirmed and forgotten. One that cannot be read is `Unread`: set aside and
confirmed. What people wrote is passed on as it is, but for characters that nothing can store; a button's data may come
from anybody's client and from a message of long ago, so the engine never trusts it.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import UTC, datetime
from typing import Any

from telegram import CallbackQuery, ChatMemberUpdated, Message, Update
from telegram.constants import ChatID, ChatMemberStatus, ChatType, MessageEntityType

from bot.foundation.writable import writable
from bot.store import codec
from bot.transports.incoming import Incoming, Unread
from bot.transports.salvage import Broken, fits, set_aside
from core.dialogue.commands import GROUP
from core.dialogue.engines.group import looks_like_a_reading
from core.dialogue.kit.events import Attachment, Command, Event, GroupEvent, Press, Reachability, Text
from core.language import words_for

ALLOWED_UPDATES = ("message", "edited_message", "callback_query", "my_chat_member")
LONGEST_TEXT = 4096  # characters; the platform's own limit for a message
LONGEST_DATA = 64  # bytes, as the platform limits a button's data; characters of a link's token
LONGEST_NAME = 256
LONGEST_LANGUAGE = 35  # characters, as the standard of language tags advises
EARLIEST, LATEST = datetime(2000, 1, 1, tzinfo=UTC), datetime(2100, 1, 1, tzinfo=UTC)  # when anybody can have written

_IS_GROUP: dict[str, bool] = {ChatType.PRIVATE: False, ChatType.GROUP: True, ChatType.SUPERGROUP: True}
_ATTACHMENTS = (
    "voice", "video_note", "audio", "photo", "animation", "video", "sticker", "document", "location", "venue",
    "contact", "poll", "dice", "story", "checklist", "paid_media",
)  # fmt: skip
_PRESENT = (ChatMemberStatus.MEMBER, ChatMemberStatus.ADMINISTRATOR, ChatMemberStatus.OWNER)


_KINDS = frozenset(Update.ALL_TYPES)
_EARLIEST, _LATEST = int(EARLIEST.timestamp()), int(LATEST.timestamp())


def take(raw: Any, now: datetime, username: str = "", body: bytes | None = None) -> Incoming | Unread | None:
    """Return what one update means to us, whatever it is. body: the bytes it came in, where they are known."""
    try:
        typed = plain_text(raw)
        if typed is not None:
            return typed
        if isinstance(raw, Broken):
            return set_aside(raw, "not_json", body)
        if not isinstance(raw, Mapping):
            return set_aside(raw, "no_object", body)
        if not fits(raw.get("update_id")):
            return set_aside(raw, "no_number", body)
        update = read(raw)
        if update is None:
            return set_aside(raw, "form", body)
        if len(raw) > 1 and _KINDS.isdisjoint(raw):
            return set_aside(raw, "kind", body)
        found = incoming(update, now, username)
        return found if found is None or _is_sound(found) else set_aside(raw, "value", body)
    except Exception:  # the library makes no promise about what it raises, and none of this may stop anybody else
        return set_aside(raw, "form", body)


def read(raw: Mapping[str, Any]) -> Update | None:
    """The library's update for `raw`, or None if it cannot parse it (a newer form)."""
    try:
        return Update.de_json(dict(raw), None)
    except Exception:
        return None


def _is_sound(found: Incoming) -> bool:
    """Whether an event is of the types it should be, and nothing in it is too large to be stored."""
    event = found.event
    numbers = (event.by, event.other_chat) if isinstance(event, GroupEvent) else ()
    texts = (found.language, found.name, found.query)
    return (
        fits(found.chat_id)
        and all(type(number) is int and fits(number) for number in numbers)
        and all(isinstance(text, str) for text in texts)
        and EARLIEST <= event.at < LATEST
        and codec.loads(codec.dumps(event)) == event
    )


def plain_text(raw: Any) -> Incoming | None:
    """Return what `incoming` would make of `read(raw)`, if this is the most frequent of all: words somebody typed in a
    private chat, no command and no mark among them. Anything else is None, and for those two to read.

    The library would build a dozen objects, of which three values are needed.
    """
    match raw:
        case {
            "update_id": int(number),
            "message": {
                "message_id": int(ref),
                "date": int(at),
                "text": str(text),
                "chat": {"type": ChatType.PRIVATE, "id": int(chat)},
                "from": {"first_name": str(name), "language_code": str(language)},
                **rest,
            },
        } if (
            text and "entities" not in rest and _EARLIEST <= at < _LATEST and fits(number) and fits(chat) and fits(ref)
        ):
            match rest.get("reply_to_message"):
                case None:
                    reply_to = ""
                case {"message_id": int(replied), "chat": {"id": int(there)}} if there == chat:
                    reply_to = str(replied)
                case _:
                    return None
            event = Text(datetime.fromtimestamp(at, UTC), writable(text[:LONGEST_TEXT]), str(ref), reply_to=reply_to)
            return _incoming(number, chat, False, event, language, name)
    return None


def incoming(update: Update, now: datetime, username: str = "") -> Incoming | None:
    """The event for `update`, or None. now: when it arrived; username: our own, without @."""
    if update.message is not None:
        return _of_message(update.update_id, update.message, username)
    if update.edited_message is not None:
        return _of_edit(update.update_id, update.edited_message)
    if update.callback_query is not None:
        return _of_press(update.update_id, update.callback_query, now)
    if update.my_chat_member is not None:
        return _of_membership(update.update_id, update.my_chat_member)
    return None


def _incoming(
    update_id: int, chat: int, is_group: bool, event: Event, language: str | None = "", name: str = "", query: str = ""
) -> Incoming:
    tag = writable((language or "")[:LONGEST_LANGUAGE])
    return Incoming(f"telegram/{update_id}", chat, is_group, event, tag, writable(name[:LONGEST_NAME]), query)


def _of_message(update_id: int, message: Message, username: str) -> Incoming | None:
    is_group = _IS_GROUP.get(message.chat.type)
    if is_group is None:
        return None
    if not is_group:
        return _from(update_id, message, False, _in_private(message, username))
    event = _in_group(message, username)
    # no name and no language of anybody in a group: nothing is ever said there to one person
    return None if event is None else _incoming(update_id, message.chat.id, True, event)


def _of_edit(update_id: int, message: Message) -> Incoming | None:
    text = message.text or message.caption
    if text is None or message.chat.type != ChatType.PRIVATE:
        return None  # in a group, a number typed by mistake was handled when it was typed
    at = message.edit_date or message.date
    event = Text(at, writable(text[:LONGEST_TEXT]), str(message.message_id), edited=True)
    return _from(update_id, message, False, event)


def _from(update_id: int, message: Message, is_group: bool, event: Event | None) -> Incoming | None:
    if event is None:
        return None
    sender = message.from_user
    language = sender.language_code if sender else ""
    name = sender.first_name if sender else ""
    return _incoming(update_id, message.chat.id, is_group, event, language, name)


def _in_private(message: Message, username: str) -> Event | None:
    ref = str(message.message_id)
    text = message.text or message.caption  # a picture's caption is addressed to us too
    if text is not None:
        command = _command(message, username) if message.text else None
        return command or Text(message.date, writable(text[:LONGEST_TEXT]), ref, reply_to=_replied_to(message))
    for kind in _ATTACHMENTS:
        if getattr(message, kind, None):
            return Attachment(message.date, kind, ref)
    return None  # a service message: pinned, theme changed, ...


def _replied_to(message: Message) -> str:
    """The message of this chat that this is a reply to, "" for none."""
    replied = message.reply_to_message
    return "" if replied is None or replied.chat.id != message.chat.id else str(replied.message_id)


def _command(message: Message, username: str) -> Command | None:
    """The command at the start of this text, unless it is for another bot."""
    text = message.text or ""
    entity = next((e for e in message.entities if e.offset == 0 and e.type == MessageEntityType.BOT_COMMAND), None)
    if entity is None:
        return None
    name, _, other = text[1 : entity.length].partition("@")
    if other and username and other.lower() != username.lower():
        return None
    argument = text[entity.length :].strip()
    argument = writable(argument[:LONGEST_TEXT])
    return Command(message.date, writable(name.lower()), argument, str(message.message_id))


def _in_group(message: Message, username: str) -> Event | None:
    at, ref = message.date, str(message.message_id)
    sender = message.from_user
    by = sender.id if sender else 0
    if message.migrate_to_chat_id:
        return GroupEvent(at, "migrated", by, ref=ref, other_chat=message.migrate_to_chat_id)
    people = [member.id for member in message.new_chat_members if not member.is_bot]
    if people:
        return GroupEvent(at, "joined", people[0], ref=ref)
    if message.left_chat_member is not None:
        left = message.left_chat_member
        return None if left.is_bot else GroupEvent(at, "left", left.id, ref=ref)
    text = message.text or message.caption
    if text is None or (sender is not None and sender.is_bot and sender.id != ChatID.ANONYMOUS_ADMIN):
        return None
    command = _command(message, username) if message.text else None
    if command is not None:
        if command.name == "start":
            return GroupEvent(at, "start", by, command.argument[:LONGEST_DATA], ref)
        if GROUP.named(f"{command.name} {command.argument.lower()}") is not None:
            return GroupEvent(at, command.argument.lower(), by, ref=ref)
        text = command.argument
    elif text.startswith("/"):
        return None  # for another bot
    # What people say to one another is private: it is dropped here, before anything is stored.
    words = words_for((sender.language_code if sender else None) or "en")
    return GroupEvent(at, "number", by, ref=ref) if looks_like_a_reading(text[:LONGEST_TEXT], words) else None


def _of_press(update_id: int, query: CallbackQuery, now: datetime) -> Incoming | None:
    message = query.message  # may be inaccessible: too old, or deleted; chat and id are still there
    if message is None or query.data is None or message.chat.type != ChatType.PRIVATE:
        return None
    if len(writable(query.data).encode()) > LONGEST_DATA:
        return None
    event = Press(now, writable(query.data), str(message.message_id))
    sender = query.from_user
    return _incoming(update_id, message.chat.id, False, event, sender.language_code, sender.first_name, query.id)


def _of_membership(update_id: int, change: ChatMemberUpdated) -> Incoming | None:
    is_group = _IS_GROUP.get(change.chat.type)
    if is_group is None:
        return None
    before, after = (_is_in(member.status, member) for member in (change.old_chat_member, change.new_chat_member))
    if before == after:
        return None  # made an administrator, or no longer one
    if is_group:
        event = GroupEvent(change.date, "added" if after else "removed", change.from_user.id)
        return _incoming(update_id, change.chat.id, True, event)
    sender = change.from_user
    reached = Reachability(change.date, after)
    return _incoming(update_id, change.chat.id, False, reached, sender.language_code, sender.first_name)


def _is_in(status: str, member: object) -> bool:
    return status in _PRESENT or (status == ChatMemberStatus.RESTRICTED and bool(getattr(member, "is_member", False)))
