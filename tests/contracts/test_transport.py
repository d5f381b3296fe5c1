"""The contract between delivery and any transport. The real one runs against the local messenger over HTTP."""

import asyncio
import struct
import zlib
from contextlib import asynccontextmanager

import pytest
from telegram import Bot

from bot.foundation.reader import Rendered
from bot.foundation.retry import Blocked, Busy, Elsewhere, NoAnswer, Rejected, Sent, Trouble
from bot.transports.request import AiohttpRequest
from bot.transports.telegram import Telegram, parts
from demo.messenger import Flood, Messenger
from tests.memory_transport import MemoryTransport

NOBODY = 999_999


class Memory:
    """People around a `MemoryTransport`."""

    def __init__(self):
        self.transport = MemoryTransport(chats=[1, -5])
        self.ada, self.group = 1, -5

    async def block(self):
        self.transport.blocked.add(self.ada)

    async def grow(self):
        self.transport.moved[self.group] = -1005
        return -1005

    async def shown(self):
        return [
            (kept.message_id, m.text or m.caption, [label for row in m.keyboard for label, _ in row], m.photo,
             m.document)
            for kept in self.transport.sent
            for m in [kept.message]
        ]  # fmt: skip

    async def left(self):
        return [kept.message.text for kept in self.transport.sent]

    async def strike(self, failure):
        self.transport.fail_next(failure)


class Real:
    """The same people around the real transport."""

    def __init__(self, messenger, transport, ada, group):
        self.messenger, self.transport, self.ada, self.group = messenger, transport, ada, group

    async def block(self):
        await self.messenger.block(self.ada)

    async def grow(self):
        return await self.messenger.migrate(self.group, self.ada)

    async def shown(self):
        return [
            (m.message_id, m.text, m.labels, m.content if m.kind == "photo" else None,
             (m.filename, m.content) if m.kind == "document" else None)
            for m in await self.messenger.sent()
        ]  # fmt: skip

    async def left(self):
        return [m.text for m in await self.messenger.seen(self.ada) if m.text == ASKED.text]

    async def strike(self, failure):
        match failure:
            case Busy(seconds):
                await self.messenger.add_fault("too_many", times=1, retry_after=int(seconds))
            case Trouble():
                await self.messenger.add_fault("server_error", times=1, code=502)
            case NoAnswer():
                await self.messenger.add_fault("silence", times=1)


@asynccontextmanager
async def memory():
    yield Memory()


@asynccontextmanager
async def real():
    async with Messenger(flood=Flood.off()) as messenger:
        ada = await messenger.create_user("Ada")
        await messenger.open_bot(ada)
        group = await messenger.create_group("Spring walkers", [ada])
        await messenger.add_bot(group, ada)
        request = AiohttpRequest(read_timeout=0.3, connect_timeout=0.3)
        transport = Telegram(Bot(messenger.token, messenger.base_url, request=request))
        await transport.open()
        try:
            yield Real(messenger, transport, ada, group)
        finally:
            await transport.close()


@pytest.fixture(params=[memory, real], ids=["memory", "telegram"])
def play(request):
    def run(scene):
        async def staged():
            async with asyncio.timeout(20), request.param() as world:
                await scene(world)

        asyncio.run(staged())

    return run


def png():
    def chunk(kind, data):
        return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))

    header = struct.pack(">IIBBBBB", 8, 8, 8, 0, 0, 0, 0)
    return (
        b"\x89PNG\r\n\x1a\n"
        + chunk(b"IHDR", header)
        + chunk(b"IDAT", zlib.compress(bytes(8 * 9)))
        + chunk(b"IEND", b"")
    )


ASKED = Rendered(text="Were things the same?", keyboard=((("Same as last time", "same:1"), ("No", "no:1")),))


def test_a_text_with_buttons_arrives_whole(play):
    async def scene(world):
        sent = await world.transport.send(world.ada, ASKED)
        ((number, text, labels, _, _),) = await world.shown()
        assert sent == Sent(number)
        assert (text, labels) == ("Were things the same?", ["Same as last time", "No"])

    play(scene)


