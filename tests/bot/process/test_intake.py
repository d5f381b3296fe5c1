"""Nothing typed is lost between the messenger and the inbox. Real client, real HTTP, real inbox."""

import asyncio
from contextlib import asynccontextmanager
from itertools import pairwise

import pytest
from sqlalchemy import select
from telegram import Bot

from bot.foundation.clock import MachineClock
from bot.foundation.errors import OtherPoller, TokenRefused
from bot.foundation.metrics import Metrics
from bot.process import intake
from bot.process.intake import Poller, keeper
from bot.store import codec, unread
from bot.store.schema import inbox as inbox_table
from bot.transports.incoming import Incoming, Unread
from bot.transports.request import AiohttpRequest
from bot.transports.telegram import Batch, Telegram
from core.dialogue.kit.events import Text
from demo.messenger import Flood, Messenger
from tests import virtual_time
from tests.waiting import until, until_polled


@asynccontextmanager
async def account(messenger, token=None):
    bot = Bot(
        token or messenger.token,
        base_url=messenger.base_url,
        request=AiohttpRequest(),
        get_updates_request=AiohttpRequest(2),
    )
    telegram = Telegram(bot)
    await telegram.open()
    try:
        yield telegram
    finally:
        await telegram.close()


class Kept:
    """Stores updates; fails the first `fail` times."""

    def __init__(self, database, fail=0):
        self._keep = keeper(database, MachineClock(), lambda: None)
        self.fail = fail
        self.calls = 0
        self.kept = asyncio.Event()

    async def __call__(self, events, aside):
        self.calls += 1
        if self.calls <= self.fail:
            raise OSError("disk full")
        await self._keep(events, aside)
        self.kept.set()


def texts(database):
    rows = database.read_now(lambda conn: conn.execute(select(inbox_table).order_by(inbox_table.c.id)).all())
    return [getattr(codec.loads(row.event), "text", None) or type(codec.loads(row.event)).__name__ for row in rows]


def poller(telegram, keep, **options):
    return Poller(telegram, keep, MachineClock(), Metrics(), timeout=1, spread=lambda: 0.0, **options)


def play(scene):
    async def staged():
        async with asyncio.timeout(30), Messenger(flood=Flood.off()) as messenger:
            ada = await messenger.create_user("Ada", language_code="pl")
            await messenger.open_bot(ada)
            await scene(messenger, ada)

    asyncio.run(staged())


async def polling(one, reached):
    """Run the loop until `reached` has been awaited."""
    stopping = asyncio.Event()
    task = asyncio.create_task(one.run(stopping))
    try:
        await reached
    finally:
        stopping.set()
        await task


def test_what_is_typed_is_in_the_inbox_once_and_in_order(database):
    async def scene(messenger, ada):
        async with account(messenger) as telegram:
            for n in range(250):
                await messenger.send_text(ada, str(n))
            one = poller(telegram, Kept(database))
            while await one.once():
                pass
            assert (await messenger.figures())["unconfirmed"] == 0

    play(scene)
    assert texts(database) == ["Command", *map(str, range(250))]


def test_an_update_is_confirmed_only_after_it_is_kept(database):
    async def scene(messenger, ada):
        async with account(messenger) as telegram:
            one = poller(telegram, Kept(database, fail=1))
            with pytest.raises(OSError, match="disk full"):
                await one.once()
            await messenger.send_text(ada, "82.4")
            assert (await messenger.figures())["unconfirmed"] == 2
            assert await one.once() == 2
            assert (await messenger.figures())["unconfirmed"] == 2  # the offset is sent with the next request
            assert await one.once() == 0
            assert (await messenger.figures())["unconfirmed"] == 0

    play(scene)
    assert texts(database) == ["Command", "82.4"]


def test_a_worker_that_dies_after_keeping_gets_the_batch_again_and_keeps_it_once(database):
    async def scene(messenger, ada):
        await messenger.send_text(ada, "82.4")
        for _ in range(2):
            async with account(messenger) as telegram:
                assert await poller(telegram, Kept(database)).once() == 2

    play(scene)
    assert texts(database) == ["Command", "82.4"]


