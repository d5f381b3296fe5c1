"""Each refusal of the platform, caused by the real client or, if it would never do so, by a raw request."""

import io
import struct
from datetime import UTC, datetime, timedelta

import aiohttp
import pytest
from PIL import Image
from telegram import Bot, InlineKeyboardButton, InlineKeyboardMarkup
from telegram.error import BadRequest, ChatMigrated, EndPointNotFound, Forbidden, InvalidToken

from demo.messenger import CannotDo, Messenger

START = datetime(2026, 3, 2, 7, 0, tzinfo=UTC)
A_PICTURE = b"\x89PNG\r\n\x1a\n" + struct.pack(">I4sIIBBBBB", 13, b"IHDR", 60, 40, 8, 2, 0, 0, 0)


def picture(width, height):
    return A_PICTURE[:16] + struct.pack(">II", width, height) + A_PICTURE[24:]


def buttons(data):
    return {"inline_keyboard": [[{"text": "Yes", "callback_data": data}]]}


SEND = [
    pytest.param({}, "chat_id is empty", id="no-chat"),
    pytest.param({"chat_id": ""}, "chat_id is empty", id="empty-chat"),
    pytest.param({"chat_id": [1]}, 'field "chat_id" must be of type Number or String', id="list-as-chat"),
    pytest.param({"chat_id": 999}, "chat not found", id="unknown-chat"),
    pytest.param({"chat_id": "@nobody"}, "chat not found", id="unknown-name"),
    pytest.param({"text": None}, "message text is empty", id="no-text"),
    pytest.param({"text": ""}, "message text is empty", id="empty-text"),
    pytest.param({"text": " \n"}, "text must be non-empty", id="blank-text"),
    pytest.param({"text": "\u200b\u2060 \ufeff"}, "text must be non-empty", id="text-without-width"),
    pytest.param({"text": "<b>\u200d</b>", "parse_mode": "HTML"}, "text must be non-empty", id="bold-without-width"),
    pytest.param({"message_thread_id": 7}, "message thread not found", id="unknown-thread"),
    pytest.param(
        {"text": "<blockquote>a<i><blockquote>b</blockquote></i></blockquote>", "parse_mode": "HTML"},
        'can\'t parse entities: Tag "blockquote" must not be nested at byte offset 16',
        id="quotes-in-quotes",
    ),
    pytest.param(
        {"reply_markup": {"inline_keyboard": [[{"text": "a", "callback_data": "a", "url": "https://example.org"}]]}},
        "BUTTON_TYPE_INVALID",
        id="button-that-does-two-things",
    ),
    pytest.param({"text": 5}, 'field "text" must be of type String', id="number-as-text"),
    pytest.param({"text": ["a"]}, 'field "text" must be of type String', id="list-as-text"),
    pytest.param({"text": "x" * 4097}, "message is too long", id="too-long"),
    pytest.param({"text": "😀" * 2049}, "message is too long", id="too-long-in-utf16"),
    pytest.param({"text": f"<b>{'x' * 4097}</b>", "parse_mode": "HTML"}, "message is too long", id="too-long-parsed"),
    pytest.param(
        {"text": "<p>x</p>", "parse_mode": "HTML"},
        'can\'t parse entities: Unsupported start tag "p" at byte offset 0',
        id="unknown-tag",
    ),
    pytest.param({"text": "x", "parse_mode": "Latex"}, "unsupported parse_mode", id="unknown-mode"),
    pytest.param({"reply_markup": "{"}, "can't parse reply keyboard markup JSON object", id="broken-json"),
    pytest.param({"reply_markup": [1]}, "object expected as reply markup", id="list-as-markup"),
    pytest.param(
        {"reply_markup": {"inline_keyboard": {}}},
        'field "inline_keyboard" of the reply markup must be an Array',
        id="object-as-rows",
    ),
    pytest.param(
        {"reply_markup": {"inline_keyboard": [{"text": "a"}]}},
        'field "inline_keyboard" of the reply markup must be an Array of Arrays',
        id="buttons-without-rows",
    ),
    pytest.param(
        {"reply_markup": {"inline_keyboard": [[{"text": "a"}]]}},
        "can't parse inline keyboard button: Text buttons are unallowed in the inline keyboard",
        id="button-that-does-nothing",
    ),
    pytest.param(
        {"reply_markup": {"inline_keyboard": [[{"callback_data": "a"}]]}},
        "can't parse inline keyboard button: Can't find field \"text\"",
        id="button-without-label",
    ),
    pytest.param({"reply_markup": buttons("x" * 65)}, "BUTTON_DATA_INVALID", id="65-bytes"),
    pytest.param({"reply_markup": buttons("é" * 33)}, "BUTTON_DATA_INVALID", id="66-bytes-33-characters"),
    pytest.param({"reply_markup": buttons("")}, "BUTTON_DATA_INVALID", id="no-data"),
    pytest.param(
        {"reply_markup": {"inline_keyboard": [[{"text": "a", "callback_data": "a"}]] * 101}},
        "reply markup is too long",
        id="101-buttons",
    ),
    pytest.param(
        {"reply_markup": {"keyboard": [[1]]}},
        "can't parse keyboard button: KeyboardButton must be an Object",
        id="number-as-button",
    ),
    pytest.param({"reply_parameters": {"message_id": 999}}, "message to be replied not found", id="reply"),
]


