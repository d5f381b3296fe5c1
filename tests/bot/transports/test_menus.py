"""The command menu: every command described in every language, and shown by the messenger."""

import asyncio

import pytest
from sqlalchemy import update
from telegram import Bot

from bot.rendering.menu import describe
from bot.store import menus as staff_menus
from bot.store import people
from bot.store.people import Role
from bot.store.schema import people as people_table
from bot.transports.menus import MENUS, Menu, commands, set_for, set_general, version
from bot.transports.request import AiohttpRequest
from core.language import LANGUAGES
from demo.messenger import Messenger
from tests.bot.practice import NOW, add_client, add_coach


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("menu", list(Menu))
def test_every_command_of_a_menu_is_described_as_the_messenger_wants_it(menu, language):
    shown = commands(menu, language, describe)
    assert [command.command for command in shown] == [name for name, _ in MENUS[menu]]
    for command in shown:
        assert 1 <= len(command.command) <= 32
        assert 1 <= len(command.description) <= 256
    assert len({command.description for command in shown}) == len(shown)


def test_other_words_or_another_language_make_another_version_of_the_menus():
    now = version(LANGUAGES, describe)
    assert now == version(tuple(reversed(LANGUAGES)), describe)
    assert now != version(LANGUAGES, lambda text, language: describe(text, language).upper())
    assert now != version(tuple(LANGUAGES)[:-1], describe)


def test_people_see_their_menu_and_a_coach_another():
    async def scene():
        async with Messenger() as messenger:
            ada = await messenger.create_user("Ada", language_code="de")
            rowan = await messenger.create_user("Rowan", language_code="en")
            async with Bot(messenger.token, messenger.base_url, request=AiohttpRequest()) as bot:
                await set_general(bot, ("en", "de"), lambda text, language: f"{text} in {language}")
                await messenger.open_bot(rowan)
                await set_for(bot, rowan, Menu.COACH, "en", lambda text, language: f"{text} in {language}")
            return await messenger.menu(ada), await messenger.menu(rowan)

    of_ada, of_rowan = asyncio.run(scene())
    assert of_ada[0] == {"command": "today", "description": "Start today's check-in in de"}
    assert [entry["command"] for entry in of_rowan] == [name for name, _ in MENUS[Menu.COACH]]


def test_staff_whose_menu_is_missing_or_old_are_found_and_each_is_set_once(database):
    def practice(conn):
        add_coach(conn, 900, "Rowan")
        both = people.add(conn, 901, Role.COACH, "Sunny", "pl", NOW)
        people.add_coach(conn, both, "Sunny", NOW)
        people.add_organiser(conn, both, "Sunny", NOW)
        only = people.add(conn, 902, Role.ORGANISER, "Tove", "de", NOW)
        people.add_organiser(conn, only, "Tove", NOW)
        add_client(conn, None, 100)

    def found(version="1"):
        return sorted((one.chat_id, one.menu, one.language) for one in database.read_now(staff_menus.stale, version))

    database.write_now(practice)
    assert found() == [(900, "coach", "en"), (901, "both", "pl"), (902, "organiser", "de")]
    for one in database.read_now(staff_menus.stale, "1"):
        database.write_now(staff_menus.set_to, one)
    assert found() == []
    assert len(found("2")) == 3

    def changes(conn):
        conn.execute(update(people_table).where(people_table.c.chat_id == 902).values(language="es"))
        conn.execute(update(people_table).where(people_table.c.chat_id == 900).values(reachable=False))

    database.write_now(changes)
    assert found() == [(902, "organiser", "es")]


@pytest.mark.parametrize("menu", ["coach", "organiser", "both"])
def test_the_store_and_the_messenger_mean_the_same_menus(menu):
    assert MENUS[Menu(menu)]
