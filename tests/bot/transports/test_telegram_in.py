"""From updates to events: people act in the local messenger, and the real client parses the updates."""

import asyncio
from contextlib import AsyncExitStack
from datetime import UTC, datetime

import pytest
from telegram import Bot

from bot.transports import telegram_in
from bot.transports.request import AiohttpRequest
from core.dialogue.kit.events import Attachment, Command, GroupEvent, Press, Reachability, Text
from demo.messenger import Flood, Messenger

NOW = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)


def updates_of(act):
    """The updates that `act(messenger, bot, ada)` causes, as parsed by `incoming`."""

    async def run():
        async with AsyncExitStack() as stack:
            messenger = await stack.enter_async_context(Messenger(flood=Flood.off(), clock=lambda: NOW))
            bot = await stack.enter_async_context(Bot(messenger.token, messenger.base_url, request=AiohttpRequest()))
            ada = await messenger.create_user("Ada", language_code="de")
            await messenger.open_bot(ada)
            offset = 0
            for update in await bot.get_updates():
                offset = update.update_id + 1
            result = await act(messenger, bot, ada)
            updates = await bot.get_updates(offset, allowed_updates=list(telegram_in.ALLOWED_UPDATES))
            return result, [telegram_in.incoming(update, NOW, bot.username) for update in updates]

    return asyncio.run(run())


def event_of(act):
    result, found = updates_of(act)
    (incoming,) = found
    return result, incoming


def test_a_typed_text_keeps_its_words_its_instant_and_who_wrote_it():
    async def act(messenger, bot, ada):
        return await messenger.send_text(ada, "82,4 kg bitte"), ada

    (ref, ada), incoming = event_of(act)
    assert incoming.event == Text(NOW, "82,4 kg bitte", str(ref))
    assert (incoming.chat_id, incoming.is_group) == (ada, False)
    assert (incoming.language, incoming.name, incoming.query) == ("de", "Ada", "")
    assert incoming.key.startswith("telegram/")


def test_a_reply_names_the_message_it_answers():
    async def act(messenger, bot, ada):
        first = await bot.send_message(ada, "How are you?")
        return first.message_id, await messenger.send_text(ada, "Well, thank you", reply_to=first.message_id)

    (first, ref), incoming = event_of(act)
    assert incoming.event == Text(NOW, "Well, thank you", str(ref), reply_to=str(first))


def test_an_edited_text_names_the_message_it_corrects():
    async def act(messenger, bot, ada):
        ref = await messenger.send_text(ada, "824")
        await messenger.edit_text(ada, "82.4")
        return ref

    ref, (first, second) = updates_of(act)
    assert first.event.ref == second.event.ref == str(ref)
    assert (second.event.text, second.event.edited) == ("82.4", True)
    assert first.key != second.key


@pytest.mark.parametrize(
    ("typed", "name", "argument"),
    [
        pytest.param("/start mXy_-9", "start", "mXy_-9", id="an-invitation-link"),
        pytest.param("/Today", "today", "", id="any-case"),
        pytest.param("/pause  two weeks ", "pause", "two weeks", id="with-words-after-it"),
        pytest.param("/help@local_test_bot", "help", "", id="addressed-to-us"),
    ],
)
def test_a_command_is_split_from_what_follows_it(typed, name, argument):
    async def act(messenger, bot, ada):
        return await messenger.send_text(ada, typed)

    ref, incoming = event_of(act)
    assert incoming.event == Command(NOW, name, argument, str(ref))


@pytest.mark.parametrize(
    "typed",
    [
        pytest.param("/help@another_bot", id="for-another-bot"),
        pytest.param("see /help", id="not-at-the-start"),
    ],
)
def test_what_only_looks_like_a_command_is_a_text(typed):
    async def act(messenger, bot, ada):
        await messenger.send_text(ada, typed)

    _, incoming = event_of(act)
    assert isinstance(incoming.event, Text)


@pytest.mark.parametrize("kind", ["voice", "audio", "photo", "sticker", "document", "video"])
def test_what_is_not_text_says_what_it_is(kind):
    async def act(messenger, bot, ada):
        return await messenger.send_file(ada, kind)

    ref, incoming = event_of(act)
    assert incoming.event == Attachment(NOW, kind, str(ref))


def test_a_place_and_a_contact_are_attachments_too():
    async def act(messenger, bot, ada):
        await messenger.send_location(ada, 38.7, -9.1)
        await messenger.send_contact(ada, "+1555", "Ben")

    _, found = updates_of(act)
    assert [incoming.event.kind for incoming in found] == ["location", "contact"]


def test_words_under_a_picture_are_heard_as_words():
    async def act(messenger, bot, ada):
        await messenger.send_file(ada, "photo", caption="82.4 on my own scales")

    _, incoming = event_of(act)
    assert isinstance(incoming.event, Text)
    assert incoming.event.text == "82.4 on my own scales"


async def ask(bot, ada):
    return await bot.send_message(
        ada, "Same?", reply_markup={"inline_keyboard": [[{"text": "Same", "callback_data": "same:1"}]]}
    )


def test_a_press_carries_the_data_the_message_and_what_to_answer():
    async def act(messenger, bot, ada):
        asked = await ask(bot, ada)
        return asked.message_id, await messenger.press(ada, "Same")

    (message_id, query), incoming = event_of(act)
    assert incoming.event == Press(NOW, "same:1", str(message_id))
    assert incoming.query == query


