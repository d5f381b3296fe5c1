"""The drivers' interface: what tapes, tests and benchmarks do to the messenger.

`Hands` is the documented interface. `Messenger` implements it in this process, `Remote` over HTTP, and both pass the
same tests. Acts raise `CannotDo` for anything a person could not do. No method sleeps; waiting is always for a change.
"""

# mypy: disable-error-code="no-any-return"
# `do` returns what the act's name says, which a type checker cannot see; the contract tests can.

from abc import ABC, abstractmethod
from collections.abc import Iterable, Sequence
from datetime import datetime
from typing import Any

from demo.messenger.seen import PressAnswer, SeenMessage

Act = tuple[str, dict[str, Any]]


class Hands(ABC):
    """People's acts, looking, waiting, and the operator's switches. Users and chats are named by id."""

    token: str
    base_url: str
    base_file_url: str

    @abstractmethod
    async def do(self, act: str, /, **arguments: Any) -> Any:
        """Perform one act by name: the generic form of every method below, with the same result types."""

    # Accounts and the private chat.

    async def create_user(
        self,
        first_name: str,
        *,
        id: int | None = None,
        language_code: str | None = "en",
        last_name: str | None = None,
        username: str | None = None,
    ) -> int:
        """Make an account and return its id. It has not opened the bot: the bot cannot write to it yet."""
        return await self.do(
            "create_user",
            first_name=first_name,
            id=id,
            language_code=language_code,
            last_name=last_name,
            username=username,
        )

    async def open_bot(self, user: int, payload: str | None = None) -> int:
        """Press Start, or follow a link with `payload`: sends `/start payload`; unblocks if blocked."""
        return await self.do("open_bot", user=user, payload=payload)

    async def block(self, user: int) -> None:
        """Block the bot (`my_chat_member` update); its messages are refused with 403 from now on."""
        await self.do("block", user=user)

    async def unblock(self, user: int) -> None:
        await self.do("unblock", user=user)

    async def deactivate(self, user: int) -> None:
        """Delete the account; the bot learns of it only when it writes (403)."""
        await self.do("deactivate", user=user)

    async def set_language(self, user: int, language_code: str | None) -> None:
        """Change the language in this person's next updates."""
        await self.do("set_language", user=user, language_code=language_code)

    # Writing and pressing. `chat` is a group's id; None is the private chat with the bot.

    async def send_text(self, user: int, text: str, *, chat: int | None = None, reply_to: int | None = None) -> int:
        """Send a text and return its message id."""
        return await self.do("send_text", user=user, text=text, chat=chat, reply_to=reply_to)

    async def edit_text(self, user: int, text: str, *, message_id: int | None = None, chat: int | None = None) -> int:
        """Edit one's own text (the latest, if `message_id` is None); if unchanged, the bot is not notified."""
        return await self.do("edit_text", user=user, text=text, message_id=message_id, chat=chat)

    async def press(
        self,
        user: int,
        label: str | None = None,
        *,
        data: str | None = None,
        message_id: int | None = None,
        chat: int | None = None,
        forge: bool = False,
    ) -> str:
        """Press the latest button with this label or callback data (under `message_id`, if given).

        Returns the query's id; "" for a button of the keyboard below the chat, which sends its label as text.
        `forge` sends `data` although no such button exists, as a modified client could.
        """
        return await self.do("press", user=user, label=label, data=data, message_id=message_id, chat=chat, forge=forge)

    async def send_file(
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
        """Send a voice, audio, photo, sticker, document or video (`kind`)."""
        return await self.do(
            "send_file",
            user=user,
            kind=kind,
            content=content,
            filename=filename,
            mime_type=mime_type,
            caption=caption,
            chat=chat,
            reply_to=reply_to,
        )

    async def send_location(self, user: int, latitude: float, longitude: float, *, chat: int | None = None) -> int:
        return await self.do("send_location", user=user, latitude=latitude, longitude=longitude, chat=chat)

    async def send_contact(
        self, user: int, phone_number: str, first_name: str, *, of: int | None = None, chat: int | None = None
    ) -> int:
        """Send a contact, of the account `of` if it has one."""
        return await self.do(
            "send_contact", user=user, phone_number=phone_number, first_name=first_name, of=of, chat=chat
        )

    # Groups.

    async def create_group(self, title: str, users: Sequence[int], *, supergroup: bool = False) -> int:
        """Make a group of `users` without the bot and return its (negative) id."""
        return await self.do("create_group", title=title, users=list(users), supergroup=supergroup)

    async def add_user(self, chat: int, by: int, user: int) -> None:
        await self.do("add_user", chat=chat, by=by, user=user)

    async def remove_user(self, chat: int, by: int, user: int) -> None:
        await self.do("remove_user", chat=chat, by=by, user=user)

    async def add_bot(self, chat: int, by: int, payload: str | None = None) -> None:
        """Add the bot; a `startgroup` link's payload comes as `/start@bot payload`."""
        await self.do("add_bot", chat=chat, by=by, payload=payload)

    async def remove_bot(self, chat: int, by: int) -> None:
        await self.do("remove_bot", chat=chat, by=by)

    async def migrate(self, chat: int, by: int) -> int:
        """Convert a group to a supergroup and return its new id; the old one refuses with `migrate_to_chat_id`."""
        return await self.do("migrate", chat=chat, by=by)

    async def set_privacy(self, on: bool) -> None:
        """Privacy mode, on by default: in groups the bot gets only commands, replies to it, and service messages."""
        await self.do("set_privacy", on=on)

    # Looking.

    async def seen(self, user: int, *, chat: int | None = None, after: int = 0) -> list[SeenMessage]:
        """Return the messages `user` sees with ids above `after`, own ones included, edits applied."""
        return await self.do("seen", user=user, chat=chat, after=after)

    async def sent(self, *, after: int = 0, limit: int | None = None) -> list[SeenMessage]:
        """The bot's messages to anybody in order of acceptance, with `seq` above `after`."""
        return await self.do("sent", after=after, limit=limit)

    async def mark(self) -> int:
        """The `seq` of the bot's latest message, for use as `after`."""
        return await self.do("mark")

    async def answers(self, user: int) -> list[PressAnswer]:
        """This person's button presses, in order, with the bot's answer to each."""
        return await self.do("answers", user=user)

    async def action(self, user: int, *, chat: int | None = None) -> str | None:
        """The bot's displayed action ("typing"): for 5 s, or until its next message."""
        return await self.do("action", user=user, chat=chat)

    async def menu(self, user: int, *, chat: int | None = None) -> list[dict[str, str]]:
        """The command menu `user` sees in this chat, in their language."""
        return await self.do("menu", user=user, chat=chat)

    # Waiting.

    async def changed(self, since: int, timeout: float = 5.0) -> int:
        """Wait until the change counter is above `since` (-1: return at once); return its value."""
        return await self.do("changed", since=since, timeout=timeout)

    async def wait_for_messages(
        self, user: int, count: int = 1, *, after: int, chat: int | None = None, timeout: float = 10.0
    ) -> list[SeenMessage]:
        """Return the bot's messages in this chat with `seq` above `after`, once there are `count`.

        Raises: TimeoutError after `timeout` seconds.
        """
        return await self.do("wait_for_messages", user=user, count=count, after=after, chat=chat, timeout=timeout)

    async def wait_for_mark(self, seq: int, timeout: float = 10.0) -> None:
        """Wait until the bot's messages have reached number `seq`, whoever they are for.

        Raises: TimeoutError after `timeout` seconds.
        """
        await self.do("wait_for_mark", seq=seq, timeout=timeout)

    async def settled(self, timeout: float = 10.0) -> None:
        """Wait until the bot has confirmed every update and has no request in flight.

        The bot may still be working internally: its own queues are not visible here.
        Raises: TimeoutError after `timeout` seconds.
        """
        await self.do("settled", timeout=timeout)

    # The operator's switches.

    async def add_fault(
        self,
        kind: str,
        *,
        methods: Iterable[str] | None = None,
        probability: float = 1.0,
        times: int | None = None,
        **detail: Any,
    ) -> None:
        """Switch a fault on; kinds and details are listed in `demo.messenger.faults`."""
        await self.do(
            "add_fault",
            kind=kind,
            methods=None if methods is None else list(methods),
            probability=probability,
            times=times,
            **detail,
        )

    async def clear_faults(self) -> None:
        """Switch all faults off and release every update held back."""
        await self.do("clear_faults")

    async def set_flood(self, **settings: Any) -> None:
        """Change flood limits: enabled, per_chat, burst, per_group, overall."""
        await self.do("set_flood", **settings)

    async def reset_counts(self) -> None:
        """Reset the counts of requests, answers and rates."""
        await self.do("reset_counts")

    async def figures(self) -> dict[str, Any]:
        """Return counts: accepted, refused_by_flood, highest_per_second (messages in any 1 s window),
        unconfirmed, in_flight, polling, requests (by method), answers (by code), struck (by fault)."""
        return await self.do("figures")

    async def set_now(self, now: datetime | None) -> None:
        """Hold the messenger's clock at `now` (aware); None restores its original clock."""
        await self.do("set_now", now=now)

    async def many(self, acts: Iterable[Act]) -> list[Any]:
        """Perform acts in order, in one request if remote: `[("send_text", {"user": 1, ...}), ...]`."""
        return await self.do("many", acts=[list(act) for act in acts])