def test_repeated_late_and_shuffled_updates_are_each_kept_once(database):
    async def scene(messenger, ada):
        await messenger.add_fault("repeat", probability=0.5)
        await messenger.add_fault("shuffle", probability=0.5)
        await messenger.add_fault("late", probability=0.3, behind=3)
        async with account(messenger) as telegram:
            one = poller(telegram, Kept(database))
            for n in range(40):
                await messenger.send_text(ada, str(n))
                await one.once()
            await messenger.clear_faults()
            while await one.once():
                pass

    play(scene)
    assert sorted(texts(database)) == sorted(["Command", *map(str, range(40))])


@pytest.mark.parametrize(
    ("fault", "detail"),
    [
        pytest.param("server_error", {"code": 502}, id="bad-gateway"),
        pytest.param("reset", {}, id="reset"),
        pytest.param("lost_answer", {}, id="lost-answer"),
        pytest.param("too_many", {"retry_after": 1}, id="told-to-wait"),
    ],
)
def test_a_messenger_in_trouble_is_waited_for(database, monkeypatch, fault, detail):
    monkeypatch.setattr(intake, "backoff", lambda failed, spread: intake.timedelta(0))

    async def scene(messenger, ada):
        await messenger.add_fault(fault, methods=["getUpdates"], times=3 if fault != "too_many" else 1, **detail)
        async with account(messenger) as telegram:
            keeping = Kept(database)
            await polling(poller(telegram, keeping), keeping.kept.wait())
            assert (await messenger.figures())["struck"][fault] >= 1

    play(scene)
    assert texts(database) == ["Command"]


def test_a_store_in_trouble_is_waited_for(database, monkeypatch):
    monkeypatch.setattr(intake, "backoff", lambda failed, spread: intake.timedelta(0))

    async def scene(messenger, ada):
        async with account(messenger) as telegram:
            keeping = Kept(database, fail=3)
            await polling(poller(telegram, keeping), keeping.kept.wait())
            assert keeping.calls == 4

    play(scene)
    assert texts(database) == ["Command"]


def test_an_update_of_an_unknown_form_does_not_hold_up_those_behind_it(database):
    async def scene(messenger, ada):
        async with account(messenger) as telegram:
            await messenger.send_text(ada, "82.4")
            raw = await telegram.bot.do_api_request("getupdates", api_kwargs={"timeout": 0})
            raw[0]["message"] = {"message_id": "of another kind"}
            batch = telegram.read(raw, MachineClock().now())
            assert (batch.count, len(batch.aside), len(batch.events)) == (2, 1, 1)
            assert batch.confirm == raw[1]["update_id"] + 1

    play(scene)


def test_what_no_column_can_hold_is_set_aside_and_the_rest_of_its_batch_is_stored(database):
    keep = keeper(database, MachineClock(), lambda: None)
    now = MachineClock().now()
    events = [Incoming(f"telegram/{n}", 2**70 if n == 1 else 17, False, Text(now, str(n))) for n in range(3)]
    asyncio.run(keep(events, [Unread("telegram/9", None, b"{", "not_json")]))
    assert texts(database) == ["0", "2"]
    aside = database.read_now(unread.kept)
    assert sorted((row.key, row.why) for row in aside) == [("telegram/1", "not_stored"), ("telegram/9", "not_json")]


def test_a_second_poller_is_told_so_and_so_is_a_wrong_token(database):
    async def scene(messenger, ada):
        async with account(messenger) as telegram:
            now = MachineClock().now()
            await telegram.fetch((await telegram.fetch(None, now, 0)).confirm, now, 0)
            waiting = asyncio.create_task(telegram.fetch(None, now, 20))
            await until_polled(messenger)
            async with account(messenger) as other:
                await messenger.send_text(ada, "82.4")
                await asyncio.wait([waiting])
                again = asyncio.create_task(telegram.fetch(waiting.result().confirm, now, 20))
                await until_polled(messenger)
                await other.fetch(None, now, 0)
                with pytest.raises(OtherPoller, match="Stop the other bot process"):
                    await again
        with pytest.raises(TokenRefused):
            async with account(messenger, "4242:some-other-token-that-opens-nothing"):
                pass

    play(scene)


