"""The chat platform, both directions, through python-telegram-bot over our own HTTP client.

Sending: one platform call per `Rendered`; the result is a value (`Sent` or a `Failure`), never an exception, so that
nothing a person or the platform does can stop the sender. Receiving: one long poll; each update is parsed separately
(`telegram_in`), so that none can block those behind it.
"""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta
from functools import lru_cache
from typing import Any

from telegram import (
    Bot,
    InlineKeyboardButton,
    InlineKeyboardMarkup,
    InputFile,
)
from telegram.constants import ParseMode
from telegram.error import (
    BadRequest,
    ChatMigrated,
    Conflict,
    EndPointNotFound,
    Forbidden,
    InvalidToken,
    NetworkError,
    RetryAfter,
    TelegramError,
    TimedOut,
)

from bot.foundation import log
from bot.foundation.config import Settings
from bot.foundation.errors import CannotReach, OtherPoller, TokenRefused
from bot.foundation.reader import Keyboard, Rendered
from bot.foundation.retry import Blocked, Busy, Elsewhere, NoAnswer, Rejected, SendFailure, Sent, Shut, Trouble
from bot.rendering.menu import describe
from bot.transports import menus, telegram_in
from bot.transports.incoming import Incoming, Unread
from bot.transports.request import AiohttpRequest
from bot.transports.salvage import number_of

_NO_PREVIEW = json.dumps({"is_disabled": True})  # objects go out as text: the library need not walk them
_REASONS = (  # the platform's text in a 403, and our code for it
    ("blocked", "blocked"),
    ("deactivated", "deactivated"),
    ("kicked", "kicked"),
    ("not a member", "not_a_member"),
    ("deleted", "deleted"),
)
_NOTHING_LEFT_TO_DO = ("message is not modified", "message to edit not found", "message can't be edited")
_LEAST_POLL = 10.0  # seconds beyond a long poll's timeout before it counts as lost
_ANSWER_WITHIN = 5.0  # seconds; a press that cannot be answered soon need not be

_log = log.get("telegram")


@dataclass(frozen=True, slots=True)
class Batch:
    """A batch of parsed updates.

    events: those that mean something, in order.  aside: those that cannot be read.  confirm: the offset that confirms
    all, None if there were none.  count: how many there were.
    """

    events: tuple[Incoming, ...] = ()
    aside: tuple[Unread, ...] = ()
    confirm: int | None = None
    count: int = 0


