"""The command menu: every command described in every language, and shown by the messenger."""

import asyncio

import pytest
from telegram import Bot

from bot.rendering.menu import DESCRIPTIONS, describe
from bot.rendering.reader import LANGUAGES
from bot.transports.menus import MENUS, Menu, commands, set_for, set_general
from bot.transports.request import AiohttpRequest
from demo.messenger import Messenger


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("menu", list(Menu))
def test_every_command_of_a_menu_is_described_as_the_messenger_wants_it(menu, language):
    shown = commands(menu, language, describe)
    assert [command.command for command in shown] == list(MENUS[menu])
    for command in shown:
        assert 1 <= len(command.command) <= 32
        assert 1 <= len(command.description) <= 256
    assert len({command.description for command in shown}) == len(shown)


def test_nothing_is_described_that_no_menu_has():
    assert {command for menu in MENUS.values() for command in menu} == set(DESCRIPTIONS)


def test_people_see_their_menu_and_a_coach_another():
    async def scene():
        async with Messenger() as messenger:
            ada = await messenger.create_user("Ada", language_code="de")
            rowan = await messenger.create_user("Rowan", language_code="en")
            async with Bot(messenger.token, messenger.base_url, request=AiohttpRequest()) as bot:
                await set_general(bot, ("en", "de"), lambda command, language: f"{command} in {language}")
                await messenger.open_bot(rowan)
                await set_for(bot, rowan, Menu.COACH, "en", lambda command, language: f"{command} in {language}")
            return await messenger.menu(ada), await messenger.menu(rowan)

    of_ada, of_rowan = asyncio.run(scene())
    assert of_ada[0] == {"command": "today", "description": "today in de"}
    assert [entry["command"] for entry in of_rowan] == list(MENUS[Menu.COACH])