def test_a_press_is_answered_at_once_and_after_it_is_kept(database):
    async def scene(messenger, ada):
        async with account(messenger) as telegram:
            button = {"inline_keyboard": [[{"text": "Same", "callback_data": "same:1"}]]}
            await telegram.bot.send_message(ada, "Same?", reply_markup=button)
            await messenger.press(ada, "Same")
            one = poller(telegram, Kept(database, fail=1))
            with pytest.raises(OSError, match="disk full"):
                await one.once()
            assert not (await messenger.answers(ada))[0].answered
            await one.once()
            await one.answers.finish()
            assert (await messenger.answers(ada))[0].answered

    play(scene)
    assert texts(database) == ["Command", "Press"]


def test_a_press_that_cannot_be_answered_any_more_does_no_harm(database):
    async def scene(messenger, ada):
        async with account(messenger) as telegram:
            await messenger.add_fault("server_error", methods=["answerCallbackQuery"], code=500)
            await messenger.press(ada, data="same:1", message_id=5, forge=True)
            one = poller(telegram, Kept(database))
            assert await one.once() == 2
            await one.answers.finish()

    play(scene)
    assert texts(database) == ["Command", "Press"]


def test_a_stop_cuts_a_long_poll_off_at_once(database):
    async def scene(messenger, ada):
        async with account(messenger) as telegram:
            one = Poller(telegram, Kept(database), MachineClock(), Metrics(), timeout=50)

            async def idle():
                figures = await messenger.figures()
                return figures["polling"] and not figures["unconfirmed"]

            started = asyncio.get_running_loop().time()
            await polling(one, until(messenger, idle))
            assert asyncio.get_running_loop().time() - started < 5

    play(scene)


def test_updates_that_say_no_number_hold_up_those_behind_them_for_a_moment_only():
    class Source:
        """Gives three times what cannot be confirmed."""

        def __init__(self):
            self.asked = []
            self.stopping = asyncio.Event()

        async def fetch(self, confirm, now, timeout, limit=100):
            self.asked.append(virtual_time.instant())
            if len(self.asked) <= 3:
                return Batch(aside=(Unread(None, None, b"{}", "no_number"),), count=1)
            self.stopping.set()
            return Batch()

        async def answer(self, query):
            raise AssertionError("nobody pressed anything")

    async def keep(events, aside):
        assert len(aside) == 1

    source = Source()
    virtual_time.play(poller(source, keep).run(source.stopping))
    waits = [after - before for before, after in pairwise(source.asked)]
    assert waits == pytest.approx([0.1, 0.2, 0.4])


class Refusing:
    """Refuses the token each time `refused` says so, and then has nothing."""

    def __init__(self, refused):
        self.refused = list(refused)
        self.asked = []
        self.stopping = asyncio.Event()

    async def fetch(self, confirm, now, timeout, limit=100):
        self.asked.append(virtual_time.instant())
        if not self.refused:
            self.stopping.set()
        elif self.refused.pop(0):
            raise TokenRefused
        return Batch()

    async def answer(self, query):
        raise AssertionError("nobody pressed anything")


async def keeps_nothing(events, aside):
    raise AssertionError("nothing came")


def test_a_token_that_goes_on_being_refused_ends_it():
    source = Refusing([True] * 5)
    with pytest.raises(TokenRefused):
        virtual_time.play(poller(source, keeps_nothing).run(source.stopping))
    assert [after - before for before, after in pairwise(source.asked)] == pytest.approx([60, 60])


def test_a_token_refused_for_a_moment_ends_nothing():
    source = Refusing([True, True, False, True, True, False])
    virtual_time.play(poller(source, keeps_nothing).run(source.stopping))
    assert len(source.asked) == 7
