import asyncio

import aiohttp
import pytest
from telegram.error import NetworkError, RetryAfter, TimedOut

from demo.messenger import Faults


async def opened(messenger):
    ada = await messenger.create_user("Ada")
    await messenger.open_bot(ada)
    return ada


@pytest.mark.parametrize(
    ("kind", "detail", "error"),
    [
        ("server_error", {"code": 503}, NetworkError),
        ("server_error", {}, NetworkError),
        ("reset", {}, NetworkError),
        ("too_many", {"retry_after": 7}, RetryAfter),
    ],
)
def test_a_request_that_failed_did_nothing_and_the_next_one_works(play, kind, detail, error):
    async def scene(messenger, bot):
        ada = await opened(messenger)
        await messenger.add_fault(kind, methods=["sendMessage"], times=1, **detail)
        with pytest.raises(error):
            await bot.send_message(ada, "one")
        await bot.send_message(ada, "two")
        assert [m.text for m in await messenger.sent()] == ["two"]
        assert (await messenger.figures())["struck"] == {kind: 1}

    play(scene)


def test_a_lost_answer_belongs_to_a_message_that_arrived(play):
    async def scene(messenger, bot):
        ada = await opened(messenger)
        await messenger.add_fault("lost_answer", methods=["sendMessage"], times=1)
        with pytest.raises(NetworkError):
            await bot.send_message(ada, "one")
        await bot.send_message(ada, "one")
        first, second = await messenger.sent()
        assert (first.text, second.text, first.seq, second.seq) == ("one", "one", 1, 2)
        assert first.accepted < second.accepted

    play(scene)


def test_a_silent_server_never_answers(play):
    async def scene(messenger, bot):
        ada = await opened(messenger)
        await messenger.add_fault("silence", methods=["sendMessage"], times=1)
        with pytest.raises(TimedOut):
            await bot.send_message(ada, "one", read_timeout=0.05)
        assert await messenger.sent() == []
        await bot.get_updates(offset=2, timeout=0)
        await messenger.settled()

    play(scene)


def test_a_delayed_answer_comes_after_its_message_was_accepted(play):
    async def scene(messenger, bot):
        ada = await opened(messenger)
        await messenger.add_fault("delay", methods=["sendMessage"], ms=60_000)
        mark, waiting = await messenger.mark(), asyncio.create_task(bot.send_message(ada, "one"))
        (message,) = await messenger.wait_for_messages(ada, after=mark)
        assert (message.text, waiting.done()) == ("one", False)
        assert (await messenger.figures())["in_flight"] == 1
        await bot.get_updates(offset=2, timeout=0)
        with pytest.raises(TimeoutError):  # every update confirmed, but a request is still in flight
            await messenger.settled(timeout=0.01)
        waiting.cancel()
        with pytest.raises(asyncio.CancelledError):
            await waiting

    play(scene)


def test_a_reset_is_a_reset_on_the_wire(play):
    async def scene(messenger, bot):
        await messenger.add_fault("reset")
        async with aiohttp.ClientSession() as session:
            with pytest.raises(aiohttp.ClientOSError, match="reset"):
                await session.get(f"{messenger.base_url}{messenger.token}/getMe")

    play(scene)


def test_chance_is_seeded_and_other_methods_are_spared():
    def struck(seed):
        faults = Faults(seed)
        faults.add("reset", methods=["sendMessage"], probability=0.3)
        return [bool(faults.for_request("sendmessage")) for _ in range(200)], faults.for_request("getme")

    assert struck(1) == struck(1)
    assert struck(1) != struck(2)
    assert 30 < sum(struck(1)[0]) < 90
    assert struck(1)[1] == []


def test_an_unknown_fault_is_a_mistake():
    with pytest.raises(ValueError, match="gremlin"):
        Faults().add("gremlin")


def test_an_update_confirmed_before_can_come_again(play):
    async def scene(messenger, bot):
        ada = await opened(messenger)
        (first,) = await bot.get_updates(timeout=0)
        await messenger.send_text(ada, "one")
        await messenger.add_fault("repeat", times=1)
        batch = await bot.get_updates(offset=first.update_id + 1, timeout=0)
        assert [u.message.text for u in batch] == ["/start", "one"]
        assert [u.message.text for u in await bot.get_updates(timeout=0)] == ["one"]

    play(scene)


def test_a_batch_can_come_in_another_order_and_loses_nothing(play):
    async def scene(messenger, bot):
        ada = await opened(messenger)
        await messenger.many([("send_text", {"user": ada, "text": str(n)}) for n in range(20)])
        in_order = [u.update_id for u in await bot.get_updates(timeout=0)]
        await messenger.add_fault("shuffle")
        mixed = [u.update_id for u in await bot.get_updates(timeout=0)]
        assert mixed != in_order
        assert sorted(mixed) == in_order

    play(scene, faults=Faults(seed=3))


def test_a_late_update_comes_behind_later_ones_and_is_never_lost(play):
    async def scene(messenger, bot):
        ada = await opened(messenger)
        await messenger.add_fault("late", times=1, behind=2)
        for text in ("one", "two", "three"):
            await messenger.send_text(ada, text)
        batch = await bot.get_updates(timeout=0)
        assert [u.message.text for u in batch] == ["/start", "two", "three", "one"]
        assert [u.update_id for u in batch] == sorted(u.update_id for u in batch)

        await messenger.add_fault("late", times=1, behind=9)
        await messenger.send_text(ada, "four")
        assert (await messenger.figures())["unconfirmed"] == 5
        await messenger.clear_faults()
        assert (await bot.get_updates(timeout=0))[-1].message.text == "four"

    play(scene)