@pytest.mark.parametrize(("changes", "reason"), SEND)
def test_a_message_the_platform_would_refuse_is_refused_in_its_words(play, ask, changes, reason):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        await messenger.open_bot(ada)
        given = {"chat_id": ada, "text": "hello", **changes} if changes else {"text": "hello"}
        status, body = await ask(messenger, "sendMessage", json=given)
        assert (status, body) == (
            400,
            {"ok": False, "error_code": 400, "description": f"Bad Request: {reason}"},
        )
        assert await messenger.sent() == []

    play(scene)


@pytest.mark.parametrize(
    "given",
    [
        pytest.param({"text": "x" * 4096}, id="4096"),
        pytest.param({"text": "\u200bx"}, id="a-letter-beside-what-has-no-width"),
        pytest.param(
            {"text": "<blockquote>a</blockquote><blockquote>b</blockquote>", "parse_mode": "HTML"}, id="quotes"
        ),
        pytest.param({"text": f"<b>{'x' * 4090}</b>", "parse_mode": "html"}, id="4090-in-tags"),
        pytest.param({"text": "x", "reply_markup": buttons("é" * 32)}, id="64-bytes"),
        pytest.param({"text": "x", "reply_markup": {"remove_keyboard": True}}, id="no-keyboard"),
    ],
)
def test_what_just_fits_is_taken(play, ask, given):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        await messenger.open_bot(ada)
        status, body = await ask(messenger, "sendMessage", json={"chat_id": ada, **given})
        assert (status, body["ok"]) == (200, True)

    play(scene)


@pytest.mark.parametrize(
    ("method", "given", "reason"),
    [
        ("sendPhoto", {"caption": "x" * 1025}, "message caption is too long"),
        ("sendPhoto", {}, "there is no photo in the request"),
        ("sendPhoto", {"photo": "nothing"}, "wrong remote file identifier specified: Wrong string length"),
        ("sendDocument", {}, "there is no document in the request"),
        ("sendDocument", {"document": "attach://lost"}, "there is no document in the request"),
        ("sendChatAction", {}, "wrong parameter action in request"),
        ("sendChatAction", {"action": "dancing"}, "wrong parameter action in request"),
        (
            "answerCallbackQuery",
            {},
            "query is too old and response timeout expired or query ID is invalid",
        ),
        ("answerCallbackQuery", {"callback_query_id": "1", "text": "x" * 201}, "MESSAGE_TOO_LONG"),
        ("editMessageText", {"text": "x"}, "message identifier is not specified"),
        ("editMessageText", {"text": "x", "message_id": 999}, "message to edit not found"),
        ("editMessageText", {"text": "x", "message_id": "one"}, 'field "message_id" must be of type Number'),
        ("editMessageText", {"text": "x", "message_id": 1}, "message can't be edited"),
        ("editMessageText", {"message_id": 1}, "message text is empty"),
        ("editMessageReplyMarkup", {"message_id": 999}, "message to edit not found"),
        ("deleteMessage", {"message_id": 999}, "message to delete not found"),
        ("leaveChat", {}, "chat member status can't be changed in private chats"),
        ("getFile", {}, "invalid file_id"),
        ("setMyCommands", {}, "expected an Array of BotCommand"),
        ("setMyCommands", {"commands": [{"command": "Start", "description": "x"}]}, "BOT_COMMAND_INVALID"),
        (
            "setMyCommands",
            {"commands": [{"command": "start", "description": ""}]},
            "BOT_COMMAND_DESCRIPTION_INVALID",
        ),
        (
            "setMyCommands",
            {"commands": [{"command": f"c{n}", "description": "x"} for n in range(101)]},
            "BOT_COMMANDS_TOO_MUCH",
        ),
        ("setMyCommands", {"commands": [], "language_code": "english"}, "invalid language code specified"),
        (
            "setMyCommands",
            {"commands": [], "scope": {"type": "planet"}},
            "can't parse BotCommandScope: Unsupported type specified",
        ),
        (
            "setWebhook",
            {"url": "http://example.org/x"},
            "bad webhook: An HTTPS URL must be provided for webhook",
        ),
        (
            "setWebhook",
            {"url": "https://example.org/x"},
            "bad webhook: Failed to resolve host: Name or service not known",
        ),
        (
            "setWebhook",
            {"url": "http://127.0.0.1:1/x", "secret_token": "a b"},
            "secret token contains unallowed characters",
        ),
        ("getUpdates", {"allowed_updates": "{"}, "can't parse allowed updates JSON object"),
        ("getUpdates", {"offset": "soon"}, 'field "offset" must be of type Number'),
    ],
)  # fmt: skip
def test_each_method_refuses_what_it_cannot_do(play, ask, method, given, reason):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        await messenger.open_bot(ada)  # message 1
        status, body = await ask(messenger, method, json={"chat_id": ada, **given})
        assert (status, body["description"]) == (400, f"Bad Request: {reason}")

    play(scene)


