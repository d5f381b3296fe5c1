"""What people can do and see, for a messenger in this process and one in a separate process."""

import asyncio
from datetime import UTC, datetime, timedelta

import pytest
from telegram import Bot, InlineKeyboardButton, InlineKeyboardMarkup, ReplyKeyboardMarkup
from telegram.error import Forbidden

from demo.messenger import CannotDo, Flood, Messenger, Remote

START = datetime(2026, 3, 2, 7, 30, tzinfo=UTC)
YES_NO = InlineKeyboardMarkup(
    [[InlineKeyboardButton("Yes", callback_data="y"), InlineKeyboardButton("No", callback_data="n")]]
)


@pytest.fixture(params=["in-process", "remote"])
def play(request):
    def run(scene):
        async def staged():
            if request.param == "in-process":
                hands = Messenger(flood=Flood.off())
            else:
                hands = await Remote.spawn("--no-flood")
            async with hands, Bot(hands.token, hands.base_url, hands.base_file_url) as bot:
                async with asyncio.timeout(30):
                    await hands.set_now(START)
                    await scene(hands, bot)

        asyncio.run(staged())

    return run


async def opened(messenger, name="Ada"):
    user = await messenger.create_user(name)
    await messenger.open_bot(user)
    return user


def test_a_person_sees_plain_text_buttons_files_and_edits(play):
    async def scene(messenger, bot):
        ada = await opened(messenger)
        mark = await messenger.mark()
        sent = await bot.send_message(ada, "<b>82.4</b> kg &amp; well", parse_mode="HTML", reply_markup=YES_NO)
        await bot.send_document(ada, b"a,b\n", filename="mine.csv", caption="All of it")
        await sent.edit_text("Kept.")
        text, document = await messenger.wait_for_messages(ada, 2, after=mark)
        assert (text.text, text.raw, text.edits, text.labels) == ("Kept.", "Kept.", 1, [])
        assert (document.text, document.filename, document.content) == ("All of it", "mine.csv", b"a,b\n")
        assert (document.kind, document.date, document.seq) == ("document", START, mark + 2)
        assert text.accepted < document.accepted
        own = (await messenger.seen(ada))[0]
        assert (own.text, own.sender, own.from_bot, own.seq) == ("/start", ada, False, 0)
        assert await messenger.sent(after=mark) == [text, document]
        assert await messenger.seen(ada, after=text.message_id) == [document]

    play(scene)


def test_buttons_are_pressed_by_label_the_latest_first_or_by_data(play):
    async def scene(messenger, bot):
        ada = await opened(messenger)
        first = await bot.send_message(ada, "One?", reply_markup=YES_NO)
        second = await bot.send_message(ada, "Two?", reply_markup=YES_NO)
        await messenger.press(ada, "Yes")
        await messenger.press(ada, data="n", message_id=first.message_id)
        await bot.send_message(ada, "Pick", reply_markup=ReplyKeyboardMarkup([["Skip", "Later"]]))
        assert (await messenger.seen(ada))[-1].labels == ["Skip", "Later"]
        assert await messenger.press(ada, "Later") == ""
        with pytest.raises(CannotDo, match="no button 'Maybe'"):
            await messenger.press(ada, "Maybe")

        _, one, two, three = await bot.get_updates(timeout=0)
        assert (one.callback_query.data, one.callback_query.message.message_id) == ("y", second.message_id)
        assert (two.callback_query.data, two.callback_query.message.message_id) == ("n", first.message_id)
        assert three.message.text == "Later"
        await one.callback_query.answer("Noted", show_alert=True)
        answers = await messenger.answers(ada)
        assert [(a.data, a.answered, a.text, a.alert) for a in answers] == [
            ("y", True, "Noted", True),
            ("n", False, "", False),
        ]

    play(scene)


def test_what_no_person_could_do_cannot_be_done(play):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        with pytest.raises(CannotDo, match="has not opened"):
            await messenger.send_text(ada, "hello")
        await messenger.open_bot(ada)
        for text in ("", "x" * 4097):
            with pytest.raises(CannotDo, match="1 to 4096"):
                await messenger.send_text(ada, text)
        with pytest.raises(CannotDo, match="nobody has the id 5"):
            await messenger.send_text(5, "hello")
        with pytest.raises(CannotDo, match="no text of one's own"):
            await messenger.edit_text(ada, "x", message_id=99)
        with pytest.raises(CannotDo, match="nobody can send a mood"):
            await messenger.send_file(ada, "mood")
        await messenger.block(ada)
        with pytest.raises(CannotDo, match="blocked"):
            await messenger.send_text(ada, "hello")
        with pytest.raises(CannotDo, match="no act 'fly'"):
            await messenger.do("fly")
        with pytest.raises(ValueError, match="gremlin"):
            await messenger.add_fault("gremlin")

    play(scene)


def test_typing_is_shown_for_five_seconds_or_until_a_message(play):
    async def scene(messenger, bot):
        ada = await opened(messenger)
        assert await messenger.action(ada) is None
        await bot.send_chat_action(ada, "typing")
        assert await messenger.action(ada) == "typing"
        await messenger.set_now(START + timedelta(seconds=5))
        assert await messenger.action(ada) is None
        await bot.send_chat_action(ada, "upload_photo")
        await bot.send_message(ada, "done")
        assert await messenger.action(ada) is None

    play(scene)