def test_messages_to_one_chat_keep_their_order_and_get_ids_of_their_own(play):
    async def scene(world):
        ids = [(await world.transport.send(world.ada, Rendered(text=str(n)))).message_id for n in range(5)]
        shown = await world.shown()
        assert [text for _, text, *_ in shown] == list("01234")
        assert [number for number, *_ in shown] == ids
        assert len(set(ids)) == 5

    play(scene)


def test_a_picture_and_a_document_arrive_with_their_words(play):
    async def scene(world):
        picture = png()
        assert isinstance(await world.transport.send(world.ada, Rendered(photo=picture, caption="Trend")), Sent)
        paper = Rendered(document=("you.csv", b"a,b\n"), caption="Yours")
        assert isinstance(await world.transport.send(world.ada, paper), Sent)
        first, second = await world.shown()
        assert first[1:4] == ("Trend", [], picture)
        assert (second[1], second[4]) == ("Yours", ("you.csv", b"a,b\n"))

    play(scene)


def test_buttons_are_taken_off_and_a_second_time_is_fine(play):
    async def scene(world):
        sent = await world.transport.send(world.ada, ASKED)
        for _ in range(2):
            assert isinstance(await world.transport.drop_buttons(world.ada, str(sent.message_id)), Sent)
        ((_, text, labels, _, _),) = await world.shown()
        assert (text, labels) == ("Were things the same?", [])

    play(scene)


def test_buttons_of_a_message_that_is_gone_are_as_good_as_taken_off(play):
    async def scene(world):
        assert isinstance(await world.transport.drop_buttons(world.ada, "7777"), Sent)

    play(scene)


def test_a_message_is_deleted_and_a_second_time_is_fine(play):
    async def scene(world):
        sent = await world.transport.send(world.ada, ASKED)
        for time in range(2):
            assert await world.left() == ([] if time else [ASKED.text])
            assert isinstance(await world.transport.delete(world.ada, str(sent.message_id)), Sent)
        assert await world.left() == []

    play(scene)


def test_somebody_who_blocked_us_is_blocked(play):
    async def scene(world):
        await world.block()
        assert await world.transport.send(world.ada, ASKED) == Blocked("blocked")
        assert await world.shown() == []

    play(scene)


def test_a_group_that_grew_says_where_it_is_now(play):
    async def scene(world):
        new = await world.grow()
        assert await world.transport.send(world.group, ASKED) == Elsewhere(new)

    play(scene)


@pytest.mark.parametrize(
    ("to_nobody", "message"),
    [
        pytest.param(True, ASKED, id="a-chat-that-is-not-there"),
        pytest.param(False, Rendered(text=""), id="nothing-to-say"),
    ],
)
def test_a_message_that_cannot_be_sent_is_rejected_with_a_reason(play, to_nobody, message):
    async def scene(world):
        answer = await world.transport.send(NOBODY if to_nobody else world.ada, message)
        assert isinstance(answer, Rejected)
        assert answer.error

    play(scene)


@pytest.mark.parametrize(
    "failure",
    [
        pytest.param(Busy(7), id="told-to-wait"),
        pytest.param(Trouble("Bad Gateway (502)"), id="a-bad-moment"),
        pytest.param(NoAnswer("no answer in time"), id="silence"),
    ],
)
def test_what_may_pass_is_a_value_and_the_next_message_goes_out(play, failure):
    async def scene(world):
        await world.strike(failure)
        assert await world.transport.send(world.ada, ASKED) == failure
        assert isinstance(await world.transport.send(world.ada, ASKED), Sent)

    play(scene)


def test_answering_a_press_nobody_made_does_no_harm(play):
    async def scene(world):
        await world.transport.answer("12345")

    play(scene)


def test_a_long_message_with_a_picture_is_two_and_the_buttons_go_with_the_last():
    whole = Rendered(text="Long", photo=b"p", caption="Short", keyboard=((("Yes", "y"),),))
    assert parts(whole) == (
        Rendered(text="Long"),
        Rendered(photo=b"p", caption="Short", keyboard=((("Yes", "y"),),)),
    )
    assert parts(ASKED) == (ASKED,)
