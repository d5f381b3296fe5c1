"""The queue of updates as a bot sees it: what an offset confirms, and who may poll."""

import asyncio
from datetime import UTC, datetime, timedelta

import pytest
from telegram import Bot
from telegram.error import Conflict

START = datetime(2026, 3, 2, 7, 0, tzinfo=UTC)


def texts(updates):
    return [update.message.text for update in updates]


async def three_texts(messenger):
    ada = await messenger.create_user("Ada")
    await messenger.open_bot(ada)
    await messenger.send_text(ada, "one")
    await messenger.send_text(ada, "two")
    return ada


def test_updates_come_again_until_an_offset_confirms_them(play):
    async def scene(messenger, bot):
        await three_texts(messenger)
        first = await bot.get_updates(timeout=0)
        assert texts(first) == ["/start", "one", "two"]
        assert [u.update_id - first[0].update_id for u in first] == [0, 1, 2]
        assert await bot.get_updates(timeout=0) == first
        assert texts(await bot.get_updates(offset=first[1].update_id, timeout=0)) == ["one", "two"]
        assert texts(await bot.get_updates(timeout=0)) == ["one", "two"]
        assert await bot.get_updates(offset=first[2].update_id + 1, timeout=0) == ()
        assert (await messenger.figures())["unconfirmed"] == 0

    play(scene)


def test_a_limit_shortens_a_batch_and_confirms_nothing(play):
    async def scene(messenger, bot):
        await three_texts(messenger)
        assert texts(await bot.get_updates(limit=2, timeout=0)) == ["/start", "one"]
        assert (await messenger.figures())["unconfirmed"] == 3

    play(scene)


def test_a_negative_offset_keeps_the_last_and_forgets_all_earlier(play):
    async def scene(messenger, bot):
        await three_texts(messenger)
        assert texts(await bot.get_updates(offset=-2, timeout=0)) == ["one", "two"]
        assert texts(await bot.get_updates(timeout=0)) == ["one", "two"]
        assert texts(await bot.get_updates(offset=-9, timeout=0)) == ["one", "two"]

    play(scene)


def test_a_long_poll_is_answered_the_moment_something_comes(play):
    async def scene(messenger, bot):
        poll = asyncio.create_task(bot.get_updates(timeout=20))
        version = await messenger.changed(-1)
        while not (await messenger.figures())["polling"]:
            version = await messenger.changed(version)
        await messenger.open_bot(await messenger.create_user("Ada"))
        assert texts(await poll) == ["/start"]

    play(scene)


def test_a_second_poller_ends_the_first(play):
    async def scene(messenger, bot):
        older = asyncio.create_task(bot.get_updates(timeout=20))
        version = await messenger.changed(-1)
        while not (await messenger.figures())["polling"]:
            version = await messenger.changed(version)
        async with Bot(messenger.token, messenger.base_url) as another:
            assert await another.get_updates(timeout=0) == ()
        with pytest.raises(Conflict, match="terminated by other getUpdates request"):
            await older

    play(scene)


def test_a_webhook_and_polling_exclude_each_other(play):
    async def scene(messenger, bot):
        poll = asyncio.create_task(bot.get_updates(timeout=20))
        version = await messenger.changed(-1)
        while not (await messenger.figures())["polling"]:
            version = await messenger.changed(version)
        await bot.set_webhook("http://127.0.0.1:9/hook", max_connections=7)
        with pytest.raises(Conflict, match="terminated by setWebhook"):
            await poll
        with pytest.raises(Conflict, match="can't use getUpdates method while webhook is active"):
            await bot.get_updates(timeout=0)
        info = await bot.get_webhook_info()
        assert (info.url, info.max_connections) == ("http://127.0.0.1:9/hook", 7)
        await bot.delete_webhook()
        assert await bot.get_updates(timeout=0) == ()
        assert (await bot.get_webhook_info()).url == ""

    play(scene)


