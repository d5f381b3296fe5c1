"""The bot's command menus: one list per scope and language, and which one a person sees."""

import re
from typing import Any

from demo.messenger.checks import Params
from demo.messenger.refusals import bad_request

MAX_COMMANDS = 100
_PLAIN = frozenset({"default", "all_private_chats", "all_group_chats", "all_chat_administrators"})
_OF_A_CHAT = frozenset({"chat", "chat_administrators", "chat_member"})
_Key = tuple[str, int, int, str]


class Menus:
    """Command lists as set by the bot."""

    def __init__(self) -> None:
        self._lists: dict[_Key, list[dict[str, str]]] = {}

    def set(self, params: Params) -> bool:
        commands = params.structure("commands", "commands")
        if not isinstance(commands, list):
            raise bad_request("expected an Array of BotCommand")
        if len(commands) > MAX_COMMANDS:
            raise bad_request("BOT_COMMANDS_TOO_MUCH")
        self._lists[_key(params)] = [_command(command) for command in commands]
        return True

    def get(self, params: Params) -> list[dict[str, str]]:
        return self._lists.get(_key(params), [])

    def delete(self, params: Params) -> bool:
        self._lists.pop(_key(params), None)
        return True

    def shown(self, person: int, chat: int, language: str | None) -> list[dict[str, str]]:
        """The menu `person` sees in `chat`: the narrowest scope that has one, in their language if possible."""
        if chat == person:
            scopes = [("chat", chat, 0), ("all_private_chats", 0, 0), ("default", 0, 0)]
        else:
            scopes = [
                ("chat_member", chat, person),
                ("chat", chat, 0),
                ("all_group_chats", 0, 0),
                ("default", 0, 0),
            ]
        for scope in scopes:
            for code in ((language or "")[:2].lower(), ""):
                commands = self._lists.get((*scope, code))
                if commands:
                    return commands
        return []


def _key(params: Params) -> _Key:
    language = params.text("language_code") or ""
    if language and not re.fullmatch(r"[a-z]{2}", language):
        raise bad_request("invalid language code specified")
    scope = params.structure("scope", "BotCommandScope")
    if scope is None:
        return ("default", 0, 0, language)
    kind = scope.get("type") if isinstance(scope, dict) else None
    if kind in _PLAIN:
        return (kind, 0, 0, language)
    if kind not in _OF_A_CHAT:
        raise bad_request("can't parse BotCommandScope: Unsupported type specified")
    chat = Params({"chat_id": scope.get("chat_id")}).chat_id()
    if not isinstance(chat, int):
        raise bad_request("chat not found")
    user = Params(scope).integer("user_id", 0)
    if kind == "chat_member" and not user:
        raise bad_request("can't parse BotCommandScope: Can't find field \"user_id\"")
    return (kind, chat, user if kind == "chat_member" else 0, language)


def _command(command: Any) -> dict[str, str]:
    if not isinstance(command, dict):
        raise bad_request("can't parse BotCommand: expected an Object")
    name, description = command.get("command"), command.get("description")
    if not isinstance(name, str) or not re.fullmatch(r"/?[a-z0-9_]{1,32}", name):
        raise bad_request("BOT_COMMAND_INVALID")
    if not isinstance(description, str) or not 1 <= len(description) <= 256:
        raise bad_request("BOT_COMMAND_DESCRIPTION_INVALID")
    return {"command": name.removeprefix("/"), "description": description}
