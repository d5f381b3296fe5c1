"""The command menu the messenger shows: a table of roles, in each person's language.

Everybody who has no role yet sees what a client sees: a stranger who tries gets the one fixed answer anyhow.
Staff have a menu of their own chat. Everything also works without commands.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from enum import StrEnum

from telegram import Bot, BotCommand, BotCommandScopeAllGroupChats, BotCommandScopeAllPrivateChats, BotCommandScopeChat


class Menu(StrEnum):
    """Whose menu it is. A coach may be an organiser too."""

    CLIENT = "client"
    COACH = "coach"
    ORGANISER = "organiser"
    BOTH = "both"


VERSION = "2"  # of the tables below and their words: another one has every chat's menu set anew
_EVERYBODY = ("help", "settings")
MENUS: dict[Menu, tuple[str, ...]] = {
    Menu.CLIENT: ("today", "record", "progress", "goal", "pause", "undo", "coach", "mydata", "forget", *_EVERYBODY),
    Menu.COACH: ("caseload", "invite", "client", "digest", "write", "cohort", *_EVERYBODY),
    Menu.ORGANISER: ("cohort", *_EVERYBODY),
    Menu.BOTH: ("caseload", "invite", "client", "digest", "write", "cohort", *_EVERYBODY),
}

Describe = Callable[[str, str], str]  # (command, language): what it does, 1-256 characters


def commands(menu: Menu, language: str, describe: Describe) -> list[BotCommand]:
    """Return one menu in one language."""
    return [BotCommand(name, describe(name, language)) for name in MENUS[menu]]


async def set_general(bot: Bot, languages: Iterable[str], describe: Describe) -> None:
    """Set the menu of private chats, English for every language we do not speak, and none in groups.

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