class Telegram:
    """One bot account. `open` first; `close` when done."""

    def __init__(self, bot: Bot) -> None:
        self._bot = bot
        self._open = False

    @classmethod
    def of(cls, settings: Settings) -> Telegram:
        """The configured account.

        Raises: BadSettings without a token.
        """
        base = settings.api_base_url
        try:
            bot = Bot(
                settings.need_token(),
                base_url=f"{base}/bot",
                base_file_url=f"{base}/file/bot",
                request=AiohttpRequest(max(settings.send_parallel * 2, 16)),
                get_updates_request=AiohttpRequest(2),
            )
        except InvalidToken:
            raise TokenRefused from None
        return cls(bot)

    @property
    def bot(self) -> Bot:
        return self._bot

    @property
    def username(self) -> str:
        return self._bot.username

    def link(self, token: str) -> str:
        """The link that opens a chat with us and passes an invitation's token."""
        return f"https://t.me/{self.username}?start={token}"

    def group_link(self, token: str) -> str:
        """The link that adds us to a group chat and passes the token."""
        return f"https://t.me/{self.username}?startgroup={token}"

    async def open(self) -> None:
        """Connect and ask who we are.

        Raises: TokenRefused; CannotReach if nobody answers (worth retrying).
        """
        try:
            await self._bot.initialize()
        except (InvalidToken, Forbidden):
            await self.close()
            raise TokenRefused from None
        except TelegramError as error:
            await self.close()
            raise CannotReach(
                f"The messenger does not answer: {error}.", "Check the network and SAMEHOUR_API_BASE_URL."
            ) from None
        self._open = True

    async def close(self) -> None:
        self._open = False
        await self._bot.shutdown()

    # Sending.

    async def send(self, chat_id: int, message: Rendered) -> Sent | SendFailure:
        """Send one message: a photo, a document or a text. A `Rendered` with two of them: see `parts`."""
        try:
            if message.photo is not None:
                sent = await self._bot.send_photo(
                    chat_id,
                    InputFile(message.photo, message.photo_name),
                    caption=message.caption or None,
                    parse_mode=ParseMode.HTML,
                    reply_markup=_markup(message.keyboard),
                )
            elif message.document is not None:
                name, content = message.document
                sent = await self._bot.send_document(
                    chat_id,
                    InputFile(content, name),
                    caption=message.caption or None,
                    parse_mode=ParseMode.HTML,
                    reply_markup=_markup(message.keyboard),
                )
            else:
                return await self._send_text(chat_id, message)
        except TelegramError as error:
            return failure_of(error)
        return Sent(sent.message_id)

    async def _send_text(self, chat_id: int, message: Rendered) -> Sent:
        """The most frequent call. It bypasses send_message(): we need only message_id, and the library would build a
        dozen objects from the response, which takes as long as sending.

        Raises: TelegramError.
        """
        asked: dict[str, Any] = {
            "chat_id": chat_id,
            "text": message.text,
            "parse_mode": ParseMode.HTML.value,
            "link_preview_options": _NO_PREVIEW,
        }
        if message.keyboard:
            asked["reply_markup"] = _plain_markup(message.keyboard)
        answer = await self._bot.do_api_request("sendmessage", api_kwargs=asked)  # spelled so as in `fetch`
        return Sent(answer.get("message_id") if isinstance(answer, dict) else None)

    async def drop_buttons(self, chat_id: int, ref: str) -> Sent | SendFailure:
        """Remove the buttons of message `ref`. A message without buttons, or a deleted one, counts as done."""
        try:
            await self._bot.edit_message_reply_markup(chat_id, int(ref))
        except BadRequest as error:
            if any(known in str(error).lower() for known in _NOTHING_LEFT_TO_DO):
                return Sent()
            return failure_of(error)
        except TelegramError as error:
            return failure_of(error)
        except ValueError:
            return Rejected("no such message")
        return Sent()

    async def delete(self, chat_id: int, ref: str) -> Sent | SendFailure:
        """Delete our message `ref`. One that is not there any more counts as done; one that the platform keeps is
        `Rejected`."""
        try:
            await self._bot.delete_message(chat_id, int(ref))
        except BadRequest as error:
            return Sent() if "message to delete not found" in str(error).lower() else failure_of(error)
        except TelegramError as error:
            return failure_of(error)
        except ValueError:
            return Rejected("no such message")
        return Sent()

    async def answer(self, query: str) -> None:
        """Acknowledge a press, so that the button stops spinning. Best effort: it expires."""
        try:
            await self._bot.answer_callback_query(query, read_timeout=_ANSWER_WITHIN)
        except TelegramError as error:
            _log.debug("a press was not answered", fault=log.fault(error))

    # Receiving.

    async def fetch(self, confirm: int | None, now: datetime, timeout: int, limit: int = 100) -> Batch:
        """Confirm everything below `confirm`, then wait up to `timeout` seconds for updates.

        Raises: OtherPoller (409), TokenRefused, or TelegramError for temporary failures.
        """
        asked: dict[str, Any] = {
            "timeout": timeout,
            "limit": limit,
            "allowed_updates": list(telegram_in.ALLOWED_UPDATES),
        }
        if confirm is not None:
            asked["offset"] = confirm
        try:
            # Not get_updates(): it parses a whole batch or nothing. Method names are case-insensitive, and this
            # spelling avoids the library's warning to use its own method.
            given = await self._bot.do_api_request("getupdates", api_kwargs=asked, read_timeout=timeout + _LEAST_POLL)
        except Conflict as error:
            raise OtherPoller(
                f"Updates are delivered elsewhere: {error}.",
                "Stop the other bot process, or remove its webhook with `samehour serve`.",
            ) from None
        except (InvalidToken, EndPointNotFound):
            raise TokenRefused from None
        return self.read(given if isinstance(given, list) else [], now, confirm)

    def read(self, raw: list[Any], now: datetime, confirmed: int | None = None, body: bytes | None = None) -> Batch:
        """Read updates as they came, whatever they are; `now` is when.

        confirmed: everything below it was confirmed before, None where that is not known.  body: the bytes of the only
        one, where they are known.
        """
        events: list[Incoming] = []
        aside: list[Unread] = []
        numbers: list[int] = []
        for one in raw:
            taken = telegram_in.take(one, now, self.username, body)
            if isinstance(taken, Incoming):
                events.append(taken)
            elif taken is not None:
                aside.append(taken)
                _log.warning("an update that cannot be read was set aside", code=taken.why)
            number = number_of(one)
            if number is not None:
                numbers.append(number)
        confirm = max(numbers) + 1 if numbers else None
        if confirm is None and raw and confirmed is not None:
            # None of them says its number: they are the first ones from `confirmed` on, so this confirms no others.
            confirm = confirmed + len(raw)
        return Batch(tuple(events), tuple(aside), confirm, len(raw))

    # Receiving mode and menus.

    async def receive(self, url: str = "", secret: str = "") -> None:
        """Have updates pushed to `url`; "" removes the webhook, so that we can poll. Pending updates stay.

        Raises: CannotReach.
        """
        try:
            if url:
                kinds = list(telegram_in.ALLOWED_UPDATES)
                await self._bot.set_webhook(url, secret_token=secret, allowed_updates=kinds, max_connections=100)
            else:
                await self._bot.delete_webhook(drop_pending_updates=False)
        except TelegramError as error:
            raise CannotReach(f"The receiving mode cannot be set: {error}.", "Check SAMEHOUR_WEBHOOK_URL.") from None

    async def set_menus(self, languages: Iterable[str]) -> None:
        """Set the default command menu. Best effort: a missing menu is harmless."""
        try:
            await menus.set_general(self._bot, languages, describe)
        except TelegramError as error:
            _log.warning("the command menu could not be set", fault=log.fault(error))

    async def set_menu(self, chat_id: int, menu: str, language: str) -> None:
        """Set the menu of one chat. A deleted chat is ignored. Raises: CannotReach if it may work later."""
        try:
            await menus.set_for(self._bot, chat_id, menus.Menu(menu), language, describe)
        except TelegramError as error:
            if not isinstance(failure_of(error), Blocked | Rejected | Elsewhere):
                raise CannotReach("A command menu could not be set.") from None

    async def is_open(self) -> bool:
        """Whether we are connected and have identified ourselves."""
        return self._open