def test_a_menu_is_the_narrowest_in_the_persons_language(play):
    async def scene(messenger, bot):
        ada, rowan = await opened(messenger), await opened(messenger, "Rowan")
        await messenger.set_language(ada, "de-AT")
        await bot.set_my_commands([("help", "Help")])
        await bot.set_my_commands([("help", "Hilfe")], language_code="de")
        await bot.set_my_commands([("caseload", "My people")], scope={"type": "chat", "chat_id": rowan})
        assert await messenger.menu(ada) == [{"command": "help", "description": "Hilfe"}]
        assert await messenger.menu(rowan) == [{"command": "caseload", "description": "My people"}]
        assert [c.description for c in await bot.get_my_commands()] == ["Help"]
        await bot.delete_my_commands(scope={"type": "chat", "chat_id": rowan})
        assert await messenger.menu(rowan) == [{"command": "help", "description": "Help"}]

    play(scene)


def test_drivers_wait_for_a_change_and_never_for_ever(play):
    async def scene(messenger, bot):
        ada = await opened(messenger)
        mark = await messenger.mark()
        waiting = asyncio.create_task(messenger.wait_for_messages(ada, after=mark))
        with pytest.raises(TimeoutError):
            await messenger.wait_for_messages(ada, after=mark, timeout=0.01)
        with pytest.raises(TimeoutError):
            await messenger.settled(timeout=0.01)
        with pytest.raises(TimeoutError):
            await messenger.wait_for_mark(mark + 1, timeout=0.01)
        await bot.send_message(ada, "hello")
        await messenger.wait_for_mark(mark + 1)
        assert [m.text for m in await waiting] == ["hello"]
        settled = asyncio.create_task(messenger.settled())
        (update,) = await bot.get_updates(timeout=0)
        await bot.get_updates(offset=update.update_id + 1, timeout=0)
        await settled

    play(scene)


def test_many_acts_are_carried_out_in_order_and_counted(play):
    async def scene(messenger, bot):
        ada = await opened(messenger)
        acts = [("send_text", {"user": ada, "text": str(n)}) for n in range(5)]
        ids = await messenger.many(acts)
        assert ids == sorted(ids)
        assert [m.text for m in await messenger.seen(ada)] == ["/start", "0", "1", "2", "3", "4"]
        figures = await messenger.figures()
        assert (figures["unconfirmed"], figures["requests"]) == (6, {"getme": 1})
        await messenger.reset_counts()
        assert (await messenger.figures())["requests"] == {}

    play(scene)


def test_in_a_group_the_bot_hears_what_privacy_lets_it_hear(play):
    async def scene(messenger, bot):
        ada, ben = await opened(messenger), await messenger.create_user("Ben")
        group = await messenger.create_group("Walkers", [ada])
        await messenger.send_text(ada, "/before", chat=group)
        await messenger.add_bot(group, ada, "cohort-1")
        said = await bot.send_message(group, "Hello all")
        await messenger.add_user(group, ada, ben)
        await messenger.send_text(ben, "82.4 kg", chat=group)
        await messenger.send_text(ben, "/progress", chat=group)
        await messenger.send_text(ben, "/progress@another_bot", chat=group)
        await messenger.send_text(ben, "thanks", chat=group, reply_to=said.message_id)
        await messenger.set_privacy(False)
        await messenger.send_text(ben, "82.5 kg", chat=group)
        await messenger.set_privacy(True)
        heard = []
        for update in (await bot.get_updates(timeout=0))[1:]:
            if update.my_chat_member:
                heard.append(update.my_chat_member.new_chat_member.status)
            elif update.message.new_chat_members:
                heard.append([member.first_name for member in update.message.new_chat_members])
            else:
                heard.append(update.message.text)
        assert heard[:3] == ["member", [bot.first_name], "/start@local_test_bot cohort-1"]
        assert heard[3:] == [["Ben"], "/progress", "thanks", "82.5 kg"]
        assert [m.text for m in await messenger.seen(ben, chat=group) if m.from_bot] == ["Hello all"]

    play(scene)


def test_a_bot_put_out_of_a_group_is_told_so(play):
    async def scene(messenger, bot):
        ada = await opened(messenger)
        group = await messenger.create_group("Walkers", [ada])
        with pytest.raises(Forbidden, match="not a member of the group chat"):
            await bot.send_message(group, "hello")
        await messenger.add_bot(group, ada)
        await messenger.remove_bot(group, ada)
        with pytest.raises(Forbidden, match="bot was kicked from the group chat"):
            await bot.send_message(group, "hello")
        await messenger.add_bot(group, ada)
        await bot.leave_chat(group)
        updates = await bot.get_updates(timeout=0)
        changes = [u.my_chat_member.new_chat_member.status for u in updates if u.my_chat_member]
        assert changes == ["member", "kicked", "member", "left"]

    play(scene)


def test_a_migrated_group_tells_both_sides(play):
    async def scene(messenger, bot):
        ada = await opened(messenger)
        old = await messenger.create_group("Walkers", [ada])
        await messenger.add_bot(old, ada)
        new = await messenger.migrate(old, ada)
        assert new < -1_000_000_000_000
        *_, left, arrived = await bot.get_updates(timeout=0)
        assert (left.message.chat.id, left.message.migrate_to_chat_id) == (old, new)
        assert (arrived.message.chat.id, arrived.message.migrate_from_chat_id) == (new, old)
        with pytest.raises(CannotDo, match="the group is now"):
            await messenger.send_text(ada, "hello", chat=old)
        await messenger.send_text(ada, "/hello", chat=new)
        assert (await bot.get_chat(new)).type == "supergroup"

    play(scene)


def test_a_spawned_messenger_ends_with_its_hands():
    async def scene():
        async with await Remote.spawn("--delay-ms", "1") as remote:
            process = remote.process
            async with Bot(remote.token, remote.base_url) as bot:
                assert bot.username == "local_test_bot"
            assert (await remote.figures())["struck"]["delay"] >= 1
        assert process.returncode == 0

    asyncio.run(scene())