def test_updates_are_kept_for_a_day_and_presses_for_150_seconds(play, ask):
    async def scene(messenger, bot):
        await messenger.set_now(START)
        ada = await three_texts(messenger)
        keyboard = {"inline_keyboard": [[{"text": "Yes", "callback_data": "y"}]]}
        await ask(messenger, "sendMessage", json={"chat_id": ada, "text": "?", "reply_markup": keyboard})
        await messenger.press(ada, "Yes")
        await messenger.set_now(START + timedelta(seconds=149))
        assert (await bot.get_updates(timeout=0))[-1].callback_query.data == "y"
        await messenger.set_now(START + timedelta(seconds=150))
        assert texts(await bot.get_updates(timeout=0)) == ["/start", "one", "two"]
        await messenger.set_now(START + timedelta(hours=24))
        assert await bot.get_updates(timeout=0) == ()

    play(scene)


def test_unwanted_kinds_do_not_come_and_the_choice_stays_until_changed(play):
    async def scene(messenger, bot):
        ada = await three_texts(messenger)
        assert len(await bot.get_updates(allowed_updates=["my_chat_member"], timeout=0)) == 3
        await messenger.send_text(ada, "unheard")
        await messenger.block(ada)
        last = await bot.get_updates(offset=-1, timeout=0)
        assert last[0].my_chat_member is not None
        await messenger.unblock(ada)
        await bot.get_updates(offset=last[0].update_id + 2, allowed_updates=[], timeout=0)
        await messenger.send_text(ada, "heard")
        assert texts(await bot.get_updates(timeout=0)) == ["heard"]

    play(scene)


def test_pending_updates_can_be_dropped(play):
    async def scene(messenger, bot):
        await three_texts(messenger)
        await bot.delete_webhook(drop_pending_updates=True)
        assert await bot.get_updates(timeout=0) == ()

    play(scene)


def test_every_message_carries_the_given_clock_and_the_senders_language(play):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada", language_code="pl")
        await messenger.open_bot(ada, "tok-en")
        (update,) = await bot.get_updates(timeout=0)
        assert update.message.date == START
        assert update.message.from_user.language_code == "pl"
        assert update.message.text == "/start tok-en"
        assert update.message.parse_entities() != {}
        sent = await bot.send_message(ada, "hello")
        assert sent.date == START

    play(scene, clock=lambda: START)


def test_all_that_people_send_reaches_the_bot_in_its_own_shape(play):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        start = await messenger.open_bot(ada)
        for kind in ("voice", "audio", "photo", "sticker", "document", "video"):
            await messenger.send_file(ada, kind, b"bytes of it", filename="past.csv", caption="here")
        await messenger.send_location(ada, 51.5, -0.1)
        await messenger.send_contact(ada, "555", "Ben")
        await messenger.send_text(ada, "82.4", reply_to=start)
        await messenger.edit_text(ada, "82.6")
        updates = await bot.get_updates(timeout=0)
        kinds = ["voice", "audio", "photo", "sticker", "document", "video", "location", "contact", "text"]
        for kind, update in zip(kinds, updates[1:], strict=False):
            assert getattr(update.message, kind), kind
        assert updates[9].message.reply_to_message.text == "/start"
        assert (updates[10].edited_message.text, updates[10].edited_message.message_id) == (
            "82.6",
            updates[9].message.message_id,
        )
        file = await updates[5].message.document.get_file()
        assert bytes(await file.download_as_bytearray()) == b"bytes of it"

    play(scene)


def test_a_press_names_its_message_even_when_that_is_gone(play, ask):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        await messenger.open_bot(ada)
        keyboard = {"inline_keyboard": [[{"text": "Yes", "callback_data": "y"}]]}
        sent = await ask(messenger, "sendMessage", json={"chat_id": ada, "text": "?", "reply_markup": keyboard})
        message_id = sent[1]["result"]["message_id"]
        await messenger.press(ada, data="y")
        await messenger.press(ada, data="forged", message_id=777, forge=True)
        pressed = [u.callback_query for u in await bot.get_updates(timeout=0) if u.callback_query]
        assert [(q.data, q.message.message_id, q.message.is_accessible) for q in pressed] == [
            ("y", message_id, True),
            ("forged", 777, False),
        ]

    play(scene)