def parts(message: Rendered) -> tuple[Rendered, ...]:
    """Split a message into parts that take one platform call each; buttons go with the last."""
    if message.text and (message.photo is not None or message.document is not None):
        return (
            Rendered(text=message.text),
            Rendered(
                photo=message.photo,
                photo_name=message.photo_name,
                document=message.document,
                caption=message.caption,
                keyboard=message.keyboard,
            ),
        )
    return (message,)


def failure_of(error: TelegramError) -> SendFailure:
    """Classify one of the library's errors. Its BadRequest is a NetworkError, so the order matters."""
    match error:
        case RetryAfter():
            wait = error.retry_after
            return Busy(wait.total_seconds() if isinstance(wait, timedelta) else float(wait))
        case ChatMigrated():
            return Elsewhere(error.new_chat_id)
        case Forbidden():
            said = str(error).lower()
            return Blocked(next((word for known, word in _REASONS if known in said), "forbidden"))
        case InvalidToken() | EndPointNotFound():
            return Shut()
        case BadRequest():
            return Rejected(str(error)[:200])
        case TimedOut():
            return NoAnswer("no answer in time")
        case NetworkError() | Conflict():
            return Trouble(str(error)[:200])
        case _:
            return NoAnswer("an answer that cannot be read")


def _markup(keyboard: Keyboard) -> InlineKeyboardMarkup | None:
    if not keyboard:
        return None
    return InlineKeyboardMarkup(
        [[InlineKeyboardButton(label, callback_data=data) for label, data in row] for row in keyboard]
    )


@lru_cache(maxsize=256)
def _plain_markup(keyboard: Keyboard) -> str:
    """The keyboard as the platform's JSON text, cached because many people get the same few."""
    rows = [[{"text": label, "callback_data": data} for label, data in row] for row in keyboard]
    return json.dumps({"inline_keyboard": rows})