@pytest.mark.parametrize(
    ("content", "reason"),
    [
        pytest.param(b"not a picture", "Image_process_failed", id="text"),
        pytest.param(b"\xff\xd8\xff\xe0\x00\x10JFIF", "Image_process_failed", id="jpeg-cut-short"),
        pytest.param(picture(9000, 2000), "Photo_invalid_dimensions", id="large"),
        pytest.param(picture(2100, 100), "Photo_invalid_dimensions", id="thin"),
        pytest.param(b"", "File must be non-empty", id="empty"),
    ],
)
def test_a_photo_must_be_a_picture_of_reasonable_shape(play, content, reason):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        await messenger.open_bot(ada)
        with pytest.raises(BadRequest, match=reason):
            await bot.send_photo(ada, content)

    play(scene)


@pytest.mark.parametrize("form", ["PNG", "JPEG"])
def test_a_photo_is_measured_and_kept_byte_for_byte(play, form):
    drawn = io.BytesIO()
    Image.new("RGB", (120, 80)).save(drawn, form)

    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        await messenger.open_bot(ada)
        sent = await bot.send_photo(ada, drawn.getvalue(), filename="trend")
        assert (sent.photo[0].width, sent.photo[0].height) == (120, 80)
        again = await bot.send_photo(ada, sent.photo[0].file_id)
        assert again.photo == sent.photo
        assert [m.content for m in await messenger.sent()] == [drawn.getvalue()] * 2

    play(scene)


def test_a_wrong_token_is_turned_away_as_the_platform_does(play, ask):
    async def scene(messenger, bot):
        assert await ask(messenger, "getMe", token="4242:another") == (
            401,
            {"ok": False, "error_code": 401, "description": "Unauthorized"},
        )
        assert (await ask(messenger, "getMe", token="nonsense"))[0] == 404
        assert (await ask(messenger, "getMoon"))[1]["description"] == "Not Found: method not found"
        with pytest.raises(EndPointNotFound):
            await bot.do_api_request("getMoon")
        another = Bot("4242:another", messenger.base_url)
        with pytest.raises(InvalidToken):
            await another.initialize()
        await another.shutdown()

    play(scene)


def test_a_messenger_needs_a_token_of_the_usual_form():
    with pytest.raises(ValueError, match="token"):
        Messenger(token="secret")


@pytest.mark.parametrize("encoding", ["query", "form", "json", "multipart"])
def test_parameters_come_in_any_encoding_and_method_names_in_any_case(play, ask, encoding):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        await messenger.open_bot(ada)
        given = {"chat_id": str(ada), "text": "Grüße & <x>"}
        how = {
            "query": {"params": given, "verb": "GET"},
            "form": {"data": given},
            "json": {"json": given},
            "multipart": {"data": aiohttp.FormData(given, default_to_multipart=True)},
        }[encoding]
        status, _ = await ask(messenger, "SENDmessage", **how)
        assert status == 200
        assert [m.text for m in await messenger.sent()] == ["Grüße & <x>"]

    play(scene)


def test_a_bot_cannot_write_first(play):
    async def scene(messenger, bot):
        ada, ben = [await messenger.create_user(name) for name in ("Ada", "Ben")]
        with pytest.raises(BadRequest, match="Chat not found"):
            await bot.send_message(ada, "hello")
        group = await messenger.create_group("Walkers", [ben])
        await messenger.add_bot(group, ben)
        with pytest.raises(Forbidden, match="can't initiate conversation"):
            await bot.send_message(ben, "hello")

    play(scene)


