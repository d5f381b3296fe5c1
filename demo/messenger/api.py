"""The bot's side: each supported method of the Bot API, as a function of its parameters.

`BotApi.call` executes one request and returns its `result`, or raises `Refused`. Waiting (the long poll
of `getUpdates`, the webhook) is left to the server; nothing in here awaits.
"""

import re
from collections.abc import Callable
from typing import Any

from demo.messenger import checks, uploads
from demo.messenger.chats import Chat, Message, World
from demo.messenger.checks import Formatted, Params
from demo.messenger.flood import Flood
from demo.messenger.menus import Menus
from demo.messenger.people import People
from demo.messenger.presses import Presses
from demo.messenger.refusals import Refused, bad_request, forbidden

ACTIONS = frozenset({
    "typing", "upload_photo", "record_video", "upload_video", "record_voice", "upload_voice",
    "upload_document", "choose_sticker", "find_location", "record_video_note", "upload_video_note",
})  # fmt: skip
DELETABLE_FOR = 48 * 3600
_UNCHANGED = (
    "message is not modified: specified new message content and reply markup are exactly the same as a"
    " current content and reply markup of the message"
)


class BotApi:
    """The methods, by lower-case name in `methods`."""

    def __init__(self, world: World, people: People, presses: Presses, flood: Flood) -> None:
        self._world = world
        self._people = people
        self._presses = presses
        self.flood = flood
        self.menus = Menus()
        self.methods: dict[str, Callable[[Params], Any]] = {
            "getme": self._get_me,
            "sendmessage": self._send_message,
            "sendphoto": self._send_photo,
            "senddocument": self._send_document,
            "sendchataction": self._send_chat_action,
            "answercallbackquery": self._answer_callback_query,
            "editmessagetext": self._edit_message_text,
            "editmessagecaption": self._edit_message_caption,
            "editmessagereplymarkup": self._edit_message_reply_markup,
            "deletemessage": self._delete_message,
            "getchat": self._get_chat,
            "leavechat": self._leave_chat,
            "getfile": self._get_file,
            "setmycommands": self.menus.set,
            "getmycommands": self.menus.get,
            "deletemycommands": self.menus.delete,
        }

    def call(self, method: str, params: Params) -> Any:
        """Execute `method` (any case). Raises: Refused, 404 for an unsupported method."""
        function = self.methods.get(method.lower())
        if function is None:
            raise Refused(404, "Not Found: method not found")
        return function(params)

    def _get_me(self, params: Params) -> dict[str, Any]:
        return {
            **self._world.bot_wire(),
            "can_join_groups": True,
            "can_read_all_group_messages": not self._world.privacy,
            "supports_inline_queries": False,
            "can_connect_to_business": False,
            "has_main_web_app": False,
        }

    # Where a message goes.

    def _chat(self, params: Params) -> Chat:
        chat_id = params.chat_id()
        chat = self._world.chats.get(chat_id) if isinstance(chat_id, int) else None
        if chat is None:
            known = self._world.people.get(chat_id) if isinstance(chat_id, int) else None
            met = known is not None and any(
                known.id in group.members for group in self._world.chats.values() if group.bot == "member"
            )
            if met:
                raise forbidden("bot can't initiate conversation with a user")
            raise bad_request("chat not found")
        return chat

    def _open_chat(self, params: Params) -> Chat:
        """The chat to write to. Raises: Refused for one that blocked the bot."""
        chat = self._chat(params)
        if chat.person is not None:
            if chat.person.deactivated:
                raise forbidden("user is deactivated")
            if chat.person.blocked:
                raise forbidden("bot was blocked by the user")
            if not chat.person.opened:
                raise bad_request("chat not found")
            return chat
        if chat.migrated_to is not None:
            raise bad_request("group chat was upgraded to a supergroup chat", migrate_to_chat_id=chat.migrated_to)
        if chat.bot == "kicked":
            raise forbidden(f"bot was kicked from the {chat.kind} chat")
        if chat.bot != "member":
            raise forbidden(f"bot is not a member of the {chat.kind} chat")
        return chat

    def _reply_to(self, params: Params, chat: Chat) -> int | None:
        reply = params.structure("reply_parameters", "reply parameters")
        if reply is None:
            message_id = params.integer("reply_to_message_id", 0)
            lenient = params.boolean("allow_sending_without_reply")
        elif isinstance(reply, dict) and isinstance(reply.get("message_id"), int):
            message_id = reply["message_id"]
            lenient = reply.get("allow_sending_without_reply", False) is True
        else:
            raise bad_request("can't parse reply parameters: an object with message_id is expected")
        if not message_id:
            return None
        if message_id not in chat.messages:
            if lenient:
                return None
            raise bad_request("message to be replied not found")
        return message_id

    # Sending.

    def _send_message(self, params: Params) -> dict[str, Any]:
        text = checks.message_text(params)
        markup = checks.reply_markup(params)
        return self._send(params, "text", text, markup)

    def _send_photo(self, params: Params) -> dict[str, Any]:
        text, markup = checks.caption(params), checks.reply_markup(params)
        file = uploads.photo(self._world, params)
        return self._send(params, "photo", text, markup, file=file)

    def _send_document(self, params: Params) -> dict[str, Any]:
        text, markup = checks.caption(params), checks.reply_markup(params)
        file = uploads.document(self._world, params)
        return self._send(params, "document", text, markup, file=file)

    def _send(
        self, params: Params, kind: str, text: Formatted, markup: dict[str, Any] | None, **fields: Any
    ) -> dict[str, Any]:
        chat = self._open_chat(params)
        checks.thread(params)
        reply_to = self._reply_to(params, chat)
        self.flood.take(chat.id)
        message = self._world.store(
            chat,
            None,
            kind=kind,
            text=text.plain,
            entities=text.entities,
            raw=text.raw,
            markup=markup,
            reply_to=reply_to,
            **fields,
        )
        return self._world.wire(message)

    def _send_chat_action(self, params: Params) -> bool:
        action = params.text("action")
        if action not in ACTIONS:
            raise bad_request("wrong parameter action in request")
        chat = self._open_chat(params)
        chat.action = (action, self._world.clock())
        self._world.signal.bump()
        return True

    def _answer_callback_query(self, params: Params) -> bool:
        query_id = params.text("callback_query_id")
        text = params.text("text") or ""
        if len(text) > 200:
            raise bad_request("MESSAGE_TOO_LONG")
        if not query_id or not self._presses.answer(query_id, text, params.boolean("show_alert")):
            raise bad_request("query is too old and response timeout expired or query ID is invalid")
        self._world.signal.bump()
        return True

    # Changing what was sent.

    def _own_message(self, params: Params) -> Message:
        chat = self._open_chat(params)
        if "message_id" not in params.values:
            raise bad_request("message identifier is not specified")
        message = chat.messages.get(params.integer("message_id", 0))
        if message is None:
            raise bad_request("message to edit not found")
        if message.sender is not None or message.kind == "service":
            raise bad_request("message can't be edited")
        return message

    def _edit_message_text(self, params: Params) -> dict[str, Any]:
        text, markup = checks.message_text(params), checks.reply_markup(params, inline_only=True)
        message = self._own_message(params)
        if message.kind != "text":
            raise bad_request("there is no text in the message to edit")
        return self._edited(message, text, markup)

    def _edit_message_caption(self, params: Params) -> dict[str, Any]:
        text, markup = checks.caption(params), checks.reply_markup(params, inline_only=True)
        message = self._own_message(params)
        if message.kind == "text":
            raise bad_request("there is no caption in the message to edit")
        return self._edited(message, text, markup)

    def _edit_message_reply_markup(self, params: Params) -> dict[str, Any]:
        markup = checks.reply_markup(params, inline_only=True)
        message = self._own_message(params)
        return self._edited(message, Formatted(message.text, message.entities, message.raw), markup)

    def _edited(self, message: Message, text: Formatted, markup: dict[str, Any] | None) -> dict[str, Any]:
        if (message.text, message.entities, message.markup) == (text.plain, text.entities, markup):
            raise bad_request(_UNCHANGED)
        message.text, message.entities, message.raw = text.plain, text.entities, text.raw
        message.markup = markup
        message.edit_date = self._world.now()
        message.edits += 1
        self._world.signal.bump()
        return self._world.wire(message)

    def _delete_message(self, params: Params) -> bool:
        chat = self._open_chat(params)
        message = chat.messages.get(params.integer("message_id", 0))
        if message is None:
            raise bad_request("message to delete not found")
        theirs = message.sender is not None and chat.person is None
        if theirs or self._world.now() - message.date >= DELETABLE_FOR:
            raise bad_request("message can't be deleted")
        del chat.messages[message.id]
        self._world.signal.bump()
        return True

    # Chats and files.

    def _get_chat(self, params: Params) -> dict[str, Any]:
        chat = self._chat(params)
        return {**chat.wire(), "accent_color_id": 0, "max_reaction_count": 11, "accepted_gift_types": _GIFTS}

    def _leave_chat(self, params: Params) -> bool:
        chat = self._open_chat(params)
        if chat.person is not None:
            raise bad_request("chat member status can't be changed in private chats")
        self._people.bot_leaves(chat)
        return True

    def _get_file(self, params: Params) -> dict[str, Any]:
        file = self._world.files.get(params.text("file_id") or "")
        if file is None:
            raise bad_request("invalid file_id")
        if len(file.content) > uploads.MAX_DOWNLOAD:
            raise bad_request("file is too big")
        suffix = re.sub(r"[^A-Za-z0-9._-]", "_", file.filename or "")
        return {
            "file_id": file.id,
            "file_unique_id": "u" + file.id,
            "file_size": len(file.content),
            "file_path": f"files/{file.id}/{suffix or 'file'}",
        }


_GIFTS = {
    "unlimited_gifts": False,
    "limited_gifts": False,
    "unique_gifts": False,
    "premium_subscription": False,
    "gifts_from_channels": False,
}
