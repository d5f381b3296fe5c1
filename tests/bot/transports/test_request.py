"""The HTTP client under the chat library, against the local messenger over real HTTP."""

import asyncio
import socket

import pytest
from telegram import Bot
from telegram.error import (
    BadRequest,
    Forbidden,
    InvalidToken,
    NetworkError,
    RetryAfter,
    TelegramError,
    TimedOut,
)

from bot.transports.request import AiohttpRequest
from demo.messenger import Flood, Messenger


def with_bot(use, *, token=None, **options):
    """Run `use(bot, messenger, ada)` with a client of ours and somebody who has opened the bot."""

    async def run():
        async with Messenger(flood=Flood.off()) as messenger:
            ada = await messenger.create_user("Ada")
            await messenger.open_bot(ada)
            requests = (AiohttpRequest(), AiohttpRequest(**options))
            bot = Bot(
                token or messenger.token,
                base_url=messenger.base_url,
                base_file_url=messenger.base_file_url,
                request=requests[1],
                get_updates_request=requests[0],
            )
            for request in requests:
                await request.initialize()
            try:
                return await use(bot, messenger, ada)
            finally:
                for request in requests:
                    await request.shutdown()

    return asyncio.run(run())


def test_a_text_arrives_as_it_was_written():
    async def use(bot, messenger, ada):
        sent = await bot.send_message(
            ada, "82,4 kg – <b>noted</b> \N{SMILING FACE WITH SMILING EYES}", parse_mode="HTML"
        )
        (seen,) = [m for m in await messenger.seen(ada) if m.from_bot]
        return sent.message_id == seen.message_id, seen.text

    assert with_bot(use) == (True, "82,4 kg – noted \N{SMILING FACE WITH SMILING EYES}")


def test_a_file_arrives_with_its_bytes_its_name_and_its_caption():
    content = bytes(range(256)) * 40

    async def use(bot, messenger, ada):
        await bot.send_document(ada, content, filename="readings.csv", caption="Yours")
        (seen,) = [m for m in await messenger.seen(ada) if m.from_bot]
        return seen.content, seen.filename, seen.text

    assert with_bot(use) == (content, "readings.csv", "Yours")


def test_a_file_is_fetched():
    async def use(bot, messenger, ada):
        sent = await bot.send_document(ada, b"a,b\n1,2\n", filename="t.csv")
        file = await bot.get_file(sent.document.file_id)
        return bytes(await file.download_as_bytearray())

    assert with_bot(use) == b"a,b\n1,2\n"


@pytest.mark.parametrize(
    ("fault", "detail", "error"),
    [
        pytest.param("too_many", {"retry_after": 7}, RetryAfter, id="told-to-wait"),
        pytest.param("server_error", {"code": 502}, NetworkError, id="a-proxy's-page"),
        pytest.param("reset", {}, NetworkError, id="connection-reset"),
        pytest.param("lost_answer", {}, NetworkError, id="accepted-but-no-answer"),
        pytest.param("silence", {}, TimedOut, id="never-an-answer"),
    ],
)
def test_each_way_to_fail_becomes_the_library_s_own_error_and_names_no_address(fault, detail, error):
    async def use(bot, messenger, ada):
        await messenger.add_fault(fault, times=1, methods=["sendMessage"], **detail)
        with pytest.raises(error) as caught:
            await bot.send_message(ada, "a private word")
        sent_again = await bot.send_message(ada, "next")
        return caught.value, sent_again.message_id, bot.token

    failure, next_id, token = with_bot(use, read_timeout=0.2, connect_timeout=0.2)
    assert type(failure) is error
    assert next_id
    told = f"{failure} {failure!r} {failure.__cause__!r} {failure.__context__!r}"
    assert token not in told
    assert "private" not in told
    assert "html" not in told


def test_a_request_is_never_repeated_by_the_client_itself():
    async def use(bot, messenger, ada):
        await messenger.add_fault("lost_answer", times=1, methods=["sendMessage"])
        with pytest.raises(NetworkError):
            await bot.send_message(ada, "once")
        return [m.text for m in await messenger.seen(ada) if m.from_bot]

    assert with_bot(use) == ["once"]


def test_refusals_keep_the_platform_s_reason():
    async def use(bot, messenger, ada):
        with pytest.raises(BadRequest, match="Chat not found"):
            await bot.send_message(999_999, "anybody?")
        await messenger.block(ada)
        with pytest.raises(Forbidden, match="blocked by the user"):
            await bot.send_message(ada, "anybody?")

    with_bot(use)


def test_a_wrong_token_is_an_invalid_token():
    async def use(bot, messenger, ada):
        with pytest.raises(InvalidToken):
            await bot.get_me()

    with_bot(use, token="4242:another-token-that-opens-nothing-at-all")


def test_nobody_listening_is_a_network_error_that_says_where():
    with socket.socket() as held:
        held.bind(("127.0.0.1", 0))
        port = held.getsockname()[1]

        async def run():
            async with AiohttpRequest() as request:
                with pytest.raises(NetworkError, match=f"127.0.0.1:{port}") as caught:
                    await request.post(f"http://127.0.0.1:{port}/bot4242:secret/getMe")
                return caught.value

        assert "secret" not in repr(asyncio.run(run()))


def test_an_unreadable_answer_is_an_error_without_the_answer(caplog):
    with pytest.raises(TelegramError) as caught:
        AiohttpRequest.parse_json_payload(b'{"ok": true, "result": "my weight')
    assert "weight" not in repr(caught.value)
    assert caplog.text == ""


def test_many_requests_at_once_share_a_small_pool():
    async def use(bot, messenger, ada):
        await asyncio.gather(*(bot.send_message(ada, str(n)) for n in range(50)))
        return {m.text for m in await messenger.seen(ada) if m.from_bot}

    assert with_bot(use, pool_size=4) == {str(n) for n in range(50)}