def test_a_blocked_bot_is_refused_until_it_is_let_in_again(play):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        await messenger.open_bot(ada)
        await messenger.block(ada)
        with pytest.raises(Forbidden, match="bot was blocked by the user"):
            await bot.send_message(ada, "hello")
        await messenger.open_bot(ada)
        await bot.send_message(ada, "welcome back")
        await messenger.deactivate(ada)
        with pytest.raises(Forbidden, match="user is deactivated"):
            await bot.send_chat_action(ada, "typing")

        kinds = [
            (u.my_chat_member.old_chat_member.status, u.my_chat_member.new_chat_member.status)
            for u in await bot.get_updates()
            if u.my_chat_member
        ]
        assert kinds == [("member", "kicked"), ("kicked", "member")]

    play(scene)


def test_an_edit_must_change_something_and_a_picture_has_no_text(play):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        await messenger.open_bot(ada)
        keyboard = InlineKeyboardMarkup([[InlineKeyboardButton("Yes", callback_data="y")]])
        sent = await bot.send_message(ada, "Ready?", reply_markup=keyboard)
        with pytest.raises(BadRequest, match="Message is not modified"):
            await sent.edit_text("Ready?", reply_markup=keyboard)
        with pytest.raises(BadRequest, match="Message is not modified"):
            await sent.edit_reply_markup(keyboard)
        await sent.edit_text("Ready?")
        photo = await bot.send_photo(ada, A_PICTURE, caption="Your line")
        with pytest.raises(BadRequest, match="There is no text in the message to edit"):
            await photo.edit_text("x")
        await photo.edit_caption("Your line, again")

        (_, text, picture_seen) = await messenger.seen(ada)
        assert (text.buttons, text.edits) == ((), 1)
        assert (picture_seen.text, picture_seen.content) == ("Your line, again", A_PICTURE)

    play(scene)


def test_a_button_press_is_answered_while_it_is_young(play):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        await messenger.set_now(START)
        await messenger.open_bot(ada)
        keyboard = InlineKeyboardMarkup([[InlineKeyboardButton("Yes", callback_data="y")]])
        await bot.send_message(ada, "Ready?", reply_markup=keyboard)
        first, second = [await messenger.press(ada, "Yes") for _ in range(2)]
        await messenger.set_now(START + timedelta(seconds=149))
        await bot.answer_callback_query(first, "Thanks")
        await messenger.set_now(START + timedelta(seconds=150))
        with pytest.raises(BadRequest, match="Query is too old"):
            await bot.answer_callback_query(second)
        assert [(a.answered, a.text) for a in await messenger.answers(ada)] == [(True, "Thanks"), (False, "")]

    play(scene)


def test_a_message_is_deleted_only_while_it_is_under_two_days_old(play):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        await messenger.set_now(START)
        await messenger.open_bot(ada)
        first, second = [await bot.send_message(ada, text) for text in ("one", "two")]
        await messenger.set_now(START + timedelta(hours=48) - timedelta(seconds=1))
        await first.delete()
        await messenger.set_now(START + timedelta(hours=48))
        with pytest.raises(BadRequest, match="Message can't be deleted"):
            await second.delete()
        assert [m.text for m in await messenger.seen(ada) if m.from_bot] == ["two"]

    play(scene)


def test_a_group_that_became_a_supergroup_names_its_new_id(play):
    async def scene(messenger, bot):
        ben = await messenger.create_user("Ben")
        old = await messenger.create_group("Walkers", [ben])
        await messenger.add_bot(old, ben)
        new = await messenger.migrate(old, ben)
        with pytest.raises(ChatMigrated) as moved:
            await bot.send_message(old, "hello")
        assert moved.value.new_chat_id == new
        await bot.send_message(new, "hello")

    play(scene)


@pytest.mark.parametrize(
    "payload",
    ["", "x" * 65, "with space", "ünicode", "dot.dot"],
    ids=["empty", "65", "space", "umlaut", "dot"],
)
def test_a_link_that_cannot_exist_is_not_followed(play, payload):
    async def scene(messenger, bot):
        ada = await messenger.create_user("Ada")
        with pytest.raises(CannotDo, match="1 to 64"):
            await messenger.open_bot(ada, payload)
        assert await bot.get_updates() == ()
        await messenger.open_bot(ada, "Az09_-" + "x" * 58)

    play(scene)


@pytest.mark.parametrize(
    "headers", [{"Origin": "https://example.com"}, {"Origin": "null"}, {"Host": "example.com"}, {"Host": "127.0.0.1:1"}]
)
@pytest.mark.parametrize("path", ["/control", "/bot{token}/getMe"])
def test_a_page_in_a_browser_is_refused(play, path, headers):
    async def scene(messenger, bot):
        url = messenger.url + path.format(token=messenger.token)
        body = '{"act": "mark", "arguments": {}}'
        async with aiohttp.ClientSession() as session:
            async with session.post(url, data=body) as allowed:
                assert allowed.status == 200
            async with session.post(url, data=body, headers=headers) as refused:
                assert refused.status == 403

    play(scene)