def test_a_press_on_a_message_that_is_gone_is_still_a_press():
    async def act(messenger, bot, ada):
        await messenger.press(ada, data="old:button", message_id=7777, forge=True)

    _, incoming = event_of(act)
    assert incoming.event == Press(NOW, "old:button", "7777")


def test_a_press_with_more_data_than_a_button_can_hold_is_nobody_s_button():
    async def act(messenger, bot, ada):
        await messenger.press(ada, data="é" * 33, message_id=7777, forge=True)

    assert updates_of(act)[1] == [None]


def test_blocking_us_and_coming_back_are_told():
    async def act(messenger, bot, ada):
        await messenger.block(ada)
        await messenger.unblock(ada)

    _, found = updates_of(act)
    assert [incoming.event for incoming in found] == [Reachability(NOW, False), Reachability(NOW, True)]


def in_group(act, *, payload=None, privacy=True):
    async def staged(messenger, bot, ada):
        ben = await messenger.create_user("Ben")
        group = await messenger.create_group("Spring walkers", [ada])
        await messenger.set_privacy(privacy)
        await messenger.add_bot(group, ada, payload)
        return group, ben, ada, await act(messenger, group, ada, ben)

    (group, ben, ada, _), found = updates_of(staged)
    assert all(incoming.is_group for incoming in found if incoming)
    return group, ben, ada, [incoming.event for incoming in found if incoming]


def kinds(events):
    return [event.what for event in events]


def test_a_group_life_is_told_in_group_events():
    async def act(messenger, group, ada, ben):
        await messenger.add_user(group, ada, ben)
        await messenger.send_text(ada, "it says 82.4 kg today", chat=group)
        await messenger.remove_user(group, ada, ben)
        await messenger.remove_bot(group, ada)

    _, ben, ada, events = in_group(act, payload="cohort-token", privacy=False)
    assert kinds(events) == ["added", "start", "joined", "number", "left", "removed"]
    assert [event.by for event in events] == [ada, ada, ben, ada, ben, ada]
    assert events[1].text == "cohort-token"
    assert all(isinstance(event, GroupEvent) for event in events)
    assert "82.4" not in repr(events)


TALK = ("Good morning all!", "See you at 7 in the park", "/record", "/weigh@other_bot 82.4", "120 minutes, hurray")


def test_what_people_say_in_a_group_never_becomes_an_event():
    async def act(messenger, group, ada, ben):
        for words in TALK:
            await messenger.send_text(ada, words, chat=group)
        await messenger.send_file(ada, "photo", caption="82.4 kg this morning", chat=group)

    events = in_group(act, privacy=False)[3]
    assert kinds(events) == ["added", "number"]
    assert [event.text for event in events] == ["", ""]


def test_nothing_of_a_person_in_a_group_is_passed_on_but_their_number():
    async def staged(messenger, bot, ada):
        group = await messenger.create_group("Spring walkers", [ada])
        await messenger.set_privacy(False)
        await messenger.add_bot(group, ada)
        await messenger.send_text(ada, "82.4", chat=group)

    _, found = updates_of(staged)
    assert {(incoming.name, incoming.language) for incoming in found if incoming} == {("", "")}


def test_an_organiser_ties_and_unties_a_group_by_a_command():
    async def act(messenger, group, ada, ben):
        for words in ("/cohort bind", "/cohort@local_test_bot Unbind", "/cohort", "/cohort Ada 82.4 kg"):
            await messenger.send_text(ada, words, chat=group)

    events = in_group(act)[3]
    assert kinds(events) == ["added", "bind", "unbind", "number"]
    assert {event.text for event in events} == {""}


def test_a_group_that_grew_names_its_new_id_once():
    async def act(messenger, group, ada, ben):
        return await messenger.migrate(group, ada)

    group, _, _, events = in_group(act)
    assert kinds(events) == ["added", "migrated"]
    assert events[1].other_chat < group


def test_an_edit_in_a_group_and_a_file_there_are_not_ours_to_keep():
    async def act(messenger, group, ada, ben):
        await messenger.send_text(ada, "80", chat=group)
        await messenger.edit_text(ada, "82.4", chat=group)
        await messenger.send_file(ada, "photo", chat=group)

    events = in_group(act, privacy=False)[3]
    assert kinds(events) == ["added", "number"]


@pytest.mark.parametrize(
    "raw",
    [
        pytest.param({"update_id": 5, "message": {"message_id": 1}}, id="a-message-with-parts-missing"),
        pytest.param({"update_id": 5, "message": "words"}, id="not-an-object"),
        pytest.param({"message": {}}, id="no-id"),
        pytest.param({"update_id": 5, "callback_query": {"id": "1", "from": {}}}, id="a-press-by-nobody"),
    ],
)
def test_an_update_of_a_form_we_do_not_know_is_set_aside_without_an_error(raw):
    assert telegram_in.read(raw) is None


@pytest.mark.parametrize(
    "raw",
    [
        pytest.param({"update_id": 5}, id="empty"),
        pytest.param({"update_id": 5, "brand_new_thing": {"a": 1}}, id="a-kind-that-came-later"),
        pytest.param(
            {
                "update_id": 5,
                "message": {"message_id": 1, "date": 1, "chat": {"id": -1, "type": "channel"}, "text": "x"},
            },
            id="a-channel",
        ),
        pytest.param(
            {"update_id": 5, "message": {"message_id": 1, "date": 1, "chat": {"id": 1, "type": "private"}}},
            id="a-service-message-we-do-not-know",
        ),
    ],
)
def test_an_update_we_have_no_use_for_is_nothing(raw):
    update = telegram_in.read(raw)
    assert update is not None
    assert telegram_in.incoming(update, NOW) is None
