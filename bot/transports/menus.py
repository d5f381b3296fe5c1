"""The command menu the messenger shows: a table of roles, in each person's language.

Everybody without a role sees the client's menu: a stranger who tries a command gets the standard reply anyway. Staff
have their own menu. Everything also works without commands.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from enum import StrEnum
from hashlib import sha256

from telegram import Bot, BotCommand, BotCommandScopeAllGroupChats, BotCommandScopeAllPrivateChats, BotCommandScopeChat

from core.dialogue.commands import CLIENT, STAFF
from core.dialogue.kit.commands import Who


class Menu(StrEnum):
    """The role of a menu. A coach may be an organiser too."""

    CLIENT = "client"
    COACH = "coach"
    ORGANISER = "organiser"
    BOTH = "both"


MENUS: dict[Menu, tuple[tuple[str, str], ...]] = {
    Menu.CLIENT: CLIENT.menu(Who.CLIENT),
    Menu.COACH: STAFF.menu(Who.COACH),
    Menu.ORGANISER: STAFF.menu(Who.ORGANISER),
    Menu.BOTH: STAFF.menu(Who.COACH, Who.ORGANISER),
}

Describe = Callable[[str, str], str]  # (English description, language) -> the description in that language


def commands(menu: Menu, language: str, describe: Describe) -> list[BotCommand]:
    """A menu in one language."""
    return [BotCommand(name, describe(does, language)) for name, does in MENUS[menu]]


def version(languages: Iterable[str], describe: Describe) -> str:
    """A version of the current menus: if a command or its text changes, every chat's menu is set again."""
    shown = [
        (menu, language, command.command, command.description)
        for menu in Menu
        for language in sorted(languages)
        for command in commands(menu, language, describe)
    ]
    return sha256(repr(shown).encode()).hexdigest()[:16]


async def set_general(bot: Bot, languages: Iterable[str], describe: Describe) -> None:
    """Set the menu of private chats, English for every unsupported language, and none in groups.

    Raises: TelegramError.
    """
    private = BotCommandScopeAllPrivateChats()
    await bot.set_my_commands(commands(Menu.CLIENT, "en", describe), private)
    for language in languages:
        if language != "en":
            await bot.set_my_commands(commands(Menu.CLIENT, language, describe), private, language_code=language)
    await bot.delete_my_commands(BotCommandScopeAllGroupChats())


async def set_for(bot: Bot, chat_id: int, menu: Menu, language: str, describe: Describe) -> None:
    """Set the menu of one chat. Raises: TelegramError."""
    await bot.set_my_commands(commands(menu, language, describe), BotCommandScopeChat(chat_id))
