"""The people's side: what somebody can do in the messenger, and the updates it causes.

Plain synchronous functions; `hands.Hands` documents them for drivers. Anything a person could not do raises `CannotDo`.
Chats are named by id: a person's own id for their chat with the bot, a group's (negative) id.
"""

import re
from typing import Any

from demo.messenger.chats import Account, Chat, Message, World
from demo.messenger.checks import MAX_CAPTION, MAX_TEXT
from demo.messenger.entities import commands_in, utf16_length
from demo.messenger.presses import Presses
from demo.messenger.refusals import CannotDo
from demo.messenger.seen import PressAnswer, SeenMessage, seen
from demo.messenger.updates import UpdateQueue

_PAYLOAD = re.compile(r"[A-Za-z0-9_-]{1,64}")
_FILES = ("voice", "audio", "photo", "sticker", "document", "video")
_ADDRESSED = re.compile(r"/[A-Za-z0-9_]+(?:@(\w+))?")


class People:
    """People's acts. Each stores what happened and queues the resulting update for the bot."""

    def __init__(self, world: World, queue: UpdateQueue, presses: Presses) -> None:
        self._world = world
        self._queue = queue
        self._presses = presses
        self._next_id = 1_000
        self._next_group = 4_000

    # Accounts and private chats.

    def create_user(
        self,
        first_name: str,
        *,
        id: int | None = None,
        language_code: str | None = "en",
        last_name: str | None = None,
        username: str | None = None,
    ) -> int:
        if id is None:
            self._next_id += 1
            id = self._next_id
        if id in self._world.people or id <= 0:
            raise CannotDo(f"no new account can have the id {id}")
        self._next_id = max(self._next_id, id)
        self._world.people[id] = Account(id, first_name, last_name, username, language_code)
        return id

    def open_bot(self, user: int, payload: str | None = None) -> int:
        if payload is not None:
            self._check_payload(payload)
        person = self._person(user)
        if person.blocked:
            self.unblock(user)
        person.opened = True
        return self.send_text(user, "/start" if payload is None else f"/start {payload}")

    def block(self, user: int) -> None:
        person = self._person(user)
        if person.blocked or not person.opened:
            raise CannotDo("there is no open chat with the bot to block")
        person.blocked = True
        self._membership(self._world.private(person), person, "member", "kicked")

    def unblock(self, user: int) -> None:
        person = self._person(user)
        if not person.blocked:
            raise CannotDo("the bot is not blocked")
        person.blocked = False
        self._membership(self._world.private(person), person, "kicked", "member")

    def deactivate(self, user: int) -> None:
        self._person(user).deactivated = True

    def set_language(self, user: int, language_code: str | None) -> None:
        self._person(user).language_code = language_code

    # Writing.

    def send_text(self, user: int, text: str, *, chat: int | None = None, reply_to: int | None = None) -> int:
        text = text.strip()
        if not text or utf16_length(text) > MAX_TEXT:
            raise CannotDo("a text has 1 to 4096 characters")
        fields = {"kind": "text", "text": text, "raw": text, "entities": commands_in(text)}
        return self._write(user, chat, reply_to, fields)

    def send_file(
        self,
        user: int,
        kind: str,
        content: bytes = b"content",
        *,
        filename: str | None = None,
        mime_type: str | None = None,
        caption: str = "",
        chat: int | None = None,
        reply_to: int | None = None,
    ) -> int:
        if kind not in _FILES:
            raise CannotDo(f"nobody can send a {kind}; there are {', '.join(_FILES)}")
        if utf16_length(caption) > MAX_CAPTION:
            raise CannotDo("a caption has up to 1024 characters")
        file = self._world.keep_file(content, filename, mime_type, 800, 600)
        return self._write(user, chat, reply_to, {"kind": kind, "text": caption, "raw": caption, "file": file})

    def send_location(self, user: int, latitude: float, longitude: float, *, chat: int | None = None) -> int:
        place = {"location": {"latitude": latitude, "longitude": longitude}}
        return self._write(user, chat, None, {"kind": "location", "extra": place})

    def send_contact(
        self, user: int, phone_number: str, first_name: str, *, of: int | None = None, chat: int | None = None
    ) -> int:
        contact: dict[str, Any] = {"phone_number": phone_number, "first_name": first_name}
        if of is not None:
            contact["user_id"] = of
        return self._write(user, chat, None, {"kind": "contact", "extra": {"contact": contact}})

    def edit_text(self, user: int, text: str, *, message_id: int | None = None, chat: int | None = None) -> int:
        person = self._person(user)
        room = self._room(person, chat)
        if message_id is None:
            own = [m for m in room.messages.values() if m.sender is person and m.kind == "text"]
            message = own[-1] if own else None
        else:
            message = room.messages.get(message_id)
        if message is None or message.sender is not person or message.kind != "text":
            raise CannotDo("there is no text of one's own to edit")
        text = text.strip()
        if not text or utf16_length(text) > MAX_TEXT:
            raise CannotDo("a text has 1 to 4096 characters")
        if text == message.text:
            return message.id
        message.text = message.raw = text
        message.entities = commands_in(text)
        message.edit_date = self._world.now()
        message.edits += 1
        self._world.signal.bump()
        self._tell("edited_message", message)
        return message.id

    def press(
        self,
        user: int,
        label: str | None = None,
        *,
        data: str | None = None,
        message_id: int | None = None,
        chat: int | None = None,
        forge: bool = False,
    ) -> str:
        person = self._person(user)
        room = self._room(person, chat)
        if forge:
            if data is None:
                raise CannotDo("a forged press needs its data")
            message = room.messages.get(message_id or 0)
            return self._query(person, room, message, message_id or 0, data)
        candidates = [m for m in reversed(room.messages.values()) if m.sender is None and m.markup]
        if message_id is not None:
            candidates = [m for m in candidates if m.id == message_id]
        for message in candidates:
            for row in (message.markup or {}).get("inline_keyboard", []):
                for button in row:
                    if button["text"] == label or (data is not None and button.get("callback_data") == data):
                        if "callback_data" not in button:
                            raise CannotDo(f"the button {button['text']!r} tells the bot nothing")
                        return self._query(person, room, message, message.id, button["callback_data"])
            for row in (message.markup or {}).get("keyboard", []):
                if label is not None and any(button["text"] == label for button in row):
                    self.send_text(user, label, chat=chat)
                    return ""
        shown = [button for m in candidates[:1] for button in seen(m).labels]
        raise CannotDo(f"there is no button {label or data!r}; the latest are {shown}")

    # Groups.

    def create_group(self, title: str, users: list[int], *, supergroup: bool = False) -> int:
        self._next_group += 1
        chat_id = -1_000_000_000_000 - self._next_group if supergroup else -self._next_group
        members = {self._person(user).id for user in users}
        kind = "supergroup" if supergroup else "group"
        self._world.chats[chat_id] = Chat(chat_id, kind, title, members=members)
        return chat_id

    def add_user(self, chat: int, by: int, user: int) -> None:
        room, actor, added = self._group(chat), self._person(by), self._person(user)
        room.members.add(added.id)
        self._service(room, actor, {"new_chat_members": [added.wire()]})

    def remove_user(self, chat: int, by: int, user: int) -> None:
        room, actor, gone = self._group(chat), self._person(by), self._person(user)
        room.members.discard(gone.id)
        self._service(room, actor, {"left_chat_member": gone.wire()})

    def add_bot(self, chat: int, by: int, payload: str | None = None) -> None:
        if payload is not None:
            self._check_payload(payload)
        room, actor = self._group(chat), self._person(by)
        if actor.id not in room.members:
            raise CannotDo("only a member adds the bot")
        if room.bot == "member":
            raise CannotDo("the bot is in the group already")
        old, room.bot = room.bot, "member"
        self._membership(room, actor, old, "member")
        self._service(room, actor, {"new_chat_members": [self._world.bot_wire()]})
        if payload is not None:
            self.send_text(by, f"/start@{self._world.bot_username} {payload}", chat=chat)

    def remove_bot(self, chat: int, by: int) -> None:
        room, actor = self._group(chat), self._person(by)
        if room.bot != "member":
            raise CannotDo("the bot is not in the group")
        self._service(room, actor, {"left_chat_member": self._world.bot_wire()})
        room.bot = "kicked"
        self._membership(room, actor, "member", "kicked")

    def bot_leaves(self, room: Chat) -> None:
        """The bot itself leaves a group (`leaveChat`)."""
        room.bot = "left"
        update = self._membership_wire(room, self._world.bot_wire(), "member", "left")
        self._queue.add("my_chat_member", update, ("member", room.id))
        self._world.signal.bump()

    def migrate(self, chat: int, by: int) -> int:
        old, actor = self._group(chat), self._person(by)
        if old.kind != "group" or old.migrated_to is not None:
            raise CannotDo("only a plain group becomes a supergroup, once")
        self._next_group += 1
        new = Chat(-1_000_000_000_000 - self._next_group, "supergroup", old.title)
        new.members, new.bot = set(old.members), old.bot
        self._world.chats[new.id] = new
        self._service(old, actor, {"migrate_to_chat_id": new.id})
        self._service(new, actor, {"migrate_from_chat_id": old.id})
        old.migrated_to = new.id
        return new.id

    def set_privacy(self, on: bool) -> None:
        self._world.privacy = on

    # Looking.

    def seen(self, user: int, *, chat: int | None = None, after: int = 0) -> list[SeenMessage]:
        person = self._person(user)
        if chat is None and not person.opened:
            return []
        room = self._room(person, chat, writing=False)
        return [seen(m) for m in room.messages.values() if m.id > after]

    def sent(self, *, after: int = 0, limit: int | None = None) -> list[SeenMessage]:
        stop = None if limit is None else after + limit
        return [seen(message) for message in self._world.sent[after:stop]]

    def mark(self) -> int:
        return len(self._world.sent)

    def answers(self, user: int) -> list[PressAnswer]:
        return [PressAnswer(p.id, p.data, p.answered, p.text, p.alert) for p in self._presses.of(user)]

    def action(self, user: int, *, chat: int | None = None) -> str | None:
        room = self._room(self._person(user), chat, writing=False)
        if room.action is None:
            return None
        name, since = room.action
        return name if (self._world.clock() - since).total_seconds() < 5 else None

    # Internals.

    def _person(self, user: int) -> Account:
        person = self._world.people.get(user)
        if person is None:
            raise CannotDo(f"nobody has the id {user}")
        return person

    @staticmethod
    def _check_payload(payload: str) -> None:
        if not _PAYLOAD.fullmatch(payload):
            raise CannotDo("a link carries 1 to 64 characters of A-Z a-z 0-9 _ -")

    def _group(self, chat: int) -> Chat:
        room = self._world.chats.get(chat)
        if room is None or room.person is not None:
            raise CannotDo(f"no group has the id {chat}")
        return room

    def _room(self, person: Account, chat: int | None, *, writing: bool = True) -> Chat:
        """The chat `person` means. Writing needs an open, unblocked private chat or a live group."""
        if chat is None or chat == person.id:
            if writing and not person.opened:
                raise CannotDo(f"{person.first_name} has not opened the bot")
            if writing and (person.blocked or person.deactivated):
                raise CannotDo(f"{person.first_name} has blocked the bot or is gone")
            return self._world.private(person)
        room = self._group(chat)
        if person.id not in room.members:
            raise CannotDo(f"{person.first_name} is not in the group")
        if writing and room.migrated_to is not None:
            raise CannotDo(f"the group is now {room.migrated_to}")
        return room

    def _write(self, user: int, chat: int | None, reply_to: int | None, fields: dict[str, Any]) -> int:
        person = self._person(user)
        room = self._room(person, chat)
        if reply_to is not None and reply_to not in room.messages:
            raise CannotDo(f"there is no message {reply_to} to reply to")
        message = self._world.store(room, person, reply_to=reply_to, **fields)
        self._tell("message", message)
        return message.id

    def _service(self, room: Chat, actor: Account, extra: dict[str, Any]) -> None:
        self._tell("message", self._world.store(room, actor, kind="service", extra=extra))

    def _tell(self, kind: str, message: Message) -> None:
        room = message.chat
        if room.person is None and not self._bot_hears(message):
            return
        self._queue.add(kind, self._world.wire(message), ("chat", room.id))

    def _bot_hears(self, message: Message) -> bool:
        """Whether the bot receives this group message: privacy mode is on for most bots."""
        room = message.chat
        if room.bot != "member":
            return False
        if not self._world.privacy or message.kind == "service":
            return True
        replied = room.messages.get(message.reply_to or 0)
        if replied is not None and replied.sender is None:
            return True
        command = _ADDRESSED.match(message.text)
        if command is None:
            return False
        return command.group(1) in (None, self._world.bot_username)

    def _query(self, person: Account, room: Chat, message: Message | None, message_id: int, data: str) -> str:
        press = self._presses.add(person.id, data)
        if message is not None:
            about = self._world.wire(message)
        else:  # deleted in the meantime: the platform's InaccessibleMessage
            about = {"message_id": message_id, "chat": room.wire(), "date": 0}
        payload = {
            "id": press.id,
            "from": person.wire(),
            "message": about,
            "chat_instance": str(room.id),
            "data": data,
        }
        self._queue.add("callback_query", payload, ("press", person.id))
        self._world.signal.bump()
        return press.id

    def _membership(self, room: Chat, actor: Account, old: str, new: str) -> None:
        update = self._membership_wire(room, actor.wire(), old, new)
        self._queue.add("my_chat_member", update, ("member", actor.id))
        self._world.signal.bump()

    def _membership_wire(self, room: Chat, actor: dict[str, Any], old: str, new: str) -> dict[str, Any]:
        return {
            "chat": room.wire(),
            "from": actor,
            "date": self._world.now(),
            "old_chat_member": _member(self._world.bot_wire(), old),
            "new_chat_member": _member(self._world.bot_wire(), new),
        }


def _member(user: dict[str, Any], status: str) -> dict[str, Any]:
    member = {"user": user, "status": status}
    return {**member, "until_date": 0} if status == "kicked" else member
